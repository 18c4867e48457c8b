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
    /// Whether the data is invented, to be said on the screen.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub invented: bool,
    /// The currency of every amount of money.
    pub currency: Currency,
    /// Units to show and to read bare numbers in.
    pub units: System,
    /// Sales tax or VAT.
    pub tax: Tax,
    /// Taken by whoever carries the payment.
    pub payment_fee: PaymentFee,
    /// Share of the price without tax that a seller or carrier keeps, in [0, 1).
    #[serde(default)]
    pub commission: Share,
    /// Loaded hourly wage.
    pub wage: Money,
    /// Rent, power and the like, per drink.
    #[serde(default)]
    pub overhead: Money,
    /// Share of what is made and thrown away, in [0, 1).
    #[serde(default)]
    pub unsold: Share,
    /// Target margin, in [0, 1).
    pub target: Share,
    /// What the target margin must cover.
    #[serde(rename = "covers")]
    pub cost_basis: CostBasis,
    /// How menu prices may end, each at least 0 and below the period of endings; empty for any.
    pub endings: Vec<Money>,
    /// Where a till's list of sales keeps what; none where none was read yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub till: Option<TillColumns>,
    /// A supplier's price is old after so many days; none where prices do not grow old.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price_days: Option<Exact>,
    /// The smallest step that the scale behind the counter shows: a mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub scale_step: Option<Amount>,
    /// The smallest step that the jugs behind the counter show: a volume.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub jug_step: Option<Amount>,
}

/// The columns of a till's list of sales, by the names at their heads.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct TillColumns {
    /// What was sold: the drink, or drink and size in one.
    pub item: String,
    /// The size, where it has a column of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub size: Option<String>,
    /// How many.
    pub units: String,
    /// The day, where the list has days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<String>,
}

/// Sales tax or VAT.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Tax {
    /// The rate, 0 or more.
    pub rate: Share,
    /// Where it stands.
    pub place: TaxPlace,
}

/// Where the tax stands.
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
    /// Share of what the customer pays, in [0, 1).
    #[serde(default)]
    pub share: Share,
    /// And so much besides.
    #[serde(default)]
    pub fixed: Money,
}

impl Settings {
    /// A new book's settings, in US dollars: a start to change, not advice.
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

    /// The period in which price endings repeat: one major unit, or a hundred where the
    /// currency has no digits.
    pub fn ending_period(&self) -> Money {
        Money::from_major(if self.currency.digits() == 0 { Exact::new(100, 0) } else { Exact::ONE })
    }
}
