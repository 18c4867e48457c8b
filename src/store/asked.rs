//! Open questions about what was typed, kept on this device until they are answered.

use gloo_storage::{LocalStorage, Storage};

use super::first_paint::{get, set, there};
use crate::book::BookId;
use crate::foundation::jump::{Question, Questions};

fn key(book: BookId) -> String {
    format!("brimwright.asked.{book}")
}

fn kept(book: BookId) -> Questions {
    let text: Option<String> = get(&key(book));
    text.map(|text| Questions::from_text(&text)).unwrap_or_default()
}

/// The open question at a place in a book.
pub fn question(book: BookId, place: &str) -> Option<Question> {
    kept(book).at(place)
}

/// Every open question about a book, with its place.
pub fn questions(book: BookId) -> Vec<(String, Question)> {
    kept(book).all().to_vec()
}

/// Forgets every question about a book.
pub fn forget(book: BookId) {
    if there() {
        LocalStorage::delete(key(book));
    }
}

/// Sets the question at a place in a book, or removes it.
pub fn keep_question(book: BookId, place: &str, question: Option<Question>) {
    let mut questions = kept(book);
    questions.put(place, question);
    set(&key(book), questions.to_text());
}
