//! Steps that can be taken back: when they were done, and what stands in the way.

use super::costs;
use super::refusals::called_first;
use super::{Speaker, commission_base, day, measures, month, overhead_per, short_day, time_of_day};
use crate::book::{Book, Change, Clash, CommissionBase, FlatCost, Found, Key, OverheadPer, Patch, Step, Tree};
use crate::drink::label::Law;
use crate::foundation::measure::{
    Amount, Date, Density, Exact, LengthUnit, MOST_PLACES, Money, Month, Share, Time, TypedLength, Unit,
};
use crate::say;

/// How many steps are named before the rest is counted.
const NAMED: usize = 3;

/// When a step was done, by its day, hour and minute where the person is: "10:42", "Yesterday
/// 17:05", "23 Nov 17:05", "23 Nov 2025".
pub fn moment(on: Date, hour: u32, minute: u32, today: Date) -> String {
    let time = time_of_day(hour, minute);
    match today.days_since(on) {
        0 => time,
        1 => say!(common::yesterday_at, time = time),
        _ if today.parts().0 == on.parts().0 => format!("{} {time}", short_day(on)),
        _ => day(on),
    }
}

/// A day and time that hold on other days too: "23 Nov 2026 17:05".
pub fn day_and_time(on: Date, hour: u32, minute: u32) -> String {
    format!("{} {}", day(on), time_of_day(hour, minute))
}

/// What a step did: of one field its values, in the language in force, "Case price: $24.00 to $26.00"; anything
/// else by the name under which it was done.
pub fn did(name: &str, patch: &Patch, speaker: &Speaker) -> String {
    values(patch, speaker).unwrap_or_else(|| name.to_string())
}

fn values(patch: &Patch, speaker: &Speaker) -> Option<String> {
    let mut keys = patch.keys();
    let key = keys.next().filter(|_| keys.next().is_none())?;
    let changes: Vec<&Change> = patch.changes_of(key).collect();
    let is_price = |change: &&&Change| fields(&change.path).last() == Some(&"price");
    // Of a price that is quoted the date and the price history change too.
    let change = match (changes.iter().find(is_price), changes.as_slice()) {
        (Some(price), _) => price,
        (None, [only]) => only,
        _ => return None,
    };
    let fields = fields(&change.path);
    let field = what(key, &fields, speaker).filter(|field| *field != say!(refusals::some_field))?;
    let said = |stands: &Option<Tree>| value(key, stands.as_ref(), &fields, speaker);
    let (was, now) = (said(&change.before)?, said(&change.after)?);
    (was != now).then(|| say!(refusals::step_values, field = field, was = was, now = now))
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
    let named = later.iter().take(NAMED);
    let named: Vec<String> =
        named.map(|(name, when)| say!(refusals::step_and_time, step = name, when = when)).collect();
    let steps = named.join("; ");
    match later.len().saturating_sub(NAMED) {
        0 => say!(refusals::undo_first, steps = steps),
        more => say!(refusals::undo_first_and_more, steps = steps, more = super::number(more)),
    }
}

/// The step that takes another back.
pub fn undo_of(name: &str) -> String {
    say!(refusals::undo_step, step = name)
}

/// That a step was taken back.
pub fn undone(name: &str) -> String {
    say!(refusals::undone, step = name)
}

/// That a step was done again.
pub fn redone(name: &str) -> String {
    say!(refusals::redone, step = name)
}

/// Why a step was not taken back: `why` is a sentence.
pub fn not_undone(name: &str, why: &str) -> String {
    say!(refusals::not_undone, step = name, why = why)
}

/// Why a step was not done again.
pub fn not_redone(name: &str, why: &str) -> String {
    say!(refusals::not_redone, step = name, why = why)
}

/// Another tab took a step back before.
pub fn already_undone(name: &str) -> String {
    say!(refusals::already_undone, step = name)
}

/// Another tab did a step again before.
pub fn already_redone(name: &str) -> String {
    say!(refusals::already_redone, step = name)
}

/// What was changed since, so that a step cannot be walked over: which field, what is there now,
/// and what to do.
pub fn changed_since(clashes: &[Clash], book: &Book, speaker: &Speaker) -> String {
    let Some(First { clash, fields, what, more }) = First::of(clashes, speaker) else { return String::new() };
    if !book.contains(clash.key) {
        return say!(refusals::changed_since_gone).to_string();
    }
    let name =
        if clash.key == Key::Settings { say!(refusals::settings).to_string() } else { called_first(book, clash.key) };
    let Some(field) = what else {
        return say!(refusals::changed_since_record, name = name);
    };
    let now = match (clash.found, value(clash.key, clash.stands.as_ref(), &fields, speaker)) {
        (Found::Value, Some(value)) => say!(refusals::changed_since_to, name = name, field = field, value = value),
        (Found::Removed, _) => say!(refusals::changed_since_removed, name = name, field = field),
        (Found::Value | Found::OtherForm, _) => say!(refusals::changed_since_form, name = name, field = field),
    };
    let by_hand = if more > 0 { say!(refusals::changes_by_hand) } else { say!(refusals::change_by_hand) };
    let said = [Some(now), others(more), Some(by_hand.to_string())];
    said.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// The first of several clashes, as it is told.
pub(super) struct First<'a> {
    /// The clash.
    pub(super) clash: &'a Clash,
    /// The names of the fields on the way to it.
    pub(super) fields: Vec<&'a str>,
    /// Its field by the trade's name. It is `None` for a whole record.
    pub(super) what: Option<&'static str>,
    /// How many more there are.
    pub(super) more: usize,
}

impl First<'_> {
    pub(super) fn of<'a>(clashes: &'a [Clash], speaker: &Speaker) -> Option<First<'a>> {
        // Of a price that is quoted the date changes too: the price says more.
        let price = clashes.iter().find(|clash| clash.field() == Some("price"));
        let clash = price.or(clashes.first())?;
        let fields = fields(&clash.path);
        let what = what(clash.key, &fields, speaker);
        Some(First { clash, fields, what, more: clashes.len().saturating_sub(1) })
    }
}

/// How many other fields changed too, as a sentence. Returns `None` if no others did.
pub(super) fn others(more: usize) -> Option<String> {
    (more > 0).then(|| say!(refusals::other_fields, fields = more))
}

/// The names of the fields on the way to a clash, without the kind of the record.
fn fields(path: &[Step]) -> Vec<&str> {
    let fields = path.iter().filter_map(|step| match step {
        Step::Field(name) => Some(name.as_str()),
        Step::Element(_) | Step::Order => None,
    });
    fields.skip(1).collect()
}

/// A field by the trade's name. Returns `None` for a whole record.
fn what(key: Key, fields: &[&str], speaker: &Speaker) -> Option<&'static str> {
    let units = speaker.units();
    let what = match (key, fields) {
        (_, []) => return None,
        (_, ["name"]) => say!(common::name),
        (Key::Settings, _) => of_settings(fields, speaker.law()),
        (Key::Drink(_), [field]) if flat_cost(field).is_some() => flat_cost(field).map(costs::flat_cost)?,
        (Key::Drink(_), ["unsold"]) => say!(drinks::waste),
        (Key::Drink(_), ["target"]) => say!(common::target_margin),
        (Key::Ingredient(_), ["trim-yield"]) => say!(goods::trim_yield),
        (Key::Ingredient(_), ["press-yield"]) => say!(goods::juice_yield),
        (Key::Ingredient(_), ["soak-yield"]) => say!(goods::soaked_weight),
        (Key::Ingredient(_), ["density"]) => measures::drink_density(units),
        (Key::Ingredient(_), ["juice-density"]) => measures::juice_density(units),
        (Key::Ingredient(_), ["piece-weight"]) => say!(goods::piece_weight),
        (Key::Ingredient(_), ["allergens"]) => say!(labels::allergens),
        (Key::Ingredient(_), ["nuts"]) => say!(labels::which_nuts),
        (Key::Ingredient(_), ["parts"]) => say!(labels::parts),
        (Key::Ingredient(_), ["sold-as"]) => say!(goods::name_on_labels),
        (Key::Ingredient(_), ["produce"]) => say!(goods::kind_of_ingredient),
        (Key::Ingredient(_), ["season", "trim-yield"]) => say!(goods::season_trim_yield),
        (Key::Ingredient(_), ["season", "press-yield"]) => say!(goods::season_juice_yield),
        (Key::Ingredient(_), ["season", "from"]) => say!(goods::season_starts),
        (Key::Ingredient(_), ["season", "to"]) => say!(goods::season_ends),
        (Key::Ingredient(_), ["season"]) => say!(goods::season),
        (Key::Ingredient(_) | Key::Container(_), ["starting", ..]) => say!(goods::starting_figure),
        (Key::Ingredient(_), ["weighings", ..]) => say!(refusals::weighings),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "price"]) => say!(goods::case_price),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "day"]) => say!(refusals::price_date),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "contents"]) => say!(goods::pack_size),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "supplier"]) => say!(goods::supplier),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "surcharge"]) => say!(goods::delivery_or_deposit),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "at-a-time"]) => say!(goods::packs_per_order),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "earlier", ..]) => say!(market::price_history),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "tiers", "price"]) => say!(goods::volume_price),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", "tiers", ..]) => say!(refusals::volume_pricing),
        (Key::Ingredient(_) | Key::Packaging(_), ["packs", ..]) => say!(goods::packs),
        (Key::Ingredient(_) | Key::Packaging(_), ["on-hand", "day"]) => say!(refusals::count_date),
        (Key::Ingredient(_) | Key::Packaging(_), ["on-hand", ..]) => say!(counter::on_hand),
        (Key::Packaging(_), ["part"]) => say!(goods::packaging_type),
        (Key::PackagingSet(_), _) | (Key::Container(_), ["set" | "shared", ..]) => say!(common::packaging),
        (Key::Container(_), ["brimful", ..]) => say!(goods::brimful_capacity),
        (Key::Container(_), ["deposit"]) => say!(goods::deposit),
        (Key::Container(_), ["declared"]) => say!(labels::labeled_size),
        (Key::Container(_), ["headspace", ..]) => say!(labels::headspace),
        (Key::Drink(_), ["kind"]) => say!(drinks::drink_type),
        (Key::Drink(_), ["reference"]) => say!(drinks::recipe_makes),
        (Key::Drink(_), ["lines", "amount"]) => say!(drinks::recipe_amount),
        (Key::Drink(_), ["lines", "ice", "melted"]) => say!(drinks::ice_melted),
        (Key::Drink(_), ["lines", ..]) => say!(drinks::recipe),
        (Key::Drink(_), ["air"]) => say!(drinks::air),
        (Key::Drink(_), ["process-loss"]) => say!(drinks::press_or_pour_loss),
        (Key::Drink(_), ["tax-rate"]) => super::sales_tax_rate(speaker.law()),
        (Key::Drink(_), ["labour", "batch-volume"]) => say!(drinks::batch_volume),
        (Key::Drink(_), ["labour", "batch"]) => say!(drinks::drinks_per_batch),
        (Key::Drink(_), ["labour", ..]) => say!(drinks::labor),
        (Key::Drink(_), ["treated"]) => say!(labels::treatment),
        (Key::Drink(_), ["ph"]) => say!(labels::measured_ph),
        (Key::Drink(_), ["keep-refrigerated"]) => say!(labels::keep_refrigerated),
        (Key::Drink(_), ["keeps-days"]) => say!(labels::use_within),
        (Key::Offer(_), ["price"]) => say!(drinks::menu_price),
        (Key::Offer(_), ["weekly"]) => say!(common::drinks_sold_per_week),
        (Key::Offer(_), ["service"]) => say!(labels::how_sold),
        (Key::Offer(_), ["filling", "batch"]) => say!(labels::packages_per_batch),
        (Key::Offer(_), ["filling", "batch-risk"]) => say!(labels::short_batch_risk),
        (Key::Offer(_), ["filling", "measured-at"]) => say!(labels::measured_at),
        (Key::Offer(_), ["filling", ..]) => say!(common::fill),
        (Key::Week(_), _) => say!(refusals::sales),
        (Key::SeenPrice(_), ["place"]) => say!(decide::place),
        (Key::SeenPrice(_), ["size"]) => say!(common::size),
        (Key::SeenPrice(_), ["price"]) => say!(common::price),
        (Key::SeenPrice(_), ["day"]) => say!(refusals::date),
        (Key::Scenario(_), ["offers", ..]) => say!(refusals::menu),
        (Key::Batch(_), ["makes", "units"]) => say!(counter::drinks_to_make),
        (Key::Batch(_), ["makes", "filled"]) => say!(refusals::filled),
        (Key::Batch(_), ["makes", "off-shelf"]) => say!(refusals::from_the_shelf),
        (Key::Batch(_), ["makes", ..]) => say!(refusals::drinks),
        (Key::Batch(_), ["ready", ..]) => say!(refusals::ready),
        (Key::BuyingList, ["lines", "packs"]) => say!(refusals::packs_to_buy),
        (Key::BuyingList, ["lines", "paid"]) => say!(refusals::price_paid),
        (Key::BuyingList, ..) => say!(refusals::shopping_lines),
        _ => say!(refusals::some_field),
    };
    Some(what)
}

/// A field of the settings.
fn of_settings(fields: &[&str], law: Law) -> &'static str {
    match fields {
        [field] if flat_cost(field).is_some() => flat_cost(field).map_or("", costs::flat_cost),
        ["tax", ..] => super::sales_tax(law),
        ["tax-by-kind", ..] => say!(book::tax_by_kind),
        ["deposit-taxed"] => say!(book::deposit_taxed),
        ["overhead-per"] => say!(book::overhead_per),
        ["payment-fee", "drinks"] => say!(book::drinks_per_payment),
        ["payment-fee", "share"] => say!(book::card_fee),
        ["payment-fee", ..] => say!(common::fee_per_transaction),
        ["commission"] => say!(book::app_commission),
        ["commission-on"] => say!(book::commission_on),
        ["reductions", "discounts"] => say!(book::discounts),
        ["reductions", "free"] => say!(book::free_drinks),
        ["reductions", "marked-down"] => say!(book::marked_down),
        ["reductions", "marked-down-to"] => say!(book::marked_down_to),
        ["reductions"] => say!(book::below_menu_price),
        ["wage"] => say!(book::hourly_wage),
        ["covers"] => say!(book::margin_figured_on),
        ["endings"] => say!(book::price_endings),
        ["currency"] => say!(book::currency),
        ["units"] => say!(book::units),
        ["till", ..] => say!(refusals::register_columns),
        ["price-days"] => say!(book::flag_prices_older),
        ["scale-step"] => say!(book::scale_rounds_to),
        ["jug-step"] => say!(book::cup_marks),
        ["unsold"] => say!(drinks::waste),
        ["target"] => say!(common::target_margin),
        _ => say!(refusals::some_field),
    }
}

/// The flat cost that is stored in this field.
fn flat_cost(field: &str) -> Option<FlatCost> {
    FlatCost::ALL.iter().copied().find(|cost| cost.stored_name() == field)
}

/// The value of this stored name.
fn by_name<T: Copy>(all: &[T], stored: fn(T) -> &'static str, name: &str) -> Option<T> {
    all.iter().copied().find(|value| stored(*value) == name)
}

/// What holds where a field stands empty: most are blank, others are stored only where they are not usual.
fn usual(fields: &[&str], speaker: &Speaker) -> String {
    match fields {
        ["deposit-taxed"] => say!(refusals::no).to_string(),
        ["overhead-per"] => overhead_per(OverheadPer::default()).to_string(),
        ["commission-on"] => commission_base(CommissionBase::default()).to_string(),
        ["payment-fee", "drinks"] | ["labour", "batch"] => speaker.number(Exact::ONE),
        ["deposit"] => speaker.money(Money::ZERO),
        _ => say!(refusals::no_value).to_string(),
    }
}

/// What stands in a field, as a person would read it. Returns `None` if no text says that.
pub(super) fn value(key: Key, stands: Option<&Tree>, fields: &[&str], speaker: &Speaker) -> Option<String> {
    let text = match stands {
        None | Some(Tree::Nothing) => return Some(usual(fields, speaker)),
        Some(Tree::Text(text)) => text,
        Some(Tree::Flag(is)) if fields.last() == Some(&"deposit-taxed") => {
            return Some(if *is { say!(refusals::yes) } else { say!(refusals::no) }.to_string());
        }
        Some(Tree::Fields(of_kind)) if fields.last() == Some(&"tax-by-kind") => {
            let rate = of_kind.iter().find(|(name, _)| name == "rate").map(|(_, rate)| rate);
            return value(key, rate, &["rate"], speaker);
        }
        Some(Tree::Flag(_) | Tree::List(_) | Tree::Fields(_)) => return None,
    };
    let number = |text: &str| Exact::from_plain(text, MOST_PLACES);
    let money = |text: &str| Some(speaker.money(Money::from_major(number(text)?)));
    match fields.last().copied()? {
        "price" | "surcharge" | "paid" | "wage" | "fixed" | "deposit" => money(text),
        field if flat_cost(field).is_some() => money(text),
        "rate" | "tax-rate" => Some(super::tax_rate(Share::from_fraction(number(text)?), speaker)),
        "trim-yield" | "press-yield" | "soak-yield" | "air" | "process-loss" | "unsold" | "target" | "commission"
        | "share" | "accepted" | "batch-risk" | "discounts" | "free" | "marked-down" | "marked-down-to" | "melted" => {
            let share = Share::from_fraction(number(text)?);
            share.percent().is_ok().then(|| speaker.percent(share))
        }
        "measured-at" => {
            let (degrees, scale) = text.split_once(' ')?;
            Some(format!("{} °{scale}", speaker.number(number(degrees)?)))
        }
        "overhead-per" => {
            by_name(OverheadPer::ALL, OverheadPer::stored_name, text).map(|it| overhead_per(it).to_string())
        }
        "commission-on" => {
            by_name(CommissionBase::ALL, CommissionBase::stored_name, text).map(|it| commission_base(it).to_string())
        }
        "from" | "to" if fields.first() == Some(&"season") => by_name(Month::ALL, Month::stored_name, text).map(month),
        "day" => Date::from_text(text).map(day),
        "name" | "supplier" | "nuts" | "parts" | "sold-as" => Some(text.clone()),
        "place" if matches!(key, Key::SeenPrice(_)) => Some(text.clone()),
        "density" | "juice-density" => Some(speaker.density(Density::from_grams_per_millilitre(number(text)?))),
        "per-drink" | "per-batch" => Some(speaker.typed_time(Time::from_seconds(number(text)?))),
        "per-litre" => Some(speaker.typed_labor(Time::from_seconds(number(text)?))),
        "piece-weight" => Some(format!("{} g", speaker.number(number(text)?))),
        _ => match text.split_once(' ') {
            Some((amount, unit)) => {
                let number = number(amount)?;
                let amount = Unit::from_symbol(unit).map(|unit| speaker.amount(Amount::new(number, unit)));
                let length = || Some(speaker.typed_length(TypedLength::new(number, LengthUnit::from_symbol(unit)?)));
                amount.or_else(length)
            }
            None => number(text).map(|number| speaker.number(number)),
        },
    }
}
