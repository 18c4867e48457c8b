//! Locks this device to the Counter, and opens it again.

use leptos::ev;
use leptos::prelude::*;

use crate::foundation::lock::{PinError, choose_pin, is_pin, is_without_pin};
use crate::say;
use crate::ui::fields::Ask;
use crate::ui::live::{trouble, when};
use crate::ui::lock::Lock;
use crate::ui::parts::Fold;
use crate::ui::places::book::counter_language;
use crate::words;

/// The lock, while it is open.
#[component]
pub fn LockDevice() -> impl IntoView {
    let lock = Lock::here();
    when(move || !lock.is_on(), move || view! { <Choosing lock /> }.into_any())
}

#[component]
fn Choosing(lock: Lock) -> impl IntoView {
    let (pin, again) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let (refused, not_the_same) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let not_kept = RwSignal::new(None::<String>);
    let close = move || {
        let chosen = pin.with_untracked(|pin| again.with_untracked(|again| choose_pin(pin, again).map(str::to_owned)));
        let sentence = |error: PinError| words::counter::pin_error(error);
        let same = chosen != Err(PinError::NotTheSame);
        refused.set(chosen.as_ref().err().filter(|_| same).map(|error| sentence(*error)).unwrap_or_default());
        not_the_same.set(if same { String::new() } else { sentence(PinError::NotTheSame) });
        if let Ok(chosen) = chosen {
            let kept = lock.put(Some(&chosen));
            not_kept.try_set((!kept).then(|| say!(counter::lock_not_kept).to_string()));
        }
    };
    view! {
        <Fold name=say!(counter::lock_this_device) figure=String::new()>
            <p class="about">{say!(counter::lock_about)}</p>
            <p class="about">{say!(counter::lock_caution)}</p>
            <form class="lock" on:submit=submit(close)>
                <div class="fields pin">
                    <Ask label=say!(counter::new_pin) text=pin error=refused.into() />
                    <Ask label=say!(counter::repeat_pin) text=again error=not_the_same.into() />
                </div>
                <p class="actions">
                    <button class="button">{say!(counter::lock_to_counter)}</button>
                </p>
            </form>
            {trouble(move || not_kept.get())}
        </Fold>
    }
}

/// The way out of the lock, while it is closed, and the language of the Counter.
#[component]
pub fn Unlock() -> impl IntoView {
    let lock = Lock::here();
    when(move || lock.is_on(), move || view! { <Opening lock /> }.into_any())
}

#[component]
fn Opening(lock: Lock) -> impl IntoView {
    let (pin, sentence) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let (wrong_pin, wrong_sentence) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let by_pin = move || {
        if lock.pin().is_some_and(|kept| pin.with_untracked(|typed| is_pin(typed, &kept))) {
            lock.put(None);
        } else {
            wrong_pin.set(say!(counter::wrong_pin).to_string());
        }
    };
    let without_pin = move || {
        if sentence.with_untracked(|typed| is_without_pin(typed, say!(counter::sentence_without_pin))) {
            lock.put(None);
        } else {
            wrong_sentence.set(words::counter::not_without_pin());
        }
    };
    view! {
        <details class="more unlock">
            <summary>{say!(counter::unlock)}</summary>
            <form class="lock pin" on:submit=submit(by_pin)>
                <Ask label=say!(counter::pin) text=pin error=wrong_pin.into() />
                <button class="button">{say!(counter::unlock_device)}</button>
            </form>
            <details class="more">
                <summary>{say!(counter::forgot_pin)}</summary>
                <p class="about">{words::counter::without_pin()}</p>
                <form class="lock" on:submit=submit(without_pin)>
                    <Ask label=say!(counter::unlock_sentence) letters=true text=sentence error=wrong_sentence.into() />
                    <button class="button">{say!(counter::unlock_by_sentence)}</button>
                </form>
            </details>
        </details>
        {counter_language()}
    }
}

/// What sending a form does, by its button or by Enter. Nothing leaves the page.
fn submit(act: impl Fn() + 'static) -> Box<dyn FnMut(ev::SubmitEvent)> {
    Box::new(move |event| {
        event.prevent_default();
        act();
    })
}
