//! What a browser may not have.

use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// Calls a method of an object that gives a promise.
///
/// # Errors
/// Where there is no such method, it throws, or it gives something else.
pub fn call(of: &JsValue, name: &str, with: &JsValue) -> Result<Promise, JsValue> {
    let function: Function = Reflect::get(of, &name.into())?.dyn_into()?;
    function.call1(of, with)?.dyn_into()
}
