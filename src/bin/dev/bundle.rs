//! `cargo dev bundle`: the site to publish, and what it weighs.

use std::fs;
use std::io::Write;

use super::finish::{OPTIMISER, files_in, is_kept_offline};
use super::run::{Outcome, in_project, run, say};
use super::site::with_suffix;
use super::tools::{Tools, on_path};

/// Kinds of file that brotli makes smaller.
const COMPRESSIBLE: [&str; 7] = ["html", "css", "js", "wasm", "json", "webmanifest", "svg"];

/// Builds the site into dist/ with a brotli twin beside each file it makes smaller. Returns the
/// weight of all files as sent, in bytes: what a first load fetches.
pub fn bundle() -> Outcome<usize> {
    let tools = Tools::for_building()?;
    let mut trunk = tools.trunk()?;
    match on_path("wasm-opt") {
        Some(optimiser) => {
            say("Building the site for release, with wasm-opt");
            trunk.env(OPTIMISER, optimiser);
        }
        None => say("Building the site for release"),
    }
    run(&mut trunk, "Mend what the compiler says above, then run the same command again.")?;
    say("Compressing dist/");
    let site = in_project("dist");
    let (mut raw_total, mut sent_total) = (0, 0);
    println!("{:<36} {:>10} {:>10}", "file", "bytes", "brotli");
    for name in files_in(&site)? {
        let path = site.join(&name);
        let raw = fs::read(&path).map_err(|error| format!("{name} cannot be read: {error}."))?;
        let mut sent = raw.len();
        if COMPRESSIBLE.iter().any(|end| name.ends_with(&format!(".{end}"))) {
            let small = brotli(&raw).map_err(|error| format!("{name}: {error}."))?;
            sent = small.len();
            fs::write(with_suffix(&path, ".br"), small)
                .map_err(|error| format!("{name}.br cannot be written: {error}."))?;
        }
        let beside = if is_kept_offline(&name) { "" } else { "  not in the first load" };
        println!("{name:<36} {:>10} {sent:>10}{beside}", raw.len());
        if is_kept_offline(&name) {
            raw_total += raw.len();
            sent_total += sent;
        }
    }
    println!("{:<36} {raw_total:>10} {sent_total:>10}", "first load, all files");
    Ok(sent_total)
}

/// Brotli (RFC 7932) at its highest quality.
fn brotli(raw: &[u8]) -> std::io::Result<Vec<u8>> {
    let mut writer = brotli::CompressorWriter::new(Vec::new(), 4096, 11, 22);
    writer.write_all(raw)?;
    writer.flush()?;
    Ok(writer.into_inner())
}
