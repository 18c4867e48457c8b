//! The project's tool, `cargo dev`: builds, serves, tests and measures the app. It is native only;
//! Cargo asks for a main function of it even when it builds for the browser.

#[cfg(not(target_arch = "wasm32"))]
#[path = "command.rs"]
mod command;

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    command::obey()
}

#[cfg(target_arch = "wasm32")]
fn main() {}
