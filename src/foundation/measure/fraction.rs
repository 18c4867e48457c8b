//! Numbers as people of kitchens write them: "1/2", "3 1/2".

use super::{Exact, NumberStyle, TYPED_PLACES, show_number};

/// The parts of a piece that are written as a fraction.
const OF_A_PIECE: &[u32] = &[2, 3, 4];

/// The parts of an inch on a ruler.
const OF_AN_INCH: u32 = 16;

/// A number of pieces as a whole number and a half, third or quarter, all digits otherwise: "1 1/2",
/// "0.4". A third is what is one to six decimals, as it is typed.
pub fn show_pieces(pieces: Exact, style: &NumberStyle) -> String {
    pieces_in_parts(pieces, style).unwrap_or_else(|| show_number(pieces, 0, style))
}

/// A number of pieces that has a half, third or quarter, or is whole. Returns `None` for any other.
pub(super) fn pieces_in_parts(pieces: Exact, style: &NumberStyle) -> Option<String> {
    OF_A_PIECE.iter().find_map(|parts| in_parts(pieces, *parts, style))
}

/// A number of inches as a whole number and sixteenths, all digits if it is no such number: "3 1/2",
/// "3.4".
pub fn show_inches(inches: Exact, style: &NumberStyle) -> String {
    in_parts(inches, OF_AN_INCH, style).unwrap_or_else(|| show_number(inches, 0, style))
}

/// The nearest sixteenth.
pub(super) fn to_a_sixteenth(inches: Exact) -> Exact {
    let sixteenths = || inches.times(Exact::from(OF_AN_INCH))?.rounded(0).over(Exact::from(OF_AN_INCH));
    sixteenths().unwrap_or(inches)
}

/// The number as a whole number and so many parts of one. Returns `None` if it is not a whole number of
/// them, to the digits that are typed.
fn in_parts(number: Exact, parts: u32, style: &NumberStyle) -> Option<String> {
    let size = number.abs();
    let counted = size.times(Exact::from(parts)).ok()?.rounded(0);
    let to_typed = |number: Exact| number.rounded(TYPED_PLACES as u32);
    if to_typed(counted.over(Exact::from(parts)).ok()?) != to_typed(size) {
        return None;
    }
    let (counted, parts) = (u64::try_from(counted.whole_parts(0)?).ok()?, u64::from(parts));
    let (whole, part) = (counted.checked_div(parts)?, counted.checked_rem(parts)?);
    let common = common_divisor(part, parts);
    let (part, parts) = (part.checked_div(common)?, parts.checked_div(common)?);
    let sign = if number.is_negative() { "\u{2212}" } else { "" };
    match (whole, part) {
        (_, 0) => Some(format!("{sign}{}", show_number(Exact::new(i64::try_from(whole).ok()?, 0), 0, style))),
        (0, _) => Some(format!("{sign}{part}/{parts}")),
        // Nobody counts thousands and a half: with a sign between its groups it would not be read back.
        _ => (whole < 1000).then(|| format!("{sign}{whole} {part}/{parts}")),
    }
}

/// The greatest number that divides both; of nothing, the other.
fn common_divisor(a: u64, b: u64) -> u64 {
    match a.checked_rem(b) {
        None => a,
        Some(rest) => common_divisor(b, rest),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn number(text: &str) -> Exact {
        Exact::from_plain(text, 6).unwrap()
    }

    #[test]
    fn pieces_are_halves_thirds_and_quarters_where_they_are() {
        let style = NumberStyle::english("$");
        for (pieces, shown) in [
            ("0", "0"),
            ("3", "3"),
            ("1234", "1,234"),
            ("0.5", "1/2"),
            ("1.5", "1 1/2"),
            ("2.25", "2 1/4"),
            ("0.75", "3/4"),
            ("0.333333", "1/3"),
            ("12.666667", "12 2/3"),
            ("-0.5", "\u{2212}1/2"),
            ("999.5", "999 1/2"),
            ("1250.5", "1,250.5"),
            // Nearly one is not one.
            ("0.33", "0.33"),
            ("0.49", "0.49"),
            ("0.125", "0.125"),
            ("0.166667", "0.166667"),
        ] {
            assert_eq!(show_pieces(number(pieces), &style), shown, "{pieces}");
        }
        assert_eq!(show_pieces(number("0.4"), &NumberStyle::continental("")), "0,4");
    }

    #[test]
    fn inches_are_sixteenths_where_they_are() {
        let style = NumberStyle::english("$");
        for (inches, shown) in [
            ("3.5", "3 1/2"),
            ("0.75", "3/4"),
            ("4.0625", "4 1/16"),
            ("6", "6"),
            ("3.4", "3.4"),
            ("0.333333", "0.333333"),
        ] {
            assert_eq!(show_inches(number(inches), &style), shown, "{inches}");
        }
        for (inches, nearest) in [("0.78", "0.75"), ("3.47", "3.5"), ("0.03", "0"), ("0.032", "0.0625"), ("7.99", "8")]
        {
            assert_eq!(to_a_sixteenth(number(inches)).to_string(), nearest, "{inches}");
        }
    }
}
