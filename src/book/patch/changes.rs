//! What differs between two trees, value by value, and putting that into a third.

use serde::{Deserialize, Serialize};

use super::tree::Tree;

/// One step of the way from a record to a value in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Step {
    /// The field of this name.
    Field(String),
    /// The element of a list that is called so: by its id, or by what it is of.
    Element(String),
    /// The order of a list's elements: a list of what they are called.
    Order,
}

/// One value that differs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Change {
    /// The way to it; empty for the whole record.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub path: Vec<Step>,
    /// What was there; none where nothing was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub before: Option<Tree>,
    /// What is there afterwards; none where nothing is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after: Option<Tree>,
    /// Of an element that comes or goes: what stands before it in its list. It goes behind the
    /// last of these that is there.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub behind: Vec<String>,
}

impl Change {
    /// The change that takes this one back.
    pub(super) fn inverse(&self) -> Change {
        let Change { path, before, after, behind } = self.clone();
        Change { path, before: after, after: before, behind }
    }

    /// Whether both are about the same value, or one about a part of the other's.
    pub(super) fn meets(&self, other: &Change) -> bool {
        self.path.iter().zip(&other.path).all(|(one, other)| one == other)
    }

    /// Puts the value into `root`, unless something else than what was there before stands there.
    /// Gives back what stands there then.
    pub(super) fn put(&self, root: &mut Option<Tree>) -> Result<(), Option<Tree>> {
        let Some((last, way)) = self.path.split_last() else {
            return self.put_at(root.clone(), |value| *root = value);
        };
        let mut at = root.as_mut().ok_or(None)?;
        let next_steps = self.path.iter().skip(1);
        for (step, next) in way.iter().zip(next_steps) {
            at = down(at, step, next).ok_or(None)?;
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
            _ => Err(None),
        }
    }

    /// Puts the value into `root` whatever stands there. What is on the way to it and is not there
    /// any more comes from `mine`, the record as the person had it.
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

    fn put_at(&self, stands: Option<Tree>, set: impl FnOnce(Option<Tree>)) -> Result<(), Option<Tree>> {
        if stands == self.after {
            return Ok(());
        }
        if stands != self.before {
            return Err(stands);
        }
        set(self.after.clone());
        Ok(())
    }

    /// Where an element that comes stands in its list.
    fn place_in(&self, list: &[Tree]) -> usize {
        let before = |element: &Tree| called(element).is_some_and(|name| self.behind.contains(&name));
        list.iter().rposition(before).map_or(0, |place| place.saturating_add(1))
    }

    fn put_in_order(&self, list: &mut Vec<Tree>) -> Result<(), Option<Tree>> {
        let (before, after) = (order_of(self.before.as_ref()), order_of(self.after.as_ref()));
        let stand: Vec<String> = list.iter().filter_map(called).collect();
        let of_both = |order: &[String], others: &[String]| -> Vec<String> {
            order.iter().filter(|name| others.contains(name)).cloned().collect()
        };
        if of_both(&stand, &before) != of_both(&before, &stand) {
            let now = of_both(&stand, &after) == of_both(&after, &stand);
            return if now { Ok(()) } else { Err(Some(order(&stand))) };
        }
        order_as(&after, list);
        Ok(())
    }
}

/// Puts the elements that are named into this order, the others after them.
fn order_as(names: &[String], list: &mut Vec<Tree>) {
    let mut rest = std::mem::take(list);
    for name in names {
        if let Some(place) = rest.iter().position(|element| called(element).as_ref() == Some(name)) {
            list.push(rest.remove(place));
        }
    }
    list.append(&mut rest);
}

/// One step down. A list that is not there, since nothing is in it, is made.
fn down<'a>(tree: &'a mut Tree, step: &Step, next: &Step) -> Option<&'a mut Tree> {
    match (step, tree) {
        (Step::Field(name), Tree::Fields(fields)) => {
            if !fields.iter().any(|(field, _)| field == name) && matches!(next, Step::Element(_)) {
                fields.push((name.clone(), Tree::List(Vec::new())));
            }
            fields.iter_mut().find(|(field, _)| field == name).map(|(_, value)| value)
        }
        (Step::Element(name), Tree::List(list)) => {
            list.iter_mut().find(|element| called(element).as_ref() == Some(name))
        }
        _ => None,
    }
}

/// The fields that tell the elements of a list apart. Of an element that has none of them
/// nothing does: its list is one value.
const TOLD_APART_BY: [&[&str]; 7] = [
    &["id"],
    &["drink", "container"],
    &["goods", "pack"],
    &["packaging"],
    &["ingredient", "stage"],
    &["from"],
    &["day", "price"],
];

/// What an element of a list is called.
fn called(element: &Tree) -> Option<String> {
    if let Tree::Text(text) = element {
        return Some(text.clone());
    }
    let by = TOLD_APART_BY.iter().find(|by| by.iter().all(|field| element.field(field).is_some()))?;
    let values = by.iter().filter_map(|field| element.field(field));
    let texts: Option<Vec<String>> = values.map(|value| serde_json::to_string(value).ok()).collect();
    texts.map(|texts| texts.join(" "))
}

/// What the elements of a list are called; none where one is called nothing, or two the same.
fn all_called(list: &[Tree]) -> Option<Vec<String>> {
    let mut names: Vec<String> = Vec::with_capacity(list.len());
    for element in list {
        let name = called(element)?;
        if names.contains(&name) {
            return None;
        }
        names.push(name);
    }
    Some(names)
}

/// Longest list whose elements are compared one by one; a longer one is one value.
const LONGEST_LIST: usize = 2_000;

/// What differs between two values; either may be nothing.
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

/// Whether a list that is not there is the same as one of nothing. Of the lists of names one is
/// not: no list of allergens is a list that nobody made.
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

/// Whether the elements of the lists could be told apart; what differs is then among `changes`.
fn compare_lists(before: &[Tree], after: &[Tree], path: &mut Vec<Step>, changes: &mut Vec<Change>) -> bool {
    if before.len().max(after.len()) > LONGEST_LIST {
        return false;
    }
    let (Some(names_before), Some(names_after)) = (all_called(before), all_called(after)) else { return false };
    let element = |list: &'_ [Tree], names: &[String], name: &String| -> Option<Tree> {
        names.iter().position(|other| other == name).and_then(|place| list.get(place)).cloned()
    };
    let up_to = |names: &[String], name: &String| -> Vec<String> {
        names.iter().take_while(|other| *other != name).cloned().collect()
    };
    let new = names_after.iter().filter(|name| !names_before.contains(name));
    for name in names_before.iter().chain(new) {
        let (was, is) = (element(before, &names_before, name), element(after, &names_after, name));
        let behind = match (&was, &is) {
            (None, _) => up_to(&names_after, name),
            (_, None) => up_to(&names_before, name),
            _ => Vec::new(),
        };
        path.push(Step::Element(name.clone()));
        compare(was.as_ref(), is.as_ref(), path, &behind, changes);
        path.pop();
    }
    let stays = |names: &[String], others: &[String]| -> Vec<String> {
        names.iter().filter(|name| others.contains(name)).cloned().collect()
    };
    if stays(&names_before, &names_after) != stays(&names_after, &names_before) {
        path.push(Step::Order);
        changes.push(Change {
            path: path.clone(),
            before: Some(order(&names_before)),
            after: Some(order(&names_after)),
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
