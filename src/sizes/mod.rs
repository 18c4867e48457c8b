//! Sizes of one drink side by side (calculations, 7).

use crate::book::{Book, DrinkId, OfferId};
use crate::ledger::{Ledger, Priced};
use crate::measure::{Exact, Money, Overflow, Share, Volume};

/// One size of a drink among its others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SizeRow {
    /// The offer.
    pub offer: OfferId,
    /// What is poured.
    pub fill: Volume,
    /// Full cost of one drink.
    pub cost: Money,
    /// Full cost per price volume (1 fl oz or 100 mL).
    pub cost_per_volume: Money,
    /// What the price asked brings; none where none is asked.
    pub sold: Option<SoldSize>,
    /// The step from the next smaller size that has a price, where this one has one too.
    pub step: Option<Step>,
}

/// The figures of a size at its price asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SoldSize {
    /// Menu price.
    pub price: Money,
    /// Menu price per price volume.
    pub price_per_volume: Money,
    /// Contribution of one drink.
    pub contribution: Money,
    /// Contribution per price volume.
    pub contribution_per_volume: Money,
    /// Contribution per minute of hands' time; none where the drink takes none.
    pub contribution_per_minute: Option<Money>,
    /// Margin on the covered terms.
    pub margin: Share,
    /// What the customer pays per volume, over what the smallest priced size asks; 1 for that
    /// size itself.
    pub against_smallest: Share,
}

/// From one size to the next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// What the customer pays more on the menu.
    pub extra_price: Money,
    /// What it costs more.
    pub extra_cost: Money,
    /// Share of the extra price, without tax, that is kept: extra contribution over extra price
    /// without tax; none where the price does not rise.
    pub kept: Option<Share>,
}

/// The sizes of one drink, smallest fill first. Offers that cannot be computed are left out;
/// the ledger has their reasons.
///
/// # Errors
/// [`Overflow`].
pub fn side_by_side(book: &Book, ledger: &Ledger, drink: DrinkId) -> Result<Vec<SizeRow>, Overflow> {
    let per = book.settings().units.price_volume();
    let mut computed: Vec<(OfferId, &Priced)> = Vec::new();
    for offer in book.offers_of(drink) {
        let Some(Ok(priced)) = ledger.get(offer.id()) else { continue };
        let place = computed.partition_point(|(_, before)| before.fill.volume <= priced.fill.volume);
        computed.insert(place, (offer.id(), priced));
    }
    let mut rows = Vec::with_capacity(computed.len());
    let mut smallest = None;
    let mut smaller: Option<&Priced> = None;
    for (offer, priced) in computed {
        let fill = priced.fill.volume;
        let per_volume = |money: Money| Ok(money.times(per.ratio_to(fill)?)?.as_part());
        let cost = priced.cost.total()?;
        let sold = match &priced.asked {
            None => None,
            Some(asked) => {
                let price_per_volume = per_volume(asked.menu)?;
                let base = *smallest.get_or_insert(price_per_volume);
                Some(SoldSize {
                    price: asked.menu,
                    price_per_volume,
                    contribution: asked.contribution,
                    contribution_per_volume: per_volume(asked.contribution)?,
                    contribution_per_minute: per_minute(asked.contribution, priced)?,
                    margin: asked.margin,
                    against_smallest: Share::from_fraction(price_per_volume.ratio_to(base)?.as_part()),
                })
            }
        };
        let step = smaller.map_or(Ok(None), |smaller| step(smaller, priced))?;
        if priced.asked.is_some() {
            smaller = Some(priced);
        }
        rows.push(SizeRow { offer, fill, cost, cost_per_volume: per_volume(cost)?, sold, step });
    }
    Ok(rows)
}

fn per_minute(contribution: Money, priced: &Priced) -> Result<Option<Money>, Overflow> {
    let time = priced.cost.time;
    if !time.is_positive() {
        return Ok(None);
    }
    let minutes = time.seconds().over(Exact::new(60, 0))?;
    Ok(Some(contribution.over(minutes)?.as_part()))
}

fn step(smaller: &Priced, larger: &Priced) -> Result<Option<Step>, Overflow> {
    let (Some(small), Some(large)) = (&smaller.asked, &larger.asked) else { return Ok(None) };
    let more_without_tax = large.without_tax.minus(small.without_tax)?;
    let kept = if more_without_tax.is_positive() {
        let more = large.contribution.minus(small.contribution)?;
        Some(Share::from_fraction(more.ratio_to(more_without_tax)?.as_part()))
    } else {
        None
    };
    Ok(Some(Step {
        extra_price: large.menu.minus(small.menu)?,
        extra_cost: larger.cost.total()?.minus(smaller.cost.total()?)?,
        kept,
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Drink, Labour, Record, Settings, Tax, TaxPlace};
    use crate::measure::System;
    use crate::support::{
        book, container, drink, drink_id, ingredient, line, millilitres, money, offer, offer_id, pack, seconds,
        settings, share, use_of, vessel,
    };

    /// 4.00 a litre; a bottle at 0.50; 30 s at 36.00 an hour, or none. In 500, 250 and 350 mL
    /// (ids 1, 2, 3), at these prices.
    fn priced(settings: Settings, time: &str, prices: [Option<&str>; 3]) -> (Book, Ledger) {
        let labour = Labour { per_drink: seconds(time), ..Labour::default() };
        let bottle = |id, brimful| Record::Container(Container { set: vec![use_of(1, "1")], ..container(id, brimful) });
        let records = [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
            Record::Packaging(vessel(1, [pack(1, "1 ea", "0.50")])),
            bottle(1, "500 mL"),
            bottle(2, "250 mL"),
            bottle(3, "350 mL"),
            Record::Drink(Drink { labour, ..drink(1, "1 L", [line(1, 1, "1 L")]) }),
        ];
        let offers = (1..).zip(prices).map(|(container, price)| Record::Offer(offer(1, container, price)));
        let settings = Settings { units: System::Metric, wage: money("36"), ..settings };
        let book = book(settings, records.into_iter().chain(offers));
        let ledger = Ledger::of(&book);
        (book, ledger)
    }

    /// The sizes in a book without tax.
    fn rows(time: &str, prices: [Option<&str>; 3]) -> Vec<SizeRow> {
        let (book, ledger) = priced(settings(), time, prices);
        side_by_side(&book, &ledger, drink_id(1)).unwrap()
    }

    #[test]
    fn sizes_by_hand() {
        let rows = rows("30", [Some("6"), Some("4"), None]);
        let [small, middle, large] = rows.as_slice() else { panic!("three sizes, smallest first: {rows:?}") };

        // 1.00 of juice, 0.50, 0.30: 1.80; per 100 mL of 250 that is 0.72. At 4.00, 2.20 are left.
        let sold = SoldSize {
            price: money("4"),
            price_per_volume: money("1.6"),
            contribution: money("2.2"),
            contribution_per_volume: money("0.88"),
            contribution_per_minute: Some(money("4.4")),
            margin: share("0.625"),
            against_smallest: share("1"),
        };
        let expected = SizeRow {
            offer: offer_id(1, 2),
            fill: millilitres("250"),
            cost: money("1.8"),
            cost_per_volume: money("0.72"),
            sold: Some(sold),
            step: None,
        };
        assert_eq!(*small, expected);

        // No price asked: 1.40 + 0.80, and no step to it.
        assert_eq!((middle.offer, middle.cost), (offer_id(1, 3), money("2.2")));
        assert_eq!((middle.sold, middle.step), (None, None));

        // 2.00 + 0.80 at 6.00: 3.20 are left. From 250 mL it is 2.00 more, 1.00 of it cost.
        let sold = SoldSize {
            price: money("6"),
            price_per_volume: money("1.2"),
            contribution: money("3.2"),
            contribution_per_volume: money("0.64"),
            contribution_per_minute: Some(money("6.4")),
            margin: share("0.583333333333"),
            against_smallest: share("0.75"),
        };
        let step = Step { extra_price: money("2"), extra_cost: money("1"), kept: Some(share("0.5")) };
        assert_eq!((large.sold, large.step), (Some(sold), Some(step)));
    }

    #[test]
    fn a_share_is_kept_of_the_price_without_tax() {
        // 2.20 more on the menu are 2.00 without 10 % tax; 1.00 of it cost.
        let ten_percent = Tax { rate: share("0.1"), place: TaxPlace::InThePrice };
        let (book, ledger) =
            priced(Settings { tax: ten_percent, ..settings() }, "30", [Some("6.60"), Some("4.40"), None]);
        let rows = side_by_side(&book, &ledger, drink_id(1)).unwrap();
        let kept = Some(share("0.5"));
        let step = Step { extra_price: money("2.2"), extra_cost: money("1"), kept };
        assert_eq!(rows[2].step, Some(step));
    }

    #[test]
    fn nothing_is_kept_of_a_price_that_does_not_rise() {
        let rows = rows("0", [Some("4"), Some("4"), None]);
        let step = Step { extra_price: money("0"), extra_cost: money("1"), kept: None };
        assert_eq!(rows[2].step, Some(step));
        assert_eq!(rows[2].sold.unwrap().contribution_per_minute, None, "it takes no time");
    }

    #[test]
    fn the_smallest_priced_size_is_the_measure() {
        let rows = rows("0", [Some("6"), None, Some("4.90")]);
        // 4.90 for 350 mL is 1.40 per 100 mL; 6.00 for 500 mL is 1.20.
        let against = |row: &SizeRow| row.sold.map(|sold| sold.against_smallest);
        assert_eq!(rows.iter().map(against).collect::<Vec<_>>()[..2], [None, Some(share("1"))]);
        assert_eq!(against(&rows[2]), Some(share("0.857142857143")));
    }
}
