//! What must hold whatever goes wrong, tried on the built site: walked with the journeys. A module for each fault, with
//! its number in front; `cargo dev faults` tries each as often as is asked for.

mod t01_killed;
mod t02_closed_soon;
mod t03_tabs_at_random;
mod t04_a_newer_version;
mod t05_slow_to_open;
mod t06_no_room;
mod t07_damaged;
mod t08_cleared;
mod t13_releases;
mod t14_mismatched;
mod t15_blocked;
mod t16_refused_downloads;
mod t17_demo_beside_real;
mod t19_taken_in_again;

use brimwright::say;

use crate::harness::{By, Engine, Journey};

/// Every value that is stored, as text: each store by its name, its values in the order of their keys.
const STORED: &str = "
    const open = await new Promise((done, fail) => {
        const opening = indexedDB.open('brimwright');
        opening.onsuccess = () => done(opening.result);
        opening.onerror = () => fail(opening.error);
    });
    const names = [...open.objectStoreNames];
    const reading = open.transaction(names);
    const values = await Promise.all(names.map((name) => new Promise((done) => {
        reading.objectStore(name).getAll().onsuccess = ({ target }) => done([name, target.result]);
    })));
    open.close();
    return JSON.stringify(values);";

/// A journey in the demo book.
async fn demo(engine: Engine, name: &str) -> Journey {
    demo_with(engine, name, "").await
}

/// A journey in the demo book, with a script that runs before each load.
async fn demo_with(engine: Engine, name: &str, script: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.before_each_load(script);
    journey.open().await;
    open_demo(&journey).await;
    journey
}

async fn open_demo(journey: &Journey) {
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
}

/// Brings every price of the open list into view: all groups unfolded, and all rows of each.
async fn every_price(journey: &Journey) {
    journey.wait_until("every price", UNFOLDED).await;
}

/// Unfolds what is folded of the groups of prices, and says whether all of them stand open with all their rows.
const UNFOLDED: &str = "
    const groups = [...document.querySelectorAll('.price-group')];
    const closed = groups.filter((group) => !group.open);
    const more = [...document.querySelectorAll('.price-group .fold-in > button')];
    closed.forEach((group) => group.querySelector('summary').click());
    more.forEach((button) => button.click());
    const drawn = groups.length > 0 && groups.every((group) => group.querySelector('.price-row'));
    return drawn && closed.length === 0 && more.length === 0";

/// Everything that is stored in the browser's database, as text.
async fn stored(journey: &Journey) -> String {
    journey.run(STORED).await.as_str().expect("a text").to_owned()
}
