//! The computed offers as CSV: the heads of its columns, and what is lacking.

use super::offer_errors::{offer_error, price_error};
use super::{offer_status, part, sales_tax};
use crate::book::Book;
use crate::drink::label::Law;
use crate::drink::ledger::Ledger;
use crate::exchange::{Column, Lack, Said, write_offers};
use crate::foundation::measure::Currency;
use crate::say;

/// The offers of a book as CSV: what the app saves and `cargo dev price` prints.
pub fn offers_csv(book: &Book, ledger: &Ledger) -> String {
    let said = Said {
        head: &|column| offers_column(column, book.settings().currency, Law::of(book.settings())),
        status: &|status| offer_status(status).to_string(),
        reason: &|lack| match lack {
            Lack::Offer(error) => offer_error(error, book),
            Lack::Suggestion(error) => price_error(error),
        },
    };
    write_offers(book, ledger, said)
}

/// The head of a column, with its unit.
pub fn offers_column(column: Column, currency: Currency, law: Law) -> String {
    let what = match column {
        Column::Drink => return say!(sales::csv_drink).to_string(),
        Column::Container => return say!(sales::csv_container).to_string(),
        Column::Fill => return say!(sales::csv_fill).to_string(),
        Column::TaxRate => return say!(sales::csv_tax_rate).to_string(),
        Column::Margin => return say!(sales::csv_margin).to_string(),
        Column::Target => return say!(sales::csv_target_margin).to_string(),
        Column::Weekly => return say!(common::drinks_sold_per_week).to_string(),
        Column::Status => return say!(sales::csv_status).to_string(),
        Column::Reason => return say!(sales::csv_reason).to_string(),
        Column::Part(of) => part(of),
        Column::Cost => say!(common::full_cost),
        Column::Suggested => say!(common::suggested_price),
        Column::Price => say!(sales::csv_your_price),
        Column::PriceWithoutTax => say!(sales::csv_price_before_tax),
        Column::Revenue => say!(sales::csv_average_price),
        Column::Deposit => say!(goods::deposit),
        Column::Tax => sales_tax(law),
        Column::Fees => say!(sales::csv_fees),
        Column::Contribution => say!(common::profit_per_drink),
    };
    say!(sales::csv_money, what = what, currency = currency.code())
}
