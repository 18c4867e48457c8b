//! Numbers in no order, the same in every run.

/// A linear congruential generator with Knuth's multiplier for 64 bits (TAOCP 3.3.4), from memory.
pub struct Dice(u64);

impl Dice {
    /// Dice that fall as `seed` has them.
    pub fn new(seed: u64) -> Dice {
        Dice(seed)
    }

    /// A number from 0 up to, and not at, `sides`.
    pub fn below(&mut self, sides: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
        (self.0 >> 33) % sides
    }
}
