//! The spreadsheet engine that the bench compares with: HyperFormula, under GPL-3.0. It is fetched into the
//! person's cache to be measured, and for nothing else: it is never in the repository, nor in what is published.

use std::fs;
use std::path::PathBuf;

use crate::run::{Outcome, in_project, program, run, say};
use crate::tools::{cache, on_path};

/// Where the bench's scripts and the list of what is fetched are.
const LISTED: &str = "tests/bench/spreadsheet";
/// What is fetched, and the checksum of each package.
const LISTS: [&str; 2] = ["package.json", "package-lock.json"];

/// The folder that the engine is in, fetched if it was not.
///
/// # Errors
/// A sentence that says why there is none: Node.js or npm is missing, or npm failed.
pub fn spreadsheet_engine() -> Outcome<PathBuf> {
    if let Some(sentence) = lacking(&|name| on_path(name).is_some()) {
        return Err(sentence);
    }
    let folder = cache()?.join("spreadsheet");
    let lists = LISTS.map(|name| (in_project(LISTED).join(name), folder.join(name)));
    let same = |(wanted, there): &(PathBuf, PathBuf)| fs::read(wanted).ok() == fs::read(there).ok();
    if lists.iter().all(same) && folder.join("node_modules/hyperformula").is_dir() {
        return Ok(folder);
    }
    say(format!("Fetching a spreadsheet engine to compare with into {}, once", folder.display()));
    let unwritten = |error| {
        format!(
            "{} cannot be written ({error}). Free up space, or set XDG_CACHE_HOME to another folder.",
            folder.display()
        )
    };
    fs::create_dir_all(&folder).map_err(unwritten)?;
    for (wanted, there) in &lists {
        fs::copy(wanted, there).map_err(unwritten)?;
    }
    run(
        program("npm").args(["ci", "--ignore-scripts", "--no-audit", "--no-fund"]).current_dir(&folder),
        "There is no comparison with a spreadsheet engine. Check the connection and try again.",
    )?;
    Ok(folder)
}

/// Which program is missing to fetch it and to run it, as a sentence.
fn lacking(is_there: &dyn Fn(&str) -> bool) -> Option<String> {
    let missing = ["node", "npm"].into_iter().find(|name| !is_there(name))?;
    Some(format!(
        "No comparison with a spreadsheet engine: there is no {missing} here. Install Node.js with npm (Debian: \
         `apt-get install nodejs npm`) to have it."
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_missing_for_the_comparison_is_said() {
        assert_eq!(lacking(&|_| true), None);
        let without = |missing| lacking(&|name| name != missing);
        let sentence = "No comparison with a spreadsheet engine: there is no npm here. Install Node.js with npm (Debian: \
                        `apt-get install nodejs npm`) to have it.";
        assert_eq!(without("npm").as_deref(), Some(sentence));
        assert_eq!(without("node"), Some(sentence.replacen("no npm", "no node", 1)));
    }

    #[test]
    fn the_engine_is_of_one_version_and_each_package_has_its_checksum() {
        let read = |name: &str| {
            let text = fs::read_to_string(in_project(LISTED).join(name)).unwrap();
            serde_json::from_str::<serde_json::Value>(&text).unwrap()
        };
        assert_eq!(read("package.json")["dependencies"]["hyperformula"], "3.5.0");
        let lock = read("package-lock.json");
        let packages = lock["packages"].as_object().unwrap();
        assert_eq!(packages["node_modules/hyperformula"]["version"], "3.5.0");
        for (name, package) in packages.iter().filter(|(name, _)| !name.is_empty()) {
            assert!(package["integrity"].as_str().is_some_and(|it| it.starts_with("sha512-")), "{name}");
        }
    }
}
