//! T7: a stored record that does not read: the app starts and says so, offers what is stored as it is, and changes
//! nothing of it.

use super::{demo, stored};
use brimwright::say;

use crate::harness::{By, Engine, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t07_a_damaged_book_is_said_kept_and_offered);

/// Takes the text out of the first ingredient's row.
const DAMAGE: &str = "
    const open = await new Promise((done) => {
        const opening = indexedDB.open('brimwright');
        opening.onsuccess = () => done(opening.result);
    });
    const writing = open.transaction('rows', 'readwrite');
    const rows = writing.objectStore('rows');
    rows.getAll().onsuccess = ({ target }) => {
        const row = target.result.find(({ key }) => key.startsWith('ingredient:'));
        rows.put({ ...row, record: 'cut off' });
    };
    await new Promise((done) => (writing.oncomplete = done));
    open.close();
    return true;";

async fn t07_a_damaged_book_is_said_kept_and_offered(engine: Engine) {
    let mut runs = Runs::of("T7");
    runs.begin();
    let journey = demo(engine, "damaged").await;
    journey.run(DAMAGE).await;
    let before = stored(&journey).await;
    journey.open().await;
    journey.wait_for_text(say!(first::damaged_book)).await;
    let parts = say!(first::parts_unreadable, parts = 1_usize);
    journey.wait_for_text(&format!("{parts} {}", say!(first::nothing_deleted))).await;
    journey.screenshot("damaged").await;
    journey.click(By::Text(say!(first::save_stored_data))).await;
    let saved = journey.take_download("brimwright-stored-book.txt").await;
    let saved = String::from_utf8(saved).expect("UTF-8");
    assert!(saved.contains(r#""record":"cut off""#), "what is stored is offered as it is");
    assert_eq!(stored(&journey).await, before, "to the byte");
    // Another book opens beside it, and the damaged one stays as it is.
    journey.click(By::Text(say!(first::open_other_book))).await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    let after = stored(&journey).await;
    assert!(after.contains(r#""record":"cut off""#), "nothing is deleted");
    runs.held();
}
