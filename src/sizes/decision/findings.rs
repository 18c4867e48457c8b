//! What the numbers of a book say about its sizes, without being asked.

use super::NoAnswer;
use super::answer::{Decision, Question};
use super::below::{UnderRow, below_price};
use super::line::Verdict;
use super::menu::MenuToday;
use super::plans::{Guess, Plan};
use super::tipping::{Answered, Pays, Tipping};
use super::told::Told;
use crate::book::{Book, DrinkKind, OfferId, Scope};
use crate::drink::ledger::Ledger;
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Exact, Money, Overflow, Share};

/// What the numbers say of a kind of drink.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The kind.
    pub kind: DrinkKind,
    /// What they say.
    pub says: Says,
    /// The same change by the owner's own answer, where he gave one.
    pub guess: Option<Guess>,
}

impl Finding {
    /// Whether the change that it is about pays: by the owner's own answer where he gave one. Returns `None` where
    /// it is about none.
    pub fn pays(&self) -> Option<bool> {
        let known = match &self.says {
            Says::CannotDrop(_) => false,
            Says::DropPays(_) | Says::OnlyPays { .. } => true,
            Says::TurnsOnPrice { .. } | Says::NotUnder { .. } => return None,
        };
        Some(self.guess.map_or(known, |guess| guess.pays()))
    }
}

/// What the numbers say.
#[derive(Clone, Debug, PartialEq)]
pub enum Says {
    /// Dropping a size loses even if all its buyers stay.
    CannotDrop(Decision),
    /// Dropping a size pays if a share of its buyers stays, or even if none does.
    DropPays(Decision),
    /// Selling one size only pays if a share of the others stays.
    OnlyPays {
        /// The plan.
        plan: Plan,
        /// Recipe cards today.
        cards_now: usize,
    },
    /// Whether smaller or larger sizes earn more turns on how much buyers mind a price.
    TurnsOnPrice {
        /// The least share that a price 10 % higher loses at the tipping point of a size.
        least: Share,
        /// The largest.
        most: Share,
        /// What the owner's own answer says, where it lies outside these.
        earns_more: Option<EarnsMore>,
    },
    /// Drinks that cannot be sold below the owner's price in any size.
    NotUnder {
        /// The price.
        price: Money,
        /// How many drinks cannot.
        cannot: usize,
        /// Of how many.
        of: usize,
        /// Of these the one that lacks least in its nearest size, where a price would reach its target.
        nearest: Option<UnderRow>,
    },
}

/// Which sizes earn more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EarnsMore {
    /// Smaller ones: buyers mind a price.
    Smaller,
    /// Larger ones: buyers mind it little.
    Larger,
}

/// What the numbers of a book say about its sizes, kind by kind, in the order of their rank: what the owner's own
/// answer decides; what cannot pay, the largest loss first; what pays, the least asked of buyers first; what turns on
/// the price; what cannot be sold below `point`, the owner's price.
///
/// # Errors
/// [`Overflow`].
pub fn findings(
    book: &Book,
    ledger: &Ledger,
    told: &Told,
    point: Option<Money>,
    answered: Option<Answered>,
    day: Date,
) -> Result<Vec<Finding>, Overflow> {
    let mut ranked: Vec<Finding> = Vec::new();
    for kind in DrinkKind::ALL.iter().copied() {
        let menu = MenuToday::of(book, ledger, Scope::Kind(kind), told, day)?;
        let mut says = of_sizes(&menu, answered)?;
        let under = point.map(|point| not_under(book, ledger, kind, point)).transpose()?.flatten();
        says.extend(under.map(|under| (under, None)));
        for (says, guess) in says {
            in_order::insert(&mut ranked, Finding { kind, says, guess }, |other, this| rank(other) <= rank(this));
        }
    }
    Ok(ranked)
}

/// The place of a finding: its class, and a number within it, the smaller the earlier.
fn rank(finding: &Finding) -> (u8, Exact) {
    let least = |at: Option<Share>| at.map_or(Exact::ZERO, Share::fraction);
    // What his answer decides stands by what it brings.
    if let Some((guess, pays)) = finding.guess.zip(finding.pays()) {
        let gain = guess.gain.major();
        return if pays { (2, gain.negated()) } else { (1, gain) };
    }
    match &finding.says {
        Says::CannotDrop(decision) => match decision.verdict {
            Verdict::CannotPay { loss_if_all_stay, .. } => (1, loss_if_all_stay.major().negated()),
            _ => (1, Exact::ZERO),
        },
        Says::DropPays(decision) => (2, least(decision.break_even().ok().flatten())),
        Says::OnlyPays { plan, .. } => (2, least(plan.break_even)),
        Says::TurnsOnPrice { earns_more: Some(_), .. } => (0, Exact::ZERO),
        Says::TurnsOnPrice { least, .. } => (3, least.fraction()),
        Says::NotUnder { .. } => (4, Exact::ZERO),
    }
}

/// What the sizes of a kind say.
fn of_sizes(menu: &MenuToday<'_>, answered: Option<Answered>) -> Result<Vec<(Says, Option<Guess>)>, Overflow> {
    let mut found = Vec::new();
    let mut tips: Vec<Tipping> = Vec::new();
    for size in menu.sizes() {
        let decision = match menu.answer(&Question::Drop { size: *size }) {
            Ok(decision) => decision,
            Err(NoAnswer::Arithmetic(overflow)) => return Err(overflow),
            Err(_) => continue,
        };
        // Nothing is said of buyers who would not be believed to turn.
        if decision.turns_far()? {
            continue;
        }
        tips.extend(decision.tipping());
        let pays = decision.verdict.can_pay();
        let guess = answered.and_then(|answered| decision.guess(&answered));
        found.push((if pays { Says::DropPays(decision) } else { Says::CannotDrop(decision) }, guess));
    }
    // Of two sizes, to sell one only is to drop the other.
    if menu.sizes().len() > 2 {
        let plans = match menu.plans() {
            Ok(plans) => plans,
            Err(NoAnswer::Arithmetic(overflow)) => return Err(overflow),
            Err(_) => return Ok(found),
        };
        let cards_now = plans.today.cards;
        let only =
            plans.pays.into_iter().filter(|plan| plan.sizes.len() == 1 && !plan.hardly_tried() && !plan.turns_far());
        let today = plans.today;
        found.extend(only.map(|plan| {
            let guess = answered.and_then(|answered| plan.against(&today, &answered));
            (Says::OnlyPays { plan, cards_now }, guess)
        }));
    }
    found.extend(turns_on_price(&tips, answered).map(|turns| (turns, None)));
    Ok(found)
}

/// Whether moves up stop paying where moves down begin to, and how much buyers mind a price there.
fn turns_on_price(tips: &[Tipping], answered: Option<Answered>) -> Option<Says> {
    let on = |pays: Pays| tips.iter().filter(move |tip| tip.pays == pays).map(|tip| tip.loses);
    if on(Pays::IfFewerLeave).next().is_none() || on(Pays::IfMoreLeave).next().is_none() {
        return None;
    }
    let least = tips.iter().map(|tip| tip.loses).min()?;
    let most = tips.iter().map(|tip| tip.loses).max()?;
    let earns_more = answered.and_then(|answered| answered.loses()).and_then(|loses| {
        if loses < least {
            Some(EarnsMore::Larger)
        } else if loses > most {
            Some(EarnsMore::Smaller)
        } else {
            None
        }
    });
    Some(Says::TurnsOnPrice { least, most, earns_more })
}

/// Drinks of a kind that cannot be sold below a price in any of their sizes.
fn not_under(book: &Book, ledger: &Ledger, kind: DrinkKind, price: Money) -> Result<Option<Says>, Overflow> {
    let of_kind = book.offers().filter(|it| it.price.is_some() && book.belongs(it.drink, Scope::Kind(kind)));
    let offers: Vec<OfferId> = of_kind.map(crate::book::Offer::id).collect();
    let below = below_price(book, ledger, &offers, price)?;
    let drinks = below.drinks_that_cannot();
    if drinks.is_empty() {
        return Ok(None);
    }
    let mut of: Vec<crate::book::DrinkId> = Vec::new();
    for offer in &offers {
        in_order::insert_once(&mut of, offer.drink);
    }
    let nearest = below.rows.iter().rev().find(|row| drinks.contains(&row.offer.drink)).copied();
    Ok(Some(Says::NotUnder { price, cannot: drinks.len(), of: of.len(), nearest }))
}
