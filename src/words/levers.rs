//! The levers that close a gap: their names, where they stand, and what to do.
//!
//! Where a lever closes is shown rounded to the side that keeps the target: whoever does what
//! stands here is not short of it by a digit that is not shown.

use super::Speaker;
use crate::book::{Book, Edit, Key};
use crate::drink::gap::{Closing, Figure, Lever, Way, WhyNot};
use crate::foundation::measure::{Exact, Share, Unit, Volume};

/// The name of a lever.
pub fn lever(lever: Lever, book: &Book) -> String {
    let of = |what: &str, id| format!("{what} of {}", book.name(Key::Ingredient(id)));
    match lever {
        Lever::MenuPrice(_) => "Menu price".to_string(),
        Lever::Fill(_) => "Fill".to_string(),
        Lever::PackPrice(goods) => format!("Pack price of {}", book.name(Key::from(goods))),
        Lever::TrimYield(id) => of("Trim yield", id),
        Lever::PressYield(id) => of("Press yield", id),
        Lever::SoakYield(id) => of("Soaking or brewing yield", id),
        Lever::ContainerSet(_) => "Container and all that belongs to it".to_string(),
        Lever::Unsold(_) => "Unsold share".to_string(),
        Lever::HandsTime(_) => "Hands' time".to_string(),
    }
}

/// Why a lever does not close the gap.
pub const fn why_not(why: WhyNot) -> &'static str {
    match why {
        WhyNot::CannotCloseAlone => "cannot close it alone",
        WhyNot::DoesNotCount => "does not count in this margin",
    }
}

/// The change to where a lever closes: "−12.9 %". Returns an empty text if it does not.
pub fn lever_change(way: &Way, speaker: &Speaker) -> String {
    let Ok(closing) = &way.closes else { return String::new() };
    let sign = if closing.change.is_negative() { "" } else { "+" };
    format!("{sign}{}", percent(closing.change, away(closing), speaker))
}

/// What to do: "Buy Apples at $33.10 a pack instead of $38.00."; or why it would not do.
pub fn lever_advice(way: &Way, book: &Book, speaker: &Speaker) -> String {
    let closing = match &way.closes {
        Ok(closing) => closing,
        Err(why) => return format!("{} {}.", lever(way.lever, book), why_not(*why)),
    };
    let now = shown(way.lever, way.now, nearest, book, speaker);
    let at = shown(way.lever, closing.at, away(closing), book, speaker);
    let of = |id| book.name(Key::Ingredient(id));
    match way.lever {
        Lever::MenuPrice(_) => {
            let set = match closing.edit {
                Some(Edit::SetPrice { price: Some(price), .. }) => speaker.money(price),
                _ => at,
            };
            format!("Ask {set} instead of {now}.")
        }
        Lever::Fill(_) => {
            let others =
                moves_too(closing, "other drink in this container moves", "other drinks in this container move");
            format!("Pour {at} instead of {now}.{others}{}", short(way.lever, closing, book, speaker))
        }
        Lever::PackPrice(goods) => format!("Buy {} at {at} a pack instead of {now}.", book.name(Key::from(goods))),
        Lever::TrimYield(id) => format!("Trim {} so that {at} of it is left instead of {now}.", of(id)),
        Lever::PressYield(id) => format!("Press {at} of what goes in out of {} instead of {now}.", of(id)),
        Lever::SoakYield(id) => format!("Soak or brew {} to {at} of what goes in instead of {now}.", of(id)),
        Lever::ContainerSet(_) => format!("Pay {at} for the container and all that belongs to it instead of {now}."),
        Lever::Unsold(_) => {
            let others = moves_too(closing, "other size of this drink moves", "other sizes of this drink move");
            format!("Leave {at} unsold instead of {now}.{others}")
        }
        Lever::HandsTime(_) => {
            let others = moves_too(closing, "other size of this drink moves", "other sizes of this drink move");
            format!("Take {at} of hands' time for a drink instead of {now}.{others}")
        }
    }
}

fn moves_too(closing: &Closing, one: &str, more: &str) -> String {
    match closing.moves_too {
        0 => String::new(),
        1 => format!(" 1 {one} too."),
        count => format!(" {count} {more} too."),
    }
}

/// A caution where a fill would be less than what the menu or label says.
fn short(lever: Lever, closing: &Closing, book: &Book, speaker: &Speaker) -> String {
    let declared = || -> Option<Volume> {
        let (Lever::Fill(id), Figure::Volume(at)) = (lever, closing.at) else { return None };
        book.container(id)?.declared?.volume().ok()?.filter(|declared| *declared > at)
    };
    let Some(declared) = declared() else { return String::new() };
    let declared = speaker.volume(declared);
    format!(" That is less than the {declared} that the menu or label says: change what it says first.")
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
        Figure::Time(time) => speaker.with_unit(in_steps(time.seconds(), 1, round), 0, "s"),
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
