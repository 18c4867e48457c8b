//! What a rule of the style that asks `:has()` is about.

use std::fs;

use crate::project;

/// A rule that asks what an element has is about an element of a name or a class: about any child, such as
/// `:first-child`, and browsers style the whole page anew whenever something is drawn in it. Paper is drawn once.
#[test]
fn a_rule_that_asks_what_is_inside_names_what_it_styles() {
    let all = fs::read_dir(project().join("style")).expect("the style").map(|entry| entry.expect("a file").path());
    let sheets = all.filter(|path| path.extension().is_some_and(|end| end == "css") && !path.ends_with("print.css"));
    let mut asked = 0;
    for path in sheets {
        let sheet = fs::read_to_string(&path).expect("a style sheet");
        let sheet: String =
            sheet.split("/*").map(|part| part.split_once("*/").map_or(part, |(_, rest)| rest)).collect();
        let heads = sheet.split(['{', '}', ';']).filter(|head| head.contains(":has("));
        for selector in heads.flat_map(selectors) {
            asked += 1;
            let subject = without_brackets(&selector);
            let subject = subject.rsplit([' ', '\n', '>', '+', '~']).next().unwrap_or_default();
            assert!(
                subject.starts_with(|first: char| first.is_ascii_alphabetic() || ".#[".contains(first))
                    || selector.trim_end().ends_with(')') && selector.contains(":is("),
                "{}: give a class to what `{}` styles",
                path.display(),
                selector.trim()
            );
        }
    }
    assert!(asked > 20, "{asked} selectors ask what is inside");
}

/// The selectors of a rule that ask what is inside; commas within brackets part none.
fn selectors(head: &str) -> Vec<String> {
    let (mut depth, mut all) = (0, vec![String::new()]);
    for letter in head.chars() {
        match letter {
            '(' => depth += 1,
            ')' => depth -= 1,
            _ => {}
        }
        match all.last_mut() {
            Some(_) if letter == ',' && depth == 0 => all.push(String::new()),
            Some(last) => last.push(letter),
            None => {}
        }
    }
    all.into_iter().filter(|selector| selector.contains(":has(")).collect()
}

/// A selector without what stands in brackets.
fn without_brackets(selector: &str) -> String {
    let mut depth = 0;
    let outside = selector.trim().chars().filter(|letter| {
        let was = depth;
        match letter {
            '(' => depth += 1,
            ')' => depth -= 1,
            _ => {}
        }
        was == 0 && depth == 0
    });
    outside.collect()
}
