//! Questions about the shop, on one short screen. Each may be left: what is not known is said where profit is.

use std::sync::Arc;

use leptos::prelude::*;

use crate::app::route::{FirstPrice, Route};
use crate::app::shop::{Common, common, country_of, moved};
use crate::book::{Book, DrinkId, Edit, Key, Record, Settings, TaxPlace};
use crate::drink::label::Law;
use crate::foundation::in_order;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Currency, Money, Share};
use crate::say;
use crate::ui::fields::{self, Asks, Choice, Commit, Entry, Example, Hangs, asks};
use crate::ui::kept;
use crate::ui::language;
use crate::ui::live::{live, press, text, trouble};
use crate::ui::locale::{country_here, country_name, currency_name};
use crate::ui::parts::Back;
use crate::ui::random::random;
use crate::ui::state::AppState;
use crate::words;

/// Questions about the shop.
#[component]
pub fn Shop() -> impl IntoView {
    let state = AppState::here();
    let country = kept::text("country", &country_at_first(state));
    let law = Memo::new(move |_| state.book.with(|book| Law::of(book.settings())));
    let drink = DrinkId::from_random(random());
    let hangs = Hangs::new();
    // Whoever has drinks came from the Book to change an answer.
    let has_drinks = state.book.with_untracked(|book| book.drinks().next().is_some());
    let head = if has_drinks {
        view! {
            <Back to=Route::Book name=say!(first::book) />
            <h1>{say!(setup::your_shop)}</h1>
        }
        .into_any()
    } else {
        view! {
            <p class="soft step-of">{say!(first::first_price_steps)}</p>
            <h1>{say!(setup::your_shop)}</h1>
            <p class="soft">{say!(setup::shop_about)}</p>
        }
        .into_any()
    };
    let on = (!has_drinks).then(|| {
        view! {
            <p class="actions">
                <a class="main" href=Route::FirstPrice(FirstPrice::of(drink)).address()>
                    {say!(first::price_first_drink)}
                </a>
                <a class="quiet" href=Route::Drinks.address()>
                    {say!(setup::skip_questions)}
                </a>
            </p>
        }
    });
    view! {
        {head}
        <div class="shop-fields">
            {country_choice(state, country)}
            {currency_choice(state)}
            {live(move || {
                let law = law.get();
                untrack(|| view! { <div class="shop-whole">{tax_place(state, law)}</div> {tax_rate(state, law, country, hangs)} }.into_any())
            })}
            {card_fee(state, country, hangs)}
            {wage(state, country, hangs)}
            {target(state, hangs)}
        </div>
        {trouble(move || {
            let fields = hangs.unread_labels();
            (!fields.is_empty()).then(|| say!(setup::field_skipped, fields = fields.join(", ")))
        })}
        {on}
    }
}

fn changed(book: &Book, change: impl FnOnce(&mut Settings)) -> Option<Edit> {
    let mut settings = book.settings().clone();
    change(&mut settings);
    Some(Edit::Put(Record::Settings(Box::new(settings))))
}

fn country_at_first(state: AppState) -> String {
    let here = country_here();
    let of = |book: &Book| country_of(book.settings(), &here).map(str::to_string);
    state.book.with_untracked(of).unwrap_or_default()
}

/// The country: it brings money, units and the place of the tax, which decide the law of labels.
fn country_choice(state: AppState, country: RwSignal<String>) -> AnyView {
    let language = language::language();
    let mut options: Vec<(String, String)> = Vec::new();
    for letters in Currency::countries() {
        let option = (letters.to_string(), country_name(&language, letters));
        in_order::insert(&mut options, option, |(_, other), (_, name)| other < name);
    }
    options.insert(0, (String::new(), say!(common::choose).to_string()));
    let choose = Arc::new(move |chosen: &str| {
        if !chosen.is_empty() {
            let there = state.book.with_untracked(|book| moved(book.settings(), chosen));
            state.apply(say!(setup::country), Edit::Put(Record::Settings(Box::new(there))))?;
        }
        country.set(chosen.to_string());
        Ok(())
    });
    view! { <Choice label=say!(setup::country) options value=country choose /> }.into_any()
}

fn currency_choice(state: AppState) -> AnyView {
    let language = language::language();
    let option = |currency: Currency| (currency.code().to_string(), currency_name(&language, currency));
    let mut options: Vec<(String, String)> = Vec::new();
    for option in Currency::all().map(option) {
        in_order::insert(&mut options, option, |(other, _), (code, _)| other < code);
    }
    let choose = Arc::new(move |code: &str| {
        let Some(currency) = Currency::from_code(code) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |it| it.currency = currency));
        edit.map_or(Ok(()), |edit| state.apply(say!(book::currency), edit))
    });
    let value = text(move || state.book.with(|book| book.settings().currency.to_string()));
    view! { <Choice label=say!(book::currency) options value choose /> }.into_any()
}

fn tax_place(state: AppState, law: Law) -> AnyView {
    let places = [TaxPlace::AddedAtTheTill, TaxPlace::InThePrice];
    let option = |place: TaxPlace| (format!("{place:?}"), words::tax_place(place).to_string());
    let options: Vec<(String, String)> = places.map(option).into();
    let choose = Arc::new(move |chosen: &str| {
        let Some(place) = places.into_iter().find(|place| format!("{place:?}") == chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |it| it.tax.place = place));
        edit.map_or(Ok(()), |edit| state.apply(words::sales_tax(law), edit))
    });
    let value = text(move || format!("{:?}", state.book.with(|book| book.settings().tax.place)));
    view! { <Choice label=words::sales_tax(law) options value choose /> }.into_any()
}

/// A figure of the settings that may not be known.
#[derive(Clone, Copy)]
struct Asked {
    label: &'static str,
    unit: &'static str,
    example: Example,
    /// What stands in the field; nothing where it is not known.
    shown: fn(&Settings, AppState) -> String,
    /// The settings with the common figure of a country.
    take: fn(&mut Settings, &Common),
    /// Whether they have it.
    is_common: fn(&Settings, &Common) -> bool,
}

/// A field for a figure, and under it the answer "not sure": it takes the common figure, where there is one.
fn unsure(
    state: AppState,
    country: RwSignal<String>,
    hangs: Hangs,
    asked: Asked,
    asks: Asks,
    commit: Commit,
) -> AnyView {
    let Asked { label, unit, example, shown, take, is_common } = asked;
    let value = text(move || state.book.with(|book| shown(book.settings(), state)));
    // What was left open by a press: nothing is known of it here.
    let left_open = RwSignal::new(false);
    let note = text(move || {
        let figures = country.with(|country| common(country));
        let taken = left_open.get()
            && figures.is_some_and(|figures| state.book.with(|book| is_common(book.settings(), &figures)));
        match (taken, left_open.get() && value.with(String::is_empty)) {
            (true, _) => say!(setup::common_figure).to_string(),
            (false, true) => say!(setup::counts_as_zero).to_string(),
            (false, false) => String::new(),
        }
    });
    // What is typed is the person's own figure, whatever it is.
    let commit: Commit = Arc::new(move |text, session| {
        left_open.set(false);
        commit(text, session)
    });
    let press_it = move || {
        left_open.set(true);
        let Some(figures) = country.with_untracked(|country| common(country)) else { return };
        let edit = state.book.with_untracked(|book| changed(book, |settings| take(settings, &figures)));
        // A common figure is within the bounds of its field.
        let _ = edit.map(|edit| state.apply(label, edit));
    };
    let common_here = Memo::new(move |_| country.with(|country| common(country)));
    // What the answer "not sure" takes is the example too.
    let entry = live(move || {
        let said = common_here.get().map(|figures| untrack(|| shown(&with(take, &figures), state)));
        let example = said.unwrap_or_else(|| state.speaker.with_untracked(|speaker| example.said(speaker)));
        let (asks, commit) = (asks.clone(), commit.clone());
        untrack(|| view! { <Entry label unit hangs asks example note value commit /> }.into_any())
    });
    view! {
        <div class="unsure">
            {entry}
            <button class="quiet" aria-label=say!(setup::not_sure_of, field = label) on:click=press(press_it)>
                {say!(setup::not_sure)}
            </button>
        </div>
    }
    .into_any()
}

/// Settings that have the common figure of a country.
fn with(take: fn(&mut Settings, &Common), figures: &Common) -> Settings {
    let mut settings = Settings::new("");
    take(&mut settings, figures);
    settings
}

fn tax_rate(state: AppState, law: Law, country: RwSignal<String>, hangs: Hangs) -> AnyView {
    let label = words::sales_tax_rate(law);
    let commit = fields::optional_percent(label, Example::SalesTax, |book, rate| {
        changed(book, |it| it.tax.rate = rate.unwrap_or(Share::ZERO))
    });
    let asked = Asked {
        label,
        unit: "%",
        example: Example::SalesTax,
        shown: |it, state| state.percent_if_any(it.tax.rate),
        take: |it, figures| it.tax.rate = figures.tax,
        is_common: |it, figures| it.tax.rate == figures.tax,
    };
    unsure(state, country, hangs, asked, asks(Kind::Tax, Key::Settings, "tax"), commit)
}

fn wage(state: AppState, country: RwSignal<String>, hangs: Hangs) -> AnyView {
    let label = say!(book::hourly_wage);
    let commit = fields::optional_money(label, Example::Wage, |book, wage| {
        changed(book, |it| it.wage = wage.unwrap_or(Money::ZERO))
    });
    let asked = Asked {
        label,
        unit: "",
        example: Example::Wage,
        shown: |it, state| state.money_if_any(it.wage),
        take: |it, figures| it.wage = figures.wage,
        is_common: |it, figures| it.wage == figures.wage,
    };
    unsure(state, country, hangs, asked, asks(Kind::Wage, Key::Settings, "wage"), commit)
}

fn card_fee(state: AppState, country: RwSignal<String>, hangs: Hangs) -> AnyView {
    let label = say!(book::card_fee);
    let commit = fields::optional_percent(label, Example::CardFee, |book, fee| {
        changed(book, |it| it.payment_fee.share = fee.unwrap_or(Share::ZERO))
    });
    let asked = Asked {
        label,
        unit: "%",
        example: Example::CardFee,
        shown: |it, state| state.percent_if_any(it.payment_fee.share),
        take: |it, figures| it.payment_fee.share = figures.card_fee,
        is_common: |it, figures| it.payment_fee.share == figures.card_fee,
    };
    unsure(state, country, hangs, asked, asks(Kind::SmallShare, Key::Settings, "card-fee"), commit)
}

/// The target margin. A new book has a common one from the start.
fn target(state: AppState, hangs: Hangs) -> AnyView {
    let value = text(move || state.plain_percent(state.book.with(|book| book.settings().target)));
    let commit = fields::percent(say!(common::target_margin), Example::TargetMargin, |book, share| {
        changed(book, |it| it.target = share)
    });
    let at_first = Settings::new("").target;
    let typed = RwSignal::new(false);
    let commit: Commit = Arc::new(move |text, session| {
        typed.set(true);
        commit(text, session)
    });
    let note = text(move || {
        let common = !typed.get() && state.book.with(|book| book.settings().target == at_first);
        if common { say!(setup::common_figure).to_string() } else { String::new() }
    });
    let asks = asks(Kind::Margin, Key::Settings, "target");
    view! { <Entry label=say!(common::target_margin) hangs asks unit="%" note value commit /> }.into_any()
}
