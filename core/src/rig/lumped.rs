//! The rig's second condenser: one effectiveness for the whole coil.

use super::coil::{Coil, Condensed, liquid_capacity};
use super::map::RefrigerantMap;
use super::structure::Streams;
use crate::error::Error;

/// Lets hot gas condense in a coil of one effectiveness: all heat down to the bubble point passes at the condensing
/// temperature, whatever part of the coil is left is a pool of liquid of one temperature.
pub(super) fn condense_lumped(coil: &Coil, map: &RefrigerantMap, streams: &Streams) -> Result<Condensed, Error> {
    let Streams { pressure, enthalpy, mass_flow, air, dry_air, void, metal } = *streams;
    let drop = coil.pressure_drop(mass_flow, &map.saturation(pressure)?);
    let saturation = map.saturation(pressure - 0.5 * drop)?;
    let rate = dry_air * air.heat_capacity();
    let reach = coil.reach(mass_flow, dry_air, rate);
    let latent = saturation.vapor_enthalpy - saturation.liquid_enthalpy;
    let quality = ((enthalpy - saturation.liquid_enthalpy) / latent).clamp(0.0, 1.0);
    let passes = reach.two_phase * (saturation.mean_temperature(0.0, quality) - air.temperature) + metal;
    let wanted = mass_flow * (enthalpy - saturation.liquid_enthalpy);
    let condensing = if passes > 0.0 { wanted / passes } else { f64::INFINITY };

    let (out, share, density) = if condensing >= 1.0 {
        let out = enthalpy - passes / mass_flow;
        let end = ((out - saturation.liquid_enthalpy) / latent).clamp(0.0, quality);
        (out, 1.0, void.mean_density(&saturation, end, quality))
    } else {
        let left = 1.0 - condensing;
        let ahead = saturation.bubble_temperature - air.temperature;
        let liquid = mass_flow * liquid_capacity(map, &saturation, ahead)?;
        let transfer = left * reach.single_phase / liquid;
        // A well-mixed pool: it gives off heat at the temperature with which it leaves.
        let cooled = ahead * transfer / (1.0 + transfer);
        let out = saturation.liquid_enthalpy - liquid * cooled / mass_flow;
        let pool = map.at_enthalpy(saturation.pressure, out)?.density;
        (out, condensing, condensing * void.mean_density(&saturation, 0.0, quality) + left * pool)
    };
    let heat = mass_flow * (enthalpy - out);
    Ok(Condensed {
        heat,
        enthalpy: out,
        pressure: pressure - drop,
        air_temperature: air.temperature + (heat - share * metal) / rate,
        surface_temperature: saturation.middle_temperature,
        shares: [0.0, share, 1.0 - share],
        charge: coil.volume * density,
    })
}
