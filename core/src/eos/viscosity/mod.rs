//! Viscosity of gas, vapour and liquid, pure or blended, from the equation of state.
//!
//! Method: residual entropy scaling (Martinek and others 2025, doi 10.1021/acs.jced.4c00451). The viscosity is that of
//! the dilute gas plus a part that depends on temperature and density through the residual entropy alone, which the
//! equation of state knows. Mixtures need nothing of their own: the dilute gases mix by Wilke's rule, the exponents by
//! mole fractions. [`parameters`] says where its numbers are the paper's and where not, [`residual`] what was changed
//! for the dense vapour.
//!
//! Measured (`tests/tests/viscosity.rs`, which prints it by refrigerant): against measured values and published
//! correlations that decided nothing here, over 41 pure fluids and 4 blends, 3.9 % in the mean and 14.6 % at most. No
//! measured liquid was found for R-41, R-1234ze(Z), R-1243zf and R-1336mzz(E).

mod dilute;
mod parameters;
mod residual;

use super::mixture::{Mixture, PerComponent};
use crate::bounds;
use crate::error::Error;
use parameters::Parameters;

/// The dilute-gas polynomials were made for temperatures up to this, K.
const HIGHEST_TEMPERATURE: f64 = 500.0;
/// No liquid is denser than this, in terms of the components' reducing densities.
const HIGHEST_REDUCED_DENSITY: f64 = 4.0;

const TEMPERATURE_ADVICE: &str = "viscosity is known between the lowest and highest temperatures of the components";
const DENSITY_ADVICE: &str = "give the molar density of one phase, in mol/m3, as the equation of state gives it";

impl Mixture {
    /// Viscosity in Pa·s of the overall composition at a temperature in K and a molar density in mol/m³; at a density
    /// of 0, of the dilute gas.
    ///
    /// The density is that of one phase: of the bulk of a bubble or dew point, or of a single-phase state. Range: from
    /// the lowest temperature of the components' equations of state (213.15 K for R-1234yf, R-1234ze(E) and R-E170) to
    /// their highest, at most 500 K. Error: see [`Mixture::viscosity_error`].
    ///
    /// ```
    /// use satline::eos::{End, Mixture, model};
    ///
    /// let r410a = Mixture::of(&model::R410A)?;
    /// let bubble = r410a.at_temperature(End::Bubble, 300.0)?;
    /// let liquid = r410a.viscosity(300.0, bubble.bulk_density)?;
    /// assert!((liquid - 1.2e-4).abs() < 0.1e-4); // 0.12 mPa·s
    /// # Ok::<(), satline::Error>(())
    /// ```
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for a temperature or a density that no phase has;
    /// [`Error::BadComposition`] if a component has no viscosity parameters.
    pub fn viscosity(&self, temperature: f64, density: f64) -> Result<f64, Error> {
        self.viscosity_of(temperature, density, &self.mole_fractions)
    }

    /// Viscosity in Pa·s of a phase of another composition, given by its partial molar densities in mol/m³, such as
    /// [`Equilibrium::incipient_densities`](super::Equilibrium::incipient_densities).
    ///
    /// # Errors
    /// As [`Mixture::viscosity`]; [`Error::BadComposition`] if a partial density is negative.
    pub fn phase_viscosity(&self, temperature: f64, densities: &PerComponent) -> Result<f64, Error> {
        let density: f64 = densities.iter().sum();
        if densities.iter().any(|partial| *partial < 0.0)
            || densities.iter().skip(self.count()).any(|rest| *rest != 0.0)
        {
            return Err(Error::BadComposition { reason: "every partial density must be 0 or more" });
        }
        if density == 0.0 {
            return Err(Error::BadComposition {
                reason: "the partial densities are all 0, which tells no composition",
            });
        }
        self.viscosity_of(temperature, density, &densities.map(|partial| partial / density))
    }

    /// Stated relative error of this refrigerant's viscosities: the largest of its components', as 0.2 for 20 %.
    ///
    /// # Errors
    /// [`Error::BadComposition`] if a component has no viscosity parameters.
    pub fn viscosity_error(&self) -> Result<f64, Error> {
        self.model().fluids.iter().try_fold(0.0, |largest: f64, fluid| Ok(largest.max(of(fluid.designation)?.error)))
    }

    fn viscosity_of(&self, temperature: f64, density: f64, fractions: &PerComponent) -> Result<f64, Error> {
        let fluids = self.model().fluids;
        let (mut lowest, mut highest, mut volume) = (self.lowest_temperature(), HIGHEST_TEMPERATURE, 0.0);
        let mut found = [None; super::MAX_COMPONENTS];
        for ((fluid, fraction), place) in fluids.iter().zip(fractions).zip(&mut found) {
            let parameters = of(fluid.designation)?;
            lowest = parameters.lowest_temperature.max(lowest);
            highest = fluid.highest_temperature.min(highest);
            volume += fraction / fluid.reducing_density;
            *place = Some((parameters, *fraction, fluid.molar_mass));
        }
        bounds::within("temperature for a viscosity", "K", temperature, lowest, highest, TEMPERATURE_ADVICE)?;
        let densest = HIGHEST_REDUCED_DENSITY / volume;
        bounds::within("density for a viscosity", "mol/m3", density, 0.0, densest, DENSITY_ADVICE)?;

        let components = found.iter().copied().flatten();
        let dilute = dilute::mixture(components.clone(), temperature);
        if density == 0.0 {
            return Ok(dilute);
        }
        let entropy = self.phase(temperature, &fractions.map(|fraction| fraction * density)).residual_entropy();
        if !(entropy > 0.0) {
            // So thin that rounding hides the residual entropy, or a gas above all temperatures of interest.
            return Ok(dilute);
        }
        let exponent =
            components.clone().map(|(parameters, x, _)| x * residual::exponent(parameters, entropy)).sum::<f64>();
        let molar_mass = components.map(|(_, fraction, mass)| fraction * mass).sum();
        let viscosity = dilute + residual::viscosity(entropy, exponent, density, molar_mass, temperature);
        if viscosity.is_finite() && viscosity > 0.0 {
            Ok(viscosity)
        } else {
            Err(bounds::refuse("density for a viscosity", "mol/m3", density, 0.0, densest, DENSITY_ADVICE))
        }
    }
}

fn of(designation: &str) -> Result<&'static Parameters, Error> {
    parameters::find(designation).ok_or(Error::BadComposition { reason: "a component has no viscosity parameters" })
}

impl super::Phase {
    /// Minus the residual entropy over the gas constant: how much order the molecules' forces make, 0 in a thin gas.
    fn residual_entropy(&self) -> f64 {
        self.residual.a - self.residual.t
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    #[test]
    fn every_component_of_every_refrigerant_has_parameters() {
        for fluid in model::ALL.iter().flat_map(|model| model.fluids) {
            assert!(parameters::find(fluid.designation).is_some(), "{}", fluid.designation);
        }
    }

    /// Where the published curve is taken in full, a value of the paper's own program for R-11 (its sample at
    /// 209.08 K): the entropy it prints is 55.583 J/(mol·K), the density 1672.876 kg/m³, the viscosity 1388.935 µPa·s.
    #[test]
    fn one_published_value_by_hand() {
        let parameters = parameters::find("R-11").unwrap();
        let (temperature, mass, entropy) = (209.08, 0.137368, 55.583 / 8.314462618);
        let dilute = dilute::mixture([(parameters, 1.0, mass)].into_iter(), temperature);
        let exponent = residual::exponent(parameters, entropy);
        let rest = residual::viscosity(entropy, exponent, 1672.876 / mass, mass, temperature);
        assert!(((dilute + rest) * 1e6 / 1388.935 - 1.0).abs() < 2e-4, "{}", (dilute + rest) * 1e6);
    }
}
