//! Where the person is, kept in the address after the hash, so that Back works anywhere.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

use crate::book::{ContainerId, DrinkId, IngredientId, OfferId, PackagingId, PackagingSetId};

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
    /// The containers.
    Containers,
    /// One container.
    Container(ContainerId),
    /// Choosing a drink to see side by side.
    Sizes,
    /// The sizes of one drink.
    SizesOf(DrinkId),
    /// Choosing a card.
    Counter,
    /// A recipe card.
    Card(OfferId),
    /// The open book.
    Book,
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
            Route::Containers => "#/buying/containers".into(),
            Route::Container(id) => format!("#/buying/container/{id}"),
            Route::Sizes => "#/sizes".into(),
            Route::SizesOf(id) => format!("#/sizes/{id}"),
            Route::Counter => "#/counter".into(),
            Route::Card(id) => format!("#/counter/{}/{}", id.drink, id.container),
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
            ["buying", "containers"] => Some(Route::Containers),
            ["buying", "ingredient", id] => IngredientId::from_text(id).map(Route::Ingredient),
            ["buying", "packaging", id] => PackagingId::from_text(id).map(Route::Packaging),
            ["buying", "set", id] => PackagingSetId::from_text(id).map(Route::PackagingSet),
            ["buying", "container", id] => ContainerId::from_text(id).map(Route::Container),
            ["sizes"] => Some(Route::Sizes),
            ["sizes", drink] => DrinkId::from_text(drink).map(Route::SizesOf),
            ["counter"] => Some(Route::Counter),
            ["counter", drink, container] => offer(drink, container).map(Route::Card),
            ["book"] => Some(Route::Book),
            _ => None,
        };
        found.unwrap_or(Route::Drinks)
    }

    /// The place that the screen belongs to.
    pub const fn place(self) -> Place {
        match self {
            Route::Drinks | Route::Drink(_) | Route::Offer(_) | Route::Packaged(_) | Route::Working(_) => Place::Drinks,
            Route::Buying
            | Route::Ingredient(_)
            | Route::Packaging(_)
            | Route::PackagingSet(_)
            | Route::Containers
            | Route::Container(_) => Place::Buying,
            Route::Sizes | Route::SizesOf(_) => Place::Sizes,
            Route::Counter | Route::Card(_) => Place::Counter,
            Route::Book => Place::Book,
        }
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

/// The current screen, following the address.
pub fn follow_address() -> ReadSignal<Route> {
    let read = || Route::from_address(&window().location().hash().unwrap_or_default());
    let (route, set_route) = signal(read());
    let follow = Closure::<dyn Fn()>::new(move || {
        set_route.set(read());
        window().scroll_to_with_x_and_y(0.0, 0.0);
    });
    // Lives as long as the page: there is one address and one follower.
    let _ = window().add_event_listener_with_callback("hashchange", follow.as_ref().unchecked_ref());
    follow.forget();
    route
}

/// Goes to a screen.
pub fn go(route: Route) {
    // Setting the hash of one's own page cannot be refused.
    let _ = window().location().set_hash(&route.address());
}
