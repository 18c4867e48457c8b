//! Where the person is, kept in the address after the hash, so that Back works anywhere.

use crate::book::{
    ContainerId, DrinkId, DrinkKind, Goods, IngredientId, Key, OfferId, PackagingId, PackagingSetId, ScenarioId, Scope,
    TrialId,
};
use crate::foundation::measure::Date;

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
    pub const fn name(self) -> &'static str {
        match self {
            Place::Drinks => "Drinks",
            Place::Buying => "Buying",
            Place::Sizes => "Sizes",
            Place::Counter => "Counter",
            Place::Book => "Book",
        }
    }
}

/// A screen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Route {
    /// The list of drinks.
    Drinks,
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
    /// One size in place of another.
    Switching,
    /// How many sizes.
    HowMany,
    /// Back from a price point.
    PricePoint,
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
    /// What is here, and how many it makes.
    OnHand,
    /// A sheet to print.
    Sheet(Sheet),
    /// The open book.
    Book,
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
}

impl Route {
    /// The address after the hash.
    pub fn address(self) -> String {
        match self {
            Route::Drinks => "#/drinks".into(),
            Route::Drink(id) => format!("#/drinks/{id}"),
            Route::Offer(id) => format!("#/drinks/{}/{}", id.drink, id.container),
            Route::Packaged(id) => format!("#/drinks/{}/{}/label", id.drink, id.container),
            Route::Working(id) => format!("#/drinks/{}/{}/working", id.drink, id.container),
            Route::Buying => "#/buying".into(),
            Route::Ingredient(id) => format!("#/buying/ingredient/{id}"),
            Route::Packaging(id) => format!("#/buying/packaging/{id}"),
            Route::PackagingSet(id) => format!("#/buying/set/{id}"),
            Route::PriceWatch => "#/buying/watch".into(),
            Route::BuyingList => "#/buying/list".into(),
            Route::YieldLog(id) => format!("#/buying/ingredient/{id}/yields"),
            Route::Containers => "#/buying/containers".into(),
            Route::Container(id) => format!("#/buying/container/{id}"),
            Route::Sizes => "#/sizes".into(),
            Route::SideBySide(scope) => format!("#/sizes/{}", scope_text(scope)),
            Route::Switching => "#/sizes/switching".into(),
            Route::HowMany => "#/sizes/how-many".into(),
            Route::PricePoint => "#/sizes/price-point".into(),
            Route::SeenPrices => "#/sizes/seen".into(),
            Route::Sales => "#/sizes/sales".into(),
            Route::SalesWeek(monday) => format!("#/sizes/sales/{monday}"),
            Route::Trials => "#/sizes/trials".into(),
            Route::Trial(id) => format!("#/sizes/trials/{id}"),
            Route::Scenarios => "#/sizes/scenarios".into(),
            Route::Scenario(id) => format!("#/sizes/scenarios/{id}"),
            Route::Counter => "#/counter".into(),
            Route::Card(id) => format!("#/counter/{}/{}", id.drink, id.container),
            Route::Batches => "#/counter/batches".into(),
            Route::Batch(day) => format!("#/counter/batches/{day}"),
            Route::OnHand => "#/counter/on-hand".into(),
            Route::Sheet(Sheet::Prices) => "#/print/prices".into(),
            Route::Sheet(Sheet::Cards) => "#/print/cards".into(),
            Route::Sheet(Sheet::Batch(day)) => format!("#/print/batch/{day}"),
            Route::Sheet(Sheet::BuyingList) => "#/print/list".into(),
            Route::Sheet(Sheet::Warning) => "#/print/warning".into(),
            Route::Book => "#/book".into(),
        }
    }

    /// The screen at an address; the list of drinks where there is none.
    pub fn from_address(address: &str) -> Route {
        let offer = |drink: &str, container: &str| {
            Some(OfferId { drink: DrinkId::from_text(drink)?, container: ContainerId::from_text(container)? })
        };
        let steps: Vec<&str> = address.trim_start_matches(['#', '/']).split('/').collect();
        let found = match steps.as_slice() {
            ["drinks", drink] => DrinkId::from_text(drink).map(Route::Drink),
            ["drinks", drink, container] => offer(drink, container).map(Route::Offer),
            ["drinks", drink, container, "label"] => offer(drink, container).map(Route::Packaged),
            ["drinks", drink, container, "working"] => offer(drink, container).map(Route::Working),
            ["buying"] => Some(Route::Buying),
            ["buying", "watch"] => Some(Route::PriceWatch),
            ["buying", "list"] => Some(Route::BuyingList),
            ["buying", "ingredient", id, "yields"] => IngredientId::from_text(id).map(Route::YieldLog),
            ["buying", "containers"] => Some(Route::Containers),
            ["buying", "ingredient", id] => IngredientId::from_text(id).map(Route::Ingredient),
            ["buying", "packaging", id] => PackagingId::from_text(id).map(Route::Packaging),
            ["buying", "set", id] => PackagingSetId::from_text(id).map(Route::PackagingSet),
            ["buying", "container", id] => ContainerId::from_text(id).map(Route::Container),
            ["sizes"] => Some(Route::Sizes),
            ["sizes", "switching"] => Some(Route::Switching),
            ["sizes", "how-many"] => Some(Route::HowMany),
            ["sizes", "price-point"] => Some(Route::PricePoint),
            ["sizes", "seen"] => Some(Route::SeenPrices),
            ["sizes", "sales"] => Some(Route::Sales),
            ["sizes", "sales", monday] => Date::from_text(monday).filter(|date| date.is_monday()).map(Route::SalesWeek),
            ["sizes", "trials"] => Some(Route::Trials),
            ["sizes", "trials", id] => TrialId::from_text(id).map(Route::Trial),
            ["sizes", "scenarios"] => Some(Route::Scenarios),
            ["sizes", "scenarios", id] => ScenarioId::from_text(id).map(Route::Scenario),
            ["sizes", scope @ ..] => scope_from_text(&scope.join("/")).map(Route::SideBySide),
            ["counter"] => Some(Route::Counter),
            ["counter", "batches"] => Some(Route::Batches),
            ["counter", "batches", day] => Date::from_text(day).map(Route::Batch),
            ["counter", "on-hand"] => Some(Route::OnHand),
            ["print", "prices"] => Some(Route::Sheet(Sheet::Prices)),
            ["print", "cards"] => Some(Route::Sheet(Sheet::Cards)),
            ["print", "batch", day] => Date::from_text(day).map(|day| Route::Sheet(Sheet::Batch(day))),
            ["print", "list"] => Some(Route::Sheet(Sheet::BuyingList)),
            ["print", "warning"] => Some(Route::Sheet(Sheet::Warning)),
            ["counter", drink, container] => offer(drink, container).map(Route::Card),
            ["book"] => Some(Route::Book),
            _ => None,
        };
        found.unwrap_or(Route::Drinks)
    }

    /// The place that the screen belongs to.
    pub const fn place(self) -> Place {
        match self {
            Route::Drinks
            | Route::Drink(_)
            | Route::Offer(_)
            | Route::Packaged(_)
            | Route::Working(_)
            | Route::Sheet(Sheet::Prices | Sheet::Warning) => Place::Drinks,
            Route::Buying
            | Route::Ingredient(_)
            | Route::Packaging(_)
            | Route::PackagingSet(_)
            | Route::PriceWatch
            | Route::BuyingList
            | Route::YieldLog(_)
            | Route::Sheet(Sheet::BuyingList)
            | Route::Containers
            | Route::Container(_) => Place::Buying,
            Route::Sizes
            | Route::SideBySide(_)
            | Route::Switching
            | Route::HowMany
            | Route::PricePoint
            | Route::SeenPrices
            | Route::Sales
            | Route::SalesWeek(_)
            | Route::Trials
            | Route::Trial(_)
            | Route::Scenarios
            | Route::Scenario(_) => Place::Sizes,
            Route::Counter
            | Route::Card(_)
            | Route::Batches
            | Route::Batch(_)
            | Route::OnHand
            | Route::Sheet(Sheet::Cards | Sheet::Batch(_)) => Place::Counter,
            Route::Book => Place::Book,
        }
    }

    /// The screen of goods.
    pub const fn of_goods(goods: Goods) -> Route {
        match goods {
            Goods::Ingredient(id) => Route::Ingredient(id),
            Goods::Packaging(id) => Route::Packaging(id),
        }
    }

    /// The screen of what is kept; none for what has no screen of its own.
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
