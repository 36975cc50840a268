//! States from the equations of state: two properties in, all of them out.

use std::sync::OnceLock;

use numpy::PyArray1;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyDict, PyTuple, PyType};
use satline::Error;
use satline::eos::{Properties, Reference, State, StateInput};
use satline::refrigerant::{ALL, Refrigerant as Record};

use crate::elementwise::{MASKED, Outcome, masked, numpy, two_to};
use crate::raise::{Place, raise};

/// The properties of which two are given.
pub struct Known<'a, 'py> {
    pub temperature: Option<&'a Bound<'py, PyAny>>,
    pub pressure: Option<&'a Bound<'py, PyAny>>,
    pub enthalpy: Option<&'a Bound<'py, PyAny>>,
    pub entropy: Option<&'a Bound<'py, PyAny>>,
    pub quality: Option<&'a Bound<'py, PyAny>>,
}

const TEMPERATURE: &str = "temperature_k";
const PRESSURE: &str = "pressure_pa";
const ENTHALPY: &str = "enthalpy_j_kg";
const ENTROPY: &str = "entropy_j_kg_k";
const QUALITY: &str = "quality";
const CHOICES: &str = "give two: temperature_k and pressure_pa, pressure_pa and enthalpy_j_kg, pressure_pa and \
    entropy_j_kg_k, temperature_k and quality, or pressure_pa and quality";

/// The state or states at two known properties.
pub fn state<'py>(
    py: Python<'py>,
    record: &'static Record,
    reference: &str,
    known: &Known<'_, 'py>,
) -> PyResult<Bound<'py, PyAny>> {
    type Make = fn(f64, f64) -> StateInput;
    let (left, right, make): (_, _, Make) =
        match (known.temperature, known.pressure, known.enthalpy, known.entropy, known.quality) {
            (Some(left), Some(right), None, None, None) => {
                ((left, TEMPERATURE), (right, PRESSURE), |temperature, pressure| StateInput::TemperaturePressure {
                    temperature,
                    pressure,
                })
            }
            (None, Some(left), Some(right), None, None) => {
                ((left, PRESSURE), (right, ENTHALPY), |pressure, enthalpy| StateInput::PressureEnthalpy {
                    pressure,
                    enthalpy,
                })
            }
            (None, Some(left), None, Some(right), None) => ((left, PRESSURE), (right, ENTROPY), |pressure, entropy| {
                StateInput::PressureEntropy { pressure, entropy }
            }),
            (Some(left), None, None, None, Some(right)) => {
                ((left, TEMPERATURE), (right, QUALITY), |temperature, quality| StateInput::TemperatureQuality {
                    temperature,
                    quality,
                })
            }
            (None, Some(left), None, None, Some(right)) => ((left, PRESSURE), (right, QUALITY), |pressure, quality| {
                StateInput::PressureQuality { pressure, quality }
            }),
            _ => return Err(PyTypeError::new_err(CHOICES)),
        };
    let properties = properties(py, record, reference)?;
    let count = record.identity().components.len();
    match two_to(left, right, |left, right| properties.state(make(left, right)))? {
        Outcome::One(state) => one(py, &state, count),
        Outcome::Many { shape, items } => many(py, &shape, &items, count),
    }
}

/// Properties by a reference state, made once for each refrigerant.
pub fn properties(py: Python<'_>, record: &'static Record, reference: &str) -> PyResult<&'static Properties> {
    type Cell = OnceLock<Box<Properties>>;
    static MADE: OnceLock<Vec<[Cell; Reference::ALL.len()]>> = OnceLock::new();
    let place = Place { given: Some(reference), ..Place::default() };
    let reference = Reference::from_name(reference).map_err(|error| raise(py, &error, &place))?;
    let all = MADE.get_or_init(|| ALL.iter().map(|_| [const { OnceLock::new() }; Reference::ALL.len()]).collect());
    let position = ALL.iter().position(|found| core::ptr::eq(*found, record));
    let cell = position.and_then(|position| all.get(position)).and_then(|cells| cells.get(reference as usize));
    // Every record comes from the catalogue.
    let Some(cell) = cell else { return Err(PyTypeError::new_err("not a refrigerant of the catalogue")) };
    if let Some(made) = cell.get() {
        return Ok(made);
    }
    let made = py.detach(|| -> Result<Properties, Error> {
        let made = Properties::of(record.model, reference)?;
        // What follows is faster with the end of the two-phase region known; without it nothing is wrong.
        Ok(made.with_envelope().unwrap_or(made))
    });
    let made = made.map_err(|error| raise(py, &error, &Place::default()))?;
    Ok(cell.get_or_init(|| Box::new(made)))
}

/// The columns of numbers: name, value, whether it may be missing.
type Column = (&'static str, fn(&State) -> Option<f64>, bool);
const COLUMNS: [Column; 10] = [
    ("temperature_k", |state| Some(state.temperature), false),
    ("pressure_pa", |state| Some(state.pressure), false),
    ("density_kg_m3", |state| Some(state.density), false),
    ("enthalpy_j_kg", |state| Some(state.enthalpy), false),
    ("entropy_j_kg_k", |state| Some(state.entropy), false),
    ("internal_energy_j_kg", |state| Some(state.internal_energy), false),
    ("specific_heat_j_kg_k", |state| state.isobaric_heat_capacity, true),
    ("isochoric_specific_heat_j_kg_k", |state| state.isochoric_heat_capacity, true),
    ("speed_of_sound_m_s", |state| state.speed_of_sound, true),
    ("quality", |state| state.quality, true),
];
type Fractions = (&'static str, fn(&State) -> Option<satline::eos::PerComponent>);
const FRACTIONS: [Fractions; 2] = [
    ("liquid_mass_fractions", |state| state.liquid_mass_fractions),
    ("vapor_mass_fractions", |state| state.vapor_mass_fractions),
];

fn one<'py>(py: Python<'py>, state: &State, count: usize) -> PyResult<Bound<'py, PyAny>> {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    let fields = PyDict::new(py);
    for (name, value, _) in COLUMNS {
        fields.set_item(name, value(state))?;
    }
    for (name, value) in FRACTIONS {
        let fractions = value(state)
            .map(|fractions| PyTuple::new(py, fractions.iter().take(count).collect::<Vec<_>>()))
            .transpose()?;
        fields.set_item(name, fractions)?;
    }
    fields.set_item("phase", state.phase.name())?;
    CLASS.import(py, "satline._state", "State")?.call((), Some(&fields))
}

fn many<'py>(py: Python<'py>, shape: &[usize], states: &[State], count: usize) -> PyResult<Bound<'py, PyAny>> {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    let fields = PyDict::new(py);
    let array = |values: Vec<f64>, shape: &[usize]| -> PyResult<Bound<'py, PyAny>> {
        PyArray1::from_vec(py, values).call_method1("reshape", (PyTuple::new(py, shape)?,))
    };
    for (name, value, may_be_missing) in COLUMNS {
        let column = array(states.iter().map(|state| value(state).unwrap_or(MASKED)).collect(), shape)?;
        fields.set_item(name, if may_be_missing { masked(&column)? } else { column })?;
    }
    for (name, value) in FRACTIONS {
        let rows = states.iter().flat_map(|state| value(state).unwrap_or([MASKED; 6]).into_iter().take(count));
        let shape: Vec<usize> = shape.iter().copied().chain([count]).collect();
        fields.set_item(name, masked(&array(rows.collect(), &shape)?)?)?;
    }
    let phases: Vec<&str> = states.iter().map(|state| state.phase.name()).collect();
    let phases = numpy(py, "array")?.call1((phases, "U13"))?;
    fields.set_item("phase", phases.call_method1("reshape", (PyTuple::new(py, shape)?,))?)?;
    CLASS.import(py, "satline._state", "States")?.call((), Some(&fields))
}
