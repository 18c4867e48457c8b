//! What holds for the whole book.

use serde::{Deserialize, Serialize};

use super::{CostBasis, Drink, DrinkKind};
use crate::foundation::measure::{Amount, Currency, Exact, Money, Overflow, Share, System, stored_by_name};

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
    /// Other rates than that of [`Settings::tax`], each kind of drink at most once.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub tax_by_kind: Vec<KindRate>,
    /// Whether tax is owed on the deposit for a container too.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub deposit_taxed: bool,
    /// The fee of the payment provider.
    pub payment_fee: PaymentFee,
    /// The share of the price that a marketplace or carrier keeps, in [0, 1).
    #[serde(default)]
    pub commission: Share,
    /// The price of which commission is that share.
    #[serde(default, skip_serializing_if = "CommissionBase::is_usual")]
    pub commission_on: CommissionBase,
    /// The hourly wage with all that it costs the employer.
    pub wage: Money,
    /// Rent, power and the like, for what [`Settings::overhead_per`] says.
    #[serde(default)]
    pub overhead: Money,
    /// What [`Settings::overhead`] is typed for.
    #[serde(default, skip_serializing_if = "OverheadPer::is_drink_made")]
    pub overhead_per: OverheadPer,
    /// The share of what is made that is thrown away, in [0, 1).
    #[serde(default)]
    pub unsold: Share,
    /// What of the sales brings less than the menu price.
    #[serde(default, skip_serializing_if = "Reductions::is_none")]
    pub reductions: Reductions,
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

/// The tax rate of one kind of drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct KindRate {
    /// The kind.
    pub kind: DrinkKind,
    /// The rate, 0 or more.
    pub rate: Share,
}

/// The price of which commission is a share.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CommissionBase {
    /// The price without tax.
    #[default]
    WithoutTax,
    /// The price with tax.
    WithTax,
}

stored_by_name! {
    CommissionBase {
        WithoutTax = "without-tax",
        WithTax = "with-tax",
    }
}

impl CommissionBase {
    fn is_usual(&self) -> bool {
        *self == CommissionBase::default()
    }
}

/// What overhead is typed for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum OverheadPer {
    /// A drink made: those that are thrown away bear it too. Books before version 4 figured so.
    #[default]
    DrinkMade,
    /// A drink sold.
    DrinkSold,
    /// A week: it is divided by the drinks sold in one.
    Week,
}

stored_by_name! {
    OverheadPer {
        DrinkMade = "drink-made",
        DrinkSold = "drink-sold",
        Week = "week",
    }
}

impl OverheadPer {
    /// Whether drinks that are thrown away or handed out free bear it too.
    pub fn is_drink_made(&self) -> bool {
        *self == OverheadPer::DrinkMade
    }
}

/// What of the sales brings less than the menu price.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Reductions {
    /// What discounts take, as a share of sales at menu prices, in [0, 1).
    #[serde(default)]
    pub discounts: Share,
    /// Free drinks, as a share of the drinks that are handed out, in [0, 1).
    #[serde(default)]
    pub free: Share,
    /// The share of the drinks sold that are marked down at the end of the day, in [0, 1).
    #[serde(default)]
    pub marked_down: Share,
    /// What these are sold for, as a share of the menu price, in (0, 1].
    #[serde(default = "Share::whole")]
    pub marked_down_to: Share,
}

/// Every drink is paid at its menu price.
impl Default for Reductions {
    fn default() -> Reductions {
        Reductions { discounts: Share::ZERO, free: Share::ZERO, marked_down: Share::ZERO, marked_down_to: Share::WHOLE }
    }
}

impl Reductions {
    fn is_none(&self) -> bool {
        *self == Reductions::default()
    }

    /// What marked-down drinks take, as a share of sales without discounts: marked down * (1 - marked down to).
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn lost_to_markdowns(&self) -> Result<Share, Overflow> {
        Ok(Share::from_fraction(self.marked_down.fraction().times(self.marked_down_to.rest()?.fraction())?))
    }

    /// What is paid of a menu price on average: (1 - discounts) * (1 - what marked-down drinks take).
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn paid(&self) -> Result<Share, Overflow> {
        let after_discounts = self.discounts.rest()?.fraction();
        Ok(Share::from_fraction(after_discounts.times(self.lost_to_markdowns()?.rest()?.fraction())?))
    }
}

/// A fee on what the customer pays.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PaymentFee {
    /// The share of what the customer pays, in [0, 1).
    #[serde(default)]
    pub share: Share,
    /// The fixed amount per payment.
    #[serde(default)]
    pub fixed: Money,
    /// Drinks in one payment on average, 1 or more.
    #[serde(default = "Exact::one", skip_serializing_if = "Exact::is_one")]
    pub drinks: Exact,
}

/// No fee, for payments of one drink.
impl Default for PaymentFee {
    fn default() -> PaymentFee {
        PaymentFee { share: Share::ZERO, fixed: Money::ZERO, drinks: Exact::ONE }
    }
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
            tax_by_kind: Vec::new(),
            deposit_taxed: false,
            payment_fee: PaymentFee::default(),
            commission: Share::ZERO,
            commission_on: CommissionBase::default(),
            wage: Money::ZERO,
            overhead: Money::ZERO,
            overhead_per: OverheadPer::DrinkSold,
            unsold: Share::ZERO,
            reductions: Reductions::default(),
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

    /// The tax on a drink: at its own rate, else at that of its kind, else at the book's.
    pub fn tax_of(&self, drink: &Drink) -> Tax {
        let of_kind = self.tax_by_kind.iter().find(|it| it.kind == drink.kind).map(|it| it.rate);
        Tax { rate: drink.tax_rate.or(of_kind).unwrap_or(self.tax.rate), ..self.tax }
    }

    /// The period in which price endings repeat: one major unit, or a hundred if the currency has no decimals.
    pub fn ending_period(&self) -> Money {
        Money::from_major(if self.currency.digits() == 0 { Exact::new(100, 0) } else { Exact::ONE })
    }
}
