//! Back from a price point: what a drink would have to give up.

use super::Speaker;
use crate::book::{Book, Key};
use crate::foundation::measure::{Exact, Money, Overflow, Share, Unit, Volume};
use crate::sizes::price_point::{AtPoint, FirstLine, Over, Verdict};

/// How much room is left, or what the drink would have to give up.
pub fn give_up(at: &AtPoint, book: &Book, speaker: &Speaker) -> Vec<String> {
    match &at.verdict {
        Verdict::Fits(room) if room.is_zero() => vec!["It fits, with nothing to spare.".to_string()],
        Verdict::Fits(room) => {
            vec![format!("It fits: {} more may go into ingredients.", speaker.money(*room))]
        }
        Verdict::Over(over) => {
            let mut said = vec![to_save(at, over, book, speaker), fill(at, book, speaker)];
            said.extend(over.first.map(|first| first_line(&first, book, speaker)));
            said
        }
    }
}

fn to_save(at: &AtPoint, over: &Over, book: &Book, speaker: &Speaker) -> String {
    let cost = speaker.money(at.ingredients);
    let Some(share) = over.share.filter(|_| !at.ceiling.ingredients.is_negative()) else {
        let short = speaker.money(Money::ZERO.minus(at.ceiling.ingredients).unwrap_or(Money::ZERO));
        return format!(
            "The price leaves nothing for ingredients: container, fees and whatever else the target covers are {short} too much already. Raise the price, or take a cheaper container."
        );
    };
    // Up, so that what stands here is enough.
    let cent = book.settings().currency.minor_unit();
    let up = || cent.times(over.money.ratio_to(cent)?.ceiling());
    let saved = speaker.money(up().unwrap_or(over.money));
    format!("It has to save {saved} on ingredients: {} of the {cost} that they cost.", speaker.percent(share))
}

fn fill(at: &AtPoint, book: &Book, speaker: &Speaker) -> String {
    let volume = |volume: Volume| speaker.volume(volume);
    match at.largest_fill {
        Some(most) => {
            let most = down(most, book).unwrap_or(most);
            let less = at.poured.minus(most).unwrap_or(Volume::ZERO);
            format!("Or pour {} less: {} instead of {}.", volume(less), volume(most), volume(at.poured))
        }
        None => "No smaller fill fits either: what stays the same in every size costs too much alone.".to_string(),
    }
}

/// Down to 1 mL or 0.1 fl oz, so that what stands here is little enough.
fn down(volume: Volume, book: &Book) -> Result<Volume, Overflow> {
    let unit = book.settings().units.drink_unit();
    let step = if unit == Unit::Millilitre { unit.size() } else { unit.size().over(Exact::new(10, 0))? };
    let steps = volume.millilitres().over(step)?.floor();
    Ok(Volume::from_millilitres(steps.times(step)?))
}

fn first_line(first: &FirstLine, book: &Book, speaker: &Speaker) -> String {
    let (name, cost) = (book.name(Key::Ingredient(first.ingredient)), speaker.money(first.cost));
    match first.less {
        Some(less) => {
            // Up, so that what stands here is enough.
            let up = |share: Share| share.percent()?.times(Exact::new(10, 0))?.ceiling().over(Exact::new(1000, 0));
            let less = up(less).map_or(less, Share::from_fraction);
            format!(
                "Look first at {name}, {cost} of it: {} less of it would do alone, the rest of the recipe filling the size.",
                speaker.percent(less)
            )
        }
        None => format!(
            "Look first at {name}, {cost} of it; but less of it cannot do it alone, since the rest of the recipe fills its place."
        ),
    }
}
