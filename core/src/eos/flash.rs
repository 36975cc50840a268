//! Two phases at a temperature or a pressure and a quality.
//!
//! Newton's method in the logarithms of both phases' partial densities and of the temperature: equal fugacities, equal
//! pressure, the mass balance of every component, and what is given. A search starts at the bubble or dew point and
//! comes to the wanted quality in steps that are halved where one fails.

use super::equilibrium::{End, Equilibrium};
use super::linear::solve;
use super::mixture::{Mixture, PerComponent, Phase};
use super::model::MAX_COMPONENTS;
use crate::bounds;
use crate::error::Error;
use crate::math;

/// Largest system: the partial densities of both phases and the temperature.
const LARGEST: usize = 2 * MAX_COMPONENTS + 1;

type Vector = [f64; LARGEST];
type Matrix = [Vector; LARGEST];

/// Most Newton steps for one point.
const MOST_STEPS: usize = 40;
/// Longest step in a logarithm of density.
const LONGEST_DENSITY_STEP: f64 = 0.4;
/// Longest step in the logarithm of temperature.
const LONGEST_TEMPERATURE_STEP: f64 = 0.05;
/// A step below this is the last: convergence is quadratic.
const LAST_STEP: f64 = 1e-8;
/// Smallest step in quality before the search is given up.
const SMALLEST_QUALITY_STEP: f64 = 1e-4;

/// What is given besides the quality.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fixed {
    /// Temperature, K.
    Temperature(f64),
    /// Pressure, Pa.
    Pressure(f64),
}

/// Liquid and vapour in equilibrium.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoPhase {
    /// Temperature, K.
    pub temperature: f64,
    /// Pressure, Pa.
    pub pressure: f64,
    /// The vapour's share of the mass.
    pub quality: f64,
    /// Partial molar densities of the liquid, mol/m³.
    pub liquid_densities: PerComponent,
    /// Partial molar densities of the vapour, mol/m³.
    pub vapor_densities: PerComponent,
}

fn total(densities: &PerComponent) -> f64 {
    densities.iter().sum()
}

impl TwoPhase {
    fn ln_density_ratio(&self) -> f64 {
        math::ln(total(&self.liquid_densities) / total(&self.vapor_densities))
    }

    fn moved(&self, step: &Vector, factor: f64, count: usize) -> Self {
        let mut next = *self;
        let (of_liquid, rest) = step.split_at(count);
        let (of_vapor, rest) = rest.split_at(count);
        for (density, change) in next.liquid_densities.iter_mut().zip(of_liquid) {
            *density *= math::exp(factor * change);
        }
        for (density, change) in next.vapor_densities.iter_mut().zip(of_vapor) {
            *density *= math::exp(factor * change);
        }
        // A given temperature stays exactly what was given.
        match rest.first() {
            Some(change) if *change != 0.0 => next.temperature *= math::exp(factor * change),
            _ => {}
        }
        next
    }
}

impl Mixture {
    /// Mass fractions of a phase from its partial molar densities.
    pub(super) fn mass_fractions(&self, densities: &PerComponent) -> PerComponent {
        let mut masses = [0.0; MAX_COMPONENTS];
        for ((mass, fluid), density) in masses.iter_mut().zip(self.model().fluids).zip(densities) {
            *mass = fluid.molar_mass * density;
        }
        let sum: f64 = masses.iter().sum();
        masses.map(|mass| mass / sum)
    }

    /// Both phases at a temperature in K or a pressure in Pa and a quality by mass, 0 to 1.
    ///
    /// At quality 0 and 1 these are the bubble and the dew point.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] and [`Error::NotFinite`] for the quality, and as [`Mixture::at_temperature`] and
    /// [`Mixture::at_pressure`]; [`Error::NotConverged`] if no solution was found.
    pub fn two_phase(&self, fixed: Fixed, quality: f64) -> Result<TwoPhase, Error> {
        bounds::QUALITY.check(quality)?;
        let ends = if quality <= 0.5 { [End::Bubble, End::Dew] } else { [End::Dew, End::Bubble] };
        let (value, unit) = match fixed {
            Fixed::Temperature(temperature) => (temperature, "K"),
            Fixed::Pressure(pressure) => (pressure, "Pa"),
        };
        // What the first end says, should neither lead to a solution.
        let mut error = None;
        for end in ends {
            let start = match self.saturated_end(fixed, end) {
                Ok(start) => start,
                Err(found) => {
                    error = error.or(Some(found));
                    continue;
                }
            };
            let found = if quality == start.quality {
                Some(start)
            } else if self.count() == 1 {
                Some(TwoPhase { quality, ..start })
            } else {
                self.two_phase_from(&start, fixed, quality)
            };
            if let Some(found) = found {
                return self.not_frozen(found);
            }
        }
        Err(error.unwrap_or(Error::NotConverged { calculation: "two phases at a quality", value, unit }))
    }

    /// Refuses a temperature below the lowest: of the two ends at a pressure one may lie above it and the other below.
    fn not_frozen(&self, found: TwoPhase) -> Result<TwoPhase, Error> {
        // The limit itself must be accepted whatever its rounding.
        let lowest = self.lowest_temperature();
        let lower = lowest * (1.0 - 1e-9);
        if found.temperature < lower {
            let quantity = "temperature at this pressure and quality";
            let advice = "a component may freeze below the lowest temperature of its equation: use a higher pressure";
            bounds::within(quantity, "K", found.temperature, lowest, bounds::TEMPERATURE.upper, advice)?;
        }
        Ok(found)
    }

    /// The bubble point as two phases of quality 0, or the dew point as two phases of quality 1.
    pub(super) fn saturated_end(&self, fixed: Fixed, end: End) -> Result<TwoPhase, Error> {
        let point = match fixed {
            Fixed::Temperature(temperature) => self.at_temperature(end, temperature),
            Fixed::Pressure(pressure) => self.at_pressure(end, pressure),
        }?;
        Ok(self.as_two_phases(end, &point))
    }

    /// A bubble or dew point as two phases.
    pub(super) fn as_two_phases(&self, end: End, point: &Equilibrium) -> TwoPhase {
        let bulk = self.mole_fractions.map(|fraction| fraction * point.bulk_density);
        let (quality, liquid_densities, vapor_densities) = match end {
            End::Bubble => (0.0, bulk, point.incipient_densities),
            End::Dew => (1.0, point.incipient_densities, bulk),
        };
        TwoPhase {
            temperature: point.temperature,
            pressure: point.pressure,
            quality,
            liquid_densities,
            vapor_densities,
        }
    }

    /// From a solution at another quality; `None` if the search does not arrive.
    pub(super) fn two_phase_from(&self, start: &TwoPhase, fixed: Fixed, quality: f64) -> Option<TwoPhase> {
        let mut here = *start;
        let mut step = quality - here.quality;
        while step.abs() >= SMALLEST_QUALITY_STEP || step == quality - here.quality {
            let arrived = step == quality - here.quality;
            let next = if arrived { quality } else { here.quality + step };
            match self.two_phase_newton(&here, fixed, next) {
                Some(found) if arrived => return Some(found),
                Some(found) => {
                    here = found;
                    step = quality - here.quality;
                }
                None if step.abs() < SMALLEST_QUALITY_STEP => return None,
                None => step *= 0.5,
            }
        }
        None
    }

    fn two_phase_newton(&self, start: &TwoPhase, fixed: Fixed, quality: f64) -> Option<TwoPhase> {
        let size = 2 * self.count() + 1;
        let mut here = TwoPhase { quality, ..*start };
        if let Fixed::Temperature(temperature) = fixed {
            here.temperature = temperature;
        }
        let mut arrived = false;
        for _ in 0..MOST_STEPS {
            let liquid = self.phase(here.temperature, &here.liquid_densities);
            let vapor = self.phase(here.temperature, &here.vapor_densities);
            if arrived {
                return self.accept_two_phases(here, &liquid, &vapor);
            }
            let (matrix, residual) = self.two_phase_system(fixed, &here, &liquid, &vapor);
            let step = solve(matrix, residual, size)?;
            let mut factor: f64 = 1.0;
            let mut largest: f64 = 0.0;
            for (index, change) in step.iter().take(size).enumerate() {
                let longest = if index == size - 1 { LONGEST_TEMPERATURE_STEP } else { LONGEST_DENSITY_STEP };
                if change.abs() > longest {
                    factor = factor.min(longest / change.abs());
                }
                largest = largest.max(change.abs());
            }
            // As for bubble and dew points: the phases must not come much nearer to each other in one step.
            let ratio = here.ln_density_ratio();
            let mut next = here.moved(&step, factor, self.count());
            for _ in 0..8 {
                if next.ln_density_ratio() > 0.4 * ratio {
                    break;
                }
                factor *= 0.5;
                next = here.moved(&step, factor, self.count());
            }
            if !(next.ln_density_ratio() > 0.0) {
                return None;
            }
            here = next;
            arrived = factor == 1.0 && largest < LAST_STEP;
        }
        None
    }

    /// Residuals and their derivatives, negated so that the solution is the step.
    fn two_phase_system(&self, fixed: Fixed, here: &TwoPhase, liquid: &Phase, vapor: &Phase) -> (Matrix, Vector) {
        let count = self.count();
        let by_temperature = 2 * count;
        let mut matrix: Matrix = [[0.0; LARGEST]; LARGEST];
        let mut residual: Vector = [0.0; LARGEST];
        // Columns: ln of the liquid's partial densities, of the vapour's, ln T.
        for row in 0..count {
            residual[row] = vapor.ln_fugacities[row] - liquid.ln_fugacities[row];
            for column in 0..count {
                matrix[row][column] = liquid.ln_fugacity_slopes[row][column];
                matrix[row][count + column] = -vapor.ln_fugacity_slopes[row][column];
            }
            matrix[row][by_temperature] =
                liquid.ln_fugacity_by_ln_temperature[row] - vapor.ln_fugacity_by_ln_temperature[row];
        }
        // Pressures, in units of the ideal pressure of the liquid.
        let unit = self.gas_constant * here.temperature * liquid.density;
        let row = count;
        residual[row] = (vapor.pressure - liquid.pressure) / unit;
        for column in 0..count {
            matrix[row][column] = liquid.pressure_slopes[column] / unit;
            matrix[row][count + column] = -vapor.pressure_slopes[column] / unit;
        }
        matrix[row][by_temperature] = (liquid.pressure_by_ln_temperature - vapor.pressure_by_ln_temperature) / unit;
        // The mass of every component but the last, as a share of its own.
        let overall = self.mass_fractions(&self.mole_fractions);
        let (in_liquid, in_vapor) =
            (self.mass_fractions(&here.liquid_densities), self.mass_fractions(&here.vapor_densities));
        let (liquid_share, vapor_share) = (1.0 - here.quality, here.quality);
        for component in 0..count - 1 {
            let row = count + 1 + component;
            let own = overall[component];
            let (x, y) = (in_liquid[component], in_vapor[component]);
            residual[row] = (own - liquid_share * x - vapor_share * y) / own;
            for column in 0..count {
                let same = if column == component { 1.0 } else { 0.0 };
                matrix[row][column] = liquid_share * x * (same - in_liquid[column]) / own;
                matrix[row][count + column] = vapor_share * y * (same - in_vapor[column]) / own;
            }
        }
        // What is given.
        let row = 2 * count;
        match fixed {
            Fixed::Temperature(_) => matrix[row][by_temperature] = 1.0,
            Fixed::Pressure(pressure) => {
                // The pressure of the vapour: that of the liquid is a small difference of large numbers.
                residual[row] = (pressure - vapor.pressure) / pressure;
                for column in 0..count {
                    matrix[row][count + column] = vapor.pressure_slopes[column] / pressure;
                }
                matrix[row][by_temperature] = vapor.pressure_by_ln_temperature / pressure;
            }
        }
        (matrix, residual)
    }

    fn accept_two_phases(&self, mut here: TwoPhase, liquid: &Phase, vapor: &Phase) -> Option<TwoPhase> {
        let count = self.count();
        let distinct = here.ln_density_ratio() > 1e-7;
        let stable =
            liquid.pressure_slopes.iter().sum::<f64>() > 0.0 && vapor.pressure_slopes.iter().sum::<f64>() > 0.0;
        let equal = (0..count).all(|k| (liquid.ln_fugacities[k] - vapor.ln_fugacities[k]).abs() < 1e-9);
        let overall = self.mass_fractions(&self.mole_fractions);
        let (x, y) = (self.mass_fractions(&here.liquid_densities), self.mass_fractions(&here.vapor_densities));
        let balanced =
            (0..count).all(|k| ((1.0 - here.quality) * x[k] + here.quality * y[k] - overall[k]).abs() < 1e-10);
        here.pressure = vapor.pressure;
        (distinct && stable && equal && balanced && here.pressure > 0.0).then_some(here)
    }
}
