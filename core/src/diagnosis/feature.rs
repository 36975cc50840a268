//! What each measured feature was expected to be, and how far off it is.

use crate::charge::answers::answers;

answers! {
    /// Where an expected value comes from, most trusted first.
    Source {
        /// The same unit, when it was known to be healthy.
        Baseline = 1 "baseline" "this unit's own readings when healthy";
        /// The maker's target.
        Maker = 2 "maker" "the maker's figure";
        /// The protocol's table.
        Protocol = 3 "protocol" "the protocol's table";
        /// Units of its kind.
        Class = 4 "class" "units of its kind";
    }
}

answers! {
    /// A feature that evidence is weighed by. Temperatures and differences in K; powers, airflow and charge as shares.
    FeatureName {
        /// Evaporating (dew) temperature, K.
        Evaporating = 1 "evaporating_k" "evaporating temperature";
        /// Superheat at the vapour port, K.
        Superheat = 2 "superheat_k" "superheat";
        /// Condensing (bubble) temperature over outdoor air, K.
        CondensingOverAmbient = 3 "condensing_over_ambient_k" "condensing over outdoor air";
        /// Subcooling at the liquid port, K.
        Subcooling = 4 "subcooling_k" "subcooling";
        /// Discharge line temperature, K.
        Discharge = 5 "discharge_k" "discharge line temperature";
        /// Temperature split, K.
        TemperatureSplit = 6 "temperature_split_k" "temperature split";
        /// Air through the outdoor coil: leaving minus entering, K.
        CondenserAirRise = 7 "condenser_air_rise_k" "warming of the outdoor air";
        /// Compressor power, as a share of the nominal capacity.
        CompressorPower = 8 "compressor_power_share" "compressor power for the capacity";
        /// Airflow, as a share of 400 cfm per ton.
        Airflow = 9 "airflow_share" "airflow for the capacity";
        /// Saturation at the liquid pressure over a two-phase surface of the outdoor coil, K.
        SurfaceDifference = 10 "surface_difference_k" "saturation over the coil's surface";
        /// Saturation at the discharge pressure over that at the liquid pressure, K.
        HighSideDrop = 11 "high_side_drop_k" "drop between discharge and liquid port";
        /// Superheat at the indoor coil's outlet, K, by the pressure at the vapour port.
        CoilSuperheat = 12 "coil_superheat_k" "superheat at the indoor coil";
        /// Return minus supply wet bulb, K.
        WetBulbSplit = 13 "wet_bulb_split_k" "wet bulb split";
        /// Weighed over expected charge, less one.
        WeighedCharge = 14 "weighed_charge_share" "weighed against expected charge";
        /// Liquid port minus metering device's inlet, K.
        LiquidLineDrop = 15 "liquid_line_drop_k" "cooling along the liquid line";
    }
}

/// One feature, measured against what was expected.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Feature {
    /// What was measured.
    pub value: f64,
    /// One standard uncertainty of it, from the instruments.
    pub standard_uncertainty: f64,
    /// What was expected of this unit if healthy, in today's air.
    pub expected: f64,
    /// One standard uncertainty of that: of the unit, of the baseline's instruments, of today's air.
    pub expected_uncertainty: f64,
    /// The most trusted source that it rests on.
    pub source: Source,
}

impl Feature {
    /// Measured minus expected.
    #[must_use]
    pub fn deviation(&self) -> f64 {
        self.value - self.expected
    }

    /// The deviation in its own standard uncertainties.
    #[must_use]
    pub fn standard_deviations(&self) -> f64 {
        let together = crate::uncertain::root_of_squares([self.standard_uncertainty, self.expected_uncertainty]);
        if together > 0.0 { self.deviation() / together } else { 0.0 }
    }
}

/// How many features there are.
pub const FEATURE_COUNT: usize = FeatureName::ALL.len();

/// The features of a finding; those that the reading does not allow are `None`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Features {
    items: [Option<Feature>; FEATURE_COUNT],
}

impl Features {
    pub(crate) const NONE: Self = Self { items: [None; FEATURE_COUNT] };

    /// One feature.
    #[must_use]
    pub fn get(&self, name: FeatureName) -> Option<Feature> {
        self.items.get((name.number() as usize).wrapping_sub(1)).copied().flatten()
    }

    /// The features that could be measured, in the order of their numbers.
    pub fn iter(&self) -> impl Iterator<Item = (FeatureName, Feature)> + '_ {
        FeatureName::ALL.iter().filter_map(|name| Some((*name, self.get(*name)?)))
    }

    pub(crate) const fn clear(&mut self) {
        *self = Self::NONE;
    }

    pub(crate) fn put(&mut self, name: FeatureName, feature: Feature) {
        if let Some(place) = self.items.get_mut((name.number() as usize).wrapping_sub(1)) {
            *place = Some(feature);
        }
    }
}
