//! `cargo dev bundle`: the site to publish, and what it weighs.

use std::fmt;
use std::fs;
use std::io::Write;

use crate::finish::{files_in, is_in_first_load, is_kept_offline};
use crate::run::{Outcome, in_project, say};
use crate::serve::build;
use crate::site::with_suffix;
use crate::tools::Tools;

/// Kinds of file that brotli makes smaller.
const COMPRESSIBLE: [&str; 8] = ["html", "css", "js", "wasm", "json", "webmanifest", "svg", "txt"];

/// Builds the site into dist/ with a brotli twin beside each file it makes smaller. Returns the
/// weight of the first load as sent, in bytes: all that is fetched before the first screen can be
/// used.
pub fn bundle() -> Outcome<usize> {
    build(&Tools::for_building()?)?;
    say("Compressing dist/");
    let site = in_project("dist");
    let (mut first, mut later) = (Weight::default(), Weight::default());
    println!("{:<36} {:>10} {:>10}", "file", "bytes", "brotli");
    for name in files_in(&site)? {
        let path = site.join(&name);
        let raw = fs::read(&path)
            .map_err(|error| format!("{name} cannot be read ({error}). Run `cargo dev bundle` again."))?;
        let mut weight = Weight { raw: raw.len(), sent: raw.len() };
        if COMPRESSIBLE.iter().any(|end| name.ends_with(&format!(".{end}"))) {
            let small = brotli(&raw)
                .map_err(|error| format!("{name} cannot be made smaller ({error}). Run `cargo dev bundle` again."))?;
            weight.sent = small.len();
            fs::write(with_suffix(&path, ".br"), small)
                .map_err(|error| format!("{name}.br cannot be written ({error}). Run `cargo dev bundle` again."))?;
        }
        let when = match () {
            () if is_in_first_load(&name) => {
                first.add(weight);
                ""
            }
            () if is_kept_offline(&name) => {
                later.add(weight);
                "  after the first screen, kept offline"
            }
            () => "  not for the app",
        };
        println!("{name:<36} {weight}{when}");
    }
    println!("{:<36} {first}", "first load");
    println!("{:<36} {later}", "after the first screen");
    Ok(first.sent)
}

/// Bytes on the disk and as sent.
#[derive(Clone, Copy, Default)]
struct Weight {
    raw: usize,
    sent: usize,
}

impl Weight {
    fn add(&mut self, other: Weight) {
        self.raw += other.raw;
        self.sent += other.sent;
    }
}

impl fmt::Display for Weight {
    fn fmt(&self, form: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(form, "{:>10} {:>10}", self.raw, self.sent)
    }
}

/// Brotli (RFC 7932) at its highest quality.
fn brotli(raw: &[u8]) -> std::io::Result<Vec<u8>> {
    let mut writer = brotli::CompressorWriter::new(Vec::new(), 4096, 11, 22);
    writer.write_all(raw)?;
    writer.flush()?;
    Ok(writer.into_inner())
}
