//! What if prices, fills, the target or the cost of ingredients were others: tried on a draft
//! beside the book.

use crate::book::{Book, ContainerId, Drink, Edit, Ingredient, Key, OfferId, Record, Refusal, Scope, Settings};
use crate::drink::ledger::Ledger;
use crate::drink::packaged::pour;
use crate::foundation::measure::{Exact, Money, Overflow, Share, Volume};

/// What is tried.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WhatIf {
    /// How much more all ingredients cost, as a share of what they cost now; below zero, how much
    /// less; at least -1.
    pub ingredients: Share,
    /// Another target margin, in [0, 1).
    pub target: Option<Share>,
    /// Other menu prices.
    pub prices: Vec<(OfferId, Money)>,
    /// Containers poured up to another volume.
    pub fills: Vec<(ContainerId, Volume)>,
}

/// Why something cannot be tried.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WhatIfError {
    /// The book would refuse it.
    Refused(Refusal),
    /// The container holds only so much to the rim; zero if that is not known.
    OverTheRim(Volume),
    /// Nothing would be poured.
    NothingPoured,
    /// The numbers leave the range that can be computed.
    Arithmetic(Overflow),
}

impl From<Refusal> for WhatIfError {
    fn from(refusal: Refusal) -> WhatIfError {
        WhatIfError::Refused(refusal)
    }
}

impl From<Overflow> for WhatIfError {
    fn from(overflow: Overflow) -> WhatIfError {
        WhatIfError::Arithmetic(overflow)
    }
}

impl WhatIf {
    /// The edit that puts the prices, fills and target in force. The target is set at the drink, at
    /// each drink of a kind, or in the book for the whole menu. The cost of ingredients is not part
    /// of the edit: the owner cannot set what suppliers ask.
    ///
    /// # Errors
    /// A [`WhatIfError`] where a fill cannot be.
    pub fn edit(&self, book: &Book, scope: Scope) -> Result<Edit, WhatIfError> {
        let mut edits = Vec::new();
        if let Some(target) = self.target {
            edits.extend(set_target(book, scope, target));
        }
        for (offer, price) in &self.prices {
            edits.push(Edit::SetPrice { offer: *offer, price: Some(*price) });
        }
        for (id, volume) in &self.fills {
            edits.push(poured(book, *id, *volume)?);
        }
        Ok(Edit::Together(edits))
    }
}

fn set_target(book: &Book, scope: Scope, target: Share) -> Vec<Edit> {
    match scope {
        Scope::Menu => {
            vec![Edit::Put(Record::Settings(Box::new(Settings { target, ..book.settings().clone() })))]
        }
        Scope::Kind(_) | Scope::Drink(_) => {
            let drinks = book.drinks().filter(|drink| book.belongs(drink.id, scope));
            drinks.map(|drink| Edit::Put(Record::Drink(Drink { target: Some(target), ..drink.clone() }))).collect()
        }
    }
}

fn poured(book: &Book, id: ContainerId, volume: Volume) -> Result<Edit, WhatIfError> {
    if !volume.is_positive() {
        return Err(WhatIfError::NothingPoured);
    }
    let missing = Refusal::Missing { key: Key::Container(id), needed_by: None };
    let container = book.container(id).ok_or(missing)?;
    let edit = pour(container, volume, book.settings().units.drink_unit());
    let brimful = container.brimful.volume()?.unwrap_or_default();
    edit.ok_or(WhatIfError::OverTheRim(brimful))
}

/// The target that holds for a part of the menu: that of its drinks if all have the same, else the
/// book's.
pub fn target_of(book: &Book, scope: Scope) -> Share {
    let of_book = book.settings().target;
    if scope == Scope::Menu {
        return of_book;
    }
    let mut targets = book.drinks().filter(|drink| book.belongs(drink.id, scope));
    let first = targets.next().and_then(|drink| drink.target).unwrap_or(of_book);
    if targets.all(|drink| drink.target.unwrap_or(of_book) == first) { first } else { of_book }
}

/// A book to try things out on: what a comparison needs and nothing else, computed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The records.
    pub book: Book,
    /// Its offers, computed.
    pub ledger: Ledger,
}

impl Draft {
    /// The offers of a part of the menu in these containers, with all that they need.
    pub fn of(book: &Book, scope: Scope, containers: &[ContainerId]) -> Draft {
        let offers = book.offers().map(|offer| offer.id());
        let shown = offers.filter(|id| containers.contains(&id.container) && book.belongs(id.drink, scope));
        let book = book.cut(shown.map(Key::Offer));
        Draft { ledger: Ledger::of(&book), book }
    }

    /// The draft with what is tried in it, computed anew where that touches it.
    ///
    /// # Errors
    /// A [`WhatIfError`]; the draft stays as it is.
    pub fn with(&self, what_if: &WhatIf, scope: Scope) -> Result<Draft, WhatIfError> {
        let mut book = self.book.clone();
        let touched = book.apply(&what_if.edit(&self.book, scope)?)?.touched;
        if !what_if.ingredients.is_zero() {
            book.apply(&raised_packs(&book, what_if.ingredients)?)?;
        }
        let ledger = if what_if.ingredients.is_zero() {
            let mut ledger = self.ledger.clone();
            ledger.refresh(&book, &touched);
            ledger
        } else {
            Ledger::of(&book)
        };
        Ok(Draft { book, ledger })
    }
}

/// Raises what is paid for every pack of ingredients, to the digits that a book keeps.
fn raised_packs(book: &Book, by: Share) -> Result<Edit, Overflow> {
    let factor = Exact::ONE.plus(by.fraction())?;
    let mut edits = Vec::new();
    for ingredient in book.ingredients() {
        let mut ingredient: Ingredient = ingredient.clone();
        for pack in &mut ingredient.packs {
            let tiers = pack.tiers.iter_mut().map(|tier| &mut tier.price);
            for price in [&mut pack.price, &mut pack.surcharge].into_iter().chain(tiers) {
                *price = Money::from_major(price.times(factor)?.major().kept());
            }
        }
        edits.push(Edit::Put(Record::Ingredient(ingredient)));
    }
    Ok(Edit::Together(edits))
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::book::{Container, Field, Headspace, Labour, Pack, Problem, Tier};
    use crate::foundation::measure::System;
    use crate::sizes::side_by_side::{SideBySide, side_by_side, sold_in};
    use crate::support::{
        amount, book, container, container_id, drink, drink_id, exact, ingredient, line, millilitres, money, offer,
        offer_id, pack, seconds, settings, share, use_of, vessel,
    };

    const DRINK: Scope = Scope::Drink(crate::book::DrinkId::from_random(1));

    /// Two drinks of two ingredients each in two bottles, with tiers, surcharges and labour.
    fn bar() -> Book {
        let tier = Tier { from: exact("2"), price: money("3.60") };
        let tiered = Pack { tiers: vec![tier], at_a_time: exact("3"), ..pack(1, "1 L", "4.10") };
        let delivered = Pack { surcharge: money("0.333333"), ..pack(1, "750 mL", "9.99") };
        let bottle = |id, size| Container { set: vec![use_of(1, "1")], ..container(id, size) };
        let labour = Labour { per_drink: seconds("40"), ..Labour::default() };
        let made = |id| Drink { labour, ..drink(id, "1 L", [line(1, 1, "600 mL"), line(2, 2, "400 mL")]) };
        let offers = [(1, 1, "3"), (1, 2, "5"), (2, 1, "4"), (2, 2, "6")];
        book(
            Settings { units: System::Metric, wage: money("18"), ..settings() },
            [
                Record::Ingredient(ingredient(1, [tiered, pack(2, "1 L", "5")])),
                Record::Ingredient(ingredient(2, [delivered])),
                Record::Packaging(vessel(1, [pack(1, "1 ea", "0.4")])),
                Record::Container(bottle(1, "300 mL")),
                Record::Container(bottle(2, "500 mL")),
                Record::Drink(made(1)),
                Record::Drink(Drink { target: Some(share("0.5")), ..made(2) }),
            ]
            .into_iter()
            .chain(offers.map(|(drink, container, price)| Record::Offer(offer(drink, container, Some(price))))),
        )
    }

    fn compared(book: &Book, scope: Scope) -> SideBySide {
        side_by_side(book, &Ledger::of(book), scope, &sold_in(book, scope)).unwrap()
    }

    fn drafted(book: &Book, scope: Scope, what_if: &WhatIf) -> SideBySide {
        let containers = sold_in(book, scope);
        let draft = Draft::of(book, scope, &containers).with(what_if, scope).unwrap();
        side_by_side(&draft.book, &draft.ledger, scope, &containers).unwrap()
    }

    fn all() -> WhatIf {
        WhatIf {
            ingredients: share("0.2"),
            target: Some(share("0.7")),
            prices: vec![(offer_id(1, 1), money("3.50"))],
            fills: vec![(container_id(2), millilitres("450"))],
        }
    }

    #[test]
    fn nothing_tried_changes_nothing() {
        let book = bar();
        for scope in [DRINK, Scope::Menu] {
            assert_eq!(drafted(&book, scope, &WhatIf::default()), compared(&book, scope));
        }
    }

    #[test]
    fn a_draft_is_as_a_book_edited_by_hand() {
        let book = bar();
        let before = book.clone();
        let drafts = [DRINK, Scope::Kind(crate::book::DrinkKind::Blended), Scope::Menu]
            .map(|scope| (scope, drafted(&book, scope, &all())));
        assert_eq!(book, before);
        for (scope, draft) in drafts {
            let mut hand = book.clone();
            let mut put = |record| drop(hand.apply(&Edit::Put(record)).unwrap());
            // A fifth more for each price and surcharge, typed in.
            let tier = Tier { from: exact("2"), price: money("4.32") };
            let tiered = Pack { tiers: vec![tier], at_a_time: exact("3"), ..pack(1, "1 L", "4.92") };
            put(Record::Ingredient(ingredient(1, [tiered, pack(2, "1 L", "6")])));
            let delivered = Pack { surcharge: money("0.3999996"), ..pack(1, "750 mL", "11.988") };
            put(Record::Ingredient(ingredient(2, [delivered])));
            put(Record::Offer(offer(1, 1, Some("3.50"))));
            let headspace = Headspace::Volume(amount("50 mL"));
            put(Record::Container(Container { headspace, ..book.container(container_id(2)).unwrap().clone() }));
            let target = Some(share("0.7"));
            match scope {
                Scope::Menu => {
                    put(Record::Settings(Box::new(Settings { target: share("0.7"), ..book.settings().clone() })));
                }
                _ => {
                    for drink in book.drinks().filter(|drink| book.belongs(drink.id, scope)) {
                        put(Record::Drink(Drink { target, ..drink.clone() }));
                    }
                }
            }
            assert_eq!(draft, compared(&hand, scope), "{scope:?}");
        }
    }

    #[test]
    fn ingredients_cost_more_by_that_share_and_nothing_else_does() {
        let book = bar();
        let now = compared(&book, DRINK);
        let then = drafted(&book, DRINK, &WhatIf { ingredients: share("0.25"), ..WhatIf::default() });
        for (now, then) in now.sizes.iter().zip(&then.sizes) {
            let fifth = now.parts[0].times(exact("1.25")).unwrap();
            let off = then.parts[0].minus(fifth).unwrap().major().abs();
            assert!(off <= exact("0.00000001"), "{off}: a price is kept to eight decimals");
            assert_eq!(now.parts[1..], then.parts[1..]);
        }
    }

    #[test]
    fn using_it_is_one_edit_without_the_ingredients() {
        let mut book = bar();
        let before = book.clone();
        let applied = book.apply(&all().edit(&book, DRINK).unwrap()).unwrap();
        let touched = [Key::Container(container_id(2)), Key::Drink(drink_id(1)), Key::Offer(offer_id(1, 1))];
        assert_eq!(applied.touched, BTreeSet::from(touched));
        let without_ingredients = WhatIf { ingredients: Share::ZERO, ..all() };
        assert_eq!(compared(&book, DRINK), drafted(&before, DRINK, &without_ingredients));
        book.apply(&applied.inverse).unwrap();
        assert_eq!(book, before);
    }

    #[test]
    fn what_cannot_be_is_refused_and_the_draft_stays() {
        let book = bar();
        let draft = Draft::of(&book, DRINK, &sold_in(&book, DRINK));
        let before = draft.clone();
        let refused = |what_if: WhatIf| draft.with(&what_if, DRINK).unwrap_err();
        let price = WhatIf { prices: vec![(offer_id(1, 1), money("0"))], ..WhatIf::default() };
        let field = |key, field, problem| WhatIfError::Refused(Refusal::Field { key, field, problem });
        let offer = Key::Offer(offer_id(1, 1));
        assert_eq!(refused(price), field(offer, Field::Price, Problem::NotPositive));
        let target = WhatIf { target: Some(Share::WHOLE), ..WhatIf::default() };
        assert_eq!(refused(target), field(Key::Drink(drink_id(1)), Field::Target, Problem::NotAShare));
        let fill = |volume| WhatIf { fills: vec![(container_id(1), millilitres(volume))], ..WhatIf::default() };
        assert_eq!(refused(fill("300.1")), WhatIfError::OverTheRim(millilitres("300")));
        assert_eq!(refused(fill("0")), WhatIfError::NothingPoured);
        assert!(draft.with(&fill("300"), DRINK).is_ok());
        let gone = WhatIf { fills: vec![(container_id(9), millilitres("1"))], ..WhatIf::default() };
        let missing = Refusal::Missing { key: Key::Container(container_id(9)), needed_by: None };
        assert_eq!(refused(gone), WhatIfError::Refused(missing));
        assert_eq!(draft, before);
    }

    #[test]
    fn a_part_of_the_menu_has_its_drinks_target_or_the_books() {
        let book = bar();
        assert_eq!(target_of(&book, DRINK), book.settings().target);
        assert_eq!(target_of(&book, Scope::Drink(drink_id(2))), share("0.5"));
        let kind = Scope::Kind(crate::book::DrinkKind::Blended);
        assert_eq!(target_of(&book, kind), book.settings().target);
        let mut alike = book;
        let own = Drink { target: Some(share("0.5")), ..alike.drink(drink_id(1)).unwrap().clone() };
        alike.apply(&Edit::Put(Record::Drink(own))).unwrap();
        assert_eq!(target_of(&alike, kind), share("0.5"));
        assert_eq!(target_of(&alike, Scope::Menu), alike.settings().target);
    }
}
