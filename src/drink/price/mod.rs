//! From a margin to a price, and back.
//!
//! | symbol | meaning |
//! |---|---|
//! | `R` | price without tax, in the major unit of the book's currency, as all money |
//! | `p` | share of it that is paid on average: `(1 - discounts) * (1 - marked down * (1 - marked down to))` |
//! | `E` | revenue of a drink sold, `R * p` |
//! | `t` | tax rate, 0 or more: the drink's own, else that of its kind, else the book's |
//! | `P` | menu price: `R * (1 + t)` where tax is inside it, `R` where it is added at the till |
//! | `f`, `k` | payment fee: a share of what the customer pays, 0 or more and below 1, and for one drink the fixed amount over the drinks in a payment |
//! | `D` | deposit for the container, with tax where that is owed on it |
//! | `c` | commission, a share of `E`, 0 or more and below 1; where it is one of the price with tax, that share times `1 + t` |
//! | `m` | target margin, 0 or more and below 1 |
//!
//! The customer pays `R * (1 + t)` either way, and `D` beside it. The deposit is no part of price, cost or margin:
//! the customer gets it back.
//!
//! # What a price brings
//!
//! ```text
//! fees         = f * (E * (1 + t) + D) + k + c * E
//! contribution = E - fees - full cost
//! margin       = (E - covered fees - covered cost) / E
//! ```
//!
//! The profit that changes is what one drink more or less brings: the contribution without overhead, which is
//! paid however many are sold; and, where the owner says so, without hands' time ([`Hands`]). Comparisons of
//! different numbers of drinks count with it.
//!
//! ```text
//! profit that changes = E - fees - (goods + labour) / (1 - unsold) / (1 - free)
//! ```
//!
//! The contribution always has everything in it. The covered cost is that of the book's cost basis
//! ([`Cost::covered`](crate::drink::cost::Cost::covered)). Fees are covered by the basis that covers
//! everything; on the other two `f`, `k` and `c` are 0 in the margin and in all that follows.
//!
//! # The price for a margin
//!
//! ```text
//! R = (covered cost + k + f * D) / (1 - m - c - f * (1 + t)) / p
//! ```
//!
//! [`suggest`] turns it into a menu price, and rounds it up to the next of the owner's endings that is on
//! target. If the divisor is 0 or less no price reaches the margin; the highest that one could approach is
//! `1 - c - f * (1 + t)`.
//!
//! ```
//! use brimwright::drink::ledger::price_offer;
//! use brimwright::foundation::measure::{Exact, Money};
//! # let book = brimwright::exchange::read(r#"{"format": "brimwright-book", "version": 3,
//! #   "settings": {"name": "Invented", "currency": "EUR", "units": "metric", "wage": "0", "target": "0.6",
//! #     "tax": {"rate": "0.25", "place": "in-the-price"}, "payment-fee": {"share": "0.02", "fixed": "0.1"},
//! #     "covers": "everything", "endings": ["0.95"]},
//! #   "ingredients": [{"id": "1", "name": "Juice", "trim-yield": "1",
//! #     "packs": [{"id": "1", "contents": "1 L", "price": "4.3"}]}],
//! #   "packagings": [], "containers": [{"id": "1", "name": "Bottle", "brimful": "500 mL", "set": [],
//! #     "headspace": {"share": "0"}}],
//! #   "drinks": [{"id": "1", "name": "Juice", "kind": "pressed", "reference": "1 L", "lines": [{"id": "1",
//! #     "ingredient": "1", "stage": "as-bought", "amount": "1 L", "scaling": "in-proportion"}]}],
//! #   "offers": [{"drink": "1", "container": "1"}]}"#).unwrap();
//!
//! // 500 mL at 4.30 a litre cost 2.15. A margin of 60 % is to cover everything, with 2 % and 0.10
//! // for the payment; 25 % tax is inside the price, and prices end in .95. By hand:
//! // (2.15 + 0.10) / (1 - 0.6 - 0.02 * 1.25) = 2.25 / 0.375 = 6.00, and 7.50 with tax.
//! let offer = book.offers().next().unwrap();
//! let suggestion = price_offer(&book, offer).unwrap().suggestion.unwrap();
//! let money = |cents| Money::from_major(Exact::new(cents, 2));
//! assert_eq!(suggestion.without_tax, money(600));
//! assert_eq!(suggestion.exact, money(750));
//! assert_eq!(suggestion.menu, money(795));
//! ```
//!
//! # Back from a price
//!
//! ```text
//! covered cost at most      = E * (1 - m - c - f * (1 + t)) - k - f * D
//! of that, ingredients only = (covered cost at most) * (1 - unsold) * (1 - free) - the other covered parts
//! ```
//!
//! Overhead that is figured on drinks sold goes off before the shares do. [`largest_fill`] is the largest fill
//! whose covered cost stays within that, to a millionth of a millilitre. The shelf price of a shop that keeps a
//! margin `w` is our price over `1 - w` ([`shelf_price`]).

mod back;
mod ending;
mod ladder;
mod terms;

pub use back::{Ceiling, ceiling, largest_fill, our_price, shelf_price};
pub use ending::round_up;
pub use ladder::{Ladder, Leaves, NotCounted, Rung, Takes, ladder, not_counted};
pub use terms::{Asked, Hands, PriceError, Suggestion, Terms, asked, suggest};
