//! Conversions between SI and the units on instruments. The numbers are the core's; the unit stands in each name.

use pyo3::prelude::*;
use satline::quantity::{
    Airflow, Atmosphere, GaugePressure, KG_PER_POUND, M3_S_PER_CFM, Mass, PASCALS_PER_INCH_OF_MERCURY, PASCALS_PER_PSI,
    Power, Pressure, Temperature, TemperatureDifference, WATTS_PER_BTU_H, WATTS_PER_TON,
};

use crate::elementwise::{one, two};

/// One function a line: name, argument, what it says of itself, and how it is computed.
macro_rules! conversions {
    ($($(#[$doc:meta])* $name:ident($argument:ident) = $function:expr;)*) => {
        $($(#[$doc])*
        #[pyfunction]
        pub fn $name<'py>($argument: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
            one($argument, stringify!($argument), $function)
        })*

        /// Adds them to the module.
        pub fn add(module: &Bound<'_, PyModule>) -> PyResult<()> {
            $(module.add_function(wrap_pyfunction!($name, module)?)?;)*
            module.add_function(wrap_pyfunction!(pressure_from_gauge_pa, module)?)?;
            module.add_function(wrap_pyfunction!(pascal_from_psig, module)?)?;
            module.add_function(wrap_pyfunction!(psig_from_pascal, module)?)
        }
    };
}

conversions! {
    /// A temperature in kelvin from degrees Fahrenheit.
    kelvin_from_fahrenheit(fahrenheit) = |value| Ok(Temperature::from_fahrenheit(value)?.kelvin());
    /// A temperature in degrees Fahrenheit from kelvin.
    fahrenheit_from_kelvin(kelvin) = |value| Ok(Temperature::from_kelvin(value)?.fahrenheit());
    /// A temperature in kelvin from degrees Celsius.
    kelvin_from_celsius(celsius) = |value| Ok(Temperature::from_celsius(value)?.kelvin());
    /// A temperature in degrees Celsius from kelvin.
    celsius_from_kelvin(kelvin) = |value| Ok(Temperature::from_kelvin(value)?.celsius());
    /// A temperature difference in kelvin from one in degrees Fahrenheit: 10 degF is 5.56 K.
    kelvin_difference_from_fahrenheit(fahrenheit) =
        |value| Ok(TemperatureDifference::from_fahrenheit(value)?.kelvin());
    /// A temperature difference in degrees Fahrenheit from one in kelvin.
    fahrenheit_difference_from_kelvin(kelvin) = |value| Ok(TemperatureDifference::from_kelvin(value)?.fahrenheit());
    /// An absolute pressure in pascals from pounds-force per square inch, absolute.
    pascal_from_psia(psia) = |value| Ok(Pressure::from_psi_absolute(value)?.pascals());
    /// An absolute pressure in pounds-force per square inch from pascals, absolute.
    psia_from_pascal(pascal) = |value| Ok(Pressure::from_pascals(value)?.pascals() / PASCALS_PER_PSI);
    /// An ambient (barometer) pressure in pascals from inches of mercury.
    ambient_pascal_from_inch_of_mercury(inch_of_mercury) =
        |value| Ok(Atmosphere::from_pascals(value * PASCALS_PER_INCH_OF_MERCURY)?.pascals());
    /// An airflow in cubic metres a second from cubic feet a minute.
    m3_s_from_cfm(cfm) = |value| Ok(Airflow::from_m3_s(value * M3_S_PER_CFM)?.m3_s());
    /// An airflow in cubic feet a minute from cubic metres a second.
    cfm_from_m3_s(m3_s) = |value| Ok(Airflow::from_m3_s(value)?.m3_s() / M3_S_PER_CFM);
    /// A capacity in watts from tons of refrigeration.
    watt_from_ton(ton) = |value| Ok(Power::from_watts(value * WATTS_PER_TON)?.watts());
    /// A capacity in tons of refrigeration from watts.
    ton_from_watt(watt) = |value| Ok(Power::from_watts(value)?.watts() / WATTS_PER_TON);
    /// A capacity in watts from Btu (International Table) an hour.
    watt_from_btu_h(btu_h) = |value| Ok(Power::from_watts(value * WATTS_PER_BTU_H)?.watts());
    /// A capacity in Btu (International Table) an hour from watts.
    btu_h_from_watt(watt) = |value| Ok(Power::from_watts(value)?.watts() / WATTS_PER_BTU_H);
    /// An airflow to a capacity in cubic metres a second to a watt from cubic feet a minute to a ton: 400 is 5.4e-5.
    m3_s_w_from_cfm_per_ton(cfm_per_ton) = satline::air::m3_s_w_from_cfm_per_ton;
    /// An airflow to a capacity in cubic feet a minute to a ton from cubic metres a second to a watt.
    cfm_per_ton_from_m3_s_w(m3_s_w) = satline::air::cfm_per_ton_from_m3_s_w;
    /// A mass in kilograms from avoirdupois pounds.
    kilogram_from_pound(pound) = |value| Ok(Mass::from_kilograms(value * KG_PER_POUND)?.kilograms());
    /// A mass in avoirdupois pounds from kilograms.
    pound_from_kilogram(kilogram) = |value| Ok(Mass::from_kilograms(value)?.kilograms() / KG_PER_POUND);
}

/// An absolute pressure in pascals from a gauge pressure in pascals.
///
/// The ambient pressure is that at the gauge; the default is the standard atmosphere at sea level. A reading below
/// vacuum raises OutOfRangeError.
#[pyfunction]
#[pyo3(signature = (gauge_pa, ambient_pressure_pa=None), text_signature = "(gauge_pa, ambient_pressure_pa=101325.0)")]
pub fn pressure_from_gauge_pa<'py>(
    gauge_pa: &Bound<'py, PyAny>,
    ambient_pressure_pa: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let standard = standard(gauge_pa.py());
    two((gauge_pa, "gauge_pa"), (ambient_pressure_pa.unwrap_or(&standard), AMBIENT), |gauge, ambient| {
        let (gauge, ambient) = (GaugePressure::from_pascals(gauge)?, Atmosphere::from_pascals(ambient)?);
        Ok(Pressure::from_gauge(gauge, ambient)?.pascals())
    })
}

/// An absolute pressure in pascals from a gauge reading in pounds-force per square inch.
///
/// The ambient pressure is that at the gauge; the default is the standard atmosphere at sea level. A reading below
/// vacuum raises OutOfRangeError.
#[pyfunction]
#[pyo3(signature = (psig, ambient_pressure_pa=None), text_signature = "(psig, ambient_pressure_pa=101325.0)")]
pub fn pascal_from_psig<'py>(
    psig: &Bound<'py, PyAny>,
    ambient_pressure_pa: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let standard = standard(psig.py());
    two((psig, "psig"), (ambient_pressure_pa.unwrap_or(&standard), AMBIENT), |psig, ambient| {
        Ok(Pressure::from_psi_gauge(psig, Atmosphere::from_pascals(ambient)?)?.pascals())
    })
}

/// A gauge pressure in pounds-force per square inch from an absolute pressure in pascals.
///
/// The ambient pressure is that at the gauge; the default is the standard atmosphere at sea level.
#[pyfunction]
#[pyo3(signature = (pascal, ambient_pressure_pa=None), text_signature = "(pascal, ambient_pressure_pa=101325.0)")]
pub fn psig_from_pascal<'py>(
    pascal: &Bound<'py, PyAny>,
    ambient_pressure_pa: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let standard = standard(pascal.py());
    two((pascal, "pascal"), (ambient_pressure_pa.unwrap_or(&standard), AMBIENT), |pascal, ambient| {
        let (absolute, ambient) = (Pressure::from_pascals(pascal)?, Atmosphere::from_pascals(ambient)?);
        Ok(GaugePressure::from_pascals(absolute.pascals() - ambient.pascals())?.pascals() / PASCALS_PER_PSI)
    })
}

const AMBIENT: &str = "ambient_pressure_pa";

fn standard(py: Python<'_>) -> Bound<'_, PyAny> {
    pyo3::types::PyFloat::new(py, Atmosphere::STANDARD.pascals()).into_any()
}
