//! A record as the tree of its fields, as they are stored.

use std::fmt;

use serde::de::{Error, MapAccess, SeqAccess, Visitor};
use serde::ser::{SerializeMap, SerializeSeq};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// The value of a field. Records store every number as a text, so that there are no numbers here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Tree {
    /// Null, in a field that may be null.
    Nothing,
    /// Yes or no.
    Flag(bool),
    /// A text, a number, or the name of a choice.
    Text(String),
    /// A list.
    List(Vec<Tree>),
    /// Fields by name, in the order in which they are stored.
    Fields(Vec<(String, Tree)>),
}

impl Tree {
    /// The field of this name. Returns `None` if there is none.
    pub(super) fn field(&self, name: &str) -> Option<&Tree> {
        let Tree::Fields(fields) = self else { return None };
        fields.iter().find(|(field, _)| field == name).map(|(_, tree)| tree)
    }
}

impl Serialize for Tree {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Tree::Nothing => serializer.serialize_unit(),
            Tree::Flag(flag) => serializer.serialize_bool(*flag),
            Tree::Text(text) => serializer.serialize_str(text),
            Tree::List(list) => {
                let mut written = serializer.serialize_seq(Some(list.len()))?;
                for tree in list {
                    written.serialize_element(tree)?;
                }
                written.end()
            }
            Tree::Fields(fields) => {
                let mut written = serializer.serialize_map(Some(fields.len()))?;
                for (name, tree) in fields {
                    written.serialize_entry(name, tree)?;
                }
                written.end()
            }
        }
    }
}

impl<'de> Deserialize<'de> for Tree {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Tree, D::Error> {
        deserializer.deserialize_any(Reader)
    }
}

struct Reader;

impl<'de> Visitor<'de> for Reader {
    type Value = Tree;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a text, a list or fields")
    }

    fn visit_unit<E: Error>(self) -> Result<Tree, E> {
        Ok(Tree::Nothing)
    }

    fn visit_bool<E: Error>(self, flag: bool) -> Result<Tree, E> {
        Ok(Tree::Flag(flag))
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Tree, E> {
        Ok(Tree::Text(text.to_string()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Tree, A::Error> {
        let mut trees = Vec::new();
        while let Some(tree) = list.next_element()? {
            trees.push(tree);
        }
        Ok(Tree::List(trees))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Tree, A::Error> {
        let mut fields = Vec::new();
        while let Some(field) = map.next_entry()? {
            fields.push(field);
        }
        Ok(Tree::Fields(fields))
    }
}
