//! Tables of texts that are missing, cut off or of another build, and languages that were never fetched.

use brimwright::say;

use crate::entering;
use crate::harness::{By, Journey, Publisher, pseudo};

const FIRST: &str = "words-en-US-first-";
const REST: &str = "words-en-US-rest-";

/// A language that nobody speaks.
const OTHER: &str = "art";

/// What can be wrong with a table.
#[derive(Clone, Copy, Debug)]
enum Fault {
    Missing,
    /// As hosts answer that know no other page.
    APageInItsPlace,
    Empty,
    CutOffInALine,
    CutOffAfterALine,
    OfAnotherBuild,
}

impl Fault {
    const ALL: [Fault; 6] = [
        Fault::Missing,
        Fault::APageInItsPlace,
        Fault::Empty,
        Fault::CutOffInALine,
        Fault::CutOffAfterALine,
        Fault::OfAnotherBuild,
    ];

    /// Puts the fault into what is published.
    fn put_in(self, publisher: &Publisher, begin: &str) {
        let table = String::from_utf8(publisher.read(begin)).expect("a text");
        let (head, lines) = table.split_once('\n').expect("the line that says of what it is");
        let faulty = match self {
            Fault::Missing => return publisher.remove(begin),
            Fault::APageInItsPlace => "<!doctype html><title>Not here</title>".to_owned(),
            Fault::Empty => String::new(),
            Fault::CutOffInALine => table[..table.floor_char_boundary(table.len() - 3)].to_owned(),
            Fault::CutOffAfterALine => {
                let end = table.trim_end().rfind('\n').expect("several lines");
                table[..=end].to_owned()
            }
            Fault::OfAnotherBuild => {
                let mut words: Vec<&str> = head.split(' ').collect();
                words[3] = "1";
                format!("{}\n{lines}", words.join(" "))
            }
        };
        publisher.spoil(begin, faulty);
    }
}

/// A site of which nothing is kept on the device.
fn publish(publisher: &Publisher) {
    publisher.publish("one");
    publisher.spoil("manifest", "{}");
}

#[tokio::test]
async fn without_the_first_table_the_first_words_stand() {
    let publisher = Publisher::new("first_table");
    publish(&publisher);
    let journey = Journey::start_on("first_table", publisher.address()).await;
    for (place, fault) in Fault::ALL.into_iter().enumerate() {
        fault.put_in(&publisher, FIRST);
        journey.try_to_open().await.expect("the page loads");
        let sentence = say!(start::could_not_start);
        assert_eq!(journey.text_of(By::Text(sentence)).await, sentence, "{fault:?}");
        journey.screenshot(if place == 0 { "before" } else { "after" }).await;
        let seen = "
            const { top, bottom } = document.getElementById('start-failed').getBoundingClientRect();
            const bar = document.querySelector('.start-book .bar').getBoundingClientRect().top || innerHeight;
            return top >= 0 && bottom <= bar";
        journey.wait_until("the sentence and its button in sight", seen).await;
        // Before anything was done here these are the words for a new person, then those around the open book.
        if place == 0 {
            journey.wait_for_text(say!(first::tagline)).await;
            journey.wait_for_text(say!(first::start_book_about)).await;
        } else {
            journey.wait_for_text(say!(first::new_book_name)).await;
            journey.wait_for_text(say!(first::opening_book)).await;
        }
        publish(&publisher);
        journey.click(By::Text(say!(start::reload))).await;
        journey.wait_until_started().await;
        if place == 0 {
            journey.click(By::Text(say!(first::start_book))).await;
        }
        // What was kept is there.
        journey.wait_for_text(say!(first::first_price_steps)).await;
        journey.wait_until_saved().await;
    }
}

#[tokio::test]
async fn without_the_rest_the_first_screen_works_and_the_others_come_later() {
    let publisher = Publisher::new("rest_table");
    publish(&publisher);
    let journey = Journey::start_on("rest_table", publisher.address()).await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_until_saved().await;
    for fault in Fault::ALL {
        fault.put_in(&publisher, REST);
        journey.go("#/drinks").await;
        journey.open().await;
        journey.wait_for_text(say!(first::first_price_steps)).await;
        journey.click(By::Text(say!(first::sizes))).await;
        let missing = say!(first::part_missing);
        assert_eq!(journey.text_of(By::Text(missing)).await, missing, "{fault:?}");
        journey.click(By::Text(say!(first::try_again))).await;
        journey.wait_for_text(missing).await;
        journey.screenshot("missing").await;
        publish(&publisher);
        journey.click(By::Text(say!(first::try_again))).await;
        journey.wait_for_text_gone(missing).await;
        journey.expect_each("main h1", &[say!(first::sizes)]).await;
        journey.wait_for_text(say!(decide::how_many_sizes)).await;
    }
}

/// Chooses a language and loads the page again.
async fn choose(journey: &Journey, tag: &str) {
    let script = format!("localStorage['brimwright.language'] = '\"{tag}\"'; return true");
    journey.wait_until("the language to be chosen", &script).await;
    journey.open().await;
}

/// Waits until the page is read in a language.
async fn is_read_in(journey: &Journey, tag: &str) {
    journey.wait_until(tag, &format!("return document.documentElement.lang === '{tag}'")).await;
}

/// Waits until both tables of a language are kept on this device.
async fn wait_until_language_kept(journey: &Journey, tag: &str) {
    let kept = format!(
        "let tables = 0;
         for (const name of await caches.keys())
             for (const {{ url }} of await (await caches.open(name)).keys()) tables += url.includes('/words-{tag}-');
         return tables"
    );
    while journey.run(&kept).await != 2 {}
}

#[tokio::test]
async fn a_language_that_was_never_fetched_gives_way_to_english_offline() {
    let publisher = Publisher::new("never_fetched");
    publisher.publish("one");
    pseudo::add(&publisher, OTHER);
    let mut journey = Journey::start_on("never_fetched", publisher.address()).await;
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.wait_until_saved().await;
    journey.wait_until_kept_offline().await;
    wait_until_language_kept(&journey, "en-US").await;

    journey.close_site();
    choose(&journey, OTHER).await;
    is_read_in(&journey, "en-US").await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
    journey.click(By::Text(say!(first::sizes))).await;
    journey.expect_each("main h1", &[say!(first::sizes)]).await;

    // With a network it comes, and is kept.
    journey.open_site();
    journey.open().await;
    is_read_in(&journey, OTHER).await;
    journey.wait_for_text(&pseudo::said(say!(first::first_price_steps))).await;
    wait_until_language_kept(&journey, OTHER).await;
    journey.close_site();
    journey.open().await;
    is_read_in(&journey, OTHER).await;
    journey.click(By::Text(&pseudo::said(say!(first::counter)))).await;
    journey.expect_each("main h1", &[&pseudo::said(say!(first::counter))]).await;
    choose(&journey, "en-US").await;
    is_read_in(&journey, "en-US").await;
    journey.wait_for_text(say!(first::first_price_steps)).await;
}

#[tokio::test]
async fn where_english_was_never_fetched_the_language_that_was_stays_offline() {
    let publisher = Publisher::new("never_english");
    publisher.publish("one");
    pseudo::add(&publisher, OTHER);
    publisher.before_each_load(&format!("localStorage['brimwright.language'] ??= '\"{OTHER}\"'"));
    let mut journey = Journey::start_on("never_english", publisher.address()).await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    wait_until_language_kept(&journey, OTHER).await;
    // The first build keeps the tables of the browser's language, too.
    let forget = "
        for (const name of await caches.keys()) {
            const cache = await caches.open(name);
            for (const request of await cache.keys()) {
                if (request.url.includes('words-en-US')) await cache.delete(request);
            }
        }
        return true";
    journey.run(forget).await;
    journey.close_site();
    choose(&journey, "en-US").await;
    is_read_in(&journey, OTHER).await;
    journey.wait_for_text(&pseudo::said(say!(first::start_book))).await;
}

#[tokio::test]
async fn a_language_that_is_not_here_is_not_chosen() {
    let mut journey = Journey::start("not_here").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    journey.wait_until_kept_offline().await;
    journey.go("#/book").await;
    entering::unfold(&journey, say!(device::this_device)).await;
    let spanish = "Español (Estados Unidos)";
    // In the list it begins with a capital, within a sentence it does not.
    let not_here = say!(device::language_not_here, language = "español (Estados Unidos)");
    journey.close_site();
    for (label, before) in [
        (say!(device::language), say!(device::as_in_browser)),
        (say!(device::counter_language), say!(device::same_language)),
    ] {
        let list = By::Label(label);
        journey.expect_value(list, before).await;
        journey.choose(list, spanish).await;
        journey.wait_for_text(&not_here).await;
        journey.expect_value(list, before).await;
        is_read_in(&journey, "en-US").await;
        // Nothing of it is left when the page is loaded again.
        journey.open().await;
        journey.go("#/book").await;
        entering::unfold(&journey, say!(device::this_device)).await;
        journey.wait_for_text_gone(&not_here).await;
    }
    journey.choose(By::Label(say!(device::language)), spanish).await;
    journey.wait_for_text(&not_here).await;
    journey.screenshot("not_here").await;
    // With a network it comes, and stays.
    journey.open_site();
    journey.choose(By::Label(say!(device::language)), spanish).await;
    is_read_in(&journey, "es-US").await;
    wait_until_language_kept(&journey, "es-US").await;
    journey.close_site();
    journey.open().await;
    is_read_in(&journey, "es-US").await;
}
