//! Back, and a page that is loaded anew: how far a list was scrolled, what it was narrowed to, and what was chosen, are
//! as they were left. A screen that is gone to anew begins as at first.

use brimwright::say;
use fantoccini::key::Key;
use serde_json::json;

use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(a_list_is_as_it_was_left);
in_each_engine!(what_was_chosen_for_a_decision_is_kept);

/// How far down the list is, in pixels.
const DOWN: u32 = 700;

async fn demo(engine: Engine, name: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until_saved().await;
    journey
}

async fn scrolled(journey: &Journey, down: u32) {
    let script = format!("return Math.abs(scrollY - {down}) < 2");
    journey.wait_until(&format!("the page to be {down} pixels down"), &script).await;
}

async fn scroll(journey: &Journey, down: u32) {
    // What is written at a scroll is written before the next frame but one.
    let script = format!(
        "scrollTo(0, {down}); await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))"
    );
    journey.run(&script).await;
}

async fn go_back(journey: &Journey) {
    journey.wait_until("the browser to go back", "history.back(); return true").await;
}

async fn press(journey: &Journey, what: &str) {
    let script = format!("document.querySelector('main {what}').click(); return true");
    journey.wait_until("what is pressed", &script).await;
}

async fn load_anew(journey: &Journey) {
    journey.wait_until("the page to go", "window.before = true; return true").await;
    journey.load_again().await;
    journey
        .wait_until("the page to be loaded anew", "return !window.before && !document.getElementById('start')")
        .await;
}

async fn a_list_is_as_it_was_left(engine: Engine) {
    let journey = demo(engine, "returning_list").await;
    scroll(&journey, DOWN).await;
    journey.go("#/drinks/1").await;
    journey.expect_each("main h1", &["Orchard Green"]).await;
    scrolled(&journey, 0).await;
    go_back(&journey).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    scrolled(&journey, DOWN).await;
    load_anew(&journey).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    scrolled(&journey, DOWN).await;
    // Who comes from the bar begins at the top.
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    scrolled(&journey, 0).await;
}

#[tokio::test]
async fn what_a_list_is_narrowed_to_is_kept() {
    let journey = demo(Engine::Chromium, "returning_filter").await;
    let search = || By::Label(say!(first::find_drink));
    let pressed = "return [...document.querySelectorAll('main .chip[aria-pressed=true]')]
        .map((chip) => chip.firstChild.textContent.trim())";
    journey.enter(search(), "orchard").await;
    journey.go("#/drinks/1").await;
    // The way back on the page is the browser's own, where the person came from there.
    let visits = journey.run("return history.length").await;
    press(&journey, ".back").await;
    journey.expect_value(search(), "orchard").await;
    assert_eq!(journey.run("return history.length").await, visits);
    journey.enter(search(), "").await;
    press(&journey, ".chip[aria-pressed=false]").await;
    let chosen = journey.run(pressed).await;
    assert_ne!(chosen, json!([say!(first::all_drinks)]));
    load_anew(&journey).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    assert_eq!(journey.run(pressed).await, chosen);
    // Gone to anew, the list is whole.
    journey.click(By::Text(say!(first::buying))).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    assert_eq!(journey.run(pressed).await, json!([say!(first::all_drinks)]));
}

/// How many of a hundred buyers stay, by the slider of a decision.
const STAY: &str = "return document.querySelector('main input[type=range]')?.value === '70'";

async fn what_was_chosen_for_a_decision_is_kept(engine: Engine) {
    let journey = demo(engine, "returning_decision").await;
    journey.go("#/sizes/decide/kind/pressed/4-").await;
    let slide = "
        const slider = document.querySelector('main input[type=range]');
        if (!slider) return false;
        slider.value = '70';
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        return true;";
    journey.wait_until("a slider", slide).await;
    journey.go("#/sizes").await;
    journey.expect_each("main h1", &[say!(first::sizes)]).await;
    go_back(&journey).await;
    journey.wait_until("the slider to stand as it was left", STAY).await;
    load_anew(&journey).await;
    journey.wait_until("the slider to stand as it was left", STAY).await;
}

/// What an attribute of the page says, or nothing.
async fn attribute(journey: &Journey, name: &str) -> serde_json::Value {
    journey.run(&format!("return document.documentElement.getAttribute('{name}')")).await
}

#[tokio::test]
async fn a_page_is_shown_to_others_and_things_stand_closer_where_that_is_chosen() {
    let journey = demo(Engine::Chromium, "returning_shown").await;
    journey.go("#/book").await;
    entering::unfold(&journey, say!(device::this_device)).await;
    journey.choose(By::Label(say!(device::laptop_spacing)), say!(device::compact)).await;
    assert_eq!(attribute(&journey, "data-density").await, json!("compact"));
    load_anew(&journey).await;
    assert_eq!(attribute(&journey, "data-density").await, json!("compact"));
    journey.resize(1440, 900).await;
    journey.go("#/sizes/decide/kind/pressed/4-").await;
    journey.click(By::Text(say!(common::present))).await;
    let shown = "
        const seen = (what) => [...document.querySelectorAll(what)].some((it) => it.checkVisibility());
        const figures = [...document.querySelectorAll('.answer-figures dd, main table td')].filter((it) => it.checkVisibility());
        return [seen('.bar'), seen('.head'), seen('main select, main input:not([type=range])'),
            figures.length > 2 && figures.every((it) => parseFloat(getComputedStyle(it).fontSize) >= 20)]";
    assert_eq!(journey.run(shown).await, json!([false, false, false, true]));
    journey.screenshot("shown").await;
    journey.press(By::Text(say!(common::stop_presenting)), Key::Escape).await;
    journey.click(By::Text(say!(common::present))).await;
    // Who leaves the page ends it.
    journey.go("#/drinks").await;
    assert_eq!(attribute(&journey, "data-present").await, json!(null));
    journey.resize(360, 740).await;
}

#[tokio::test]
async fn an_address_without_a_page_is_said() {
    let journey = demo(Engine::Chromium, "returning_nowhere").await;
    journey.go("#/drinks/zzz").await;
    journey.wait_for_text(say!(common::no_page_here)).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    journey.go("#/drinks").await;
    journey.wait_for_text_gone(say!(common::no_page_here)).await;
}
