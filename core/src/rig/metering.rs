//! Metering devices: what flow they let through.

use super::map::{Point, RefrigerantMap, Saturation};
use crate::error::Error;
use crate::math;

/// What a metering device feels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Around {
    /// The liquid, or liquid with flash gas, before it.
    pub inlet: Point,
    /// Pressure behind it, Pa.
    pub outlet_pressure: f64,
    /// Superheat at the bulb, K; negative where the vapour is wet.
    pub bulb_superheat: f64,
}

/// A metering device.
pub trait Metering {
    /// Mass flow in kg/s.
    ///
    /// # Errors
    /// States outside the map.
    fn flow(&self, map: &RefrigerantMap, around: &Around) -> Result<f64, Error>;
}

/// A short tube by Payne and O'Neal 2004: choked, so that the pressure behind it has no part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShortTube {
    /// Bore, m.
    pub diameter: f64,
    /// Length, m.
    pub length: f64,
}

impl ShortTube {
    /// Correction for flash gas at the inlet, at most 1.
    fn two_phase(&self, critical: f64, inlet: &Point, saturated: f64, liquid: f64, vapor: f64, quality: f64) -> f64 {
        let t6 = inlet.density / liquid;
        let t35 = (critical - saturated) / critical;
        let t32 = (critical - inlet.pressure) / critical;
        let t27 = self.length / self.diameter;
        let t34 = quality / (1.0 - quality) * math::sqrt(liquid / vapor);
        let t28 = inlet.pressure / critical;
        let square_of_ln = |value: f64| {
            let ln = math::ln(value);
            ln * ln
        };
        let above = 1.1831 * t6 - 1.468 * t6 * t6 - 0.152_85 * square_of_ln(t6) - 14.639 * square_of_ln(t35)
            + 9.8401 * square_of_ln(t32)
            - 0.019_798 * square_of_ln(t27);
        let below = 1.0 - 1.5348 * t6 - 2.0533 * t34 - 17.195 * t28 * t28 * t28;
        (above / below).clamp(0.0, 1.0)
    }

    /// The correction for flash gas, joined to the single-phase flow. At low reduced pressures the correlation begins
    /// below 1 (R-134a at 30 °C: 0.88), and a flow that jumps has no balance: up to [`JOINED_QUALITY`] the rest is
    /// given back in proportion.
    fn joined(&self, critical: f64, inlet: &Point, saturation: &Saturation) -> f64 {
        let (liquid, vapor) = (saturation.liquid_density, saturation.vapor_density);
        let quality = saturation.mass_quality(inlet.quality);
        let correction = self.two_phase(critical, inlet, saturation.pressure, liquid, vapor, quality);
        let left = 1.0 - quality / JOINED_QUALITY;
        if left <= 0.0 {
            return correction;
        }
        let boiling = Point { density: liquid, ..*inlet };
        let first = self.two_phase(critical, &boiling, saturation.pressure, liquid, vapor, 0.0);
        correction + left * (1.0 - first)
    }
}

/// Quality up to which the flow of a short tube is joined to that of liquid.
const JOINED_QUALITY: f64 = 0.015;

impl Metering for ShortTube {
    fn flow(&self, map: &RefrigerantMap, around: &Around) -> Result<f64, Error> {
        let inlet = &around.inlet;
        let critical = map.critical_pressure();
        let two_phase = inlet.quality > 0.0;
        // The saturation pressure of the liquid that comes: its own where it carries flash gas.
        let saturated = if two_phase { inlet.pressure } else { map.bubble_pressure(inlet.temperature)? };
        let saturation = map.saturation(saturated)?;
        let (liquid, vapor) = (saturation.liquid_density, saturation.vapor_density);
        let subcooling =
            if two_phase { 0.0 } else { map.saturation(inlet.pressure)?.bubble_temperature - inlet.temperature };
        let p3 = (inlet.pressure - saturated) / critical;
        let p6 = vapor / liquid;
        let p9 = subcooling / map.critical_temperature();
        let p10 = self.length / self.diameter;
        let p1 = (0.388_11 + 11.427 * p3 - 14.194 * p9 + 1.0703 * p6 - 0.091_928 * math::ln(p10))
            / (1.0 + 21.425 * p3 - 581.95 * p9 * p9);
        let single = p1 * math::sqrt(liquid * critical);
        let area = core::f64::consts::FRAC_PI_4 * self.diameter * self.diameter;
        let correction = if two_phase { self.joined(critical, inlet, &saturation) } else { 1.0 };
        Ok(single * area * correction)
    }
}

/// A restriction that flashes: flow by the pressure above the one at which its liquid boils, a square-root law with a
/// share of the saturation pressure; the rig's second law for a fixed orifice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlashingOrifice {
    /// Bore area times discharge coefficient, m².
    pub effective_area: f64,
    /// Share of the saturation pressure at which the throat chokes.
    pub choking_share: f64,
}

impl Metering for FlashingOrifice {
    fn flow(&self, map: &RefrigerantMap, around: &Around) -> Result<f64, Error> {
        let inlet = &around.inlet;
        let saturated = if inlet.quality > 0.0 { inlet.pressure } else { map.bubble_pressure(inlet.temperature)? };
        let throat = (self.choking_share * saturated).max(around.outlet_pressure);
        Ok(self.effective_area * math::sqrt(2.0 * inlet.density * (inlet.pressure - throat).max(0.0)))
    }
}

/// How the flow of a thermostatic valve follows the lift of its needle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Needle {
    /// Li, Braun and Shen 2004: an area of 2A − A² at a lift A.
    Tapered,
    /// An area in proportion to the lift.
    Linear,
}

/// A thermostatic valve: the superheat at its bulb lifts the needle against a spring.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThermostaticValve {
    /// Flow coefficient when fully open, m².
    pub coefficient: f64,
    /// Superheat at which it begins to open, K.
    pub static_superheat: f64,
    /// Superheat more, at which it is fully open, K.
    pub opening_superheat: f64,
    /// The law of its needle.
    pub needle: Needle,
    /// Least lift: valves with a bleed port never close.
    pub least_lift: f64,
}

impl ThermostaticValve {
    /// Lift of the needle, 0 to 1.
    #[must_use]
    pub fn lift(&self, bulb_superheat: f64) -> f64 {
        ((bulb_superheat - self.static_superheat) / self.opening_superheat).clamp(self.least_lift, 1.0)
    }

    /// How far a valve that is shut is from opening, in units of its whole travel; 0 where it is open or has a bleed
    /// port. A shut valve passes nothing whatever its bulb feels: this tells a search which way to go.
    pub(super) fn short_of_opening(&self, bulb_superheat: f64) -> f64 {
        if self.least_lift > 0.0 {
            return 0.0;
        }
        ((self.static_superheat - bulb_superheat) / self.opening_superheat).max(0.0)
    }
}

impl Metering for ThermostaticValve {
    fn flow(&self, _: &RefrigerantMap, around: &Around) -> Result<f64, Error> {
        let lift = self.lift(around.bulb_superheat);
        let area = match self.needle {
            Needle::Tapered => 2.0 * lift - lift * lift,
            Needle::Linear => lift,
        };
        let drop = (around.inlet.pressure - around.outlet_pressure).max(0.0);
        Ok(self.coefficient * area * math::sqrt(around.inlet.density * drop))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    /// Flows of R-410A through 1.70 mm by 12.7 mm with bubble 45 °C at the inlet pressure, computed elsewhere from the
    /// published correlation.
    #[test]
    fn payne_and_o_neal() {
        let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
        let tube = ShortTube { diameter: 1.70e-3, length: 12.7e-3 };
        let pressure = map.bubble_pressure(318.15).unwrap();
        let flow = |inlet| tube.flow(&map, &Around { inlet, outlet_pressure: 1e6, bulb_superheat: 5.0 }).unwrap();
        for (subcooling, published) in [(0.5, 0.053_20), (5.0, 0.058_52), (10.0, 0.065_06)] {
            let inlet = map.liquid_at_temperature(pressure, 318.15 - subcooling).unwrap();
            assert!((flow(inlet) / published - 1.0).abs() < 5e-3);
        }
        let saturation = map.saturation(pressure).unwrap();
        for (quality, published) in [(0.02, 0.051_33), (0.05, 0.049_34), (0.10, 0.046_54)] {
            let enthalpy =
                saturation.liquid_enthalpy + quality * (saturation.vapor_enthalpy - saturation.liquid_enthalpy);
            let inlet = map.at_enthalpy(pressure, enthalpy).unwrap();
            assert!((flow(inlet) / published - 1.0).abs() < 5e-3);
        }
    }

    #[test]
    fn a_valve_opens_with_superheat() {
        let valve = ThermostaticValve {
            coefficient: 1e-6,
            static_superheat: 2.6,
            opening_superheat: 9.9,
            needle: Needle::Tapered,
            least_lift: 0.0,
        };
        assert_eq!((valve.lift(1.0), valve.lift(13.0)), (0.0, 1.0));
        assert!(valve.lift(5.0) < valve.lift(6.0));
    }
}
