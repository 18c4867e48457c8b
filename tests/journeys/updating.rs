//! New versions of the app, whole and broken ones.

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
    publisher.publish("two");
    look_for_a_version(&journey).await;
    journey.wait_until("the app to be told", "return heard.includes('ready')").await;
    journey.open().await;
    is_release(&journey, "one").await;
    accept_update(&journey, "two").await;
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
                "window.names ??= []; caches.keys().then((names) => (window.names = names));
                 return names.length === 1 && names[0].includes(' {mark}-')"
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
    let sentence = "Brimwright could not start. Check the connection and load the page again. \
                    Your data is untouched on this device.";
    assert_eq!(journey.text_of(By::Text(sentence)).await, sentence);
    journey.screenshot("sentence").await;
    publisher.publish("one");
    journey.click(By::Text("Load again")).await;
    journey.wait_until_started().await;
}
