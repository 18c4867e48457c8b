//! What a tab that goes has not saved yet: written down at once, and taken up when its book is
//! opened again.

use std::collections::BTreeMap;

use super::change::Change;
use super::queue::Queue;
use crate::book::{Book, BookId, Edit, Key, Record, from_json};
use crate::store::{Drawer, Durability, Journal, Slip};

/// The changes as texts, each with all that it takes to go on with it: its name and time, how hard
/// to press, its steps, and the records before and after.
pub(super) fn texts<'a>(changes: impl Iterator<Item = &'a Change>) -> Vec<String> {
    let mut texts = Vec::new();
    for change in changes {
        let pressed = if change.durability == Durability::Strict { "strict" } else { "" };
        texts.extend([change.name.clone(), change.at.to_string(), pressed.to_string()]);
        let steps = || change.slips.iter().filter(|slip| slip.drawer == Drawer::Steps);
        texts.push(steps().count().to_string());
        for slip in steps() {
            texts.extend([slip.id.clone(), slip.text.clone().unwrap_or_default()]);
        }
        texts.push(change.is.len().to_string());
        for (key, is) in &change.is {
            let was = change.was.get(key).and_then(Option::as_ref);
            texts.extend([key.to_string(), written(was), written(is.as_ref())]);
        }
    }
    texts
}

/// Reads what [`texts`] writes; none for anything else.
fn read(book: BookId, texts: Vec<String>) -> Option<Vec<Change>> {
    let mut texts = texts.into_iter();
    let mut changes = Vec::new();
    while let Some(name) = texts.next() {
        let at = texts.next()?.parse().ok()?;
        let durability = if texts.next()? == "strict" { Durability::Strict } else { Durability::Relaxed };
        let mut slips = Vec::new();
        for _ in 0..texts.next()?.parse::<u64>().ok()? {
            let (id, text) = (texts.next()?, texts.next()?);
            slips.push(Slip { drawer: Drawer::Steps, book, id, text: Some(text).filter(|text| !text.is_empty()) });
        }
        let (mut was, mut is) = (BTreeMap::new(), BTreeMap::new());
        for _ in 0..texts.next()?.parse::<u64>().ok()? {
            let key = Key::from_text(&texts.next()?)?;
            was.insert(key, record(key, &texts.next()?)?);
            is.insert(key, record(key, &texts.next()?)?);
        }
        changes.push(Change { name, at, slips, durability, was, is, drinks: 0 });
    }
    Some(changes)
}

fn written(record: Option<&Record>) -> String {
    record.and_then(|record| serde_json::to_string(record).ok()).unwrap_or_default()
}

fn record(key: Key, text: &str) -> Option<Option<Record>> {
    match text {
        "" => Some(None),
        text => from_json::<Record>(text).ok().filter(|record| record.key() == key).map(Some),
    }
}

/// A book with what tabs that are gone left of it.
pub(in crate::store) struct Replayed {
    /// The book for the screen: what still holds is done to it.
    pub(in crate::store) book: Book,
    /// What is to be saved of that, and what is at odds.
    pub(in crate::store) queue: Queue,
    /// The notes that this came from: to be thrown away once it is saved.
    pub(in crate::store) journals: Vec<String>,
}

/// Takes up what tabs that are gone left of `stored`, whose steps are `steps`: theirs join them.
/// What was saved before they went, as its steps tell, is left out.
pub(in crate::store) fn replay(id: BookId, stored: Book, steps: &mut Vec<Slip>, orphaned: Vec<Journal>) -> Replayed {
    let (mut changes, mut journals) = (Vec::new(), Vec::new());
    for Journal { name, texts } in orphaned {
        // What another version wrote, and this one cannot read, waits for one that can.
        if let Some(read) = read(id, texts) {
            changes.extend(unsaved(read, steps));
            journals.push(name);
        }
    }
    let mut screen = stored.clone();
    for change in &changes {
        change.slips.iter().for_each(|slip| put(steps, slip));
        // How the person saw it; what cannot be shown so is at odds.
        let _ = screen.apply(&Edit::records(&screen, &change.is));
    }
    let mut queue = Queue::default();
    let book = queue.replay(changes, stored, &screen);
    Replayed { book, queue, journals }
}

/// Those of the changes of a tab that are not saved. All letters of a typing session write the same
/// step: the last of them that is stored has those before it in it.
fn unsaved(changes: Vec<Change>, steps: &[Slip]) -> Vec<Change> {
    let stored = |slip: &Slip| steps.iter().find(|step| step.id == slip.id).and_then(|step| step.text.as_ref());
    let is_stored = |change: &Change| {
        let written = change.slips.iter().any(|slip| slip.text.is_some());
        written && change.slips.iter().all(|slip| stored(slip) == slip.text.as_ref())
    };
    let mut unsaved: Vec<Change> = Vec::new();
    let mut saved: Vec<String> = Vec::new();
    for change in changes.into_iter().rev() {
        if is_stored(&change) {
            saved.extend(change.slips.into_iter().map(|slip| slip.id));
        } else if !change.slips.iter().any(|slip| saved.contains(&slip.id)) {
            unsaved.insert(0, change);
        }
    }
    unsaved
}

/// Puts a step among those that are there, in the order of their ids, or takes it away.
fn put(steps: &mut Vec<Slip>, slip: &Slip) {
    steps.retain(|step| step.id != slip.id);
    if slip.text.is_some() {
        let place = steps.iter().take_while(|step| step.id < slip.id).count();
        steps.insert(place, slip.clone());
    }
}
