//! The end of each build, on the folder where Trunk gathers the site: joins the style, splits the
//! wasm, leaves out what only people and tools read, names files after their contents, and gives the service worker
//! the list of what it keeps offline.

use std::collections::BTreeMap;
use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use brimwright::words::texts::TABLES;
use brimwright::words::texts::keys::BUILD;
use sha2::{Digest, Sha256};

use crate::first_words;
use crate::names;
use crate::page;
use crate::run::{Outcome, in_project};
use crate::script;
use crate::split::{BINDINGS, LATER, LATER_WASM, WASM, split};
use crate::style;
use crate::wasm::without_custom_sections;

const PAGE: &str = "index.html";
const WORKER: &str = "service-worker.js";
const START: &str = "start.js";
/// Puts the first words into the person's language.
const FIRST: &str = "first.js";
/// Keeps what was chosen on the screens.
const KEPT: &str = "kept.js";
/// What the page needs beyond the first screen.
const REST: &str = "rest.js";
const MANIFEST: &str = "manifest.webmanifest";

/// Finishes the site in Trunk's staging folder.
pub fn finish() -> Outcome {
    let site = env::var_os("TRUNK_STAGING_DIR")
        .map(PathBuf::from)
        .ok_or("`cargo dev finish` is called by Trunk at the end of a build; use `cargo dev bundle`.")?;
    for (name, sheet) in style::joined(&in_project("style"))? {
        write(&site.join(name), sheet)?;
    }
    split(&site)?;
    for name in [BINDINGS, LATER, FIRST, KEPT, REST, START, WORKER] {
        let path = site.join(name);
        write(&path, script::short(name, &read_text(&path)?)?)?;
    }
    put_texts(&site)?;
    put_into_page(&site)?;
    let manifest = site.join(MANIFEST);
    write(&manifest, first_words::put_in(&without_links_of_trunk(&read_text(&manifest)?))?)?;
    for name in [WASM, LATER_WASM] {
        let wasm = without_custom_sections(&read(&site.join(name))?)?;
        write(&site.join(name), wasm)?;
    }
    let (wasm, bindings) = names::shortened(&read(&site.join(WASM))?, &read_text(&site.join(BINDINGS))?)?;
    write(&site.join(WASM), wasm)?;
    write(&site.join(BINDINGS), bindings)?;
    rename_after_contents(&site)?;
    list_for_offline(&site)
}

/// Puts the first words into the page, with their style and their script.
fn put_into_page(site: &Path) -> Outcome {
    let page = first_words::put_in(&without_links_of_trunk(&read_text(&site.join(PAGE))?))?;
    let [style, script] = [style::FIRST, FIRST].map(|name| {
        let text = read_text(&site.join(name))?;
        fs::remove_file(site.join(name)).map_err(|error| format!("{name} cannot be removed ({error})."))?;
        Ok::<_, String>((name, text))
    });
    let (style, script) = (style?, script?);
    write(&site.join(PAGE), page::with_inline(&page, (style.0, &style.1), (script.0, &script.1))?)
}

/// Writes the tables of texts, and puts their addresses and their build in front of the start script.
fn put_texts(site: &Path) -> Outcome {
    let mut addresses: BTreeMap<&str, BTreeMap<&str, String>> = BTreeMap::new();
    for (language, part, name, text) in TABLES {
        write(&site.join(name), first_words::beside_the_page(language, part, text))?;
        let named = rename(site, name, &hash_of(site, &[name])?)?;
        addresses.entry(language).or_default().insert(part, format!("./{}", named.new));
    }
    let list = serde_json::to_string(&addresses).map_err(|error| error.to_string())?;
    let start = site.join(START);
    write(&start, format!("const TEXTS={list},TEXTS_BUILD=\"{BUILD}\";\n{}", read_text(&start)?))
}

/// Names files after their contents, those that are referred to first.
fn rename_after_contents(site: &Path) -> Outcome {
    let named = |name| rename(site, name, &hash_of(site, &[name])?);
    let (wasm, later_wasm) = (named(WASM)?, named(LATER_WASM)?);
    refer(&site.join(REST), "", &[&named(style::REST)?])?;
    refer(&site.join(LATER), "", &[&later_wasm])?;
    // These two import one another: both are named after both.
    let both = hash_of(site, &[BINDINGS, LATER])?;
    let (bindings, later) = (rename(site, BINDINGS, &both)?, rename(site, LATER, &both)?);
    refer(&site.join(&bindings.new), "from\"", &[&later])?;
    refer(&site.join(&later.new), "from\"", &[&bindings])?;
    let kept = named(KEPT)?;
    refer(&site.join(START), "", &[&wasm, &bindings, &kept, &named(REST)?])?;
    refer(&site.join(PAGE), "", &[&wasm, &bindings, &later, &kept, &named(START)?])
}

/// A file that was named after contents.
struct Renamed {
    old: &'static str,
    new: String,
}

fn rename(site: &Path, name: &'static str, hash: &str) -> Outcome<Renamed> {
    let (stem, end) = name.rsplit_once('.').unwrap_or((name, ""));
    let new = format!("{stem}-{hash}.{end}");
    fs::rename(site.join(name), site.join(&new))
        .map_err(|error| format!("{name} cannot be renamed ({error}). Run `cargo dev bundle` again."))?;
    Ok(Renamed { old: name, new })
}

/// What files are named after: the beginning of the hash of their contents, one after the other.
fn hash_of(site: &Path, names: &[&str]) -> Outcome<String> {
    let mut contents = Vec::new();
    for name in names {
        contents.extend(read(&site.join(name))?);
    }
    Ok(hash(&contents)[..16].to_owned())
}

/// Makes a file refer to new names, wherever `before` stands before them.
fn refer(path: &Path, before: &str, renamed: &[&Renamed]) -> Outcome {
    let mut text = read_text(path)?;
    for Renamed { old, new } in renamed {
        let reference = format!("{before}./{old}");
        if !text.contains(&reference) {
            return Err(format!("{} does not refer to ./{old}, which it must load or preload.", path.display()));
        }
        text = text.replace(&reference, &format!("{before}./{new}"));
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

/// The icon that the page names. A picture of pixels: a drawing would be laid out as a page of its own, which
/// takes the main thread longer than all else at the start.
const PAGE_ICON: &str = "icons/icon-48.png";

/// The icon that browsers ask for as they read the manifest, also offline.
const MANIFEST_ICON: &str = "icons/icon.svg";

/// Whether the app needs a file to work. The schema is for people and their programs; the icons of
/// a home screen are fetched by whoever puts them there.
pub fn is_kept_offline(name: &str) -> bool {
    let icon_of_a_home_screen = name.starts_with("icons/") && ![PAGE_ICON, MANIFEST_ICON].contains(&name);
    !icon_of_a_home_screen && !name.starts_with("schema/")
}

/// Whether a file is fetched before the first screen can be used. The second part of the app, its
/// style, the rest of the texts, the demo book and the starter list come when they are asked for; the service
/// worker starts after the app. A person reads one language.
pub fn is_in_first_load(name: &str) -> bool {
    let begins_as = |late: &str| name.starts_with(late.split('.').next().unwrap_or(late));
    let later = [LATER_WASM, REST, style::REST, "books/", "starter/"].into_iter().any(begins_as) || name == WORKER;
    let of_others = name.starts_with("words-") && !name.starts_with("words-en-US-first");
    is_kept_offline(name) && !later && !of_others && name != MANIFEST_ICON
}

/// Every file under `site`, as sorted paths with `/` between folders.
pub fn files_in(site: &Path) -> Outcome<Vec<String>> {
    let mut files = Vec::new();
    let mut folders = vec![site.to_owned()];
    while let Some(folder) = folders.pop() {
        let entries = fs::read_dir(&folder)
            .map_err(|error| format!("{} cannot be read ({error}). Run `cargo dev bundle` again.", folder.display()))?;
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

/// The page without the links that only Trunk reads, and without the empty lines that it leaves and
/// the spaces that lines begin with.
fn without_links_of_trunk(page: &str) -> String {
    let kept = page.lines().filter(|line| !line.contains("<link data-trunk ") && !line.trim().is_empty());
    kept.map(|line| format!("{}\n", line.trim())).collect()
}

/// SHA-256 (FIPS 180-4) in lower-case hexadecimal.
fn hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

fn read(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path)
        .map_err(|error| format!("{} cannot be read ({error}). Run `cargo dev bundle` again.", path.display()))
}

fn read_text(path: &Path) -> Outcome<String> {
    fs::read_to_string(path)
        .map_err(|error| format!("{} cannot be read ({error}). Run `cargo dev bundle` again.", path.display()))
}

fn write(path: &Path, content: impl AsRef<[u8]>) -> Outcome {
    fs::write(path, content)
        .map_err(|error| format!("{} cannot be written ({error}). Run `cargo dev bundle` again.", path.display()))
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
    fn the_page_has_none_of_trunk_s_links() {
        let page =
            "<head>\n  <link data-trunk rel=\"rust\" href=\"../Cargo.toml\">\n\n  <link rel=\"icon\">\n</head>\n";
        assert_eq!(without_links_of_trunk(page), "<head>\n<link rel=\"icon\">\n</head>\n");
    }

    #[test]
    fn what_the_app_never_loads_is_not_kept() {
        assert!(is_kept_offline("brimwright_bg-0123.wasm") && is_kept_offline(PAGE_ICON));
        assert!(is_kept_offline("books/marrowgate-juice-hall.json") && is_kept_offline("index.html"));
        assert!(is_kept_offline("books/kastanje-saftbar.json") && !is_in_first_load("books/kastanje-saftbar.json"));
        assert!(is_kept_offline(MANIFEST_ICON) && !is_kept_offline("icons/icon-512.png"));
        assert!(!is_kept_offline("schema/a.schema.json"));
    }

    #[test]
    fn the_first_load_is_what_comes_before_the_first_screen() {
        assert!(is_in_first_load("brimwright_bg-0123.wasm") && is_in_first_load("later-0123.js"));
        assert!(is_in_first_load("index.html") && is_in_first_load("start-0123.js"));
        assert!(!is_in_first_load("split_later-0123.wasm") && is_kept_offline("split_later-0123.wasm"));
        assert!(!is_in_first_load("service-worker.js") && !is_in_first_load("icons/icon-512.png"));
        assert!(is_in_first_load(PAGE_ICON) && !is_in_first_load(MANIFEST_ICON));
        assert!(!is_in_first_load("books/marrowgate-juice-hall.json"));
        assert!(!is_in_first_load("starter/ingredients.txt") && is_kept_offline("starter/ingredients.txt"));
        assert!(!is_in_first_load("style-rest-0123.css") && is_kept_offline("style-rest-0123.css"));
        assert!(!is_in_first_load("rest-0123.js") && is_kept_offline("rest-0123.js"));
        assert!(is_in_first_load("words-en-US-first-0123.txt") && !is_in_first_load("words-en-US-rest-0123.txt"));
    }

    #[test]
    fn every_name_follows_every_content_it_leads_to() {
        let site = env::temp_dir().join(format!("brimwright-finish-{}", std::process::id()));
        let names = |later_wasm: &str| {
            fs::remove_dir_all(&site).ok();
            fs::create_dir_all(&site).expect("a folder");
            let page = "./brimwright_bg.wasm ./brimwright.js ./later.js ./kept.js ./start.js";
            // The bindings also hand the other script over by its name before: that stays.
            let bindings = "import*as it from\"./later.js\";\"./later.js\": it";
            let later = "import{}from\"./brimwright.js\";\"./split_later.wasm\"";
            let start = "./brimwright_bg.wasm ./brimwright.js ./kept.js ./rest.js";
            for (name, text) in [
                (PAGE, page),
                (BINDINGS, bindings),
                (LATER, later),
                (START, start),
                (KEPT, ""),
                (REST, "./style-rest.css"),
                (WASM, "first"),
                (LATER_WASM, later_wasm),
                (style::REST, ""),
            ] {
                write(&site.join(name), text).expect("the file is written");
            }
            rename_after_contents(&site).expect("the files are renamed");
            files_in(&site).expect("the files")
        };
        let (one, two) = (names("one"), names("two"));
        let bindings = two.iter().find(|name| name.starts_with("brimwright-")).expect("the bindings");
        let bindings = read_text(&site.join(bindings)).expect("a text");
        assert!(bindings.starts_with("import*as it from\"./later-") && bindings.ends_with("\"./later.js\": it"));
        let kept: Vec<&String> = one.iter().filter(|name| two.contains(name)).collect();
        let same = |begin: &str| kept.iter().any(|name| name.starts_with(begin));
        assert_eq!((kept.len(), same("brimwright_bg-"), same("style-rest-"), same(PAGE)), (5, true, true, true));
        fs::remove_dir_all(&site).ok();
    }
}
