//! What was measured against what was expected, as the differences that a technician knows.

use super::Weighing;
use super::channels::instruments;
use super::matrix::{Half, Vector};
use super::{
    AIRFLOW, CHANNELS, CHARGE, COIL_OUTLET, CONDENSER_AIR, CONDENSING, DISCHARGE, DISCHARGE_CONDENSING, EVAPORATING,
    LINE_DROP, LIQUID_LINE, POWER, SUCTION_LINE, SUPPLY, SUPPLY_WET, SURFACE,
};
use crate::diagnosis::feature::{Feature, FeatureName, Features, Source};
use crate::math;
use crate::reading::Reading;

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

    fn direction(&self) -> Vector {
        let (plus, minus) = self.channels();
        let mut direction = [0.0; CHANNELS];
        let mut put = |channel: usize, value: f32| {
            if let Some(place) = direction.get_mut(channel) {
                *place = value;
            }
        };
        put(plus, if matches!(self, Self::UnderAir(..)) { -1.0 } else { 1.0 });
        if let Some(minus) = minus {
            put(minus, -1.0);
        }
        direction
    }
}

fn variance(matrix: &Half, direction: &Vector) -> f64 {
    f64::from(matrix.times(direction).iter().zip(direction).map(|(x, y)| x * y).sum::<f32>()).max(0.0)
}

/// Every feature that the reading allows.
pub(super) fn features(weighing: &Weighing, reading: &Reading) -> Features {
    let mut features = Features::NONE;
    let slopes = weighing.kind.slopes(&weighing.around);
    let probes = instruments(reading, &weighing.measured, &weighing.around, &slopes);
    let mut unit = weighing.expected.unit;
    unit.add_all(&weighing.kind.within(), 1.0);
    for (name, made) in &MADE {
        let (plus, minus) = made.channels();
        let known = |channel: usize| weighing.measured.present.get(channel) == Some(&true);
        if !known(plus) || minus.is_some_and(|minus| !known(minus)) {
            continue;
        }
        let direction = made.direction();
        let of = |vector: &Vector| -> f64 { f64::from(direction.iter().zip(vector).map(|(x, y)| x * y).sum::<f32>()) };
        let (mut value, mut expected) = (of(&weighing.measured.value), of(&weighing.expected.mean));
        let (mut of_probes, mut of_unit) =
            (math::sqrt(variance(&probes, &direction)), math::sqrt(variance(&unit, &direction)));
        match made {
            Made::OverAir(_, air) | Made::UnderAir(_, air) => {
                let kelvin = f64::from(at3(&weighing.around.kelvin, *air));
                let shift = if matches!(made, Made::OverAir(..)) { -kelvin } else { kelvin };
                value += shift;
                expected += shift;
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
        let source = source(weighing, *name, plus, minus);
        features.put(
            *name,
            Feature { value, standard_uncertainty: of_probes, expected, expected_uncertainty: of_unit, source },
        );
    }
    features
}

fn at3(air: &[f32; 3], place: usize) -> f32 {
    air.get(place).copied().unwrap_or(0.0)
}

fn source(weighing: &Weighing, name: FeatureName, plus: usize, minus: Option<usize>) -> Source {
    let expected = &weighing.expected;
    let has = |channel: usize| expected.from_baseline.get(channel) == Some(&true);
    match name {
        FeatureName::Superheat => expected.superheat,
        FeatureName::Subcooling => expected.subcooling,
        _ if has(plus) && minus.is_none_or(has) => Source::Baseline,
        _ => Source::Class,
    }
}
