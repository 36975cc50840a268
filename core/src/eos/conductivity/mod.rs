//! Thermal conductivity of a pure refrigerant, where a correlation is published.
//!
//! Published forms only: a dilute gas, what density adds, and what nearness to the critical point adds. Estimates by
//! corresponding states, which exist for nearly every refrigerant, are not taken. Not available for blends.
//!
//! The enhancement near the critical point needs heat capacities, ∂p/∂ρ and the viscosity. They are this library's own; the
//! papers had their own viscosities. `tests/python/oracle_transport.py` measures what that changes against an outside
//! library.

mod alkanes;
mod assael;
mod enhancement;
mod others;
mod parts;
mod perkins;
mod r23;

use super::fluid::PureFluid;
use super::mixture::Mixture;
use crate::bounds;
use crate::error::Error;
use enhancement::Enhancement;
use parts::{Dilute, Residual};

const QUANTITY: &str = "thermal conductivity";
const TEMPERATURE_ADVICE: &str = "the published correlation holds between these temperatures";
const DENSITY: &str = "density for a thermal conductivity";
const DENSITY_ADVICE: &str = "give the molar density of one phase, in mol/m3, as the equation of state gives it";
const PRESSURE_ADVICE: &str = "at that temperature and density the pressure is above what the correlation holds for";

/// How far, relatively, a pressure may lie above the highest: what rounding and conversions leave.
const ROUNDING: f64 = 1e-6;
/// No liquid is denser than this, in terms of the reducing density.
const HIGHEST_REDUCED_DENSITY: f64 = 4.0;

/// One fluid's correlation.
#[derive(Debug)]
struct Correlation {
    /// ASHRAE 34 designation.
    designation: &'static str,
    /// Lowest temperature in K; 0 where it is that of the equation of state.
    lowest_temperature: f64,
    /// Highest temperature in K, here at most 500 where the enhancement needs the viscosity, which ends there.
    highest_temperature: f64,
    /// Highest pressure in Pa.
    highest_pressure: f64,
    form: Form,
    /// Stated relative error.
    error: f64,
}

/// How a paper builds the thermal conductivity.
#[derive(Debug)]
enum Form {
    Parts { dilute: Dilute, residual: Residual, enhancement: Enhancement },
    R23,
}

static ALL: &[&Correlation] = &[
    &others::R23,
    &others::R123,
    &perkins::R125,
    &perkins::R134A,
    &others::R152A,
    &assael::R161,
    &others::R170,
    &alkanes::R290,
    &alkanes::R600,
    &alkanes::R600A,
    &assael::R601,
    &assael::R601A,
    &others::R717,
    &assael::R744,
    &perkins::R1233ZDE,
    &perkins::R1234YF,
    &perkins::R1234ZEE,
    &assael::R1270,
    &perkins::R1336MZZZ,
];

impl Mixture {
    /// Thermal conductivity in W/(m·K) of one phase at a temperature in K and a molar density in mol/m³; at a density of 0,
    /// of the dilute gas.
    ///
    /// Range: that of the published correlation, at most from the lowest to the highest temperature of the equation of state
    /// and to 500 K. Error: see [`Mixture::thermal_conductivity_error`].
    ///
    /// ```
    /// use satline::eos::{End, Mixture, model};
    /// use satline::error::Error;
    ///
    /// let r134a = Mixture::of(&model::R134A)?;
    /// let bubble = r134a.at_temperature(End::Bubble, 300.0)?;
    /// let liquid = r134a.thermal_conductivity(300.0, bubble.bulk_density)?;
    /// assert!((liquid - 0.080).abs() < 0.002); // 80 mW/(m K)
    /// let blend = Mixture::of(&model::R410A)?;
    /// assert!(matches!(blend.thermal_conductivity(300.0, 0.0), Err(Error::NotAvailable { .. })));
    /// # Ok::<(), Error>(())
    /// ```
    ///
    /// # Errors
    /// [`Error::NotAvailable`] for a blend and where no correlation is published; [`Error::OutOfRange`] or
    /// [`Error::NotFinite`] for a temperature or pressure outside its range, and for a density between those of saturated
    /// vapour and liquid.
    pub fn thermal_conductivity(&self, temperature: f64, density: f64) -> Result<f64, Error> {
        let (fluid, correlation) = self.thermal_conductivity_correlation()?;
        let lowest = correlation.lowest_temperature.max(fluid.lowest_temperature);
        let highest = correlation.highest_temperature.min(fluid.highest_temperature);
        let quantity = "temperature for a thermal conductivity";
        bounds::within(quantity, "K", temperature, lowest, highest, TEMPERATURE_ADVICE)?;
        self.check_phase(fluid, correlation, temperature, density)?;
        match &correlation.form {
            Form::R23 => Ok(r23::conductivity(temperature, density)),
            Form::Parts { dilute, residual, enhancement } => Ok(dilute.at(fluid, temperature)
                + residual.at(temperature, density * fluid.molar_mass)
                + enhancement.at(self, temperature, density)?),
        }
    }

    /// Stated relative error of this refrigerant's thermal conductivity, as 0.05 for 5 %, outside the critical region;
    /// there, within some kelvin of the critical temperature at densities near the critical one, errors are larger.
    ///
    /// # Errors
    /// [`Error::NotAvailable`] as [`Mixture::thermal_conductivity`].
    pub fn thermal_conductivity_error(&self) -> Result<f64, Error> {
        self.thermal_conductivity_correlation().map(|(_, correlation)| correlation.error)
    }

    fn thermal_conductivity_correlation(&self) -> Result<(&'static PureFluid, &'static Correlation), Error> {
        let missing = |reason| Error::NotAvailable { quantity: QUANTITY, reason };
        let [fluid] = self.model().fluids else {
            return Err(missing("only correlations of pure refrigerants are held here, none of this blend"));
        };
        let found = ALL.iter().find(|correlation| correlation.designation == fluid.designation);
        Ok((fluid, found.ok_or(missing("no published correlation of it for this refrigerant is held here"))?))
    }

    /// Refuses densities of no single phase, and pressures beyond the correlation.
    fn check_phase(
        &self,
        fluid: &PureFluid,
        correlation: &Correlation,
        temperature: f64,
        density: f64,
    ) -> Result<(), Error> {
        let densest = HIGHEST_REDUCED_DENSITY * fluid.reducing_density;
        bounds::within(DENSITY, "mol/m3", density, 0.0, densest, DENSITY_ADVICE)?;
        if density == 0.0 {
            return Ok(());
        }
        self.check_one_phase(DENSITY, temperature, density)?;
        let highest = correlation.highest_pressure * (1.0 + ROUNDING);
        // A saturated liquid so cold that rounding makes its pressure negative is not refused.
        let pressure = self.bulk_phase(temperature, density).pressure.max(0.0);
        bounds::within("pressure for a thermal conductivity", "Pa", pressure, 0.0, highest, PRESSURE_ADVICE)?;
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    #[test]
    fn rows_are_of_fluids_of_the_catalogue_and_no_fluid_has_two() {
        for (index, row) in ALL.iter().enumerate() {
            assert!(
                model::ALL.iter().any(|model| model.identity.designation == row.designation),
                "{}",
                row.designation
            );
            assert!(ALL[index + 1..].iter().all(|other| other.designation != row.designation));
            assert!(row.lowest_temperature < row.highest_temperature && row.error > 0.0);
        }
    }
}
