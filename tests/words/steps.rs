//! What is said of steps: when they were done, and why one is not taken back.

use brimwright::book::{Accepted, Book, Clash, Edit, FillRule, Filling, Key, Patch, Record};
use brimwright::foundation::measure::{Date, Scale, System, Temperature};
use brimwright::say;
use brimwright::words::steps as words;
use brimwright::words::texts::Table;
use brimwright::words::voice::{self, Voice};

use crate::support::{
    amount, batch, book, buying_list, container, day, density, drink, exact, grams, ingredient, ingredient_id, line,
    money, offer, offer_id, pack, settings, share, speaker, vessel, week,
};

fn bar() -> Book {
    let carrots = brimwright::book::Ingredient { name: "Carrots".into(), ..ingredient(1, [pack(1, "40 lb", "30")]) };
    let cups = brimwright::book::Packaging { name: "Cup".into(), ..vessel(1, [pack(1, "500 ea", "60")]) };
    let green = brimwright::book::Drink { name: "Green".into(), ..drink(1, "16 fl oz", [line(1, 1, "3 fl oz")]) };
    let small = brimwright::book::Container { name: "Small cup".into(), ..container(1, "16 fl oz") };
    let records = [
        Record::Ingredient(carrots),
        Record::Packaging(cups),
        Record::Container(small),
        Record::Drink(green),
        Record::Offer(offer(1, 1, Some("8"))),
        Record::Week(week("2026-11-23", &[])),
        Record::Batch(batch("2026-11-26", &[(1, 1, "12")])),
        Record::BuyingList(buying_list(&[(1, 1, "2")])),
    ];
    book(settings(), records)
}

const CARROTS: u64 = 1;

/// What clashes when a step that made the first change is taken back after the second.
fn clashes(book: &mut Book, key: Key, first: impl Fn(&mut Record), second: impl Fn(&mut Record)) -> Vec<Clash> {
    let mut changed = |change: &dyn Fn(&mut Record)| {
        let mut record = book.record(key).unwrap();
        change(&mut record);
        let edit = Edit::Put(record);
        let was = book.at(&edit.keys());
        book.apply(&edit).unwrap();
        Patch::between(&was, book)
    };
    let step = changed(&first);
    changed(&second);
    step.inverse().edit(book).unwrap_err()
}

macro_rules! said {
    ($key:expr, $kind:ident, |$it:ident| $first:expr, $second:expr) => {{
        let mut book = bar();
        let first = |record: &mut Record| {
            if let Record::$kind($it) = record {
                $first
            }
        };
        let second = |record: &mut Record| {
            if let Record::$kind($it) = record {
                $second
            }
        };
        let clashes = clashes(&mut book, $key, first, second);
        words::changed_since(&clashes, &book, &speaker(System::UsCustomary)).replace('\u{a0}', " ")
    }};
}

#[test]
fn the_fields_of_a_fill_target_have_names() {
    let filling = |batch: &str, risk, degrees: &str| {
        Some(Filling {
            batch: Some(exact(batch)),
            batch_risk: Some(risk),
            measured_at: Some(Temperature::new(exact(degrees), Scale::Fahrenheit)),
            ..Filling::new(FillRule::UnitedStates, Accepted::TwoPercent)
        })
    };
    let mut bar = bar();
    let key = Key::Offer(offer_id(1, 1));
    let mut set = |filling| {
        let Some(Record::Offer(offer)) = bar.record(key) else { panic!("an offer") };
        let edit = Edit::Put(Record::Offer(brimwright::book::Offer { filling, ..offer }));
        let was = bar.at(&edit.keys());
        bar.apply(&edit).unwrap();
        (Patch::between(&was, &bar), bar.clone())
    };
    set(filling("12", Accepted::OnePercent, "40"));
    for (first, second, said) in [
        (
            filling("13", Accepted::OnePercent, "40"),
            filling("24", Accepted::OnePercent, "40"),
            "Green, Small cup, Packages per batch: now 24, changed by a later change or in another tab. Make this change by hand.",
        ),
        (
            filling("24", Accepted::TwoPercent, "40"),
            filling("24", Accepted::FivePercent, "40"),
            "Green, Small cup, Short-batch risk: now 5.0%, changed by a later change or in another tab. Make this change by hand.",
        ),
        (
            filling("24", Accepted::FivePercent, "50"),
            filling("24", Accepted::FivePercent, "68"),
            "Green, Small cup, Drink temperature: now 68 °F, changed by a later change or in another tab. Make this change by hand.",
        ),
    ] {
        let (step, _) = set(first);
        let (_, book) = set(second);
        let clashes = step.inverse().edit(&book).unwrap_err();
        assert_eq!(words::changed_since(&clashes, &book, &speaker(System::UsCustomary)).replace('\u{a0}', " "), said);
    }
}

#[test]
fn the_field_that_was_changed_since_and_what_stands_there() {
    let since = "changed by a later change or in another tab. Make this change by hand.";
    let carrots = Key::Ingredient(ingredient_id(CARROTS));
    assert_eq!(
        said!(carrots, Ingredient, |it| it.packs[0].price = money("31"), it.packs[0].price = money("32.5")),
        format!("Carrots, Case price: now $32.50, {since}")
    );
    assert_eq!(
        said!(carrots, Ingredient, |it| it.name = "Carrot".into(), it.name = "Big carrots".into()),
        format!("Big carrots, Name: now Big carrots, {since}")
    );
    assert_eq!(
        said!(carrots, Ingredient, |it| it.trim_yield = share("0.8"), it.trim_yield = share("0.85")),
        format!("Carrots, Trim yield: now 85.0%, {since}")
    );
    assert_eq!(
        said!(carrots, Ingredient, |it| it.density = Some(density("1.1")), it.density = Some(density("1.05"))),
        format!("Carrots, Weight per cup: now 8.76 oz per cup, {since}")
    );
    assert_eq!(
        said!(carrots, Ingredient, |it| it.sold_as = "carrots".into(), it.sold_as = "carrot".into()),
        format!("Carrots, Name on labels: now carrot, {since}")
    );
    assert_eq!(
        said!(carrots, Ingredient, |it| it.piece_weight = Some(grams("80")), it.piece_weight = Some(grams("90"))),
        format!("Carrots, Weight per piece: now 90 g, {since}")
    );
    assert_eq!(
        said!(
            carrots,
            Ingredient,
            |it| it.packs[0].contents = amount("25 lb"),
            it.packs[0].contents = amount("1050.5 g")
        ),
        format!("Carrots, Pack size: now 1,050.5 g, {since}")
    );
    assert_eq!(
        said!(
            carrots,
            Ingredient,
            |it| it.packs[0].day = Some(day("2026-11-02")),
            it.packs[0].day = Some(day("2026-11-09"))
        ),
        format!("Carrots, Quote date: now Nov 9, 2026, {since}")
    );
    assert_eq!(
        said!(Key::Settings, Settings, |it| it.tax.rate = share("0.05"), it.tax.rate = share("0.065")),
        format!("Settings, Sales tax: now 6.5%, {since}")
    );
    assert_eq!(
        said!(Key::Settings, Settings, |it| it.wage = money("20"), it.wage = money("21")),
        format!("Settings, Hourly wage: now $21.00, {since}")
    );
    assert_eq!(
        said!(Key::Offer(offer_id(1, 1)), Offer, |it| it.price = Some(money("9")), it.price = Some(money("9.5"))),
        format!("Green, Small cup, Menu price: now $9.50, {since}")
    );
    assert_eq!(
        said!(Key::Offer(offer_id(1, 1)), Offer, |it| it.price = Some(money("9")), it.price = None),
        format!("Green, Small cup, Menu price: now blank, {since}")
    );
    assert_eq!(
        said!(
            Key::Batch(day("2026-11-26")),
            Batch,
            |it| it.makes[0].units = crate::support::exact("14"),
            it.makes[0].units = crate::support::exact("15")
        ),
        format!("Batch of Nov 26, 2026, Drinks to make: now 15, {since}")
    );
    assert_eq!(
        said!(
            Key::BuyingList,
            BuyingList,
            |it| it.lines[0].paid = Some(money("29")),
            it.lines[0].paid = Some(money("28"))
        ),
        format!("The buying list, Price paid: now $28.00, {since}")
    );
    assert_eq!(
        said!(
            Key::Drink(crate::support::drink_id(1)),
            Drink,
            |it| it.lines[0].amount = amount("4 fl oz"),
            it.lines[0].amount = amount("4.5 fl oz")
        ),
        format!("Green, Recipe amount: now 4.5 fl oz, {since}")
    );
}

#[test]
fn several_fields_and_fields_without_a_text() {
    let carrots = Key::Ingredient(ingredient_id(CARROTS));
    let change = |it: &mut brimwright::book::Ingredient, name: &str, price: &str, weight: &str| {
        it.name = name.into();
        it.packs[0].price = money(price);
        it.piece_weight = Some(grams(weight));
    };
    assert_eq!(
        said!(carrots, Ingredient, |it| change(it, "One", "31", "70"), change(it, "Two", "32", "80")),
        "Two, Case price: now $32.00, changed by a later change or in another tab. 2 other fields changed too. Make these changes by hand."
    );
    let both = |it: &mut brimwright::book::Ingredient, name: &str, price: &str| {
        it.name = name.into();
        it.packs[0].price = money(price);
    };
    assert_eq!(
        said!(carrots, Ingredient, |it| both(it, "One", "31"), both(it, "Two", "32")),
        "Two, Case price: now $32.00, changed by a later change or in another tab. 1 other field changed too. Make these changes by hand."
    );
    assert_eq!(
        said!(
            Key::Drink(crate::support::drink_id(1)),
            Drink,
            |it| it.kind = brimwright::book::DrinkKind::OverIce,
            it.kind = brimwright::book::DrinkKind::Shot
        ),
        "Green, Drink type: changed since then. Make this change by hand."
    );
}

#[test]
fn what_was_removed_with_more_or_has_another_form_is_not_called_blank() {
    let carrots = Key::Ingredient(ingredient_id(CARROTS));
    assert_eq!(
        said!(carrots, Ingredient, |it| it.packs[0].price = money("31"), it.packs.clear()),
        "Carrots, Case price: removed since then. Make this change by hand."
    );
    assert_eq!(
        said!(
            carrots,
            Ingredient,
            |it| it.packs.push(pack(2, "25 lb", "20")),
            it.packs[1].supplier = "Invented farm".into()
        ),
        "Carrots, Packs: changed since then. Make this change by hand."
    );
    assert_eq!(
        said!(
            Key::Drink(crate::support::drink_id(1)),
            Drink,
            |it| it.lines[0].scaling = brimwright::book::Scaling::Stepped(amount("1 fl oz")),
            it.lines[0].scaling = brimwright::book::Scaling::TopUp
        ),
        "Green, Recipe: changed since then. Make this change by hand."
    );
}

#[test]
fn what_was_added_and_changed_since_or_is_gone() {
    let mut book = bar();
    let beets = brimwright::book::Ingredient { name: "Beets".into(), ..ingredient(9, []) };
    let mut step = |edit: Edit| {
        let was = book.at(&edit.keys());
        book.apply(&edit).unwrap();
        Patch::between(&was, &book)
    };
    let added = step(Edit::Put(Record::Ingredient(beets.clone())));
    let named = step(Edit::Put(Record::Ingredient(brimwright::book::Ingredient { name: "Red beets".into(), ..beets })));
    let clashes = added.inverse().edit(&book).unwrap_err();
    assert_eq!(
        words::changed_since(&clashes, &book, &speaker(System::UsCustomary)),
        "Red beets has changed since then. Make this change by hand."
    );
    book.apply(&Edit::Remove(Key::Ingredient(ingredient_id(9)))).unwrap();
    let clashes = named.inverse().edit(&book).unwrap_err();
    assert_eq!(
        words::changed_since(&clashes, &book, &speaker(System::UsCustomary)),
        "This is no longer in your book. A later change or another tab removed it."
    );
}

#[test]
fn what_stands_beside_a_step() {
    assert_eq!(words::undone("Price of Carrots"), "Undone: “Price of Carrots”.");
    assert_eq!(words::redone("Price of Carrots"), "Redone: “Price of Carrots”.");
    assert_eq!(words::not_undone("Price of Carrots", "Why."), "Not undone: “Price of Carrots”. Why.");
    assert_eq!(words::not_redone("Price of Carrots", "Why."), "Not redone: “Price of Carrots”. Why.");
    assert_eq!(
        words::already_undone("Price of Carrots"),
        "Nothing left to undo for Price of Carrots. Another tab already did that."
    );
    assert_eq!(
        words::already_redone("Price of Carrots"),
        "Nothing left to redo for Price of Carrots. Another tab already did that."
    );
    assert_eq!(say!(refusals::too_large_to_keep), "Too large to keep. You can undo this until you leave this page.");
    assert_eq!(words::undo_of("Price of Carrots"), "Undo Price of Carrots");
    let later = |count: usize| {
        let all = [("Price of Carrots", "10:42"), ("Name", "10:40"), ("Add a pack", "10:38"), ("Count", "10:30")];
        let all: Vec<(String, String)> = all.map(|(name, when)| (name.to_string(), when.to_string())).to_vec();
        words::take_back_first(&all[..count])
    };
    assert_eq!(later(1), "Undo these first: Price of Carrots, 10:42.");
    assert_eq!(later(4), "Undo these first: Price of Carrots, 10:42; Name, 10:40; Add a pack, 10:38; and 1 more.");
}

#[test]
fn what_a_step_was_done_to() {
    let book = bar();
    let said = |name: &str, key| words::of(name, key, &book);
    assert_eq!(said("Trim yield", Some(Key::Ingredient(ingredient_id(CARROTS)))), "Carrots");
    assert_eq!(said("Price of Carrots", Some(Key::Ingredient(ingredient_id(CARROTS)))), "");
    assert_eq!(said("Menu price", Some(Key::Offer(offer_id(1, 1)))), "Green, Small cup");
    assert_eq!(said("Filled", Some(Key::Batch(day("2026-11-26")))), "Batch of Nov 26, 2026");
    assert_eq!(said("Paid", Some(Key::BuyingList)), "The buying list");
    assert_eq!(said("Tax rate", Some(Key::Settings)), "");
    assert_eq!(said("Remove packaging", Some(Key::Ingredient(ingredient_id(77)))), "", "it is gone");
    assert_eq!(said("Import a book", None), "");
}

#[test]
fn steps_of_costs_that_vary_say_their_values() {
    use brimwright::book::{CommissionBase, DrinkKind, KindRate, OverheadPer, Season};
    use brimwright::foundation::measure::Month;
    macro_rules! step {
        ($key:expr, $kind:ident, |$it:ident| $change:expr) => {
            did($key, |record| {
                if let Record::$kind($it) = record {
                    $change;
                }
            })
        };
    }
    let (book, green) = (Key::Settings, Key::Drink(crate::support::drink_id(1)));
    let one_rate = |it: &mut brimwright::book::Settings| {
        it.tax_by_kind = vec![KindRate { kind: DrinkKind::Shot, rate: share("0.0725") }];
    };
    assert_eq!(step!(book, Settings, |it| it.payment_fee.drinks = exact("1.5")), "Drinks per payment: 1 to 1.5");
    assert_eq!(step!(book, Settings, |it| it.deposit_taxed = true), "Tax on deposits: no to yes");
    assert_eq!(
        step!(book, Settings, |it| it.commission_on = CommissionBase::WithTax),
        "Commission on: price before tax to price with tax"
    );
    assert_eq!(step!(book, Settings, |it| it.overhead_per = OverheadPer::Week), "Overhead per: drink sold to week");
    assert_eq!(step!(green, Drink, |it| it.tax_rate = Some(share("0.02"))), "Sales tax rate: blank to 2%");
    assert_eq!(
        step!(green, Drink, |it| it.labour.batch_volume = Some(amount("5 gal"))),
        "Batch volume: blank to 5 gal"
    );
    assert_eq!(
        step!(Key::Container(crate::support::container_id(1)), Container, |it| it.deposit = money("0.25")),
        "Deposit: $0.00 to $0.25"
    );
    assert_eq!(step!(book, Settings, |it| one_rate(it)), "Tax by drink: blank to 7.25%");
    let mut bar = bar();
    let carrots = Key::Ingredient(ingredient_id(CARROTS));
    let mut put = |record: Record| {
        let was = bar.at(&[record.key()].into());
        bar.apply(&Edit::Put(record)).unwrap();
        words::did("What was done", &Patch::between(&was, &bar), &speaker(System::UsCustomary)).replace('\u{a0}', " ")
    };
    let season = |from, trim: &str| {
        let season = Season { from, to: Month::August, trim_yield: share(trim), press_yield: None };
        let pack = pack(1, "40 lb", "30");
        Record::Ingredient(brimwright::book::Ingredient { season: Some(season), ..ingredient(1, [pack]) })
    };
    let rated = |rate: &str| {
        let rate = KindRate { kind: DrinkKind::Shot, rate: share(rate) };
        Record::Settings(Box::new(brimwright::book::Settings { tax_by_kind: vec![rate], ..settings() }))
    };
    assert_eq!(season(Month::May, "0.8").key(), carrots);
    put(season(Month::May, "0.8"));
    assert_eq!(put(season(Month::June, "0.8")), "Season starts: May to June");
    assert_eq!(put(season(Month::June, "0.7")), "Seasonal trim yield: 80.0% to 70.0%");
    put(rated("0.07"));
    assert_eq!(put(rated("0.08")), "Tax by drink: 7% to 8%");
    let discounted = |discounts: &str| {
        let Record::Settings(it) = rated("0.08") else { panic!("settings") };
        let reductions = brimwright::book::Reductions { discounts: share(discounts), ..Default::default() };
        Record::Settings(Box::new(brimwright::book::Settings { reductions, ..*it }))
    };
    put(discounted("0.02"));
    assert_eq!(put(discounted("0.03")), "Discounts: 2.0% to 3.0%");
}

/// What a step is called that makes this change of the record.
fn did(key: Key, change: impl Fn(&mut Record)) -> String {
    let mut book = bar();
    let mut record = book.record(key).unwrap();
    let was = book.at(&[key].into());
    change(&mut record);
    book.apply(&Edit::Put(record)).unwrap();
    words::did("What was done", &Patch::between(&was, &book), &speaker(System::UsCustomary)).replace('\u{a0}', " ")
}

#[test]
fn a_step_of_one_field_says_its_values_in_the_language_in_force() {
    let carrots = Key::Ingredient(ingredient_id(CARROTS));
    let quoted = |record: &mut Record| {
        if let Record::Ingredient(it) = record {
            it.packs[0].price = money("34.5");
            it.packs[0].day = Some(day("2026-11-27"));
        }
    };
    let trimmed = |record: &mut Record| {
        if let Record::Ingredient(it) = record {
            it.trim_yield = share("0.9");
        }
    };
    let both = |record: &mut Record| {
        trimmed(record);
        if let Record::Ingredient(it) = record {
            it.name = "Carrot".into();
        }
    };
    assert_eq!(did(carrots, quoted), "Case price: $30.00 to $34.50");
    assert_eq!(did(carrots, trimmed), "Trim yield: 100.0% to 90.0%");
    // Of several fields the name says more.
    assert_eq!(did(carrots, both), "What was done");
    voice::set(Voice { texts: Table::built_in("es-US"), ..voice::here().clone() });
    assert_eq!(did(carrots, quoted), "Precio del paquete: antes $30.00, ahora $34.50");
}

#[test]
fn when_a_step_was_done() {
    let today = day("2026-11-26");
    let said = |on: &str, hour, minute| words::moment(Date::from_text(on).unwrap(), hour, minute, today);
    assert_eq!(said("2026-11-26", 10, 42), "10:42 AM");
    assert_eq!(said("2026-11-26", 0, 5), "12:05 AM");
    assert_eq!(said("2026-11-25", 17, 5), "Yesterday 5:05 PM");
    assert_eq!(said("2026-11-23", 17, 5), "Nov 23 5:05 PM");
    assert_eq!(said("2025-11-23", 17, 5), "Nov 23, 2025");
    assert_eq!(said("2026-11-27", 9, 0), "Nov 27 9:00 AM", "a clock that was put back");
}
