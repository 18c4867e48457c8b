//! The wasm file without what only tools read.
//!
//! A module is a header of eight bytes, then sections: an id, the length of the content in LEB128,
//! the content (WebAssembly core specification, section 5.5). Sections of id 0 are custom: leaving
//! them out changes nothing of what the module does.

use crate::run::Outcome;

const HEADER: usize = 8;
const CUSTOM: u8 = 0;

/// The module without its custom sections: names of functions, producers, features. They weigh a
/// third of a small app and serve nobody who uses it.
pub fn without_custom_sections(module: &[u8]) -> Outcome<Vec<u8>> {
    shortened(module)
        .ok_or_else(|| "The built wasm file is cut off or no wasm at all. Run `cargo dev bundle` again.".to_owned())
}

fn shortened(module: &[u8]) -> Option<Vec<u8>> {
    let (header, mut rest) = module.split_at_checked(HEADER)?;
    if !header.starts_with(b"\0asm") {
        return None;
    }
    let mut kept = header.to_vec();
    while let Some((&id, after_id)) = rest.split_first() {
        let (length, content) = leb128(after_id)?;
        let after = content.get(length..)?;
        let section = rest.get(..rest.len() - after.len())?;
        if id != CUSTOM {
            kept.extend_from_slice(section);
        }
        rest = after;
    }
    Some(kept)
}

/// An unsigned number of at most 32 bits, and what follows it.
fn leb128(bytes: &[u8]) -> Option<(usize, &[u8])> {
    let mut number = 0usize;
    for (place, &byte) in bytes.iter().take(5).enumerate() {
        number |= usize::from(byte & 0x7f) << (7 * place);
        if byte & 0x80 == 0 {
            return Some((number, bytes.get(place + 1..)?));
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The example of the WebAssembly core specification, section 5.2.2: 624485 is E5 8E 26.
    #[test]
    fn lengths_are_leb128() {
        assert_eq!(leb128(&[0xe5, 0x8e, 0x26, 9]), Some((624_485, [9].as_slice())));
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
