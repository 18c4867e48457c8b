//! The address: the screens follow it, and a press goes to another.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use super::lock::Lock;
use crate::app::route::Route;

/// The current screen, following the address. On a locked device it is one of the Counter, and
/// the address with it.
pub fn follow_address(lock: Lock) -> ReadSignal<Route> {
    let read = move || {
        let location = window().location();
        let asked = Route::from_address(&location.hash().unwrap_or_default());
        let shown = lock.shown(asked);
        if shown != asked {
            // One's own page cannot be refused.
            let _ = location.replace(&shown.address());
        }
        shown
    };
    let (route, set_route) = signal(read());
    let follow = Closure::<dyn Fn()>::new(move || set_route.set(read()));
    // Lives as long as the page: there is one address and one follower.
    let _ = window().add_event_listener_with_callback("hashchange", follow.as_ref().unchecked_ref());
    follow.forget();
    Effect::new(move |_| {
        if lock.is_on() {
            set_route.set(read());
        }
    });
    route
}

/// Goes to a screen.
pub fn go(route: Route) {
    // Setting the hash of one's own page cannot be refused.
    let _ = window().location().set_hash(&route.address());
}

/// The address of the screen that is open, after the hash.
pub fn here() -> String {
    window().location().hash().unwrap_or_default()
}
