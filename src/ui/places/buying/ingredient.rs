//! One ingredient: what it costs, its packs, its yields, its densities, where it is used.

use leptos::prelude::*;

use super::allergens::Allergens;
use super::change::ingredient_changed;
use super::cost_now::cost_now;
use super::packs::Packs;
use super::prices_heard::prices_heard;
use super::produce::Produce;
use super::season::Season;
use super::starting::{at_odds, figure_mark, fill_empty, matches, spoon_weight};
use crate::app::route::Route;
use crate::book::{Book, Edit, Figure, Goods, Ingredient, IngredientId, Key, Record};
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Density, Dimension, Exact, Share, System, TYPED_PLACES, Wanted};
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field, Hangs, asks};
use crate::ui::live::{live, text};
use crate::ui::moved::Moved;
use crate::ui::parts::{Back, Fold, is_wide, page_of};
use crate::ui::places::users::Users;
use crate::ui::state::AppState;
use crate::words;

/// One ingredient.
#[component]
pub fn IngredientPage(
    /// The ingredient.
    id: IngredientId,
) -> impl IntoView {
    page_of(Key::Ingredient(id), Route::Buying, say!(first::buying), move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: IngredientId) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Ingredient, AppState) -> String| {
        text(move || state.book.with(|book| book.ingredient(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let key = Key::Ingredient(id);
    let there = move |book: &Book| book.contains(key);
    let new = Addition::of(Draft::of_record(key), there, say!(goods::add_ingredient), move |typed, _| {
        Some(Edit::Put(Record::Ingredient(Ingredient::named(id, &typed.name(Field::Name)?))))
    });
    let is_new = !untrack(|| new.is_there());
    let name = of(|it, _| it.name.clone());
    let rename =
        fields::text(say!(goods::ingredient_name), move |book, name| ingredient_changed(book, id, |it| it.name = name));
    let (of_yields, packs) = (Hangs::new(), Hangs::new());
    let named = new.clone();
    let name_field = move || {
        view! {
            <Entry
                label=say!(common::name)
                letters=true
                caret=is_new
                example=say!(goods::ingredient_example)
                value=named.value(Field::Name, name)
                commit=named.commit(Field::Name, rename.clone())
            />
        }
        .into_any()
    };
    // The name of a new ingredient is what is asked for first; later it is one thing among others.
    let (first, later) = if is_new {
        let suggestions = matches(id, new.value(Field::Name, name));
        (Some(view! { {name_field()} {suggestions} }.into_any()), None)
    } else {
        (None, Some(name_field))
    };
    // Of a new ingredient nothing is folded away: all of it is to be typed.
    let open = is_new || is_wide();
    let goods = Goods::Ingredient(id);
    let rest = new.once_there(move || {
        let name_field = later.clone().map(|field| field());
        view! {
            {cost_now(state, goods, of_yields, packs)}
            <div class="panes-three goods-panes">
                <div class="pane">
                    <Packs goods of_yields packs />
                    {packs.while_read(move || of_yields.while_read(move || view! { <Moved by=key /> }.into_any()))}
                </div>
                <div class="pane">
                    <Yields id hangs=of_yields open />
                    <Season id hangs=of_yields open />
                    {prices_heard(state, goods)}
                </div>
                <div class="pane">
                    <Produce id open>{name_field}</Produce>
                    <Allergens id open />
                    <Users of=key back=Route::Buying what=say!(goods::remove_ingredient) open />
                </div>
            </div>
        }
        .into_any()
    });
    view! {
        <Back to=Route::Buying name=say!(first::buying) />
        <h1>{new.heading(say!(goods::new_ingredient), name)}</h1>
        {first}
        {new.needs()}
        {rest}
    }
}

/// What is left of an ingredient at each step: "trim 90%, juice 65%".
pub(super) fn yields_of(it: &Ingredient, state: AppState) -> String {
    let trim = (it.trim_yield != Share::WHOLE).then(|| say!(goods::trim_is, share = state.percent(it.trim_yield)));
    let juice = it.press_yield.map(|share| say!(goods::juice_is, share = state.percent(share)));
    let soaked = it.soak_yield.map(|share| say!(goods::soaked_is, share = state.percent(share)));
    let all: Vec<String> = [trim, juice, soaked].into_iter().flatten().collect();
    if all.is_empty() { say!(common::none).to_string() } else { all.join(", ") }
}

/// What is known of the weight of an ingredient: its juice, else itself, else a piece.
fn weight_of(it: &Ingredient, state: AppState) -> String {
    let said = |density| state.speaker.get().density(density);
    let juice = it.juice_density.map(|density| say!(starter::juice_weighs, density = said(density)));
    let density = juice.or_else(|| it.density.map(said));
    let piece = || it.piece_weight.map(|mass| state.amount(Amount::of_kept_mass(mass, state.units())));
    density.or_else(piece).unwrap_or_else(|| say!(common::none).to_string())
}

#[component]
fn Yields(id: IngredientId, hangs: Hangs, open: bool) -> impl IntoView {
    let state = AppState::here();
    let of = move |show| shown(state, id, show);
    let units = Memo::new(move |_| state.units());
    let often_over = text(move || {
        let whole = state.speaker.get().short_percent(Share::WHOLE, 0);
        say!(goods::soaked_weight_note, whole = whole)
    });
    let log = of(|it, _| match it.weighings.len() {
        0 => say!(goods::start_yield_log).to_string(),
        count => say!(goods::yield_log_of, weighings = count),
    });
    view! {
        <Fold name=say!(goods::yields) figure=of(yields_of) open>
            <p class="about">{say!(goods::yields_about)}</p>
            <div class="fields">
                <div class="marked">
                    <Entry
                        hangs
                        label=say!(goods::trim_yield)
                        asks=asks(Kind::TrimYield, Key::Ingredient(id), "trim-yield")
                        unit="%"
                        example=say!(goods::trim_yield_example)
                        value=of(|it, state| {
                            if it.trim_yield == Share::WHOLE { String::new() } else { state.plain_percent(it.trim_yield) }
                        })
                        commit=fields::optional_percent(say!(goods::trim_yield), fields::Example::TrimYield, move |book, share| {
                            ingredient_changed(book, id, |it| it.trim_yield = share.unwrap_or(Share::WHOLE))
                        })
                    />
                    {figure_mark(id, Figure::TrimYield)}
                </div>
                <div class="marked">
                    <Entry
                        hangs
                        label=say!(goods::juice_yield)
                        asks=asks(Kind::Yield, Key::Ingredient(id), "press-yield")
                        unit="%"
                        example=say!(goods::juice_yield_example)
                        value=of(|it, state| it.press_yield.map(|share| state.plain_percent(share)).unwrap_or_default())
                        commit=fields::optional_percent(say!(goods::juice_yield), fields::Example::JuiceYield, move |book, share| {
                            ingredient_changed(book, id, |it| it.press_yield = share)
                        })
                    />
                    {figure_mark(id, Figure::PressYield)}
                </div>
                <Entry
                    hangs
                    label=say!(goods::soaked_weight)
                    asks=asks(Kind::Yield, Key::Ingredient(id), "soak-yield")
                    unit="%"
                    example=say!(goods::soaked_weight_example)
                    note=often_over
                    value=of(|it, state| it.soak_yield.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent(say!(goods::soaked_weight), fields::Example::SoakedWeight, move |book, share| {
                        ingredient_changed(book, id, |it| it.soak_yield = share)
                    })
                />
            </div>
            <div class="actions">
                <a class="button" href=Route::YieldLog(id).address()>{log}</a>
                {fill_empty(id)}
            </div>
        </Fold>
        <Fold name=say!(goods::weight_and_volume) figure=of(weight_of) open>
            {live(move || {
                let units = units.get();
                untrack(|| weight_and_volume(id, hangs, units))
            })}
        </Fold>
    }
}

fn shown(state: AppState, id: IngredientId, show: fn(&Ingredient, AppState) -> String) -> Signal<String> {
    text(move || state.book.with(|book| book.ingredient(id).map(|it| show(it, state)).unwrap_or_default()))
}

/// A density of an ingredient.
type Of = fn(&Ingredient) -> Option<Density>;

fn weight_and_volume(id: IngredientId, hangs: Hangs, units: System) -> AnyView {
    let state = AppState::here();
    let of = move |show| shown(state, id, show);
    // A usual range of hundredths of a g/mL, as a note says it.
    let usual = move |low, high, note: fn(String, String) -> String| {
        text(move || {
            let [low, high] = [low, high].map(|hundredths| {
                let density = Density::from_grams_per_millilitre(Exact::new(hundredths, 2));
                let speaker = state.speaker.get();
                if units.weighs_cups() { speaker.cup_weight(density, 1) } else { speaker.typed_density(density) }
            });
            note(low, high)
        })
    };
    let juice_note: fn(String, String) -> String = if units.weighs_cups() {
        |low, high| say!(goods::juice_cup_weight_note, low = low, high = high)
    } else {
        |low, high| say!(goods::juice_density_note, low = low, high = high)
    };
    let drink_note: fn(String, String) -> String = if units.weighs_cups() {
        |low, high| say!(goods::drink_cup_weight_note, low = low, high = high)
    } else {
        |low, high| say!(goods::drink_density_note, low = low, high = high)
    };
    let unit = state.speaker.with_untracked(|speaker| speaker.density_unit());
    let in_book = move |density: Of| state.book.with(|book| density(book.ingredient(id)?));
    // As it is stored: what is asked about.
    let asks_about = move |field: &'static str, density: Of| {
        let number = text(move || {
            let number = in_book(density).map(|it| it.grams_per_millilitre().rounded(TYPED_PLACES as u32));
            number.map(|number| state.number(number)).unwrap_or_default()
        });
        asks(Kind::Density, Key::Ingredient(id), field).about(number)
    };
    let typed = move |density: Of| {
        text(move || in_book(density).map(|it| state.speaker.get().typed_density(it)).unwrap_or_default())
    };
    let weight = |book: &Book| Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.weight_unit() };
    view! {
        <p class="about">{say!(goods::weight_and_volume_about)}</p>
        <div class="fields">
            <div class="marked">
                <Entry
                    hangs
                    label=words::juice_density(units)
                    asks=asks_about("juice-density", |it| it.juice_density)
                    letters=units.weighs_cups()
                    unit
                    example=say!(common::none)
                    note=usual(103, 107, juice_note)
                    value=typed(|it| it.juice_density)
                    commit=fields::optional_density(words::juice_density(units), move |book, density| {
                        ingredient_changed(book, id, |it| it.juice_density = density)
                    })
                />
                {figure_mark(id, Figure::JuiceDensity)}
            </div>
            <div class="marked">
                <Entry
                    hangs
                    label=words::drink_density(units)
                    asks=asks_about("density", |it| it.density)
                    letters=units.weighs_cups()
                    unit
                    example=say!(common::none)
                    note=usual(95, 105, drink_note)
                    value=typed(|it| it.density)
                    commit=fields::optional_density(words::drink_density(units), move |book, density| {
                        ingredient_changed(book, id, |it| it.density = density)
                    })
                />
                {figure_mark(id, Figure::Density)} {spoon_weight(id)}
            </div>
            <div class="marked">
                <Entry
                    hangs
                    label=say!(goods::piece_weight)
                    asks=asks(Kind::Size, Key::Ingredient(id), "piece-weight")
                    example=say!(common::none)
                    note=say!(goods::piece_weight_note)
                    value=of(|it, state| {
                        let piece = it.piece_weight.map(|mass| Amount::of_kept_mass(mass, state.units()));
                        piece.map(|amount| state.amount(amount)).unwrap_or_default()
                    })
                    units=fields::units(weight)
                    commit=fields::optional_amount(say!(goods::piece_weight), |_| fields::Example::PieceWeight, weight, move |book, amount| {
                        ingredient_changed(book, id, |it| it.piece_weight = amount.and_then(Amount::kept_mass))
                    })
                />
                {figure_mark(id, Figure::PieceWeight)} {at_odds(id)}
            </div>
        </div>
    }
    .into_any()
}
