//! Two style sheets out of several: what the first screen needs, and the rest.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use crate::run::Outcome;

/// The style of the page, in force before it is painted.
pub const FIRST: &str = "style.css";
/// The rest of it, in force before a screen of the second part is drawn.
pub const REST: &str = "style-rest.css";

/// The sheets whose imports state what belongs to each style, and in which order.
const HEADS: [(&str, &str); 2] = [("main.css", FIRST), ("later.css", REST)];

/// Joins the sheets of `folder`, and names each of the two: each `@import "name.css";` or
/// `@import "name.css" layer(name);` of a head, on a line of its own, becomes the sheet it names.
/// What is only for the eye of who reads them is left out.
///
/// # Errors
/// A sheet that no head imports, or both do.
pub fn joined(folder: &Path) -> Outcome<[(&'static str, String); 2]> {
    let mut unused = sheets_in(folder)?;
    let [first, rest] = HEADS.map(|(head, name)| joined_by(head, folder, &mut unused).map(|sheet| (name, sheet)));
    let joined = [first?, rest?];
    match unused.pop_first() {
        Some(sheet) => Err(format!("style/{sheet} is imported nowhere: import it in style/later.css, or delete it.")),
        None => Ok(joined),
    }
}

fn joined_by(head: &str, folder: &Path, unused: &mut BTreeSet<String>) -> Outcome<String> {
    let mut whole = String::new();
    for line in read(&folder.join(head))?.lines() {
        if !line.trim_start().starts_with("@import") {
            whole.push_str(line);
            whole.push('\n');
            continue;
        }
        let import = Import::read(line).ok_or_else(|| {
            format!(
                "style/{head}: `{line}` is not understood. Write @import \"name.css\"; or \
                 @import \"name.css\" layer(name);"
            )
        })?;
        let sheet = read(&folder.join(import.sheet))?;
        match import.layer {
            Some(layer) => whole.push_str(&format!("@layer {layer} {{\n{sheet}}}\n")),
            None => whole.push_str(&sheet),
        }
        if !unused.remove(import.sheet) {
            return Err(format!("style/{head} imports {}, which is imported before: import it once.", import.sheet));
        }
    }
    Ok(bare(&whole))
}

/// A style without remarks and indentation, and without line ends where a sign ends the line. No string of a style may
/// hold `/*`.
fn bare(style: &str) -> String {
    let mut parts = style.split("/*");
    let first = parts.next().unwrap_or_default();
    let after_remarks = parts.filter_map(|part| part.split_once("*/").map(|(_, after)| after));
    let said: String = [first].into_iter().chain(after_remarks).collect();
    let end = |line: &str| if line.ends_with(['{', '}', ';', ',']) { "" } else { "\n" };
    said.lines().map(str::trim).filter(|line| !line.is_empty()).map(|line| [line, end(line)].concat()).collect()
}

fn sheets_in(folder: &Path) -> Outcome<BTreeSet<String>> {
    let entries = fs::read_dir(folder)
        .map_err(|error| format!("{} cannot be read ({error}). Check that it is there.", folder.display()))?;
    Ok(entries
        .flatten()
        .filter_map(|entry| entry.file_name().into_string().ok())
        .filter(|name| name.ends_with(".css") && HEADS.iter().all(|(head, _)| head != name))
        .collect())
}

fn read(path: &Path) -> Outcome<String> {
    fs::read_to_string(path)
        .map_err(|error| format!("{} cannot be read ({error}). Check that it is there.", path.display()))
}

#[derive(Debug, PartialEq)]
struct Import<'a> {
    sheet: &'a str,
    layer: Option<&'a str>,
}

impl<'a> Import<'a> {
    fn read(line: &'a str) -> Option<Import<'a>> {
        let rest = line.trim().strip_prefix("@import \"")?.strip_suffix(';')?;
        let (sheet, rest) = rest.split_once('"')?;
        let rest = rest.trim();
        let layer = match rest {
            "" => None,
            _ => Some(rest.strip_prefix("layer(")?.strip_suffix(')')?),
        };
        Some(Import { sheet, layer })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_forms_of_import_are_read_and_no_other() {
        assert_eq!(Import::read("@import \"a.css\";"), Some(Import { sheet: "a.css", layer: None }));
        assert_eq!(
            Import::read("  @import \"a.css\" layer(base);"),
            Some(Import { sheet: "a.css", layer: Some("base") })
        );
        assert_eq!(Import::read("@import url(a.css);"), None);
        assert_eq!(Import::read("@import \"a.css\" print;"), None);
    }

    #[test]
    fn what_is_only_for_the_eye_is_left_out() {
        let style = "/* One\n   remark. */\n.a {\n  margin: 1px 2px; /* Another. */\n}\n\n@media print {\n  .a {\n    content: \"  \";\n  }\n}\n";
        assert_eq!(bare(style), ".a {margin: 1px 2px;}@media print {.a {content: \"  \";}}");
    }

    #[test]
    fn the_project_s_own_style_joins_without_an_import_left() {
        let [(first, page), (rest, later)] = joined(&crate::run::in_project("style")).expect("joins");
        assert_eq!((first, rest), ("style.css", "style-rest.css"));
        assert!(!page.contains("@import") && !later.contains("@import"));
        assert!(page.contains("#start") && page.contains(".notice"));
        assert!(later.contains(".entry") && !page.contains(".entry"));
    }

    #[test]
    fn each_sheet_is_imported_once() {
        let folder = std::env::temp_dir().join(format!("brimwright-style-{}", std::process::id()));
        let tried = |main: &str, later: &str| {
            fs::create_dir_all(&folder).expect("a folder");
            for (name, text) in [("main.css", main), ("later.css", later), ("a.css", ".a {\n}\n")] {
                fs::write(folder.join(name), text).expect("the sheet is written");
            }
            let joined = joined(&folder);
            fs::remove_dir_all(&folder).ok();
            joined
        };
        let import = "@import \"a.css\" layer(places);\n";
        assert_eq!(tried("", import), Ok([(FIRST, String::new()), (REST, "@layer places {.a {}}".to_owned())]));
        assert!(tried("", "").is_err_and(|error| error.starts_with("style/a.css is imported nowhere")));
        assert!(tried(import, import).is_err_and(|error| error.starts_with("style/later.css imports a.css")));
    }
}
