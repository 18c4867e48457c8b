use crate::book::{Book, BookId, Key, Record};
use crate::exchange::{BookFileError, LeftOut, TakenIn, take_in, write};
use crate::store::{BookEntry, Row};
use crate::support::{
    batch, book, buying_list, container, container_id, drink, drink_id, exact, ingredient, ingredient_id, line, offer,
    pack, scenario, settings, share, sold, week,
};
use crate::words::not_taken;

const ID: BookId = BookId::from_random(0xb1);

/// Two ingredients with a drink of each, one container, and a week, scenario, batch and buying
/// list that name both.
fn bar() -> Book {
    book(
        settings(),
        [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "1")])),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "2")])),
            Record::Container(container(1, "250 mL")),
            Record::Drink(drink(1, "250 mL", [line(1, 1, "250 mL")])),
            Record::Drink(drink(2, "250 mL", [line(1, 2, "250 mL")])),
            Record::Offer(offer(1, 1, Some("3"))),
            Record::Offer(offer(2, 1, Some("4"))),
            Record::Week(crate::book::Week {
                sold: vec![sold(1, 1, "5", "2"), sold(2, 1, "6", "2")],
                ..week("2026-11-23", &[])
            }),
            Record::Scenario(scenario(1, [offer(1, 1, Some("3")), offer(2, 1, Some("4"))])),
            Record::Batch(batch("2026-11-27", &[(1, 1, "5"), (2, 1, "6")])),
            Record::BuyingList(buying_list(&[(1, 1, "2"), (2, 1, "3")])),
        ],
    )
}

fn row(record: Record) -> Row {
    Row { book: ID, key: record.key(), revision: 1, grew_from: 0, record: Some(record) }
}

/// The lines that are saved of a stored book: its entry, then its rows.
fn lines(book: &Book) -> Vec<String> {
    let entry = BookEntry::new(ID, book, 1).text().unwrap();
    std::iter::once(entry).chain(book.records().map(|record| row(record).text().unwrap())).collect()
}

fn taken(lines: &[String]) -> (Book, Vec<String>) {
    let TakenIn { book, left_out } = take_in(format!("{}\n", lines.join("\n"))).unwrap();
    (book, left_out.iter().map(not_taken).collect())
}

#[test]
fn what_is_whole_comes_back_whole() {
    assert_eq!(taken(&lines(&bar())), (bar(), vec![]));
    assert_eq!(take_in(write(&bar())).unwrap(), TakenIn { book: bar(), left_out: vec![] }, "a book file too");
    // Without its entry, in another order, with the line ends and the mark of an editor.
    let mut rows = lines(&bar());
    rows.remove(0);
    rows.reverse();
    assert_eq!(take_in(format!("\u{feff}{}", rows.join("\r\n"))).unwrap().book, bar());
}

#[test]
fn a_removed_record_is_not_missed() {
    let mut stored = lines(&bar());
    let gone = Row { revision: 2, grew_from: 1, record: None, ..row(Record::Drink(drink(3, "1 L", []))) };
    stored.push(gone.text().unwrap());
    assert_eq!(taken(&stored), (bar(), vec![]));
}

/// An ingredient is cut short: its drink and size cannot be computed without it, and the lists
/// that name them keep the rest.
#[test]
fn a_damaged_record_is_told_with_all_that_hangs_on_it() {
    let mut stored = lines(&bar());
    let cut = stored[3].len() - 20;
    stored[3].truncate(cut);
    let (book, told) = taken(&stored);
    assert_eq!(
        told,
        [
            "Line 4, ingredient “Invented ingredient 2”: Damaged. Add this again.",
            "Line 7, drink “Invented drink 2”: Left out. Lost: ingredient “Invented ingredient 2”. Add that first, then this.",
            "Line 9, size “Invented drink 2, Invented 250 mL 1”: Left out. Lost: drink “Invented drink 2”. Add that first, then this.",
            "Line 10, week of Nov 23, 2026: 1 line is left out. What the line names is lost.",
            "Line 11, scenario “Invented menu 1”: 1 line is left out. What the line names is lost.",
            "Line 12, batch of Nov 27, 2026: 1 line is left out. What the line names is lost.",
            "Line 13, buying list: 1 line is left out. What the line names is lost.",
        ]
    );
    for key in [Key::Ingredient(ingredient_id(1)), Key::Drink(drink_id(1)), Key::Container(container_id(1))] {
        assert_eq!(book.record(key), bar().record(key));
    }
    let weeks: Vec<usize> = book.weeks().map(|week| week.sold.len()).collect();
    assert_eq!((book.records().count(), weeks), (9, vec![1]));
}

#[test]
fn settings_that_are_lost_start_anew_under_the_name_of_the_entry() {
    let lost = "Your settings are lost. Check currency, units, tax, wage and target margin under Book.";
    let mut stored = lines(&bar());
    stored[1] = stored[1].replace("\"currency\":\"USD\"", "\"currency\":\"U\u{7f}D\"");
    let (book, told) = taken(&stored);
    assert_eq!((book.settings().name.as_str(), told), ("Invented test bar", vec![format!("Line 2: {lost}")]));
    stored.remove(1);
    stored[0] = "?".into();
    let (book, told) = taken(&stored);
    let title = "Line 1: The title of the book is damaged. Nothing else is lost.";
    assert_eq!((book.settings().name.as_str(), told), ("", vec![lost.into(), title.into()]));
    let named = TakenIn { book, left_out: Vec::new() }.or_named("Repaired book").or_named("Another name");
    assert_eq!(named.book.settings().name, "Repaired book");
}

#[test]
fn what_does_not_hold_is_told() {
    let mut stored = lines(&bar());
    let over = crate::book::Ingredient { trim_yield: share("1.4"), ..ingredient(3, []) };
    stored.push(row(Record::Ingredient(over)).text().unwrap());
    stored.push("?".into());
    stored.push("{\"book\":\"b1\",\"key\":\"ingredient:9\",\"revision\":1,\"grew".into());
    let newer = Row { revision: 7, grew_from: 1, ..row(Record::Ingredient(ingredient(1, []))) };
    stored.push(newer.text().unwrap());
    let two = crate::book::Week { sold: vec![sold(8, 1, "1", "1"), sold(9, 1, "1", "1")], ..week("2026-11-16", &[]) };
    stored.push(row(Record::Week(two)).text().unwrap());
    let orphan = drink(7, "1 L", [line(1, 99, "1 L")]);
    stored.push(row(Record::Drink(orphan)).text().unwrap());
    let (book, told) = taken(&stored);
    assert_eq!(
        told,
        [
            "Line 3, ingredient “Invented ingredient 1”: Listed twice. The newer one is used.",
            "Line 14, ingredient “Invented ingredient 3”: Left out. Trim yield: must be above 0% and at most 100%. Type 90 if 90% is left.",
            "Line 15: A damaged entry has no name. Compare this book with your last copy.",
            "Line 16, ingredient: Damaged. Add this again.",
            "Line 18, week of Nov 16, 2026: 2 lines are left out. What the lines name is lost.",
            "Line 19, drink “Invented drink 7”: Left out. Lost: ingredient. Add that first, then this.",
        ]
    );
    assert_eq!(book.ingredient(ingredient_id(1)).map(|it| it.packs.len()), Some(0));
    assert_eq!(book.settings().target.fraction(), exact("0.65"));
}

#[test]
fn lines_without_a_whole_row_are_no_stored_book() {
    let entry = lines(&bar()).remove(0);
    assert_eq!(take_in(&entry).unwrap_err(), BookFileError::Foreign { format: None });
    assert_eq!(take_in("{\"book\":\n").unwrap_err(), BookFileError::CutShort { line: 2 });
}

#[test]
fn blank_lines_say_nothing_unless_a_record_is_missing() {
    let mut stored = lines(&bar());
    stored.insert(0, "  ".into());
    stored.insert(4, String::new());
    stored.push("\t".into());
    assert_eq!(taken(&stored), (bar(), vec![]));
    let mut stored = lines(&bar());
    stored[3] = String::new();
    let (_, told) = taken(&stored);
    assert_eq!(told[0], "Line 4: A damaged entry has no name. Compare this book with your last copy.");
    assert_eq!(told[1], "Line 7, drink “Invented drink 2”: Left out. Lost: ingredient. Add that first, then this.");
}

#[test]
fn what_could_not_be_taken_is_told_up_to_a_number_and_counted_beyond() {
    let mut stored = lines(&bar());
    stored.extend(std::iter::repeat_n("?".to_string(), 12_345));
    // The settings are told of whatever else there is.
    stored.remove(1);
    let (book, told) = taken(&stored);
    assert_eq!((book.records().count(), told.len()), (bar().records().count(), 202));
    let all = take_in(stored.join("\n")).unwrap().left_out.iter().map(LeftOut::count).sum::<usize>();
    assert_eq!(all, 12_346);
    assert_eq!(told[0], "Your settings are lost. Check currency, units, tax, wage and target margin under Book.");
    assert_eq!(told[1], "Line 13: A damaged entry has no name. Compare this book with your last copy.");
    assert_eq!(told[201], "And 12,145 more.");
}

#[test]
fn one_line_alone_is_no_larger_than_one_record() {
    let mut stored = lines(&bar());
    let row = stored.remove(2);
    stored.push(row.replacen('{', &format!("{{{}", " ".repeat(1_000_000)), 1));
    let (_, told) = taken(&stored);
    let ingredient = "Line 13, ingredient “Invented ingredient 1”: Left out, since larger than 1 MB. Add this again.";
    assert!(told.contains(&ingredient.to_string()), "{told:?}");
    // Where nothing tells which it is.
    stored.push("?".repeat(1_000_001));
    let (_, told) = taken(&stored);
    assert_eq!(told.last().unwrap(), "Line 14: An entry is larger than 1 MB. Compare this book with your last copy.");
}

/// A whole row after two million bytes of what looks like rows and is none.
#[test]
fn only_so_much_is_read_to_find_out_what_a_file_is() {
    let broken = format!("{}{}\n", super::ROW, " ".repeat(999_900));
    let row = lines(&bar()).remove(1);
    assert!(super::is_stored(&format!("{broken}{row}")));
    assert!(!super::is_stored(&format!("{}{row}", broken.repeat(3))));
    let long = format!("{}{}\n", super::ROW, " ".repeat(1_000_000));
    assert!(super::is_stored(&format!("{}{row}", long.repeat(3))), "what is too long is not read at all");
}
