//! Computed offers as CSV. The form is that of RFC 4180 (2005), section 2: lines ended by CR
//! LF; fields with commas, quotes or line ends in quotes; quotes doubled.

use brimwright::book::{Book, Edit, Key, Record};
use brimwright::drink::label::Law;
use brimwright::drink::ledger::{Ledger, OfferError};
use brimwright::exchange::{Column, Lack, Said, read, write_offers};
use brimwright::words;

use super::demo;

const BOOK: &str = r#"{
  "format": "brimwright-book", "version": 1,
  "settings": {
    "name": "Sums", "currency": "EUR", "units": "metric",
    "tax": {"rate": "0.2", "place": "in-the-price"},
    "payment-fee": {"share": "0.02", "fixed": "0.1"},
    "wage": "18", "overhead": "0.1", "unsold": "0.2", "target": "0.5", "covers": "goods", "endings": []
  },
  "ingredients": [
    {"id": "1", "name": "Juice", "trim-yield": "1", "packs": [{"id": "1", "contents": "1 L", "price": "4"}]},
    {"id": "2", "name": "Unknown", "trim-yield": "1"}
  ],
  "packagings": [
    {"id": "1", "name": "Bottle", "part": "vessel", "packs": [{"id": "1", "contents": "10 ea", "price": "2"}]}
  ],
  "containers": [
    {"id": "1", "name": "Bottle, 500 mL", "brimful": "500 mL", "headspace": {"share": "0"},
     "set": [{"packaging": "1", "count": "1"}]},
    {"id": "2", "name": "=1+1 \"small\"", "brimful": "300 mL", "headspace": {"volume": "50 mL"}, "set": []}
  ],
  "drinks": [
    {"id": "1", "name": "Plain", "kind": "pressed", "reference": "500 mL", "toll": "0.25",
     "labour": {"per-drink": "60"},
     "lines": [{"id": "1", "ingredient": "1", "stage": "as-bought", "amount": "100 mL", "scaling": "in-proportion"}]},
    {"id": "2", "name": "Other", "kind": "pressed", "reference": "500 mL", "labour": {},
     "lines": [{"id": "1", "ingredient": "2", "stage": "as-bought", "amount": "100 mL", "scaling": "in-proportion"}]}
  ],
  "offers": [
    {"drink": "1", "container": "1", "price": "9.6"},
    {"drink": "1", "container": "2"},
    {"drink": "2", "container": "1", "price": "5", "weekly": "12.5"}
  ]
}"#;

fn csv(book: &Book) -> String {
    let said = Said {
        head: &|column| words::offers_column(column, book.settings().currency, Law::of(book.settings())),
        status: &|status| words::offer_status(status).to_string(),
        reason: &|lack| match lack {
            Lack::Offer(OfferError::Cost(_)) => "There is no pack, yet".to_string(),
            other => format!("{other:?}"),
        },
    };
    write_offers(book, &Ledger::of(book), said)
}

/// By hand, for 500 mL: ingredients 4 * 0.5; set 2 / 10; labour 18 / 60; unsold 0.2 / 0.8 of
/// 2.85. Price without tax 9.6 / 1.2 = 8, tax 1.6; fees 8 * 0.02 * 1.2 + 0.1 = 0.292; goods with
/// unsold 2.45 / 0.8 = 3.0625; suggested 3.0625 / 0.5 * 1.2; margin (8 - 3.0625) / 8. For 250 mL:
/// goods 1.25 / 0.8 = 1.5625, all 1.65 / 0.8 = 2.0625.
#[test]
fn rows_are_exact_to_the_byte() {
    let expected = concat!(
        "\u{feff}Drink,Container,Fill (mL),Ingredients (EUR),Packaging (EUR),Labor (EUR),Processing fee (EUR),",
        "Overhead (EUR),Waste (EUR),Free drinks (EUR),Full cost (EUR),Suggested price (EUR),Your price (EUR),",
        "Price before tax (EUR),Average price before tax (EUR),Tax rate (fraction),VAT or tax (EUR),Deposit (EUR),",
        "Card fee and commission (EUR),Profit per drink (EUR),Margin (fraction),",
        "Target margin (fraction),Drinks sold per week,Status,Reason\r\n",
        "Other,\"Bottle, 500 mL\",500,,,,,,,,,,5,,,,,,,,,,12.5,Needs details,\"There is no pack, yet\"\r\n",
        "Plain,\"'=1+1 \"\"small\"\"\",250,1,0,0.3,0.25,0.1,0.4125,0,2.0625,3.75,,,,0.2,,0,,,,0.5,,No price yet,\r\n",
        "Plain,\"Bottle, 500 mL\",500,2,0.2,0.3,0.25,0.1,0.7125,0,3.5625,7.35,9.6,8,8,0.2,1.6,0,0.292,4.1455,",
        "0.6171875,0.5,,On target,\r\n",
    );
    assert_eq!(csv(&read(BOOK).unwrap()), expected);
}

/// By hand: a tenth off 8.00 is 7.20, with tax 8.64, and with a deposit of 0.50 customers pay 9.14: fees of 0.1828
/// and 0.10. Of every five drinks handed out one is free: a quarter of the 3.4375 that goods and labor cost with
/// waste, 0.859375, and 0.765625 on the goods. Overhead is per drink sold. The price: 3.828125 / 0.5 / 0.9 * 1.2.
#[test]
fn what_varies_has_its_columns() {
    let varied = BOOK
        .replace("\"version\": 1", "\"version\": 4")
        .replace(
            "\"wage\"",
            "\"overhead-per\": \"drink-sold\", \"reductions\": {\"discounts\": \"0.1\", \"free\": \"0.2\"}, \"wage\"",
        )
        .replace("\"name\": \"Bottle, 500 mL\",", "\"name\": \"Bottle, 500 mL\", \"deposit\": \"0.5\",");
    let text = csv(&read(&varied).unwrap());
    let row = ",0.1,0.6875,0.859375,4.396875,10.21,9.6,8,7.2,0.2,1.6,0.5,0.2828,2.520325,0.468315972222,0.5,,Below";
    assert!(text.contains(row), "{text}");
}

/// By hand: fees of 60% leave 1 - 0.6 * 1.2 = 0.28 of a price at the most, less than a half.
#[test]
fn a_missing_suggestion_has_its_reason() {
    let dear = BOOK.replace("\"share\": \"0.02\"", "\"share\": \"0.6\"");
    let book = read(dear.replace("\"covers\": \"goods\"", "\"covers\": \"everything\"")).unwrap();
    let text = words::offers_csv(&book, &Ledger::of(&book));
    let reason = ",0.5,,No price yet,No price reaches a 50.0% margin. Fees and commission leave less than 28.0% of any price. Lower the target or the fees.\r\n";
    assert!(text.contains(reason), "{text}");
}

#[test]
fn a_cell_that_a_spreadsheet_would_run_is_made_harmless() {
    let mut book = read(BOOK).unwrap();
    let beginnings = [
        ("=A1", "'=A1"),
        ("+1", "'+1"),
        ("-1", "'-1"),
        ("@A", "'@A"),
        ("\tA", "'\tA"),
        ("  =A1", "'  =A1"),
        ("\u{a0}\u{3000}@A", "'\u{a0}\u{3000}@A"),
        ("\u{200b}=A1", "'\u{200b}=A1"),
        ("＝A1", "'＝A1"),
        ("＋1", "'＋1"),
        ("－1", "'－1"),
        ("＠A", "'＠A"),
        ("﹦A1", "'﹦A1"),
        ("A=", "A="),
    ];
    let in_quotes = [("\rA", "\"'\rA\""), ("\n=A", "\"'\n=A\""), (" \r\n -1", "\"' \r\n -1\""), ("A\nB", "\"A\nB\"")];
    for (name, cell) in beginnings.into_iter().chain(in_quotes) {
        let Some(Record::Drink(mut drink)) = book.record(Key::from_text("drink:2").unwrap()) else { panic!() };
        drink.name = name.to_string();
        book.apply(&Edit::Put(Record::Drink(drink))).unwrap();
        let text = csv(&book);
        assert!(text.contains(&format!("\r\n{cell},\"Bottle, 500 mL\",500,,")), "{name:?} in {text}");
    }
}

#[test]
fn a_loss_is_a_plain_negative_number() {
    let cheap = BOOK.replace("\"price\": \"9.6\"", "\"price\": \"1.2\"");
    let text = csv(&read(cheap).unwrap());
    // Price without tax 1; fees 0.024 + 0.1; 1 - 0.124 - 3.5625, and 1 - 3.0625 over 1.
    assert!(text.contains(",7.35,1.2,1,1,0.2,0.2,0,0.124,-2.6865,-2.0625,0.5,,Below target,\r\n"), "{text}");
}

#[test]
fn the_demo_has_a_full_row_for_every_offer() {
    let book = demo();
    let text = csv(&book);
    assert!(text.ends_with("\r\n"));
    assert_eq!(text.matches("\r\n").count(), 1 + book.offers().count());
    let first = text.lines().next().unwrap();
    let heads: Vec<String> = Column::all()
        .map(|column| words::offers_column(column, book.settings().currency, Law::of(book.settings())))
        .collect();
    assert_eq!(first, format!("\u{feff}{}", heads.join(",")));
    assert!(!text.contains("Needs details"));
    let rows: Vec<&str> = text.lines().skip(1).collect();
    assert!(rows.is_sorted_by_key(|row| row.split(',').next()));
}
