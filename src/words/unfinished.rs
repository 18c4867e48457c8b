//! What is typed and not in the book.

/// Stands in place of an answer while the field that it hangs on cannot be read.
pub fn fix_first(field: &str) -> String {
    format!("Fix “{field}” to see this.")
}

/// Says which field waits to be mended before something can be done.
pub fn fix_before(field: &str) -> String {
    format!("Fix “{field}” first.")
}

/// What a new thing still needs before it is in the book, such as "its price".
pub fn still_needs(what: &str, of: Option<&str>, needs: &[&str]) -> String {
    let of = of.map(|name| format!(" for {name}")).unwrap_or_default();
    match needs {
        [] => format!("The new {what}{of} is not in the book yet."),
        [only] => format!("The new {what}{of} is not in the book yet. It still needs {only}."),
        [first @ .., last] => {
            format!("The new {what}{of} is not in the book yet. It still needs {} and {last}.", first.join(", "))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_new_thing_needs_is_named() {
        let pack = |needs: &[&str]| still_needs("pack", Some("Kale"), needs);
        assert_eq!(pack(&[]), "The new pack for Kale is not in the book yet.");
        assert_eq!(pack(&["a price"]), "The new pack for Kale is not in the book yet. It still needs a price.");
        assert_eq!(
            pack(&["a size", "a price"]),
            "The new pack for Kale is not in the book yet. It still needs a size and a price."
        );
        assert_eq!(
            still_needs("container", None, &["a name", "a volume", "headspace"]),
            "The new container is not in the book yet. It still needs a name, a volume and headspace."
        );
    }

    #[test]
    fn an_answer_names_the_field_that_it_waits_for() {
        assert_eq!(fix_first("Menu price"), "Fix “Menu price” to see this.");
        assert_eq!(fix_before("Number of Kale"), "Fix “Number of Kale” first.");
    }
}
