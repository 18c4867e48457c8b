//! New versions of the app, whole and broken ones.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use crate::harness::{By, Journey};

/// The built site in a folder of its own, to be published in several releases.
pub struct Publisher {
    folder: PathBuf,
}

impl Publisher {
    pub fn new(name: &str) -> Publisher {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("sites").join(name);
        fs::remove_dir_all(&folder).ok();
        Publisher { folder }
    }

    pub fn address(&self) -> &str {
        self.folder.to_str().expect("a path in UTF-8")
    }

    /// Publishes a release whose page carries `mark`; everything else stays the same.
    pub fn publish(&self, mark: &str) {
        let built = std::env::var("BRIMWRIGHT_SITE").expect("the built site");
        copy(Path::new(&built), &self.folder);
        let page = fs::read_to_string(self.folder.join("index.html")).expect("the page");
        let meta = format!("<meta name=\"release\" content=\"{mark}\"><title>");
        let marked = page.replace("<title>", &meta);
        self.put("index.html", &marked);
        let worker = fs::read_to_string(self.folder.join("service-worker.js")).expect("it");
        assert!(worker.contains(&hash(&page)), "the page's hash is listed");
        let worker = worker.replace(&hash(&page), &hash(&marked)).replacen(
            "const BUILD=\"",
            &format!("const BUILD=\"{mark}-"),
            1,
        );
        self.put("service-worker.js", &worker);
    }

    /// Replaces the file whose name begins with `begin` by `text`.
    pub fn spoil(&self, begin: &str, text: &str) {
        let names = fs::read_dir(&self.folder).expect("the folder").flatten();
        let name = names
            .filter_map(|entry| entry.file_name().into_string().ok())
            .find(|name| name.starts_with(begin))
            .expect("such a file");
        self.put(&name, text);
    }

    fn put(&self, name: &str, text: &str) {
        fs::write(self.folder.join(name), text).expect("the file is written");
    }
}

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder");
    for entry in fs::read_dir(from).expect("the built site").flatten() {
        let (path, target) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            copy(&path, &target);
        } else if path.extension().is_none_or(|end| end != "br") {
            fs::copy(&path, &target).expect("a copy");
        }
    }
}

fn hash(text: &str) -> String {
    Sha256::digest(text).iter().map(|byte| format!("{byte:02x}")).collect()
}

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

async fn is_release(journey: &Journey, mark: &str) {
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
    journey
        .wait_until(
            "the update to be accepted",
            "const release = document.querySelector('[name=release]')?.content;
             if (release === 'one') {
                 window.dispatchEvent(new Event('brimwright-accept-update'));
             }
             return release === 'two'",
        )
        .await;
    journey
        .wait_until(
            "the old version to be tidied away",
            "window.names ??= []; caches.keys().then((names) => (window.names = names));
             return names.length === 1 && names[0].includes(' two-')",
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
