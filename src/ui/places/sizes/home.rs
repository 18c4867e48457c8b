//! The front page of Sizes: what the numbers say, what can be asked, and what is known.

use leptos::prelude::*;

use super::found::found;
use crate::app::route::{self, Route, Sheet, scope_from_text, scope_text};
use crate::book::{Book, ContainerId, DrinkKind, Scope, SeenPrice};
use crate::drink::ledger::Ledger;
use crate::drink::sales::foremost_kind;
use crate::foundation::measure::{Exact, Overflow};
use crate::say;
use crate::sizes::decision::{Basis, Decision, Finding, MenuToday, Question, Says, Told, kinds_in_weeks};
use crate::ui::kept;
use crate::ui::live::{live, press, text, when};
use crate::ui::parts;
use crate::ui::parts::{Section, says_shape};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words::{self, Decisions};

/// The front page of Sizes.
#[component]
pub fn Home() -> impl IntoView {
    let state = AppState::here();
    let chosen = kept::chosen("kind", None, written, read);
    let kind = Memo::new(move |_| {
        state.book.with(|book| {
            let sold = kinds(book);
            chosen.get().filter(|kind| sold.contains(kind)).or_else(|| foremost_kind(book))
        })
    });
    let none = move || kind.get().is_none();
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(decide::nothing_sold_yet)}</h2>
                <p>{say!(decide::nothing_sold_yet_about)}</p>
                <p class="actions">
                    <a class="button" href=Route::Drinks.address()>{say!(decide::open_drinks)}</a>
                </p>
            </div>
        }
        .into_any()
    };
    let chip = move |of: DrinkKind| {
        let pressed = text(move || (kind.get() == Some(of)).to_string());
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(move || chosen.set(Some(of)))>
                {words::drink_kind(of)}
            </button>
        }
    };
    let chips = live(move || state.book.with(kinds).into_iter().map(chip).collect_view().into_any());
    view! {
        <h1>{say!(first::sizes)}</h1>
        {when(none, teach)}
        <div class="chips" role="group" aria-label=say!(decide::drink_types) hidden=none>
            {chips}
        </div>
        <div class="panes-three sizes-home">
            {when(move || !none(), move || view! { <Findings kind /> }.into_any())}
            <Asks kind />
            <Data kind />
        </div>
    }
}

/// A kind of drink as it is kept.
fn written(kind: Option<DrinkKind>) -> String {
    kind.map(|kind| scope_text(Scope::Kind(kind))).unwrap_or_default()
}

fn read(text: &str) -> Option<Option<DrinkKind>> {
    match scope_from_text(text) {
        Some(Scope::Kind(kind)) => Some(Some(kind)),
        _ => None,
    }
}

/// The kinds of drinks that are sold in any size.
fn kinds(book: &Book) -> Vec<DrinkKind> {
    let sold = |kind: &DrinkKind| book.offers().any(|offer| book.belongs(offer.drink, Scope::Kind(*kind)));
    DrinkKind::ALL.iter().copied().filter(sold).collect()
}

/// What the numbers say of a kind of drinks, each opening the decision it is about.
#[component]
fn Findings(kind: Memo<Option<DrinkKind>>) -> impl IntoView {
    let state = AppState::here();
    let day = today();
    let all = Memo::new(move |_| found(state));
    let list = live(move || {
        let kind = kind.get();
        all.with(|all| {
            let these: Vec<&Finding> = all.iter().filter(|finding| Some(finding.kind) == kind).collect();
            if these.is_empty() {
                return view! { <p class="soft">{say!(decide::no_findings)}</p> }.into_any();
            }
            let rows = these.into_iter().map(|finding| row(state, finding)).collect_view();
            view! { <ul class="rows findings">{rows}</ul> }.into_any()
        })
    });
    // Said once for all of them: from how many weeks their numbers come.
    let averaged = text(move || {
        let scope = kind.get().map_or(Scope::Menu, Scope::Kind);
        let menu = |book: &Book, ledger: &Ledger| {
            let menu = MenuToday::of(book, ledger, scope, &Told::default(), day).ok()?;
            let averaged = menu.sold().iter().find_map(|sold| match sold.weekly.basis {
                Basis::Weeks(weeks) => {
                    Some(say!(decide::sales_from_weeks, weeks = state.speaker.get().counted(Exact::from(weeks))))
                }
                _ => None,
            });
            // What no week tells of, as a menu that was just changed, counts as typed.
            let expected = menu.sold().iter().any(|sold| sold.weekly.basis == Basis::Typed);
            let expected = (expected && averaged.is_some()).then(|| say!(decide::some_sales_expected).to_string());
            let said: Vec<String> = averaged.into_iter().chain(expected).collect();
            Some(said.join(" "))
        };
        state.book.with(|book| state.ledger.with(|ledger| menu(book, ledger))).unwrap_or_default()
    });
    let about = when(move || !averaged.get().is_empty(), move || view! { <p class="soft">{averaged}</p> }.into_any());
    view! { <Section heading=say!(decide::numbers_say)>{about} {list}</Section> }
}

fn row(state: AppState, finding: &Finding) -> AnyView {
    let (said, about) = state.book.with(|book| {
        let speaker = &state.speaker.get();
        Decisions { book, speaker }.finding(finding)
    });
    let says = match (finding.pays(), &finding.says) {
        (Some(true), _) => parts::Says::Yes,
        (Some(false), _) | (None, Says::NotUnder { .. }) => parts::Says::No,
        (None, _) => parts::Says::Open,
    };
    view! {
        <li>
            <a class="row finding" href=leads_to(finding).address()>
                {says_shape(says)}
                <span class="row-name">{said} <span class="row-about">{about}</span></span>
            </a>
        </li>
    }
    .into_any()
}

/// The page that a finding opens.
fn leads_to(finding: &Finding) -> Route {
    let scope = Scope::Kind(finding.kind);
    match &finding.says {
        Says::CannotDrop(decision) | Says::DropPays(decision) => {
            Route::Decision(route::Decision { scope, goes: size_that_goes(decision), comes: None, stays: None })
        }
        Says::OnlyPays { plan, .. } => {
            Route::Decision(route::Decision { scope, goes: None, comes: None, stays: route::Stays::of(&plan.sizes) })
        }
        Says::TurnsOnPrice { .. } => Route::HowMany(scope),
        Says::NotUnder { .. } => Route::PricePoint(scope),
    }
}

fn size_that_goes(decision: &Decision) -> Option<ContainerId> {
    match &decision.question {
        Question::Drop { size } | Question::Switch { from: size, .. } => Some(*size),
        Question::Add { .. } | Question::Keep { .. } => None,
    }
}

/// What can be asked of a kind of drinks.
#[component]
fn Asks(kind: Memo<Option<DrinkKind>>) -> impl IntoView {
    let state = AppState::here();
    let rows = live(move || {
        let scope = kind.get().map_or(Scope::Menu, Scope::Kind);
        let [switch, drop, add] = first_questions(state, scope).map(Route::Decision);
        let asks = [
            (say!(decide::switch_a_size), switch),
            (say!(decide::drop_a_size), drop),
            (say!(decide::add_a_size), add),
            (say!(decide::how_many_sizes), Route::HowMany(scope)),
            (say!(decide::sell_under), Route::PricePoint(scope)),
            (say!(decide::compare_sizes), Route::SideBySide(scope)),
        ];
        let row = |(name, to): (&'static str, Route)| {
            view! {
                <li>
                    <a class="row" href=to.address()>
                        <span class="row-name">{name}</span>
                    </a>
                </li>
            }
        };
        asks.map(row).collect_view().into_any()
    });
    view! {
        <Section heading=say!(decide::ask)>
            <ul class="rows">{rows}</ul>
        </Section>
    }
}

/// The questions to begin with: a switch, a size that goes, and one that comes.
fn first_questions(state: AppState, scope: Scope) -> [route::Decision; 3] {
    let nothing = route::Decision { scope, goes: None, comes: None, stays: None };
    let asked = |book: &Book, ledger: &Ledger| {
        let menu = MenuToday::of(book, ledger, scope, &Told::default(), today())?;
        let (goes, comes) = menu.first_to_switch()?.unzip();
        Ok::<_, Overflow>([
            route::Decision { goes, comes, ..nothing },
            route::Decision { goes: menu.first_to_go()?, ..nothing },
            route::Decision { comes: menu.first_to_come()?, ..nothing },
        ])
    };
    state.book.with(|book| state.ledger.with(|ledger| asked(book, ledger))).unwrap_or([nothing; 3])
}

/// What is known, each with a figure.
#[component]
fn Data(kind: Memo<Option<DrinkKind>>) -> impl IntoView {
    let state = AppState::here();
    let day = today();
    let none = || say!(common::none_yet).to_string();
    // Weeks that lack the drinks looked at say whose they are.
    let weeks = text(move || {
        state.book.with(|book| match book.weeks().count() {
            0 => none(),
            weeks => {
                let held = kinds_in_weeks(book, day).unwrap_or_default();
                if held.is_empty() || kind.get().is_none_or(|kind| held.contains(&kind)) {
                    return say!(decide::weeks, weeks = weeks);
                }
                let held = held.into_iter().map(words::drink_kind).collect::<Vec<_>>().join(", ");
                say!(decide::weeks_of_kinds, weeks = weeks, kinds = held)
            }
        })
    });
    let prices = text(move || {
        state.book.with(|book| {
            let newest = book.seen_prices().map(|seen: &SeenPrice| seen.day).max();
            newest.map_or_else(none, |newest| {
                say!(decide::newest_price, prices = book.seen_prices().count(), day = words::day(newest))
            })
        })
    });
    let trials = text(move || {
        let running = state
            .book
            .with(|book| book.trials().filter(|it| it.last.is_none_or(|last| last.plus_weeks(1) > day)).count());
        if running == 0 { none() } else { say!(decide::trials_running, trials = running) }
    });
    let scenarios = text(move || match state.book.with(|book| book.scenarios().count()) {
        0 => none(),
        scenarios => words::count(scenarios),
    });
    let rows = [
        (say!(decide::weekly_sales), weeks, Route::Sales),
        (say!(decide::local_prices), prices, Route::SeenPrices),
        (say!(sales::trials), trials, Route::Trials),
        (say!(sales::scenarios), scenarios, Route::Scenarios),
    ];
    let row = |(name, figure, to): (&'static str, Signal<String>, Route)| {
        view! {
            <li>
                <a class="row data-row" href=to.address()>
                    <span class="row-name">{name}</span>
                    <span class="row-price">{figure}</span>
                </a>
            </li>
        }
    };
    view! {
        <Section heading=say!(decide::your_data)>
            <ul class="rows">{rows.map(row).collect_view()}</ul>
            <p class="actions">
                <a class="button" href=Route::Sheet(Sheet::Report).address()>{say!(sales::print_report)}</a>
            </p>
        </Section>
    }
}
