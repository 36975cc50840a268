//! What a leak leaves of a blend.

use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyTuple, PyType};
use satline::Error;
use satline::eos::{End, Filling, Leaving, Mixture, PerComponent, Vessel};
use satline::refrigerant::{Refrigerant as Record, flammable_share, leak_cautions};

use crate::elementwise::one;
use crate::raise::{Place, plain, raise};

/// What is in a vessel after a leak at constant temperature; Refrigerant.after_leak gives one.
///
/// Its bubble and dew curves are those of all that remains, liquid and vapour together, by the equations of state.
#[pyclass(frozen, module = "satline")]
pub struct AfterLeak {
    vessel: Vessel,
    leaving: Leaving,
    fraction_lost: f64,
}

/// Carries out the leak; computes without holding the interpreter.
pub fn after_leak(
    py: Python<'_>,
    record: &'static Record,
    fraction_lost: f64,
    temperature_k: f64,
    leaving: &str,
    liquid_volume_fraction: Option<f64>,
    filling_density_kg_m3: Option<f64>,
) -> PyResult<AfterLeak> {
    let filling = match (liquid_volume_fraction, filling_density_kg_m3) {
        (None, None) => Filling::default(),
        (Some(share), None) => Filling::LiquidVolumeFraction(share),
        (None, Some(density)) => Filling::Density(density),
        (Some(_), Some(_)) => {
            let message = "the filling is given twice: give liquid_volume_fraction or filling_density_kg_m3";
            return Err(plain(py, "UnknownChoiceError", message));
        }
    };
    let compute = || -> Result<AfterLeak, Error> {
        let leaving = Leaving::from_name(leaving)?;
        let vessel = Vessel::filled(&Mixture::of(record.model)?, temperature_k, filling)?;
        Ok(AfterLeak { vessel: vessel.after_leak(leaving, fraction_lost)?, leaving, fraction_lost })
    };
    py.detach(compute).map_err(|error| match error {
        Error::UnknownChoice { .. } => raise(py, &error, &Place { given: Some(leaving), ..Place::default() }),
        other => raise(py, &other, &Place::default()),
    })
}

impl AfterLeak {
    fn components<'py>(&self, py: Python<'py>, fractions: PerComponent) -> PyResult<Bound<'py, PyTuple>> {
        static COMPONENT: PyOnceLock<Py<PyType>> = PyOnceLock::new();
        let class = COMPONENT.import(py, "satline._component", "Component")?;
        let components = self.vessel.mixture().model().identity.components.iter();
        let made: Vec<_> = components
            .zip(fractions)
            .map(|(component, fraction)| class.call1((component.designation, fraction)))
            .collect::<PyResult<_>>()?;
        PyTuple::new(py, made)
    }

    fn flammable(&self, fractions: &PerComponent) -> f64 {
        flammable_share(self.vessel.mixture().model().identity, fractions)
    }
}

#[pymethods]
impl AfterLeak {
    /// The fraction of the first mass that has leaked.
    #[getter]
    fn fraction_lost(&self) -> f64 {
        self.fraction_lost
    }

    /// What leaked: 'liquid' or 'vapor'.
    #[getter]
    fn leaving(&self) -> &'static str {
        self.leaving.name()
    }

    /// Temperature in kelvin, the same throughout.
    #[getter]
    fn temperature_k(&self) -> f64 {
        self.vessel.temperature()
    }

    /// Pressure in pascals, absolute.
    #[getter]
    fn pressure_pa(&self) -> f64 {
        self.vessel.pressure()
    }

    /// All that remains: its components with their mass fractions, which sum to 1.
    #[getter(components)]
    fn all_components<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        self.components(py, self.vessel.mass_fractions())
    }

    /// The liquid's components with their mass fractions.
    #[getter]
    fn liquid_components<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        self.components(py, self.vessel.liquid_mass_fractions())
    }

    /// The vapour's components with their mass fractions: what a leak above the liquid lets out now.
    #[getter]
    fn vapor_components<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        self.components(py, self.vessel.vapor_mass_fractions())
    }

    /// Share of the vessel's volume that is liquid.
    #[getter]
    fn liquid_volume_fraction(&self) -> f64 {
        self.vessel.liquid_volume_fraction()
    }

    /// Share of the mass that is liquid.
    #[getter]
    fn liquid_mass_fraction(&self) -> f64 {
        self.vessel.liquid_mass_share()
    }

    /// Mass that remains over the volume of the vessel, kg/m3.
    #[getter]
    fn filling_density_kg_m3(&self) -> f64 {
        self.vessel.density()
    }

    /// Density of the liquid, kg/m3.
    #[getter]
    fn liquid_density_kg_m3(&self) -> f64 {
        self.vessel.liquid_density()
    }

    /// Density of the vapour, kg/m3.
    #[getter]
    fn vapor_density_kg_m3(&self) -> f64 {
        self.vessel.vapor_density()
    }

    /// Share of all that remains that can burn: its components of class 2L, 2 or 3 and those of unknown class.
    #[getter]
    fn flammable_mass_fraction(&self) -> f64 {
        self.flammable(&self.vessel.mass_fractions())
    }

    /// The same share of the vapour.
    #[getter]
    fn vapor_flammable_mass_fraction(&self) -> f64 {
        self.flammable(&self.vessel.vapor_mass_fractions())
    }

    /// What can hurt, or mislead.
    #[getter]
    fn cautions<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, leak_cautions(&self.vessel).map(|caution| caution.sentence()).collect::<Vec<_>>())
    }

    /// Bubble pressure in pascals, absolute, of what remains at a temperature in kelvin.
    fn bubble_pressure_pa<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        one(temperature_k, "temperature_k", |temperature| {
            Ok(self.vessel.mixture().at_temperature(End::Bubble, temperature)?.pressure)
        })
    }

    /// Dew pressure in pascals, absolute, of what remains at a temperature in kelvin.
    fn dew_pressure_pa<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        one(temperature_k, "temperature_k", |temperature| {
            Ok(self.vessel.mixture().at_temperature(End::Dew, temperature)?.pressure)
        })
    }

    /// Bubble temperature in kelvin of what remains at an absolute pressure in pascals.
    fn bubble_temperature_k<'py>(&self, pressure_pa: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        one(pressure_pa, "pressure_pa", |pressure| {
            Ok(self.vessel.mixture().at_pressure(End::Bubble, pressure)?.temperature)
        })
    }

    /// Dew temperature in kelvin of what remains at an absolute pressure in pascals.
    fn dew_temperature_k<'py>(&self, pressure_pa: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        one(pressure_pa, "pressure_pa", |pressure| {
            Ok(self.vessel.mixture().at_pressure(End::Dew, pressure)?.temperature)
        })
    }

    fn __repr__(&self) -> String {
        let identity = self.vessel.mixture().model().identity;
        let shares: Vec<String> = identity
            .components
            .iter()
            .zip(self.vessel.mass_fractions())
            .map(|(component, fraction)| format!("{} {fraction:.4}", component.designation))
            .collect();
        format!(
            "<satline.AfterLeak {}, {:.4} lost as {}: {}>",
            identity.designation,
            self.fraction_lost,
            self.leaving.name(),
            shares.join(", ")
        )
    }
}
