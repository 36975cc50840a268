//! The steady state: suction pressure, discharge pressure and suction enthalpy at which the metering device passes what
//! the compressor draws, the evaporator leaves what the compressor takes, and the parts hold the charge that is there.

use super::coil::{Condensed, Evaporated};
use super::design::RATING_CONDITIONS;
use super::map::{Point, RefrigerantMap};
use super::moist::Air;
use super::newton::{Found, Unknowns, newton};
use super::stop::Stop;
use super::unit::{Conditions, Faults, Parts};
use crate::error::Error;
use crate::math;

/// Below this suction pressure a unit stops: its low-pressure switch, or ice.
pub(super) const LOWEST_SUCTION_PA: f64 = 120e3;
/// Wetter suction than this is not compressed as the compressors of the rig know it.
const WETTEST_SUCTION: f64 = 0.7;
/// Hottest discharge, K: at some 135 °C at the shell oil breaks down (common practice: 225 °F on the line is the limit).
const HOTTEST_DISCHARGE_K: f64 = 438.15;
/// Least pressure ratio at which compressors and metering devices are described.
const LEAST_RATIO: f64 = 1.1;
/// Shortest step of the way from the rating point.
const SHORTEST_STEP: f64 = 1e-2;

/// A unit at rest in its course: everything an instrument could show, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steady {
    /// Refrigerant flow, kg/s.
    pub mass_flow: f64,
    /// Compressor's electric power, W.
    pub compressor_power: f64,
    /// Power of both fans, W.
    pub fan_power: f64,
    /// What the indoor coil takes from the air, W; the fan's heat not taken off.
    pub capacity: f64,
    /// The part that cools the air, W.
    pub sensible_capacity: f64,
    /// Refrigerant inside, kg.
    pub charge: f64,
    /// The part of it between the metering device and the compressor's cylinders, kg.
    pub low_side_charge: f64,
    /// At the compressor's inlet.
    pub compressor_inlet: Point,
    /// At its outlet, with what non-condensables add to the pressure.
    pub discharge: Point,
    /// At the outdoor unit's vapour port.
    pub vapor_port: Point,
    /// At the outdoor unit's liquid port.
    pub liquid_port: Point,
    /// Before the metering device.
    pub metering_inlet: Point,
    /// The indoor coil.
    pub evaporator: Evaporated,
    /// The outdoor coil.
    pub condenser: Condensed,
    /// Pressure of the refrigerant where the coil's outlet is, Pa.
    pub coil_outlet_pressure: f64,
    /// Air entering the indoor coil, and its dry air in kg/s.
    pub indoor_air: (Air, f64),
    /// Air entering the outdoor coil, and its dry air in kg/s.
    pub outdoor_air: (Air, f64),
    /// Partial pressure of non-condensables, Pa.
    pub non_condensable_pressure: f64,
    /// Indoor airflow, m³/s, at the state of the supply air.
    pub indoor_airflow: f64,
    /// Supply air behind the fan, K.
    pub supply_dry_bulb: f64,
    /// Lift of a thermostatic valve's needle, 0 to 1.
    pub valve_lift: Option<f64>,
    /// Largest of the three balances' misses, relative.
    pub miss: f64,
}

/// A unit with its refrigerant and charge.
#[derive(Debug, Clone, Copy)]
pub struct Unit<'a> {
    /// The refrigerant's map.
    pub map: &'a RefrigerantMap,
    /// What it is made of.
    pub parts: Parts,
    /// Nameplate charge with its line set, kg.
    pub nameplate_charge: f64,
}

impl Unit<'_> {
    /// Where the unit settles.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for conditions, faults and parts outside their ranges; [`Error::NotAvailable`] where such a
    /// unit would not run, with one of the reasons of [`Stop`].
    pub fn solve(&self, conditions: &Conditions, faults: &Faults) -> Result<Steady, Error> {
        conditions.check()?;
        faults.check()?;
        self.parts.check()?;
        let found = match self.balance_from_many(false, conditions, faults) {
            Some(found) => found,
            None => self.approach(conditions, faults)?,
        };
        Self::running(&found).map_or(Ok(Steady { miss: found.2, ..found.0 }), |stop| Err(stop.error()))
    }

    /// What forbids a state in which all balances close.
    fn running((state, ..): &Found<Steady>) -> Option<Stop> {
        let ratio = state.discharge.pressure / state.compressor_inlet.pressure;
        let drop = state.metering_inlet.pressure - state.evaporator.inlet_pressure;
        if state.compressor_inlet.quality < WETTEST_SUCTION {
            Some(Stop::FloodedCompressor)
        } else if ratio < LEAST_RATIO || drop <= 0.0 {
            Some(Stop::NoLift)
        } else if state.compressor_inlet.pressure < LOWEST_SUCTION_PA {
            Some(Stop::LowPressure)
        } else if state.discharge.temperature > HOTTEST_DISCHARGE_K {
            Some(Stop::HotDischarge)
        } else {
            None
        }
    }

    /// Which limit a unit runs into that settles no further on the way to its conditions and faults, by the last state
    /// in which it did.
    fn limit(&self, state: &Steady) -> Stop {
        let (_, highest) = self.map.pressure_range();
        let (inlet, discharge) = (&state.compressor_inlet, &state.discharge);
        if discharge.pressure > 0.93 * highest {
            Stop::HighPressure
        } else if discharge.temperature > HOTTEST_DISCHARGE_K.min(self.map.hottest()) - 8.0 {
            Stop::HotDischarge
        } else if inlet.quality < WETTEST_SUCTION + 0.1 {
            Stop::FloodedCompressor
        } else if discharge.pressure / inlet.pressure < LEAST_RATIO + 0.15 {
            Stop::NoLift
        } else if inlet.pressure < 2.2 * LOWEST_SUCTION_PA {
            Stop::LowPressure
        } else {
            Stop::NoBalance
        }
    }

    fn balance(
        &self,
        start: Unknowns,
        thorough: bool,
        conditions: &Conditions,
        faults: &Faults,
    ) -> Option<Found<Steady>> {
        newton(start, thorough, |unknowns| self.misses(unknowns, conditions, faults, None)).ok().flatten()
    }

    fn guess(&self, conditions: &Conditions) -> Unknowns {
        let (lowest, highest) = self.map.pressure_range();
        let boiling = (conditions.return_wet_bulb - 11.0).clamp(255.0, 295.0);
        let low = self.map.dew_pressure(boiling).unwrap_or(2.0 * lowest);
        let hot = (conditions.outdoor_dry_bulb + 11.0).max(boiling + 12.0);
        let high = self.map.bubble_pressure(hot).unwrap_or(0.85 * highest);
        [math::ln(low), math::ln(high.min(0.95 * highest)), 0.8]
    }

    fn balance_from_many(&self, thorough: bool, conditions: &Conditions, faults: &Faults) -> Option<Found<Steady>> {
        let guess = self.guess(conditions);
        let starts = [
            [0.0, 0.0, 0.0],
            [-0.15, 0.1, 0.5],
            [0.1, -0.1, -0.5],
            [-0.3, 0.2, 1.0],
            [-0.4, 0.0, 1.5],
            [0.15, 0.2, -0.8],
            [0.1, 0.0, -2.5],
            [-0.8, -0.1, 2.5],
        ];
        let shifted = |shift: [f64; 3]| core::array::from_fn(|place| guess[place] + shift[place]);
        starts.into_iter().find_map(|shift| self.balance(shifted(shift), thorough, conditions, faults))
    }

    /// From the healthy unit at the rating point to the asked conditions and faults, in steps as large as they will go,
    /// each begun where the last two point to.
    fn approach(&self, conditions: &Conditions, faults: &Faults) -> Result<Found<Steady>, Error> {
        let between = |share: f64| (conditions.towards(&RATING_CONDITIONS, 1.0 - share), faults.scaled(share));
        let mut last =
            self.balance_from_many(true, &RATING_CONDITIONS, &Faults::default()).ok_or(Stop::NoBalance.error())?;
        let (mut reached, mut step) = (0.0, 0.25);
        let mut slope = [0.0; 3];
        while reached < 1.0 {
            let next = f64::min(reached + step, 1.0);
            let (on_the_way, fault) = between(next);
            let ahead = core::array::from_fn(|place| last.1[place] + (next - reached) * slope[place]);
            let found = self
                .balance(ahead, true, &on_the_way, &fault)
                .or_else(|| self.balance(last.1, true, &on_the_way, &fault));
            match found {
                Some(found) => {
                    slope = core::array::from_fn(|place| (found.1[place] - last.1[place]) / (next - reached));
                    (reached, last) = (next, found);
                    step *= 1.6;
                }
                None => step *= 0.4,
            }
            if step < SHORTEST_STEP {
                return Err(self.limit(&last.0).error());
            }
        }
        Ok(last)
    }
}
