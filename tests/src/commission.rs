//! Units charged as an installer leaves them: trimmed to the maker's target on the day, not to the label's mass alone.

use satline::Error;
use satline::rig::{AnyMetering, Faults, RATING_CONDITIONS, Steady, Unit};

/// Superheat (fixed orifice) or subcooling (valve) at the outdoor unit's ports, K: what the charge is judged by.
fn sign(unit: &Unit, state: &Steady) -> Result<f64, Error> {
    if matches!(unit.parts.metering, AnyMetering::Valve(_)) {
        let bubble = unit.map.saturation(state.liquid_port.pressure)?.bubble_temperature;
        Ok(bubble - state.liquid_port.temperature)
    } else {
        let dew = unit.map.saturation(state.vapor_port.pressure)?.dew_temperature;
        // More charge, less superheat.
        Ok(dew - state.vapor_port.temperature)
    }
}

/// Least and most charge that an installer arrives at, by that of the unit as designed.
const SHARES: (f64, f64) = (0.75, 1.35);

/// Least subcooling at the rating point that a maker designs, K. A few designs of the rig have an orifice, tubes and a lift
/// with which no liquid arrives subcooled: not a product.
pub const LEAST_SUBCOOLING_K: f64 = 2.0;

/// Subcooling at the liquid port of the unit as designed, at the rating point, K; `None` for a design that has less than
/// [`LEAST_SUBCOOLING_K`], which nobody would sell.
///
/// # Errors
/// Those of [`Unit::solve`].
pub fn rated_subcooling(designed: &Unit) -> Result<Option<f64>, Error> {
    let state = designed.solve(&RATING_CONDITIONS, &Faults::default())?;
    let bubble = designed.map.saturation(state.liquid_port.pressure)?.bubble_temperature;
    let subcooling = bubble - state.liquid_port.temperature;
    Ok((subcooling >= LEAST_SUBCOOLING_K).then_some(subcooling))
}

/// The unit with the charge at which, at the rating point, it shows what the designed unit shows there: subcooling with a
/// valve, superheat with a fixed orifice. That charge is then its nameplate's.
///
/// Units differ from their design; one that held the design's mass to the gram could stand there with no subcooling at
/// all, and nobody would leave it so.
///
/// # Errors
/// Those of [`Unit::solve`], where the unit does not run even so.
pub fn commissioned<'a>(unit: &Unit<'a>, designed: &Unit<'a>) -> Result<Unit<'a>, Error> {
    let shown = |unit: &Unit| sign(unit, &unit.solve(&RATING_CONDITIONS, &Faults::default())?);
    let target = shown(designed)?;
    let (mut low, mut high) = SHARES;
    let with = |share: f64| Unit { nameplate_charge: share * designed.nameplate_charge, ..*unit };
    for _ in 0..12 {
        let middle = 0.5 * (low + high);
        // A unit that does not settle so full or so empty says on which side it is by that.
        let more = match shown(&with(middle)) {
            Ok(found) => found < target,
            Err(_) => middle < 1.0,
        };
        if more {
            low = middle;
        } else {
            high = middle;
        }
    }
    let charged = with(0.5 * (low + high));
    shown(&charged).map(|_| charged)
}
