//! Reading stored records, with the fields of each by name only.
//!
//! What serde derives for a struct also reads a list of its fields in order. No record was ever written
//! so, and for twenty structs the code for that is much to load. At every depth this reader asks JSON for
//! an object wherever a struct is wanted.

use std::fmt;

use serde::de::{
    Deserialize, DeserializeSeed, Deserializer, EnumAccess, Error, MapAccess, SeqAccess, VariantAccess, Visitor,
};

/// Reads JSON, with the fields of each struct by name.
///
/// # Errors
/// The JSON reader's error, with its line and column, if the text is not JSON or not such a value.
pub fn from_json<'de, T: Deserialize<'de>>(text: &'de str) -> Result<T, serde_json::Error> {
    let mut reader = serde_json::Deserializer::from_str(text);
    let value = T::deserialize(ByName(&mut reader))?;
    reader.end()?;
    Ok(value)
}

/// A wrapper around each part of a reader, so that what is nested deeper is read by name too.
struct ByName<T>(T);

macro_rules! read {
    ($($read:ident($($name:ident: $type:ty),*);)*) => {
        $(fn $read<V: Visitor<'de>>(self, $($name: $type,)* visitor: V) -> Result<V::Value, D::Error> {
            self.0.$read($($name,)* ByName(visitor))
        })*
    };
}

impl<'de, D: Deserializer<'de>> Deserializer<'de> for ByName<D> {
    type Error = D::Error;

    read! {
        deserialize_any();
        deserialize_bool();
        deserialize_i8();
        deserialize_i16();
        deserialize_i32();
        deserialize_i64();
        deserialize_u8();
        deserialize_u16();
        deserialize_u32();
        deserialize_u64();
        deserialize_f32();
        deserialize_f64();
        deserialize_char();
        deserialize_str();
        deserialize_string();
        deserialize_bytes();
        deserialize_byte_buf();
        deserialize_option();
        deserialize_unit();
        deserialize_unit_struct(name: &'static str);
        deserialize_newtype_struct(name: &'static str);
        deserialize_seq();
        deserialize_tuple(len: usize);
        deserialize_tuple_struct(name: &'static str, len: usize);
        deserialize_map();
        deserialize_enum(name: &'static str, variants: &'static [&'static str]);
        deserialize_identifier();
        deserialize_ignored_any();
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, D::Error> {
        self.0.deserialize_map(ByName(visitor))
    }
}

macro_rules! visit {
    ($($visit:ident($type:ty);)*) => {
        $(fn $visit<E: Error>(self, value: $type) -> Result<V::Value, E> {
            self.0.$visit(value)
        })*
    };
}

impl<'de, V: Visitor<'de>> Visitor<'de> for ByName<V> {
    type Value = V::Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.expecting(f)
    }

    visit! {
        visit_bool(bool);
        visit_i64(i64);
        visit_u64(u64);
        visit_f64(f64);
        visit_str(&str);
        visit_borrowed_str(&'de str);
        visit_string(String);
    }

    fn visit_unit<E: Error>(self) -> Result<V::Value, E> {
        self.0.visit_unit()
    }

    fn visit_none<E: Error>(self) -> Result<V::Value, E> {
        self.0.visit_none()
    }

    fn visit_some<D: Deserializer<'de>>(self, value: D) -> Result<V::Value, D::Error> {
        self.0.visit_some(ByName(value))
    }

    fn visit_newtype_struct<D: Deserializer<'de>>(self, value: D) -> Result<V::Value, D::Error> {
        self.0.visit_newtype_struct(ByName(value))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, list: A) -> Result<V::Value, A::Error> {
        self.0.visit_seq(ByName(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, object: A) -> Result<V::Value, A::Error> {
        self.0.visit_map(ByName(object))
    }

    fn visit_enum<A: EnumAccess<'de>>(self, variant: A) -> Result<V::Value, A::Error> {
        self.0.visit_enum(ByName(variant))
    }
}

impl<'de, S: DeserializeSeed<'de>> DeserializeSeed<'de> for ByName<S> {
    type Value = S::Value;

    fn deserialize<D: Deserializer<'de>>(self, reader: D) -> Result<S::Value, D::Error> {
        self.0.deserialize(ByName(reader))
    }
}

impl<'de, A: SeqAccess<'de>> SeqAccess<'de> for ByName<A> {
    type Error = A::Error;

    fn next_element_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<Option<S::Value>, A::Error> {
        self.0.next_element_seed(ByName(seed))
    }
}

impl<'de, A: MapAccess<'de>> MapAccess<'de> for ByName<A> {
    type Error = A::Error;

    fn next_key_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<Option<S::Value>, A::Error> {
        self.0.next_key_seed(seed)
    }

    fn next_value_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<S::Value, A::Error> {
        self.0.next_value_seed(ByName(seed))
    }
}

impl<'de, A: EnumAccess<'de>> EnumAccess<'de> for ByName<A> {
    type Error = A::Error;
    type Variant = ByName<A::Variant>;

    fn variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<(S::Value, Self::Variant), A::Error> {
        let (name, variant) = self.0.variant_seed(seed)?;
        Ok((name, ByName(variant)))
    }
}

impl<'de, A: VariantAccess<'de>> VariantAccess<'de> for ByName<A> {
    type Error = A::Error;

    fn unit_variant(self) -> Result<(), A::Error> {
        self.0.unit_variant()
    }

    fn newtype_variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<S::Value, A::Error> {
        self.0.newtype_variant_seed(ByName(seed))
    }

    fn tuple_variant<V: Visitor<'de>>(self, len: usize, visitor: V) -> Result<V::Value, A::Error> {
        self.0.tuple_variant(len, ByName(visitor))
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, A::Error> {
        self.0.struct_variant(fields, ByName(visitor))
    }
}
