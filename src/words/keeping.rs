//! What stands between a person and a saved book: what could not be added or deleted, what is not
//! saved yet, and what another tab did in the meantime.

use super::Speaker;
use super::fault;
use super::kinds::named;
use super::refusals::{called, refusal};
use super::steps::{First, others, value};
use crate::book::{Book, Clash, Found, Key, Refusal};
use crate::say;
use crate::store::{BookEntry, Conflict, ConflictReason, Fault, Saving};

/// Why a new book is not on the device.
pub fn not_added(name: &str, why: &Fault) -> String {
    match why {
        Fault::Full => say!(first::not_added_no_room, book = name),
        why => [say!(first::not_added, book = name), fault(why)].join(" "),
    }
}

/// Why a book is still on the device.
pub fn not_deleted(name: Option<&str>, why: &Fault) -> String {
    let not =
        name.map_or_else(|| say!(first::damaged_not_deleted).to_string(), |name| say!(first::not_deleted, book = name));
    let why = match why {
        Fault::Full => say!(first::no_room_try_again).to_string(),
        why => fault(why),
    };
    [not, why].join(" ")
}

/// What would be lost if the person left now. Returns `None` if nothing would.
pub fn not_saved(saving: &Saving) -> Option<String> {
    let lost = match saving {
        _ if !saving.at_risk() => return None,
        Saving::Saved { .. } => return None,
        Saving::Saving { .. } => say!(book::still_saving),
        Saving::NotSaved { waiting: 0, .. } => say!(book::on_this_screen_only),
        Saving::NotSaved { .. } | Saving::InConflict { .. } => say!(book::changes_not_saved),
    };
    Some(lost.to_string())
}

/// What tells a book in the list from another of its name: how many drinks it has, and when it
/// was changed, in words.
pub fn told_apart(entry: &BookEntry, changed: Option<String>) -> String {
    let drinks = entry.drinks.map(|count| say!(common::book_holds_drinks, drinks = count));
    let changed = changed.map(|when| say!(common::book_last_changed, when = when));
    drinks.into_iter().chain(changed).collect::<Vec<_>>().join(" · ")
}

/// The name of the step by which a person gave up a change of this name for another tab's.
pub fn took_theirs(name: &str) -> String {
    say!(refusals::take_theirs, step = name)
}

/// The name of the step by which a person kept a change of this name over another tab's.
pub fn kept_mine(name: &str) -> String {
    say!(refusals::keep_mine, step = name)
}

/// What is in conflict, if a locked device may not decide on it.
pub fn unlock_to_decide(said: String) -> String {
    [&said, say!(refusals::unlock_to_decide)].join(" ")
}

/// Why the first of several changes is not saved, and how many wait after it.
pub fn conflicts(conflicts: &[Conflict], book: &Book, speaker: Option<&Speaker>) -> String {
    let Some(first) = conflicts.first() else { return String::new() };
    let sentence = conflict(first, book, speaker);
    match conflicts.len() {
        1 => sentence,
        count => say!(refusals::conflict_of_several, count = super::number(count), said = sentence),
    }
}

/// Why a change is not saved: what another tab did in the meantime, by the names that this tab
/// knows, and what becomes of it. Without a speaker no figures are given: prices are not for
/// everybody.
pub fn conflict(change: &Conflict, book: &Book, speaker: Option<&Speaker>) -> String {
    let gone = gone(change);
    let did = match (&gone[..], &change.why) {
        ([], ConflictReason::Changed(clashes)) => changed(clashes, change, book, speaker),
        ([], ConflictReason::Refused(Refusal::InUse { key, by })) => in_use(*key, by, change, book),
        ([], ConflictReason::Refused(why)) => refusal(why, book),
        ([], ConflictReason::NoRecord(key)) => say!(refusals::another_tab_changed, name = name(change, book, *key)),
        (gone, _) => say!(refusals::another_tab_deleted, names = gone.join(", ")),
    };
    let then = match (change.can_be_kept, &gone[..]) {
        (true, []) => say!(refusals::keep_or_take),
        (true, [_]) => say!(refusals::keep_one_back_or_take),
        (true, _) => say!(refusals::keep_several_back_or_take),
        (false, _) => say!(refusals::does_not_fit),
    };
    say!(refusals::conflict, step = change.name(), did = did, then = then)
}

/// What another tab deleted, by kind and name: not the parts that went with it.
fn gone(change: &Conflict) -> Vec<String> {
    let gone = change.gone.iter().filter(|key| match key {
        Key::Offer(id) => {
            !change.gone.contains(&Key::Drink(id.drink)) && !change.gone.contains(&Key::Container(id.container))
        }
        _ => true,
    });
    gone.map(|key| named(*key, &called(&change.seen, *key))).collect()
}

pub(super) fn listed(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [before @ .., last] => say!(refusals::and_list, before = before.join(", "), last = last),
    }
}

fn changed(clashes: &[Clash], change: &Conflict, book: &Book, speaker: Option<&Speaker>) -> String {
    let Some(First { clash, fields, what, more }) = First::of(clashes, &Speaker::plain_of(book)) else {
        return String::new();
    };
    let name = name(change, book, clash.key);
    let Some(field) = what else {
        return match clash.wanted {
            Some(_) => say!(refusals::another_tab_changed, name = name),
            None => say!(refusals::another_tab_changed_deleted, name = name),
        };
    };
    let patch = change.patch();
    let now = patch.changes_of(clash.key).find(|now| now.path == clash.path);
    let (theirs, mine) = match now {
        Some(now) => (now.before.as_ref(), now.after.as_ref()),
        None => (clash.stands.as_ref(), clash.wanted.as_ref()),
    };
    let said = |tree| speaker.and_then(|speaker| value(clash.key, tree, &fields, speaker));
    let did = match (clash.found, said(theirs).zip(said(mine))) {
        (Found::Value, Some((theirs, mine))) => {
            say!(refusals::another_tab_changed_to, name = name, field = field, theirs = theirs, mine = mine)
        }
        (Found::Removed, _) => say!(refusals::another_tab_removed, name = name, field = field),
        (Found::Value | Found::OtherForm, _) => {
            say!(refusals::another_tab_changed_field, name = name, field = field)
        }
    };
    [Some(did), others(more)].into_iter().flatten().collect::<Vec<_>>().join(" ")
}

fn in_use(key: Key, by: &[Key], change: &Conflict, book: &Book) -> String {
    let users: Vec<String> = by.iter().take(3).map(|user| called(book, *user)).collect();
    say!(refusals::another_tab_uses, name = name(change, book, key), users = listed(&users))
}

/// What a record is called here, or else there.
fn name(change: &Conflict, book: &Book, key: Key) -> String {
    match key {
        Key::Settings => say!(refusals::the_settings).to_string(),
        key if change.seen.contains(key) => called(&change.seen, key),
        key => called(book, key),
    }
}
