//! Book files of nearly the largest size. All in them is invented by rule.

use brimwright::book::{Book, Settings};
use brimwright::exchange;

/// A book of these ingredients alone, as a file.
fn of(ingredients: &[String]) -> String {
    let text = exchange::write(&Book::new(Settings::new("Generated large book")));
    let file = text.replacen("\"ingredients\": []", &format!("\"ingredients\": [{}]", ingredients.join(",\n")), 1);
    assert!((9_000_000..10_000_000).contains(&file.len()), "{}", file.len());
    file
}

/// A file with a list of 300,000 entries.
pub fn too_many() -> String {
    let ingredients: Vec<String> =
        (1..=300_000).map(|id| format!("{{\"id\":\"{id:x}\",\"name\":\"Apple\"}}")).collect();
    of(&ingredients)
}

/// A file with as many ingredients as a list may have, each with a history of prices.
pub fn full() -> String {
    let heard: Vec<String> =
        (1..=9).map(|day| format!("{{\"day\":\"2026-10-0{day}\",\"price\":\"{day}.25\"}}")).collect();
    let pack = format!(
        "{{\"id\":\"1\",\"contents\":\"40 lb\",\"price\":\"9.50\",\"day\":\"2026-11-02\",\"earlier\":[{}]}}",
        heard.join(",")
    );
    let ingredient = |id| format!("{{\"id\":\"{id:x}\",\"name\":\"A{id}\",\"trim-yield\":\"0.9\",\"packs\":[{pack}]}}");
    let ingredients: Vec<String> = (1..=20_000).map(ingredient).collect();
    of(&ingredients)
}
