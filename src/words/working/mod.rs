//! Workings in words: what each number is, its figure, and how that follows from those before it.

mod names;
mod rules;

use names::{name, of_goods, stage_of};

use super::{Speaker, stage, starting};
use crate::book::{self, Book, Goods, Key};
use crate::drink::fill::{ICE_DENSITY, MELTED_DENSITY};
use crate::foundation::measure::{Exact, System, Volume};
use crate::say;
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
    /// What a step is: "Apples, pressed, amount needed".
    pub fn name(&self, step: &Step) -> String {
        let (goods, of) = match (step.name, step.rule) {
            (Name::Of(goods, of), _) => (goods, of),
            (other, _) => return name(other, self.speaker).to_string(),
        };
        let goods = self.book.name(Key::from(goods));
        let goods = match stage_of(of) {
            Some(at) => say!(working::stage_of, name = goods, stage = stage(at)),
            None => goods,
        };
        of_goods(goods, of, self.speaker.units(), |number| self.number(number))
    }

    /// The figure of a step: "$0.693"; what was typed with all its digits.
    pub fn figure(&self, step: &Step) -> String {
        match step.figure {
            Figure::Money(money) => self.speaker.exact_money(money),
            Figure::Volume(_) if step.name == Name::Fact(Fact::Litre) => {
                let unit = self.speaker.units().labor_volume();
                self.speaker.volume(Volume::from_millilitres(unit.size()))
            }
            Figure::Volume(volume) => self.speaker.volume(volume),
            Figure::FineVolume(volume) => self.speaker.fine_volume(volume),
            Figure::Filled(volume) => self.speaker.fill(volume),
            Figure::Mass(mass) => self.speaker.mass(mass),
            Figure::Count(count) => self.speaker.count(count),
            Figure::Share(share) => {
                let places = if matches!(step.rule, Rule::Given(_)) { 6 } else { 1 };
                self.speaker.short_percent(share, places)
            }
            Figure::Time(time) if step.name == Name::TimePerLitre => self.speaker.labor(time),
            Figure::Time(time) => self.speaker.time(time),
            // As its source has it.
            Figure::Density(density) if matches!(step.rule, Rule::Fact(_)) => {
                self.speaker.grams_per_millilitre(density)
            }
            Figure::Density(density) => self.speaker.density(density),
            Figure::Number(number) => self.number(number),
            Figure::Amount(amount) => self.speaker.amount(amount),
            Figure::Length(length) => self.speaker.typed_length(length),
        }
    }

    /// How a step came about, in a sentence.
    pub fn sentence(&self, step: &Step) -> String {
        match step.rule {
            Rule::Given(Key::Settings) => say!(working::entered_in_book).to_string(),
            Rule::Given(key) => {
                self.brought(step).unwrap_or_else(|| say!(working::entered_in, name = self.book.name(key)))
            }
            Rule::Fact(fact) => self.fact(fact),
            Rule::Opens(_) => say!(working::own_math).to_string(),
            _ => self.by_rule(step).unwrap_or_else(|| self.listed(step)),
        }
    }

    /// Where a figure is from that was brought with its ingredient, and that nobody typed or confirmed.
    fn brought(&self, step: &Step) -> Option<String> {
        let Name::Of(Goods::Ingredient(id), of) = step.name else { return None };
        let figure = match of {
            OfGoods::TrimYield => book::Figure::TrimYield,
            OfGoods::PressYield => book::Figure::PressYield,
            OfGoods::Density => book::Figure::Density,
            OfGoods::JuiceDensity => book::Figure::JuiceDensity,
            OfGoods::PieceWeight => book::Figure::PieceWeight,
            _ => return None,
        };
        let ingredient = self.book.ingredient(id)?;
        let brought = ingredient.starting_figures().find(|it| it.figure == figure)?;
        let of = say!(working::starting_figure_of, name = &ingredient.name);
        Some([of, starting::basis(brought.basis, None)].join(" "))
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
            Fact::Whole => say!(working::whole_amount),
            Fact::Hour => say!(working::minutes_in_an_hour),
            Fact::Minute => say!(working::seconds_in_a_minute),
            Fact::Litre if self.speaker.units() == System::UsCustomary => say!(working::ounces_in_a_gallon),
            Fact::Litre => say!(working::milliliters_in_a_liter),
            Fact::Ice => {
                return say!(working::ice_by_source, density = self.speaker.grams_per_millilitre(ICE_DENSITY));
            }
            Fact::Melted => {
                return say!(working::melted_by_source, density = self.speaker.grams_per_millilitre(MELTED_DENSITY));
            }
            Fact::Shown => say!(working::shown_per_this),
            Fact::OnTheSpot => say!(working::typed_here),
            Fact::TolerableError => say!(working::tolerable_error),
            Fact::LeastSpreads => say!(working::least_spreads),
            Fact::Water => say!(working::water_by_source),
            Fact::Quantile(accepted) => {
                return say!(working::quantile, share = self.speaker.short_percent(accepted.share(), 6));
            }
            Fact::UpToFullest => say!(working::up_to_fullest),
            Fact::Year => say!(working::weeks_in_a_year),
        }
        .to_string()
    }

    /// Names and figures in a row, as a sum or a difference.
    fn listed(&self, step: &Step) -> String {
        let result = self.figure(step);
        let named = |before: &Step| say!(working::named_figure, name = self.name(before), figure = self.figure(before));
        match step.from.as_slice() {
            [] => say!(working::nothing_entered, result = result),
            [before] => say!(working::only, name = self.name(before), result = result),
            all => {
                let sign = if step.rule == Rule::Difference { " − " } else { " + " };
                let terms: Vec<String> = all.iter().map(named).collect();
                if self.is_rounded_apart(step) {
                    say!(working::equation_rounded, terms = terms.join(sign), result = result)
                } else {
                    say!(working::equation, terms = terms.join(sign), result = result)
                }
            }
        }
    }

    /// Whether amounts of money in a row, as they are shown, do not come to the result that is shown.
    fn is_rounded_apart(&self, step: &Step) -> bool {
        let shown = |step: &Step| match step.figure {
            Figure::Money(money) => Some(self.speaker.shown_exactly(money)),
            _ => None,
        };
        let [first, others @ ..] = step.from.as_slice() else { return false };
        let added = others.iter().try_fold(shown(first), |sum, term| {
            let (sum, term) = (sum?, shown(term)?);
            let next = if step.rule == Rule::Difference { sum.minus(term) } else { sum.plus(term) };
            next.ok().map(Some)
        });
        added.flatten().is_some_and(|sum| shown(step) != Some(sum))
    }
}
