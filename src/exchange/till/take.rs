//! From rows to weeks: what can be taken in, and why the rest cannot.

use std::collections::{BTreeMap, BTreeSet};

use super::day::{DayOrder, Days, read_day};
use super::rows::{Row, Table};
use crate::book::{Book, Edit, OfferId, Record, Settings, Sold, TillColumns, Week};
use crate::drink::ledger::Ledger;
use crate::drink::sales::{Unknown, line_now, sold_in, week_so_far};
use crate::foundation::measure::{Date, Exact, Money, NumberStyle, Overflow, ReadError, read_number};

/// How a till's list is to be read.
pub struct Till<'a> {
    /// Its columns.
    pub columns: TillColumns,
    /// Which comes first where a day is written with strokes. It is `None` if the person has not
    /// said.
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
        /// The size as it stands. It is empty if none is named.
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
    /// By drink and container. It is `None` if several are called alike.
    offers: BTreeMap<(String, String), Option<OfferId>>,
    /// The drinks' names.
    drinks: BTreeSet<String>,
    /// How long these are, in bytes.
    lengths: BTreeSet<usize>,
    fold: &'a dyn Fn(&str) -> String,
}

impl<'a> Menu<'a> {
    fn of(book: &Book, fold: &'a dyn Fn(&str) -> String) -> Menu<'a> {
        let mut menu = Menu { offers: BTreeMap::new(), drinks: BTreeSet::new(), lengths: BTreeSet::new(), fold };
        for offer in book.offers() {
            let (Some(drink), Some(container)) = (book.drink(offer.drink), book.container(offer.container)) else {
                continue;
            };
            let (drink, container) = (tidy(&drink.name, fold), tidy(&container.name, fold));
            menu.lengths.insert(drink.len());
            menu.drinks.insert(drink.clone());
            let several = menu.offers.contains_key(&(drink.clone(), container.clone()));
            menu.offers.insert((drink, container), (!several).then(|| offer.id()));
        }
        menu
    }

    /// The drinks that a name begins with, and what follows them; the shortest first.
    fn drinks_in<'t>(&self, name: &'t str) -> impl DoubleEndedIterator<Item = (&'t str, &'t str)> {
        self.lengths.range(..=name.len()).filter_map(|length| {
            let (drink, rest) = name.split_at_checked(*length)?;
            self.drinks.contains(drink).then_some((drink, rest))
        })
    }

    /// The offer that a row means.
    fn find(&self, item: &str, size: &str) -> Result<OfferId, Why> {
        let (name, wanted) = (tidy(item, self.fold), tidy(size, self.fold));
        let offer = |drink: &str, container: &str| self.offers.get(&(drink.to_string(), container.to_string()));
        let mut fits = Vec::new();
        if wanted.is_empty() {
            let after = |rest: &'_ str| rest.trim_start_matches(',').trim_start().to_string();
            fits.extend(self.drinks_in(&name).filter_map(|(drink, rest)| offer(drink, &after(rest))));
        } else {
            fits.extend(offer(&name, &wanted));
        }
        match fits.as_slice() {
            [] => Err(self.unknown(item, size, &name)),
            [Some(only)] => Ok(*only),
            _ => Err(Why::SeveralItems(item.trim().to_string())),
        }
    }

    fn unknown(&self, item: &str, size: &str, name: &str) -> Why {
        let ends = |rest: &str| rest.is_empty() || (size.trim().is_empty() && rest.starts_with([',', ' ']));
        let Some((drink, _)) = self.drinks_in(name).rev().find(|(_, rest)| ends(rest)) else {
            return Why::UnknownItem(item.trim().to_string());
        };
        let letters = drink.chars().count();
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

/// What of a till's list can be taken in. Returns `None` if the list has not these columns.
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
    let mut weeks: BTreeMap<Date, WeekOfRows> = BTreeMap::new();
    let (mut good, mut bad) = (0_usize, Vec::new());
    for row in &table.rows {
        let read = read_row(row, &places, &menu, order, till).and_then(|(monday, offer, units)| {
            weeks.entry(monday).or_insert_with(|| WeekOfRows::of(book, monday)).add(ledger, offer, units)
        });
        match read {
            Ok(()) => good = good.saturating_add(1),
            Err(why) => bad.push(BadRow { line: row.line, text: row.cells.join(" | "), why }),
        }
    }
    let (mut taken, mut edits) = (Vec::new(), Vec::new());
    for of_rows in weeks.into_values().filter(|week| !week.sums.is_empty()) {
        taken.push(of_rows.taken(book)?);
        edits.push(Edit::Put(Record::Week(of_rows.week())));
    }
    let settings = Settings { till: Some(till.columns.clone()), ..book.settings().clone() };
    if good > 0 && settings.till != book.settings().till {
        edits.push(Edit::Put(Record::Settings(Box::new(settings))));
    }
    Ok(Some(Taken { weeks: taken, good, bad, edit: Edit::Together(edits) }))
}

/// A week as it is written down, and what the rows so far say of it.
struct WeekOfRows {
    week: Week,
    /// The week's own lines, as if none were sold.
    written: BTreeMap<OfferId, Sold>,
    /// How many the rows add up to.
    sums: BTreeMap<OfferId, Sold>,
}

impl WeekOfRows {
    fn of(book: &Book, monday: Date) -> WeekOfRows {
        let week = week_so_far(book, monday);
        let written = week.sold.iter().map(|sold| (sold.offer(), Sold { units: Exact::ZERO, ..*sold })).collect();
        WeekOfRows { week, written, sums: BTreeMap::new() }
    }

    /// Adds a row. A line keeps what one contributed when it was first written.
    fn add(&mut self, ledger: &Ledger, offer: OfferId, units: Exact) -> Result<(), Why> {
        let line = match self.sums.get(&offer).or(self.written.get(&offer)) {
            Some(line) => *line,
            None => line_now(ledger, offer).map_err(Why::Unknown)?,
        };
        let units = line.units.plus(units).ok().filter(|sum| sum.keeps()).ok_or(Why::TooLarge)?;
        self.sums.insert(offer, Sold { units, ..line });
        Ok(())
    }

    /// The lines of the rows, by offer.
    fn lines(&self) -> impl Iterator<Item = Sold> {
        self.sums.values().copied()
    }

    fn taken(&self, book: &Book) -> Result<TakenWeek, Overflow> {
        let monday = self.week.monday;
        let (units, contribution) = sold_in(&Week { monday, sold: self.lines().collect() })?;
        Ok(TakenWeek { monday, units, contribution, known: book.week(monday).is_some() })
    }

    /// The week with these lines in the place of its own of the same offers.
    fn week(self) -> Week {
        let mut sold: Vec<Sold> = self.lines().collect();
        sold.extend(self.week.sold.iter().filter(|line| !self.sums.contains_key(&line.offer())));
        sold.sort_by_key(Sold::offer);
        Week { monday: self.week.monday, sold }
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
