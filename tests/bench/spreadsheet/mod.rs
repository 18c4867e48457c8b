//! The same book in a general spreadsheet engine: how long it takes, beside ours.
//!
//! The engine is HyperFormula 3.5.0, under GPL-3.0. `cargo dev bench` fetches it into the cache of the
//! person who runs it, to be measured and for nothing else: it is never in the repository, nor in what
//! is published.

mod agreement;
mod sheet;

use brimwright::book::{Book, Edit, Record, Settings};
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Money};
use serde::Deserialize;
use serde_json::{Value, json};

use agreement::Agreement;

use crate::one_price::Priced;

/// What the sheet says of an offer: its full cost, margin and suggested price.
#[derive(Clone, Copy, Deserialize)]
pub struct Said(pub Option<f64>, pub Option<f64>, pub Option<f64>);

/// Where `cargo dev bench` says that the spreadsheet engine is.
pub const FOLDER: &str = "BRIMWRIGHT_SPREADSHEET";

/// What a spreadsheet engine took, in milliseconds, and what it said.
#[derive(Deserialize)]
pub struct Measured {
    /// Times.
    pub times: Times,
    /// At the start, after the first round of prices, and at the end.
    pub said: [Vec<Said>; 3],
}

/// Times, in milliseconds.
#[derive(Deserialize)]
pub struct Times {
    /// Building all sheets, and computing them.
    pub build: Vec<f64>,
    /// One price.
    pub price: Vec<f64>,
    /// The wage, which moves every offer.
    pub wage: Vec<f64>,
}

/// How often each thing is done.
#[derive(Clone, Copy)]
pub struct Runs {
    /// All sheets are built.
    pub builds: usize,
    /// A round through prices, up in the first and every other one, down in those between; an even number.
    pub rounds: usize,
    /// So many prices in a round, those of the first ingredients.
    pub prices: usize,
    /// The wage is set.
    pub wages: i64,
}

impl Runs {
    /// The wages that are set one after another.
    pub fn wages(self) -> impl Iterator<Item = Money> {
        (0..self.wages).map(|more| Money::from_major(Exact::new(1900 + more * 5, 2)))
    }

    /// What a spreadsheet engine is to do with the book, as the script takes it.
    pub fn job(self, book: &Book) -> Value {
        let prices = |more: i64| -> Vec<f64> {
            let more = Money::from_major(Exact::new(more, 0));
            let packs = book.ingredients().take(self.prices).map(|ingredient| &ingredient.packs[0]);
            packs.map(|pack| pack.price.plus(more).expect("small").major().to_estimate()).collect()
        };
        let rounds: Vec<Vec<f64>> = [prices(1), prices(0)].into_iter().cycle().take(self.rounds).collect();
        let wages: Vec<f64> = self.wages().map(|wage| wage.major().to_estimate()).collect();
        json!({
            "sheets": sheet::sheets(book),
            "builds": self.builds,
            "rounds": rounds,
            "wages": wages,
            "columns": [sheet::COST, sheet::MARGIN, sheet::SUGGESTED],
        })
    }

    /// Prints how far what a spreadsheet engine said agrees with the engine: at the start, after the first
    /// round of prices, and at the end, when prices are as they were and the wage is the last.
    ///
    /// # Panics
    /// If a full cost does not agree.
    pub fn check(self, book: &Book, said: &[Vec<Said>; 3]) {
        let mut priced = Priced::with_first(book.clone(), self.prices);
        let start = Agreement::of(&priced.ledger, &said[0]);
        priced.round(0);
        let raised = Agreement::of(&priced.ledger, &said[1]);
        let mut book = book.clone();
        book.apply(&set_wage(&book, self.wages().last().expect("some"))).expect("a wage");
        let end = Agreement::of(&Ledger::of(&book), &said[2]);
        for (when, agreement) in [("at the start", start), ("with prices raised", raised), ("with another wage", end)] {
            println!("{}", agreement.sentence(when));
            assert!(agreement.holds(), "a sheet that says something else is no comparison");
        }
    }
}

/// The edit that sets the wage.
pub fn set_wage(book: &Book, wage: Money) -> Edit {
    Edit::Put(Record::Settings(Box::new(Settings { wage, ..book.settings().clone() })))
}
