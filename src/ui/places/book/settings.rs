//! What holds for the whole book.

use std::sync::Arc;

use leptos::prelude::*;

use crate::book::{self, Book, CostBasis, Edit, Key, Record, TaxPlace};
use crate::foundation::in_order;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Currency, Dimension, Share, System, Wanted, read_endings};
use crate::ui::fields::{self, Choice, Choose, Commit, Entry, asks};
use crate::ui::live::{text, trouble};
use crate::ui::parts::Section;
use crate::ui::state::AppState;
use crate::words;

fn changed(book: &Book, change: impl FnOnce(&mut book::Settings)) -> Option<Edit> {
    let mut settings = book.settings().clone();
    change(&mut settings);
    Some(Edit::Put(Record::Settings(Box::new(settings))))
}

/// A choice among the values of a setting, by their words.
fn choose<T: Copy + Send + Sync + 'static>(
    state: AppState,
    step: &'static str,
    values: Vec<(String, T)>,
    set: fn(&mut book::Settings, T),
) -> Choose {
    Arc::new(move |chosen| {
        let Some((_, value)) = values.iter().find(|(words, _)| words == chosen) else { return Ok(()) };
        let edit = state.book.with_untracked(|book| changed(book, |settings| set(settings, *value)));
        edit.map_or(Ok(()), |edit| state.apply(step, edit))
    })
}

fn options<T>(values: &[(String, T)]) -> Vec<(String, String)> {
    values.iter().map(|(words, _)| (words.clone(), words.clone())).collect()
}

/// What holds for the whole book.
#[component]
pub fn Settings() -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&book::Settings, AppState) -> String| {
        text(move || state.book.with(|book| show(book.settings(), state)))
    };
    let units = [System::UsCustomary, System::Metric, System::Imperial];
    let units = units.map(|units| (words::system(units).to_string(), units)).to_vec();
    let currencies: Vec<(String, Currency)> = {
        let mut by_code: Vec<(String, Currency)> = Vec::new();
        for currency in Currency::all() {
            let named = (currency.code().to_string(), currency);
            in_order::insert(&mut by_code, named, |(other, _), (code, _)| other < code);
        }
        by_code
    };
    let bases: Vec<(String, CostBasis)> =
        CostBasis::ALL.iter().map(|basis| (words::cost_basis(*basis).to_string(), *basis)).collect();
    let scale = |book: &Book| Wanted { dimensions: &[Dimension::Mass], unit: book.settings().units.weight_unit() };
    let jug = |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let places = [TaxPlace::AddedAtTheTill, TaxPlace::InThePrice];
    let places = places.map(|place| (words::tax_place(place).to_string(), place)).to_vec();
    // Whoever has others sell the juice is told what that asks for.
    let resold = move || {
        let commission = state.book.with(|book| book.settings().commission);
        (!commission.is_zero()).then(|| words::SOLD_TO_A_BUSINESS.to_string())
    };
    view! {
        <Section heading="This book">
            <div class="fields">
                <Entry
                    label="Name"
                    letters=true
                    value=of(|it, _| it.name.clone())
                    commit=fields::text("Name of the book", |book, name| changed(book, |it| it.name = name))
                />
                <Choice
                    label="Units"
                    options=options(&units)
                    value=of(|it, _| words::system(it.units).to_string())
                    choose=choose(state, "Units", units, |it, units| it.units = units)
                />
                <Choice
                    label="Currency"
                    options=options(&currencies)
                    value=of(|it, _| it.currency.to_string())
                    choose=choose(state, "Currency", currencies, |it, currency| it.currency = currency)
                />
            </div>
            <p class="about">
                "Units change only how amounts are shown and read. A currency changes the sign and digits, not the amounts."
            </p>
        </Section>
        <Section heading="Target" about=words::TARGET_MARGIN>
            <div class="fields">
                <Entry
                    label="Target margin"
                    unit="%"
                    large=true
                    value=of(|it, state| state.plain_percent(it.target))
                    commit=fields::percent("Target margin", |book, share| changed(book, |it| it.target = share))
                />
                <Choice
                    label="It must cover"
                    options=options(&bases)
                    value=of(|it, _| words::cost_basis(it.cost_basis).to_string())
                    choose=choose(state, "What the target covers", bases, |it, basis| it.cost_basis = basis)
                />
                <Entry
                    label="Prices may end in"
                    example="any"
                    note="Such as .50 .95; suggested prices are raised to the next of them."
                    letters=true
                    value=of(|it, state| {
                        it.endings.iter().map(|ending| state.plain_money(*ending)).collect::<Vec<_>>().join("  ")
                    })
                    commit=endings(state)
                />
            </div>
        </Section>
        <Section heading="Tax and fees" about="Ask whoever does your taxes which rate applies, and to which drinks.">
            <div class="fields">
                <Entry
                    label="Tax rate"
                    asks=asks(Kind::Tax, Key::Settings, "tax")
                    unit="%"
                    value=of(|it, state| state.plain_percent(it.tax.rate))
                    commit=fields::percent("Tax rate", |book, share| changed(book, |it| it.tax.rate = share))
                />
                <Choice
                    label="Where the tax stands"
                    options=options(&places)
                    value=of(|it, _| words::tax_place(it.tax.place).to_string())
                    choose=choose(state, "Where the tax stands", places, |it, place| it.tax.place = place)
                />
                <Entry
                    label="Payment fee"
                    unit="%"
                    note="Of what the customer pays."
                    value=of(|it, state| state.plain_percent(it.payment_fee.share))
                    commit=fields::percent("Payment fee", |book, share| {
                        changed(book, |it| it.payment_fee.share = share)
                    })
                />
                <Entry
                    label="And per payment"
                    value=of(|it, state| state.plain_money(it.payment_fee.fixed))
                    commit=fields::money("Payment fee", |book, money| changed(book, |it| it.payment_fee.fixed = money))
                />
                <Entry
                    label="Commission"
                    unit="%"
                    note="Kept by a carrier or a shop that sells for you."
                    value=of(|it, state| state.plain_percent(it.commission))
                    commit=fields::percent("Commission", |book, share| changed(book, |it| it.commission = share))
                />
            </div>
            {trouble(resold)}
        </Section>
        <Section
            heading="Counter"
            about="The smallest step that your scale and your jugs show. What a batch takes is rounded up to it, what a card says to the nearest. Left empty, a batch goes by 0.1 oz or 1 g, 0.1 fl oz or 1 mL, and a card says the exact amount."
        >
            <div class="fields">
                <Entry
                    label="Step of the scale"
                    value=of(|it, state| it.scale_step.map(|step| state.amount(step)).unwrap_or_default())
                    units=fields::units(scale)
                    commit=fields::optional_amount("Step of the scale", scale, |book, step| {
                        changed(book, |it| it.scale_step = step)
                    })
                />
                <Entry
                    label="Step of the jugs"
                    value=of(|it, state| it.jug_step.map(|step| state.amount(step)).unwrap_or_default())
                    units=fields::units(jug)
                    commit=fields::optional_amount("Step of the jugs", jug, |book, step| {
                        changed(book, |it| it.jug_step = step)
                    })
                />
            </div>
        </Section>
        <Section heading="Suppliers' prices" about="A price that nobody has heard for too long is marked in Buying, so that it is asked for again.">
            <div class="fields">
                <Entry
                    label="A price is old after"
                    unit="days"
                    example="never"
                    value=of(|it, state| it.price_days.map(|days| state.number(days)).unwrap_or_default())
                    commit=fields::optional_count("Days until a price is old", |book, days| {
                        changed(book, |it| it.price_days = days)
                    })
                />
            </div>
        </Section>
        <Section heading="What every drink bears">
            <div class="fields">
                <Entry
                    label="Hourly wage, all included"
                    value=of(|it, state| state.plain_money(it.wage))
                    commit=fields::money("Hourly wage", |book, money| changed(book, |it| it.wage = money))
                />
                <Entry
                    label="Overhead per drink"
                    note="Rent, power and the like, shared by the drinks you sell."
                    value=of(|it, state| state.plain_money(it.overhead))
                    commit=fields::money("Overhead per drink", |book, money| changed(book, |it| it.overhead = money))
                />
                <Entry
                    label="Made but not sold"
                    unit="%"
                    value=of(|it, state| state.plain_percent(it.unsold))
                    commit=fields::percent("Unsold share", |book, share: Share| changed(book, |it| it.unsold = share))
                />
            </div>
        </Section>
    }
}

/// Reads several endings: ".50 .95".
fn endings(state: AppState) -> Commit {
    Arc::new(move |text, session| {
        let digits = state.book.with_untracked(|book| book.settings().currency.digits());
        let endings = read_endings(text, digits, state.speaker.get_untracked().style());
        let endings = endings.map_err(|error| words::read_error(&error, ".95"))?;
        let edit = state.book.with_untracked(|book| changed(book, |it| it.endings = endings));
        edit.map_or(Ok(()), |edit| state.apply_in("Price endings", edit, Some(session)))
    })
}
