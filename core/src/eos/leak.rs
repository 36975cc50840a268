//! What a leak does to a blend: the vapour over a liquid holds more of the volatile components, and takes them along.
//!
//! The vessel stays at its temperature and at equilibrium throughout (a slow leak, well mixed; a fast one cools its
//! liquid and shifts the composition less evenly). The balance of each component, dn = −w dm with w the moles of it in
//! a kilogram of what leaves, is followed in the mass lost by the classical Runge-Kutta method of fourth order; liquid
//! and vapour are brought to equilibrium again at every stage, so the vapour over the liquid counts for what it holds.
//! Where it holds next to nothing, this is Rayleigh's (1902) equation of simple distillation.

use super::mixture::PerComponent;
use super::model::MAX_COMPONENTS;
use super::vessel::Vessel;
use crate::bounds;
use crate::error::Error;

/// Which phase the leak lets out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Leaving {
    /// Liquid, from a leak below its level: the composition of the charge hardly changes.
    Liquid,
    /// Vapour, from a leak above it: the volatile components leave first.
    Vapor,
}

impl Leaving {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Liquid, Self::Vapor];

    /// The name in every language: `liquid`, `vapor`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Liquid => "liquid",
            Self::Vapor => "vapor",
        }
    }

    /// The phase of that name.
    ///
    /// # Errors
    /// [`Error::UnknownChoice`] naming the choices.
    pub fn from_name(name: &str) -> Result<Self, Error> {
        Self::ALL
            .into_iter()
            .find(|leaving| leaving.name() == name)
            .ok_or(Error::UnknownChoice { field: "what leaves", choices: "liquid, vapor" })
    }
}

/// By how much, relatively, the component that leaves fastest may change in one step: compositions are then within 1e-9
/// of those of many smaller steps.
const STEP: f64 = 0.02;
/// Most steps of a leak.
const MOST_STEPS: usize = 20_000;
/// How often a step is halved before the leak is given up.
const MOST_HALVINGS: u32 = 20;
/// A share of liquid below this is none.
const NO_LIQUID: f64 = -1e-9;

impl Vessel {
    /// The vessel after a fraction of the mass in it has leaked out at its temperature.
    ///
    /// Its [`mixture`](Vessel::mixture) is what remains: ask that for the shifted bubble and dew points. Of a flammable
    /// refrigerant or one with flammable components, look at the vapour too: where the component that burns is the
    /// volatile one, a vapour leak feeds more of it into the room than the composition on the label says.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for a fraction outside 0 to 1, or above the one at which the last
    /// liquid is gone (the upper limit in the error): from there on all is vapour and leaks without changing.
    /// [`Error::NotConverged`] close to the critical point.
    ///
    /// ```
    /// use satline::eos::{End, Filling, Leaving, Mixture, Vessel, model};
    /// let r407c = Mixture::of(&model::R407C)?;
    /// let cylinder = Vessel::filled(&r407c, 295.15, Filling::LiquidVolumeFraction(0.8))?;
    /// let left = cylinder.after_leak(Leaving::Vapor, 0.5)?;
    /// assert!(left.mass_fractions()[2] > 0.57); // R-134a, 0.52 when new
    /// let dew = |mixture: &Mixture| mixture.at_pressure(End::Dew, 6e5).map(|point| point.temperature);
    /// assert!(dew(left.mixture())? > dew(&r407c)? + 1.0);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn after_leak(&self, leaving: Leaving, fraction_lost: f64) -> Result<Self, Error> {
        let wanted = bounds::FRACTION_LOST.check(fraction_lost)?;
        let start = self.density();
        let (mut here, mut lost) = (*self, 0.0);
        for _ in 0..MOST_STEPS {
            let left = wanted - lost;
            if left <= 0.0 {
                return here.with_own_mixture();
            }
            let longest = here.longest_step(leaving, start);
            let (step, next) = here.stepped(leaving, start, left.min(longest))?;
            if next.split.liquid_share < NO_LIQUID {
                let last = lost + here.until_liquid_is_gone(leaving, start, step);
                return Err(bounds::refuse(
                    "fraction of the mass lost while liquid is there",
                    "kg/kg",
                    wanted,
                    0.0,
                    last,
                    "from there on all is vapour and leaks without changing: ask for that fraction",
                ));
            }
            // The last step arrives exactly, whatever its rounding.
            lost = if step == left { wanted } else { lost + step };
            here = next;
        }
        Err(Self::failed(self.temperature()))
    }

    /// What a kilogram of the leaving phase takes of each component, mol/kg.
    fn leaving_moles(&self, leaving: Leaving) -> PerComponent {
        let (phase, mass) = match leaving {
            Leaving::Liquid => (&self.split.liquid, self.liquid_density()),
            Leaving::Vapor => (&self.split.vapor, self.vapor_density()),
        };
        phase.map(|moles| moles / mass)
    }

    /// The fraction of the first mass that may go in one step.
    fn longest_step(&self, leaving: Leaving, start: f64) -> f64 {
        let leaves = self.leaving_moles(leaving);
        let count = self.mixture().count();
        let fastest =
            leaves.iter().zip(self.totals).take(count).map(|(moles, total)| moles / total).fold(0.0, f64::max);
        STEP / (fastest * start)
    }

    /// One step, halved where an equilibrium within it is not found; with the length that it has.
    fn stepped(&self, leaving: Leaving, start: f64, longest: f64) -> Result<(f64, Self), Error> {
        let mut step = longest;
        for _ in 0..MOST_HALVINGS {
            if let Some(next) = self.after_step(leaving, step * start) {
                return Ok((step, next));
            }
            step *= 0.5;
        }
        Err(Self::failed(self.temperature()))
    }

    /// After a mass per volume of the vessel, kg/m³, has gone: four stages of Runge and Kutta.
    fn after_step(&self, leaving: Leaving, mass: f64) -> Option<Self> {
        let less = |leaves: &PerComponent, mass: f64| -> PerComponent {
            let mut totals = self.totals;
            for (total, moles) in totals.iter_mut().zip(leaves) {
                *total -= moles * mass;
            }
            totals
        };
        let first = self.leaving_moles(leaving);
        let second = self.with_totals(less(&first, 0.5 * mass))?.leaving_moles(leaving);
        let third = self.with_totals(less(&second, 0.5 * mass))?.leaving_moles(leaving);
        let fourth = self.with_totals(less(&third, mass))?.leaving_moles(leaving);
        let mut mean = [0.0; MAX_COMPONENTS];
        for (index, place) in mean.iter_mut().enumerate() {
            *place = (first[index] + 2.0 * (second[index] + third[index]) + fourth[index]) / 6.0;
        }
        self.with_totals(less(&mean, mass))
    }

    /// The longest step, as a fraction of the first mass, after which there still is liquid, below one that is too long.
    fn until_liquid_is_gone(&self, leaving: Leaving, start: f64, too_long: f64) -> f64 {
        let (mut there, mut gone) = (0.0, too_long);
        for _ in 0..60 {
            let middle = 0.5 * (there + gone);
            match self.after_step(leaving, middle * start) {
                Some(next) if next.split.liquid_share >= 0.0 => there = middle,
                _ => gone = middle,
            }
        }
        there
    }
}
