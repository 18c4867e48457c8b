//! What is wrong with how a page is laid out.

use super::Journey;

/// The least size of a touch target in CSS pixels, each way (WCAG 2.2, 2.5.5, level AAA).
/// Excepted as there: a link in a sentence. A control also counts with a label around it.
const FAULTS: &str = r"
const tidy = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
const faults = [];
const page = document.documentElement;
if (page.scrollWidth > innerWidth) {
    const wide = [...document.body.querySelectorAll('*')]
        .filter((it) => it.getBoundingClientRect().right > innerWidth + 0.5)
        .map((it) => `${it.tagName.toLowerCase()}.${it.className.baseVal ?? it.className}`);
    faults.push(`scrolls sideways: ${page.scrollWidth} of ${innerWidth} px (${wide.slice(-3).join(', ')})`);
}
const inSentence = (element) => element.tagName === 'A'
    && getComputedStyle(element).display === 'inline'
    && tidy(element.parentElement.innerText).length > tidy(element.innerText).length;
for (const element of document.body.querySelectorAll('a, button, input, select, [tabindex=\'0\']')) {
    const shown = element.checkVisibility({ visibilityProperty: true });
    if (!shown || element.matches('.skip') || inSentence(element)) continue;
    const { width, height } = element.getBoundingClientRect();
    if (width < 44 || height < 44) {
        const name = tidy(element.innerText) || element.labels?.[0]?.innerText || element.getAttribute('aria-label');
        faults.push(`${element.tagName.toLowerCase()}.${element.className} “${name}” is ${width.toFixed(1)} by ${height.toFixed(1)} px`);
    }
}
return faults;
";

impl Journey {
    /// Sideways scrolling of the page, and touch targets under 44 by 44 px.
    pub async fn faults_of_layout(&self) -> Vec<String> {
        let faults = self.client().execute(FAULTS, Vec::new()).await;
        serde_json::from_value(faults.expect("the page can be measured")).expect("a list of faults")
    }
}
