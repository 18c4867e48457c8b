//! A step of a working: what it is, its figure, and how that follows from the steps before it.

use super::Shown;
use crate::book::{Covers, Goods, Key, Stage};
use crate::cost::Part;
use crate::fill::ICE_DENSITY;
use crate::measure::{Amount, Count, Density, Exact, Mass, Measure, Money, Overflow, Share, Time, TypedLength, Volume};

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
    /// What costs and prices are shown for.
    Shown,
}

/// A figure of its own kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// Money.
    Money(Money),
    /// A volume.
    Volume(Volume),
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
            Figure::Volume(it) => it.millilitres(),
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

/// What a step is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Name {
    /// Something of what is bought.
    Of(Goods, OfGoods),
    /// Volume to the rim.
    Brimful,
    /// What is left empty.
    Headspace,
    /// What is left empty, as a share of the volume to the rim.
    HeadspaceShare,
    /// What is left empty, from the rim down.
    HeadspaceHeight,
    /// Diameter at the base.
    Base,
    /// Diameter at the rim.
    Rim,
    /// Height inside.
    Height,
    /// How high a poured volume stands.
    ReadingHeight,
    /// A poured volume.
    ReadingVolume,
    /// What is poured.
    Poured,
    /// How many times the recipe as written.
    Factor,
    /// What the lines with fixed amounts take.
    Fixed,
    /// What is left for the other lines.
    LeftToFill,
    /// What the lines that follow the size take as written.
    Written,
    /// Air beaten in.
    Air,
    /// The volume with its air, of what is mixed.
    WithAir,
    /// The density of what ice floats in.
    Liquid,
    /// The mass of what ice floats in.
    LiquidMass,
    /// The volume of what ice floats in.
    LiquidVolume,
    /// What stays in the press or jug.
    Loss,
    /// What is left of a whole.
    Kept,
    /// A part of the cost.
    Part(Part),
    /// Time of hands for one drink.
    Time,
    /// Time per drink.
    TimePerDrink,
    /// Time per litre.
    TimePerLitre,
    /// Time for the litres of one drink.
    TimeForVolume,
    /// Time for a batch.
    TimePerBatch,
    /// Drinks in a batch.
    Batch,
    /// One drink's share of the time for a batch.
    TimeOfBatch,
    /// Hourly wage.
    Wage,
    /// What is made and thrown away.
    UnsoldShare,
    /// What is made and sold.
    SoldShare,
    /// What a drink costs before what is thrown away, as far as a margin covers it.
    BeforeUnsold(Covers),
    /// What is thrown away, as far as a margin covers it.
    Unsold(Covers),
    /// Full cost.
    Cost,
    /// The cost that the target must cover.
    Covered(Covers),
    /// Fixed part of the payment fee.
    FixedFee,
    /// Share of the payment fee, of what the customer pays.
    FeeShare,
    /// The same share, of the price without tax.
    FeeOfPrice,
    /// The payment fee but its fixed part.
    Fee,
    /// Share of the commission.
    CommissionShare,
    /// Commission.
    Commission,
    /// Payment fee and commission.
    Fees,
    /// What a price must bear.
    MustBear,
    /// The share of a price that is left for what it must bear.
    LeftShare,
    /// Target margin.
    Target,
    /// Tax rate.
    Tax,
    /// The price with its tax, as a share of the price.
    WithTax,
    /// The price without tax that gives the target.
    TargetWithoutTax,
    /// The menu price that gives the target.
    Exact,
    /// The suggested menu price.
    Suggested,
    /// The menu price.
    Menu,
    /// The price without tax.
    WithoutTax,
    /// What the customer pays.
    CustomerPays,
    /// What is left after what the target covers.
    LeftAfterCovered,
    /// Margin.
    Margin,
    /// What is left after everything.
    Contribution,
    /// Menu price for a volume.
    PricePerVolume,
    /// Cost for a volume.
    CostPerVolume,
    /// Contribution for a volume.
    ContributionPerVolume,
    /// Contribution for a minute.
    ContributionPerMinute,
    /// Price for a volume, against that of the smallest size.
    AgainstSmallest,
    /// What the next size asks more.
    ExtraPrice,
    /// What the next size costs more.
    ExtraCost,
    /// What the next size leaves more.
    ExtraContribution,
    /// What the next size asks more, without tax.
    ExtraWithoutTax,
    /// What is kept of the extra price.
    KeptOfExtra,
    /// What is the same everywhere.
    Fact(Fact),
}

/// What it is of an ingredient or of packaging.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfGoods {
    /// An amount as the recipe says, meant at a stage.
    Written(Stage),
    /// The amount in one drink.
    InDrink(Stage),
    /// The amount to use for one drink.
    ToUse(Stage),
    /// An amount that a cost is shown for.
    Usable(Stage),
    /// How many one drink takes.
    Used,
    /// A step of the recipe.
    StepSize(Stage),
    /// How many steps.
    Steps,
    /// How many steps before they are rounded.
    StepsBeforeRounding,
    /// Its mass at a stage.
    Mass(Stage),
    /// Its volume in the drink.
    Volume(Stage),
    /// What it takes in the glass, with its air.
    Space(Stage),
    /// What must be bought.
    Bought,
    /// What must be bought, by weight.
    BoughtMass,
    /// What is left after trimming.
    TrimYield,
    /// What is left of that as juice.
    PressYield,
    /// What it weighs after soaking or brewing.
    SoakYield,
    /// Its density.
    Density,
    /// The density of its juice.
    JuiceDensity,
    /// The weight of a piece.
    PieceWeight,
    /// The share of a scoop that is ice.
    Packing,
    /// What a pack holds.
    Contents,
    /// The price of a pack.
    Price,
    /// The price of a pack from so many at a time.
    PriceFrom(Exact),
    /// How many packs are bought at a time.
    AtATime,
    /// Delivery or deposit for a pack.
    Surcharge,
    /// What is paid for a pack.
    Paid,
    /// What it costs in one drink.
    Cost,
    /// What a usable amount of it costs.
    UsableCost(Stage),
    /// What a piece costs.
    PieceCost,
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

    /// What is the same everywhere; what is shown for comes with its own figure.
    pub(super) const fn fact(fact: Fact) -> Step {
        let figure = match fact {
            Fact::Whole => Figure::Share(Share::WHOLE),
            Fact::Hour => Figure::Time(Time::from_seconds(Exact::new(3600, 0))),
            Fact::Minute => Figure::Time(Time::from_seconds(Exact::new(60, 0))),
            Fact::Litre => Figure::Volume(Volume::from_millilitres(Exact::new(1000, 0))),
            Fact::Ice => Figure::Density(ICE_DENSITY),
            Fact::Shown => Figure::Number(Exact::ONE),
        };
        Step::new(Name::Fact(fact), figure, Rule::Fact(fact), Vec::new())
    }

    /// What prices and costs are shown for.
    pub(super) const fn shown_for(name: Name, figure: Figure) -> Step {
        Step::new(name, figure, Rule::Fact(Fact::Shown), Vec::new())
    }
}
