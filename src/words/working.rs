//! Workings in words: what each number is, its figure, and how it came about.

use super::{overflow, stage};
use crate::book::{Book, Covers, Key, Stage};
use crate::measure::{
    Exact, Money, NumberStyle, Overflow, show_amount, show_count, show_mass, show_number, show_volume,
};
use crate::working::{Fact, Figure, Name, OfGoods, Rule, Step};

/// Says the steps of a working, in the units and the currency of a book.
#[derive(Clone, Copy, Debug)]
pub struct Working<'a> {
    /// The book, for its names, units and currency.
    pub book: &'a Book,
    /// How numbers are written.
    pub style: &'a NumberStyle,
}

impl Working<'_> {
    /// What a step is: "Apples, pressed, to use".
    pub fn name(&self, step: &Step) -> String {
        let Name::Of(goods, of) = step.name else { return name(step.name).to_string() };
        let mut said = self.book.name(Key::from(goods));
        let (at, what) = of_goods(of);
        for part in [at.map(stage).unwrap_or_default(), what] {
            if !part.is_empty() {
                said.push_str(", ");
                said.push_str(part);
            }
        }
        if let OfGoods::PriceFrom(packs) = of {
            said.push_str(&self.number(packs));
            said.push_str(" at a time");
        }
        said
    }

    /// The figure of a step: "$0.693"; what was typed with all its digits.
    pub fn figure(&self, step: &Step) -> String {
        self.shown(step).unwrap_or_else(overflow)
    }

    /// How a step came about, in a sentence.
    pub fn sentence(&self, step: &Step) -> String {
        match step.rule {
            Rule::Given(Key::Settings) => "Entered in Book.".to_string(),
            Rule::Given(key) => ["Entered at ", &self.book.name(key), "."].concat(),
            Rule::Fact(fact) => said_fact(fact).to_string(),
            Rule::Opens(_) => "Has a working of its own.".to_string(),
            _ => match template(step) {
                Some(template) => self.filled(template, step),
                None => self.listed(step),
            },
        }
    }

    /// A working as text, one step a line, each step after those before it and deeper by two
    /// blanks.
    pub fn text(&self, step: &Step) -> String {
        let mut text = String::new();
        self.write(step, 0, &mut text);
        text
    }

    fn write(&self, step: &Step, depth: usize, text: &mut String) {
        for part in [&*"  ".repeat(depth), &*self.name(step), ": ", &*self.figure(step), ". ", &*self.sentence(step)] {
            text.push_str(part);
        }
        text.push('\n');
        for before in &step.from {
            self.write(before, depth.saturating_add(1), text);
        }
    }

    fn number(&self, number: Exact) -> String {
        show_number(number.rounded(4), 0, self.style)
    }

    fn shown(&self, step: &Step) -> Result<String, Overflow> {
        let units = self.book.settings().units;
        let with = |number: Exact, unit: &str| [&*self.number(number), "\u{a0}", unit].concat();
        Ok(match step.figure {
            Figure::Money(money) => self.money(money),
            Figure::Volume(volume) => show_volume(volume, units, self.style)?,
            Figure::Mass(mass) => show_mass(mass, units, self.style)?,
            Figure::Count(count) => show_count(count, self.style),
            Figure::Share(share) => {
                let places = if matches!(step.rule, Rule::Given(_)) { 6 } else { 1 };
                let percent = show_number(share.percent()?.rounded(places), 0, self.style);
                [&*percent, "\u{a0}%"].concat()
            }
            Figure::Time(time) => with(time.seconds().rounded(1), "s"),
            Figure::Density(density) => with(density.grams_per_millilitre(), "g/mL"),
            Figure::Number(number) => self.number(number),
            Figure::Amount(amount) => show_amount(amount, units, self.style),
            Figure::Length(length) => with(length.number, length.unit.symbol()),
        })
    }

    /// Money in its currency's digits, and one finer where there is something to show in it.
    fn money(&self, money: Money) -> String {
        let digits = self.book.settings().currency.digits();
        let finer = money.major().rounded(digits.saturating_add(1));
        let (sign, size) = if finer.is_negative() { ("\u{2212}", finer.negated()) } else { ("", finer) };
        let NumberStyle { money_before, money_after, .. } = self.style;
        [sign, money_before, &show_number(size, digits, self.style), money_after].concat()
    }

    /// A template with its figures: `{=}` is the step's own, `{0}` the first before it.
    fn filled(&self, template: &str, step: &Step) -> String {
        let mut pieces = template.split(['{', '}']);
        let mut said = pieces.next().unwrap_or_default().to_string();
        while let (Some(place), Some(text)) = (pieces.next(), pieces.next()) {
            let named = match place.parse::<usize>() {
                Ok(place) => step.from.get(place),
                Err(_) => Some(step),
            };
            said.push_str(&named.map(|step| self.figure(step)).unwrap_or_default());
            said.push_str(text);
        }
        said
    }

    /// Names and figures in a row, as a sum or a difference.
    fn listed(&self, step: &Step) -> String {
        let less = step.rule == Rule::Difference;
        let mut said = String::new();
        for (place, before) in step.from.iter().enumerate() {
            said.push_str(match (place, step.from.len()) {
                (0, _) => "",
                _ if less => ", less ",
                (_, 2) => " and ",
                _ => "; ",
            });
            let mut name = self.name(before);
            if place > 0
                && !matches!(before.name, Name::Of(..))
                && let Some(first) = name.get_mut(..1)
            {
                first.make_ascii_lowercase();
            }
            said.push_str(&name);
            if step.from.len() > 1 {
                said.push(' ');
                said.push_str(&self.figure(before));
            }
        }
        said.push_str(match step.from.len() {
            0 => "Nothing: ",
            1 => " alone: ",
            _ if less => ": ",
            _ => ": together ",
        });
        said.push_str(&self.figure(step));
        said.push('.');
        said
    }
}

/// The sentence of a step, with places for its figures; none for a row of names and figures.
fn template(step: &Step) -> Option<&'static str> {
    let Name::Of(_, of) = step.name else { return template_of(step) };
    let second = step.from.get(1).map(|before| before.name);
    let by = match second {
        Some(Name::Of(_, by)) => Some(by),
        _ => None,
    };
    Some(match (of, step.rule) {
        (OfGoods::Cost | OfGoods::UsableCost(_), _) => "{0} of a {2} pack for {1}: {=}.",
        (OfGoods::PieceCost, _) => "{0} for {1}: {=} each.",
        (OfGoods::Price, _) => "{0} bought at a time: {=} for each.",
        (OfGoods::Bought | OfGoods::BoughtMass, _) => match (by, step.from.len()) {
            (Some(OfGoods::PressYield), 2) => "{0} of juice is {1} of what is pressed: {=} bought.",
            (Some(OfGoods::PressYield), _) => {
                "{0} of juice is {1} of what is pressed, which is {2} of what is bought: {=} bought."
            }
            (Some(OfGoods::SoakYield), 2) => "{0} is {1} of what is soaked or brewed: {=} bought.",
            (Some(OfGoods::SoakYield), _) => {
                "{0} is {1} of what is soaked or brewed, which is {2} of what is bought: {=} bought."
            }
            (Some(OfGoods::TrimYield), _) => "{0} trimmed is {1} of what is bought: {=} bought.",
            (Some(OfGoods::PieceWeight), _) => "{0} at {1} a piece: {=} bought.",
            _ => "{0} at {1}: {=} bought.",
        },
        (OfGoods::Mass(_), _) => match (by, step.from.len()) {
            (Some(OfGoods::JuiceDensity), _) => "{0} of juice at {1} is {=}.",
            (Some(OfGoods::PieceWeight), 2) => "{0} at {1} a piece is {=}.",
            (Some(OfGoods::PieceWeight), 3) => "{0} at {1} a piece, {2} of that left: {=}.",
            (Some(OfGoods::PieceWeight), _) => "{0} at {1} a piece, {3} of that left, and of that {2}: {=}.",
            (Some(OfGoods::Packing), _) => "{0} of cubes, {1} of it ice at {2}: {=}.",
            _ => "{0} at {1} is {=}.",
        },
        (OfGoods::Volume(_), _) => "{0} at {1} is {=}.",
        (OfGoods::Space(_), _) => "{0}, with air {1} of that: {=}.",
        (OfGoods::InDrink(_), Rule::Solved) => "Whole steps, found so that all together fills the drink: {=}.",
        (OfGoods::InDrink(_) | OfGoods::ToUse(_), Rule::Proportion) => {
            "{1} is left to fill, and the recipe’s {0} fills {2}: {=}."
        }
        (OfGoods::ToUse(_), Rule::Quotient) => "{0} in the drink is {1} of what is used: {=}.",
        (OfGoods::InDrink(_) | OfGoods::ToUse(_), _) => match by {
            Some(OfGoods::Steps) => "{1} times {0}: {=}.",
            _ => "{0} in the recipe, {1} times: {=}.",
        },
        (OfGoods::Steps, _) => "{0} to the nearest whole: {=}.",
        (OfGoods::StepsBeforeRounding, _) => "{0} in the recipe, {1} times, in steps of {2}: {=}.",
        _ => return None,
    })
}

fn template_of(step: &Step) -> Option<&'static str> {
    Some(match (step.name, step.rule) {
        (Name::Poured, _) => "{0} to the rim, less {1} left empty: {=}.",
        (Name::Brimful, _) => match step.from.len() {
            3 => "A cup of {0} at the base, {1} at the rim and {2} in height: {=}.",
            _ => "The last pouring reaches the rim: {=}.",
        },
        (Name::Headspace, Rule::Product) => "{1} of {0} to the rim: {=}.",
        (Name::Headspace, _) => "What the rim’s last {0} of height hold: {=}.",
        (Name::Factor, Rule::Quotient) => "{0} to fill, and the recipe as written fills {1}: {=} times the recipe.",
        (Name::Factor, _) => "So many times the recipe that it fills {0}: {=}.",
        (Name::WithAir, _) => "{0} of the volume and {1} air: {=}.",
        (Name::Liquid, _) => "{0} in {1}: {=}.",
        (Name::Part(crate::cost::Part::Labour), _) => "{0} at {1} an hour: {=}.",
        (Name::TimeForVolume, _) => "{0} for each litre, and {1} poured: {=}.",
        (Name::TimeOfBatch, _) => "{0} for a batch of {1}: {=} each.",
        (Name::Unsold(_) | Name::Part(crate::cost::Part::Unsold), _) => {
            "{0} for each drink made; {1} is not sold, and the {2} sold bear it: {=} each."
        }
        (Name::FeeOfPrice, _) => {
            "{0} of what the customer pays, which is {1} of the price without tax: {=} of that price."
        }
        (Name::Fee, _) => "{1} of the {0} that the customer pays: {=}.",
        (Name::Commission, _) => "{1} of the price without tax, {0}: {=}.",
        (Name::WithTax, _) => "{0} of the price and {1} tax: {=}.",
        (Name::TargetWithoutTax, _) => "{0} may be {1} of the price without tax: {=}.",
        (Name::Exact, Rule::Product) => "{0} without tax, and {1} of that with tax: {=}.",
        (Name::Exact, _) => "No tax is inside the menu price: {=}.",
        (Name::Suggested, _) => "{0}, raised to the next price that ends as you like: {=}.",
        (Name::WithoutTax, Rule::Quotient) => "{0} with tax is {1} of the price without: {=}.",
        (Name::WithoutTax, _) => "No tax is inside the menu price: {=}.",
        (Name::CustomerPays, Rule::Product) => "{0} on the menu, and {1} of that with tax: {=}.",
        (Name::CustomerPays, _) => "Nothing is added to the menu price: {=}.",
        (Name::Margin, _) => "{0} is left of {1}: {=}.",
        (Name::PricePerVolume | Name::CostPerVolume | Name::ContributionPerVolume, _) => "{0} for {2}: {=} for {1}.",
        (Name::ContributionPerMinute, _) => "{0} for {2} of hands’ time: {=} a minute.",
        (Name::AgainstSmallest, _) => "{0} against {1} for the smallest size: {=}.",
        (Name::ExtraPrice | Name::ExtraCost | Name::ExtraContribution | Name::ExtraWithoutTax, _) => {
            "{0}, and {1} for the next smaller size: {=} more."
        }
        (Name::KeptOfExtra, _) => "{0} of {1} more is kept: {=}.",
        _ => return None,
    })
}

const fn said_fact(fact: Fact) -> &'static str {
    match fact {
        Fact::Whole => "All of it.",
        Fact::Hour => "An hour has 3600 seconds.",
        Fact::Minute => "A minute has 60 seconds.",
        Fact::Litre => "A litre has 1000 millilitres.",
        Fact::Ice => "Ice at 0 °C weighs 0.917 grams a millilitre (IAPWS R10-06).",
        Fact::Shown => "The cost or price is shown for so much.",
    }
}

/// At which stage it is meant, and what it is.
const fn of_goods(of: OfGoods) -> (Option<Stage>, &'static str) {
    match of {
        OfGoods::Written(stage) => (Some(stage), "as the recipe says"),
        OfGoods::InDrink(stage) => (Some(stage), "in the drink"),
        OfGoods::ToUse(stage) => (Some(stage), "to use"),
        OfGoods::Usable(stage) => (Some(stage), ""),
        OfGoods::StepSize(stage) => (Some(stage), "one step"),
        OfGoods::Mass(stage) => (Some(stage), "weight"),
        OfGoods::Volume(stage) => (Some(stage), "volume"),
        OfGoods::Space(stage) => (Some(stage), "volume with air"),
        OfGoods::UsableCost(stage) => (Some(stage), "cost"),
        OfGoods::Used => (None, "for one drink"),
        OfGoods::Steps => (None, "whole steps"),
        OfGoods::StepsBeforeRounding => (None, "steps before rounding"),
        OfGoods::Bought => (None, "bought"),
        OfGoods::BoughtMass => (None, "bought, by weight"),
        OfGoods::TrimYield => (None, "left after trimming"),
        OfGoods::PressYield => (None, "left as juice"),
        OfGoods::SoakYield => (None, "weight after soaking or brewing"),
        OfGoods::Density => (None, "density"),
        OfGoods::JuiceDensity => (None, "density of the juice"),
        OfGoods::PieceWeight => (None, "weight of a piece"),
        OfGoods::Packing => (None, "share of a scoop that is ice"),
        OfGoods::Contents => (None, "what a pack holds"),
        OfGoods::Price => (None, "price of a pack"),
        OfGoods::PriceFrom(_) => (None, "price of a pack from "),
        OfGoods::AtATime => (None, "packs bought at a time"),
        OfGoods::Surcharge => (None, "delivery or deposit for a pack"),
        OfGoods::Paid => (None, "paid for a pack"),
        OfGoods::Cost => (None, ""),
        OfGoods::PieceCost => (None, "cost of a piece"),
    }
}

const fn name(name: Name) -> &'static str {
    match name {
        Name::Of(..) => "",
        Name::Brimful => "To the rim",
        Name::Headspace => "Left empty",
        Name::HeadspaceShare => "Share left empty",
        Name::HeadspaceHeight => "Left empty under the rim",
        Name::Base => "Diameter at the base",
        Name::Rim => "Diameter at the rim",
        Name::Height => "Height inside",
        Name::ReadingHeight => "Height of a pouring",
        Name::ReadingVolume => "Volume of a pouring",
        Name::Poured => "Poured",
        Name::Factor => "Times the recipe",
        Name::Fixed => "Fixed amounts",
        Name::LeftToFill => "Left to fill",
        Name::Written => "Filled by the recipe as written",
        Name::Air => "Air beaten in",
        Name::WithAir => "Volume with air",
        Name::Liquid => "Density of what ice floats in",
        Name::LiquidMass => "Weight of what ice floats in",
        Name::LiquidVolume => "Volume of what ice floats in",
        Name::Loss => "Stays in the press or jug",
        Name::Kept => "Comes into the drink",
        Name::Part(part) => super::part(part),
        Name::Time => "Hands’ time",
        Name::TimePerDrink => "Time per drink",
        Name::TimePerLitre => "Time per litre",
        Name::TimeForVolume => "Time by the litre",
        Name::TimePerBatch => "Time for a batch",
        Name::Batch => "Drinks in a batch",
        Name::TimeOfBatch => "Share of the time for a batch",
        Name::Wage => "Hourly wage",
        Name::UnsoldShare => "Made but not sold",
        Name::SoldShare => "Sold",
        Name::BeforeUnsold(_) => "Cost of each drink made",
        Name::Unsold(_) => "Made but not sold",
        Name::Cost => "Full cost",
        Name::Covered(Covers::Goods) => "Cost of goods",
        Name::Covered(Covers::GoodsAndLabour) => "Cost of goods and labour",
        Name::Covered(Covers::Everything) => "Full cost",
        Name::FixedFee => "Fixed payment fee",
        Name::FeeShare => "Payment fee",
        Name::FeeOfPrice => "Payment fee on price and tax",
        Name::Fee => "Payment fee",
        Name::CommissionShare => "Commission",
        Name::Commission => "Commission",
        Name::Fees => "Fees",
        Name::MustBear => "What the price must bear",
        Name::LeftShare => "Left of the price",
        Name::Target => "Target margin",
        Name::Tax => "Tax",
        Name::WithTax => "Price with tax",
        Name::TargetWithoutTax => "Price without tax for the target",
        Name::Exact => "Price for the target",
        Name::Suggested => "Suggested price",
        Name::Menu => "Menu price",
        Name::WithoutTax => "Price without tax",
        Name::CustomerPays => "Customer pays",
        Name::LeftAfterCovered => "Left of the price",
        Name::Margin => "Margin",
        Name::Contribution => "Left after everything",
        Name::PricePerVolume => "Price by volume",
        Name::CostPerVolume => "Cost by volume",
        Name::ContributionPerVolume => "Left after everything, by volume",
        Name::ContributionPerMinute => "Left per minute of hands",
        Name::AgainstSmallest => "Against the smallest size",
        Name::ExtraPrice => "Asked more",
        Name::ExtraCost => "Costs more",
        Name::ExtraContribution => "Left more",
        Name::ExtraWithoutTax => "Asked more, without tax",
        Name::KeptOfExtra => "Kept of what is asked more",
        Name::Fact(Fact::Whole) => "The whole",
        Name::Fact(Fact::Hour) => "An hour",
        Name::Fact(Fact::Minute) => "A minute",
        Name::Fact(Fact::Litre) => "A litre",
        Name::Fact(Fact::Ice) => "Density of ice",
        Name::Fact(Fact::Shown) => "Shown for",
    }
}
