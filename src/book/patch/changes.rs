//! The differences between two trees, value by value, and how they are applied to a third.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::Found;
use super::tree::Tree;

/// One step of the path from a record to a value in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Step {
    /// The field of this name.
    Field(String),
    /// The element of a list with this name: its id, or what it is of.
    Element(String),
    /// The order of a list's elements: a list of their names.
    Order,
}

/// One value that differs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Change {
    /// The path to it; empty for the whole record.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub path: Vec<Step>,
    /// The value before, if any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub before: Option<Tree>,
    /// The value after, if any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after: Option<Tree>,
    /// For an element that is added or removed: the names of the nearest few before it in its list. It is
    /// inserted behind the last of these that is there.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub behind: Vec<String>,
}

/// What is in the way of a change, and its value if there is one.
pub(super) type Met = (Found, Option<Tree>);

const REMOVED: Met = (Found::Removed, None);
const OTHER_FORM: Met = (Found::OtherForm, None);

impl Change {
    /// The change that undoes this one.
    pub(super) fn inverse(&self) -> Change {
        let Change { path, before, after, behind } = self.clone();
        Change { path, before: after, after: before, behind }
    }

    /// Whether both change the same value, or one changes a part of what the other changes.
    pub(super) fn meets(&self, other: &Change) -> bool {
        self.path.iter().zip(&other.path).all(|(one, other)| one == other)
    }

    /// Puts the value into `root`.
    ///
    /// # Errors
    /// What is there, if that is neither the value before nor the value after.
    pub(super) fn put(&self, root: &mut Option<Tree>) -> Result<(), Met> {
        let Some((last, way)) = self.path.split_last() else {
            return self.put_at(root.clone(), |value| *root = value);
        };
        let mut at = root.as_mut().ok_or(REMOVED)?;
        let next_steps = self.path.iter().skip(1);
        for (step, next) in way.iter().zip(next_steps) {
            at = down(at, step, next)?;
        }
        match (last, at) {
            (Step::Field(name), Tree::Fields(fields)) => {
                let place = fields.iter().position(|(field, _)| field == name);
                let stands = place.and_then(|place| fields.get(place)).map(|(_, value)| value.clone());
                self.put_at(stands, |value| {
                    let field = value.map(|value| (name.clone(), value));
                    match (place, field) {
                        (Some(place), field) => {
                            fields.splice(place..=place, field);
                        }
                        (None, field) => fields.extend(field),
                    }
                })
            }
            (Step::Element(name), Tree::List(list)) => {
                let place = list.iter().position(|element| called(element).as_ref() == Some(name));
                let stands = place.and_then(|place| list.get(place)).cloned();
                self.put_at(stands, |value| match (place, value) {
                    (Some(place), value) => {
                        list.splice(place..=place, value);
                    }
                    (None, Some(value)) => list.insert(self.place_in(list), value),
                    (None, None) => {}
                })
            }
            (Step::Order, Tree::List(list)) => self.put_in_order(list),
            _ => Err(OTHER_FORM),
        }
    }

    /// Puts the value into `root`, whatever is there. What is missing on the path to it comes from `mine`, the
    /// record as the person had it.
    pub(super) fn put_over(&self, root: &mut Option<Tree>, mine: Option<&Tree>) {
        self.over(&self.path, root, mine);
    }

    fn over(&self, path: &[Step], stands: &mut Option<Tree>, mine: Option<&Tree>) {
        let Some((step, rest)) = path.split_first() else {
            stands.clone_from(&self.after);
            return;
        };
        match (step, stands.as_mut()) {
            (Step::Field(name), Some(Tree::Fields(fields))) => {
                let place = fields.iter().position(|(field, _)| field == name);
                let mut value = place.and_then(|place| fields.get(place)).map(|(_, value)| value.clone());
                self.over(rest, &mut value, mine.and_then(|mine| mine.field(name)));
                let field = value.map(|value| (name.clone(), value));
                match place {
                    Some(place) => drop(fields.splice(place..=place, field)),
                    None => fields.extend(field),
                }
            }
            (Step::Element(name), Some(Tree::List(list))) => {
                let named = |element: &Tree| called(element).as_ref() == Some(name);
                let place = list.iter().position(named);
                let mut value = place.and_then(|place| list.get(place)).cloned();
                let mine = match mine {
                    Some(Tree::List(mine)) => mine.iter().find(|element| named(element)),
                    _ => None,
                };
                self.over(rest, &mut value, mine);
                match (place, value) {
                    (Some(place), value) => drop(list.splice(place..=place, value)),
                    (None, Some(value)) => list.insert(self.place_in(list), value),
                    (None, None) => {}
                }
            }
            (Step::Order, Some(Tree::List(list))) => order_as(&order_of(self.after.as_ref()), list),
            _ => *stands = mine.cloned(),
        }
    }

    fn put_at(&self, stands: Option<Tree>, set: impl FnOnce(Option<Tree>)) -> Result<(), Met> {
        if stands == self.after {
            return Ok(());
        }
        if stands != self.before {
            return Err((Found::Value, stands));
        }
        set(self.after.clone());
        Ok(())
    }

    /// The place of an added element in its list.
    fn place_in(&self, list: &[Tree]) -> usize {
        let before = |element: &Tree| called(element).is_some_and(|name| self.behind.contains(&name));
        list.iter().rposition(before).map_or(0, |place| place.saturating_add(1))
    }

    fn put_in_order(&self, list: &mut Vec<Tree>) -> Result<(), Met> {
        let (before, after) = (order_of(self.before.as_ref()), order_of(self.after.as_ref()));
        let stand: Vec<String> = list.iter().filter_map(called).collect();
        let of_both = |order: &[String], others: &[String]| -> Vec<String> {
            order.iter().filter(|name| others.contains(name)).cloned().collect()
        };
        if of_both(&stand, &before) != of_both(&before, &stand) {
            let now = of_both(&stand, &after) == of_both(&after, &stand);
            return if now { Ok(()) } else { Err((Found::Value, Some(order(&stand)))) };
        }
        order_as(&after, list);
        Ok(())
    }
}

/// Puts the elements with these names into this order, and the others after them.
fn order_as(names: &[String], list: &mut Vec<Tree>) {
    let mut rest = std::mem::take(list);
    for name in names {
        if let Some(place) = rest.iter().position(|element| called(element).as_ref() == Some(name)) {
            list.push(rest.remove(place));
        }
    }
    list.append(&mut rest);
}

/// Goes one step down the path. A list that is left out since it is empty is made.
fn down<'a>(tree: &'a mut Tree, step: &Step, next: &Step) -> Result<&'a mut Tree, Met> {
    match (step, tree) {
        (Step::Field(name), Tree::Fields(fields)) => {
            if !fields.iter().any(|(field, _)| field == name) && matches!(next, Step::Element(_)) {
                fields.push((name.clone(), Tree::List(Vec::new())));
            }
            let field = fields.iter_mut().find(|(field, _)| field == name);
            field.map(|(_, value)| value).ok_or(OTHER_FORM)
        }
        (Step::Element(name), Tree::List(list)) => {
            list.iter_mut().find(|element| called(element).as_ref() == Some(name)).ok_or(REMOVED)
        }
        _ => Err(OTHER_FORM),
    }
}

/// The fields by which the elements of a list are named. If an element has none of these sets of fields, its
/// list is compared as a single value.
const TOLD_APART_BY: [&[&str]; 8] = [
    &["id"],
    &["drink", "container"],
    &["goods", "pack"],
    &["packaging"],
    &["ingredient", "stage"],
    &["from"],
    &["day", "price"],
    &["kind"],
];

/// The name of a list's element. Returns `None` if it has none.
fn called(element: &Tree) -> Option<String> {
    if let Tree::Text(text) = element {
        return Some(text.clone());
    }
    let by = TOLD_APART_BY.iter().find(|by| by.iter().all(|field| element.field(field).is_some()))?;
    let values = by.iter().filter_map(|field| element.field(field));
    let texts: Option<Vec<String>> = values.map(|value| serde_json::to_string(value).ok()).collect();
    texts.map(|texts| texts.join(" "))
}

/// The names of a list's elements in order, and the place of each.
struct Names {
    all: Vec<String>,
    places: BTreeMap<String, usize>,
}

impl Names {
    /// Returns `None` if an element has no name, or if two have the same.
    fn of(list: &[Tree]) -> Option<Names> {
        let all: Vec<String> = list.iter().map(called).collect::<Option<_>>()?;
        let places: BTreeMap<String, usize> =
            all.iter().enumerate().map(|(place, name)| (name.clone(), place)).collect();
        (places.len() == all.len()).then_some(Names { all, places })
    }

    fn contain(&self, name: &String) -> bool {
        self.places.contains_key(name)
    }

    /// The element of this name in the list of these names.
    fn element<'a>(&self, list: &'a [Tree], name: &String) -> Option<&'a Tree> {
        self.places.get(name).and_then(|place| list.get(*place))
    }

    /// The names that the other list has too, in this one's order.
    fn shared(&self, others: &Names) -> Vec<String> {
        self.all.iter().filter(|name| others.contain(name)).cloned().collect()
    }

    /// The nearest few names before one, and the nearest few of those that are `shared`: its neighbours may
    /// not be there when it is put back.
    fn behind(&self, shared: &[String], name: &String) -> Vec<String> {
        let place = |name: &String| self.places.get(name).copied();
        let own = place(name).unwrap_or_default();
        let before = shared.partition_point(|other| place(other) < Some(own));
        let last = |names: &[String]| names.iter().rev().take(NEAREST).rev().cloned().collect::<Vec<_>>();
        let mut behind = last(shared.get(..before).unwrap_or_default());
        let mut nearest = last(self.all.get(..own).unwrap_or_default());
        nearest.retain(|name| !behind.contains(name));
        behind.append(&mut nearest);
        behind
    }
}

/// How many names at most tell where an element goes when it comes back.
const NEAREST: usize = 4;

/// The longest list whose elements are compared one by one. A longer one is a single value.
const LONGEST_LIST: usize = 2_000;

/// The differences between two values, either of which may be missing.
pub(super) fn between(before: Option<&Tree>, after: Option<&Tree>) -> Vec<Change> {
    let mut changes = Vec::new();
    compare(before, after, &mut Vec::new(), &[], &mut changes);
    changes
}

fn compare(
    before: Option<&Tree>,
    after: Option<&Tree>,
    path: &mut Vec<Step>,
    behind: &[String],
    changes: &mut Vec<Change>,
) {
    if before == after {
        return;
    }
    match (before, after) {
        (Some(Tree::Fields(before)), Some(Tree::Fields(after))) => compare_fields(before, after, path, changes),
        (Some(Tree::List(before)), Some(Tree::List(after))) if compare_lists(before, after, path, changes) => {}
        (None, Some(Tree::List(after))) if may_be_left_out(after) && compare_lists(&[], after, path, changes) => {}
        (Some(Tree::List(before)), None) if may_be_left_out(before) && compare_lists(before, &[], path, changes) => {}
        _ => changes.push(Change {
            path: path.clone(),
            before: before.cloned(),
            after: after.cloned(),
            behind: behind.to_vec(),
        }),
    }
}

/// Whether a list is left out if it is empty. A list of names is not: a missing list of allergens is one that
/// nobody made.
fn may_be_left_out(list: &[Tree]) -> bool {
    matches!(list.first(), Some(Tree::Fields(_)))
}

fn compare_fields(
    before: &[(String, Tree)],
    after: &[(String, Tree)],
    path: &mut Vec<Step>,
    changes: &mut Vec<Change>,
) {
    let value = |fields: &'_ [(String, Tree)], name: &str| -> Option<Tree> {
        fields.iter().find(|(field, _)| field == name).map(|(_, value)| value.clone())
    };
    let new = after.iter().filter(|(name, _)| !before.iter().any(|(field, _)| field == name));
    for (name, _) in before.iter().chain(new) {
        path.push(Step::Field(name.clone()));
        compare(value(before, name).as_ref(), value(after, name).as_ref(), path, &[], changes);
        path.pop();
    }
}

/// Compares two lists element by element, and adds the differences to `changes`. Returns whether that was
/// possible: the elements must have distinct names, and not be too many.
fn compare_lists(before: &[Tree], after: &[Tree], path: &mut Vec<Step>, changes: &mut Vec<Change>) -> bool {
    if before.len().max(after.len()) > LONGEST_LIST {
        return false;
    }
    let (Some(names_before), Some(names_after)) = (Names::of(before), Names::of(after)) else { return false };
    let (stay_before, stay_after) = (names_before.shared(&names_after), names_after.shared(&names_before));
    let new = names_after.all.iter().filter(|name| !names_before.contain(name));
    for name in names_before.all.iter().chain(new) {
        let (was, is) = (names_before.element(before, name), names_after.element(after, name));
        let behind = match (was, is) {
            (None, _) => names_after.behind(&stay_after, name),
            (_, None) => names_before.behind(&stay_before, name),
            _ => Vec::new(),
        };
        path.push(Step::Element(name.clone()));
        compare(was, is, path, &behind, changes);
        path.pop();
    }
    if stay_before != stay_after {
        path.push(Step::Order);
        changes.push(Change {
            path: path.clone(),
            before: Some(order(&names_before.all)),
            after: Some(order(&names_after.all)),
            behind: Vec::new(),
        });
        path.pop();
    }
    true
}

fn order(names: &[String]) -> Tree {
    Tree::List(names.iter().cloned().map(Tree::Text).collect())
}

fn order_of(order: Option<&Tree>) -> Vec<String> {
    match order {
        Some(Tree::List(names)) => names.iter().filter_map(called).collect(),
        _ => Vec::new(),
    }
}
