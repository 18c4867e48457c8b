//! T2: a tab that is closed, loaded anew or hidden and thrown away right after the last letter, or left while it loads:
//! what was typed is there when the book is opened again.

use brimwright::say;

use super::{demo_with, open_demo};
use crate::harness::{By, Engine, Journey, in_each_engine};
use crate::support::runs::Runs;

in_each_engine!(t02_the_last_letter_is_there);
in_each_engine!(
    t02_a_book_left_while_it_loads_is_whole,
    not WebKit: "the driver of WebKitGTK ends where it asks something of a page that is being left"
);

/// Where the price of apples is typed.
fn apples() -> String {
    say!(market::price_of, name = "Apples")
}

/// How long after the last letter a page goes, in milliseconds.
const AFTER: [u32; 3] = [20, 50, 200];

/// Ways for a page to go.
#[derive(Clone, Copy, Debug)]
enum Way {
    /// Its tab is closed.
    Close,
    /// It is loaded anew.
    Reload,
    /// It is hidden, then thrown away without another word, as phones do.
    Hide,
}

/// `goes(text, milliseconds, way)`: so long after a field holds `text`, the page goes. Nobody is asked: phones do not
/// ask, and who is asked may leave all the same.
const GOES: &str = "
    addEventListener('beforeunload', (event) => event.stopImmediatePropagation(), true);
    addEventListener('pagehide', (event) => { if (window.hidden) event.stopImmediatePropagation(); }, true);
    const ways = {
        Close: () => window.gone(),
        Reload: () => location.reload(),
        Hide: () => {
            window.hidden = true;
            Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
            Object.defineProperty(document, 'hidden', { value: true });
            document.dispatchEvent(new Event('visibilitychange'));
            location.reload();
        },
    };
    window.goes = (text, after, way) => {
        window.going = new Promise((done) => { window.gone = done; });
        addEventListener('input', ({ target }) => { if (target.value === text) setTimeout(ways[way], after); });
    };";

/// Loads the page anew so many milliseconds after it began to load, as often as there are numbers.
const LEAVES_EARLY: &str = "
    const [after, ...rest] = JSON.parse(sessionStorage.getItem('early') ?? '[]');
    sessionStorage.setItem('early', JSON.stringify(rest));
    if (after !== undefined) setTimeout(() => location.reload(), after);";

async fn t02_the_last_letter_is_there(engine: Engine) {
    let mut runs = Runs::of("T2");
    let journey = demo_with(engine, "closed_soon", GOES).await;
    let mut price = 3000;
    for _ in 0..Runs::asked_for(1) {
        for way in [Way::Reload, Way::Hide, Way::Close] {
            for after in AFTER {
                runs.begin();
                price = if price < 5900 { price + 7 } else { 3001 };
                let price = format!("{}.{:02}", price / 100, price % 100);
                gone_after(&journey, &price, after, way).await;
                journey.expect_value(By::Label(&apples()), &price).await;
                journey.wait_until_saved().await;
                journey.wait_until("nothing to be left over", NOTHING_LEFT).await;
                if matches!(way, Way::Close) {
                    journey.close_tab().await;
                }
                runs.held();
            }
        }
    }
}

/// Whether no note of a page that went is left.
const NOTHING_LEFT: &str = "return !Object.keys(localStorage).some((name) => name.startsWith('brimwright.left.'))";

/// Types a price and lets the page go; comes back with the list of what is bought open in a new one.
async fn gone_after(journey: &Journey, price: &str, after: u32, way: Way) {
    if matches!(way, Way::Close) {
        journey.open_another_tab().await;
    }
    journey.go("#/buying").await;
    let plan = format!("window.stays = true; goes('{price}', {after}, '{way:?}')");
    journey.run(&plan).await;
    journey.type_into(By::Label(&apples()), price).await;
    match way {
        Way::Close => {
            journey.run("await going").await;
            journey.close_tab().await;
            journey.open_another_tab().await;
            journey.go("#/buying").await;
        }
        Way::Reload | Way::Hide => {
            journey.wait_until("a new page", "return window.stays === undefined").await;
            journey.wait_until_started().await;
        }
    }
    journey.wait_for_text("Apples").await;
}

async fn t02_a_book_left_while_it_loads_is_whole(engine: Engine) {
    let mut runs = Runs::of("T2");
    let journey = Journey::start_in(engine, "left_while_loading").await;
    journey.before_each_load(LEAVES_EARLY);
    journey.open().await;
    open_demo(&journey).await;
    journey.wait_until_saved().await;
    for _ in 0..Runs::asked_for(1) {
        runs.begin();
        let early = "sessionStorage.setItem('early', '[1, 5, 20, 50, 100, 200, 300, 400]'); return true";
        journey.wait_until("the plan to be made", early).await;
        journey.load_again().await;
        journey.wait_until("the last of these pages", "return sessionStorage.getItem('early') === '[]'").await;
        journey.wait_until_started().await;
        journey.expect_count(".menu tbody tr", 14).await;
        journey.wait_until_saved().await;
        runs.held();
    }
}
