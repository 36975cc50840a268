//! Parts of a JSON text that know their place, so that an error can name it.

use super::super::canonical::Json;
use super::super::error::{Fault, TextError};
use super::super::json::{Entries, Kind, kind};
use super::super::read::{boolean, fail, number, string};
use crate::error::code;
use crate::nearest::nearest;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::value::RawValue;

/// A part of a text, with its path.
#[derive(Clone)]
pub(super) struct Node<'a> {
    whole: &'a str,
    raw: &'a RawValue,
    path: String,
}

/// An object with only known names.
pub(super) struct Object<'a> {
    node: Node<'a>,
    entries: Vec<(String, Node<'a>)>,
}

impl<'a> Node<'a> {
    pub(super) fn whole(text: &'a str, raw: &'a RawValue) -> Self {
        Self { whole: text, raw, path: String::new() }
    }

    /// The text of this part.
    pub(super) fn text(&self) -> &'a str {
        self.raw.get()
    }

    pub(super) fn error(&self, fault: Fault) -> TextError {
        let path = (!self.path.is_empty()).then_some(self.path.as_str());
        fail(self.whole, self.raw.get(), None, path, fault)
    }

    /// An error of a reader of this part alone, told with its place in the whole.
    pub(super) fn nested(&self, error: TextError) -> TextError {
        let here = self.error(Fault::new(error.code, error.message));
        let field = match (here.field, error.field) {
            (Some(path), Some(inner)) => Some(format!("{path}.{inner}")),
            (path, inner) => path.or(inner),
        };
        TextError { line: here.line + error.line.saturating_sub(1), field, ..here }
    }

    fn expect(&self, wanted: Kind, words: &str) -> Result<(), TextError> {
        if kind(self.text()) == wanted { Ok(()) } else { Err(self.error(Fault::form(format!("expected {words}")))) }
    }

    pub(super) fn string(&self) -> Result<String, TextError> {
        self.expect(Kind::String, "a string")?;
        string(self.raw).map_err(|fault| self.error(fault))
    }

    pub(super) fn boolean(&self) -> Result<bool, TextError> {
        boolean(self.raw).map_err(|fault| self.error(fault))
    }

    pub(super) fn number(&self) -> Result<f64, TextError> {
        self.expect(Kind::Number, "a number")?;
        number(self.raw).map_err(|fault| self.error(fault))
    }

    pub(super) fn json(&self) -> Result<Json, TextError> {
        Json::parse(self.text()).map_err(|fault| self.error(fault))
    }

    pub(super) fn array(&self) -> Result<Vec<Self>, TextError> {
        self.expect(Kind::Array, "an array")?;
        let parts: Vec<&'a RawValue> =
            serde_json::from_str(self.text()).map_err(|error| self.error(Fault::form(format!("{error}"))))?;
        let node = |(index, raw)| Self { whole: self.whole, raw, path: format!("{}[{index}]", self.path) };
        Ok(parts.into_iter().enumerate().map(node).collect())
    }

    pub(super) fn object(&self, known: &[&'static str]) -> Result<Object<'a>, TextError> {
        self.expect(Kind::Object, &format!("an object with any of {}", known.join(", ")))?;
        let Entries(parts) =
            serde_json::from_str(self.text()).map_err(|error| self.error(Fault::form(format!("{error}"))))?;
        let mut entries: Vec<(String, Self)> = Vec::new();
        for part in parts {
            let before = if self.path.is_empty() { String::new() } else { format!("{}.", self.path) };
            let node = Self { whole: self.whole, raw: part.value, path: format!("{before}{}", part.name) };
            if !known.contains(&part.name.as_str()) {
                let nearest = nearest(&part.name, known.iter().copied());
                return Err(node.error(Fault::new(code::UNKNOWN_FIELD, format!("unknown: the nearest is {nearest}"))));
            }
            if entries.iter().any(|(name, _)| *name == part.name) {
                return Err(node.error(Fault::form("given twice; keep one")));
            }
            entries.push((part.name, node));
        }
        Ok(Object { node: self.clone(), entries })
    }
}

impl<'a> Object<'a> {
    pub(super) fn get(&self, name: &str) -> Option<&Node<'a>> {
        self.entries.iter().find(|(known, _)| known == name).map(|(_, node)| node)
    }

    pub(super) fn need(&self, name: &str) -> Result<&Node<'a>, TextError> {
        self.get(name).ok_or_else(|| self.node.error(Fault::form(format!("{name} is missing"))))
    }

    /// A string, or an empty one where it is not given.
    pub(super) fn string_or_empty(&self, name: &str) -> Result<String, TextError> {
        self.get(name).map_or(Ok(String::new()), Node::string)
    }
}
