//! Lists that are put in order while they are filled.
//!
//! Each item goes to its place as it comes, and nothing is sorted: for every kind of list that is
//! sorted, the standard library's `sort` adds about 1 kB to what the app loads first. The lists are
//! short; of one with many thousand items each insertion would move too many.

/// Puts an item behind all those that `goes_first` says stand before it. The list is in that order
/// already, and stays so; what says that of equals too keeps them in the order of their coming.
pub fn insert<T>(list: &mut Vec<T>, item: T, goes_first: impl Fn(&T, &T) -> bool) {
    let place = list.partition_point(|other| goes_first(other, &item));
    list.insert(place, item);
}

/// Puts an item in its place in a list that rises, unless it is there.
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
