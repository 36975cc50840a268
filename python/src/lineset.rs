//! Tubes, and the charge for a line set.

use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::lineset::{
    self, Behind, Compact, Covered, LineDensities, LinePhase, OutdoorDevice, Temper, default_pressure_uncertainty_pa,
};
use satline::uncertain::Uncertain;

use crate::elementwise::{one, two};
use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;
use crate::state::properties;

/// A tube of a line set: by its name, or by its diameters in metres.
///
/// Names are those of ASTM B280, the outside diameter in inches ('3/8', '1-1/8 in'), and of EN 12735-1 ('10x1', '10 mm').
/// temper, 'annealed' or 'drawn', asks for that tube of ASTM B280; without it the annealed one where it exists.
/// inside_diameter_uncertainty_m is one standard uncertainty; without it that of the standard's tolerances, or of a caliper
/// for an inside diameter given by hand.
#[pyclass(frozen, module = "satline.lineset")]
pub struct Tube(pub lineset::Tube);

#[pymethods]
impl Tube {
    #[new]
    #[pyo3(signature = (name=None, /, *, temper=None, inside_diameter_m=None, outside_diameter_m=None, wall_m=None, inside_diameter_uncertainty_m=None))]
    fn new(
        py: Python<'_>,
        name: Option<&str>,
        temper: Option<&str>,
        inside_diameter_m: Option<f64>,
        outside_diameter_m: Option<f64>,
        wall_m: Option<f64>,
        inside_diameter_uncertainty_m: Option<f64>,
    ) -> PyResult<Self> {
        let made = match (name, temper, inside_diameter_m, outside_diameter_m, wall_m) {
            (Some(name), None, None, None, None) => lineset::Tube::named(name),
            (Some(name), Some(temper), None, None, None) => Temper::ALL
                .iter()
                .copied()
                .find(|known| known.name() == temper)
                .ok_or(Error::UnknownChoice { field: "temper", choices: "annealed, drawn" })
                .and_then(|temper| lineset::Tube::b280(name, temper)),
            (None, None, Some(inside), None, None) => lineset::Tube::from_inside_diameter_m(inside),
            (None, None, None, Some(outside), Some(wall)) => lineset::Tube::from_outside_diameter_m(outside, wall),
            _ => {
                return Err(PyTypeError::new_err(
                    "give a name, or inside_diameter_m, or outside_diameter_m and wall_m",
                ));
            }
        };
        let made = made.and_then(|tube| match inside_diameter_uncertainty_m {
            Some(uncertainty) => tube.with_inside_diameter_uncertainty_m(uncertainty),
            None => Ok(tube),
        });
        made.map(Self).map_err(|error| {
            let given = matches!(error, Error::UnknownChoice { .. }).then_some(name).flatten();
            raise(py, &error, &Place { given, ..Place::default() })
        })
    }

    /// Its size and standard, or how it was given.
    #[getter]
    fn name(&self) -> &'static str {
        self.0.name()
    }

    /// Inside diameter in metres.
    #[getter]
    fn inside_diameter_m(&self) -> f64 {
        self.0.inside_diameter_m()
    }

    /// One standard uncertainty of the inside diameter in metres.
    #[getter]
    fn inside_diameter_uncertainty_m(&self) -> f64 {
        self.0.inside_diameter_uncertainty_m()
    }

    /// Outside diameter in metres, None where only the inside diameter is known.
    #[getter]
    fn outside_diameter_m(&self) -> Option<f64> {
        self.0.outside_diameter_m()
    }

    /// Wall thickness in metres, None where only the inside diameter is known.
    #[getter]
    fn wall_m(&self) -> Option<f64> {
        self.0.wall_m()
    }

    /// Area of the bore in m2.
    #[getter]
    fn bore_area_m2(&self) -> f64 {
        self.0.bore_area_m2()
    }

    /// Roughness of the wall inside in metres: that of drawn copper.
    #[getter]
    fn roughness_m(&self) -> f64 {
        self.0.roughness_m()
    }

    fn __repr__(&self) -> String {
        format!("<Tube {}, inside diameter {:.3} mm>", self.0.name(), 1e3 * self.0.inside_diameter_m())
    }
}

/// Mass per length of a line; the pressure is none where it is saturated.
#[pyfunction]
pub fn charge_per_length<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    tube: &Tube,
    temperature_k: &Bound<'py, PyAny>,
    phase: &str,
    pressure_pa: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let known = LinePhase::ALL.iter().copied().find(|known| known.name() == phase);
    let known = known.ok_or(Error::UnknownChoice { field: "phase", choices: "liquid, vapor" });
    let phase = known.map_err(|error| raise(py, &error, &Place { given: Some(phase), ..Place::default() }))?;
    let (densities, tube) = (densities(py, refrigerant)?, tube.0);
    let temperature = (temperature_k, "temperature_k");
    match pressure_pa {
        None => one(temperature.0, temperature.1, |kelvin| densities.charge_per_length(&tube, phase, kelvin, None)),
        Some(pressure) => two(temperature, (pressure, "pressure_pa"), |kelvin, pascal| {
            densities.charge_per_length(&tube, phase, kelvin, Some(pascal))
        }),
    }
}

/// Properties by a reference state that the refrigerant has; densities do not depend on it.
fn densities(py: Python<'_>, refrigerant: &Refrigerant) -> PyResult<&'static satline::eos::Properties> {
    properties(py, refrigerant.0, "IIR").or_else(|_| properties(py, refrigerant.0, "NBP"))
}

/// Both lines, and both that the maker counts on.
type Tubes<'py> = (PyRef<'py, Tube>, PyRef<'py, Tube>, Option<PyRef<'py, Tube>>, Option<PyRef<'py, Tube>>);
/// Length of the small and of the large line with their standard uncertainty, then the covered length with its own.
type Lengths = (f64, f64, Option<f64>, f64, f64);
/// Temperature and pressure of the liquid, of the vapour, and their standard uncertainties.
type States = ((f64, Option<f64>), (f64, Option<f64>), (Option<f64>, Option<f64>));
/// Metering place; temperature or pressure behind the device and its standard uncertainty.
type Device<'a> = (&'a str, Option<f64>, Option<f64>, Option<f64>);
/// Accessories and the maker's figure, each with its standard uncertainty, and whether the compact curves shall do.
type Extras = (Vec<(f64, f64)>, Option<(f64, f64)>, bool);

/// The charge for a line set as the keyword arguments of its class.
#[pyfunction]
pub fn line_set_charge_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    tubes: Tubes<'py>,
    lengths: Lengths,
    states: States,
    device: Device<'_>,
    extras: Extras,
) -> PyResult<Bound<'py, PyDict>> {
    let of = |(value, standard_uncertainty)| Uncertain { value, standard_uncertainty };
    let accessories: Vec<Uncertain> = extras.0.into_iter().map(of).collect();
    let (length, vapor_length, length_uncertainty, covered, covered_uncertainty) = lengths;
    let (temperature_uncertainty, pressure_uncertainty) = states.2;
    let line = |tube: &Tube, length, (temperature, pressure)| {
        let mut line = lineset::Line::new(tube.0, length, temperature, pressure);
        let set = |place: &mut Uncertain, given: Option<f64>| {
            place.standard_uncertainty = given.unwrap_or(place.standard_uncertainty);
        };
        set(&mut line.length_m, length_uncertainty);
        set(&mut line.temperature_k, temperature_uncertainty);
        if let Some(pressure) = &mut line.pressure_pa {
            set(pressure, pressure_uncertainty);
        }
        line
    };
    let set = lineset::LineSet {
        liquid: line(&tubes.0, length, states.0),
        vapor: line(&tubes.1, vapor_length, states.1),
        outdoor_device: outdoor_device(py, device)?,
        covered: Covered {
            length_m: of((covered, covered_uncertainty)),
            liquid_tube: tubes.2.as_ref().map(|tube| tube.0),
            vapor_tube: tubes.3.as_ref().map(|tube| tube.0),
        },
        accessories_kg: &accessories,
        makers_charge_per_length_kg_m: extras.1.map(of),
    };
    let charge = if extras.2 {
        lineset::line_set_charge(&Compact(refrigerant.0), &set)
    } else {
        lineset::line_set_charge(densities(py, refrigerant)?, &set)
    };
    parts(py, &charge.map_err(|error| raise(py, &error, &Place::default()))?)
}

fn outdoor_device(py: Python<'_>, device: Device<'_>) -> PyResult<Option<OutdoorDevice>> {
    let (place, temperature, pressure, uncertainty) = device;
    let (behind, usual) = match (place, temperature, pressure) {
        ("indoor", None, None) => return Ok(None),
        ("outdoor", Some(temperature), None) => {
            (Behind::Temperature(temperature), lineset::DEFAULT_TEMPERATURE_UNCERTAINTY_K)
        }
        ("outdoor", None, Some(pressure)) => (Behind::Pressure(pressure), default_pressure_uncertainty_pa(pressure)),
        ("indoor" | "outdoor", ..) => {
            return Err(PyTypeError::new_err(
                "with the metering device outdoors, and only then, give downstream_temperature_k or \
                 downstream_pressure_pa: the small line is two-phase behind it",
            ));
        }
        _ => {
            let error = Error::UnknownChoice { field: "metering_place", choices: "indoor, outdoor" };
            return Err(raise(py, &error, &Place { given: Some(place), ..Place::default() }));
        }
    };
    Ok(Some(OutdoorDevice { behind, standard_uncertainty: uncertainty.unwrap_or(usual) }))
}

fn parts<'py>(py: Python<'py>, charge: &lineset::LineSetCharge) -> PyResult<Bound<'py, PyDict>> {
    let parts = PyDict::new(py);
    let put = |parts: &Bound<'py, PyDict>, name: &str, value: Uncertain| {
        parts.set_item(name, (value.value, value.standard_uncertainty))
    };
    parts.set_item("action", charge.action.name())?;
    parts.set_item("instruction", charge.action.sentence())?;
    parts.set_item("advice", charge.advice.sentence())?;
    parts.set_item("cautions", charge.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    put(&parts, "mass", charge.mass_kg)?;
    put(&parts, "computed", charge.computed_kg)?;
    put(&parts, "accessories", charge.accessories_kg)?;
    put(&parts, "charge_per_length", charge.charge_per_length_kg_m)?;
    for (name, line) in [("liquid", &charge.liquid), ("vapor", &charge.vapor)] {
        let own = PyDict::new(py);
        put(&own, "density", line.density_kg_m3)?;
        own.set_item("quality", line.quality)?;
        put(&own, "charge_per_length", line.charge_per_length_kg_m)?;
        put(&own, "holds", line.holds_kg)?;
        put(&own, "beyond", line.beyond_kg)?;
        parts.set_item(name, own)?;
    }
    Ok(parts)
}
