//! What is wrong with how a page is laid out.

use super::{GO, Journey};

/// `arguments`: the addresses of screens, and whom to tell. The least size of a touch target is
/// 44 by 44 px (WCAG 2.2, 2.5.5). Excepted as there: a link in a sentence.
const FAULTS: &str = r"
const [addresses, done] = arguments;
const tidy = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
const named = (element) => `${element.tagName.toLowerCase()}.${element.className.baseVal ?? element.className}`;
const inSentence = (element) => element.tagName === 'A'
    && getComputedStyle(element).display === 'inline'
    && tidy(element.parentElement.innerText).length > tidy(element.innerText).length;
const nameless = () => tidy(document.querySelector('main h1')?.innerText) ? [] : ['has no heading'];
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
    for (const address of addresses) {
        await go(address);
        for (const fault of [...nameless(), ...sideways(), ...small()]) faults.push(`${address} at ${document.documentElement.clientWidth} px: ${fault}`);
    }
    return faults;
};
look().then(done);
";

impl Journey {
    /// Goes to each address, "" being the screen as it is: a missing heading, sideways scrolling of the page, and
    /// touch targets under 44 by 44 px.
    pub async fn faults_of_layout(&self, addresses: &[&str]) -> Vec<String> {
        let script = format!("{GO} {FAULTS}");
        let faults = self.client().execute_async(&script, vec![addresses.into()]).await;
        serde_json::from_value(faults.expect("the page can be measured")).expect("a list of faults")
    }
}
