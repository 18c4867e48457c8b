//! Fields: typing, choosing, attaching, and what stands in and under them.

use std::path::Path;

use fantoccini::Locator;
use fantoccini::key::Key;
use serde_json::Value;

use super::{By, Journey};

impl Journey {
    /// Replaces what is in a field by `text`, key by key; the caret stays in the field.
    pub async fn type_into(&self, by: By<'_>, text: &str) {
        let all = format!("{}a{}", char::from(Key::Control), char::from(Key::Null));
        let keys = if text.is_empty() { char::from(Key::Delete).to_string() } else { text.to_owned() };
        self.until(&by.to_string(), async || self.find(by).await?.send_keys(&format!("{all}{keys}")).await).await;
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

    /// Chooses the option with exactly this text from a list.
    pub async fn choose(&self, by: By<'_>, option: &str) {
        let what = format!("{by} with the option {option:?}");
        let path = format!(".//option[normalize-space(.) = \"{option}\"]");
        self.until(&what, async || self.find(by).await?.select_by(Locator::XPath(&path)).await).await;
    }

    /// Gives a file to a file field.
    pub async fn attach(&self, by: By<'_>, file: &Path) {
        let path = file.to_str().expect("a path in UTF-8");
        self.until(&by.to_string(), async || self.find(by).await?.send_keys(path).await).await;
    }

    /// Waits until a field holds exactly this text, or a list has this option chosen.
    pub async fn expect_value(&self, by: By<'_>, expected: &str) {
        let script = "const [field] = arguments;
            return (field.selectedOptions?.[0]?.text ?? field.value).replace(/\\u00a0/g, ' ')";
        self.expect_said(&format!("{by} to hold {expected:?}"), by, script, expected).await;
    }

    /// Waits until the sentence that a field refers to as its description is exactly this; an
    /// error takes the place of a note.
    pub async fn expect_sentence(&self, by: By<'_>, expected: &str) {
        let script = "const [field] = arguments;
            return field.getAttribute('aria-describedby')?.split(' ')
                .map((id) => document.getElementById(id)?.innerText).join(' ')
                .replace(/\\u00a0/g, ' ').trim()";
        self.expect_said(&format!("the sentence at {by}"), by, script, expected).await;
    }

    /// Waits until the error beside a field is exactly this sentence; "" is none.
    pub async fn expect_error(&self, by: By<'_>, expected: &str) {
        let script = "const [field] = arguments;
            return field.closest('.entry').querySelector('.entry-error').innerText.replace(/\\u00a0/g, ' ').trim()";
        self.expect_said(&format!("the error beside {by}"), by, script, expected).await;
    }

    async fn expect_said(&self, what: &str, by: By<'_>, script: &str, expected: &str) {
        let expected = Value::from(expected);
        self.expect(what, expected, async || {
            let field = serde_json::to_value(self.find(by).await?)?;
            self.client().execute(script, vec![field]).await
        })
        .await;
    }
}
