//! How full a packaged drink must be: the rule that is followed, and what was weighed.

use serde::{Deserialize, Serialize};

use crate::foundation::measure::{Amount, Exact, Share, Temperature, stored_by_name};

/// What decides the fill of a packaged drink, and the weighings that tell how evenly it is filled.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Filling {
    /// The rule that is followed.
    pub rule: FillRule,
    /// The share of packages that may be short by more than is tolerated, by the rule that accepts
    /// one: that of Europe and the United Kingdom.
    pub accepted: Accepted,
    /// What a single package may be short by, where the rule leaves it to the user: the maximum
    /// allowable variation in the United States.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub allowed: Option<Amount>,
    /// Volume that must stay empty under the rim for the closure to fit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_headspace: Option<Amount>,
    /// Packages in a batch: a whole number, 1 or more. None where nobody said; then nothing is
    /// added for the average of a batch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub batch: Option<Exact>,
    /// The share of batches that may be short on average; none where it was not chosen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub batch_risk: Option<Accepted>,
    /// The temperature of the drink when its volume or density was measured, 0 to 40 °C. None where
    /// nobody said; then volumes are taken to be measured where the law measures them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured_at: Option<Temperature>,
    /// Net contents of packages that were weighed or measured, in the order of weighing.
    #[serde(default)]
    pub nets: Vec<Amount>,
}

impl Filling {
    /// The rule, and nothing weighed yet.
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

    /// The share of batches that may be short on average: 2.5 % where none was chosen.
    pub fn batch_risk(&self) -> Accepted {
        self.batch_risk.unwrap_or(Accepted::TwoAndAHalfPercent)
    }
}

/// A rule for the contents of packages.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FillRule {
    /// The average is at least what is declared, and nothing besides: no law is known to ask only
    /// this.
    Average,
    /// The average, few packages short by more than a tolerance, none by twice that: Directive
    /// 76/211/EEC, Annex I (text), and SI 2006/659 in the United Kingdom (text).
    EuropeanOrBritish,
    /// The average, and no package short by more than a variation that is allowed: NIST Handbook
    /// 133 (second-hand).
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

    /// How many standard deviations below the mean this share of a normal distribution begins:
    /// published upper quantiles, to six decimals.
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
