//! One text field with its label, unit, note and error.

use std::borrow::Cow;
use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;

use super::Commit;
use super::asked::{Asked, Asks};
use super::readings::{TypeIn, readings};
use super::units::{Picker, Units};
use crate::ui::live::{flag, text};
use crate::ui::state::AppState;

/// A field. Each text that can be read is in force at once, all of one visit to the field being
/// one step to undo; a text that cannot is kept and explained, and the value from before the
/// visit is in force again.
#[component]
pub fn Entry(
    /// What is asked for.
    #[prop(into)]
    label: Cow<'static, str>,
    /// The value in force, as text.
    #[prop(into)]
    value: Signal<String>,
    /// Reads a text and puts it in force.
    commit: Commit,
    /// Letters rather than a number.
    #[prop(optional)]
    letters: bool,
    /// Large figures, for what matters most on a screen.
    #[prop(optional)]
    large: bool,
    /// Only for those who cannot see that the place says it.
    #[prop(optional)]
    label_hidden: bool,
    /// Stands behind the text: a unit or currency.
    #[prop(optional)]
    unit: &'static str,
    /// A quiet line under the field.
    #[prop(optional, into)]
    note: Signal<String>,
    /// An example in the empty field.
    #[prop(optional)]
    example: &'static str,
    /// The units that stand beside its number.
    #[prop(optional)]
    units: Option<Units>,
    /// What is asked about where it may not be meant.
    #[prop(optional)]
    asks: Option<Asks>,
) -> impl IntoView {
    let state = AppState::here();
    let id = format!("field-{}", state.new_session());
    let (error_id, note_id) = (format!("{id}-error"), format!("{id}-note"));
    let draft = RwSignal::new(None::<String>);
    let error = RwSignal::new(None::<String>);
    let session = StoredValue::new(0);

    let asked = asks.map(|asks| Asked::of(state, asks, value));
    let asking = asked.clone();
    let picker = units.map(|units| Picker::of(state, units, value));
    // The text as it stands in the field, and with its unit.
    let typed = Arc::new(move |text: String, full: &str| {
        asking.iter().for_each(Asked::begin);
        let outcome = commit(full, session.get_value());
        if outcome.is_err() {
            state.take_back(session.get_value());
        }
        asking.iter().for_each(Asked::note);
        error.set(outcome.err());
        draft.set(Some(text));
    });
    let (type_in, typing) = (typed.clone(), picker.clone());
    let full = move |text: &str| typing.as_ref().map_or_else(|| text.to_string(), |picker| picker.with_unit(text));
    let in_full = full.clone();
    // A field that is taken from the screen while the caret is in it is left once more, when its
    // signals are gone.
    let asking = asked.clone();
    let leave = Arc::new(move || {
        if error.try_with_untracked(Option::is_none).unwrap_or(false) {
            draft.set(None);
        }
        asking.iter().for_each(Asked::end);
    });
    let entered = leave.clone();
    let key = move |event: ev::KeyboardEvent| match event.key().as_str() {
        "Enter" => {
            entered();
            session.set_value(state.new_session());
        }
        "Escape" => {
            error.set(None);
            draft.set(None);
        }
        _ => {}
    };
    let wrong = flag(move || error.with(Option::is_some));
    let unclear = Signal::derive(move || draft.get().filter(|_| wrong.get()));
    let left = leave.clone();
    // Pressed beside the field: a visit of its own.
    let put_full = Arc::new(move |text: String, full: &str| {
        session.set_value(state.new_session());
        typed(text, full);
        left();
    });
    let put_number = put_full.clone();
    let put: TypeIn = Arc::new(move |text| {
        let full = full(&text);
        put_full(text, &full);
    });
    let both = readings(state, unclear, put.clone());
    let doubtful = asked.clone();
    let doubtful = flag(move || doubtful.as_ref().is_some_and(|asked| asked.open().is_some()));
    let going_in = asked.clone();
    let enter = move || {
        session.set_value(state.new_session());
        going_in.iter().for_each(Asked::begin);
    };
    let asked = asked.map(|asked| asked.shown(put));
    let invalid = text(move || wrong.get().to_string());
    let described = {
        let (error_id, note_id) = (error_id.clone(), note_id.clone());
        text(move || if wrong.get() { error_id.clone() } else { note_id.clone() })
    };
    let number = picker.clone();
    let in_force = move || number.as_ref().map_or_else(|| value.get(), Picker::number);
    let shown = text(move || draft.get().unwrap_or_else(&in_force));
    let fractions = picker.clone();
    // A keyboard that can type what the field takes.
    let keyboard = Signal::derive(move || match letters || fractions.as_ref().is_some_and(Picker::takes_fractions) {
        true => "text",
        false => "decimal",
    });
    let list = picker.map(|picker| {
        picker.list(label.to_string(), move || shown.get_untracked(), move |text, full| put_number(text, &full))
    });
    let sentence = text(move || error.get().unwrap_or_default());
    let visible_note = text(move || if wrong.get() { String::new() } else { note.get() });
    view! {
        <div class="entry" class:entry-large=large class:entry-wrong=wrong class:entry-doubtful=doubtful>
            <label for=id.clone() class:unseen=label_hidden>{label.into_owned()}</label>
            <div class="entry-box">
                <input
                    id=id
                    type="text"
                    inputmode=keyboard
                    autocomplete="off"
                    spellcheck="false"
                    enterkeyhint="next"
                    placeholder=example
                    prop:value=shown
                    aria-invalid=invalid
                    aria-describedby=described
                    on:focus=move |_| enter()
                    on:input=move |event| {
                        let text = event_target_value(&event);
                        let full = in_full(&text);
                        type_in(text, &full);
                    }
                    on:blur=move |_| leave()
                    on:keydown=key
                />
                <span class="entry-unit">{unit}</span>
                {list}
            </div>
            <p class="entry-error" id=error_id role="status">
                {sentence}
            </p>
            {both}
            {asked}
            <p class="entry-note" id=note_id>{visible_note}</p>
        </div>
    }
}
