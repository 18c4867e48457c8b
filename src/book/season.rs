//! Yields that vary by season. Which month is in force is the business of whoever holds the book: it comes in
//! as a value, and is no part of the book.

use std::borrow::Cow;

use serde::{Deserialize, Serialize};

use super::{Book, Ingredient, IngredientId};
use crate::foundation::measure::{Month, Share};

/// The yields of an ingredient in another part of the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Season {
    /// The first month.
    pub from: Month,
    /// The last month. Before [`Season::from`], it is that of the next year.
    pub to: Month,
    /// Trimmed mass over bought mass, in (0, 1].
    pub trim_yield: Share,
    /// Juice mass over trimmed mass, in (0, 1], or `None` if it is not pressed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub press_yield: Option<Share>,
}

impl Season {
    /// Whether a month lies in it.
    pub fn has(&self, month: Month) -> bool {
        if self.from <= self.to {
            self.from <= month && month <= self.to
        } else {
            self.from <= month || month <= self.to
        }
    }
}

impl Ingredient {
    /// The season that is in force in a month. Returns `None` if it has the same yields as in the rest of the
    /// year, or if no month is known.
    pub fn season_in(&self, month: Option<Month>) -> Option<Season> {
        self.season.filter(|season| month.is_some_and(|month| season.has(month)))
    }

    /// Sets the trim yield that is in force in a month.
    pub fn set_trim_yield(&mut self, month: Option<Month>, share: Share) {
        let in_force = self.season_in(month).is_some();
        match &mut self.season {
            Some(season) if in_force => season.trim_yield = share,
            _ => self.trim_yield = share,
        }
    }

    /// Sets the press yield that is in force in a month. A season that has none of its own follows that of the
    /// rest of the year.
    pub fn set_press_yield(&mut self, month: Option<Month>, share: Share) {
        let in_force = self.season_in(month).is_some_and(|season| season.press_yield.is_some());
        match &mut self.season {
            Some(season) if in_force => season.press_yield = Some(share),
            _ => self.press_yield = Some(share),
        }
    }

    /// The ingredient with the yields of its season where that is in force.
    pub fn in_month(&self, month: Option<Month>) -> Cow<'_, Ingredient> {
        let Some(season) = self.season_in(month) else { return Cow::Borrowed(self) };
        let press_yield = season.press_yield.or(self.press_yield);
        Cow::Owned(Ingredient { trim_yield: season.trim_yield, press_yield, ..self.clone() })
    }
}

impl Book {
    /// The month whose yields are in force, or `None` if those of the rest of the year are, whatever the month.
    pub fn month(&self) -> Option<Month> {
        self.month.0
    }

    /// Puts the yields of a month in force. Nothing of the book changes: what was computed from it is to be
    /// computed anew.
    pub fn set_month(&mut self, month: Option<Month>) {
        self.month.0 = month;
    }

    /// An ingredient as it is in the month in force: what is computed follows its yields. To change one,
    /// take [`Book::ingredient`].
    pub fn ingredient_now(&self, id: IngredientId) -> Option<Cow<'_, Ingredient>> {
        self.ingredient(id).map(|ingredient| ingredient.in_month(self.month()))
    }
}

/// The month in force. Books that keep the same are equal, whatever the month.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct InForce(Option<Month>);

impl PartialEq for InForce {
    fn eq(&self, _: &InForce) -> bool {
        true
    }
}

impl Eq for InForce {}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{book, ingredient, ingredient_id, settings, share};

    #[test]
    fn the_yields_of_a_season_are_in_force_in_its_months() {
        let season = Season { from: Month::June, to: Month::August, trim_yield: share("0.8"), press_yield: None };
        let carrots = Ingredient { press_yield: Some(share("0.6")), season: Some(season), ..ingredient(1, []) };
        let mut book = book(settings(), [crate::book::Record::Ingredient(carrots.clone())]);
        let yields = |book: &Book| {
            let now = book.ingredient_now(ingredient_id(1)).unwrap();
            (now.trim_yield, now.press_yield)
        };
        let all_year = (share("1"), Some(share("0.6")));
        assert_eq!(yields(&book), all_year, "no month is known");
        for (month, trim) in [(Month::May, "1"), (Month::June, "0.8"), (Month::August, "0.8"), (Month::September, "1")]
        {
            book.set_month(Some(month));
            // A season without a juice yield leaves that of the year in force.
            assert_eq!(yields(&book), (share(trim), Some(share("0.6"))), "{month:?}");
        }
        let pressed = Ingredient { season: Some(Season { press_yield: Some(share("0.5")), ..season }), ..carrots };
        book.apply(&crate::book::Edit::Put(crate::book::Record::Ingredient(pressed))).unwrap();
        book.set_month(Some(Month::July));
        assert_eq!(yields(&book), (share("0.8"), Some(share("0.5"))));
        assert_eq!(book.ingredient(ingredient_id(1)).unwrap().trim_yield, share("1"), "what is kept stays");
        assert_eq!(book.cut(book.keys()).month(), Some(Month::July), "a part of a book is of its month");
    }

    #[test]
    fn the_month_in_force_is_no_part_of_the_book() {
        let here = book(settings(), []);
        let mut there = here.clone();
        there.set_month(Some(Month::July));
        assert_eq!(here, there);
    }

    #[test]
    fn a_season_may_pass_the_end_of_the_year() {
        let season = |from, to| Season { from, to, trim_yield: Share::WHOLE, press_yield: None };
        let months = |season: Season| Month::ALL.iter().filter(|month| season.has(**month)).count();
        assert_eq!(months(season(Month::March, Month::May)), 3);
        assert_eq!(months(season(Month::November, Month::February)), 4);
        assert!(season(Month::November, Month::February).has(Month::January));
        assert!(!season(Month::November, Month::February).has(Month::March));
        assert_eq!(months(season(Month::June, Month::June)), 1);
    }
}
