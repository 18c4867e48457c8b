//! Short names for what the wasm and its bindings call one another by. wasm-bindgen makes each name unique by a hash,
//! which no compression makes smaller, and each stands in both files.

use std::collections::{BTreeMap, BTreeSet};

use crate::run::Outcome;
use crate::wasm::{Section, as_leb128, in_sections, leb128};

const IMPORTS: u8 = 2;
const EXPORTS: u8 = 7;
/// What wasm-bindgen calls its bindings, whatever their file is called.
const BINDINGS: &str = "./brimwright_bg.js";
/// How the exports begin that have a hash in their names.
const HASHED: &str = "wasm_bindgen__";
/// The kind of an import or an export that is a function.
const FUNCTION: u8 = 0;

/// The module and its bindings, with short names in place of those that only these two use.
///
/// # Errors
/// The module is none, or the bindings do not say each name.
pub fn shortened(module: &[u8], bindings: &str) -> Outcome<(Vec<u8>, String)> {
    let (header, sections) = in_sections(module)?;
    let mut names = BTreeMap::new();
    let mut short = header.to_vec();
    for section in &sections {
        let renamed = match section.id {
            IMPORTS => imports(section, &mut names),
            EXPORTS => exports(section, &mut names),
            _ => Some(section.whole.to_vec()),
        };
        short.extend(renamed.ok_or("The names in the built wasm file do not read. Look at src/dev/names.rs.")?);
    }
    Ok((short, said_short(bindings, &names)?))
}

/// The imports of functions, those of the bindings by short names.
fn imports(section: &Section, names: &mut BTreeMap<String, String>) -> Option<Vec<u8>> {
    let (count, mut rest) = leb128(section.content)?;
    let mut content = as_leb128(count);
    for _ in 0..count {
        let (module, after) = name(rest)?;
        let (field, after) = name(after)?;
        let field = if module == BINDINGS { in_short(field, names) } else { field.to_owned() };
        put_name(&mut content, module);
        put_name(&mut content, &field);
        rest = put_function(&mut content, after)?;
    }
    rest.is_empty().then(|| whole(section.id, &content))
}

/// The exports, those of wasm-bindgen by short names.
fn exports(section: &Section, names: &mut BTreeMap<String, String>) -> Option<Vec<u8>> {
    let (count, mut rest) = leb128(section.content)?;
    let mut content = as_leb128(count);
    for _ in 0..count {
        let (field, after) = name(rest)?;
        let field = if field.starts_with(HASHED) { in_short(field, names) } else { field.to_owned() };
        put_name(&mut content, &field);
        let (kind, after) = after.split_first()?;
        let (place, after) = leb128(after)?;
        content.push(*kind);
        content.extend(as_leb128(place));
        rest = after;
    }
    rest.is_empty().then(|| whole(section.id, &content))
}

fn name(bytes: &[u8]) -> Option<(&str, &[u8])> {
    let (length, rest) = leb128(bytes)?;
    let (name, rest) = rest.split_at_checked(length)?;
    Some((std::str::from_utf8(name).ok()?, rest))
}

fn put_name(content: &mut Vec<u8>, name: &str) {
    content.extend(as_leb128(name.len()));
    content.extend(name.as_bytes());
}

/// Copies what an import of a function is: its kind, and its type.
fn put_function<'a>(content: &mut Vec<u8>, bytes: &'a [u8]) -> Option<&'a [u8]> {
    let (&kind, rest) = bytes.split_first()?;
    let (of, rest) = leb128(rest)?;
    content.push(kind);
    content.extend(as_leb128(of));
    (kind == FUNCTION).then_some(rest)
}

fn whole(id: u8, content: &[u8]) -> Vec<u8> {
    let mut whole = vec![id];
    whole.extend(as_leb128(content.len()));
    whole.extend(content);
    whole
}

/// The short name of a name: how many there are before it.
fn in_short(name: &str, names: &mut BTreeMap<String, String>) -> String {
    let next = format!("_{}", names.len());
    names.entry(name.to_owned()).or_insert(next).clone()
}

/// The bindings with the short names in place of the names.
fn said_short(bindings: &str, names: &BTreeMap<String, String>) -> Outcome<String> {
    let mut said = String::new();
    let mut unsaid: BTreeSet<&str> = names.keys().map(String::as_str).collect();
    let taken: BTreeSet<&str> = names.values().map(String::as_str).collect();
    let is_of_name = |letter: char| letter.is_ascii_alphanumeric() || letter == '_' || letter == '$';
    let mut rest = bindings;
    while !rest.is_empty() {
        let (word, after) = rest.split_at(rest.find(|letter| !is_of_name(letter)).unwrap_or(rest.len()));
        if taken.contains(word) {
            return Err(format!("The bindings say {word}, which is a short name. Look at src/dev/names.rs."));
        }
        unsaid.remove(word);
        said.push_str(names.get(word).map_or(word, String::as_str));
        let (between, after) = after.split_at(after.find(is_of_name).unwrap_or(after.len()));
        said.push_str(between);
        rest = after;
    }
    match unsaid.pop_first() {
        Some(name) => {
            Err(format!("The bindings do not say {name}, which the wasm file does. Look at src/dev/names.rs."))
        }
        None => Ok(said),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A module that imports `one_ab` of the bindings and `load` of another file, and exports a closure and `main`.
    fn module() -> Vec<u8> {
        let mut imports = vec![2];
        for (module, field) in [(BINDINGS, "one_ab"), ("./later.js", "load")] {
            put_name(&mut imports, module);
            put_name(&mut imports, field);
            imports.extend([FUNCTION, 0]);
        }
        let mut exports = vec![2];
        for field in ["wasm_bindgen__x__h12", "main"] {
            put_name(&mut exports, field);
            exports.extend([FUNCTION, 2]);
        }
        [b"\0asm\x01\0\0\0".to_vec(), whole(IMPORTS, &imports), whole(EXPORTS, &exports)].concat()
    }

    fn has(module: &[u8], name: &str) -> bool {
        let mut wanted = Vec::new();
        put_name(&mut wanted, name);
        module.windows(wanted.len()).any(|window| window == wanted)
    }

    #[test]
    fn both_say_the_short_names_and_keep_the_others() {
        let bindings = "{one_ab:function(a){return wasm.wasm_bindgen__x__h12(a)},one_abc:1};wasm.main()";
        let (short, said) = shortened(&module(), bindings).expect("names");
        assert_eq!(said, "{_0:function(a){return wasm._1(a)},one_abc:1};wasm.main()");
        for name in ["_0", "_1", "load", "main", BINDINGS, "./later.js"] {
            assert!(has(&short, name), "{name}");
        }
        assert!(!has(&short, "one_ab") && !has(&short, "wasm_bindgen__x__h12"));
    }

    #[test]
    fn what_only_one_of_them_says_is_an_error() {
        assert!(shortened(&module(), "{one_ab}").is_err_and(|error| error.contains("wasm_bindgen__x__h12")));
        assert!(shortened(&module(), "{one_ab,_0,wasm_bindgen__x__h12}").is_err_and(|error| error.contains("say _0")));
        let cut_off = &module()[..60];
        assert!(shortened(cut_off, "{one_ab,wasm_bindgen__x__h12}").is_err());
    }
}
