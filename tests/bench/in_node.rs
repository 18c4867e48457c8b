//! Our engine beside a spreadsheet engine, natively: Node against this bench.

use std::env;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

use brimwright::book::Book;
use brimwright::drink::ledger::Ledger;
use brimwright::exchange;

use crate::figure::{beside, millis, timed};
use crate::generated;
use crate::one_price::Priced;
use crate::spreadsheet::{FOLDER, Measured, Runs, set_wage};

const RUNS: Runs = Runs { builds: 10, rounds: 10, prices: generated::INGREDIENTS as usize, wages: 40 };

/// Prints how long both take for the same book, or why that is not known.
pub fn beside_a_spreadsheet(book: &Book) {
    let measured = match measured(book) {
        Ok(measured) => measured,
        Err(why) => return println!("no spreadsheet engine to compare with: {why}"),
    };
    RUNS.check(book, &measured.said);
    let mut priced = Priced::of(book.clone());
    let prices = (0..RUNS.rounds).flat_map(|round| priced.round(round)).map(|it| millis(it.time)).collect();
    beside("one price", prices, measured.times.price);
    let Priced { mut book, mut ledger, .. } = priced;
    let mut wage = |wage| {
        let edit = set_wage(&book, wage);
        let reprice = || {
            let applied = book.apply(&edit).expect("a wage");
            ledger.refresh(&book, &applied.touched)
        };
        millis(timed(reprice))
    };
    beside("the wage, every offer moved", RUNS.wages().map(&mut wage).collect(), measured.times.wage);
    let file = exchange::write(&book);
    let from_file = || millis(timed(|| Ledger::of(&exchange::read(&file).expect("it holds"))));
    let times = (0..RUNS.builds).map(|_| from_file()).collect();
    beside("whole book, read and computed", times, measured.times.build.clone());
    let times = (0..RUNS.builds * 10).map(|_| millis(timed(|| Ledger::of(&book)))).collect();
    beside("whole book, ours computed alone", times, measured.times.build);
}

/// Runs the spreadsheet engine in Node.
fn measured(book: &Book) -> Result<Measured, String> {
    let folder = env::var_os(FOLDER).ok_or(format!("{FOLDER} is not set; `cargo dev bench` fetches it with npm"))?;
    let job_file = Path::new(env!("CARGO_TARGET_TMPDIR")).join("spreadsheet.json");
    fs::write(&job_file, RUNS.job(book).to_string()).map_err(|error| format!("the job: {error}"))?;
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/bench/spreadsheet/in_node.js");
    let mut node = Command::new("node");
    node.arg(script).arg(folder).arg(job_file).stderr(Stdio::inherit());
    let output = node.output().map_err(|error| format!("node could not start ({error})"))?;
    if !output.status.success() {
        return Err(format!("node failed ({})", output.status));
    }
    serde_json::from_slice(&output.stdout).map_err(|error| format!("what node said cannot be read ({error})"))
}
