//! The record of a visit: read and made canonical by the core.

use pyo3::prelude::*;
use pyo3::types::PyBytes;
use satline::text::{VISIT_FORMAT, VisitRecord, VisitStep, tables_fingerprint};

use crate::raise;
use crate::refrigerant::Refrigerant;

/// The canonical bytes of a record, and whether the tables that it names are those of this library.
#[pyfunction]
pub fn visit_record_parts<'py>(py: Python<'py>, text: &str, has_lines: bool) -> PyResult<(Bound<'py, PyBytes>, bool)> {
    let record = VisitRecord::from_json(text).map_err(|error| raise::text(py, &error, has_lines, ""))?;
    let bytes = record.to_canonical_bytes().map_err(|error| raise::text(py, &error, false, ""))?;
    Ok((PyBytes::new(py, &bytes), record.tables_are_these()))
}

/// The fingerprint of a refrigerant's saturation tables.
#[pyfunction]
pub fn refrigerant_fingerprint(refrigerant: &Refrigerant) -> String {
    tables_fingerprint(refrigerant.0.curves)
}

/// The words for a step of a visit.
#[pyfunction]
pub fn visit_steps() -> Vec<&'static str> {
    VisitStep::ALL.iter().map(|step| step.name()).collect()
}

pub fn add(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("VISIT_FORMAT", VISIT_FORMAT)?;
    module.add_function(wrap_pyfunction!(visit_record_parts, module)?)?;
    module.add_function(wrap_pyfunction!(refrigerant_fingerprint, module)?)?;
    module.add_function(wrap_pyfunction!(visit_steps, module)?)
}
