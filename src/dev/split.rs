//! The app's wasm in two files: what the first screen needs, and the rest.
//!
//! Trunk makes bindings for the whole. Here what the linker wrote is cut at the functions that the
//! app marks (`src/ui/later.rs`), and the bindings are made anew for the part that is loaded first.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use crate::run::{Outcome, program, run};

/// The part that is loaded first, after wasm-bindgen.
pub const WASM: &str = "brimwright_bg.wasm";
/// Its bindings.
pub const BINDINGS: &str = "brimwright.js";
/// The part that comes later.
pub const LATER_WASM: &str = "split_later.wasm";
/// What loads it. The first part asks for it by this name.
pub const LATER: &str = "later.js";

/// Puts both parts and their scripts into `site`, in place of Trunk's.
pub fn split(site: &Path) -> Outcome {
    let target = target()?;
    // Trunk says which it built: release or debug.
    let profile = env::var("TRUNK_PROFILE").map_err(|_| "Trunk did not say what it built.")?;
    let linked = target.join("wasm32-unknown-unknown").join(profile).join("brimwright.wasm");
    let linked = fs::read(&linked)
        .map_err(|error| format!("{} cannot be read ({error}). Run `cargo dev bundle` again.", linked.display()))?;
    let work = target.join("split");
    fs::remove_dir_all(&work).ok();
    let first = work.join("brimwright.wasm");
    let mut options = wasm_split_cli_support::Options::new(&linked);
    options.output_dir = &work;
    options.main_out_path = &first;
    let (loader, bindings) = (format!("./{LATER}"), format!("./{BINDINGS}"));
    options.link_name = &loader;
    options.main_module = &bindings;
    let parts = wasm_split_cli_support::transform(options)
        .map_err(|error| format!("The app's wasm cannot be split ({error:#}). Look at `wasm_split` in src/ui."))?;
    let later = work.join(LATER_WASM);
    if parts.split_modules.as_slice() != [later.clone()] {
        return Err(format!(
            "The app's wasm was split into {:?} beside the first, not into one part: look at `wasm_split` in src/ui.",
            parts.split_modules
        ));
    }
    run(
        program("wasm-bindgen")
            .args(["--target", "web", "--no-typescript", "--keep-lld-exports", "--out-name", "brimwright"])
            .arg("--out-dir")
            .arg(site)
            .arg(&first),
        "Run `cargo dev serve` or `cargo dev bundle`, which set wasm-bindgen up.",
    )?;
    for name in [LATER_WASM, LATER] {
        fs::copy(work.join(name), site.join(name))
            .map_err(|error| format!("{name} cannot be copied ({error}). Run `cargo dev bundle` again."))?;
    }
    Ok(())
}

/// The folder that Cargo builds into: this tool lies in it too.
fn target() -> Outcome<PathBuf> {
    let tool = env::current_exe()
        .map_err(|error| format!("This tool cannot find itself ({error}). Start it by `cargo dev`."))?;
    tool.ancestors().nth(2).map(Path::to_owned).ok_or_else(|| "This tool does not lie in Cargo's folder.".to_owned())
}
