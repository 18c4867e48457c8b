//! A size that is not sold yet: plans count with it once its owner types what to expect.

use std::sync::Arc;

use leptos::prelude::*;

use super::asked::Asked;
use crate::book::{ContainerId, DrinkId, Key, OfferId};
use crate::foundation::measure::Exact;
use crate::say;
use crate::sizes::side_by_side::sold_in;
use crate::ui::fields::{Choice, Choose, Entry, tried_number};
use crate::ui::live::{live, text};
use crate::ui::places::sizes::asked as parts_of_the_menu;
use crate::words::Example;

/// What stands for no size in the list.
const NONE: &str = "-";

/// A size to try, and how many of each drink are expected in it.
#[component]
pub fn Comes(
    /// What is asked.
    asked: Asked,
) -> impl IntoView {
    let state = asked.state;
    let options = Signal::derive(move || {
        let none = (NONE.to_string(), say!(decide::no_size).to_string());
        let sizes = state.book.with(|book| {
            let sold = sold_in(book, asked.scope);
            let mut all = parts_of_the_menu::containers(book);
            all.retain(|size| !sold.contains(size));
            parts_of_the_menu::container_options(book, all)
        });
        [none].into_iter().chain(sizes).collect::<Vec<_>>()
    });
    let value = text(move || asked.comes.get().map_or(NONE.to_string(), |size| size.to_string()));
    let choose: Choose = Arc::new(move |value| {
        asked.expected.set(Vec::new());
        asked.comes.set(ContainerId::from_text(value));
        Ok(())
    });
    // Fields of their own for each size: the numbers typed for one do not belong to another.
    let fields = live(move || {
        let Some(size) = asked.comes.get() else { return ().into_any() };
        let drinks = state.book.with_untracked(|book| {
            let mut drinks: Vec<DrinkId> =
                book.offers().map(|offer| offer.drink).filter(|drink| book.belongs(*drink, asked.scope)).collect();
            drinks.dedup();
            drinks
        });
        let field = |drink| number(asked, OfferId { drink, container: size });
        view! { <div class="fields">{drinks.into_iter().map(field).collect_view()}</div> }.into_any()
    });
    view! {
        <Choice label=say!(decide::size_to_try) options value choose />
        {fields}
    }
}

/// How many of an offer are expected in a week.
fn number(asked: Asked, offer: OfferId) -> AnyView {
    let state = asked.state;
    let drink = state.book.with_untracked(|book| book.name(Key::Drink(offer.drink)));
    let value = text(move || {
        let typed = asked.expected.with(|all| all.iter().find(|(of, _)| *of == offer).map(|(_, number)| *number));
        typed.map(|number| state.number(number)).unwrap_or_default()
    });
    let commit = tried_number(
        Example::WeeklySales,
        Box::new(move |read: Result<Option<Exact>, String>, _| {
            let number = parts_of_the_menu::a_week(state, read?)?;
            asked.expected.update(|all| {
                all.retain(|(of, _)| *of != offer);
                all.extend(number.map(|number| (offer, number)));
            });
            Ok(())
        }),
    );
    let label = say!(decide::expected_of, drink = drink);
    view! { <Entry label hangs=asked.hangs example=say!(common::none_yet) value commit /> }.into_any()
}
