//! What a text could mean besides what it says. The person is asked first: what was before stays in force.

use super::{Figure, Kind};
use crate::foundation::measure::{
    Exact, NumberStyle, Time, grouped_or_decimal, read_number, show_percentage, show_time,
};

impl Kind {
    /// The two meanings of a text in a field of this kind that held `was`, each as it is typed to mean only
    /// that: "1.043" where a point groups thousands, "0.68" as a margin in percent, "825" as a rate of tax, "1.5" as
    /// a time. `read` reads the field. Returns `None` if the text is clear.
    pub fn two_meanings(
        self,
        was: Option<Figure>,
        text: &str,
        read: &dyn Fn(&str) -> Option<Figure>,
        style: &NumberStyle,
    ) -> Option<[String; 2]> {
        match self {
            Kind::Labor => seconds_or_minutes(text, style),
            _ => self
                .fraction_or_percent(was, text, style)
                .or_else(|| self.without_its_point(was, text, style))
                .or_else(|| self.thousands_or_decimals(was, text, read, style)),
        }
    }

    /// A number that is doubtful with its sign between thousands, and usual with it before decimals.
    fn thousands_or_decimals(
        self,
        was: Option<Figure>,
        text: &str,
        read: &dyn Fn(&str) -> Option<Figure>,
        style: &NumberStyle,
    ) -> Option<[String; 2]> {
        let both = grouped_or_decimal(text, style)?;
        let [as_thousands, as_decimals] = [read(&both[0])?, read(&both[1])?];
        (self.doubt(was, as_thousands).is_some() && self.doubt(was, as_decimals).is_none()).then_some(both)
    }

    /// A percentage so small that the share itself may be meant: 0.68 of 1 is 68 %. With the sign of percent it
    /// is clear, and so it is where the field held such a percentage before.
    fn fraction_or_percent(self, was: Option<Figure>, text: &str, style: &NumberStyle) -> Option<[String; 2]> {
        let least = self.least_percentage()?;
        let small = |number: Exact| !number.is_zero() && !number.is_negative() && number < least;
        let was_small = matches!(was, Some(Figure::Number(was)) if small(was));
        let number = read_number(text, style).ok().filter(|number| small(*number))?;
        if was_small || text.contains(['%', '٪']) {
            return None;
        }
        let hundredfold = number.times(Exact::new(100, 0)).ok()?;
        Some([number, hundredfold].map(|number| show_percentage(number, 0, style)))
    }

    /// A rate of tax above 100 %: the sign before its decimals was left out. With the sign of percent it is clear,
    /// and so it is where the rate was such a one before.
    fn without_its_point(self, was: Option<Figure>, text: &str, style: &NumberStyle) -> Option<[String; 2]> {
        let hundred = Exact::new(100, 0);
        let number = read_number(text, style).ok().filter(|number| *number > hundred)?;
        let was_above = matches!(was, Some(Figure::Number(was)) if was > hundred);
        if self != Kind::Tax || was_above || text.contains(['%', '٪']) {
            return None;
        }
        let hundredth = number.over(hundred).ok()?;
        Some([number, hundredth].map(|number| show_percentage(number, 0, style)))
    }

    /// The least percentage of this kind that nobody means as a fraction of 1.
    const fn least_percentage(self) -> Option<Exact> {
        match self {
            Kind::TrimYield | Kind::Yield | Kind::Tax | Kind::Margin => Some(Exact::ONE),
            Kind::SmallShare => Some(Exact::new(2, 1)),
            Kind::Price
            | Kind::Pack
            | Kind::Size
            | Kind::Density
            | Kind::Labor
            | Kind::Wage
            | Kind::Stock
            | Kind::Sold
            | Kind::SoldInWeek => None,
        }
    }
}

/// A number with a fraction, where whole numbers are seconds.
fn seconds_or_minutes(text: &str, style: &NumberStyle) -> Option<[String; 2]> {
    let number = read_number(text, style).ok().filter(|number| number.floor() != *number)?;
    let minutes = number.times(Exact::new(60, 0)).ok()?;
    Some([number, minutes].map(|seconds| show_time(Time::from_seconds(seconds), style)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::foundation::measure::System;

    fn meanings(kind: Kind, was: &str, text: &str, style: &NumberStyle) -> Option<[String; 2]> {
        let read = |text: &str| Figure::shown(text, System::Metric, style);
        kind.two_meanings(Figure::from_text(was), text, &read, style)
    }

    fn both(one: &str, other: &str) -> Option<[String; 2]> {
        Some([one.into(), other.into()])
    }

    #[test]
    fn a_sign_between_thousands_may_be_meant_for_decimals() {
        let german = NumberStyle::continental("\u{a0}€");
        for (kind, was, text, expected) in [
            (Kind::Density, "1.04", "1.043", both("1043", "1,043")),
            (Kind::Density, "", "1.043", both("1043", "1,043")),
            (Kind::Price, "1.2", "1.250", both("1250", "1,250")),
            (Kind::Pack, "2 kg", "1.500 kg", both("1500 kg", "1,500 kg")),
            // Either is far from what it was, or the first is not.
            (Kind::Price, "38", "3.800", None),
            (Kind::Pack, "1200 g", "1.500 g", None),
            (Kind::Price, "", "1.250", None),
            // They are no thousands.
            (Kind::Density, "1.04", "1,043", None),
            (Kind::Density, "1.04", "1.04", None),
            (Kind::Density, "1.04", "1043", None),
        ] {
            assert_eq!(meanings(kind, was, text, &german), expected, "{text} after {was}");
        }
        let english = NumberStyle::english("$");
        assert_eq!(meanings(Kind::Density, "1.04", "1,043", &english), both("1043", "1.043"));
        assert_eq!(meanings(Kind::Density, "1.04", "1.043", &english), None);
    }

    #[test]
    fn a_fraction_of_one_may_be_meant_as_a_percentage() {
        let english = NumberStyle::english("$");
        for (kind, was, text, expected) in [
            (Kind::Margin, "70", "0.68", both("0.68%", "68%")),
            (Kind::Margin, "", ".68", both("0.68%", "68%")),
            (Kind::Yield, "65", "0.6", both("0.6%", "60%")),
            (Kind::SmallShare, "2.9", "0.029", both("0.029%", "2.9%")),
            (Kind::Margin, "70", "0.68%", None),
            (Kind::Margin, "70", "1", None),
            (Kind::Margin, "70", "0", None),
            (Kind::Margin, "0.5", "0.68", None),
            (Kind::SmallShare, "2.9", "0.5", None),
            (Kind::Price, "7", "0.68", None),
        ] {
            assert_eq!(meanings(kind, was, text, &english), expected, "{text} after {was}");
        }
        let german = NumberStyle::continental("");
        let both = meanings(Kind::Margin, "70", "0,68", &german).unwrap();
        assert_eq!(both, ["0,68\u{a0}%".to_string(), "68\u{a0}%".to_string()]);
        // What is offered is clear, wherever the sign of percent stands.
        let turkish = NumberStyle { percent_before: "%".into(), percent_after: String::new(), ..german };
        let both = meanings(Kind::Margin, "70", "0,68", &turkish).unwrap();
        assert_eq!(both, ["%0,68", "%68"]);
        for text in both {
            assert_eq!(meanings(Kind::Margin, "70", &text, &turkish), None);
            assert!(read_number(&text, &turkish).is_ok(), "{text}");
        }
    }

    #[test]
    fn a_rate_of_tax_above_the_price_may_lack_its_decimal_sign() {
        let english = NumberStyle::english("$");
        for (kind, was, text, expected) in [
            (Kind::Tax, "8.25", "825", both("825%", "8.25%")),
            (Kind::Tax, "", "1000", both("1,000%", "10%")),
            (Kind::Tax, "8.25", "100", None),
            (Kind::Tax, "8.25", "100.5", both("100.5%", "1.005%")),
            (Kind::Tax, "8.25", "825%", None),
            (Kind::Tax, "300", "825", None),
            (Kind::Yield, "65", "825", None),
        ] {
            assert_eq!(meanings(kind, was, text, &english), expected, "{text} after {was}");
        }
        let german = NumberStyle::continental("");
        assert_eq!(meanings(Kind::Tax, "19", "825", &german), both("825\u{a0}%", "8,25\u{a0}%"));
    }

    #[test]
    fn decimals_of_a_time_may_be_minutes() {
        let english = NumberStyle::english("$");
        for (text, expected) in [
            ("1.5", both("0:01.5", "1:30")),
            ("1/2", both("0:00.5", "0:30")),
            ("90", None),
            ("0:01.5", None),
            ("1.5 min", None),
            ("1:30", None),
            ("", None),
        ] {
            assert_eq!(meanings(Kind::Labor, "", text, &english), expected, "{text}");
        }
        assert_eq!(meanings(Kind::Labor, "", "1,5", &NumberStyle::continental("")), both("0:01,5", "1:30"));
    }
}
