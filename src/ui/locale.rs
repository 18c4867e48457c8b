//! How numbers, days and times are written where this person lives, asked once of the browser.

use js_sys::{Array, Date, Function, Intl, Object, Reflect};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};

use crate::foundation::measure::{Currency, NumberStyle, Parts};
use crate::store::first_paint;
use crate::words::{DateStyle, DayPattern, TimePattern};

/// The browser's signs, with the book's currency.
pub fn number_style(currency: Currency) -> NumberStyle {
    let sample = |number: f64, options: &[(&str, &str)]| {
        parts_of(&Intl::NumberFormat::new(&region(), &object(options)).format_to_parts(number))
    };
    NumberStyle::from_samples(
        &sample(1_234_567.8, &[("style", "currency"), ("currency", currency.code())]),
        &sample(0.5, &[("style", "percent")]),
        &sample(1234.0, &[]),
    )
}

/// How the browser writes days and times.
pub fn date_style() -> DateStyle {
    let format = |options: &[(&str, &str)]| Intl::DateTimeFormat::new(&region(), &object(options));
    let parts = |format: &Intl::DateTimeFormat, month: i32, hour: i32| {
        parts_of(&format.format_to_parts(&Date::new_with_year_month_day_hr_min(2026, month, 23, hour, 5)))
    };
    let pattern = |options: &[(&str, &str)]| {
        let format = format(options);
        DayPattern::from_samples(&(0..12).map(|month| parts(&format, month, 12)).collect::<Vec<Parts>>())
    };
    let time = format(&[("hour", "numeric"), ("minute", "2-digit")]);
    DateStyle {
        with_year: pattern(&[("day", "numeric"), ("month", "short"), ("year", "numeric")]),
        without_year: pattern(&[("day", "numeric"), ("month", "short")]),
        time: TimePattern::from_samples(&parts(&time, 0, 9), &parts(&time, 0, 21)),
    }
}

/// The name of a language, or of a language and country, in that language itself: "Español (Estados
/// Unidos)". The tag where the browser knows none.
pub fn language_name(tag: &str) -> String {
    let named = || {
        let names: Function =
            Reflect::get(&Reflect::get(&js_sys::global(), &"Intl".into())?, &"DisplayNames".into())?.dyn_into()?;
        let options = object(&[("type", "language"), ("languageDisplay", "standard")]);
        let names = Reflect::construct(&names, &Array::of2(&Array::of1(&tag.into()), &options))?;
        let of: Function = Reflect::get(&names, &"of".into())?.dyn_into()?;
        of.call1(&names, &tag.into())
    };
    let name: Result<JsValue, JsValue> = named();
    name.ok().and_then(|name| name.as_string()).unwrap_or_else(|| tag.to_string())
}

/// The two letters of the country whose numbers and days are shown: that of a tag without one is
/// the likeliest. "US" where the browser does not say.
pub fn country() -> String {
    let tag = region().get(0).as_string().or_else(|| window().navigator().language());
    let likeliest = |tag: String| {
        let locale: Function =
            Reflect::get(&Reflect::get(&js_sys::global(), &"Intl".into())?, &"Locale".into())?.dyn_into()?;
        let locale = Reflect::construct(&locale, &Array::of1(&tag.into()))?;
        let maximize: Function = Reflect::get(&locale, &"maximize".into())?.dyn_into()?;
        Reflect::get(&maximize.call0(&locale)?, &"region".into())
    };
    let country: Option<JsValue> = tag.and_then(|tag| likeliest(tag).ok());
    country.and_then(|country| country.as_string()).unwrap_or_else(|| "US".into())
}

/// The region that was chosen on this device, or else the browser's own.
fn region() -> Array {
    first_paint::region().map(|tag| Array::of1(&tag.into())).unwrap_or_default()
}

fn object(options: &[(&str, &str)]) -> Object {
    let object = Object::new();
    for (name, value) in options {
        // A plain object takes any property.
        let _ = Reflect::set(&object, &(*name).into(), &(*value).into());
    }
    object
}

fn parts_of(parts: &Array) -> Parts {
    let text = |part: &JsValue, name: &str| {
        Reflect::get(part, &name.into()).ok().and_then(|value| value.as_string()).unwrap_or_default()
    };
    let parts = parts.iter().filter(|part| part.is_object());
    parts.map(|part| (text(part.unchecked_ref(), "type"), text(part.unchecked_ref(), "value"))).collect()
}
