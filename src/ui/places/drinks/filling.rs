//! The fill target of a drink that is packaged ahead of sale, from its weighings.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;

use super::weekly::Weekly;
use crate::book::{Accepted, Book, Edit, FillRule, Filling, Offer, OfferId, Record};
use crate::measure::{Amount, Dimension, Exact, System, Volume, Wanted, read_amount};
use crate::packaged::{PackagedFill, packaged_fill, pour};
use crate::ui::fields::{self, Ask, Choice, Entry, Hangs};
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::parts::{Figure, Section};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{OfPackaged, Shown};

/// Net contents as they are typed: by volume or by weight.
fn net_contents(book: &Book) -> Wanted {
    Wanted { dimensions: &[Dimension::Volume, Dimension::Mass], unit: book.settings().units.drink_unit() }
}

/// A start to change: the rule of the book's units, no weighing yet.
fn first(units: System) -> Filling {
    let (rule, accepted) = match units {
        System::UsCustomary => (FillRule::UnitedStates, Accepted::TwoAndAHalfPercent),
        System::Metric => (FillRule::EuropeanOrBritish, Accepted::TwoPercent),
        System::Imperial => (FillRule::EuropeanOrBritish, Accepted::TwoAndAHalfPercent),
    };
    Filling::new(rule, accepted)
}

fn filling(book: &Book, id: OfferId) -> Option<&Filling> {
    book.offer(id)?.filling.as_ref()
}

/// The edit that changes the filling of an offer; none where it has none.
fn changed(book: &Book, id: OfferId, change: impl FnOnce(&mut Filling)) -> Option<Edit> {
    let mut filling = filling(book, id)?.clone();
    change(&mut filling);
    with(book, id, Some(filling))
}

fn with(book: &Book, id: OfferId, filling: Option<Filling>) -> Option<Edit> {
    Some(Edit::Put(Record::Offer(Offer { filling, ..book.offer(id)?.clone() })))
}

/// The fill target of a packaged drink.
#[component]
pub fn FillTarget(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    let state = AppState::here();
    let packaged = Memo::new(move |_| state.book.with(|book| filling(book, id).is_some()));
    let set = move |filling: Option<Filling>, step: &'static str| {
        let edit = state.book.with_untracked(|book| with(book, id, filling));
        // A filling without weighings holds, and so does none; neither is refused.
        let _ = edit.map(|edit| state.apply(step, edit));
    };
    let hangs = Hangs::new();
    view! {
        <Section
            heading="Fill target"
            about="For drinks packaged ahead of sale: what to fill on average, so that packages hold what they say. It does not apply to drinks poured to order. No legal advice: local codes and the inspector's own weighing decide."
        >
            {live(move || match packaged.get() {
                true => {
                    view! {
                        <Rules id hangs />
                        <Weighings id />
                        {hangs.answer(move || view! { <Result id /> }.into_any())}
                        <p class="actions">
                            <button class="quiet" on:click=press(move || set(None, "No fill target"))>
                                "Take the fill target away"
                            </button>
                        </p>
                    }
                        .into_any()
                }
                false => {
                    let start = move || set(Some(first(untrack(|| state.units()))), "A fill target");
                    view! {
                        <p class="actions">
                            <button class="button" on:click=press(start)>
                                "Work out a fill target"
                            </button>
                        </p>
                    }
                        .into_any()
                }
            })}
        </Section>
    }
}

#[component]
fn Rules(id: OfferId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Filling, AppState) -> String| {
        text(move || state.book.with(|book| filling(book, id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let rules: Vec<(String, String)> =
        FillRule::ALL.iter().map(|rule| (format!("{rule:?}"), words::fill_rule(*rule).to_string())).collect();
    let choose_rule = Arc::new(move |chosen: &str| {
        let rule = FillRule::ALL.iter().copied().find(|rule| format!("{rule:?}") == chosen);
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.rule = rule.unwrap_or(it.rule)));
        edit.map_or(Ok(()), |edit| state.apply("Fill rule", edit))
    });
    let shares: Vec<(String, String)> =
        Accepted::ALL.iter().map(|it| (format!("{it:?}"), untrack(|| state.percent(it.share())))).collect();
    let choose_share = Arc::new(move |chosen: &str| {
        let share = Accepted::ALL.iter().copied().find(|it| format!("{it:?}") == chosen);
        let edit = state.book.with_untracked(|book| changed(book, id, |it| it.accepted = share.unwrap_or(it.accepted)));
        edit.map_or(Ok(()), |edit| state.apply("Allowed short fills", edit))
    });
    let rule = move || state.book.with(|book| filling(book, id).map(|it| it.rule));
    let volume = |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    view! {
        <div class="fields">
            <Choice label="The rule" options=rules value=of(|it, _| format!("{:?}", it.rule)) choose=choose_rule />
            {when(
                move || rule() != Some(FillRule::Average),
                move || {
                    view! {
                        <Choice
                            label="May be short by more than is tolerated"
                            options=shares.clone()
                            value=of(|it, _| format!("{:?}", it.accepted))
                            choose=choose_share.clone()
                        />
                    }
                        .into_any()
                },
            )}
            {when(
                move || rule() == Some(FillRule::UnitedStates),
                move || {
                    view! {
                        <Entry
                            label="A package may be short by"
                            hangs
                            example="none"
                            note="The maximum allowable variation for this size in NIST Handbook 133; look it up."
                            value=of(|it, state| it.allowed.map(|amount| state.amount(amount)).unwrap_or_default())
                            units=fields::units(volume)
                            commit=fields::optional_amount("Allowed variation", volume, move |book, amount| {
                                changed(book, id, |it| it.allowed = amount)
                            })
                        />
                    }
                        .into_any()
                },
            )}
            <Entry
                label="Must stay empty for the closure"
                hangs
                example="none"
                value=of(|it, state| it.least_headspace.map(|amount| state.amount(amount)).unwrap_or_default())
                units=fields::units(volume)
                commit=fields::optional_amount("Room for the closure", volume, move |book, amount| {
                    changed(book, id, |it| it.least_headspace = amount)
                })
            />
            <Weekly id hangs />
        </div>
    }
}

#[component]
fn Weighings(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let typed = RwSignal::new(String::new());
    let refused = RwSignal::new(String::new());
    let read = move || -> Result<Amount, String> {
        let units = state.units();
        let wanted = state.book.with(net_contents);
        let read = state.style.with(|style| read_amount(&typed.get(), wanted, units, style));
        read.map_err(|error| words::read_error(&error, &words::example(wanted.unit, units)))
    };
    let error = text(move || {
        let wrong = if typed.with(|typed| typed.trim().is_empty()) { None } else { read().err() };
        wrong.unwrap_or_else(|| refused.get())
    });
    let add = move || {
        let added = untrack(read).and_then(|net| {
            let edit = state.book.with_untracked(|book| changed(book, id, |it| it.nets.push(net)));
            edit.map_or(Ok(()), |edit| state.apply("A weighing", edit))
        });
        match added {
            Ok(()) => {
                typed.set(String::new());
                refused.set(String::new());
            }
            Err(sentence) => refused.set(sentence),
        }
    };
    let nets = move || state.book.with(|book| filling(book, id).map(|it| it.nets.clone()).unwrap_or_default());
    let net = move |(place, net): (usize, Amount)| {
        let shown = state.amount(net);
        let label = format!("Take out weighing {}, {shown}", place + 1);
        let remove = move || {
            let edit = state.book.with_untracked(|book| {
                changed(book, id, |it| {
                    if place < it.nets.len() {
                        it.nets.remove(place);
                    }
                })
            });
            // Taking a weighing out is never refused.
            let _ = edit.map(|edit| state.apply("Remove weighing", edit));
        };
        view! {
            <li>
                <button class="chip" aria-label=label on:click=press(remove)>
                    {shown}
                </button>
            </li>
        }
    };
    view! {
        <form
            class="weigh"
            on:submit=move |event: ev::SubmitEvent| {
                event.prevent_default();
                add();
            }
        >
            <Ask label="Net contents of a package" units=fields::units(net_contents) text=typed error=error />
            <button class="button" type="submit">
                "Add"
            </button>
        </form>
        <ol class="chips" aria-label="Weighings; press one to take it out">
            {live(move || nets().into_iter().enumerate().map(net).collect_view().into_any())}
        </ol>
    }
}

#[component]
fn Result(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let found = move || {
        state.book.with(|book| {
            let fill = packaged_fill(book, book.offer(id)?);
            Some(fill.map_err(|error| words::packaged_error(&error, book)))
        })
    };
    let missing = move || found().and_then(std::result::Result::err);
    view! {
        {trouble(missing)}
        {live(move || match found() {
            Some(Ok(fill)) => figures(state, id, fill),
            _ => ().into_any(),
        })}
    }
}

/// Whether two fills are told apart when they are shown.
fn differs(poured: Volume, target: Volume) -> bool {
    poured.minus(target).is_ok_and(|off| off.millilitres().abs() > Exact::new(1, 3))
}

fn figures(state: AppState, id: OfferId, fill: PackagedFill) -> AnyView {
    let volume = |volume| state.fine_volume(volume);
    let spread = |number| volume(Volume::from_millilitres(number));
    let target = fill.target;
    let how = |of| Some(Shown::Packaged(id, of));
    let shown: [(&'static str, Option<Shown>, String); 11] = [
        ("Poured now", Some(Shown::Poured(id.container)), volume(fill.poured)),
        ("Weighings", None, fill.spread.count.to_string()),
        ("Their mean", how(OfPackaged::Mean), spread(fill.spread.mean)),
        ("Their spread (standard deviation)", how(OfPackaged::Spread), spread(fill.spread.deviation)),
        ("Tolerated in a package", None, fill.tolerance.map_or("none".to_string(), volume)),
        ("Fullest to expect", how(OfPackaged::Highest), volume(target.highest)),
        ("Room for", how(OfPackaged::Room), volume(fill.room)),
        ("Given away in a package", how(OfPackaged::Giveaway), volume(target.giveaway)),
        ("The same in money", how(OfPackaged::GiveawayCost), state.fine_money(fill.giveaway_cost)),
        ("Given away in a year", None, state.volume(fill.giveaway_in_a_year)),
        ("A year of it in money", how(OfPackaged::GiveawayCostInAYear), state.money(fill.giveaway_cost_in_a_year)),
    ];
    let figure = |(name, how, value): (&'static str, Option<Shown>, String)| {
        view! { <Figure name value=Signal::stored(value) how=how /> }
    };
    let warnings: Vec<AnyView> = state
        .book
        .with(|book| words::packaged_cautions(&fill, book))
        .into_iter()
        .map(|sentence| view! { <p class="trouble">{sentence}</p> }.into_any())
        .collect();
    let edit = state.book.with(|book| {
        let container = book.container(id.container)?;
        pour(container, target.target, book.settings().units.drink_unit())
    });
    let set = edit.filter(|_| differs(fill.poured, target.target)).map(|edit| {
        let pour = move || {
            // The target was checked to fit the container, so it is not refused.
            let _ = state.apply("Set the fill", edit.clone());
        };
        view! {
            <p class="actions">
                <button class="button" on:click=press(pour)>
                    "Pour this much"
                </button>
            </p>
        }
    });
    view! {
        <dl class="figures">
            <Figure
                name="Fill on average"
                large=true
                how=how(OfPackaged::Target)
                value=Signal::stored(volume(target.target))
            />
            {shown.into_iter().map(figure).collect_view()}
        </dl>
        {warnings}
        {set}
    }
    .into_any()
}
