//! Ways back: restore points, deleted books, books that the browser removed, and a start that
//! something stands in the way of.

use std::fs;
use std::path::{Path, PathBuf};

use crate::harness::{By, Journey};

const DEMO_WAY: &str = "Look around in Marrowgate Juice Hall";
const BOOK_FILE: &str = "marrowgate-juice-hall.brimwright.json";
const OWN_FILE: &str = "my-book.brimwright.json";
const WAYS_BACK: By<'_> = By::Text("Open a file or a deleted book");
const NAME: By<'_> = By::Nth(0, &By::Label("Name"));

async fn open_demo(name: &'static str) -> Journey {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.click(By::Text(DEMO_WAY)).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}

async fn save_book(journey: &Journey, name: &str) -> Vec<u8> {
    journey.click(By::Text("Book")).await;
    journey.click(By::Text("Save the book as a file")).await;
    journey.take_download(name).await
}

/// A file to be attached.
fn file(journey: &str, name: &str, bytes: &[u8]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("attached").join(journey);
    fs::create_dir_all(&folder).expect("a folder");
    let path = folder.join(name);
    fs::write(&path, bytes).expect("the file is written");
    path
}

/// Runs a promise in the page to its end.
async fn done(journey: &Journey, what: &str, promise: &str) {
    let script = format!(
        "window.doing ??= {{}};
         const name = {what:?};
         window.doing[name] ??= ({promise}).then(() => (window.doing[name] = 'done'));
         return window.doing[name] === 'done'"
    );
    journey.wait_until(what, &script).await;
}

/// What a browser does that is short of room.
const EVICT: &str = "new Promise((resolve) => {
    const request = indexedDB.deleteDatabase('brimwright');
    request.onsuccess = () => resolve();
})";

#[tokio::test]
async fn a_day_s_first_change_and_an_import_can_be_gone_back_on() {
    let journey = open_demo("restore_points").await;
    let before = save_book(&journey, BOOK_FILE).await;
    journey.wait_for_text("None yet. The first change of a day makes one.").await;
    journey.enter(NAME, "Marrowgate, west side").await;
    journey.wait_until_saved().await;
    journey.wait_for_text("Before the first change that day").await;
    journey.wait_for_text("14 drinks, 45 ingredients").await;

    let other = String::from_utf8(before.clone()).expect("UTF-8").replace("Marrowgate Juice Hall", "East side");
    journey.attach(By::Label("Import a book file"), &file("restore_points", "other.json", other.as_bytes())).await;
    journey.click(By::Text("Replace this book")).await;
    journey.expect_value(NAME, "East side").await;
    journey.wait_until_saved().await;
    journey.wait_for_text("Before an import").await;
    journey.expect_count(".kept-list > li", 2).await;

    // The newest first: the second is the book before the day.
    journey.click(By::Nth(1, &By::Text("Show changes"))).await;
    let in_sight = "const { top } = document.querySelector('.teach h3').getBoundingClientRect();
        return top >= 0 && top < innerHeight";
    journey.wait_until("what it holds to be in sight", in_sight).await;
    journey.expect_each(".teach li", &["Settings: changed"]).await;
    journey.screenshot("changes").await;
    journey.click(By::Text("Restore this point")).await;
    journey.expect_value(NAME, "Marrowgate Juice Hall").await;
    journey.wait_until_saved().await;
    journey.wait_for_text("Before going back to a restore point").await;
    assert!(before == save_book(&journey, BOOK_FILE).await, "restored byte for byte");

    journey.click(By::Text("Undo")).await;
    journey.expect_value(NAME, "East side").await;
    journey.wait_until_saved().await;
    // And what was restored can be gone back to after a load.
    journey.open().await;
    journey.click(By::Text("Book")).await;
    journey.expect_count(".kept-list > li", 3).await;
}

#[tokio::test]
async fn a_deleted_book_is_brought_back_whole() {
    let journey = open_demo("brought_back").await;
    journey.click(By::Text("Book")).await;
    journey.enter(NAME, "West side").await;
    journey.wait_until_saved().await;
    let before = save_book(&journey, "west-side.brimwright.json").await;
    journey.click(By::Text("Delete this book")).await;
    journey.click(By::Text("Delete it from this device")).await;
    journey.wait_for_text(DEMO_WAY).await;
    journey.open().await;
    journey.wait_for_text_gone("The browser has removed").await;
    journey.click(WAYS_BACK).await;
    journey.wait_for_text("Deleted books").await;
    journey.wait_for_text("Deleted 26 Nov, kept until 26 Dec 2026.").await;
    journey.screenshot("deleted").await;
    journey.click(By::Text("Save as a file")).await;
    assert!(before == journey.take_download("brimwright-deleted-book.brimwright.json").await, "the file is whole");
    journey.click(By::Text("Bring back")).await;
    journey.wait_for_text("Orchard Green").await;
    assert!(before == save_book(&journey, "west-side.brimwright.json").await, "brought back byte for byte");
    journey.wait_for_text_gone("Deleted books").await;
}

#[tokio::test]
async fn a_deleted_book_can_be_deleted_for_good() {
    let journey = open_demo("for_good").await;
    journey.click(By::Text("Book")).await;
    journey.click(By::Text("Delete this book")).await;
    journey.click(By::Text("Delete it from this device")).await;
    journey.click(WAYS_BACK).await;
    journey.click(By::Text("Delete for good…")).await;
    journey.wait_for_text("Deleted for good, it cannot come back.").await;
    journey.click(By::Text("Delete for good")).await;
    journey.wait_for_text_gone("Deleted books").await;
}

#[tokio::test]
async fn books_that_the_browser_removed_come_back_from_the_last_file() {
    let journey = open_demo("evicted").await;
    let before = save_book(&journey, BOOK_FILE).await;
    journey.click(By::Text("Close this book")).await;
    done(&journey, "evicted", EVICT).await;
    journey.open().await;
    journey.wait_for_text("The browser has removed your books: Marrowgate Juice Hall.").await;
    // Told again where what was noted beside is gone too, by what is left.
    journey.wait_until("the notes to go", "localStorage.clear(); return localStorage.length === 0").await;
    journey.open().await;
    journey.wait_for_text("The browser has removed your books: Marrowgate Juice Hall.").await;
    journey.screenshot("removed").await;

    journey.attach(By::Label("Open a book file"), &file("evicted", "last.json", &before)).await;
    journey.wait_for_text("It holds 14 drinks, 45 ingredients.").await;
    journey.click(By::Text("Add as a new book")).await;
    journey.wait_for_text("Orchard Green").await;
    assert!(before == save_book(&journey, BOOK_FILE).await, "restored byte for byte");
    journey.open().await;
    journey.wait_for_text("Orchard Green").await;
}

#[tokio::test]
async fn a_book_removed_while_it_is_open_is_not_another_tab_s_doing() {
    let journey = open_demo("evicted_open").await;
    journey.click(By::Text("Book")).await;
    done(&journey, "evicted", EVICT).await;
    journey.enter(NAME, "West side").await;
    journey.wait_for_text("The browser has removed this book from the device. Keep what you see as a new book.").await;
    journey.click(By::Text("Keep as a new book")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until_saved().await;
    journey.click(By::Text("Book")).await;
    journey.expect_value(NAME, "West side").await;
}

#[tokio::test]
async fn without_storage_the_app_can_still_be_used() {
    let journey = Journey::start("blocked").await;
    journey.before_each_load("Object.defineProperty(window, 'indexedDB', { get() { return undefined } })");
    journey.open().await;
    journey.wait_for_text("This browser gives the page no storage, as in some private windows.").await;
    journey.screenshot("stuck").await;
    journey.click(By::Text("Go on without saving")).await;
    journey.click(By::Text(DEMO_WAY)).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_for_text("Not saved").await;
    save_book(&journey, BOOK_FILE).await;
}

/// Opens the database only when it is told to.
const SLOW: &str = "
    const open = IDBFactory.prototype.open;
    window.answers = [];
    IDBFactory.prototype.open = function (...all) {
        const request = {};
        window.answers.push(() => {
            const real = open.apply(this, all);
            for (const name of ['onupgradeneeded', 'onblocked', 'onerror', 'onsuccess']) {
                real[name] = (event) => { request.result = real.result; request[name]?.(event) };
            }
        });
        return request;
    };";

#[tokio::test]
async fn books_that_do_not_answer_are_said_not_to_and_may_still() {
    let journey = Journey::start("no_answer").await;
    journey.before_each_load(SLOW);
    journey.open().await;
    journey.wait_for_text("Your books do not answer. Nothing was changed. Wait a little or try again;").await;
    journey.wait_for_text("Try again").await;
    journey.wait_until("the answer", "window.answers.forEach((answer) => answer()); return true").await;
    journey.wait_for_text(DEMO_WAY).await;
}

/// Cuts a row of the stored book short.
const DAMAGE: &str = "new Promise((resolve) => {
    const request = indexedDB.open('brimwright');
    request.onsuccess = () => {
        const transaction = request.result.transaction('rows', 'readwrite');
        const rows = transaction.objectStore('rows');
        rows.openCursor().onsuccess = ({ target: { result: cursor } }) => {
            if (cursor.value.key.startsWith('ingredient:')) cursor.update({ ...cursor.value, record: { name: 'Apples' } });
            else cursor.continue();
        };
        transaction.oncomplete = () => { request.result.close(); resolve() };
    };
})";

#[tokio::test]
async fn a_damaged_book_is_taken_in_as_far_as_it_is_whole() {
    let journey = open_demo("damaged").await;
    done(&journey, "damaged", DAMAGE).await;
    journey.open().await;
    journey
        .wait_for_text(
            "One part of this book cannot be read. Nothing was changed or deleted: save what is stored as a file, or \
             see what is whole.",
        )
        .await;
    journey.click(By::Text("Save what is stored")).await;
    let stored = journey.take_download("brimwright-stored-book.txt").await;
    journey.click(By::Text("See what is whole")).await;
    journey.wait_for_text("Not whole in this file").await;
    journey.screenshot("whole").await;
    journey.click(By::Text("Add as a new book")).await;
    // Drinks without the ingredient are whole; those with it are on the list of what is not.
    journey.wait_for_text("Berry Lantern").await;
    journey.wait_for_text_gone("Orchard Green").await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("Books on this device").await;

    // The damaged one is still there, until it is deleted; and its file can be taken in too.
    journey.attach(By::Label("Import a book file"), &file("damaged", "stored.txt", &stored)).await;
    journey.wait_for_text("Not whole in this file").await;
    journey.click(By::Text("Close this book")).await;
    journey.wait_for_text("Your books").await;
    journey.expect_count(".books > li", 2).await;
}

/// Stands in for the browser's dialog: a file of this page's own.
const PICKER: &str = "
    window.showSaveFilePicker = async () => {
        const folder = await navigator.storage.getDirectory();
        return folder.getFileHandle('copy.json', { create: true });
    };
    window.copy = async () => {
        const folder = await navigator.storage.getDirectory();
        const file = await (await folder.getFileHandle('copy.json')).getFile();
        return file.text();
    };";

#[tokio::test]
async fn a_file_on_the_device_is_kept_up_to_date() {
    let journey = Journey::start("device_file").await;
    journey.before_each_load(PICKER);
    journey.open().await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("Three steps to a first price").await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("No copy saved yet").await;
    journey.click(By::Text("Save copies to a file on this device")).await;
    journey.wait_for_text("Copies go to copy.json. Last written 12:").await;
    journey.enter(NAME, "Corner bar").await;
    let written = "window.text = window.text ?? ''; copy().then((text) => (window.text = text));
                   return window.text.includes('Corner bar')";
    journey.wait_until("the file to be written", written).await;
    journey.wait_for_text("Last copy saved 26 Nov").await;
    // It goes on after a load, and can be stopped.
    journey.open().await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("Copies go to copy.json.").await;
    journey.click(By::Text("Stop copies")).await;
    journey.wait_for_text("Save copies to a file on this device").await;
    journey.open().await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("Save copies to a file on this device").await;
}

/// The clock goes on by fifteen days.
const LATER: &str = "
    const Now = Date;
    const days = 15 * 86400000;
    globalThis.Date = class extends Now {
        constructor(...parts) { if (parts.length) super(...parts); else super(Now.now() + days) }
        static now() { return Now.now() + days }
    };";

#[tokio::test]
async fn a_copy_is_offered_when_the_last_is_old() {
    let journey = Journey::start("copy_due").await;
    journey.open().await;
    journey.click(By::Text("Start an empty book")).await;
    journey.wait_for_text("Three steps to a first price").await;
    journey.click(By::Text("Book")).await;
    journey.enter(NAME, "My book, east").await;
    journey.enter(NAME, "My book").await;
    journey.wait_until_saved().await;
    journey.wait_for_text("No copy saved yet, 2 changes so far.").await;
    journey.wait_for_text("Before the first change that day").await;
    journey.wait_for_text_gone("No copy of this book saved").await;
    journey.wait_until_kept_offline().await;
    // The page with the later clock is a new version.
    journey.before_each_load(LATER);
    journey.open().await;
    journey.click(By::Text("Use it now")).await;
    journey.wait_for_text("No copy of this book saved for 15 days.").await;
    journey.screenshot("due").await;
    journey.click(By::Text("Save a copy")).await;
    journey.take_download(OWN_FILE).await;
    journey.wait_for_text_gone("No copy of this book saved").await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("Last copy saved 11 Dec, no changes since.").await;
    journey.open().await;
    journey.click(By::Text("Book")).await;
    journey.wait_for_text("Last copy saved 11 Dec, no changes since.").await;
}
