//! Choices between models of one part, so that what is tuned on one structure can be judged on another.
//!
//! The default of every choice is what the rig is tuned with, and leaves every other number as it is to the last bit.

use super::coil::{Coil, Condensed, Evaporated, condense, evaporate_cooling};
use super::lumped::condense_lumped;
use super::map::RefrigerantMap;
use super::moist::Air;
use super::void::VoidFraction;
use crate::bounds::within;
use crate::error::Error;

/// What enters a coil on both sides.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Streams {
    /// Pressure of the refrigerant, Pa: where it enters a condenser, where it leaves an evaporator.
    pub pressure: f64,
    /// Enthalpy with which the refrigerant enters, J/kg.
    pub enthalpy: f64,
    /// Refrigerant, kg/s.
    pub mass_flow: f64,
    /// The entering air.
    pub air: Air,
    /// Dry air, kg/s.
    pub dry_air: f64,
    /// How liquid and vapour share the coil.
    pub void: VoidFraction,
    /// Heat that the coil's metal takes from refrigerant that condenses, or gives to refrigerant that boils, in W if all of
    /// the coil held both phases; 0 at rest.
    pub metal: f64,
}

/// A model of a coil that condenses.
pub trait Condenser {
    /// What leaves the coil.
    ///
    /// # Errors
    /// States outside the refrigerant's map.
    fn condense(&self, coil: &Coil, map: &RefrigerantMap, streams: &Streams) -> Result<Condensed, Error>;
}

/// A model of a coil that evaporates.
pub trait Evaporator {
    /// What leaves the coil.
    ///
    /// # Errors
    /// States outside the refrigerant's map.
    fn evaporate(&self, coil: &Coil, map: &RefrigerantMap, streams: &Streams) -> Result<Evaporated, Error>;
}

/// One of the condenser models.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum CondenserModel {
    /// Zones of gas, both phases and liquid, each with its own conductance and mean temperature.
    #[default]
    MovingBoundary,
    /// One effectiveness: gas gives its heat as if it condensed, liquid is one well-mixed pool.
    Lumped,
}

impl Condenser for CondenserModel {
    fn condense(&self, coil: &Coil, map: &RefrigerantMap, streams: &Streams) -> Result<Condensed, Error> {
        let Streams { pressure, enthalpy, mass_flow, air, dry_air, void, metal } = streams;
        match self {
            Self::MovingBoundary => {
                condense(coil, map, *void, (*pressure, *enthalpy), *mass_flow, (air, *dry_air), *metal)
            }
            Self::Lumped => condense_lumped(coil, map, streams),
        }
    }
}

/// An evaporator of two circuits that share refrigerant evenly and air unevenly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circuits {
    /// Air over the one circuit less air over the other, by the whole: 0 even, towards 1 all over one.
    pub imbalance: f64,
}

impl Evaporator for Circuits {
    fn evaporate(&self, coil: &Coil, map: &RefrigerantMap, streams: &Streams) -> Result<Evaporated, Error> {
        let Streams { pressure, enthalpy, mass_flow, air, dry_air, void, metal } = streams;
        let ends = (*pressure, *enthalpy);
        if self.imbalance == 0.0 {
            return evaporate_cooling(coil, map, *void, ends, *mass_flow, (air, *dry_air), *metal);
        }
        let half = Coil {
            air_conductance: 0.5 * coil.air_conductance,
            two_phase_conductance: 0.5 * coil.two_phase_conductance,
            single_phase_conductance: 0.5 * coil.single_phase_conductance,
            design_air: 0.5 * coil.design_air,
            design_flow: 0.5 * coil.design_flow,
            volume: 0.5 * coil.volume,
            // Half the flow through tubes half as many: the same drop.
            drop: 4.0 * coil.drop,
        };
        let one = |share: f64| {
            evaporate_cooling(&half, map, *void, ends, 0.5 * mass_flow, (air, share * dry_air), 0.5 * metal)
        };
        let shares = (0.5 * (1.0 + self.imbalance), 0.5 * (1.0 - self.imbalance));
        let (rich, poor) = (one(shares.0)?, one(shares.1)?);
        let mean = |of: fn(&Evaporated) -> f64| 0.5 * (of(&rich) + of(&poor));
        let blown = |of: fn(&Evaporated) -> f64| shares.0 * of(&rich) + shares.1 * of(&poor);
        let out = mean(|coil| coil.enthalpy);
        let outlet = map.saturation(*pressure)?;
        let (temperature, superheat) = super::coil::outlet_superheat(map, &outlet, out)?;
        let humidity_ratio = blown(|coil| coil.air.humidity_ratio);
        let leaving = Air::from_enthalpy(blown(|coil| coil.air.enthalpy()), humidity_ratio, air.pressure);
        Ok(Evaporated {
            heat: rich.heat + poor.heat,
            sensible_heat: rich.sensible_heat + poor.sensible_heat,
            enthalpy: out,
            temperature,
            superheat,
            inlet_pressure: rich.inlet_pressure,
            air: leaving,
            shares: [mean(|coil| coil.shares[0]), mean(|coil| coil.shares[1])],
            charge: rich.charge + poor.charge,
            // Ice begins where it is coldest.
            surface_temperature: rich.surface_temperature.min(poor.surface_temperature),
        })
    }
}

/// A return duct through a hot space: it draws in air from there and is warmed by it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ReturnDuct {
    /// Share of the air at the coil that came in through leaks.
    pub leak: f64,
    /// Heat conductance of the duct's wall, W/K.
    pub conductance: f64,
    /// How much warmer the space around is than the outdoor air, K.
    pub excess: f64,
}

impl ReturnDuct {
    /// The air that reaches the coil.
    pub(super) fn entering(&self, room: &Air, outdoor: &Air, dry_air: f64) -> Air {
        if *self == Self::default() {
            return *room;
        }
        let around = Air { temperature: outdoor.temperature + self.excess, ..*outdoor };
        let mix = |inside: f64, outside: f64| (1.0 - self.leak) * inside + self.leak * outside;
        let humidity_ratio = mix(room.humidity_ratio, around.humidity_ratio);
        let gain = self.conductance * (around.temperature - room.temperature) / dry_air;
        Air::from_enthalpy(mix(room.enthalpy(), around.enthalpy()) + gain, humidity_ratio, room.pressure)
    }
}

/// A vessel before the compressor that keeps liquid back and lets some of it through a bleed hole.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accumulator {
    /// Inside volume, m³; 0 for a unit without one.
    pub volume: f64,
    /// Liquid's share of the flow that the hole lets through when the vessel is full; in proportion below.
    pub bleed: f64,
}

impl Default for Accumulator {
    fn default() -> Self {
        Self { volume: 0.0, bleed: 0.06 }
    }
}

impl Accumulator {
    /// What it holds, kg, at a pressure and wetness of what leaves: at rest as much liquid leaves as comes.
    pub(super) fn charge(&self, map: &RefrigerantMap, pressure: f64, quality: f64, density: f64) -> Result<f64, Error> {
        if self.volume == 0.0 || quality >= 1.0 {
            return Ok(self.volume * density);
        }
        let saturation = map.saturation(pressure)?;
        let level = ((1.0 - saturation.mass_quality(quality)) / self.bleed).clamp(0.0, 1.0);
        Ok(self.volume * (level * saturation.liquid_density + (1.0 - level) * saturation.vapor_density))
    }
}

/// How a unit is modelled where there is a choice.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Structure {
    /// The condenser.
    pub condenser: CondenserModel,
    /// Imbalance of the air over the evaporator's two circuits, 0 to 0.9: see [`Circuits`].
    pub air_imbalance: f64,
    /// The return duct.
    pub return_duct: ReturnDuct,
    /// Before the compressor.
    pub accumulator: Accumulator,
}

impl Structure {
    /// Refuses choices outside their ranges.
    pub(super) fn check(&self) -> Result<(), Error> {
        let advice = "choose a milder structure: such a unit is not built";
        let checks = [
            ("imbalance of the evaporator's air", "share", self.air_imbalance, 0.0, 0.9),
            ("return leak", "share", self.return_duct.leak, 0.0, 0.5),
            ("conductance of the return duct", "W/K", self.return_duct.conductance, 0.0, 500.0),
            ("excess temperature around the return duct", "K", self.return_duct.excess, -20.0, 40.0),
            ("volume of the accumulator", "m3", self.accumulator.volume, 0.0, 0.02),
            ("bleed of the accumulator", "share", self.accumulator.bleed, 1e-3, 1.0),
        ];
        checks.into_iter().try_for_each(|(quantity, unit, value, lower, upper)| {
            within(quantity, unit, value, lower, upper, advice).map(|_| ())
        })
    }
}
