//! A price limit: what a drink would have to give up.

use super::Speaker;
use crate::book::{Book, Key};
use crate::foundation::measure::{Exact, Money, Overflow, Share, Unit, Volume};
use crate::say;
use crate::sizes::price_point::{AtPoint, FirstLine, Over, Verdict};

/// How much room is left, or what the drink would have to give up.
pub fn give_up(at: &AtPoint, book: &Book, speaker: &Speaker) -> Vec<String> {
    match &at.verdict {
        Verdict::Fits(room) if room.is_zero() => vec![say!(decide::fits_exactly).to_string()],
        Verdict::Fits(room) => vec![say!(decide::fits_with_room, room = speaker.money(*room))],
        Verdict::Over(over) => {
            let mut said = vec![to_save(at, over, book, speaker), fill(at, book, speaker)];
            said.extend(over.first.map(|first| first_line(&first, book, speaker)));
            said
        }
    }
}

fn to_save(at: &AtPoint, over: &Over, book: &Book, speaker: &Speaker) -> String {
    let Some(share) = over.share.filter(|_| !at.ceiling.ingredients.is_negative()) else {
        let short = speaker.money(Money::ZERO.minus(at.ceiling.ingredients).unwrap_or(Money::ZERO));
        let nothing = say!(decide::nothing_for_ingredients, short = short);
        return [nothing.as_str(), say!(decide::raise_or_repack)].join(" ");
    };
    // Up, so that what stands here is enough.
    let cent = book.settings().currency.minor_unit();
    let up = || cent.times(over.money.ratio_to(cent)?.ceiling());
    let saving = speaker.money(up().unwrap_or(over.money));
    let cost = speaker.money(at.ingredients);
    say!(decide::save_on_ingredients, saving = saving, share = speaker.percent(share), cost = cost)
}

fn fill(at: &AtPoint, book: &Book, speaker: &Speaker) -> String {
    let volume = |volume: Volume| speaker.volume(volume);
    match at.largest_fill {
        Some(most) => {
            let most = down(most, book).unwrap_or(most);
            let less = at.poured.minus(most).unwrap_or(Volume::ZERO);
            say!(decide::or_pour_less, less = volume(less), fill = volume(most), now = volume(at.poured))
        }
        None => say!(decide::no_smaller_fill).to_string(),
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
    let (ingredient, cost) = (book.name(Key::Ingredient(first.ingredient)), speaker.money(first.cost));
    match first.less {
        Some(less) => {
            // Up, so that what stands here is enough.
            let up = |share: Share| share.percent()?.times(Exact::new(10, 0))?.ceiling().over(Exact::new(1000, 0));
            let less = up(less).map_or(less, Share::from_fraction);
            say!(decide::cut_first, ingredient = ingredient, cost = cost, share = speaker.percent(less))
        }
        None => say!(decide::cut_not_enough, ingredient = ingredient, cost = cost),
    }
}
