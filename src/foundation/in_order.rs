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

/// What a name is put in order by, so that its numbers count as such: "8 oz bottle" before "12 oz bottle".
pub fn name_with_numbers(name: &str) -> String {
    let mut key = String::with_capacity(name.len());
    let mut rest = name;
    while let Some(begin) = rest.find(|sign: char| sign.is_ascii_digit()) {
        let (before, from) = rest.split_at(begin);
        let (digits, after) = from.split_at(from.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(from.len()));
        let digits = digits.trim_start_matches('0');
        key.push_str(before);
        key.extend(std::iter::repeat_n('0', DIGITS.saturating_sub(digits.len())));
        key.push_str(digits);
        rest = after;
    }
    key.push_str(rest);
    key
}

/// As many digits as a number in a name has at the most, to be told from others by size.
const DIGITS: usize = 12;

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
    fn numbers_in_names_count_as_numbers() {
        let mut names = Vec::new();
        let all = [
            "16 oz bottle",
            "8 oz bottle",
            "12 oz cold cup",
            "apples",
            "12 oz bottle",
            "2 oz shot",
            "Cap, 38 mm",
            "Cap, 9 mm",
        ];
        for name in all {
            insert(&mut names, name, |other, name| name_with_numbers(other) < name_with_numbers(name));
        }
        let ordered = [
            "2 oz shot",
            "8 oz bottle",
            "12 oz bottle",
            "12 oz cold cup",
            "16 oz bottle",
            "Cap, 9 mm",
            "Cap, 38 mm",
            "apples",
        ];
        assert_eq!(names, ordered);
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
