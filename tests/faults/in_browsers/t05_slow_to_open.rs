//! T5: a tab that is slow to open a book while another tab edits it: the edit is in both.

use brimwright::say;

use super::demo_with;
use crate::harness::{By, Engine, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t05_an_edit_made_meanwhile_is_in_both);

/// Where the price of apples is typed.
fn apples() -> String {
    say!(market::price_of, name = "Apples")
}

/// In a tab that was opened at "?slow-open" or "?slow-rows", holds the answer of the database, when it is opened or
/// when its rows are read, until `release()`.
const SLOW: &str = "
    const hold = (request) => request.addEventListener('success', (event) => {
        if (window.released) return;
        event.stopImmediatePropagation();
        window.release = () => {
            window.released = true;
            request.dispatchEvent(new Event('success'));
        };
    });
    const slow = (prototype, name, which) => {
        const real = prototype[name];
        prototype[name] = function (...all) {
            const request = real.apply(this, all);
            if (which(this)) hold(request);
            return request;
        };
    };
    if (location.search === '?slow-open') slow(IDBFactory.prototype, 'open', () => true);
    if (location.search === '?slow-rows') slow(IDBObjectStore.prototype, 'getAll', ({ name }) => name === 'rows');";

async fn t05_an_edit_made_meanwhile_is_in_both(engine: Engine) {
    let mut runs = Runs::of("T5");
    let journey = demo_with(engine, "slow_to_open", SLOW).await;
    journey.go("#/buying").await;
    for (round, slow) in ["?slow-open", "?slow-rows"].into_iter().enumerate() {
        runs.begin();
        journey.open_another_tab_at(slow).await;
        journey.wait_until("the answer to be held", "return typeof release === 'function'").await;
        journey.use_tab(0).await;
        let price = format!("4{round}.25");
        journey.enter(By::Label(&apples()), &price).await;
        journey.wait_until_saved().await;
        journey.use_tab(1).await;
        journey.wait_until("the answer to come", "release(); return true").await;
        journey.wait_for_text("Orchard Green").await;
        journey.go("#/buying").await;
        journey.expect_value(By::Label(&apples()), &price).await;
        journey.close_tab().await;
        journey.expect_value(By::Label(&apples()), &price).await;
        runs.held();
    }
}
