//! Where a record is used, and taking it out or putting another in its place.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Edit, Goods, Key};
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::Choice;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::parts::Fold;
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
    /// Whether it stands open at first.
    #[prop(optional)]
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let users = Memo::new(move |_| state.book.with(|book| book.repriced_by(of)));
    let refused = RwSignal::new(None::<String>);
    let remove = move || match state.apply(what, Edit::Remove(of)) {
        Ok(()) => go(back),
        Err(sentence) => refused.set(Some(sentence)),
    };
    let user = move |key: Key| {
        let name = state.book.with(|book| words::called_first(book, key));
        let route = match key {
            Key::Drink(id) => Some(Route::Drink(id)),
            Key::Container(id) => Some(Route::Container(id)),
            Key::Offer(id) => Some(Route::Offer(id)),
            Key::PackagingSet(id) => Some(Route::PackagingSet(id)),
            _ => None,
        };
        view! { <li><a href=route.map(Route::address)>{name}</a></li> }
    };
    let goods = match of {
        Key::Ingredient(id) => Some(Goods::Ingredient(id)),
        Key::Packaging(id) => Some(Goods::Packaging(id)),
        _ => None,
    };
    let used = move || !users.with(Vec::is_empty);
    let figure = text(move || {
        users.with(|users| match users.first() {
            None => say!(common::none).to_string(),
            Some(Key::Drink(_)) => say!(goods::used_in_drinks, drinks = users.len()),
            Some(Key::Offer(_)) => say!(goods::used_in_sizes, sizes = users.len()),
            Some(_) => say!(goods::used_in_places, places = users.len()),
        })
    });
    view! {
        <Fold name=say!(book::used_in) figure=figure open>
            {when(
                move || !used(),
                || view! { <p class="hollow">{say!(book::not_used)}</p> }.into_any(),
            )}
            <ul class="users">
                {live(move || users.get().into_iter().map(user).collect_view().into_any())}
            </ul>
            {goods.map(|goods| when(used, move || instead(state, goods, back)))}
            {trouble(move || refused.get())}
            <p class="actions">
                <button class="quiet" on:click=press(remove)>
                    {what}
                </button>
            </p>
        </Fold>
    }
}

/// Other goods to be chosen in the place of these, everywhere at once.
fn instead(state: AppState, goods: Goods, back: Route) -> AnyView {
    let chosen = RwSignal::new(String::new());
    let refused = RwSignal::new(None::<String>);
    let others = Signal::derive(move || {
        let mut others = vec![(String::new(), say!(common::choose).to_string())];
        state.book.with(|book| {
            let key = Key::from(goods);
            match goods {
                Goods::Ingredient(_) => {
                    others.extend(book.ingredients().map(|it| named(Key::Ingredient(it.id), &it.name)));
                }
                Goods::Packaging(_) => {
                    others.extend(book.packagings().map(|it| named(Key::Packaging(it.id), &it.name)));
                }
            }
            others.retain(|(value, _)| *value != key.to_string());
        });
        others
    });
    let choose = Arc::new(move |value: &str| {
        chosen.set(value.to_string());
        Ok(())
    });
    let replace = move || {
        let other = match Key::from_text(&chosen.get_untracked()) {
            Some(Key::Ingredient(id)) => Goods::Ingredient(id),
            Some(Key::Packaging(id)) => Goods::Packaging(id),
            _ => return refused.set(Some(crate::say!(refusals::choose_replacement).to_string())),
        };
        let edit = state.book.with_untracked(|book| Edit::instead(book, goods, other));
        let done = match edit {
            Ok(Some(edit)) => state.apply(say!(book::replace_and_remove), edit),
            Ok(None) => Err(crate::say!(refusals::choose_replacement).to_string()),
            Err(overflow) => Err(words::overflow(overflow)),
        };
        match done {
            Ok(()) => go(back),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    view! {
        <div class="fields">
            <Choice label=say!(book::replace_with) options=others value=text(move || chosen.get()) choose=choose />
        </div>
        {trouble(move || refused.get())}
        <p class="actions">
            <button class="quiet" on:click=press(replace)>
                {say!(book::replace_and_remove)}
            </button>
        </p>
    }
    .into_any()
}

fn named(key: Key, name: &str) -> (String, String) {
    (key.to_string(), name.to_string())
}
