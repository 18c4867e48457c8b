//! `cargo dev bundle`: the site to publish, and what it weighs.

use std::fmt;
use std::fs;
use std::io::Write;

use brotli::enc::BrotliEncoderParams;
use brotli::enc::backward_references::BrotliEncoderMode;

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
            let small = brotli(&raw, is_in_first_load(&name))
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

/// Block sizes, as powers of two or as the encoder sees fit, and what the data is taken for. Which of them makes a
/// file smallest shows only by trying: a wasm file is smaller by a quarter of a percent in short blocks.
const WAYS: [(i32, BrotliEncoderMode); 4] = [
    (0, BrotliEncoderMode::BROTLI_MODE_GENERIC),
    (16, BrotliEncoderMode::BROTLI_MODE_GENERIC),
    (16, BrotliEncoderMode::BROTLI_MODE_FONT),
    (17, BrotliEncoderMode::BROTLI_MODE_FONT),
];

/// Brotli (RFC 7932) at its highest quality, in the smallest of several ways; in the first of them alone where nobody
/// waits for the file.
fn brotli(raw: &[u8], is_waited_for: bool) -> std::io::Result<Vec<u8>> {
    let mut smallest: Option<Vec<u8>> = None;
    for (lgblock, mode) in WAYS.into_iter().take(if is_waited_for { WAYS.len() } else { 1 }) {
        let params = BrotliEncoderParams { quality: 11, lgwin: 22, lgblock, mode, ..Default::default() };
        let mut writer = brotli::CompressorWriter::with_params(Vec::new(), 4096, &params);
        writer.write_all(raw)?;
        let small = writer.into_inner();
        if smallest.as_ref().is_none_or(|smallest| small.len() < smallest.len()) {
            smallest = Some(small);
        }
    }
    Ok(smallest.unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use std::io::Read;

    use super::*;

    #[test]
    fn what_is_made_smaller_is_the_same_again() {
        // The sources of this tool, long enough for several blocks.
        let raw = [include_str!("bundle.rs"), include_str!("tools.rs"), include_str!("names.rs")].concat().repeat(9);
        let small = brotli(raw.as_bytes(), true).unwrap();
        assert!(small.len() < raw.len() / 9);
        let mut again = String::new();
        brotli::Decompressor::new(small.as_slice(), 4096).read_to_string(&mut again).unwrap();
        assert_eq!(again, raw);
    }
}
