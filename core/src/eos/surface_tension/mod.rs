//! Surface tension between the liquid and the vapour of a pure refrigerant, where a correlation is published.
//!
//! Not available for blends, nor for R-1224yd(Z), R-1336mzz(E) and R-1336mzz(Z), of which only estimates were found.

mod correlations;

use super::mixture::Mixture;
use crate::bounds;
use crate::error::Error;
use crate::math;
use correlations::Correlation;

const QUANTITY: &str = "surface tension";
const ADVICE: &str = "the published correlation holds from there to the critical temperature";

impl Mixture {
    /// Surface tension in N/m of the liquid under its own vapour at a temperature in K.
    ///
    /// Range: from the lowest temperature of the equation of state (R-1234yf 220 K, R-1234ze(E) 273.15 K) to the critical
    /// temperature of the correlation, where it is 0; R-12 to 384.7 K and R-227ea to 374.5 K. Error: see
    /// [`Mixture::surface_tension_error`].
    ///
    /// ```
    /// use satline::eos::{Mixture, model};
    /// use satline::error::Error;
    ///
    /// let r32 = Mixture::of(&model::R32)?;
    /// assert!((r32.surface_tension(298.15)? - 6.8e-3).abs() < 0.2e-3); // 6.8 mN/m
    /// let blend = Mixture::of(&model::R410A)?;
    /// assert!(matches!(blend.surface_tension(298.15), Err(Error::NotAvailable { .. })));
    /// # Ok::<(), Error>(())
    /// ```
    ///
    /// # Errors
    /// [`Error::NotAvailable`] for a blend and where no correlation is published; [`Error::OutOfRange`] or
    /// [`Error::NotFinite`] for a temperature outside the range.
    pub fn surface_tension(&self, temperature: f64) -> Result<f64, Error> {
        let correlation = self.surface_tension_correlation()?;
        let lowest = correlation.lowest_temperature.max(self.lowest_temperature());
        let highest = correlation.highest_temperature;
        bounds::within("temperature for a surface tension", "K", temperature, lowest, highest, ADVICE)?;
        let below = 1.0 - temperature / correlation.critical_temperature;
        if !(below > 0.0) {
            return Ok(0.0);
        }
        let ln_below = math::ln(below);
        Ok(correlation.terms.iter().map(|(a, n)| a * math::exp(n * ln_below)).sum())
    }

    /// Stated relative error of this refrigerant's surface tension, as 0.05 for 5 %; within some kelvin of the critical
    /// temperature, where the surface tension vanishes, at least 0.2 mN/m, what measurements there differ by.
    ///
    /// # Errors
    /// [`Error::NotAvailable`] as [`Mixture::surface_tension`].
    pub fn surface_tension_error(&self) -> Result<f64, Error> {
        self.surface_tension_correlation().map(|correlation| correlation.error)
    }

    fn surface_tension_correlation(&self) -> Result<&'static Correlation, Error> {
        let missing = |reason| Error::NotAvailable { quantity: QUANTITY, reason };
        let [fluid] = self.model().fluids else {
            return Err(missing("only correlations of pure refrigerants are held here, none of this blend"));
        };
        correlations::find(fluid.designation)
            .ok_or(missing("no published correlation of it for this refrigerant is held here"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    #[test]
    fn rows_are_of_fluids_of_the_catalogue_and_no_fluid_has_two() {
        for (index, row) in correlations::ALL.iter().enumerate() {
            assert!(
                model::ALL.iter().any(|model| model.identity.designation == row.designation),
                "{}",
                row.designation
            );
            assert!(correlations::ALL[index + 1..].iter().all(|other| other.designation != row.designation));
            assert!(row.highest_temperature <= row.critical_temperature && row.error > 0.0);
        }
    }
}
