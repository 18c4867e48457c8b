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
    /// The list item around an element with exactly this text.
    Item(&'a str),
    /// One of several alike, counted from 0 down the page.
    Nth(usize, &'a By<'a>),
}

impl fmt::Display for By<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            By::TestId(id) => write!(f, "the element with the test id {id:?}"),
            By::Text(text) => write!(f, "an element with the text {text:?}"),
            By::Label(label) => write!(f, "a control with the label {label:?}"),
            By::Item(text) => write!(f, "a list item with the text {text:?} in it"),
            By::Nth(index, by) => write!(f, "number {index} (from 0) of: {by}"),
        }
    }
}

impl By<'static> {
    /// The control with this label, which has a name or a figure in it.
    pub fn label(label: String) -> By<'static> {
        By::Label(label.leak())
    }
}

/// `arguments`: the kind of search, what is looked for, and which of several alike is meant.
const SEARCH: &str = r"
const [kind, wanted, index] = arguments;
const tidy = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
// A label around its control counts without what the control itself shows.
const labelText = (label) => tidy([...label.childNodes]
    .filter((node) => !node.matches?.('input, select, textarea'))
    .map((node) => node.textContent).join(' '));
// What is laid out is dear to ask for, so those that cannot show it are not asked.
const bare = (text) => text.replace(/\s+/g, '');
// Engines put blanks in other places around what is only heard.
const shows = (element) => bare(element.textContent).includes(bare(wanted)) && bare(element.innerText) === bare(wanted);
const item = (element) => element.tagName === 'LI'
    && [...element.querySelectorAll('*')].some(shows);
const fits = {
    Item: (element) => item(element) && ![...element.querySelectorAll('li')].some(item),
    TestId: (element) => element.dataset?.testid === wanted,
    Text: (element) => shows(element) && ![...element.children].some(shows),
    Label: (element) => tidy(element.getAttribute('aria-label')) === wanted
        || [...(element.labels ?? [])].some((label) => labelText(label) === wanted),
}[kind];
return [...document.body.querySelectorAll('*')].filter((element) =>
    fits(element) && element.checkVisibility({ visibilityProperty: true }))[index] ?? null;
";

/// The key of an element in WebDriver's answers (W3C WebDriver, section 12.1).
const ELEMENT: &str = "element-6066-11e4-a52e-4f735466cecf";

impl By<'_> {
    /// Looks once.
    pub async fn find(self, client: &Client) -> Result<Element, CmdError> {
        let (index, by) = match self {
            By::Nth(index, by) => (index, *by),
            by => (0, by),
        };
        let (kind, wanted) = match by {
            By::TestId(id) => ("TestId", id),
            By::Text(text) => ("Text", text),
            By::Label(label) => ("Label", label),
            By::Item(text) => ("Item", text),
            By::Nth(..) => panic!("one of several is counted once"),
        };
        let found = client.execute(SEARCH, vec![kind.into(), wanted.into(), index.into()]).await?;
        match found.get(ELEMENT).and_then(|id| id.as_str()) {
            Some(id) => Ok(Element::from_element_id(client.clone(), ElementRef::from(id.to_owned()))),
            None => Err(CmdError::WaitTimeout),
        }
    }
}
