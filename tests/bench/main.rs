//! How fast the engine is, on the generated book, in figures: the middle of many runs.

mod generated;

use std::hint::black_box;
use std::time::{Duration, Instant};

use brimwright::book::{Book, Edit, Goods, IngredientId, OfferId};
use brimwright::gap::ways;
use brimwright::ledger::{Ledger, Standing};
use brimwright::measure::{Exact, Money};

/// Re-pricing all that one pack price moves.
const ONE_PRICE_BAR: Duration = Duration::from_micros(250);
/// Computing every offer of the book.
const WHOLE_BOOK_BAR: Duration = Duration::from_millis(10);
/// Every lever of one offer under its target.
const LEVERS_BAR: Duration = Duration::from_millis(10);

fn main() {
    let book = generated::book();
    println!("generated book: {} drinks, {} offers", book.drinks().count(), book.offers().count());
    let computed = Ledger::of(&book).offers().filter(|(_, result)| result.is_ok()).count();
    assert_eq!(computed, book.offers().count(), "every generated offer can be computed");

    let (one_price, moved) = one_price(book.clone());
    figure(&format!("one pack price, {moved} offers moved on average"), one_price, ONE_PRICE_BAR);
    let whole = (0..200).map(|_| timed(|| Ledger::of(black_box(&book)))).collect();
    figure("whole book", whole, WHOLE_BOOK_BAR);
    let (levers, ways) = levers(&book);
    figure(&format!("the levers of one offer, {ways} on average"), levers, LEVERS_BAR);
}

/// The price of each ingredient's pack in turn, up and down: edit and re-pricing together, and
/// how many offers one moved.
fn one_price(mut book: Book) -> (Vec<Duration>, usize) {
    let mut ledger = Ledger::of(&book);
    let mut times = Vec::new();
    let mut moved = 0;
    for round in 0..10 {
        for id in 1..=generated::INGREDIENTS {
            let id = IngredientId::from_random(id);
            let goods = Goods::Ingredient(id);
            let pack = book.packs(goods)[0].clone();
            let change = Money::from_major(Exact::new(if round % 2 == 0 { 100 } else { -100 }, 2));
            let edit = Edit::SetPackPrice { goods, pack: pack.id, price: pack.price.plus(change).expect("small") };
            times.push(timed(|| {
                let applied = book.apply(&edit).expect("a price above zero");
                moved += ledger.refresh(&book, &applied.touched).len();
            }));
        }
    }
    let runs = times.len();
    (times, moved / runs)
}

/// The levers of each offer under its target, and how many one has.
fn levers(book: &Book) -> (Vec<Duration>, usize) {
    let ledger = Ledger::of(book);
    let under = ledger.offers().filter(|(_, result)| Standing::from(*result) == Standing::UnderTarget);
    let under: Vec<OfferId> = under.map(|(id, _)| id).take(200).collect();
    let mut found = 0;
    let times: Vec<Duration> =
        under.iter().map(|id| timed(|| found += ways(black_box(book), *id).expect("it is computed").len())).collect();
    let runs = times.len();
    (times, found / runs)
}

fn timed<T>(run: impl FnOnce() -> T) -> Duration {
    let start = Instant::now();
    black_box(run());
    start.elapsed()
}

/// The middle of the times is held against the bar; the shortest tells what a busy machine hides.
fn figure(name: &str, mut times: Vec<Duration>, bar: Duration) {
    times.sort();
    let (middle, shortest) = (times[times.len() / 2], times[0]);
    let verdict = if middle <= bar { "met" } else { "missed" };
    let millis = |time: Duration| time.as_secs_f64() * 1000.0;
    println!(
        "{name}: {:.3} ms (shortest {:.3} ms), bar {:.2} ms, {verdict}",
        millis(middle),
        millis(shortest),
        millis(bar)
    );
}
