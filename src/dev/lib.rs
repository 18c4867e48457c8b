//! The commands of the project's tool, `cargo dev`.

mod bench;
mod bundle;
mod checks;
#[cfg(test)]
mod dependencies;
mod faults;
mod finish;
mod first_words;
mod names;
mod page;
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

const ONE_FILE: &str = "`cargo dev price` takes one book file: cargo dev price my-book.json.";

const ONE_PORT: &str = "`cargo dev serve` takes a port or nothing: cargo dev serve --port 8081.";

/// Said of a command that is none, or that takes no words and got some.
fn no_such(command: &str) -> String {
    let known =
        HELP.lines().filter_map(|line| line.strip_prefix("  ")).any(|line| line.split(' ').next() == Some(command));
    if known {
        format!("`cargo dev {command}` takes nothing after it: cargo dev {command}.")
    } else {
        format!("cargo dev has no command “{command}”. See all of them: cargo dev help.")
    }
}

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
        ["price", ..] => Err(ONE_FILE.to_owned()),
        ["serve", ..] => Err(ONE_PORT.to_owned()),
        ["finish"] => finish::finish(),
        [] | ["help" | "--help" | "-h"] => {
            print!("{HELP}");
            Ok(())
        }
        [command, ..] => Err(no_such(command)),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::FAILURE
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_command_takes_is_said_with_an_example() {
        assert_eq!(no_such("prize"), "cargo dev has no command “prize”. See all of them: cargo dev help.");
        assert_eq!(no_such("bundle"), "`cargo dev bundle` takes nothing after it: cargo dev bundle.");
        assert_eq!(no_such("installs."), "cargo dev has no command “installs.”. See all of them: cargo dev help.");
    }
}
