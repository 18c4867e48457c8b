//! Why an edit was refused. A refused edit changes nothing.

use super::{FlatCost, Key};

/// Why an edit was refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// A record that is needed is not there.
    Missing {
        /// The record.
        key: Key,
        /// Who needs it; none where the edit itself does.
        needed_by: Option<Key>,
    },
    /// A record cannot go while others use it.
    InUse {
        /// The record.
        key: Key,
        /// Who uses it.
        by: Vec<Key>,
    },
    /// A value does not hold.
    Field {
        /// The record.
        key: Key,
        /// Which of its values.
        field: Field,
        /// What is wrong.
        problem: Problem,
    },
}

/// A value of a record, as the screens know it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "each is the record's value of the same name")]
pub enum Field {
    Name,
    TrimYield,
    PressYield,
    SoakYield,
    Density,
    JuiceDensity,
    PieceWeight,
    Contents,
    PackPrice,
    Surcharge,
    Supplier,
    Brimful,
    Declared,
    Headspace,
    SetCount,
    Base,
    Rim,
    Height,
    Readings,
    AtATime,
    TierFrom,
    TierPrice,
    Allergens,
    Nuts,
    Parts,
    SoldAs,
    Air,
    Step,
    TopUp,
    Packing,
    Allowed,
    LeastHeadspace,
    BatchSize,
    MeasuredAt,
    Weekly,
    Net,
    Reference,
    LineAmount,
    ProcessLoss,
    PerDrink,
    PerLitre,
    PerBatch,
    Batch,
    FlatCost(FlatCost),
    Unsold,
    Target,
    Ph,
    KeepsDays,
    Price,
    TaxRate,
    FeeShare,
    FeeFixed,
    Commission,
    Wage,
    Endings,
    TillColumn,
    Monday,
    Units,
    Contribution,
    Place,
    Size,
    Start,
    Last,
    Offers,
    PriceDay,
    EarlierPrice,
    OnHand,
    WeighedBought,
    WeighedTrimmed,
    WeighedPressed,
    Makes,
    OffShelf,
    Ready,
    PacksToBuy,
    Paid,
    PriceDays,
    ScaleStep,
    JugStep,
}

/// What is wrong with a value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Problem {
    /// There must be something.
    Empty,
    /// More than 80 letters.
    TooLong,
    /// It must be above zero.
    NotPositive,
    /// It must be zero or more.
    Negative,
    /// A yield must be above 0 % and at most 100 %.
    NotAYield,
    /// A share must be at least 0 % and under 100 %.
    NotAShare,
    /// It must be a volume.
    NotAVolume,
    /// It must be a number of pieces.
    NotACount,
    /// Headspace must leave room for a drink.
    NothingFits,
    /// The container does not hold what it says.
    MoreThanBrimful,
    /// A batch is at least one drink.
    LessThanOne,
    /// A price ending must lie below one unit of money (below 100 where there are no cents).
    NotAnEnding,
    /// The number has more digits than a book keeps: 9 before the decimal sign, 8 after it.
    TooLarge,
    /// Two of the same id.
    Twice,
    /// Headspace by height needs heights: the measures of a cup, or readings of a bottle.
    NoHeights,
    /// A bottle needs two readings at least.
    TooFew,
    /// The reading at this place, counted from 1, is not above the one before.
    Falls(usize),
    /// A tier must begin above one pack.
    NotAboveOne,
    /// More than 400 letters.
    LongerThanALabel,
    /// The pH of a drink lies between 1 and 14: a 0 is typed where nobody measured, and would call any
    /// juice acid.
    NotAPh,
    /// A temperature outside the table of water: 0 to 40 °C.
    NotMeasuredThere,
    /// A drink keeps for two years at most.
    TooManyDays,
    /// A step must be of the same kind as the amount.
    AnotherKind,
    /// One line at most takes what is left.
    MoreThanOne,
    /// It must be a weight or a volume.
    NeitherWeightNorVolume,
    /// The share of a scoop that is ice must be above 0 % and at most 100 %.
    NotAPacking,
    /// A week begins on a Monday.
    NotAMonday,
    /// It must come after what stands before it.
    NotAfter,
    /// It must be a weight.
    NotAWeight,
    /// It must not weigh more than what it was made from.
    MoreThanBefore,
    /// It must be a whole number.
    NotWhole,
}
