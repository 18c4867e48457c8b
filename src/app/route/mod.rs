//! Where the person is, kept in the address after the hash, so that Back works anywhere.

mod address;

use crate::book::{
    ContainerId, DrinkId, DrinkKind, Goods, IngredientId, Key, OfferId, PackagingId, PackagingSetId, ScenarioId, Scope,
    TrialId,
};
use crate::foundation::measure::Date;
use crate::say;

/// One of the five places.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// Every drink with its sizes.
    Drinks,
    /// Ingredients, packaging and containers.
    Buying,
    /// Sizes side by side.
    Sizes,
    /// Recipe cards.
    Counter,
    /// The open book and its settings.
    Book,
}

impl Place {
    /// All five, in the order of the bar.
    pub const ALL: [Place; 5] = [Place::Drinks, Place::Buying, Place::Sizes, Place::Counter, Place::Book];

    /// Its name.
    pub fn name(self) -> &'static str {
        match self {
            Place::Drinks => say!(first::drinks),
            Place::Buying => say!(first::buying),
            Place::Sizes => say!(first::sizes),
            Place::Counter => say!(first::counter),
            Place::Book => say!(first::book),
        }
    }
}

/// A screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Route {
    /// The list of drinks.
    Drinks,
    /// Questions about the shop of a new book.
    Shop,
    /// A step on the way to the first price of a drink.
    FirstPrice(FirstPrice),
    /// One drink: its recipe and sizes.
    Drink(DrinkId),
    /// One drink at one size: cost and price.
    Offer(OfferId),
    /// Label and fill of a drink at one size.
    Packaged(OfferId),
    /// How the numbers of a drink at one size came about.
    Working(OfferId),
    /// Quick price: ingredients and packaging by name.
    Buying,
    /// One ingredient.
    Ingredient(IngredientId),
    /// One kind of packaging.
    Packaging(PackagingId),
    /// A set of packaging that containers share.
    PackagingSet(PackagingSetId),
    /// What supplier's prices moved, and what the menu hangs on.
    PriceWatch,
    /// What is to be bought.
    BuyingList,
    /// The starting figures that nobody confirmed.
    FiguresToCheck,
    /// The weighings of an ingredient.
    YieldLog(IngredientId),
    /// The containers.
    Containers,
    /// One container.
    Container(ContainerId),
    /// The questions about sizes.
    Sizes,
    /// The sizes of a part of the menu side by side.
    SideBySide(Scope),
    /// A size that goes, one that comes, or one in place of another.
    Decision(Decision),
    /// How many sizes of a part of the menu.
    HowMany(Scope),
    /// Whether a part of the menu can be sold below a price.
    PricePoint(Scope),
    /// Prices seen elsewhere.
    SeenPrices,
    /// What is sold in a week.
    Sales,
    /// What was sold in the week that begins on this Monday.
    SalesWeek(Date),
    /// Trials of changes.
    Trials,
    /// One trial.
    Trial(TrialId),
    /// Menus to play with beside today's.
    Scenarios,
    /// One of them.
    Scenario(ScenarioId),
    /// Choosing a card.
    Counter,
    /// A recipe card.
    Card(OfferId),
    /// The days that something is made on.
    Batches,
    /// What is made on a day.
    Batch(Date),
    /// The card of a drink in a size, for as many as a batch makes of it.
    BatchCard(OfBatch),
    /// What is here.
    OnHand,
    /// How many drinks it makes.
    CanMake,
    /// A sheet to print.
    Sheet(Sheet),
    /// The open book.
    Book,
}

/// The sizes that stay where all others go: one at least, and as many as a plan has at most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stays([Option<ContainerId>; Stays::MOST]);

impl Stays {
    /// Most sizes that can stay.
    pub const MOST: usize = 3;

    /// These sizes. Returns `None` if there are none or too many.
    pub fn of(sizes: &[ContainerId]) -> Option<Stays> {
        let mut stays = [None; Stays::MOST];
        for (place, size) in sizes.iter().enumerate() {
            *stays.get_mut(place)? = Some(*size);
        }
        (!sizes.is_empty()).then_some(Stays(stays))
    }

    /// The sizes.
    pub fn sizes(&self) -> impl Iterator<Item = ContainerId> + '_ {
        self.0.iter().copied().flatten()
    }
}

/// A change of the sizes of a part of the menu: one goes, one comes, one takes the place of another, or only some
/// stay.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Decision {
    /// The part of the menu.
    pub scope: Scope,
    /// The size that goes.
    pub goes: Option<ContainerId>,
    /// The size that comes.
    pub comes: Option<ContainerId>,
    /// The sizes that stay, where all others go.
    pub stays: Option<Stays>,
}

/// A drink in a size, as it is made on a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OfBatch {
    /// The day.
    pub day: Date,
    /// The drink and its size.
    pub offer: OfferId,
}

/// A step on the way to the first price of a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FirstPrice {
    /// The drink. It need not be in the book yet.
    pub drink: DrinkId,
    /// The step.
    pub step: Step,
}

/// The steps to the first price of a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// What goes in, and what a case of it costs.
    Ingredients,
    /// What it is sold in.
    Size,
    /// How much of each goes in.
    Amounts,
    /// What to charge.
    Price,
    /// Another size of the drink, once it has a price.
    AnotherSize,
}

impl Step {
    /// Every step and its name in an address. The way to the price is all but the last.
    pub const ALL: [(Step, &'static str); 5] = [
        (Step::Ingredients, "ingredients"),
        (Step::Size, "size"),
        (Step::Amounts, "amounts"),
        (Step::Price, "price"),
        (Step::AnotherSize, "another-size"),
    ];
}

impl FirstPrice {
    /// The first step of a drink.
    pub const fn of(drink: DrinkId) -> FirstPrice {
        FirstPrice { drink, step: Step::Ingredients }
    }

    /// Another step of the same drink.
    pub const fn at(self, step: Step) -> FirstPrice {
        FirstPrice { step, ..self }
    }
}

/// A sheet to print.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sheet {
    /// Every drink and size with its price.
    Prices,
    /// Recipe cards.
    Cards,
    /// What is made on a day.
    Batch(Date),
    /// What is to be bought.
    BuyingList,
    /// The warning statement of untreated juice, to cut out.
    Warning,
    /// A change of sizes, decided on one page.
    Decision(Decision),
    /// What the book says, for its owner to keep.
    Report,
}

impl Route {
    /// Whether it is read by the crew: the Counter, and sheets for the kitchen and for shopping.
    pub fn is_for_the_crew(self) -> bool {
        self.place() == Place::Counter || self == Route::Sheet(Sheet::BuyingList)
    }

    /// The screen of goods.
    pub const fn of_goods(goods: Goods) -> Route {
        match goods {
            Goods::Ingredient(id) => Route::Ingredient(id),
            Goods::Packaging(id) => Route::Packaging(id),
        }
    }

    /// The screen of what is kept. Returns `None` for what has no screen of its own.
    pub const fn of_record(key: Key) -> Option<Route> {
        Some(match key {
            Key::Settings => Route::Book,
            Key::Ingredient(id) => Route::Ingredient(id),
            Key::Packaging(id) => Route::Packaging(id),
            Key::PackagingSet(id) => Route::PackagingSet(id),
            Key::Container(id) => Route::Container(id),
            Key::Drink(id) => Route::Drink(id),
            Key::Offer(id) => Route::Offer(id),
            Key::Trial(id) => Route::Trial(id),
            Key::SeenPrice(_) => Route::SeenPrices,
            Key::Scenario(id) => Route::Scenario(id),
            Key::Week(_) | Key::Batch(_) | Key::BuyingList => return None,
        })
    }

    /// The first screen of a place.
    pub const fn of(place: Place) -> Route {
        match place {
            Place::Drinks => Route::Drinks,
            Place::Buying => Route::Buying,
            Place::Sizes => Route::Sizes,
            Place::Counter => Route::Counter,
            Place::Book => Route::Book,
        }
    }
}

/// A part of the menu as a text: `menu`, `kind/pressed`, `drink/a1`.
pub fn scope_text(scope: Scope) -> String {
    match scope {
        Scope::Menu => "menu".into(),
        Scope::Kind(kind) => format!("kind/{}", kind_name(kind)),
        Scope::Drink(id) => format!("drink/{id}"),
    }
}

/// Reads what [`scope_text`] writes.
pub fn scope_from_text(text: &str) -> Option<Scope> {
    match text.split_once('/') {
        None => (text == "menu").then_some(Scope::Menu),
        Some(("kind", name)) => DrinkKind::ALL.iter().copied().find(|kind| kind_name(*kind) == name).map(Scope::Kind),
        Some(("drink", id)) => DrinkId::from_text(id).map(Scope::Drink),
        Some(_) => None,
    }
}

const fn kind_name(kind: DrinkKind) -> &'static str {
    match kind {
        DrinkKind::Pressed => "pressed",
        DrinkKind::Blended => "blended",
        DrinkKind::OverIce => "over-ice",
        DrinkKind::Shot => "shot",
    }
}

#[cfg(test)]
mod tests;
