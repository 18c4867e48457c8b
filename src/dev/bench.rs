//! `cargo dev bench`: the figures of the quality bars.

use crate::bundle::bundle;
use crate::run::{Outcome, in_project, program, run, say};
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
    say("Timing the engine");
    run(program("cargo").args(["bench", "--locked", "--bench", "engine"]), MEND)?;
    say("Timing the app in a browser");
    run(
        program("cargo")
            .args(["bench", "--locked", "--package", "brimwright-journeys", "--bench", "browser"])
            .env("BRIMWRIGHT_SITE", in_project("dist")),
        MEND,
    )
}
