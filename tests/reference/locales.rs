//! Numbers, money and percentages of 16 locales, against what ECMA-402 Intl of node
//! wrote (Unicode ICU 78.2; recorded by `data/intl.mjs`). Where a locale groups the digits of money by
//! another sign than those of numbers (de-AT), that of money stands for both.

use brimwright::foundation::measure::{
    Currency, Exact, Money, NumberStyle, Parts, Share, show_money, show_number, show_percent,
};
use serde::Deserialize;

#[derive(Deserialize)]
struct Recorded {
    locales: Vec<Locale>,
}

#[derive(Deserialize)]
struct Locale {
    locale: String,
    samples: Samples,
    numbers: Vec<(String, String)>,
    money: Vec<(String, String, String)>,
    percents: Vec<(String, String)>,
}

#[derive(Deserialize)]
struct Samples {
    money: Vec<(String, Parts)>,
    percent: Parts,
    thousand: Parts,
}

impl Samples {
    fn numbers(&self, code: &str) -> NumberStyle {
        let (_, money) = self.money.iter().find(|(it, _)| it == code).unwrap();
        NumberStyle::from_samples(money, &self.percent, &self.thousand)
    }
}

fn recorded() -> Vec<Locale> {
    let recorded: Recorded = serde_json::from_str(include_str!("data/intl.json")).unwrap();
    assert_eq!(recorded.locales.len(), 16);
    recorded.locales
}

fn exact(text: &str) -> Exact {
    Exact::from_plain(text, 6).unwrap()
}

#[test]
fn numbers_money_and_percentages_are_written_as_intl_writes_them() {
    for locale in recorded() {
        let name = &locale.locale;
        let style = locale.samples.numbers("USD");
        for (number, shown) in &locale.numbers {
            assert_eq!(&show_number(exact(number), 0, &style), shown, "{name}");
        }
        for (share, shown) in &locale.percents {
            let share = Share::from_fraction(exact(share));
            assert_eq!(&show_percent(share, &style).unwrap(), shown, "{name}");
        }
        for (code, amount, shown) in &locale.money {
            let currency = Currency::from_code(code).unwrap();
            let money = Money::from_major(exact(amount));
            assert_eq!(&show_money(money, currency, &locale.samples.numbers(code)), shown, "{name} {code}");
        }
    }
}
