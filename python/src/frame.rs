//! Whole columns of readings to whole columns of findings, without a Python object for any row.
//!
//! What a row says in words repeats from row to row, so each distinct combination is read once, by the core's text reader,
//! as the base of its rows; the numbers are then set on a copy of it.

use numpy::PyReadonlyArray1;
use pyo3::prelude::*;
use satline::diagnosis::{Options, diagnose_with};
use satline::quantity::Atmosphere;
use satline::text::{LabelledReading, readings_from_json};
use satline::{Error, Field, Reading};

use crate::diagnosis::{Told, options};
use crate::frame_answers::{Answers, Column};
use crate::raise::{Place, plain, raise, text, told};

/// Judges the rows of a frame, chunk by chunk.
#[pyclass(module = "satline._native")]
pub struct FrameJudge {
    options: Options<'static>,
    /// Boxed, so that many that are no readings stay small.
    bases: Vec<Result<Box<Reading>, String>>,
    units: Vec<Unit>,
}

/// The healthy readings of one unit, or what is wrong with the first of them that is not a reading.
#[derive(Default)]
struct Unit {
    healthy: Vec<Reading>,
    fault: Option<String>,
}

/// Names and cells of the numeric columns of a chunk. A cell that is NaN was not measured.
type Numbers<'py> = Vec<(String, PyReadonlyArray1<'py, f64>)>;
/// Rows that Python could not turn into numbers, with what is wrong with them, in the order of the rows.
type Faults = Vec<(usize, String)>;

#[pymethods]
impl FrameJudge {
    #[new]
    fn new(py: Python<'_>, told: Told) -> PyResult<Self> {
        let (protocol, priors) = options(py, &told)?;
        Ok(Self { options: Options { protocol, priors, ..Options::default() }, bases: Vec::new(), units: Vec::new() })
    }

    /// The numeric fields that a text with one reading gives, for all rows, and whether it has a gauge pressure without the
    /// ambient pressure.
    #[staticmethod]
    fn given(py: Python<'_>, reading: &str) -> PyResult<(Vec<&'static str>, bool)> {
        let labelled = first(readings_from_json(reading).map_err(|error| text(py, &error, false, "common: "))?);
        let fields = Field::ALL.iter().filter(|field| labelled.reading.get(**field).is_some());
        Ok((fields.map(|field| field.name()).collect(), labelled.atmosphere_assumed))
    }

    /// Reads the base of some rows and gives its number. What is wrong with it is what is wrong with those rows.
    fn base(&mut self, reading: &str) -> usize {
        let read = readings_from_json(reading);
        self.bases.push(read.map(|readings| Box::new(first(readings).reading)).map_err(|error| told(&error, false)));
        self.bases.len() - 1
    }

    /// A base that is no reading.
    fn faulty_base(&mut self, fault: String) -> usize {
        self.bases.push(Err(fault));
        self.bases.len() - 1
    }

    /// Adds healthy readings: of each row its base and its unit, counted from 0. `before`: how many rows came before these.
    fn healthy(
        &mut self,
        py: Python<'_>,
        before: usize,
        numbers: Numbers<'_>,
        bases: PyReadonlyArray1<'_, usize>,
        units: PyReadonlyArray1<'_, usize>,
        faults: Faults,
    ) -> PyResult<()> {
        let (bases, units) = (bases.as_slice()?, units.as_slice()?);
        let rows = Rows { bases: &self.bases, columns: columns(py, &numbers)? };
        let mut faults = faults.into_iter().peekable();
        for (row, unit) in units.iter().enumerate() {
            if *unit >= self.units.len() {
                self.units.resize_with(unit + 1, Unit::default);
            }
            let Some(unit) = self.units.get_mut(*unit) else { continue };
            let fault = faults.next_if(|(at, _)| *at == row).map(|(_, fault)| fault);
            match fault.map_or_else(|| rows.reading(row, bases.get(row)), Err) {
                Ok(reading) => unit.healthy.push(reading),
                Err(fault) if unit.fault.is_none() => {
                    unit.fault = Some(format!("baseline row {}: {fault}", before + row));
                }
                Err(_) => {}
            }
        }
        Ok(())
    }

    /// The columns of the findings of a chunk: of each row its base and its unit, which is beyond all units where the row has
    /// no baseline; then the rows that are no readings, with what is wrong with them.
    #[allow(clippy::type_complexity)] // spelled out once, here; nobody else names it
    fn judge<'py>(
        &self,
        py: Python<'py>,
        numbers: Numbers<'py>,
        bases: PyReadonlyArray1<'py, usize>,
        units: PyReadonlyArray1<'py, usize>,
        faults: Faults,
    ) -> PyResult<(Vec<(String, Column<'py>)>, Vec<(usize, String)>)> {
        let (bases, units) = (bases.as_slice()?, units.as_slice()?);
        let rows = Rows { bases: &self.bases, columns: columns(py, &numbers)? };
        let mut answers = Answers::with_capacity(bases.len());
        let mut faults = faults.into_iter().peekable();
        py.detach(|| {
            for (row, base) in bases.iter().enumerate() {
                let unit = units.get(row).and_then(|unit| self.units.get(*unit));
                let fault = faults.next_if(|(at, _)| *at == row).map(|(_, fault)| fault);
                let reading = fault.map_or_else(|| rows.reading(row, Some(base)), Err);
                match (reading, unit.and_then(|unit| unit.fault.clone())) {
                    (Ok(reading), None) => {
                        let baseline = unit.map_or(&[][..], |unit| unit.healthy.as_slice());
                        answers.push(&diagnose_with(&reading, &Options { baseline, ..self.options }));
                    }
                    (Err(fault), _) | (_, Some(fault)) => answers.push_fault(row, fault),
                }
            }
        });
        answers.columns(py)
    }
}

/// The text reader gives at least one reading or an error.
fn first(readings: Vec<LabelledReading>) -> LabelledReading {
    readings.into_iter().next().unwrap_or_default()
}

/// Where the numbers of a column belong.
enum Target {
    Field(Field),
    /// Metres, in place of an ambient pressure.
    Altitude,
}

struct Rows<'a> {
    bases: &'a [Result<Box<Reading>, String>],
    columns: Vec<(Target, &'a [f64])>,
}

fn columns<'a>(py: Python<'_>, numbers: &'a Numbers<'_>) -> PyResult<Vec<(Target, &'a [f64])>> {
    let target = |name: &str| match name {
        "altitude_m" => Ok(Target::Altitude),
        _ => Field::from_name(name).map(Target::Field),
    };
    let known = numbers.iter().map(|(name, cells)| {
        let target = target(name)
            .map_err(|error| raise(py, &error, &Place { given: Some(name.as_str()), ..Place::default() }))?;
        let cells = cells.as_slice().map_err(|_| plain(py, "SatlineError", "a column is not contiguous"))?;
        Ok((target, cells))
    });
    known.collect()
}

impl Rows<'_> {
    fn reading(&self, row: usize, base: Option<&usize>) -> Result<Reading, String> {
        let base = base.and_then(|base| self.bases.get(*base)).ok_or("the row has no base")?;
        let mut reading = **base.as_ref().map_err(Clone::clone)?;
        for (target, cells) in &self.columns {
            let Some(value) = cells.get(row).copied().filter(|value| !value.is_nan()) else { continue };
            let (name, set) = match target {
                Target::Field(field) => (field.name(), reading.set(*field, value)),
                Target::Altitude => ("altitude_m", altitude(&mut reading, value)),
            };
            set.map_err(|error| format!("field {name}: {error}"))?;
        }
        Ok(reading)
    }
}

fn altitude(reading: &mut Reading, metres: f64) -> Result<(), Error> {
    reading.ambient_pressure = Some(Atmosphere::at_altitude_m(metres)?);
    Ok(())
}
