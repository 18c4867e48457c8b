//! Where a price goes, row by row, down to the profit per drink.

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{OfferId, Part, Tax, TaxPlace};
use crate::drink::label::Law;
use crate::drink::price::{self, Ladder, Leaves, NotCounted, Rung, Takes};
use crate::foundation::measure::{Exact, Money};
use crate::say;
use crate::ui::how::opens;
use crate::ui::live::live;
use crate::ui::parts::Section;
use crate::ui::section;
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// How long a whole bar is in its own drawing.
const BAR: u32 = 1000;

/// The money ladder of the price asked; of the suggested one while none is asked.
#[component]
pub fn LadderOf(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let found = Memo::new(move |_| {
        state.priced(id, |it| {
            let (at, menu) = match it.asked {
                Some(asked) => (AtPrice::Asked, asked.menu),
                None => (AtPrice::Suggested, it.suggestion.ok()?.menu),
            };
            Some((at, price::ladder(&it.cost, &it.terms, menu).ok()?))
        })
    });
    live(move || match found.get() {
        Some((at, ladder)) => drawn(state, id, at, &ladder),
        None => ().into_any(),
    })
}

fn drawn(state: AppState, id: OfferId, at: AtPrice, ladder: &Ladder) -> AnyView {
    let suggested = (at == AtPrice::Suggested)
        .then(|| view! { <p class="soft">{say!(drinks::at_suggested_price, price = state.money(ladder.menu))}</p> });
    let bars = Bars::of(ladder);
    let law = state.book.with(|book| Law::of(book.settings()));
    let with_markdowns = state.priced(id, |it| Some(!it.terms.reductions.marked_down.is_zero())) == Some(true);
    let taken = |takes| match takes {
        Takes::Discounts if with_markdowns => say!(drinks::discounts_and_markdowns),
        takes => words::takes(takes, law),
    };
    let mut left = ladder.menu;
    let menu = say!(drinks::menu_price).to_string();
    let mut rows = vec![row("ladder-left", menu, bars.left(ladder.menu), state.money(ladder.menu).into_any())];
    for rung in &ladder.rungs {
        rows.push(match *rung {
            Rung::Takes(takes, money) => {
                left = left.minus(money).unwrap_or(left);
                let bar = bars.bar(left, money, bar_class(takes));
                let figure = figure(state, id, opened(takes, at), money);
                row("", taken(takes).to_string(), bar, figure)
            }
            Rung::Leaves(leaves, money) => {
                let bar = bars.left(money);
                let name = left_name(state, ladder, leaves);
                let shown = match leaves {
                    Leaves::Margin => Some(OfPrice::Margin),
                    Leaves::ProfitThatChanges => None,
                    Leaves::Profit => Some(OfPrice::Contribution),
                };
                let figure = figure(state, id, shown.map(|of| OfOffer::At(at, of)), money);
                row("ladder-left", name, bar, figure)
            }
        });
    }
    let currency = state.book.with(|book| book.settings().currency);
    let apart = ladder.is_rounded_apart(&|money| currency.rounded(money)).unwrap_or(false);
    let apart = apart.then(|| view! { <p class="soft">{say!(drinks::rows_rounded)}</p> });
    let added = state.priced(id, |it| Some(it.terms.tax));
    let is_added = |tax: Tax| tax.place == TaxPlace::AddedAtTheTill && tax.rate.is_positive();
    let pays = added.is_some_and(is_added).then(|| {
        view! {
            <p class="soft">
                {words::customer_pays_with_tax(law, &state.money(ladder.customer_pays))}
            </p>
        }
    });
    view! {
        <Section heading=say!(drinks::price_goes)>
            {suggested}
            <table class="ladder">
                <tbody>
                    {rows}
                </tbody>
            </table>
            {apart}
            {pays}
            {lacks(state, id)}
        </Section>
    }
    .into_any()
}

/// What is left, with the margin where it stands.
fn left_name(state: AppState, ladder: &Ladder, leaves: Leaves) -> String {
    let mut name = vec![words::leaves(leaves, ladder.basis).to_string()];
    if ladder.margin_stands_at(leaves) {
        if leaves != Leaves::Margin {
            name.push(words::margin_on(ladder.basis).to_string());
        }
        name.push(state.percent(ladder.margin));
    }
    name.join(" · ")
}

/// What the profit does not count yet, each with the way to the field that it lacks.
pub fn lacks(state: AppState, id: OfferId) -> AnyView {
    let lacks = state.book.with(|book| {
        let offer = book.offer(id)?;
        state.priced(id, |priced| Some(price::not_counted(book, offer, priced)))
    });
    let field = |lacks: NotCounted| {
        let route = match lacks {
            NotCounted::Wage | NotCounted::NoOverhead | NotCounted::CardFee | NotCounted::Tax => Route::Book,
            NotCounted::Time | NotCounted::Waste => Route::Drink(id.drink),
            NotCounted::Packaging => Route::Container(id.container),
            NotCounted::Overhead => Route::Sales,
        };
        let address = route.address();
        let wants = part_of_page(lacks).map(|part| section::wants(address.clone(), part));
        let press = move |event| {
            if let Some(wants) = &wants {
                wants(event);
            }
        };
        view! { <li><a href=address on:click=press>{words::not_counted_yet(lacks)}</a></li> }
    };
    let lacks = lacks.unwrap_or_default();
    (!lacks.is_empty())
        .then(|| view! { <ul class="lacks">{lacks.into_iter().map(field).collect_view()}</ul> })
        .into_any()
}

/// The part of its page that asks for what is not counted; none where that is never folded.
fn part_of_page(lacks: NotCounted) -> Option<&'static str> {
    match lacks {
        NotCounted::Time | NotCounted::Waste => Some(say!(drinks::making)),
        NotCounted::Packaging => Some(say!(common::packaging)),
        NotCounted::Wage | NotCounted::NoOverhead => Some(say!(book::shop_costs)),
        NotCounted::CardFee => Some(say!(drinks::fees)),
        NotCounted::Tax | NotCounted::Overhead => None,
    }
}

fn row(class: &'static str, name: String, bar: AnyView, figure: AnyView) -> AnyView {
    view! {
        <tr class=class>
            <th scope="row">{name}</th>
            <td class="ladder-bar">{bar}</td>
            <td>{figure}</td>
        </tr>
    }
    .into_any()
}

fn figure(state: AppState, id: OfferId, of: Option<OfOffer>, money: Money) -> AnyView {
    let shown = state.money(money);
    match of {
        Some(of) => opens(Shown::Offer(id, of), Signal::stored(shown)),
        None => shown.into_any(),
    }
}

/// The working of what is taken, where it has one of its own.
fn opened(takes: Takes, at: AtPrice) -> Option<OfOffer> {
    match takes {
        Takes::SalesTax => Some(OfOffer::At(at, OfPrice::WithoutTax)),
        Takes::CardFee | Takes::Commission => Some(OfOffer::At(at, OfPrice::Fees)),
        Takes::Part(part) => Some(OfOffer::Part(part)),
        Takes::Discounts => Some(OfOffer::At(at, OfPrice::Revenue)),
        Takes::Waste(..) | Takes::Free(..) => None,
    }
}

fn bar_class(takes: Takes) -> String {
    let part = match takes {
        Takes::Discounts | Takes::SalesTax | Takes::CardFee | Takes::Commission => return "ladder-fee".to_string(),
        Takes::Part(part) => part,
        Takes::Waste(..) => Part::Unsold,
        Takes::Free(..) => Part::Free,
    };
    format!("part-{}", Part::ALL.iter().position(|it| *it == part).unwrap_or(0))
}

/// The bars of a ladder: each row takes its piece off what is left above it.
struct Bars {
    /// What the whole length stands for.
    whole: Money,
    /// How far below zero the last is.
    below: Money,
}

impl Bars {
    fn of(ladder: &Ladder) -> Bars {
        let lowest = ladder.rungs.iter().map(|rung| match rung {
            Rung::Leaves(_, money) => *money,
            Rung::Takes(..) => Money::ZERO,
        });
        let below = Money::ZERO.minus(lowest.min().unwrap_or(Money::ZERO)).unwrap_or(Money::ZERO).max(Money::ZERO);
        Bars { whole: ladder.menu.plus(below).unwrap_or(ladder.menu), below }
    }

    fn long(&self, money: Money) -> u32 {
        money.ratio_to(self.whole).unwrap_or(Exact::ZERO).in_parts(BAR).unwrap_or(0)
    }

    /// The piece above what it leaves.
    fn bar(&self, leaves: Money, money: Money, class: String) -> AnyView {
        drawn_bar(self.long(leaves.plus(self.below).unwrap_or(Money::ZERO)), self.long(money), class)
    }

    /// What is left, from zero on.
    fn left(&self, money: Money) -> AnyView {
        let zero = self.long(self.below);
        if money.is_negative() {
            let lack = self.long(Money::ZERO.minus(money).unwrap_or(Money::ZERO));
            return drawn_bar(zero.saturating_sub(lack), lack, "ladder-lack".to_string());
        }
        drawn_bar(zero, self.long(money), "ladder-rest".to_string())
    }
}

fn drawn_bar(from: u32, width: u32, class: String) -> AnyView {
    view! {
        <svg viewBox="0 0 1000 10" preserveAspectRatio="none" aria-hidden="true">
            <rect class=class x=from.to_string() y="0" width=width.max(4).to_string() height="10" />
        </svg>
    }
    .into_any()
}
