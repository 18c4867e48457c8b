//! What a row brings into an ingredient.

use super::{Has, Row, base};
use crate::book::{Allergen, Basis, Figure, Ingredient, IngredientId, Produce, Stage, Starting, StartingFigure};
use crate::foundation::measure::{Density, Exact, Mass, Share};

/// Grams per millilitre that puréed fruit and vegetables are assumed to have.
const OF_PUREE: Exact = Exact::ONE;

/// Two figures of an ingredient that do not go together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AtOdds {
    /// The weight of a piece as bought was computed with another trim yield than the owner's.
    OtherTrimYield {
        /// That of the list.
        list: Share,
        /// The owner's.
        own: Share,
    },
    /// The weight that was typed for a piece as bought is what the list leaves of one after trimming.
    TrimmedPiece {
        /// What the list has for a piece as bought.
        list: Mass,
        /// What was typed.
        own: Mass,
    },
}

impl Row {
    /// All that it can bring, in the order of [`Figure`]: each with its basis.
    pub fn figures(&self) -> Vec<StartingFigure> {
        let trim =
            self.trim_yield.filter(|(share, _)| *share != Share::WHOLE).map(|(share, basis)| (share.fraction(), basis));
        let is_pressed = self.stage == Stage::Pressed;
        let press = self.usual_press_yield().filter(|_| is_pressed).map(|(share, basis)| (share.fraction(), basis));
        let juice = self.juice_density.filter(|_| is_pressed);
        let juice = juice.map(|(density, basis)| (density.grams_per_millilitre(), basis));
        let piece = self.piece_weight.map(|(mass, basis)| (mass.grams(), basis));
        let all = [
            (Figure::TrimYield, trim),
            (Figure::PressYield, press),
            (Figure::Density, self.density_in_drink()),
            (Figure::JuiceDensity, juice),
            (Figure::PieceWeight, piece),
        ];
        let brought = |(figure, found): (Figure, Option<(Exact, Basis)>)| {
            found.map(|(value, basis)| StartingFigure { figure, value, basis })
        };
        all.into_iter().filter_map(brought).collect()
    }

    /// Grams per millilitre in the drink: as poured or puréed, and assumed for produce where that is not known.
    fn density_in_drink(&self) -> Option<(Exact, Basis)> {
        match self.density {
            Some((density, basis, Has::Liquid | Has::Puree)) => Some((density.grams_per_millilitre(), basis)),
            None if self.produce == Some(Produce::Raw) => Some((OF_PUREE, Basis::Assumed)),
            Some((_, _, Has::Bulk)) | None => None,
        }
    }

    /// A new ingredient with all that it brings, named in the language of this tag.
    pub fn ingredient(&self, id: IngredientId, language: &str) -> Ingredient {
        let named = Ingredient::named(id, self.name(language));
        let starting = Starting { key: self.key.clone(), figures: Vec::new() };
        self.filled(&named, language).unwrap_or(Ingredient { starting: Some(starting), ..named })
    }

    /// An ingredient with what is empty in it filled by this row. Returns `None` if nothing is, or if figures of
    /// another row still stand in it.
    pub fn filled(&self, ingredient: &Ingredient, language: &str) -> Option<Ingredient> {
        let is_of_other = ingredient.starting.as_ref().is_some_and(|starting| starting.key != self.key);
        if is_of_other && ingredient.starting_figures().next().is_some() {
            return None;
        }
        let mut filled = ingredient.clone();
        let mut figures: Vec<StartingFigure> = ingredient.starting_figures().collect();
        for brought in self.figures() {
            if is_empty(ingredient, brought.figure) {
                put(&mut filled, brought);
                figures.retain(|other| other.figure != brought.figure);
                figures.push(brought);
            }
        }
        figures.sort_by_key(|brought| brought.figure);
        filled.produce = filled.produce.or(self.produce);
        if filled.sold_as.is_empty() {
            filled.sold_as = self.label(language);
        }
        if filled == *ingredient {
            return None;
        }
        filled.starting = Some(Starting { key: self.key.clone(), figures });
        Some(filled)
    }

    /// An ingredient that takes what a spoon of it weighs for its density in drinks, as its owner says. Returns `None`
    /// if it has a density, or if the list has no such weight.
    pub fn measured_by_spoon(&self, ingredient: &Ingredient) -> Option<Ingredient> {
        let (density, basis) = self.spoon_density().filter(|_| ingredient.density.is_none())?;
        let brought = StartingFigure { figure: Figure::Density, value: density.grams_per_millilitre(), basis };
        let mut measured = ingredient.clone();
        put(&mut measured, brought);
        let mut figures: Vec<StartingFigure> = ingredient.starting_figures().collect();
        figures.push(brought);
        figures.sort_by_key(|brought| brought.figure);
        measured.starting = Some(Starting { key: self.key.clone(), figures });
        Some(measured)
    }

    /// What a label calls it; empty if that is its name. Labels in the United States are in English, whatever language
    /// its owner reads.
    fn label(&self, language: &str) -> String {
        match base(language) {
            "en" => self.label.clone(),
            "es" if self.label.is_empty() => self.name("en").to_lowercase(),
            "es" => self.label.clone(),
            _ => String::new(),
        }
    }

    /// The allergens that are always in it.
    pub fn certain_allergens(&self) -> Vec<Allergen> {
        self.allergens.iter().filter(|offered| offered.is_certain).map(|offered| offered.allergen).collect()
    }

    /// What does not go together in an ingredient that was made from this row, if anything.
    pub fn at_odds(&self, ingredient: &Ingredient) -> Option<AtOdds> {
        let ((list_trim, _), (list_piece, _)) = (self.trim_yield?, self.piece_weight?);
        let (own_trim, own_piece) = (ingredient.trim_yield, ingredient.piece_weight?);
        let tenth = Exact::new(1, 1);
        if own_piece == list_piece {
            let differs = is_off(own_trim.fraction(), list_trim.fraction(), tenth);
            return differs.then_some(AtOdds::OtherTrimYield { list: list_trim, own: own_trim });
        }
        let trimmed = list_piece.times(list_trim.fraction()).ok()?;
        let hundredth = Exact::new(1, 2);
        let is_trimmed = !is_off(own_piece.grams(), trimmed.grams(), hundredth)
            && is_off(own_piece.grams(), list_piece.grams(), tenth.over(Exact::new(2, 0)).ok()?);
        is_trimmed.then_some(AtOdds::TrimmedPiece { list: list_piece, own: own_piece })
    }
}

/// Whether a number is off another by more than this share of it.
fn is_off(number: Exact, other: Exact, share: Exact) -> bool {
    let off = || number.minus(other).ok().zip(other.times(share).ok());
    off().is_none_or(|(off, allowed)| off.abs() > allowed.abs())
}

/// Whether nobody typed, weighed or brought a figure.
fn is_empty(ingredient: &Ingredient, figure: Figure) -> bool {
    match figure {
        Figure::TrimYield => ingredient.trim_yield == Share::WHOLE && ingredient.weighings.is_empty(),
        other => ingredient.figure(other).is_none(),
    }
}

/// Puts the value of a figure into an ingredient.
pub fn put(ingredient: &mut Ingredient, brought: StartingFigure) {
    let value = brought.value;
    match brought.figure {
        Figure::TrimYield => ingredient.trim_yield = Share::from_fraction(value),
        Figure::PressYield => ingredient.press_yield = Some(Share::from_fraction(value)),
        Figure::Density => ingredient.density = Some(Density::from_grams_per_millilitre(value)),
        Figure::JuiceDensity => ingredient.juice_density = Some(Density::from_grams_per_millilitre(value)),
        Figure::PieceWeight => ingredient.piece_weight = Some(Mass::from_grams(value)),
    }
}

/// An ingredient whose figure was confirmed: its mark is gone, its value stays.
pub fn confirmed(ingredient: &Ingredient, figure: Figure) -> Ingredient {
    let mut confirmed = ingredient.clone();
    if let Some(starting) = &mut confirmed.starting {
        starting.figures.retain(|brought| brought.figure != figure);
    }
    confirmed
}
