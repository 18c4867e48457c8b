//! Showing numbers to people. What is rounded here is rounded for the eye only.

use super::fraction::{pieces_in_parts, to_a_sixteenth};
use super::{
    Amount, Count, Currency, Exact, Length, LengthUnit, Mass, Money, NumberStyle, Overflow, Share, System, Temperature,
    TypedLength, Unit, Volume, show_inches, show_pieces,
};

/// A number with all its digits, grouped, and with at least `least_places` decimals.
pub fn show_number(number: Exact, least_places: u32, style: &NumberStyle) -> String {
    let plain = number.to_string();
    let (sign, digits) = match plain.strip_prefix('-') {
        Some(digits) => ("\u{2212}", digits),
        None => ("", plain.as_str()),
    };
    let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
    let mut shown = String::from(sign);
    for (index, digit) in whole.chars().enumerate() {
        let left = whole.len().saturating_sub(index);
        if index > 0 && whole.len() >= style.grouped_from && begins_a_group(left, style.further_group) {
            shown.push(style.group);
        }
        shown.push(digit);
    }
    let zeros = (least_places as usize).saturating_sub(part.len());
    if !part.is_empty() || zeros > 0 {
        shown.push(style.decimal);
        shown.push_str(part);
        shown.extend(std::iter::repeat_n('0', zeros));
    }
    shown
}

/// Whether a group begins where so many digits are left: the last has three.
fn begins_a_group(left: usize, further: usize) -> bool {
    left >= 3 && left.saturating_sub(3).is_multiple_of(further)
}

/// An amount with all its digits and its unit, called `unit`: "12.5 fl oz"; pieces as "1 1/2 ea".
pub fn show_amount(amount: Amount, unit: &str, style: &NumberStyle) -> String {
    let number = match amount.unit {
        Unit::Piece => show_pieces(amount.number, style),
        _ => show_number(amount.number, 0, style),
    };
    format!("{number} {unit}")
}

/// A length with all its digits and its unit, called `unit`: "90 mm", "3 1/2 in".
pub fn show_typed_length(length: TypedLength, unit: &str, style: &NumberStyle) -> String {
    let number = match length.unit {
        LengthUnit::Inch => show_inches(length.number, style),
        LengthUnit::Millimetre | LengthUnit::Centimetre => show_number(length.number, 0, style),
    };
    format!("{number} {unit}")
}

/// Money, rounded to its currency's digits, half away from zero: "$9.50".
pub fn show_money(money: Money, currency: Currency, style: &NumberStyle) -> String {
    let rounded = currency.rounded(money).major();
    let (sign, size) = if rounded.is_negative() { ("\u{2212}", rounded.negated()) } else { ("", rounded) };
    let number = show_number(size, currency.digits(), style);
    format!("{sign}{}{number}{}", style.money_before, style.money_after)
}

/// A share, rounded to 0.1 %: "64.5%".
///
/// # Errors
/// [`Overflow`] if a hundred times the share leaves the range of [`Exact`].
pub fn show_percent(share: Share, style: &NumberStyle) -> Result<String, Overflow> {
    Ok(show_percentage(share.percent()?.rounded(1), 1, style))
}

/// A share, rounded to at most so many decimals of a percent, without zeros at their end: "90%".
///
/// # Errors
/// [`Overflow`] if a hundred times the share leaves the range of [`Exact`].
pub fn show_short_percent(share: Share, places: u32, style: &NumberStyle) -> Result<String, Overflow> {
    Ok(show_percentage(share.percent()?.rounded(places), 0, style))
}

/// A number of percent with all its digits, and at least `least_places` decimals: "12.5%".
pub fn show_percentage(number: Exact, least_places: u32, style: &NumberStyle) -> String {
    let sign = if number.is_negative() { "\u{2212}" } else { "" };
    [sign, &style.percent_before, &show_number(number.abs(), least_places, style), &style.percent_after].concat()
}

/// A volume, rounded to 1 mL or 0.1 fl oz (0.01 below 1 fl oz): "16.0 fl oz".
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn show_volume(volume: Volume, system: System, style: &NumberStyle) -> Result<String, Overflow> {
    volume_to(0, volume, system, style, to_nearest)
}

/// A volume with one decimal more than [`show_volume`], for the checking of fills.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn show_fine_volume(volume: Volume, system: System, style: &NumberStyle) -> Result<String, Overflow> {
    volume_to(1, volume, system, style, to_nearest)
}

/// A volume to fill to, with the decimals of [`show_fine_volume`], and rounded up.
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn show_fill(volume: Volume, system: System, style: &NumberStyle) -> Result<String, Overflow> {
    volume_to(1, volume, system, style, Exact::rounded_up)
}

fn to_nearest(number: Exact, places: u32) -> Result<Exact, Overflow> {
    Ok(number.rounded(places))
}

fn volume_to(
    more: u32,
    volume: Volume,
    system: System,
    style: &NumberStyle,
    round: fn(Exact, u32) -> Result<Exact, Overflow>,
) -> Result<String, Overflow> {
    let unit = system.drink_unit();
    let number = volume.millilitres().over(unit.size())?;
    let places: u32 = match unit {
        Unit::Millilitre => 0,
        _ if number < Exact::ONE => 2,
        _ => 1,
    };
    let places = places.saturating_add(more);
    Ok(format!("{}\u{a0}{unit}", show_number(round(number, places)?, places, style)))
}

/// A length, rounded to 0.1 mm or 1/16 in, in the unit of the system, called `unit`: "3 1/2 in".
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn show_length(length: Length, system: System, unit: &str, style: &NumberStyle) -> Result<String, Overflow> {
    let of = LengthUnit::of(system);
    let number = length.millimetres().over(of.size())?;
    let shown = match of {
        LengthUnit::Inch => show_inches(to_a_sixteenth(number), style).replace(' ', "\u{a0}"),
        LengthUnit::Millimetre | LengthUnit::Centimetre => show_number(number.rounded(1), 1, style),
    };
    Ok(format!("{shown}\u{a0}{unit}"))
}

/// A temperature with all its digits: "40 °F".
pub fn show_temperature(temperature: Temperature, style: &NumberStyle) -> String {
    format!("{}\u{a0}{}", show_number(temperature.degrees, 0, style), temperature.scale.name())
}

/// A mass, rounded to 1 g or 0.1 oz, and from a pound or kilogram on to 0.01 of that: "3.25 lb".
///
/// # Errors
/// [`Overflow`] if a number leaves the range of [`Exact`].
pub fn show_mass(mass: Mass, system: System, style: &NumberStyle) -> Result<String, Overflow> {
    let large = system.buying_weight_unit();
    let small = system.weight_unit();
    let (unit, places) = match (mass.grams() >= large.size(), small) {
        (true, _) => (large, 2),
        (false, Unit::Gram) => (small, 0),
        (false, _) => (small, 1),
    };
    let number = mass.grams().over(unit.size())?.rounded(places);
    Ok(format!("{}\u{a0}{unit}", show_number(number, places, style)))
}

/// A number of pieces, called `unit`: "1 1/2 ea", or rounded to 0.01 if it has no half, third or quarter.
pub fn show_count(count: Count, unit: &str, style: &NumberStyle) -> String {
    let number = pieces_in_parts(count.pieces(), style).map(|number| number.replace(' ', "\u{a0}"));
    let number = number.unwrap_or_else(|| show_number(count.pieces().rounded(2), 0, style));
    format!("{number}\u{a0}{unit}")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn money(text: &str) -> Money {
        Money::from_major(Exact::from_plain(text, 6).unwrap())
    }

    #[test]
    fn money_has_the_digits_of_its_currency() {
        let style = NumberStyle::english("$");
        assert_eq!(show_money(money("1234.5"), Currency::USD, &style), "$1,234.50");
        assert_eq!(show_money(money("-0.005"), Currency::USD, &style), "\u{2212}$0.01");
        let yen = Currency::from_code("JPY").unwrap();
        assert_eq!(show_money(money("649.5"), yen, &NumberStyle::english("¥")), "¥650");
        let dinar = Currency::from_code("KWD").unwrap();
        assert_eq!(show_money(money("1.5"), dinar, &NumberStyle::continental(" KWD")), "1,500 KWD");
    }

    #[test]
    fn lengths_are_to_a_sixteenth_of_an_inch_or_a_tenth_of_a_millimetre() {
        let length = Length::from_millimetres(Exact::from_plain("88.87", 6).unwrap());
        let shown =
            |system| show_length(length, system, LengthUnit::of(system).symbol(), &NumberStyle::english("")).unwrap();
        assert_eq!(shown(System::UsCustomary), "3\u{a0}1/2\u{a0}in");
        assert_eq!(shown(System::Metric), "88.9\u{a0}mm");
    }

    #[test]
    fn fills_are_judged_by_one_decimal_more() {
        let volume = Volume::from_millilitres(Exact::from_plain("355.25", 6).unwrap());
        let shown = |system| show_fine_volume(volume, system, &NumberStyle::english("")).unwrap();
        assert_eq!(shown(System::Metric), "355.3\u{a0}mL");
        assert_eq!(shown(System::UsCustomary), "12.01\u{a0}fl oz");
    }

    #[test]
    fn shares_show_one_decimal() {
        let share = Share::from_fraction(Exact::from_plain("0.6449", 6).unwrap());
        assert_eq!(show_percent(share, &NumberStyle::continental("")).unwrap(), "64,5\u{a0}%");
    }

    #[test]
    fn thousands_are_grouped() {
        let number = Exact::from_plain("-1234567.25", 6).unwrap();
        assert_eq!(show_number(number, 0, &NumberStyle::english("")), "\u{2212}1,234,567.25");
        assert_eq!(show_number(Exact::from(100), 0, &NumberStyle::english("")), "100");
    }
}
