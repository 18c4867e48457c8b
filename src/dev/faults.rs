//! `cargo dev faults`: what must hold whatever goes wrong, tried as often as is asked for.
//!
//! Each fault has a number. Its tests have that number in their names (`t03_`), wherever they stand: in src/store
//! and src/app, in tests/exchange and tests/faults, in tests/browser, or among the journeys.

use std::process::Command;

use crate::run::{Outcome, Tally, in_project, program, run_read, say};
use crate::serve::build;
use crate::tools::Tools;

/// Where tests of a fault stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Floor {
    /// Native: the engine, the store on its failing twin, files.
    Native,
    /// The store in a browser.
    Store,
    /// The built site in browsers.
    Site,
}

/// A fault: its number, what is done to the app, and where that is tried.
struct Fault {
    number: u32,
    what: &'static str,
    floors: &'static [Floor],
}

use Floor::{Native, Site, Store};

const FAULTS: [Fault; 18] = [
    fault(1, "browser killed at once after “Saved”", &[Site]),
    fault(2, "closed, reloaded or left right after typing; closed while it loads", &[Native, Site]),
    fault(3, "two or three tabs, edits in any order", &[Native, Store, Site]),
    fault(4, "old and new version open on one store", &[Store, Site]),
    fault(5, "opens slowly in one tab while the other edits", &[Native, Site]),
    fault(6, "no room left, at an edit and at an import", &[Native, Store, Site]),
    fault(7, "stored record cut off, with flipped bits, of wrong shape", &[Native, Store, Site]),
    fault(8, "storage cleared by the browser", &[Store, Site]),
    fault(10, "database connection closed under the app", &[Store]),
    fault(12, "files spoilt in many ways, taken in", &[Native]),
    fault(13, "versions one after the other, old files gone, pages of HTML in their place", &[Site]),
    fault(14, "script and wasm of different builds, wasm cut off", &[Site]),
    fault(15, "each kept file blocked in turn; updates with one and two tabs", &[Site]),
    fault(16, "download, share and clipboard refused", &[Site]),
    fault(17, "demo opened beside real books", &[Native, Site]),
    fault(18, "numbers as the world writes them", &[Native]),
    fault(19, "the same book taken in again", &[Native, Site]),
    fault(20, "one bad row in a list taken in", &[Native]),
];

const fn fault(number: u32, what: &'static str, floors: &'static [Floor]) -> Fault {
    Fault { number, what, floors }
}

/// What is asked for: how many runs, and of which fault; a few runs of all without.
#[derive(Debug, Default, PartialEq)]
pub struct Asked {
    count: Option<u32>,
    only: Option<u32>,
}

impl Asked {
    /// Reads the words after `cargo dev faults`.
    pub fn read(words: &[&str]) -> Outcome<Asked> {
        let mut asked = Asked::default();
        let mut words = words.iter();
        while let Some(word) = words.next() {
            let value = words.next().copied().unwrap_or_default();
            match *word {
                "--count" => {
                    let count = value.parse().ok().filter(|count| *count > 0);
                    asked.count = Some(count.ok_or(format!(
                        "“{value}” is no number of runs. Type 1 or more: cargo dev faults --count 500."
                    ))?);
                }
                "--only" => {
                    let number = value.strip_prefix('T').and_then(|number| number.parse().ok());
                    let known = number.filter(|number| FAULTS.iter().any(|fault| fault.number == *number));
                    asked.only =
                        Some(known.ok_or(format!(
                            "There is no fault “{value}”. Type its number: cargo dev faults --only T3."
                        ))?);
                }
                other => {
                    return Err(format!(
                        "`cargo dev faults` does not take “{other}”: cargo dev faults --only T3 --count 500."
                    ));
                }
            }
        }
        Ok(asked)
    }
}

/// Tries each fault and prints a table: the fault, how many runs, how many held.
pub fn faults(asked: &Asked) -> Outcome {
    let chosen: Vec<&Fault> =
        FAULTS.iter().filter(|fault| asked.only.is_none_or(|number| number == fault.number)).collect();
    let tools = Tools::for_testing()?;
    if chosen.iter().any(|fault| fault.floors.contains(&Site)) {
        build(&tools)?;
    }
    let mut table = Vec::new();
    let mut broken = 0;
    for fault in &chosen {
        say(format!("T{}: {}", fault.number, fault.what));
        let mut runs = Runs::default();
        for floor in fault.floors {
            let mut tests = tests_of(*floor, &tools, fault.number);
            if let Some(count) = asked.count {
                tests.env("BRIMWRIGHT_COUNT", count.to_string());
            }
            runs.add(&mut tests)?;
        }
        broken += u32::from(runs.held < runs.begun || runs.begun == 0);
        table.push(runs.row(fault));
    }
    println!("\n{:<4} {:>7} {:>7}  fault\n{}", "", "runs", "held", table.join("\n"));
    if broken == 0 { Ok(()) } else { Err(format!("{broken} of {} faults did not hold: see above.", chosen.len())) }
}

/// The tests of a fault on one floor.
fn tests_of(floor: Floor, tools: &Tools, number: u32) -> Command {
    let name = format!("t{number:02}_");
    match floor {
        Native => {
            let mut cargo = program("cargo");
            cargo.args(["test", "--locked", "--no-fail-fast", "--", &name, "--show-output"]);
            cargo
        }
        Store => tools.cargo_test_of_the_store(&[&name]),
        Site => {
            let mut cargo = tools.cargo_with_drivers(&[
                "test",
                "--locked",
                "--package",
                "brimwright-journeys",
                "--test",
                "journeys",
            ]);
            cargo.args(["--", &name, "--show-output"]).env("BRIMWRIGHT_SITE", in_project("dist"));
            cargo
        }
    }
}

/// Runs of a fault, as its tests counted them.
#[derive(Debug, Default, PartialEq)]
struct Runs {
    begun: u32,
    held: u32,
}

impl Runs {
    /// Runs the tests on one floor and adds what they counted. A test that counts nothing is one run.
    fn add(&mut self, tests: &mut Command) -> Outcome {
        let (mut tally, mut counted) = (Tally::default(), Runs::default());
        run_read(tests, |line| {
            tally.read(line);
            counted.read(line);
        })?;
        if counted == Runs::default() {
            counted = Runs { begun: tally.passed + tally.failed, held: tally.passed };
        } else if tally.failed > 0 && counted.held == counted.begun {
            // What did not hold came after the last run.
            counted.begun += tally.failed;
        }
        self.begun += counted.begun;
        self.held += counted.held;
        Ok(())
    }

    /// Reads a line of a test's output, such as "T3: 8 of 8 runs held".
    fn read(&mut self, line: &str) {
        let counts = || {
            let (_, counts) = line.strip_suffix(" runs held")?.split_once(": ")?;
            let (held, begun) = counts.split_once(" of ")?;
            Some((held.parse::<u32>().ok()?, begun.parse::<u32>().ok()?))
        };
        if let Some((held, begun)) = counts() {
            self.held += held;
            self.begun += begun;
        }
    }

    /// A row of the table.
    fn row(&self, fault: &Fault) -> String {
        format!("{:<4} {:>7} {:>7}  {}", format!("T{}", fault.number), self.begun, self.held, fault.what)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;
    use std::fs;
    use std::path::Path;

    #[test]
    fn what_is_asked_for_is_read_or_explained() {
        assert_eq!(Asked::read(&[]), Ok(Asked { count: None, only: None }));
        assert_eq!(Asked::read(&["--only", "T3", "--count", "500"]), Ok(Asked { count: Some(500), only: Some(3) }));
        let refused = [
            (["--count", "0"], "“0” is no number of runs. Type 1 or more: cargo dev faults --count 500."),
            (["--count", ""], "“” is no number of runs. Type 1 or more: cargo dev faults --count 500."),
            (["--only", "T9"], "There is no fault “T9”. Type its number: cargo dev faults --only T3."),
            (["--only", "3"], "There is no fault “3”. Type its number: cargo dev faults --only T3."),
            (["--often", "3"], "`cargo dev faults` does not take “--often”: cargo dev faults --only T3 --count 500."),
        ];
        for (words, sentence) in refused {
            assert_eq!(Asked::read(&words), Err(sentence.to_owned()));
        }
    }

    #[test]
    fn runs_are_counted_as_tests_say_them_else_by_tests() {
        let added = |lines: &str| {
            let mut runs = Runs::default();
            runs.add(program("printf").arg(lines)).map(|()| runs)
        };
        let said = "T3: 8 of 8 runs held\nT3: 1 of 2 runs held\ntest result: FAILED. 1 passed; 1 failed;\n";
        assert_eq!(added(said), Ok(Runs { begun: 10, held: 9 }));
        assert_eq!(added("test result: ok. 3 passed; 0 failed;\n"), Ok(Runs { begun: 3, held: 3 }));
        let after = "T3: 8 of 8 runs held\ntest result: FAILED. 0 passed; 1 failed;\n";
        assert_eq!(added(after), Ok(Runs { begun: 9, held: 8 }));
        assert_eq!(added("nothing\n"), Ok(Runs::default()));
    }

    /// Gathers the numbers of the tests in a folder, each with the floor that it is tried on.
    fn tests_in(folder: &Path, found: &mut BTreeSet<(u32, Floor)>) {
        for entry in fs::read_dir(folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                tests_in(&path, found);
                continue;
            }
            let stands_in = |folder: &str| path.starts_with(in_project(folder));
            let floor = if stands_in("tests/browser") {
                Store
            } else if stands_in("tests/journeys") || stands_in("tests/faults/in_browsers") {
                Site
            } else {
                Native
            };
            let text = fs::read_to_string(&path).unwrap_or_default();
            let numbers = text.split("fn t").skip(1).filter_map(|rest| rest.split_once('_')?.0.parse().ok());
            found.extend(numbers.map(|number| (number, floor)));
        }
    }

    #[test]
    fn every_test_of_a_fault_is_found_on_the_floors_of_its_number() {
        let mut found = BTreeSet::new();
        for folder in ["src", "tests"] {
            tests_in(&in_project(folder), &mut found);
        }
        let listed = FAULTS.iter().flat_map(|fault| fault.floors.iter().map(|floor| (fault.number, *floor)));
        assert_eq!(found, listed.collect::<BTreeSet<_>>());
    }
}
