//! Every computed offer as a row of comma-separated values.

use super::csv::Csv;
use crate::book::{Book, OfferId};
use crate::cost::Part;
use crate::fill::fill;
use crate::ledger::{Ledger, Priced, Standing, Trouble};
use crate::measure::{Money, Volume};

/// The heads of the columns. Volume in millilitres; money in the major unit of the row's
/// currency; `margin` as a fraction of the price without tax, on the terms that the book's
/// target covers.
pub const OFFER_COLUMNS: [&str; 17] = [
    "drink",
    "container",
    "fill_ml",
    "currency",
    "ingredients",
    "container_set",
    "labour",
    "toll",
    "overhead",
    "unsold",
    "cost",
    "suggested_price",
    "price_asked",
    "contribution",
    "margin",
    "standing",
    "reason",
];

/// The offers of `ledger`, a row each, by drink's name, then fill, then id. Numbers are plain
/// and unrounded; `reason` puts into words why an offer cannot be computed.
pub fn write_offers(book: &Book, ledger: &Ledger, reason: impl Fn(&Trouble) -> String) -> String {
    let mut rows: Vec<Row> = Vec::new();
    for (offer, result) in ledger.offers() {
        let row = Row::of(book, offer, result);
        let place = rows.partition_point(|before| before.order() < row.order());
        rows.insert(place, row);
    }
    let mut csv = Csv::default();
    for head in OFFER_COLUMNS {
        csv.text(head);
    }
    csv.end_row();
    for row in &rows {
        row.write(book, &reason, &mut csv);
    }
    csv.into_text()
}

struct Row<'a> {
    drink: &'a str,
    container: &'a str,
    fill: Option<Volume>,
    offer: OfferId,
    result: &'a Result<Priced, Trouble>,
}

impl<'a> Row<'a> {
    fn of(book: &'a Book, offer: OfferId, result: &'a Result<Priced, Trouble>) -> Row<'a> {
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

    fn write(&self, book: &Book, reason: &impl Fn(&Trouble) -> String, csv: &mut Csv) {
        let priced = self.result.as_ref().ok();
        let asked = priced.and_then(|priced| priced.asked);
        csv.text(self.drink);
        csv.text(self.container);
        csv.number(self.fill.map(Volume::millilitres));
        csv.text(book.settings().currency.code());
        for part in Part::ALL {
            csv.number(priced.and_then(|priced| priced.cost.part(part).ok()).map(Money::major));
        }
        csv.number(priced.and_then(|priced| priced.cost.total().ok()).map(Money::major));
        csv.number(priced.and_then(|priced| priced.suggestion.ok()).map(|suggestion| suggestion.menu.major()));
        csv.number(book.offer(self.offer).and_then(|offer| offer.price).map(Money::major));
        csv.number(asked.map(|asked| asked.contribution.major()));
        csv.number(asked.map(|asked| asked.margin.fraction()));
        csv.text(standing(Standing::from(self.result)));
        csv.text(&self.result.as_ref().err().map(reason).unwrap_or_default());
        csv.end_row();
    }
}

/// Where an offer stands, as the file says it; part of the format.
fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::CannotCompute => "cannot be computed",
        Standing::UnderTarget => "under target",
        Standing::WithoutPrice => "without a price",
        Standing::OnTarget => "on target",
    }
}
