//! From tables in the Fluent syntax to the tables that the app reads, and to Rust items.
//!
//! A table is a folder of `.ftl` files for each language. English decides which keys there are and
//! which placeholders each has; every other language must have the same. A file that is named in
//! [`FIRST`] is fetched with the first screen, the others with the second wasm file.
//!
//! Of the syntax (Project Fluent, version 1.0) only these are taken: messages, comments,
//! placeholders, string literals, and a choice by the plural form of a number or by a word, that
//! stands in no other choice.

use std::fs;
use std::path::Path;

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Variant, VariantKey};
use fluent_syntax::parser;
use fluent_syntax::unicode::unescape_unicode_to_string;

/// The language that decides which keys there are.
pub const DECIDES: &str = "en-US";

/// The files that the first screen needs.
pub const FIRST: [&str; 2] = ["first", "start"];

/// The plural forms of the Unicode CLDR.
const FORMS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

/// Around what is not plain text.
const SPECIAL: char = '\u{1}';
/// Before each way of a choice.
const WAY: char = '\u{2}';
/// Between the name of a way and its text.
const NAMED: char = '\u{3}';
/// Around a placeholder within a way.
const WITHIN: char = '\u{4}';

/// The files of one language.
pub struct Language {
    /// Its tag (BCP 47).
    pub tag: String,
    /// Name without its end, and contents, in the order of their names.
    pub files: Vec<(String, String)>,
}

/// What the build takes over.
pub struct Compiled {
    /// The Rust items.
    pub items: String,
    /// The Rust list of all tables, for those who have them built in.
    pub list: String,
    /// The Rust list of all keys, in the order of the lines of a table.
    pub keys: String,
    /// The tables, two for each language.
    pub tables: Vec<Table>,
}

/// A table as the app reads it: a line that says of what it is, then a line for each text.
pub struct Table {
    /// The tag of its language.
    pub language: String,
    /// "first" or "rest".
    pub part: &'static str,
    /// What is in it.
    pub text: String,
}

impl Table {
    /// The name of its file: "words-en-US-first.txt".
    pub fn name(&self) -> String {
        format!("words-{}-{}.txt", self.language, self.part)
    }
}

/// The name of a file without its end, and its texts.
type File = (String, Vec<Text>);

/// A text in one language.
struct Text {
    key: String,
    /// Its placeholders in order of their names, and whether a plural form is chosen by it.
    places: Vec<(String, bool)>,
    pattern: String,
    /// What it says, for documentation.
    says: String,
}

/// Reads the tables of all languages.
///
/// # Errors
/// A folder or file cannot be read.
pub fn read(folder: &Path) -> Result<Vec<Language>, String> {
    let names = |folder: &Path| -> Result<Vec<String>, String> {
        let entries = fs::read_dir(folder).map_err(|error| format!("{}: {error}.", folder.display()))?;
        let names = entries.filter_map(|entry| entry.ok()?.file_name().into_string().ok());
        let mut names: Vec<String> = names.collect();
        names.sort();
        Ok(names)
    };
    let mut languages = Vec::new();
    for tag in names(folder)? {
        let mut files = Vec::new();
        for file in names(&folder.join(&tag))? {
            let Some(name) = file.strip_suffix(".ftl") else { continue };
            let path = folder.join(&tag).join(&file);
            let text = fs::read_to_string(&path).map_err(|error| format!("{}: {error}.", path.display()))?;
            files.push((name.to_string(), text));
        }
        languages.push(Language { tag, files });
    }
    Ok(languages)
}

/// Checks the tables and puts them into the form that the app reads.
///
/// # Errors
/// A sentence that names the language, the file and the key: what cannot be read, a key or a
/// placeholder that one language has and another lacks.
pub fn compile(languages: &[Language]) -> Result<Compiled, String> {
    let deciding = languages.iter().find(|language| language.tag == DECIDES);
    let deciding = in_order(deciding.ok_or_else(|| format!("There is no table of {DECIDES}."))?)?;
    let (mut items, build) = items(&deciding);
    let tags: Vec<&str> = languages.iter().map(|language| language.tag.as_str()).collect();
    items.push_str(&format!(
        "/// The tags of the languages that there are (BCP 47).\npub const LANGUAGES: &[&str] = &{tags:?};\n"
    ));
    let mut tables = Vec::new();
    for language in languages {
        let texts = in_order(language)?;
        let patterns = same_keys(&deciding, &texts, &language.tag)?;
        for (part, first) in [("first", true), ("rest", false)] {
            let of_part = patterns.iter().filter(|(file, _)| FIRST.contains(file) == first);
            let lines: Vec<String> = of_part.map(|(_, pattern)| format!("{pattern}\n")).collect();
            let head = format!("brimwright {} {part} {build} {}", language.tag, lines.len());
            let lines = lines.concat();
            let text = format!("{head}\n{lines}");
            tables.push(Table { language: language.tag.clone(), part, text });
        }
    }
    let keys = deciding.iter().flat_map(|(file, texts)| texts.iter().map(move |text| format!("{file}::{}", text.key)));
    let keys = format!("&{:?}\n", keys.collect::<Vec<String>>());
    let list = list(&tables);
    Ok(Compiled { items, list, keys, tables })
}

/// The texts of each file, those of the first screen first.
fn in_order(language: &Language) -> Result<Vec<File>, String> {
    let first = |(file, _): &&(String, String)| FIRST.contains(&file.as_str());
    let files = language.files.iter().filter(first).chain(language.files.iter().filter(|file| !first(file)));
    files.map(|(file, text)| Ok((file.clone(), texts(&format!("{}/{file}.ftl", language.tag), text)?))).collect()
}

/// The texts of one file.
fn texts(path: &str, source: &str) -> Result<Vec<Text>, String> {
    let resource = parser::parse(source).map_err(|(_, errors)| {
        let first = errors.first();
        let line =
            first.map_or(1, |error| source.chars().take(error.pos.start).filter(|sign| *sign == '\n').count() + 1);
        format!("{path}, line {line}: {}.", first.map(ToString::to_string).unwrap_or_default())
    })?;
    let mut texts: Vec<Text> = Vec::new();
    for entry in &resource.body {
        match entry {
            Entry::Message(message) => {
                let text = text(message).map_err(|error| format!("{path}, {}: {error}", message.id.name))?;
                if texts.iter().any(|other| other.key == text.key) {
                    return Err(format!("{path}: the key {} stands there twice.", message.id.name));
                }
                texts.push(text);
            }
            Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
            Entry::Term(term) => return Err(format!("{path}: the term -{} is not taken.", term.id.name)),
            Entry::Junk { content } => return Err(format!("{path}: this cannot be read: {content}")),
        }
    }
    Ok(texts)
}

fn text(message: &Message<&str>) -> Result<Text, String> {
    if !message.attributes.is_empty() {
        return Err("attributes are not taken.".into());
    }
    let pattern = message.value.as_ref().ok_or("it has no text.")?;
    let mut places = Vec::new();
    find_places(pattern, &mut places)?;
    places.sort();
    places.dedup();
    // A number that is chosen by and also shown stands there once, as a number.
    let plural: Vec<String> = places.iter().filter(|(_, plural)| *plural).map(|(name, _)| name.clone()).collect();
    places.retain(|(name, of_number)| *of_number || !plural.contains(name));
    let (encoded, says) = (encode(pattern, &places, false)?, say(pattern));
    Ok(Text { key: message.id.name.replace('-', "_"), places, pattern: encoded, says })
}

/// The placeholders of a pattern, and whether a plural form is chosen by each.
fn find_places(pattern: &Pattern<&str>, places: &mut Vec<(String, bool)>) -> Result<(), String> {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else { continue };
        match expression {
            Expression::Inline(inline) => match inline {
                InlineExpression::VariableReference { id } => places.push((id.name.to_string(), false)),
                InlineExpression::StringLiteral { .. } => {}
                _ => return Err("only { $name } and { \"text\" } are taken.".into()),
            },
            Expression::Select { selector, variants } => {
                places.push((chosen_by(selector)?.to_string(), by_number(variants)));
                for variant in variants {
                    let nested = |it: &PatternElement<&str>| {
                        matches!(it, PatternElement::Placeable { expression: Expression::Select { .. } })
                    };
                    if variant.value.elements.iter().any(nested) {
                        return Err("a choice stands in a choice; write a text for each.".into());
                    }
                    find_places(&variant.value, places)?;
                }
            }
        }
    }
    Ok(())
}

fn chosen_by<'a>(selector: &'a InlineExpression<&str>) -> Result<&'a str, String> {
    match selector {
        InlineExpression::VariableReference { id } => Ok(id.name),
        _ => Err("a choice goes by a placeholder.".into()),
    }
}

/// Whether a choice is one of plural forms.
fn by_number(variants: &[Variant<&str>]) -> bool {
    variants.iter().all(|variant| match variant.key {
        VariantKey::Identifier { name } => FORMS.contains(&name),
        VariantKey::NumberLiteral { .. } => true,
    })
}

fn encode(pattern: &Pattern<&str>, places: &[(String, bool)], within: bool) -> Result<String, String> {
    let number = |name: &str| {
        let place = places.iter().position(|(place, _)| place == name).unwrap_or(0);
        u32::try_from(place)
            .ok()
            .and_then(|place| char::from_digit(place, 36))
            .ok_or("there are too many placeholders.")
    };
    let mark = if within { WITHIN } else { SPECIAL };
    let mut encoded = String::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => encoded.push_str(&value.replace('\n', " ")),
            PatternElement::Placeable { expression: Expression::Inline(inline) } => match inline {
                InlineExpression::VariableReference { id } => {
                    encoded.extend([mark, number(id.name)?, mark]);
                }
                InlineExpression::StringLiteral { value } => encoded.push_str(&unescape_unicode_to_string(value)),
                _ => {}
            },
            PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
                encoded.extend([mark, number(chosen_by(selector)?)?]);
                // The way that is taken when no other is meant stands last.
                let (last, ways): (Vec<_>, Vec<_>) = variants.iter().partition(|variant| variant.default);
                for variant in ways.into_iter().chain(last) {
                    let name = match variant.key {
                        VariantKey::Identifier { name } => name,
                        VariantKey::NumberLiteral { value } => value,
                    };
                    encoded.push(WAY);
                    encoded.push_str(name);
                    encoded.push(NAMED);
                    encoded.push_str(&encode(&variant.value, places, true)?);
                }
                encoded.push(mark);
            }
        }
    }
    Ok(encoded)
}

/// A pattern as a person reads it.
fn say(pattern: &Pattern<&str>) -> String {
    let element = |element: &PatternElement<&str>| match element {
        PatternElement::TextElement { value } => value.replace('\n', " "),
        PatternElement::Placeable { expression: Expression::Inline(inline) } => match inline {
            InlineExpression::VariableReference { id } => format!("`{}`", id.name),
            InlineExpression::StringLiteral { value } => unescape_unicode_to_string(value).into_owned(),
            _ => String::new(),
        },
        PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
            variants.iter().find(|variant| variant.default).map(|variant| say(&variant.value)).unwrap_or_default()
        }
    };
    pattern.elements.iter().map(element).collect()
}

/// The file and pattern of each text in the order of the deciding language.
fn same_keys<'a>(deciding: &'a [File], here: &'a [File], tag: &str) -> Result<Vec<(&'a str, &'a str)>, String> {
    let all = |files: &'a [File]| -> Vec<(&'a str, &'a Text)> {
        files.iter().flat_map(|(file, texts)| texts.iter().map(move |text| (file.as_str(), text))).collect()
    };
    let (decided, mut here) = (all(deciding), all(here));
    let mut patterns = Vec::new();
    let mut lacking = Vec::new();
    for (file, text) in decided {
        let Some(place) = here.iter().position(|(other, it)| *other == file && it.key == text.key) else {
            lacking.push(format!("{file}::{}", text.key));
            continue;
        };
        let (_, other) = here.swap_remove(place);
        if text.places != other.places {
            return Err(format!("{tag}, {file}::{}: the placeholders are not those of {DECIDES}.", text.key));
        }
        patterns.push((file, other.pattern.as_str()));
    }
    let beyond: Vec<String> = here.iter().map(|(file, text)| format!("{file}::{}", text.key)).collect();
    if !lacking.is_empty() || !beyond.is_empty() {
        return Err(format!("{tag} lacks [{}] and has [{}] beyond {DECIDES}.", lacking.join(", "), beyond.join(", ")));
    }
    Ok(patterns)
}

/// A Rust item for each key, and the number of this set of them.
fn items(files: &[File]) -> (String, u64) {
    let mut items = String::new();
    let mut number = 0_u16;
    for (file, texts) in files {
        items.push_str(&format!("/// Texts of `{file}.ftl`.\npub mod {} {{\n", file.replace('-', "_")));
        for text in texts {
            items.push_str(&item(text, number));
            number += 1;
        }
        items.push_str("}\n");
    }
    let build = checksum(&items);
    items.push_str("/// The number of this set of keys; a table of another build has another.\n");
    items.push_str(&format!("pub const BUILD: u64 = {build};\n"));
    (items, build)
}

/// The item of the text at a place in the table.
fn item(text: &Text, number: u16) -> String {
    let Text { key, places, says, .. } = text;
    let says = says.replace(['[', ']', '<', '>'], "");
    if places.is_empty() {
        return format!(
            "/// {says}\npub struct {key};\nimpl {key} {{\n\
             /// The text.\n#[inline(always)]\npub fn say(self) -> &'static str {{ super::plain({number}) }}\n}}\n"
        );
    }
    let field = |(place, of_number): &(String, bool)| {
        let kind = if *of_number { "super::Number" } else { "super::Text<'a>" };
        format!("/// Stands in the text.\npub r#{place}: {kind},\n")
    };
    let value = |(place, of_number): &(String, bool)| {
        let (shown, form) = (format!("&self.r#{place}.shown"), format!("self.r#{place}.form"));
        if *of_number { format!("({shown}, {form}),") } else { format!("(self.r#{place}.0, \"\"),") }
    };
    let fields: String = places.iter().map(field).collect();
    let values: String = places.iter().map(value).collect();
    let (own, any) = if fields.contains("'a") { ("<'a>", "<'_>") } else { ("", "") };
    format!(
        "/// {says}\npub struct {key}{own} {{\n{fields}}}\nimpl {key}{any} {{\n\
         /// The text.\npub fn say(self) -> String {{ super::filled({number}, &[{values}]) }}\n}}\n"
    )
}

/// A Rust list of language, part, name and contents of each table.
fn list(tables: &[Table]) -> String {
    let row = |table: &Table| {
        let (language, part, name) = (&table.language, table.part, table.name());
        format!("({language:?}, {part:?}, {name:?}, include_str!(concat!(env!(\"OUT_DIR\"), \"/{name}\"))),\n")
    };
    format!("&[\n{}]\n", tables.iter().map(row).collect::<String>())
}

/// FNV-1a (RFC draft-eastlake-fnv), 64 bits.
fn checksum(text: &str) -> u64 {
    text.bytes()
        .fold(0xcbf2_9ce4_8422_2325, |sum: u64, byte| (sum ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3))
}
