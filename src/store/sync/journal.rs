//! Journals: the changes that a tab has not saved when it goes. They are written at once, and replayed
//! when their book is next opened.

use std::collections::BTreeMap;

use super::change::Change;
use super::queue::Queue;
use crate::book::{Book, BookId, Edit, Key, Record, from_json};
use crate::store::{Drawer, Durability, Journal, Slip};

/// The changes as the texts of a journal: of each its name, moment, durability, steps, and the records
/// before and after.
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

/// Reads what [`texts`] writes. Returns `None` for anything else.
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

/// A book on which journals were replayed.
pub(in crate::store) struct Replayed {
    /// The book for the screen.
    pub(in crate::store) book: Book,
    /// The replayed changes: those to be saved, and the conflicts.
    pub(in crate::store) queue: Queue,
    /// The names of the journals, to be deleted once everything is saved.
    pub(in crate::store) journals: Vec<String>,
}

/// Replays the journals of tabs that are gone on `stored`, and adds their steps to `steps`. A change
/// whose steps are stored was saved before its tab went, and is left out.
pub(in crate::store) fn replay(id: BookId, stored: Book, steps: &mut Vec<Slip>, orphaned: Vec<Journal>) -> Replayed {
    let (mut changes, mut journals) = (Vec::new(), Vec::new());
    for Journal { name, texts } in orphaned {
        // A journal that this version cannot read waits for one that can.
        if let Some(read) = read(id, texts) {
            changes.extend(unsaved(read, steps));
            journals.push(name);
        }
    }
    let mut screen = stored.clone();
    for change in &changes {
        change.slips.iter().for_each(|slip| put(steps, slip));
        // The book as the person saw it. A change that cannot be applied to it is in conflict.
        let _ = screen.apply(&Edit::records(&screen, &change.is));
    }
    let mut queue = Queue::default();
    let book = queue.replay(changes, stored, &screen);
    Replayed { book, queue, journals }
}

/// The changes of a tab that are not saved. All keystrokes of one visit to a field write the same step,
/// so that a stored step also stands for the keystrokes before it.
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

/// Puts a step among the others, ordered by id, or removes it if it has no text.
fn put(steps: &mut Vec<Slip>, slip: &Slip) {
    steps.retain(|step| step.id != slip.id);
    if slip.text.is_some() {
        let place = steps.iter().take_while(|step| step.id < slip.id).count();
        steps.insert(place, slip.clone());
    }
}
