//! What changed prices move, and what the menu hangs on.

use super::dates::day;
use super::sales::not_counted;
use super::{Speaker, overflow, refusal};
use crate::book::{Book, Goods, Key};
use crate::buying::price_watch::{
    Changed, ChangedOn, Exposed, Exposure, Since, TRIED, WatchError, Watched, WeeklyCost,
};
use crate::drink::ledger::OfferChange;
use crate::drink::sales::Weekly;
use crate::foundation::measure::{Date, Money, Overflow, Share};

/// Things that are named one by one.
const NAMED: usize = 3;

/// That only the pack bought now is followed.
pub const ONE_PACK: &str =
    "Of each thing the pack that you buy now is followed, as if you had bought the same pack then.";

/// That nothing is changed.
pub const ONLY_TRIED: &str = "Only tried: nothing changes in the book.";

/// Why changed prices cannot be followed.
pub fn watch_error(error: &WatchError, book: &Book) -> String {
    match error {
        WatchError::BeyondTried => {
            let (least, most) = TRIED;
            format!("Type from {least} to {most}, such as 20 for a fifth more or -10 for a tenth less.")
        }
        WatchError::Refused(why) => refusal(why, book),
        WatchError::Arithmetic(why) => overflow(*why),
    }
}

/// That a day lies ahead.
pub fn ahead(on: Date) -> String {
    format!("{} is not here yet, so no price has changed since. Choose an earlier day.", day(on))
}

/// Which prices changed since a day, and how many sizes they moved.
pub fn since(found: &Since, on: Date) -> String {
    let on = day(on);
    match found.watched.changed.len() {
        0 => format!("No price of what you buy has changed since {on}, as far as the book knows."),
        1 => format!("1 price changed since {on}. {}", moves(&found.watched.moves, true)),
        count => format!("{count} prices changed since {on}. {}", moves(&found.watched.moves, true)),
    }
}

/// How many sizes prices that are tried would move.
pub fn what_if(found: &Watched) -> String {
    moves(&found.moves, false)
}

/// How many sizes move, or did: those that fall under target, and those that come back to it.
pub(super) fn moves(moves: &[OfferChange], past: bool) -> String {
    let fell = moves.iter().filter(|moved| moved.fell()).count();
    let rose = moves.iter().filter(|moved| moved.rose()).count();
    let verb = |count: usize, was: &'static str, one: &'static str, many: &'static str| match (past, count) {
        (true, _) => was,
        (false, 0 | 1) => one,
        (false, _) => many,
    };
    let falls = match fell {
        0 => format!("none {} under target", verb(0, "fell", "falls", "fall")),
        count => format!("{count} {} under target", verb(count, "fell", "falls", "fall")),
    };
    let back = match rose {
        0 => String::new(),
        count => format!(", {count} {} back to it", verb(count, "came", "comes", "come")),
    };
    match moves.len() {
        0 => format!("No drink {}.", verb(1, "moved", "moves", "move")),
        1 => format!("1 size {}: {falls}{back}.", verb(1, "moved", "moves", "move")),
        count => format!("{count} sizes {}: {falls}{back}.", verb(count, "moved", "moves", "move")),
    }
}

/// Goods of which no price is known from a day; empty where there are none.
pub fn unknown(goods: &[Goods], on: Date, book: &Book) -> String {
    if goods.is_empty() {
        return String::new();
    }
    format!("No price is known from {}, so today's counts on both sides: {}.", day(on), named(goods, book))
}

/// The first names, and how many more there are.
fn named(goods: &[Goods], book: &Book) -> String {
    let names: Vec<String> = goods.iter().take(NAMED).map(|goods| book.name(Key::from(*goods))).collect();
    match goods.len().saturating_sub(names.len()) {
        0 => names.join(", "),
        more => format!("{} and {more} more", names.join(", ")),
    }
}

/// How a price changed: "+18.2 %".
pub fn change(changed: &Changed, speaker: &Speaker) -> String {
    let Some(share) = changed.share else { return "was free".to_string() };
    let share = Share::from_fraction(share.fraction().rounded(3));
    let shown = speaker.percent(share);
    if share.is_positive() { format!("+{shown}") } else { shown }
}

/// How what a usual week leaves came about, and what is not counted.
pub fn weekly(found: &Watched, book: &Book) -> String {
    let before = &found.before;
    if before.units.is_zero() {
        return format!("{} {}", no_week(), not_counted(before, book)).trim_end().to_string();
    }
    let said = format!(
        "What is left after everything: the number sold in a usual week times what one leaves, added up over {}.",
        counted(before, book)
    );
    format!("{said} {}", not_counted(before, book)).trim_end().to_string()
}

fn counted(weekly: &Weekly, book: &Book) -> String {
    match book.offers().count().saturating_sub(weekly.unknown.len()) {
        1 => "1 size".to_string(),
        count => format!("{count} sizes"),
    }
}

const fn no_week() -> &'static str {
    "Of no drink it is known both what it sells for and how many are sold in a usual week. Give sizes a price, and type how many you sell in Sizes, under Sales."
}

/// What the menu hangs on, with the goods that it hangs on most.
pub fn exposure(found: &Exposure, book: &Book, speaker: &Speaker) -> String {
    let Some(first) = found.goods.first().filter(|first| first.cost.is_positive()) else {
        return if found.goods.is_empty() {
            format!("{} {}", no_week(), not_counted(&found.weekly, book)).trim_end().to_string()
        } else {
            "All that a usual week takes is free.".to_string()
        };
    };
    let money = |money| speaker.money(money);
    let percent = |share| speaker.percent(share);
    let name = book.name(Key::from(first.goods));
    let less = if first.less.is_zero() {
        format!("10 % more on the price of {name} changes nothing: only what is paid besides costs money.")
    } else {
        format!("If the price of {name} rises by 10 %, a week leaves {} less.", money(first.less))
    };
    let said = format!(
        "A usual week takes goods for {}. The most of it, {}, is {name}. {less}",
        money(found.cost),
        percent(first.share)
    );
    format!("{said} {}", not_counted(&found.weekly, book)).trim_end().to_string()
}

/// How the figures of the foremost goods came about, with their own numbers.
pub fn exposure_working(found: &Exposure, book: &Book, speaker: &Speaker) -> String {
    let Some(first) = found.goods.first().filter(|first| first.cost.is_positive()) else { return String::new() };
    let money = |money| speaker.money(money);
    let name = book.name(Key::from(first.goods));
    let besides = match book.packs(first.goods).first() {
        Some(pack) if !pack.surcharge.is_zero() => format!(
            " Of {} paid for a pack, {} is its price: 10 % of {} × {} ÷ {} is {}.",
            money(pack.price_now().plus(pack.surcharge).unwrap_or_default()),
            money(pack.price_now()),
            money(first.cost),
            money(pack.price_now()),
            money(pack.price_now().plus(pack.surcharge).unwrap_or_default()),
            money(first.less)
        ),
        _ => format!(" 10 % of it is {}.", money(first.less)),
    };
    format!(
        "The number sold in a usual week times the cost in one drink, and what is made and not sold on top, added up over all drinks: for {name} {}. {} ÷ {} is {}.{besides}",
        money(first.cost),
        money(first.cost),
        money(found.cost),
        speaker.percent(first.share)
    )
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
    let name = match goods.len() {
        1 => "1 other".to_string(),
        count => format!("{count} others"),
    };
    Some((name, sum))
}

/// Goods that no counted drink takes; empty where there are none.
pub fn idle(goods: &[Goods], book: &Book) -> String {
    match goods.len() {
        0 => String::new(),
        1 => format!("In no drink that is counted: {}. Nothing can be said of it.", named(goods, book)),
        _ => format!("In no drink that is counted: {}. Nothing can be said of them.", named(goods, book)),
    }
}

/// A price that changed on a day: "40 lb: was $38.00, now $44.25, +16.4 %".
pub fn changed(change: &ChangedOn, book: &Book, speaker: &Speaker) -> String {
    let goods = change.changed.goods;
    let pack = book.packs(goods).iter().find(|pack| pack.id == change.pack);
    let holds = pack.map(|pack| format!("{}: ", speaker.amount(pack.contents)));
    let shown = |money| speaker.money(money);
    format!(
        "{}was {}, now {}, {}",
        holds.unwrap_or_default(),
        shown(change.changed.before),
        shown(change.changed.after),
        self::change(&change.changed, speaker)
    )
}

/// What a changed price costs or saves a usual week; `cost` is `None` if the numbers are too large.
pub fn weekly_cost(cost: Option<WeeklyCost>, speaker: &Speaker) -> String {
    let Some(WeeklyCost { more, counted, unknown, without_cost }) = cost else {
        return overflow(Overflow::TooLarge);
    };
    match (counted, unknown, without_cost) {
        (0, 0, 0) => return "Moves no drink.".to_string(),
        (0, _, 0) => return "Weekly numbers not known.".to_string(),
        (0, 0, _) => return "Costs not known.".to_string(),
        (0, _, _) => return "Weekly numbers and costs not known.".to_string(),
        _ => {}
    }
    let not_known = |what: &str, count| match count {
        0 => String::new(),
        1 => format!("; {what} of 1 size not known"),
        count => format!("; {what}s of {count} sizes not known"),
    };
    let (unknown, without_cost) = (not_known("weekly number", unknown), not_known("cost", without_cost));
    format!("{}{unknown}{without_cost}.", a_week(more, speaker))
}

/// What several changed prices cost or save a usual week together; empty where that is not known,
/// or said by one of them.
pub fn weekly_costs(costs: &[WeeklyCost], speaker: &Speaker) -> String {
    let known = costs.iter().filter(|cost| cost.counted > 0);
    let sum = known.clone().try_fold(Money::ZERO, |sum, cost| sum.plus(cost.more));
    match (known.count(), sum) {
        (0 | 1, _) | (_, Err(_)) => String::new(),
        (_, Ok(sum)) => format!("{}, all changes together.", a_week(sum, speaker)),
    }
}

/// That prices are of today, and nobody knows what they were before; empty where there are none.
pub fn new_today(count: usize) -> String {
    match count {
        0 => String::new(),
        1 => "1 more price is from today. The price before is not known.".to_string(),
        count => format!("{count} more prices are from today. The prices before are not known."),
    }
}

fn a_week(more: Money, speaker: &Speaker) -> String {
    let shown = |money| speaker.money(money);
    let digits = speaker.currency().digits();
    let rounded = Money::from_major(more.major().rounded(digits));
    match rounded {
        none if none.is_zero() => "Costs the same a week".to_string(),
        saved if saved.major().is_negative() => {
            format!("Saves {} a week", shown(Money::from_major(saved.major().abs())))
        }
        more => format!("Costs {} more a week", shown(more)),
    }
}
