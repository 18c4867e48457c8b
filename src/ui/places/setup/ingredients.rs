//! What goes in: a few letters find it, and its case price is typed right there.

use std::sync::Arc;

use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use web_sys::HtmlElement;

use super::frame::{ingredients_of, onward};
use crate::app::route::{FirstPrice, Route, Step};
use crate::book::{Edit, Goods, Ingredient, IngredientId, Key, PackId, Record};
use crate::buying::starter::Row;
use crate::foundation::measure::Amount;
use crate::say;
use crate::ui::fields::{Field, Hangs, NewThing, Search, begun};
use crate::ui::language;
use crate::ui::live::{parts, press, text, trouble, when};
use crate::ui::order;
use crate::ui::parts::{TakeOut, figures};
use crate::ui::places::buying::{first_case, pack_draft, usable_costs};
use crate::ui::random::random;
use crate::ui::starter::{self, Matches};
use crate::ui::state::AppState;
use crate::words;

/// Where Enter leads from the last field of a row.
const SEARCH: &str = "input.search";

/// The step in which ingredients are picked and their case prices typed.
pub fn ingredients(first: FirstPrice) -> AnyView {
    let state = AppState::here();
    let letters = RwSignal::new(String::new());
    // Those of this visit, the last one first, and the one whose case stands open.
    let picked = RwSignal::new(Vec::<IngredientId>::new());
    let open = RwSignal::new(None::<IngredientId>);
    let said = RwSignal::new(String::new());
    let adding = Adding { state, letters, picked, open, said };
    let named = text(move || letters.with(|letters| letters.trim().to_string()));
    let as_typed = text(move || say!(setup::add_as_typed, name = named.get()));
    let listed = move || {
        let mut ids = picked.get();
        let all = state.book.with(ingredients_of);
        ids.retain(|id| all.contains(id));
        ids.extend(all.into_iter().filter(|id| picked.with(|picked| !picked.contains(id))));
        ids.into_iter().map(IngredientId::number).collect()
    };
    let refused = RwSignal::new(None::<String>);
    let row = move |id| row(first, IngredientId::from_random(id), open, refused);
    // A new way begins where one types.
    if state.book.with_untracked(|book| book.ingredients().next().is_none()) {
        Effect::new(|_| go_to_search());
    }
    view! {
        <p class="soft">{say!(setup::what_goes_in_about)}</p>
        <div class="first-search" on:keydown=move |event| adding.on_key(&event)>
            <Search label=say!(goods::ingredient) search=letters />
        </div>
        <Matches letters=named pick=Arc::new(move |row| adding.pick(row)) />
        {when(
            move || !named.with(String::is_empty),
            move || {
                view! {
                    <p>
                        <button class="button" on:click=press(move || adding.add_typed())>
                            {as_typed}
                        </button>
                    </p>
                }
                .into_any()
            },
        )}
        <p class="hollow" role="status">{said}</p>
        {trouble(move || refused.get())}
        <ul class="first-ingredients">{parts(listed, row)}</ul>
        {onward(Route::FirstPrice(first.at(Step::Size)), say!(setup::next_size))}
    }
    .into_any()
}

fn go_to_search() {
    let found = document().query_selector(SEARCH).ok().flatten();
    if let Some(field) = found.and_then(|element| wasm_bindgen::JsCast::dyn_into::<HtmlElement>(element).ok()) {
        // A field that cannot take the caret is tapped by hand.
        let _ = field.focus();
    }
}

/// How ingredients get into the list.
#[derive(Clone, Copy)]
struct Adding {
    state: AppState,
    letters: RwSignal<String>,
    picked: RwSignal<Vec<IngredientId>>,
    open: RwSignal<Option<IngredientId>>,
    said: RwSignal<String>,
}

impl Adding {
    /// Enter takes what is found first, or else what is typed.
    fn on_key(self, event: &KeyboardEvent) {
        if event.key() != "Enter" || event.is_composing() {
            return;
        }
        event.prevent_default();
        let letters = self.letters.with_untracked(|letters| letters.trim().to_string());
        let found = untrack(starter::list).and_then(|list| {
            list.search(&letters, &language::language()).into_iter().next().filter(|_| !letters.is_empty())
        });
        match found {
            Some(row) => self.pick(row),
            None => self.add_typed(),
        }
    }

    fn pick(self, row: &Row) {
        let contents = row.contents(self.state.book.with_untracked(|book| book.settings().units));
        self.add(row.ingredient(IngredientId::from_random(random()), &language::language()), contents);
    }

    fn add_typed(self) {
        let name = self.letters.with_untracked(|letters| letters.trim().to_string());
        if !name.is_empty() {
            self.add(Ingredient::named(IngredientId::from_random(random()), &name), None);
        }
    }

    /// Puts an ingredient into the book, and begins its case with the usual contents, where they are known. One
    /// that is there already goes to the top of the list.
    fn add(self, ingredient: Ingredient, contents: Option<Amount>) {
        let (state, name) = (self.state, ingredient.name.clone());
        let wanted = order::lower_case(&name);
        let same = |it: &&Ingredient| order::lower_case(&it.name) == wanted;
        let known = state.book.with_untracked(|book| book.ingredients().find(same).map(|it| it.id));
        let id = known.unwrap_or(ingredient.id);
        if known.is_some() {
            self.said.set(say!(setup::already_in_list, name = name));
        } else {
            match state.apply(say!(goods::add_ingredient), Edit::Put(Record::Ingredient(ingredient))) {
                Ok(()) => self.said.set(String::new()),
                Err(sentence) => {
                    self.said.set(sentence);
                    return;
                }
            }
            let case = pack_draft(Goods::Ingredient(id), PackId::from_random(random()));
            case.begin(state);
            if let Some(contents) = contents {
                case.set(state, Field::PackSize, &untrack(|| state.amount(contents)));
            }
        }
        self.letters.set(String::new());
        self.open.set(Some(id));
        self.picked.update(|picked| {
            picked.retain(|it| *it != id);
            picked.insert(0, id);
        });
    }
}

/// One ingredient: the fields of its case while they stand open or wait for something, else what they say.
fn row(
    first: FirstPrice,
    id: IngredientId,
    open: RwSignal<Option<IngredientId>>,
    refused: RwSignal<Option<String>>,
) -> AnyView {
    let state = AppState::here();
    let goods = Goods::Ingredient(id);
    let name = text(move || state.book.with(|book| book.name(Key::Ingredient(id))));
    let pack = move || state.book.with(|book| book.packs(goods).first().cloned());
    let costs = move || {
        let Some(pack) = pack() else { return Vec::new() };
        state.book.with(|book| book.ingredient_now(id).map(|it| usable_costs(state, &it, &pack)).unwrap_or_default())
    };
    let hangs = Hangs::new();
    // Once its fields stand there, they stay until another case is opened.
    let is_open = Memo::new(move |was: Option<&bool>| {
        let others = open.get().is_some_and(|open| open != id);
        open.get() == Some(id) || pack().is_none() || (was == Some(&true) && !others)
    });
    let fields = move || {
        let caret = open.get_untracked() == Some(id);
        view! {
            {first_case(goods, hangs, caret)}
            {hangs.while_read(move || view! { <dl class="figures">{figures(costs)}</dl> }.into_any())}
        }
        .into_any()
    };
    let said = text(move || {
        let said = pack().map(|pack| {
            let contents = words::quotes::pack(&pack, &state.speaker.get());
            say!(goods::pack_bought_now, pack = contents, price = state.money(pack.price_now()))
        });
        said.unwrap_or_default()
    });
    let label = text(move || [name.get(), said.get()].join(", "));
    let folded = move || {
        view! {
            <button class="button" aria-label=label on:click=press(move || open.set(Some(id)))>
                {said}
            </button>
        }
        .into_any()
    };
    let remove = move || refused.set(taken_out(state, first, id).err());
    view! {
        <li class="first-ingredient" data-next=SEARCH>
            <h2>{name}</h2>
            {when(move || !is_open.get(), folded)}
            <TakeOut name on_click=remove />
            {when(move || is_open.get(), fields)}
        </li>
    }
    .into_any()
}

/// Takes an ingredient out of the book, and out of the drink of this way before.
fn taken_out(state: AppState, first: FirstPrice, id: IngredientId) -> Result<(), String> {
    for case in untrack(|| begun(state, NewThing::Pack, Some(Key::Ingredient(id)))) {
        pack_draft(Goods::Ingredient(id), PackId::from_random(case)).discard(state);
    }
    let edit = state.book.with_untracked(|book| {
        let mut edits = Vec::new();
        if let Some(mut drink) = book.drink(first.drink).cloned() {
            drink.lines.retain(|line| line.ingredient != id);
            edits.push(Edit::Put(Record::Drink(drink)));
        }
        edits.push(Edit::Remove(Key::Ingredient(id)));
        Edit::Together(edits)
    });
    state.apply(say!(goods::remove_ingredient), edit)
}
