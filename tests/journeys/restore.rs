//! Ways back: restore points, deleted books, books that the browser removed, and a start that
//! something stands in the way of.

use std::fs;
use std::path::{Path, PathBuf};

use brimwright::{say, words};

use crate::entering;
use crate::harness::{By, Journey};
use crate::support;

const BOOK_FILE: &str = "marrowgate-juice-hall.brimwright.json";
const OWN_FILE: &str = "my-book.brimwright.json";

/// Gives the open book another name.
async fn rename(journey: &Journey, name: &str) {
    entering::unfold(journey, say!(book::this_book)).await;
    journey.enter(By::Label(say!(common::name)), name).await;
}

/// What is said of books that the browser removed.
fn removed() -> String {
    say!(first::named_books_removed, books = "Marrowgate Juice Hall")
}

/// What is said of the last copy, on this day, with no changes since.
fn last_copy(day: &str) -> String {
    let last_copy = say!(book::last_copy, day = words::short_day(support::day(day)));
    [last_copy, say!(book::changes_since_copy, changes = 0)].join(" ")
}

/// What the demo book has.
fn counts() -> String {
    [say!(common::book_holds_drinks, drinks = 14), say!(book::point_ingredients, ingredients = 45)].join(", ")
}

async fn open_demo(name: &'static str) -> Journey {
    let journey = Journey::start(name).await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}

async fn save_book(journey: &Journey, name: &str) -> Vec<u8> {
    journey.click(By::Text(say!(first::book))).await;
    journey.click(By::Text(say!(book::save_book_file))).await;
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
    entering::unfold(&journey, say!(book::restore_points)).await;
    journey.wait_for_text(say!(book::no_points_yet)).await;
    rename(&journey, "Marrowgate, west side").await;
    journey.wait_until_saved().await;
    journey.wait_for_text(say!(book::before_first_change)).await;
    journey.wait_for_text(&counts()).await;

    let other = String::from_utf8(before.clone()).expect("UTF-8").replace("Marrowgate Juice Hall", "East side");
    journey
        .attach(By::Label(say!(book::import_book_file)), &file("restore_points", "other.json", other.as_bytes()))
        .await;
    journey.click(By::Text(say!(book::replace_book))).await;
    journey.expect_each("main h1", &["East side"]).await;
    journey.wait_until_saved().await;
    journey.wait_for_text(say!(book::before_import)).await;
    journey.expect_count(".kept-list > li", 2).await;

    // The newest first: the second is the book before the day.
    journey.click(By::Nth(1, &By::Text(say!(book::show_changes)))).await;
    let in_sight = "const { top } = document.querySelector('.teach h3').getBoundingClientRect();
        return top >= 0 && top < innerHeight";
    journey.wait_until("what it holds to be in sight", in_sight).await;
    journey.expect_each(".teach li", &[say!(book::settings_changed)]).await;
    journey.screenshot("changes").await;
    journey.click(By::Text(say!(book::restore_point))).await;
    journey.expect_each("main h1", &["Marrowgate Juice Hall"]).await;
    journey.wait_until_saved().await;
    journey.wait_for_text(say!(book::before_restore)).await;
    assert!(before == save_book(&journey, BOOK_FILE).await, "restored byte for byte");

    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_each("main h1", &["East side"]).await;
    journey.wait_until_saved().await;
    // And what was restored can be gone back to after a load.
    journey.open().await;
    journey.click(By::Text(say!(first::book))).await;
    journey.expect_count(".kept-list > li", 3).await;
}

#[tokio::test]
async fn a_deleted_book_is_brought_back_whole() {
    let journey = open_demo("brought_back").await;
    journey.click(By::Text(say!(first::book))).await;
    rename(&journey, "West side").await;
    journey.wait_until_saved().await;
    let before = save_book(&journey, "west-side.brimwright.json").await;
    journey.click(By::Text(say!(first::delete_book))).await;
    journey.click(By::Text(say!(first::delete_from_device))).await;
    journey.wait_for_text(say!(first::look_around)).await;
    journey.open().await;
    journey.wait_for_text_gone(&removed()).await;
    journey.wait_for_text_gone(say!(first::books_removed)).await;
    journey.click(By::Text(say!(first::find_other_books))).await;
    journey.wait_for_text(say!(book::deleted_books)).await;
    let (deleted, until) = (support::day("2026-11-26"), support::day("2026-12-26"));
    let deleted = say!(book::deleted_until, deleted = words::short_day(deleted), until = words::day(until));
    journey.wait_for_text(&deleted).await;
    journey.screenshot("deleted").await;
    journey.click(By::Text(say!(book::save_file))).await;
    assert!(before == journey.take_download("brimwright-deleted-book.brimwright.json").await, "the file is whole");
    journey.click(By::Text(say!(book::bring_back))).await;
    journey.wait_for_text("Orchard Green").await;
    assert!(before == save_book(&journey, "west-side.brimwright.json").await, "brought back byte for byte");
    journey.wait_for_text_gone(say!(book::deleted_books)).await;
}

#[tokio::test]
async fn a_deleted_book_can_be_deleted_for_good() {
    let journey = open_demo("for_good").await;
    journey.click(By::Text(say!(first::book))).await;
    journey.click(By::Text(say!(first::delete_book))).await;
    journey.click(By::Text(say!(first::delete_from_device))).await;
    journey.click(By::Text(say!(first::find_other_books))).await;
    journey.click(By::Text(say!(book::delete_for_good_ask))).await;
    journey.wait_for_text(say!(book::delete_for_good_caution)).await;
    journey.click(By::Text(say!(book::delete_for_good))).await;
    journey.wait_for_text_gone(say!(book::deleted_books)).await;
}

#[tokio::test]
async fn books_that_the_browser_removed_come_back_from_the_last_file() {
    let journey = open_demo("evicted").await;
    let before = save_book(&journey, BOOK_FILE).await;
    journey.click(By::Text(say!(book::close_book))).await;
    done(&journey, "evicted", EVICT).await;
    journey.open().await;
    journey.wait_for_text(&removed()).await;
    // Told again where what was noted beside is gone too, by what is left.
    journey.wait_until("the notes to go", "localStorage.clear(); return localStorage.length === 0").await;
    journey.open().await;
    journey.wait_for_text(&removed()).await;
    journey.screenshot("removed").await;

    journey.attach(By::Label(say!(book::open_book_file)), &file("evicted", "last.json", &before)).await;
    journey.wait_for_text(&say!(book::book_contents, contents = counts())).await;
    journey.click(By::Text(say!(book::add_as_new_book))).await;
    journey.wait_for_text("Orchard Green").await;
    assert!(before == save_book(&journey, BOOK_FILE).await, "restored byte for byte");
    journey.open().await;
    journey.wait_for_text("Orchard Green").await;
}

#[tokio::test]
async fn a_book_removed_while_it_is_open_is_not_another_tab_s_doing() {
    let journey = open_demo("evicted_open").await;
    journey.click(By::Text(say!(first::book))).await;
    done(&journey, "evicted", EVICT).await;
    rename(&journey, "West side").await;
    journey.wait_for_text(say!(first::book_removed)).await;
    journey.click(By::Text(say!(book::save_as_new_book))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until_saved().await;
    journey.click(By::Text(say!(first::book))).await;
    journey.expect_each("main h1", &["West side"]).await;
}

#[tokio::test]
async fn without_storage_the_app_can_still_be_used() {
    let journey = Journey::start("blocked").await;
    journey.before_each_load("Object.defineProperty(window, 'indexedDB', { get() { return undefined } })");
    journey.open().await;
    journey.wait_for_text(say!(first::no_storage)).await;
    journey.screenshot("stuck").await;
    journey.click(By::Text(say!(first::go_on_without_saving))).await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_for_text(say!(first::not_saved)).await;
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
    journey.wait_for_text(say!(first::no_answer)).await;
    journey.wait_for_text(say!(first::try_again)).await;
    journey.wait_until("the answer", "window.answers.forEach((answer) => answer()); return true").await;
    journey.wait_for_text(say!(first::look_around)).await;
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
    journey.wait_for_text(&[&*say!(first::parts_unreadable, parts = 1), say!(first::nothing_deleted)].join(" ")).await;
    journey.click(By::Text(say!(first::save_stored_data))).await;
    let stored = journey.take_download("brimwright-stored-book.txt").await;
    journey.click(By::Text(say!(first::show_readable_parts))).await;
    journey.wait_for_text(say!(book::missing_or_damaged)).await;
    journey.screenshot("whole").await;
    journey.click(By::Text(say!(book::add_as_new_book))).await;
    // Drinks without the ingredient are whole; those with it are on the list of what is not.
    journey.wait_for_text("Berry Lantern").await;
    journey.wait_for_text_gone("Orchard Green").await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(say!(book::all_books)).await;

    // The damaged one is still there, until it is deleted; and its file can be taken in too.
    journey.attach(By::Label(say!(book::import_book_file)), &file("damaged", "stored.txt", &stored)).await;
    journey.wait_for_text(say!(book::missing_or_damaged)).await;
    journey.click(By::Text(say!(book::close_book))).await;
    journey.wait_for_text(say!(first::your_books)).await;
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
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(say!(book::no_copy_yet)).await;
    journey.click(By::Text(say!(book::copy_to_file))).await;
    journey.wait_for_text(say!(book::copies_go_to_saved, file = "copy.json", when = "12:").trim_end_matches('.')).await;
    rename(&journey, "Corner bar").await;
    let written = "window.text = window.text ?? ''; copy().then((text) => (window.text = text));
                   return window.text.includes('Corner bar')";
    journey.wait_until("the file to be written", written).await;
    let today = words::short_day(support::day("2026-11-26"));
    journey.wait_for_text(&say!(book::last_copy, day = today)).await;
    // It goes on after a load, and can be stopped.
    journey.open().await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(&say!(book::copies_go_to, file = "copy.json")).await;
    journey.click(By::Text(say!(book::stop_copies))).await;
    journey.wait_for_text(say!(book::copy_to_file)).await;
    journey.open().await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(say!(book::copy_to_file)).await;
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
    let due = say!(book::no_copy_for_days, days = "15");
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.click(By::Text(say!(first::book))).await;
    rename(&journey, "My book, east").await;
    rename(&journey, say!(first::new_book_name)).await;
    journey.wait_until_saved().await;
    journey.wait_for_text(&[say!(book::no_copy_yet), &say!(book::changes_so_far, changes = 2)].join(" ")).await;
    entering::unfold(&journey, say!(book::restore_points)).await;
    journey.wait_for_text(say!(book::before_first_change)).await;
    journey.wait_for_text_gone(&due).await;
    journey.wait_until_kept_offline().await;
    // The page with the later clock is a new version.
    journey.before_each_load(LATER);
    journey.open().await;
    journey.click(By::Text(say!(first::update_now))).await;
    journey.wait_for_text(&due).await;
    journey.screenshot("due").await;
    journey.click(By::Text(say!(book::save_copy))).await;
    journey.take_download(OWN_FILE).await;
    journey.wait_for_text_gone(&due).await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(&last_copy("2026-12-11")).await;
    journey.open().await;
    journey.click(By::Text(say!(first::book))).await;
    journey.wait_for_text(&last_copy("2026-12-11")).await;
}
