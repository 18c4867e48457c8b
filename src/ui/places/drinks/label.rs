//! What a label says of a drink in a container, with its cautions.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{Route, Sheet};
use crate::book::{Allergen, Book, Drink, Edit, IngredientId, Key, Offer, OfferId, Record, Service};
use crate::drink::label::{Facts, Law, Package, UnitPrice, facts};
use crate::say;
use crate::ui::fields::Choice;
use crate::ui::live::{live, text};
use crate::ui::parts::{Section, warning_box};
use crate::ui::state::AppState;
use crate::words::{self, Run};

/// How the drink is sold: what has a fill for packages is packaged ahead.
#[component]
fn Sold(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let all = [None, Some(Service::PackagedAhead), Some(Service::ByTheGlass)];
    let options = all.map(|served| (format!("{served:?}"), words::service(served).to_string())).to_vec();
    let value = text(move || format!("{:?}", state.book.with(|book| book.offer(id).and_then(Offer::served))));
    let choose = Arc::new(move |chosen: &str| {
        let Some(service) = all.into_iter().find(|served| format!("{served:?}") == chosen) else { return Ok(()) };
        let Some(offer) = state.book.with_untracked(|book| book.offer(id).cloned()) else { return Ok(()) };
        let offer = Offer { service, ..offer };
        if offer.served() == service {
            state.apply(say!(labels::how_sold), Edit::Put(Record::Offer(offer)))
        } else {
            Err(say!(labels::has_a_fill_target).to_string())
        }
    });
    view! { <Choice label=say!(labels::how_sold) options=Signal::stored(options) value choose=choose /> }
}

/// Label facts.
#[component]
pub fn Label(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let said = live(move || {
        let found = state.book.with(|book| {
            let (offer, drink) = (book.offer(id)?, book.drink(id.drink)?);
            Some(
                facts(book, offer)
                    .map(|facts| (facts, drink.clone()))
                    .map_err(|error| words::label_error(&error, book)),
            )
        });
        match found {
            Some(Ok((facts, drink))) => shown(state, &facts, &drink),
            Some(Err(sentence)) => view! { <p class="trouble">{sentence}</p> }.into_any(),
            None => ().into_any(),
        }
    });
    let about = words::label_facts_about(state.book.with_untracked(|book| Law::of(book.settings())));
    view! {
        <Section heading=say!(labels::label_facts) about>
            <Sold id />
            {said}
        </Section>
    }
}

fn shown(state: AppState, facts: &Facts, drink: &Drink) -> AnyView {
    let law = state.book.with(|book| Law::of(book.settings()));
    let warning = facts.cautions.iter().any(|it| it.asks_for_the_warning(law)).then(|| {
        view! {
            {warning_box()}
            <p class="actions">
                <a class="button" href=Route::Sheet(Sheet::Warning).address()>
                    {say!(labels::print_warnings)}
                </a>
            </p>
        }
    });
    let cautions = facts.cautions.iter().map(|caution| {
        let sentence = state.book.with(|book| words::caution(caution, book));
        view! { <p>{sentence}</p> }
    });
    let lacks = facts.package.as_ref().and_then(|package| package.as_ref().err());
    let lacks = lacks.map(|error| state.book.with(|book| words::label_error(error, book)));
    view! {
        {lacks.map(|sentence| view! { <p class="trouble">{sentence}</p> })}
        {facts.package.is_none().then(|| view! { <p>{say!(labels::by_the_glass)}</p> })}
        <dl class="facts">{rows(state, facts, drink, law)}</dl>
        {warning}
        <div class="cautions">{cautions.collect_view()}</div>
        {fold(words::where_it_holds(law.other()), by_the_other(state, facts, drink, law.other()))}
        {packed(facts).map(|package| fold(say!(labels::by_weight), by_weight(state, package, law)))}
        {facts.package.is_some().then(|| fold(say!(labels::also_needed), also_needed(law)))}
    }
    .into_any()
}

/// What the law that is not the book's own asks: its lists, what it counts as a nut, and the
/// warning where it asks for one.
fn by_the_other(state: AppState, facts: &Facts, drink: &Drink, law: Law) -> AnyView {
    let holds_nuts = facts.allergens.present.iter().any(|(found, _)| *found == Allergen::TreeNuts);
    let asking = facts.cautions.iter().filter(|it| it.asks_for_the_warning(law));
    let warned = asking.map(|caution| {
        let sentence = state.book.with(|book| words::caution_by_law(caution, law, book));
        view! {
            <p>{sentence}</p>
            {warning_box()}
        }
    });
    view! {
        <dl class="facts">{by_law(state, facts, drink, law)}</dl>
        {holds_nuts.then(|| view! { <p class="hollow">{words::tree_nuts(law)}</p> })}
        {warned.collect_view()}
    }
    .into_any()
}

/// What the label of a package says, where it can be computed.
fn packed(facts: &Facts) -> Option<&Package> {
    facts.package.as_ref().and_then(|package| package.as_ref().ok())
}

/// What the book knows, most of it by the book's own law.
fn rows(state: AppState, facts: &Facts, drink: &Drink, law: Law) -> Vec<AnyView> {
    let mut rows = Vec::new();
    if let Some(package) = packed(facts) {
        let net = words::net_contents_from(&package.net, &state.speaker.get());
        rows.push(fact_with(say!(labels::net_contents), net, words::weight_if_thick(drink.kind, law)));
    } else if facts.size_includes_ice {
        rows.push(fact(say!(common::size), say!(labels::size_includes_ice).to_string()));
    }
    rows.extend(by_law(state, facts, drink, law));
    let named = |ids: &[IngredientId]| -> Option<String> {
        let names = |book: &Book| ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect::<Vec<_>>();
        (!ids.is_empty()).then(|| state.book.with(names).join(", "))
    };
    if let Some(names) = named(&facts.allergens.not_stated) {
        rows.push(fact(say!(labels::allergens_not_checked), say!(labels::allergens_not_checked_of, names = names)));
    }
    if let Some(names) = named(&facts.allergens.parts_name_more) {
        rows.push(fact(say!(labels::allergen_not_marked), say!(labels::allergen_not_marked_of, names = names)));
    }
    if let Some(names) = named(&facts.allergens.parts_not_known) {
        rows.push(fact(say!(labels::parts_not_known), say!(labels::parts_not_known_of, names = names)));
    }
    if facts.package.is_some() {
        let kept = words::keeping(drink, None);
        let kept = if kept.is_empty() { say!(labels::storage_not_entered).to_string() } else { kept };
        rows.push(fact(say!(labels::storage), kept));
    }
    if let Some(price) = &facts.unit_price {
        let units = state.units();
        let (price, unit) = (state.unit_price(price), UnitPrice::unit(units).name_in(units));
        rows.push(fact(say!(labels::unit_price), say!(labels::unit_price_per, price = price, unit = unit)));
    }
    rows
}

/// What one law asks of the list of ingredients, allergens and juice.
fn by_law(state: AppState, facts: &Facts, drink: &Drink, law: Law) -> Vec<AnyView> {
    let mut rows = Vec::new();
    if let Some(package) = packed(facts) {
        let list = state
            .book
            .with(|book| words::ingredient_list(&package.ingredients, drink, book, law, &state.speaker.get()));
        let run = |run: Run| {
            if run.stands_out { view! { <strong>{run.text}</strong> }.into_any() } else { run.text.into_any() }
        };
        rows.push(
            view! {
                <div>
                    <dt>{say!(labels::ingredients_heaviest_first)}</dt>
                    <dd class="ingredients">{list.into_iter().map(run).collect_view()}</dd>
                </div>
            }
            .into_any(),
        );
    }
    let said = words::allergens_by_law(&facts.allergens, law);
    match law {
        Law::UnitedStates => {
            let contains = facts.package.is_some() && facts.allergens.in_united_states().next().is_some();
            let said = if contains { say!(labels::contains_on_label, allergens = said) } else { said };
            rows.push(fact(say!(labels::allergens_nine), said));
            let besides = words::besides_the_nine(&facts.allergens);
            if !besides.is_empty() {
                rows.push(fact(say!(labels::other_allergens), besides));
            }
            let also = state.book.with(|book| words::also_declare(&facts.allergens, book));
            if !also.is_empty() {
                rows.push(fact(say!(labels::also_declare), also));
            }
            if let Some(package) = packed(facts) {
                let percent = state.book.with(|book| words::percent_juice(&package.juice, book));
                rows.push(fact_with(say!(labels::juice), percent, words::name_with_juice(&package.juice)));
            }
        }
        Law::European => {
            let in_the_list = packed(facts).is_some() && !facts.allergens.present.is_empty();
            let besides = if in_the_list { say!(labels::not_repeated) } else { "" };
            rows.push(fact_with(say!(labels::allergens_fourteen), said, besides));
        }
    }
    rows
}

/// Each ingredient with its weight, and how juice is counted where a label says how much is juice.
fn by_weight(state: AppState, package: &Package, law: Law) -> AnyView {
    let how_counted = words::how_juice_is_counted(law);
    let how_counted = (!how_counted.is_empty()).then(|| view! { <p class="about">{how_counted}</p> });
    let ingredients = package.ingredients.iter().map(|listed| {
        let name = state.book.with(|book| words::listed_name(listed.what, book));
        view! {
            <tr>
                <th scope="row">{name}</th>
                <td>{state.measure(crate::foundation::measure::Measure::Mass(listed.mass))}</td>
                <td>{state.percent(listed.share)}</td>
            </tr>
        }
    });
    view! {
        <table class="table">
            <caption>{say!(labels::ingredients_by_weight)}</caption>
            <tbody>{ingredients.collect_view()}</tbody>
        </table>
        {how_counted}
    }
    .into_any()
}

fn also_needed(law: Law) -> AnyView {
    let items = words::also_needed(law).into_iter().map(|item| view! { <li>{item}</li> });
    view! { <ul class="bulleted">{items.collect_view()}</ul> }.into_any()
}

fn fold(summary: &'static str, folded: AnyView) -> AnyView {
    view! {
        <details class="more">
            <summary>{summary}</summary>
            {folded}
        </details>
    }
    .into_any()
}

fn fact(name: &'static str, said: String) -> AnyView {
    fact_with(name, said, "")
}

/// A fact, and a line besides where there is one.
fn fact_with(name: &'static str, said: String, besides: &'static str) -> AnyView {
    view! {
        <div>
            <dt>{name}</dt>
            <dd>{said}</dd>
            {(!besides.is_empty()).then(|| view! { <dd class="soft">{besides}</dd> })}
        </div>
    }
    .into_any()
}
