//! The tools the project builds and tests with, set up once for each person.

use std::env;
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use crate::run::{Outcome, in_project, program, run, say};

/// The target of the app.
pub const WASM: &str = "wasm32-unknown-unknown";

/// The version of Trunk that builds the site.
const TRUNK: &str = "0.21.14";

/// Trunk only orders the work of others and stays offline: built without its downloads' encryption
/// and with few optimisations it does the same and is there in two thirds of the time.
const QUICK_TRUNK: [&str; 7] = [
    "--no-default-features",
    "--config",
    "profile.release.opt-level=1",
    "--config",
    "profile.release.lto=false",
    "--config",
    "profile.release.codegen-units=16",
];

/// The version of the driver of Firefox.
const GECKODRIVER: &str = "0.37.1";

/// The driver of Firefox only passes messages on: with few optimisations it is there in half the time.
const QUICK_GECKODRIVER: [&str; 4] =
    ["--config", "profile.release.opt-level=1", "--config", "profile.release.codegen-units=16"];

/// The programs that tests in browsers need, each with the Debian package that brings it. The driver of WebKitGTK
/// brings a small browser; it has no windows without a screen, and Xvfb is one in memory.
const PROGRAMS: [(&str, &str); 5] = [
    ("chromium", "chromium"),
    ("chromedriver", "chromium-driver"),
    ("firefox-esr", "firefox-esr"),
    ("WebKitWebDriver", "webkit2gtk-driver"),
    ("Xvfb", "xvfb"),
];

/// Where the set-up tools are.
pub struct Tools {
    folder: PathBuf,
}

impl Tools {
    /// Sets up what building the site needs: the wasm target, Trunk and wasm-bindgen.
    pub fn for_building() -> Outcome<Tools> {
        wasm_target()?;
        let tools = Tools { folder: cache()?.join("tools") };
        let bindgen = locked_version("wasm-bindgen")?;
        tools.install("wasm-bindgen-cli", "wasm-bindgen", &bindgen, &[])?;
        tools.install("trunk", "trunk", TRUNK, &QUICK_TRUNK)?;
        Ok(tools)
    }

    /// Sets up what testing in browsers needs besides: Chromium, Firefox and WebKitGTK, and their drivers.
    pub fn for_testing() -> Outcome<Tools> {
        let tools = Tools::for_building()?;
        let missing: Vec<&str> =
            PROGRAMS.iter().filter(|(program, _)| on_path(program).is_none()).map(|(_, package)| *package).collect();
        if !missing.is_empty() {
            install_packages(&missing)?;
        }
        tools.install("geckodriver", "geckodriver", GECKODRIVER, &QUICK_GECKODRIVER)?;
        Ok(tools)
    }

    /// Cargo, told where the drivers are that its tests use.
    pub fn cargo_with_drivers(&self, words: &[&str]) -> Command {
        let mut cargo = program("cargo");
        cargo.args(words).env("GECKODRIVER", self.path("geckodriver"));
        if let Some(driver) = on_path("chromedriver") {
            cargo.env("CHROMEDRIVER", driver);
        }
        cargo
    }

    /// Cargo, running the tests of the store in Chromium: all, or those with one of `names` in theirs.
    pub fn cargo_test_of_the_store(&self, names: &[&str]) -> Command {
        let mut cargo = self.cargo_with_drivers(&["test", "--locked", "--target", WASM, "--test", "browser", "--"]);
        cargo.args(names);
        // With two drivers at hand the runner would choose the other.
        cargo.env_remove("GECKODRIVER");
        cargo.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", self.path("wasm-bindgen-test-runner"));
        cargo
    }

    /// The path of a set-up tool.
    pub fn path(&self, name: &str) -> PathBuf {
        self.folder.join("bin").join(name)
    }

    /// Trunk, finding our wasm-bindgen first and downloading nothing.
    pub fn trunk(&self) -> Outcome<Command> {
        // Trunk offline means Cargo offline: fetch what Cargo needs before.
        run(
            program("cargo").args(["fetch", "--locked"]),
            "Check the connection and try again; if Cargo.toml changed, run `cargo check` first.",
        )?;
        let mut trunk = program(self.path("trunk"));
        trunk
            .arg("build")
            .args(["--release", "--locked", "--offline", "--skip-version-check", "--quiet"])
            .env("PATH", self.search_path()?)
            // Trunk takes only true or false here, not the usual 1.
            .env_remove("NO_COLOR");
        Ok(trunk)
    }

    fn search_path(&self) -> Outcome<OsString> {
        let before = env::var_os("PATH").unwrap_or_default();
        env::join_paths(std::iter::once(self.folder.join("bin")).chain(env::split_paths(&before))).map_err(|error| {
            format!("The tools' folder cannot stand on PATH ({error}). Set XDG_CACHE_HOME to another folder.")
        })
    }

    fn install(&self, package: &str, name: &str, version: &str, how: &[&str]) -> Outcome {
        if version_of(&self.path(name)).as_deref() == Some(version) {
            return Ok(());
        }
        say(format!("Installing {package} {version} into {}, once; a few minutes", self.folder.display()));
        run(
            program("cargo").args(["install", "--locked", "--force", "--root"]).arg(&self.folder).args(how).args([
                "--version",
                version,
                package,
            ]),
            "Check the connection, and that a C compiler is installed (Debian: `apt-get install \
             build-essential`), then run the same command again.",
        )
    }
}

/// The per-user cache of this tool: `$XDG_CACHE_HOME` or `~/.cache`.
pub fn cache() -> Outcome<PathBuf> {
    let absolute = |name| env::var_os(name).map(PathBuf::from).filter(|path| path.is_absolute());
    absolute("XDG_CACHE_HOME")
        .or_else(|| absolute("HOME").map(|home| home.join(".cache")))
        .map(|cache| cache.join("brimwright-dev"))
        .ok_or_else(|| "There is no place for the tools: set HOME or XDG_CACHE_HOME to a folder of yours.".to_owned())
}

/// Adds the wasm target of the pinned toolchain when it is missing.
fn wasm_target() -> Outcome {
    let sysroot = program("rustc")
        .args(["--print", "sysroot"])
        .stderr(Stdio::inherit())
        .output()
        .map_err(|error| format!("rustc could not start ({error}). Install Rust by rustup."))?;
    let sysroot = PathBuf::from(String::from_utf8_lossy(&sysroot.stdout).trim());
    if sysroot.join("lib/rustlib").join(WASM).is_dir() {
        return Ok(());
    }
    say(format!("Adding the target {WASM} to the toolchain, once"));
    run(program("rustup").args(["target", "add", WASM]), "Check the connection, and that Rust was installed by rustup.")
}

/// The version of a dependency in the lock file: the command-line tool must be of the same.
fn locked_version(package: &str) -> Outcome<String> {
    let lock = std::fs::read_to_string(in_project("Cargo.lock"))
        .map_err(|error| format!("Cargo.lock cannot be read ({error}). Run `cargo check`."))?;
    version_in(&lock, package).ok_or_else(|| format!("Cargo.lock names no version of {package}. Run `cargo check`."))
}

fn version_in(lock: &str, package: &str) -> Option<String> {
    let (_, entry) = lock.split_once(&format!("\nname = \"{package}\"\nversion = \""))?;
    entry.split_once('"').map(|(version, _)| version.to_owned())
}

/// What a tool says its version is; none when it is not there or does not run.
fn version_of(tool: &Path) -> Option<String> {
    let output = Command::new(tool).arg("--version").output().ok()?;
    let text = String::from_utf8(output.stdout).ok()?;
    text.split_whitespace().nth(1).map(str::to_owned)
}

/// The path of a program that can be run by its name.
pub fn on_path(name: &str) -> Option<PathBuf> {
    env::split_paths(&env::var_os("PATH")?).map(|folder| folder.join(name)).find(|path| path.is_file())
}

fn install_packages(packages: &[&str]) -> Outcome {
    let names = packages.join(", ");
    let by_hand = format!(
        "Install by hand what the Debian packages {names} bring, so that it can be run by its name, then run the same \
         command again."
    );
    if on_path("apt-get").is_none() {
        return Err(format!("Tests need browsers, and there is no apt-get here to install them. {by_hand}"));
    }
    say(format!("Installing {names} by apt-get, once"));
    let as_root = |words: &[&str]| {
        let root = program("id").arg("-u").output().is_ok_and(|output| output.stdout.trim_ascii() == b"0");
        let mut command = program(if root { "env" } else { "sudo" });
        command.arg("DEBIAN_FRONTEND=noninteractive").args(words);
        if !root {
            // sudo may have to ask for a password.
            command.stdin(Stdio::inherit());
        }
        command
    };
    run(&mut as_root(&["apt-get", "update"]), &by_hand)?;
    run(as_root(&["apt-get", "install", "--yes", "--no-install-recommends"]).args(packages), &by_hand)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_version_is_that_of_the_very_package() {
        let lock = "[[package]]\nname = \"wasm-bindgen-test\"\nversion = \"0.3.79\"\n\n\
                    [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.129\"\n";
        assert_eq!(version_in(lock, "wasm-bindgen"), Some("0.2.129".to_owned()));
        assert_eq!(version_in(lock, "bindgen"), None);
    }
}
