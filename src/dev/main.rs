//! `cargo dev`, the project's tool.

fn main() -> std::process::ExitCode {
    brimwright_dev::obey()
}
