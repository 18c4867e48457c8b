//! A morning at the market: ten prices one after the other, found by a few letters, one taken
//! back; old prices asked for again; the buying list ticked off; two suppliers beside each other.

use fantoccini::key::Key;

use crate::harness::{By, Journey};

const SEARCH: By<'_> = By::Label("Find what you buy");

/// Letters, what they find, and its price today.
const PRICES: [(&str, &str, &str); 10] = [
    ("appl", "Apples", "55"),
    ("oran", "Oranges", "34.50"),
    ("lem", "Lemons", "43"),
    ("lim", "Limes", "42.25"),
    ("carr", "Carrots", "35"),
    ("cel", "Celery", "36"),
    ("cuc", "Cucumbers", "29.50"),
    ("kal", "Kale", "27"),
    ("gin", "Ginger root", "53"),
    ("ban", "Bananas", "24.75"),
];

#[tokio::test]
async fn ten_prices_and_one_taken_back() {
    let journey = Journey::start("market_morning").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.click(By::Text("Buying")).await;
    // Heard on 12 October, and the owner calls a price old after 28 days.
    let before = "return [...document.querySelectorAll('.price-row')].some((row) =>
        row.innerText.includes('Limes') && row.innerText.includes('old: heard on 12 Oct 2026'))";
    journey.wait_until("the limes' price to be marked as old", before).await;

    for (letters, name, price) in PRICES {
        journey.type_into(SEARCH, letters).await;
        journey.press(SEARCH, Key::Enter).await;
        let field = format!("Price of {name}");
        caret_in(&journey, &field).await;
        journey.type_into(By::Label(&field), price).await;
        journey.wait_until(&format!("an answer about {name}"), &answered(&field)).await;
        journey.press(By::Label(&field), Key::Enter).await;
        caret_in(&journey, "Find what you buy").await;
        if name == "Apples" {
            // 55 / 38 * 0.11096 a fl oz, see the journey through typing.
            journey.expect_each(".price-cost", &["before $0.111 now $0.161 per fl oz pressed"]).await;
            journey.wait_for_text("Worst is ").await;
            journey.screenshot("answer").await;
        }
    }
    // Searched for by a supplier's name: down the list from price to price.
    journey.type_into(SEARCH, "tansy").await;
    journey.press(SEARCH, Key::Enter).await;
    caret_in(&journey, "Price of Apples").await;
    journey.press(By::Label("Price of Apples"), Key::Enter).await;
    caret_in(&journey, "Price of Avocados").await;

    // The last price taken back, beside it.
    journey.type_into(SEARCH, "ban").await;
    let beside = "document.querySelector('.moved-undo').click(); return true";
    journey.wait_until("the Undo beside the answer", beside).await;
    journey.expect_value(By::Label("Price of Bananas"), "25.00").await;
    journey.wait_for_text("Taken back: Price of Bananas").await;
    for (letters, name, price) in &PRICES[..9] {
        journey.type_into(SEARCH, letters).await;
        let shown = if price.contains('.') { (*price).to_string() } else { format!("{price}.00") };
        journey.expect_value(By::Label(&format!("Price of {name}")), &shown).await;
    }
    journey.type_into(SEARCH, "lim").await;
    journey.wait_for_text("heard today").await;
    journey.wait_for_text_gone("old: heard on 12 Oct 2026").await;

    // What is old is asked for: its price holds, and stays listed while one is at it.
    journey.type_into(SEARCH, "").await;
    let old =
        "const chip = [...document.querySelectorAll('.chip')].find((it) => it.innerText.startsWith('Old prices'));
        chip.click(); return true";
    journey.wait_until("the old prices", old).await;
    journey.click(By::Label("Still so: Strawberries, frozen")).await;
    journey.wait_for_text("Price of Strawberries, frozen still so: no drink moved.").await;
    journey.wait_for_text_gone("old: heard on 14 Sep 2026").await;
    journey.expect_value(By::Label("Price of Strawberries, frozen"), "54.00").await;
    list_ticked_off(&journey).await;
}

/// What today's batch lacks, ticked off on the way, and found ticked again after a load.
async fn list_ticked_off(journey: &Journey) {
    journey.click(By::Text("Buying list")).await;
    journey.click(By::Text("Make the list")).await;
    journey.wait_for_text("0 of 6 ticked").await;
    let lines = [
        "Bottle cap 1 × 1,000 ea",
        "Bottle label 1 × 1,000 ea",
        "Shot bottle, 2 fl oz 1 × 250 ea",
        "Shot cap 1 × 500 ea",
        "Shot label 1 × 1,000 ea",
        "Tamper band 1 × 2,000 ea",
    ];
    for line in lines {
        journey.click(By::Label(line)).await;
    }
    journey.wait_for_text("6 of 6 ticked").await;
    journey.wait_until_saved().await;
    journey.open().await;
    journey.go("#/buying/list").await;
    journey.wait_for_text("6 of 6 ticked").await;
}

#[tokio::test]
async fn two_suppliers_beside_each_other_and_what_was_asked_before() {
    let journey = Journey::start("two_suppliers").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    journey.go("#/buying/ingredient/1").await;
    // A fl oz is 0.11096 at 38.00 for 40 lb; (41.50 + 1.50) / 38 of it is 0.12556, 13.2 % more.
    let compared =
        ["Tansywold Produce, 40 lb bought now", "$0.111", "cheapest", "Quillhaven Supply, 40 lb", "$0.126", "+13.2 %"];
    let cells = ".compared tbody :is(th, td):nth-child(-n+3)";
    journey.expect_each(cells, &compared).await;
    journey.wait_for_text("No other pack is cheaper than the one you buy.").await;

    // What the price was before, drawn and as a table; one that was mistyped goes.
    journey.click(By::Nth(0, &By::Text("Prices heard"))).await;
    let heard = "details[open] tbody th";
    let days = ["23 Nov 2026", "9 Nov 2026", "26 Oct 2026", "12 Oct 2026", "21 Sep 2026"];
    journey.expect_each(heard, &days).await;
    journey.expect_count("details[open] .chart-drawing > svg", 1).await;
    // 38 / 33.50.
    journey.wait_for_text("From $33.50 on 21 Sep 2026 to $38.00 on 23 Nov 2026, +13.4 %.").await;
    let take_out = "[...document.querySelectorAll('.take-out')]
        .find((it) => it.textContent.includes('the price of 12 Oct 2026')).click(); return true";
    journey.wait_until("a price to be taken out", take_out).await;
    journey.expect_each(heard, &["23 Nov 2026", "9 Nov 2026", "26 Oct 2026", "21 Sep 2026"]).await;
    journey.click(By::Text("Undo")).await;
    journey.expect_each(heard, &days).await;

    // Apples are in three drinks of the demo book, sold in ten sizes together.
    journey.click(By::Text("What would buying this one move?")).await;
    journey.wait_for_text("10 sizes would move.").await;
    journey.screenshot("before_switching").await;
    let fall = journey.lines_of_each("details[open] [role=status]").await.join(" ");
    let names = fall.split("Under target would fall: ").nth(1).map_or(0, |names| names.split(';').count());
    journey.click(By::Text("Buy this one")).await;
    let fell = if names == 0 { "none fell under target".to_string() } else { format!("{names} fell under target") };
    journey.wait_for_text(&format!("Buy another pack: 10 sizes moved, {fell}.")).await;
    journey.wait_for_text("is cheaper than what you buy: $0.111 instead of $0.126 per fl oz pressed").await;

    // A price typed here is heard too. The machine's day is later than any of the demo book.
    journey.enter(By::Nth(0, &By::Label("Price of the pack")), "40").await;
    journey.wait_for_text("heard today").await;
    // The owner lets no price grow old: nothing is marked any more.
    journey.go("#/book").await;
    journey.enter(By::Label("A price is old after"), "0").await;
    let error = "The days until a price is old must be at least 1.";
    journey.expect_sentence(By::Label("A price is old after"), error).await;
    journey.enter(By::Label("A price is old after"), "").await;
    journey.go("#/buying").await;
    journey.wait_for_text("heard today").await;
    journey.expect_count(".mark-old", 0).await;
}

/// Waits until the caret is in the field with this label.
async fn caret_in(journey: &Journey, label: &str) {
    let script = format!(
        "const field = document.activeElement;
         const label = field.getAttribute('aria-label') ?? field.labels?.[0]?.innerText;
         return label === '{label}' && field.selectionEnd - field.selectionStart === field.value.length"
    );
    journey.wait_until(&format!("the caret in {label:?}"), &script).await;
}

/// Whether the row of a field says how many sizes moved.
fn answered(label: &str) -> String {
    format!(
        "const row = document.activeElement.closest('.price-row');
         return /^{label}: (no drink|1 size|\\d+ sizes) moved/.test(row.querySelector('.moved-summary').innerText)"
    )
}
