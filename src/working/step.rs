//! A step of a working: what it is, its figure, and how that follows from the steps before it.

use super::{Name, Shown};
use crate::book::{Accepted, Key};
use crate::drink::fill::{FULLEST_SPREADS, ICE_DENSITY, LEAST_SPREADS, MELTED_DENSITY};
use crate::drink::packaged::WEEKS;
use crate::foundation::measure::{
    Amount, Count, Density, Exact, Mass, Measure, Money, Overflow, Share, Time, TypedLength, Volume,
};

/// One number in a working.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// What it is.
    pub name: Name,
    /// How much it is.
    pub figure: Figure,
    /// How it follows from `from`.
    pub rule: Rule,
    /// What it follows from, in the order that the rule means.
    pub from: Vec<Step>,
}

/// How a figure follows from those before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// Typed in the book, at this record.
    Given(Key),
    /// The same everywhere.
    Fact(Fact),
    /// A number with a working of its own.
    Opens(Shown),
    /// All together.
    Sum,
    /// The first, less each of the rest.
    Difference,
    /// One times the other.
    Product,
    /// The first, divided by each of the rest.
    Quotient,
    /// The first times the second, divided by the third.
    Proportion,
    /// The larger of the two.
    Larger,
    /// The square root.
    Root,
    /// All together, divided by their number.
    Mean,
    /// How far they lie from their mean: their standard deviation as a sample.
    Deviation,
    /// The price of the highest step reached by the first, among the rest.
    TierReached,
    /// The nearest whole number, halves upwards.
    ToWhole,
    /// The next price at or above that has one of the owner's endings.
    UpToEnding,
    /// Read off the shape of a cup or bottle.
    Shape,
    /// Found so that all together fills the first.
    Solved,
}

/// What is the same everywhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fact {
    /// The whole: 100 %.
    Whole,
    /// 3600 seconds.
    Hour,
    /// 60 seconds.
    Minute,
    /// 1000 mL.
    Litre,
    /// The density of ice.
    Ice,
    /// The density of ice that melted.
    Melted,
    /// What costs and prices are shown for.
    Shown,
    /// A menu price that was typed on the spot.
    OnTheSpot,
    /// The tolerable negative error of Directive 76/211/EEC for a declared size.
    TolerableError,
    /// How many standard deviations under the mean leave this share of a normal distribution
    /// below.
    Quantile(Accepted),
    /// The standard deviations up to the fullest package to expect.
    UpToFullest,
    /// The least standard deviations down to what no package may be under.
    LeastSpreads,
    /// The density of water at a temperature.
    Water,
    /// 52 weeks.
    Year,
}

/// A figure of its own kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// Money.
    Money(Money),
    /// A volume.
    Volume(Volume),
    /// A volume that a fill is judged by: shown to one decimal more.
    FineVolume(Volume),
    /// A volume to fill up to: shown as finely, and never less than it is.
    Filled(Volume),
    /// A mass.
    Mass(Mass),
    /// A number of pieces.
    Count(Count),
    /// A share.
    Share(Share),
    /// A time.
    Time(Time),
    /// A density.
    Density(Density),
    /// A plain number.
    Number(Exact),
    /// An amount as it was typed.
    Amount(Amount),
    /// A length as it was typed.
    Length(TypedLength),
}

impl Figure {
    /// The number in its base unit: major unit, mL, g, pieces, fraction, s, g/mL, mm.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn base(self) -> Result<Exact, Overflow> {
        Ok(match self {
            Figure::Money(it) => it.major(),
            Figure::Volume(it) | Figure::FineVolume(it) | Figure::Filled(it) => it.millilitres(),
            Figure::Mass(it) => it.grams(),
            Figure::Count(it) => it.pieces(),
            Figure::Share(it) => it.fraction(),
            Figure::Time(it) => it.seconds(),
            Figure::Density(it) => it.grams_per_millilitre(),
            Figure::Number(it) => it,
            Figure::Amount(it) => it.measure()?.base(),
            Figure::Length(it) => it.length()?.millimetres(),
        })
    }
}

impl From<Measure> for Figure {
    fn from(measure: Measure) -> Figure {
        match measure {
            Measure::Volume(it) => Figure::Volume(it),
            Measure::Mass(it) => Figure::Mass(it),
            Measure::Count(it) => Figure::Count(it),
        }
    }
}

impl Step {
    /// A step that follows from others.
    pub(super) const fn new(name: Name, figure: Figure, rule: Rule, from: Vec<Step>) -> Step {
        Step { name, figure, rule, from }
    }

    /// What was typed at `key`.
    pub(super) const fn given(name: Name, figure: Figure, key: Key) -> Step {
        Step::new(name, figure, Rule::Given(key), Vec::new())
    }

    /// A number with a working of its own.
    pub(super) const fn opens(name: Name, figure: Figure, shown: Shown) -> Step {
        Step::new(name, figure, Rule::Opens(shown), Vec::new())
    }

    /// What is the same everywhere.
    pub(super) const fn fact(fact: Fact) -> Step {
        let figure = match fact {
            Fact::Whole => Figure::Share(Share::WHOLE),
            Fact::Hour => Figure::Time(Time::from_seconds(Exact::new(3600, 0))),
            Fact::Minute => Figure::Time(Time::from_seconds(Exact::new(60, 0))),
            Fact::Litre => Figure::Volume(Volume::from_millilitres(Exact::new(1000, 0))),
            Fact::Ice => Figure::Density(ICE_DENSITY),
            Fact::Melted => Figure::Density(MELTED_DENSITY),
            Fact::Quantile(accepted) => Figure::Number(accepted.quantile()),
            Fact::UpToFullest => Figure::Number(FULLEST_SPREADS),
            Fact::LeastSpreads => Figure::Number(LEAST_SPREADS),
            Fact::Year => Figure::Number(WEEKS),
            // These come with their own figures.
            Fact::Shown | Fact::OnTheSpot | Fact::TolerableError | Fact::Water => Figure::Number(Exact::ONE),
        };
        Step::new(Name::Fact(fact), figure, Rule::Fact(fact), Vec::new())
    }

    /// A fact with its own name and figure.
    pub(super) const fn named_fact(name: Name, figure: Figure, fact: Fact) -> Step {
        Step::new(name, figure, Rule::Fact(fact), Vec::new())
    }

    /// What prices and costs are shown for.
    pub(super) const fn shown_for(name: Name, figure: Figure) -> Step {
        Step::named_fact(name, figure, Fact::Shown)
    }
}
