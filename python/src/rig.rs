//! The rig: units that are built from a nominal rating and solved, one at a time or in arrays.

use std::sync::OnceLock;

use numpy::PyArray1;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};
use satline::Error;
use satline::refrigerant::{ALL, Refrigerant as Record};
use satline::rig::{
    Accumulator, CondenserModel, Conditions, Device, EfficiencyClass, Faults, LineSet, RATING_CONDITIONS, Rating,
    RefrigerantMap, ReturnDuct, Stop, Structure, Unit, VoidFraction, WATTS_PER_TON,
};

use crate::elementwise::{MASKED, Outcome, all_to, masked};
use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;
use crate::rig_state::{COLUMNS, RigState};

/// The severities by name.
type Severity = (&'static str, fn(&mut Faults) -> &mut f64);
const FAULTS: [Severity; 10] = [
    ("undercharge", |faults| &mut faults.undercharge),
    ("overcharge", |faults| &mut faults.overcharge),
    ("low_indoor_airflow", |faults| &mut faults.low_indoor_airflow),
    ("restricted_condenser_air", |faults| &mut faults.restricted_condenser_air),
    ("liquid_line_restriction", |faults| &mut faults.liquid_line_restriction),
    ("compressor_leakage", |faults| &mut faults.compressor_leakage),
    ("non_condensables", |faults| &mut faults.non_condensables),
    ("metering_overfeeding", |faults| &mut faults.metering_overfeeding),
    ("metering_underfeeding", |faults| &mut faults.metering_underfeeding),
    ("suction_line_heat_gain", |faults| &mut faults.suction_line_heat_gain),
];
const FAULT_CHOICES: &str = "undercharge, overcharge, low_indoor_airflow, restricted_condenser_air, \
    liquid_line_restriction, compressor_leakage, non_condensables, metering_overfeeding, metering_underfeeding, \
    suction_line_heat_gain";

/// A word among choices.
fn chosen<T: Copy>(
    py: Python<'_>,
    word: &str,
    field: &'static str,
    choices: &'static str,
    known: &[(&str, T)],
) -> PyResult<T> {
    known.iter().find(|(name, _)| *name == word).map(|(_, value)| *value).ok_or_else(|| {
        raise(py, &Error::UnknownChoice { field, choices }, &Place { given: Some(word), ..Place::default() })
    })
}

/// The map of a refrigerant, made once and kept.
fn map(py: Python<'_>, record: &'static Record) -> PyResult<&'static RefrigerantMap> {
    static MADE: OnceLock<Vec<OnceLock<Box<RefrigerantMap>>>> = OnceLock::new();
    let all = MADE.get_or_init(|| ALL.iter().map(|_| OnceLock::new()).collect());
    let cell = ALL.iter().position(|found| core::ptr::eq(*found, record)).and_then(|position| all.get(position));
    // Every record comes from the catalogue.
    let Some(cell) = cell else { return Err(PyTypeError::new_err("not a refrigerant of the catalogue")) };
    if let Some(made) = cell.get() {
        return Ok(made);
    }
    let made = py.detach(|| RefrigerantMap::of(record.designation(), record.model).map(Box::new));
    let made = made.map_err(|error| raise(py, &error, &Place::default()))?;
    Ok(cell.get_or_init(|| made))
}

/// Volume and bleed of the accumulator; leak, conductance and excess of the return duct.
type Extras = ((f64, f64), (f64, f64, f64));

/// A unit of the rig; satline.rig.Unit wraps it.
#[pyclass(frozen, module = "satline._native")]
pub struct RigUnit {
    pub(crate) unit: Unit<'static>,
    rated_subcooling: Option<f64>,
}

#[pymethods]
impl RigUnit {
    #[new]
    fn new(
        py: Python<'_>,
        refrigerant: &Refrigerant,
        nominal_capacity_w: f64,
        words: (String, String, String, String, String),
        line_set: (f64, f64),
        air_imbalance: f64,
        extras: Extras,
    ) -> PyResult<Self> {
        let (metering, law, class, condenser, void) = words;
        let (one, other): ((&str, Device), (&str, Device)) = match metering.as_str() {
            "fixed-orifice" => (("short-tube", Device::ShortTube), ("square-root", Device::FlashingOrifice)),
            "thermostatic-valve" => (("tapered", Device::TaperedValve), ("linear", Device::LinearValve)),
            _ => {
                let none: [(&str, Device); 0] = [];
                return Err(chosen(py, &metering, "metering", "fixed-orifice, thermostatic-valve", &none)
                    .err()
                    .unwrap_or_else(|| PyTypeError::new_err("metering")));
            }
        };
        let laws = if one.1 == Device::ShortTube {
            "short-tube or square-root with a fixed orifice"
        } else {
            "tapered or linear with a thermostatic valve"
        };
        let device = chosen(py, &law, "law", laws, &[("", one.1), one, other])?;
        let classes = [
            ("basic", EfficiencyClass::Basic),
            ("standard", EfficiencyClass::Standard),
            ("high", EfficiencyClass::High),
        ];
        let class = chosen(py, &class, "efficiency_class", "basic, standard, high", &classes)?;
        let condensers = [("moving-boundary", CondenserModel::MovingBoundary), ("lumped", CondenserModel::Lumped)];
        let condenser = chosen(py, &condenser, "condenser", "moving-boundary, lumped", &condensers)?;
        let voids =
            [("zivi", VoidFraction::Zivi), ("smith", VoidFraction::Smith), ("homogeneous", VoidFraction::Homogeneous)];
        let void = chosen(py, &void, "void_fraction", "zivi, smith, homogeneous", &voids)?;
        let map = map(py, refrigerant.0)?;
        let ((volume, bleed), (leak, conductance, excess)) = extras;
        let (length, lift) = line_set;
        let unit = py.detach(|| {
            let tons = in_tons(nominal_capacity_w)?;
            let rating = Rating {
                void,
                structure: Structure {
                    condenser,
                    air_imbalance,
                    return_duct: ReturnDuct { leak, conductance, excess },
                    accumulator: Accumulator { volume, bleed },
                },
                ..Rating::nominal(map, tons, class, device, LineSet { length, lift })?
            };
            let unit = Unit::designed(map, &rating)?;
            // What no unit is made of is told here, not at the first question; whether it runs is another matter.
            unit.solve(&RATING_CONDITIONS, &Faults::default()).map(|_| ()).or_else(runs_or_not)?;
            // Its label was written without the house around it.
            let mut labelled = unit;
            labelled.parts.structure.air_imbalance = 0.0;
            labelled.parts.structure.return_duct = ReturnDuct::default();
            let rated_subcooling = match labelled.solve(&RATING_CONDITIONS, &Faults::default()) {
                Ok(state) => Some(RigState::new(map, state, RATING_CONDITIONS)?.subcooling()),
                Err(error) => runs_or_not(error).map(|()| None)?,
            };
            Ok(Self { unit, rated_subcooling })
        });
        unit.map_err(|error: Error| raise(py, &error, &Place::default()))
    }

    /// Subcooling at the liquid port at the rating point, none where it would not run there.
    #[getter]
    fn rated_subcooling_k(&self) -> Option<f64> {
        self.rated_subcooling
    }

    #[getter]
    fn nameplate_charge_kg(&self) -> f64 {
        self.unit.nameplate_charge
    }

    #[getter]
    fn design_airflow_m3_s(&self) -> f64 {
        self.unit.parts.indoor_airflow
    }

    #[getter]
    fn design_mass_flow_kg_s(&self) -> f64 {
        self.unit.parts.design_flow
    }

    /// Inside diameters of the liquid and the suction line.
    #[getter]
    fn line_diameters_m(&self) -> (f64, f64) {
        (self.unit.parts.liquid_line.diameter, self.unit.parts.suction_line.diameter)
    }

    /// One state for numbers; for arrays a dict of columns with the reason of each cell that has no state.
    fn solve<'py>(
        &self,
        py: Python<'py>,
        conditions: [Bound<'py, PyAny>; 4],
        faults: Bound<'py, PyDict>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let [outdoor, dry, wet, ambient] = &conditions;
        let mut arguments = vec![
            (outdoor, "outdoor_dry_bulb_k"),
            (dry, "return_dry_bulb_k"),
            (wet, "return_wet_bulb_k"),
            (ambient, "ambient_pressure_pa"),
        ];
        let given = faults
            .iter()
            .map(|(name, value)| Ok((severity(py, &name)?, value)))
            .collect::<PyResult<Vec<(Severity, Bound<'py, PyAny>)>>>()?;
        arguments.extend(given.iter().map(|((name, _), value)| (value, *name)));
        let places: Vec<_> = given.iter().map(|((_, place), _)| *place).collect();
        let found = all_to(&arguments, |values| {
            let (air, severities) = values.split_at_checked(4).unwrap_or_default();
            let [outdoor_dry_bulb, return_dry_bulb, return_wet_bulb, ambient_pressure] =
                air.first_chunk().copied().unwrap_or([f64::NAN; 4]);
            let conditions = Conditions { outdoor_dry_bulb, return_dry_bulb, return_wet_bulb, ambient_pressure };
            let mut faults = Faults::default();
            for (place, value) in places.iter().zip(severities) {
                *place(&mut faults) = *value;
            }
            match self.unit.solve(&conditions, &faults) {
                Ok(state) => Ok(Ok(RigState::new(self.unit.map, state, conditions)?)),
                Err(error) => Stop::of(&error).map(Err).ok_or(error),
            }
        })?;
        match found {
            Outcome::One(Ok(state)) => Ok(Bound::new(py, state)?.into_any()),
            Outcome::One(Err(stop)) => Err(raise(py, &stop.error(), &Place::default())),
            Outcome::Many { shape, items } => {
                let shape = PyTuple::new(py, shape)?;
                let parts = PyDict::new(py);
                for (place, (name, _)) in COLUMNS.iter().enumerate() {
                    let of = |state: &RigState| state.column(place);
                    let cells = items.iter().map(|item| item.as_ref().ok().and_then(of).unwrap_or(MASKED)).collect();
                    let array = PyArray1::from_vec(py, cells).call_method1("reshape", (&shape,))?;
                    parts.set_item(name, masked(&array)?)?;
                }
                let reasons: Vec<&str> =
                    items.iter().map(|item| item.as_ref().map_or_else(|stop: &Stop| stop.reason(), |_| "")).collect();
                parts.set_item("reason", (reasons, shape))?;
                Ok(parts.into_any())
            }
        }
    }
}

/// An error that is no reason to stop.
fn runs_or_not(error: Error) -> Result<(), Error> {
    Stop::of(&error).map(|_| ()).ok_or(error)
}

/// The nominal capacity in tons, refused in the unit in which it was given.
fn in_tons(watts: f64) -> Result<f64, Error> {
    let (quantity, unit, lower, upper) = ("nominal capacity", "W", WATTS_PER_TON, 6.0 * WATTS_PER_TON);
    if !watts.is_finite() {
        return Err(Error::NotFinite { quantity, unit, lower, upper });
    }
    if watts < lower || watts > upper {
        let advice = "the rig builds residential units of 1 to 6 tons: give watts, a ton is 3517 W";
        return Err(Error::OutOfRange { quantity, unit, value: watts, lower, upper, advice });
    }
    Ok((watts / WATTS_PER_TON).clamp(1.0, 6.0))
}

/// The severity of a name.
fn severity(py: Python<'_>, name: &Bound<'_, PyAny>) -> PyResult<Severity> {
    let name: String = name.extract()?;
    let known = FAULTS.map(|fault| (fault.0, fault));
    chosen(py, &name, "faults", FAULT_CHOICES, &known)
}

/// Faults from a mapping of numbers.
pub fn faults(py: Python<'_>, given: &Bound<'_, PyDict>) -> PyResult<Faults> {
    let mut faults = Faults::default();
    for (name, value) in given.iter() {
        *severity(py, &name)?.1(&mut faults) = value.extract()?;
    }
    Ok(faults)
}
