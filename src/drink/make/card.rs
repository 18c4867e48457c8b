//! What a recipe card says: what to take of each ingredient, in what people can weigh and
//! measure out, and where to fill to. Costs and prices are not asked for, so that a drink can be
//! made while one of its prices is missing, and a card cannot show any.

use crate::book::{Book, IcePlace, Key, OfferId, Scaling, Settings};
use crate::drink::fill::{Fill, FillLine, Scaled, ScaledLine, fill, fill_line, scale};
use crate::drink::label::Caution;
use crate::drink::ledger::OfferError;
use crate::foundation::measure::{Amount, Dimension, Exact, Measure, Overflow, System, Unit, Volume, nearest_step};

/// Decimals that an amount is shown to where nothing is rounded to steps.
const SHOWN_PLACES: u32 = 2;
/// The most decimals, for amounts that would else be shown as nothing.
const FINEST_PLACES: u32 = 6;
/// A tenth of an amount: what rounding may move before the card says the exact amount too. Our
/// own choice, no source.
const SAID_FROM: Exact = Exact::new(1, 1);
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
    /// What to take, in the order of adding, for all the drinks.
    pub take: Vec<Taken>,
    /// By how much one drink misses its fill with the rounded amounts; above zero it is too much.
    /// It is `None` if that is too little to be seen, or if a top-up takes up the difference.
    pub missed: Option<Volume>,
    /// What to be careful of.
    pub cautions: Vec<Caution>,
}

/// What to take of one ingredient.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The line of the recipe, for one drink.
    pub line: ScaledLine,
    /// How much to take, for all the drinks.
    pub amount: Amount,
    /// The amount before rounding to steps, if that moves it by more than a tenth.
    pub exactly: Option<Amount>,
    /// Whether it is less than scale or jug can show, so that it is not rounded to their steps.
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
    let scaled = scale(book, drink, fill.volume)?;
    let with_air = Exact::ONE.plus(drink.air.fraction())?;
    let mut take = Vec::with_capacity(scaled.lines.len());
    let mut more = Volume::ZERO;
    for line in &scaled.lines {
        let written = drink.lines.iter().find(|it| it.id == line.line).map(|it| it.amount.unit);
        let whole = line.to_use.times(drinks)?;
        let taken = taken(book.settings(), *line, whole, written)?;
        if whole.base().is_positive() {
            let by = taken.amount.measure()?.base().over(whole.base())?.minus(Exact::ONE)?;
            let mixed = line.ice.is_none_or(|ice| ice.place == IcePlace::BlendedIn);
            let space = if mixed { line.volume.times(with_air)? } else { line.volume };
            more = more.plus(space.times(by)?)?;
        }
        take.push(taken);
    }
    let tops_up = scaled.lines.iter().any(|line| line.scaling == Scaling::TopUp);
    let seen = more.millilitres().abs() > fill.volume.times(MISSED_FROM)?.millilitres();
    Ok(Card {
        fill_line: fill_line(container)?,
        missed: Some(more).filter(|_| seen && !tops_up),
        cautions: Caution::of(book, drink, book.offer(id), Some(&fill)),
        fill,
        scaled,
        take,
    })
}

fn taken(settings: &Settings, line: ScaledLine, whole: Measure, written: Option<Unit>) -> Result<Taken, Overflow> {
    let exact = counter_amount(whole, written, settings.units)?;
    let mut taken = Taken { line, amount: exact, exactly: None, under_a_step: false };
    let Some(step) = step_of(settings, &line, written) else { return Ok(taken) };
    match nearest_step(whole, step)? {
        Some(amount) => {
            let off = amount.measure()?.base().over(whole.base())?.minus(Exact::ONE)?.abs();
            taken.amount = amount;
            taken.exactly = Some(exact).filter(|_| off > SAID_FROM);
        }
        None => taken.under_a_step = whole.base().is_positive(),
    }
    Ok(taken)
}

/// What an ingredient is weighed or measured out in: pieces in the steps of their line, what is
/// written in spoons by the spoon, all else in the steps of the book's scale or jugs.
fn step_of(settings: &Settings, line: &ScaledLine, written: Option<Unit>) -> Option<Amount> {
    match (line.to_use.dimension(), line.scaling) {
        (Dimension::Count, Scaling::Stepped(step)) => Some(step),
        (Dimension::Count, _) => None,
        (Dimension::Mass, _) => settings.scale_step,
        (Dimension::Volume, _) => settings.jug_step.filter(|_| !written.is_some_and(Unit::is_a_spoon)),
    }
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
    use crate::book::{Container, Drink, Edit, Headspace, Ingredient, Line, Record};
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
        assert_eq!((card.fill_line, card.missed), (None, None));
        assert_eq!(taken(&book, "1"), ["93.75 mL", "375 mL"]);
        assert_eq!(taken(&book, "3"), ["281.25 mL", "1125 mL"]);
    }

    #[test]
    fn several_drinks_are_rounded_together() {
        // By hand: 93.75 and 375 mL each, 281.25 and 1125 mL for three, in steps of 50 mL.
        let book = bar(metric(None, Some("50 mL")), lemonade());
        assert_eq!(taken(&book, "1"), ["100 mL", "400 mL"]);
        assert_eq!(taken(&book, "3"), ["300 mL", "1150 mL"]);
        let one = card(&book, offer_id(1, 1), Exact::ONE).unwrap();
        // 6.25 and 25 mL too much of which 0.96 are in the drink, that is 30 of 450 mL.
        assert_eq!(one.missed.map(Volume::as_part), Some(millilitres("30")));
        assert_eq!(one.take.iter().filter_map(|it| it.exactly).next(), None, "6.7 % off is not said");
        let ten = card(&book, offer_id(1, 1), exact("10")).unwrap();
        // 937.5 and 3750 mL: 950 and 3750.
        assert_eq!((taken(&book, "10"), ten.missed), (vec!["950 mL".into(), "3750 mL".into()], None));
    }

    #[test]
    fn what_is_rounded_far_is_said_exactly() {
        // By hand: 93.75 mL to 125, a third more; 375 mL are three steps.
        let book = bar(metric(None, Some("125 mL")), lemonade());
        let card = card(&book, offer_id(1, 1), Exact::ONE).unwrap();
        let exactly: Vec<_> = card.take.iter().map(|it| it.exactly).collect();
        assert_eq!(exactly, [Some(amount("93.75 mL")), None]);
    }

    #[test]
    fn less_than_half_a_step_is_not_rounded() {
        let book = bar(metric(None, Some("200 mL")), lemonade());
        let card = card(&book, offer_id(1, 1), Exact::ONE).unwrap();
        assert_eq!(taken(&book, "1"), ["93.75 mL", "400 mL"]);
        let under: Vec<_> = card.take.iter().map(|it| it.under_a_step).collect();
        assert_eq!(under, [true, false]);
    }

    #[test]
    fn a_top_up_takes_what_rounding_leaves() {
        let [syrup, juice] = lemonade();
        let lines = [syrup, Line { scaling: Scaling::TopUp, ..juice }];
        let card = card(&bar(metric(None, Some("50 mL")), lines), offer_id(1, 1), Exact::ONE).unwrap();
        assert_eq!(card.missed, None);
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
