//! How many cases a property is tried on.

use proptest::prelude::ProptestConfig;

/// What `cargo dev test` asks for, and what proptest itself would choose.
const USUAL: u32 = 256;

/// A property that is tried on so many cases by `cargo dev test`, and on its share of them where
/// fewer are asked for by the variable `PROPTEST_CASES`, as plain `cargo test` does.
pub fn cases(count: u32) -> ProptestConfig {
    let usual = ProptestConfig::default();
    let cases = u64::from(count) * u64::from(usual.cases) / u64::from(USUAL);
    ProptestConfig { cases: u32::try_from(cases).unwrap_or(u32::MAX).max(1), ..usual }
}
