//! What a label says of a drink in a container, with its cautions.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{Route, Sheet};
use crate::book::{Allergen, Edit, IngredientId, Key, Offer, OfferId, Record, Service};
use crate::label::{Caution, Facts, Law, facts};
use crate::ui::fields::Choice;
use crate::ui::live::{live, text};
use crate::ui::parts::{Section, warning_box};
use crate::ui::state::AppState;
use crate::words;

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
        match offer.served() == service {
            true => state.apply("How it is sold", Edit::Put(Record::Offer(offer))),
            false => Err(words::HAS_A_FILL_TARGET.to_string()),
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
            let offer = book.offer(id)?;
            let kept = book.drink(id.drink).map(|drink| words::keeping(drink, None)).unwrap_or_default();
            Some(facts(book, offer).map(|facts| (facts, kept)).map_err(|error| words::label_error(&error, book)))
        });
        match found {
            Some(Ok((facts, kept))) => shown(state, &facts, &kept),
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

fn shown(state: AppState, facts: &Facts, kept: &str) -> AnyView {
    let net = state.style.with(|style| words::net_contents(&facts.net, state.units(), style));
    let source = words::net_source(facts.net.source);
    let law = state.book.with(|book| Law::of(book.settings()));
    let list = |name: fn(Allergen) -> Option<&'static str>| {
        let names = facts
            .allergens
            .present
            .iter()
            .filter_map(|(found, _)| name(*found).map(|name| words::with_nuts(name, *found, &facts.allergens)));
        let names: Vec<String> = names.collect();
        let all_known = facts.allergens.are_all_known();
        match (names.is_empty(), all_known) {
            (false, _) => names.join(", "),
            (true, true) => match words::used_around(&facts.allergens.used_around, law) {
                around if around.is_empty() => "none".to_string(),
                around => format!("none. {around}"),
            },
            (true, false) => "none stated so far".to_string(),
        }
    };
    let named = |ids: &[IngredientId]| -> Vec<String> {
        state.book.with(|book| ids.iter().map(|id| book.name(Key::Ingredient(*id))).collect())
    };
    let (open, mixed) = (named(&facts.allergens.not_stated), named(&facts.allergens.parts_not_known));
    let mut rows = vec![
        fact("Net contents", format!("{net} ({source})")),
        fact("Allergens, United States (nine)", list(words::allergen_in_united_states)),
        fact("Allergens, European Union (fourteen)", list(|it| Some(words::allergen_in_european_union(it)))),
    ];
    let also = state.book.with(|book| words::also_declare(&facts.allergens, book));
    if law == Law::UnitedStates && !also.is_empty() {
        rows.insert(2, fact("Also declare", also));
    }
    if !open.is_empty() {
        rows.push(fact("Not stated yet, so it may hold any", open.join(", ")));
    }
    if !mixed.is_empty() {
        rows.push(fact("Parts not known, so more may be in it", mixed.join(", ")));
    }
    rows.push(fact("Keeping", if kept.is_empty() { words::KEEPING_NOT_ENTERED } else { kept }.to_string()));
    if let Some(price) = &facts.unit_price {
        let per = words::per_volume(state.units());
        rows.push(fact("Unit price", format!("{} {per}", state.unit_price(price))));
    }
    let ingredients = facts.ingredients.iter().map(|listed| {
        let name = state.book.with(|book| book.name(Key::Ingredient(listed.ingredient)));
        view! {
            <tr>
                <th scope="row">{name}</th>
                <td>{state.measure(crate::measure::Measure::Mass(listed.mass))}</td>
                <td>{state.percent(listed.share)}</td>
            </tr>
        }
    });
    let cautions = facts.cautions.iter().map(|caution| {
        let sentence = state.book.with(|book| words::caution(caution, book));
        view! { <p>{sentence}</p> }
    });
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
    view! {
        <dl class="facts">{rows}</dl>
        <table class="table">
            <caption>"Ingredients by weight, most first"</caption>
            <tbody>{ingredients.collect_view()}</tbody>
        </table>
        {warning}
        <div class="cautions">{cautions.collect_view()}</div>
    }
    .into_any()
}

fn fact(name: &'static str, said: String) -> AnyView {
    view! {
        <div>
            <dt>{name}</dt>
            <dd>{said}</dd>
        </div>
    }
    .into_any()
}
