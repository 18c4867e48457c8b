//! One text field with its label, unit, note and error.

use std::borrow::Cow;
use std::sync::Arc;

use leptos::ev;
use leptos::html;
use leptos::prelude::*;

use super::asked::{Asked, Asks};
use super::entering::{is_in, select_again};
use super::readings::{TypeIn, readings};
use super::units::{Picker, Units};
use super::{Commit, Hangs};
use crate::app::unfinished::Unread;
use crate::foundation::measure::both_readings;
use crate::ui::address;
use crate::ui::live::{flag, text};
use crate::ui::state::AppState;

/// A field. Each text that can be read is in force at once, all of one visit to the field being
/// one step to undo; a text that cannot is kept and explained, and the value from before the
/// visit is in force again.
#[expect(clippy::too_many_lines, reason = "one field is one state: its parts read each other's signals")]
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
    #[prop(optional, into)]
    example: Cow<'static, str>,
    /// What sets it apart from fields of the same label on the screen.
    #[prop(optional)]
    of: u64,
    /// Takes the caret when it is drawn.
    #[prop(optional)]
    caret: bool,
    /// Says to the answers that hang on it when it cannot be read.
    #[prop(optional)]
    hangs: Option<Hangs>,
    /// The units that stand beside its number.
    #[prop(optional)]
    units: Option<Units>,
    /// What is asked about where it may not be meant.
    #[prop(optional)]
    asks: Option<Asks>,
) -> impl IntoView {
    let state = AppState::here();
    let number = state.new_session();
    let id = format!("field-{number}");
    let (error_id, note_id) = (format!("{id}-error"), format!("{id}-note"));
    let field = format!("{} {of:x} {label}", address::here());
    let kept = state.unfinished.with_untracked(|all| all.unread(&field).cloned());
    let draft = RwSignal::new(kept.as_ref().map(|unread| unread.text.clone()));
    let error = RwSignal::new(None::<String>);
    let session = StoredValue::new(0);
    // What the last typing put in force.
    let typed_in_force = StoredValue::new(String::new());
    let name = label.to_string();
    // What cannot be read is kept where the screen is left or loaded anew.
    let say = StoredValue::new(move |text: &str, sentence: Option<String>| {
        if let Some(hangs) = hangs {
            hangs.note(number, &name, sentence.is_some());
        }
        let unread = sentence.clone().map(|error| Unread { field: field.clone(), text: text.to_string(), error });
        state.unfinished.try_maybe_update(|all| (all.note(&field, unread), ()));
        error.set(sentence);
    });
    if let Some(Unread { text, error, .. }) = kept {
        say.with_value(|say| say(&text, Some(error)));
    }
    on_cleanup(move || {
        if let Some(hangs) = hangs {
            hangs.note(number, "", false);
        }
    });

    let asked = asks.map(|asks| Asked::of(state, asks, value));
    if error.with_untracked(Option::is_some) {
        asked.iter().for_each(Asked::begin);
    }
    let asking = asked.clone();
    let picker = units.map(|units| Picker::of(state, units, value));
    let typing = picker.clone();
    // The text as it stands in the field, and with the unit that was picked for it.
    let typed = Arc::new(move |text: String, picked: Option<String>| {
        asking.iter().for_each(Asked::begin);
        let full = picked.or_else(|| typing.as_ref().map(|picker| picker.with_unit(&text)));
        let with_unit = |text: &str| typing.as_ref().map_or_else(|| text.to_string(), |picker| picker.with_unit(text));
        let two = asking.as_ref().and_then(|asked| asked.two_meanings(&text, &with_unit));
        let outcome = match asking.as_ref().zip(two.as_ref()) {
            Some((asked, two)) => Err(asked.says_two(&text, two)),
            None => commit(full.as_ref().unwrap_or(&text), session.get_value()),
        };
        if outcome.is_err() {
            state.take_back(session.get_value());
        }
        asking.iter().for_each(|asked| asked.note(session.get_value()));
        say.with_value(|say| say(&text, outcome.err()));
        typed_in_force.set_value(value.get_untracked());
        draft.set(Some(text));
    });
    let type_in = typed.clone();
    // A field that is taken from the screen while the caret is in it is left once more, when its
    // signals are gone.
    let asking = asked.clone();
    let leave = Arc::new(move || {
        // What cannot be read is mended first: nothing is asked beside it.
        if error.try_with_untracked(Option::is_none).unwrap_or(false) {
            draft.set(None);
            asking.iter().for_each(Asked::end);
        }
    });
    let entered = leave.clone();
    let doubted = asked.clone();
    let is_asked = move || doubted.as_ref().is_some_and(|asked| untrack(|| asked.open().is_some()));
    let key = move |event: ev::KeyboardEvent| match event.key().as_str() {
        "Enter" => {
            let before = is_asked();
            entered();
            session.set_value(state.new_session());
            // What is asked stays in sight: the next Enter goes on.
            if !before && is_asked() {
                event.prevent_default();
            }
        }
        "Escape" => {
            say.with_value(|say| say("", None));
            draft.set(None);
        }
        _ => {}
    };
    let input = NodeRef::<html::Input>::new();
    if caret {
        Effect::new(move |_| {
            // A field that cannot take the caret is tapped by hand.
            let _ = input.get().map(|input| input.focus());
        });
    }
    let wrong = flag(move || error.with(Option::is_some));
    let (meant, beside) = (asked.clone(), picker.clone());
    let unclear = Signal::derive(move || {
        let text = draft.get().filter(|_| wrong.get())?;
        let with_unit = |text: &str| beside.as_ref().map_or_else(|| text.to_string(), |picker| picker.with_unit(text));
        let meant = meant.as_ref().and_then(|asked| asked.two_meanings(&text, &with_unit));
        meant.or_else(|| both_readings(&text, state.speaker.get().style()))
    });
    let left = leave.clone();
    // Pressed beside the field: a visit of its own.
    let pressed = Arc::new(move |text, picked| {
        session.set_value(state.new_session());
        typed(text, picked);
        left();
    });
    let picked = pressed.clone();
    let put: TypeIn = Arc::new(move |text| pressed(text, None));
    let both = readings(unclear, put.clone());
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
    let in_force = text(move || number.as_ref().map_or_else(|| value.get(), Picker::number));
    // An undo, or another tab, may change the value while the caret is in the field: it then shows what is in
    // force, and typing takes its place. What cannot be read stays.
    let holds = move || wrong.get() || typed_in_force.with_value(|typed| value.with(|value| value == typed));
    let draft_held = move || draft.get().filter(|_| holds());
    let shown = text(move || draft_held().unwrap_or_else(|| in_force.get()));
    Effect::new(move |before: Option<String>| {
        let now = shown.get();
        let changed = before.is_some_and(|before| before != now) && untrack(draft_held).is_none();
        if changed && input.get_untracked().is_some_and(|input| is_in(&input)) {
            select_again();
        }
        now
    });
    let example = example.into_owned();
    let example = picker.as_ref().map_or(example.clone(), |picker| untrack(|| picker.alone(example)));
    let fractions = picker.clone();
    // A keyboard that can type what the field takes.
    let keyboard = text(move || {
        let text = letters || fractions.as_ref().is_some_and(Picker::takes_fractions);
        if text { "text" } else { "decimal" }.to_string()
    });
    let list = picker.map(|picker| {
        let number = move || if wrong.get_untracked() { shown.get_untracked() } else { in_force.get_untracked() };
        picker.list(&label, number, move |text, full| picked(text, Some(full)))
    });
    let sentence = text(move || error.get().unwrap_or_default());
    let visible_note = text(move || if wrong.get() { String::new() } else { note.get() });
    view! {
        <div class="entry" class:entry-large=large class:entry-wrong=wrong class:entry-doubtful=doubtful>
            <label for=id.clone() class:unseen=label_hidden>{label.into_owned()}</label>
            <div class="entry-box">
                <input
                    node_ref=input
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
                    on:input=move |event| type_in(event_target_value(&event), None)
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
