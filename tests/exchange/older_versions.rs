//! Files of versions 1 to 3: read as they are, and computed as the app of their time computed them.

use std::collections::BTreeMap;

use brimwright::book::{Book, Brimful, IcePlace, Key, OfferId, OverheadPer};
use brimwright::drink::ledger::Ledger;
use brimwright::exchange::{BookFileError, VERSION, read, write};
use brimwright::foundation::measure::Exact;

use super::schema;
use crate::support::{amount, container_id, exact, ingredient_id};

/// A small file of version 1.
const VERSION_1: &str = include_str!("data/version-1.json");

/// A small file of version 2, with every field that it adds.
const VERSION_2: &str = include_str!("data/version-2.json");

/// A small file of version 3, with every field that it adds.
const VERSION_3: &str = include_str!("data/version-3.json");

/// The demo book as it stood in version 3.
const DEMO_OF_VERSION_3: &str = include_str!("data/version-3-demo.json");

/// What the last app of version 3 computed of each offer of these files: its full cost, its contribution and
/// margin at the price asked, and the menu price suggested, or that it has no result. "inside" is the demo with
/// tax inside the price, a commission of 10 % and a target that covers everything.
const FIGURES: &str = include_str!("data/figures-of-version-3.csv");

/// A file of an older version by the number of this one.
fn renumbered(file: &str, version: u64) -> String {
    let old = format!("\"version\": {version}");
    assert!(file.contains(&old));
    file.replacen(&old, &format!("\"version\": {VERSION}"), 1)
}

/// Version 1 has nothing of what came later, and is a file of this version by another number.
#[test]
fn version_1_is_read_as_it_is() {
    let book = read(VERSION_1).unwrap();
    assert_eq!((book.ingredients().count(), book.packaging_sets().count(), book.offers().count()), (2, 0, 2));
    assert_eq!(book.ingredient(ingredient_id(1)).unwrap().allergens, None);
    assert_eq!(book.container(container_id(1)).unwrap().brimful, Brimful::Weighed(amount("16.7 fl oz")));
    let now = renumbered(VERSION_1, 1);
    assert!(!schema::takes(VERSION_1) && schema::takes(&now));
    assert_eq!(read(&now), Ok(book.clone()));
    let written = now.replace("],\n\"containers\"", "],\n\"packaging-sets\": [],\n\"containers\"").replace(
        "]\n}\n",
        "],\n\"weeks\": [],\n\"seen-prices\": [],\n\"trials\": [],\n\"scenarios\": [],\n\"batches\": []\n}\n",
    );
    assert_eq!(write(&book), written);
}

/// Version 2 has what is sold and asked, and nothing of what is made and bought.
#[test]
fn version_2_is_read_as_it_is() {
    let book = read(VERSION_2).unwrap();
    assert_eq!((book.weeks().count(), book.scenarios().count()), (1, 1));
    assert_eq!((book.batches().count(), book.buying_list()), (0, None));
    assert_eq!(book.settings().price_days, None);
    let now = renumbered(VERSION_2, 2);
    assert!(!schema::takes(VERSION_2) && schema::takes(&now));
    assert_eq!(read(&now), Ok(book));
}

/// Version 3 has what is made and bought, and nothing of what varies in costs.
#[test]
fn version_3_is_read_as_it_is() {
    for file in [VERSION_3, DEMO_OF_VERSION_3] {
        let book = read(file).unwrap();
        assert_eq!(book.batches().count(), 1);
        assert_eq!(book.settings().overhead_per, OverheadPer::DrinkMade);
        let now = renumbered(file, 3);
        assert!(!schema::takes(file) && schema::takes(&now));
        assert_eq!(read(&now), Ok(book.clone()));
        assert_eq!(read(write(&book)), Ok(book));
    }
    // Nothing that version 4 adds is written of it.
    assert_eq!(write(&read(DEMO_OF_VERSION_3).unwrap()), renumbered(DEMO_OF_VERSION_3, 3));
}

/// An app of a version before refuses a file of this one by its number, before it reads what it does not know.
#[test]
fn a_newer_file_is_refused_whatever_is_in_it() {
    for file in [VERSION_3, DEMO_OF_VERSION_3] {
        let version = VERSION + 1;
        let newer = file.replacen("\"version\": 3", &format!("\"version\": {version}"), 1);
        assert_eq!(read(&newer).unwrap_err(), BookFileError::Newer { version });
        let unknown = newer.replacen("\"settings\"", "\"moods\"", 1);
        assert_eq!(read(unknown).unwrap_err(), BookFileError::Newer { version });
    }
}

/// The book of a name in the table of figures.
fn named(name: &str) -> Book {
    let inside = || {
        let changes = [
            ("\"covers\":\"goods\"", "\"covers\":\"everything\""),
            ("\"added-at-the-till\"", "\"in-the-price\""),
            ("\"commission\":\"0\"", "\"commission\":\"0.1\""),
        ];
        changes.iter().fold(DEMO_OF_VERSION_3.to_string(), |file, (old, new)| {
            assert!(file.contains(old), "{old}");
            file.replacen(old, new, 1)
        })
    };
    let file = match name {
        "version-1" => VERSION_1.to_string(),
        "version-2" => VERSION_2.to_string(),
        "version-3" => VERSION_3.to_string(),
        "demo" => DEMO_OF_VERSION_3.to_string(),
        "inside" => inside(),
        other => panic!("{other}"),
    };
    read(file).unwrap()
}

/// What computes otherwise now, since it was wrong: ice that floats took the room of its own mass of the liquid
/// as in the recipe, not as poured at the size, and the seconds per litre counted ice in the glass.
fn was_wrong(book: &Book, offer: OfferId) -> bool {
    let drink = book.drink(offer.drink).unwrap();
    let ices: Vec<IcePlace> = drink.lines.iter().filter_map(|line| line.ice).map(|ice| ice.place).collect();
    let in_glass = ices.iter().any(|place| *place != IcePlace::BlendedIn);
    ices.contains(&IcePlace::Floating) || (in_glass && drink.labour.per_litre.is_positive())
}

#[test]
fn what_an_older_file_could_say_costs_what_it_did() {
    let mut books: BTreeMap<&str, (Book, Ledger)> = BTreeMap::new();
    let (mut same, mut wrong) = (0, Vec::new());
    for row in FIGURES.lines().skip(1) {
        let [name, drink, container, figures @ ..] = &row.split(';').collect::<Vec<_>>()[..] else { panic!("{row}") };
        let (book, ledger) = books.entry(name).or_insert_with(|| {
            let book = named(name);
            let ledger = Ledger::of(&book);
            (book, ledger)
        });
        let Some(Key::Offer(id)) = Key::from_text(&format!("offer:{drink}-{container}")) else { panic!("{row}") };
        let priced = ledger.get(id).unwrap();
        if was_wrong(book, id) && priced.is_ok() {
            wrong.push(book.name(Key::Drink(id.drink)));
            continue;
        }
        let text = |value: Option<Exact>| value.map(|value| value.to_string()).unwrap_or_default();
        let now = priced.as_ref().map_or(["none"; 4].map(str::to_string), |priced| {
            let asked = priced.asked;
            [
                priced.cost.total().major().to_string(),
                text(asked.map(|asked| asked.contribution.major())),
                text(asked.map(|asked| asked.margin.fraction())),
                text(priced.suggestion.ok().map(|suggestion| suggestion.menu.major())),
            ]
        });
        assert_eq!(now.each_ref().map(String::as_str), figures, "{row}");
        same += 1;
    }
    let offers: usize = books.values().map(|(book, _)| book.offers().count()).sum();
    assert_eq!((same, same + wrong.len()), (76, offers));
    assert_eq!(wrong, ["Porch Cooler"; 6]);
}

/// Of the drink whose ice was in the way, only what the ice displaces moved: cents, and never the price
/// suggested by more than an ending.
#[test]
fn what_was_wrong_is_not_far_off() {
    let book = named("demo");
    let ledger = Ledger::of(&book);
    let cooler = FIGURES.lines().filter(|row| row.starts_with("demo;a;"));
    let moved = cooler.map(|row| {
        let [_, drink, container, cost, ..] = row.split(';').collect::<Vec<_>>()[..] else { panic!("{row}") };
        let Some(Key::Offer(id)) = Key::from_text(&format!("offer:{drink}-{container}")) else { panic!("{row}") };
        let now = ledger.get(id).unwrap().as_ref().unwrap().cost.total().major();
        now.minus(exact(cost)).unwrap().abs()
    });
    let moved: Vec<Exact> = moved.collect();
    assert_eq!(moved.len(), 3);
    assert!(moved.iter().all(|by| *by < exact("0.01")), "{moved:?}");
}
