//! A text handed to somebody: by the device's own choice of where to, else by the clipboard, else
//! to be copied by hand.

use std::sync::Arc;

use js_sys::{Object, Promise, Reflect};
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

use super::call::call;
use super::live::{press, text, when};
use crate::words::sharing::{Sharing, sharing};

/// A button that shares a text, and says what became of it.
#[component]
pub fn Share(
    /// What the button says.
    label: &'static str,
    /// What the text is.
    title: &'static str,
    /// The text, as it is when the button is pressed.
    read: Arc<dyn Fn() -> String + Send + Sync>,
) -> impl IntoView {
    let outcome = RwSignal::new(None::<Sharing>);
    let shared = RwSignal::new(String::new());
    let start = move || {
        let text = read();
        shared.set(text.clone());
        spawn_local(async move { outcome.set(Some(share(title, &text).await)) });
    };
    let said = text(move || outcome.get().map(sharing).unwrap_or_default().to_string());
    let by_hand = when(
        move || outcome.get() == Some(Sharing::ToCopy),
        move || {
            view! {
                <textarea class="share-text" aria-label=title readonly rows="12" prop:value=shared></textarea>
            }
            .into_any()
        },
    );
    view! {
        <button class="button" on:click=press(start)>
            {label}
        </button>
        <p class="hollow share-said" role="status">
            {said}
        </p>
        {by_hand}
    }
}

async fn share(title: &str, text: &str) -> Sharing {
    match settled(passed_on(title, text)).await {
        Some(Ok(())) => return Sharing::PassedOn,
        Some(Err(error)) if is_closed(&error) => return Sharing::Closed,
        Some(Err(_)) | None => {}
    }
    match settled(copied(text)).await {
        Some(Ok(())) => Sharing::Copied,
        Some(Err(_)) | None => Sharing::ToCopy,
    }
}

/// Waits for what was begun. Returns `None` if the browser has no such thing.
async fn settled(begun: Result<Promise, JsValue>) -> Option<Result<(), JsValue>> {
    Some(JsFuture::from(begun.ok()?).await.map(|_| ()))
}

fn passed_on(title: &str, text: &str) -> Result<Promise, JsValue> {
    let data = Object::new();
    Reflect::set(&data, &"title".into(), &title.into())?;
    Reflect::set(&data, &"text".into(), &text.into())?;
    call(&window().navigator(), "share", &data)
}

fn copied(text: &str) -> Result<Promise, JsValue> {
    let clipboard = Reflect::get(&window().navigator(), &"clipboard".into())?;
    call(&clipboard, "writeText", &text.into())
}

fn is_closed(error: &JsValue) -> bool {
    Reflect::get(error, &"name".into()).is_ok_and(|name| name.as_string().as_deref() == Some("AbortError"))
}
