use super::*;
use crate::book::{Key, Refusal};
use crate::store::Fault;
use crate::support::dice::Dice;
use crate::support::runs::Runs;

fn ingredient_key(id: u64) -> Key {
    Key::Ingredient(IngredientId::from_random(id))
}

#[test]
fn edits_of_different_records_in_two_tabs_both_stand() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage), Tab::open(&storage));
    left.put(ingredient(1, "Pear"));
    right.put(ingredient(2, "Basil"));
    storage.run();
    assert_eq!(right.keeper.saving(), Saving::Saved { revision: 3 });
    left.keeper.heard(3);
    storage.run();
    assert_eq!(left.book(), right.book());
    assert_eq!(stored(&storage), left.book());
    let names = [left.book().name(ingredient_key(1)), left.book().name(ingredient_key(2))];
    assert_eq!(names, ["Pear", "Basil"]);
}

#[test]
fn what_another_tab_saved_is_taken_in_removals_included() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage), Tab::open(&storage));
    left.edit(&Edit::Remove(Key::Drink(DrinkId::from_random(1))));
    left.edit(&Edit::Remove(ingredient_key(1)));
    left.put(ingredient(7, "Beet"));
    left.put(ingredient(8, "Gone again"));
    left.edit(&Edit::Remove(ingredient_key(8)));
    storage.run();
    right.keeper.heard(6);
    storage.run();
    assert_eq!(right.keeper.saving(), Saving::Saved { revision: 6 });
    assert_eq!(right.book(), left.book());
}

#[test]
fn old_news_are_no_news() {
    let storage = storage();
    let tab = Tab::open(&storage);
    tab.keeper.heard(1);
    storage.run();
    assert_eq!(tab.told(), []);
}

#[test]
fn two_edits_of_one_record_are_a_conflict_and_nothing_is_overwritten() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage), Tab::open(&storage));
    left.put(ingredient(1, "Pear"));
    right.put(ingredient(1, "Quince"));
    storage.run();
    assert_eq!(left.keeper.saving(), Saving::Saved { revision: 2 });
    let Saving::NotSaved { waiting: 1, fault: Fault::Conflict { theirs, refusal: None } } = right.keeper.saving()
    else {
        panic!("{:?}", right.keeper.saving())
    };
    assert_eq!(theirs.iter().map(|row| row.record.clone()).collect::<Vec<_>>(), [Some(ingredient(1, "Pear"))]);
    assert_eq!(stored(&storage), left.book());
    assert_eq!(right.book().name(ingredient_key(1)), "Quince", "what the person sees stays");

    // Keeping one's own: opened again, edited again, saved.
    let again = Tab::open(&storage);
    let own = right.keeper.unsaved(&again.book()).unwrap();
    assert_eq!(own, Edit::Together(vec![Edit::Put(ingredient(1, "Quince"))]));
    again.edit(&own);
    storage.run();
    assert_eq!(stored(&storage).name(ingredient_key(1)), "Quince");
}

#[test]
fn using_what_another_tab_removed_is_a_conflict() {
    let storage = storage();
    let (left, right) = (Tab::open(&storage), Tab::open(&storage));
    left.edit(&Edit::Remove(ingredient_key(2)));
    right.put(drink(2, &[2]));
    storage.run();
    let Saving::NotSaved { fault: Fault::Conflict { refusal, .. }, .. } = right.keeper.saving() else {
        panic!("{:?}", right.keeper.saving())
    };
    let by = vec![Key::Drink(DrinkId::from_random(2))];
    assert_eq!(refusal, Some(Refusal::InUse { key: ingredient_key(2), by }));
    assert_eq!(stored(&storage), left.book(), "the stored book still reads");
}

#[test]
fn after_news_what_waits_is_saved_as_one_step() {
    // The first edit alone would use what the other tab removed; both together do not.
    let storage = storage();
    let (left, right) = (Tab::open(&storage), Tab::open(&storage));
    left.edit(&Edit::Remove(ingredient_key(2)));
    storage.run();
    storage.fail_next(Fault::Full);
    right.put(drink(2, &[2]));
    storage.run();
    right.put(drink(2, &[1]));
    let before = storage.commits();
    storage.run();
    assert_eq!(storage.commits() - before, 2, "one that is behind, one for all that waits");
    assert_eq!(right.keeper.saving(), Saving::Saved { revision: 3 });
    assert_eq!(stored(&storage), right.book());
}

#[test]
fn t03_of_500_interleaved_edits_in_three_tabs_each_is_stored_or_reported() {
    let mut runs = Runs::of("T3");
    for seed in 0..Runs::asked_for(8).into() {
        runs.begin();
        let storage = storage();
        let mut dice = Dice::new(seed);
        let mut tabs = [Tab::open(&storage), Tab::open(&storage), Tab::open(&storage)];
        let mut reported = 0;
        for edit in 0..500_u64 {
            let tab = &tabs[dice.below(3) as usize];
            tab.put(ingredient(1000 + edit, "New"));
            tab.put(ingredient(1 + dice.below(2), &format!("Edit {edit}")));
            if dice.below(3) == 0 {
                storage.fail_next(Fault::Full);
            }
            if dice.below(3) > 0 {
                storage.run();
            }
            for tab in &mut tabs {
                let saving = tab.keeper.saving();
                if let Saving::NotSaved { fault: Fault::Conflict { .. }, .. } = saving {
                    reported += 1;
                    let again = Tab::open(&storage);
                    again.edit(&tab.keeper.unsaved(&again.book()).unwrap());
                    *tab = again;
                }
            }
        }
        // Then all is quiet, and everyone hears of everything.
        for _ in 0..3 {
            for tab in &tabs {
                tab.keeper.heard(u64::MAX);
                storage.run();
                if let Saving::NotSaved { fault: Fault::Conflict { .. }, .. } = tab.keeper.saving() {
                    let again = Tab::open(&storage);
                    again.edit(&tab.keeper.unsaved(&again.book()).unwrap());
                    storage.run();
                }
            }
        }
        let stored = stored(&storage);
        for edit in 0..500_u64 {
            assert!(stored.contains(ingredient_key(1000 + edit)), "seed {seed}: edit {edit} is lost");
        }
        assert!(reported > 0, "the tabs did get in each other's way");
        runs.held();
    }
}
