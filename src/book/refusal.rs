//! Why an edit was refused. A refused edit changes nothing.

use super::{FlatCost, Key};

/// Why an edit was refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// A record that is needed is not in the book.
    Missing {
        /// The record.
        key: Key,
        /// The record that needs it, or `None` if the edit itself does.
        needed_by: Option<Key>,
    },
    /// A record cannot be removed while others use it.
    InUse {
        /// The record.
        key: Key,
        /// The records that use it.
        by: Vec<Key>,
    },
    /// A value is not valid.
    Field {
        /// The record.
        key: Key,
        /// The field with the value.
        field: Field,
        /// What is wrong.
        problem: Problem,
    },
}

/// A field of a record, as the screens know it.
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
    TaxByKind,
    FeeShare,
    FeeFixed,
    FeeDrinks,
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
    Discounts,
    FreeDrinks,
    MarkedDown,
    MarkedDownTo,
    BatchVolume,
    Melted,
    Deposit,
    SeasonTrimYield,
    SeasonPressYield,
    StartingFigure,
}

/// What is wrong with a value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Problem {
    /// It must not be empty.
    Empty,
    /// It must not have more than 80 characters.
    TooLong,
    /// It must be above zero.
    NotPositive,
    /// It must be zero or more.
    Negative,
    /// A yield must be above 0 % and at most 100 %.
    NotAYield,
    /// A part must be at least 0 % and at most 100 %.
    NotAPart,
    /// A kind of drink can have one tax rate only.
    TwoRates,
    /// A share must be at least 0 % and below 100 %.
    NotAShare,
    /// It must be a volume.
    NotAVolume,
    /// It must be a number of pieces.
    NotACount,
    /// Headspace must leave room for a drink.
    NothingFits,
    /// The declared volume must not be more than the brimful one.
    MoreThanBrimful,
    /// A batch is at least one drink.
    LessThanOne,
    /// A price ending must be below one unit of money (below 100 if the currency has no decimals).
    NotAnEnding,
    /// A number must not have more digits than a book stores: 9 before the decimal sign, 8 after it.
    TooLarge,
    /// No two may have the same id.
    Twice,
    /// Headspace by height needs heights: the measures of a cup, or readings of a bottle.
    NoHeights,
    /// A bottle needs at least two readings.
    TooFew,
    /// The reading at this place, counted from 1, must be above the one before it.
    Falls(usize),
    /// A tier must begin above one pack.
    NotAboveOne,
    /// It must not have more than 400 characters.
    LongerThanALabel,
    /// The pH of a drink must be at least 1 and at most 14. People type 0 if nobody measured it, and that
    /// would make any juice count as acid.
    NotAPh,
    /// A temperature must be in the table of water: 0 to 40 °C.
    NotMeasuredThere,
    /// A drink keeps for at most two years.
    TooManyDays,
    /// A step must have the same dimension as the amount.
    AnotherKind,
    /// At most one line may take what the others leave.
    MoreThanOne,
    /// It must be a weight or a volume.
    NeitherWeightNorVolume,
    /// The share of a scoop that is ice must be above 0 % and at most 100 %.
    NotAPacking,
    /// A week begins on a Monday.
    NotAMonday,
    /// A day must be after the one before it.
    NotAfter,
    /// It must be a weight.
    NotAWeight,
    /// It must not weigh more than what it was made from.
    MoreThanBefore,
    /// It must be a whole number.
    NotWhole,
}
