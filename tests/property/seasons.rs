//! Yields that vary by season: in its months a book is, in all that is computed, the book with these yields
//! typed as those of the whole year; in all others it is the book without a season.

use brimwright::book::{Book, Edit, Goods, Ingredient, OfferId, Record, Season};
use brimwright::buying::buying_list::propose;
use brimwright::buying::quotes::compared;
use brimwright::counter::batch::{planned, sheet};
use brimwright::counter::on_hand::{makes, reach};
use brimwright::drink::label::facts;
use brimwright::drink::ledger::Ledger;
use brimwright::drink::make::{card, needs};
use brimwright::foundation::measure::{Exact, Month, Share};
use brimwright::working::{OfOffer, Shown, of};
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

use crate::support::exact;

fn demo() -> Book {
    brimwright::exchange::read(include_str!("../../public/books/marrowgate-juice-hall.json")).unwrap()
}

fn yields() -> impl Strategy<Value = (Share, Option<Share>)> {
    let share = || (30..=100_i64).prop_map(|hundredths| Share::from_fraction(Exact::new(hundredths, 2)));
    (share(), option::of(share()))
}

/// The book with every ingredient changed.
fn changed(book: &Book, change: impl Fn(&mut Ingredient)) -> Book {
    let mut after = book.clone();
    for ingredient in book.ingredients() {
        let mut ingredient = ingredient.clone();
        change(&mut ingredient);
        after.apply(&Edit::Put(Record::Ingredient(ingredient))).unwrap();
    }
    after
}

/// All that is computed with yields, as text: results of both books are compared to the letter.
fn computed(book: &Book) -> Vec<String> {
    let ledger = Ledger::of(book);
    let mut all = vec![format!("{:?}", ledger.offers().collect::<Vec<_>>())];
    let offers: Vec<OfferId> = book.offers().map(|offer| offer.id()).collect();
    let ten: Vec<(OfferId, Exact)> = offers.iter().map(|offer| (*offer, exact("10"))).collect();
    all.push(format!("{:?}", propose(book, &ledger, &ten)));
    for id in &offers {
        all.push(format!("{:?}", card(book, *id, exact("3"))));
        all.push(format!("{:?}", makes(book, &ledger, *id)));
        all.push(format!("{:?}", facts(book, book.offer(*id).unwrap())));
        let lines = ledger.get(*id).unwrap().iter().flat_map(|priced| priced.scaled.lines.iter().map(|it| it.line));
        for line in lines {
            let figure =
                of(book, &ledger, Shown::Offer(*id, OfOffer::LineCost(line))).map(|step| step.map(|it| it.figure));
            all.push(format!("{figure:?}"));
        }
    }
    for batch in book.batches() {
        all.push(format!("{:?}", sheet(book, &ledger, batch)));
        all.push(format!("{:?}", needs(book, &ledger, &mut planned(batch)).and_then(|needs| reach(book, &needs))));
    }
    for ingredient in book.ingredients() {
        all.push(format!("{:?}", compared(book, Goods::Ingredient(ingredient.id))));
    }
    all
}

proptest! {
    #![proptest_config(crate::cases::cases(24))]

    #[test]
    fn a_season_in_force_is_its_yields(
        (trim, press) in yields(),
        from in select(Month::ALL),
        to in select(Month::ALL),
        month in select(Month::ALL),
    ) {
        let demo = demo();
        let season = Season { from, to, trim_yield: trim, press_yield: press };
        let mut seasonal = changed(&demo, |it| it.season = Some(season));
        seasonal.set_month(Some(month));
        let typed = changed(&demo, |it| {
            it.trim_yield = trim;
            it.press_yield = press.or(it.press_yield);
        });
        // By counting from the first month on, past the end of the year.
        let place = |month: Month| Month::ALL.iter().position(|it| *it == month).unwrap();
        let in_force = (place(month) + 12 - place(from)) % 12 <= (place(to) + 12 - place(from)) % 12;
        let expected = if in_force { &typed } else { &demo };
        for (here, there) in computed(&seasonal).into_iter().zip(computed(expected)) {
            prop_assert_eq!(here, there);
        }
        // A month that is not known is no season's.
        seasonal.set_month(None);
        prop_assert_eq!(Ledger::of(&seasonal), Ledger::of(&demo));
    }
}
