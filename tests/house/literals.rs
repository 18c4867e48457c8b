//! No text that a person reads stands in the code: texts have keys, and each key is used.

use std::collections::BTreeSet;
use std::fs;

use proc_macro2::{Delimiter, TokenStream, TokenTree};

use super::{files, project};

/// The wings that say something to people.
const SAYING: [&str; 3] = ["src/ui", "src/app", "src/words"];

/// Attributes of elements and fields of structures whose values nobody reads.
const UNREAD: [&str; 37] = [
    "accept",
    "allow",
    "autocapitalize",
    "autocomplete",
    "cfg",
    "class",
    "current",
    "d",
    "enterkeyhint",
    "expect",
    "for",
    "height",
    "href",
    "id",
    "inputmode",
    "key",
    "kind",
    "live",
    "name",
    "path",
    "points",
    "preserveAspectRatio",
    "reason",
    "rel",
    "role",
    "rows",
    "scope",
    "sizes",
    "spellcheck",
    "style",
    "tabindex",
    "transform",
    "type",
    "viewBox",
    "width",
    "x",
    "y",
];

/// Literals that are no texts: our own name, names of the browser's standards (objects, keys, errors,
/// kinds of keyboards), the English months natively, names for debugging, and what is looked for in
/// what serde says.
const NO_TEXTS: [&str; 51] = [
    "is not a temperature",
    "invalid type: boolean",
    "NotFoundError",
    "NotAllowedError",
    "QuotaExceededError",
    "NoModificationAllowedError",
    "text",
    "decimal",
    "Brimwright",
    "Intl",
    "DisplayNames",
    "Locale",
    "The texts of the first screen are not of this build.",
    "ArrowLeft",
    "ArrowRight",
    "ArrowUp",
    "ArrowDown",
    "Home",
    "End",
    "Enter",
    "Escape",
    "AbortError",
    "Library",
    "Jan",
    "Feb",
    "Mar",
    "Apr",
    "May",
    "Jun",
    "Jul",
    "Aug",
    "Sep",
    "Oct",
    "Nov",
    "Dec",
    "input, select, textarea, dialog *",
    ".price-search input",
    "(min-width: 68.75rem)",
    "(min-width: 45rem)",
    "is not an amount",
    "is not a length",
    "is not a day",
    "is not a currency",
    "is not a plain decimal",
    "is not an id",
    "\\\" is not ",
    "unknown variant",
    "cup or bottle",
    "missing field",
    "unknown field",
    "duplicate field",
];

/// A literal, and where it stands.
struct Literal {
    text: String,
    line: usize,
    /// It is drawn as it stands.
    drawn: bool,
}

/// The string literals of some tokens; attributes and tests are left out.
fn literals(tokens: TokenStream, in_view: bool, found: &mut Vec<Literal>) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    let is_sign = |place: Option<usize>, sign: char| {
        place
            .and_then(|place| tokens.get(place))
            .is_some_and(|token| matches!(token, TokenTree::Punct(it) if it.as_char() == sign))
    };
    let name = |place: Option<usize>| match place.and_then(|place| tokens.get(place)) {
        Some(TokenTree::Ident(name)) => name.to_string(),
        _ => String::new(),
    };
    let mut place = 0;
    while let Some(token) = tokens.get(place) {
        let before = |steps: usize| place.checked_sub(steps);
        match token {
            TokenTree::Punct(sign) if sign.as_char() == '#' => {
                let of_tests = matches!(tokens.get(place + 1), Some(TokenTree::Group(group)) if group.to_string().contains("cfg (test)"));
                place += if is_sign(Some(place + 1), '!') { 2 } else { 1 };
                if of_tests {
                    // The item that follows: up to its braces or its semicolon.
                    while let Some(token) = tokens.get(place) {
                        let ends = matches!(token, TokenTree::Group(group) if group.delimiter() == Delimiter::Brace)
                            || is_sign(Some(place), ';');
                        if ends {
                            break;
                        }
                        place += 1;
                    }
                }
            }
            TokenTree::Group(group) => {
                let alone = group.delimiter() == Delimiter::Brace && group.stream().into_iter().count() == 1;
                let view = in_view && alone || name(before(2)) == "view" && is_sign(before(1), '!');
                literals(group.stream(), view, found);
            }
            TokenTree::Literal(literal) => {
                let unread = is_sign(before(1), '=') && UNREAD.contains(&name(before(2)).as_str())
                    || is_sign(before(1), ':') && UNREAD.contains(&name(before(2)).as_str());
                let drawn = in_view && !is_sign(before(1), '=');
                if let Some(text) = literal.to_string().strip_prefix('"').and_then(|text| text.strip_suffix('"'))
                    && !unread
                {
                    found.push(Literal { text: text.into(), line: literal.span().start().line, drawn });
                }
            }
            _ => {}
        }
        place += 1;
    }
}

/// A format without what is filled in.
fn without_placeholders(text: &str) -> String {
    let mut depth = 0;
    let kept = text.chars().filter(|sign| {
        match sign {
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => return depth == 0,
        }
        false
    });
    kept.collect()
}

/// Whether a literal reads like a text: two words, or one that begins with a capital letter. Names
/// of classes and drawings are none.
fn reads_like_a_text(text: &str) -> bool {
    let plain = without_placeholders(text);
    let words: Vec<&str> = plain.split_whitespace().collect();
    let classes = plain.contains('-')
        && words.iter().all(|word| {
            word.chars().all(|sign| "-".contains(sign) || sign.is_ascii_lowercase() || sign.is_ascii_digit())
        });
    if classes || plain.trim_start().starts_with('<') {
        return false;
    }
    let is_word = |word: &&str| {
        let letters = word.trim_matches(|sign: char| !sign.is_alphabetic());
        letters.chars().count() > 1 && letters.chars().all(|sign| sign.is_alphabetic() || "'’-".contains(sign))
    };
    let capital = |word: &str| {
        let mut signs = word.chars();
        signs.next().is_some_and(char::is_uppercase) && signs.next().is_some_and(char::is_lowercase)
    };
    words.iter().filter(|word| is_word(word)).count() > 1 || words.iter().any(|word| is_word(word) && capital(word))
}

#[test]
fn no_text_stands_in_the_code() {
    let mut found = Vec::new();
    for wing in SAYING {
        let mut paths = Vec::new();
        files(&project().join(wing), &mut paths);
        assert!(!paths.is_empty(), "no files in {wing}");
        // What the build does with the tables speaks to engineers.
        paths.retain(|path| !["build.rs", "compile.rs"].iter().any(|name| path.ends_with(name)));
        for path in paths {
            let code = fs::read_to_string(&path).expect("a file");
            let tokens: TokenStream = code.parse().expect("Rust");
            let mut here = Vec::new();
            literals(tokens, false, &mut here);
            let shown = path.strip_prefix(project()).expect("a path of the project").display().to_string();
            for Literal { text, line, drawn } in here {
                let has_letters = text.chars().any(char::is_alphabetic) && !text.starts_with("\\u");
                if (drawn && has_letters || reads_like_a_text(&text)) && !NO_TEXTS.contains(&text.as_str()) {
                    found.push(format!("{shown}:{line}: {text:?}"));
                }
            }
        }
    }
    assert!(found.is_empty(), "{} texts without a key:\n{}", found.len(), found.join("\n"));
}

/// The keys that a file says: what stands behind `say!(`, as "file::key". Where a macro says keys
/// of a file (`say!(book::$key)`), every word of the code counts as one.
fn said(code: &str, found: &mut BTreeSet<String>) {
    let is_key = |sign: char| sign.is_alphanumeric() || "_:".contains(sign);
    for part in code.split("say!(").skip(1) {
        let key: String = part.trim_start().chars().take_while(|sign| is_key(*sign)).collect();
        if part[key.len()..].starts_with('$') {
            found.extend(code.split(|sign| !is_key(sign)).map(|word| format!("{key}{word}")));
        }
        found.insert(key);
    }
}

#[test]
fn every_key_is_used() {
    let mut used = BTreeSet::new();
    let mut paths = Vec::new();
    for wing in SAYING {
        files(&project().join(wing), &mut paths);
    }
    for path in paths {
        said(&fs::read_to_string(path).expect("a file"), &mut used);
    }
    // The page says some before the app is here.
    for name in ["index.html", "manifest.webmanifest"] {
        let page = fs::read_to_string(project().join("public").join(name)).expect("a page");
        used.extend(page.split(['"', '{', '}']).filter(|part| part.contains("::")).map(str::to_string));
    }
    let mut unused = Vec::new();
    for entry in fs::read_dir(project().join("public/texts/en-US")).expect("the tables").flatten() {
        let path = entry.path();
        let file = path.file_stem().and_then(|name| name.to_str()).expect("a name").replace('-', "_");
        for line in fs::read_to_string(&path).expect("a table").lines() {
            let Some((key, _)) = line.split_once(" =") else { continue };
            let is_key = key.starts_with(|sign: char| sign.is_ascii_lowercase()) && !key.contains(' ');
            let key = format!("{file}::{}", key.replace('-', "_"));
            if is_key && !used.contains(&key) {
                unused.push(key);
            }
        }
    }
    assert!(unused.is_empty(), "{} keys that nothing says: {}", unused.len(), unused.join(", "));
}
