//! What stands between a person and a saved book: what could not be added or deleted, what is not
//! saved yet, and what another tab did in the meantime.

use super::Speaker;
use super::fault;
use super::refusals::{called, refusal, the};
use super::steps::{First, inside, others, past, value};
use crate::book::{Book, Clash, Found, Key, Refusal};
use crate::store::{BookEntry, Conflict, ConflictReason, Fault, Saving};

/// Why a new book is not on the device.
pub fn not_added(name: &str, why: &Fault) -> String {
    match why {
        Fault::Full => format!(
            "“{name}” was not added: this device has no room left. Nothing was changed. Delete what you do not need, then try again."
        ),
        why => format!("“{name}” was not added. {}", fault(why)),
    }
}

/// Why a book is still on the device.
pub fn not_deleted(name: Option<&str>, why: &Fault) -> String {
    let what = name.map_or_else(|| "The book".to_string(), |name| format!("“{name}”"));
    match why {
        Fault::Full => format!("{what} was not deleted: this device has no room left. Try again."),
        why => format!("{what} was not deleted. {}", fault(why)),
    }
}

/// What would be lost if the person left now. Returns `None` if nothing would.
pub fn not_saved(saving: &Saving) -> Option<String> {
    let lost = match saving {
        _ if !saving.at_risk() => return None,
        Saving::Saved { .. } => return None,
        Saving::Saving { .. } => "Changes are still being saved. Leave now, and they may be lost.",
        Saving::NotSaved { waiting: 0, .. } => "This book is on this screen only. Leave now, and it is lost.",
        Saving::NotSaved { .. } | Saving::InConflict { .. } => "Changes are not saved. Leave now, and they are lost.",
    };
    Some(lost.to_string())
}

/// What tells a book in the list from another of its name: how many drinks it has, and when it
/// was changed, in words.
pub fn told_apart(entry: &BookEntry, changed: Option<String>) -> String {
    let drinks = entry.drinks.map(|count| if count == 1 { "1 drink".to_string() } else { format!("{count} drinks") });
    let changed = changed.map(|when| format!("changed {}", inside(&when)));
    drinks.into_iter().chain(changed).collect::<Vec<_>>().join(", ")
}

/// The name of the step by which a person gave up a change of this name for another tab's.
pub fn took_theirs(name: &str) -> String {
    format!("Take theirs: {name}")
}

/// The name of the step by which a person kept a change of this name over another tab's.
pub fn kept_mine(name: &str) -> String {
    format!("Keep mine: {name}")
}

/// What is in conflict, if a locked device may not decide on it.
pub fn unlock_to_decide(said: String) -> String {
    format!("{said} Unlock this device to decide.")
}

/// Why the first of several changes is not saved, and how many wait after it.
pub fn conflicts(conflicts: &[Conflict], book: &Book, speaker: Option<&Speaker>) -> String {
    let Some(first) = conflicts.first() else { return String::new() };
    let sentence = conflict(first, book, speaker);
    match conflicts.len() {
        1 => sentence,
        count => format!("1 of {count}: {sentence}"),
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
        ([], ConflictReason::NoRecord(key)) => format!("Another tab changed {} too.", name(change, book, *key)),
        (gone, _) => format!("Another tab deleted {}.", listed(gone)),
    };
    let then = match (change.can_be_kept, &gone[..]) {
        (true, []) => "Keep yours, or take theirs.".to_string(),
        (true, [_]) => "Keep yours to bring it back, or take theirs.".to_string(),
        (true, _) => "Keep yours to bring them back, or take theirs.".to_string(),
        (false, _) => {
            "Yours does not fit with that change. Fix that first, then keep yours. Or take theirs.".to_string()
        }
    };
    format!("“{}” is not saved. {did} {then}", change.name())
}

/// What another tab deleted, by kind and name: not the parts that went with it.
fn gone(change: &Conflict) -> Vec<String> {
    let gone = change.gone.iter().filter(|key| match key {
        Key::Offer(id) => {
            !change.gone.contains(&Key::Drink(id.drink)) && !change.gone.contains(&Key::Container(id.container))
        }
        _ => true,
    });
    gone.map(|key| the(*key, &called(&change.seen, *key))).collect()
}

fn listed(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

fn changed(clashes: &[Clash], change: &Conflict, book: &Book, speaker: Option<&Speaker>) -> String {
    let Some(First { clash, fields, what, more }) = First::of(clashes) else { return String::new() };
    let name = name(change, book, clash.key);
    let Some((what, verb)) = what else {
        return match clash.wanted {
            Some(_) => format!("Another tab changed {name} too."),
            None => format!("Another tab changed {name}, which you deleted."),
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
            format!("Another tab changed {name}: {what} {verb} now {theirs}. Yours is {mine}.")
        }
        (Found::Removed, _) => format!("Another tab changed {name} too: {what} {} removed.", past(verb)),
        (Found::Value | Found::OtherForm, _) => format!("Another tab changed {name} too: {what}."),
    };
    format!("{did}{}", others(more))
}

fn in_use(key: Key, by: &[Key], change: &Conflict, book: &Book) -> String {
    let users: Vec<String> = by.iter().take(3).map(|user| called(book, *user)).collect();
    format!("Another tab uses {} in {}.", name(change, book, key), listed(&users))
}

/// What a record is called here, or else there.
fn name(change: &Conflict, book: &Book, key: Key) -> String {
    match key {
        Key::Settings => "the settings".to_string(),
        key if change.seen.contains(key) => called(&change.seen, key),
        key => called(book, key),
    }
}
