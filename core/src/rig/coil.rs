//! Coils with moving boundaries: each zone of the refrigerant's way takes tube and air in proportion to its share.
//!
//! Along a zone of single-phase refrigerant each slice gives its air the share 1 − exp(−NTU) of the difference, so the
//! refrigerant's distance from the air decays exponentially along the tube, and a zone's share of the coil has a closed
//! form. The share of the two-phase zone is its heat over what the whole coil would pass at its mean temperature.

use super::map::{RefrigerantMap, Saturation};
use super::moist::{Air, DRY, LATENT, VAPOR, saturated_enthalpy, saturated_temperature};
use super::void::VoidFraction;
use crate::error::Error;
use crate::math;

/// What a coil is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coil {
    /// Air-side conductance at the design airflow, W/K.
    pub air_conductance: f64,
    /// Refrigerant-side conductance of evaporating or condensing refrigerant at the design mass flow, W/K.
    pub two_phase_conductance: f64,
    /// Refrigerant-side conductance of a single phase at the design mass flow, W/K.
    pub single_phase_conductance: f64,
    /// Dry air at the design point, kg/s.
    pub design_air: f64,
    /// Mass flow at the design point, kg/s.
    pub design_flow: f64,
    /// Inside volume, m³.
    pub volume: f64,
    /// Pressure drop: times mass flow squared and the mean specific volume of what flows (of a condenser, the vapour's
    /// that enters; of an evaporator, halfway from its inlet to dew), 1/m⁴.
    pub drop: f64,
}

/// How conductances follow the flows (turbulent tubes and louvred fins, common practice).
const AIR_EXPONENT: f64 = 0.5;
const SINGLE_PHASE_EXPONENT: f64 = 0.8;
const TWO_PHASE_EXPONENT: f64 = 0.4;

/// How round the corner is between metal that takes heat from gas and metal that does not, W.
const METAL_CORNER_W: f64 = 200.0;

/// What one kelvin between refrigerant and entering air is worth to the air of the whole coil, W/K.
pub(super) struct Reach {
    pub(super) two_phase: f64,
    pub(super) single_phase: f64,
    /// Air-side NTU alone, at the design fin temperature.
    air_transfer: f64,
    two_phase_refrigerant: f64,
    air: f64,
}

impl Coil {
    pub(super) fn reach(&self, mass_flow: f64, dry_air: f64, capacity_rate: f64) -> Reach {
        let power = |ratio: f64, exponent: f64| math::pow(ratio.max(1e-6), exponent);
        let air = self.air_conductance * power(dry_air / self.design_air, AIR_EXPONENT);
        let flow = mass_flow / self.design_flow;
        let refrigerant = self.two_phase_conductance * power(flow, TWO_PHASE_EXPONENT);
        let single = self.single_phase_conductance * power(flow, SINGLE_PHASE_EXPONENT);
        let reach = |inside: f64| capacity_rate * (1.0 - math::exp(-1.0 / (1.0 / air + 1.0 / inside) / capacity_rate));
        Reach {
            two_phase: reach(refrigerant),
            single_phase: reach(single),
            air_transfer: air / capacity_rate,
            two_phase_refrigerant: refrigerant,
            air,
        }
    }

    /// Pressure drop of a condenser.
    pub(super) fn pressure_drop(&self, mass_flow: f64, saturation: &Saturation) -> f64 {
        self.drop * mass_flow * mass_flow / saturation.vapor_density
    }

    /// Pressure drop of an evaporator that refrigerant enters at a share of the way from bubble to dew: the more flash
    /// gas, the more.
    fn evaporating_drop(&self, mass_flow: f64, saturation: &Saturation, share: f64) -> f64 {
        self.drop * mass_flow * mass_flow * mean_volume(saturation, share)
    }
}

/// Specific volume of both phases without slip, halfway to dew from a share of the way, m³/kg.
pub(super) fn mean_volume(saturation: &Saturation, share: f64) -> f64 {
    let vapor = 0.5 * (1.0 + saturation.mass_quality(share.clamp(0.0, 1.0)));
    vapor / saturation.vapor_density + (1.0 - vapor) / saturation.liquid_density
}

/// What leaves a condenser.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Condensed {
    /// Heat given to the air, W.
    pub heat: f64,
    /// Enthalpy at the outlet, J/kg.
    pub enthalpy: f64,
    /// Pressure at the outlet, Pa.
    pub pressure: f64,
    /// Temperature of the leaving air, K.
    pub air_temperature: f64,
    /// Temperature of the condensing refrigerant in the middle of its zone, K.
    pub surface_temperature: f64,
    /// Shares of the coil that desuperheat, condense and subcool.
    pub shares: [f64; 3],
    /// Refrigerant inside, kg.
    pub charge: f64,
}

/// Lets hot gas at a pressure and enthalpy condense against air, while the coil's metal takes heat too, in W if all of it
/// held condensing refrigerant (0 at rest). Metal around liquid follows the air; metal around hot gas takes as much as
/// elsewhere, and gives nothing back worth mentioning, as gas below the temperature of its metal condenses.
///
/// # Errors
/// States outside the map.
pub(super) fn condense(
    coil: &Coil,
    map: &RefrigerantMap,
    void: VoidFraction,
    (pressure, enthalpy): (f64, f64),
    mass_flow: f64,
    (air, dry_air): (&Air, f64),
    metal: f64,
) -> Result<Condensed, Error> {
    let inlet = map.saturation(pressure)?;
    let drop = coil.pressure_drop(mass_flow, &inlet);
    let saturation = map.saturation(pressure - 0.5 * drop)?;
    let rate = dry_air * air.heat_capacity();
    let reach = coil.reach(mass_flow, dry_air, rate);
    let ambient = air.temperature;

    // A rounded corner at no heat, so that the balances have none there.
    let gas_metal = 0.5 * (metal + math::sqrt(metal * metal + METAL_CORNER_W * METAL_CORNER_W) - METAL_CORNER_W);
    // Desuperheating, with the mean heat capacity of the gas.
    let (mut left, mut desuperheat, mut gas_charge) = (1.0, 0.0, 0.0);
    let mut entering = enthalpy;
    if enthalpy > saturation.vapor_enthalpy {
        let hot = map.vapor_at_enthalpy(saturation.pressure, enthalpy)?;
        let span = (hot.temperature - saturation.dew_temperature).max(1e-9);
        let gas = mass_flow * (enthalpy - saturation.vapor_enthalpy) / span;
        // Where metal takes heat as well, gas cools as against colder air.
        let sink = ambient - gas_metal / reach.single_phase;
        let ends = (hot.temperature - sink, saturation.dew_temperature - sink);
        // Against air warmer than the dew point the gas never reaches it.
        desuperheat = if ends.1 > 0.0 { gas / reach.single_phase * math::ln(ends.0 / ends.1) } else { f64::INFINITY };
        entering = saturation.vapor_enthalpy;
        let mean = 0.5 * (hot.density + saturation.vapor_density);
        if desuperheat >= 1.0 {
            let cooled = sink + ends.0 * math::exp(-reach.single_phase / gas);
            let heat = gas * (hot.temperature - cooled);
            return Ok(Condensed {
                heat,
                enthalpy: enthalpy - heat / mass_flow,
                pressure: pressure - drop,
                air_temperature: ambient + (heat - gas_metal) / rate,
                surface_temperature: saturation.middle_temperature,
                shares: [1.0, 0.0, 0.0],
                charge: coil.volume * mean,
            });
        }
        left -= desuperheat;
        gas_charge = desuperheat * mean;
    }

    // Condensing.
    let latent = saturation.vapor_enthalpy - saturation.liquid_enthalpy;
    let quality = ((entering - saturation.liquid_enthalpy) / latent).clamp(0.0, 1.0);
    let passes = reach.two_phase * (saturation.mean_temperature(0.0, quality) - ambient) + metal;
    let wanted = mass_flow * quality * latent;
    let condensing = if passes > 0.0 { wanted / passes } else { f64::INFINITY };
    if condensing >= left {
        let heat = left * passes;
        let end = (quality - heat / (mass_flow * latent)).max(0.0);
        let density = void.mean_density(&saturation, end, quality);
        let out = entering - heat / mass_flow;
        return Ok(Condensed {
            heat: mass_flow * (enthalpy - out),
            enthalpy: out,
            pressure: pressure - drop,
            air_temperature: ambient + (mass_flow * (enthalpy - out) - desuperheat * gas_metal - left * metal) / rate,
            surface_temperature: saturation.middle_temperature,
            shares: [desuperheat, left, 0.0],
            charge: coil.volume * (gas_charge + left * density),
        });
    }
    left -= condensing;

    // Subcooling, with the mean heat capacity of the liquid down to the air's temperature: that of the bubble point alone
    // would cool hot liquid below the air.
    let ahead = saturation.bubble_temperature - ambient;
    let liquid = mass_flow * liquid_capacity(map, &saturation, ahead)?;
    let cooled = ahead * (1.0 - math::exp(-left * reach.single_phase / liquid));
    let out = saturation.liquid_enthalpy - liquid * cooled / mass_flow;
    let cold = map.at_enthalpy(saturation.pressure, out)?;
    let density = void.mean_density(&saturation, 0.0, quality);
    let charge = gas_charge + condensing * density + left * 0.5 * (saturation.liquid_density + cold.density);
    let heat = mass_flow * (enthalpy - out);
    Ok(Condensed {
        heat,
        enthalpy: out,
        pressure: pressure - drop,
        air_temperature: ambient + (heat - desuperheat * gas_metal - condensing * metal) / rate,
        surface_temperature: saturation.middle_temperature,
        shares: [desuperheat, condensing, left],
        charge: coil.volume * charge,
    })
}

/// What leaves an evaporator.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evaporated {
    /// Heat taken from the air, W.
    pub heat: f64,
    /// The part of it that cools the air rather than dries it, W.
    pub sensible_heat: f64,
    /// Enthalpy at the outlet, J/kg.
    pub enthalpy: f64,
    /// Temperature at the outlet, K.
    pub temperature: f64,
    /// Superheat at the outlet by its enthalpy, K; negative where it is wet.
    pub superheat: f64,
    /// Pressure at the inlet, Pa.
    pub inlet_pressure: f64,
    /// The leaving air.
    pub air: Air,
    /// Shares of the coil with both phases and with vapour alone.
    pub shares: [f64; 2],
    /// Refrigerant inside, kg.
    pub charge: f64,
    /// Mean temperature of the surface that the air meets, K: ice grows where it is below 0 °C and the air is moist.
    pub surface_temperature: f64,
}

/// Lets refrigerant of an enthalpy evaporate, leaving at a pressure, against moist air.
///
/// # Errors
/// States outside the map.
pub(super) fn evaporate(
    coil: &Coil,
    map: &RefrigerantMap,
    void: VoidFraction,
    (outlet_pressure, enthalpy): (f64, f64),
    mass_flow: f64,
    air: &Air,
    dry_air: f64,
) -> Result<Evaporated, Error> {
    evaporate_cooling(coil, map, void, (outlet_pressure, enthalpy), mass_flow, (air, dry_air), 0.0)
}

/// The same while the coil's metal gives heat too, in W if all of it held boiling refrigerant: metal elsewhere follows
/// the air. Heat and capacity are the air's.
pub(super) fn evaporate_cooling(
    coil: &Coil,
    map: &RefrigerantMap,
    void: VoidFraction,
    (outlet_pressure, enthalpy): (f64, f64),
    mass_flow: f64,
    (air, dry_air): (&Air, f64),
    metal: f64,
) -> Result<Evaporated, Error> {
    let outlet = map.saturation(outlet_pressure)?;
    let flashed = (enthalpy - outlet.liquid_enthalpy) / (outlet.vapor_enthalpy - outlet.liquid_enthalpy);
    let drop = coil.evaporating_drop(mass_flow, &outlet, flashed);
    let saturation = map.saturation(outlet_pressure + 0.5 * drop)?;
    let capacity = air.heat_capacity();
    let rate = dry_air * capacity;
    let reach = coil.reach(mass_flow, dry_air, rate);
    let latent = saturation.vapor_enthalpy - saturation.liquid_enthalpy;
    let quality = (enthalpy - saturation.liquid_enthalpy) / latent;
    let boiling = saturation.mean_temperature(quality.clamp(0.0, 1.0), 1.0);

    // What the whole coil would pass if it boiled throughout: dry, or wet by enthalpy, whichever is more.
    let dry = reach.two_phase * (air.temperature - boiling);
    let film = saturated_enthalpy(boiling, air.pressure);
    let dew = air.dew_point();
    // Slope of the saturated enthalpy from the refrigerant to where the air begins to give water.
    let slope = if dew > boiling + 0.1 {
        (saturated_enthalpy(dew, air.pressure) - film) / (dew - boiling)
    } else {
        saturated_enthalpy(boiling + 1.0, air.pressure) - film
    };
    let transfer = 1.0 / (capacity / reach.air + slope / reach.two_phase_refrigerant);
    let wet = dry_air * (1.0 - math::exp(-transfer / dry_air)) * (air.enthalpy() - film);
    let passes = dry.max(wet) + metal;
    let is_wet = wet > dry;

    let wanted = mass_flow * (saturation.vapor_enthalpy - enthalpy);
    let share = if wanted <= 0.0 {
        0.0
    } else if passes > 0.0 {
        wanted / passes
    } else {
        f64::INFINITY
    };
    let share = share.min(1.0);

    // The air over the boiling part.
    let (moist_humidity, surface) = if is_wet {
        let leaving = air.enthalpy() - wet / dry_air;
        let past = math::exp(-reach.air_transfer);
        let surface_enthalpy = air.enthalpy() - (air.enthalpy() - leaving) / (1.0 - past);
        let surface = saturated_temperature(surface_enthalpy, air.pressure, boiling + 3.0);
        let temperature = surface + (air.temperature - surface) * past;
        let celsius = temperature - 273.15;
        let humidity = ((leaving - DRY * celsius) / (LATENT + VAPOR * celsius)).min(air.humidity_ratio);
        (humidity, surface)
    } else {
        let past = math::exp(-reach.air_transfer);
        let leaving = air.temperature - dry / rate;
        (air.humidity_ratio, air.temperature - (air.temperature - leaving) / (1.0 - past))
    };

    let mut out = enthalpy + share * passes / mass_flow;
    let mut vapor_charge = 0.0;
    let end = if share < 1.0 {
        // What is left of the coil heats vapour; it stays dry, as its surface is nearly as warm as the air.
        let start = enthalpy.max(saturation.vapor_enthalpy);
        let cold = map.vapor_at_enthalpy(outlet_pressure, start.max(outlet.vapor_enthalpy))?;
        let warm = map.vapor_at_temperature(outlet_pressure, cold.temperature + 8.0)?;
        let gas = mass_flow * (warm.enthalpy - cold.enthalpy) / 8.0;
        let left = 1.0 - share;
        let heated = (air.temperature - cold.temperature) * (1.0 - math::exp(-left * reach.single_phase / gas));
        let hot = map.vapor_at_temperature(outlet_pressure, cold.temperature + heated.max(0.0))?;
        out = hot.enthalpy;
        vapor_charge = left * 0.5 * (cold.density + hot.density);
        1.0
    } else {
        (out - saturation.liquid_enthalpy) / latent
    };
    let boiled =
        if share > 0.0 { share * void.mean_density(&saturation, quality.clamp(0.0, 1.0), end.min(1.0)) } else { 0.0 };

    // The air of both parts, mixed.
    let heat = mass_flow * (out - enthalpy) - share * metal;
    let dried = share * (air.humidity_ratio - moist_humidity);
    // Enthalpy balance decides the temperature, so that the air loses just what the refrigerant takes.
    let humidity_ratio = air.humidity_ratio - dried;
    let leaving = air.enthalpy() - heat / dry_air;
    let leaving_air = Air::from_enthalpy(leaving, humidity_ratio, air.pressure);
    let (temperature, superheat) = outlet_superheat(map, &outlet, out)?;
    Ok(Evaporated {
        heat,
        sensible_heat: heat - dry_air * dried * LATENT,
        enthalpy: out,
        temperature,
        superheat,
        inlet_pressure: outlet_pressure + drop,
        air: leaving_air,
        shares: [share, 1.0 - share],
        charge: coil.volume * (boiled + vapor_charge),
        surface_temperature: surface,
    })
}

/// Temperature in K, and superheat in K by the enthalpy, of what leaves an evaporator; negative where it is wet.
pub(super) fn outlet_superheat(map: &RefrigerantMap, outlet: &Saturation, enthalpy: f64) -> Result<(f64, f64), Error> {
    let point = map.at_enthalpy(outlet.pressure, enthalpy)?;
    if point.quality > 1.0 {
        return Ok((point.temperature, point.temperature - outlet.dew_temperature));
    }
    let warm = map.vapor_at_temperature(outlet.pressure, outlet.dew_temperature + 5.0)?;
    let superheat = (enthalpy - outlet.vapor_enthalpy) * 5.0 / (warm.enthalpy - outlet.vapor_enthalpy);
    Ok((point.temperature, superheat))
}

/// Mean heat capacity, J/(kg·K), of liquid that could cool by so many kelvins from its bubble point.
pub(super) fn liquid_capacity(map: &RefrigerantMap, saturation: &Saturation, ahead: f64) -> Result<f64, Error> {
    let span = ahead.clamp(1.0, 60.0);
    let below = map.liquid_at_temperature(saturation.pressure, saturation.bubble_temperature - span)?;
    Ok((saturation.liquid_enthalpy - below.enthalpy) / span)
}
