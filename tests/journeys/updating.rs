//! New versions of the app, whole and broken ones.

use brimwright::say;

use crate::harness::{By, Journey, Publisher};

/// Looks for a new version, as the browser does by itself now and then.
pub async fn look_for_a_version(journey: &Journey) {
    let script = "
        window.heard = [];
        addEventListener('brimwright-update-ready', () => heard.push('ready'));
        navigator.serviceWorker.getRegistration().then(async (registration) => {
            registration.addEventListener('updatefound', () => {
                const coming = registration.installing;
                coming.addEventListener('statechange', () => heard.push(coming.state));
            });
            await registration.update().catch(() => {});
        });
        return true;";
    journey.wait_until("the look for a version", script).await;
}

/// Looks for a new version to the end, and says whether one waits then. A browser may have looked by itself before.
pub async fn one_waits(journey: &Journey) -> bool {
    let script = "
        const registration = await navigator.serviceWorker.getRegistration();
        await registration.update().catch(() => {});
        while (registration.installing) await new Promise((done) => setTimeout(done, 10));
        return !!registration.waiting;";
    journey.run(script).await == true
}

/// Waits until the page is of this release.
pub async fn is_release(journey: &Journey, mark: &str) {
    journey
        .wait_until(
            &format!("release {mark}"),
            &format!("return document.querySelector('[name=release]')?.content === '{mark}'"),
        )
        .await;
}

#[tokio::test]
async fn a_new_version_waits_until_the_person_agrees() {
    let publisher = Publisher::new("update");
    publisher.publish("one");
    let journey = Journey::start_on("update_waits", publisher.address()).await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    // With a book there is a note of it, which is no build to be tidied away.
    journey.click(By::Text(say!(first::start_book))).await;
    publisher.publish("two");
    look_for_a_version(&journey).await;
    journey.wait_until("the app to be told", "return heard.includes('ready')").await;
    journey.open().await;
    is_release(&journey, "one").await;
    accept_update(&journey, "two").await;
    let kept = "window.names ??= []; caches.keys().then((all) => (window.names = all));
                return names.includes('brimwright-note')";
    journey.wait_until("the note of the books to be kept", kept).await;
}

/// Agrees to the release that waits, and waits until it has taken over and the old one is tidied away.
pub async fn accept_update(journey: &Journey, mark: &str) {
    journey
        .wait_until(
            "the update to be accepted",
            &format!(
                "const release = document.querySelector('[name=release]')?.content;
                 if (release !== '{mark}') window.dispatchEvent(new Event('brimwright-accept-update'));
                 return release === '{mark}'"
            ),
        )
        .await;
    journey
        .wait_until(
            "the old version to be tidied away",
            &format!(
                "window.names ??= []; caches.keys().then((all) => (window.names = all.filter((name) => name.startsWith('brimwright '))));
                 const builds = names.filter((name) => name.startsWith('brimwright '));
                 return builds.length === 1 && builds[0].includes(' {mark}-')"
            ),
        )
        .await;
}

#[tokio::test]
async fn a_page_of_html_in_place_of_the_app_is_refused() {
    let publisher = Publisher::new("html");
    publisher.publish("one");
    let mut journey = Journey::start_on("html_refused", publisher.address()).await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    publisher.publish("two");
    publisher.spoil("brimwright_bg", "<!doctype html><title>Not found</title>");
    look_for_a_version(&journey).await;
    journey.wait_until("the refusal", "return heard.includes('redundant')").await;
    journey.close_site();
    journey.open().await;
    is_release(&journey, "one").await;
}

#[tokio::test]
async fn a_broken_app_says_so_and_starts_once_it_is_whole() {
    let publisher = Publisher::new("broken");
    publisher.publish("one");
    publisher.spoil("brimwright_bg", "cut off");
    let journey = Journey::start_on("broken_says_so", publisher.address()).await;
    journey.try_to_open().await.expect("the page loads");
    let sentence = say!(start::could_not_start);
    assert_eq!(journey.text_of(By::Text(sentence)).await, sentence);
    journey.screenshot("sentence").await;
    publisher.publish("one");
    journey.click(By::Text(say!(start::reload))).await;
    journey.wait_until_started().await;
}

/// What cannot be read yet, and what is begun, waits in its fields with its sentences.
#[tokio::test]
async fn half_typed_text_survives_an_update() {
    let publisher = Publisher::new("half_typed");
    publisher.publish("one");
    let journey = Journey::start_on("update_half_typed", publisher.address()).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until_kept_offline().await;
    journey.go("#/buying/ingredient/1").await;
    let (size, price) = (By::Label(say!(goods::pack_size)), By::Label(say!(goods::case_price)));
    // The pack bought now stands open, the other one is folded: the new pack is the second in view.
    let (holds, price) = (By::Nth(0, &size), By::Nth(1, &price));
    let unknown = &say!(book::unknown_unit, unit = "stone", example = "12 lb");
    let needs = &[
        say!(book::new_pack_unsaved, of = "Apples"),
        say!(book::still_needs, fields = 1_usize, needs = say!(book::needs_pack_size)),
    ]
    .join(" ");
    journey.enter(holds, "3 stone").await;
    journey.expect_sentence(holds, unknown).await;
    journey.click(By::Text(say!(goods::add_pack))).await;
    journey.enter(price, "41").await;
    journey.wait_for_text(needs).await;
    publisher.publish("two");
    look_for_a_version(&journey).await;
    journey.click(By::Text(say!(first::update_now))).await;
    is_release(&journey, "two").await;
    journey.wait_until_started().await;
    journey.expect_value(holds, "3 stone").await;
    journey.expect_sentence(holds, unknown).await;
    journey.expect_value(price, "41").await;
    journey.wait_for_text(needs).await;
    journey.screenshot("back").await;
    half_written_form(&journey).await;
    journey.go("#/buying/ingredient/1").await;
    // Nothing of it is in the book.
    journey.press(holds, fantoccini::key::Key::Escape).await;
    journey.expect_value(holds, "40 lb").await;
    journey.click(By::Text(say!(book::discard_draft))).await;
    journey.wait_for_text_gone(needs).await;
}

/// A weighing that is not written down yet comes back too; once its screen is left, it is empty.
async fn half_written_form(journey: &Journey) {
    let bought = By::Label(say!(goods::weight_as_purchased));
    journey.go("#/buying/ingredient/1/yields").await;
    journey.type_into(bought, "20 lb").await;
    journey.wait_until("a mark that a load wipes away", "return (window.before = true)").await;
    journey.load_again().await;
    journey.wait_until("the load", "return !window.before && !document.getElementById('start')").await;
    journey.expect_value(bought, "20 lb").await;
    journey.go("#/buying").await;
    journey.go("#/buying/ingredient/1/yields").await;
    journey.expect_value(bought, "").await;
}
