//! Transport properties by density in kg/m³, as a state gives it, and the refusal of densities of no single phase.

use super::equilibrium::End;
use super::mixture::Mixture;
use crate::bounds;
use crate::error::Error;

/// How far, relatively, a density may lie on the wrong side of saturation: what rounding and conversions leave.
const ROUNDING: f64 = 1e-6;
const PHASE_ADVICE: &str = "beyond that density liquid and vapour stand together: give the density of one of them";
const MASS_ADVICE: &str = "give the density of one phase, in kg/m3, as a state gives it";

impl Mixture {
    /// [`Mixture::viscosity`] in Pa·s at a temperature in K and a density in kg/m³, that of one phase. Where it is clear
    /// that no single phase has the density, it is refused: of a pure refrigerant between vapour and liquid, of a blend
    /// where its pressure would fall as the density grows.
    ///
    /// ```
    /// use satline::eos::{Mixture, Properties, Reference, model};
    ///
    /// let properties = Properties::of(&model::R410A, Reference::Iir)?;
    /// let liquid = properties.saturated_liquid(300.0)?;
    /// let viscosity = properties.mixture().viscosity_by_mass(300.0, liquid.density)?;
    /// assert!((viscosity - 1.2e-4).abs() < 0.1e-4); // 0.12 mPa·s
    /// # Ok::<(), satline::Error>(())
    /// ```
    ///
    /// # Errors
    /// As [`Mixture::viscosity`], with densities in kg/m³; [`Error::OutOfRange`] for a density of two phases.
    pub fn viscosity_by_mass(&self, temperature: f64, density: f64) -> Result<f64, Error> {
        let molar = density / self.molar_mass;
        self.check_one_phase("density for a viscosity", temperature, molar)
            .and_then(|()| self.viscosity(temperature, molar))
            .map_err(|error| self.said_by_mass(error))
    }

    /// [`Mixture::thermal_conductivity`] in W/(m·K) at a temperature in K and a density in kg/m³.
    ///
    /// # Errors
    /// As [`Mixture::thermal_conductivity`], with densities in kg/m³.
    pub fn thermal_conductivity_by_mass(&self, temperature: f64, density: f64) -> Result<f64, Error> {
        let molar = density / self.molar_mass;
        self.thermal_conductivity(temperature, molar).map_err(|error| self.said_by_mass(error))
    }

    /// An error about a density in mol/m³, said in kg/m³.
    fn said_by_mass(&self, error: Error) -> Error {
        let mass = self.molar_mass;
        let unit = "kg/m3";
        match error {
            Error::OutOfRange { quantity, unit: "mol/m3", value, lower, upper, advice } => {
                let advice = if advice == PHASE_ADVICE { advice } else { MASS_ADVICE };
                Error::OutOfRange {
                    quantity,
                    unit,
                    value: value * mass,
                    lower: lower * mass,
                    upper: upper * mass,
                    advice,
                }
            }
            Error::NotFinite { quantity, unit: "mol/m3", lower, upper } => {
                Error::NotFinite { quantity, unit, lower: lower * mass, upper: upper * mass }
            }
            other => other,
        }
    }

    /// Refuses a molar density in mol/m³ that no single phase of the overall composition has, as far as that is clear:
    /// of a pure fluid between vapour and liquid, of a blend where it is mechanically unstable.
    pub(super) fn check_one_phase(&self, quantity: &'static str, temperature: f64, density: f64) -> Result<(), Error> {
        let clear = match self.model().fluids {
            // Bad input, which has errors of its own.
            _ if !(density > 0.0 && density.is_finite() && temperature > 0.0) => false,
            // Nearest to the critical point there is no saturation to be had, and little to tell apart.
            [fluid] => temperature < fluid.critical_temperature * (1.0 - bounds::NEAREST_TO_CRITICAL),
            _ => {
                let residual = self.bulk_phase(temperature, density).residual;
                !(1.0 + 2.0 * residual.d + residual.dd > 0.0)
            }
        };
        if !clear {
            return Ok(());
        }
        let ends = self.at_temperature(End::Bubble, temperature).and_then(|bubble| {
            // A pure fluid's incipient phase is the other one; only a blend has a second end.
            let vapor = match self.count() {
                1 => bubble.incipient_density(),
                _ => self.at_temperature(End::Dew, temperature)?.bulk_density,
            };
            Ok((vapor, bubble.bulk_density))
        });
        let Ok((vapor, liquid)) = ends else { return Ok(()) };
        if density <= vapor * (1.0 + ROUNDING) || density >= liquid * (1.0 - ROUNDING) {
            return Ok(());
        }
        let (lower, upper) =
            if density - vapor < liquid - density { (0.0, vapor) } else { (liquid, bounds::MOLAR_DENSITY.upper) };
        Err(bounds::refuse(quantity, "mol/m3", density, lower, upper, PHASE_ADVICE))
    }
}
