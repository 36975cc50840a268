//! What a healthy unit is expected to show in today's air, and how sure that is: of its class, then sharpened by the
//! protocol's table, the maker's targets, and the unit's own baseline.

use super::channels::{Around, Measured, instruments};
use super::constants::{BASELINE_AIR, BASELINE_CHARGE, BETWEEN, MAKER_K, PROTOCOL_K, WITHIN};
use super::matrix::{Factors, Half, Vector};
use super::response::Response;
use super::{CHANNELS, CONDENSING, EVAPORATING, LIQUID_LINE, SUCTION_LINE};
use crate::charge::sloped_superheat;
use crate::diagnosis::feature::Source;
use crate::diagnosis::signature::{KNOWN, Signature};
use crate::reading::{Metering, Mode, Reading};
use crate::saturation::SaturationCurves;

/// How the expected channels move with outdoor dry bulb, return dry bulb and return wet bulb, by K.
pub(super) struct Slopes(pub [Vector; 3]);

/// Air of the rating point, at which a maker states subcooling: 95 °F outdoors, 80/67 °F indoors.
const RATING: [f32; 3] = [308.15, 299.817, 292.594];

/// The regressors of the tables, and their slopes by the air.
fn regressors(air: &[f32; 3]) -> ([f32; 7], [[f32; 7]; 3]) {
    let [outdoor, dry, wet] = *air;
    let (o, w, d) = ((outdoor - 308.15) / 10.0, (wet - 291.0) / 3.0, (dry - 299.0) / 3.0);
    let by_outdoor = [0.0, 0.1, 0.0, 0.0, 0.2 * o, 0.1 * w, 0.0];
    let by_dry = [0.0, 0.0, 0.0, 1.0 / 3.0, 0.0, 0.0, 0.0];
    let by_wet = [0.0, 0.0, 1.0 / 3.0, 0.0, 0.0, o / 3.0, 2.0 / 3.0 * w];
    ([1.0, o, w, d, o * o, o * w, w * w], [by_outdoor, by_dry, by_wet])
}

fn combined<const N: usize>(factors: &[f32; N], rows: &[[f32; crate::diagnosis::signature::TABLED]; N]) -> Vector {
    let mut sum = [0.0; CHANNELS];
    for (factor, row) in factors.iter().zip(rows) {
        sum.iter_mut().zip(row).for_each(|(place, x)| *place += factor * x);
    }
    sum
}

/// The mean of healthy units of the class in some air.
fn of_class(signature: &Signature, offset: Option<usize>, air: &[f32; 3]) -> Vector {
    let mut mean = combined(&regressors(air).0, &signature.healthy);
    if let Some(offsets) = offset.and_then(|place| signature.offsets.get(place)) {
        mean.iter_mut().zip(offsets).for_each(|(place, x)| *place += x);
    }
    mean
}

/// What is expected of one unit.
#[derive(Debug, Clone, Copy)]
pub(super) struct Expected {
    /// Mean of its channels today.
    pub mean: Vector,
    /// Covariance of what makes the unit differ from its class.
    pub unit: Half,
    /// What the expectation of each sign of charge, and of the rest, rests on: superheat, subcooling, approach, others.
    pub superheat: Source,
    /// See `superheat`.
    pub subcooling: Source,
    /// See `superheat`.
    pub approach: Source,
    /// Channels that the baseline has.
    pub from_baseline: [bool; CHANNELS],
}

/// What is known of the kind of unit: the tables, the refrigerant's place in them, and its curves.
#[derive(Debug, Clone, Copy)]
pub(super) struct Kind {
    pub signature: &'static Signature,
    pub offset: Option<usize>,
    pub curves: &'static SaturationCurves,
    pub valve: bool,
}

impl Kind {
    pub(super) fn of(reading: &Reading) -> Option<Self> {
        let curves = reading.refrigerant?;
        let valve = reading.metering? != Metering::FixedOrifice;
        let name = curves.designation();
        let offset = KNOWN.iter().position(|known| *known == name);
        Some(Self { signature: Signature::of(valve), offset, curves, valve })
    }

    pub(super) fn slopes(&self, around: &Around) -> Slopes {
        let [outdoor, dry, wet] = regressors(&around.kelvin).1;
        Slopes([outdoor, dry, wet].map(|factors| combined(&factors, &self.signature.healthy)))
    }

    /// Covariance from day to day.
    pub(super) fn within(&self) -> Half {
        tabled(&self.signature.within, WITHIN)
    }

    fn between(&self) -> Half {
        let mut covariance = tabled(&self.signature.between, BETWEEN);
        // A refrigerant that the tables do not hold may lie anywhere among those that they do.
        if self.offset.is_none() {
            for offsets in &self.signature.offsets {
                let mut vector = [0.0; CHANNELS];
                vector.iter_mut().zip(offsets).for_each(|(place, x)| *place = *x);
                covariance.add_scaled_outer(&vector, 1.0 / 3.0);
            }
        }
        covariance
    }
}

fn tabled(half: &[f32], factor: f32) -> Half {
    let mut matrix = Half::ZERO;
    matrix.0.iter_mut().zip(half).for_each(|(place, x)| *place = factor * x);
    matrix
}

impl Expected {
    /// Of a reading's unit, with what is known of it besides.
    pub(super) fn of(kind: &Kind, reading: &Reading, around: &Around, baseline: &[Reading]) -> Self {
        let mut expected = Self {
            mean: of_class(kind.signature, kind.offset, &around.kelvin),
            unit: kind.between(),
            superheat: Source::Class,
            subcooling: Source::Class,
            approach: Source::Class,
            from_baseline: [false; CHANNELS],
        };
        expected.by_targets(kind, reading, around);
        expected.by_baseline(kind, reading, around, baseline);
        expected
    }

    /// A combination of channels that is known to be `value`, ± `deviation`, where `mean` is what is expected of it.
    fn learn(&mut self, direction: &Vector, value: f32, mean: f32, deviation: f32) {
        let moves = self.unit.times(direction);
        let variance: f32 = moves.iter().zip(direction).map(|(x, y)| x * y).sum::<f32>() + deviation * deviation;
        let gain = (value - mean) / variance;
        self.mean.iter_mut().zip(&moves).for_each(|(place, x)| *place += gain * x);
        self.unit.add_scaled_outer(&moves, -1.0 / variance);
    }

    fn by_targets(&mut self, kind: &Kind, reading: &Reading, around: &Around) {
        let difference = |plus: usize, minus: usize| -> Vector {
            core::array::from_fn(|channel| f32::from(u8::from(channel == plus)) - f32::from(u8::from(channel == minus)))
        };
        let dot = |x: &Vector, y: &Vector| x.iter().zip(y).map(|(a, b)| a * b).sum::<f32>();
        let table = match (reading.return_wet_bulb, reading.outdoor_dry_bulb) {
            (Some(wet), Some(outdoor)) if !kind.valve => sloped_superheat(wet, outdoor).ok(),
            _ => None,
        };
        let superheat = difference(SUCTION_LINE, EVAPORATING);
        if let Some(target) = reading.target_superheat {
            self.learn(&superheat, target.kelvin() as f32, dot(&superheat, &self.mean), 1.5 * MAKER_K);
            self.superheat = Source::Maker;
        } else if let Some(target) = table {
            self.learn(&superheat, target.kelvin as f32, dot(&superheat, &self.mean), PROTOCOL_K);
            self.superheat = Source::Protocol;
        }
        // What the unit has learnt moves the rating point by as much.
        let at_rating = |expected: &Self, direction: &Vector| {
            let class = of_class(kind.signature, kind.offset, &around.kelvin);
            let rated = of_class(kind.signature, kind.offset, &RATING);
            dot(direction, &expected.mean) - dot(direction, &class) + dot(direction, &rated)
        };
        if let Some(target) = reading.target_subcooling {
            let direction = difference(CONDENSING, LIQUID_LINE);
            let mean = at_rating(self, &direction);
            self.learn(&direction, target.kelvin() as f32, mean, MAKER_K);
            self.subcooling = Source::Maker;
        }
        if let Some(target) = reading.target_approach {
            let direction = difference(LIQUID_LINE, CHANNELS);
            let mean = at_rating(self, &direction) - RATING[0];
            self.learn(&direction, target.kelvin() as f32, mean, 1.5 * MAKER_K);
            self.approach = Source::Maker;
        }
    }

    /// Readings of the same unit when healthy. Their mean counts as one reading with one set of instruments: copies
    /// of it must not sharpen what a bias leaves open.
    fn by_baseline(&mut self, kind: &Kind, reading: &Reading, around: &Around, baseline: &[Reading]) {
        let usable = |one: &&Reading| {
            one.mode != Some(Mode::Heating)
                && one.metering.is_none_or(|metering| Some(metering) == reading.metering)
                && one.refrigerant.is_none_or(|curves| curves.designation() == kind.curves.designation())
                && one.outdoor_dry_bulb.is_some()
        };
        let mut readings = baseline.iter().filter(usable);
        let Some(first) = readings.next() else { return };
        let air = Around::of(first);
        let measured = Measured::of(first, kind.curves, &air);
        // What this unit is known to differ by from its class so far.
        let class = of_class(kind.signature, kind.offset, &around.kelvin);
        let differs: Vector = core::array::from_fn(|k| at(&self.mean, k) - at(&class, k));
        let off = |air: &Around, measured: &Measured| -> Vector {
            let mean = of_class(kind.signature, kind.offset, &air.kelvin);
            core::array::from_fn(|k| at(&measured.value, k) - at(&mean, k) - at(&differs, k))
        };
        let mut sums = off(&air, &measured);
        let mut counts = [1.0_f32; CHANNELS];
        for other in readings {
            let air = Around::of(other);
            let again = Measured::of(other, kind.curves, &air);
            let off = off(&air, &again);
            for k in 0..CHANNELS {
                if let (Some(true), Some(sum), Some(count)) = (again.present.get(k), sums.get_mut(k), counts.get_mut(k))
                {
                    *sum += at(&off, k);
                    *count += 1.0;
                }
            }
        }
        sums.iter_mut().zip(counts).for_each(|(sum, count)| *sum /= count);

        let mut covariance = self.unit;
        covariance.add_all(&kind.within(), 1.0);
        covariance.add_all(&instruments(first, &measured, &air, &kind.slopes(&air)), 1.0);
        // It may have been a little short of refrigerant or dusty already.
        for (cause, deviation) in [(0, BASELINE_CHARGE), (3, BASELINE_AIR)] {
            covariance.add_outer(&Response::slope(kind.signature, cause, deviation));
        }
        // Channels that are not measured stand aside: no covariance, no deviation.
        let mut apart = Half::ZERO;
        for i in 0..CHANNELS {
            for j in 0..=i {
                let both = measured.present.get(i) == Some(&true) && measured.present.get(j) == Some(&true);
                let value = if both { covariance.get(i, j) } else { f32::from(u8::from(i == j)) };
                apart.add(i, j, value);
            }
        }
        let only = |vector: &Vector| -> Vector {
            core::array::from_fn(|k| if measured.present.get(k) == Some(&true) { at(vector, k) } else { 0.0 })
        };
        let factors = Factors::of(&apart, CHANNELS);
        let moved = self.unit.times(&factors.solve(&only(&sums)));
        self.mean.iter_mut().zip(&moved).for_each(|(place, x)| *place += x);
        let before = self.unit;
        for i in 0..CHANNELS {
            let row: Vector = core::array::from_fn(|k| before.get(i, k));
            let solved = factors.solve(&only(&row));
            let solved = only(&solved);
            for j in 0..=i {
                let less: f32 = (0..CHANNELS).map(|k| at(&solved, k) * before.get(k, j)).sum();
                self.unit.add(i, j, -less);
            }
        }
        self.from_baseline = measured.present;
        let both = |plus: usize, minus: usize| {
            measured.present.get(plus) == Some(&true) && measured.present.get(minus) == Some(&true)
        };
        if both(SUCTION_LINE, EVAPORATING) {
            self.superheat = Source::Baseline;
        }
        if both(CONDENSING, LIQUID_LINE) {
            self.subcooling = Source::Baseline;
        }
        if both(LIQUID_LINE, LIQUID_LINE) {
            self.approach = Source::Baseline;
        }
    }
}

pub(super) fn at(vector: &Vector, channel: usize) -> f32 {
    vector.get(channel).copied().unwrap_or(0.0)
}
