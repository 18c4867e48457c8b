//! A tablet behind the counter: cards to read from a metre away, a screen that stays on, and a
//! device that is locked to the Counter.

use brimwright::say;

use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(cards_at_the_counter);

/// Stands in for the browser's wake lock: counts how often one is asked for, and how many are held.
const WAKE_LOCK: &str = "
    window.wake = { asked: 0, held: 0, locks: [] };
    Object.defineProperty(navigator, 'wakeLock', { value: { request: async (kind) => {
        if (kind !== 'screen' || document.hidden) throw new DOMException('hidden', 'NotAllowedError');
        const lock = { onrelease: null, release: async () => {
            if (!wake.locks.includes(lock)) return;
            wake.locks.splice(wake.locks.indexOf(lock), 1);
            wake.held -= 1;
            lock.onrelease?.();
        } };
        wake.asked += 1;
        wake.held += 1;
        wake.locks.push(lock);
        return lock;
    } } });";

/// What the browser does when a page is not seen any more: it lets go.
const HIDE: &str = "
    Object.defineProperty(document, 'hidden', { value: true, configurable: true });
    wake.locks.slice().forEach((lock) => lock.release());
    document.dispatchEvent(new Event('visibilitychange', { bubbles: true }));
    return wake.held === 0;";

const SHOW: &str = "
    delete document.hidden;
    document.dispatchEvent(new Event('visibilitychange', { bubbles: true }));
    return true;";

/// Notes on `prices` whenever a price is put into the page or taken out of it, from before its first paint on.
const LOOK_FOR_PRICES: &str = "
    window.prices = 0;
    const shown = (node) => {
        if (node.nodeName === 'SCRIPT' || node.parentNode?.nodeName === 'SCRIPT') return '';
        const copy = node.cloneNode(true);
        copy.querySelectorAll?.('script').forEach((it) => it.remove());
        return copy.textContent;
    };
    new MutationObserver((changes) => {
        const nodes = changes.flatMap((change) => [...change.addedNodes, ...change.removedNodes]);
        if (nodes.some((node) => shown(node).includes('$'))) prices += 1;
    }).observe(document, { subtree: true, childList: true });";

const LOAD_AGAIN: &str = "
    if (window.before) return false;
    if (sessionStorage.reloaded) return true;
    sessionStorage.reloaded = 'once';
    window.before = true;
    location.reload();
    return false;";

const LARGE_ENOUGH: &str = "
    const sizes = (selector) => [...document.querySelectorAll(selector)]
        .map((it) => parseFloat(getComputedStyle(it).fontSize));
    const [amounts, names] = [sizes('.recipe-amount'), sizes('.recipe-ingredient')];
    const targets = [...document.querySelectorAll('.turn')].map((it) => it.getBoundingClientRect());
    return amounts.length === 7 && amounts.every((size) => size >= 32) && names.every((size) => size >= 28)
        && targets.length === 2 && targets.every(({ width, height }) => width >= 64 && height >= 48)
        && targets[0].left < innerWidth / 3 && targets[1].right > innerWidth * 2 / 3
        && targets.every(({ top, bottom }) => top > innerHeight / 2 && bottom <= innerHeight);";

/// All lines of a recipe of eight in view on a tablet that lies on its side, unscrolled and under nothing; names
/// in 28 px and more, amounts larger, and every target 48 px high.
const EIGHT_LINES: &str = "
    const box = (it) => it.getBoundingClientRect();
    const lines = [...document.querySelectorAll('.recipe > li')];
    const covered = box(document.querySelector('.turns')).top;
    const head = box(document.querySelector('.head')).bottom;
    const sizes = (selector) => [...document.querySelectorAll(selector)]
        .map((it) => parseFloat(getComputedStyle(it).fontSize));
    const targets = [...document.querySelectorAll('main :is(a, button, input)')].filter((it) => it.checkVisibility());
    return scrollY === 0 && lines.length === 8 && box(lines[0]).top >= head && box(lines[7]).bottom <= covered
        && sizes('.recipe-ingredient').every((size) => size >= 28)
        && sizes('.recipe .recipe-amount').every((size) => size > 28)
        && targets.every((it) => box(it).height >= 48);";

/// With letters twice as large each place of the rail can be scrolled to, and nothing lies over the recipe.
const TWICE_AS_LARGE: &str = "
    document.documentElement.style.fontSize = '200%';
    const last = [...document.querySelectorAll('.bar a')].at(-1);
    last.scrollIntoView({ block: 'nearest' });
    const { bottom } = last.getBoundingClientRect();
    return bottom > 0 && bottom <= innerHeight
        && getComputedStyle(document.querySelector('.turns')).position === 'static';";

/// What is wrong with a number goes under the head when the card is scrolled.
const UNDER_THE_HEAD: &str = "
    const box = (of) => document.querySelector(of).getBoundingClientRect();
    const head = box('.head');
    scrollBy(0, box('.how-many .entry-error').top - head.bottom + 20);
    const error = box('.how-many .entry-error');
    const at = document.elementFromPoint((error.left + error.right) / 2, head.bottom - 4);
    return error.top < head.bottom - 4 && at.closest('.head') !== null;";

/// A tablet with the demo book, with `script` run before each load.
async fn tablet(engine: Engine, name: &str, script: &str) -> Journey {
    let journey = Journey::start_in(engine, name).await;
    journey.before_each_load(script);
    journey.open().await;
    journey.resize(768, 1024).await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey
}

async fn cards_at_the_counter(engine: Engine) {
    let journey = tablet(engine, "cards_at_the_counter", WAKE_LOCK).await;
    journey.wait_until("nothing to be asked for yet", "return wake.asked === 0").await;
    journey.click(By::Text(say!(first::counter))).await;
    a_screen_that_stays_on(&journey).await;
    amounts_for_several(&journey).await;
    from_card_to_card(&journey).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.wait_until("the screen to be let go", "return wake.held === 0").await;
}

async fn a_screen_that_stays_on(journey: &Journey) {
    journey.wait_until("the screen to be kept on", "return wake.asked === 1 && wake.held === 1").await;
    journey.wait_until("the page to be hidden", HIDE).await;
    journey.wait_until("the page to be seen", SHOW).await;
    journey.wait_until("the screen to be kept on again", "return wake.asked === 2 && wake.held === 1").await;
    journey.wait_for_text_gone(say!(counter::screen_may_go_dark)).await;
}

/// Copper Morning in 16 fl oz is written for 16 fl oz of 8 + 4.5 + 2 + 0.75 + 0.5 + 0.25; the
/// bottle holds 16.7 fl oz and is filled to 16.1; 0.97 of what is used is in the drink. By hand:
/// 8 * 16.1 / 16 / 0.97 = 8.299 of carrots, 4.668 of oranges, 2.075 of apples, 0.778 of ginger,
/// 0.519 of lemons, 0.259 of turmeric, in jugs that show a quarter of an ounce.
async fn amounts_for_several(journey: &Journey) {
    // A drink, then a size.
    journey.click(By::Text("Copper Morning")).await;
    journey.click(By::Text("16 oz bottle")).await;
    journey.expect_each("main h1", &["Copper Morning 16 oz bottle"]).await;
    let one = [
        "8.25 fl oz Carrots",
        "4.75 fl oz Oranges",
        "2 fl oz Apples",
        "0.75 fl oz Ginger root",
        "0.5 fl oz Lemons",
        "0.25 fl oz Turmeric root",
    ];
    expect_pressed(journey, one).await;
    journey.wait_until("figures to read from a metre away, and targets under the thumbs", LARGE_ENOUGH).await;
    journey.screenshot("card").await;
    // Three times: 24.898, 14.005, 6.224, 2.334, 1.556, 0.778.
    let for_three = say!(counter::for_drinks, drinks = 3_usize);
    journey.click(By::Label(&for_three)).await;
    let three = [
        "25 fl oz Carrots",
        "14 fl oz Oranges",
        "6.25 fl oz Apples",
        "2.25 fl oz Ginger root",
        "1.5 fl oz Lemons",
        "0.75 fl oz Turmeric root",
    ];
    expect_pressed(journey, three).await;
    journey.expect_each(".recipe-for", &[&for_three]).await;
    journey.wait_for_text(&say!(counter::volume_each, volume = "16.1 fl oz")).await;
    // What cannot be is explained, and no amounts stand beside it.
    let number = By::Label(say!(counter::how_many_drinks));
    journey.type_into(number, "2.5").await;
    journey.expect_sentence(number, &say!(counter::whole_number_of_drinks, most = "999")).await;
    journey.expect_count(".recipe > li", 0).await;
    journey.type_into(number, "20").await;
    journey.expect_each(".recipe-for", &[&say!(counter::for_drinks, drinks = 20_usize)]).await;
    // 165.979.
    journey.wait_for_text("166 fl oz").await;
}

/// A recipe of eight lines is read without scrolling.
#[tokio::test]
async fn eight_lines_on_a_tablet_on_its_side() {
    let journey = tablet(Engine::Chromium, "eight_lines", "").await;
    journey.resize(1024, 768).await;
    for (address, size) in [("#/counter/9/7", "12 oz cup"), ("#/counter/9/8", "16 oz cup")] {
        journey.go(address).await;
        journey.expect_each("main h1", &[&format!("Early Shift {size}")]).await;
        journey.screenshot("card").await;
        journey.wait_until("eight lines in view", EIGHT_LINES).await;
    }
    // Letters find a drink, and its sizes stand open.
    journey.go("#/counter").await;
    journey.type_into(By::Label(say!(first::find_drink)), "early").await;
    journey.expect_each(".counter-drink summary", &["Early Shift"]).await;
    journey.click(By::Text("16 oz cup")).await;
    journey.expect_each("main h1", &["Early Shift 16 oz cup"]).await;
}

/// Cautions and allergens of a card are in view at once; what is wrong with its number covers nothing of the head.
#[tokio::test]
async fn nothing_lies_over_anything_on_a_tablet() {
    let journey = tablet(Engine::Chromium, "tablet_uncovered", "").await;
    journey.resize(1024, 768).await;
    // Six lines, three cautions.
    journey.go("#/counter/4/4").await;
    journey.expect_count(".recipe > li", 6).await;
    journey.expect_count(".recipe-sides .cautions > p", 3).await;
    let uncovered = "const bottom = (it) => it.getBoundingClientRect().bottom;
        const turns = document.querySelector('.turns').getBoundingClientRect().top;
        const all = [...document.querySelectorAll('.allergens, .recipe-sides .cautions > p')];
        return scrollY === 0 && all.length === 4 && all.every((it) => bottom(it) <= turns);";
    journey.wait_until("all cautions in view", uncovered).await;
    let number = By::Label(say!(counter::how_many_drinks));
    journey.type_into(number, "abc").await;
    journey.expect_error(number, &say!(book::not_a_number, text = "abc", example = "12")).await;
    journey.wait_until("the error under the head", UNDER_THE_HEAD).await;
    journey.type_into(number, "1").await;
    journey.wait_until("room for large letters", TWICE_AS_LARGE).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// Waits until the recipe has these amounts, each of them pressed.
async fn expect_pressed(journey: &Journey, amounts: [&str; 6]) {
    let lines = amounts.map(|amount| format!("{amount} {}", say!(drinks::pressed)));
    journey.expect_each(".recipe > li", &lines.each_ref().map(String::as_str)).await;
}

async fn from_card_to_card(journey: &Journey) {
    let next = say!(counter::next);
    journey.expect_lines(By::Text(next), &[next]).await;
    journey.click(By::Text(next)).await;
    journey.expect_each("main h1", &["Copper Morning 32 oz bottle"]).await;
    // Another card is for one again.
    journey.expect_count(".recipe-for", 0).await;
    let turn = |key: &str| {
        format!("dispatchEvent(new KeyboardEvent('keydown', {{ key: '{key}', bubbles: true }})); return true")
    };
    journey.wait_until("a key", &turn("ArrowRight")).await;
    journey.expect_each("main h1", &["Crimson Hour Tea 12 oz cup"]).await;
    journey.wait_until("a key", &turn("ArrowLeft")).await;
    journey.expect_each("main h1", &["Copper Morning 32 oz bottle"]).await;
    // From the first to the last.
    journey.go("#/counter/4/2").await;
    journey.expect_each("main h1", &["Back Garden 8 oz bottle"]).await;
    journey.click(By::Text(say!(counter::previous))).await;
    journey.expect_each("main h1", &["Sunny Terrace 24 oz cup"]).await;
    journey.wait_until("one lock to be held", "return wake.held === 1").await;
}

#[tokio::test]
async fn a_screen_that_may_go_dark() {
    let refuses = "Object.defineProperty(navigator, 'wakeLock', { value: { request: async () => {
        throw new DOMException('battery', 'NotAllowedError') } } });";
    let journey = tablet(Engine::Chromium, "may_go_dark", refuses).await;
    journey.click(By::Text(say!(first::counter))).await;
    journey.wait_for_text(say!(counter::screen_may_go_dark)).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.wait_for_text_gone(say!(counter::screen_may_go_dark)).await;
}

#[tokio::test]
async fn a_locked_tablet() {
    let journey = tablet(Engine::Chromium, "locked_tablet", LOOK_FOR_PRICES).await;
    journey.click(By::Text(say!(first::book))).await;
    choose_a_pin(&journey).await;
    nothing_but_the_counter(&journey).await;
    // Loaded again at the address of prices, no price is in the page, not for a moment.
    let address = "history.replaceState(null, '', '#/drinks'); return true";
    journey.wait_until("another address", address).await;
    journey.wait_until("the page to be loaded again", LOAD_AGAIN).await;
    journey.expect_each("main h1", &[say!(first::counter)]).await;
    journey.wait_until("no price to have been seen", "return window.prices === 0").await;
    nothing_but_the_counter(&journey).await;
    the_way_out(&journey).await;
}

async fn choose_a_pin(journey: &Journey) {
    let (first, again) = (By::Label(say!(counter::new_pin)), By::Label(say!(counter::repeat_pin)));
    let close = By::Text(say!(counter::lock_to_counter));
    let choose_digits = say!(counter::choose_digits, fewest = "4", most = "8");
    journey.click(By::Text(say!(counter::lock_this_device))).await;
    journey.click(close).await;
    journey.expect_sentence(first, &[say!(counter::pin_empty), &choose_digits].join(" ")).await;
    journey.type_into(first, "42").await;
    journey.click(close).await;
    let too_short = say!(counter::pin_too_short, digits = 2_usize);
    journey.expect_sentence(first, &[too_short, choose_digits].join(" ")).await;
    journey.type_into(first, "4207").await;
    journey.type_into(again, "4270").await;
    journey.click(close).await;
    journey.expect_sentence(again, say!(counter::pins_differ)).await;
    journey.wait_for_text(say!(counter::lock_caution)).await;
    journey.type_into(again, "4207").await;
    journey.click(close).await;
    journey.expect_each("main h1", &[say!(first::counter)]).await;
}

/// Chooses a PIN of a device that is not locked, and locks it.
async fn lock(journey: &Journey, pin: &str) {
    journey.click(By::Text(say!(counter::lock_this_device))).await;
    journey.type_into(By::Label(say!(counter::new_pin)), pin).await;
    journey.type_into(By::Label(say!(counter::repeat_pin)), pin).await;
    journey.click(By::Text(say!(counter::lock_to_counter))).await;
}

async fn nothing_but_the_counter(journey: &Journey) {
    for address in ["#/drinks", "#/buying/watch", "#/sizes/menu", "#/print/prices", "#/book"] {
        journey.go(address).await;
        journey.wait_until("the Counter's address", "return location.hash === '#/counter'").await;
        journey.expect_each("main h1", &[say!(first::counter)]).await;
    }
    let name = journey.lines_of_each(".head-name").await;
    assert_eq!(name, [format!("Marrowgate Juice Hall {}", say!(first::sample_data))]);
    let hidden = "return !document.querySelector('.bar').checkVisibility()";
    journey.wait_until("places to be hidden", hidden).await;
    let batch = say!(sales::batch_of, day = "Nov 26, 2026");
    let screens = [
        ("#/counter", say!(first::counter)),
        ("#/counter/1/4", "Orchard Green 16 oz bottle"),
        ("#/counter/5/7", "Berry Lantern 12 oz cup"),
        ("#/counter/batches", say!(counter::batches)),
        ("#/counter/batches/2026-11-26", &batch),
        ("#/counter/on-hand", say!(counter::on_hand)),
    ];
    for (address, heading) in screens {
        journey.go(address).await;
        journey.expect_each("main h1", &[heading]).await;
        let priceless = "const shown = [...document.body.children].filter((it) => it.tagName !== 'SCRIPT');
            return shown.length > 0 && !shown.some((it) => it.textContent.includes('$'))";
        journey.wait_until(&format!("no price on {heading}"), priceless).await;
    }
    journey.screenshot("locked").await;
}

async fn the_way_out(journey: &Journey) {
    journey.open_another_tab().await;
    journey.expect_each("main h1", &[say!(first::counter)]).await;
    journey.wait_until("a mark", "return window.never_loaded_again = true").await;
    journey.use_tab(0).await;
    journey.click(By::Text(say!(counter::unlock))).await;
    journey.click(By::Text(say!(counter::forgot_pin))).await;
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.resize(768, 1024).await;
    let pin = By::Label(say!(counter::pin));
    journey.type_into(pin, "4208").await;
    journey.click(By::Text(say!(counter::unlock_device))).await;
    journey.expect_sentence(pin, say!(counter::wrong_pin)).await;
    journey.screenshot("unlock").await;
    journey.type_into(pin, "4207").await;
    journey.click(By::Text(say!(counter::unlock_device))).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    // The other tab follows, there and back.
    journey.use_tab(1).await;
    journey.click(By::Text(say!(first::buying))).await;
    journey.expect_each("main h1", &[say!(first::buying)]).await;
    journey.use_tab(0).await;
    journey.click(By::Text(say!(first::counter))).await;
    lock(journey, "12345678").await;
    journey.wait_for_text(say!(counter::unlock)).await;
    journey.use_tab(1).await;
    journey.expect_each("main h1", &[say!(first::counter)]).await;
    journey.wait_until("the page to be the same", "return window.never_loaded_again === true").await;
    // The PIN is forgotten.
    journey.click(By::Text(say!(counter::unlock))).await;
    journey.click(By::Text(say!(counter::forgot_pin))).await;
    let (field, open) = (By::Label(say!(counter::unlock_sentence)), By::Text(say!(counter::unlock_by_sentence)));
    journey.type_into(field, "open").await;
    journey.click(open).await;
    let sentence = say!(counter::sentence_without_pin);
    journey.expect_sentence(field, &say!(counter::other_sentence, sentence = sentence)).await;
    journey.type_into(field, &sentence.to_uppercase()).await;
    journey.click(open).await;
    journey.click(By::Text(say!(first::drinks))).await;
    journey.expect_each("main h1", &[say!(first::drinks)]).await;
    assert_eq!(journey.local_storage("brimwright.counter-pin").await, None);
}

/// A device that is full says so at the Counter, without a way to a file that has prices in it.
#[tokio::test]
async fn a_locked_tablet_that_is_full() {
    let journey = tablet(Engine::Chromium, "locked_and_full", "").await;
    journey.click(By::Text(say!(first::book))).await;
    lock(&journey, "4207").await;
    journey.go("#/counter/batches/2026-11-26").await;
    journey.expect_each("main h1", &[&say!(sales::batch_of, day = "Nov 26, 2026")]).await;
    let full = "IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); };
        document.querySelector('main input[type=checkbox]').click();
        return true;";
    journey.wait_until("a tick that cannot be kept", full).await;
    journey.wait_for_text(say!(first::not_saved)).await;
    let ways = format!(
        "const ways = [...document.querySelectorAll('.frame button')].filter((it) => it.checkVisibility())
            .map((it) => it.textContent.trim());
        return ways.includes('{}') && !ways.some((way) => way.startsWith('{}'));",
        say!(first::try_again),
        say!(book::save_copy)
    );
    journey.wait_until("a way out that keeps prices to itself", &ways).await;
}
