//! What a recipe card says: what to take of each ingredient, in what people can weigh and
//! measure out, and where to fill to. Costs and prices are not asked for, so that a drink can be
//! made while one of its prices is missing, and a card cannot show any.

use super::balance::{Rounding, balance};
use super::steps::{measured, steps_of};
use crate::book::{Book, Drink, Key, LineId, Offer, OfferId, Scaling, Settings};
use crate::drink::fill::{Fill, FillLine, Scaled, ScaledLine, fill, fill_line, scale};
use crate::drink::label::Caution;
use crate::drink::ledger::OfferError;
use crate::foundation::measure::{Amount, Dimension, Exact, Measure, Overflow, System, Unit, Volume, nearest_step};

/// Decimals that an amount is shown to where nothing is rounded to steps.
const SHOWN_PLACES: u32 = 2;
/// The most decimals, for amounts that would else be shown as nothing.
const FINEST_PLACES: u32 = 6;
/// A fiftieth of a drink: what rounding may add or leave out before the card says so. Our own
/// choice, no source.
const MISSED_FROM: Exact = Exact::new(2, 2);

/// The most drinks that a card is for at once.
pub const MOST_DRINKS: u32 = 999;

/// Whether a card can be for so many drinks: a whole number from 1 to [`MOST_DRINKS`].
pub fn is_a_number_of_drinks(number: Exact) -> bool {
    number.rounded(0) == number && number >= Exact::ONE && number <= Exact::from(MOST_DRINKS)
}

/// What a recipe card says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Card {
    /// How full one drink is poured.
    pub fill: Fill,
    /// Where that is, or `None` if no heights of the container are known.
    pub fill_line: Option<FillLine>,
    /// The recipe of one drink.
    pub scaled: Scaled,
    /// What to take, in the order of adding, for all the drinks. What fills up to the line comes last.
    pub take: Vec<Taken>,
    /// What of all that stays in the press or jug.
    pub stays_behind: Volume,
    /// By how much one drink misses its fill with the rounded amounts; above zero it is too much. It is zero
    /// where a top-up takes up the difference.
    pub off: Volume,
    /// What to be careful of.
    pub cautions: Vec<Caution>,
}

impl Card {
    /// By how much one drink misses its fill where that is more than a fiftieth of it.
    pub fn missed(&self) -> Option<Volume> {
        let most = self.fill.volume.times(MISSED_FROM).ok()?;
        Some(self.off).filter(|off| off.millilitres().abs() > most.millilitres())
    }
}

/// What to take of one ingredient.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The line of the recipe, for one drink.
    pub line: ScaledLine,
    /// How much to take, for all the drinks.
    pub amount: Amount,
    /// Whether it is less than a step of the scale or the measuring cup, so that only a finer one shows it.
    pub under_a_step: bool,
}

/// The recipe card for so many drinks of an offer.
///
/// # Errors
/// A [`OfferError`] that names what to mend. What an ingredient costs is not needed.
pub fn card(book: &Book, id: OfferId, drinks: Exact) -> Result<Card, OfferError> {
    let drink = book.drink(id.drink).ok_or(OfferError::Missing(Key::Drink(id.drink)))?;
    let container = book.container(id.container).ok_or(OfferError::Missing(Key::Container(id.container)))?;
    let fill = fill(container)?;
    let mut scaled = scale(book, drink, fill.volume)?;
    scaled.lines.sort_by_key(|line| line.scaling == Scaling::TopUp);
    let sizes = sizes(book, drink);
    let with_air = Exact::ONE.plus(drink.air.fraction())?;
    let mut take = Vec::with_capacity(scaled.lines.len());
    let mut roundings = Vec::with_capacity(scaled.lines.len());
    let mut stays_behind = Volume::ZERO;
    for line in &scaled.lines {
        let written = unit_of(drink, line.line);
        let whole = line.to_use.times(drinks)?;
        let (taken, mut steps) = taken(book.settings(), *line, whole, written, &sizes)?;
        stays_behind = stays_behind.plus(left_in_the_jug(line)?.times(drinks)?)?;
        let space = if line.mixed { line.volume.times(with_air)? } else { line.volume };
        // Doses and pieces stay what they are.
        if !matches!(line.scaling, Scaling::InProportion | Scaling::TopUp) {
            steps.clear();
        }
        let step = steps.first().copied();
        let finer = measured(whole, steps.get(1..).unwrap_or_default())?;
        roundings.push(Rounding { exact: whole, taken: taken.amount, step, finer, space: space.times(drinks)? });
        take.push(taken);
    }
    let tops_up = scaled.lines.iter().position(|line| line.scaling == Scaling::TopUp);
    let more = if let Some(place) = tops_up {
        let unit = scaled.lines.get(place).and_then(|line| unit_of(drink, line.line));
        let round = |line, whole| Ok(taken(book.settings(), line, whole, unit, &sizes)?.0);
        topped_up(&mut roundings, &mut take, place, &round)?
    } else {
        let more = balance(&mut roundings, fill.headspace.times(drinks)?)?;
        for (taken, rounding) in take.iter_mut().zip(&roundings) {
            taken.amount = rounding.taken;
        }
        more
    };
    Ok(Card {
        fill_line: fill_line(container)?,
        off: more.over(drinks)?,
        cautions: Caution::of(book, drink, book.offer(id), Some(&fill)),
        fill,
        scaled,
        take,
        stays_behind,
    })
}

/// The recipe in each size of a drink. One in which it cannot be made has no part in it.
fn sizes(book: &Book, drink: &Drink) -> Vec<Scaled> {
    let size = |offer: &Offer| {
        let container = book.container(offer.container).filter(|_| offer.drink == drink.id)?;
        scale(book, drink, fill(container).ok()?.volume).ok()
    };
    book.offers().filter_map(size).collect()
}

/// The unit that a line is written in.
fn unit_of(drink: &Drink, line: LineId) -> Option<Unit> {
    drink.lines.iter().find(|it| it.id == line).map(|it| it.amount.unit)
}

/// What of a line's amount to use stays in the press or jug.
fn left_in_the_jug(line: &ScaledLine) -> Result<Volume, Overflow> {
    if !line.in_drink.base().is_positive() {
        return Ok(Volume::ZERO);
    }
    line.volume.times(line.to_use.base().over(line.in_drink.base())?.minus(Exact::ONE)?)
}

/// Rounds what the top-up takes last: what the rounded amounts of the others leave. Poured up to the line, it takes
/// up its own rounding too. Returns by how much the others pass the fill line.
fn topped_up(
    roundings: &mut [Rounding],
    take: &mut [Taken],
    place: usize,
    round: &dyn Fn(ScaledLine, Measure) -> Result<Taken, Overflow>,
) -> Result<Volume, Overflow> {
    let others = roundings.iter().enumerate().filter(|(other, _)| *other != place);
    let mut off = Volume::ZERO;
    for (_, rounding) in others {
        off = off.plus(rounding.more()?)?;
    }
    let (Some(rounding), Some(top_up)) = (roundings.get_mut(place), take.get_mut(place)) else { return Ok(off) };
    if !rounding.space.is_positive() {
        return Ok(off);
    }
    let left = rounding.space.minus(off)?.max(Volume::ZERO);
    let whole = rounding.exact.times(left.ratio_to(rounding.space)?)?;
    *top_up = round(top_up.line, whole)?;
    off.minus(rounding.space).map(|over| over.max(Volume::ZERO))
}

/// An amount that can be weighed or measured out, and the steps from the one that it is rounded to down to finer
/// ones.
fn taken(
    settings: &Settings,
    line: ScaledLine,
    whole: Measure,
    written: Option<Unit>,
    sizes: &[Scaled],
) -> Result<(Taken, Vec<Amount>), Overflow> {
    let exact = counter_amount(whole, written, settings.units)?;
    let taken = |amount: Amount, under_a_step: bool| Taken { line, amount, under_a_step };
    if let (Dimension::Count, Scaling::Stepped(step)) = (whole.dimension(), line.scaling) {
        return Ok((taken(nearest_step(whole, step)?.unwrap_or(exact), false), Vec::new()));
    }
    let steps = steps_of(settings, whole.dimension(), written, Amount::new(Exact::new(1, SHOWN_PLACES), exact.unit));
    let coarse = steps.first().copied();
    let steps = in_one_unit(steps, line.line, sizes)?;
    Ok(match measured(whole, &steps)? {
        Some((step, amount)) => {
            let under = match coarse {
                Some(coarse) => step != coarse && !step.unit.is_a_spoon() && whole.base() < coarse.measure()?.base(),
                None => false,
            };
            (taken(amount, under), steps.into_iter().skip_while(|it| *it != step).collect())
        }
        None => (taken(exact, whole.base().is_positive() && coarse.is_some()), Vec::new()),
    })
}

/// The steps from the unit on in which a scale shows every size of a line: 0.2 oz beside 7 g would be read as two
/// kinds of thing.
fn in_one_unit(steps: Vec<Amount>, line: LineId, sizes: &[Scaled]) -> Result<Vec<Amount>, Overflow> {
    let mut from = 0;
    for size in sizes.iter().flat_map(|size| &size.lines).filter(|it| it.line == line) {
        let weighed = size.to_use.dimension() == Dimension::Mass;
        let Some((step, _)) = measured(size.to_use, &steps)?.filter(|_| weighed) else { continue };
        from = from.max(steps.iter().position(|it| it.unit == step.unit).unwrap_or_default());
    }
    Ok(steps.into_iter().skip(from).collect())
}

/// An amount to use at the counter: in the unit that the recipe is written in where people of
/// `system` measure in it, else in the system's own; to a hundredth, and finer where that would
/// be nothing.
///
/// # Errors
/// [`Overflow`].
pub fn counter_amount(measure: Measure, written: Option<Unit>, system: System) -> Result<Amount, Overflow> {
    let own = match measure.dimension() {
        Dimension::Volume => system.drink_unit(),
        Dimension::Mass => system.weight_unit(),
        Dimension::Count => Unit::Piece,
    };
    let familiar = written.filter(|unit| unit.belongs_to(system) && unit.dimension() == measure.dimension());
    let unit = familiar.unwrap_or(own);
    let number = measure.base().over(unit.size())?;
    let shown = (SHOWN_PLACES..=FINEST_PLACES).map(|places| number.rounded(places)).find(|it| it.is_positive());
    Ok(Amount::new(shown.unwrap_or(number), unit))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Edit, Headspace, Ingredient, Line, Record};
    use crate::drink::fill::ScaleError;
    use crate::support::{
        amount, book, container, container_id, drink, drink_id, exact, grams, ingredient, line, measure, millilitres,
        offer, offer_id, settings, share,
    };

    /// 100 mL of syrup and 400 mL of juice, none of which has a pack, in a bottle of 500 mL less
    /// a tenth. Of what is made 4 % stays in the jug.
    fn bar(settings: Settings, lines: impl IntoIterator<Item = Line>) -> Book {
        let bottle = Container { headspace: Headspace::Share(share("0.1")), ..container(1, "500 mL") };
        let lemonade = Drink { process_loss: share("0.04"), ..drink(1, "500 mL", lines) };
        let records = [
            Record::Ingredient(ingredient(1, [])),
            Record::Ingredient(ingredient(2, [])),
            Record::Container(bottle),
            Record::Drink(lemonade),
            Record::Offer(offer(1, 1, None)),
        ];
        book(settings, records)
    }

    fn lemonade() -> [Line; 2] {
        [line(1, 2, "100 mL"), line(2, 1, "400 mL")]
    }

    fn metric(scale: Option<&str>, jug: Option<&str>) -> Settings {
        Settings { units: System::Metric, scale_step: scale.map(amount), jug_step: jug.map(amount), ..settings() }
    }

    fn taken(book: &Book, drinks: &str) -> Vec<String> {
        let card = card(book, offer_id(1, 1), exact(drinks)).unwrap();
        card.take.iter().map(|taken| taken.amount.to_string()).collect()
    }

    #[test]
    fn a_card_needs_no_costs() {
        // By hand: 450 mL hold 90 and 360 mL; 0.96 of what is used is in the drink.
        let book = bar(metric(None, None), lemonade());
        let card = card(&book, offer_id(1, 1), Exact::ONE).unwrap();
        assert_eq!(card.fill.volume, millilitres("450"));
        assert_eq!((card.fill_line, card.off), (None, Volume::ZERO));
        assert_eq!(taken(&book, "1"), ["93.75 mL", "375 mL"]);
        assert_eq!(taken(&book, "3"), ["281.25 mL", "1125 mL"]);
    }

    #[test]
    fn several_drinks_are_rounded_together() {
        // By hand: 93.75 and 375 mL each, 281.25 and 1125 mL for three, in steps of 50 mL of which 48 are in a drink.
        let book = bar(metric(None, Some("50 mL")), lemonade());
        // 6.25 and 25 mL too much are 30 in the drink, more than half a step: the juice takes a step less, since that
        // changes it least, and 18 are missing.
        assert_eq!(taken(&book, "1"), ["100 mL", "350 mL"]);
        let one = card(&book, offer_id(1, 1), Exact::ONE).unwrap();
        assert_eq!(one.missed().map(Volume::as_part), Some(millilitres("-18")));
        // 18.75 and 25 mL too much are 42; a step less of juice leaves 6 too few, 2 of each drink.
        assert_eq!(taken(&book, "3"), ["300 mL", "1100 mL"]);
        let ten = card(&book, offer_id(1, 1), exact("10")).unwrap();
        // 937.5 and 3750 mL: 950 and 3750.
        assert_eq!((taken(&book, "10"), ten.missed()), (vec!["950 mL".into(), "3750 mL".into()], None));
        // 12.5 mL too much are 12 in the drinks, 1.2 in each.
        assert_eq!(ten.off.as_part(), millilitres("1.2"));
    }

    #[test]
    fn amounts_stay_below_the_brim() {
        // By hand: a bottle without headspace takes 104.17 and 416.67 mL. 100 and 425 mL in steps of 25 are 504 in the
        // drink: nearer than half a step, but over the brim. 400 are too few by 20, so the juice is measured to 5 mL.
        let mut book = bar(metric(None, Some("25 mL")), lemonade());
        let full = Container { headspace: Headspace::Share(share("0")), ..container(1, "500 mL") };
        book.apply(&Edit::Put(Record::Container(full))).unwrap();
        assert_eq!(taken(&book, "1"), ["100 mL", "415 mL"]);
    }

    #[test]
    fn few_steps_are_measured_finer_before_they_are_tasted() {
        // By hand: 58.59 mL of each of eight lines. In steps of 55 they miss the line by 8 * 3.59 * 0.96 = 27.6 mL, more
        // than half of the 52.8 of a step; a step more would nearly double a line. One that is measured to 5 mL does.
        let lines = (1..=8).map(|id| line(id, 1, "50 mL"));
        let finer = taken(&bar(metric(None, Some("55 mL")), lines), "1");
        assert_eq!(finer.iter().filter(|amount| *amount == "55 mL").count(), 7);
        assert_eq!(finer.iter().filter(|amount| *amount == "60 mL").count(), 1);
    }

    #[test]
    fn what_a_step_would_move_far_is_measured_finer() {
        // By hand: 93.75 mL are a third less than a step of 125; 95 mL are 1.3 % more. 375 mL are three steps.
        assert_eq!(taken(&bar(metric(None, Some("125 mL")), lemonade()), "1"), ["95 mL", "375 mL"]);
        // Less than half a step of 200 mL; 375 mL are 6.7 % less than two.
        let card = card(&bar(metric(None, Some("200 mL")), lemonade()), offer_id(1, 1), Exact::ONE).unwrap();
        let shown: Vec<_> = card.take.iter().map(|it| (it.amount.to_string(), it.under_a_step)).collect();
        assert_eq!(shown, [("95 mL".into(), true), ("400 mL".into(), false)]);
    }

    #[test]
    fn a_top_up_takes_what_rounding_leaves() {
        let [syrup, juice] = lemonade();
        let lines = [Line { scaling: Scaling::TopUp, ..juice }, syrup];
        let book = bar(metric(None, Some("50 mL")), lines);
        let card = card(&book, offer_id(1, 1), Exact::ONE).unwrap();
        assert_eq!(card.off, Volume::ZERO);
        // By hand: 93.75 mL of syrup are taken as 100, 6 more in the drink; 375 mL of juice less 6.25 are 368.75, to
        // 350; the line takes the rest. For ten, 937.5 mL are taken as 950, and 3750 less 12.5 to 3750.
        assert_eq!(taken(&book, "1"), ["100 mL", "350 mL"]);
        assert_eq!(taken(&book, "10"), ["950 mL", "3750 mL"]);
        let lines = [line(1, 2, "110 g"), Line { scaling: Scaling::TopUp, ..line(2, 1, "390 mL") }];
        // 103.125 g are taken as 105; the 1.875 mL too much leave 365.625 - 1.875 = 363.75 mL.
        assert_eq!(taken(&bar(metric(Some("5 g"), Some("1 mL")), lines), "1"), ["105 g", "364 mL"]);
        // What fills up to the line is poured last, also where it is written first.
        let poured: Vec<_> = card.take.iter().map(|it| it.line.scaling).collect();
        assert_eq!(poured, [Scaling::InProportion, Scaling::TopUp]);
        assert_eq!(card.scaled.lines.last().map(|it| it.scaling), Some(Scaling::TopUp));
    }

    #[test]
    fn what_stays_in_the_jug_is_said() {
        // By hand: 450 mL are 0.96 of 468.75; 18.75 stay behind, of three drinks 56.25.
        let book = bar(metric(None, None), lemonade());
        let left = |drinks| card(&book, offer_id(1, 1), exact(drinks)).unwrap().stays_behind.as_part();
        assert_eq!((left("1"), left("3")), (millilitres("18.75"), millilitres("56.25")));
    }

    #[test]
    fn every_size_of_a_line_is_weighed_in_one_unit() {
        // By hand: 14.17 g and 485 mL are 499.17; of 450 mL, at 0.96, 13.31 g or 0.4695 oz, and of 108 mL 3.194 g or
        // 0.1127 oz: 0.1 oz would be 11 % less, so it is 3 g there. Then the large one is weighed in grams too.
        let settings = Settings { units: System::UsCustomary, scale_step: Some(amount("0.1 oz")), ..settings() };
        let mut book = bar(settings, [line(1, 2, "0.5 oz"), line(2, 1, "485 mL")]);
        let small = Container { headspace: Headspace::Share(share("0.1")), ..container(2, "120 mL") };
        book.apply(&Edit::Put(Record::Container(small))).unwrap();
        assert_eq!(taken(&book, "1").first().map(String::as_str), Some("0.5 oz"));
        book.apply(&Edit::Put(Record::Offer(offer(1, 2, None)))).unwrap();
        let large = taken(&book, "1");
        let small = card(&book, offer_id(1, 2), Exact::ONE).unwrap().take;
        assert_eq!((large.first().map(String::as_str), small[0].amount.to_string()), (Some("13 g"), "3 g".into()));
        // More than a step of the scale; a quarter of that bottle's is less.
        assert!(!small[0].under_a_step);
        let tiny = Container { headspace: Headspace::Share(share("0.1")), ..container(2, "30 mL") };
        book.apply(&Edit::Put(Record::Container(tiny))).unwrap();
        assert!(card(&book, offer_id(1, 2), Exact::ONE).unwrap().take[0].under_a_step);
    }

    #[test]
    fn spoons_and_weights_are_not_measured_in_jugs() {
        // By hand, at 0.9 / 0.96 of the recipe.
        let lines = [line(1, 2, "4 metric tbsp"), line(2, 1, "440 g")];
        assert_eq!(taken(&bar(metric(None, Some("50 mL")), lines), "1"), ["3.75 metric tbsp", "412.5 g"]);
        let lines = [line(1, 2, "4 metric tbsp"), line(2, 1, "440 g")];
        assert_eq!(taken(&bar(metric(Some("5 g"), None), lines), "1"), ["3.75 metric tbsp", "415 g"]);
    }

    #[test]
    fn pieces_are_taken_in_the_steps_of_their_line() {
        let pieces = Ingredient { piece_weight: Some(grams("100")), ..ingredient(2, []) };
        let half = Line { scaling: Scaling::Stepped(amount("0.5 ea")), ..line(1, 2, "1 ea") };
        let mut book = bar(metric(Some("5 g"), None), [line(2, 1, "400 mL")]);
        book.apply(&Edit::Put(Record::Ingredient(pieces))).unwrap();
        let recipe = Drink { process_loss: share("0.04"), ..drink(1, "500 mL", [half, line(2, 1, "400 mL")]) };
        book.apply(&Edit::Put(Record::Drink(recipe))).unwrap();
        // One piece, 1.04 of it with what stays in the jug.
        assert_eq!(taken(&book, "1").first().map(String::as_str), Some("1 ea"));
        assert_eq!(taken(&book, "4").first().map(String::as_str), Some("4 ea"));
    }

    #[test]
    fn small_amounts_are_never_shown_as_nothing() {
        // By hand.
        for (taken, written, system, shown) in [
            ("0.003 oz", Unit::Ounce, System::UsCustomary, "0.003 oz"),
            ("0.3333 oz", Unit::Ounce, System::UsCustomary, "0.33 oz"),
            ("9.43931 g", Unit::Gram, System::UsCustomary, "0.33 oz"),
            ("87.654 mL", Unit::UsFluidOunce, System::Metric, "87.65 mL"),
            ("10 mL", Unit::MetricTeaspoon, System::Metric, "2 metric tsp"),
            ("0 g", Unit::Gram, System::Metric, "0 g"),
            ("1.5 ea", Unit::Piece, System::Metric, "1.5 ea"),
        ] {
            assert_eq!(counter_amount(measure(taken), Some(written), system), Ok(amount(shown)), "{taken}");
        }
        assert_eq!(counter_amount(measure("50 g"), None, System::Metric), Ok(amount("50 g")));
    }

    #[test]
    fn a_card_says_why_there_is_none() {
        let mut book = bar(metric(None, None), lemonade());
        book.apply(&Edit::Put(Record::Drink(drink(1, "500 mL", [])))).unwrap();
        let stuck = card(&book, offer_id(1, 1), Exact::ONE);
        assert_eq!(stuck, Err(OfferError::Scale(ScaleError::NoLines(drink_id(1)))));
        let gone = card(&book, offer_id(1, 2), Exact::ONE);
        assert_eq!(gone, Err(OfferError::Missing(Key::Container(container_id(2)))));
    }

    #[test]
    fn drinks_are_whole() {
        for (number, holds) in [("1", true), ("999", true), ("0", false), ("2.5", false), ("1000", false)] {
            assert_eq!(is_a_number_of_drinks(exact(number)), holds, "{number}");
        }
    }
}
