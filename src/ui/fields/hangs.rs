//! While a field cannot be read, what hangs on it says so: no answer stands beside an error.

use leptos::prelude::*;

use crate::ui::live::{flag, text, when};
use crate::words;

/// Those that cannot be read, by a number and their label.
type Unread = RwSignal<Vec<(u64, String)>>;

/// Fields that answers hang on.
#[derive(Clone, Copy)]
pub struct Hangs {
    unread: Unread,
    /// Where further answers hang on these fields, among others.
    further: Option<Unread>,
}

impl Hangs {
    /// All can be read.
    pub fn new() -> Hangs {
        Hangs { unread: RwSignal::new(Vec::new()), further: None }
    }

    /// Some of these fields, such as those of one row.
    pub fn within(self) -> Hangs {
        Hangs { further: Some(self.unread), ..Hangs::new() }
    }

    /// Notes whether a field cannot be read.
    pub(super) fn note(self, field: u64, label: &str, is_unread: bool) {
        for noted in std::iter::once(self.unread).chain(self.further) {
            // The screen may be gone when its fields are.
            let _ = noted.try_maybe_update(|noted| {
                let was = noted.iter().any(|it| it.0 == field);
                noted.retain(|it| it.0 != field);
                if is_unread {
                    noted.push((field, label.to_string()));
                }
                (was || is_unread, ())
            });
        }
    }

    /// Notes whether a field cannot be read, by the sentence beside it, as long as it is drawn.
    pub(super) fn follow(self, field: u64, label: String, error: Signal<String>) {
        Effect::new(move |_| self.note(field, &label, !error.with(String::is_empty)));
        on_cleanup(move || self.note(field, "", false));
    }

    /// Whether a field cannot be read, following it.
    pub fn is_unread(self) -> bool {
        self.unread.with(|unread| !unread.is_empty())
    }

    /// The labels of all fields that cannot be read, following them.
    pub fn unread_labels(self) -> Vec<String> {
        self.unread.with(|unread| unread.iter().map(|(_, label)| label.clone()).collect())
    }

    /// What stands in place of an answer. Returns an empty text while all can be read.
    pub fn sentence(self) -> String {
        self.unread
            .with(|unread| unread.first().map(|(_, label)| words::unfinished::fix_first(label)).unwrap_or_default())
    }

    /// What to mend before something can be done. Returns an empty text while all can be read.
    pub fn waits_for(self) -> String {
        self.unread
            .with(|unread| unread.first().map(|(_, label)| words::unfinished::fix_before(label)).unwrap_or_default())
    }

    /// An answer while all can be read, nothing else: a sentence stands elsewhere.
    pub fn while_read(self, view: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
        when(move || !self.is_unread(), view)
    }

    /// An answer while all can be read, else a sentence in its place.
    pub fn answer(self, view: impl Fn() -> AnyView + Send + Sync + 'static) -> AnyView {
        let sentence = text(move || self.sentence());
        let none = flag(move || !self.is_unread());
        view! {
            <p class="hollow" role="status" hidden=none>
                {sentence}
            </p>
            {self.while_read(view)}
        }
        .into_any()
    }
}
