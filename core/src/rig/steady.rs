//! The steady state: suction pressure, discharge pressure and suction enthalpy at which the metering device passes what
//! the compressor draws, the evaporator leaves what the compressor takes, and the parts hold the charge that is there.

use super::coil::{Condensed, Evaporated};
use super::design::RATING_CONDITIONS;
use super::map::{Point, RefrigerantMap};
use super::moist::Air;
use super::newton::{Found, Unknowns, settle};
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
/// More vapour than this before the metering device is beyond what the laws of the devices were made for.
const MOST_FLASH_GAS: f64 = 0.35;
/// Share of the condensing coil that is liquid when it is called full: above, a little more charge lifts the pressure
/// without end.
const FULL_CONDENSER: f64 = 0.6;

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

/// What protects a unit looks at.
#[derive(Debug, Clone, Copy)]
pub(super) struct Extremes {
    pub inlet: Point,
    pub discharge: Point,
    /// Pressure drop over the metering device, Pa.
    pub metering_drop: f64,
    /// Vapour's share before it.
    pub flash_gas: f64,
    /// Share of the condensing coil with liquid only.
    pub liquid_share: f64,
}

impl Extremes {
    fn ratio(&self) -> f64 {
        self.discharge.pressure / self.inlet.pressure
    }
}

impl Steady {
    fn extremes(&self) -> Extremes {
        Extremes {
            inlet: self.compressor_inlet,
            discharge: self.discharge,
            metering_drop: self.metering_inlet.pressure - self.evaporator.inlet_pressure,
            flash_gas: self.metering_inlet.quality,
            liquid_share: self.condenser.shares.last().copied().unwrap_or_default(),
        }
    }
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
        let between = |share: f64| (conditions.towards(&RATING_CONDITIONS, 1.0 - share), faults.scaled(share));
        let settled = settle(
            |share| self.guess(&between(share).0),
            |share, unknowns| {
                let (on_the_way, fault) = between(share);
                self.misses(unknowns, &on_the_way, &fault, None)
            },
        );
        let within = |found: &Found<Steady>| self.limit(&found.0.extremes());
        let (state, _, miss) = settled.map_err(|last| last.as_ref().map_or(Stop::NoBalance, within).error())?;
        Self::running(&state.extremes()).map_or(Ok(Steady { miss, ..state }), |stop| Err(stop.error()))
    }

    /// What forbids a state in which all balances close.
    pub(super) fn running(state: &Extremes) -> Option<Stop> {
        if state.inlet.quality < WETTEST_SUCTION {
            Some(Stop::FloodedCompressor)
        } else if state.ratio() < LEAST_RATIO || state.metering_drop <= 0.0 {
            Some(Stop::NoLift)
        } else if state.flash_gas > MOST_FLASH_GAS {
            Some(Stop::NoLiquid)
        } else if state.inlet.pressure < LOWEST_SUCTION_PA {
            Some(Stop::LowPressure)
        } else if state.discharge.temperature > HOTTEST_DISCHARGE_K {
            Some(Stop::HotDischarge)
        } else {
            None
        }
    }

    /// Which limit a unit runs into that settles no further on the way to its conditions and faults, by the last state
    /// in which it did.
    pub(super) fn limit(&self, state: &Extremes) -> Stop {
        let (_, highest) = self.map.pressure_range();
        let hottest = HOTTEST_DISCHARGE_K.min(self.map.hottest());
        if state.discharge.pressure > 0.93 * highest || state.liquid_share > FULL_CONDENSER {
            Stop::HighPressure
        } else if state.discharge.temperature > hottest - 8.0 {
            Stop::HotDischarge
        } else if state.inlet.quality < WETTEST_SUCTION + 0.1 {
            Stop::FloodedCompressor
        } else if state.ratio() < LEAST_RATIO + 0.15 {
            Stop::NoLift
        } else if state.flash_gas > 0.7 * MOST_FLASH_GAS {
            Stop::NoLiquid
        } else if state.inlet.pressure < 2.2 * LOWEST_SUCTION_PA {
            Stop::LowPressure
        } else {
            Stop::NoBalance
        }
    }

    fn guess(&self, conditions: &Conditions) -> Unknowns {
        let (lowest, highest) = self.map.pressure_range();
        let boiling = (conditions.return_wet_bulb - 11.0).clamp(255.0, 295.0);
        let low = self.map.dew_pressure(boiling).unwrap_or(2.0 * lowest);
        let hot = (conditions.outdoor_dry_bulb + 11.0).max(boiling + 12.0);
        let high = self.map.bubble_pressure(hot).unwrap_or(0.85 * highest);
        [math::ln(low), math::ln(high.min(0.95 * highest)), 0.8]
    }
}
