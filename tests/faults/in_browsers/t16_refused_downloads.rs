//! T16: a text that should leave the app where the browser refuses: the share sheet, then the clipboard, then the text
//! to copy, and what is said is what became of it.

use super::demo_with;
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
const CASES: [(&str, &str, &str, &[&str]); 4] = [
    ("", "", "Handed to where you chose.", &["share"]),
    ("AbortError", "", "Not shared: you closed the choice of where to.", &["share"]),
    ("NotAllowedError", "", "Copied. Paste it into a message.", &["share", "clipboard"]),
    (
        "NotAllowedError",
        "NotAllowedError",
        "This browser neither shares nor copies by itself. The text stands below: select it and copy it.",
        &["share", "clipboard"],
    ),
];

async fn t16_what_is_said_is_what_became_of_it(engine: Engine) {
    let mut runs = Runs::of("T16");
    let journey = demo_with(engine, "refused_downloads", ANSWERS).await;
    journey.go("#/buying/list").await;
    journey.choose_day(By::Label("Planned from"), "2026-11-26").await;
    journey.click(By::Text("Make the list")).await;
    for (share, clipboard, sentence, asked) in CASES {
        runs.begin();
        let script = format!(
            "window.given = []; window.answers = {{ share: '{share}', clipboard: '{clipboard}' }}; return true"
        );
        journey.wait_until("the answers to be told", &script).await;
        journey.click(By::Text("Share as text")).await;
        journey.wait_for_text(sentence).await;
        let names = journey.run("return given.map(([name]) => name)").await;
        assert_eq!(names, serde_json::json!(asked));
        let text = journey.run("return given[0][1]").await;
        assert!(text.as_str().is_some_and(|text| text.contains("Quillhaven Supply")), "{text}");
        runs.held();
    }
    let by_hand = journey.value_of(By::Label("Buying list")).await;
    assert!(by_hand.contains("Quillhaven Supply"), "{by_hand}");
}
