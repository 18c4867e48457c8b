use super::*;
use crate::book::{Book, Edit, Key, Record, TillColumns, Week};
use crate::drink::ledger::Ledger;
use crate::drink::sales::Unknown;
use crate::exchange::MAX_BYTES;
use crate::foundation::measure::{Date, NumberStyle, ReadError};
use crate::support::{book, container, day, exact, ingredient, line, money, offer, offer_id, pack, settings};

fn cells(text: &str) -> Vec<Vec<String>> {
    read_table(text.as_bytes()).unwrap().rows.into_iter().map(|row| row.cells).collect()
}

/// Source: RFC 4180, section 2, the examples of its seven rules, each under a row of heads.
#[test]
fn rows_of_rfc_4180() {
    let three = |rows: &str| cells(&format!("field_name,field_name,field_name\r\n{rows}"));
    let plain = [["aaa", "bbb", "ccc"], ["zzz", "yyy", "xxx"]];
    assert_eq!(three("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), plain, "1: a line for each");
    assert_eq!(three("aaa,bbb,ccc\r\nzzz,yyy,xxx"), plain, "2: the last may lack its end");
    let heads = read_table(b"field_name,field_name,field_name\r\naaa,bbb,ccc\r\n").unwrap().heads;
    assert_eq!(heads, ["field_name", "field_name #2", "field_name #3"], "3: heads");
    assert_eq!(three(" aaa,bbb ,ccc"), [[" aaa", "bbb ", "ccc"]], "4: blanks belong to a cell");
    assert_eq!(three("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), plain, "5: quoted or not");
    assert_eq!(three("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx")[0], ["aaa", "b\r\nbb", "ccc"], "6: ends and commas");
    assert_eq!(three("\"aaa\",\"b\"\"bb\",\"ccc\""), [["aaa", "b\"bb", "ccc"]], "7: quotes are doubled");
}

#[test]
fn other_separators_and_ends() {
    let expected = [["Tea, cold", "1,5"], ["x", ""]];
    assert_eq!(cells("\u{feff}item;units\nTea, cold;1,5\n\nx;\n"), expected);
    assert_eq!(cells("item\tunits\rTea, cold\t1,5\r \t \rx\t"), expected);
    assert_eq!(cells("\"item, all\";\"units, all\"\n\"Tea, cold\";1,5\nx;"), expected, "those in quotes do not count");
    let lines: Vec<usize> =
        read_table(b"a,b\r\n\r\n\"1\r\n2\",3\r\n4,5").unwrap().rows.iter().map(|row| row.line).collect();
    assert_eq!(lines, [3, 5], "the line that a row begins on");
}

#[test]
fn what_is_no_list_is_told_apart() {
    let error = |bytes: &[u8]| read_table(bytes).err();
    assert_eq!(error(b""), Some(TillError::Empty));
    assert_eq!(error(b"\xef\xbb\xbf \r\n"), Some(TillError::Empty));
    assert_eq!(error(b"item;St\xfcck\n"), Some(TillError::NotText), "Latin 1");
    assert_eq!(error(b"\xff\xfei\0;\0"), Some(TillError::NotText), "UTF-16");
    assert_eq!(error(b"i\0,\0"), Some(TillError::NotText));
    assert_eq!(error(b"A letter to my aunt"), Some(TillError::NoColumns));
    assert_eq!(error(b"{\"a\": 1, \"b\": 2}"), Some(TillError::NoColumns));
    assert_eq!(error(b"item,units\r\n\r\n"), Some(TillError::OnlyHeads));
    assert_eq!(error(b"item,units\r\n\"Tea,3\r\n"), Some(TillError::OpenQuote { line: 2 }));
    let mut bytes = b"a,b\n1,2\n".to_vec();
    bytes.resize(MAX_BYTES + 1, b' ');
    assert_eq!(error(&bytes), Some(TillError::TooLarge));
    bytes.pop();
    assert_eq!(error(&bytes), None);
}

#[test]
fn heads_are_named_once() {
    let heads = |text: &str| read_table(format!("{text}\n1,2,3").as_bytes()).unwrap().heads;
    assert_eq!(heads(" Item ,,Item"), ["Item", "#2", "Item #3"]);
    let called_alike = ["Item", "Item #3", "Item #3 #3"];
    assert_eq!(heads("Item,Item #3,Item"), called_alike);
}

#[test]
fn the_order_of_days_is_that_of_the_whole_list() {
    use DayOrder::{DayFirst, MonthFirst};
    let of = |days: &[&str]| Days::of(days.iter().copied());
    assert_eq!(of(&["03/04/2026", "23/11/2026"]), Days::Clear(DayFirst));
    assert_eq!(of(&["03/04/2026", "11/23/2026"]), Days::Clear(MonthFirst));
    assert_eq!(of(&["03/04/2026"]), Days::Open);
    assert_eq!(of(&["23/11/2026", "11/23/2026"]), Days::Open, "no order fits all");
    assert_eq!(of(&["2026-11-23", "23.11.2026", "total", "99/99/2026"]), Days::Clear(DayFirst), "none with strokes");
    let read = |text, order| super::day::read_day(text, order).map(|day| day.to_string());
    for text in ["2026-11-23", "23.11.2026", "23/11/2026", " 23/11/2026 14:05", "2026-11-23T09:00:00"] {
        assert_eq!(read(text, DayFirst).as_deref(), Some("2026-11-23"), "{text}");
    }
    assert_eq!(read("11/23/2026", MonthFirst).as_deref(), Some("2026-11-23"));
    for text in ["", "23.11.26", "31.11.2026", "13/13/2026", "2026-11", "1/2/3/2026", "today"] {
        assert_eq!(read(text, DayFirst), None, "{text}");
    }
}

/// Two drinks in two sizes that contribute 2 and 4 each; the second drink has no price in the
/// larger.
fn bar() -> Book {
    let drink = |id: u64, name: &str| {
        let lines = [line(1, 1, "250 mL")];
        Record::Drink(crate::book::Drink { name: name.into(), ..crate::support::drink(id, "250 mL", lines) })
    };
    let cup =
        |id, name: &str, holds| Record::Container(crate::book::Container { name: name.into(), ..container(id, holds) });
    let records = [
        Record::Ingredient(ingredient(1, [pack(1, "250 mL", "1")])),
        drink(1, "Invented Green"),
        drink(2, "Invented Green Tea"),
        cup(1, "Cup, small", "250 mL"),
        cup(2, "Cup, large", "500 mL"),
        Record::Offer(offer(1, 1, Some("3"))),
        Record::Offer(offer(1, 2, Some("6"))),
        Record::Offer(offer(2, 1, Some("3"))),
        Record::Offer(offer(2, 2, None)),
    ];
    book(settings(), records)
}

fn columns(size: Option<&str>, day: Option<&str>) -> TillColumns {
    TillColumns {
        item: "Item".into(),
        size: size.map(str::to_string),
        units: "Sold".into(),
        day: day.map(str::to_string),
    }
}

fn taken(book: &Book, text: &str, columns: TillColumns, order: Option<DayOrder>) -> Taken {
    let style = NumberStyle::english("$");
    let till = Till { columns, order, week: day("2026-11-23"), style: &style, fold: &str::to_lowercase };
    take(book, &Ledger::of(book), &read_table(text.as_bytes()).unwrap(), &till).unwrap().unwrap()
}

fn whys(taken: &Taken) -> Vec<(usize, Why)> {
    taken.bad.iter().map(|row| (row.line, row.why.clone())).collect()
}

fn sold(week: &Week) -> Vec<(String, String, String)> {
    week.sold
        .iter()
        .map(|it| (it.offer().to_string(), it.units.to_string(), it.contribution.major().to_string()))
        .collect()
}

fn line_of(offer: &str, units: &str, contribution: &str) -> (String, String, String) {
    (offer.into(), units.into(), contribution.into())
}

/// Three rows of one size add up; 6 of 2 and 3 of 4 contribute 24, by hand.
#[test]
fn rows_become_weeks() {
    let mut book = bar();
    let list = "Day,Item,Size,Sold\n\
        2026-11-23,invented  GREEN,cup, Small,2\n"
        .replace("cup, Small", "\" cup,  Small \"")
        + "2026-11-29,Invented Green,\"Cup, small\",3\n\
           2026-11-25,Invented Green,\"Cup, large\",3\n\
           2026-11-24,Invented Green,\"Cup, small\",1\n\
           2026-11-30,Invented Green Tea,\"Cup, small\",\"1,000\"\n";
    let found = taken(&book, &list, columns(Some("Size"), Some("Day")), None);
    assert_eq!((found.good, whys(&found)), (5, vec![]));
    let weeks: Vec<_> =
        found.weeks.iter().map(|week| (week.monday, week.units, week.contribution, week.known)).collect();
    let expected =
        [(day("2026-11-23"), exact("9"), money("24"), false), (day("2026-11-30"), exact("1000"), money("2000"), false)];
    assert_eq!(weeks, expected);

    let before = book.clone();
    let applied = book.apply(&found.edit).unwrap();
    assert_eq!(sold(book.week(day("2026-11-23")).unwrap()), [line_of("1-1", "6", "2"), line_of("1-2", "3", "4")]);
    assert_eq!(book.settings().till, Some(columns(Some("Size"), Some("Day"))));
    // The same list once more changes nothing.
    let again = taken(&book, &list, columns(Some("Size"), Some("Day")), None);
    assert!(again.weeks.iter().all(|week| week.known));
    let taken_twice = book.clone();
    book.apply(&again.edit).unwrap();
    assert_eq!(book, taken_twice);
    book.apply(&applied.inverse).unwrap();
    assert_eq!(book, before);
}

#[test]
fn bad_rows_are_left_out_and_the_good_ones_come_in() {
    let book = bar();
    let list = "Item;Sold;Day\n\
        Invented Green, Cup, small;2;23/11/2026\n\
        Invented Lemonade;2;23/11/2026\n\
        Invented Green;2;23/11/2026\n\
        Invented Green, bucket;2;23/11/2026\n\
        Invented Green, Cup, small;two;23/11/2026\n\
        Invented Green, Cup, small;-2;23/11/2026\n\
        Invented Green, Cup, small;2;31/11/2026\n\
        Invented Green Tea, Cup, large;2;23/11/2026\n\
        Invented Green, Cup, small;2\n\
        Invented Green, Cup, small;;23/11/2026\n\
        ;2;23/11/2026\n\
        Invented Green, Cup, small;999999999;23/11/2026\n\
        Invented Green Cup, large;2;23/11/2026\n";
    let found = taken(&book, list, columns(None, Some("Day")), None);
    let no_number = Why::Units(ReadError::NotANumber { text: "two".into() });
    let size = |size: &str| Why::UnknownSize { drink: "Invented Green".into(), size: size.into() };
    let expected = [
        (3, Why::UnknownItem("Invented Lemonade".into())),
        (4, size("")),
        (5, size("bucket")),
        (6, no_number),
        (7, Why::Units(ReadError::Negative)),
        (8, Why::Day("31/11/2026".into())),
        (9, Why::Unknown(Unknown::NoPrice)),
        (10, Why::TooShort),
        (11, Why::Units(ReadError::Empty)),
        (12, Why::UnknownItem(String::new())),
        (13, Why::TooLarge),
    ];
    assert_eq!(whys(&found), expected);
    assert_eq!(found.bad[1].text, "Invented Green | 2 | 23/11/2026");
    assert_eq!(found.good, 2);
    let [week] = found.weeks[..] else { panic!("one week: {:?}", found.weeks) };
    assert_eq!((week.units, week.contribution), (exact("4"), money("12")), "2 of 2 and 2 of 4, by hand");
}

#[test]
fn a_week_keeps_what_the_list_does_not_name() {
    let mut book = bar();
    let first = taken(&book, "Item,Sold\n\"Invented Green, Cup, small\",7\n", columns(None, None), None);
    book.apply(&first.edit).unwrap();
    assert_eq!(first.weeks[0].monday, day("2026-11-23"), "a list without days is of the week that was chosen");
    book.apply(&Edit::SetPrice { offer: offer_id(1, 1), price: Some(money("3.5")) }).unwrap();
    let second = taken(
        &book,
        "Item,Sold\n\"Invented Green, Cup, large\",1\n\"Invented Green, Cup, small\",8\n",
        columns(None, None),
        None,
    );
    book.apply(&second.edit).unwrap();
    let week = book.week(day("2026-11-23")).unwrap();
    assert_eq!(sold(week), [line_of("1-1", "8", "2"), line_of("1-2", "1", "4")], "by the price of then");
}

#[test]
fn days_that_could_be_either_are_asked_about() {
    let list =
        "Item,Sold,Day\n\"Invented Green, Cup, small\",7,03/04/2026\n\"Invented Green, Cup, small\",1,05/05/2026\n";
    let found = |order| taken(&bar(), list, columns(None, Some("Day")), order);
    let mondays = |taken: &Taken| taken.weeks.iter().map(|week| week.monday).collect::<Vec<Date>>();
    let open = found(None);
    assert_eq!(whys(&open), [(2, Why::DayOpen("03/04/2026".into()))]);
    assert_eq!(mondays(&open), [day("2026-05-04")], "the fifth of May is the same either way");
    // 3 April 2026 is a Friday, 4 March 2026 a Wednesday (ISO 8601 calendar).
    assert_eq!(mondays(&found(Some(DayOrder::DayFirst))), [day("2026-03-30"), day("2026-05-04")]);
    assert_eq!(mondays(&found(Some(DayOrder::MonthFirst))), [day("2026-03-02"), day("2026-05-04")]);
}

#[test]
fn two_of_one_name_are_not_guessed() {
    let mut book = bar();
    let mut tea = book.drink(crate::support::drink_id(2)).unwrap().clone();
    tea.name = "INVENTED  green".into();
    book.apply(&Edit::Put(Record::Drink(tea))).unwrap();
    let found = taken(&book, "Item,Sold\n\"Invented Green, Cup, small\",7\n", columns(None, None), None);
    assert_eq!(whys(&found), [(2, Why::SeveralItems("Invented Green, Cup, small".into()))]);
    assert_eq!(found.edit, Edit::Together(Vec::new()), "nothing is remembered of a list that is not taken in");
    assert!(!book.contains(Key::Week(day("2026-11-23"))));
}

#[test]
fn columns_that_are_not_there() {
    let table = read_table(b"Item,Units\nx,1\n").unwrap();
    assert!(!table.has(&columns(None, None)));
    let style = NumberStyle::english("$");
    let till = Till {
        columns: columns(None, None),
        order: None,
        week: day("2026-11-23"),
        style: &style,
        fold: &str::to_lowercase,
    };
    assert_eq!(take(&bar(), &Ledger::of(&bar()), &table, &till), Ok(None));
}
