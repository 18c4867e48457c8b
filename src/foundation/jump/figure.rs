//! A value that a field holds, to be compared with what it held before.

use std::fmt;

use crate::foundation::measure::{
    Amount, Dimension, Exact, LengthUnit, NumberStyle, System, TYPED_PLACES, TypedLength, Unit, Wanted, read_amount,
    read_length, read_number,
};

/// A value that a field holds: a number, and its unit if it has one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// Money, a percentage, a density.
    Number(Exact),
    /// An amount with its unit.
    Amount(Amount),
    /// A length with its unit.
    Length(TypedLength),
}

impl Figure {
    /// Reads what a field shows. Returns `None` if that is not a figure.
    pub fn shown(text: &str, units: System, style: &NumberStyle) -> Option<Figure> {
        let all = &[Dimension::Volume, Dimension::Mass, Dimension::Count];
        // A plain ounce that is shown is one by weight; a fluid ounce is shown as such.
        let wanted = Wanted { dimensions: all, unit: Unit::Ounce };
        let number = read_number(text, style).map(Figure::Number);
        let amount = || read_amount(text, wanted, units, style).map(Figure::Amount);
        let length = || read_length(text, units, style).map(Figure::Length);
        number.or_else(|_| amount()).or_else(|_| length()).ok()
    }

    /// Reads what [`Figure`] displays: "38", "40 lb", "3.5 in". Returns `None` for anything else.
    pub fn from_text(text: &str) -> Option<Figure> {
        let number = |number: &str| Exact::from_plain(number, TYPED_PLACES);
        let Some((digits, unit)) = text.split_once(' ') else { return number(text).map(Figure::Number) };
        let number = number(digits)?;
        let amount = Unit::from_symbol(unit).map(|unit| Figure::Amount(Amount::new(number, unit)));
        amount.or_else(|| LengthUnit::from_symbol(unit).map(|unit| Figure::Length(TypedLength::new(number, unit))))
    }

    /// The number in its base unit, and what that is. Returns `None` if it leaves the range of
    /// [`Exact`].
    pub(super) fn base(self) -> Option<(Exact, Base)> {
        match self {
            Figure::Number(number) => Some((number, Base::Bare)),
            Figure::Amount(amount) => {
                amount.measure().ok().map(|measure| (measure.base(), Base::Of(measure.dimension())))
            }
            Figure::Length(length) => length.length().ok().map(|length| (length.millimetres(), Base::Length)),
        }
    }
}

/// The base unit of a figure: figures of the same one can be compared.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Base {
    Bare,
    Of(Dimension),
    Length,
}

impl fmt::Display for Figure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Figure::Number(number) => number.fmt(f),
            Figure::Amount(amount) => amount.fmt(f),
            Figure::Length(length) => length.fmt(f),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_shown_is_read_by_the_locale() {
        let shown =
            |text| Figure::shown(text, System::UsCustomary, &NumberStyle::english("$")).map(|it| it.to_string());
        for (text, figure) in [
            ("1,234.50", Some("1234.5")),
            ("40 lb", Some("40 lb")),
            ("12 oz", Some("12 oz")),
            ("12 fl oz", Some("12 fl oz")),
            ("3.5 in", Some("3.5 in")),
            ("", None),
        ] {
            assert_eq!(shown(text).as_deref(), figure, "{text:?}");
        }
        let german = Figure::shown("1.234,50", System::Metric, &NumberStyle::continental("\u{a0}€"));
        assert_eq!(german, Figure::from_text("1234.5"));
    }

    #[test]
    fn what_is_displayed_is_read_back() {
        for text in ["38", "0.049287", "40 lb", "12 fl oz", "2 imp pt", "3.5 in", "90 mm"] {
            assert_eq!(Figure::from_text(text).map(|figure| figure.to_string()).as_deref(), Some(text));
        }
        for text in ["", "lb", "3 stone", "40  lb", "1e3"] {
            assert_eq!(Figure::from_text(text), None, "{text:?}");
        }
    }
}
