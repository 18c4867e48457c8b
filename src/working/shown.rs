//! Every number that can be opened.

use crate::book::{
    Book, Container, ContainerId, Drink, Goods, IngredientId, Key, LineId, OfferId, PackId, Part, Stage,
};
use crate::drink::ledger::{Ledger, OfferError, Priced};
use crate::foundation::measure::{Amount, Exact, Money};

/// A number that can be opened to its working.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shown {
    /// What a container holds to the rim.
    Brimful(ContainerId),
    /// What is poured into it.
    Poured(ContainerId),
    /// What a usable amount of an ingredient costs from a pack.
    Usable {
        /// The ingredient.
        ingredient: IngredientId,
        /// Its pack.
        pack: PackId,
        /// At which stage the amount is meant.
        stage: Stage,
        /// The amount.
        amount: Amount,
    },
    /// What a piece costs from a pack.
    Piece(Goods, PackId),
    /// A number of a drink at one size.
    Offer(OfferId, OfOffer),
    /// A number of a size among the others of its drink.
    Size(OfferId, OfSize),
    /// A number of a drink packaged ahead of sale.
    Packaged(OfferId, OfPackaged),
}

/// A number of a drink at one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfOffer {
    /// How many times the recipe.
    Factor,
    /// What a line fills as the recipe says.
    Written(LineId),
    /// The density of what ice floats in.
    Liquid,
    /// The density of the drink as it is filled, with its air.
    Density,
    /// The amount of a line in the drink.
    InDrink(LineId),
    /// The amount of a line to use.
    ToUse(LineId),
    /// What a line costs.
    LineCost(LineId),
    /// What packaging costs, by its place in the container's set.
    PackagingCost(usize),
    /// Time of hands.
    Time,
    /// A part of the cost.
    Part(Part),
    /// The full cost.
    Cost,
    /// The cost that the target must cover.
    Covered,
    /// The price without tax that gives the target.
    TargetWithoutTax,
    /// The menu price that gives the target.
    Exact,
    /// That price with one of the owner's endings.
    Suggested,
    /// What a menu price brings.
    At(AtPrice, OfPrice),
}

/// Which menu price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AtPrice {
    /// The one asked.
    Asked,
    /// The one suggested.
    Suggested,
    /// One that was typed on the spot, above zero.
    Point(Money),
}

/// What a menu price brings.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfPrice {
    /// The price without tax.
    WithoutTax,
    /// What the customer pays.
    CustomerPays,
    /// What is paid of the price without tax on average.
    Revenue,
    /// Payment fee and commission.
    Fees,
    /// Margin.
    Margin,
    /// What is left after everything.
    Contribution,
    /// What the cost that the target covers may be.
    MayCost,
    /// What may be spent on ingredients, the rest of that cost as it is.
    IngredientsMayCost,
}

/// A number of a size among the others of its drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfSize {
    /// Menu price for a volume.
    PricePerVolume,
    /// Cost for a volume.
    CostPerVolume,
    /// Contribution for a volume.
    ContributionPerVolume,
    /// Contribution for a minute of hands' time.
    ContributionPerMinute,
    /// Price for a volume against that of the smallest size.
    AgainstSmallest,
    /// What it asks more than the next smaller size.
    ExtraPrice,
    /// What it costs more.
    ExtraCost,
    /// What is kept of the extra price.
    Kept,
}

/// A number of a drink packaged ahead of sale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfPackaged {
    /// What to fill on average.
    Target,
    /// What is given away in a package.
    Giveaway,
    /// The fullest package to expect.
    Highest,
    /// The most that there is room for.
    Room,
    /// What is given away in a package, in ingredients.
    GiveawayCost,
    /// What is given away in a year, in ingredients.
    GiveawayCostInAYear,
    /// Mean of the weighings.
    Mean,
    /// Standard deviation of the weighings.
    Spread,
}

/// A computed offer with what it is computed from.
pub(super) struct Offered<'a> {
    pub book: &'a Book,
    pub id: OfferId,
    pub drink: &'a Drink,
    pub container: &'a Container,
    pub priced: &'a Priced,
}

impl<'a> Offered<'a> {
    pub fn new(book: &'a Book, ledger: &'a Ledger, id: OfferId) -> Result<Offered<'a>, OfferError> {
        let priced = ledger.get(id).ok_or(OfferError::Missing(Key::Offer(id)))?;
        let drink = book.drink(id.drink).ok_or(OfferError::Missing(Key::Drink(id.drink)))?;
        let container = book.container(id.container).ok_or(OfferError::Missing(Key::Container(id.container)))?;
        Ok(Offered { book, id, drink, container, priced: priced.as_ref().map_err(|error| *error)? })
    }

    /// How many are usually sold in a week, where it is known.
    pub fn weekly(&self) -> Option<Exact> {
        self.book.offer(self.id).and_then(|offer| offer.weekly)
    }

    pub const fn shown(&self, of: OfOffer) -> Shown {
        Shown::Offer(self.id, of)
    }
}
