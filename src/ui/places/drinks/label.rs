//! What a label says of a drink in a container, with its cautions.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{Route, Sheet};
use crate::book::{Drink, DrinkKind, Edit, IngredientId, Key, Offer, OfferId, Record, Service};
use crate::drink::label::{Caution, Facts, Law, Package, facts};
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
            state.apply("How it is sold", Edit::Put(Record::Offer(offer)))
        } else {
            Err(words::HAS_A_FILL_TARGET.to_string())
        }
    });
    view! { <Choice label="How it is sold" options=Signal::stored(options) value choose=choose /> }
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
    view! {
        <Section heading="Label facts" about="What the book knows for a label. Only the warning is ready to print.">
            <Sold id />
            {said}
        </Section>
    }
}

fn shown(state: AppState, facts: &Facts, drink: &Drink) -> AnyView {
    let law = state.book.with(|book| Law::of(book.settings()));
    let warning = facts.cautions.iter().any(Caution::asks_for_the_warning).then(|| {
        view! {
            {warning_box()}
            <p class="actions">
                <a class="button" href=Route::Sheet(Sheet::Warning).address()>
                    "Print warnings"
                </a>
            </p>
        }
    });
    let cautions = facts.cautions.iter().map(|caution| {
        let sentence = state.book.with(|book| words::caution(caution, book));
        view! { <p>{sentence}</p> }
    });
    let elsewhere = match law.other() {
        Law::UnitedStates => "In the United States",
        Law::European => "In the EU and the UK",
    };
    let lacks = facts.package.as_ref().and_then(|package| package.as_ref().err());
    let lacks = lacks.map(|error| state.book.with(|book| words::label_error(error, book)));
    view! {
        {lacks.map(|sentence| view! { <p class="trouble">{sentence}</p> })}
        {facts.package.is_none().then(|| view! { <p>{words::BY_THE_GLASS}</p> })}
        <dl class="facts">{rows(state, facts, drink, law)}</dl>
        {warning}
        <div class="cautions">{cautions.collect_view()}</div>
        {fold(elsewhere, view! { <dl class="facts">{by_law(state, facts, drink, law.other())}</dl> }.into_any())}
        {packed(facts).map(|package| fold("By weight", by_weight(state, package)))}
        {facts.package.is_some().then(|| fold("Not on this page", not_here(law)))}
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
        let net = words::net_contents(&package.net, &state.speaker.get());
        let net = format!("{net} ({})", words::net_source(package.net.source));
        let thick = if drink.kind == DrinkKind::Blended { words::THICK } else { "" };
        rows.push(fact_with("Net contents", net, thick));
    } else if facts.size_includes_ice {
        rows.push(fact("Size", words::SIZE_INCLUDES_ICE.to_string()));
    }
    rows.extend(by_law(state, facts, drink, law));
    let named = |ids: &[IngredientId]| -> Vec<String> {
        state.book.with(|book| ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect())
    };
    let (open, mixed) = (named(&facts.allergens.not_stated), named(&facts.allergens.parts_not_known));
    if !open.is_empty() {
        rows.push(fact("Not stated yet, so it may hold any", open.join(", ")));
    }
    let more = named(&facts.allergens.parts_name_more);
    if !more.is_empty() {
        rows.push(fact(words::PARTS_NAME_MORE, more.join(", ")));
    }
    if !mixed.is_empty() {
        rows.push(fact("Parts not known, so more may be in it", mixed.join(", ")));
    }
    if facts.package.is_some() {
        let kept = words::keeping(drink, None);
        rows.push(fact("Keeping", if kept.is_empty() { words::KEEPING_NOT_ENTERED.to_string() } else { kept }));
    }
    if let Some(price) = &facts.unit_price {
        let per = words::per_volume(state.units());
        rows.push(fact("Unit price", format!("{} {per}", state.unit_price(price))));
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
                    <dt>"Ingredients, most by weight first"</dt>
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
            let said = if contains { format!("Contains: {said}") } else { said };
            rows.push(fact("Allergens, United States (nine)", said));
            let besides = words::besides_the_nine(&facts.allergens);
            if !besides.is_empty() {
                rows.push(fact("Also in it, not among the nine", besides));
            }
            let also = state.book.with(|book| words::also_declare(&facts.allergens, book));
            if !also.is_empty() {
                rows.push(fact("Also declare", also));
            }
            if let Some(package) = packed(facts) {
                let percent = state.book.with(|book| words::percent_juice(&package.juice, book));
                rows.push(fact_with("Juice", percent, words::name_with_juice(&package.juice)));
            }
        }
        Law::European => {
            let in_the_list = packed(facts).is_some() && !facts.allergens.present.is_empty();
            let besides = if in_the_list { words::NOT_REPEATED } else { "" };
            rows.push(fact_with("Allergens, EU and UK (fourteen)", said, besides));
        }
    }
    rows
}

/// Each ingredient with its weight, and how juice is counted.
fn by_weight(state: AppState, package: &Package) -> AnyView {
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
            <caption>"Ingredients by weight, most first"</caption>
            <tbody>{ingredients.collect_view()}</tbody>
        </table>
        <p class="about">{words::HOW_JUICE_IS_COUNTED}</p>
    }
    .into_any()
}

fn not_here(law: Law) -> AnyView {
    let items = words::not_on_this_page(law).iter().map(|item| view! { <li>{*item}</li> });
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
