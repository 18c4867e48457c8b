//! Every computed offer as a row of comma-separated values.

use super::csv::Csv;
use crate::book::{Book, OfferId, Part};
use crate::drink::fill::fill;
use crate::drink::ledger::{Ledger, OfferError, OfferStatus, Priced};
use crate::drink::price::{Asked, PriceError};
use crate::foundation::in_order;
use crate::foundation::measure::{Money, Share, Volume};

/// What stands in a column: volume in milliliters; money in the major unit of the book's currency;
/// margins and the target as fractions of the price before tax, on the costs that the margin is
/// figured on; sales in drinks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// The drink's name.
    Drink,
    /// The container's name.
    Container,
    /// The fill.
    Fill,
    /// A part of the cost.
    Part(Part),
    /// The full cost.
    Cost,
    /// The suggested price.
    Suggested,
    /// The price that is asked.
    Price,
    /// The same without tax.
    PriceWithoutTax,
    /// What is paid of it on average.
    Revenue,
    /// The rate of the tax.
    TaxRate,
    /// The tax in what the customer pays.
    Tax,
    /// The deposit for the container.
    Deposit,
    /// Card fee and commission.
    Fees,
    /// What one drink contributes.
    Contribution,
    /// The margin.
    Margin,
    /// The target.
    Target,
    /// How many are sold in a week.
    Weekly,
    /// Where the offer stands.
    Status,
    /// Why figures are lacking.
    Reason,
}

impl Column {
    /// The columns, in their order.
    pub fn all() -> impl Iterator<Item = Column> {
        let first = [Column::Drink, Column::Container, Column::Fill];
        let last = [
            Column::Cost,
            Column::Suggested,
            Column::Price,
            Column::PriceWithoutTax,
            Column::Revenue,
            Column::TaxRate,
            Column::Tax,
            Column::Deposit,
            Column::Fees,
            Column::Contribution,
            Column::Margin,
            Column::Target,
            Column::Weekly,
            Column::Status,
            Column::Reason,
        ];
        first.into_iter().chain(Part::ALL.map(Column::Part)).chain(last)
    }
}

/// How the file says what is no number.
#[derive(Clone, Copy)]
pub struct Said<'a> {
    /// The head of a column, with its unit.
    pub head: &'a dyn Fn(Column) -> String,
    /// Where an offer stands.
    pub status: &'a dyn Fn(OfferStatus) -> String,
    /// Why figures are lacking.
    pub reason: &'a dyn Fn(Lack) -> String,
}

/// Why a row lacks figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lack<'a> {
    /// The offer cannot be computed.
    Offer(&'a OfferError),
    /// No price can be suggested.
    Suggestion(&'a PriceError),
}

/// The offers of `ledger`, a row each, by drink's name, then fill, then id. Numbers are plain
/// and unrounded.
pub fn write_offers(book: &Book, ledger: &Ledger, said: Said) -> String {
    let mut rows: Vec<Row> = Vec::new();
    for (offer, result) in ledger.offers() {
        in_order::insert(&mut rows, Row::of(book, offer, result), |other, row| other.order() < row.order());
    }
    let mut csv = Csv::default();
    for column in Column::all() {
        csv.text(&(said.head)(column));
    }
    csv.end_row();
    for row in &rows {
        row.write(book, said, &mut csv);
    }
    csv.into_text()
}

struct Row<'a> {
    drink: &'a str,
    container: &'a str,
    fill: Option<Volume>,
    offer: OfferId,
    result: &'a Result<Priced, OfferError>,
}

impl<'a> Row<'a> {
    fn of(book: &'a Book, offer: OfferId, result: &'a Result<Priced, OfferError>) -> Row<'a> {
        let container = book.container(offer.container);
        Row {
            drink: book.drink(offer.drink).map_or("", |drink| drink.name.as_str()),
            container: container.map_or("", |container| container.name.as_str()),
            fill: container.and_then(|container| fill(container).ok()).map(|fill| fill.volume),
            offer,
            result,
        }
    }

    /// Sizes without a fill come after those with one.
    fn order(&self) -> (&str, bool, Option<Volume>, OfferId) {
        (self.drink, self.fill.is_none(), self.fill, self.offer)
    }

    fn write(&self, book: &Book, said: Said, csv: &mut Csv) {
        let priced = self.result.as_ref().ok();
        let asked = priced.and_then(|priced| priced.asked);
        let offer = book.offer(self.offer);
        let money = |csv: &mut Csv, money: Option<Money>| csv.number(money.map(Money::major));
        csv.text(self.drink);
        csv.text(self.container);
        csv.number(self.fill.map(Volume::millilitres));
        for part in Part::ALL {
            money(csv, priced.and_then(|priced| priced.cost.part(part).ok()));
        }
        money(csv, priced.map(|priced| priced.cost.total()));
        money(csv, priced.and_then(|priced| priced.suggestion.ok()).map(|suggestion| suggestion.menu));
        money(csv, offer.and_then(|offer| offer.price));
        money(csv, asked.map(|asked| asked.without_tax));
        money(csv, asked.map(|asked| asked.revenue));
        csv.number(priced.map(|priced| priced.terms.tax.rate).map(Share::fraction));
        money(csv, asked.and_then(tax));
        money(csv, priced.map(|priced| priced.terms.deposit));
        money(csv, asked.map(|asked| asked.fees));
        money(csv, asked.map(|asked| asked.contribution));
        csv.number(asked.map(|asked| asked.margin.fraction()));
        csv.number(priced.map(|priced| priced.terms.target).map(Share::fraction));
        csv.number(offer.and_then(|offer| offer.weekly));
        csv.text(&(said.status)(OfferStatus::from(self.result)));
        let lack = match self.result {
            Err(error) => Some(Lack::Offer(error)),
            Ok(priced) => priced.suggestion.as_ref().err().map(Lack::Suggestion),
        };
        csv.text(&lack.map(said.reason).unwrap_or_default());
        csv.end_row();
    }
}

/// The tax in what the customer pays.
fn tax(asked: Asked) -> Option<Money> {
    asked.customer_pays.minus(asked.without_tax).ok()
}
