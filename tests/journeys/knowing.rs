//! What an owner knows of the market and of a change: local prices, typed on a phone, and a trial
//! judged from weeks.
//!
//! Everything is invented. The figures come from outside: the prices lie on 3.00 times the root of
//! the size in hundreds of mL, worked out by hand; the trial is the first of
//! tests/reference/data/welch.csv, whose interval scipy computed.

use std::fs;
use std::path::Path;

use brimwright::book::{
    Book, Drink, DrinkKind, Field, Key as Kept, Problem, Record, Refusal, SeenPriceId, Settings, TrialId, Week,
};
use brimwright::exchange;
use brimwright::foundation::measure::{Dimension, ReadError, System, Unit};
use brimwright::say;
use brimwright::words::texts::{HOLE, around};
use brimwright::words::{self, day as shown};
use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Journey};
use crate::support::{book, container, day, drink, ingredient, line, offer, pack, seen_price, settings, sold};

const DISH: &str = "Invented drink 1, Invented 400 mL 1";

/// A drink of ours in 400 mL at 6.60, one price seen, and weeks of sales.
fn bar() -> Book {
    let before = ["8.124", "7.901", "8.3525", "8.01", "8.226"];
    let after = ["8.613", "8.4075", "8.799", "8.582"];
    // The week of 2024-03-18 was not written down.
    let mondays = [0, 1, 3, 4, 5, 6, 7, 8, 9].map(|weeks| day("2024-03-04").plus_weeks(weeks));
    let weeks = mondays.into_iter().zip(before.into_iter().chain(after));
    let week = |(monday, one)| Record::Week(Week { monday, sold: vec![sold(1, 1, "100", one), sold(2, 1, "7", "1")] });
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
        Record::Container(container(1, "400 mL")),
        Record::Drink(drink(1, "1 L", [line(1, 1, "1 L")])),
        Record::Drink(Drink { kind: DrinkKind::Shot, ..drink(2, "1 L", [line(1, 1, "1 L")]) }),
        Record::Offer(offer(1, 1, Some("6.60"))),
        Record::SeenPrice(seen_price(1, "100 mL", "3")),
    ];
    let settings = Settings { units: System::Metric, ..settings() };
    book(settings, records.into_iter().chain(weeks.map(week)))
}

async fn opened(name: &'static str) -> Journey {
    let journey = entering::empty_book(name).await;
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("attached").join(name);
    fs::create_dir_all(&folder).expect("a folder");
    let file = folder.join("invented.json");
    fs::write(&file, exchange::write(&bar())).expect("the file is written");
    journey.click(By::Text(say!(first::book))).await;
    journey.attach(By::Label(say!(book::import_book_file)), &file).await;
    journey.click(By::Text(say!(book::replace_book))).await;
    let (replace, _) = around(&say!(book::replace_with_book, book = HOLE));
    journey.wait_for_text_gone(&replace).await;
    journey
}

/// Why a field is refused.
fn refused(key: Kept, field: Field, problem: Problem) -> String {
    words::refusal(&Refusal::Field { key, field, problem }, &bar())
}

/// Why a field of a local price is refused.
fn price_refused(field: Field, problem: Problem) -> String {
    refused(Kept::SeenPrice(SeenPriceId::FIRST), field, problem)
}

/// Where a date that is typed ahead is asked about.
fn date_ahead() -> String {
    let (_, asked) = around(&say!(decide::date_ahead, date = HOLE));
    asked.trim().to_string()
}

/// A size and its price; Enter adds them.
async fn seen(journey: &Journey, size: &str, price: &str) {
    journey.type_into(By::Label(say!(common::size)), size).await;
    journey.type_into(By::Label(say!(decide::their_price)), price).await;
    journey.press(By::Label(say!(decide::their_price)), Key::Enter).await;
    journey.expect_value(By::Label(say!(common::size)), "").await;
}

#[tokio::test]
async fn prices_seen_elsewhere_show_where_ours_stand() {
    let journey = opened("seen_prices").await;
    journey.go("#/sizes/seen").await;
    journey.wait_for_text(say!(decide::one_price_so_far)).await;
    mistyped(&journey).await;
    // The place by one tap, then size, price and Enter: four controls; the next at the same place
    // takes three, and the caret is in its size already.
    journey.click(By::Text("Invented place 1")).await;
    seen(&journey, "225", "4.50").await;
    let in_size = format!("return document.activeElement.labels[0].innerText === '{}'", say!(common::size));
    journey.wait_until("the caret in the size", &in_size).await;
    journey.wait_for_text(say!(decide::two_prices_so_far)).await;
    seen(&journey, "400", "6").await;
    journey.type_into(By::Label(say!(decide::place)), "Invented stall").await;
    seen(&journey, "625", "7.50").await;
    seen(&journey, "900", "9").await;
    // 3.00 times the root of 4 is 6.00, and 6.60 is a tenth more; the root of 2 is 1.414.
    let standing = say!(decide::above_curve, share = "10.0%");
    let said = [
        seen_from_to(5),
        say!(decide::double_costs_more, share = "41.4%"),
        say!(decide::your_standing, size = DISH, standing = &standing),
    ];
    journey.wait_for_text(&said.join(" ")).await;
    entering::unfold(&journey, say!(common::show_the_math)).await;
    journey.wait_for_text(&say!(decide::curve_math_hundreds, price = "$3.00", exponent = "0.50")).await;
    journey.wait_for_text(&say!(decide::curve_fit, fit = "1.00")).await;
    let per_unit = say!(decide::per_unit, unit = "100 mL");
    let head = [
        "",
        say!(common::size),
        say!(decide::your_price),
        &per_unit,
        say!(decide::local_curve),
        say!(decide::your_position),
    ];
    let row = [DISH, "400 mL", "$6.60", "$1.650", "$6.00", &standing];
    entering::unfold(&journey, say!(decide::your_sizes)).await;
    journey.expect_rows(say!(decide::your_sizes), &[&head, &row]).await;
    journey.expect_count(".chart-plot .series-guide", 1).await;
    journey.screenshot("market").await;
    fits_a_narrow_phone(&journey).await;
    // Another price by a tap on its row; taken out, and back by Undo.
    journey.click(By::Text("625 mL")).await;
    journey.enter(By::Label(say!(decide::edit_price)), "0").await;
    let not_positive = price_refused(Field::Price, Problem::NotPositive);
    journey.expect_error(By::Label(say!(decide::edit_price)), &not_positive).await;
    journey.click(By::Text(say!(decide::remove_price))).await;
    journey.wait_for_text(&seen_from_to(4)).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.wait_for_text(&seen_from_to(5)).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}

/// How many prices were seen.
fn seen_from_to(prices: usize) -> String {
    say!(decide::prices_from_to, prices = prices, smallest = "100 mL", largest = "900 mL")
}

/// With rows and figures, which the demo's screens do not have.
async fn fits_a_narrow_phone(journey: &Journey) {
    journey.resize(320, 640).await;
    assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
    journey.resize(360, 740).await;
}

async fn mistyped(journey: &Journey) {
    entering::unfold(journey, say!(decide::add_local_price)).await;
    journey.type_into(By::Label(say!(common::size)), "2 lb").await;
    journey.type_into(By::Label(say!(decide::their_price)), "0").await;
    journey.click(By::Text(say!(decide::add_price))).await;
    let empty = price_refused(Field::Place, Problem::Empty);
    journey.expect_sentence(By::Label(say!(decide::place)), &empty).await;
    let wrong_kind = ReadError::WrongKind { unit: Unit::Pound, wanted: &[Dimension::Volume] };
    journey.expect_sentence(By::Label(say!(common::size)), &words::read_error(&wrong_kind, "330 mL")).await;
    let not_positive = price_refused(Field::Price, Problem::NotPositive);
    journey.expect_sentence(By::Label(say!(decide::their_price)), &not_positive).await;
    journey.choose_day(By::Label(say!(decide::date_seen)), "9999-01-01").await;
    journey.wait_for_text(&say!(decide::date_ahead, date = shown(day("9999-01-01")))).await;
    journey.click(By::Text(say!(book::back))).await;
    journey.wait_for_text_gone(&date_ahead()).await;
    journey.expect_value(By::Label(say!(decide::date_seen)), "2026-11-26").await;
    journey.wait_for_text(say!(decide::one_price_so_far)).await;
}

#[tokio::test]
async fn a_trial_is_judged_from_weeks() {
    let journey = opened("trial").await;
    journey.go("#/sizes/trials").await;
    journey.wait_for_text(say!(sales::did_it_work)).await;
    journey.click(By::Text(say!(sales::start_trial))).await;
    journey.enter(By::Label(say!(sales::trial_name)), "Invented larger cup").await;
    journey.wait_for_text(say!(sales::needs_more_weeks)).await;
    journey.choose(By::Label(say!(sales::drinks_compared)), "Invented drink 1").await;
    journey.choose_day(By::Label(say!(sales::compare_from)), "2024-03-06").await;
    // A Wednesday: the week's Monday is in force.
    journey.expect_value(By::Label(say!(sales::compare_from)), "2024-03-04").await;
    // The weeks before have been; a change may be planned.
    journey.choose_day(By::Label(say!(sales::compare_from)), "2042-03-06").await;
    journey.wait_for_text(&date_ahead()).await;
    journey.click(By::Text(say!(book::back))).await;
    journey.expect_value(By::Label(say!(sales::compare_from)), "2024-03-04").await;
    journey.choose_day(By::Label(say!(sales::change_starts)), "2042-03-03").await;
    journey.expect_value(By::Label(say!(sales::change_starts)), "2042-03-03").await;
    journey.wait_for_text_gone(&date_ahead()).await;
    journey.choose_day(By::Label(say!(sales::change_starts)), "2024-04-15").await;
    journey.choose_day(By::Label(say!(sales::last_week)), "2024-04-08").await;
    let not_after = refused(Kept::Trial(TrialId::from_random(1)), Field::Last, Problem::NotAfter);
    journey.expect_sentence(By::Label(say!(sales::last_week)), &not_after).await;
    journey.choose_day(By::Label(say!(sales::last_week)), "2024-04-15").await;
    let more = say!(sales::weeks_needed_since, weeks = 1_usize);
    journey.wait_for_text(&[say!(sales::two_weeks_each_side), &more].join(" ")).await;
    journey.choose_day(By::Label(say!(sales::last_week)), "2024-05-06").await;
    journey.wait_for_text(say!(sales::better)).await;
    let range = say!(sales::likely_between, low = "+$20.99", high = "+$74.55");
    let figures = [(say!(sales::weekly_difference), "+$47.77"), (say!(sales::likely_range), &range)];
    journey.expect_figures("Invented larger cup", &figures).await;
    entering::unfold(&journey, say!(common::show_the_math)).await;
    let how = [
        say!(sales::average_before, money = "$812.27", weeks = "5"),
        say!(sales::average_since, money = "$860.04", weeks = "4"),
        say!(sales::more_per_week, money = "$47.77"),
    ];
    journey.wait_for_text(&how.join(" ")).await;
    let missing = say!(sales::weeks_missing, count = 1_usize, weeks = shown(day("2024-03-18")));
    journey.wait_for_text(&missing).await;
    let mondays = [0, 1, 3, 4, 5, 6, 7, 8, 9].map(|weeks| shown(day("2024-03-04").plus_weeks(weeks)));
    let [w0, w1, w3, w4, w5, w6, w7, w8, w9] = &mondays;
    let (before, with) = (say!(sales::before), say!(sales::with_change));
    let rows: [&[&str]; 10] = [
        &["", say!(sales::side), say!(sales::drinks_sold), say!(sales::profit)],
        &[w0, before, "100", "$812.40"],
        &[w1, before, "100", "$790.10"],
        &[w3, before, "100", "$835.25"],
        &[w4, before, "100", "$801.00"],
        &[w5, before, "100", "$822.60"],
        &[w6, with, "100", "$861.30"],
        &[w7, with, "100", "$840.75"],
        &[w8, with, "100", "$879.90"],
        &[w9, with, "100", "$858.20"],
    ];
    entering::unfold(&journey, say!(sales::trial_weeks)).await;
    journey.expect_rows(say!(sales::trial_weeks), &rows).await;
    journey.screenshot("trial").await;
    fits_a_narrow_phone(&journey).await;
    journey.click(By::Text(say!(sales::trials))).await;
    let since = say!(sales::trial_since, drinks = "Invented drink 1", day = shown(day("2024-04-15")));
    journey.wait_for_text(&since).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}
