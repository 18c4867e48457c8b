//! What holds for the whole book.

use serde::{Deserialize, Serialize};

use super::CostBasis;
use crate::foundation::measure::{Amount, Currency, Exact, Money, Share, System, stored_by_name};

/// What holds for the whole book: whose it is, money, units, tax, fees and the target.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Settings {
    /// The book's name.
    pub name: String,
    /// Whether the data is invented. The screen says so.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub invented: bool,
    /// The currency of every amount of money.
    pub currency: Currency,
    /// The units in which amounts are shown and bare numbers read.
    pub units: System,
    /// Sales tax or VAT.
    pub tax: Tax,
    /// The fee of the payment provider.
    pub payment_fee: PaymentFee,
    /// The share of the price without tax that a marketplace or carrier keeps, in [0, 1).
    #[serde(default)]
    pub commission: Share,
    /// The hourly wage with all that it costs the employer.
    pub wage: Money,
    /// Rent, power and the like, per drink.
    #[serde(default)]
    pub overhead: Money,
    /// The share of what is made that is thrown away, in [0, 1).
    #[serde(default)]
    pub unsold: Share,
    /// The target margin, in [0, 1).
    pub target: Share,
    /// What the target margin must cover.
    #[serde(rename = "covers")]
    pub cost_basis: CostBasis,
    /// How menu prices may end, each at least 0 and below [`Settings::ending_period`]. Empty for any ending.
    pub endings: Vec<Money>,
    /// The columns of the till's list of sales, or `None` if no list was read yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub till: Option<TillColumns>,
    /// After how many days a supplier's price is old, or `None` if prices do not grow old.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price_days: Option<Exact>,
    /// The smallest step of the scale behind the counter: a mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub scale_step: Option<Amount>,
    /// The smallest step of the jugs behind the counter: a volume.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub jug_step: Option<Amount>,
}

/// The columns of a till's list of sales, by the names in its header.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct TillColumns {
    /// The column of what was sold: the drink, or drink and size in one.
    pub item: String,
    /// The column of the size, if it has its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub size: Option<String>,
    /// The column of the number sold.
    pub units: String,
    /// The column of the day, if there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<String>,
}

/// Sales tax or VAT.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Tax {
    /// The rate, 0 or more.
    pub rate: Share,
    /// Where it is added.
    pub place: TaxPlace,
}

/// Where the tax is added.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TaxPlace {
    /// Inside the menu price.
    InThePrice,
    /// Added at the till.
    AddedAtTheTill,
}

stored_by_name! {
    TaxPlace {
        InThePrice = "in-the-price",
        AddedAtTheTill = "added-at-the-till",
    }
}

/// A fee on what the customer pays.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PaymentFee {
    /// The share of what the customer pays, in [0, 1).
    #[serde(default)]
    pub share: Share,
    /// The fixed amount per payment.
    #[serde(default)]
    pub fixed: Money,
}

impl Settings {
    /// The settings of a new book, in US dollars: a start to be changed, and no advice.
    pub fn new(name: &str) -> Settings {
        Settings {
            name: name.to_string(),
            invented: false,
            currency: Currency::USD,
            units: System::UsCustomary,
            tax: Tax { rate: Share::ZERO, place: TaxPlace::AddedAtTheTill },
            payment_fee: PaymentFee::default(),
            commission: Share::ZERO,
            wage: Money::ZERO,
            overhead: Money::ZERO,
            unsold: Share::ZERO,
            target: Share::from_fraction(Exact::new(65, 2)),
            cost_basis: CostBasis::Goods,
            endings: [0, 25, 50, 75].into_iter().map(|cents| Money::from_major(Exact::new(cents, 2))).collect(),
            till: None,
            price_days: None,
            scale_step: None,
            jug_step: None,
        }
    }

    /// The settings of a new book in a country, by its two letters (ISO 3166-1): its money, units
    /// and tax place, and US dollars where its money is not known here. Ounces are used in the
    /// United States, and tax is added to a price there and in Canada (from memory; territories of
    /// the United States are as the United States).
    pub fn in_country(name: &str, country: &str) -> Settings {
        let of_united_states = ["US", "PR", "GU", "VI", "AS", "MP"].contains(&country);
        let added = of_united_states || country == "CA";
        let us = Settings::new(name);
        let currency = Currency::of_country(country).unwrap_or(us.currency);
        Settings {
            currency,
            units: if of_united_states { System::UsCustomary } else { System::Metric },
            tax: Tax { place: if added { us.tax.place } else { TaxPlace::InThePrice }, ..us.tax },
            endings: if currency.digits() == 2 { us.endings } else { Vec::new() },
            ..us
        }
    }

    /// The period in which price endings repeat: one major unit, or a hundred if the currency has no decimals.
    pub fn ending_period(&self) -> Money {
        Money::from_major(if self.currency.digits() == 0 { Exact::new(100, 0) } else { Exact::ONE })
    }
}
