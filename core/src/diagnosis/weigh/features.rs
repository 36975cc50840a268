//! What was measured against what was expected, as the differences that a technician knows.

use super::channels::{Around, Measured};
use super::expected::{Expected, difference};
use super::matrix::{Half, Vector};
use super::{
    AIRFLOW, CHANNELS, CHARGE, COIL_OUTLET, CONDENSER_AIR, CONDENSING, DISCHARGE, DISCHARGE_CONDENSING, EVAPORATING,
    LINE_DROP, LIQUID_LINE, POWER, SUCTION_LINE, SUPPLY, SUPPLY_WET, SURFACE,
};
use crate::diagnosis::feature::{Feature, FeatureName, Features, Source};
use crate::math;

/// A feature as a combination of channels: plus, minus, and the air that the minus may be (outdoor, return, wet).
enum Made {
    /// A channel less another.
    Difference(usize, usize),
    /// A channel less an air temperature.
    OverAir(usize, usize),
    /// An air temperature less a channel.
    UnderAir(usize, usize),
    /// A temperature as it is.
    Plain(usize),
    /// A logarithm in per cent, shown as a share.
    Share(usize),
}

const OUTDOOR: usize = 0;
const RETURN: usize = 1;
const WET: usize = 2;

const MADE: [(FeatureName, Made); 15] = [
    (FeatureName::Evaporating, Made::Plain(EVAPORATING)),
    (FeatureName::Superheat, Made::Difference(SUCTION_LINE, EVAPORATING)),
    (FeatureName::CondensingOverAmbient, Made::OverAir(CONDENSING, OUTDOOR)),
    (FeatureName::Subcooling, Made::Difference(CONDENSING, LIQUID_LINE)),
    (FeatureName::Discharge, Made::Plain(DISCHARGE)),
    (FeatureName::TemperatureSplit, Made::UnderAir(SUPPLY, RETURN)),
    (FeatureName::CondenserAirRise, Made::OverAir(CONDENSER_AIR, OUTDOOR)),
    (FeatureName::CompressorPower, Made::Share(POWER)),
    (FeatureName::Airflow, Made::Share(AIRFLOW)),
    (FeatureName::SurfaceDifference, Made::Difference(CONDENSING, SURFACE)),
    (FeatureName::HighSideDrop, Made::Difference(DISCHARGE_CONDENSING, CONDENSING)),
    (FeatureName::CoilSuperheat, Made::Difference(COIL_OUTLET, EVAPORATING)),
    (FeatureName::WetBulbSplit, Made::UnderAir(SUPPLY_WET, WET)),
    (FeatureName::WeighedCharge, Made::Share(CHARGE)),
    (FeatureName::LiquidLineDrop, Made::Plain(LINE_DROP)),
];

impl Made {
    const fn channels(&self) -> (usize, Option<usize>) {
        match self {
            Self::Difference(plus, minus) => (*plus, Some(*minus)),
            Self::OverAir(channel, _) | Self::UnderAir(channel, _) | Self::Plain(channel) | Self::Share(channel) => {
                (*channel, None)
            }
        }
    }
}

/// What features are made of: what was measured and what was expected, by channel, and the variances of each feature.
#[derive(Debug, Clone, Copy)]
pub(super) struct Compared {
    pub measured: Vector,
    pub present: [bool; CHANNELS],
    pub expected: Vector,
    air: [f32; 3],
    superheat: Source,
    subcooling: Source,
    from_baseline: [bool; CHANNELS],
    /// By the place of the feature, from the instruments.
    pub of_probes: [f32; MADE.len()],
    /// The same of the unit, and of its change from day to day.
    pub of_unit: [f32; MADE.len()],
}

impl Compared {
    pub(super) const NONE: Self = Self {
        measured: [0.0; CHANNELS],
        present: [false; CHANNELS],
        expected: [0.0; CHANNELS],
        air: [0.0; 3],
        superheat: Source::Class,
        subcooling: Source::Class,
        from_baseline: [false; CHANNELS],
        of_probes: [0.0; MADE.len()],
        of_unit: [0.0; MADE.len()],
    };

    /// Writes all but the variances over this.
    pub(super) fn put(&mut self, measured: &Measured, around: &Around, expected: &Expected) {
        self.measured = measured.value;
        self.present = measured.present;
        self.expected = expected.mean;
        self.air = around.kelvin;
        self.superheat = expected.superheat;
        self.subcooling = expected.subcooling;
        self.from_baseline = expected.from_baseline;
    }

    fn source(&self, name: FeatureName, plus: usize, minus: Option<usize>) -> Source {
        let has = |channel: usize| self.from_baseline.get(channel) == Some(&true);
        match name {
            FeatureName::Superheat => self.superheat,
            FeatureName::Subcooling => self.subcooling,
            _ if has(plus) && minus.is_none_or(has) => Source::Baseline,
            _ => Source::Class,
        }
    }
}

/// Variance of each feature under a covariance of all channels.
pub(super) fn variances(covariance: &Half) -> [f32; MADE.len()] {
    core::array::from_fn(|place| {
        MADE.get(place).map_or(0.0, |(_, made)| {
            let (plus, minus) = made.channels();
            covariance.variance(plus, minus)
        })
    })
}

/// Writes every feature that the reading allows.
#[inline(never)]
pub(super) fn put(features: &mut Features, compared: &Compared) {
    *features = Features::NONE;
    for (((name, made), of_probes), of_unit) in MADE.iter().zip(compared.of_probes).zip(compared.of_unit) {
        let (plus, minus) = made.channels();
        let known = |channel: usize| compared.present.get(channel) == Some(&true);
        if !known(plus) || minus.is_some_and(|minus| !known(minus)) {
            continue;
        }
        let root = |variance: f32| math::sqrt(f64::from(variance).max(0.0));
        let (mut of_probes, mut of_unit) = (root(of_probes), root(of_unit));
        let of = |vector: &Vector| f64::from(difference(vector, plus, minus));
        let (mut value, mut expected) = (of(&compared.measured), of(&compared.expected));
        match made {
            Made::OverAir(_, air) => {
                let kelvin = f64::from(at3(&compared.air, *air));
                value -= kelvin;
                expected -= kelvin;
            }
            Made::UnderAir(_, air) => {
                let kelvin = f64::from(at3(&compared.air, *air));
                value = kelvin - value;
                expected = kelvin - expected;
            }
            Made::Share(_) => {
                let base = if *name == FeatureName::WeighedCharge { 1.0 } else { 0.0 };
                let (shown, hoped) = (math::exp(value / 100.0), math::exp(expected / 100.0));
                of_probes *= shown / 100.0;
                of_unit *= hoped / 100.0;
                value = shown - base;
                expected = hoped - base;
            }
            Made::Difference(..) | Made::Plain(_) => {}
        }
        let source = compared.source(*name, plus, minus);
        features.put(
            *name,
            Feature { value, standard_uncertainty: of_probes, expected, expected_uncertainty: of_unit, source },
        );
    }
}

fn at3(air: &[f32; 3], place: usize) -> f32 {
    air.get(place).copied().unwrap_or(0.0)
}
