//! What must be bought before the first drink of a menu is sold.
//!
//! ```text
//! made          = weekly number / (1 - unsold)
//! pieces a week = sum of (made * pieces for one)
//! packs         = weeks of cover * pieces a week / contents, rounded up, at least those bought at a time
//! cash          = packs * (price for so many + surcharge)
//! weeks         = packs * contents / pieces a week
//! ```
//!
//! By hand: 80 sold a week with a fifth unsold are 100 made. With two lids each, four weeks take 800: two packs of
//! 500; but three are bought at a time, which last 7.5 weeks. The tests below have this case.

use crate::book::{Book, Offer, Packaging, PackagingId, PackagingPart};
use crate::drink::cost;
use crate::drink::make::{made_a_week, whole_packs};
use crate::foundation::measure::{Exact, Money, Overflow};

/// The opening stock of one kind of packaging.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stock {
    /// The packaging.
    pub packaging: PackagingId,
    /// What part of a container set it is.
    pub part: PackagingPart,
    /// Pieces used in a week, those for drinks that are thrown away among them.
    pub a_week: Exact,
    /// Whole packs to buy.
    pub packs: Exact,
    /// Pieces in them.
    pub pieces: Exact,
    /// What they cost together, with surcharges.
    pub cash: Money,
    /// Weeks that they last. It is `None` if none are used.
    pub weeks: Option<Exact>,
}

/// The opening stock for these offers: of each kind of packaging in their containers the packs
/// that last `cover` weeks, in whole packs and no fewer than are bought at a time, at the price
/// for so many. Packaging without a pack is left out.
///
/// # Errors
/// [`Overflow`].
pub fn opening_stock(
    book: &Book,
    offers: &mut dyn Iterator<Item = &Offer>,
    cover: Exact,
) -> Result<Vec<Stock>, Overflow> {
    let mut a_week: Vec<(PackagingId, Exact)> = Vec::new();
    for offer in offers {
        let Some(container) = book.container(offer.container) else { continue };
        let made = made_a_week(book, offer)?.unwrap_or_default();
        for used in book.set_of(container) {
            let more = made.times(used.count)?;
            match a_week.iter_mut().find(|(id, _)| *id == used.packaging) {
                Some((_, so_far)) => *so_far = so_far.plus(more)?.as_part(),
                None => a_week.push((used.packaging, more.as_part())),
            }
        }
    }
    let mut stock = Vec::with_capacity(a_week.len());
    for (id, a_week) in a_week {
        let Some(packaging) = book.packaging(id) else { continue };
        stock.extend(stock_of(packaging, a_week, cover)?);
    }
    Ok(stock)
}

fn stock_of(packaging: &Packaging, a_week: Exact, cover: Exact) -> Result<Option<Stock>, Overflow> {
    let Some(pack) = packaging.packs.first() else { return Ok(None) };
    let holds = pack.contents.measure()?.base();
    let packs = whole_packs(pack, a_week.times(cover)?)?.max(pack.at_a_time.ceiling());
    let pieces = packs.times(holds)?;
    let weeks = if a_week.is_positive() { Some(pieces.over(a_week)?.as_part()) } else { None };
    Ok(Some(Stock {
        packaging: packaging.id,
        part: packaging.part,
        a_week,
        packs,
        pieces,
        cash: cost::paid_for(pack, packs)?,
        weeks,
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Pack, Record, Settings, Tier};
    use crate::support::{
        book, container, drink, exact, ingredient, line, money, offer, pack, packaging_id, settings, share, use_of,
        vessel,
    };

    /// One drink in a container with two lids (packaging 2) and one bottle (1), sold so often;
    /// a fifth of what is made is not sold.
    fn stocked(bottle: Pack, weekly: Option<&str>, cover: &str) -> Vec<Stock> {
        let lids = Pack { at_a_time: exact("3"), ..pack(1, "500 ea", "10") };
        let sold = Offer { weekly: weekly.map(exact), ..offer(1, 1, None) };
        let set = vec![use_of(1, "1"), use_of(2, "2")];
        let book = book(
            Settings { unsold: share("0.2"), ..settings() },
            [
                Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
                Record::Packaging(vessel(1, [bottle])),
                Record::Packaging(vessel(2, [lids])),
                Record::Packaging(vessel(3, [])),
                Record::Container(Container { set, ..container(1, "500 mL") }),
                Record::Drink(drink(1, "500 mL", [line(1, 1, "500 mL")])),
                Record::Offer(sold.clone()),
            ],
        );
        opening_stock(&book, &mut [sold].iter(), exact(cover)).unwrap()
    }

    #[test]
    fn packs_cover_the_weeks_and_the_least_order() {
        // 80 sold of 100 made a week. Four weeks: 400 bottles, five packs of 90 at the price for
        // five; 800 lids, two packs, but three are bought at a time.
        let tiers = vec![Tier { from: exact("5"), price: money("18") }, Tier { from: exact("6"), price: money("1") }];
        let bottles = Pack { tiers, surcharge: money("0.50"), ..pack(1, "90 ea", "20") };
        let stock = stocked(bottles, Some("80"), "4");
        let expected = Stock {
            packaging: packaging_id(1),
            part: PackagingPart::Vessel,
            a_week: exact("100"),
            packs: exact("5"),
            pieces: exact("450"),
            cash: money("92.5"),
            weeks: Some(exact("4.5")),
        };
        assert_eq!(stock[0], expected);
        let lids = &stock[1];
        assert_eq!((lids.a_week, lids.packs, lids.cash), (exact("200"), exact("3"), money("30")));
        assert_eq!(lids.weeks, Some(exact("7.5")));
    }

    #[test]
    fn what_comes_out_even_takes_no_pack_more() {
        let stock = stocked(pack(1, "100 ea", "20"), Some("80"), "3");
        assert_eq!((stock[0].packs, stock[0].weeks), (exact("3"), Some(exact("3"))));
    }

    #[test]
    fn nothing_sold_still_takes_the_least_order_and_lasts_for_no_number_of_weeks() {
        for weekly in [None, Some("0")] {
            let stock = stocked(pack(1, "100 ea", "20"), weekly, "4");
            assert_eq!((stock[0].packs, stock[0].weeks, stock[1].cash), (exact("1"), None, money("30")));
        }
    }
}
