//! A price limit.

use std::sync::Arc;
use std::time::Duration;

use leptos::prelude::*;

use super::asked;
use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::{Book, ContainerId, Key, OfferId, Part, Scope};
use crate::drink::ledger::OfferStatus;
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::price_point::{AtPoint, Row, Verdict, sizes_of, worst_first};
use crate::sizes::side_by_side::sold_in;
use crate::ui::fields::{Ask, Choice, Choose, Hangs, asked_price};
use crate::ui::how::opens;
use crate::ui::live::{live, press, text, when};
use crate::ui::parts::{Back, Mark, Section, figures};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// How long after a change all sizes are worked out anew.
const PAUSE: Duration = Duration::from_millis(150);

/// What is asked. Nothing of it is kept in the book.
#[derive(Clone, Copy)]
struct Asking {
    scope: RwSignal<Option<Scope>>,
    point: RwSignal<String>,
    /// The containers chosen; those that it is sold in where none was chosen yet.
    containers: RwSignal<Option<Vec<ContainerId>>>,
}

impl Asking {
    fn scope(self, book: &Book) -> Option<Scope> {
        let there = |scope: &Scope| match scope {
            Scope::Drink(id) => book.drink(*id).is_some(),
            _ => true,
        };
        self.scope.get().filter(there).or_else(|| asked::first_scope(book))
    }

    /// The containers to choose from: all for one drink, those that they are sold in for more.
    fn offered(self, book: &Book) -> Vec<ContainerId> {
        match self.scope(book) {
            Some(Scope::Drink(_)) => asked::containers(book),
            Some(scope) => sold_in(book, scope),
            None => Vec::new(),
        }
    }

    fn chosen(self, book: &Book) -> Vec<ContainerId> {
        let sold = || self.scope(book).map(|scope| sold_in(book, scope)).unwrap_or_default();
        self.containers.get().unwrap_or_else(sold)
    }

    /// The answer; none without a price.
    fn answer(self, state: AppState, book: &Book) -> Option<Answer> {
        let menu = asked_price(state, self.point)?.ok()?;
        let (scope, containers) = (self.scope(book)?, self.chosen(book));
        let rows = worst_first(book, &sizes_of(book, scope, &containers), menu);
        Some(Answer { menu, one: matches!(scope, Scope::Drink(_)), containers, rows })
    }
}

/// What comes out at a price.
struct Answer {
    menu: Money,
    /// Whether it is of one drink alone.
    one: bool,
    containers: Vec<ContainerId>,
    rows: Vec<Row>,
}

/// A price limit.
#[component]
pub fn PricePoint() -> impl IntoView {
    let state = AppState::here();
    let asking =
        Asking { scope: RwSignal::new(None), point: RwSignal::new(String::new()), containers: RwSignal::new(None) };
    let any = move || state.book.with(|book| asking.scope(book).is_some());
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(decide::price_limit_teach)}</h2>
                <p>{say!(decide::price_limit_teach_about)}</p>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(decide::price_limit)}</h1>
        <p class="about">{say!(decide::price_limit_explained)}</p>
        {when(move || !any(), teach)}
        {when(any, move || view! { <Page asking /> }.into_any())}
    }
}

#[component]
fn Page(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let scopes = Signal::derive(move || state.book.with(|book| asked::scope_options(book, asked::scopes(book))));
    let value = text(move || state.book.with(|book| asking.scope(book).map(scope_text).unwrap_or_default()));
    let choose: Choose = Arc::new(move |value| {
        let scope = scope_from_text(value);
        let gone = || say!(decide::gone_choose_another).to_string();
        asking.scope.set(Some(scope.ok_or_else(gone)?));
        asking.containers.set(None);
        Ok(())
    });
    let error = text(move || asked_price(state, asking.point).and_then(Result::err).unwrap_or_default());
    let answer = RwSignal::new(None::<Answer>);
    // Working out a whole menu is too much for each key that is pressed.
    let mut after_typing = debounce(PAUSE, move |()| {
        answer.set(state.book.with_untracked(|book| untrack(|| asking.answer(state, book))));
    });
    let hangs = Hangs::new();
    Effect::new(move |_| {
        state.book.track();
        asking.scope.track();
        asking.containers.track();
        asking.point.track();
        after_typing(());
    });
    let said = text(move || {
        answer.with(|answer| match answer {
            None => say!(decide::type_a_price).to_string(),
            Some(answer) if answer.rows.is_empty() => say!(decide::choose_a_size).to_string(),
            Some(answer) => {
                let over = answer.rows.iter().filter(|(_, at)| is_over(at)).count();
                let (all, price) = (answer.rows.len(), state.money(answer.menu));
                match over {
                    0 => say!(decide::all_sizes_fit, price = price, sizes = all),
                    _ => say!(decide::sizes_do_not_fit, price = price, over = over, sizes = all.to_string()),
                }
            }
        })
    });
    let any = move || answer.with(|answer| answer.as_ref().is_some_and(|answer| !answer.rows.is_empty()));
    let one = move || any() && answer.with(|answer| answer.as_ref().is_some_and(|answer| answer.one));
    let of = move |view: fn(AppState, &Answer) -> AnyView| {
        live(move || answer.with(|answer| answer.as_ref().map_or_else(|| ().into_any(), |it| view(state, it))))
    };
    let shown = move || {
        view! {
            <p class="about" role="status">{said}</p>
            {when(one, move || view! { <Section heading=say!(decide::by_size)>{of(table)}</Section> }.into_any())}
            {when(
                any,
                move || {
                    view! {
                        <Section heading=say!(decide::what_to_change)>
                            <ul class="give-ups">{of(give_ups)}</ul>
                        </Section>
                    }
                        .into_any()
                },
            )}
        }
        .into_any()
    };
    view! {
        <Section heading=say!(decide::your_limit)>
            <div class="fields">
                <Choice label=say!(decide::which_drinks) options=scopes value=value choose=choose />
                <Ask label=say!(decide::sell_for_no_more_than) text=asking.point error=error hangs />
            </div>
            {chips(state, asking)}
        </Section>
        {hangs.answer(shown)}
    }
}

fn is_over(at: &Result<AtPoint, crate::drink::ledger::OfferError>) -> bool {
    matches!(at, Ok(AtPoint { verdict: Verdict::Over(_), .. }))
}

/// The containers, each to be taken in or left out.
fn chips(state: AppState, asking: Asking) -> AnyView {
    let chip = move |id: ContainerId| {
        let name = state.book.with(|book| book.name(Key::Container(id)));
        let pressed = text(move || state.book.with(|book| asking.chosen(book).contains(&id)).to_string());
        let toggle = move || {
            let mut chosen = state.book.with_untracked(|book| untrack(|| asking.chosen(book)));
            match chosen.iter().position(|other| *other == id) {
                Some(place) => drop(chosen.remove(place)),
                None => chosen.push(id),
            }
            // In their own order, smallest fill first.
            let all = state.book.with_untracked(asked::containers);
            asking.containers.set(Some(all.into_iter().filter(|id| chosen.contains(id)).collect()));
        };
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(toggle)>
                {name}
            </button>
        }
    };
    let offered = Memo::new(move |_| state.book.with(|book| asking.offered(book)));
    let chips = live(move || offered.get().into_iter().map(chip).collect_view().into_any());
    view! {
        <div class="chips" role="group" aria-label=say!(decide::sizes_shown)>
            {chips}
        </div>
    }
    .into_any()
}

/// What the ingredients cost as the recipe is.
const NOW: OfOffer = OfOffer::Part(Part::Ingredients);

/// A figure at the price, opening to its working where the drink is sold in the size.
fn figure(state: AppState, id: OfferId, of: OfOffer, figure: String) -> AnyView {
    match working(state, id, of) {
        Some(shown) => opens(shown, Signal::stored(figure)),
        None => figure.into_any(),
    }
}

fn working(state: AppState, id: OfferId, of: OfOffer) -> Option<Shown> {
    let sold = state.ledger.with(|ledger| matches!(ledger.get(id), Some(Ok(_))));
    sold.then_some(Shown::Offer(id, of))
}

fn fill(state: AppState, at: &AtPoint) -> String {
    match at.largest_fill {
        Some(most) if most == at.poured => say!(decide::whole_fill, fill = state.volume(most)),
        Some(most) => state.volume(most),
        None => say!(decide::nothing_fits).to_string(),
    }
}

/// One drink: a column for each size, in the order of the sizes.
fn table(state: AppState, answer: &Answer) -> AnyView {
    let Answer { menu, containers, rows, .. } = answer;
    let at = |container: &ContainerId| rows.iter().find(|row| row.0.container == *container)?.1.as_ref().ok();
    let columns: Vec<&AtPoint> = containers.iter().filter_map(at).collect();
    if columns.is_empty() {
        return view! { <p class="hollow">{say!(decide::no_figures_for_sizes)}</p> }.into_any();
    }
    let head = |at: &&AtPoint| {
        let name = state.book.with(|book| book.name(Key::Container(at.offer.container)));
        view! { <th scope="col">{name}</th> }
    };
    let line = |name: String, cell: &dyn Fn(&AtPoint) -> AnyView| {
        let cells: Vec<AnyView> = columns.iter().map(|at| view! { <td>{cell(at)}</td> }.into_any()).collect();
        view! {
            <tr>
                <th scope="row">{name}</th>
                {cells}
            </tr>
        }
        .into_any()
    };
    let per = state.book.with(|book| book.settings().units.price_volume_name());
    let at_price = |of| OfOffer::At(AtPrice::Point(*menu), of);
    let lines = vec![
        line(say!(decide::cost_limit).into(), &|at| {
            figure(state, at.offer, at_price(OfPrice::MayCost), state.money(at.ceiling.cost))
        }),
        line(say!(decide::ingredient_limit).into(), &|at| {
            figure(state, at.offer, at_price(OfPrice::IngredientsMayCost), state.money(at.ceiling.ingredients))
        }),
        line(say!(decide::limit_per_unit, unit = per), &|at| state.fine_money(at.may_cost_per_volume).into_any()),
        line(say!(decide::ingredients_now).into(), &|at| figure(state, at.offer, NOW, state.money(at.ingredients))),
        line(say!(decide::largest_fill).into(), &|at| fill(state, at).into_any()),
        line(say!(decide::at_this_price).into(), &|at| view! { <Mark status=status(&at.verdict) /> }.into_any()),
    ];
    view! {
        <div class="wide" tabindex="0" role="region" aria-label=say!(decide::by_size)>
            <table class="table">
                <thead>
                    <tr>
                        <td></td>
                        {columns.iter().map(head).collect_view()}
                    </tr>
                </thead>
                <tbody>{lines}</tbody>
            </table>
        </div>
        <p class="about">
            {say!(decide::limits_explained, unit = per)}
        </p>
    }
    .into_any()
}

/// Where it would stand at this price.
fn status(verdict: &Verdict) -> OfferStatus {
    match verdict {
        Verdict::Fits(_) => OfferStatus::OnTarget,
        Verdict::Over(_) => OfferStatus::UnderTarget,
    }
}

fn give_ups(state: AppState, answer: &Answer) -> AnyView {
    let row = |row| give_up(state, row, answer.menu, !answer.one);
    answer.rows.iter().map(row).collect_view().into_any()
}

/// One size: where it would stand, and what it would have to give up.
fn give_up(state: AppState, (id, at): &Row, menu: Money, with_figures: bool) -> AnyView {
    let id = *id;
    let name = state.book.with(|book| book.name(Key::Offer(id)));
    let sold = state.book.with(|book| book.offer(id).is_some());
    let name = if sold {
        view! { <a href=Route::Offer(id).address()>{name}</a> }.into_any()
    } else {
        view! { {name} <span class="soft">" " {say!(decide::not_sold_yet)}</span> }.into_any()
    };
    let (status, said) = match at {
        Ok(at) => {
            (status(&at.verdict), state.book.with(|book| words::price_points::give_up(at, book, &state.speaker.get())))
        }
        Err(error) => (OfferStatus::CannotCompute, vec![state.book.with(|book| words::offer_error(error, book))]),
    };
    let shown = at.as_ref().ok().filter(|_| with_figures).map(|at| {
        let at = at.clone();
        let list = move || {
            let may = OfOffer::At(AtPrice::Point(menu), OfPrice::IngredientsMayCost);
            vec![
                (
                    say!(decide::ingredient_limit).to_string(),
                    state.money(at.ceiling.ingredients),
                    working(state, id, may),
                ),
                (say!(decide::ingredients_now).to_string(), state.money(at.ingredients), working(state, id, NOW)),
                (say!(decide::largest_fill).to_string(), fill(state, &at), None),
            ]
        };
        view! { <dl class="figures">{figures(list)}</dl> }
    });
    let said = said.into_iter().map(|sentence| view! { <p>{sentence}</p> }).collect_view();
    view! {
        <li class="give-up">
            <p class="give-up-name">
                <strong>{name}</strong>
                <Mark status=status />
            </p>
            {shown}
            {said}
        </li>
    }
    .into_any()
}
