//! How a journey finds things: as a person does, by what is written on or beside them.

use std::fmt;

use fantoccini::Client;
use fantoccini::elements::{Element, ElementRef};
use fantoccini::error::CmdError;

/// What to look for. Only what is visible is found, and the innermost of several around it.
#[derive(Clone, Copy)]
pub enum By<'a> {
    /// The element with this `data-testid`.
    TestId(&'a str),
    /// The element with exactly this text.
    Text(&'a str),
    /// The control with exactly this label, visible or by `aria-label`.
    Label(&'a str),
}

impl fmt::Display for By<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            By::TestId(id) => write!(f, "the element with the test id {id:?}"),
            By::Text(text) => write!(f, "an element with the text {text:?}"),
            By::Label(label) => write!(f, "a control with the label {label:?}"),
        }
    }
}

/// `arguments`: the kind of search and what is looked for.
const SEARCH: &str = r"
const [kind, wanted] = arguments;
const tidy = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
// A label around its control counts without what the control itself shows.
const labelText = (label) => tidy([...label.childNodes]
    .filter((node) => !node.matches?.('input, select, textarea'))
    .map((node) => node.textContent).join(' '));
const fits = {
    TestId: (element) => element.dataset?.testid === wanted,
    Text: (element) => tidy(element.innerText) === wanted
        && ![...element.children].some((child) => tidy(child.innerText) === wanted),
    Label: (element) => tidy(element.getAttribute('aria-label')) === wanted
        || [...(element.labels ?? [])].some((label) => labelText(label) === wanted),
}[kind];
return [...document.body.querySelectorAll('*')].find((element) =>
    fits(element) && element.checkVisibility({ visibilityProperty: true })) ?? null;
";

/// The key of an element in WebDriver's answers (W3C WebDriver, section 12.1).
const ELEMENT: &str = "element-6066-11e4-a52e-4f735466cecf";

impl By<'_> {
    /// Looks once.
    pub async fn find(self, client: &Client) -> Result<Element, CmdError> {
        let (kind, wanted) = match self {
            By::TestId(id) => ("TestId", id),
            By::Text(text) => ("Text", text),
            By::Label(label) => ("Label", label),
        };
        let found = client.execute(SEARCH, vec![kind.into(), wanted.into()]).await?;
        match found.get(ELEMENT).and_then(|id| id.as_str()) {
            Some(id) => Ok(Element::from_element_id(client.clone(), ElementRef::from(id.to_owned()))),
            None => Err(CmdError::WaitTimeout),
        }
    }
}
