//! The built site in a folder of its own, where it can be published in several releases.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

const PAGE: &str = "index.html";
const WORKER: &str = "service-worker.js";
/// What every page runs before its own scripts.
const BEFORE: &str = "before.js";

/// The clock on the wall of every journey stands at noon of 26 November 2026, the day of the demo
/// book's batch, and goes on from there.
const ON_THE_DAY: &str = "{
    const Real = Date;
    const off = new Real(2026, 10, 26, 12).getTime() - Real.now();
    globalThis.Date = class extends Real {
        constructor(...parts) { if (parts.length) super(...parts); else super(Real.now() + off) }
        static now() { return Real.now() + off }
    };
}
";

/// A folder to be served, with the built site as it was published last.
pub struct Publisher {
    folder: PathBuf,
}

impl Publisher {
    /// An empty folder; `name` is not shared with another journey.
    pub fn new(name: &str) -> Publisher {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("sites").join(name);
        fs::remove_dir_all(&folder).ok();
        Publisher { folder }
    }

    /// The folder.
    pub fn address(&self) -> &str {
        self.folder.to_str().expect("a path in UTF-8")
    }

    /// Publishes a release whose page carries `mark` and sets the clock. Its files are named after `mark` too, so
    /// that none is another release's; those of the release before are gone.
    pub fn publish(&self, mark: &str) {
        let next = self.next(mark);
        self.put_up(&next);
    }

    /// Publishes a release that was never whole: without one of the files that it should have, by its place among
    /// [`Publisher::kept`]. Gives the file's name.
    pub fn publish_without(&self, mark: &str, place: usize) -> String {
        let next = self.next(mark);
        let name = next.kept().swap_remove(place);
        fs::remove_file(next.folder.join(&name)).expect("the file is removed");
        self.put_up(&next);
        name
    }

    /// A release beside the one that is served, so that no visitor sees half of it.
    fn next(&self, mark: &str) -> Publisher {
        let built = std::env::var("BRIMWRIGHT_SITE")
            .expect("journeys need the built site: run `cargo dev test`, which starts them");
        let next = Publisher { folder: self.folder.with_extension("next") };
        fs::remove_dir_all(&next.folder).ok();
        copy(Path::new(&built), &next.folder);
        next.rename(mark);
        next.put(BEFORE, ON_THE_DAY);
        let head = format!("<script src=\"./{BEFORE}\"></script><meta name=\"release\" content=\"{mark}\"><title>");
        next.put(PAGE, next.text(PAGE).replace("<title>", &head));
        let worker = next.text(WORKER);
        let list = list_in(&worker);
        let before = format!("const FILES={list};");
        let mut files: Vec<(String, String)> = serde_json::from_str(list).expect("a list of files");
        files.push((format!("./{BEFORE}"), String::new()));
        for (address, digest) in &mut files {
            let name = if address == "./" { PAGE } else { address.trim_start_matches("./") };
            *digest = hash(&fs::read(next.folder.join(name)).expect("a listed file"));
        }
        let after = format!("const FILES={};", serde_json::to_string(&files).expect("JSON"));
        let worker = worker.replace(&before, &after);
        next.put(WORKER, worker.replacen("const BUILD=\"", &format!("const BUILD=\"{mark}-"), 1));
        next
    }

    fn put_up(&self, next: &Publisher) {
        fs::remove_dir_all(&self.folder).ok();
        fs::rename(&next.folder, &self.folder).expect("the release takes the place of the one before");
    }

    /// The files that the service worker of the release keeps, the page as "index.html".
    pub fn kept(&self) -> Vec<String> {
        let worker = self.text(WORKER);
        let files: Vec<(String, String)> = serde_json::from_str(list_in(&worker)).expect("a list of files");
        files.into_iter().map(|(address, _)| if address == "./" { PAGE.into() } else { address[2..].into() }).collect()
    }

    /// Answers what is missing with a page and the status of success, as some hosts do.
    pub fn answer_what_is_missing_with_a_page(&self) {
        self.put("200.html", "<!doctype html><title>Not here</title>");
    }

    /// Names files that are named after their contents after `mark` too, and has the others refer to them so.
    fn rename(&self, mark: &str) {
        let names = self.names();
        let ends: Vec<(String, String)> = names
            .iter()
            .filter_map(|name| end_of_name(name))
            .map(|end| (end.to_owned(), format!("-{mark}{}", end.trim_start_matches('-'))))
            .collect();
        let renamed = |text: &str| ends.iter().fold(text.to_owned(), |text, (old, new)| text.replace(old, new));
        for name in &names {
            if [".html", ".js"].iter().any(|end| name.ends_with(end)) {
                self.put(name, renamed(&self.text(name)));
            }
            fs::rename(self.folder.join(name), self.folder.join(renamed(name))).expect("the file is renamed");
        }
    }

    /// Has the page of what is published run a script before its own, at each load.
    pub fn before_each_load(&self, script: &str) {
        self.replace(BEFORE, &format!("{}{{\n{script}\n}}\n", self.text(BEFORE)));
    }

    /// Puts something else in the file whose name begins with `begin`, as if the site had been built so.
    pub fn replace(&self, begin: &str, contents: &str) {
        let name = self.name_of(begin);
        let (before, after) = (hash(self.text(&name).as_bytes()), hash(contents.as_bytes()));
        self.put(&name, contents);
        self.put(WORKER, self.text(WORKER).replace(&before, &after));
    }

    /// What stands in the file whose name begins with `begin`.
    pub fn read(&self, begin: &str) -> Vec<u8> {
        fs::read(self.folder.join(self.name_of(begin))).expect("the file is read")
    }

    /// Replaces the file whose name begins with `begin` by `contents`.
    pub fn spoil(&self, begin: &str, contents: impl AsRef<[u8]>) {
        self.put(&self.name_of(begin), contents);
    }

    /// Takes the file away whose name begins with `begin`.
    pub fn remove(&self, begin: &str) {
        fs::remove_file(self.folder.join(self.name_of(begin))).expect("the file is removed");
    }

    /// Adds a language, with the contents of its tables for the first screen and for the others.
    pub fn add_language(&self, tag: &str, tables: [&str; 2]) {
        let names = ["first", "rest"].map(|part| format!("./words-{tag}-{part}-0000000000000000.txt"));
        let mut worker = self.text(WORKER);
        for (name, table) in names.iter().zip(tables) {
            self.put(name, table);
            let listed = format!("const FILES=[[\"{name}\",\"{}\"],", hash(table.as_bytes()));
            worker = worker.replacen("const FILES=[", &listed, 1);
        }
        self.put(WORKER, worker);
        let put_in = |begin: &str, before: &str, more: &str| {
            let text = String::from_utf8(self.read(begin)).expect("a text");
            assert!(text.contains(before), "{begin} does not say {before}");
            self.replace(begin, &text.replacen(before, &format!("{before}{more}"), 1));
        };
        put_in(PAGE, "data-languages=\"", &format!("{tag} "));
        let [first, rest] = names;
        put_in("start-", "const TEXTS={", &format!("\"{tag}\":{{\"first\":\"{first}\",\"rest\":\"{rest}\"}},"));
    }

    fn name_of(&self, begin: &str) -> String {
        // What lies in a folder is not named after its contents.
        if begin.contains('/') {
            return begin.to_owned();
        }
        let mut names = self.names().into_iter().filter(|name| name.starts_with(begin));
        names.next().unwrap_or_else(|| panic!("no file begins with {begin:?}"))
    }

    fn names(&self) -> Vec<String> {
        let entries = fs::read_dir(&self.folder).expect("the folder").flatten();
        entries.filter_map(|entry| entry.file_name().into_string().ok()).collect()
    }

    fn text(&self, name: &str) -> String {
        fs::read_to_string(self.folder.join(name)).expect("the file is read")
    }

    fn put(&self, name: &str, contents: impl AsRef<[u8]>) {
        fs::write(self.folder.join(name), contents).expect("the file is written");
    }
}

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder");
    for entry in fs::read_dir(from).expect("the built site").flatten() {
        let (path, target) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            copy(&path, &target);
        } else if path.extension().is_none_or(|end| end != "br") {
            fs::copy(&path, &target).expect("a copy");
        }
    }
}

/// The end of a name given after contents, such as "-0123456789abcdef.js".
fn end_of_name(name: &str) -> Option<&str> {
    let end = &name[name.rfind('-')?..];
    let (hash, _) = end[1..].split_once('.')?;
    (hash.len() == 16 && hash.bytes().all(|byte| byte.is_ascii_hexdigit())).then_some(end)
}

/// The list of kept files that stands in front of the service worker.
fn list_in(worker: &str) -> &str {
    let (_, rest) = worker.split_once("const FILES=").expect("the worker lists its files");
    rest.split_once(";\n").expect("the list ends").0
}

fn hash(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
