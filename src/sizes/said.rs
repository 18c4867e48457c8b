//! What an owner says for a decision, and for all of them, as one text: kept on Back and reload, and carried to the
//! sheet of a decision.

use crate::book::{ContainerId, OfferId};
use crate::drink::price::Hands;
use crate::foundation::measure::{Exact, Money, Share, TYPED_PLACES};
use crate::sizes::decision::Told;

/// What an owner says for a decision.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Said {
    /// Prices, numbers, where buyers turn, what a size costs to keep, and whether labor counts.
    pub told: Told,
    /// Where the slider stands. It is `None` where it was not moved.
    pub slid: Option<Share>,
    /// What labels and printing cost once.
    pub labels: Money,
    /// What is left over of the old size, where the owner says so.
    pub left_over: Option<Money>,
}

/// Most decimals of a number that is kept.
const PLACES: usize = if TYPED_PLACES > 12 { TYPED_PLACES } else { 12 };

impl Said {
    /// As a text: a line for each thing that is said.
    pub fn text(&self) -> String {
        let Said { told, slid, labels, left_over } = self;
        let price = told.prices.iter().map(|(offer, price)| format!("price {offer} {}", price.major()));
        let number = told.weekly.iter().map(|(offer, number)| format!("weekly {offer} {number}"));
        let turn = told
            .turns
            .iter()
            .map(|(offer, to)| format!("turn {offer} {}", to.map(|to| to.to_string()).unwrap_or_default()));
        let money = |name: &str, money: Money| (!money.is_zero()).then(|| format!("{name} {}", money.major()));
        let rest = [
            money("keeping", told.keeping),
            money("labels", *labels),
            left_over.map(|left| format!("left {}", left.major())),
            slid.map(|share| format!("slid {}", share.fraction())),
            (told.hands == Hands::LeftOut).then(|| "no-labor".to_string()),
        ];
        price.chain(number).chain(turn).chain(rest.into_iter().flatten()).collect::<Vec<_>>().join("\n")
    }

    /// Reads what [`Said::text`] writes; what does not read is left out.
    pub fn read(text: &str) -> Said {
        let mut said = Said::default();
        for line in text.lines() {
            let mut words = line.split(' ');
            let (what, first, second) = (words.next().unwrap_or_default(), words.next(), words.next());
            said.take(what, first.unwrap_or_default(), second.unwrap_or_default());
        }
        said
    }

    fn take(&mut self, what: &str, first: &str, second: &str) {
        let number = |text: &str| Exact::from_plain(text, PLACES);
        let (offer, money) = (OfferId::from_text(first), number(first).map(Money::from_major));
        match what {
            "price" => self.told.prices.extend(offer.zip(number(second).map(Money::from_major))),
            "weekly" => self.told.weekly.extend(offer.zip(number(second))),
            "turn" => self.told.turns.extend(offer.map(|offer| (offer, ContainerId::from_text(second)))),
            "keeping" => self.told.keeping = money.unwrap_or_default(),
            "labels" => self.labels = money.unwrap_or_default(),
            "left" => self.left_over = money,
            "slid" => self.slid = number(first).map(Share::from_fraction),
            "no-labor" => self.told.hands = Hands::LeftOut,
            _ => {}
        }
    }
}

/// What an owner says once for all screens.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Everywhere {
    /// The price that drinks are to be sold under.
    pub point: Option<Money>,
    /// Of ten buyers, how many stay when a price rises by 10 %.
    pub of_ten: Option<Exact>,
}

impl Everywhere {
    /// As a text: a line for each thing that is said.
    pub fn text(&self) -> String {
        let point = self.point.map(|point| format!("point {}", point.major()));
        point.into_iter().chain(self.of_ten.map(|of_ten| format!("of-ten {of_ten}"))).collect::<Vec<_>>().join("\n")
    }

    /// Reads what [`Everywhere::text`] writes; what does not read is left out.
    pub fn read(text: &str) -> Everywhere {
        let said = |name: &str| {
            let line = text.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(' '))?;
            Exact::from_plain(line, PLACES)
        };
        Everywhere { point: said("point").map(Money::from_major), of_ten: said("of-ten") }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{container_id, exact, money, offer_id, share};

    #[test]
    fn what_is_said_for_all_is_read_again() {
        let both = Everywhere { point: Some(money("10")), of_ten: Some(exact("9.5")) };
        for said in [both, Everywhere { point: None, ..both }, Everywhere::default()] {
            assert_eq!(Everywhere::read(&said.text()), said);
        }
        assert_eq!(Everywhere::read("of-ten some\npoint"), Everywhere::default());
    }

    #[test]
    fn what_is_said_is_read_again() {
        let told = Told {
            prices: vec![(offer_id(1, 2), money("6.95"))],
            weekly: vec![(offer_id(1, 2), exact("12.5")), (offer_id(3, 2), exact("0"))],
            turns: vec![(offer_id(1, 1), Some(container_id(2))), (offer_id(3, 1), None)],
            keeping: money("4"),
            hands: Hands::LeftOut,
            ..Told::default()
        };
        let said = Said { told, slid: Some(share("0.62")), labels: money("110"), left_over: Some(Money::ZERO) };
        assert_eq!(Said::read(&said.text()), said);
        assert_eq!(Said::read(""), Said::default());
        assert_eq!(Said::read("price 1-2 dear\nsomething else\n"), Said::default());
    }
}
