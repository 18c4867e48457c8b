//! Fields: typing, choosing, attaching, and what stands in and under them.

use std::path::Path;

use fantoccini::Locator;
use fantoccini::actions::{InputSource, MOUSE_BUTTON_LEFT, MouseActions, PointerAction};
use fantoccini::error::CmdError;
use fantoccini::key::Key;

use super::{By, Journey};

/// What a field holds, a number with the unit beside it; or the chosen option of a list.
const VALUE: &str = "(() => {
    if (field.selectedOptions) return field.selectedOptions[0]?.text ?? '';
    const unit = field.closest('.entry-box')?.querySelector('.entry-picker');
    const alone = /^[\\d.,\\s/]+$/.test(field.value) && field.getAttribute('aria-invalid') !== 'true';
    return unit && alone ? `${field.value} ${unit.selectedOptions?.[0]?.text ?? unit.textContent}` : field.value;
})()";
/// The text that a field refers to as its description.
const SENTENCE: &str = "document.getElementById(field.getAttribute('aria-describedby')).innerText";
/// The error beside a field.
const ERROR: &str = "field.closest('.entry').querySelector('.entry-error').innerText";

impl Journey {
    /// Replaces what is in a field by `text`, key by key; the caret stays in the field.
    pub async fn type_into(&self, by: By<'_>, text: &str) {
        // Pressed again, a held key is let go: in WebKit nothing else lets it go.
        let all = format!("{control}a{control}", control = char::from(Key::Control));
        let keys = if text.is_empty() { char::from(Key::Delete).to_string() } else { text.to_owned() };
        let field = self.until(&by.to_string(), async || self.find(by).await).await;
        // Not tried again: a field that is made anew under the typing has lost the caret.
        let typed = field.send_keys(&format!("{all}{keys}")).await;
        typed.unwrap_or_else(|error| panic!("{}: typing {text:?} into {by}: {error}", self.name));
    }

    /// Replaces what is in a field by `text`, then leaves it for the next one by Tab.
    pub async fn enter(&self, by: By<'_>, text: &str) {
        self.type_into(by, text).await;
        self.press(by, Key::Tab).await;
    }

    /// Presses one key in a field.
    pub async fn press(&self, by: By<'_>, key: Key) {
        let keys = char::from(key).to_string();
        self.until(&by.to_string(), async || self.find(by).await?.send_keys(&keys).await).await;
    }

    /// Taps a field near its left edge: far from where [`Journey::click`] taps, so that both are
    /// no double tap.
    pub async fn tap_left(&self, by: By<'_>) {
        let element = self.until(&by.to_string(), async || self.find(by).await).await;
        let width = element.rectangle().await.expect("the field has a size").2;
        let to_the_left = PointerAction::MoveToElement { element, duration: None, x: 16.0 - width / 2.0, y: 0.0 };
        let press = MouseActions::new("mouse".to_owned())
            .then(to_the_left)
            .then(PointerAction::Down { button: MOUSE_BUTTON_LEFT })
            .then(PointerAction::Up { button: MOUSE_BUTTON_LEFT });
        self.client().perform_actions(press).await.expect("the field can be tapped");
    }

    /// Types on where the caret is, as a person does who has tapped a field.
    pub async fn type_on(&self, text: &str) {
        let field = self.client().active_element().await.expect("a field that has the caret");
        // Not tried again: a part of it may be typed already.
        field.send_keys(text).await.unwrap_or_else(|error| panic!("{}: typing {text:?}: {error}", self.name));
    }

    /// Presses one key where the caret is.
    pub async fn type_on_key(&self, key: Key) {
        self.type_on(&char::from(key).to_string()).await;
    }

    /// Chooses the option with exactly this text from a list.
    pub async fn choose(&self, by: By<'_>, option: &str) {
        let what = format!("{by} with the option {option:?}");
        let path = format!(".//option[normalize-space(.) = \"{option}\"]");
        self.until(&what, async || {
            let list = self.find(by).await?;
            self.to_the_middle(&list).await?;
            list.select_by(Locator::XPath(&path)).await
        })
        .await;
    }

    /// Chooses a day, such as "2026-11-23", in a field whose own calendar and order of digits are
    /// the browser's.
    pub async fn choose_day(&self, by: By<'_>, day: &str) {
        let script = "const [field, day] = arguments; field.value = day;
            field.dispatchEvent(new Event('change', { bubbles: true }))";
        self.until(&by.to_string(), async || {
            let field = serde_json::to_value(self.find(by).await?)?;
            self.client().execute(script, vec![field, day.into()]).await
        })
        .await;
    }

    /// Gives a file to a file field.
    pub async fn attach(&self, by: By<'_>, file: &Path) {
        let path = file.to_str().expect("a path in UTF-8");
        self.until(&by.to_string(), async || self.find(by).await?.send_keys(path).await).await;
    }

    /// What a field holds, or which option of a list is chosen.
    pub async fn value_of(&self, by: By<'_>) -> String {
        self.until(&by.to_string(), async || self.said(by, VALUE).await).await
    }

    /// The sentence that a field refers to as its description; an error takes the place of a note.
    pub async fn sentence_of(&self, by: By<'_>) -> String {
        self.until(&by.to_string(), async || self.said(by, SENTENCE).await).await
    }

    /// Waits until a field holds exactly this text, or a list has this option chosen.
    pub async fn expect_value(&self, by: By<'_>, expected: &str) {
        self.expect(&format!("what is in {by}"), expected.to_owned(), async || self.said(by, VALUE).await).await;
    }

    /// Waits until the sentence that a field refers to as its description is exactly this.
    pub async fn expect_sentence(&self, by: By<'_>, expected: &str) {
        self.expect(&format!("the sentence at {by}"), expected.to_owned(), async || self.said(by, SENTENCE).await)
            .await;
    }

    /// Waits until the error beside a field is exactly this sentence; "" is none.
    pub async fn expect_error(&self, by: By<'_>, expected: &str) {
        self.expect(&format!("the error beside {by}"), expected.to_owned(), async || self.said(by, ERROR).await).await;
    }

    async fn said(&self, by: By<'_>, script: &str) -> Result<String, CmdError> {
        let field = serde_json::to_value(self.find(by).await?)?;
        let script = format!("const [field] = arguments; return {script}");
        let said = self.client().execute(&script, vec![field]).await?;
        Ok(said.as_str().unwrap_or_default().replace('\u{a0}', " ").trim().to_owned())
    }
}
