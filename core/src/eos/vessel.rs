//! A closed vessel at rest: liquid and vapour in equilibrium at a given temperature in a given volume.
//!
//! What is known is how much of each component there is per volume of the vessel; what is sought is how it divides. With
//! partial molar densities a in the liquid and b in the vapour and a share L of the volume that is liquid,
//! n = L·a + (1 − L)·b, with equal fugacities and pressures. The phase that holds more of the contents follows from the
//! balance; Newton's method with exact derivatives finds the other one, in the logarithms of its partial densities, and
//! either L or the total density. L itself, not its logarithm, is the variable, so that the equations stay smooth where
//! a phase is used up: past that point L is negative.

use super::equilibrium::End;
use super::linear::{LARGEST, Matrix, Vector, solve};
use super::mixture::{Mixture, PerComponent, Phase};
use super::model::MAX_COMPONENTS;
use crate::bounds;
use crate::error::Error;
use crate::math;

/// How full a vessel is at its temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Filling {
    /// Share of its volume that is liquid, 0.001 to 0.999.
    LiquidVolumeFraction(f64),
    /// Mass of refrigerant over the volume of the vessel, kg/m³.
    Density(f64),
}

impl Default for Filling {
    /// Four fifths of the volume: about the most that a refrigerant cylinder may hold (AHRI Guideline K: 80 % of the
    /// water capacity times the specific gravity at 77 °F). A unit at rest usually holds less: give its own.
    fn default() -> Self {
        Self::LiquidVolumeFraction(0.8)
    }
}

/// A closed vessel at rest that holds liquid and vapour of a refrigerant, everywhere at one temperature.
///
/// ```
/// use satline::eos::{Filling, Mixture, Vessel, model};
/// let r407c = Mixture::of(&model::R407C)?;
/// let cylinder = Vessel::filled(&r407c, 298.15, Filling::default())?;
/// // In the vapour there is more of the two volatile components than in the liquid.
/// let (vapor, liquid) = (cylinder.vapor_mass_fractions(), cylinder.liquid_mass_fractions());
/// assert!(vapor[0] > liquid[0] && vapor[1] > liquid[1] && vapor[2] < liquid[2]);
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Vessel {
    mixture: Mixture,
    temperature: f64,
    /// Moles of each component per volume of the vessel, mol/m³.
    pub(super) totals: PerComponent,
    pub(super) split: Split,
}

/// How the contents divide.
#[derive(Debug, Clone, Copy)]
pub(super) struct Split {
    /// Partial molar densities in the liquid, mol/m³.
    pub liquid: PerComponent,
    /// Partial molar densities in the vapour, mol/m³.
    pub vapor: PerComponent,
    /// Share of the volume that is liquid.
    pub liquid_share: f64,
    /// Pa.
    pub pressure: f64,
}

/// What of the contents is given.
#[derive(Debug, Clone, Copy)]
enum Known {
    /// Moles of each component per volume of the vessel; the liquid's share is sought.
    Totals(PerComponent),
    /// The overall mole fractions and the liquid's share; the total density is sought.
    Share(f64),
}

/// Most Newton steps for one split.
const MOST_STEPS: usize = 40;
/// Longest step in a logarithm of density.
const LONGEST_DENSITY_STEP: f64 = 0.4;
/// Longest step in the liquid's share.
const LONGEST_SHARE_STEP: f64 = 0.2;
/// How short a step on the way to a filling may become, as a share of the whole way.
const SHORTEST: f64 = 1e-4;
/// How much the logarithm of the liquid's density may change from one split to the next.
const MOST_LIQUID_CHANGE: f64 = 0.1;
/// How much that of the vapour's may.
const MOST_VAPOR_CHANGE: f64 = 0.5;
/// A step below this is the last: convergence is quadratic, so the next would be lost in rounding.
const LAST_STEP: f64 = 1e-8;
/// Agreement of ln f in an accepted solution.
const AGREEMENT: f64 = 1e-9;

impl Vessel {
    /// A vessel filled with a mixture at a temperature in K.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for a temperature without liquid and vapour, a liquid volume
    /// fraction outside [`bounds::LIQUID_VOLUME_FRACTION`], or a density at which the vessel holds vapour only or
    /// liquid only; [`Error::NotConverged`] close to the critical point.
    pub fn filled(mixture: &Mixture, temperature: f64, filling: Filling) -> Result<Self, Error> {
        match filling {
            Filling::LiquidVolumeFraction(share) => {
                Self::with_share(mixture, temperature, bounds::LIQUID_VOLUME_FRACTION.check(share)?)
            }
            Filling::Density(density) => Self::with_density(mixture, temperature, density),
        }
    }

    fn with_share(mixture: &Mixture, temperature: f64, share: f64) -> Result<Self, Error> {
        // From the end of the saturation line where the same phase holds more, along the share in steps that are halved
        // where one fails. A cold vapour is so thin that a drop of liquid holds more than all the rest of the vessel.
        let bubble = mixture.at_temperature(End::Bubble, temperature)?;
        let of_bulk = |density: f64| mixture.mole_fractions.map(|fraction| fraction * density);
        let mut here = Self {
            mixture: *mixture,
            temperature,
            totals: of_bulk(bubble.bulk_density),
            split: Split {
                liquid: of_bulk(bubble.bulk_density),
                vapor: bubble.incipient_densities,
                liquid_share: 1.0,
                pressure: bubble.pressure,
            },
        };
        if share * bubble.bulk_density < (1.0 - share) * bubble.incipient_density() {
            let dew = mixture.at_temperature(End::Dew, temperature)?;
            here.totals = of_bulk(dew.bulk_density);
            here.split = Split {
                liquid: dew.incipient_densities,
                vapor: of_bulk(dew.bulk_density),
                liquid_share: 0.0,
                pressure: dew.pressure,
            };
        }
        let whole = (share - here.split.liquid_share).abs();
        let mut longest = whole.max(SHORTEST);
        while longest > 0.5 * SHORTEST * whole {
            let distance = share - here.split.liquid_share;
            let arrived = distance.abs() <= longest;
            let next = if arrived { share } else { here.split.liquid_share + longest.copysign(distance) };
            match here.solved(Known::Share(next)) {
                Some(found) if arrived => return Ok(found),
                Some(found) => here = found,
                None => longest *= 0.5,
            }
        }
        Err(Self::failed(temperature))
    }

    fn with_density(mixture: &Mixture, temperature: f64, density: f64) -> Result<Self, Error> {
        let limits = bounds::LIQUID_VOLUME_FRACTION;
        let lowest = Self::with_share(mixture, temperature, limits.lower)?;
        let highest = Self::with_share(mixture, temperature, limits.upper)?;
        let (least, most) = (lowest.density(), highest.density());
        bounds::within(
            "mass over the volume of the vessel at this temperature",
            "kg/m3",
            density,
            least,
            most,
            "below it there is no liquid, above it no vapour: a vessel full of liquid bursts when it warms",
        )?;
        // The density is almost straight in the share: the start is near, and steps in density do the rest.
        let share = (density - least) / (most - least);
        let mut here = Self::with_share(mixture, temperature, share.max(limits.lower).min(limits.upper))?;
        let whole = math::ln(density / here.density()).abs();
        let mut longest = whole.max(SHORTEST);
        while longest > 0.5 * SHORTEST * whole {
            let ratio = math::ln(density / here.density());
            let arrived = ratio.abs() <= longest;
            let step = if arrived { ratio } else { longest.copysign(ratio) };
            let factor = math::exp(step);
            match here.solved(Known::Totals(here.totals.map(|total| total * factor))) {
                Some(found) if arrived => return Ok(found),
                Some(found) => here = found,
                None => longest *= 0.5,
            }
        }
        Err(Self::failed(temperature))
    }

    pub(super) const fn failed(temperature: f64) -> Error {
        Error::NotConverged {
            calculation: "liquid and vapour in a vessel at a temperature",
            value: temperature,
            unit: "K",
        }
    }

    /// The overall composition, as a mixture of its own: its bubble and dew points are those of what is in the vessel.
    #[must_use]
    pub const fn mixture(&self) -> &Mixture {
        &self.mixture
    }

    /// Temperature, K.
    #[must_use]
    pub const fn temperature(&self) -> f64 {
        self.temperature
    }

    /// Pressure, Pa: between the dew and the bubble pressure of the overall composition.
    #[must_use]
    pub const fn pressure(&self) -> f64 {
        self.split.pressure
    }

    /// Mass of refrigerant over the volume of the vessel, kg/m³.
    #[must_use]
    pub fn density(&self) -> f64 {
        self.mixture.mass_of(&self.totals)
    }

    /// Share of the vessel's volume that is liquid.
    #[must_use]
    pub const fn liquid_volume_fraction(&self) -> f64 {
        self.split.liquid_share.max(0.0)
    }

    /// Share of the mass that is liquid.
    #[must_use]
    pub fn liquid_mass_share(&self) -> f64 {
        self.liquid_volume_fraction() * self.liquid_density() / self.density()
    }

    /// Density of the liquid, kg/m³.
    #[must_use]
    pub fn liquid_density(&self) -> f64 {
        self.mixture.mass_of(&self.split.liquid)
    }

    /// Density of the vapour, kg/m³.
    #[must_use]
    pub fn vapor_density(&self) -> f64 {
        self.mixture.mass_of(&self.split.vapor)
    }

    /// Mass fractions of all that is in the vessel.
    #[must_use]
    pub fn mass_fractions(&self) -> PerComponent {
        self.mixture.mass_fractions_of(&self.totals)
    }

    /// Mass fractions of the liquid.
    #[must_use]
    pub fn liquid_mass_fractions(&self) -> PerComponent {
        self.mixture.mass_fractions_of(&self.split.liquid)
    }

    /// Mass fractions of the vapour.
    #[must_use]
    pub fn vapor_mass_fractions(&self) -> PerComponent {
        self.mixture.mass_fractions_of(&self.split.vapor)
    }

    /// The same vessel with other contents; the share of the liquid may come out slightly negative, see the module.
    pub(super) fn with_totals(&self, totals: PerComponent) -> Option<Self> {
        self.solved(Known::Totals(totals))
    }

    /// The same vessel with the composition of its mixture made that of its contents.
    pub(super) fn with_own_mixture(mut self) -> Result<Self, Error> {
        self.mixture = Mixture::with_mass_fractions(self.mixture.model(), &self.mass_fractions())?;
        Ok(self)
    }

    /// Newton's method from the present split; `None` if it does not converge or the phases become one.
    fn solved(&self, known: Known) -> Option<Self> {
        let count = self.mixture.count();
        let mut here = *self;
        // With the phases' densities as they were: a liquid that the balance makes thinner than it can be leads astray.
        let (liquid, vapor) = (sum(&here.split.liquid), sum(&here.split.vapor));
        match known {
            Known::Totals(totals) => {
                here.totals = totals;
                here.split.liquid_share = (sum(&totals) - vapor) / (liquid - vapor);
            }
            Known::Share(share) => {
                here.split.liquid_share = share;
                let factor = (share * liquid + (1.0 - share) * vapor) / sum(&here.totals);
                here.totals = here.totals.map(|total| total * factor);
            }
        }
        // The phase that holds less is sought, the other follows from the balance: then neither is a small difference.
        let share = here.split.liquid_share;
        let liquid_sought = share * liquid < (1.0 - share) * vapor;
        here = here.balanced(liquid_sought)?;
        let mut arrived = false;
        for _ in 0..MOST_STEPS {
            let liquid = here.mixture.phase(here.temperature, &here.split.liquid);
            let vapor = here.mixture.phase(here.temperature, &here.split.vapor);
            if arrived {
                return here.accepted(&liquid, &vapor).filter(|found| found.is_near(self));
            }
            let (sought, other) = if liquid_sought { (&liquid, &vapor) } else { (&vapor, &liquid) };
            let (matrix, residual) = here.system(known, liquid_sought, sought, other);
            let step = solve(matrix, residual, count + 1)?;
            let mut factor: f64 = 1.0;
            let mut largest: f64 = 0.0;
            for (index, change) in step.iter().take(count + 1).enumerate() {
                let longest = match known {
                    Known::Totals(_) if index == count => LONGEST_SHARE_STEP,
                    _ => LONGEST_DENSITY_STEP,
                };
                if change.abs() > longest {
                    factor = factor.min(longest / change.abs());
                }
                largest = largest.max(change.abs());
            }
            // Shortened as a whole until both phases are there and well apart: beyond lies the trivial solution.
            let ratio = here.ln_density_ratio();
            let mut next = here.moved(known, liquid_sought, &step, factor);
            for _ in 0..12 {
                if next.is_some_and(|next| next.ln_density_ratio() > 0.4 * ratio) {
                    break;
                }
                factor *= 0.5;
                next = here.moved(known, liquid_sought, &step, factor);
            }
            here = next.filter(|next| next.ln_density_ratio() > 0.0)?;
            arrived = factor == 1.0 && largest < LAST_STEP;
        }
        None
    }

    fn ln_density_ratio(&self) -> f64 {
        math::ln(sum(&self.split.liquid) / sum(&self.split.vapor))
    }

    /// Whether the phases are still those of a split before: between the true phases the equations of state have
    /// others, which mean nothing.
    fn is_near(&self, before: &Self) -> bool {
        let ratio = |now: &PerComponent, then: &PerComponent| math::ln(sum(now) / sum(then)).abs();
        ratio(&self.split.liquid, &before.split.liquid) < MOST_LIQUID_CHANGE
            && ratio(&self.split.vapor, &before.split.vapor) < MOST_VAPOR_CHANGE
    }

    /// The phase that is not sought, from the balance; `None` if it would need less than nothing of a component.
    fn balanced(mut self, liquid_sought: bool) -> Option<Self> {
        let count = self.mixture.count();
        let share = if liquid_sought { self.split.liquid_share } else { 1.0 - self.split.liquid_share };
        let (sought, other) = if liquid_sought {
            (&self.split.liquid, &mut self.split.vapor)
        } else {
            (&self.split.vapor, &mut self.split.liquid)
        };
        for ((place, sought), total) in other.iter_mut().zip(sought).zip(self.totals).take(count) {
            *place = (total - share * sought) / (1.0 - share);
            if !(*place > 0.0 && place.is_finite()) {
                return None;
            }
        }
        Some(self)
    }

    fn moved(&self, known: Known, liquid_sought: bool, step: &Vector, factor: f64) -> Option<Self> {
        let count = self.mixture.count();
        let mut next = *self;
        let sought = if liquid_sought { &mut next.split.liquid } else { &mut next.split.vapor };
        for (place, change) in sought.iter_mut().zip(step).take(count.min(MAX_COMPONENTS)) {
            *place *= math::exp(factor * change);
        }
        let last = factor * step.get(count)?;
        match known {
            Known::Totals(_) => next.split.liquid_share += if liquid_sought { last } else { -last },
            Known::Share(_) => next.totals = next.totals.map(|total| total * math::exp(last)),
        }
        next.balanced(liquid_sought)
    }

    /// Residuals and their derivatives, negated so that the solution is the step. Columns: the logarithms of the sought
    /// phase's partial densities, then its share of the volume or the logarithm of the total density.
    fn system(&self, known: Known, liquid_sought: bool, sought: &Phase, other: &Phase) -> (Matrix, Vector) {
        let count = self.mixture.count();
        let split = &self.split;
        let (share, densities, others) = if liquid_sought {
            (split.liquid_share, &split.liquid, &split.vapor)
        } else {
            (1.0 - split.liquid_share, &split.vapor, &split.liquid)
        };
        // How the logarithms of the other phase's densities follow those of the sought one's, and the last unknown.
        let mut by_own = [0.0; MAX_COMPONENTS];
        let mut by_last = [0.0; MAX_COMPONENTS];
        for index in 0..count {
            let weight = (1.0 - share) * others[index];
            by_own[index] = -share * densities[index] / weight;
            by_last[index] = match known {
                Known::Totals(_) => (others[index] - densities[index]) / weight,
                Known::Share(_) => self.totals[index] / weight,
            };
        }
        let mut matrix: Matrix = [[0.0; LARGEST]; LARGEST];
        let mut residual: Vector = [0.0; LARGEST];
        for row in 0..count {
            residual[row] = sought.ln_fugacities[row] - other.ln_fugacities[row];
            for column in 0..count {
                let follows = other.ln_fugacity_slopes[row][column];
                matrix[row][column] = follows * by_own[column] - sought.ln_fugacity_slopes[row][column];
                matrix[row][count] += follows * by_last[column];
            }
        }
        // Pressures, in units of the ideal pressure of the denser phase.
        let unit = self.mixture.gas_constant * self.temperature * sought.density.max(other.density);
        residual[count] = (sought.pressure - other.pressure) / unit;
        for column in 0..count {
            let follows = other.pressure_slopes[column];
            matrix[count][column] = (follows * by_own[column] - sought.pressure_slopes[column]) / unit;
            matrix[count][count] += follows * by_last[column] / unit;
        }
        (matrix, residual)
    }

    fn accepted(mut self, liquid: &Phase, vapor: &Phase) -> Option<Self> {
        let count = self.mixture.count();
        let stable = [liquid, vapor].iter().all(|phase| phase.pressure_slopes.iter().sum::<f64>() > 0.0);
        let equal = (0..count).all(|k| (liquid.ln_fugacities[k] - vapor.ln_fugacities[k]).abs() < AGREEMENT);
        let distinct = self.ln_density_ratio() > 1e-5;
        // The pressure of the vapour: that of the liquid is a small difference of large numbers.
        self.split.pressure = vapor.pressure;
        (stable && equal && distinct && vapor.pressure > 0.0).then_some(self)
    }
}

fn sum(densities: &PerComponent) -> f64 {
    densities.iter().sum()
}

impl Mixture {
    /// Mass of moles per volume, kg/m³.
    fn mass_of(&self, moles: &PerComponent) -> f64 {
        self.model().fluids.iter().zip(moles).map(|(fluid, moles)| moles * fluid.molar_mass).sum()
    }

    /// Mass fractions from moles per volume.
    pub(super) fn mass_fractions_of(&self, moles: &PerComponent) -> PerComponent {
        let total = self.mass_of(moles);
        let mut fractions = [0.0; MAX_COMPONENTS];
        for ((place, fluid), moles) in fractions.iter_mut().zip(self.model().fluids).zip(moles) {
            *place = moles * fluid.molar_mass / total;
        }
        fractions
    }
}
