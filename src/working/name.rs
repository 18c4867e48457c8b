//! What a step of a working is.

use super::Fact;
use crate::book::{CostBasis, Goods, Part, Stage};
use crate::foundation::measure::Exact;

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
    /// The same before steps are whole.
    FactorBeforeWhole,
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
    /// The volume of a batch.
    BatchVolume,
    /// One drink's share of the time for a batch.
    TimeOfBatch,
    /// What is poured, without ice in the glass.
    WithoutIce,
    /// Hourly wage.
    Wage,
    /// What is made and thrown away.
    UnsoldShare,
    /// What is made and sold.
    SoldShare,
    /// What a drink costs before what is thrown away, as far as a margin covers it.
    BeforeUnsold(CostBasis),
    /// What is thrown away, as far as a margin covers it.
    Unsold(CostBasis),
    /// What is handed out free, as a share of what is handed out.
    FreeShare,
    /// What is handed out and paid for.
    PaidShare,
    /// What a drink costs before what is handed out free, as far as a margin covers it.
    BeforeFree(CostBasis),
    /// What is handed out free, as far as a margin covers it.
    Free(CostBasis),
    /// Overhead of a week.
    OverheadOfWeek,
    /// Drinks sold in a week, of the whole menu.
    SoldInWeek,
    /// Full cost.
    Cost,
    /// The cost that the target must cover.
    Covered(CostBasis),
    /// Fixed part of the payment fee.
    FixedFee,
    /// Drinks in a payment.
    DrinksPerPayment,
    /// One drink's share of the fixed part.
    FixedFeeOfDrink,
    /// The payment fee on the deposit.
    DepositFee,
    /// The deposit for the container.
    Deposit,
    /// The same with tax.
    DepositWithTax,
    /// Share of the payment fee, of what the customer pays.
    FeeShare,
    /// The same share, of the price without tax.
    FeeOfPrice,
    /// The payment fee but its fixed part.
    Fee,
    /// Share of the commission.
    CommissionShare,
    /// The same share where it is one of the price with tax, of the price without.
    CommissionOfPrice,
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
    /// What is paid of the price without tax on average.
    Revenue,
    /// The same with its tax.
    RevenueWithTax,
    /// The same with the deposit: what is paid for a drink on average.
    Payment,
    /// What is paid on average, as a share of the menu price.
    PaidOfPrice,
    /// What discounts take.
    Discounts,
    /// What they leave.
    AfterDiscounts,
    /// Drinks that are marked down, as a share of those sold.
    MarkedDown,
    /// Their price, as a share of the menu price.
    MarkedDownTo,
    /// What a drink is marked down by.
    Markdown,
    /// What marked-down drinks take.
    LostToMarkdowns,
    /// What they leave.
    AfterMarkdowns,
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
    /// What the covered cost may be at a price.
    MayCost,
    /// What a price can bear before a fixed fee.
    CanBear,
    /// What a drink may cost before overhead that is figured on drinks sold.
    BeforeOverhead,
    /// What each drink made may cost, so that those sold bear the others.
    MadeMayCost,
    /// What may be spent on ingredients at a price.
    IngredientsMayCost,
    /// Declared size.
    Declared,
    /// The same where the drink was measured.
    DeclaredMeasured,
    /// What a single package may be short by.
    Tolerated,
    /// The same where the drink was measured.
    ToleratedMeasured,
    /// Density of water where the law counts.
    WaterByLaw,
    /// Density of water where the drink was measured.
    WaterMeasured,
    /// Packages in a batch.
    BatchSize,
    /// The root of their number.
    BatchRoot,
    /// So much more on average, so that few batches are short.
    ForBatch,
    /// The average at which few batches are short.
    ForAverage,
    /// What few packages may be under.
    LeastInPackage,
    /// So much more on average, so that few are under it.
    ForSpread,
    /// The average at which few packages are under the least.
    WithSpread,
    /// What to fill on average.
    FillTarget,
    /// What is given away in a package.
    Giveaway,
    /// The same in ingredients.
    GiveawayCost,
    /// The same in a year.
    GiveawayCostInAYear,
    /// Packages filled in a week.
    Weekly,
    /// Packages filled in a year.
    Yearly,
    /// What the fullest package holds over the target.
    OverTarget,
    /// The fullest package to expect.
    Fullest,
    /// What must stay empty for the closure.
    LeastEmpty,
    /// The most that there is room for.
    Room,
    /// Net contents of a package that was weighed or measured.
    Net,
    /// The volume of net contents that were weighed.
    NetVolume,
    /// Mean of the weighings.
    Mean,
    /// Standard deviation of the weighings.
    Spread,
    /// Mass of the drink.
    DrinkMass,
    /// Density of the drink with its air.
    DrinkDensity,
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
    /// What is left after trimming in the season that is in force.
    SeasonTrimYield,
    /// What is left of that as juice in the season that is in force.
    SeasonPressYield,
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
    /// The share of blended ice that melts.
    MeltedShare,
    /// The share of it that does not.
    FrozenShare,
    /// What melts takes of the drink.
    MeltedVolume,
    /// What does not melt takes of the drink.
    FrozenVolume,
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
