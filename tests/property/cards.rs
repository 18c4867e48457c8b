//! Recipe cards of generated recipes: rounded amounts that fill the drink to its line all the same.

use brimwright::book::{Drink, Headspace, Line, Record, Scaling, Settings};
use brimwright::drink::make::{Card, card};
use brimwright::foundation::measure::{Amount, Exact, Share, System, Unit, Volume};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;

use crate::near;
use crate::support::{amount, book, container, drink, exact, ingredient, line, offer, offer_id, settings};

/// A recipe, what of it stays in the jug, the headspace of its bottle, and for how many.
#[derive(Clone, Debug)]
struct Recipe {
    lines: Vec<Amount>,
    loss: Share,
    headspace: Share,
    drinks: Exact,
}

fn recipe() -> impl Strategy<Value = Recipe> {
    let hundredths = |most: i64| (0..=most).prop_map(|part| Share::from_fraction(Exact::new(part, 2)));
    let line = (2..900_i64, select(vec![Unit::UsFluidOunce, Unit::Ounce]))
        .prop_map(|(hundredths, unit)| Amount::new(Exact::new(hundredths, 2), unit));
    (vec(line, 1..=8), hundredths(10), hundredths(8), 1..=12_u32).prop_map(|(lines, loss, headspace, drinks)| Recipe {
        lines,
        loss,
        headspace,
        drinks: Exact::from(drinks),
    })
}

/// Its card, in a bottle of 16 fl oz, with a scale that shows a tenth of an ounce and a cup that shows a quarter
/// of a fluid ounce. All is as dense as water.
fn made(recipe: &Recipe) -> Card {
    let lines = (1..).zip(&recipe.lines).map(|(id, amount)| line(id, 1, &amount.to_string()));
    card_of(recipe, lines.collect())
}

/// The same where the last line tops up.
fn topped_up(recipe: &Recipe) -> Card {
    let mut lines: Vec<Line> = (1..).zip(&recipe.lines).map(|(id, amount)| line(id, 1, &amount.to_string())).collect();
    let last = lines.last_mut().unwrap();
    last.scaling = Scaling::TopUp;
    card_of(recipe, lines)
}

fn card_of(recipe: &Recipe, lines: Vec<Line>) -> Card {
    let bottle =
        brimwright::book::Container { headspace: Headspace::Share(recipe.headspace), ..container(1, "16 fl oz") };
    let records = [
        Record::Ingredient(ingredient(1, [])),
        Record::Container(bottle),
        Record::Drink(Drink { process_loss: recipe.loss, ..drink(1, "16 fl oz", lines) }),
        Record::Offer(offer(1, 1, None)),
    ];
    let steps = Settings {
        units: System::UsCustomary,
        scale_step: Some(amount("0.1 oz")),
        jug_step: Some(amount("0.25 fl oz")),
        ..settings()
    };
    card(&book(steps, records), offer_id(1, 1), recipe.drinks).unwrap()
}

/// What the card's amounts fill, beyond the fill line of all its drinks, in milliliters: a gram is one.
fn beyond(card: &Card, recipe: &Recipe) -> Exact {
    let kept = recipe.loss.rest().unwrap().fraction();
    let base = |amount: &Amount| amount.measure().unwrap().base().times(kept).unwrap();
    let sum = card.take.iter().fold(Exact::ZERO, |sum, taken| sum.plus(base(&taken.amount)).unwrap());
    sum.minus(all(card.fill.volume, recipe)).unwrap()
}

fn all(volume: Volume, recipe: &Recipe) -> Exact {
    volume.times(recipe.drinks).unwrap().millilitres()
}

/// A quarter of a US fluid ounce, in milliliters.
const STEP: &str = "7.393382390625";
/// What divisions leave.
const LEFT: &str = "0.000001";

proptest! {
    #[test]
    fn rounded_lines_still_make_the_fill_line(recipe in recipe()) {
        let card = made(&recipe);
        let beyond = beyond(&card, &recipe);
        let half = exact(STEP).over(exact("2")).unwrap().plus(exact(LEFT)).unwrap();
        let room = all(card.fill.headspace, &recipe).plus(exact(LEFT)).unwrap();
        prop_assert!(beyond <= half && beyond <= room, "{beyond} mL past the line, {room} mL to the brim");
        // Where the brim is nearer than half a step, less is taken, but by no more than a step.
        let least = if room < half { exact(STEP) } else { half };
        prop_assert!(beyond >= least.negated(), "{beyond} mL under the line");
    }

    /// What tops up is rounded last, so that all together miss the line by its own rounding at most.
    #[test]
    fn a_top_up_makes_up_for_what_the_others_are_rounded_by(recipe in recipe()) {
        let card = topped_up(&recipe);
        let top_up = card.take.iter().find(|taken| taken.line.scaling == Scaling::TopUp).unwrap();
        let beyond = beyond(&card, &recipe);
        let half = exact(STEP).over(exact("2")).unwrap().plus(exact(LEFT)).unwrap();
        let is_near = beyond.abs() <= half;
        // Or the others alone are rounded past the line.
        prop_assert!(is_near || (top_up.amount.number.is_zero() && beyond.is_positive()), "{beyond} mL off");
    }

    #[test]
    fn no_line_is_rounded_to_a_multiple(recipe in recipe()) {
        let card = made(&recipe);
        for taken in &card.take {
            let whole = taken.line.to_use.times(recipe.drinks).unwrap().base();
            let by = taken.amount.measure().unwrap().base().over(whole).unwrap();
            prop_assert!(near(by, Exact::ONE, "0.25"), "{} times {whole}", by);
        }
    }
}
