//! What suppliers quote: what a price does, how old it is, and packs beside each other.

use super::{Speaker, day, stage};
use crate::book::{Book, DayError, Goods, Key, Pack, Quoted};
use crate::buying::quotes::{Age, Compared, History, Usable, more};
use crate::drink::ledger::{OfferChange, OfferStatus};
use crate::foundation::measure::{Date, Exact, Share, Unit};

/// How many names are said before the rest is counted.
const NAMED: usize = 5;

/// The usable amount that a cost is of: "per fl oz pressed", "per piece".
pub fn per(usable: Usable, speaker: &Speaker) -> String {
    let amount = usable.amount;
    match amount.unit {
        Unit::Piece => "per piece".to_string(),
        unit if amount.number == Exact::ONE => format!("per {unit} {}", stage(usable.stage)),
        _ => format!("per {} {}", speaker.amount(amount), stage(usable.stage)),
    }
}

/// When a price was heard: "heard today", "heard on 12 Oct 2026".
pub fn age(age: Age, today: Date) -> String {
    match age {
        Age::Fresh(on) if on == today => "heard today".to_string(),
        Age::Fresh(on) => format!("heard on {}", day(on)),
        Age::Old(on) => format!("old: heard on {}", day(on)),
        Age::Undated => "no day noted".to_string(),
    }
}

/// Which sizes fell under target. Returns an empty text if none did.
pub fn fell(moves: &[OfferChange], book: &Book) -> String {
    let names = named(&mut moves.iter().filter(|moved| moved.fell()), book);
    if names.is_empty() { names } else { format!("Now under target: {names}.") }
}

/// The menu price that would mend the worst of those that fell. Returns an empty text if none did.
pub fn worst(moves: &[OfferChange], book: &Book, speaker: &Speaker) -> String {
    let fallen = moves.iter().find(|moved| moved.fell());
    let Some((fallen, snapshot)) = fallen.and_then(|moved| moved.after.map(|snapshot| (moved, snapshot))) else {
        return String::new();
    };
    let name = book.name(Key::Offer(fallen.offer));
    let margin = snapshot.margin.map_or(String::new(), |margin| format!(" at {}", speaker.percent(margin)));
    let mend = match (snapshot.suggested, snapshot.price) {
        (Some(suggested), Some(price)) => {
            format!("Ask {} instead of {} and it is on target.", speaker.money(suggested), speaker.money(price))
        }
        _ => "No menu price alone brings it to its target.".to_string(),
    };
    format!("Worst is {name}{margin}. {mend}")
}

/// Another way to the same.
pub fn or(sentence: String) -> String {
    let mut letters = sentence.chars();
    let first = letters.next().map(|first| first.to_lowercase().to_string()).unwrap_or_default();
    format!("Or {first}{}", letters.as_str())
}

/// A pack by its supplier and contents: "Tansywold Produce, 40 lb".
pub fn pack(pack: &Pack, speaker: &Speaker) -> String {
    let holds = speaker.amount(pack.contents);
    if pack.supplier.is_empty() { holds } else { format!("{}, {holds}", pack.supplier) }
}

/// Whether the pack bought now is the cheapest, and if not by how much.
pub fn bought_now(compared: &[Compared], per: Usable, goods: Goods, book: &Book, speaker: &Speaker) -> String {
    let packs = book.packs(goods);
    let per = self::per(per, speaker);
    let cheapest = compared.first().and_then(|one| Some((one.pack, one.cost.as_ref().ok().copied()?)));
    let now = packs.first().and_then(|now| compared.iter().find(|one| one.pack == now.id));
    let (Some((cheapest, lowest)), Some(now)) = (cheapest, now) else {
        return "None of these can be compared yet.".to_string();
    };
    let cost = match &now.cost {
        Ok(cost) if *cost == lowest => return "No other pack is cheaper than the one you buy.".to_string(),
        Ok(cost) => *cost,
        Err(_) => return "The pack you buy cannot be compared with the others.".to_string(),
    };
    let named = packs.iter().find(|pack| pack.id == cheapest).map(|cheapest| pack(cheapest, speaker));
    let less = more(cost, lowest).map_or(String::new(), |less| {
        let less = Share::from_fraction(less.fraction().abs());
        format!(", {} less", speaker.percent(less))
    });
    let (lowest, cost) = (speaker.fine_money(lowest), speaker.fine_money(cost));
    format!("{} is cheaper than what you buy: {lowest} instead of {cost} {per}{less}.", named.unwrap_or_default())
}

/// How much dearer a pack is than the cheapest: "+9.2 %", "cheapest".
pub fn above_cheapest(compared: &Compared, speaker: &Speaker) -> String {
    match (&compared.cost, compared.above_cheapest) {
        (Err(_), _) => String::new(),
        (Ok(_), Some(more)) if more.is_positive() => format!("+{}", speaker.percent(more)),
        (Ok(_), Some(_)) => "cheapest".to_string(),
        // The cheapest is free.
        (Ok(cost), None) if cost.is_zero() => "free".to_string(),
        (Ok(_), None) => "not free".to_string(),
    }
}

/// What buying another pack would do to the menu.
pub fn would_move(moves: &[OfferChange], book: &Book) -> String {
    let on = |moved: &&OfferChange| {
        let status = |snapshot: Option<crate::drink::ledger::Snapshot>| snapshot.map(|snapshot| snapshot.status);
        status(moved.before) == Some(OfferStatus::UnderTarget) && status(moved.after) == Some(OfferStatus::OnTarget)
    };
    let mut said = vec![match moves.len() {
        0 => return "No size would move.".to_string(),
        1 => "1 size would move.".to_string(),
        count => format!("{count} sizes would move."),
    }];
    let fallen = named(&mut moves.iter().filter(|moved| moved.fell()), book);
    said.push(if fallen.is_empty() {
        "None would fall under target.".to_string()
    } else {
        format!("Under target would fall: {fallen}.")
    });
    let back = named(&mut moves.iter().filter(on), book);
    if !back.is_empty() {
        said.push(format!("Back on target would be: {back}."));
    }
    said.join(" ")
}

/// Why a price cannot be dated so.
pub fn day_error(error: DayError) -> String {
    match error {
        DayError::Taken(on) => {
            format!("A price of {} is there already. Choose another day, or take that price out first.", day(on))
        }
        DayError::NotAfter(on) => {
            format!("The price before it is of {}. Choose a later day, or take that price out first.", day(on))
        }
        DayError::NotBefore(on) => format!("The price you pay now is of {}. Choose an earlier day.", day(on)),
    }
}

/// What the history of a pack shows.
pub fn history(history: &History, speaker: &Speaker) -> String {
    let said = |quoted: Quoted| format!("{} on {}", speaker.money(quoted.price), day(quoted.day));
    let (Some(first), Some(last)) = (history.heard.first(), history.heard.last()) else { return String::new() };
    if history.heard.len() == 1 {
        return format!("Heard once: {}.", said(*last));
    }
    if history.lowest.price == history.highest.price {
        let price = speaker.money(last.price);
        return format!("Always {price}: first heard on {}, last on {}.", day(first.day), day(last.day));
    }
    let change = more(first.price, last.price).map_or(String::new(), |change| {
        let sign = if change.is_positive() { "+" } else { "" };
        format!(", {sign}{}", speaker.percent(change))
    });
    format!(
        "From {} to {}{change}. The lowest was {}, the highest {}.",
        said(*first),
        said(*last),
        said(history.lowest),
        said(history.highest)
    )
}

/// The days that an axis spans: "Day, 2026", "Day, 2025 to 2026".
pub fn days_axis(first: Date, last: Date) -> String {
    let (from, to) = (first.parts().0, last.parts().0);
    if from == to { format!("Day, {to}") } else { format!("Day, {from} to {to}") }
}

/// Offers by name, the first few; the rest counted.
fn named(moves: &mut dyn Iterator<Item = &OfferChange>, book: &Book) -> String {
    let names: Vec<String> = moves.map(|moved| book.name(Key::Offer(moved.offer))).collect();
    let said = names.get(..NAMED).unwrap_or(&names).join("; ");
    match names.len().saturating_sub(NAMED) {
        0 => said,
        more => format!("{said} and {more} more"),
    }
}
