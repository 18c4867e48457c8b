//! The levers that close a gap: their names, where they stand, and what to do.
//!
//! Where a lever closes is shown rounded to the side that keeps the target: whoever does what
//! stands here is not short of it by a digit that is not shown.

use super::Speaker;
use crate::book::{Book, Edit, Key};
use crate::drink::gap::{Closing, Figure, Lever, Way, WhyNot};
use crate::foundation::measure::{Exact, Share, Time, Unit};
use crate::say;

/// The name of a lever.
pub fn lever(lever: Lever, book: &Book) -> String {
    let name = |id| book.name(Key::Ingredient(id));
    match lever {
        Lever::MenuPrice(_) => say!(drinks::menu_price).to_string(),
        Lever::Fill(_) => say!(common::fill).to_string(),
        Lever::PackPrice(goods) => say!(drinks::case_price_of, name = book.name(Key::from(goods))),
        Lever::TrimYield(id) => say!(drinks::trim_yield_of, name = name(id)),
        Lever::PressYield(id) => say!(drinks::juice_yield_of, name = name(id)),
        Lever::SoakYield(id) => say!(drinks::soaked_or_brewed_weight_of, name = name(id)),
        Lever::ContainerSet(_) => say!(common::packaging).to_string(),
        Lever::Unsold(_) => say!(drinks::waste).to_string(),
        Lever::HandsTime(_) => say!(drinks::labor_per_drink).to_string(),
    }
}

/// The change to where a lever closes, such as "−12.9 %", or why it does not.
pub fn lever_change(way: &Way, speaker: &Speaker) -> String {
    match &way.closes {
        Ok(closing) => {
            let change = way.change().unwrap_or(closing.change);
            let sign = if change.is_negative() { "" } else { "+" };
            format!("{sign}{}", percent(change, away(closing), speaker))
        }
        Err(WhyNot::CannotCloseAlone) => say!(drinks::not_enough_alone).to_string(),
        Err(WhyNot::DoesNotCount) => say!(drinks::not_in_margin).to_string(),
    }
}

/// What to do: "Buy Apples at $33.10 a case instead of $38.00." Returns an empty text if it would
/// not do.
pub fn lever_advice(way: &Way, book: &Book, speaker: &Speaker) -> String {
    let Ok(closing) = &way.closes else { return String::new() };
    let now = shown(way.lever, way.now, nearest, book, speaker);
    let at = at(way.lever, closing, book, speaker);
    let name = |id| book.name(Key::Ingredient(id));
    let advice = match way.lever {
        Lever::MenuPrice(_) => say!(drinks::charge_instead, price = at, now = now),
        Lever::Fill(_) => say!(drinks::fill_instead, fill = at, now = now),
        Lever::PackPrice(goods) => {
            say!(drinks::pay_instead, name = book.name(Key::from(goods)), price = at, now = now)
        }
        Lever::TrimYield(id) => say!(drinks::trim_instead, name = name(id), share = at, now = now),
        Lever::PressYield(id) => say!(drinks::press_instead, name = name(id), share = at, now = now),
        Lever::SoakYield(id) => say!(drinks::soak_instead, name = name(id), share = at, now = now),
        Lever::ContainerSet(_) => say!(drinks::packaging_instead, price = at, now = now),
        Lever::Unsold(_) => say!(drinks::waste_instead, share = at, now = now),
        Lever::HandsTime(_) => say!(drinks::labor_instead, time = at, now = now),
    };
    let said = [advice, changes_too(way.lever, closing), label_first(way, book, speaker)];
    said.iter().filter(|said| !said.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" ")
}

/// What the button says that sets a lever to where it closes. Returns `None` for one that is not the
/// owner's to set.
pub fn lever_set(way: &Way, book: &Book, speaker: &Speaker) -> Option<String> {
    let closing = way.closes.as_ref().ok()?;
    closing.edit.as_ref()?;
    let at = at(way.lever, closing, book, speaker);
    match way.lever {
        Lever::MenuPrice(_) => Some(say!(drinks::set_price, price = at)),
        Lever::Fill(_) => Some(say!(labels::set_fill, fill = at)),
        Lever::Unsold(_) => Some(say!(drinks::set_waste, share = at)),
        Lever::HandsTime(_) => Some(say!(drinks::set_labor, time = at)),
        Lever::PackPrice(_)
        | Lever::TrimYield(_)
        | Lever::PressYield(_)
        | Lever::SoakYield(_)
        | Lever::ContainerSet(_) => None,
    }
}

/// Where a lever closes; a price at its ending.
fn at(lever: Lever, closing: &Closing, book: &Book, speaker: &Speaker) -> String {
    match closing.edit {
        Some(Edit::SetPrice { price: Some(price), .. }) => speaker.money(price),
        _ => shown(lever, closing.at, away(closing), book, speaker),
    }
}

/// What else moves with it.
fn changes_too(lever: Lever, closing: &Closing) -> String {
    match (lever, closing.moves_too) {
        (_, 0) => String::new(),
        (Lever::Fill(_), drinks) => say!(drinks::changes_drinks, drinks = drinks),
        (Lever::Unsold(_) | Lever::HandsTime(_), sizes) => say!(drinks::changes_sizes, sizes = sizes),
        _ => String::new(),
    }
}

/// A caution where a fill would be less than what the menu or label says.
fn label_first(way: &Way, book: &Book, speaker: &Speaker) -> String {
    let said = |declared| say!(drinks::label_first, declared = speaker.volume(declared));
    way.under_declared(book).map(said).unwrap_or_default()
}

/// The rounding that goes on in the direction of the change.
fn away(closing: &Closing) -> fn(Exact) -> Exact {
    if closing.change.is_negative() { Exact::floor } else { Exact::ceiling }
}

fn nearest(number: Exact) -> Exact {
    number.rounded(0)
}

fn shown(lever: Lever, figure: Figure, round: fn(Exact) -> Exact, book: &Book, speaker: &Speaker) -> String {
    let settings = book.settings();
    match figure {
        Figure::Money(amount) => {
            // What one drink's container costs is small money.
            let more = u32::from(matches!(lever, Lever::ContainerSet(_)));
            let digits = settings.currency.digits().saturating_add(more);
            speaker.money_of(in_steps(amount.major(), digits, round), digits)
        }
        Figure::Volume(volume) => {
            let unit = settings.units.drink_unit();
            let places = if unit == Unit::Millilitre { 0 } else { 1 };
            let number = volume.millilitres().over(unit.size()).unwrap_or_default();
            speaker.with_unit(in_steps(number, places, round), places, unit.symbol())
        }
        Figure::Share(share) => percent(share, round, speaker),
        Figure::Time(time) => speaker.time(Time::from_seconds(in_steps(time.seconds(), 1, round))),
    }
}

fn percent(share: Share, round: fn(Exact) -> Exact, speaker: &Speaker) -> String {
    speaker.percentage(in_steps(share.percent().unwrap_or_default(), 1, round), 1)
}

/// Rounded at so many decimals.
fn in_steps(number: Exact, places: u32, round: fn(Exact) -> Exact) -> Exact {
    let step = Exact::new(1, places);
    let rounded = || round(number.over(step)?).times(step);
    rounded().unwrap_or(number)
}
