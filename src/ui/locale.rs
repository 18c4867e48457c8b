//! How numbers are written where this person lives, asked once of the browser.

use js_sys::{Array, Intl, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

use crate::foundation::measure::{Currency, NumberStyle};

/// The browser's signs, with the book's currency.
pub fn number_style(currency: Currency) -> NumberStyle {
    let options = Object::new();
    let set = |name: &str, value: &str| Reflect::set(&options, &name.into(), &value.into());
    let asked = set("style", "currency").and(set("currency", currency.code()));
    let format = Intl::NumberFormat::new(&Array::new(), &options);
    let parts = asked.ok().map(|_| format.format_to_parts(1_234_567.8));
    parts.map_or_else(|| NumberStyle::english(&format!("{currency} ")), |parts| style_of(&parts))
}

fn style_of(parts: &Array) -> NumberStyle {
    let text = |part: &JsValue, name: &str| {
        Reflect::get(part, &name.into()).ok().and_then(|value| value.as_string()).unwrap_or_default()
    };
    let mut style = NumberStyle { decimal: '.', group: ',', money_before: String::new(), money_after: String::new() };
    let mut digits_seen = false;
    let mut literal = String::new();
    for part in parts.iter().filter(|part| part.is_object()) {
        let part: &JsValue = part.unchecked_ref();
        let value = text(part, "value");
        match text(part, "type").as_str() {
            "integer" | "fraction" => {
                if !digits_seen {
                    style.money_before.push_str(&literal);
                }
                literal.clear();
                digits_seen = true;
            }
            "decimal" => style.decimal = value.chars().next().unwrap_or('.'),
            "group" => style.group = value.chars().next().unwrap_or(','),
            "literal" => literal.push_str(&value),
            "currency" if digits_seen => style.money_after = format!("{literal}{value}"),
            "currency" => style.money_before.push_str(&value),
            _ => {}
        }
    }
    style
}
