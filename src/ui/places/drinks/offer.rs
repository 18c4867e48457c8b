//! One drink at one size: what goes in, what it costs, what to ask.

use leptos::prelude::*;

use super::amounts::amounts;
use super::back::BackFromPrice;
use super::gap::Gap;
use super::weekly::Weekly;
use crate::app::route::Route;
use crate::book::{Edit, Key, OfferId, Part, Scope};
use crate::drink::fill::Fill;
use crate::drink::ledger::Priced;
use crate::drink::price::Suggestion;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::{self, Entry, Hangs, asks};
use crate::ui::glass::{glass, layers};
use crate::ui::how::opens;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::parts::{Back, Figure, Mark, Section, page_of};
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// One drink at one size.
#[component]
pub fn OfferPage(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    page_of(Key::Offer(id), Route::Drink(id.drink), say!(drinks::back_to_drink), move || {
        view! { <Page id /> }.into_any()
    })
}

#[component]
fn Page(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let drink = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let remove = move || {
        if state.apply(say!(drinks::remove_size), Edit::Remove(Key::Offer(id))).is_ok() {
            go(Route::Drink(id.drink));
        }
    };
    let hangs = Hangs::new();
    let computed = when(
        move || state.priced(id, |_| Some(())).is_some(),
        move || {
            view! {
                {hangs.while_read(move || view! { <Gap id /> }.into_any())}
                <Amounts id />
                <Breakdown id />
                <BackFromPrice id />
            }
            .into_any()
        },
    );
    view! {
        <Back to=Route::Drink(id.drink) name=say!(drinks::back_to_drink) />
        <h1>{drink} <span class="h1-size">{container}</span></h1>
        {hangs.while_read(move || view! { <Mark status=state.status(id) /> }.into_any())}
        {trouble(move || state.stuck(id))}
        <Price id hangs />
        {computed}
        <p class="actions">
            <a class="button" href=Route::Card(id).address()>
                {say!(drinks::recipe_card)}
            </a>
            <a class="button" href=Route::Packaged(id).address()>
                {say!(drinks::label_and_fill)}
            </a>
            <a class="button" href=Route::Working(id).address()>
                {say!(common::show_the_math)}
            </a>
            <a class="button" href=Route::SideBySide(Scope::Drink(id.drink)).address()>
                {say!(drinks::compare_sizes)}
            </a>
            <button class="quiet" on:click=press(remove)>
                {say!(drinks::remove_size)}
            </button>
        </p>
    }
}

#[component]
fn Price(id: OfferId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let price = text(move || {
        let price = state.book.with(|book| book.offer(id).and_then(|offer| offer.price));
        price.map(|price| state.plain_money(price)).unwrap_or_default()
    });
    view! {
        <Section heading=say!(common::price)>
            <div class="price">
                <Entry
                    label=say!(drinks::menu_price)
                    asks=asks(Kind::Price, Key::Offer(id), "price")
                    large=true
                    hangs
                    example=say!(common::none_yet)
                    value=price
                    commit=fields::optional_money(say!(drinks::menu_price), move |_, price| {
                        Some(Edit::SetPrice { offer: id, price })
                    })
                />
                <Weekly id hangs />
                {hangs.answer(move || at_the_price_asked(state, id))}
            </div>
            {hangs.while_read(move || suggestion(state, id))}
        </Section>
    }
}

/// What the price that is asked brings.
fn at_the_price_asked(state: AppState, id: OfferId) -> AnyView {
    let figure = move |show: fn(&Priced, AppState) -> Option<String>| {
        text(move || state.priced(id, |it| show(it, state)).unwrap_or_else(|| say!(common::none).into()))
    };
    let asked = move |price| Shown::Offer(id, OfOffer::At(AtPrice::Asked, price));
    view! {
        <dl class="figures">
            <Figure
                name=say!(common::margin)
                large=true
                how=asked(OfPrice::Margin)
                value=figure(|it, state| it.margin().map(|margin| state.percent(margin)))
            />
            <Figure name=say!(common::target_margin) value=figure(|it, state| Some(state.percent(it.terms.target))) />
            <Figure
                name=say!(common::profit_per_drink)
                how=asked(OfPrice::Contribution)
                value=figure(|it, state| it.asked.map(|asked| state.money(asked.contribution)))
            />
            <Figure
                name=say!(drinks::customer_pays)
                how=asked(OfPrice::CustomerPays)
                value=figure(|it, state| it.asked.map(|asked| state.money(asked.customer_pays)))
            />
        </dl>
    }
    .into_any()
}

/// The price suggested for the target, and the press that asks it.
fn suggestion(state: AppState, id: OfferId) -> AnyView {
    let no_price = move || state.priced(id, |it| it.suggestion.err()).map(|error| words::price_error(&error));
    let suggested = move || state.priced(id, |it| it.suggestion.ok());
    let ask_suggested = move || {
        if let Some(suggestion) = suggested() {
            // A suggested price is above zero, so it is not refused.
            let step = say!(drinks::set_price, price = state.money(suggestion.menu));
            let _ = state.apply(&step, Edit::SetPrice { offer: id, price: Some(suggestion.menu) });
        }
    };
    let differs = move || {
        let asked = state.priced(id, |it| it.asked.map(|asked| asked.menu));
        suggested().is_some_and(|suggestion| asked != Some(suggestion.menu))
    };
    let menu = text(move || suggested().map(|suggestion| state.money(suggestion.menu)).unwrap_or_default());
    let set = text(move || say!(drinks::set_price, price = menu.get()));
    let said = move || {
        let said = |suggestion: Suggestion| {
            let (exact, margin) = (state.fine_money(suggestion.exact), state.percent(suggestion.margin));
            say!(drinks::suggested, price = HOLE, margin = margin, exact = exact)
        };
        around(&suggested().map(said).unwrap_or_default())
    };
    let (before, after) = (text(move || said().0), text(move || said().1));
    view! {
        {trouble(no_price)}
        {when(
            move || suggested().is_some(),
            move || {
                let menu = opens(Shown::Offer(id, OfOffer::Suggested), menu);
                view! { <p class="suggested">{before} <strong>{menu}</strong> {after}</p> }.into_any()
            },
        )}
        {when(
            differs,
            move || {
                view! {
                    <button class="button" on:click=press(ask_suggested)>
                        {set}
                    </button>
                }
                    .into_any()
            },
        )}
    }
    .into_any()
}

#[component]
fn Amounts(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let fill = text(move || {
        let said = |fill: Fill| {
            let [volume, brimful, headspace] =
                [fill.volume, fill.brimful, fill.headspace].map(|volume| state.volume(volume));
            let from = say!(drinks::fill_from, fill = volume, brimful = brimful, headspace = headspace);
            match fill.short_of_declared {
                Some(short) => [from, say!(drinks::under_labeled_size, short = state.volume(short))].join(" "),
                None => from,
            }
        };
        state.priced(id, |it| Some(it.fill)).map(said).unwrap_or_default()
    });
    let what = live(move || match state.priced(id, |it| Some((it.fill, it.scaled.clone()))) {
        Some((fill, scaled)) => {
            let container = state.book.with(|book| book.container(id.container).cloned());
            let picture = container.map(|container| glass(&container, &fill, layers(&scaled)));
            let how = |line| Some(Shown::Offer(id, OfOffer::ToUse(line)));
            view! { <div class="in-glass">{picture} {amounts(state, scaled, &how)}</div> }.into_any()
        }
        None => ().into_any(),
    });
    view! {
        <Section heading=say!(drinks::recipe)>
            <p class="about">{fill}</p>
            {what}
            <p>
                <a href=Route::Container(id.container).address()>{say!(drinks::edit_fill)}</a>
            </p>
        </Section>
    }
}

/// The bar's length in its own drawing.
const BAR: u32 = 1000;

/// The parts of a cost that are above zero.
fn parts(priced: &Priced) -> Vec<(Part, Money)> {
    let of = |part: Part| priced.cost.part(part).ok().map(|money| (part, money));
    Part::ALL.into_iter().filter_map(of).filter(|(_, money)| money.is_positive()).collect()
}

#[component]
fn Breakdown(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let total = move || state.priced(id, |it| it.cost.total().ok()).unwrap_or(Money::ZERO);
    let shown_parts = move || state.priced(id, |it| Some(parts(it))).unwrap_or_default();
    let share_of_total = move |money: Money| money.ratio_to(total()).unwrap_or(Exact::ZERO);
    let bar = live(move || {
        let mut from = 0;
        let mut segments = Vec::new();
        for (part, money) in shown_parts() {
            let width = share_of_total(money).in_parts(BAR).unwrap_or(0);
            let class = format!("part part-{}", Part::ALL.iter().position(|it| *it == part).unwrap_or(0));
            segments.push(view! {
                <rect class=class x=from.to_string() y="0" width=width.to_string() height="10">
                    <title>{words::part(part)}</title>
                </rect>
            });
            from += width;
        }
        segments.collect_view().into_any()
    });
    let said = text(move || {
        let largest = shown_parts().into_iter().max_by_key(|(_, money)| *money);
        let sentence = |(part, money)| {
            let share = Share::from_fraction(share_of_total(money));
            say!(drinks::biggest_cost, part = words::part(part), share = state.percent(share))
        };
        largest.map(sentence).unwrap_or_default()
    });
    let one_drink = text(move || {
        let container = state.book.with(|book| book.name(Key::Container(id.container)));
        say!(drinks::one_drink, container = container)
    });
    let sum = opens(Shown::Offer(id, OfOffer::Cost), text(move || state.fine_money(total())));
    let part_row = move |(part, money): (Part, Money)| {
        let class = format!("swatch part-{}", Part::ALL.iter().position(|it| *it == part).unwrap_or(0));
        view! {
            <tr class="table-sum">
                <th scope="row"><span class=class aria-hidden="true"></span>{words::part(part)}</th>
                <td>{opens(Shown::Offer(id, OfOffer::Part(part)), Signal::stored(state.fine_money(money)))}</td>
                <td>{state.percent(Share::from_fraction(share_of_total(money)))}</td>
            </tr>
            {state.priced(id, |it| Some(details(state, id, it, part)))}
        }
    };
    view! {
        <Section heading=say!(drinks::cost_breakdown)>
            <p class="about">{said}</p>
            <svg
                class="bar-chart"
                viewBox="0 0 1000 10"
                preserveAspectRatio="none"
                role="img"
                aria-label=say!(drinks::cost_by_part)
            >
                {bar}
            </svg>
            <table class="table">
                <thead>
                    <tr>
                        <th scope="col">{say!(drinks::part)}</th>
                        <th scope="col">{say!(common::cost)}</th>
                        <th scope="col">{say!(drinks::share)}</th>
                    </tr>
                </thead>
                <tbody>{live(move || shown_parts().into_iter().map(part_row).collect_view().into_any())}</tbody>
                <tfoot>
                    <tr>
                        <th scope="row">{one_drink}</th>
                        <td>{sum}</td>
                        <td></td>
                    </tr>
                </tfoot>
            </table>
        </Section>
    }
}

/// The lines that a part is made of.
fn details(state: AppState, id: OfferId, priced: &Priced, part: Part) -> Vec<impl IntoView + use<>> {
    let lines: Vec<(Key, OfOffer, Money)> = match part {
        Part::Ingredients => {
            let lines = priced.cost.lines.iter();
            lines.map(|it| (Key::Ingredient(it.ingredient), OfOffer::LineCost(it.line), it.cost)).collect()
        }
        Part::ContainerSet => {
            let packaging = priced.cost.packaging.iter().enumerate();
            packaging
                .map(|(place, it)| (Key::Packaging(it.packaging), OfOffer::PackagingCost(place), it.cost))
                .collect()
        }
        Part::Labour | Part::Flat(_) | Part::Unsold => Vec::new(),
    };
    let row = |(key, of, cost): (Key, OfOffer, Money)| {
        let name = state.book.with(|book| book.name(key));
        view! {
            <tr class="table-detail">
                <th scope="row">{name}</th>
                <td>{opens(Shown::Offer(id, of), Signal::stored(state.fine_money(cost)))}</td>
                <td></td>
            </tr>
        }
    };
    lines.into_iter().map(row).collect()
}
