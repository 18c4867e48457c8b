//! What suppliers quote: what a price does, how old it is, and packs beside each other.

use super::{Speaker, day, short_day};
use crate::book::{Book, DayError, Goods, Key, Pack, Stage};
use crate::buying::quotes::{Age, Compared, History, Usable, more};
use crate::drink::ledger::{OfferChange, OfferStatus};
use crate::foundation::measure::{Date, Exact, Share, Unit};
use crate::say;

/// How many names are said before the rest is counted.
const NAMED: usize = 5;

/// The usable amount that a cost is of, where a sentence goes on: "per fl oz of juice", "per piece".
pub fn per(usable: Usable, speaker: &Speaker) -> String {
    let amount = amount(usable, speaker);
    match (usable.amount.unit, usable.stage) {
        (Unit::Piece, _) => say!(goods::cost_of_piece).to_string(),
        (_, Stage::AsBought) => say!(goods::cost_as_purchased, amount = amount),
        (_, Stage::Trimmed) => say!(goods::cost_trimmed, amount = amount),
        (_, Stage::Pressed) => say!(goods::cost_of_juice, amount = amount),
        (_, Stage::SoakedOrBrewed) => say!(goods::cost_soaked, amount = amount),
    }
}

/// The same as a label: "Per fl oz of juice", "Per piece".
pub fn label_per(usable: Usable, speaker: &Speaker) -> String {
    let amount = amount(usable, speaker);
    match (usable.amount.unit, usable.stage) {
        (Unit::Piece, _) => say!(goods::per_piece).to_string(),
        (_, Stage::AsBought) => say!(goods::per_as_purchased, amount = amount),
        (_, Stage::Trimmed) => say!(goods::per_trimmed, amount = amount),
        (_, Stage::Pressed) => say!(goods::per_of_juice, amount = amount),
        (_, Stage::SoakedOrBrewed) => say!(goods::per_soaked, amount = amount),
    }
}

/// One of a unit by the unit alone.
fn amount(usable: Usable, speaker: &Speaker) -> String {
    let amount = usable.amount;
    if amount.number == Exact::ONE { amount.unit.to_string() } else { speaker.amount(amount) }
}

/// When a price was quoted: "checked today", "quoted 12 Oct 2026".
pub fn age(age: Age, today: Date) -> String {
    match age {
        Age::Fresh(on) if on == today => say!(goods::checked_today).to_string(),
        Age::Fresh(on) => say!(goods::quoted_on, day = day(on)),
        Age::Old(on) => say!(goods::needs_new_price, day = day(on)),
        Age::Undated => say!(goods::no_date).to_string(),
    }
}

/// The same in a column of quote dates: of a fresh price the day alone.
pub fn age_in_column(at: Age, today: Date) -> String {
    match at {
        Age::Fresh(on) if on != today => day(on),
        at => age(at, today),
    }
}

/// The same where there is little room: the day without its year.
pub fn short_age(age: Age, today: Date) -> String {
    match age {
        Age::Fresh(on) if on == today => say!(goods::checked_today).to_string(),
        Age::Fresh(on) => say!(goods::quoted_on, day = short_day(on)),
        Age::Old(on) => say!(market::needs_new_price_since, day = short_day(on)),
        Age::Undated => say!(goods::no_date).to_string(),
    }
}

/// Which sizes fell under target. Returns an empty text if none did.
pub fn fell(moves: &[OfferChange], book: &Book) -> String {
    match named(&mut moves.iter().filter(|moved| moved.fell()), book) {
        (names, _) if names.is_empty() => names,
        (names, 0) => say!(goods::below_target_now, names = names),
        (names, more) => say!(goods::below_target_now_and, names = names, more = more),
    }
}

/// The menu price that would mend the worst of those that fell. Returns an empty text if none did.
pub fn worst(moves: &[OfferChange], book: &Book, speaker: &Speaker) -> String {
    let fallen = moves.iter().find(|moved| moved.fell());
    let Some((fallen, snapshot)) = fallen.and_then(|moved| moved.after.map(|snapshot| (moved, snapshot))) else {
        return String::new();
    };
    let name = book.name(Key::Offer(fallen.offer));
    let lowest = match snapshot.margin {
        Some(margin) => {
            say!(goods::lowest_margin, name = name, margin = speaker.percent_beside(margin, snapshot.target))
        }
        None => say!(goods::lowest_drink, name = name),
    };
    let mend = match (snapshot.suggested, snapshot.price) {
        (Some(suggested), Some(price)) => {
            say!(goods::change_price, price = speaker.money(price), suggested = speaker.money(suggested))
        }
        _ => say!(goods::no_price_reaches).to_string(),
    };
    [lowest, mend].join(" ")
}

/// Another way to the same.
pub fn or(way: String) -> String {
    say!(goods::another_way, way = way)
}

/// A pack by its supplier and contents: "Tansywold Produce, 40 lb".
pub fn pack(pack: &Pack, speaker: &Speaker) -> String {
    let size = speaker.amount(pack.contents);
    if pack.supplier.is_empty() {
        return size;
    }
    say!(goods::pack_of_supplier, supplier = &pack.supplier, size = size)
}

/// Whether the current pack is the cheapest, and if not by how much.
pub fn current_pack(compared: &[Compared], goods: Goods, book: &Book, speaker: &Speaker) -> String {
    let packs = book.packs(goods);
    let cheapest = compared.first().and_then(|one| Some((one.pack, one.cost.as_ref().ok().copied()?)));
    let now = packs.first().and_then(|now| compared.iter().find(|one| one.pack == now.id));
    let (Some((cheapest, lowest)), Some(now)) = (cheapest, now) else {
        return say!(goods::cannot_compare).to_string();
    };
    let cost = match &now.cost {
        Ok(cost) if *cost == lowest => return say!(goods::current_costs_least).to_string(),
        Ok(cost) => *cost,
        Err(_) => return say!(goods::current_cannot_compare).to_string(),
    };
    let named = packs.iter().find(|pack| pack.id == cheapest).map(|cheapest| pack(cheapest, speaker));
    let named = named.unwrap_or_default();
    let (lowest_cost, cost_now) = (speaker.fine_money(lowest), speaker.fine_money(cost));
    match more(cost, lowest) {
        Some(less) => {
            let less = speaker.percent(Share::from_fraction(less.fraction().abs()));
            say!(goods::other_costs_less, pack = named, less = less, lowest = lowest_cost, cost = cost_now)
        }
        None => say!(goods::other_is_lower, pack = named, lowest = lowest_cost, cost = cost_now),
    }
}

/// How much more a pack costs than the cheapest: "+9.2 %", "lowest".
pub fn above_cheapest(compared: &Compared, speaker: &Speaker) -> String {
    match (&compared.cost, compared.above_cheapest) {
        (Err(_), _) => String::new(),
        (Ok(_), Some(more)) if more.is_positive() => say!(goods::more_by, share = speaker.percent(more)),
        (Ok(_), Some(_)) => say!(goods::lowest).to_string(),
        // The cheapest is free.
        (Ok(cost), None) if cost.is_zero() => say!(goods::free).to_string(),
        (Ok(_), None) => say!(goods::not_free).to_string(),
    }
}

/// What buying another pack would do to the menu.
pub fn would_move(moves: &[OfferChange], book: &Book) -> String {
    let on = |moved: &&OfferChange| {
        let status = |snapshot: Option<crate::drink::ledger::Snapshot>| snapshot.map(|snapshot| snapshot.status);
        status(moved.before) == Some(OfferStatus::UnderTarget) && status(moved.after) == Some(OfferStatus::OnTarget)
    };
    if moves.is_empty() {
        return say!(market::no_drinks_yet).to_string();
    }
    let drop = match named(&mut moves.iter().filter(|moved| moved.fell()), book) {
        (names, _) if names.is_empty() => say!(goods::none_would_drop).to_string(),
        (names, 0) => say!(goods::would_drop, names = names),
        (names, more) => say!(goods::would_drop_and, names = names, more = more),
    };
    let back = match named(&mut moves.iter().filter(on), book) {
        (names, _) if names.is_empty() => names,
        (names, 0) => say!(goods::would_come_back, names = names),
        (names, more) => say!(goods::would_come_back_and, names = names, more = more),
    };
    let mut said = vec![say!(goods::drinks_affected, sizes = moves.len()), drop, back];
    said.retain(|sentence| !sentence.is_empty());
    said.join(" ")
}

/// Why a price cannot be dated so.
pub fn day_error(error: DayError) -> String {
    match error {
        DayError::Taken(on) => say!(goods::day_taken, day = day(on)),
        DayError::NotAfter(on) => say!(goods::day_too_early, day = day(on)),
        DayError::NotBefore(on) => say!(goods::day_too_late, day = day(on)),
    }
}

/// What the history of a pack shows.
pub fn history(history: &History, speaker: &Speaker) -> String {
    let (Some(first), Some(last)) = (history.heard.first(), history.heard.last()) else { return String::new() };
    let money = |price| speaker.money(price);
    if history.heard.len() == 1 {
        return say!(goods::quoted_once, price = money(last.price), day = day(last.day));
    }
    let (low, high) = (history.lowest, history.highest);
    if low.price == high.price {
        return say!(goods::always_quoted, price = money(last.price), first = day(first.day), last = day(last.day));
    }
    let (from, to) = (day(first.day), day(last.day));
    let (first_price, last_price) = (money(first.price), money(last.price));
    let moved = match more(first.price, last.price) {
        Some(change) => {
            let sign = if change.is_positive() { "+" } else { "" };
            let change = [sign, &speaker.percent(change)].concat();
            say!(goods::price_moved_by, first = first_price, from = from, last = last_price, on = to, change = change)
        }
        None => say!(goods::price_moved, first = first_price, from = from, last = last_price, on = to),
    };
    let (low_day, high_day) = (day(low.day), day(high.day));
    let (low, high) = (money(low.price), money(high.price));
    [moved, say!(goods::price_range, low = low, lowday = low_day, high = high, highday = high_day)].join(" ")
}

/// The days that an axis spans: "Day, 2026", "Day, 2025 to 2026".
pub fn days_axis(first: Date, last: Date) -> String {
    let (from, to) = (first.parts().0, last.parts().0);
    if from == to {
        return say!(goods::days_of_year, year = to.to_string());
    }
    say!(goods::days_of_years, from = from.to_string(), last = to.to_string())
}

/// Offers by name, the first few, and how many more there are.
fn named(moves: &mut dyn Iterator<Item = &OfferChange>, book: &Book) -> (String, usize) {
    let names: Vec<String> = moves.map(|moved| book.name(Key::Offer(moved.offer))).collect();
    let said = names.get(..NAMED).unwrap_or(&names).join("; ");
    (said, names.len().saturating_sub(NAMED))
}
