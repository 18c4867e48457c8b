//! Lists that are put in order while they are filled.
//!
//! Each item is inserted at its place instead of sorting the list at the end: for every type of list that is
//! sorted, the standard library's `sort` adds about 1 kB to the first load. The lists are short; in one with
//! many thousand items each insertion would move too many.

/// Inserts an item behind all those for which `goes_first(other, item)` is true. The list must be in that
/// order already, and stays so. If `goes_first` is true for equal items too, they stay in the order in which
/// they were inserted.
pub fn insert<T>(list: &mut Vec<T>, item: T, goes_first: impl Fn(&T, &T) -> bool) {
    let place = list.partition_point(|other| goes_first(other, &item));
    list.insert(place, item);
}

/// Inserts an item at its place in a rising list, unless it is in it already.
pub fn insert_once<T: Ord>(list: &mut Vec<T>, item: T) {
    if let Err(place) = list.binary_search(&item) {
        list.insert(place, item);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_goes_to_its_place() {
        let mut rising = Vec::new();
        for item in [3, 1, 2] {
            insert(&mut rising, item, |other, item| other < item);
        }
        assert_eq!(rising, [1, 2, 3]);
    }

    #[test]
    fn equals_stay_in_the_order_of_their_coming_if_that_is_asked_for() {
        let of = |goes_first: fn(&(u8, char), &(u8, char)) -> bool| {
            let mut list = Vec::new();
            for item in [(2, 'a'), (1, 'b'), (2, 'c'), (1, 'd')] {
                insert(&mut list, item, goes_first);
            }
            list.into_iter().map(|(_, letter)| letter).collect::<String>()
        };
        assert_eq!(of(|other, item| other.0 <= item.0), "bdac");
        assert_eq!(of(|other, item| other.0 < item.0), "dbca");
        assert_eq!(of(|other, item| other.0 >= item.0), "acbd");
    }

    #[test]
    fn what_is_there_is_not_put_in_again() {
        let mut list = Vec::new();
        for item in [2, 1, 2, 3, 1] {
            insert_once(&mut list, item);
        }
        assert_eq!(list, [1, 2, 3]);
    }
}
