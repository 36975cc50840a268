//! The Refrigerant class and the catalogue.

use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyFloat, PyTuple, PyType};
use satline::eos::Mixture;
use satline::quantity::{Pressure, Temperature};
use satline::refrigerant::{self as catalogue, Refrigerant as Record};

use crate::elementwise::{one, two};
use crate::leak::{self, AfterLeak};
use crate::raise::{Place, raise};
use crate::state::{Known, state};
use crate::transport;

/// A refrigerant of the catalogue; satline.refrigerant finds one.
///
/// Temperatures are in kelvin, pressures in pascals, absolute. Every method takes a number and gives a float, or takes
/// arrays (anything array-like) and gives a float64 array of the broadcast shape. A value outside the range of the
/// saturation curve raises OutOfRangeError, NaN and infinities NotFiniteError; in an array, the element is named.
#[pyclass(frozen, module = "satline")]
pub struct Refrigerant(pub(crate) &'static Record);

#[pymethods]
impl Refrigerant {
    /// The ASHRAE 34 designation, such as 'R-410A'.
    #[getter]
    fn designation(&self) -> &'static str {
        self.0.designation()
    }

    /// The components with their mass fractions, which sum to 1.
    #[getter]
    fn components<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        static COMPONENT: PyOnceLock<Py<PyType>> = PyOnceLock::new();
        let class = COMPONENT.import(py, "satline._component", "Component")?;
        let components = self.0.identity().components.iter();
        let made: Vec<_> = components
            .map(|component| class.call1((component.designation, component.mass_fraction)))
            .collect::<PyResult<_>>()?;
        PyTuple::new(py, made)
    }

    /// The ASHRAE 34 safety class: toxicity A or B, flammability 1, 2L, 2 or 3.
    #[getter]
    fn safety_class(&self) -> &'static str {
        self.0.identity().safety_class.name()
    }

    /// The lower flammability limit in kg/m3, None where the refrigerant does not burn.
    #[getter]
    fn lower_flammability_limit_kg_m3(&self) -> Option<f64> {
        self.0.identity().lower_flammability_limit_kg_m3
    }

    /// How well the properties are known: 'published' or 'estimated'.
    #[getter]
    fn confidence(&self) -> &'static str {
        self.0.confidence.name()
    }

    /// Chemical name, or the components with their shares.
    #[getter]
    fn name(&self) -> &'static str {
        self.0.name
    }

    /// Standard uncertainty of bubble and dew temperatures in kelvin where a mixture parameter was estimated, else None.
    #[getter]
    fn saturation_uncertainty_k(&self) -> Option<f64> {
        self.0.saturation_uncertainty_k()
    }

    /// Global warming potential over 100 years, or None where it is not known here.
    #[getter]
    fn global_warming_potential(&self) -> Option<f64> {
        self.0.global_warming_potential.map(|potential| potential.value)
    }

    /// Where the global warming potential comes from.
    #[getter]
    fn global_warming_potential_source(&self) -> Option<&'static str> {
        self.0.global_warming_potential.map(|potential| potential.source)
    }

    /// Bubble temperature at 101 325 Pa in kelvin, or None where the refrigerant is solid there.
    #[getter]
    fn normal_bubble_temperature_k(&self) -> Option<f64> {
        self.0.points.normal_bubble_temperature_k
    }

    /// Dew temperature at 101 325 Pa in kelvin, or None where the refrigerant is solid there.
    #[getter]
    fn normal_dew_temperature_k(&self) -> Option<f64> {
        self.0.points.normal_dew_temperature_k
    }

    /// Critical temperature in kelvin.
    #[getter]
    fn critical_temperature_k(&self) -> f64 {
        self.0.points.critical_temperature_k
    }

    /// Critical pressure in pascals.
    #[getter]
    fn critical_pressure_pa(&self) -> f64 {
        self.0.points.critical_pressure_pa
    }

    /// The publications from which the numbers come.
    #[getter]
    fn sources<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, self.0.sources)
    }

    /// Lowest and highest temperature, in kelvin, at which both bubble and dew curves answer.
    #[getter]
    fn temperature_range_k(&self) -> (f64, f64) {
        self.0.curves.temperature_range_k()
    }

    /// Pressure in pascals, absolute, at which the liquid begins to boil at a temperature in kelvin.
    fn bubble_pressure_pa<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let curves = self.0.curves;
        one(temperature_k, "temperature_k", |temperature| {
            Ok(curves.bubble_pressure(Temperature::from_kelvin(temperature)?)?.pascals())
        })
    }

    /// Pressure in pascals, absolute, at which the vapour begins to condense at a temperature in kelvin.
    fn dew_pressure_pa<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let curves = self.0.curves;
        one(temperature_k, "temperature_k", |temperature| {
            Ok(curves.dew_pressure(Temperature::from_kelvin(temperature)?)?.pascals())
        })
    }

    /// Temperature in kelvin at which the liquid begins to boil at an absolute pressure in pascals.
    fn bubble_temperature_k<'py>(&self, pressure_pa: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let curves = self.0.curves;
        one(pressure_pa, "pressure_pa", |pressure| {
            Ok(curves.bubble_temperature(Pressure::from_pascals(pressure)?)?.kelvin())
        })
    }

    /// Temperature in kelvin at which the vapour begins to condense at an absolute pressure in pascals.
    fn dew_temperature_k<'py>(&self, pressure_pa: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let curves = self.0.curves;
        one(pressure_pa, "pressure_pa", |pressure| {
            Ok(curves.dew_temperature(Pressure::from_pascals(pressure)?)?.kelvin())
        })
    }

    /// Superheat in kelvin: line temperature minus dew temperature. Negative means that liquid is present.
    fn superheat_k<'py>(
        &self,
        temperature_k: &Bound<'py, PyAny>,
        pressure_pa: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let curves = self.0.curves;
        two((temperature_k, "temperature_k"), (pressure_pa, "pressure_pa"), |line, pressure| {
            let (line, pressure) = (Temperature::from_kelvin(line)?, Pressure::from_pascals(pressure)?);
            Ok(curves.superheat(line, pressure)?.kelvin())
        })
    }

    /// Subcooling in kelvin: bubble temperature minus line temperature. Negative means that vapour is present.
    fn subcooling_k<'py>(
        &self,
        temperature_k: &Bound<'py, PyAny>,
        pressure_pa: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let curves = self.0.curves;
        two((temperature_k, "temperature_k"), (pressure_pa, "pressure_pa"), |line, pressure| {
            let (line, pressure) = (Temperature::from_kelvin(line)?, Pressure::from_pascals(pressure)?);
            Ok(curves.subcooling(line, pressure)?.kelvin())
        })
    }

    /// Density in kg/m3 of saturated liquid at its bubble point, of the overall composition, at a temperature in kelvin.
    ///
    /// From compact curves, within 1 ppm of the equation of state that saturated_liquid solves, and thousands of times
    /// faster. Answers over temperature_range_k.
    ///
    /// >>> r = satline.refrigerant("R-410A")
    /// >>> round(r.saturated_liquid_density_kg_m3(313.15), 1)
    /// 975.3
    fn saturated_liquid_density_kg_m3<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        self.saturated_property(temperature_k, Record::saturated_liquid_density_kg_m3)
    }

    /// Density in kg/m3 of saturated vapour at its dew point, of the overall composition, at a temperature in kelvin.
    ///
    /// From compact curves, within 1 ppm of the equation of state that saturated_vapor solves. Answers over
    /// temperature_range_k. Of a blend saturated vapour stands at another pressure than saturated liquid at the same
    /// temperature.
    fn saturated_vapor_density_kg_m3<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        self.saturated_property(temperature_k, Record::saturated_vapor_density_kg_m3)
    }

    /// Enthalpy in J/kg of saturated liquid at its bubble point at a temperature in kelvin.
    ///
    /// It counts from 200 kJ/kg for saturated liquid at 0 degC (reference 'IIR' of state); of R-14, which has no liquid
    /// there, from zero for saturated liquid at 101325 Pa ('NBP'). From compact curves, within 2 J/kg of the equation of
    /// state. Answers over temperature_range_k.
    fn saturated_liquid_enthalpy_j_kg<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        self.saturated_property(temperature_k, Record::saturated_liquid_enthalpy_j_kg)
    }

    /// Enthalpy in J/kg of saturated vapour at its dew point at a temperature in kelvin, counted as
    /// saturated_liquid_enthalpy_j_kg counts: the difference of the two is the latent heat.
    fn saturated_vapor_enthalpy_j_kg<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        self.saturated_property(temperature_k, Record::saturated_vapor_enthalpy_j_kg)
    }

    /// The state at two known properties, from the equation of state: a State for numbers, States for arrays.
    ///
    /// The two are temperature_k and pressure_pa (also by position), pressure_pa and enthalpy_j_kg, pressure_pa and
    /// entropy_j_kg_k, temperature_k and quality, or pressure_pa and quality (the vapour's share of the mass, 0 to 1).
    /// reference says where enthalpy and entropy count from: 'IIR' (200 kJ/kg and 1 kJ/(kg K) for saturated liquid at
    /// 0 degC), 'ASHRAE' (zero for saturated liquid at -40 degC) or 'NBP' (zero for saturated liquid at 101325 Pa); of
    /// a blend, saturated liquid is its bubble point.
    ///
    /// Raises OutOfRangeError for a value outside the equation's range, a temperature and pressure between dew and
    /// bubble pressure, which do not fix a state, and a reference state at which the refrigerant has no saturated
    /// liquid; NotConvergedError where no solution was found, as may be close to the critical point.
    #[pyo3(
        signature = (temperature_k=None, pressure_pa=None, *, enthalpy_j_kg=None, entropy_j_kg_k=None, quality=None, reference="IIR"),
        text_signature = "($self, temperature_k=None, pressure_pa=None, *, enthalpy_j_kg=None, entropy_j_kg_k=None, quality=None, reference='IIR')"
    )]
    #[allow(clippy::too_many_arguments)] // named in Python
    fn state<'py>(
        &self,
        py: Python<'py>,
        temperature_k: Option<&Bound<'py, PyAny>>,
        pressure_pa: Option<&Bound<'py, PyAny>>,
        enthalpy_j_kg: Option<&Bound<'py, PyAny>>,
        entropy_j_kg_k: Option<&Bound<'py, PyAny>>,
        quality: Option<&Bound<'py, PyAny>>,
        reference: &str,
    ) -> PyResult<Bound<'py, PyAny>> {
        let known = Known {
            temperature: temperature_k,
            pressure: pressure_pa,
            enthalpy: enthalpy_j_kg,
            entropy: entropy_j_kg_k,
            quality,
        };
        state(py, self.0, reference, &known)
    }

    /// Saturated liquid at a temperature in kelvin: state(temperature_k, quality=0). Of a blend the bubble point.
    #[pyo3(signature = (temperature_k, *, reference="IIR"), text_signature = "($self, temperature_k, *, reference='IIR')")]
    fn saturated_liquid<'py>(&self, temperature_k: &Bound<'py, PyAny>, reference: &str) -> PyResult<Bound<'py, PyAny>> {
        self.saturated(temperature_k, 0.0, reference)
    }

    /// Saturated vapour at a temperature in kelvin: state(temperature_k, quality=1). Of a blend the dew point.
    #[pyo3(signature = (temperature_k, *, reference="IIR"), text_signature = "($self, temperature_k, *, reference='IIR')")]
    fn saturated_vapor<'py>(&self, temperature_k: &Bound<'py, PyAny>, reference: &str) -> PyResult<Bound<'py, PyAny>> {
        self.saturated(temperature_k, 1.0, reference)
    }

    /// Viscosity in Pa s of one phase at a temperature in kelvin and a density in kg/m3.
    ///
    /// density_kg_m3 is that of one phase, as State.density_kg_m3 of a liquid or a vapour; 0 gives the dilute gas. Raises
    /// OutOfRangeError where the viscosity is not known (above 500 K, below the highest of the components' lowest
    /// temperatures) and for a density that is clearly one of liquid and vapour together.
    ///
    /// >>> liquid = satline.refrigerant("R-410A").saturated_liquid(300.0)
    /// >>> round(1e6 * satline.refrigerant("R-410A").viscosity_pa_s(300.0, liquid.density_kg_m3))
    /// 122
    fn viscosity_pa_s<'py>(
        &self,
        temperature_k: &Bound<'py, PyAny>,
        density_kg_m3: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        transport::by_density(self.0, temperature_k, density_kg_m3, Mixture::viscosity_by_mass)
    }

    /// Stated relative error of this refrigerant's viscosities, such as 0.15.
    #[getter]
    fn viscosity_error(&self, py: Python<'_>) -> PyResult<f64> {
        transport::stated(py, self.0, Mixture::viscosity_error)
    }

    /// Thermal conductivity in W/(m K) of one phase at a temperature in kelvin and a density in kg/m3.
    ///
    /// density_kg_m3 is that of one phase, as State.density_kg_m3 of a liquid or a vapour; 0 gives the dilute gas. Raises
    /// NotAvailableError for blends and where no correlation is published, OutOfRangeError outside the correlation's range
    /// and for a density of liquid and vapour together.
    ///
    /// >>> vapor = satline.refrigerant("R-134a").saturated_vapor(300.0)
    /// >>> round(1e3 * satline.refrigerant("R-134a").thermal_conductivity_w_m_k(300.0, vapor.density_kg_m3), 1)
    /// 14.0
    fn thermal_conductivity_w_m_k<'py>(
        &self,
        temperature_k: &Bound<'py, PyAny>,
        density_kg_m3: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        transport::by_density(self.0, temperature_k, density_kg_m3, Mixture::thermal_conductivity_by_mass)
    }

    /// Stated relative error of this refrigerant's thermal conductivity; near the critical point it is larger.
    ///
    /// Raises NotAvailableError where thermal_conductivity_w_m_k does.
    #[getter]
    fn thermal_conductivity_error(&self, py: Python<'_>) -> PyResult<f64> {
        transport::stated(py, self.0, Mixture::thermal_conductivity_error)
    }

    /// Surface tension in N/m of the liquid under its own vapour at a temperature in kelvin.
    ///
    /// Raises NotAvailableError for blends and where no correlation is published, OutOfRangeError outside the correlation's
    /// range, which ends at its critical temperature.
    ///
    /// >>> round(1e3 * satline.refrigerant("R-32").surface_tension_n_m(298.15), 2)
    /// 6.79
    fn surface_tension_n_m<'py>(&self, temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        transport::surface_tension(self.0, temperature_k)
    }

    /// Stated relative error of this refrigerant's surface tension; near the critical point at least 0.2 mN/m.
    ///
    /// Raises NotAvailableError where surface_tension_n_m does.
    #[getter]
    fn surface_tension_error(&self, py: Python<'_>) -> PyResult<f64> {
        transport::stated(py, self.0, Mixture::surface_tension_error)
    }

    /// What is left of a filling of this refrigerant after a slow leak at constant temperature.
    ///
    /// fraction_lost is the fraction of the mass that has leaked, as 'vapor' or as 'liquid'. The vessel is a bottle or a
    /// unit at rest, everywhere at temperature_k, with liquid and vapour in equilibrium. How full it was: the share of
    /// its volume that was liquid, or its mass over its volume; four fifths liquid if neither is given, about the most
    /// that a bottle may hold. Raises OutOfRangeError where the liquid is gone before that; its upper limit is the
    /// fraction at which it is, and from there on the composition stays.
    ///
    /// A blend of which vapour has leaked is no longer the blend on its label. Recover and recharge it rather than top it
    /// up, and see the result's cautions.
    #[pyo3(signature = (fraction_lost, temperature_k, *, leaving="vapor", liquid_volume_fraction=None,
                        filling_density_kg_m3=None))]
    fn after_leak(
        &self,
        py: Python<'_>,
        fraction_lost: f64,
        temperature_k: f64,
        leaving: &str,
        liquid_volume_fraction: Option<f64>,
        filling_density_kg_m3: Option<f64>,
    ) -> PyResult<AfterLeak> {
        leak::after_leak(
            py,
            self.0,
            fraction_lost,
            temperature_k,
            leaving,
            liquid_volume_fraction,
            filling_density_kg_m3,
        )
    }

    fn __repr__(&self) -> String {
        format!("satline.refrigerant('{}')", self.0.designation())
    }

    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Self>().is_ok_and(|other| other.get().0.designation() == self.0.designation())
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        pyo3::types::PyString::new(py, self.0.designation()).hash()
    }

    /// Copies and pickles are made by finding the refrigerant again.
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (&'static str,))> {
        Ok((py.import("satline")?.getattr("refrigerant")?, (self.0.designation(),)))
    }
}

impl Refrigerant {
    fn saturated_property<'py>(
        &self,
        temperature_k: &Bound<'py, PyAny>,
        property: fn(&Record, Temperature) -> Result<f64, satline::Error>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let record = self.0;
        one(temperature_k, "temperature_k", |temperature| property(record, Temperature::from_kelvin(temperature)?))
    }

    fn saturated<'py>(
        &self,
        temperature: &Bound<'py, PyAny>,
        quality: f64,
        reference: &str,
    ) -> PyResult<Bound<'py, PyAny>> {
        let py = temperature.py();
        let quality = PyFloat::new(py, quality).into_any();
        let known = Known {
            temperature: Some(temperature),
            pressure: None,
            enthalpy: None,
            entropy: None,
            quality: Some(&quality),
        };
        state(py, self.0, reference, &known)
    }
}

/// The refrigerant of that name; case, hyphens and spaces do not matter.
///
/// Raises UnknownRefrigerantError, with the nearest name, when the catalogue has none.
#[pyfunction]
pub fn refrigerant(py: Python<'_>, name: &str) -> PyResult<Refrigerant> {
    match catalogue::find(name) {
        Ok(record) => Ok(Refrigerant(record)),
        Err(error) => Err(raise(py, &error, &Place { given: Some(name), ..Place::default() })),
    }
}

/// Every refrigerant of the catalogue.
#[pyfunction]
pub fn refrigerants() -> Vec<Refrigerant> {
    catalogue::ALL.iter().map(|record| Refrigerant(record)).collect()
}
