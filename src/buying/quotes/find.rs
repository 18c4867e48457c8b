//! Goods found by a few letters.

/// How letters were found, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Found {
    /// The name begins with them.
    BeginningOfName,
    /// A word of the name begins with them.
    BeginningOfWord,
    /// They stand within the name.
    InName,
    /// A word of the supplier's name begins with them.
    Supplier,
}

impl Found {
    /// Whether they were found in the name of the goods.
    pub fn is_by_name(self) -> bool {
        self < Found::Supplier
    }
}

/// How `letters` are found in the name of goods or in that of the supplier whose price is asked,
/// all in lower case. Returns `None` if they are not. An empty text is found in every name.
pub fn find(name: &str, supplier: &str, letters: &str) -> Option<Found> {
    if name.starts_with(letters) {
        Some(Found::BeginningOfName)
    } else if begins_a_word(name, letters) {
        Some(Found::BeginningOfWord)
    } else if name.contains(letters) {
        Some(Found::InName)
    } else if begins_a_word(supplier, letters) {
        Some(Found::Supplier)
    } else {
        None
    }
}

fn begins_a_word(name: &str, letters: &str) -> bool {
    name.match_indices(letters).any(|(place, _)| {
        let before = name.get(..place).and_then(|before| before.chars().next_back());
        before.is_none_or(|sign| !sign.is_alphanumeric())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn beginnings_go_before_what_stands_within() {
        let found = |name: &str, letters: &str| find(name, "tansy (invented)", letters);
        assert_eq!(found("apples", "app"), Some(Found::BeginningOfName));
        assert_eq!(found("green apples", "app"), Some(Found::BeginningOfWord));
        assert_eq!(found("chunks (apple)", "app"), Some(Found::BeginningOfWord));
        assert_eq!(found("pineapples", "app"), Some(Found::InName));
        assert_eq!(found("pineapple apples", "app"), Some(Found::BeginningOfWord));
        assert_eq!(found("limes", "inv"), Some(Found::Supplier));
        assert_eq!(found("limes", "ansy"), None, "letters within a supplier's name are too many");
        assert_eq!(found("crème", "ème"), Some(Found::InName));
        assert_eq!(found("limes", ""), Some(Found::BeginningOfName));
        assert!(Found::BeginningOfName < Found::BeginningOfWord && Found::InName < Found::Supplier);
        assert!(Found::InName.is_by_name() && !Found::Supplier.is_by_name());
    }
}
