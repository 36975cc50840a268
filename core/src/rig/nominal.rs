//! From a nominal rating (tons, efficiency class, refrigerant, device, line set) to the numbers a unit is designed from.
//!
//! All figures here are common practice of the trade: condensing temperature over the outdoor air by class, copper tubes
//! by the gas velocity and friction they are chosen for.

use super::design::{Device, RATING_CONDITIONS, Rating};
use super::map::RefrigerantMap;
use crate::error::Error;
use crate::{bounds::Bound, math};

/// A ton of refrigeration, W.
pub const WATTS_PER_TON: f64 = 3_516.852_842_067;

/// How efficient a unit is built. Seasonal figures in Btu/(W·h) are only names of the classes here: what is built in are
/// coil sizes and the compressor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EfficiencyClass {
    /// Small coils, about 10: condensing some 25 °F over the outdoor air.
    Basic,
    /// About 13: some 20 °F.
    Standard,
    /// Large coils, about 16: some 15 °F.
    High,
}

impl EfficiencyClass {
    /// All classes.
    pub const ALL: [Self; 3] = [Self::Basic, Self::Standard, Self::High];

    /// Condensing (bubble) temperature above the outdoor air at the rating point, K.
    #[must_use]
    pub const fn condensing_over_ambient(self) -> f64 {
        match self {
            Self::Basic => 13.9,
            Self::Standard => 11.1,
            Self::High => 8.3,
        }
    }

    /// Highest overall efficiency of the compressor.
    #[must_use]
    pub const fn compressor_efficiency(self) -> f64 {
        match self {
            Self::Basic => 0.66,
            Self::Standard => 0.70,
            Self::High => 0.75,
        }
    }

    /// Inside volume of the condenser by capacity, m³/W: a larger coil holds more.
    #[must_use]
    pub const fn condenser_volume(self) -> f64 {
        match self {
            Self::Basic => 4.0e-7,
            Self::Standard => 5.0e-7,
            Self::High => 6.3e-7,
        }
    }
}

/// The two lines between the indoor and the outdoor unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineSet {
    /// Length of each line with what the fittings are worth, m.
    pub length: f64,
    /// How much higher the indoor unit stands, m.
    pub lift: f64,
}

impl LineSet {
    /// 25 ft on the level, as units are rated with.
    pub const RATED: Self = Self { length: 7.62, lift: 0.0 };
}

/// Bores of hard and annealed copper tube, m (ASTM B280: 1/4 to 1 3/8 in outside).
const BORES: [f64; 8] = [0.004_83, 0.006_30, 0.007_92, 0.010_92, 0.013_84, 0.017_02, 0.019_94, 0.026_04];
const WIDEST: f64 = 0.032_13;
/// Inside volume of the evaporator by capacity, m³/W.
const EVAPORATOR_VOLUME: f64 = 3.2e-7;
/// Velocities that lines are chosen for, m/s: liquid slow enough against hammer, vapour fast enough to carry oil.
const LIQUID_VELOCITY: f64 = 1.4;
const VAPOR_VELOCITY: f64 = 9.5;

/// The narrowest tube in which a volume flow stays below a velocity.
fn bore(volume_flow: f64, velocity: f64) -> f64 {
    let needed = math::sqrt(volume_flow / velocity / core::f64::consts::FRAC_PI_4);
    BORES.into_iter().find(|bore| *bore >= needed).unwrap_or(WIDEST)
}

impl Rating {
    /// A unit of 1 to 6 tons of a class, for a refrigerant, with its line set.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for sizes and lines outside their ranges and states outside the map.
    pub fn nominal(
        map: &RefrigerantMap,
        tons: f64,
        class: EfficiencyClass,
        device: Device,
        line_set: LineSet,
    ) -> Result<Self, Error> {
        let sizes = Bound {
            quantity: "nominal capacity",
            unit: "tons",
            lower: 1.0,
            upper: 6.0,
            advice: "the rig builds residential units: give tons of refrigeration",
        };
        let lengths = Bound {
            quantity: "length of the line set",
            unit: "m",
            lower: 0.5,
            upper: 60.0,
            advice: "give the length of one line with what its fittings are worth",
        };
        let lifts = Bound {
            quantity: "lift of the line set",
            unit: "m",
            lower: -20.0,
            upper: 20.0,
            advice: "give how much higher the indoor unit stands, negative where it stands lower",
        };
        sizes.check(tons)?;
        lengths.check(line_set.length)?;
        lifts.check(line_set.lift)?;
        let capacity = tons * WATTS_PER_TON;
        let usual = Self::usual(capacity, device);
        let over = class.condensing_over_ambient();
        let liquid = map.saturation(map.bubble_pressure(RATING_CONDITIONS.outdoor_dry_bulb + over)?)?;
        let vapor = map.saturation(map.dew_pressure(usual.evaporating)?)?;
        let mass_flow = capacity / (vapor.vapor_enthalpy - liquid.liquid_enthalpy);
        Ok(Self {
            condensing_over_ambient: over,
            compressor_efficiency: class.compressor_efficiency(),
            condenser_volume: class.condenser_volume(),
            evaporator_volume: EVAPORATOR_VOLUME,
            liquid_line: [bore(mass_flow / liquid.liquid_density, LIQUID_VELOCITY), line_set.length, line_set.lift],
            suction_line: [bore(mass_flow / vapor.vapor_density, VAPOR_VELOCITY), line_set.length],
            ..usual
        })
    }
}
