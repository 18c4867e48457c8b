//! Deciding on sizes: what would have to be true for a change to pay.
//!
//! Nobody can compute what people will buy. What can be computed is the share of buyers that must stay, the
//! number that must come, or the share that a further size may take from another. A drink in a size that nobody
//! has bought has no sales until its owner types what to expect, and no plan is called the best.
//!
//! # What is counted
//!
//! | symbol | meaning |
//! |---|---|
//! | `u` | sold in a week in a size ([`weekly()`]): the mean of the last eight written weeks, or as typed |
//! | `p` | the profit that changes, per drink ([`crate::drink::price`]): everything but overhead |
//! | `K` | what keeping one more size costs in a week |
//! | `r` | the share of the buyers of a size that goes who stay |
//!
//! Buyers of a size that goes take the nearest size that stays in which their drink is sold, by the ratio of what
//! is poured, or the one their owner chooses; where there is none they leave. All sums are over the drinks of a part
//! of the menu. They are exact, and straight lines in `r` ([`Line`]): a slider prices nothing anew.
//!
//! # What must be true
//!
//! ```text
//! drop a:             r* = (sum of u_a p_a - K) / sum of u_a p_near
//! switch a to b:      r* = sum of u_a p_a / sum of u_a p_b;  change = r* - 1
//! keep only S:        r* = (profit today - profit of those in S - K * sizes fewer) / sum of u p_near of the others
//! add b, n expected:  m* = (sum of n p_b - K) / sum of n p_a
//!                     new buyers = (movers * (p_a - p_b) + K) / p_b
//! ```
//!
//! `m*` is the share of those expected who may have bought the other size `a` anyway. For a drop or a plan `r*` over
//! the whole cannot pay; for a switch it is how many must come ([`Verdict`]).
//!
//! Plans are every set of one to three of the sizes sold and of those with sales expected, but today's own. `r*`
//! alone would put the largest size first, of which each buyer pays most: they are ordered by evidence, the share
//! of today's buyers who choose their sizes already.
//!
//! # The tipping point
//!
//! An estimate in binary fractions. Let buyers answer price and size by
//!
//! ```text
//! r(e) = (P_b / P_a)^e * (V_b / V_a)^(-e / 4),  e < 0
//! ```
//!
//! `V` is the size on the menu. The `e*` at which what they bring is just what is needed is found by bisection, and
//! said as the share of buyers that a price 10 % higher loses there: `1 - 1.1^e*`; of a change that asks less, as the
//! new buyers for each of today's that a price 10 % lower draws: `0.9^e* - 1`. An owner's own answer to the first
//! ([`Answered`]) gives profits on an assumption.
//!
//! # By hand
//!
//! Juice at 8.00 a litre costs 2.00 in a bottle of 250 mL at 4.00, and 4.00 in one of 500 mL at 8.00; 30 of the small
//! and 10 of the large are sold. The small leaves 2.00, the large 4.00. Without the small one 30 * 2.00 = 60.00 are
//! lost, and each who takes the large brings 4.00: 60 / (30 * 4) = 50 % must stay. They pay 4.00 more for 250 mL
//! more. ln 0.5 = e * (ln 2 - ln 2 / 4), so that e* is -4/3, and a price 10 % higher loses 1 - 1.1^(-4/3) = 11.9 %.
//!
//! ```
//! use brimwright::book::Scope;
//! use brimwright::drink::ledger::Ledger;
//! use brimwright::foundation::measure::{Date, Exact, Money, Share};
//! use brimwright::sizes::decision::{MenuToday, Question, Told, Verdict};
//! # let book = brimwright::exchange::read(r#"{"format": "brimwright-book", "version": 3,
//! #   "settings": {"name": "Invented", "currency": "EUR", "units": "metric", "wage": "0", "target": "0.5",
//! #     "tax": {"rate": "0", "place": "in-the-price"}, "payment-fee": {}, "covers": "goods", "endings": []},
//! #   "ingredients": [{"id": "1", "name": "Juice", "trim-yield": "1",
//! #     "packs": [{"id": "1", "contents": "1 L", "price": "8"}]}],
//! #   "packagings": [], "containers": [
//! #     {"id": "1", "name": "Small", "brimful": "250 mL", "set": [], "headspace": {"share": "0"}},
//! #     {"id": "2", "name": "Large", "brimful": "500 mL", "set": [], "headspace": {"share": "0"}}],
//! #   "drinks": [{"id": "1", "name": "Juice", "kind": "pressed", "reference": "1 L", "lines": [{"id": "1",
//! #     "ingredient": "1", "stage": "as-bought", "amount": "1 L", "scaling": "in-proportion"}]}],
//! #   "offers": [{"drink": "1", "container": "1", "price": "4", "weekly": "30"},
//! #     {"drink": "1", "container": "2", "price": "8", "weekly": "10"}]}"#).unwrap();
//!
//! let (ledger, day) = (Ledger::of(&book), Date::new(2026, 11, 27).unwrap());
//! let menu = MenuToday::of(&book, &ledger, Scope::Menu, &Told::default(), day).unwrap();
//! let small = menu.sizes()[0];
//! let decision = menu.answer(&Question::Drop { size: small }).unwrap();
//! let (half, major) = (Share::from_fraction(Exact::new(5, 1)), |number| Money::from_major(Exact::from(number)));
//! assert_eq!(decision.verdict, Verdict::AtLeast { at: half });
//! assert_eq!((decision.now, decision.line.at(Share::WHOLE)), (major(60), Ok(major(120))));
//! let customer = decision.customer().unwrap();
//! assert_eq!((customer.more, customer.per_volume_change), (major(4), Share::ZERO));
//! let tipping = decision.tipping().unwrap();
//! assert_eq!(tipping.elasticity.rounded(9), Exact::new(-1_333_333_333, 9));
//! assert_eq!(tipping.loses.fraction().rounded(3), Exact::new(119, 3));
//! ```

mod adopt;
mod after;
mod answer;
mod ask;
mod below;
mod findings;
mod first;
mod keeping;
mod line;
mod menu;
mod once;
mod plans;
mod position;
mod swing;
#[cfg(test)]
mod tests;
mod tipping;
mod told;
mod weekly;

pub use adopt::trial_of;
pub use answer::{Customer, Decision, Payback, Question, Row};
pub use below::{BelowPrice, UnderRow, below_price};
pub use findings::{EarnsMore, Finding, Says, findings};
pub use keeping::Keeping;
pub use line::{Line, Verdict};
pub use menu::{Earns, MenuToday, PriceFrom, SoldToday};
pub use once::{FirstOrder, LeftOver, OneTime};
pub use plans::{Guess, HARDLY, MOST_CANDIDATES, MOST_SIZES, Plan, PlanToday, Plans, Turned};
pub use position::Position;
pub use swing::Swing;
pub use tipping::{Answered, Pays, SIZE_OVER_PRICE, Tipping};
pub use told::Told;
pub use weekly::{Basis, COUNTED_WEEKS, WeeklySales, kinds_in_weeks, tells_from, weekly};

pub use crate::drink::price::Hands;

use crate::book::{ContainerId, OfferId};
use crate::foundation::measure::{Money, Overflow};

/// Why a question has no answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NoAnswer {
    /// Nobody knows how many of these are sold, or none is.
    NoSales(Vec<OfferId>),
    /// No week is written down.
    NoWeeks,
    /// Only one week is written down: nothing says how far weeks swing.
    OneWeek,
    /// It is sold in this size only.
    OneSize(ContainerId),
    /// Nothing of this part of the menu is sold in the size.
    NotSold(ContainerId),
    /// It is in this size already.
    SameSize(ContainerId),
    /// At their prices nothing is left of these, however many are sold.
    NothingLeft(Vec<OfferId>),
    /// The buyers of these can turn to no other size.
    NobodyCanStay {
        /// What they buy.
        offers: Vec<OfferId>,
        /// What is lost with them in a week.
        lost: Money,
    },
    /// These have no price, and none can be suggested or computed.
    NoPrice(Vec<OfferId>),
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

/// What to fill in for an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// How many of an offer are sold in a week.
    Weekly(OfferId),
    /// The price of an offer.
    Price(OfferId),
    /// The sales of a week.
    Weeks,
    /// Another size.
    Size,
}

impl From<Overflow> for NoAnswer {
    fn from(overflow: Overflow) -> NoAnswer {
        NoAnswer::Arithmetic(overflow)
    }
}

impl NoAnswer {
    /// What to fill in first.
    pub fn field(&self) -> Option<Field> {
        match self {
            NoAnswer::NoSales(offers) => offers.first().copied().map(Field::Weekly),
            NoAnswer::NoWeeks | NoAnswer::OneWeek => Some(Field::Weeks),
            NoAnswer::OneSize(_) | NoAnswer::NotSold(_) | NoAnswer::SameSize(_) => Some(Field::Size),
            NoAnswer::NothingLeft(offers) | NoAnswer::NoPrice(offers) => offers.first().copied().map(Field::Price),
            NoAnswer::NobodyCanStay { .. } => Some(Field::Size),
            NoAnswer::Arithmetic(_) => None,
        }
    }
}
