//! The rig's unit in time: a run to a table, and steps for hardware in the loop.

use std::sync::{Mutex, MutexGuard, PoisonError};

use numpy::PyArray1;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::rig::{Change, Conditions, Faults, Inputs, Instruments, Moment, Motion, Trip, run};
use satline::{Error, Reading};

use crate::raise::{Place, raise};
use crate::rig::{RigUnit, faults};
use crate::rig_state::{COLUMNS, RigState, reading, sensors};

/// Conditions, faults, charging rate in kg/s, and whether the thermostat calls.
type Given<'py> = ([f64; 4], Bound<'py, PyDict>, f64, bool);

fn inputs(py: Python<'_>, (air, given, charging, calls): &Given<'_>) -> PyResult<Inputs> {
    let [outdoor_dry_bulb, return_dry_bulb, return_wet_bulb, ambient_pressure] = *air;
    let conditions = Conditions { outdoor_dry_bulb, return_dry_bulb, return_wet_bulb, ambient_pressure };
    Ok(Inputs { calls: *calls, conditions, faults: faults(py, given)?, charging: *charging })
}

const fn trip(trip: Option<Trip>) -> &'static str {
    match trip {
        None => "",
        Some(Trip::LowPressure) => "low-pressure",
        Some(Trip::HighPressure) => "high-pressure",
    }
}

/// A number of a moment beside those of its state, and its name.
type Extra = (&'static str, fn(&Moment) -> f64);
const EXTRAS: [Extra; 4] = [
    ("gathered_kg", |moment| moment.gathered),
    ("mixing_kg", |moment| moment.mixing),
    ("shell_temperature_k", |moment| moment.shell_temperature),
    ("bulb_temperature_k", |moment| moment.bulb_temperature),
];

struct Course {
    motion: Motion<'static>,
    instruments: Instruments,
    shown: Reading,
    conditions: Conditions,
}

/// A unit that is followed in time; satline.rig wraps it.
#[pyclass(frozen, module = "satline._native")]
pub struct RigMotion {
    map: &'static satline::rig::RefrigerantMap,
    course: Mutex<Course>,
}

impl RigMotion {
    fn course(&self) -> MutexGuard<'_, Course> {
        self.course.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn moment<'py>(&self, py: Python<'py>, course: &Course) -> PyResult<Bound<'py, PyDict>> {
        let moment = course.motion.moment();
        let state = RigState::new(self.map, moment.state, course.conditions);
        let state = state.map_err(|error| raise(py, &error, &Place::default()))?;
        let parts = PyDict::new(py);
        parts.set_item("time_s", moment.seconds)?;
        parts.set_item("runs", moment.runs)?;
        parts.set_item("trip", moment.trip.map(|_| trip(moment.trip)))?;
        EXTRAS.iter().try_for_each(|(name, of)| parts.set_item(name, of(moment)))?;
        parts.set_item("state", state)?;
        Ok(parts)
    }
}

#[pymethods]
impl RigMotion {
    /// From rest or settled, with the first inputs; instruments are placed at once.
    #[new]
    fn new(
        py: Python<'_>,
        unit: PyRef<'_, RigUnit>,
        settled: bool,
        first: Given<'_>,
        instruments: (String, u64),
    ) -> PyResult<Self> {
        let first = inputs(py, &first)?;
        let unit = unit.unit;
        let mut instruments = sensors(py, &instruments.0)?.placed(instruments.1);
        let begun = py.detach(|| {
            if settled {
                return Motion::settled(&unit, &first.conditions, &first.faults);
            }
            let Faults { undercharge, overcharge, .. } = first.faults;
            let charge = unit.nameplate_charge * (1.0 - undercharge + overcharge);
            Motion::at_rest(&unit, &first.conditions, charge)
        });
        let motion = begun.map_err(|error: Error| raise(py, &error, &Place::default()))?;
        let shown = instruments.settled(&motion.moment().state, &first.conditions);
        let course = Mutex::new(Course { motion, instruments, shown, conditions: first.conditions });
        Ok(Self { map: unit.map, course })
    }

    /// Goes on by a time and gives the moment.
    fn step<'py>(&self, py: Python<'py>, seconds: f64, given: Given<'py>) -> PyResult<Bound<'py, PyDict>> {
        let inputs = inputs(py, &given)?;
        let stepped = py.detach(|| -> Result<(), Error> {
            let course = &mut *self.course();
            let moment = course.motion.step(seconds, &inputs)?;
            course.shown = course.instruments.sample(&moment.state, &inputs.conditions, seconds);
            course.conditions = inputs.conditions;
            Ok(())
        });
        stepped.map_err(|error| raise(py, &error, &Place::default()))?;
        self.now(py)
    }

    /// The moment.
    fn now<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        // Waiting for another thread's step with the interpreter held would keep that thread from ending.
        let course = py.detach(|| {
            let course = self.course();
            Course { ..*course }
        });
        self.moment(py, &course)
    }

    /// What the instruments show: fields, and their limits of error.
    fn reading<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
        let shown = py.detach(|| self.course().shown);
        reading(py, &shown)
    }

    /// Runs with a schedule and gives the columns of the table, its first row the moment before.
    fn run<'py>(
        &self,
        py: Python<'py>,
        seconds: f64,
        step: f64,
        first: Given<'py>,
        schedule: Vec<(f64, Given<'py>)>,
        shown: bool,
    ) -> PyResult<Bound<'py, PyDict>> {
        let first = inputs(py, &first)?;
        let schedule = schedule
            .iter()
            .map(|(at, given)| Ok(Change { at: *at, inputs: inputs(py, given)? }))
            .collect::<PyResult<Vec<_>>>()?;
        let (rows, ended) = py.detach(|| {
            let course = &mut *self.course();
            let mut rows = vec![(*course.motion.moment(), first, course.shown)];
            let (motion, instruments) = (&mut course.motion, &mut course.instruments);
            let ended = run(motion, first, &schedule, seconds, step, |moment, inputs| {
                let sample = instruments.sample(&moment.state, &inputs.conditions, step);
                rows.push((*moment, *inputs, sample));
            });
            (rows, ended)
        });
        ended.map_err(|error| {
            let raised = raise(py, &error, &Place::default());
            let at = rows.last().map_or(0.0, |(moment, ..)| moment.seconds);
            let _ = raised.value(py).call_method1("add_note", (format!("in the step after {at} s of the run"),));
            raised
        })?;
        self.table(py, &rows, shown)
    }
}

impl RigMotion {
    fn table<'py>(
        &self,
        py: Python<'py>,
        rows: &[(Moment, Inputs, Reading)],
        shown: bool,
    ) -> PyResult<Bound<'py, PyDict>> {
        let states = rows.iter().map(|(moment, inputs, _)| RigState::new(self.map, moment.state, inputs.conditions));
        let states = states.collect::<Result<Vec<_>, Error>>();
        let states = states.map_err(|error| raise(py, &error, &Place::default()))?;
        let parts = PyDict::new(py);
        let numbers = |name: &str, cells: Vec<f64>| parts.set_item(name, PyArray1::from_vec(py, cells));
        let flags = |name: &str, cells: Vec<bool>| parts.set_item(name, PyArray1::from_vec(py, cells));
        numbers("time_s", rows.iter().map(|(moment, ..)| moment.seconds).collect())?;
        flags("calls", rows.iter().map(|(_, inputs, _)| inputs.calls).collect())?;
        flags("runs", rows.iter().map(|(moment, ..)| moment.runs).collect())?;
        parts.set_item("trip", rows.iter().map(|(moment, ..)| trip(moment.trip)).collect::<Vec<_>>())?;
        numbers("charging_kg_s", rows.iter().map(|(_, inputs, _)| inputs.charging).collect())?;
        for (name, of) in EXTRAS {
            numbers(name, rows.iter().map(|(moment, ..)| of(moment)).collect())?;
        }
        for (place, (name, _)) in COLUMNS.iter().enumerate() {
            let field = satline::Field::from_name(name).ok().filter(|_| shown);
            let cells: Option<Vec<f64>> = states
                .iter()
                .zip(rows)
                .map(|(state, (.., sample))| match field {
                    // What no display can show is no number.
                    Some(field) => Some(sample.get(field).unwrap_or(f64::NAN)),
                    None => state.column(place),
                })
                .collect();
            // Without a valve there is no lift.
            if let Some(cells) = cells {
                numbers(name, cells)?;
            }
        }
        Ok(parts)
    }
}
