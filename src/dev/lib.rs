//! The commands of the project's tool, `cargo dev`.

mod bench;
mod bundle;
mod checks;
#[cfg(test)]
mod dependencies;
mod faults;
mod finish;
mod first_words;
mod price;
mod run;
mod script;
mod serve;
pub mod site;
mod split;
mod spreadsheet;
mod style;
mod tools;
mod wasm;

use std::process::ExitCode;

const HELP: &str = "\
cargo dev COMMAND

  serve [--port N]  build the app and serve it on this machine and its network (port 8080)
  test              run every check: format, lints, documentation, tests, and the app in
                    Chromium, Firefox and WebKit
  bundle            write the site to publish to dist/, and print what it weighs
  bench             print the figures of the quality bars: weight and speed
  faults            try what must hold whatever goes wrong, and print how often it held;
                    --count N for N runs of each, --only T3 for one fault
  price BOOK.json   print the computed offers of a book file as CSV, as the app saves them
  help              print this text

  finish            called by Trunk at the end of each build, not by people

Missing tools are installed once: Trunk, wasm-bindgen and geckodriver for you only; Chromium,
Firefox, WebKitGTK and Xvfb by apt-get (for `test`, `faults` and `bench`). Where npm is, `bench`
fetches a spreadsheet engine to compare with, for you only. Each command announces what it
installs.
";

/// Does what the words after `cargo dev` ask for.
pub fn obey() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let outcome = match words.as_slice() {
        ["serve"] => serve::serve("8080"),
        ["serve", "--port", port] => serve::serve(port),
        ["test"] => checks::all(),
        ["bundle"] => bundle::bundle().map(drop),
        ["bench"] => bench::bench(),
        ["faults", asked @ ..] => faults::Asked::read(asked).and_then(|asked| faults::faults(&asked)),
        ["price", file] => price::price(file),
        ["finish"] => finish::finish(),
        [] | ["help" | "--help" | "-h"] => {
            print!("{HELP}");
            Ok(())
        }
        _ => Err(format!("There is no such command: cargo dev {}. `cargo dev help` lists them.", words.join(" "))),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::FAILURE
        }
    }
}
