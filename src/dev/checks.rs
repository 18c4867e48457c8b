//! `cargo dev test`: every check, in order, up to the first that fails.

use std::process::Command;
use std::time::Instant;

use crate::run::{Outcome, Tally, in_project, program, run, run_counted, say};
use crate::serve::build;
use crate::tools::{Tools, WASM};

/// On how many cases a property is tried: all, where plain `cargo test` tries some.
const ALL_CASES: &str = "256";

const MEND_LINTS: &str = "Mend what is said above, then run `cargo dev test` again.";
const MEND_TESTS: &str = "Mend what the tests above say, then run `cargo dev test` again.";

/// Runs every check. The last line counts the tests.
pub fn all() -> Outcome {
    let start = Instant::now();
    let mut tally = Tally::default();
    let outcome = in_order(&mut tally);
    if outcome.is_ok() {
        say(format!("Every check passed in {} s", start.elapsed().as_secs()));
    } else if tally.failed == 0 {
        // A step that is no test, or broke before it could count.
        tally.failed = 1;
    }
    let counts = format!("{} passed, {} failed", tally.passed, tally.failed);
    match outcome {
        Ok(()) => println!("{counts}"),
        Err(sentence) => return Err(format!("{sentence}\n{counts}")),
    }
    Ok(())
}

fn in_order(tally: &mut Tally) -> Outcome {
    say("Checking the format");
    run(&mut cargo(&["fmt", "--check"]), "Run `cargo fmt`, then `cargo dev test` again.")?;

    let tools = Tools::for_testing()?;

    say("Linting the native half");
    run(&mut cargo(&["clippy", "--locked", "--workspace", "--all-targets", "--", "-D", "warnings"]), MEND_LINTS)?;
    say("Linting the app");
    run(
        cargo(&["clippy", "--locked", "--target", WASM, "--lib"])
            .args(["--bin", "brimwright", "--test", "browser"])
            .args(["--", "-D", "warnings"]),
        MEND_LINTS,
    )?;

    say("Reading the documentation");
    run(cargo(&["doc", "--locked", "--no-deps"]).env("RUSTDOCFLAGS", "-D warnings"), MEND_LINTS)?;

    say("Testing the engine");
    run_counted(cargo(&["test", "--locked"]).env("PROPTEST_CASES", ALL_CASES), tally, MEND_TESTS)?;
    say("Testing this tool, and what the project depends on");
    run_counted(&mut cargo(&["test", "--locked", "--package", "brimwright-dev"]), tally, MEND_TESTS)?;
    say("Testing in a browser");
    run_counted(&mut tools.cargo_test_of_the_store(&[]), tally, MEND_TESTS)?;

    build(&tools)?;
    say("Walking through the app in three browsers");
    run_counted(
        tools
            .cargo_with_drivers(&["test", "--locked", "--package", "brimwright-journeys", "--test", "journeys"])
            .env("BRIMWRIGHT_SITE", in_project("dist")),
        tally,
        "Mend what the journeys above say (pictures are in target/journeys), then run \
         `cargo dev test` again.",
    )
}

fn cargo(words: &[&str]) -> Command {
    let mut cargo = program("cargo");
    cargo.args(words);
    cargo
}
