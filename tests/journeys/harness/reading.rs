//! Reading figures off the page: tables, figures with their names, and lines of text.

use brimwright::say;
use serde_json::{Value, json};

use super::{By, Journey};

/// What the scripts below share: the text of an element on one line, and the innermost part of
/// the page under a heading.
const SHARED: &str = r"
const tidy = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
const seen = (element) => element.checkVisibility({ visibilityProperty: true });
const under = (heading) => [...document.querySelectorAll('section, details, main')].reverse().find((part) =>
    [...part.querySelectorAll('h1, h2, h3')].some((it) => seen(it) && tidy(it.innerText) === heading));
";

impl Journey {
    /// Waits until the table under a heading has exactly these rows, head and foot among them.
    pub async fn expect_rows(&self, heading: &str, rows: &[&[&str]]) {
        let script = "return [...under(arguments[0]).querySelectorAll('tr')]
            .map((row) => [...row.cells].map((cell) => tidy(cell.innerText)))";
        self.expect_read(&format!("the table under {heading:?}"), script, json!(heading), json!(rows)).await;
    }

    /// Waits until the figures under a heading are exactly these, each with its name.
    pub async fn expect_figures(&self, heading: &str, figures: &[(&str, &str)]) {
        let figures: Vec<[&str; 2]> = figures.iter().map(|(name, figure)| [*name, *figure]).collect();
        let figures: Vec<&[&str]> = figures.iter().map(|figure| figure.as_slice()).collect();
        self.expect_facts(heading, &figures).await;
    }

    /// The same of figures that may have more than one line under their names.
    pub async fn expect_facts(&self, heading: &str, facts: &[&[&str]]) {
        let script = "return [...under(arguments[0]).querySelectorAll('dl > div')].filter(seen)
            .map((figure) => [...figure.children].map((it) => tidy(it.innerText)))";
        self.expect_read(&format!("the figures under {heading:?}"), script, json!(heading), json!(facts)).await;
    }

    /// Waits until the text of an element is exactly these lines.
    pub async fn expect_lines(&self, by: By<'_>, lines: &[&str]) {
        let script = format!("{SHARED} return arguments[0].innerText.split('\\n').map(tidy).filter(Boolean)");
        self.expect(&format!("the lines of {by}"), json!(lines), async || {
            let element = serde_json::to_value(self.find(by).await?)?;
            self.client().execute(&script, vec![element]).await
        })
        .await;
    }

    /// Waits until the elements that a CSS selector finds have exactly these texts, in order.
    pub async fn expect_each(&self, selector: &str, texts: &[&str]) {
        let script = "return [...document.querySelectorAll(arguments[0])].map((it) => tidy(it.innerText))";
        self.expect_read(&format!("the texts of {selector:?}"), script, json!(selector), json!(texts)).await;
    }

    /// Waits until a CSS selector finds so many elements.
    pub async fn expect_count(&self, selector: &str, count: usize) {
        let script = "return document.querySelectorAll(arguments[0]).length";
        self.expect_read(&format!("the number of {selector:?}"), script, json!(selector), json!(count)).await;
    }

    /// Waits until the books listed on the page are these, given by name, whatever is said of their
    /// size and date; they are listed in no order of their own.
    pub async fn expect_books(&self, books: &[&str]) {
        let script = "
            const aside = (it) => it.querySelector('.soft')?.innerText ?? '';
            const open = (it) => it.querySelector('.open-now')?.innerText ?? '';
            const listed = [...document.querySelectorAll(arguments[0])];
            return listed.map((it) => tidy(it.innerText.replace(aside(it), '').replace(open(it), ''))).sort()";
        self.expect_read("the books on this device", script, json!("ul.books > li"), json!(books)).await;
    }

    /// The text of each element that a CSS selector finds, on one line each, as it is now.
    pub async fn lines_of_each(&self, selector: &str) -> Vec<String> {
        let script =
            format!("{SHARED} return [...document.querySelectorAll(arguments[0])].map((it) => tidy(it.innerText))");
        let lines = self.client().execute(&script, vec![selector.into()]).await;
        serde_json::from_value(lines.expect("the page can be read")).expect("lines")
    }

    /// What the Undo of the head would take back, as its title says; the bare words if there is nothing.
    pub async fn title_of_undo(&self) -> String {
        let script = "return document.querySelector('.head-steps button').title";
        let title = self.client().execute(script, Vec::new()).await.expect("the head can be read");
        title.as_str().unwrap_or_default().to_owned()
    }

    /// Waits until Undo says what it takes back: when a book opens, it asks which other tabs are there first.
    pub async fn wait_until_undo_is(&self, title: &str) {
        let script = "return document.querySelector('.head-steps button')?.title";
        self.expect_read("what Undo takes back", script, Value::Null, title.into()).await;
    }

    /// Waits until the app says that everything is saved.
    pub async fn wait_until_saved(&self) {
        let script = format!("return document.querySelector('.saving').innerText === '{}'", say!(first::saved));
        self.wait_until("everything to be saved", &script).await;
    }

    async fn expect_read(&self, what: &str, script: &str, argument: Value, expected: Value) {
        let script = format!("{SHARED} {script}");
        self.expect(what, expected, async || self.client().execute(&script, vec![argument.clone()]).await).await;
    }
}
