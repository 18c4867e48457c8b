//! How full a packaged drink must be: the rule that is followed, and what was weighed.

use serde::{Deserialize, Serialize};

use crate::measure::{Amount, Exact, Share, stored_by_name};

/// What decides the fill of a packaged drink, and the weighings that tell how evenly it is filled.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Filling {
    /// The rule that is followed.
    pub rule: FillRule,
    /// The share of packages that may be short by more than is tolerated.
    pub accepted: Accepted,
    /// What a single package may be short by, where the rule leaves it to the user: the maximum
    /// allowable variation in the United States.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub allowed: Option<Amount>,
    /// Volume that must stay empty under the rim for the closure to fit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_headspace: Option<Amount>,
    /// Net contents of packages that were weighed or measured, in the order of weighing.
    #[serde(default)]
    pub nets: Vec<Amount>,
}

/// A rule for the contents of packages.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FillRule {
    /// The average is at least what is declared, and nothing besides.
    Average,
    /// Directive 76/211/EEC, and the same rules in the United Kingdom.
    EuropeanOrBritish,
    /// NIST Handbook 133: the average, and a variation allowed to single packages.
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
    /// 2 %: Germany (Fertigpackungsverordnung 2020, section 9).
    TwoPercent,
    /// 2.5 %: the United Kingdom's packers' rules (SI 2006/659, second-hand).
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
