//! How full a packaged drink must be: the rule that is followed, and the weighings.

use serde::{Deserialize, Serialize};

use crate::foundation::measure::{Amount, Exact, Share, Temperature, stored_by_name};

/// The rule for the fill of a packaged drink, and the weighings that show how evenly it is filled.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Filling {
    /// The rule that is followed.
    pub rule: FillRule,
    /// The share of packages that may be short by more than the tolerance. Only the rule of Europe and the
    /// United Kingdom accepts such a share.
    pub accepted: Accepted,
    /// By how much a single package may be short: the maximum allowable variation in the United States.
    /// Only that rule leaves it to the user.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub allowed: Option<Amount>,
    /// The volume that must stay empty under the rim for the closure to fit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_headspace: Option<Amount>,
    /// How many packages are in a batch: a whole number, 1 or more. If it is `None`, nothing is added for the
    /// average of a batch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub batch: Option<Exact>,
    /// The share of batches that may be short on average, or `None` if it was not chosen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub batch_risk: Option<Accepted>,
    /// The temperature of the drink when its volume or density was measured, 0 to 40 °C. If it is `None`, it
    /// is taken to be the temperature at which the law measures.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured_at: Option<Temperature>,
    /// The net contents of packages, in the order in which they were weighed or measured.
    #[serde(default)]
    pub nets: Vec<Amount>,
}

impl Filling {
    /// A filling by this rule, with nothing weighed yet.
    pub const fn new(rule: FillRule, accepted: Accepted) -> Filling {
        Filling {
            rule,
            accepted,
            allowed: None,
            least_headspace: None,
            batch: None,
            batch_risk: None,
            measured_at: None,
            nets: Vec::new(),
        }
    }

    /// The share of batches that may be short on average: 2.5 % if none was chosen.
    pub fn batch_risk(&self) -> Accepted {
        self.batch_risk.unwrap_or(Accepted::TwoAndAHalfPercent)
    }
}

/// A rule for the contents of packages.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FillRule {
    /// The average is at least what is declared, and nothing else is asked. No law is known that asks only
    /// this.
    Average,
    /// The average is at least what is declared, few packages are short by more than a tolerance, and none by
    /// more than twice that: Directive 76/211/EEC, Annex I (text), and SI 2006/659 in the United Kingdom
    /// (text).
    EuropeanOrBritish,
    /// The average is at least what is declared, and no package is short by more than an allowed variation:
    /// NIST Handbook 133 (second-hand).
    UnitedStates,
}

stored_by_name! {
    FillRule {
        Average = "average",
        EuropeanOrBritish = "european-or-british",
        UnitedStates = "united-states",
    }
}

/// A share of packages that may lie below a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Accepted {
    /// 0.1 %.
    OneInAThousand,
    /// 1 %.
    OnePercent,
    /// 2 %: Germany (Fertigpackungsverordnung 2020, section 9, text).
    TwoPercent,
    /// 2.5 %: practice in the United Kingdom (second-hand); SI 2006/659 itself has no such number.
    TwoAndAHalfPercent,
    /// 5 %.
    FivePercent,
}

stored_by_name! {
    Accepted {
        OneInAThousand = "0.001",
        OnePercent = "0.01",
        TwoPercent = "0.02",
        TwoAndAHalfPercent = "0.025",
        FivePercent = "0.05",
    }
}

impl Accepted {
    /// The share itself.
    pub const fn share(self) -> Share {
        Share::from_fraction(match self {
            Accepted::OneInAThousand => Exact::new(1, 3),
            Accepted::OnePercent => Exact::new(1, 2),
            Accepted::TwoPercent => Exact::new(2, 2),
            Accepted::TwoAndAHalfPercent => Exact::new(25, 3),
            Accepted::FivePercent => Exact::new(5, 2),
        })
    }

    /// How many standard deviations below the mean this share of a normal distribution lies: published upper
    /// quantiles, to six decimals.
    pub const fn quantile(self) -> Exact {
        match self {
            Accepted::OneInAThousand => Exact::new(3_090_232, 6),
            Accepted::OnePercent => Exact::new(2_326_348, 6),
            Accepted::TwoPercent => Exact::new(2_053_749, 6),
            Accepted::TwoAndAHalfPercent => Exact::new(1_959_964, 6),
            Accepted::FivePercent => Exact::new(1_644_854, 6),
        }
    }
}
