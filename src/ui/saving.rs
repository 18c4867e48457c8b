//! Whether everything is saved, always in sight.

use leptos::prelude::*;

/// Where saving stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Saving {
    /// Everything is on the disk.
    Saved,
    /// Something is on its way to the disk.
    Under,
    /// Something could not be saved; why, and what to do.
    Failed(String),
}

/// Where saving stands, provided as context.
pub type SavingSignal = RwSignal<Saving>;

/// Says whether everything is saved.
#[component]
pub fn SavingMark() -> impl IntoView {
    let saving = expect_context::<SavingSignal>();
    let words = move || match saving.get() {
        Saving::Saved => "Saved",
        Saving::Under => "Saving",
        Saving::Failed(_) => "Not saved",
    };
    let failed = move || matches!(saving.get(), Saving::Failed(_));
    view! {
        <p class="saving" class:saving-failed=failed role="status" data-saving=words>
            {words}
        </p>
    }
}
