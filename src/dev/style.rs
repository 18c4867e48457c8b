//! One style sheet out of several: one request instead of one for each file.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use crate::run::Outcome;

/// The sheet whose imports state what belongs to the style, and in which order.
const MAIN: &str = "main.css";

/// Joins the sheets of `folder`: each `@import "name.css";` or
/// `@import "name.css" layer(name);` of main.css, on a line of its own, becomes the sheet it names.
/// What is only for the eye of who reads them is left out.
pub fn joined(folder: &Path) -> Outcome<String> {
    let mut unused = sheets_in(folder)?;
    let mut whole = String::new();
    for line in read(&folder.join(MAIN))?.lines() {
        if !line.trim_start().starts_with("@import") {
            whole.push_str(line);
            whole.push('\n');
            continue;
        }
        let import = Import::read(line).ok_or_else(|| {
            format!(
                "style/{MAIN}: `{line}` is not understood. Write @import \"name.css\"; or \
                 @import \"name.css\" layer(name);"
            )
        })?;
        let sheet = read(&folder.join(import.sheet))?;
        match import.layer {
            Some(layer) => whole.push_str(&format!("@layer {layer} {{\n{sheet}}}\n")),
            None => whole.push_str(&sheet),
        }
        unused.remove(import.sheet);
    }
    match unused.pop_first() {
        Some(sheet) => Err(format!("style/{sheet} is not imported by style/{MAIN}: import it there, or delete it.")),
        None => Ok(bare(&whole)),
    }
}

/// A style without remarks, indentation and empty lines. No string of a style may hold `/*`.
fn bare(style: &str) -> String {
    let mut parts = style.split("/*");
    let first = parts.next().unwrap_or_default();
    let after_remarks = parts.filter_map(|part| part.split_once("*/").map(|(_, after)| after));
    let said: String = [first].into_iter().chain(after_remarks).collect();
    said.lines().map(str::trim).filter(|line| !line.is_empty()).map(|line| format!("{line}\n")).collect()
}

fn sheets_in(folder: &Path) -> Outcome<BTreeSet<String>> {
    let entries = fs::read_dir(folder)
        .map_err(|error| format!("{} cannot be read ({error}). Check that it is there.", folder.display()))?;
    Ok(entries
        .flatten()
        .filter_map(|entry| entry.file_name().into_string().ok())
        .filter(|name| name.ends_with(".css") && name != MAIN)
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
        assert_eq!(bare(style), ".a {\nmargin: 1px 2px;\n}\n@media print {\n.a {\ncontent: \"  \";\n}\n}\n");
    }

    #[test]
    fn the_project_s_own_style_joins_without_an_import_left() {
        let whole = joined(&crate::run::in_project("style")).expect("joins");
        assert!(!whole.contains("@import"));
        assert!(whole.contains("#start"));
    }
}
