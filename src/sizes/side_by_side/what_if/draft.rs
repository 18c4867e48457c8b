//! A book to try things out on.

use std::collections::BTreeSet;

use super::{WhatIf, WhatIfError};
use crate::book::{Book, Bought, Conditions, ContainerId, Edit, Goods, Ingredient, Key, Record, Scope};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, Money, Overflow};

/// A book to try things out on: what a comparison needs and nothing else, computed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    /// The records.
    pub book: Book,
    /// Its offers, computed.
    pub ledger: Ledger,
}

impl Draft {
    /// The offers of a part of the menu in these containers, with all that they need. `ledger` is that of `book`.
    pub fn of(book: &Book, ledger: &Ledger, scope: Scope, containers: &[ContainerId]) -> Draft {
        let offers = book.offers().map(|offer| offer.id());
        let shown = offers.filter(|id| containers.contains(&id.container) && book.belongs(id.drink, scope));
        let book = book.cut(shown.map(Key::Offer));
        Draft { ledger: ledger.of_part(&book), book }
    }

    /// The draft with what is tried in it, computed anew where that touches it.
    ///
    /// # Errors
    /// A [`WhatIfError`]; the draft stays as it is.
    pub fn with(&self, what_if: &WhatIf) -> Result<Draft, WhatIfError> {
        let (book, touched) = what_if.put_into(&self.book)?;
        let mut ledger = self.ledger.clone();
        ledger.follow(&book, &touched, &mut |_, _, _| {});
        Ok(Draft { book, ledger })
    }
}

impl WhatIf {
    /// A book with all that is tried in it, also what is not the owner's to set; and the records that it touched.
    ///
    /// # Errors
    /// A [`WhatIfError`].
    pub fn put_into(&self, book: &Book) -> Result<(Book, BTreeSet<Key>), WhatIfError> {
        let mut with = book.clone();
        let mut touched = with.apply(&self.edit(book)?)?.touched;
        touched.extend(with.apply(&self.asked_by_suppliers(&with)?)?.touched);
        Ok((with, touched))
    }

    /// What suppliers are thought to ask: of single goods, and of all other ingredients.
    fn asked_by_suppliers(&self, book: &Book) -> Result<Edit, Overflow> {
        let Conditions { bought, ingredients, .. } = &self.conditions;
        let own = |bought: &Bought| {
            let Bought { goods, pack, price } = *bought;
            price.map(|price| Edit::SetPackPrice { goods, pack, price, day: None })
        };
        let mut edits: Vec<Edit> = bought.iter().filter_map(own).collect();
        if !ingredients.is_zero() {
            let priced = |ingredient: &Ingredient| {
                let goods = Goods::Ingredient(ingredient.id);
                bought.iter().any(|bought| bought.goods == goods && bought.price.is_some())
            };
            let factor = Exact::ONE.plus(ingredients.fraction())?;
            for ingredient in book.ingredients().filter(|ingredient| !priced(ingredient)) {
                edits.push(raised(ingredient, factor)?);
            }
        }
        Ok(Edit::Together(edits))
    }
}

/// Raises what is paid for every pack of an ingredient, to the digits that a book keeps.
fn raised(ingredient: &Ingredient, factor: Exact) -> Result<Edit, Overflow> {
    let mut ingredient = ingredient.clone();
    for pack in &mut ingredient.packs {
        let tiers = pack.tiers.iter_mut().map(|tier| &mut tier.price);
        for price in [&mut pack.price, &mut pack.surcharge].into_iter().chain(tiers) {
            *price = Money::from_major(price.times(factor)?.major().kept());
        }
    }
    Ok(Edit::Put(Record::Ingredient(ingredient)))
}
