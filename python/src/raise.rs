//! From the core's errors to the Python exceptions of `satline/_errors.py`.

use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyType};
use satline::Error;
use satline::text::TextError;

/// What is known of the place of the failure besides the error itself.
#[derive(Debug, Default, Clone)]
pub struct Place<'a> {
    /// Where in the broadcast array.
    pub index: Option<Vec<usize>>,
    /// The name or word that was given.
    pub given: Option<&'a str>,
}

/// The exception for an error of the core.
pub fn raise(py: Python<'_>, error: &Error, place: &Place<'_>) -> PyErr {
    build(py, error, place).unwrap_or_else(|failure| failure)
}

/// The exception for a text that is not a reading. Lines are told only where the caller wrote them; `whose` comes first.
pub fn text(py: Python<'_>, error: &TextError, has_lines: bool, whose: &str) -> PyErr {
    let attributes = PyDict::new(py);
    let message = format!("{whose}{}", told(error, has_lines));
    let filled = attributes
        .set_item("field", &error.field)
        .and_then(|()| if has_lines { attributes.set_item("line", error.line) } else { Ok(()) });
    match filled {
        Ok(()) => named(py, &class(error.code), &message, &attributes),
        Err(failure) => failure,
    }
}

/// What is wrong with a text, with its line only where the caller wrote it.
pub fn told(error: &TextError, has_lines: bool) -> String {
    match &error.field {
        _ if has_lines => error.to_string(),
        Some(field) => format!("field {field}: {}", error.message),
        None => error.message.clone(),
    }
}

/// An exception that says no more than its message.
pub fn plain(py: Python<'_>, class: &str, message: &str) -> PyErr {
    named(py, class, message, &PyDict::new(py))
}

/// An exception of a class of `satline/_errors.py`, by name.
fn named(py: Python<'_>, class: &str, message: &str, attributes: &Bound<'_, PyDict>) -> PyErr {
    let made = errors(py)
        .and_then(|module| module.getattr(class))
        .and_then(|class| class.cast_into::<PyType>().map_err(PyErr::from))
        .and_then(|class| class.call((message,), Some(attributes)));
    match made {
        Ok(exception) => PyErr::from_value(exception),
        Err(failure) => failure,
    }
}

fn errors(py: Python<'_>) -> PyResult<Bound<'_, PyModule>> {
    static MODULE: PyOnceLock<Py<PyModule>> = PyOnceLock::new();
    let module = MODULE.get_or_try_init(py, || py.import("satline._errors").map(Bound::unbind))?;
    Ok(module.bind(py).clone())
}

/// The class that stands for a number of the error table: its name in capitals, with `Error` behind.
fn class(code: i32) -> String {
    let words = satline::error::row(code).map_or("satline", |row| row.name).split('-');
    let capitals = words.flat_map(|word| {
        let mut letters = word.chars();
        letters.next().map(|first| first.to_ascii_uppercase()).into_iter().chain(letters)
    });
    capitals.chain("Error".chars()).collect()
}

fn build(py: Python<'_>, error: &Error, place: &Place<'_>) -> PyResult<PyErr> {
    let attributes = PyDict::new(py);
    match *error {
        Error::OutOfRange { quantity, unit, value, lower, upper, .. } => {
            attributes.set_item("quantity", quantity)?;
            attributes.set_item("unit", unit)?;
            attributes.set_item("value", value)?;
            attributes.set_item("lower", lower)?;
            attributes.set_item("upper", upper)?;
        }
        Error::NotFinite { quantity, unit, lower, upper } => {
            attributes.set_item("quantity", quantity)?;
            attributes.set_item("unit", unit)?;
            attributes.set_item("lower", lower)?;
            attributes.set_item("upper", upper)?;
        }
        Error::UnknownRefrigerant { nearest } | Error::UnknownField { nearest } => {
            attributes.set_item("nearest", nearest)?;
        }
        Error::UnknownChoice { field, .. } => attributes.set_item("field", field)?,
        Error::NotConverged { calculation, value, unit } => {
            attributes.set_item("quantity", calculation)?;
            attributes.set_item("value", value)?;
            attributes.set_item("unit", unit)?;
        }
        Error::NotAvailable { quantity, .. } => attributes.set_item("quantity", quantity)?,
        _ => {}
    }
    let mut message = String::new();
    if let Some(given) = place.given {
        attributes.set_item("value", given)?;
        message.push_str(&format!("{given:?}: "));
    }
    if let Some(index) = &place.index {
        attributes.set_item("index", pyo3::types::PyTuple::new(py, index)?)?;
        message.push_str(&format!("element {index:?}: "));
    }
    message.push_str(&error.to_string());
    Ok(named(py, &class(error.code()), &message, &attributes))
}
