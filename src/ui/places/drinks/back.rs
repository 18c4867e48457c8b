//! Back from a price point: what a drink may cost at a price, and how much fits into that.

use leptos::prelude::*;

use crate::book::OfferId;
use crate::drink::label::{Juice, Law};
use crate::drink::ledger::Priced;
use crate::drink::price::{Ceiling, ceiling, largest_fill, our_price, shelf_price};
use crate::foundation::measure::{Exact, Money, Share, Volume};
use crate::say;
use crate::ui::fields::{Ask, Example, Hangs, asked_number, asked_price};
use crate::ui::live::{text, trouble, when};
use crate::ui::parts::{Figure, Fold, figures, is_wide};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// What a price point leaves to spend.
struct Answer {
    ceiling: Ceiling,
    fill: Option<Volume>,
    ingredients_per_volume: Option<Money>,
}

/// Back from a price point. Changes nothing in the book.
#[component]
pub fn BackFromPrice(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let (point, shop) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let point_read = move || asked_price(state, point);
    let shop_read = move || match asked_number(state, shop, Example::RetailersCut) {
        Some(Ok(percent)) if percent >= Exact::new(100, 0) => {
            Some(Err(say!(drinks::retailers_cut_too_high).to_string()))
        }
        percent => percent,
    };
    let margin = move || {
        let percent = shop_read()?.ok()?;
        percent.over(Exact::new(100, 0)).map(Share::from_fraction).ok()
    };
    let menu = move || {
        let point = point_read()?.ok()?;
        our_price(point, margin().unwrap_or(Share::ZERO)).ok()
    };
    let shelf = move || {
        let ours = state.priced(id, |priced| priced.asked.map(|asked| asked.menu))?;
        let shelf = shelf_price(ours, margin()?).ok()?;
        Some(say!(drinks::retailer_charges, price = state.money(ours), shelf = state.money(shelf)))
    };
    let shelf = text(move || shelf().unwrap_or_default());
    let answer = move || {
        let menu = menu()?;
        state.priced(id, |priced| state.book.with(|book| answer(book, id, priced, menu)))
    };
    let per_volume = text(move || {
        let per_volume = answer().and_then(|answer| answer.ingredients_per_volume);
        per_volume.map_or_else(|| say!(common::none).into(), |money| state.money(money))
    });
    // Drawn anew for each price: what opens is the working at that price.
    let may_cost = move || {
        let Some((ceiling, menu)) = answer().map(|it| it.ceiling).zip(menu()) else { return Vec::new() };
        let at = |of| Some(Shown::Offer(id, OfOffer::At(AtPrice::Point(menu), of)));
        // As on the page of a price: no cent more than there is.
        let most = |money| words::price_points::down_to_cent(money, &state.speaker.get());
        let ingredients = most(ceiling.ingredients);
        vec![
            (say!(drinks::highest_cost).to_string(), most(ceiling.cost), at(OfPrice::MayCost)),
            (say!(drinks::highest_ingredient_cost).to_string(), ingredients, at(OfPrice::IngredientsMayCost)),
        ]
    };
    let fill = text(move || {
        let holds = state.priced(id, |it| Some(it.fill.volume));
        match (answer().map(|answer| answer.fill), holds) {
            (Some(Some(most)), Some(holds)) if most >= holds => say!(drinks::full_fill, fill = state.volume(holds)),
            (Some(Some(most)), _) => state.volume(most),
            _ => say!(common::none).into(),
        }
    });
    let per = move || {
        let name = state.book.with(|book| book.settings().units.price_volume_name());
        say!(drinks::ingredients_per, unit = name)
    };
    let point_error = text(move || point_read().and_then(Result::err).unwrap_or_default());
    let shop_error = text(move || shop_read().and_then(Result::err).unwrap_or_default());
    // Whoever sells to another business is told what that asks for.
    let sold_on = move || {
        margin()?;
        let (juice, law) = state.book.with(|book| {
            let juice = book.drink(id.drink).map(|drink| Juice::of(book, drink))?;
            Some((juice, Law::of(book.settings())))
        })?;
        (juice.made_here || !juice.not_said.is_empty()).then(|| words::sold_to_a_business(law).to_string())
    };
    let hangs = Hangs::new();
    let shown = move || {
        view! {
            <p class="hollow">{shelf}</p>
            {trouble(sold_on)}
            {when(
                move || answer().is_some(),
                move || {
                    view! {
                        <dl class="figures">
                            {figures(may_cost)}
                            <Figure name=untrack(per) value=per_volume />
                            <Figure name=say!(drinks::largest_fill) value=fill />
                        </dl>
                    }
                        .into_any()
                },
            )}
        }
        .into_any()
    };
    view! {
        <Fold name=say!(drinks::work_back) figure=Signal::stored(String::new()) open=is_wide()>
            <p class="about">{say!(drinks::work_back_about)}</p>
            <div class="fields">
                <Ask label=say!(drinks::sell_for_no_more_than) text=point error=point_error hangs />
                <Ask label=say!(drinks::retailers_cut) text=shop error=shop_error hangs />
            </div>
            {hangs.answer(shown)}
        </Fold>
    }
}

fn answer(book: &crate::book::Book, id: OfferId, priced: &Priced, menu: Money) -> Option<Answer> {
    let drink = book.drink(id.drink)?;
    let ceiling = ceiling(book, drink, &priced.cost, &priced.terms, menu).ok()?;
    let container = book.container(id.container)?;
    let fill = largest_fill(book, drink, container, priced.terms.cost_basis, priced.fill.volume, &ceiling).ok()?;
    let per = book.settings().units.price_volume().ratio_to(priced.fill.volume).ok()?;
    let ingredients_per_volume = ceiling.ingredients.times(per).ok();
    Some(Answer { ceiling, fill, ingredients_per_volume })
}
