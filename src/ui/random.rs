//! Random numbers for ids, from the browser.

/// A random number of 52 bits, as ids are made from.
pub fn random() -> u64 {
    (js_sys::Math::random() * 4_503_599_627_370_496.0) as u64
}
