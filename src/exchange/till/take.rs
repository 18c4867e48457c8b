//! From rows to weeks: what can be taken in, and why the rest cannot.

use super::day::{DayOrder, Days, read_day};
use super::rows::{Row, Table};
use crate::book::{Book, Edit, OfferId, Record, Settings, TillColumns, Week};
use crate::ledger::Ledger;
use crate::measure::{Date, Exact, Money, NumberStyle, Overflow, ReadError, read_number};
use crate::sales::{Unknown, sold_in, week_so_far, write_line};

/// How a till's list is to be read.
pub struct Till<'a> {
    /// Its columns.
    pub columns: TillColumns,
    /// Which comes first where a day is written with strokes; none where the person has not said.
    pub order: Option<DayOrder>,
    /// The Monday of the week that rows without a day belong to.
    pub week: Date,
    /// How numbers are written.
    pub style: &'a NumberStyle,
    /// Makes letters of either case alike.
    pub fold: &'a dyn Fn(&str) -> String,
}

/// What would be taken in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Taken {
    /// The weeks, the earliest first.
    pub weeks: Vec<TakenWeek>,
    /// Rows taken in.
    pub good: usize,
    /// Rows left out, in their order.
    pub bad: Vec<BadRow>,
    /// The one edit that takes the good rows in and remembers the columns. A size that such a
    /// week already has gets the new number in place of its own.
    pub edit: Edit,
}

/// A week that would be written down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TakenWeek {
    /// Its Monday.
    pub monday: Date,
    /// Drinks in the list.
    pub units: Exact,
    /// What they contributed.
    pub contribution: Money,
    /// Whether something of this week is already written down.
    pub known: bool,
}

/// A row that is left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BadRow {
    /// The line that it begins on, from 1.
    pub line: usize,
    /// Its cells, as they stand.
    pub text: String,
    /// Why.
    pub why: Why,
}

/// Why a row is left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// It has fewer cells than the columns ask for.
    TooShort,
    /// No drink is called that.
    UnknownItem(String),
    /// The drink is there, but no size of that name, or none is named.
    UnknownSize {
        /// The drink's name.
        drink: String,
        /// The size as it stands; empty where none is named.
        size: String,
    },
    /// More than one offer is called that.
    SeveralItems(String),
    /// How many cannot be read.
    Units(ReadError),
    /// It is no day.
    Day(String),
    /// Day and month could stand in either order, and the person has not said which.
    DayOpen(String),
    /// It is not known what one contributes.
    Unknown(Unknown),
    /// The sum of its week cannot be kept.
    TooLarge,
}

/// The offers by the names that a till may use for them.
struct Menu<'a> {
    offers: Vec<(String, String, OfferId)>,
    fold: &'a dyn Fn(&str) -> String,
}

impl<'a> Menu<'a> {
    fn of(book: &Book, fold: &'a dyn Fn(&str) -> String) -> Menu<'a> {
        let named = |id: OfferId| {
            let drink = book.drink(id.drink)?;
            let container = book.container(id.container)?;
            Some((tidy(&drink.name, fold), tidy(&container.name, fold), id))
        };
        Menu { offers: book.offers().filter_map(|offer| named(offer.id())).collect(), fold }
    }

    /// The offer that a row means.
    fn find(&self, item: &str, size: &str) -> Result<OfferId, Why> {
        let (name, wanted) = (tidy(item, self.fold), tidy(size, self.fold));
        let both = |drink: &str, container: &str| match name.strip_prefix(drink) {
            Some(rest) if wanted.is_empty() => rest.trim_start_matches(',').trim_start() == container,
            Some(rest) => rest.is_empty() && wanted == container,
            None => false,
        };
        let mut fits = self.offers.iter().filter(|(drink, container, _)| both(drink, container)).map(|(_, _, id)| *id);
        match (fits.next(), fits.next()) {
            (Some(only), None) => Ok(only),
            (Some(_), Some(_)) => Err(Why::SeveralItems(item.trim().to_string())),
            (None, _) => Err(self.unknown(item, size, &name)),
        }
    }

    fn unknown(&self, item: &str, size: &str, name: &str) -> Why {
        let begins = |drink: &str| {
            let rest = name.strip_prefix(drink);
            rest.is_some_and(|rest| rest.is_empty() || (size.trim().is_empty() && rest.starts_with([',', ' '])))
        };
        let longest =
            self.offers.iter().filter(|(drink, _, _)| begins(drink)).map(|(drink, _, _)| drink.chars().count());
        let Some(letters) = longest.max() else { return Why::UnknownItem(item.trim().to_string()) };
        let item = one_blank(item);
        let rest: String = item.chars().skip(letters).collect();
        let size = if size.trim().is_empty() { rest.trim_start_matches([',', ' ']) } else { size.trim() };
        Why::UnknownSize { drink: item.chars().take(letters).collect(), size: size.to_string() }
    }
}

fn one_blank(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn tidy(text: &str, fold: &dyn Fn(&str) -> String) -> String {
    fold(&one_blank(text))
}

/// Where the columns are.
struct Places {
    item: usize,
    size: Option<usize>,
    units: usize,
    day: Option<usize>,
}

impl Places {
    fn of(table: &Table, columns: &TillColumns) -> Option<Places> {
        let place = |name: &String| table.heads.iter().position(|head| head == name);
        let named = |name: &Option<String>| match name {
            Some(name) => place(name).map(Some),
            None => Some(None),
        };
        Some(Places {
            item: place(&columns.item)?,
            size: named(&columns.size)?,
            units: place(&columns.units)?,
            day: named(&columns.day)?,
        })
    }
}

impl Table {
    /// Whether it has all of these columns.
    pub fn has(&self, columns: &TillColumns) -> bool {
        Places::of(self, columns).is_some()
    }

    /// What the days of a column say of their order.
    pub fn days(&self, column: &str) -> Days {
        let place = self.heads.iter().position(|head| head == column);
        Days::of(self.rows.iter().filter_map(|row| row.cells.get(place?).map(String::as_str)))
    }
}

/// What of a till's list can be taken in. None where the list has not these columns.
///
/// # Errors
/// An [`Overflow`] where the numbers leave the range that can be computed.
pub fn take(book: &Book, ledger: &Ledger, table: &Table, till: &Till) -> Result<Option<Taken>, Overflow> {
    let Some(places) = Places::of(table, &till.columns) else { return Ok(None) };
    let menu = Menu::of(book, till.fold);
    let order = match till.columns.day.as_ref().map(|column| table.days(column)) {
        Some(Days::Clear(order)) => Some(order),
        Some(Days::Open) | None => till.order,
    };
    let mut weeks: Vec<WeekOfRows> = Vec::new();
    let (mut good, mut bad) = (0_usize, Vec::new());
    for row in &table.rows {
        let read = read_row(row, &places, &menu, order, till).and_then(|(monday, offer, units)| {
            let place = weeks.partition_point(|before| before.week.monday < monday);
            if weeks.get(place).is_none_or(|week| week.week.monday != monday) {
                weeks.insert(place, WeekOfRows { week: week_so_far(book, monday), named: Vec::new() });
            }
            weeks.get_mut(place).map_or(Ok(()), |week| week.add(ledger, offer, units))
        });
        match read {
            Ok(()) => good = good.saturating_add(1),
            Err(why) => bad.push(BadRow { line: row.line, text: row.cells.join(" | "), why }),
        }
    }
    let (mut taken, mut edits) = (Vec::new(), Vec::new());
    for of_rows in weeks.into_iter().filter(|week| !week.named.is_empty()) {
        taken.push(of_rows.taken(book)?);
        edits.push(Edit::Put(Record::Week(of_rows.week)));
    }
    let settings = Settings { till: Some(till.columns.clone()), ..book.settings().clone() };
    if good > 0 && settings.till != book.settings().till {
        edits.push(Edit::Put(Record::Settings(Box::new(settings))));
    }
    Ok(Some(Taken { weeks: taken, good, bad, edit: Edit::Together(edits) }))
}

/// A week with what the rows so far say of it, and the offers that they name, in order.
struct WeekOfRows {
    week: Week,
    named: Vec<OfferId>,
}

impl WeekOfRows {
    fn add(&mut self, ledger: &Ledger, offer: OfferId, units: Exact) -> Result<(), Why> {
        let new = self.named.binary_search(&offer).err();
        let so_far = self.week.sold.iter().find(|sold| new.is_none() && sold.offer() == offer);
        let so_far = so_far.map_or(Exact::ZERO, |sold| sold.units);
        let sum = so_far.plus(units).ok().filter(|sum| sum.keeps()).ok_or(Why::TooLarge)?;
        write_line(&mut self.week, ledger, offer, Some(sum)).map_err(Why::Unknown)?;
        if let Some(place) = new {
            self.named.insert(place, offer);
        }
        Ok(())
    }

    fn taken(&self, book: &Book) -> Result<TakenWeek, Overflow> {
        let mut of_rows = Week { monday: self.week.monday, sold: self.week.sold.clone() };
        of_rows.sold.retain(|sold| self.named.contains(&sold.offer()));
        let (units, contribution) = sold_in(&of_rows)?;
        let known = book.week(self.week.monday).is_some();
        Ok(TakenWeek { monday: self.week.monday, units, contribution, known })
    }
}

fn read_row(
    row: &Row,
    places: &Places,
    menu: &Menu,
    order: Option<DayOrder>,
    till: &Till,
) -> Result<(Date, OfferId, Exact), Why> {
    let cell = |place: usize| row.cells.get(place).map(String::as_str).ok_or(Why::TooShort);
    let size = places.size.map_or(Ok(""), cell)?;
    let (item, units) = (cell(places.item)?, cell(places.units)?);
    let day = places.day.map(cell).transpose()?;
    let offer = menu.find(item, size)?;
    let units = read_number(units, till.style).map_err(Why::Units)?;
    let monday = match day {
        None => till.week,
        Some(text) => monday_of(text, order)?,
    };
    Ok((monday, offer, units))
}

fn monday_of(text: &str, order: Option<DayOrder>) -> Result<Date, Why> {
    let read = |order| read_day(text, order).map(Date::monday);
    let day_first = read(DayOrder::DayFirst);
    let found = match order {
        Some(order) => read(order),
        None if day_first == read(DayOrder::MonthFirst) => day_first,
        None => return Err(Why::DayOpen(text.trim().to_string())),
    };
    found.ok_or_else(|| Why::Day(text.trim().to_string()))
}
