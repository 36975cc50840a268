//! Objects and arrays of a JSON text, with the place of each part, on top of serde_json.

use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;
use serde::de::{Deserialize, Deserializer, MapAccess, Visitor};
use serde_json::value::RawValue;

/// One name and value of an object, in the order of the text. Duplicates are kept, so that they can be refused.
pub(super) struct Entry<'a> {
    pub name: String,
    pub value: &'a RawValue,
}

/// An object as its entries.
pub(super) struct Entries<'a>(pub Vec<Entry<'a>>);

impl<'de: 'a, 'a> Deserialize<'de> for Entries<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Collect;
        impl<'de> Visitor<'de> for Collect {
            type Value = Entries<'de>;

            fn expecting(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
                out.write_str("an object with fields")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Self::Value, A::Error> {
                let mut entries = Vec::new();
                while let Some((name, value)) = map.next_entry::<String, &'de RawValue>()? {
                    entries.push(Entry { name, value });
                }
                Ok(Entries(entries))
            }
        }
        deserializer.deserialize_map(Collect)
    }
}

/// What kind of value a piece of JSON is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Object,
    Array,
    String,
    Number,
    Boolean,
    Null,
}

/// The kind of a valid piece of JSON, by its first character.
pub(super) fn kind(piece: &str) -> Kind {
    match piece.trim_start().bytes().next() {
        Some(b'{') => Kind::Object,
        Some(b'[') => Kind::Array,
        Some(b'"') => Kind::String,
        Some(b't' | b'f') => Kind::Boolean,
        Some(b'n') | None => Kind::Null,
        Some(_) => Kind::Number,
    }
}

/// The line, from 1, on which a piece borrowed from the text begins.
pub(super) fn line_of(text: &str, piece: &str) -> usize {
    // Both are addresses within one text, so their distance is the offset of the piece.
    let offset = (piece.as_ptr() as usize).saturating_sub(text.as_ptr() as usize);
    1 + text.as_bytes().iter().take(offset).filter(|byte| **byte == b'\n').count()
}
