//! How fast the engine is, in figures.

fn main() {
    println!("engine");
}
