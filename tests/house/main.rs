//! The house is as it is drawn: every wing uses only those that the list allows, each of them earlier
//! in the list, and the map in DEVELOPERS.md says the same.

mod entered;
mod literals;
mod palette;
mod subjects;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// Each wing with those that it may look at. It may name those before
/// it only, so that there is no circle.
const WINGS: [(&str, &[&str]); 13] = [
    ("foundation", &[]),
    ("book", &["foundation"]),
    ("drink", &["foundation", "book"]),
    ("sizes", &["foundation", "book", "drink"]),
    ("buying", &["foundation", "book", "drink"]),
    ("counter", &["foundation", "book", "drink"]),
    ("working", &["foundation", "book", "drink", "sizes"]),
    ("store", &["foundation", "book"]),
    ("exchange", &["foundation", "book", "drink", "store"]),
    ("backup", &["foundation", "book", "store", "exchange"]),
    ("words", &["foundation", "book", "drink", "sizes", "buying", "counter", "working", "store", "exchange", "backup"]),
    ("app", &["foundation", "book", "drink", "store", "backup", "words"]),
    (
        "ui",
        &[
            "foundation",
            "book",
            "drink",
            "sizes",
            "buying",
            "counter",
            "working",
            "store",
            "exchange",
            "backup",
            "words",
            "app",
        ],
    ),
];

/// A way from one wing to another, as a line of a file goes it.
struct Way {
    from: String,
    to: String,
    place: String,
}

fn project() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// The files of the engine and the app, tests left out: those may look anywhere.
fn files(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().and_then(|name| name.to_str()).expect("a name");
        match path.is_dir() {
            true if name != "tests" => files(&path, found),
            false if name.ends_with(".rs") && name != "tests.rs" => found.push(path),
            _ => {}
        }
    }
}

/// What a file says outside of comments and of its own tests.
fn code(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let tests = text.find("#[cfg(test)]\nmod tests {").unwrap_or(text.len());
    let code = text.get(..tests).expect("a line begins there");
    code.lines().enumerate().filter(|(_, line)| !line.trim_start().starts_with("//"))
}

/// Every way between wings.
fn ways() -> Vec<Way> {
    let mut ways = Vec::new();
    for (wing, _) in WINGS {
        let mut found = Vec::new();
        files(&project().join("src").join(wing), &mut found);
        for file in found {
            let text = fs::read_to_string(&file).expect("a text");
            let file = file.strip_prefix(project()).expect("in the project").display().to_string();
            for (line, code) in code(&text) {
                for after in code.split("crate::").skip(1) {
                    let to: String = after.chars().take_while(|it| it.is_alphanumeric() || *it == '_').collect();
                    if to != wing {
                        ways.push(Way { from: wing.to_string(), to, place: format!("{file}:{}", line + 1) });
                    }
                }
            }
        }
    }
    ways
}

#[test]
fn every_wing_looks_only_where_it_may() {
    let allowed: BTreeMap<&str, &[&str]> = WINGS.into_iter().collect();
    let mut wrong = Vec::new();
    for Way { from, to, place } in ways() {
        let may = allowed[from.as_str()];
        // Macros of the crate stand at its root.
        if allowed.contains_key(to.as_str()) && !may.contains(&to.as_str()) {
            wrong.push(format!("{place}: {from} looks at {to}. It may look at {}.", may.join(", ")));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Numbers, money and measures that a person reads are formed in one place, so that a locale can be
/// put behind it.
#[test]
fn the_speaker_alone_forms_a_shown_number() {
    let shown = fs::read_to_string(project().join("src/foundation/measure/show.rs")).expect("a text");
    let names = shown.lines().filter_map(|line| line.strip_prefix("pub fn ")?.split('(').next());
    let names: Vec<&str> = names.collect();
    assert!(names.contains(&"show_money"), "{names:?}");
    let mut wrong = Vec::new();
    for (wing, _) in WINGS.into_iter().filter(|(wing, _)| *wing != "foundation") {
        let mut found = Vec::new();
        files(&project().join("src").join(wing), &mut found);
        for file in found.into_iter().filter(|file| !file.ends_with("words/speaker.rs")) {
            let text = fs::read_to_string(&file).expect("a text");
            let shows = |(_, code): &(usize, &str)| names.iter().any(|name| code.contains(name));
            wrong.extend(code(&text).filter(shows).map(|(line, _)| format!("{}:{}", file.display(), line + 1)));
        }
    }
    assert!(wrong.is_empty(), "Ask words::Speaker for it instead:\n{}", wrong.join("\n"));
}

#[test]
fn a_wing_comes_before_all_that_look_at_it() {
    for (place, (wing, looks_at)) in WINGS.iter().enumerate() {
        for other in *looks_at {
            let before = WINGS.iter().position(|(name, _)| name == other);
            assert!(
                before.is_some_and(|before| before < place),
                "{wing} looks at {other}, which does not come before it"
            );
        }
    }
}

#[test]
fn no_way_is_allowed_that_nobody_goes() {
    let gone: BTreeSet<(String, String)> = ways().into_iter().map(|way| (way.from, way.to)).collect();
    for (wing, looks_at) in WINGS {
        for other in looks_at {
            assert!(gone.contains(&(wing.to_string(), other.to_string())), "{wing} does not look at {other} any more");
        }
    }
}

#[test]
fn every_folder_of_the_source_is_a_wing() {
    let folders = fs::read_dir(project().join("src")).expect("the source");
    let folders = folders.map(|entry| entry.expect("an entry").path()).filter(|path| path.is_dir());
    let mut folders: Vec<String> =
        folders.map(|path| path.file_name().expect("a name").to_string_lossy().into_owned()).collect();
    folders.sort_unstable();
    // The developers' tool is a program of its own.
    folders.retain(|folder| folder != "dev");
    let mut wings: Vec<&str> = WINGS.iter().map(|(wing, _)| *wing).collect();
    wings.sort_unstable();
    assert_eq!(folders, wings);
}

#[test]
fn the_map_says_the_same() {
    let map = fs::read_to_string(project().join("DEVELOPERS.md")).expect("the map");
    for (wing, looks_at) in WINGS {
        let row = map.lines().find(|line| line.starts_with(&format!("| `{wing}` |")));
        let row = row.unwrap_or_else(|| panic!("DEVELOPERS.md has no row for {wing}"));
        let told = row.trim_end_matches('|').rsplit('|').next().expect("a last cell").trim();
        let expected = if looks_at.is_empty() { "nothing".to_string() } else { looks_at.join(", ") };
        assert_eq!(told, expected, "DEVELOPERS.md on {wing}");
    }
}

#[test]
fn what_the_map_names_is_there() {
    let map = fs::read_to_string(project().join("DEVELOPERS.md")).expect("the map");
    // What tests leave is there after they have run.
    let is_path =
        |name: &&str| name.contains('/') && !name.contains([' ', '{', '$', ':']) && !name.starts_with("target/");
    let missing = map.split('`').skip(1).step_by(2).filter(is_path).filter(|name| {
        let stands_in = |folder: &str| project().join(folder).join(name).exists();
        !["", "src", "src/foundation/measure"].into_iter().any(stands_in)
    });
    assert_eq!(missing.collect::<Vec<_>>(), Vec::<&str>::new());
}
