//! Replacing goods by others wherever they are used.

use super::{Book, Edit, Goods, Key, PackagingId, PackagingUse, Record};
use crate::foundation::measure::Overflow;

impl Edit {
    /// The edit that replaces `goods` by `other` in every drink, container and set, strikes `goods` from the
    /// buying list, and removes them from the book. The amounts in recipes stay as they are. Returns `None` if
    /// one is an ingredient and the other packaging.
    ///
    /// # Errors
    /// [`Overflow`] if a container uses both, and the sum of their numbers is out of range.
    pub fn instead(book: &Book, goods: Goods, other: Goods) -> Result<Option<Edit>, Overflow> {
        let key = Key::from(goods);
        let mut edits = Vec::new();
        for user in book.needed_by(key) {
            let Some(mut record) = book.record(user) else { continue };
            match (&mut record, goods, other) {
                (Record::BuyingList(list), _, _) => list.lines.retain(|line| line.goods != goods),
                (Record::Drink(drink), Goods::Ingredient(from), Goods::Ingredient(to)) => {
                    for line in drink.lines.iter_mut().filter(|line| line.ingredient == from) {
                        line.ingredient = to;
                    }
                }
                (Record::Container(container), Goods::Packaging(from), Goods::Packaging(to)) => {
                    container.set = used_instead(&container.set, from, to)?;
                }
                (Record::PackagingSet(set), Goods::Packaging(from), Goods::Packaging(to)) => {
                    set.uses = used_instead(&set.uses, from, to)?;
                }
                _ => return Ok(None),
            }
            edits.push(Edit::Put(record));
        }
        edits.push(Edit::Remove(key));
        Ok(Some(Edit::Together(edits)))
    }
}

/// The uses with one packaging replaced by another, each packaging once.
fn used_instead(uses: &[PackagingUse], from: PackagingId, to: PackagingId) -> Result<Vec<PackagingUse>, Overflow> {
    let mut used: Vec<PackagingUse> = Vec::new();
    for one in uses {
        let packaging = if one.packaging == from { to } else { one.packaging };
        match used.iter_mut().find(|before| before.packaging == packaging) {
            Some(before) => before.count = before.count.plus(one.count)?,
            None => used.push(PackagingUse { packaging, ..*one }),
        }
    }
    Ok(used)
}

#[cfg(test)]
mod tests {
    use crate::book::{Book, Container, Edit, Goods, Key, PackagingSet, PackagingSetId, Record};
    use crate::support::{
        book, buying_list, container, drink, ingredient, ingredient_id, line, packaging_id, settings, use_of, vessel,
    };

    fn bar() -> Book {
        let set = PackagingSet {
            id: PackagingSetId::from_random(1),
            name: "Invented lid and straw".into(),
            uses: vec![use_of(1, "2"), use_of(2, "3")],
        };
        book(
            settings(),
            [
                Record::Ingredient(ingredient(1, [])),
                Record::Ingredient(ingredient(2, [])),
                Record::Packaging(vessel(1, [])),
                Record::Packaging(vessel(2, [])),
                Record::PackagingSet(set),
                Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "1 L") }),
                Record::Drink(drink(1, "1 L", [line(1, 1, "100 mL"), line(2, 2, "200 mL")])),
                Record::BuyingList(buying_list(&[(1, 1, "2"), (2, 1, "3")])),
            ],
        )
    }

    #[test]
    fn an_ingredient_goes_and_another_takes_its_place() {
        let mut book = bar();
        let [from, to] = [1, 2].map(|id| Goods::Ingredient(ingredient_id(id)));
        let edit = Edit::instead(&book, from, to).unwrap().unwrap();
        let applied = book.apply(&edit).unwrap();
        assert!(!book.contains(from.into()));
        let lines = &book.drinks().next().unwrap().lines;
        let expected = [line(1, 2, "100 mL"), line(2, 2, "200 mL")];
        assert_eq!(lines, &expected);
        assert_eq!(book.buying_list(), Some(&buying_list(&[(2, 1, "3")])));
        book.apply(&applied.inverse).unwrap();
        assert_eq!(book, bar());
    }

    #[test]
    fn packaging_that_is_there_already_is_added_up() {
        let mut book = bar();
        let [from, to] = [1, 2].map(|id| Goods::Packaging(packaging_id(id)));
        let edit = Edit::instead(&book, from, to).unwrap().unwrap();
        book.apply(&edit).unwrap();
        let set = book.packaging_sets().next().unwrap();
        assert_eq!(set.uses, [use_of(2, "5")], "2 and 3, by hand");
        assert_eq!(book.containers().next().unwrap().set, [use_of(2, "1")]);
        assert!(!book.contains(Key::from(from)));
    }

    #[test]
    fn nothing_takes_the_place_of_another_kind() {
        let [ingredient, bottle] = [Goods::Ingredient(ingredient_id(1)), Goods::Packaging(packaging_id(1))];
        assert_eq!(Edit::instead(&bar(), ingredient, bottle), Ok(None));
    }
}
