//! The wasm file without what only tools read.
//!
//! A module is a header of eight bytes, then sections: an id, the length of the content in LEB128,
//! the content (WebAssembly core specification, section 5.5). Sections of id 0 are custom: leaving
//! them out changes nothing of what the module does.

use crate::run::Outcome;

const HEADER: usize = 8;
const CUSTOM: u8 = 0;

/// A section of a module.
pub struct Section<'a> {
    /// What it is of.
    pub id: u8,
    /// What is in it.
    pub content: &'a [u8],
    /// The whole of it, with its id and the length of its content.
    pub whole: &'a [u8],
}

/// The module without its custom sections: names of functions, producers, features. They weigh a
/// third of a small app and serve nobody who uses it.
pub fn without_custom_sections(module: &[u8]) -> Outcome<Vec<u8>> {
    let (header, sections) = in_sections(module)?;
    let kept = sections.iter().filter(|section| section.id != CUSTOM).flat_map(|section| section.whole);
    Ok(header.iter().chain(kept).copied().collect())
}

/// The header of a module, and its sections.
pub fn in_sections(module: &[u8]) -> Outcome<(&[u8], Vec<Section<'_>>)> {
    cut(module)
        .ok_or_else(|| "The built wasm file is cut off or no wasm at all. Run `cargo dev bundle` again.".to_owned())
}

fn cut(module: &[u8]) -> Option<(&[u8], Vec<Section<'_>>)> {
    let (header, mut rest) = module.split_at_checked(HEADER)?;
    if !header.starts_with(b"\0asm") {
        return None;
    }
    let mut sections = Vec::new();
    while let Some((&id, after_id)) = rest.split_first() {
        let (length, content) = leb128(after_id)?;
        let (content, after) = content.split_at_checked(length)?;
        let whole = rest.get(..rest.len() - after.len())?;
        sections.push(Section { id, content, whole });
        rest = after;
    }
    Some((header, sections))
}

/// An unsigned number of at most 32 bits, and what follows it.
pub fn leb128(bytes: &[u8]) -> Option<(usize, &[u8])> {
    let mut number = 0usize;
    for (place, &byte) in bytes.iter().take(5).enumerate() {
        number |= usize::from(byte & 0x7f) << (7 * place);
        if byte & 0x80 == 0 {
            return Some((number, bytes.get(place + 1..)?));
        }
    }
    None
}

/// A number as it is read by [`leb128`].
pub fn as_leb128(mut number: usize) -> Vec<u8> {
    let mut bytes = Vec::new();
    loop {
        let low = u8::try_from(number & 0x7f).unwrap_or_default();
        number >>= 7;
        if number == 0 {
            bytes.push(low);
            return bytes;
        }
        bytes.push(low | 0x80);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The example of the WebAssembly core specification, section 5.2.2: 624485 is E5 8E 26.
    #[test]
    fn lengths_are_leb128() {
        assert_eq!(leb128(&[0xe5, 0x8e, 0x26, 9]), Some((624_485, [9].as_slice())));
        assert_eq!(as_leb128(624_485), [0xe5, 0x8e, 0x26]);
        assert_eq!(leb128(&[0x80]), None);
    }

    #[test]
    fn only_custom_sections_go() {
        let module = b"\0asm\x01\0\0\0\x00\x05\x04name\x01\x04\x01\x60\x00\x00\x00\x02\x01x";
        assert_eq!(without_custom_sections(module), Ok(b"\0asm\x01\0\0\0\x01\x04\x01\x60\x00\x00".to_vec()));
    }

    #[test]
    fn what_is_no_wasm_or_cut_off_is_refused() {
        let refused = Err("The built wasm file is cut off or no wasm at all. Run `cargo dev bundle` again.".to_owned());
        assert_eq!(without_custom_sections(b"<!doctype html>"), refused);
        assert_eq!(without_custom_sections(b"\0asm\x01\0\0\0\x01\x04\x01"), refused);
    }
}
