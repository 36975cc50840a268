//! Bubble and dew points: the bulk composition in equilibrium with the first drop or bubble of another.
//!
//! Newton's method on ln f and pressure in the logarithms of the bulk density, of the incipient phase's partial
//! densities and of the temperature, with exact derivatives. A point is first tried from an estimate of its own; where
//! that fails, the line is followed from a lower temperature with each solution as the next start.

use super::estimate;
use super::linear::{LARGEST, Matrix, Vector, solve};
use super::mixture::{Mixture, PerComponent, Phase};
use super::model::MAX_COMPONENTS;
use crate::bounds::{self, NEAREST_TO_CRITICAL};
use crate::error::Error;
use crate::math;

/// Which end of the saturation line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// The bulk is liquid; the first bubble of vapour forms.
    Bubble,
    /// The bulk is vapour; the last drop of liquid goes.
    Dew,
}

/// What is given.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Given {
    /// Temperature, K.
    Temperature(f64),
    /// Pressure, Pa.
    Pressure(f64),
    /// ln(liquid density/vapour density): a measure of the way to the critical point.
    DensityRatio(f64),
}

/// A bubble or dew point.
#[derive(Debug, Clone, Copy)]
pub struct Equilibrium {
    /// Temperature, K.
    pub temperature: f64,
    /// Pressure, Pa.
    pub pressure: f64,
    /// Molar density of the bulk phase, mol/m³.
    pub bulk_density: f64,
    /// Partial molar densities of the incipient phase, mol/m³.
    pub incipient_densities: PerComponent,
}

impl Equilibrium {
    /// Molar density of the incipient phase, mol/m³.
    #[must_use]
    pub fn incipient_density(&self) -> f64 {
        self.incipient_densities.iter().sum()
    }

    /// Mole fractions of the incipient phase.
    #[must_use]
    pub fn incipient_fractions(&self) -> PerComponent {
        let density = self.incipient_density();
        self.incipient_densities.map(|partial| partial / density)
    }

    fn ln_density_ratio(&self, end: End) -> f64 {
        let ratio = self.bulk_density / self.incipient_density();
        match end {
            End::Bubble => math::ln(ratio),
            End::Dew => -math::ln(ratio),
        }
    }
}

const ADVICE: &str =
    "bubble and dew points exist between the lowest temperature of the equations and the critical point";

/// ln(liquid density/vapour density) below which a point may lie nearer to the critical one than is accepted; at
/// [`NEAREST_TO_CRITICAL`] itself it is about 0.1.
const NEAR_CRITICAL: f64 = 0.3;
/// Least ln(liquid density/vapour density) of a solution, well below what the nearest accepted point has.
const LEAST_DENSITY_RATIO: f64 = 0.01;
/// Most Newton steps for one point.
const MOST_STEPS: usize = 60;
/// Longest step in a logarithm of density.
const LONGEST_DENSITY_STEP: f64 = 0.4;
/// Longest step in the logarithm of temperature.
const LONGEST_TEMPERATURE_STEP: f64 = 0.05;
/// A step below this is the last: convergence is quadratic, so the next would be lost in rounding.
const LAST_STEP: f64 = 1e-8;
/// Share of the estimated critical temperature below which a liquid of some blends would split into two. The warmest
/// dew point of any refrigerant with a second liquid lies at 0.525; a test looks for others.
const MAY_SPLIT_BELOW: f64 = 0.55;
/// Relative difference below which two solutions are the same point.
const SAME_POINT: f64 = 1e-6;

impl Mixture {
    /// Bubble or dew point at a temperature in K.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below the components' lowest temperature or at and above the critical temperature;
    /// [`Error::NotConverged`] if no solution was found.
    pub fn at_temperature(&self, end: End, temperature: f64) -> Result<Equilibrium, Error> {
        self.check_temperature(temperature, None)?;
        match self.follow(end, temperature) {
            // Only where nothing was found, or close to the critical point, is it worth computing where the line ends.
            Ok(found) if found.ln_density_ratio(end) > NEAR_CRITICAL => Ok(found),
            found => {
                let critical = self.critical_point()?;
                self.check_temperature(temperature, Some(critical.temperature * (1.0 - NEAREST_TO_CRITICAL)))?;
                found
            }
        }
    }

    fn check_temperature(&self, temperature: f64, highest: Option<f64>) -> Result<f64, Error> {
        let highest = highest.unwrap_or(bounds::TEMPERATURE.upper);
        bounds::within("saturation temperature", "K", temperature, self.lowest_temperature(), highest, ADVICE)
    }

    /// Bubble or dew point at a pressure in Pa.
    ///
    /// # Errors
    /// As [`Mixture::at_temperature`].
    pub fn at_pressure(&self, end: End, pressure: f64) -> Result<Equilibrium, Error> {
        bounds::ABSOLUTE_PRESSURE.check(pressure)?;
        let check =
            |lower: f64, upper: f64| bounds::within("saturation pressure", "Pa", pressure, lower, upper, ADVICE);
        match self.follow_pressure(end, pressure) {
            // The limit itself must be accepted whatever its rounding.
            Ok(found) if found.temperature < self.lowest_temperature() * (1.0 - 1e-9) => {
                let lowest = self.follow(end, self.lowest_temperature())?;
                check(lowest.pressure, bounds::ABSOLUTE_PRESSURE.upper)?;
                Ok(found)
            }
            Ok(found) if found.ln_density_ratio(end) > NEAR_CRITICAL => Ok(found),
            found => {
                let critical = self.critical_point()?;
                let hottest = critical.temperature * (1.0 - NEAREST_TO_CRITICAL);
                if found.is_ok_and(|found| found.temperature <= hottest) {
                    return found;
                }
                let highest = self.follow(end, hottest)?;
                let lowest = self.follow(end, self.lowest_temperature())?;
                check(lowest.pressure, highest.pressure)?;
                found
            }
        }
    }

    fn follow_pressure(&self, end: End, pressure: f64) -> Result<Equilibrium, Error> {
        let failed = Error::NotConverged { calculation: "saturation at a pressure", value: pressure, unit: "Pa" };
        let temperature = estimate::temperature(self, end, pressure).ok_or(failed)?;
        let highest = 0.95 * estimate::critical_temperature(self);
        let mut here = self.follow(end, temperature.min(highest).max(self.lowest_temperature()))?;
        // Along the line in even steps of ln p, halved where a step fails.
        let wanted = math::ln(pressure);
        let mut longest = 0.5;
        while longest > 1e-4 {
            let distance = wanted - math::ln(here.pressure);
            let arrived = distance.abs() <= longest;
            let next = if arrived { pressure } else { here.pressure * math::exp(longest.copysign(distance)) };
            match self.newton(end, Given::Pressure(next), &here) {
                Some(found) if arrived => return Ok(self.of_first_liquid(end, Given::Pressure(pressure), found)),
                Some(found) => here = found,
                None => longest *= 0.5,
            }
        }
        Err(failed)
    }

    /// The lowest temperature at which every component's equation holds, K.
    #[must_use]
    pub fn lowest_temperature(&self) -> f64 {
        self.model().fluids.iter().map(|fluid| fluid.lowest_temperature).fold(0.0, f64::max)
    }

    /// From an estimate at the temperature itself, else along the line from a lower temperature.
    pub(super) fn follow(&self, end: End, temperature: f64) -> Result<Equilibrium, Error> {
        let failed = Error::NotConverged { calculation: "saturation at a temperature", value: temperature, unit: "K" };
        let given = Given::Temperature(temperature);
        if let Some(found) = self.pure_saturation(temperature) {
            return Ok(found.at(end, temperature));
        }
        if let Some(found) = estimate::start(self, end, temperature).and_then(|start| self.newton(end, given, &start)) {
            return Ok(self.of_first_liquid(end, given, found));
        }
        // Elsewhere on the line an estimate may do better; from there it is followed to the temperature wanted.
        let critical = estimate::critical_temperature(self);
        for share in [0.7, 0.8, 0.6, 0.9] {
            let from = share * critical;
            let start = estimate::start(self, end, from);
            let Some(start) = start.and_then(|start| self.newton(end, Given::Temperature(from), &start)) else {
                continue;
            };
            if let Some(found) = self.follow_from(end, start, temperature) {
                return Ok(self.of_first_liquid(end, given, found));
            }
        }
        Err(failed)
    }

    /// Of several liquids that stand with a blend's vapour the one that forms first, at the lowest pressure or the
    /// highest temperature; with any other the vapour is supersaturated.
    ///
    /// Far below the critical temperature a few per cent of a hydrocarbon are too many for the liquid of the other
    /// components, and Raoult's law may lead to a liquid that is mostly that hydrocarbon. A point found stays as it is
    /// unless another liquid comes before it.
    fn of_first_liquid(&self, end: End, given: Given, found: Equilibrium) -> Equilibrium {
        if end == End::Bubble
            || self.count() == 1
            || found.temperature > MAY_SPLIT_BELOW * estimate::critical_temperature(self)
        {
            return found;
        }
        let Some(raoult) = estimate::start(self, end, found.temperature) else { return found };
        let here = Given::Temperature(found.temperature);
        let mut first = found;
        // Every liquid is mostly one of the components.
        for (most, fluid) in self.model().fluids.iter().enumerate() {
            let density = 1.0 / estimate::liquid_volume(fluid, found.temperature);
            let mut start = raoult;
            for (index, (partial, fraction)) in
                start.incipient_densities.iter_mut().zip(self.mole_fractions).enumerate()
            {
                *partial = density * (0.1 * fraction + if index == most { 0.9 } else { 0.0 });
            }
            let Some(other) = self.newton(end, here, &start) else { continue };
            if other.pressure < first.pressure * (1.0 - SAME_POINT) {
                first = other;
            }
        }
        match given {
            Given::Pressure(_) if first.pressure < found.pressure => self.newton(end, given, &first).unwrap_or(found),
            _ => first,
        }
    }

    /// Along the line from a point on it to a temperature, in steps that are halved where one fails.
    fn follow_from(&self, end: End, start: Equilibrium, temperature: f64) -> Option<Equilibrium> {
        let mut here = start;
        let mut longest = 0.05 * temperature;
        while longest > 1e-7 * temperature {
            let distance = temperature - here.temperature;
            let arrived = distance.abs() <= longest;
            let next = if arrived { temperature } else { here.temperature + longest.copysign(distance) };
            match self.newton(end, Given::Temperature(next), &here) {
                Some(found) if arrived => return Some(found),
                Some(found) => here = found,
                None => longest *= 0.5,
            }
        }
        None
    }

    /// Newton's method from a start; `None` if it does not converge or ends in a trivial or unstable solution.
    pub(crate) fn newton(&self, end: End, given: Given, start: &Equilibrium) -> Option<Equilibrium> {
        let count = self.count();
        let size = count + 2;
        let mut here = *start;
        if let Given::Temperature(temperature) = given {
            here.temperature = temperature;
        }
        let mut arrived = false;
        for _ in 0..MOST_STEPS {
            let bulk = self.bulk_phase(here.temperature, here.bulk_density);
            let incipient = self.phase(here.temperature, &here.incipient_densities);
            if arrived {
                return self.accept(end, given, here, &bulk, &incipient);
            }
            let (matrix, residual) = self.system(end, given, &here, &bulk, &incipient);
            let step = solve(matrix, residual, size)?;
            // A step is shortened as a whole, so that it keeps its direction.
            let mut factor: f64 = 1.0;
            let mut largest: f64 = 0.0;
            for (index, change) in step.iter().take(size).enumerate() {
                let longest = if index == size - 1 { LONGEST_TEMPERATURE_STEP } else { LONGEST_DENSITY_STEP };
                if change.abs() > longest {
                    factor = factor.min(longest / change.abs());
                }
                largest = largest.max(change.abs());
            }
            // Never let the densities cross, nor come much nearer to each other in one step: that way lies the trivial
            // solution in which both phases are one.
            let ratio = here.ln_density_ratio(end);
            let mut next = here.moved(&step, factor, count);
            for _ in 0..8 {
                if next.ln_density_ratio(end) > 0.4 * ratio {
                    break;
                }
                factor *= 0.5;
                next = here.moved(&step, factor, count);
            }
            if !(next.ln_density_ratio(end) > 0.0) {
                return None;
            }
            here = next;
            arrived = factor == 1.0 && largest < LAST_STEP;
        }
        None
    }

    /// Residuals and their derivatives, negated so that the solution is the step.
    fn system(&self, end: End, given: Given, here: &Equilibrium, bulk: &Phase, incipient: &Phase) -> (Matrix, Vector) {
        let count = self.count();
        let (by_bulk, by_temperature) = (count, count + 1);
        let mut matrix: Matrix = [[0.0; LARGEST]; LARGEST];
        let mut residual: Vector = [0.0; LARGEST];
        // Columns: ln of the incipient partial densities, ln of the bulk density, ln T.
        for row in 0..count {
            residual[row] = incipient.ln_fugacities[row] - bulk.ln_fugacities[row];
            for column in 0..count {
                matrix[row][column] = -incipient.ln_fugacity_slopes[row][column];
            }
            matrix[row][by_bulk] = bulk.ln_fugacity_slopes[row].iter().sum();
            matrix[row][by_temperature] =
                bulk.ln_fugacity_by_ln_temperature[row] - incipient.ln_fugacity_by_ln_temperature[row];
        }
        // Pressures, in units of the ideal pressure of the denser phase.
        let bulk_slope: f64 = bulk.pressure_slopes.iter().sum();
        let unit = self.gas_constant * here.temperature * bulk.density.max(incipient.density);
        let row = count;
        residual[row] = (incipient.pressure - bulk.pressure) / unit;
        for column in 0..count {
            matrix[row][column] = -incipient.pressure_slopes[column] / unit;
        }
        matrix[row][by_bulk] = bulk_slope / unit;
        matrix[row][by_temperature] = (bulk.pressure_by_ln_temperature - incipient.pressure_by_ln_temperature) / unit;
        // What is given.
        let row = count + 1;
        match given {
            Given::Temperature(_) => matrix[row][by_temperature] = 1.0,
            Given::Pressure(pressure) => match end {
                // The pressure of the lighter phase: that of the denser is a small difference of large numbers.
                End::Bubble => {
                    residual[row] = (pressure - incipient.pressure) / pressure;
                    for column in 0..count {
                        matrix[row][column] = incipient.pressure_slopes[column] / pressure;
                    }
                    matrix[row][by_temperature] = incipient.pressure_by_ln_temperature / pressure;
                }
                End::Dew => {
                    residual[row] = (pressure - bulk.pressure) / pressure;
                    matrix[row][by_bulk] = bulk_slope / pressure;
                    matrix[row][by_temperature] = bulk.pressure_by_ln_temperature / pressure;
                }
            },
            Given::DensityRatio(ratio) => {
                let sign = if end == End::Bubble { 1.0 } else { -1.0 };
                residual[row] = ratio - here.ln_density_ratio(end);
                matrix[row][by_bulk] = sign;
                for column in 0..count {
                    matrix[row][column] = -sign * here.incipient_densities[column] / incipient.density;
                }
            }
        }
        (matrix, residual)
    }

    fn accept(
        &self,
        end: End,
        given: Given,
        mut here: Equilibrium,
        bulk: &Phase,
        incipient: &Phase,
    ) -> Option<Equilibrium> {
        let count = self.count();
        let fractions = here.incipient_fractions();
        let same_composition =
            self.mole_fractions.iter().zip(fractions).all(|(bulk, other)| (bulk - other).abs() < 1e-9);
        let least = match given {
            Given::DensityRatio(_) if same_composition => 1e-5,
            Given::DensityRatio(_) => 1e-7,
            // Where a phase is about to split the equations also hold for two all but equal ones.
            _ => LEAST_DENSITY_RATIO,
        };
        let distinct = here.ln_density_ratio(end) > least;
        // Pressure must rise with density in both phases, and fugacities agree to far better than the result is stated.
        let stable =
            bulk.pressure_slopes.iter().sum::<f64>() > 0.0 && incipient.pressure_slopes.iter().sum::<f64>() > 0.0;
        let equal = (0..count).all(|k| (bulk.ln_fugacities[k] - incipient.ln_fugacities[k]).abs() < 1e-9);
        here.pressure = match end {
            End::Bubble => incipient.pressure,
            End::Dew => bulk.pressure,
        };
        (distinct && stable && equal && here.pressure > 0.0).then_some(here)
    }
}

impl Equilibrium {
    fn moved(&self, step: &Vector, factor: f64, count: usize) -> Self {
        let mut next = *self;
        for index in 0..count.min(MAX_COMPONENTS) {
            next.incipient_densities[index] *= math::exp(factor * step[index]);
        }
        next.bulk_density *= math::exp(factor * step[count]);
        // The given temperature stays exactly what was given.
        if step[count + 1] != 0.0 {
            next.temperature *= math::exp(factor * step[count + 1]);
        }
        next
    }
}
