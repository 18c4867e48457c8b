//! Steps that can be taken back: when they were done, and what stands in the way.

use super::costs::flat_cost_is;
use super::refusals::called_first;
use super::{Speaker, day, short_day, time_of_day};
use crate::book::{Book, Clash, FlatCost, Found, Key, Step, Tree};
use crate::foundation::measure::{Date, Exact, MOST_PLACES, Money, Share};

/// How many steps are named before the rest is counted.
const NAMED: usize = 3;

/// When a step was done, by its day, hour and minute where the person is: "10:42", "Yesterday
/// 17:05", "23 Nov 17:05", "23 Nov 2025".
pub fn moment(on: Date, hour: u32, minute: u32, today: Date) -> String {
    let time = time_of_day(hour, minute);
    match today.days_since(on) {
        0 => time,
        1 => format!("Yesterday {time}"),
        _ if today.parts().0 == on.parts().0 => format!("{} {time}", short_day(on)),
        _ => day(on),
    }
}

/// A day and time that hold on other days too: "23 Nov 2026 17:05".
pub fn day_and_time(on: Date, hour: u32, minute: u32) -> String {
    format!("{} {}", day(on), time_of_day(hour, minute))
}

/// A moment as it stands inside a sentence.
pub(super) fn inside(moment: &str) -> String {
    match moment.strip_prefix("Yesterday") {
        Some(time) => format!("yesterday{time}"),
        None => moment.to_string(),
    }
}

/// What a step was done to, where its name does not say so already: "Orchard Green, Bottle".
pub fn of(name: &str, of: Option<Key>, book: &Book) -> String {
    let called = match of {
        None | Some(Key::Settings) => String::new(),
        Some(key) if !book.contains(key) => String::new(),
        Some(key) => called_first(book, key),
    };
    if name.contains(called.as_str()) { String::new() } else { called }
}

/// What has to be taken back before a step: each by its name and when.
pub fn take_back_first(later: &[(String, String)]) -> String {
    let named: Vec<String> = later.iter().take(NAMED).map(|(name, when)| format!("{name}, {when}")).collect();
    let more = match later.len().saturating_sub(NAMED) {
        0 => String::new(),
        more => format!("; and {more} more"),
    };
    format!("Take back first: {}{more}.", named.join("; "))
}

/// The step that takes another back.
pub fn undo_of(name: &str) -> String {
    format!("Undo {name}")
}

/// That a step was taken back.
pub fn undone(name: &str) -> String {
    format!("Undone: {name}.")
}

/// That a step was done again.
pub fn redone(name: &str) -> String {
    format!("Redone: {name}.")
}

/// Why a step was not taken back: `why` is a sentence.
pub fn not_undone(name: &str, why: &str) -> String {
    format!("Not undone: {name}. {why}")
}

/// Why a step was not done again.
pub fn not_redone(name: &str, why: &str) -> String {
    format!("Not redone: {name}. {why}")
}

/// Said of a step that is not kept beside the book.
pub const TOO_LARGE: &str = "Too large to keep: it can be undone until this page is left.";

/// Another tab took a step back before.
pub fn already_undone(name: &str) -> String {
    format!("Nothing to undo for {name}: another tab did the same before.")
}

/// Another tab did a step again before.
pub fn already_redone(name: &str) -> String {
    format!("Nothing to redo for {name}: another tab did the same before.")
}

/// What was changed since, so that a step cannot be walked over: which field, what is there now,
/// and what to do.
pub fn changed_since(clashes: &[Clash], book: &Book, speaker: &Speaker) -> String {
    let Some(First { clash, fields, what, more }) = First::of(clashes) else { return String::new() };
    if !book.contains(clash.key) {
        return "What it changed is not in the book any more. A later step or another tab removed it.".to_string();
    }
    let name = if clash.key == Key::Settings { "Settings".to_string() } else { called_first(book, clash.key) };
    let Some((what, verb)) = what else {
        return format!("{name} has changed since then. Change it by hand.");
    };
    let now = match (clash.found, value(clash.key, clash.stands.as_ref(), &fields, speaker)) {
        (Found::Value, Some(value)) => {
            format!("{name}: {what} {verb} now {value}, changed by a later step or in another tab.")
        }
        (Found::Removed, _) => format!("{name}: {what} {} removed since then.", past(verb)),
        (Found::Value | Found::OtherForm, _) => {
            format!("{name}: {what} {} changed since then.", if verb == "are" { "have" } else { "has" })
        }
    };
    match more {
        0 | 1 => format!("{now}{} Change it by hand.", others(more)),
        more => format!("{now}{} Change them by hand.", others(more)),
    }
}

/// The first of several clashes, as it is told.
pub(super) struct First<'a> {
    /// The clash.
    pub(super) clash: &'a Clash,
    /// The names of the fields on the way to it.
    pub(super) fields: Vec<&'a str>,
    /// Its field by the trade's name, and "is" or "are". It is `None` for a whole record.
    pub(super) what: Option<(&'static str, &'static str)>,
    /// How many more there are.
    pub(super) more: usize,
}

impl First<'_> {
    pub(super) fn of(clashes: &[Clash]) -> Option<First<'_>> {
        // Of a price that is quoted the date changes too: the price says more.
        let price = clashes.iter().find(|clash| clash.field() == Some("price"));
        let clash = price.or(clashes.first())?;
        let fields = fields(&clash.path);
        let what = what(clash.key, &fields).and_then(|what| what.rsplit_once(' '));
        Some(First { clash, fields, what, more: clashes.len().saturating_sub(1) })
    }
}

/// "was" for "is", "were" for "are".
pub(super) fn past(verb: &str) -> &'static str {
    if verb == "are" { "were" } else { "was" }
}

/// How many other fields changed too, behind what is said of the first.
pub(super) fn others(more: usize) -> String {
    match more {
        0 => String::new(),
        1 => " 1 other field changed too.".to_string(),
        more => format!(" {more} other fields changed too."),
    }
}

/// The names of the fields on the way to a clash, without the kind of the record.
fn fields(path: &[Step]) -> Vec<&str> {
    let fields = path.iter().filter_map(|step| match step {
        Step::Field(name) => Some(name.as_str()),
        Step::Element(_) | Step::Order => None,
    });
    fields.skip(1).collect()
}

/// A field by the trade's name, with its verb. Returns `None` for a whole record.
fn what(key: Key, fields: &[&str]) -> Option<&'static str> {
    let what = match (key, fields) {
        (_, []) => return None,
        (_, ["name"]) => "the name is",
        (Key::Settings | Key::Drink(_), [field]) if flat_cost(field).is_some() => flat_cost(field).map(flat_cost_is)?,
        (Key::Settings, ["tax", ..]) => "sales tax is",
        (Key::Settings, ["payment-fee", "share"]) => "the card fee is",
        (Key::Settings, ["payment-fee", ..]) => "the card fee per transaction is",
        (Key::Settings, ["commission"]) => "the delivery app commission is",
        (Key::Settings, ["wage"]) => "the hourly wage is",
        (Key::Settings | Key::Drink(_), ["unsold"]) => "the waste is",
        (Key::Settings | Key::Drink(_), ["target"]) => "the target margin is",
        (Key::Settings, ["covers"]) => "what the margin is figured on is",
        (Key::Settings, ["endings"]) => "the price endings are",
        (Key::Settings, ["currency"]) => "the currency is",
        (Key::Settings, ["units"]) => "the units are",
        (Key::Settings, ["till", ..]) => "the register's columns are",
        (Key::Settings, ["price-days"]) => "the days until a price is old are",
        (Key::Settings, ["scale-step"]) => "what the scale rounds to is",
        (Key::Settings, ["jug-step"]) => "the measuring cup marks are",
        (Key::Ingredient(_), ["trim-yield"]) => "the trim yield is",
        (Key::Ingredient(_), ["press-yield"]) => "the juice yield is",
        (Key::Ingredient(_), ["soak-yield"]) => "the soaked or brewed yield is",
        (Key::Ingredient(_), ["density"]) => "the density is",
        (Key::Ingredient(_), ["juice-density"]) => "the juice density is",
        (Key::Ingredient(_), ["piece-weight"]) => "the weight of a piece is",
        (Key::Ingredient(_), ["allergens"]) => "the allergens are",
        (Key::Ingredient(_), ["nuts"]) => "the list of nuts is",
        (Key::Ingredient(_), ["parts"]) => "the list of parts is",
        (Key::Ingredient(_), ["sold-as"]) => "the name on labels is",
        (Key::Ingredient(_), ["produce"]) => "whether it is fruit or vegetable is",
        (Key::Ingredient(_), ["weighings", ..]) => "the weighings are",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "price"]) => "the case price is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "day"]) => "the date of the price is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "contents"]) => "the pack size is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "supplier"]) => "the supplier is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "surcharge"]) => "the surcharge is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "at-a-time"]) => "the number bought at a time is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "earlier", ..]) => "the price history is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "tiers", "price"]) => "the volume price is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "tiers", ..]) => "the volume pricing is",
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", ..]) => "the packs are",
        (Key::Ingredient(_) | Key::Packaging(_), ["on-hand", "day"]) => "the date of the count is",
        (Key::Ingredient(_) | Key::Packaging(_), ["on-hand", ..]) => "the amount on hand is",
        (Key::Packaging(_), ["part"]) => "the part of the container is",
        (Key::PackagingSet(_), _) | (Key::Container(_), ["set" | "shared", ..]) => "the packaging is",
        (Key::Container(_), ["brimful", ..]) => "the brimful capacity is",
        (Key::Container(_), ["declared"]) => "the labeled size is",
        (Key::Container(_), ["headspace", ..]) => "the headspace is",
        (Key::Drink(_), ["kind"]) => "the kind of drink is",
        (Key::Drink(_), ["reference"]) => "what the recipe makes is",
        (Key::Drink(_), ["lines", "amount"]) => "an amount in the recipe is",
        (Key::Drink(_), ["lines", ..]) => "the recipe is",
        (Key::Drink(_), ["air"]) => "the air beaten in is",
        (Key::Drink(_), ["process-loss"]) => "the press or pour loss is",
        (Key::Drink(_), ["labour", ..]) => "the labor is",
        (Key::Drink(_), ["treated"]) => "the treatment is",
        (Key::Drink(_), ["ph"]) => "the pH is",
        (Key::Drink(_), ["keep-refrigerated"]) => "how to keep it is",
        (Key::Drink(_), ["keeps-days"]) => "the number of days it keeps is",
        (Key::Offer(_), ["price"]) => "the menu price is",
        (Key::Offer(_), ["weekly"]) => "the weekly number is",
        (Key::Offer(_), ["service"]) => "how it is sold is",
        (Key::Offer(_), ["filling", "batch"]) => "the number of packages in a batch is",
        (Key::Offer(_), ["filling", "batch-risk"]) => "the risk of short batches is",
        (Key::Offer(_), ["filling", "measured-at"]) => "the temperature when measured is",
        (Key::Offer(_), ["filling", ..]) => "the fill is",
        (Key::Week(_), _) => "the sales are",
        (Key::SeenPrice(_), ["place"]) => "the place is",
        (Key::SeenPrice(_), ["size"]) => "the size is",
        (Key::SeenPrice(_), ["price"]) => "the price is",
        (Key::SeenPrice(_), ["day"]) => "the date is",
        (Key::Scenario(_), ["offers", ..]) => "the menu is",
        (Key::Batch(_), ["makes", "units"]) => "the number to make is",
        (Key::Batch(_), ["makes", "filled"]) => "what is filled is",
        (Key::Batch(_), ["makes", "off-shelf"]) => "the number off the shelf is",
        (Key::Batch(_), ["makes", ..]) => "the list of drinks is",
        (Key::Batch(_), ["ready", ..]) => "what is ready is",
        (Key::BuyingList, ["lines", "packs"]) => "the number of packs is",
        (Key::BuyingList, ["lines", "paid"]) => "the price paid is",
        (Key::BuyingList, ..) => "the list is",
        _ => "a field is",
    };
    Some(what)
}

/// The flat cost that is stored in this field.
fn flat_cost(field: &str) -> Option<FlatCost> {
    FlatCost::ALL.iter().copied().find(|cost| cost.stored_name() == field)
}

/// What stands in a field, as a person would read it. Returns `None` if no text says that.
pub(super) fn value(key: Key, stands: Option<&Tree>, fields: &[&str], speaker: &Speaker) -> Option<String> {
    let text = match stands {
        None | Some(Tree::Nothing) => return Some("blank".to_string()),
        Some(Tree::Text(text)) => text,
        Some(Tree::Flag(_) | Tree::List(_) | Tree::Fields(_)) => return None,
    };
    let number = |text: &str| Exact::from_plain(text, MOST_PLACES);
    let money = |text: &str| Some(speaker.money(Money::from_major(number(text)?)));
    match fields.last().copied()? {
        "price" | "surcharge" | "paid" | "wage" | "fixed" => money(text),
        field if flat_cost(field).is_some() => money(text),
        "trim-yield" | "press-yield" | "soak-yield" | "air" | "process-loss" | "unsold" | "target" | "commission"
        | "share" | "rate" | "accepted" | "batch-risk" => {
            let share = Share::from_fraction(number(text)?);
            share.percent().is_ok().then(|| speaker.percent(share))
        }
        "measured-at" => {
            let (degrees, scale) = text.split_once(' ')?;
            Some(format!("{} °{scale}", speaker.number(number(degrees)?)))
        }
        "day" => Date::from_text(text).map(day),
        "name" | "supplier" | "nuts" | "parts" | "sold-as" => Some(text.clone()),
        "place" if matches!(key, Key::SeenPrice(_)) => Some(text.clone()),
        "density" | "juice-density" => Some(format!("{} g/mL", speaker.number(number(text)?))),
        "piece-weight" => Some(format!("{} g", speaker.number(number(text)?))),
        _ => match text.split_once(' ') {
            Some((amount, unit)) => Some(format!("{} {unit}", speaker.number(number(amount)?))),
            None => number(text).map(|number| speaker.number(number)),
        },
    }
}
