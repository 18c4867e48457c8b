//! Workings in words: what each number is, its figure, and how it came about.

mod names;

use names::{name, of_goods};

use super::{Speaker, stage};
use crate::book::{Book, Key};
use crate::foundation::measure::Exact;
use crate::working::{Fact, Figure, Name, OfGoods, Rule, Step};

/// Says the steps of a working, in the units and the currency of a book.
#[derive(Clone, Copy, Debug)]
pub struct Working<'a> {
    /// The book, for its names.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
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
        let with = |number: Exact, unit: &str| self.speaker.with_unit(number.rounded(4), 0, unit);
        match step.figure {
            Figure::Money(money) => self.speaker.exact_money(money),
            Figure::Volume(volume) => self.speaker.volume(volume),
            Figure::FineVolume(volume) => self.speaker.fine_volume(volume),
            Figure::Filled(volume) => self.speaker.fill(volume),
            Figure::Mass(mass) => self.speaker.mass(mass),
            Figure::Count(count) => self.speaker.count(count),
            Figure::Share(share) => {
                let places = if matches!(step.rule, Rule::Given(_)) { 6 } else { 1 };
                self.speaker.short_percent(share, places)
            }
            Figure::Time(time) => with(time.seconds().rounded(1), "s"),
            Figure::Density(density) => with(density.grams_per_millilitre(), "g/mL"),
            Figure::Number(number) => self.number(number),
            Figure::Amount(amount) => self.speaker.amount(amount),
            Figure::Length(length) => with(length.number, length.unit.symbol()),
        }
    }

    /// How a step came about, in a sentence.
    pub fn sentence(&self, step: &Step) -> String {
        match step.rule {
            Rule::Given(Key::Settings) => "Entered in Book.".to_string(),
            Rule::Given(key) => ["Entered at ", &self.book.name(key), "."].concat(),
            Rule::Fact(fact) => self.fact(fact),
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
        self.speaker.number(number.rounded(4))
    }

    /// What a fact says.
    fn fact(&self, fact: Fact) -> String {
        match fact {
            Fact::Whole => "All of it.",
            Fact::Hour => "An hour has 3600 seconds.",
            Fact::Minute => "A minute has 60 seconds.",
            Fact::Litre => "A litre has 1000 millilitres.",
            Fact::Ice => "Ice at 0 °C weighs 0.917 grams a millilitre (IAPWS R10-06).",
            Fact::Shown => "The cost or price is shown for so much.",
            Fact::OnTheSpot => "From what was typed on the spot; it is not in the book.",
            Fact::TolerableError => {
                "The tolerable negative error of Directive 76/211/EEC, Annex I, 2.4, for this size."
            }
            Fact::LeastSpreads => "At least three spreads: about one package in 740 would be lower.",
            Fact::Water => "Water at that temperature (Tanaka and others, Metrologia 38, 2001).",
            Fact::Quantile(accepted) => {
                let share = self.speaker.short_percent(accepted.share(), 6);
                let said = " lie more than so many times the spread under the mean.";
                return ["In a normal distribution ", &*share, said].concat();
            }
            Fact::UpToFullest => "In a normal distribution about one package in 740 is fuller.",
            Fact::Year => "A year has 52 weeks.",
        }
        .to_string()
    }

    /// A template with its figures: `{=}` is the step's own, `{0}` the first before it; `{#}` is
    /// how many are before it.
    fn filled(&self, template: &str, step: &Step) -> String {
        let mut pieces = template.split(['{', '}']);
        let mut said = pieces.next().unwrap_or_default().to_string();
        while let (Some(place), Some(text)) = (pieces.next(), pieces.next()) {
            let named = match (place, place.parse::<usize>()) {
                ("#", _) => Some(step.from.len().to_string()),
                (_, Ok(place)) => step.from.get(place).map(|step| self.figure(step)),
                (_, Err(_)) => Some(self.figure(step)),
            };
            said.push_str(&named.unwrap_or_default());
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

/// The sentence of a step, with places for its figures. Returns `None` for a row of names and
/// figures.
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
            "{1} is left to fill, and the recipe's {0} fills {2}: {=}."
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
        (Name::Headspace, _) => "What the rim's last {0} of height hold: {=}.",
        (Name::Factor, Rule::Quotient) => "{0} to fill, and the recipe as written fills {1}: {=} times the recipe.",
        (Name::Factor, _) => "So many times the recipe that it fills {0}: {=}.",
        (Name::WithAir, _) => "{0} of the volume and {1} air: {=}.",
        (Name::Liquid, _) => "{0} in {1}: {=}.",
        (Name::Part(crate::book::Part::Labour), _) => "{0} at {1} an hour: {=}.",
        (Name::TimeForVolume, _) => "{0} for each litre, and {1} poured: {=}.",
        (Name::TimeOfBatch, _) => "{0} for a batch of {1}: {=} each.",
        (Name::Unsold(_) | Name::Part(crate::book::Part::Unsold), _) => {
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
        (Name::ContributionPerMinute, _) => "{0} for {2} of hands' time: {=} a minute.",
        (Name::AgainstSmallest, _) => "{0} against {1} for the smallest size: {=}.",
        (Name::ExtraPrice | Name::ExtraCost | Name::ExtraContribution | Name::ExtraWithoutTax, _) => {
            "{0}, and {1} for the next smaller size: {=} more."
        }
        (Name::CanBear | Name::MayCost, Rule::Product) => "{1} of the price without tax, {0}: {=}.",
        (Name::MadeMayCost, _) => "{0} for each drink sold, and {1} of those made are sold: {=} for each made.",
        (Name::FillTarget, Rule::Larger) if step.from.first().is_some_and(|first| first.name == Name::ForAverage) => {
            "{0} for the average, and {1} for single packages; the larger of the two: {=}."
        }
        (Name::FillTarget, Rule::Larger) => {
            "{0} is declared, and single packages need {1} on average; the larger of the two: {=}."
        }
        (Name::FillTarget | Name::ForAverage, _) if step.from.len() > 1 => {
            "{0} declared, and {1} more for the average of a batch: {=}."
        }
        (Name::FillTarget, _) => "The declared size, as nobody said how many packages a batch has: {=}.",
        (Name::DeclaredMeasured | Name::ToleratedMeasured, _) => {
            "{0} where the law counts. Water is {1} there, and {2} as measured: {=}."
        }
        (Name::ForBatch, _) => "{0} for a single package, divided by {1}: {=}.",
        (Name::BatchRoot, _) => "The square root of {0} packages: {=}.",
        (Name::LeastInPackage, _) => "{0} declared, less {1} tolerated: {=}.",
        (Name::WithSpread, _) => "{0} as the least, and {1} for the spread: {=}.",
        (Name::ForSpread | Name::OverTarget, _) => "{1} times {0}: {=}.",
        (Name::GiveawayCost, _) => "{0} of ingredients fill {2}, and {1} are given away: {=}.",
        (Name::GiveawayCostInAYear, _) => "{0} for each of {1} packages: {=}.",
        (Name::Yearly, _) => "{0} a week for {1} weeks: {=}.",
        (Name::NetVolume, _) => "{0} at {1}: {=}.",
        (Name::Mean, _) => "{#} weighings together, divided by {#}: {=}.",
        (Name::Spread, _) => "The {#} weighings lie about so far from their mean (their standard deviation): {=}.",
        (Name::DrinkDensity, _) => "{0} in {1}: {=}.",
        (Name::KeptOfExtra, _) => "{0} of {1} more is kept: {=}.",
        _ => return None,
    })
}
