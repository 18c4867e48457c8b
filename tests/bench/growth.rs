//! Growth: what one price costs in a book ten times as large, and in one with a past.
//!
//! The larger book has as many ingredients a drink and ten times as many ingredients, so that one
//! price moves about as many offers. What is compared is the time for each offer that moved: it
//! stays the same where only what is moved is computed, and grows with whatever is searched.

use brimwright::book::Book;

use crate::figure::{middle_and_least, ratio};
use crate::generated;
use crate::one_price::{Priced, Repriced};

/// How many times as many drinks.
const TIMES: u64 = 10;
/// What one price may cost for each offer that it moves, beside the smaller book.
const GROWTH_BAR: f64 = 1.5;
/// What one price may cost in a book with weeks, scenarios and batches, beside one without.
const PAST_BAR: f64 = 1.1;
/// Rounds through all prices of both books, by turns, so that a busy moment meets both.
const ROUNDS: usize = 6;

/// Prints the growth.
pub fn growth() {
    let drinks = generated::DRINKS * TIMES;
    let (mut small, mut large) = (Priced::of(generated::book()), Priced::of(with_past(drinks)));
    println!(
        "larger book: {drinks} drinks of {} ingredients, {} offers, {} weeks",
        generated::ingredients_of(drinks),
        large.book.offers().count(),
        large.book.weeks().count()
    );
    let (few, many) = by_turns(&mut small, &mut large);
    println!("one pack price moves {:.1} offers on average there, {:.1} here", moved(&many), moved(&few));
    let name = format!("growth: one pack price for each offer moved, {drinks} drinks to {}", generated::DRINKS);
    ratio(&name, each(&many), each(&few), "us", GROWTH_BAR);

    let mut menu = Priced::of(generated::menu(generated::DRINKS));
    let (without, with) = by_turns(&mut menu, &mut small);
    let name = format!("the same with {} weeks, scenarios and batches to without", generated::WEEKS);
    ratio(&name, each(&with), each(&without), "us", PAST_BAR);
}

fn with_past(drinks: u64) -> Book {
    let mut book = generated::menu(drinks);
    generated::past_and_plans(&mut book);
    book
}

/// An even number of rounds of both, so that their prices are as they were.
fn by_turns(one: &mut Priced, other: &mut Priced) -> (Vec<Repriced>, Vec<Repriced>) {
    let rounds = (0..ROUNDS).map(|round| (one.round(round), other.round(round)));
    let (ones, others): (Vec<_>, Vec<_>) = rounds.unzip();
    (ones.concat(), others.concat())
}

fn moved(repriced: &[Repriced]) -> f64 {
    repriced.iter().map(|it| it.moved as f64).sum::<f64>() / repriced.len() as f64
}

/// Microseconds for each offer moved, in the middle and at the least.
fn each(repriced: &[Repriced]) -> (f64, f64) {
    let moving = repriced.iter().filter(|it| it.moved > 0);
    let mut each: Vec<f64> = moving.map(|it| it.time.as_secs_f64() * 1e6 / it.moved as f64).collect();
    middle_and_least(&mut each, f64::total_cmp)
}
