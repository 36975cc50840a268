//! How much room the vapour takes where liquid and vapour flow together: what a coil holds depends on it.

use super::map::Saturation;
use crate::math;

/// How much faster the vapour flows than the liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum VoidFraction {
    /// Zivi 1964: the cube root of the density ratio, from least entropy production.
    Zivi,
    /// Smith 1969, equal velocity heads with four tenths of the liquid entrained.
    Smith,
    /// No slip.
    Homogeneous,
}

/// Nodes and weights of Gauss and Legendre's rule on 0 to 1.
const NODES: [(f64, f64); 8] = [
    (0.019_855_071_751_231_884, 0.050_614_268_145_188_13),
    (0.101_666_761_293_186_63, 0.111_190_517_226_687_23),
    (0.237_233_795_041_835_5, 0.156_853_322_938_943_64),
    (0.408_282_678_752_175_1, 0.181_341_891_689_181),
    (0.591_717_321_247_825, 0.181_341_891_689_181),
    (0.762_766_204_958_164_5, 0.156_853_322_938_943_64),
    (0.898_333_238_706_813_4, 0.111_190_517_226_687_23),
    (0.980_144_928_248_768_1, 0.050_614_268_145_188_13),
];

impl VoidFraction {
    /// Share of the cross-section that is vapour, at the vapour's share of the mass flow and the density ratio of vapour
    /// to liquid.
    #[must_use]
    pub fn at(self, quality: f64, ratio: f64) -> f64 {
        let slip = match self {
            Self::Zivi => 1.0 / math::cbrt(ratio),
            Self::Smith => {
                let entrained = 0.4 * (1.0 - quality) / quality;
                0.4 + 0.6 * math::sqrt((1.0 / ratio + entrained) / (1.0 + entrained))
            }
            Self::Homogeneous => 1.0,
        };
        1.0 / (1.0 + ratio * slip * (1.0 - quality) / quality)
    }

    /// Mean density in kg/m³ from one share of the way from bubble to dew to another, where heat flows evenly.
    #[must_use]
    pub fn mean_density(self, saturation: &Saturation, from: f64, to: f64) -> f64 {
        let (liquid, vapor) = (saturation.liquid_density, saturation.vapor_density);
        let ratio = vapor / liquid;
        let at = |share: f64| {
            let void = self.at(saturation.mass_quality(share).clamp(1e-9, 1.0), ratio);
            void * vapor + (1.0 - void) * liquid
        };
        NODES.iter().map(|(node, weight)| weight * at(from + node * (to - from))).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::super::RefrigerantMap;
    use super::*;
    use crate::eos::model;

    /// Zivi's mean density of R-410A over the whole of quality: 303 to 304 kg/m³ at 30 °C, 354.6 to 355.0 at 45 °C,
    /// computed elsewhere with a pseudo-pure and with a mixture model.
    #[test]
    fn mean_density_of_a_condensing_blend() {
        let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
        for (celsius, low, high) in [(30.0, 303.0, 304.0), (45.0, 354.6, 355.0)] {
            let saturation = map.saturation(map.bubble_pressure(celsius + 273.15).unwrap()).unwrap();
            let (liquid, vapor) = (saturation.liquid_density, saturation.vapor_density);
            // By steps even in quality, as those values were.
            let by_quality = (0..2000).map(|step| {
                let void = VoidFraction::Zivi.at((f64::from(step) + 0.5) / 2000.0, vapor / liquid);
                (void * vapor + (1.0 - void) * liquid) / 2000.0
            });
            let by_quality: f64 = by_quality.sum();
            assert!(by_quality > low - 0.3 && by_quality < high + 0.3, "{by_quality}");
            // Even in heat, as in a coil, quality lags: a little more liquid.
            let mean = VoidFraction::Zivi.mean_density(&saturation, 0.0, 1.0);
            assert!(mean > by_quality && mean < 1.02 * by_quality, "{mean} {by_quality}");
            // Slip holds back liquid.
            assert!(VoidFraction::Smith.mean_density(&saturation, 0.0, 1.0) < mean);
            assert!(VoidFraction::Homogeneous.mean_density(&saturation, 0.0, 1.0) < 0.9 * mean);
        }
    }

    #[test]
    fn ends() {
        for model in [VoidFraction::Zivi, VoidFraction::Smith, VoidFraction::Homogeneous] {
            assert!((model.at(1.0, 0.05) - 1.0).abs() < 1e-12 && model.at(1e-9, 0.05) < 1e-6);
            assert!(model.at(0.2, 0.05) < model.at(0.3, 0.05));
        }
    }
}
