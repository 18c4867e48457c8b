//! The five places.

mod book;
mod buying;
mod counter;
mod drinks;
mod setup;
mod sheets;
mod sizes;
mod users;

use leptos::prelude::*;

use crate::app::route::{Place, Route};

/// The screen of a route, where it is in the first load. No number on it opens to its working.
pub fn at_once(route: Route) -> Option<AnyView> {
    is_at_once(route).then(|| drinks::List().into_any())
}

/// Whether the screen of a route is in the first load.
pub const fn is_at_once(route: Route) -> bool {
    matches!(route, Route::Drinks)
}

/// The ways back to a book, with what is stored of a damaged one.
pub fn ways_back(stored: Option<String>) -> AnyView {
    book::ways_back(stored)
}

/// The screen of a route.
pub fn screen(route: Route) -> AnyView {
    let screen = screen_alone(route);
    match (route.place(), route) {
        (_, Route::Sheet(_)) => screen,
        (Place::Counter, _) => counter::at_the_counter(screen),
        _ => screen,
    }
}

fn screen_alone(route: Route) -> AnyView {
    match route {
        Route::Drinks => drinks::List().into_any(),
        Route::Shop => setup::Shop().into_any(),
        Route::FirstPrice(first) => setup::first_price(first),
        Route::Drink(id) => view! { <drinks::DrinkPage id /> }.into_any(),
        Route::Offer(id) => view! { <drinks::OfferPage id /> }.into_any(),
        Route::Packaged(id) => view! { <drinks::PackagedPage id /> }.into_any(),
        Route::Working(id) => view! { <drinks::WorkingPage id /> }.into_any(),
        Route::Buying => buying::QuickPrice().into_any(),
        Route::Ingredient(id) => view! { <buying::IngredientPage id /> }.into_any(),
        Route::Packaging(id) => view! { <buying::PackagingPage id /> }.into_any(),
        Route::PackagingSet(id) => view! { <buying::PackagingSetPage id /> }.into_any(),
        Route::PriceWatch => buying::PriceWatch().into_any(),
        Route::BuyingList => buying::BuyingListPage().into_any(),
        Route::FiguresToCheck => buying::FiguresToCheck().into_any(),
        Route::YieldLog(id) => view! { <buying::YieldLog id /> }.into_any(),
        Route::Containers => buying::Containers().into_any(),
        Route::Container(id) => view! { <buying::ContainerPage id /> }.into_any(),
        Route::Sizes => sizes::Home().into_any(),
        Route::SideBySide(scope) => view! { <sizes::SideBySide scope /> }.into_any(),
        Route::Decision(decision) => view! { <sizes::DecisionPage decision /> }.into_any(),
        Route::HowMany(scope) => view! { <sizes::HowMany scope /> }.into_any(),
        Route::PricePoint(scope) => view! { <sizes::PricePoint scope /> }.into_any(),
        Route::SeenPrices => sizes::SeenPrices().into_any(),
        Route::Sales => sizes::Sales().into_any(),
        Route::SalesWeek(monday) => view! { <sizes::SalesWeek monday /> }.into_any(),
        Route::Trials => sizes::Trials().into_any(),
        Route::Trial(id) => view! { <sizes::TrialPage id /> }.into_any(),
        Route::Scenarios => sizes::Scenarios().into_any(),
        Route::Scenario(id) => view! { <sizes::ScenarioPage id /> }.into_any(),
        Route::Counter => counter::Choose().into_any(),
        Route::Card(id) => view! { <counter::Card id /> }.into_any(),
        Route::BatchCard(of) => view! { <counter::Card id=of.offer of_batch=Some(of.day) /> }.into_any(),
        Route::Batches => counter::Batches().into_any(),
        Route::Batch(day) => view! { <counter::BatchPage day /> }.into_any(),
        Route::OnHand => counter::OnHand().into_any(),
        Route::CanMake => counter::CanMake().into_any(),
        Route::Sheet(sheet) => sheets::sheet(sheet),
        Route::Book => book::BookPage().into_any(),
    }
}
