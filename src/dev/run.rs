//! Running other programs: said beforehand, shown while they run, explained when they fail.

use std::fmt::Display;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Command, ExitStatus, Stdio};

/// What went wrong, as a sentence that tells what to do.
pub type Outcome<T = ()> = Result<T, String>;

/// The project's folder, wherever `cargo dev` was called.
pub const PROJECT: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../..");

/// A path inside the project.
pub fn in_project(path: &str) -> PathBuf {
    Path::new(PROJECT).join(path)
}

/// Says what is done next.
pub fn say(text: impl Display) {
    println!("==> {text}");
}

/// A program to be run in the project's folder, without input.
pub fn program(name: impl AsRef<std::ffi::OsStr>) -> Command {
    let mut command = Command::new(name);
    command.current_dir(PROJECT).stdin(Stdio::null());
    command
}

/// Runs a program with its output shown; `mend` tells what to do when it fails.
pub fn run(command: &mut Command, mend: &str) -> Outcome {
    let status = command.status().map_err(|error| format!("{} could not start ({error}). {mend}", shown(command)))?;
    if status.success() { Ok(()) } else { Err(format!("{} failed ({status}). {mend}", shown(command))) }
}

/// Tests that passed and failed, as their runners counted them.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Tally {
    /// Tests that passed.
    pub passed: u32,
    /// Tests that failed.
    pub failed: u32,
}

impl Tally {
    /// Adds what a line of a test runner's output reports; other lines report nothing.
    pub fn read(&mut self, line: &str) {
        let Some((_, counts)) = line.split_once("test result: ") else {
            return;
        };
        for count in counts.split(['.', ';']) {
            match count.trim().split_once(' ') {
                Some((number, "passed")) => self.passed += number.parse().unwrap_or(0),
                Some((number, "failed")) => self.failed += number.parse().unwrap_or(0),
                _ => {}
            }
        }
    }
}

/// Runs a test runner with its output shown and counted into `tally`.
pub fn run_counted(command: &mut Command, tally: &mut Tally, mend: &str) -> Outcome {
    let before = *tally;
    let status = run_read(command, |line| tally.read(line))?;
    if !status.success() {
        return Err(format!("{} failed ({status}). {mend}", shown(command)));
    }
    if *tally == before {
        return Err(format!("{} ran no test at all. Look at why it found none.", shown(command)));
    }
    Ok(())
}

/// Runs a program with its output shown and read line by line; says how it ended.
pub fn run_read(command: &mut Command, mut read: impl FnMut(&str)) -> Outcome<ExitStatus> {
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{} could not start ({error}).", shown(command)))?;
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).split(b'\n') {
            let line = line.map_err(|error| format!("{}: {error}.", shown(command)))?;
            let line = String::from_utf8_lossy(&line);
            println!("{line}");
            read(&line);
        }
    }
    child.wait().map_err(|error| format!("{}: {error}.", shown(command)))
}

/// The command as a person would type it, without the folders of the program.
fn shown(command: &Command) -> String {
    let name = Path::new(command.get_program()).file_name().unwrap_or_default();
    let mut words = vec![format!("`{}", name.to_string_lossy())];
    words.extend(command.get_args().map(|word| word.to_string_lossy().into_owned()));
    words.join(" ") + "`"
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_of_every_runner_are_added_up() {
        let mut tally = Tally::default();
        tally.read("running 3 tests");
        tally.read("test result: ok. 12 passed; 0 failed; 0 ignored; 0 measured; 0 filtered out; finished in 0.00s");
        tally.read("test result: FAILED. 1 passed; 2 failed; 0 ignored; 0 filtered out");
        assert_eq!(tally, Tally { passed: 13, failed: 2 });
    }

    #[test]
    fn a_failure_names_the_command_and_what_to_do() {
        assert_eq!(
            run(program("/bin/sh").args(["-c", "exit 3"]), "Try again."),
            Err("`sh -c exit 3` failed (exit status: 3). Try again.".to_owned())
        );
    }

    #[test]
    fn a_run_without_tests_is_a_failure() {
        assert_eq!(
            run_counted(program("sh").args(["-c", "echo done"]), &mut Tally::default(), ""),
            Err("`sh -c echo done` ran no test at all. Look at why it found none.".to_owned())
        );
    }
}
