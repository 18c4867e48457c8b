//! Dependencies: their licenses, where they come from, no two versions of one in the app, and none
//! that nobody uses. Cargo says what there is.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::Stdio;

use serde_json::{Value, json};
use spdx::{Expression, ParseMode};

use crate::run::{Outcome, program};
use crate::tools::WASM;

/// Licenses that ask for no more than that they are named (MPL-2.0: that changes to its own files
/// are shown).
const LICENSES: [&str; 11] = [
    "0BSD",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "MIT",
    "MIT-0",
    "MPL-2.0",
    "Unicode-3.0",
    "Zlib",
];

/// The registry that every package comes from, by the name that Cargo gives it.
const REGISTRY: &str = "registry+https://github.com/rust-lang/crates.io-index";

/// What stands twice in the app, and why nothing is done about it.
const TWICE: [(&str, &str); 2] = [
    ("gloo-utils", "Leptos's server functions ask for an older one than gloo-storage; the app calls neither"),
    ("thiserror", "Leptos's server functions ask for an older one; it is gone before the app is linked"),
];

/// Looks through the dependencies of the whole workspace, as they are locked.
fn check() -> Outcome {
    let metadata = said_by(&["metadata", "--locked", "--format-version", "1"])?;
    let metadata: Value = serde_json::from_str(&metadata).map_err(|error| format!("cargo metadata: {error}."))?;
    let packages = list(&metadata["packages"]);
    let members: Vec<&Value> = packages.iter().filter(|package| package["source"].is_null()).collect();
    let mut faults: Vec<String> = packages.iter().filter_map(license_fault).collect();
    faults.extend(packages.iter().filter_map(source_fault));
    faults.extend(twice(&said_by(&[
        "tree",
        "--locked",
        "--package",
        "brimwright",
        "--target",
        WASM,
        "--edges",
        "normal,no-proc-macro",
        "--duplicates",
        "--depth",
        "0",
        "--prefix",
        "none",
    ])?));
    let folders: Vec<&Path> = members.iter().filter_map(|member| folder_of(member)).collect();
    for member in members {
        faults.extend(unused(member, &folders)?);
    }
    if faults.is_empty() { Ok(()) } else { Err(faults.join("\n")) }
}

/// What Cargo says when it is asked so.
fn said_by(words: &[&str]) -> Outcome<String> {
    let output = program("cargo").args(words).stderr(Stdio::inherit()).output();
    let output = output.map_err(|error| format!("cargo could not start ({error})."))?;
    if !output.status.success() {
        return Err(format!("`cargo {}` failed ({}).", words.join(" "), output.status));
    }
    String::from_utf8(output.stdout).map_err(|_| format!("`cargo {}` did not answer in UTF-8.", words.join(" ")))
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn text<'a>(value: &'a Value, field: &str) -> &'a str {
    value[field].as_str().unwrap_or_default()
}

/// What is wrong with the license of a package, if anything is.
fn license_fault(package: &Value) -> Option<String> {
    let (name, license) = (text(package, "name"), text(package, "license"));
    let Ok(expression) = Expression::parse_mode(license, ParseMode::LAX) else {
        return Some(format!("{name} has no license that can be read: “{license}”. Leave it out."));
    };
    let taken = expression.evaluate(|asked| asked.license.id().is_some_and(|id| LICENSES.contains(&id.name)));
    (!taken).then(|| format!("{name} is under {license}, which LICENSES in src/dev/dependencies.rs does not allow."))
}

/// What is wrong with where a package comes from, if anything is.
fn source_fault(package: &Value) -> Option<String> {
    let source = package["source"].as_str()?;
    (source != REGISTRY).then(|| format!("{} comes from {source}, not from crates.io.", text(package, "name")))
}

/// The packages that stand twice in the app without a reason, and the reasons that are no longer
/// needed.
fn twice(tree: &str) -> Vec<String> {
    let found: BTreeSet<&str> = tree.lines().filter_map(|line| line.split(' ').next()).collect();
    let found: BTreeSet<&str> = found.into_iter().filter(|name| !name.is_empty()).collect();
    let known: BTreeSet<&str> = TWICE.iter().map(|(name, _)| *name).collect();
    let new = found.difference(&known).map(|name| {
        format!("The app has two versions of {name}: ask for one, or say in TWICE in src/dev/dependencies.rs why not.")
    });
    let gone = known.difference(&found).map(|name| {
        format!("The app no longer has two versions of {name}: take it out of TWICE in src/dev/dependencies.rs.")
    });
    new.chain(gone).collect()
}

/// The dependencies of a member that its source never names.
fn unused(member: &Value, folders: &[&Path]) -> Outcome<Vec<String>> {
    let name = text(member, "name");
    let others: Vec<&Path> = folders.iter().copied().filter(|folder| Some(*folder) != folder_of(member)).collect();
    let mut source = String::new();
    for target in list(&member["targets"]) {
        let main = Path::new(text(target, "src_path"));
        if let Some(folder) = main.parent() {
            gather(folder, &others, &mut source)?;
        }
    }
    let dependencies = list(&member["dependencies"]).iter();
    let names = dependencies.map(|it| it["rename"].as_str().unwrap_or_else(|| text(it, "name")));
    let unused = names.filter(|dependency| !is_named(&dependency.replace('-', "_"), &source));
    Ok(unused.map(|it| format!("{name} depends on {it} and never uses it: take it out of its Cargo.toml.")).collect())
}

/// The folder that a member of the workspace is in.
fn folder_of(member: &Value) -> Option<&Path> {
    Path::new(text(member, "manifest_path")).parent()
}

/// Adds every Rust file of a folder to `source`, but those of the other members.
fn gather(folder: &Path, others: &[&Path], source: &mut String) -> Outcome {
    let unread = |error| format!("{} cannot be read: {error}.", folder.display());
    for entry in fs::read_dir(folder).map_err(unread)? {
        let path = entry.map_err(unread)?.path();
        if path.is_dir() {
            if !others.contains(&path.as_path()) {
                gather(&path, others, source)?;
            }
        } else if path.extension().is_some_and(|end| end == "rs") {
            source.push_str(&fs::read_to_string(&path).map_err(unread)?);
        }
    }
    Ok(())
}

/// Whether source names a crate: before `::`, or in a `use` of the crate itself.
fn is_named(krate: &str, source: &str) -> bool {
    let starts = |at: usize| !source[..at].ends_with(|before: char| before.is_alphanumeric() || before == '_');
    source.match_indices(krate).any(|(at, _)| {
        let rest = &source[at + krate.len()..];
        starts(at) && (rest.starts_with("::") || (rest.starts_with(';') && source[..at].ends_with("use ")))
    })
}

#[test]
fn the_dependencies_of_the_workspace_are_in_order() {
    check().unwrap_or_else(|faults| panic!("{faults}"));
}

#[test]
fn a_license_is_allowed_if_one_that_it_offers_is() {
    let fault = |license| license_fault(&json!({ "name": "a", "license": license }));
    for allowed in ["MIT", "MIT/GPL-2.0", "Apache-2.0 WITH LLVM-exception OR GPL-2.0", "(MIT OR ISC) AND Zlib"] {
        assert_eq!(fault(allowed), None, "{allowed}");
    }
    let refused = "a is under GPL-2.0-only AND MIT, which LICENSES in src/dev/dependencies.rs does not allow.";
    assert_eq!(fault("GPL-2.0-only AND MIT"), Some(refused.to_owned()));
    let unread = "a has no license that can be read: “”. Leave it out.";
    assert_eq!(fault(""), Some(unread.to_owned()));
}

#[test]
fn packages_come_from_one_registry_or_from_here() {
    let fault = |source: Value| source_fault(&json!({ "name": "a", "source": source }));
    assert_eq!(fault(Value::Null), None);
    assert_eq!(fault(REGISTRY.into()), None);
    let refused = "a comes from git+https://example.com/a, not from crates.io.";
    assert_eq!(fault("git+https://example.com/a".into()), Some(refused.to_owned()));
}

#[test]
fn what_stands_twice_has_a_reason_or_is_named() {
    assert_eq!(
        twice("gloo-utils v0.2.0\n\ngloo-utils v0.3.0\n\nrand v0.8.8\nrand v0.9.5\n"),
        [
            "The app has two versions of rand: ask for one, or say in TWICE in src/dev/dependencies.rs why not.",
            "The app no longer has two versions of thiserror: take it out of TWICE in src/dev/dependencies.rs.",
        ]
    );
}

#[test]
fn a_crate_is_used_where_its_own_name_stands() {
    assert!(is_named("serde", "use serde::Serialize;") && is_named("plums", "let it = plums::ripe()"));
    assert!(is_named("plums", "use plums;"));
    assert!(!is_named("serde", "use serde_json::{Value, json}; my_serde::read(); // serde is not used"));
}
