//! A field for each size of each drink.

use std::sync::Arc;

use leptos::prelude::*;

use crate::book::{Book, DrinkId, Edit, Key, OfferId, Sold};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Date, Exact, read_number};
use crate::say;
use crate::ui::fields::{Commit, Entry, Hangs, Search, asks};
use crate::ui::live::{rows, text, when};
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words;

/// Drinks shown at once: more fields would keep a phone waiting.
const SHOWN: usize = 30;

/// Puts how many in force, or says why not. An empty field gives `None`.
type Put = Arc<dyn Fn(OfferId, Option<Exact>) -> Result<Edit, String> + Send + Sync>;
/// How many there are now.
type Now = Arc<dyn Fn(&Book, OfferId) -> Option<Exact> + Send + Sync>;

/// A field for each size: what it shows and what typing into it does.
#[derive(Clone)]
pub struct Units {
    /// The step to undo.
    pub step: &'static str,
    /// The week whose sizes are listed besides those on the menu.
    pub week: Option<Date>,
    /// What the field shows.
    pub now: Now,
    /// What typing does.
    pub put: Put,
    /// Says to the answers that hang on them when one cannot be read.
    pub hangs: Hangs,
}

/// What was sold of a drink in that week.
fn sold(book: &Book, drink: DrinkId, week: Option<Date>) -> impl Iterator<Item = OfferId> {
    let week = week.and_then(|monday| book.week(monday));
    let sold = week.into_iter().flat_map(|week| &week.sold).map(Sold::offer);
    sold.filter(move |offer| offer.drink == drink)
}

/// The sizes of a drink on the menu, smallest first, then others sold in that week.
fn sizes(book: &Book, drink: DrinkId, week: Option<Date>) -> Vec<Key> {
    let mut sizes = order::offers(book, drink);
    let others = sold(book, drink, week).filter(|offer| book.offer(*offer).is_none());
    sizes.extend(others.map(Key::Offer));
    sizes
}

/// Drinks by name, and under each a field for each of its sizes.
pub fn by_drink(units: Units) -> AnyView {
    let state = AppState::here();
    let week = units.week;
    let has_sizes = move |book: &Book, key: &Key| match key {
        Key::Drink(drink) => book.offers_of(*drink).next().is_some() || sold(book, *drink, week).next().is_some(),
        _ => false,
    };
    let search = RwSignal::new(String::new());
    let found = Memo::new(move |_| -> Vec<Key> {
        let wanted = order::lower_case(&search.get());
        let fits =
            |book: &Book, key: &Key| has_sizes(book, key) && order::lower_case(&book.name(*key)).contains(&wanted);
        state.book.with(|book| order::drinks(book).into_iter().filter(|key| fits(book, key)).collect())
    });
    let drinks = Memo::new(move |_| found.with(|found| found.iter().take(SHOWN).copied().collect()));
    let many = move || state.book.with(|book| book.drinks().nth(SHOWN).is_some());
    let find = move || view! { <Search label=say!(first::find_drink) search=search /> }.into_any();
    let none = move || found.with(Vec::is_empty) && !search.with(String::is_empty);
    let more = text(move || match found.with(Vec::len).saturating_sub(SHOWN) {
        0 if none() => say!(sales::no_matches).to_string(),
        0 => String::new(),
        more => say!(sales::more_drinks, drinks = more),
    });
    let card = move |key: Key| {
        let Key::Drink(drink) = key else { return ().into_any() };
        let name = text(move || state.book.with(|book| book.name(key)));
        let listed = Memo::new(move |_| state.book.with(|book| sizes(book, drink, week)));
        let units = units.clone();
        view! {
            <li class="sold">
                <h3>{name}</h3>
                <div class="sold-sizes" role="group" aria-label=name>
                    {rows(listed, move |key| field(key, &units))}
                </div>
            </li>
        }
        .into_any()
    };
    view! {
        {when(many, find)}
        <ul class="sold-drinks">{rows(drinks, card)}</ul>
        <p class="soft">{more}</p>
    }
    .into_any()
}

fn field(key: Key, units: &Units) -> AnyView {
    let Key::Offer(offer) = key else { return ().into_any() };
    let state = AppState::here();
    let Units { step, week, now, put, hangs } = units.clone();
    let value =
        text(move || state.book.with(|book| now(book, offer)).map(|units| state.number(units)).unwrap_or_default());
    let commit: Commit = Arc::new(move |text, session| {
        let units = match text.trim() {
            "" => None,
            typed => {
                let read = read_number(typed, state.speaker.get_untracked().style());
                Some(read.map_err(|error| words::read_error(&error, "24"))?)
            }
        };
        state.apply_in(step, put(offer, units)?, Some(session))
    });
    let name = state.book.with_untracked(|book| book.name(Key::Container(offer.container)));
    let asks = match week {
        Some(monday) => asks(Kind::SoldInWeek, Key::Week(monday), Key::Offer(offer)),
        None => asks(Kind::Sold, Key::Offer(offer), "weekly"),
    };
    view! { <Entry label=name asks of=offer.drink.number() hangs value=value commit=commit /> }.into_any()
}
