//! What is wrong with how a page is laid out.

use super::{GO, Journey};

/// `arguments`: screens, each by its address, its heading and a text on it, and whom to tell. The least size of a touch target is
/// 44 by 44 px (WCAG 2.2, 2.5.5). Excepted as there: a link in a sentence.
const FAULTS: &str = r"
const [screens, done] = arguments;
const tidy = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
const named = (element) => `${element.tagName.toLowerCase()}.${element.className.baseVal ?? element.className}`;
const inSentence = (element) => element.tagName === 'A'
    && getComputedStyle(element).display === 'inline'
    && tidy(element.parentElement.innerText).length > tidy(element.innerText).length;
const other = (heading, text) => {
    const main = document.querySelector('main');
    const found = tidy(main?.querySelector('h1')?.innerText);
    if (!found) return ['has no heading'];
    if (heading && found !== heading) return [`is headed “${found}”, not “${heading}”`];
    return tidy(main.innerText).includes(text) ? [] : [`does not say “${text}”`];
};
// Not innerWidth: a phone zooms out until a page that is too wide fits, and calls that its width.
const sideways = () => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const wide = [...document.body.querySelectorAll('*')]
        .filter((it) => it.getBoundingClientRect().right > clientWidth + 0.5);
    return [`scrolls sideways, ${scrollWidth} of ${clientWidth} px: ${wide.slice(-3).map(named).join(', ')}`];
};
const small = () => [...document.body.querySelectorAll('a, button, input, select, [tabindex=\'0\']')]
    // A box to tick is touched with its name.
    .map((element) => [element, (element.closest('.tick') ?? element).getBoundingClientRect()])
    .filter(([element, { width, height }]) => (width < 44 || height < 44)
        && element.checkVisibility({ visibilityProperty: true })
        && !element.matches('.skip') && !inSentence(element))
    .map(([element, { width, height }]) => {
        const name = tidy(element.innerText) || element.labels?.[0]?.innerText || element.getAttribute('aria-label');
        return `${named(element)} “${name}” is ${width.toFixed(1)} by ${height.toFixed(1)} px`;
    });
const look = async () => {
    const faults = [];
    for (const [address, heading, text] of screens) {
        await go(address);
        for (const fault of [...other(heading, text), ...sideways(), ...small()]) faults.push(`${address} at ${document.documentElement.clientWidth} px: ${fault}`);
    }
    return faults;
};
look().then(done);
";

/// A screen, and how to tell it from every other.
pub struct Screen {
    /// Its address; "" is the screen as it is.
    pub address: String,
    /// Its heading; "" is any.
    pub heading: String,
    /// A text on it that others with this heading do not have.
    pub text: &'static str,
}

impl Journey {
    /// Goes to each address, "" being the screen as it is: a missing heading, sideways scrolling of the page, and
    /// touch targets under 44 by 44 px.
    pub async fn faults_of_layout(&self, addresses: &[&str]) -> Vec<String> {
        let any = |address: &&str| Screen { address: (*address).to_owned(), heading: String::new(), text: "" };
        self.faults_of_screens(&addresses.iter().map(any).collect::<Vec<_>>()).await
    }

    /// The same, and screens that are not those that their addresses promise.
    pub async fn faults_of_screens(&self, screens: &[Screen]) -> Vec<String> {
        let screens: Vec<_> = screens.iter().map(|it| (&it.address, &it.heading, it.text)).collect();
        let screens = serde_json::to_value(screens).expect("texts");
        let script = format!("{GO} {FAULTS}");
        let faults = self.client().execute_async(&script, vec![screens]).await;
        serde_json::from_value(faults.expect("the page can be measured")).expect("a list of faults")
    }
}
