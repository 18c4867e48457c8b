//! One offer, computed: fill, recipe, cost, price.

use std::sync::Arc;

use crate::book::{Book, Key, Offer};
use crate::drink::cost::{Cost, CostError, cost, overhead};
use crate::drink::fill::{Fill, FillError, Recipe, ScaleError, Scaled, fill};
use crate::drink::price::{Asked, Hands, PriceError, Suggestion, Terms, asked, suggest};
use crate::foundation::measure::{Money, Overflow, Share};

/// A computed offer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Priced {
    /// How full the container is poured.
    pub fill: Fill,
    /// The recipe at this fill; shared with what is tried beside it.
    pub scaled: Arc<Scaled>,
    /// The full cost, part by part; shared likewise.
    pub cost: Arc<Cost>,
    /// The terms that a price must bear.
    pub terms: Terms,
    /// The price for the target margin, or why no price reaches it.
    pub suggestion: Result<Suggestion, PriceError>,
    /// What the price asked brings, where one is asked.
    pub asked: Option<Asked>,
}

/// Where an offer stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum OfferStatus {
    /// It cannot be computed.
    CannotCompute,
    /// Its margin is under target.
    UnderTarget,
    /// No price is asked yet.
    WithoutPrice,
    /// Its margin is at or above target.
    OnTarget,
}

/// Why an offer cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfferError {
    /// A record is missing.
    Missing(Key),
    /// The container has no fill.
    Fill(FillError),
    /// The recipe does not make this size.
    Scale(ScaleError),
    /// Something has no cost.
    Cost(CostError),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<FillError> for OfferError {
    fn from(error: FillError) -> OfferError {
        OfferError::Fill(error)
    }
}

impl From<ScaleError> for OfferError {
    fn from(error: ScaleError) -> OfferError {
        OfferError::Scale(error)
    }
}

impl From<CostError> for OfferError {
    fn from(error: CostError) -> OfferError {
        OfferError::Cost(error)
    }
}

impl From<Overflow> for OfferError {
    fn from(overflow: Overflow) -> OfferError {
        OfferError::Arithmetic(overflow)
    }
}

impl Priced {
    /// Where the offer stands against its target.
    pub fn status(&self) -> OfferStatus {
        match &self.asked {
            None => OfferStatus::WithoutPrice,
            Some(asked) if self.terms.reached_by(asked.margin) => OfferStatus::OnTarget,
            Some(_) => OfferStatus::UnderTarget,
        }
    }

    /// What this price brings, where one is asked.
    ///
    /// # Errors
    /// [`OfferError::Arithmetic`].
    fn brings(&self, price: Option<Money>) -> Result<Option<Asked>, OfferError> {
        Ok(price.map(|price| asked(&self.cost, &self.terms, price)).transpose()?)
    }

    /// The same where this price is asked, or none.
    ///
    /// # Errors
    /// [`OfferError::Arithmetic`].
    pub(super) fn at(&self, price: Option<Money>) -> Result<Priced, OfferError> {
        Ok(Priced { asked: self.brings(price)?, ..self.clone() })
    }

    /// The margin at the price asked.
    pub fn margin(&self) -> Option<Share> {
        self.asked.map(|asked| asked.margin)
    }

    /// What stands above the margin without tax: the cost on the margin's own terms, with the fees of the price asked
    /// where it covers those.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn covered(&self) -> Result<Money, Overflow> {
        let basis = self.terms.cost_basis;
        let fees = self.asked.filter(|_| basis.has_fees()).map_or(Money::ZERO, |asked| asked.fees);
        self.cost.covered(basis).plus(fees)
    }

    /// What one drink more or less changes at the price asked: everything but overhead. Returns `None` if no
    /// price is asked.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn profit_that_changes(&self, hands: Hands) -> Result<Option<Money>, Overflow> {
        self.asked.map(|asked| asked.profit_that_changes(&self.cost, hands)).transpose()
    }
}

/// Where a result stands.
impl From<&Result<Priced, OfferError>> for OfferStatus {
    fn from(result: &Result<Priced, OfferError>) -> OfferStatus {
        result.as_ref().map_or(OfferStatus::CannotCompute, Priced::status)
    }
}

/// Computes one offer.
///
/// # Errors
/// The [`OfferError`] that stands in the way, naming what to mend.
pub fn price_offer(book: &Book, offer: &Offer) -> Result<Priced, OfferError> {
    Pricing::of(book).price(offer)
}

/// Computes one offer after another, each bearing its overhead. The recipe is kept from one size of a drink to the
/// next, so offers are best taken drink by drink.
pub(super) struct Pricing<'a> {
    book: &'a Book,
    overhead: Result<Money, Overflow>,
    recipe: Option<Recipe<'a>>,
}

impl<'a> Pricing<'a> {
    pub(super) fn of(book: &'a Book) -> Pricing<'a> {
        Pricing { book, overhead: overhead(book), recipe: None }
    }

    /// What each offer bears of overhead.
    pub(super) fn overhead(&self) -> Result<Money, Overflow> {
        self.overhead
    }

    /// Computes an offer.
    pub(super) fn price(&mut self, offer: &Offer) -> Result<Priced, OfferError> {
        let (book, overhead) = (self.book, self.overhead?);
        let drink = book.drink(offer.drink).ok_or(OfferError::Missing(Key::Drink(offer.drink)))?;
        let container = book.container(offer.container).ok_or(OfferError::Missing(Key::Container(offer.container)))?;
        let fill = fill(container)?;
        let recipe = match self.recipe.take().filter(|recipe| recipe.drink().id == drink.id) {
            Some(recipe) => recipe,
            None => Recipe::of(book, drink)?,
        };
        let scaled = self.recipe.insert(recipe).scaled(fill.volume)?;
        let cost = cost(book, drink, container, &scaled, fill.volume, overhead)?;
        let terms = Terms::of(book.settings(), drink, container)?;
        let suggestion = suggest(&cost, &terms, book.settings());
        let (scaled, cost) = (Arc::new(scaled), Arc::new(cost));
        let mut priced = Priced { fill, scaled, cost, terms, suggestion, asked: None };
        priced.asked = priced.brings(offer.price)?;
        Ok(priced)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Edit, Headspace, Record};
    use crate::drink::fill::fill;
    use crate::support::{book_of_one_drink, container, container_id, drink_id, offer, settings, share};

    /// Where a drink that costs 0.35 stands, at a target of 65 %.
    fn status(price: Option<&str>) -> OfferStatus {
        let book = book_of_one_drink(settings(), "0.35", price);
        OfferStatus::from(&price_offer(&book, &offer(1, 1, price)))
    }

    #[test]
    fn an_offer_stands_by_its_margin() {
        assert_eq!(status(None), OfferStatus::WithoutPrice);
        assert_eq!(status(Some("0.99")), OfferStatus::UnderTarget);
        assert_eq!(status(Some("1")), OfferStatus::OnTarget);
        assert_eq!(status(Some("1.01")), OfferStatus::OnTarget);
    }

    #[test]
    fn what_stands_in_the_way_is_named() {
        let mut book = book_of_one_drink(settings(), "1", None);
        let mut error = |record: Record| {
            book.apply(&Edit::Put(record)).unwrap();
            price_offer(&book, &offer(1, 1, None)).unwrap_err()
        };
        let empty = crate::support::drink(1, "1 L", []);
        assert_eq!(error(Record::Drink(empty)), OfferError::Scale(ScaleError::NoLines(drink_id(1))));
        let missing = price_offer(&book, &offer(2, 1, None));
        assert_eq!(missing, Err(OfferError::Missing(Key::Drink(drink_id(2)))));
        let missing = price_offer(&book, &offer(1, 2, None));
        assert_eq!(missing, Err(OfferError::Missing(Key::Container(container_id(2)))));
        assert_eq!(OfferStatus::from(&missing), OfferStatus::CannotCompute);
    }

    #[test]
    fn the_fill_is_the_containers() {
        let mut book = book_of_one_drink(settings(), "1", None);
        let half = Container { headspace: Headspace::Share(share("0.5")), ..container(1, "250 mL") };
        book.apply(&Edit::Put(Record::Container(half.clone()))).unwrap();
        let priced = price_offer(&book, &offer(1, 1, None)).unwrap();
        assert_eq!(Ok(priced.fill), fill(&half));
        assert_eq!(priced.cost.total(), crate::support::money("0.5"));
    }
}
