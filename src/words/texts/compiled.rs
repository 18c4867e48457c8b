//! What the build made of the tables.

/// An item for each key, in a module for each file.
#[allow(non_camel_case_types, clippy::needless_raw_string_hashes)]
pub mod keys {
    use super::super::filling::{filled, plain};
    use super::super::{Number, Text};

    include!(concat!(env!("OUT_DIR"), "/texts.rs"));
}

/// Language, part, name of the file and contents of every table. The app fetches those of one
/// language instead.
#[cfg(not(target_arch = "wasm32"))]
pub static TABLES: &[(&str, &str, &str, &str)] = include!(concat!(env!("OUT_DIR"), "/tables.rs"));

/// Every key, in the order of the lines of a table: "first::opening".
#[cfg(not(target_arch = "wasm32"))]
pub static KEYS: &[&str] = include!(concat!(env!("OUT_DIR"), "/keys.rs"));
