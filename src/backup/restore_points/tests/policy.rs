use super::*;
use crate::backup::restore_points::policy::ToGo;

#[test]
fn points_of_fourteen_days_stay_and_the_last_twenty_however_old() {
    // One a day for sixty days, the last today: those of the last 14 days are among the last 20.
    let daily: Vec<Point> = (0..60).map(|days| point(ID, days, Why::FirstChange, 1000)).collect();
    let go = to_go(&daily, at(59).day);
    assert_eq!(go.aged.len(), 60 - 20);
    assert!(go.aged.iter().all(|place| *place < 40) && go.for_room.is_empty(), "the oldest");
    // Three a day: of 14 days and today there are 45.
    let often: Vec<Point> = (0..180).map(|number| point(ID, number / 3, Why::Import, 1000)).collect();
    assert_eq!(to_go(&often, at(59).day).aged.len(), 180 - 45);
    // Nobody came for a year.
    assert_eq!(to_go(&daily[..20], at(365).day), ToGo::default());
}

#[test]
fn twenty_points_are_those_of_one_book() {
    let both: Vec<Point> =
        (0..40).map(|days| point(if days % 2 == 0 { ID } else { OTHER }, days, Why::FirstChange, 1)).collect();
    assert_eq!(to_go(&both, at(365).day), ToGo::default());
}

#[test]
fn a_deleted_book_stays_thirty_days_with_its_points() {
    let points = [point(ID, 0, Why::Import, 1), point(ID, 1, Why::FirstChange, 1), point(ID, 2, Why::Deletion, 1)];
    assert_eq!(to_go(&points, at(2 + 30).day).aged, [0_usize; 0]);
    assert_eq!(to_go(&points, at(2 + 31).day).aged, [2, 1, 0]);
    // Brought back and changed, it is a book like others.
    let mut back = points.to_vec();
    back.push(point(ID, 3, Why::FirstChange, 1));
    assert_eq!(to_go(&back, at(2 + 31).day), ToGo::default());
}

#[test]
fn the_oldest_go_for_room_deleted_books_last_and_the_newest_never() {
    let deleted = point(OTHER, 0, Why::Deletion, 6_000_000);
    let points = [
        deleted,
        point(ID, 1, Why::FirstChange, 6_000_000),
        point(ID, 2, Why::FirstChange, 6_000_000),
        point(ID, 3, Why::FirstChange, 6_000_000),
    ];
    assert_eq!(to_go(&points, at(3).day), ToGo { aged: vec![], for_room: vec![1] });
    let mut larger = points.to_vec();
    larger.push(point(ID, 4, Why::Import, 15_000_000));
    // 15 and 6 MB are too much for anything but the newest.
    assert_eq!(to_go(&larger, at(4).day).for_room, [1, 2, 3, 0]);
    larger.push(point(ID, 5, Why::Import, 21_000_000));
    assert_eq!(to_go(&larger, at(5).day).for_room, [1, 2, 3, 4, 0]);
    assert_eq!(to_go(&larger[5..], at(5).day), ToGo::default());
    // Just as much as there may be.
    let fits = [point(ID, 1, Why::Import, 10_000_000), point(ID, 2, Why::Import, 10_000_000)];
    assert_eq!(to_go(&fits, at(2).day), ToGo::default());
}
