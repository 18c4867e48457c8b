//! What a label says of a drink in a container, with its cautions.

use leptos::prelude::*;

use crate::book::{Allergen, Key, OfferId};
use crate::label::{Facts, facts};
use crate::ui::live::live;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

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
            Some(facts(book, offer).map_err(|error| words::label_error(&error, book)))
        });
        match found {
            Some(Ok(facts)) => shown(state, &facts),
            Some(Err(sentence)) => view! { <p class="trouble">{sentence}</p> }.into_any(),
            None => ().into_any(),
        }
    });
    view! {
        <Section heading="Label facts" about="What the book knows for a label. No label is printed from here.">
            {said}
        </Section>
    }
}

fn shown(state: AppState, facts: &Facts) -> AnyView {
    let net = state.style.with(|style| words::net_contents(&facts.net, state.units(), style));
    let source = words::net_source(facts.net.source);
    let list = |name: fn(Allergen) -> Option<&'static str>| {
        let names: Vec<&str> = facts.allergens.present.iter().filter_map(|(found, _)| name(*found)).collect();
        match (names.is_empty(), facts.allergens.not_stated.is_empty()) {
            (false, _) => names.join(", "),
            (true, true) => "none".to_string(),
            (true, false) => "none stated so far".to_string(),
        }
    };
    let open: Vec<String> =
        state.book.with(|book| facts.allergens.not_stated.iter().map(|id| book.name(Key::Ingredient(*id))).collect());
    let mut rows = vec![
        fact("Net contents", format!("{net} ({source})")),
        fact("Allergens, United States (nine)", list(words::allergen_in_united_states)),
        fact("Allergens, European Union (fourteen)", list(|it| Some(words::allergen_in_european_union(it)))),
    ];
    if !open.is_empty() {
        rows.push(fact("Not stated yet, so it may hold any", open.join(", ")));
    }
    if let Some(price) = &facts.unit_price {
        let per =
            |per: &crate::label::PricePer| format!("{} per {}", state.fine_money(per.price), state.amount(per.amount));
        rows.push(fact("Unit price", format!("{}, {}", per(&price.small), per(&price.large))));
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
        let sentence = state.book.with(|book| words::caution(*caution, book));
        view! { <p>{sentence}</p> }
    });
    view! {
        <dl class="facts">{rows}</dl>
        <table class="table">
            <caption>"Ingredients by weight, most first"</caption>
            <tbody>{ingredients.collect_view()}</tbody>
        </table>
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
