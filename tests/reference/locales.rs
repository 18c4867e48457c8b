//! Numbers, money, percentages, days and times of 16 locales, against what ECMA-402 Intl of node
//! wrote (Unicode ICU 78.2; recorded by `data/intl.mjs`). Where a locale groups the digits of money by
//! another sign than those of numbers (de-AT), that of money stands for both.

use brimwright::foundation::measure::{
    Currency, Date, Exact, Money, NumberStyle, Parts, Share, show_money, show_number, show_percent,
};
use brimwright::words::voice::{self, Voice};
use brimwright::words::{DateStyle, DayPattern, TimePattern, day, short_day, time_of_day};
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
    days: Vec<(i32, u8, u8, String, String)>,
    times: Vec<(u32, u32, String)>,
}

#[derive(Deserialize)]
struct Samples {
    money: Vec<(String, Parts)>,
    percent: Parts,
    thousand: Parts,
    with_year: Vec<Parts>,
    without_year: Vec<Parts>,
    morning: Parts,
    evening: Parts,
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

#[test]
fn days_and_times_are_written_as_intl_writes_them() {
    for locale in recorded() {
        let (name, samples) = (&locale.locale, &locale.samples);
        let dates = DateStyle {
            with_year: DayPattern::from_samples(&samples.with_year),
            without_year: DayPattern::from_samples(&samples.without_year),
            time: TimePattern::from_samples(&samples.morning, &samples.evening),
        };
        voice::set(Voice { dates: dates.into(), ..voice::here().clone() });
        for (year, month, date, with_year, without_year) in &locale.days {
            let date = Date::new(*year, *month, *date).unwrap();
            assert_eq!(&day(date), with_year, "{name}");
            assert_eq!(&short_day(date), without_year, "{name}");
        }
        for (hour, minute, shown) in &locale.times {
            // `format` writes a plain space where `formatToParts` has a narrow one before AM (V8).
            let plain = |text: &str| text.replace('\u{202f}', " ");
            assert_eq!(plain(&time_of_day(*hour, *minute)), plain(shown), "{name}");
        }
    }
}
