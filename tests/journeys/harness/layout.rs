//! What is wrong with how a page is laid out.

use serde_json::{Value, json};

use super::{GO, Journey};

/// `arguments`: screens, each by its address, its heading and a text on it, what stands there without a mark where every
/// text has one, or nothing, and whom to tell. The least size of a touch target is
/// 44 by 44 px (WCAG 2.2, 2.5.5). Excepted as there: a link in a sentence.
const FAULTS: &str = r"
const [screens, unmarked, done] = arguments;
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
        .filter((it) => {
            const { left, right } = it.getBoundingClientRect();
            return left < -0.5 || right > clientWidth + 0.5;
        });
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
const texts = () => {
    const texts = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) if (tidy(walker.currentNode.data)) texts.push(walker.currentNode);
    return texts;
};
// Names of the book end in an ellipsis where there is no room for them.
const MAY_END = '.head-name span:first-child, .turn-name';
const clipped = () => {
    const range = document.createRange();
    const place = (node) => {
        range.selectNodeContents(node);
        return range.getBoundingClientRect();
    };
    const heard = (element) => element && (getComputedStyle(element).clipPath === 'inset(50%)' || heard(element.parentElement));
    const { clientWidth } = document.documentElement;
    const faults = [];
    for (const node of texts()) {
        const parent = node.parentElement;
        const { left, right, bottom, width } = place(node);
        const seen = width > 0 && parent.checkVisibility({ visibilityProperty: true });
        if (!seen || parent.closest(`.skip, svg, option, ${MAY_END}`)) continue;
        const sticks = (box, name) => {
            const out = Math.max(box.left - left, right - box.right, box.bottom ? bottom - box.bottom : 0);
            if (out > 1 && !heard(parent)) faults.push(`“${tidy(node.data)}” sticks out of ${name} by ${out.toFixed(1)} px`);
            return out > 1;
        };
        let box = parent;
        for (; box !== document.body; box = box.parentElement) {
            const { display, overflowX, overflowY } = getComputedStyle(box);
            // A box that is made to be scrolled in.
            if (overflowX === 'auto' || overflowX === 'scroll') break;
            if (display === 'inline' || display === 'contents') continue;
            const { left, right, bottom } = box.getBoundingClientRect();
            const cuts = overflowY === 'hidden' || overflowY === 'clip';
            if (sticks({ left, right, bottom: cuts && bottom }, named(box))) break;
        }
        if (box === document.body) sticks({ left: 0, right: clientWidth }, 'the page');
    }
    return faults;
};
// Words and figures that are broken within, where there is room for whole ones: from a tablet on. With text twice as
// large a long word may take two lines, and none takes three.
const broken = () => {
    if (document.documentElement.clientWidth < 720) return [];
    const most = document.documentElement.style.fontSize === '200%' ? 2 : 1;
    const range = document.createRange();
    const heard = (element) => element && (getComputedStyle(element).clipPath === 'inset(50%)' || heard(element.parentElement));
    const faults = [];
    for (const node of texts()) {
        const parent = node.parentElement;
        if (!parent.checkVisibility({ visibilityProperty: true }) || parent.closest(`.skip, svg, option, ${MAY_END}`)) continue;
        if (getComputedStyle(parent).hyphens === 'auto' || heard(parent)) continue;
        // Between these signs a line may end.
        for (const word of node.data.matchAll(/[^\s\u2010-\u2014/-]+/g)) {
            range.setStart(node, word.index);
            range.setEnd(node, word.index + word[0].length);
            const lines = [];
            for (const { top, width } of range.getClientRects()) {
                if (width > 0 && !lines.some((line) => Math.abs(line - top) < 4)) lines.push(top);
            }
            if (lines.length > most) faults.push(`“${word[0]}” of “${tidy(node.data)}” is broken over ${lines.length} lines in ${named(parent)}`);
        }
    }
    return faults;
};
const NAMED = ['aria-label', 'title', 'placeholder', 'alt', 'data-name', 'aria-valuetext'];
// Words of plain letters only, but for what may stand so.
const untranslated = () => {
    if (!unmarked) return [];
    const [names, words] = unmarked;
    const plain = (text) => (text.normalize('NFC').match(/[\p{L}\p{M}]+/gu) ?? [])
        .filter((word) => /^[A-Za-z]+$/.test(word) && !words.includes(word));
    // What the browser calls a language, a currency or a country.
    const name = (options, tag, locales) => {
        try {
            return new Intl.DisplayNames(locales, options).of(tag);
        } catch {
            return null;
        }
    };
    const capital = (name) => name && name[0].toUpperCase() + name.slice(1);
    const byBrowser = ({ value, text }) => text === capital(name({ type: 'language', languageDisplay: 'standard' }, value, [value]))
        || text === `${value}, ${name({ type: 'currency' }, value)}`
        || text === name({ type: 'region' }, value);
    const byUs = ({ parentElement }) => !parentElement.closest('script, style')
        && !(parentElement.matches('option') && byBrowser(parentElement));
    const said = texts().filter(byUs).map((node) => node.data);
    for (const element of document.body.querySelectorAll(NAMED.map((name) => `[${name}]`).join())) {
        for (const name of NAMED) if (element.hasAttribute(name)) said.push(element.getAttribute(name));
    }
    const faults = new Set();
    for (const text of [document.title, ...said]) {
        if (!plain(text).length) continue;
        const rest = names.reduce((rest, name) => rest.replaceAll(name, ' '), tidy(text));
        if (plain(rest).length) faults.add(`“${tidy(text)}” is not translated: ${plain(rest).join(', ')}`);
    }
    return [...faults];
};
const look = async () => {
    const faults = [];
    for (const [address, heading, text] of screens) {
        await go(address);
        for (const fault of [...other(heading, text), ...sideways(), ...small(), ...clipped(), ...broken(), ...untranslated()]) faults.push(`${address} at ${document.documentElement.clientWidth} px: ${fault}`);
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
    /// Goes to each address, "" being the screen as it is: a missing heading, sideways scrolling of the page,
    /// touch targets under 44 by 44 px, texts that stick out of their boxes or are cut off, and words that are broken
    /// within.
    pub async fn faults_of_layout(&self, addresses: &[&str]) -> Vec<String> {
        let any = |address: &&str| Screen { address: (*address).to_owned(), heading: String::new(), text: "" };
        self.faults_of_screens(&addresses.iter().map(any).collect::<Vec<_>>()).await
    }

    /// The same, and screens that are not those that their addresses promise.
    pub async fn faults_of_screens(&self, screens: &[Screen]) -> Vec<String> {
        let screens: Vec<_> = screens.iter().map(|it| (&it.address, &it.heading, it.text)).collect();
        let screens = serde_json::to_value(screens).expect("texts");
        let script = format!("{GO} {FAULTS}");
        let faults = self.client().execute_async(&script, vec![screens, self.unmarked()]).await;
        serde_json::from_value(faults.expect("the page can be measured")).expect("a list of faults")
    }

    /// What may stand without a mark: names, the longest first, and single words. Nothing where texts have none.
    fn unmarked(&self) -> Value {
        if self.unmarked.is_empty() {
            return Value::Null;
        }
        let (mut names, words): (Vec<&String>, Vec<&String>) =
            self.unmarked.iter().partition(|name| name.contains(|sign: char| !sign.is_ascii_alphabetic()));
        names.sort_by_key(|name| std::cmp::Reverse(name.len()));
        json!([names, words])
    }
}
