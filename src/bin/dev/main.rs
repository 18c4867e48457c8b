//! The project's tool, `cargo dev`.

fn main() {}
