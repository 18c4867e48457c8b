//! Weeks from a till's list of sales.

use std::sync::Arc;

use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;

use crate::book::TillColumns;
use crate::exchange::{DayOrder, Days, Table, Taken, TakenWeek, Till, TillError, read_table, take};
use crate::foundation::measure::{Date, Exact, Overflow};
use crate::say;
use crate::ui::fields::Choice;
use crate::ui::files::{bytes_of, is_too_large, unread};
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::order::lower_case;
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// Weeks, and rows left out, that are shown at once.
const SHOWN: usize = 20;

/// Weeks back that a list without days may be of.
const WEEKS_BACK: i32 = 12;

/// A file that was read, and what the person says of it.
#[derive(Clone, Copy)]
struct Reading {
    table: RwSignal<Option<Table>>,
    item: RwSignal<String>,
    size: RwSignal<String>,
    units: RwSignal<String>,
    day: RwSignal<String>,
    order: RwSignal<String>,
    week: RwSignal<String>,
}

impl Reading {
    fn new() -> Reading {
        let empty = || RwSignal::new(String::new());
        let week = RwSignal::new(today().monday().to_string());
        Reading {
            table: RwSignal::new(None),
            item: empty(),
            size: empty(),
            units: empty(),
            day: empty(),
            order: empty(),
            week,
        }
    }

    /// Begins with a table, its columns as the last list had them where it has the same heads.
    fn begin(self, table: Table, known: Option<TillColumns>) {
        let known = known.filter(|known| table.has(known));
        let part =
            |read: fn(&TillColumns) -> Option<&String>| known.as_ref().and_then(read).cloned().unwrap_or_default();
        self.item.set(part(|known| Some(&known.item)));
        self.size.set(part(|known| known.size.as_ref()));
        self.units.set(part(|known| Some(&known.units)));
        self.day.set(part(|known| known.day.as_ref()));
        self.order.set(String::new());
        self.table.set(Some(table));
    }

    /// The columns, as soon as the needed ones are chosen.
    fn columns(self) -> Option<TillColumns> {
        let chosen = |signal: RwSignal<String>| Some(signal.get()).filter(|name| !name.is_empty());
        let (item, units) = (chosen(self.item)?, chosen(self.units)?);
        Some(TillColumns { item, size: chosen(self.size), units, day: chosen(self.day) })
    }

    /// Whether the person must say which number of a day is the month.
    fn open_order(self) -> bool {
        let day = self.day.get();
        !day.is_empty() && self.table.with(|table| table.as_ref().is_some_and(|table| table.days(&day) == Days::Open))
    }

    /// What can be taken in. Returns `None` while columns are missing.
    fn taken(self, state: AppState) -> Option<Result<Taken, Overflow>> {
        let columns = self.columns()?;
        let order = match self.order.get().as_str() {
            "day" => Some(DayOrder::DayFirst),
            "month" => Some(DayOrder::MonthFirst),
            _ => None,
        };
        let week = Date::from_text(&self.week.get()).unwrap_or_else(|| today().monday());
        let speaker = state.speaker.get();
        let till = Till { columns, order, week, style: speaker.style(), fold: &lower_case };
        let taken = self.table.with(|table| {
            let table = table.as_ref()?;
            Some(state.book.with(|book| state.ledger.with(|ledger| take(book, ledger, table, &till))))
        });
        taken.and_then(Result::transpose)
    }
}

/// Takes weeks in from a till's list.
#[component]
pub fn FromTill() -> impl IntoView {
    let state = AppState::here();
    let reading = Reading::new();
    let refused = RwSignal::new(None::<String>);
    let done = RwSignal::new(String::new());
    let chosen = move |event: ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else { return };
        // The same file can be chosen again only if the field is empty.
        input.set_value("");
        done.set(String::new());
        if is_too_large(&file) {
            refused.set(Some(words::till_error(TillError::TooLarge)));
            return;
        }
        spawn_local(async move {
            let read = match bytes_of(&file).await {
                Some(bytes) => read_table(&bytes).map_err(words::till_error),
                None => Err(unread().to_string()),
            };
            refused.set(read.as_ref().err().cloned());
            match read {
                Ok(table) => reading.begin(table, state.book.with_untracked(|book| book.settings().till.clone())),
                Err(_) => reading.table.set(None),
            }
        });
    };
    let error = text(move || refused.get().unwrap_or_default());
    view! {
        <Fold name=say!(sales::register_sales) figure=Signal::stored(String::new())>
            <p class="about">{say!(sales::about_register_sales)}</p>
            <div class="entry">
                <label for="till-file">{say!(sales::sales_file)}</label>
                <div class="entry-box">
                    <input id="till-file" aria-describedby="till-error" type="file" accept=".csv,.txt,.tsv,text/csv" on:change=chosen />
                </div>
                <p class="entry-error" id="till-error" role="status">{error}</p>
            </div>
            {when(move || reading.table.with(Option::is_some), move || view! { <Columns reading done /> }.into_any())}
            <p role="status">{done}</p>
        </Fold>
    }
}

/// A list to choose from that writes into a signal.
fn choice(label: &'static str, into: RwSignal<String>, options: Signal<Vec<(String, String)>>) -> AnyView {
    let choose = Arc::new(move |value: &str| {
        into.set(value.to_string());
        Ok(())
    });
    view! { <Choice label=label options=options value=into choose=choose /> }.into_any()
}

fn pair(value: &str, words: &str) -> (String, String) {
    (value.to_string(), words.to_string())
}

/// A column by its head, or by its place where it has none.
fn named(state: AppState, place: usize, head: String) -> (String, String) {
    let said = match head.strip_prefix('#') {
        Some(own) if own == place.to_string() => say!(sales::column_number, number = number(state, place)),
        _ => head.clone(),
    };
    (head, said)
}

fn number(state: AppState, count: usize) -> String {
    state.number(Exact::from(u32::try_from(count).unwrap_or(u32::MAX)))
}

/// The columns, what comes of them, and taking it in.
#[component]
fn Columns(reading: Reading, done: RwSignal<String>) -> impl IntoView {
    let state = AppState::here();
    let heads = move |first: &'static str| {
        Signal::derive(move || {
            let heads = reading.table.with(|table| table.as_ref().map(|table| table.heads.clone()));
            let heads = (1_usize..).zip(heads.unwrap_or_default()).map(|(place, head)| named(state, place, head));
            std::iter::once(pair("", first)).chain(heads).collect()
        })
    };
    let orders = Signal::stored(vec![
        pair("", say!(sales::choose_date_order)),
        pair("day", say!(sales::day_first)),
        pair("month", say!(sales::month_first)),
    ]);
    let now = today().monday();
    let weeks = (0..=WEEKS_BACK).map(|back| now.plus_weeks(back.saturating_neg()));
    let weeks = Signal::stored(weeks.map(|monday| (monday.to_string(), words::week(monday))).collect::<Vec<_>>());
    let taken = Memo::new(move |_| reading.taken(state));
    let refused = RwSignal::new(None::<String>);
    let adopt = move || {
        let Some(Ok(found)) = taken.get_untracked() else { return };
        match state.apply(say!(sales::import_sales), found.edit) {
            Ok(()) => {
                refused.set(None);
                done.set(words::taken_in(found.good, found.bad.len()));
                reading.table.set(None);
            }
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    let preview = move || match taken.get() {
        None => view! { <p class="hollow">{say!(sales::choose_columns)}</p> }.into_any(),
        Some(Err(over)) => view! { <p class="trouble">{words::overflow(over)}</p> }.into_any(),
        Some(Ok(found)) => preview(state, &found),
    };
    let some = move || taken.with(|taken| matches!(taken, Some(Ok(taken)) if taken.good > 0));
    let button = move || {
        view! {
            <button class="main" on:click=press(adopt)>
                {say!(sales::import_sales)}
            </button>
        }
        .into_any()
    };
    view! {
        <div class="teach">
            <h3>{say!(sales::match_columns)}</h3>
            <div class="fields">
                {choice(say!(sales::column_drink), reading.item, heads(say!(sales::choose_column)))}
                {choice(say!(sales::column_size), reading.size, heads(say!(sales::size_in_drink_column)))}
                {choice(say!(sales::column_quantity), reading.units, heads(say!(sales::choose_column)))}
                {choice(say!(sales::column_date), reading.day, heads(say!(sales::one_week_only)))}
                {when(move || reading.day.with(String::is_empty), move || choice(say!(sales::which_week), reading.week, weeks))}
                {when(move || reading.open_order(), move || choice(say!(sales::date_order), reading.order, orders))}
            </div>
            {live(preview)}
            {trouble(move || refused.get())}
            <p class="actions">
                {when(some, button)}
                <button class="quiet" on:click=press(move || reading.table.set(None))>
                    {say!(first::cancel)}
                </button>
            </p>
        </div>
    }
}

/// What would be taken in and what not.
fn preview(state: AppState, found: &Taken) -> AnyView {
    let week = |week: &TakenWeek| {
        let (day, drinks) = (words::day(week.monday), state.speaker.get().counted(week.units));
        let profit = state.money(week.contribution);
        let said = if week.known {
            say!(sales::week_to_replace, day = day, drinks = drinks, profit = profit)
        } else {
            say!(sales::week_to_import, day = day, drinks = drinks, profit = profit)
        };
        view! { <li>{said}</li> }
    };
    let weeks = found.weeks.iter().take(SHOWN).map(week).collect_view();
    let more = |all| more(state, all);
    let more_weeks = more(found.weeks.len());
    let bad =
        state.book.with(|book| found.bad.iter().take(SHOWN).map(|row| words::bad_row(row, book)).collect::<Vec<_>>());
    let bad = bad.into_iter().map(|row| view! { <li>{row}</li> }).collect_view();
    view! {
        <div role="status">
            <h3>{words::to_take_in(found.good, found.bad.len())}</h3>
            <ul class="till-weeks">{weeks}</ul>
            <p class="soft">{more_weeks}</p>
            <ul class="till-bad">{bad}</ul>
            <p class="soft">{more(found.bad.len())}</p>
        </div>
    }
    .into_any()
}

/// How many more there are than are shown. Returns an empty text if all are.
fn more(state: AppState, all: usize) -> String {
    match all.saturating_sub(SHOWN) {
        0 => String::new(),
        more => say!(sales::more_not_shown, count = number(state, more)),
    }
}
