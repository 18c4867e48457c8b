//! A price limit: what a drink would have to give up.

use super::Speaker;
use crate::book::{Book, Key, OfferId};
use crate::foundation::measure::{Exact, Money, Overflow, Share, Unit, Volume};
use crate::say;
use crate::sizes::decision::{BelowPrice, UnderRow};
use crate::sizes::price_point::{AtPoint, FirstLine, Over, Verdict};

/// Money up to the currency's smallest unit, so that what stands here is enough.
pub fn up(money: Money, speaker: &Speaker) -> String {
    let cent = speaker.currency().minor_unit();
    let up = || cent.times(money.ratio_to(cent)?.ceiling());
    speaker.money(up().unwrap_or(money))
}

/// Money down to the currency's smallest unit, so that no more than what is there stands here.
pub fn down_to_cent(money: Money, speaker: &Speaker) -> String {
    let cent = speaker.currency().minor_unit();
    let down = || cent.times(money.ratio_to(cent)?.floor());
    speaker.money(down().unwrap_or(money))
}

/// Sizes that are named one by one.
const NAMED: usize = 3;

/// What a price comes to: the tightest of those that fit it, those that do not, and those not looked at.
pub fn said(below: &BelowPrice, uncounted: &[OfferId], book: &Book, speaker: &Speaker) -> Vec<String> {
    let fits = below.rows.iter().find(|row| row.can).or(below.tightest()).map(|row| tightest(row, book, speaker));
    let name = |offer: OfferId| book.name(Key::Offer(offer));
    let miss: Vec<OfferId> =
        below.rows.iter().filter(|row| !row.can).map(|row| row.offer).chain(below.never.iter().copied()).collect();
    let named = miss.iter().take(NAMED).map(|offer| name(*offer)).collect::<Vec<_>>().join("; ");
    let missed = match miss.len().saturating_sub(NAMED) {
        _ if miss.is_empty() => None,
        0 => Some(say!(decide::sizes_that_miss, sizes = named)),
        more => Some(say!(decide::sizes_that_miss_and_more, sizes = named, more = super::number(more))),
    };
    let without = uncounted.iter().take(NAMED).map(|offer| say!(sales::size_without_price, size = name(*offer)));
    let without = without.collect::<Vec<_>>().join("; ");
    let left_out = match uncounted.len().saturating_sub(NAMED) {
        _ if uncounted.is_empty() => None,
        0 => Some(say!(sales::not_counted, sizes = without)),
        more => Some(say!(sales::not_counted_and_more, sizes = without, more = super::number(more))),
    };
    [fits, missed, left_out].into_iter().flatten().collect()
}

/// The tightest of the drinks at a price, and what it has to spare or lacks, without tax and with it.
pub fn tightest(row: &UnderRow, book: &Book, speaker: &Speaker) -> String {
    let drink = book.name(Key::Offer(row.offer));
    if row.can {
        let (before, after) = (down_to_cent(row.before_tax, speaker), down_to_cent(row.after_tax, speaker));
        say!(decide::tightest_spare, drink = drink, before = before, after = after)
    } else {
        let (before, after) = (short(row.before_tax, speaker), short(row.after_tax, speaker));
        say!(decide::tightest_lacks, drink = drink, before = before, after = after)
    }
}

/// What a drink has to spare at a price, or lacks.
pub fn spare(row: &UnderRow, speaker: &Speaker) -> String {
    if row.can {
        say!(decide::spare, price = down_to_cent(row.before_tax, speaker))
    } else {
        say!(decide::lacks, price = short(row.before_tax, speaker))
    }
}

/// What is lacked, up, so that it is enough.
fn short(spare: Money, speaker: &Speaker) -> String {
    up(Money::from_major(spare.major().negated()), speaker)
}

/// How much room is left, or what the drink would have to give up.
pub fn give_up(at: &AtPoint, book: &Book, speaker: &Speaker) -> Vec<String> {
    match &at.verdict {
        Verdict::Fits(room) if room.is_zero() => vec![say!(decide::fits_exactly).to_string()],
        Verdict::Fits(room) => vec![say!(decide::fits_with_room, room = down_to_cent(*room, speaker))],
        Verdict::Over(over) => {
            let mut said = vec![to_save(at, over, speaker), fill(at, book, speaker)];
            said.extend(over.first.map(|first| first_line(&first, book, speaker)));
            said
        }
    }
}

fn to_save(at: &AtPoint, over: &Over, speaker: &Speaker) -> String {
    let Some(share) = over.share.filter(|_| !at.ceiling.ingredients.is_negative()) else {
        let short = speaker.money(Money::ZERO.minus(at.ceiling.ingredients).unwrap_or(Money::ZERO));
        let nothing = say!(decide::nothing_for_ingredients, short = short);
        return [nothing.as_str(), say!(decide::raise_or_repack)].join(" ");
    };
    // What stands here is what the two figures beside it differ by: the cost up, the limit down.
    let cent = speaker.currency().minor_unit();
    let saved = || {
        let cost = cent.times(at.ingredients.ratio_to(cent)?.ceiling())?;
        cost.minus(cent.times(at.ceiling.ingredients.ratio_to(cent)?.floor())?)
    };
    let saving = speaker.money(saved().unwrap_or(over.money));
    let cost = up(at.ingredients, speaker);
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
