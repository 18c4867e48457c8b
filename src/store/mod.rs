//! Storing books: nothing that was called saved is lost, and nothing is overwritten unread.
//!
//! A [`Shelf`] holds the books. Opening one gives the [`Book`](crate::book::Book) and, through
//! [`Opened::keep`], the [`BookSync`] that saves its changes: all that wait in one transaction, in
//! order, and never over a revision that this tab has not seen. When a tab goes, it writes what it
//! has not saved to a journal; whoever opens the book next replays that. The rows are stored by a
//! [`Backing`]: the browser's database in the app, `InMemory` in native tests.

#[cfg(target_arch = "wasm32")]
pub mod asked;
mod backing;
#[cfg(target_arch = "wasm32")]
pub mod cache_note;
mod damage;
mod entry;
mod fault;
#[cfg(target_arch = "wasm32")]
pub mod first_paint;
mod notice;
#[cfg(target_arch = "wasm32")]
pub mod paper;
mod row;
mod shelf;
mod slip;
mod sync;
#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests;

#[cfg(not(target_arch = "wasm32"))]
mod in_memory;
#[cfg(target_arch = "wasm32")]
mod indexed_db;
#[cfg(target_arch = "wasm32")]
mod journals;
#[cfg(target_arch = "wasm32")]
mod locks;
#[cfg(target_arch = "wasm32")]
mod request;
#[cfg(target_arch = "wasm32")]
mod schema;
#[cfg(target_arch = "wasm32")]
mod tabs;
#[cfg(target_arch = "wasm32")]
pub mod this_tab;

pub use backing::{Backing, Commit, Durability, Journal, StoredBook};
pub use damage::{Cause, Damage};
pub use entry::BookEntry;
pub use fault::Fault;
#[cfg(not(target_arch = "wasm32"))]
pub use in_memory::InMemory;
#[cfg(target_arch = "wasm32")]
pub use indexed_db::IndexedDb;
pub use notice::Notice;
pub use row::{Row, remote_edit};
pub use shelf::{Listed, Opened, Shelf};
pub use slip::{Drawer, Slip};
pub use sync::{BookSync, Change, Conflict, ConflictReason, Hooks, Saving};
