//! How long restore points are kept.

use std::collections::BTreeMap;

use super::{Point, Why};
use crate::foundation::measure::Date;

/// The points of this many days are kept, however many they are.
pub const DAYS: i32 = 14;

/// The last points of each book, this many, are kept, however old they are.
pub const POINTS: usize = 20;

/// A deleted book is kept for this many days.
pub const DELETED_DAYS: i32 = 30;

/// The most bytes of all points of all books together. A single point may be larger.
pub const MOST_BYTES: u64 = 20_000_000;

/// The points to be deleted, as places in the list of points.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ToGo {
    /// Points that are too old.
    pub aged: Vec<usize>,
    /// Points that make room, since all together are too large: the oldest first, those of deleted books last,
    /// and never the newest of all.
    pub for_room: Vec<usize>,
}

/// The points of a list, in any order, that are to be deleted on the day `today`.
///
/// Of a book on the shelf, the points of the last [`DAYS`] days and its last [`POINTS`] stay. Of a deleted
/// book, whose last point is that of its deletion, all stay for [`DELETED_DAYS`].
pub fn to_go(points: &[Point], today: Date) -> ToGo {
    let mut newest_first: Vec<(usize, &Point)> = points.iter().enumerate().collect();
    newest_first.sort_by(|(_, one), (_, other)| (other.at.millis, &other.id).cmp(&(one.at.millis, &one.id)));
    let mut of_book = BTreeMap::new();
    let mut go = ToGo::default();
    let mut stay: Vec<(usize, u64, bool)> = Vec::new();
    for (place, point) in newest_first {
        let (later, deleted_on) = of_book.entry(point.book).or_insert((0_usize, None));
        if *later == 0 && point.why == Why::Deletion {
            *deleted_on = Some(point.at.day);
        }
        let aged = match deleted_on {
            Some(day) => today.days_since(*day) > DELETED_DAYS,
            None => *later >= POINTS && today.days_since(point.at.day) > DAYS,
        };
        if aged {
            go.aged.push(place);
        } else {
            stay.push((place, point.bytes, *later == 0 && deleted_on.is_some()));
        }
        *later = later.saturating_add(1);
    }
    let mut bytes = stay.iter().fold(0_u64, |sum, (_, bytes, _)| sum.saturating_add(*bytes));
    let older = stay.get(1..).unwrap_or_default();
    for whole_book in [false, true] {
        for (place, of_it, _) in older.iter().rev().filter(|(_, _, deleted)| *deleted == whole_book) {
            if bytes > MOST_BYTES {
                bytes = bytes.saturating_sub(*of_it);
                go.for_room.push(*place);
            }
        }
    }
    go
}
