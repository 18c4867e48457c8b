//! Puts the tables of texts into the form that the app reads, and writes a Rust item for each key,
//! so that a key or a placeholder that is misspelt does not compile.

mod compile;

use std::path::Path;
use std::{env, fs};

fn main() -> Result<(), String> {
    println!("cargo::rerun-if-changed=public/texts");
    println!("cargo::rerun-if-changed=src/words/texts/build.rs");
    println!("cargo::rerun-if-changed=src/words/texts/compile.rs");
    let folder = Path::new("public/texts");
    let languages = compile::read(folder)?;
    let compiled = compile::compile(&languages)?;
    let to = env::var("OUT_DIR").map_err(|error| error.to_string())?;
    let write = |name: &str, text: &str| {
        fs::write(Path::new(&to).join(name), text).map_err(|error| format!("{name} cannot be written: {error}."))
    };
    write("texts.rs", &compiled.items)?;
    write("tables.rs", &compiled.list)?;
    write("keys.rs", &compiled.keys)?;
    for table in &compiled.tables {
        write(&table.name(), &table.text)?;
    }
    Ok(())
}
