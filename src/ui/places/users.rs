//! Where a record is used, and taking it out.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Edit, Key};
use crate::ui::address::go;
use crate::ui::live::{live, press, trouble, when};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Where a record is used; it can be taken out when it is not.
#[component]
pub fn Users(
    /// The record.
    of: Key,
    /// Where to go once it is out.
    back: Route,
    /// What the button says.
    what: &'static str,
) -> impl IntoView {
    let state = AppState::here();
    let users = Memo::new(move |_| state.book.with(|book| book.users(of)));
    let refused = RwSignal::new(None::<String>);
    let remove = move || match state.apply(what, Edit::Remove(of)) {
        Ok(()) => go(back),
        Err(sentence) => refused.set(Some(sentence)),
    };
    let user = move |key: Key| {
        let name = state.book.with(|book| words::called(book, key));
        let route = match key {
            Key::Drink(id) => Some(Route::Drink(id)),
            Key::Container(id) => Some(Route::Container(id)),
            Key::Offer(id) => Some(Route::Offer(id)),
            Key::PackagingSet(id) => Some(Route::PackagingSet(id)),
            Key::Week(monday) => Some(Route::SalesWeek(monday)),
            Key::Trial(id) => Some(Route::Trial(id)),
            Key::Scenario(id) => Some(Route::Scenario(id)),
            Key::Batch(day) => Some(Route::Batch(day)),
            Key::BuyingList => Some(Route::BuyingList),
            Key::Settings | Key::Ingredient(_) | Key::Packaging(_) | Key::SeenPrice(_) => None,
        };
        view! { <li><a href=route.map(Route::address)>{name}</a></li> }
    };
    view! {
        <Section heading="Used in">
            {when(
                move || users.with(Vec::is_empty),
                || view! { <p class="hollow">"Nothing uses it."</p> }.into_any(),
            )}
            <ul class="users">
                {live(move || users.get().into_iter().map(user).collect_view().into_any())}
            </ul>
            {trouble(move || refused.get())}
            <p class="actions">
                <button class="quiet" on:click=press(remove)>
                    {what}
                </button>
            </p>
        </Section>
    }
}
