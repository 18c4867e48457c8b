//! Going into a field, by a tap, by Tab or by Enter: its whole text is selected, so that what is
//! typed takes its place. A second tap places the caret. Enter goes on to the next field.
//!
//! One ear for the whole page: it holds for every field, whoever draws it.

use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;

use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Element, Event, HtmlInputElement};

/// Where people type.
const FIELDS: &str = "input[type=text],input[type=search]";

/// What Enter goes through from top to bottom. Where such a list says so, by a selector in
/// `data-next`, a field elsewhere comes after its last one.
const LISTS: &str = "[data-next],form,dialog,main";

/// A row that goes to the top when Enter leads into it, so that its answer has room.
const TO_THE_TOP: &str = "[data-to-the-top]";

/// Hears of every field that is gone into; lives as long as the page.
pub fn hear_entering() {
    let last = Rc::new(Last::default());
    for kind in ["mousedown", "focusout", "focusin", "mouseup", "keydown"] {
        let last = last.clone();
        let hear = Closure::<dyn Fn(Event)>::new(move |event| last.hear(kind, &event));
        // A press is heard of before the field is gone into; Enter after the field itself heard it.
        let before = kind != "keydown";
        let _ = window().add_event_listener_with_callback_and_bool(kind, hear.as_ref().unchecked_ref(), before);
        hear.forget();
    }
}

/// What came last.
#[derive(Default)]
struct Last {
    /// The field that a press is about to go into.
    pressed: Cell<Option<HtmlInputElement>>,
    /// How many presses there were.
    presses: Cell<u32>,
    /// The field that was left for another window or app: coming back to it is no going into it.
    away: Cell<Option<HtmlInputElement>>,
}

impl Last {
    fn hear(self: &Rc<Self>, kind: &str, event: &Event) {
        let field = event.target().and_then(|target| target.dyn_into().ok()).and_then(field);
        match kind {
            "mousedown" => {
                self.presses.set(self.presses.get().wrapping_add(1));
                self.pressed.set(field.filter(|field| !is_in(field)));
            }
            "focusout" => self.away.set(field.filter(is_in)),
            "focusin" => {
                let away = self.away.take();
                if let Some(field) = field.filter(|field| away.as_ref() != Some(field)) {
                    select(&field);
                }
            }
            "mouseup" => {
                let pressed = self.pressed.take();
                if let Some(field) = field.filter(|field| pressed.as_ref() == Some(field)) {
                    self.after_press(field);
                }
            }
            _ => {
                if let (Some(field), Some(event)) = (field, event.dyn_ref::<KeyboardEvent>()) {
                    to_the_next(&field, event);
                }
            }
        }
    }

    /// WebKit places its caret when the press has ended: what was selected on going in is selected
    /// again then. What was selected by dragging stays as it is, and the caret where a second press
    /// placed it. (Keeping the engine from placing it would also keep Chromium from placing it at a
    /// second press.)
    fn after_press(self: &Rc<Self>, field: HtmlInputElement) {
        let (start, end) = selection(&field);
        let dragged = start != end && (start, end) != (0, field.value().encode_utf16().count() as u32);
        if !dragged {
            let (last, presses, before) = (self.clone(), self.presses.get(), field.value());
            let again = move || {
                let (start, end) = selection(&field);
                // What was typed meanwhile is not to be typed over.
                if start == end && last.presses.get() == presses && field.value() == before {
                    select(&field);
                }
            };
            set_timeout(again, Duration::ZERO);
        }
    }
}

fn field(element: Element) -> Option<HtmlInputElement> {
    element.dyn_into::<HtmlInputElement>().ok().filter(|field| field.matches(FIELDS).unwrap_or(false))
}

/// Whether the caret is in a field.
pub(super) fn is_in(field: &HtmlInputElement) -> bool {
    document().active_element().is_some_and(|active| active == ***field)
}

fn select(field: &HtmlInputElement) {
    let _ = field.set_selection_range(0, u32::MAX);
}

/// What stands in the field that the caret is in was put there, by Undo or by another tab: it is selected as if
/// the field had just been gone into, once it is on the screen.
pub(super) fn select_again() {
    let again = || {
        if let Some(field) = document().active_element().and_then(field) {
            select(&field);
        }
    };
    set_timeout(again, Duration::ZERO);
}

fn selection(field: &HtmlInputElement) -> (u32, u32) {
    let at = |at: Result<Option<u32>, _>| at.ok().flatten().unwrap_or_default();
    (at(field.selection_start()), at(field.selection_end()))
}

/// Enter leads to the next field of the list. What cannot be read is mended first; in the last
/// field of a form it does what the form is for.
fn to_the_next(field: &HtmlInputElement, event: &KeyboardEvent) {
    let enter = event.key() == "Enter" && !event.is_composing() && !event.default_prevented();
    if !enter || field.get_attribute("aria-invalid").as_deref() == Some("true") {
        return;
    }
    let Some(list) = field.closest(LISTS).ok().flatten() else { return };
    let after = std::iter::successors(Some((**field).clone().into()), |element| following(element, &list));
    let elsewhere = list.get_attribute("data-next").and_then(|next| document().query_selector(&next).ok().flatten());
    if after.skip(1).any(go_into) || elsewhere.is_some_and(go_into) {
        event.prevent_default();
    }
}

/// The element that begins next in the page, as long as it is within the list.
fn following(element: &Element, list: &Element) -> Option<Element> {
    if let Some(inside) = element.first_element_child() {
        return Some(inside);
    }
    let mut element = element.clone();
    while element != *list {
        if let Some(beside) = element.next_element_sibling() {
            return Some(beside);
        }
        element = element.parent_element()?;
    }
    None
}

/// Goes into a field that can be gone into: one that is folded away cannot.
fn go_into(element: Element) -> bool {
    let Some(field) = field(element) else { return false };
    let _ = field.focus();
    let gone = is_in(&field);
    if let Some(row) = field.closest(TO_THE_TOP).ok().flatten().filter(|_| gone) {
        row.scroll_into_view();
    }
    gone
}
