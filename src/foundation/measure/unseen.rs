//! Characters that leave no mark.

/// The first and last of each run of characters, besides blanks, that leave no mark: those of the general
/// category Cc, those with the property `Default_Ignorable_Code_Point` of Unicode's
/// DerivedCoreProperties.txt (soft hyphen, zero-width characters, direction marks and overrides, Hangul
/// fillers, variation selectors, tags), the interlinear annotation characters, and the blank Braille
/// pattern. From memory of Unicode 16.
const UNSEEN: [(u32, u32); 20] = [
    (0x0000, 0x001f),
    (0x007f, 0x009f),
    (0x00ad, 0x00ad),
    (0x034f, 0x034f),
    (0x061c, 0x061c),
    (0x115f, 0x1160),
    (0x17b4, 0x17b5),
    (0x180b, 0x180f),
    (0x200b, 0x200f),
    (0x2028, 0x202e),
    (0x2060, 0x206f),
    (0x2800, 0x2800),
    (0x3164, 0x3164),
    (0xfe00, 0xfe0f),
    (0xfeff, 0xfeff),
    (0xffa0, 0xffa0),
    (0xfff0, 0xfffb),
    (0x1_bca0, 0x1_bca3),
    (0x1_d173, 0x1_d17a),
    (0xe_0000, 0xe_0fff),
];

/// Whether a character leaves no mark: it neither shows nor takes room as a letter does.
pub fn is_unseen(sign: char) -> bool {
    let code = u32::from(sign);
    UNSEEN.iter().any(|(first, last)| (*first..=*last).contains(&code))
}

/// Whether a text has a character that can be seen.
pub fn is_seen(text: &str) -> bool {
    !text.chars().all(|sign| sign.is_whitespace() || is_unseen(sign))
}

#[cfg(test)]
mod tests {
    use super::{is_seen, is_unseen};

    /// Source: the names and general categories of the Unicode Character Database, from memory.
    #[test]
    fn signs_that_nobody_sees() {
        let unseen = [
            '\u{0}',
            '\u{1b}',
            '\u{85}',
            '\u{ad}',
            '\u{34f}',
            '\u{61c}',
            '\u{115f}',
            '\u{1160}',
            '\u{17b4}',
            '\u{180e}',
            '\u{200b}',
            '\u{200c}',
            '\u{200d}',
            '\u{200e}',
            '\u{200f}',
            '\u{202a}',
            '\u{202e}',
            '\u{2060}',
            '\u{2066}',
            '\u{2069}',
            '\u{2800}',
            '\u{3164}',
            '\u{fe0f}',
            '\u{feff}',
            '\u{ffa0}',
            '\u{fff9}',
            '\u{1d173}',
            '\u{e0001}',
            '\u{e0061}',
            '\u{e0100}',
        ];
        for sign in unseen {
            assert!(is_unseen(sign), "{:x}", u32::from(sign));
            assert!(!is_seen(&format!(" {sign}\u{a0}\u{3000}{sign}\n")), "{:x}", u32::from(sign));
            assert!(is_seen(&format!("{sign}a")), "{:x}", u32::from(sign));
        }
        for text in ["a", "-", "é", "冷", "ㅎ", "⠁", "🍹", "👩\u{200d}🍳", "7", "\u{600}"] {
            assert!(is_seen(text), "{text}");
        }
        assert!(!is_seen("") && !is_seen(" \t\u{2003}"));
    }
}
