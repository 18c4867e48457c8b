//! What was asked for a pack over time.

use crate::book::{Pack, Quoted};
use crate::foundation::measure::Date;

/// The prices of a pack that were heard.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct History {
    /// Each price and its day, the earliest first.
    pub heard: Vec<Quoted>,
    /// The lowest of them.
    pub lowest: Quoted,
    /// The highest of them.
    pub highest: Quoted,
}

/// The prices of a pack that were heard. Returns `None` if no day is known.
pub fn history(pack: &Pack) -> Option<History> {
    let heard: Vec<Quoted> = pack.heard().collect();
    // Of equals the latest.
    let lowest = *heard.iter().rev().min_by_key(|quoted| quoted.price)?;
    let highest = *heard.iter().max_by_key(|quoted| quoted.price)?;
    Some(History { heard, lowest, highest })
}

impl History {
    /// The corners of the line that holds each price until the next was heard, and the last until
    /// `today`.
    pub fn steps(&self, today: Date) -> Vec<Quoted> {
        let mut corners: Vec<Quoted> = Vec::new();
        for quoted in &self.heard {
            if let Some(before) = corners.last().copied() {
                corners.push(Quoted { day: quoted.day, ..before });
            }
            corners.push(*quoted);
        }
        if let Some(last) = corners.last().copied().filter(|last| last.day < today) {
            corners.push(Quoted { day: today, ..last });
        }
        corners
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{day, money, pack};

    fn quoted(on: &str, price: &str) -> Quoted {
        Quoted { day: day(on), price: money(price) }
    }

    #[test]
    fn a_price_holds_until_the_next_was_heard() {
        let mut case = pack(1, "40 lb", "30");
        assert_eq!(history(&case), None);
        case.quote(money("30"), day("2026-11-02"));
        let alone = history(&case).unwrap();
        assert_eq!((alone.lowest, alone.highest), (quoted("2026-11-02", "30"), quoted("2026-11-02", "30")));
        assert_eq!(alone.steps(day("2026-11-02")), [quoted("2026-11-02", "30")]);

        case.quote(money("33"), day("2026-11-09"));
        case.quote(money("30"), day("2026-11-16"));
        let known = history(&case).unwrap();
        assert_eq!((known.lowest, known.highest), (quoted("2026-11-16", "30"), quoted("2026-11-09", "33")));
        let corners = [
            ("2026-11-02", "30"),
            ("2026-11-09", "30"),
            ("2026-11-09", "33"),
            ("2026-11-16", "33"),
            ("2026-11-16", "30"),
            ("2026-11-26", "30"),
        ];
        assert_eq!(known.steps(day("2026-11-26")), corners.map(|(on, price)| quoted(on, price)));
        assert_eq!(
            known.steps(day("2026-11-01")),
            corners[..5].iter().map(|(on, price)| quoted(on, price)).collect::<Vec<_>>()
        );
    }
}
