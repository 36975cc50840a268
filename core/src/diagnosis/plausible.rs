//! Pressures and probes that a running unit with open valves and seated hoses cannot show.

use super::finding::Reason;
use super::judge::kelvin;
use super::limits::{
    CONTRADICTION_STANDARDS, DISCHARGE_DROP_HIGHEST_F, GAUGE_AT_AIR_PA, HIGH_OVER_LOW_LEAST, VALVE_DROP_SHARE,
    WET_BULB_DEPRESSION_HIGHEST_K,
};
use super::uncertainty::standard;
use super::values::Computed;
use crate::charge::{Contradiction, contradiction};
use crate::quantity::{Atmosphere, PASCALS_PER_PSI};
use crate::reading::{Field, Reading};
use crate::uncertain::root_of_squares;

/// What is wrong with the pressures, if anything.
pub(super) fn pressures(reading: &Reading) -> Option<Reason> {
    let pascals = |field| reading.get(field);
    let (suction, liquid) = (pascals(Field::SuctionPressure), pascals(Field::LiquidPressure));
    let discharge = pascals(Field::DischargePressure);
    let air = reading.ambient_pressure.unwrap_or(Atmosphere::STANDARD).pascals();
    let at_air = |pressure: Option<f64>| pressure.is_some_and(|pressure| (pressure - air).abs() < GAUGE_AT_AIR_PA);
    // Some refrigerants really evaporate near the pressure of the air.
    let boils_there = reading.refrigerant.is_none_or(|curves| {
        crate::quantity::Temperature::from_kelvin(273.15)
            .and_then(|freezing| curves.dew_pressure(freezing))
            .is_ok_and(|pressure| pressure.pascals() < 2.5 * air)
    });
    if at_air(liquid) || at_air(discharge) || (at_air(suction) && !boils_there) {
        return Some(Reason::HoseNotSeated);
    }
    // A little more on the suction side is the gauges'; much more is a swap.
    if let (Some(low), Some(high)) = (suction, liquid.or(discharge)) {
        if high < HIGH_OVER_LOW_LEAST * low && low < HIGH_OVER_LOW_LEAST * high {
            return Some(Reason::EqualPressures);
        }
    }
    if contradiction(reading) == Some(Contradiction::Pressures) {
        return Some(Reason::PressuresContradict);
    }
    if let (Some(liquid), Some(discharge)) = (liquid, discharge) {
        let gauges =
            root_of_squares([Field::LiquidPressure, Field::DischargePressure].map(|one| standard(reading, one)));
        if discharge - liquid > VALVE_DROP_SHARE * liquid + CONTRADICTION_STANDARDS * gauges {
            return Some(Reason::ServiceValvePartClosed);
        }
    }
    suction.filter(|suction| *suction < air - PASCALS_PER_PSI).map(|_| Reason::SuctionBelowAtmosphere)
}

/// Whether the return wet bulb is one at all.
pub(super) fn wet_bulb(reading: &Reading) -> Option<Reason> {
    let depression = match (reading.return_dry_bulb, reading.return_wet_bulb) {
        (Some(dry), Some(wet)) => Some(dry.kelvin() - wet.kelvin()),
        _ => None,
    };
    (contradiction(reading) == Some(Contradiction::AirTemperatures)
        || depression.is_some_and(|depression| depression > WET_BULB_DEPRESSION_HIGHEST_K))
    .then_some(Reason::AirTemperaturesContradict)
}

/// Whether the discharge line is colder than condensing.
pub(super) fn discharge_line(reading: &Reading, computed: &Computed) -> Option<Reason> {
    let (line, bubble) = (reading.discharge_line_temperature?, computed.values.bubble_temperature?);
    let probe = root_of_squares([standard(reading, Field::DischargeLineTemperature), bubble.standard_uncertainty]);
    let allowance = kelvin(DISCHARGE_DROP_HIGHEST_F) + CONTRADICTION_STANDARDS * probe;
    (line.kelvin() < bubble.value - allowance).then_some(Reason::DischargeLineContradicts)
}
