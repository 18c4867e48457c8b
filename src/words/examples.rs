//! What could be typed into a field, by the kind of field, written as the person writes numbers.

use super::Speaker;
use crate::foundation::measure::{
    Amount, Density, Exact, LengthUnit, Money, Scale, System, Temperature, Time, TypedLength, Unit, read_number,
};

/// The kind of a field, by what is typed into it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Example {
    /// The price of a pack.
    CasePrice,
    /// The price of a pack where several are bought.
    VolumePrice,
    /// What is added to the price of a pack, such as delivery.
    Surcharge,
    /// The price of a drink.
    MenuPrice,
    /// What a processor takes for a drink, or what the shop costs a drink.
    CostPerDrink,
    /// What the shop costs in a week.
    CostPerWeek,
    /// The deposit for a container.
    Deposit,
    /// Drinks in one payment.
    DrinksPerPayment,
    /// What discounts take of sales, in percent.
    Discounts,
    /// Drinks that nobody pays for, in percent.
    FreeDrinks,
    /// Drinks that are marked down, in percent.
    MarkedDown,
    /// What these are sold for, in percent of the menu price.
    MarkedDownTo,
    /// What each payment by card costs besides its share.
    TransactionFee,
    /// What an hour of work costs.
    Wage,
    /// What something costs once, such as printing.
    OneTimeCost,
    /// What prices end in.
    PriceEndings,
    /// A target margin, in percent.
    TargetMargin,
    /// A rate of tax, in percent.
    SalesTax,
    /// The share that payments by card cost, in percent.
    CardFee,
    /// What a delivery app keeps, in percent.
    Commission,
    /// What another shop keeps, in percent.
    RetailersCut,
    /// Waste, in percent.
    Waste,
    /// What stays in the press or jug, in percent.
    ProcessLoss,
    /// Air in a blended drink, in percent.
    Air,
    /// Headspace, in percent.
    HeadspaceShare,
    /// Trim yield, in percent.
    TrimYield,
    /// Juice yield, in percent.
    JuiceYield,
    /// Weight after soaking or brewing, in percent.
    SoakedWeight,
    /// How much of a scoop is ice, in percent.
    IcePacking,
    /// Pieces for one drink.
    PiecesPerDrink,
    /// Packs of one order.
    PacksPerOrder,
    /// From how many packs on a price holds.
    MinimumPacks,
    /// Drinks of one batch, or of one card.
    DrinksPerBatch,
    /// Packages of one batch.
    PackagesPerBatch,
    /// Drinks sold in a week.
    WeeklySales,
    /// Days within which a drink is used.
    DaysOfUse,
    /// Days after which a price is old.
    DaysOfPrice,
    /// Weeks.
    Weeks,
    /// A pH.
    Ph,
    /// A change of a price.
    Change,
    /// A density, in a US book as the weight of one cup.
    Density,
    /// What a package contains, by volume.
    NetVolume,
    /// The same by weight.
    NetWeight,
    /// The weight of one piece of an ingredient.
    PieceWeight,
    /// A volume of a spoon or less: headspace, room for a closure, an allowed variation.
    SmallVolume,
    /// The smallest step that a scale shows.
    ScaleStep,
    /// The smallest mark of a measuring cup.
    CupMark,
    /// How finely an amount is measured out, in this unit.
    Step(Unit),
    /// Any other amount, in this unit.
    Amount(Unit),
    /// The inside width of a container at its base.
    BaseWidth,
    /// The inside width of a container at its rim.
    RimWidth,
    /// The inside height of a container.
    InsideHeight,
    /// A headspace as a height.
    HeadspaceHeight,
    /// How high a part of what a container holds stands in it.
    LevelBelowTheRim,
    /// What stands up to that level.
    VolumeBelowTheRim,
    /// The temperature of a room.
    Temperature,
    /// A time that work takes.
    Time,
}

impl Example {
    /// The example, as the person types it.
    pub fn said(self, speaker: &Speaker) -> String {
        let us = speaker.units() == System::UsCustomary;
        let of_system = |us_amount: Amount, metric: Amount| speaker.amount(if us { us_amount } else { metric });
        let (number, places) = match self {
            Example::CasePrice => return money(3850, speaker),
            Example::VolumePrice => return money(3600, speaker),
            Example::Surcharge => return money(250, speaker),
            Example::MenuPrice => return money(950, speaker),
            Example::CostPerDrink => return money(85, speaker),
            Example::CostPerWeek => return money(60_000, speaker),
            Example::Deposit => return money(25, speaker),
            Example::TransactionFee => return money(30, speaker),
            Example::Wage => return money(1800, speaker),
            Example::OneTimeCost => return money(12_000, speaker),
            Example::PriceEndings => return [50, 95].map(|ending| money(ending, speaker)).join(" "),
            Example::TargetMargin => (70, 0),
            Example::SalesTax if us => (65, 1),
            Example::SalesTax => (19, 0),
            Example::CardFee if us => (29, 1),
            Example::CardFee => (15, 1),
            Example::Commission => (15, 0),
            Example::RetailersCut => (30, 0),
            Example::DrinksPerPayment => (15, 1),
            Example::MarkedDownTo => (50, 0),
            Example::Waste => (3, 0),
            Example::Discounts | Example::ProcessLoss => (2, 0),
            Example::Air | Example::HeadspaceShare | Example::MarkedDown | Example::MinimumPacks => (5, 0),
            Example::TrimYield => (90, 0),
            Example::JuiceYield | Example::IcePacking => (60, 0),
            Example::SoakedWeight => (250, 0),
            Example::FreeDrinks | Example::PiecesPerDrink | Example::PacksPerOrder | Example::Weeks => (1, 0),
            Example::DrinksPerBatch => (12, 0),
            Example::PackagesPerBatch => (48, 0),
            Example::WeeklySales => (40, 0),
            Example::DaysOfUse => (3, 0),
            Example::DaysOfPrice => (14, 0),
            Example::Ph => (38, 1),
            Example::Change => (25, 2),
            Example::Density => return density(speaker),
            Example::NetVolume => {
                return of_system(amount(12, 0, Unit::UsFluidOunce), amount(355, 0, Unit::Millilitre));
            }
            Example::NetWeight => return of_system(amount(124, 1, Unit::Ounce), amount(350, 0, Unit::Gram)),
            Example::PieceWeight => return of_system(amount(5, 0, Unit::Ounce), amount(150, 0, Unit::Gram)),
            Example::SmallVolume => {
                return of_system(amount(5, 1, Unit::UsFluidOunce), amount(15, 0, Unit::Millilitre));
            }
            Example::ScaleStep => return of_system(amount(1, 1, Unit::Ounce), amount(5, 0, Unit::Gram)),
            Example::CupMark => {
                return of_system(amount(5, 1, Unit::UsFluidOunce), amount(10, 0, Unit::Millilitre));
            }
            Example::Step(Unit::Piece) => return speaker.amount(amount(5, 1, Unit::Piece)),
            Example::Step(unit) => return speaker.amount(amount(1, 0, unit)),
            Example::Amount(unit) => {
                let number = if unit == Unit::Millilitre { 330 } else { 12 };
                return speaker.amount(amount(number, 0, unit));
            }
            Example::BaseWidth => return length(250, 60, speaker),
            Example::RimWidth => return length(350, 90, speaker),
            Example::InsideHeight => return length(475, 120, speaker),
            Example::HeadspaceHeight => return length(50, 10, speaker),
            Example::LevelBelowTheRim => return length(250, 60, speaker),
            Example::VolumeBelowTheRim => {
                return of_system(amount(6, 0, Unit::UsFluidOunce), amount(150, 0, Unit::Millilitre));
            }
            Example::Temperature => {
                let scale = Scale::of(speaker.units());
                let degrees = if scale == Scale::Fahrenheit { 68 } else { 20 };
                return speaker.temperature(Temperature::new(Exact::new(degrees, 0), scale));
            }
            Example::Time => return speaker.typed_time(Time::from_seconds(Exact::new(90, 0))),
        };
        speaker.number(Exact::new(number, places))
    }

    /// The example of a share with its sign, as a sentence says it.
    pub fn in_percent(self, speaker: &Speaker) -> String {
        let said = self.said(speaker);
        read_number(&said, speaker.style()).map_or(said, |number| speaker.percentage(number, 0))
    }
}

/// So many hundredths, in a currency of few decimals so many units.
fn money(hundredths: i64, speaker: &Speaker) -> String {
    let places = if speaker.currency().digits() < 2 { 0 } else { 2 };
    speaker.plain_money(Money::from_major(Exact::new(hundredths, places)))
}

fn density(speaker: &Speaker) -> String {
    let density = Density::from_grams_per_millilitre(Exact::new(105, 2));
    if speaker.units().weighs_cups() {
        speaker.with_unit(Exact::new(87, 1), 0, speaker.density_unit())
    } else {
        speaker.typed_density(density)
    }
}

const fn amount(number: i64, places: u32, unit: Unit) -> Amount {
    Amount::new(Exact::new(number, places), unit)
}

/// Hundredths of an inch, or millimetres.
fn length(hundredths: i64, millimetres: i64, speaker: &Speaker) -> String {
    let length = match LengthUnit::of(speaker.units()) {
        LengthUnit::Inch => TypedLength::new(Exact::new(hundredths, 2), LengthUnit::Inch),
        LengthUnit::Millimetre | LengthUnit::Centimetre => {
            TypedLength::new(Exact::new(millimetres, 0), LengthUnit::Millimetre)
        }
    };
    speaker.typed_length(length)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::foundation::measure::{Currency, NumberStyle};

    fn said(example: Example, currency: &str, units: System, style: NumberStyle) -> String {
        example.said(&Speaker::new(Currency::from_code(currency).unwrap(), units, style))
    }

    #[test]
    fn examples_are_written_as_the_person_writes_numbers() {
        for (example, american, german) in [
            (Example::CasePrice, "38.50", "38,50"),
            (Example::TransactionFee, "0.30", "0,30"),
            (Example::PriceEndings, "0.50 0.95", "0,50 0,95"),
            (Example::SalesTax, "6.5", "19"),
            (Example::CardFee, "2.9", "1,5"),
            (Example::Waste, "3", "3"),
            (Example::CostPerWeek, "600.00", "600,00"),
            (Example::DrinksPerPayment, "1.5", "1,5"),
            (Example::JuiceYield, "60", "60"),
            (Example::DaysOfUse, "3", "3"),
            (Example::ScaleStep, "0.1 oz", "5 g"),
            (Example::CupMark, "0.5 fl oz", "10 mL"),
            (Example::Density, "8.7 oz", "1,05"),
            (Example::RimWidth, "3 1/2 in", "90 mm"),
            (Example::InsideHeight, "4 3/4 in", "120 mm"),
            (Example::HeadspaceHeight, "1/2 in", "10 mm"),
            (Example::Temperature, "68 °F", "20 °C"),
            (Example::Time, "1:30", "1:30"),
            (Example::Step(Unit::Piece), "1/2 ea", "1/2 ea"),
        ] {
            let plain = |text: String| text.replace('\u{a0}', " ");
            let us = said(example, "USD", System::UsCustomary, NumberStyle::english("$"));
            assert_eq!(plain(us), american, "{example:?}");
            let metric = said(example, "EUR", System::Metric, NumberStyle::continental("\u{a0}€"));
            assert_eq!(plain(metric), german, "{example:?}");
        }
        assert_eq!(said(Example::CasePrice, "JPY", System::Metric, NumberStyle::english("¥")), "3,850");
    }
}
