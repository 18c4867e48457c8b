//! Changing one container.

use crate::book::{Book, Container, ContainerId, Edit, Record};

/// The edit that changes one container; none where it is gone.
pub fn changed(book: &Book, id: ContainerId, change: impl FnOnce(&mut Container)) -> Option<Edit> {
    let mut container = book.container(id)?.clone();
    change(&mut container);
    Some(Edit::Put(Record::Container(container)))
}
