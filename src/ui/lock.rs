//! Whether this device is locked to the Counter: what the frame must know before the first paint.
//! How it is locked and opened is in the Counter.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use crate::app::route::{Place, Route};
use crate::store::first_paint;

/// The lock of this device: its PIN while it is locked.
#[derive(Clone, Copy)]
pub struct Lock(RwSignal<Option<String>>);

impl Lock {
    /// Reads it, and follows what other tabs do.
    pub fn start() -> Lock {
        let lock = Lock(RwSignal::new(first_paint::pin()));
        let hear = Closure::<dyn Fn()>::new(move || lock.read());
        // Lives as long as the page, as this does.
        let _ = window().add_event_listener_with_callback("storage", hear.as_ref().unchecked_ref());
        hear.forget();
        lock
    }

    /// The one of this page.
    pub fn here() -> Lock {
        expect_context::<Lock>()
    }

    /// Whether it is locked, following it.
    pub fn is_on(self) -> bool {
        self.0.with(Option::is_some)
    }

    /// The PIN, while it is locked.
    pub fn pin(self) -> Option<String> {
        self.0.get_untracked()
    }

    /// Locks it by a PIN, or opens it. Whether that is kept.
    pub fn put(self, pin: Option<&str>) -> bool {
        first_paint::note_pin(pin);
        self.read();
        self.0.with_untracked(|kept| kept.as_deref() == pin)
    }

    /// The screen to show for the one that is asked for.
    pub fn shown(self, asked: Route) -> Route {
        if self.0.with_untracked(Option::is_some) && asked.place() != Place::Counter { Route::Counter } else { asked }
    }

    /// What other tabs note of their books is heard here too, and changes nothing.
    fn read(self) {
        let kept = first_paint::pin();
        if self.0.with_untracked(|pin| *pin != kept) {
            self.0.set(kept);
        }
    }
}
