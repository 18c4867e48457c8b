//! What holds for the whole book.

use std::sync::Arc;

use leptos::prelude::*;

use crate::book::{self, Book, CostBasis, Edit, Key, Record, TaxPlace};
use crate::counter::batch::least_step;
use crate::drink::label::Law;
use crate::foundation::in_order;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Amount, Currency, Dimension, Money, Share, System, Unit, Wanted, read_endings};
use crate::say;
use crate::ui::fields::{self, Choice, Commit, Entry, Example, asks};
use crate::ui::language;
use crate::ui::live::{live, text, trouble};
use crate::ui::locale::currency_name;
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

/// Puts a value into the settings.
type Put<T> = fn(&mut book::Settings, T);

/// A setting as a field shows it, and how it is put in force.
struct Setting {
    value: Signal<String>,
    commit: Commit,
}

fn changed(book: &Book, change: impl FnOnce(&mut book::Settings)) -> Option<Edit> {
    let mut settings = book.settings().clone();
    change(&mut settings);
    Some(Edit::Put(Record::Settings(Box::new(settings))))
}

fn shown(state: AppState, show: fn(&book::Settings, AppState) -> String) -> Signal<String> {
    text(move || state.book.with(|book| show(book.settings(), state)))
}

fn percent(
    state: AppState,
    step: &'static str,
    example: Example,
    get: fn(&book::Settings) -> Share,
    put: Put<Share>,
) -> Setting {
    let value = text(move || state.plain_percent(state.book.with(|book| get(book.settings()))));
    Setting { value, commit: fields::percent(step, example, move |book, share| changed(book, |it| put(it, share))) }
}

fn money(
    state: AppState,
    step: &'static str,
    example: Example,
    get: fn(&book::Settings) -> Money,
    put: Put<Money>,
) -> Setting {
    let value = text(move || state.plain_money(state.book.with(|book| get(book.settings()))));
    Setting { value, commit: fields::money(step, example, move |book, money| changed(book, |it| put(it, money))) }
}

/// A field of a setting with its note under it, which may be empty.
fn field(label: &'static str, note: &'static str, setting: Setting) -> AnyView {
    let Setting { value, commit } = setting;
    view! { <Entry label note value commit /> }.into_any()
}

/// A field of a share that is often a few percent; `of` tells its questions from others.
fn small_share(label: &'static str, of: &'static str, note: &'static str, setting: Setting) -> AnyView {
    let Setting { value, commit } = setting;
    view! { <Entry label asks=asks(Kind::SmallShare, Key::Settings, of) unit="%" note value commit /> }.into_any()
}

/// The smallest step that a scale or the jugs show. The field is empty if none is set.
fn step(
    state: AppState,
    label: &'static str,
    example: fn(Unit) -> Example,
    wanted: fn(&Book) -> Wanted,
    get: fn(&book::Settings) -> Option<Amount>,
    put: Put<Option<Amount>>,
) -> AnyView {
    let amount = move || state.book.with(|book| get(book.settings()));
    let value = text(move || amount().map(|step| state.amount(step)).unwrap_or_default());
    let commit = fields::optional_amount(label, example, wanted, move |book, step| changed(book, |it| put(it, step)));
    view! { <Entry label value units=fields::units(wanted) commit /> }.into_any()
}

/// A choice among the values of a setting, by their words.
fn choice<T: Copy + Send + Sync + 'static>(
    state: AppState,
    label: &'static str,
    values: Vec<(String, T)>,
    value: fn(&book::Settings, AppState) -> String,
    put: Put<T>,
) -> AnyView {
    let options: Vec<(String, String)> = values.iter().map(|(words, _)| (words.clone(), words.clone())).collect();
    let choose = Arc::new(move |chosen: &str| {
        let Some((_, value)) = values.iter().find(|(words, _)| words == chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |settings| put(settings, *value)));
        edit.map_or(Ok(()), |edit| state.apply(label, edit))
    });
    view! { <Choice label options value=shown(state, value) choose /> }.into_any()
}

/// What holds for the whole book.
#[component]
pub fn Settings() -> impl IntoView {
    let state = AppState::here();
    let law = Memo::new(move |_| state.book.with(|book| Law::of(book.settings())));
    view! {
        {this_book(state)}
        {target(state)}
        {live(move || {
            let law = law.get();
            untrack(|| tax_and_fees(state, law))
        })}
        {counter(state)}
        {prices_of_suppliers(state)}
        {borne_by_every_drink(state)}
    }
}

fn this_book(state: AppState) -> AnyView {
    let units = [System::UsCustomary, System::Metric, System::Imperial];
    let units = units.map(|units| (words::system(units).to_string(), units)).to_vec();
    let rename = fields::text(say!(book::book_name), |book, name| changed(book, |it| it.name = name));
    let unit = |it: &book::Settings, _| words::system(it.units).to_string();
    view! {
        <Section heading=say!(book::this_book)>
            <div class="fields">
                <Entry label=say!(common::name) letters=true value=shown(state, |it, _| it.name.clone()) commit=rename />
                {choice(state, say!(book::units), units, unit, |it, units| it.units = units)}
                {currency(state)}
            </div>
            <p class="about">
                {say!(book::units_about)}
            </p>
        </Section>
    }
    .into_any()
}

/// The currency of the book, each with its full name, by their codes.
fn currency(state: AppState) -> AnyView {
    let language = language::language();
    let mut options: Vec<(String, String)> = Vec::new();
    for currency in Currency::all() {
        let option = (currency.code().to_string(), currency_name(&language, currency));
        in_order::insert(&mut options, option, |(other, _), (code, _)| other < code);
    }
    let choose = Arc::new(move |code: &str| {
        let Some(currency) = Currency::from_code(code) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |it| it.currency = currency));
        edit.map_or(Ok(()), |edit| state.apply(say!(book::currency), edit))
    });
    let value = shown(state, |it, _| it.currency.to_string());
    view! { <Choice label=say!(book::currency) options value choose /> }.into_any()
}

fn target(state: AppState) -> AnyView {
    let bases = CostBasis::ALL.iter().map(|basis| (words::cost_basis(*basis).to_string(), *basis)).collect();
    let Setting { value, commit } = percent(
        state,
        say!(common::target_margin),
        Example::TargetMargin,
        |it| it.target,
        |it, share| it.target = share,
    );
    let ends = |it: &book::Settings, state: AppState| {
        it.endings.iter().map(|ending| state.plain_money(*ending)).collect::<Vec<_>>().join("  ")
    };
    view! {
        <Section heading=say!(common::target_margin) about=words::target_margin()>
            <div class="fields">
                <Entry
                    label=say!(common::target_margin)
                    asks=asks(Kind::Margin, Key::Settings, "target")
                    unit="%"
                    large=true
                    value
                    commit
                />
                {choice(
                    state,
                    say!(book::margin_figured_on),
                    bases,
                    |it, _| words::cost_basis(it.cost_basis).to_string(),
                    |it, basis| it.cost_basis = basis,
                )}
                <Entry
                    label=say!(book::price_endings)
                    example=say!(book::any_ending)
                    note=text(move || say!(book::price_endings_about, example = Example::PriceEndings.said(&state.speaker.get())))
                    letters=true
                    value=shown(state, ends)
                    commit=endings(state)
                />
            </div>
        </Section>
    }
    .into_any()
}

fn tax_and_fees(state: AppState, law: Law) -> AnyView {
    let places = [TaxPlace::AddedAtTheTill, TaxPlace::InThePrice];
    let places = places.map(|place| (words::tax_place(place).to_string(), place)).to_vec();
    // Whoever has others sell the juice is told what that asks for.
    let resold = move || {
        let commission = state.book.with(|book| book.settings().commission);
        (!commission.is_zero()).then(|| words::sold_to_a_business(law).to_string())
    };
    let rate = percent(
        state,
        words::sales_tax_rate(law),
        Example::SalesTax,
        |it| it.tax.rate,
        |it, share| it.tax.rate = share,
    );
    let fee = percent(
        state,
        say!(book::card_fee),
        Example::CardFee,
        |it| it.payment_fee.share,
        |it, share| it.payment_fee.share = share,
    );
    let fixed = money(
        state,
        say!(common::fee_per_transaction),
        Example::TransactionFee,
        |it| it.payment_fee.fixed,
        |it, money| it.payment_fee.fixed = money,
    );
    let commission = percent(
        state,
        say!(book::app_commission),
        Example::Commission,
        |it| it.commission,
        |it, share| it.commission = share,
    );
    view! {
        <Section heading=say!(book::tax_and_fees) about=say!(book::tax_and_fees_about)>
            <div class="fields">
                <Entry
                    label=words::sales_tax_rate(law)
                    asks=asks(Kind::Tax, Key::Settings, "tax")
                    unit="%"
                    value=rate.value
                    commit=rate.commit
                />
                {choice(
                    state,
                    words::sales_tax(law),
                    places,
                    |it, _| words::tax_place(it.tax.place).to_string(),
                    |it, place| it.tax.place = place,
                )}
                {small_share(say!(book::card_fee), "card-fee", say!(book::card_fee_about), fee)}
                {field(say!(common::fee_per_transaction), "", fixed)}
                {small_share(say!(book::app_commission), "commission", say!(book::app_commission_about), commission)}
            </div>
            {trouble(resold)}
        </Section>
    }
    .into_any()
}

fn counter(state: AppState) -> AnyView {
    let scale = |book: &Book| Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.weight_unit() };
    let jug = |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let about = text(move || {
        let units = state.units();
        let [weight, volume] = [units.weight_unit(), units.drink_unit()].map(|unit| state.amount(least_step(unit)));
        say!(book::counter_about, weight = weight, volume = volume)
    });
    view! {
        <Section heading=say!(first::counter)>
            <p class="about">{about}</p>
            <div class="fields">
                {step(state, say!(book::scale_rounds_to), |_| Example::ScaleStep, scale, |it| it.scale_step, |it, step| it.scale_step = step)}
                {step(state, say!(book::cup_marks), |_| Example::CupMark, jug, |it| it.jug_step, |it, step| it.jug_step = step)}
            </div>
        </Section>
    }
    .into_any()
}

fn prices_of_suppliers(state: AppState) -> AnyView {
    let days = |it: &book::Settings, state: AppState| it.price_days.map(|days| state.number(days)).unwrap_or_default();
    let commit = fields::optional_count(say!(book::flag_prices_older), Example::DaysOfPrice, |book, days| {
        changed(book, |it| it.price_days = days)
    });
    view! {
        <Section heading=say!(book::supplier_prices) about=say!(book::supplier_prices_about)>
            <div class="fields">
                <Entry label=say!(book::flag_prices_older) unit=say!(book::days) example=say!(book::never) value=shown(state, days) commit />
            </div>
        </Section>
    }
    .into_any()
}

fn borne_by_every_drink(state: AppState) -> AnyView {
    let wage = money(state, say!(book::hourly_wage), Example::Wage, |it| it.wage, |it, money| it.wage = money);
    let overhead = money(
        state,
        say!(drinks::overhead_per_drink),
        Example::CostPerDrink,
        |it| it.overhead,
        |it, money| it.overhead = money,
    );
    let unsold = percent(state, say!(drinks::waste), Example::Waste, |it| it.unsold, |it, share| it.unsold = share);
    view! {
        <Section heading=say!(book::shop_costs)>
            <div class="fields">
                {field(say!(book::hourly_wage), say!(book::hourly_wage_about), wage)}
                {field(say!(drinks::overhead_per_drink), say!(book::overhead_about), overhead)}
                {small_share(say!(drinks::waste), "waste", say!(book::waste_about), unsold)}
            </div>
        </Section>
    }
    .into_any()
}

/// Reads several endings: ".50 .95".
fn endings(state: AppState) -> Commit {
    Arc::new(move |text, session| {
        let digits = state.book.with_untracked(|book| book.settings().currency.digits());
        let speaker = state.speaker.get_untracked();
        let endings = read_endings(text, digits, speaker.style());
        let endings = endings.map_err(|error| words::read_error(&error, &Example::PriceEndings.said(&speaker)))?;
        let edit = state.book.with_untracked(|book| changed(book, |it| it.endings = endings));
        edit.map_or(Ok(()), |edit| state.apply_in(say!(book::price_endings), edit, Some(session)))
    })
}
