//! T16: a text that should leave the app where the browser refuses: the share sheet, then the clipboard, then the text
//! to copy, and what is said is what became of it.

use super::demo_with;
use brimwright::say;

use crate::harness::{By, Engine, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t16_what_is_said_is_what_became_of_it);

/// Share sheet and clipboard that answer as `window.answers` says, and note what they were given.
const ANSWERS: &str = "
    window.given = [];
    const answer = (name) => async (data) => {
        given.push([name, data.text ?? data]);
        const error = window.answers[name];
        if (error) throw new DOMException('as told', error);
    };
    Object.defineProperty(navigator, 'share', { value: answer('share') });
    Object.defineProperty(navigator, 'clipboard', { value: { writeText: answer('clipboard') } });";

/// What share sheet and clipboard answer ("" is yes), what is said then, and who was given the text.
fn cases() -> [(&'static str, &'static str, &'static str, &'static [&'static str]); 4] {
    [
        ("", "", say!(book::share_sent), &["share"]),
        ("AbortError", "", say!(book::share_closed), &["share"]),
        ("NotAllowedError", "", say!(book::share_copied), &["share", "clipboard"]),
        ("NotAllowedError", "NotAllowedError", say!(book::share_by_hand), &["share", "clipboard"]),
    ]
}

async fn t16_what_is_said_is_what_became_of_it(engine: Engine) {
    let mut runs = Runs::of("T16");
    let journey = demo_with(engine, "refused_downloads", ANSWERS).await;
    journey.go("#/buying/list").await;
    journey.choose_day(By::Label(say!(market::batches_from)), "2026-11-26").await;
    journey.click(By::Text(say!(market::make_list))).await;
    for (share, clipboard, sentence, asked) in cases() {
        runs.begin();
        let script = format!(
            "window.given = []; window.answers = {{ share: '{share}', clipboard: '{clipboard}' }}; return true"
        );
        journey.wait_until("the answers to be told", &script).await;
        journey.click(By::Text(say!(market::share_as_text))).await;
        journey.wait_for_text(sentence).await;
        let names = journey.run("return given.map(([name]) => name)").await;
        assert_eq!(names, serde_json::json!(asked));
        let text = journey.run("return given[0][1]").await;
        assert!(text.as_str().is_some_and(|text| text.contains("Quillhaven Supply")), "{text}");
        runs.held();
    }
    let by_hand = journey.value_of(By::Label(say!(goods::buying_list))).await;
    assert!(by_hand.contains("Quillhaven Supply"), "{by_hand}");
}
