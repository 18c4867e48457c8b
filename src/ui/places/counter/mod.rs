//! Counter: recipe cards per drink and size, to be read from a metre away; batches, and what is
//! here. No prices. The screen stays on, and a device can be locked to this place.

mod batch;
mod batches;
mod best;
mod can_make;
mod card;
mod choose;
mod found;
mod lock;
mod on_hand;
mod said;
mod tabs;

pub use batch::BatchPage;
pub use batches::Batches;
pub use can_make::CanMake;
pub use card::Card;
pub use choose::Choose;
pub use lock::LockDevice;
pub use on_hand::OnHand;

use leptos::prelude::*;

use crate::ui::awake::awake;

/// Whether there is more room than on a phone, as the window is now: what is folded there stands open.
fn is_tablet() -> bool {
    window().match_media("(min-width: 45rem)").ok().flatten().is_some_and(|query| query.matches())
}

/// A screen of the Counter, on a screen that stays on, with the way out of the lock.
pub fn at_the_counter(screen: AnyView) -> AnyView {
    view! {
        {screen}
        {awake()}
        <lock::Unlock />
    }
    .into_any()
}
