//! A link that leads to one part of a page: there it stands open, in sight.

use std::cell::RefCell;

use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use super::address;

thread_local! {
    /// The address that such a link led to, and the name of the part.
    static WANTED: RefCell<Option<(String, &'static str)>> = const { RefCell::new(None) };
}

/// Notes that the part of this name is wanted at an address. For a press of a link that leads there.
pub fn wants(address: String, name: &'static str) -> impl Fn(ev::MouseEvent) + 'static {
    move |event| {
        // In another tab the page opens as it always does.
        if !(event.ctrl_key() || event.meta_key() || event.shift_key()) {
            WANTED.set(Some((address.clone(), name)));
        }
    }
}

/// Whether the part of this name was wanted at the address that is open; asked once.
pub fn is_wanted(name: &'static str) -> bool {
    let here = address::here();
    WANTED.with_borrow_mut(|wanted| wanted.take_if(|(there, part)| *there == here && *part == name).is_some())
}

/// Brings a part into sight, and to it the keyboard, once the page is drawn and scrolled to its top.
pub fn show<E>(part: NodeRef<E>)
where
    E: html::ElementType + 'static,
    E::Output: JsCast + Clone,
{
    Effect::new(move |_| {
        let Some(part) = part.get() else { return };
        let part: HtmlElement = part.unchecked_into();
        let show = move || {
            part.scroll_into_view();
            // A part that cannot take the focus is in sight all the same.
            let _ = part.focus();
        };
        request_animation_frame(move || request_animation_frame(show));
    });
}
