//! `cargo dev bench`: the figures of the quality bars.

use crate::bundle::bundle;
use crate::run::{Outcome, in_project, program, run, say};
use crate::spreadsheet::spreadsheet_engine;
use crate::tools::Tools;

/// First load, all files, brotli, in bytes.
const BAR: usize = 250_000;
const AIM: usize = 150_000;

const MEND: &str = "Mend what is said above, then run the same command again.";

/// Prints the weight of the first load, and the speed of the engine and of the app in a browser.
pub fn bench() -> Outcome {
    Tools::for_testing()?;
    let weight = bundle()?;
    let verdict = match weight {
        _ if weight <= AIM => "within the aim",
        _ if weight <= BAR => "within the bar",
        _ => "over the bar",
    };
    say(format!("First load: {weight} bytes by brotli, {verdict} (bar {BAR}, aim {AIM})"));
    let spreadsheet = spreadsheet_engine().inspect_err(|why| say(why)).ok();
    let timed = |words: &[&str]| {
        let mut cargo = program("cargo");
        cargo.args(["bench", "--locked"]).args(words).env("BRIMWRIGHT_SITE", in_project("dist"));
        // Where it is not set, the bench goes without.
        match &spreadsheet {
            Some(folder) => cargo.env("BRIMWRIGHT_SPREADSHEET", folder),
            None => cargo.env_remove("BRIMWRIGHT_SPREADSHEET"),
        };
        run(&mut cargo, MEND)
    };
    say("Timing the engine");
    timed(&["--bench", "engine"])?;
    say("Timing the app in a browser");
    timed(&["--package", "brimwright-journeys", "--bench", "browser"])
}
