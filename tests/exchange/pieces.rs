//! A file read piece by piece: the same book or error as in one go, and a bound for every piece.

use brimwright::book::Book;
use brimwright::exchange::{BookFileError, Fault, MAX_RECORD_BYTES, Reading, read, text};

use super::{DEMO, demo_with};

/// Reads so many bytes at a time, and notes the percentages told.
fn in_pieces(file: &str, bytes: usize) -> (Result<Book, BookFileError>, Vec<usize>) {
    let mut told = Vec::new();
    let mut reading = match text(file.as_bytes()).and_then(Reading::of) {
        Ok(reading) => reading,
        Err(error) => return (Err(error), told),
    };
    loop {
        told.push(reading.done());
        match reading.go_on(bytes) {
            Ok(Some(taken)) => return (Ok(taken.book), told),
            Ok(None) => {}
            Err(error) => return (Err(error), told),
        }
    }
}

#[test]
fn pieces_of_any_size_make_the_same_book() {
    for bytes in [7, 1_000, 16_000] {
        let (book, told) = in_pieces(&DEMO, bytes);
        assert_eq!(book, read(&*DEMO), "{bytes}");
        assert!(told.is_sorted() && told.first() == Some(&0) && told.iter().all(|percent| *percent <= 100), "{bytes}");
        assert!(told.len() >= DEMO.len() / bytes, "no piece is much larger than {bytes}");
    }
}

#[test]
fn pieces_of_any_size_find_the_same_error() {
    let files = [
        String::new(),
        "[1]".into(),
        DEMO[..DEMO.len() / 3].into(),
        demo_with("\"trim-yield\": \"0.9\"", "\"trim-yield\": \"1.4\""),
        demo_with("\"kind\": \"blended\"", "\"kind\": \"stirred\""),
        demo_with("\"drinks\": [", "\"beverages\": ["),
        demo_with("\"drinks\": [", "\"drinks\": [,"),
        demo_with("\"version\": 4", "\"version\": 5"),
        demo_with("\"id\": \"2\",\n      \"name\": \"Oranges\"", "\"id\": \"1\",\n      \"name\": \"Oranges\""),
    ];
    for file in files {
        let whole = read(&file).unwrap_err();
        for bytes in [11, 5_000] {
            assert_eq!(in_pieces(&file, bytes).0, Err(whole.clone()));
        }
    }
}

/// Whatever stands in a list of a book is small; what is not would keep the page from answering.
#[test]
fn what_is_too_much_is_refused_before_it_is_read() {
    let fault = |file: &str| match read(file) {
        Err(BookFileError::Value { place, fault }) => (place.path, fault),
        other => panic!("{:?}", other.map(|_| ())),
    };
    let ingredients: Vec<String> =
        (0..300_000).map(|id| format!("{{\"id\":\"{:x}\",\"name\":\"Apples\"}}", id + 1)).collect();
    let many = demo_with("\"ingredients\": [", &format!("\"ingredients\": [{},", ingredients.join(",")));
    assert!(many.len() > 9_000_000, "{}", many.len());
    assert_eq!(fault(&many), ("ingredients[20000]".into(), Fault::TooMany(20_000)));

    let ending = "\"0.25\",";
    let long = demo_with("\"endings\": [", &format!("\"endings\": [{}", ending.repeat(300_000)));
    assert_eq!(fault(&long), ("settings".into(), Fault::TooLarge(MAX_RECORD_BYTES)));
}
