//! What is tried of one thing among several.

pub use crate::sizes::side_by_side::Tried;

/// What is tried of one thing.
pub fn found<I: PartialEq, T: Copy>(list: &[(I, T)], id: I) -> Option<T> {
    list.iter().find(|(of, _)| *of == id).map(|(_, value)| *value)
}

/// Tries something of one thing, or nothing any more.
pub fn put<I: PartialEq + Copy, T>(list: &mut Vec<(I, T)>, id: I, value: Option<T>) {
    list.retain(|(of, _)| *of != id);
    list.extend(value.map(|value| (id, value)));
}
