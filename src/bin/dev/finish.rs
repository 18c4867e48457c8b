//! The end of each build, on the folder where Trunk gathers the site: joins the style, leaves out
//! what only people and tools read, names files after their contents, and gives the service worker
//! the list of what it keeps offline.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use super::run::{Outcome, in_project, program, run};
use super::style;
use super::wasm::without_custom_sections;

/// Set by `cargo dev bundle` to the path of wasm-opt when there is one.
pub const OPTIMISER: &str = "BRIMWRIGHT_WASM_OPT";

const PAGE: &str = "index.html";
const WORKER: &str = "service-worker.js";
const WASM: &str = "brimwright_bg.wasm";
const BINDINGS: &str = "brimwright.js";

/// Files to be named after their contents. A file stands after those it refers to.
const RENAMED: [&str; 4] = [WASM, BINDINGS, "start.js", "style.css"];

/// Finishes the site in Trunk's staging folder.
pub fn finish() -> Outcome {
    let site = env::var_os("TRUNK_STAGING_DIR")
        .map(PathBuf::from)
        .ok_or("`cargo dev finish` is called by Trunk at the end of a build; use `cargo dev bundle`.")?;
    write(&site.join("style.css"), style::joined(&in_project("style"))?)?;
    let comments = [(BINDINGS, "/**"), (BINDINGS, "*"), (BINDINGS, "//"), ("start.js", "//"), (WORKER, "//")];
    for (file, idle) in comments.into_iter().chain([(PAGE, "<link data-trunk")]) {
        let path = site.join(file);
        write(&path, without_lines(&read_text(&path)?, idle))?;
    }
    if let Some(optimiser) = env::var_os(OPTIMISER) {
        optimise(Path::new(&optimiser), &site.join(WASM))?;
    }
    let wasm = without_custom_sections(&read(&site.join(WASM))?)?;
    write(&site.join(WASM), wasm)?;
    rename_after_contents(&site)?;
    list_for_offline(&site)
}

/// Shrinks the wasm. The features are those that Rust's wasm32-unknown-unknown takes for granted,
/// and which every browser has had for years; nothing newer may be let in.
fn optimise(optimiser: &Path, wasm: &Path) -> Outcome {
    run(
        program(optimiser)
            .args([
                "-Oz",
                "--mvp-features",
                "--enable-bulk-memory",
                "--enable-bulk-memory-opt",
                "--enable-call-indirect-overlong",
                "--enable-multivalue",
                "--enable-mutable-globals",
                "--enable-nontrapping-float-to-int",
                "--enable-reference-types",
                "--enable-sign-ext",
                "-o",
            ])
            .arg(wasm)
            .arg(wasm),
        "The wasm-opt on PATH may be too old: update it, or take it off PATH, it is not required.",
    )
}

fn rename_after_contents(site: &Path) -> Outcome {
    let mut renamed: Vec<(String, String)> = Vec::new();
    for name in RENAMED {
        let path = site.join(name);
        if name == "start.js" {
            refer(&path, &renamed)?;
        }
        let (stem, end) = name.rsplit_once('.').unwrap_or((name, ""));
        let hash = &hash(&read(&path)?)[..16];
        let new = format!("{stem}-{hash}.{end}");
        fs::rename(&path, site.join(&new)).map_err(|error| format!("{name} cannot be renamed: {error}."))?;
        renamed.push((format!("./{name}"), format!("./{new}")));
    }
    refer(&site.join(PAGE), &renamed)
}

/// Makes a file refer to the new names. The page refers to every file, the start script to those
/// named before it.
fn refer(path: &Path, renamed: &[(String, String)]) -> Outcome {
    let mut text = read_text(path)?;
    for (old, new) in renamed {
        if !text.contains(old) {
            return Err(format!("{} does not refer to {old}, which it must load or preload.", path.display()));
        }
        text = text.replace(old, new);
    }
    write(path, text)
}

/// Puts the build's name and its files, with the SHA-256 of each, in front of the service worker.
fn list_for_offline(site: &Path) -> Outcome {
    let mut kept: Vec<(String, String)> = Vec::new();
    for name in files_in(site)?.into_iter().filter(|name| is_kept_offline(name)) {
        let url = match name.as_str() {
            WORKER => continue,
            PAGE => "./".to_owned(),
            _ => format!("./{name}"),
        };
        kept.push((url, hash(&read(&site.join(&name))?)));
    }
    let list = serde_json::to_string(&kept).map_err(|error| error.to_string())?;
    let worker = site.join(WORKER);
    let code = read_text(&worker)?;
    let build = &hash(format!("{list}{code}").as_bytes())[..16];
    write(&worker, format!("const BUILD=\"{build}\";\nconst FILES={list};\n{code}"))
}

/// Whether the app needs a file to work. The schema is for people and their programs; the icons of
/// a home screen are fetched by whoever puts them there.
pub fn is_kept_offline(name: &str) -> bool {
    let icon_of_a_home_screen = name.starts_with("icons/") && name.ends_with(".png");
    !icon_of_a_home_screen && !name.starts_with("schema/")
}

/// Every file under `site`, as sorted paths with `/` between folders.
pub fn files_in(site: &Path) -> Outcome<Vec<String>> {
    let mut files = Vec::new();
    let mut folders = vec![site.to_owned()];
    while let Some(folder) = folders.pop() {
        let entries =
            fs::read_dir(&folder).map_err(|error| format!("{} cannot be read: {error}.", folder.display()))?;
        for entry in entries.flatten() {
            let path = entry.path();
            if path.is_dir() {
                folders.push(path);
            } else if let Ok(name) = path.strip_prefix(site) {
                files.push(name.to_string_lossy().into_owned());
            }
        }
    }
    files.sort();
    Ok(files)
}

/// A text without its empty lines and those that begin with `idle`: what only people or Trunk read.
fn without_lines(text: &str, idle: &str) -> String {
    text.lines()
        .filter(|line| !line.trim_start().starts_with(idle) && !line.trim().is_empty())
        .map(|line| format!("{line}\n"))
        .collect()
}

/// SHA-256 (FIPS 180-4) in lower-case hexadecimal.
fn hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

fn read(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|error| format!("{} cannot be read: {error}.", path.display()))
}

fn read_text(path: &Path) -> Outcome<String> {
    fs::read_to_string(path).map_err(|error| format!("{} cannot be read: {error}.", path.display()))
}

fn write(path: &Path, content: impl AsRef<[u8]>) -> Outcome {
    fs::write(path, content).map_err(|error| format!("{} cannot be written: {error}.", path.display()))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The example of FIPS 180-4 for "abc".
    #[test]
    fn hashes_are_sha_256() {
        assert_eq!(hash(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    #[test]
    fn what_the_app_never_loads_is_not_kept() {
        assert!(is_kept_offline("brimwright_bg-0123.wasm") && is_kept_offline("icons/icon.svg"));
        assert!(is_kept_offline("books/marrowgate-juice-hall.json") && is_kept_offline("index.html"));
        assert!(!is_kept_offline("icons/icon-512.png") && !is_kept_offline("schema/a.schema.json"));
    }

    #[test]
    fn only_lines_that_begin_with_the_mark_are_left_out() {
        assert_eq!(without_lines("// one\nlet a = \"//\"; // two\n\n  // three\n", "//"), "let a = \"//\"; // two\n");
    }
}
