//! Compressors: mass flow, power and the state of the discharge gas.

use super::map::{Point, RefrigerantMap};
use crate::error::Error;
use crate::math;
use crate::quantity::fahrenheit_from_kelvin;

/// What a compressor does at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compression {
    /// kg/s.
    pub mass_flow: f64,
    /// Electric power, W.
    pub power: f64,
    /// Enthalpy of the discharge gas, J/kg.
    pub discharge_enthalpy: f64,
}

/// A compressor: from the state at its inlet and the pressure that it works against.
pub trait Compressor {
    /// Mass flow, power and discharge enthalpy.
    ///
    /// # Errors
    /// States outside the map.
    fn run(&self, map: &RefrigerantMap, suction: &Point, discharge_pressure: f64) -> Result<Compression, Error>;
}

/// Enthalpy rise of vapour compressed without loss, J/kg. Of wet vapour, that of the dry vapour in proportion to the
/// volume: liquid takes next to no work.
fn isentropic_rise(map: &RefrigerantMap, suction: &Point, discharge_pressure: f64) -> Result<f64, Error> {
    let rise = |from: &Point| -> Result<f64, Error> {
        let entropy = from.entropy.unwrap_or_default();
        let high = map.saturation(discharge_pressure)?;
        let dew = map.vapor_at_enthalpy(discharge_pressure, high.vapor_enthalpy)?;
        let lacks = dew.entropy.unwrap_or_default() - entropy;
        if lacks > 0.0 {
            // Gas of large molecules, such as R-1234yf, becomes wet as it is compressed: there dh is T ds.
            return Ok(high.vapor_enthalpy - high.dew_temperature * lacks - from.enthalpy);
        }
        Ok(map.vapor_at_entropy(discharge_pressure, entropy)?.enthalpy - from.enthalpy)
    };
    // Only vapour has an entropy here: by the quality alone rounding would decide at the dew point.
    if suction.entropy.is_some() {
        return rise(suction);
    }
    let dry = map.vapor_at_enthalpy(suction.pressure, map.saturation(suction.pressure)?.vapor_enthalpy)?;
    Ok(rise(&dry)? * dry.density / suction.density)
}

/// Ten coefficients each for mass flow and power in the suction and discharge dew temperatures, in the form of AHRI 540:
/// 1, S, D, S², SD, D², S³, DS², SD², D³ with S and D in °F, mass flow in lb/h and power in W.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CompressorMap {
    /// Of the mass flow, lb/h.
    pub mass_flow: [f64; 10],
    /// Of the power, W.
    pub power: [f64; 10],
    /// Superheat of the suction gas for which the map was made, K.
    pub rating_superheat_k: f64,
    /// Size against the mapped compressor's: 1 for itself.
    pub scale: f64,
    /// Share of the power that stays in the gas.
    pub heat_kept: f64,
}

/// How much of the change of suction density reaches the mass flow where the gas is warmer or cooler than rated.
const DENSITY_SHARE: f64 = 0.75;

fn polynomial(coefficients: &[f64; 10], s: f64, d: f64) -> f64 {
    let powers = [1.0, s, d, s * s, s * d, d * d, s * s * s, d * s * s, s * d * d, d * d * d];
    coefficients.iter().zip(powers).map(|(coefficient, power)| coefficient * power).sum()
}

impl Compressor for CompressorMap {
    fn run(&self, map: &RefrigerantMap, suction: &Point, discharge_pressure: f64) -> Result<Compression, Error> {
        let (low, high) = (map.saturation(suction.pressure)?, map.saturation(discharge_pressure)?);
        let (s, d) = (fahrenheit_from_kelvin(low.dew_temperature), fahrenheit_from_kelvin(high.dew_temperature));
        let rated = map.vapor_at_temperature(suction.pressure, low.dew_temperature + self.rating_superheat_k)?;
        let share = 1.0 + DENSITY_SHARE * (suction.density / rated.density - 1.0);
        let mapped = polynomial(&self.mass_flow, s, d) * crate::quantity::KG_PER_POUND / 3600.0 * self.scale;
        let mass_flow = mapped * share;
        let work =
            isentropic_rise(map, suction, discharge_pressure)? / isentropic_rise(map, &rated, discharge_pressure)?;
        let power = polynomial(&self.power, s, d) * self.scale * share * work;
        Ok(Compression { mass_flow, power, discharge_enthalpy: suction.enthalpy + self.heat_kept * power / mass_flow })
    }
}

/// How the overall efficiency depends on the pressure ratio.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Efficiency {
    /// A parabola, for the range in which it was measured.
    Parabola([f64; 3]),
    /// A peak at a pressure ratio, falling off to both sides: peak / cosh(width · ln(ratio / best)).
    Peak {
        /// Highest efficiency.
        peak: f64,
        /// Pressure ratio at the peak.
        best_ratio: f64,
        /// How fast it falls off.
        width: f64,
    },
}

impl Efficiency {
    fn at(self, ratio: f64) -> f64 {
        match self {
            Self::Parabola([a, b, c]) => a + ratio * (b + c * ratio),
            Self::Peak { peak, best_ratio, width } => {
                let away = math::exp(width * math::ln(ratio / best_ratio));
                2.0 * peak / (away + 1.0 / away)
            }
        }
    }
}

/// A compressor by its volume flow and overall efficiency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EfficiencyCompressor {
    /// Volume drawn in at a pressure ratio of 0, m³/s, and its loss with each unit of the ratio.
    pub volume_flow: [f64; 2],
    /// Isentropic work over electric work.
    pub efficiency: Efficiency,
    /// Share of the power that stays in the gas.
    pub heat_kept: f64,
}

impl Compressor for EfficiencyCompressor {
    fn run(&self, map: &RefrigerantMap, suction: &Point, discharge_pressure: f64) -> Result<Compression, Error> {
        let ratio = discharge_pressure / suction.pressure;
        let [whole, loss] = self.volume_flow;
        let mass_flow = suction.density * (whole - loss * ratio);
        let power = mass_flow * isentropic_rise(map, suction, discharge_pressure)? / self.efficiency.at(ratio);
        Ok(Compression { mass_flow, power, discharge_enthalpy: suction.enthalpy + self.heat_kept * power / mass_flow })
    }
}

/// Valves or scrolls that leak: part of what is drawn in has been compressed before, and heats the suction gas.
#[derive(Debug, Clone, Copy)]
pub(super) struct Leaking<'a> {
    pub sound: &'a dyn Compressor,
    /// Share of the flow that leaks back.
    pub share: f64,
}

impl core::fmt::Debug for dyn Compressor + '_ {
    fn fmt(&self, formatter: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        formatter.write_str("Compressor")
    }
}

impl Compressor for Leaking<'_> {
    fn run(&self, map: &RefrigerantMap, suction: &Point, discharge_pressure: f64) -> Result<Compression, Error> {
        if self.share == 0.0 {
            return self.sound.run(map, suction, discharge_pressure);
        }
        // The leak returns at the discharge enthalpy, which itself depends on the leak: the inlet is sought, by secants,
        // whose mixture with what leaks back is itself.
        let run = |enthalpy: f64| -> Result<(Compression, f64), Error> {
            let inlet = map.at_enthalpy(suction.pressure, enthalpy)?;
            let found = self.sound.run(map, &inlet, discharge_pressure)?;
            let mixed = suction.enthalpy + self.share * (found.discharge_enthalpy - suction.enthalpy);
            Ok((found, mixed - enthalpy))
        };
        let mut at = suction.enthalpy;
        let (mut found, mut miss) = run(at)?;
        let mut next = at + miss;
        for _ in 0..40 {
            if miss.abs() < 1e-10 * at.abs() {
                break;
            }
            let (before, last) = (at, miss);
            at = next;
            (found, miss) = run(at)?;
            let slope = (miss - last) / (at - before);
            next = if slope < -0.05 { at - miss / slope } else { at + miss };
        }
        Ok(Compression { mass_flow: found.mass_flow * (1.0 - self.share), ..found })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;
    use crate::quantity::kelvin_from_fahrenheit;

    /// A published set for a 3-ton R-410A compressor (AHRI 540 form).
    const PUBLISHED: CompressorMap = CompressorMap {
        mass_flow: [
            217.316_312_8,
            5.094_492_028,
            -0.593_170_311,
            0.0438,
            -0.0214,
            0.0104,
            7.90e-5,
            -5.73e-5,
            1.79e-4,
            -8.08e-5,
        ],
        power: [
            -561.361_570_5,
            -15.626_018_41,
            46.925_066_85,
            -0.217_949_552,
            0.435_062_616,
            -0.442_400_826,
            2.25e-4,
            2.37e-3,
            -3.32e-3,
            2.50e-3,
        ],
        rating_superheat_k: 11.11,
        scale: 1.0,
        heat_kept: 0.9,
    };

    /// Its values at 45/120 and 45/110 °F, computed elsewhere.
    #[test]
    fn a_published_map() {
        let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
        for (condensing, pounds, watts) in [(120.0, 467.9, 2669.0), (110.0, 474.3, 2325.0)] {
            let low = map.dew_pressure(kelvin_from_fahrenheit(45.0)).unwrap();
            let high = map.dew_pressure(kelvin_from_fahrenheit(condensing)).unwrap();
            let rated = map.vapor_at_temperature(low, kelvin_from_fahrenheit(45.0) + PUBLISHED.rating_superheat_k);
            let found = PUBLISHED.run(&map, &rated.unwrap(), high).unwrap();
            assert!((found.mass_flow * 3600.0 / 0.453_592_37 / pounds - 1.0).abs() < 3e-4, "{found:?}");
            assert!((found.power / watts - 1.0).abs() < 3e-4, "{found:?}");
            // Warmer gas is thinner: less flow; the work on each kilogram rises.
            let warm = map.vapor_at_temperature(low, kelvin_from_fahrenheit(85.0)).unwrap();
            let warm = PUBLISHED.run(&map, &warm, high).unwrap();
            assert!(warm.mass_flow < found.mass_flow && warm.power / warm.mass_flow > found.power / found.mass_flow);
        }
    }

    #[test]
    fn a_leak_takes_flow_and_heats_the_discharge() {
        let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
        let sound = EfficiencyCompressor {
            volume_flow: [1.6e-3, 7e-5],
            efficiency: Efficiency::Peak { peak: 0.7, best_ratio: 2.6, width: 1.0 },
            heat_kept: 0.9,
        };
        let suction = map.vapor_at_temperature(9.5e5, 287.0).unwrap();
        let whole = sound.run(&map, &suction, 2.6e6).unwrap();
        let leaking = Leaking { sound: &sound, share: 0.2 }.run(&map, &suction, 2.6e6).unwrap();
        assert!(leaking.mass_flow < 0.8 * whole.mass_flow && leaking.discharge_enthalpy > whole.discharge_enthalpy);
        // All the work that stays in the gas leaves with the gas.
        let out = leaking.mass_flow * (leaking.discharge_enthalpy - suction.enthalpy);
        assert!((out / (0.9 * leaking.power) - 1.0).abs() < 1e-6, "{out} {leaking:?}");
    }
}
