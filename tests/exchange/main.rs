//! Tests: books leaving and coming in.

mod believable;
mod broken;
#[path = "../property/cases.rs"]
mod cases;
mod demo;
mod demo_shows;
mod demo_sizes;
mod fields;
mod hostile;
mod offers_csv;
mod older_versions;
mod pieces;
mod preview;
mod schema;
mod second_demo;
mod varying_costs;

#[path = "../support/mod.rs"]
mod support;

use std::sync::LazyLock;

use brimwright::book::Book;
use brimwright::exchange::read;

/// The demo book's file.
const FILE: &str = include_str!("../../public/books/marrowgate-juice-hall.json");

/// The same with each value on a line of its own, as by hand or another program: easier to spoil
/// in one place.
static DEMO: LazyLock<String> = LazyLock::new(|| indented(FILE));

fn demo() -> Book {
    read(FILE).unwrap()
}

/// The demo's text with the first `old` replaced by `new`.
fn demo_with(old: &str, new: &str) -> String {
    assert!(DEMO.contains(old), "{old:?}");
    DEMO.replacen(old, new, 1)
}

/// The name of the record that a path of a file leads to; an offer's is its drink's and
/// container's. Empty where there is none.
fn name_at(file: &str, path: &str) -> String {
    let Ok(file) = serde_json::from_str::<serde_json::Value>(file) else { return String::new() };
    let record = path.split('.').next().unwrap_or_default().replace('[', "/").replace(']', "");
    let text = |value: &serde_json::Value, field: &str| value[field].as_str().map(str::to_string);
    let Some(record) = file.pointer(&format!("/{record}")).filter(|_| path.contains('[')) else { return String::new() };
    let called = |list: &str, field: &str| {
        let id = text(record, field)?;
        file[list].as_array()?.iter().find(|it| it["id"] == id.as_str()).and_then(|it| text(it, "name"))
    };
    let parts = || [called("drinks", "drink"), called("containers", "container")];
    text(record, "name").unwrap_or_else(|| parts().into_iter().flatten().collect::<Vec<_>>().join(", "))
}

/// JSON with each value on a line of its own, two blanks for each level.
fn indented(json: &str) -> String {
    let (mut text, mut level, mut quoted, mut escaped) = (String::new(), 0, false, false);
    let line = |text: &mut String, level: usize| text.push_str(&format!("\n{}", "  ".repeat(level)));
    for sign in json.chars() {
        if quoted {
            text.push(sign);
            quoted = escaped || sign != '"';
            escaped = sign == '\\' && !escaped;
            continue;
        }
        match sign {
            '"' => {
                quoted = true;
                text.push(sign);
            }
            '{' | '[' => {
                level += 1;
                text.push(sign);
                line(&mut text, level);
            }
            '}' | ']' => {
                level -= 1;
                if text.trim_end().ends_with(['{', '[']) {
                    text.truncate(text.trim_end().len());
                } else {
                    line(&mut text, level);
                }
                text.push(sign);
            }
            ',' => {
                text.push(sign);
                line(&mut text, level);
            }
            ':' => text.push_str(": "),
            sign if sign.is_whitespace() => {}
            sign => text.push(sign),
        }
    }
    text.push('\n');
    text
}
