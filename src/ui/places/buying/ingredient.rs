//! One ingredient: its packs, its yields, its densities, where it is used.

use leptos::prelude::*;

use super::allergens::Allergens;
use super::change::ingredient_changed;
use super::packs::Packs;
use super::produce::Produce;
use crate::app::route::Route;
use crate::book::{Book, Edit, Goods, Ingredient, IngredientId, Key, Record};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Density, Dimension, Exact, Share, Wanted};
use crate::ui::fields::{self, Addition, Draft, Entry, Hangs, asks};
use crate::ui::live::text;
use crate::ui::moved::Moved;
use crate::ui::parts::{Back, Section, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;

/// The field of a new ingredient, by what is missing while it is empty.
const NAME: &str = "a name";

/// One ingredient.
#[component]
pub fn IngredientPage(
    /// The ingredient.
    id: IngredientId,
) -> impl IntoView {
    page_of(Key::Ingredient(id), Route::Buying, "Buying", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: IngredientId) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Ingredient, AppState) -> String| {
        text(move || state.book.with(|book| book.ingredient(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let key = Key::Ingredient(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, "Add an ingredient", move |typed, _| {
        Some(Edit::Put(Record::Ingredient(Ingredient::named(id, &typed.name(NAME)?))))
    });
    let is_new = !untrack(|| new.is_there());
    let name = of(|it, _| it.name.clone());
    let rename =
        fields::text("Name of an ingredient", move |book, name| ingredient_changed(book, id, |it| it.name = name));
    let (of_yields, packs) = (Hangs::new(), Hangs::new());
    let rest = new.once_there(move || {
        view! {
            <Packs goods=Goods::Ingredient(id) of_yields packs />
            {packs.while_read(move || of_yields.while_read(move || view! { <Moved by=key /> }.into_any()))}
            <Yields id hangs=of_yields />
            <Produce id />
            <Allergens id />
            <Users of=key back=Route::Buying what="Remove this ingredient" />
        }
        .into_any()
    });
    view! {
        <Back to=Route::Buying name="Buying" />
        <h1>{new.heading("New ingredient", name)}</h1>
        <Entry
            label="Name"
            letters=true
            caret=is_new
            example="Kale"
            value=new.value(NAME, name)
            commit=new.commit(NAME, rename)
        />
        {new.needs()}
        {rest}
    }
}

#[component]
fn Yields(id: IngredientId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let of = move |show| shown(state, id, show);
    let log = of(|it, _| match it.weighings.len() {
        0 => "Yield log: write down what you weigh".to_string(),
        1 => "Yield log: 1 weighing".to_string(),
        count => format!("Yield log: {count} weighings"),
    });
    view! {
        <Section
            heading="What is left of it"
            about="Weigh what you buy, what is left after trimming, and the juice that comes out. Your own press decides; published yields are only a start."
        >
            <div class="fields">
                <Entry
                    hangs
                    label="Left after trimming"
                    asks=asks(Kind::TrimYield, Key::Ingredient(id), "trim-yield")
                    unit="%"
                    example="all of it"
                    value=of(|it, state| {
                        if it.trim_yield == Share::WHOLE { String::new() } else { state.plain_percent(it.trim_yield) }
                    })
                    commit=fields::optional_percent("Trim yield", move |book, share| {
                        ingredient_changed(book, id, |it| it.trim_yield = share.unwrap_or(Share::WHOLE))
                    })
                />
                <Entry
                    hangs
                    label="Juice from what is trimmed"
                    asks=asks(Kind::Yield, Key::Ingredient(id), "press-yield")
                    unit="%"
                    example="not pressed"
                    value=of(|it, state| it.press_yield.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent("Press yield", move |book, share| {
                        ingredient_changed(book, id, |it| it.press_yield = share)
                    })
                />
                <Entry
                    hangs
                    label="Weight after soaking or brewing"
                    asks=asks(Kind::Yield, Key::Ingredient(id), "soak-yield")
                    unit="%"
                    example="neither"
                    note="Often above 100 %."
                    value=of(|it, state| it.soak_yield.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent("Soaking or brewing yield", move |book, share| {
                        ingredient_changed(book, id, |it| it.soak_yield = share)
                    })
                />
            </div>
            <p class="actions">
                <a class="button" href=Route::YieldLog(id).address()>{log}</a>
            </p>
        </Section>
        {weight_and_volume(id, hangs)}
    }
}

fn shown(state: AppState, id: IngredientId, show: fn(&Ingredient, AppState) -> String) -> Signal<String> {
    text(move || state.book.with(|book| book.ingredient(id).map(|it| show(it, state)).unwrap_or_default()))
}

fn weight_and_volume(id: IngredientId, hangs: Hangs) -> AnyView {
    let state = AppState::here();
    let of = move |show| shown(state, id, show);
    let density_of = |number: Option<Exact>| number.map(Density::from_grams_per_millilitre);
    let weight = |book: &Book| Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.weight_unit() };
    view! {
        <Section
            heading="Weight and volume"
            about="Needed only where a recipe says one and a pack says the other."
        >
            <div class="fields">
                <Entry
                    hangs
                    label="Density of the juice"
                    asks=asks(Kind::Density, Key::Ingredient(id), "juice-density")
                    unit="g/mL"
                    example="none"
                    note="Most juices: 1.03 to 1.07."
                    value=of(|it, state| it.juice_density.map(|density| state.number(density.grams_per_millilitre())).unwrap_or_default())
                    commit=fields::optional_number("Juice density", move |book, number| {
                        ingredient_changed(book, id, |it| it.juice_density = density_of(number))
                    })
                />
                <Entry
                    hangs
                    label="Density in the drink"
                    asks=asks(Kind::Density, Key::Ingredient(id), "density")
                    unit="g/mL"
                    example="none"
                    note="Poured or puréed, not as a heap of pieces: most fruit 0.95 to 1.05."
                    value=of(|it, state| it.density.map(|density| state.number(density.grams_per_millilitre())).unwrap_or_default())
                    commit=fields::optional_number("Density", move |book, number| {
                        ingredient_changed(book, id, |it| it.density = density_of(number))
                    })
                />
                <Entry
                    hangs
                    label="Weight of one piece as bought"
                    asks=asks(Kind::Size, Key::Ingredient(id), "piece-weight")
                    example="not counted"
                    value=of(|it, state| {
                        let piece = it.piece_weight.map(|mass| Amount::of_kept_mass(mass, state.units()));
                        piece.map(|amount| state.amount(amount)).unwrap_or_default()
                    })
                    units=fields::units(weight)
                    commit=fields::optional_amount("Weight of a piece", weight, move |book, amount| {
                        ingredient_changed(book, id, |it| it.piece_weight = amount.and_then(Amount::kept_mass))
                    })
                />
            </div>
        </Section>
    }
    .into_any()
}
