//! Density of the overall composition at a temperature and pressure.

use super::equilibrium::End;
use super::mixture::Mixture;
use crate::bounds;
use crate::error::Error;

/// Most steps of the search; each at least halves the bracket or converges quadratically.
const MOST_STEPS: usize = 120;

impl Mixture {
    /// Molar density in mol/m³ of the single phase at a temperature in K and a pressure in Pa.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the components' common range of temperature and pressure, and between the bubble
    /// and dew pressures, where temperature and pressure do not fix the state (the limits in the error are those two).
    /// [`Error::NotConverged`] if no density was found.
    pub fn density(&self, temperature: f64, pressure: f64) -> Result<f64, Error> {
        let fluids = self.model().fluids;
        let hottest = fluids.iter().map(|fluid| fluid.highest_temperature).fold(f64::INFINITY, f64::min);
        let densest = fluids.iter().map(|fluid| fluid.highest_pressure).fold(f64::INFINITY, f64::min);
        bounds::within(
            "temperature",
            "K",
            temperature,
            self.lowest_temperature(),
            hottest,
            "use a state inside the range of the equation of state",
        )?;
        bounds::within(
            "absolute pressure",
            "Pa",
            pressure,
            bounds::ABSOLUTE_PRESSURE.lower,
            densest,
            "use a state inside the range of the equation of state",
        )?;
        let ideal = pressure / (self.gas_constant * temperature);
        let bubble = self.at_temperature(End::Bubble, temperature);
        let dew = self.at_temperature(End::Dew, temperature);
        match (bubble, dew) {
            (Ok(bubble), _) if pressure >= bubble.pressure => {
                self.search(temperature, pressure, bubble.bulk_density, None)
            }
            (_, Ok(dew)) if pressure <= dew.pressure => self.search(temperature, pressure, 0.0, Some(dew.bulk_density)),
            (Ok(bubble), Ok(dew)) => Err(Error::OutOfRange {
                quantity: "absolute pressure of a single phase at this temperature",
                unit: "Pa",
                value: pressure,
                lower: dew.pressure,
                upper: bubble.pressure,
                advice: "between these two liquid and vapour stand together: give a quality instead of a pressure",
            }),
            // Above the critical temperature pressure rises with density all the way.
            _ => self.search(temperature, pressure, ideal * 0.1, None),
        }
    }

    /// Newton's method kept inside a bracket in which pressure rises with density.
    fn search(&self, temperature: f64, pressure: f64, low: f64, high: Option<f64>) -> Result<f64, Error> {
        let failed = Error::NotConverged { calculation: "density at a pressure", value: pressure, unit: "Pa" };
        let above = |density: f64| self.bulk_phase(temperature, density).pressure > pressure;
        let (mut low, mut high) = match high {
            Some(high) => (low, high * (1.0 + 1e-12)),
            None => {
                // From below, in small steps: far beyond a liquid's density the equations mean nothing.
                let mut high = low * 1.05;
                let mut tries = 0;
                while !above(high) {
                    high *= 1.1;
                    tries += 1;
                    if tries > 400 {
                        return Err(failed);
                    }
                }
                (low * (1.0 - 1e-12), high)
            }
        };
        let mut density = if low > 0.0 { low } else { (pressure / (self.gas_constant * temperature)).min(high) };
        for _ in 0..MOST_STEPS {
            let phase = self.bulk_phase(temperature, density);
            if phase.pressure > pressure {
                high = density
            } else {
                low = density
            }
            let slope: f64 = phase.pressure_slopes.iter().sum::<f64>() / density;
            let newton = density - (phase.pressure - pressure) / slope;
            let inside = slope > 0.0 && newton >= low && newton <= high;
            let next = if inside { newton } else { 0.5 * (low + high) };
            if (next - density).abs() <= 4e-16 * density || (inside && (next - density).abs() < 1e-9 * density) {
                return if next.is_finite() && next > 0.0 { Ok(next) } else { Err(failed) };
            }
            density = next;
        }
        Err(failed)
    }
}
