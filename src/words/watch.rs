//! What changed prices move, and the biggest cost drivers.

use super::dates::day;
use super::sales::not_counted;
use super::{Speaker, number, overflow, refusal};
use crate::book::{Book, Goods, Key};
use crate::buying::price_watch::{
    Changed, ChangedOn, Exposed, Exposure, Since, TRIED, WatchError, Watched, WeeklyCost,
};
use crate::drink::ledger::{OfferChange, Snapshot};
use crate::drink::sales::Weekly;
use crate::foundation::measure::{Date, Exact, Money, Overflow, Share};
use crate::say;

/// Things that are named one by one.
const NAMED: usize = 3;

/// Why changed prices cannot be followed.
pub fn watch_error(error: &WatchError, book: &Book) -> String {
    match error {
        WatchError::BeyondTried => {
            let shown = |percent: i32| Speaker::plain().number(Exact::new(i64::from(percent), 0));
            say!(market::beyond_tested, least = shown(TRIED.0), most = shown(TRIED.1))
        }
        WatchError::Refused(why) => refusal(why, book),
        WatchError::Arithmetic(why) => overflow(*why),
    }
}

/// That a day lies ahead.
pub fn ahead(on: Date) -> String {
    say!(market::day_ahead, day = day(on))
}

/// Which prices changed since a day, and how many sizes they moved.
pub fn since(found: &Since, on: Date) -> String {
    match found.watched.changed.len() {
        0 => say!(market::no_price_changed, day = day(on)),
        count => {
            let changed = say!(market::prices_changed, prices = count, day = day(on));
            [changed, moves(&found.watched.moves, true)].join(" ")
        }
    }
}

/// How many sizes the prices since a day left below their target.
pub fn fallen_since(found: &Since, on: Date) -> String {
    match found.watched.fallen() {
        0 => say!(market::none_dropped_since, day = day(on)),
        fallen => say!(market::some_dropped_since, sizes = fallen, day = day(on)),
    }
}

/// How many sizes prices that are tried would leave below their target.
pub fn would_fall(found: &Watched) -> String {
    match found.fallen() {
        0 => say!(market::no_size_would_drop).to_string(),
        fallen => say!(market::sizes_would_drop, sizes = fallen),
    }
}

/// What costs more in the sizes that fell; empty where none did.
pub fn risen_in_fallen(found: &Watched, book: &Book) -> String {
    let risen = found.risen_in_fallen(book);
    if risen.is_empty() {
        return String::new();
    }
    say!(market::dropped_with, sizes = found.fallen(), names = named(&risen, ", ", book))
}

/// How many sizes prices that are tried would move.
pub fn what_if(found: &Watched) -> String {
    moves(&found.moves, false)
}

/// How many sizes move, or did: those that fall under target, and those that come back to it.
pub(super) fn moves(moves: &[OfferChange], past: bool) -> String {
    let fell = moves.iter().filter(|moved| moved.fell()).count();
    let rose = moves.iter().filter(|moved| moved.rose()).count();
    let moved = match (moves.len(), fell, past) {
        (0, _, true) => say!(market::no_drinks).to_string(),
        (0, _, false) => say!(market::no_drinks_yet).to_string(),
        (count, 0, true) => say!(market::none_dropped, sizes = count),
        (count, 0, false) => say!(market::none_would_drop, sizes = count),
        (count, fell, true) => say!(market::some_dropped, sizes = count, dropped = number(fell)),
        (count, fell, false) => say!(market::some_would_drop, sizes = count, dropped = number(fell)),
    };
    match (rose, past) {
        (0, _) => moved,
        (rose, true) => [moved, say!(market::back_on_target, sizes = rose)].join(" "),
        (rose, false) => [moved, say!(market::would_be_back, sizes = rose)].join(" "),
    }
}

/// How many sizes a step moved, and how many of them fell under target.
pub fn step_moved(step: &str, moves: &[OfferChange]) -> String {
    match (moves.len(), moves.iter().filter(|moved| moved.fell()).count()) {
        (0, _) => say!(market::step_no_drinks, step = step),
        (count, 0) => say!(market::step_none_dropped, step = step, sizes = count),
        (count, fell) => say!(market::step_some_dropped, step = step, sizes = count, dropped = number(fell)),
    }
}

/// Goods of which no price is known from a day; empty where there are none.
pub fn unknown(goods: &[Goods], on: Date, book: &Book) -> String {
    if goods.is_empty() {
        return String::new();
    }
    // Names of goods may have commas.
    say!(market::no_price_from, day = day(on), names = named(goods, "; ", book))
}

/// The first names, and how many more there are.
fn named(goods: &[Goods], between: &str, book: &Book) -> String {
    let names: Vec<String> = goods.iter().take(NAMED).map(|goods| book.name(Key::from(*goods))).collect();
    match goods.len().saturating_sub(names.len()) {
        0 => names.join(between),
        more => say!(market::names_and_more, names = names.join(between), more = more),
    }
}

/// How a price changed: "+18.2 %".
pub fn change(changed: &Changed, speaker: &Speaker) -> String {
    changed.share.map_or_else(|| say!(market::was_free).to_string(), |share| percent_change(share, speaker))
}

fn percent_change(share: Share, speaker: &Speaker) -> String {
    let share = Share::from_fraction(share.fraction().rounded(3));
    let shown = speaker.percent(share);
    if share.is_positive() { format!("+{shown}") } else { shown }
}

/// How the profit of a usual week came about, and what is not counted.
pub fn weekly(found: &Watched, book: &Book) -> String {
    let before = &found.before;
    if before.units.is_zero() {
        return no_week(before, book);
    }
    let sizes = book.offers().count().saturating_sub(before.unknown.len());
    joined(&[&say!(market::profit_sum, sizes = sizes), &not_counted(before, book)])
}

/// That no size has all that a week is added up from, and what each lacks.
fn no_week(weekly: &Weekly, book: &Book) -> String {
    joined(&[say!(market::no_weekly_sales), say!(market::enter_prices_and_sales), &not_counted(weekly, book)])
}

/// Sentences one after the other, empty ones left out.
fn joined(sentences: &[&str]) -> String {
    let said: Vec<&str> = sentences.iter().copied().filter(|sentence| !sentence.is_empty()).collect();
    said.join(" ")
}

/// The biggest cost drivers, with the figures of the first.
pub fn exposure(found: &Exposure, book: &Book, speaker: &Speaker) -> String {
    let Some(first) = found.goods.first().filter(|first| first.cost.is_positive()) else {
        return if found.goods.is_empty() { no_week(&found.weekly, book) } else { say!(market::all_free).to_string() };
    };
    let name = book.name(Key::from(first.goods));
    let up = if first.less.is_zero() {
        say!(market::driver_surcharge_only, name = &name)
    } else {
        say!(market::driver_up, name = &name, less = speaker.money(first.less))
    };
    joined(&[
        &say!(market::weekly_cost_is, cost = speaker.money(found.cost)),
        &say!(market::biggest_driver, name = &name, share = speaker.percent(first.share)),
        &up,
        &not_counted(&found.weekly, book),
    ])
}

/// How the figures of the foremost goods came about, with their own numbers.
pub fn exposure_working(found: &Exposure, book: &Book, speaker: &Speaker) -> String {
    let Some(first) = found.goods.first().filter(|first| first.cost.is_positive()) else { return String::new() };
    let money = |money| speaker.money(money);
    let (cost, less) = (money(first.cost), money(first.less));
    let all = say!(market::driver_cost, name = book.name(Key::from(first.goods)), cost = &cost);
    let share = say!(market::driver_share, cost = &cost, all = money(found.cost), share = speaker.percent(first.share));
    let ten_percent = match book.packs(first.goods).first() {
        Some(pack) if !pack.surcharge.is_zero() => {
            let price = money(pack.price_now());
            let paid = money(pack.price_now().plus(pack.surcharge).unwrap_or_default());
            let part = say!(market::driver_price_part, price = &price, paid = &paid);
            let of_part =
                say!(market::driver_ten_percent_of_price, cost = &cost, price = &price, paid = &paid, less = less);
            [part, of_part].join(" ")
        }
        _ => say!(market::driver_ten_percent, cost = &cost, less = less),
    };
    [all, share, ten_percent].join(" ")
}

/// A line for all goods that are not shown one by one: their name, and their figures together.
pub fn others(goods: &[Exposed]) -> Option<(String, Exposed)> {
    let first = goods.first()?;
    let mut sum = Exposed { cost: Money::ZERO, share: Share::ZERO, less: Money::ZERO, ..*first };
    for one in goods {
        sum.cost = sum.cost.plus(one.cost).ok()?;
        sum.share = sum.share.plus(one.share).ok()?;
        sum.less = sum.less.plus(one.less).ok()?;
    }
    Some((say!(market::other_items, count = goods.len()), sum))
}

/// Goods that no counted drink takes; empty where there are none.
pub fn idle(goods: &[Goods], book: &Book) -> String {
    if goods.is_empty() {
        return String::new();
    }
    say!(market::not_in_counted_drinks, names = named(goods, ", ", book))
}

/// A price that changed on a day: "Was $38.00, now $44.25, +16.4%".
pub fn changed(change: &ChangedOn, speaker: &Speaker) -> String {
    let Changed { before, after, share, .. } = change.changed;
    let (was, now) = (speaker.money(before), speaker.money(after));
    match share.map(|share| percent_change(share, speaker)) {
        Some(change) => say!(market::price_changed, was = was, now = now, change = change),
        None => say!(market::price_no_longer_free, now = now),
    }
}

/// What has the price that changed: "Apples, 40 lb".
pub fn changed_pack(change: &ChangedOn, book: &Book, speaker: &Speaker) -> String {
    let goods = change.changed.goods;
    let name = book.name(Key::from(goods));
    let pack = book.packs(goods).iter().find(|pack| pack.id == change.pack);
    match pack.map(|pack| speaker.amount(pack.contents)) {
        Some(pack) => say!(market::item_in_pack, name = name, pack = pack),
        None => name,
    }
}

/// What a changed price costs or saves a usual week; `cost` is `None` if the numbers are too large.
pub fn weekly_cost(cost: Option<WeeklyCost>, speaker: &Speaker) -> String {
    let Some(WeeklyCost { more, counted, unknown, without_cost }) = cost else {
        return overflow(Overflow::TooLarge);
    };
    let nothing = match (counted, unknown, without_cost) {
        (0, 0, 0) => Some(say!(market::no_drinks)),
        (0, _, 0) => Some(say!(market::needs_sales)),
        (0, 0, _) => Some(say!(market::needs_costs)),
        (0, _, _) => Some(say!(market::needs_sales_and_costs)),
        _ => None,
    };
    if let Some(nothing) = nothing {
        return nothing.to_string();
    }
    let cost = match a_week(more, speaker) {
        AWeek::Same => say!(market::costs_the_same).to_string(),
        AWeek::Less(money) => say!(market::saves, money = money),
        AWeek::More(money) => say!(market::costs_more, money = money),
    };
    let without = |sizes: usize, said: fn(usize) -> String| if sizes == 0 { String::new() } else { said(sizes) };
    joined(&[
        &cost,
        &without(unknown, |sizes| say!(market::sizes_without_sales, sizes = sizes)),
        &without(without_cost, |sizes| say!(market::sizes_without_cost, sizes = sizes)),
    ])
}

/// How many prices changed, and what they cost or save a usual week together where that is known of
/// any: "3 prices: cost you $11.00 more per week".
pub fn weekly_costs(prices: usize, costs: &[WeeklyCost], speaker: &Speaker) -> String {
    let known = costs.iter().filter(|cost| cost.counted > 0);
    let sum = known.clone().try_fold(Money::ZERO, |sum, cost| sum.plus(cost.more));
    match (known.count(), sum) {
        (0, _) | (_, Err(_)) => say!(market::changes_counted, prices = prices),
        (_, Ok(sum)) => match a_week(sum, speaker) {
            AWeek::Same => say!(market::changes_cost_the_same, prices = prices),
            AWeek::Less(money) => say!(market::changes_save, prices = prices, money = money),
            AWeek::More(money) => say!(market::changes_cost_more, prices = prices, money = money),
        },
    }
}

/// How a size stands that fell under its target: "65.7% margin, suggested price $8.75".
pub fn fallen_to(moved: &OfferChange, speaker: &Speaker) -> String {
    let margin = |snapshot: &Snapshot| Some(speaker.percent_beside(snapshot.margin?, snapshot.target));
    let snapshot = moved.after.and_then(|snapshot| Some((margin(&snapshot)?, snapshot.suggested)));
    match snapshot {
        Some((margin, Some(price))) => {
            say!(market::margin_and_price, margin = margin, price = speaker.money(price))
        }
        Some((margin, None)) => say!(market::margin_alone, margin = margin),
        None => String::new(),
    }
}

/// That prices are of today, and nobody knows what they were before; empty where there are none.
pub fn new_today(count: usize) -> String {
    if count == 0 { String::new() } else { say!(market::new_today, prices = count) }
}

/// What a change comes to in a week, as it is shown.
enum AWeek {
    Same,
    Less(String),
    More(String),
}

fn a_week(more: Money, speaker: &Speaker) -> AWeek {
    let digits = speaker.currency().digits();
    let rounded = Money::from_major(more.major().rounded(digits));
    match rounded {
        none if none.is_zero() => AWeek::Same,
        saved if saved.major().is_negative() => AWeek::Less(speaker.money(Money::from_major(saved.major().abs()))),
        more => AWeek::More(speaker.money(more)),
    }
}
