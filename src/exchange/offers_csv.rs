//! Every computed offer as a row of comma-separated values.

use super::csv::Csv;
use crate::book::{Book, OfferId, Part};
use crate::drink::fill::fill;
use crate::drink::ledger::{Ledger, OfferError, OfferStatus, Priced};
use crate::drink::price::{Asked, PriceError};
use crate::foundation::in_order;
use crate::foundation::measure::{Currency, Money, Share, Volume};

/// The heads of the columns, with their units: volume in milliliters; money in the major unit of
/// the book's currency; margins and the target as fractions of the price before tax, on the terms
/// that the target covers; sales in drinks.
pub fn offer_columns(currency: Currency) -> Vec<String> {
    let money = |head: &str| format!("{head} ({})", currency.code());
    let plain = str::to_string;
    let mut columns = vec![plain("Drink"), plain("Container"), plain("Fill (mL)")];
    columns.extend(Part::ALL.map(|part| money(part.column())));
    columns.extend([
        money("Full cost"),
        money("Suggested price"),
        money("Your price"),
        money("Price before tax"),
        money("Sales tax"),
        money("Card fee and commission"),
        money("Profit per drink"),
        plain("Margin (fraction)"),
        plain("Target margin (fraction)"),
        plain("Sold per week (drinks)"),
        plain("Standing"),
        plain("Reason"),
    ]);
    columns
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
/// and unrounded; `reason` puts into words why figures are lacking.
pub fn write_offers(book: &Book, ledger: &Ledger, reason: &dyn Fn(Lack) -> String) -> String {
    let mut rows: Vec<Row> = Vec::new();
    for (offer, result) in ledger.offers() {
        in_order::insert(&mut rows, Row::of(book, offer, result), |other, row| other.order() < row.order());
    }
    let mut csv = Csv::default();
    for head in offer_columns(book.settings().currency) {
        csv.text(&head);
    }
    csv.end_row();
    for row in &rows {
        row.write(book, reason, &mut csv);
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

    fn write(&self, book: &Book, reason: &dyn Fn(Lack) -> String, csv: &mut Csv) {
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
        money(csv, priced.and_then(|priced| priced.cost.total().ok()));
        money(csv, priced.and_then(|priced| priced.suggestion.ok()).map(|suggestion| suggestion.menu));
        money(csv, offer.and_then(|offer| offer.price));
        money(csv, asked.map(|asked| asked.without_tax));
        money(csv, asked.and_then(tax));
        money(csv, asked.map(|asked| asked.fees));
        money(csv, asked.map(|asked| asked.contribution));
        csv.number(asked.map(|asked| asked.margin.fraction()));
        csv.number(priced.map(|priced| priced.terms.target).map(Share::fraction));
        csv.number(offer.and_then(|offer| offer.weekly));
        csv.text(status(OfferStatus::from(self.result)));
        let lack = match self.result {
            Err(error) => Some(Lack::Offer(error)),
            Ok(priced) => priced.suggestion.as_ref().err().map(Lack::Suggestion),
        };
        csv.text(&lack.map(reason).unwrap_or_default());
        csv.end_row();
    }
}

/// The tax in what the customer pays.
fn tax(asked: Asked) -> Option<Money> {
    asked.customer_pays.minus(asked.without_tax).ok()
}

/// Where an offer stands, as the file says it; part of the format.
fn status(status: OfferStatus) -> &'static str {
    match status {
        OfferStatus::CannotCompute => "cannot be computed",
        OfferStatus::UnderTarget => "under target",
        OfferStatus::WithoutPrice => "without a price",
        OfferStatus::OnTarget => "on target",
    }
}
