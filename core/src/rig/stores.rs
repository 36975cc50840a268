//! What a unit's parts store while it changes: heat in metal, liquid in the low side.
//!
//! A step of time is taken to its end (implicit Euler): the stores below hold what there was before it, and the
//! balances of the steady state, with what the stores give or take, decide what there is after it. When nothing changes
//! any more the stores give nothing, and the balances are those of the steady state.

use super::map::RefrigerantMap;
use super::unit::Parts;
use crate::bounds::within;
use crate::error::Error;

/// What makes a unit slow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inertia {
    /// Heat capacity of the metal of the coil that evaporates, J/K.
    pub evaporator: f64,
    /// Heat capacity of the metal of the coil that condenses, J/K.
    pub condenser: f64,
    /// Heat capacity of the compressor, J/K.
    pub shell: f64,
    /// Time constant of the compressor's body in the discharge gas, s.
    pub shell_time: f64,
    /// Time constant of a thermostatic valve's bulb on its line, s.
    pub bulb_time: f64,
    /// Time constant with which liquid that came to the low side while the unit stood is carried off, s.
    pub clearing_time: f64,
    /// Time constant with which the pressures become equal after a stop, s.
    pub equalizing_time: f64,
    /// Time constant with which lines and compressor come to the temperature around them after a stop, s.
    pub cooling_time: f64,
    /// Time constant with which refrigerant that is charged or taken reaches the circuit, s.
    pub mixing_time: f64,
    /// Share of the charge that comes to the low side while the unit stands, and the time constant of that, s.
    pub migration: [f64; 2],
}

impl Inertia {
    /// Of common practice, for the size of a unit: coils of copper tube and aluminium fins weigh as much metal as makes
    /// 2.5 MJ/K for each cubic metre inside; a compressor of 10 kW is some 28 kg of steel. What is charged is mixed in
    /// within a few minutes; California Title 24 has one wait for 15, ten times the time constant taken here.
    #[must_use]
    pub fn usual(parts: &Parts) -> Self {
        const METAL: f64 = 2.5e6;
        Self {
            evaporator: METAL * parts.evaporator.volume,
            condenser: METAL * parts.condenser.volume,
            shell: 2.1e5 * parts.design_flow,
            shell_time: 300.0,
            bulb_time: 30.0,
            clearing_time: 45.0,
            mixing_time: 90.0,
            equalizing_time: 60.0,
            cooling_time: 900.0,
            migration: [0.25, 900.0],
        }
    }

    /// Refuses what no unit has.
    pub(super) fn check(&self) -> Result<(), Error> {
        let [share, migration_time] = self.migration;
        let advice = "give heat capacities in J/K and times in s, as Inertia::usual does";
        let capacity = |value| within("heat capacity", "J/K", value, 0.0, 1e6, advice);
        let time = |value| within("time constant", "s", value, 0.0, 86_400.0, advice);
        for value in [self.evaporator, self.condenser, self.shell] {
            capacity(value)?;
        }
        for value in [
            self.shell_time,
            self.bulb_time,
            self.clearing_time,
            self.mixing_time,
            self.equalizing_time,
            self.cooling_time,
            migration_time,
        ] {
            time(value)?;
        }
        within("share of the charge that gathers", "kg/kg", share, 0.0, 0.5, advice).map(|_| ())
    }
}

/// One step of time, with what was stored before it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stores {
    /// Length of the step, s.
    pub step: f64,
    pub inertia: Inertia,
    /// Refrigerant inside after it, kg, without the liquid carried in.
    pub inside: f64,
    /// Refrigerant in the low side before it, with what is charged meanwhile, kg; not decided in the first step.
    pub low_side_charge: Option<f64>,
    /// Liquid carried off, kg/s.
    pub carried: f64,
    /// Temperatures before it, K.
    pub evaporator: f64,
    pub condenser: f64,
    pub shell: f64,
    pub bulb: f64,
}

impl Stores {
    /// Enthalpy of the discharge gas when the compressor's body has had its heat, J/kg.
    pub(super) fn past_shell(
        &self,
        map: &RefrigerantMap,
        pressure: f64,
        enthalpy: f64,
        mass_flow: f64,
    ) -> Result<f64, Error> {
        let gas = map.at_enthalpy(pressure, enthalpy)?.temperature;
        Ok(enthalpy - self.shell_heat(gas) / mass_flow)
    }

    /// Heat that the compressor's body takes from gas of a temperature, W.
    pub(super) fn shell_heat(&self, gas: f64) -> f64 {
        self.inertia.shell * (gas - self.shell) / (self.inertia.shell_time + self.step)
    }

    /// Temperature of the compressor's body after the step, in gas of a temperature, K.
    pub(super) fn shell_after(&self, gas: f64) -> f64 {
        self.shell + (gas - self.shell) * self.step / (self.inertia.shell_time + self.step)
    }

    /// Heat that the metal of the condenser takes, W.
    pub(super) fn condenser_heat(&self, map: &RefrigerantMap, pressure: f64) -> Result<f64, Error> {
        let now = map.saturation(pressure)?.bubble_temperature;
        Ok(self.inertia.condenser * (now - self.condenser) / self.step)
    }

    /// Heat that the metal of the evaporator gives, W.
    pub(super) fn evaporator_heat(&self, map: &RefrigerantMap, pressure: f64) -> Result<f64, Error> {
        let now = map.saturation(pressure)?.dew_temperature;
        Ok(self.inertia.evaporator * (self.evaporator - now) / self.step)
    }

    /// How much less the liquid carried along brings than as much of the liquid that is metered, W.
    pub(super) fn carried_heat(
        &self,
        map: &RefrigerantMap,
        pressure: f64,
        metered_enthalpy: f64,
    ) -> Result<f64, Error> {
        Ok(self.carried * (metered_enthalpy - map.saturation(pressure)?.liquid_enthalpy))
    }

    /// Superheat that a bulb feels, K: its own temperature lags, the pressure under the valve's diaphragm does not.
    pub(super) fn bulb_superheat(&self, map: &RefrigerantMap, pressure: f64, superheat: f64) -> Result<f64, Error> {
        let dew = map.saturation(pressure)?.dew_temperature;
        Ok(self.bulb_after(dew + superheat) - dew)
    }

    /// Temperature of the bulb after the step, on a line of a temperature, K.
    pub(super) fn bulb_after(&self, line: f64) -> f64 {
        self.bulb + (line - self.bulb) * self.step / (self.inertia.bulb_time + self.step)
    }

    /// What gathers in the low side beyond what is carried to it, kg/s.
    pub(super) fn gathering(&self, low_side_charge: f64) -> f64 {
        self.low_side_charge.map_or(0.0, |before| (low_side_charge - before) / self.step - self.carried)
    }
}
