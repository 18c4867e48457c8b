//! Back from a price point: what a drink may cost, and how much of it that buys.

use super::Terms;
use crate::book::{Book, Container, CostBasis, Drink, Part};
use crate::drink::cost::{Cost, cost, is_made, overhead, unsold_share};
use crate::drink::fill::{ScaleError, Scaled, scale};
use crate::foundation::bisection::{Next, Until, bisect};
use crate::foundation::measure::{Exact, Money, Overflow, Share, Volume};

/// What a menu price leaves to spend.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ceiling {
    /// The price without tax.
    pub without_tax: Money,
    /// What the covered cost may be: R * p * (1 - m - c - f * (1 + t)) - k. Below zero where fees
    /// and target take more than the price.
    pub cost: Money,
    /// What may be spent on ingredients per drink, the rest of the covered cost as it is. Below
    /// zero where the rest alone is too much.
    pub ingredients: Money,
}

/// Costs that differ by less are the same: the parts of a cost are rounded at their twelfth
/// decimal.
const NEGLIGIBLE: Money = Money::from_major(Exact::new(1, 9));

impl Ceiling {
    /// The most that a computed cost may be on the covered terms: a negligible excess over the
    /// ceiling comes from rounding the parts of the cost.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn most(&self) -> Result<Money, Overflow> {
        self.cost.plus(NEGLIGIBLE)
    }
}

/// What a menu price leaves to spend on a drink of this cost.
///
/// # Errors
/// [`Overflow`].
pub fn ceiling(book: &Book, drink: &Drink, cost: &Cost, terms: &Terms, menu: Money) -> Result<Ceiling, Overflow> {
    let without_tax = terms.without_tax(menu)?;
    let share = Exact::ONE.minus(terms.target.fraction())?.minus(terms.covered_fee_share())?;
    let may_cost = terms.revenue(without_tax)?.times(share)?.minus(terms.covered_fixed_fee())?;
    let settings = book.settings();
    let paid = unsold_share(book, drink).rest()?.fraction().times(settings.reductions.free.rest()?.fraction())?;
    let made = |part| is_made(part, settings);
    let rest = cost.covered_of(terms.cost_basis, &|part| made(part) && part != Part::Ingredients)?;
    let sold = |part| !made(part) && !matches!(part, Part::Unsold | Part::Free);
    let sold = cost.covered_of(terms.cost_basis, &sold)?;
    Ok(Ceiling {
        without_tax: without_tax.as_part(),
        cost: may_cost.as_part(),
        ingredients: may_cost.minus(sold)?.times(paid)?.minus(rest)?.as_part(),
    })
}

/// How many times the span of fills is halved: from a gallon to less than a millionth of a
/// millilitre.
const HALVINGS: u32 = 44;

/// How far beyond the edge of a gap between steps a fill is tried: so little that it is solved and
/// shown as the edge itself.
const PAST_THE_EDGE: Volume = Volume::from_millilitres(Exact::new(5, 10));

/// The largest fill of a container, at most `full`, whose covered cost stays within `ceiling`: to a
/// millionth of a millilitre, and never beyond the ceiling. Returns `None` if even the fixed lines
/// and the container are too much. Where whole steps make room for what is cheaper a still larger fill
/// may be within it again; that is not looked for.
///
/// # Errors
/// [`Overflow`].
pub fn largest_fill(
    book: &Book,
    drink: &Drink,
    container: &Container,
    basis: CostBasis,
    full: Volume,
    ceiling: &Ceiling,
) -> Result<Option<Volume>, Overflow> {
    let (most, overhead) = (ceiling.most()?, overhead(book)?);
    let pays_for = |scaled: &Scaled, volume: Volume| {
        let cost = cost(book, drink, container, scaled, volume, overhead).ok();
        cost.map(|cost| cost.covered(basis)).is_some_and(|cost| cost <= most)
    };
    // What cannot be made at a fill cannot be afforded at it.
    let affords = |volume: Volume| scale(book, drink, volume).is_ok_and(|scaled| pays_for(&scaled, volume));
    if affords(full) {
        return Ok(Some(full));
    }
    // Rounding may lead just under the fixed lines, or into a gap between steps.
    let rounded = |volume: Volume| Some(volume.as_part()).filter(|part| affords(*part)).or(Some(volume));
    let Ok(scaled) = scale(book, drink, full) else { return Ok(None) };
    if !affords(scaled.fixed) {
        return Ok(None);
    }
    let (least, most_volume) = (scaled.fixed.millilitres(), full.millilitres());
    let (largest, _) = bisect(least, most_volume, Until::Halved(HALVINGS), &mut |low, middle| {
        let volume = Volume::from_millilitres(middle);
        Ok(match scale(book, drink, volume) {
            Ok(scaled) if pays_for(&scaled, volume) => Next::Near(middle),
            // What is met on either side of the gap decides.
            Err(ScaleError::BetweenSteps { short, over, .. }) => {
                let (below, above) =
                    (volume.minus(short)?.minus(PAST_THE_EDGE)?, volume.plus(over)?.plus(PAST_THE_EDGE)?);
                if above <= full && affords(above) {
                    Next::Near(above.millilitres())
                } else if affords(below) {
                    Next::Found(below.millilitres().max(low))
                } else {
                    Next::Far(below.millilitres())
                }
            }
            _ => Next::Far(middle),
        })
    })?;
    Ok(rounded(Volume::from_millilitres(largest)))
}

/// What a shop asks on its shelf for what it buys at `ours`, for a margin (not a mark-up).
///
/// # Errors
/// [`Overflow`] for a margin of 100 %.
pub fn shelf_price(ours: Money, margin: Share) -> Result<Money, Overflow> {
    Ok(ours.over(margin.rest()?.fraction())?.as_part())
}

/// What we may ask of a shop that sells at `shelf` and keeps a margin (not a mark-up).
///
/// # Errors
/// [`Overflow`].
pub fn our_price(shelf: Money, margin: Share) -> Result<Money, Overflow> {
    Ok(shelf.times(margin.rest()?.fraction())?.as_part())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{
        Ingredient, Labour, OverheadPer, PaymentFee, Record, Reductions, Scaling, Settings, Tax, TaxPlace,
    };
    use crate::drink::ledger::{Priced, price_offer};
    use crate::support::{
        amount, book, container, container_id, density, drink, drink_id, exact, ingredient, line, millilitres, money,
        offer, pack, seconds, settings, share, use_of, vessel,
    };

    /// 400 mL of a base at 4.00 a litre and 100 mL of a fixed shot at 10.00 a litre, in a bottle
    /// at 0.50; 40 seconds a litre at 36.00 an hour; a treatment fee of 0.20; a fifth is not sold.
    fn bar(basis: CostBasis, change: impl FnOnce(&mut Drink)) -> (Book, Priced) {
        let fixed = crate::book::Line { scaling: Scaling::Fixed, ..line(2, 2, "100 mL") };
        let mut smoothie = Drink {
            labour: Labour { per_litre: seconds("40"), ..Labour::default() },
            treatment_fee: money("0.20"),
            ..drink(1, "500 mL", [line(1, 1, "400 mL"), fixed])
        };
        change(&mut smoothie);
        let settings = Settings {
            tax: Tax { rate: share("0.1"), place: TaxPlace::InThePrice },
            payment_fee: PaymentFee { share: share("0.02"), fixed: money("0.10"), ..PaymentFee::default() },
            commission: share("0.05"),
            wage: money("36"),
            overhead: money("0.30"),
            overhead_per: OverheadPer::DrinkMade,
            unsold: share("0.2"),
            target: share("0.5"),
            cost_basis: basis,
            ..settings()
        };
        let book = book(
            settings,
            [
                Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
                Record::Ingredient(ingredient(2, [pack(1, "1 L", "10")])),
                Record::Packaging(vessel(1, [pack(1, "10 ea", "5")])),
                Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "500 mL") }),
                Record::Drink(smoothie),
                Record::Offer(offer(1, 1, None)),
            ],
        );
        let priced = price_offer(&book, &offer(1, 1, None)).unwrap();
        (book, priced)
    }

    fn back((book, priced): &(Book, Priced), menu: &str) -> (Ceiling, Option<Volume>) {
        let drink = book.drink(drink_id(1)).unwrap();
        let ceiling = ceiling(book, drink, &priced.cost, &priced.terms, money(menu)).unwrap();
        let basis = priced.terms.cost_basis;
        let container = book.container(container_id(1)).unwrap();
        let fill = largest_fill(book, drink, container, basis, priced.fill.volume, &ceiling).unwrap();
        (ceiling, fill)
    }

    /// Less than a millionth of a millilitre under what is expected, or at it.
    fn just_at(fill: Option<Volume>, expected: &str) -> bool {
        let short = fill.unwrap().millilitres().minus(millilitres(expected).millilitres()).unwrap();
        short.abs() < Exact::new(1, 6)
    }

    #[test]
    fn what_a_price_leaves_for_goods() {
        // R = 8.8 / 1.1 = 8; half of it may go on goods; a fifth is thrown away, so 3.20 a drink;
        // bottle and treatment fee take 0.70; of the 2.50 the shot takes 1.00; 1.50 buy 375 mL of base.
        let (ceiling, fill) = back(&bar(CostBasis::Goods, |_| ()), "8.8");
        let expected = Ceiling { without_tax: money("8"), cost: money("4"), ingredients: money("2.50") };
        assert_eq!(ceiling, expected);
        assert!(just_at(fill, "475"), "{fill:?}");
    }

    #[test]
    fn a_container_takes_no_more_than_it_holds() {
        // At 11.00 goods may cost 5.00, enough for 675 mL; the bottle takes 500.
        assert_eq!(back(&bar(CostBasis::Goods, |_| ()), "11").1, Some(millilitres("500")));
    }

    #[test]
    fn labour_is_by_the_litre() {
        // As above, and 0.5 L take 20 s, 0.20: 2.30 for ingredients as it is. A millilitre of
        // base costs 0.004 and 0.0004 of time; 3.20 - 0.70 - 1.00 - 100 * 0.0004 = 1.46 buy
        // 1.46 / 0.0044 = 331.818181818182 mL of base.
        let (ceiling, fill) = back(&bar(CostBasis::GoodsAndLabour, |_| ()), "8.8");
        assert_eq!(ceiling.ingredients, money("2.30"));
        assert!(just_at(fill, "431.818181818182"), "{fill:?}");
    }

    #[test]
    fn everything_takes_fees_and_overhead_too() {
        // 10 * (1 - 0.5 - 0.05 - 0.02 * 1.1) - 0.10 = 4.18; * 0.8 - 0.70 - 0.20 - 0.30 = 2.144.
        let (ceiling, _) = back(&bar(CostBasis::Everything, |_| ()), "11");
        assert_eq!((ceiling.cost, ceiling.ingredients), (money("4.18"), money("2.144")));
    }

    #[test]
    fn what_is_not_paid_comes_off_and_overhead_on_drinks_sold_goes_first() {
        // By hand: 9.00 of 10.00 are paid; 9 * 0.428 - 0.10 = 3.752. Less 0.30 of overhead, 3.452 for a drink
        // sold; half is handed out free and a fifth thrown away: 1.3808 for one made, less 0.90 for the rest.
        let (mut book, _) = bar(CostBasis::Everything, |_| ());
        let reductions = Reductions { discounts: share("0.1"), free: share("0.5"), ..Reductions::default() };
        let settings = Settings { reductions, overhead_per: OverheadPer::DrinkSold, ..book.settings().clone() };
        book.apply(&crate::book::Edit::Put(Record::Settings(Box::new(settings)))).unwrap();
        let priced = price_offer(&book, &offer(1, 1, None)).unwrap();
        let (ceiling, fill) = back(&(book, priced), "11");
        assert_eq!((ceiling.cost, ceiling.ingredients), (money("3.752"), money("0.4808")));
        assert_eq!(fill, None, "the shot alone costs 1.00");
    }

    #[test]
    fn a_low_price_buys_no_drink() {
        // R = 4: 4 * 0.5 * 0.8 - 0.70 = 0.90, less than the shot's 1.00.
        let (ceiling, fill) = back(&bar(CostBasis::Goods, |_| ()), "4.4");
        assert_eq!((ceiling.ingredients, fill), (money("0.90"), None));
    }

    #[test]
    fn fixed_lines_alone_are_all_or_nothing() {
        let fixed = bar(CostBasis::Goods, |drink| {
            for line in &mut drink.lines {
                line.scaling = Scaling::Fixed;
            }
        });
        // They cost 400 * 0.004 + 1.00 = 2.60; R * 0.4 - 0.70 is 2.60 at R = 8.25, 9.075 with tax.
        assert_eq!(back(&fixed, "9.075").1, Some(millilitres("500")));
        assert_eq!(back(&fixed, "9.07").1, None);
    }

    #[test]
    fn a_gap_between_steps_does_not_hide_what_lies_beyond() {
        // A shot of 100 mL for 1.00 and ten steps of 40 mL at 4.00 a litre, 0.16 each: nothing fills what lies
        // between two steps. 2.50 buy nine of them, and 460 mL; 1.96 buy six, to the last digit: R * 0.4 - 0.70.
        let steps = bar(CostBasis::Goods, |drink| drink.lines[0].scaling = Scaling::Stepped(amount("40 mL")));
        let (ceiling, fill) = back(&steps, "8.8");
        assert_eq!((ceiling.ingredients, fill.map(to_a_millionth)), (money("2.50"), Some(exact("460"))));
        let (ceiling, fill) = back(&steps, "7.315");
        assert_eq!((ceiling.ingredients, fill.map(to_a_millionth)), (money("1.96"), Some(exact("340"))));
    }

    fn to_a_millionth(volume: Volume) -> Exact {
        volume.millilitres().rounded(6)
    }

    #[test]
    fn where_more_costs_nothing_the_fill_stays() {
        let free = bar(CostBasis::Goods, |drink| drink.lines[0].ingredient = drink.lines[1].ingredient);
        let (mut book, _) = free;
        let mut given = ingredient(2, [pack(1, "1 L", "0")]);
        given.name = "Invented water".into();
        book.apply(&crate::book::Edit::Put(Record::Ingredient(given))).unwrap();
        let priced = price_offer(&book, &offer(1, 1, None)).unwrap();
        assert_eq!(back(&(book, priced), "11").1, Some(amount("500 mL").volume().unwrap().unwrap()));
    }

    #[test]
    fn the_fixed_lines_alone_are_not_rounded_away() {
        // 10 g at 0.7 g/mL take 14.285714285714.. mL for nothing; the rest costs too much for a
        // thousand-millionth of a millilitre. Rounded, the fixed line would not fit.
        let fixed = crate::book::Line { scaling: Scaling::Fixed, ..line(2, 2, "10 g") };
        let seeds = Ingredient { density: Some(density("0.7")), ..ingredient(2, [pack(1, "1 L", "0")]) };
        let drink = drink(1, "500 mL", [line(1, 1, "1 mL"), fixed]);
        let records = [
            Record::Ingredient(ingredient(1, [pack(1, "1 mL", "900000000")])),
            Record::Ingredient(seeds),
            Record::Container(container(1, "500 mL")),
            Record::Drink(drink.clone()),
        ];
        let book = book(settings(), records);
        let full = millilitres("500");
        let ceiling = Ceiling { without_tax: money("1"), cost: money("0"), ingredients: money("0") };
        let fill = largest_fill(&book, &drink, &container(1, "500 mL"), CostBasis::Goods, full, &ceiling);
        let fill = fill.unwrap().expect("the fixed line is paid for");
        assert!(scale(&book, &drink, fill).is_ok(), "{fill:?}");
    }

    #[test]
    fn a_shops_margin_is_on_its_own_price() {
        // By hand: a shop that keeps 40 % of 10.00 pays 6.00; as a mark-up it would sell at 8.40.
        assert_eq!(shelf_price(money("6"), share("0.4")), Ok(money("10")));
        assert_eq!(our_price(money("10"), share("0.4")), Ok(money("6")));
        assert_eq!(shelf_price(money("6"), Share::WHOLE), Err(Overflow::DivisionByZero));
    }
}
