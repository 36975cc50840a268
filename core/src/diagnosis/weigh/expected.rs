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
#[inline(never)]
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

/// What is known of the kind of unit: the tables, and the refrigerant's place in them.
#[derive(Debug, Clone, Copy)]
pub(super) struct Kind {
    pub signature: &'static Signature,
    pub offset: Option<usize>,
    pub valve: bool,
}

impl Kind {
    pub(super) fn of(reading: &Reading) -> Option<Self> {
        let name = reading.refrigerant?.designation();
        let valve = reading.metering? != Metering::FixedOrifice;
        let offset = KNOWN.iter().position(|known| *known == name);
        Some(Self { signature: Signature::of(valve), offset, valve })
    }

    #[inline(never)]
    pub(super) fn slopes(&self, around: &Around) -> Slopes {
        let [outdoor, dry, wet] = regressors(&around.kelvin).1;
        Slopes([outdoor, dry, wet].map(|factors| combined(&factors, &self.signature.healthy)))
    }

    /// Covariance between units, written over a matrix.
    fn put_between(&self, covariance: &mut Half) {
        *covariance = Half::ZERO;
        covariance.add_table(&self.signature.between, BETWEEN);
        // A refrigerant that the tables do not hold may lie anywhere among those that they do.
        if self.offset.is_none() {
            for offsets in &self.signature.offsets {
                let mut vector = [0.0; CHANNELS];
                vector.iter_mut().zip(offsets).for_each(|(place, x)| *place = *x);
                covariance.add_scaled_outer(&vector, 1.0 / 3.0);
            }
        }
    }
}

/// One channel less another, if there is another.
pub(super) fn difference(vector: &Vector, plus: usize, minus: Option<usize>) -> f32 {
    at(vector, plus) - minus.map_or(0.0, |minus| at(vector, minus))
}

impl Expected {
    pub(super) const NONE: Self = Self {
        mean: [0.0; CHANNELS],
        unit: Half::ZERO,
        superheat: Source::Class,
        subcooling: Source::Class,
        approach: Source::Class,
        from_baseline: [false; CHANNELS],
    };

    /// Writes what is expected of a reading's unit, with what is known of it besides, over nothing.
    pub(super) fn put(&mut self, kind: &Kind, reading: &Reading, around: &Around, baseline: &[Reading]) {
        self.mean = of_class(kind.signature, kind.offset, &around.kelvin);
        kind.put_between(&mut self.unit);
        self.by_targets(kind, reading, around);
        self.by_baseline(kind, reading, around, baseline);
    }

    /// One channel, or one less another, is known to be `value`, ± `deviation`, where `mean` is what is expected of it.
    #[inline(never)]
    fn learn(&mut self, (plus, minus): (usize, Option<usize>), value: f32, mean: f32, deviation: f32) {
        let unit = &self.unit;
        let moves: Vector = core::array::from_fn(|k| unit.get(k, plus) - minus.map_or(0.0, |minus| unit.get(k, minus)));
        let variance = difference(&moves, plus, minus) + deviation * deviation;
        let gain = (value - mean) / variance;
        self.mean.iter_mut().zip(&moves).for_each(|(place, x)| *place += gain * x);
        self.unit.add_scaled_outer(&moves, -1.0 / variance);
    }

    #[inline(never)]
    fn by_targets(&mut self, kind: &Kind, reading: &Reading, around: &Around) {
        let table = match (reading.return_wet_bulb, reading.outdoor_dry_bulb) {
            (Some(wet), Some(outdoor)) if !kind.valve => sloped_superheat(wet, outdoor).ok(),
            _ => None,
        };
        let superheat = (SUCTION_LINE, Some(EVAPORATING));
        let of_superheat = difference(&self.mean, superheat.0, superheat.1);
        if let Some(target) = reading.target_superheat {
            self.learn(superheat, target.kelvin() as f32, of_superheat, 1.5 * MAKER_K);
            self.superheat = Source::Maker;
        } else if let Some(target) = table {
            self.learn(superheat, target.kelvin as f32, of_superheat, PROTOCOL_K);
            self.superheat = Source::Protocol;
        }
        if reading.target_subcooling.is_none() && reading.target_approach.is_none() {
            return;
        }
        let class = of_class(kind.signature, kind.offset, &around.kelvin);
        let rated = of_class(kind.signature, kind.offset, &RATING);
        // What the unit has learnt moves the rating point by as much.
        let at_rating = |expected: &Self, (plus, minus)| {
            difference(&expected.mean, plus, minus) - difference(&class, plus, minus) + difference(&rated, plus, minus)
        };
        if let Some(target) = reading.target_subcooling {
            let subcooling = (CONDENSING, Some(LIQUID_LINE));
            let mean = at_rating(self, subcooling);
            self.learn(subcooling, target.kelvin() as f32, mean, MAKER_K);
            self.subcooling = Source::Maker;
        }
        if let Some(target) = reading.target_approach {
            let liquid = (LIQUID_LINE, None);
            let mean = at_rating(self, liquid) - RATING[0];
            self.learn(liquid, target.kelvin() as f32, mean, 1.5 * MAKER_K);
            self.approach = Source::Maker;
        }
    }

    /// Readings of the same unit when healthy. Their mean counts as one reading with one set of instruments: copies
    /// of it must not sharpen what a bias leaves open.
    #[inline(never)]
    fn by_baseline(&mut self, kind: &Kind, reading: &Reading, around: &Around, baseline: &[Reading]) {
        let Some(curves) = reading.refrigerant else { return };
        let usable = |one: &&Reading| {
            one.mode != Some(Mode::Heating)
                && one.metering.is_none_or(|metering| Some(metering) == reading.metering)
                && one.refrigerant.is_none_or(|other| other.designation() == curves.designation())
                && one.outdoor_dry_bulb.is_some()
        };
        let mut readings = baseline.iter().filter(usable);
        let Some(first) = readings.next() else { return };
        let air = Around::of(first);
        let measured = Measured::of(first, curves, &air);
        // What this unit is known to differ by from its class so far.
        let class = of_class(kind.signature, kind.offset, &around.kelvin);
        let differs: Vector = core::array::from_fn(|k| at(&self.mean, k) - at(&class, k));
        let mut sums = off_class(kind, &air, &measured, &differs);
        let mut counts = [1.0_f32; CHANNELS];
        for other in readings {
            add_off(&mut sums, &mut counts, kind, (other, curves), &differs);
        }
        sums.iter_mut().zip(counts).for_each(|(sum, count)| *sum /= count);
        self.learn_baseline(kind, first, (&measured, &air), &sums);
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

    /// Channels of the unit when healthy were off by so much from what is expected of it.
    #[inline(never)]
    fn learn_baseline(&mut self, kind: &Kind, first: &Reading, (measured, air): (&Measured, &Around), off: &Vector) {
        let mut factors = Factors::of_nothing(CHANNELS);
        let covariance = &mut factors.rows;
        instruments(covariance, first, measured, air, &kind.slopes(air));
        let tabled = kind.signature.within.iter().copied().chain(core::iter::repeat(0.0));
        for ((place, unit), within) in covariance.0.iter_mut().zip(&self.unit.0).zip(tabled) {
            *place += unit + WITHIN * within;
        }
        // It may have been a little short of refrigerant or dusty already.
        for (cause, deviation) in [(0, BASELINE_CHARGE), (3, BASELINE_AIR)] {
            covariance.add_outer(&Response::slope(kind.signature, cause, deviation));
        }
        // Channels that are not measured stand aside: no covariance, no deviation.
        let present = &measured.present;
        let mut places = covariance.0.iter_mut();
        for (i, row) in present.iter().enumerate() {
            for ((j, column), place) in present.iter().enumerate().take(i + 1).zip(&mut places) {
                if !(*row && *column) {
                    *place = f32::from(u8::from(i == j));
                }
            }
        }
        factors.factor();
        self.condition(&factors, present, off);
    }

    /// Learns channels through the factors of their covariance. Not inlined, since its copy of the unit's covariance need
    /// not stand on the stack before.
    #[inline(never)]
    fn condition(&mut self, factors: &Factors, present: &[bool; CHANNELS], off: &Vector) {
        let only = |vector: &mut Vector| {
            for (place, _) in vector.iter_mut().zip(present).filter(|(_, present)| !**present) {
                *place = 0.0;
            }
        };
        let mut off = *off;
        only(&mut off);
        let moved = self.unit.times(&factors.solve(&off));
        self.mean.iter_mut().zip(&moved).for_each(|(place, x)| *place += x);
        let before = self.unit;
        let mut places = self.unit.0.iter_mut();
        for i in 0..CHANNELS {
            let mut row: Vector = core::array::from_fn(|k| before.get(i, k));
            only(&mut row);
            let mut solved = factors.solve(&row);
            only(&mut solved);
            let less = before.times(&solved);
            less.iter().take(i + 1).zip(&mut places).for_each(|(less, place)| *place -= less);
        }
    }
}

/// Adds what another reading is off by to sums and counts. Not inlined: the first reading is still on the stack.
#[inline(never)]
fn add_off(
    sums: &mut Vector,
    counts: &mut Vector,
    kind: &Kind,
    (other, curves): (&Reading, &SaturationCurves),
    differs: &Vector,
) {
    let air = Around::of(other);
    let again = Measured::of(other, curves, &air);
    let off = off_class(kind, &air, &again, differs);
    for (((sum, count), off), present) in sums.iter_mut().zip(counts).zip(off).zip(again.present) {
        if present {
            *sum += off;
            *count += 1.0;
        }
    }
}

/// Measured less expected of the class, less what the unit is known to differ by.
fn off_class(kind: &Kind, air: &Around, measured: &Measured, differs: &Vector) -> Vector {
    let mean = of_class(kind.signature, kind.offset, &air.kelvin);
    core::array::from_fn(|k| at(&measured.value, k) - at(&mean, k) - at(differs, k))
}

pub(super) fn at(vector: &Vector, channel: usize) -> f32 {
    vector.get(channel).copied().unwrap_or(0.0)
}
