//! What a fault of some severity does to a unit's channels, and how units scatter about that.

use super::constants::{RELATIVE, SCATTER};
use super::expected::at;
use super::matrix::Vector;
use super::{CHANNELS, CHARGE, CONDENSING, DISCHARGE, EVAPORATING, LINE_DROP, LIQUID_LINE, SUCTION_LINE};
use crate::diagnosis::signature::{PAIR_CAUSES, Signature, TABLED};
use crate::math;

/// The restriction by its number less one.
pub(super) const RESTRICTION: usize = 4;
/// Scatter of a liquid line that does not flash, K.
const STILL_K: f32 = 0.1;

/// What the response of a unit depends on: the air, and its own healthy superheat and subcooling.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Regressors {
    factors: [f32; 5],
    /// What one count of the tables' means is worth, by factor and channel: each times its factor.
    steps: [[f32; TABLED]; 5],
}

impl Regressors {
    /// Before any is known.
    pub(super) const NONE: Self = Self { factors: [0.0; 5], steps: [[0.0; TABLED]; 5] };

    /// Writes those of the air (K: outdoors, return dry and wet bulb) and of what is expected of the healthy unit over this.
    #[inline(never)]
    pub(super) fn put(&mut self, signature: &Signature, air: &[f32; 3], expected: &Vector) {
        let [outdoor, _, wet] = *air;
        // As far as the tables reach: beyond, they would be stretched.
        let superheat = (at(expected, SUCTION_LINE) - at(expected, EVAPORATING)).clamp(0.0, 16.0);
        let subcooling = (at(expected, CONDENSING) - at(expected, LIQUID_LINE)).clamp(1.0, 12.0);
        self.factors =
            [1.0, (outdoor - 308.15) / 10.0, (wet - 291.0) / 3.0, (superheat - 6.0) / 4.0, (subcooling - 6.0) / 2.0];
        self.steps = signature.mean_steps;
        for (row, factor) in self.steps.iter_mut().zip(self.factors) {
            row.iter_mut().for_each(|step| *step *= factor);
        }
    }
}

/// Change of the channels, and its scatter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Response {
    /// Mean change.
    pub mean: Vector,
    /// Principal direction of the scatter.
    pub along: Vector,
    /// Variance beside it, by channel.
    pub beside: Vector,
}

impl Response {
    /// Nothing changes.
    pub(super) const NONE: Self = Self { mean: [0.0; CHANNELS], along: [0.0; CHANNELS], beside: [0.0; CHANNELS] };

    /// Writes that of one cause (by its number less one) at one of its severities over this.
    #[inline(never)]
    pub(super) fn put(&mut self, signature: &Signature, cause: usize, node: usize, regressors: &Regressors) {
        let tables = (
            signature.mean.get(cause).and_then(|nodes| nodes.get(node)),
            signature.along.get(cause).and_then(|nodes| nodes.get(node)),
            signature.beside.get(cause).and_then(|nodes| nodes.get(node)),
        );
        let (Some(mean), Some(along), Some(beside)) = tables else {
            *self = Self::NONE;
            return;
        };
        let mut sum = [0.0; TABLED];
        for (row, steps) in mean.iter().zip(&regressors.steps) {
            for channel in 0..TABLED {
                sum[channel] += steps[channel] * f32::from(row[channel]);
            }
        }
        self.mean[..TABLED].copy_from_slice(&sum);
        let (usual, usual_steps) = (&mean[0], &signature.mean_steps[0]);
        for channel in 0..TABLED {
            self.along[channel] = SCATTER * signature.along_steps[channel] * f32::from(along[channel]);
            let rest = signature.beside_steps[channel] * f32::from(beside[channel]);
            let other = RELATIVE * usual_steps[channel] * f32::from(usual[channel]);
            self.beside[channel] = SCATTER * SCATTER * (rest * rest + other * other);
        }
        self.along[CHARGE] = 0.0;
        self.beside[CHARGE] = 0.0;
        self.mean[CHARGE] = of_charge(cause, severity(signature, cause, node));
        unit_dependent(self, cause);
    }

    /// Of a restriction in the liquid line: where some of the liquid flashes behind it, or where none does and the line is
    /// as warm as it was.
    #[inline(never)]
    pub(super) fn put_restriction(
        &mut self,
        signature: &Signature,
        node: usize,
        regressors: &Regressors,
        flashes: bool,
    ) {
        self.put(signature, RESTRICTION, node, regressors);
        let response = self;
        let drop = at(&response.mean, LINE_DROP);
        let share = 1.0 - signature.still.get(node).copied().unwrap_or(0.0);
        // The tables' mean is that of all units, flashing or not.
        let (mean, deviation) = if flashes { (drop / share.max(0.1), drop) } else { (0.0, STILL_K) };
        let places =
            (response.mean.get_mut(LINE_DROP), response.along.get_mut(LINE_DROP), response.beside.get_mut(LINE_DROP));
        if let (Some(place), Some(along), Some(beside)) = places {
            *place = mean;
            *along = 0.0;
            *beside = deviation * deviation;
        }
    }

    /// The usual change for a small severity, in proportion from the least one of the tables.
    #[inline(never)]
    pub(super) fn slope(signature: &Signature, cause: usize, severity_now: f32) -> Vector {
        let least = severity(signature, cause, 0);
        let factor = severity_now / least.max(1e-3);
        let mut change = [0.0; CHANNELS];
        // In the usual air only the first regressor is not 0.
        if let Some(counts) = signature.mean.get(cause).map(|nodes| &nodes[0][0]) {
            for channel in 0..TABLED {
                change[channel] = factor * (signature.mean_steps[0][channel] * f32::from(counts[channel]));
            }
        }
        change[CHARGE] = factor * of_charge(cause, least);
        change
    }

    /// Writes mean and scatter of a pair of causes over this: the sum of both, and what they do beyond it.
    #[inline(never)]
    pub(super) fn put_pair(
        &mut self,
        signature: &Signature,
        pair: usize,
        nodes: (usize, usize),
        (first, second): (&Self, &Self),
        regressors: &Regressors,
    ) {
        for channel in 0..CHANNELS {
            self.mean[channel] = first.mean[channel] + second.mean[channel];
            self.beside[channel] = first.beside[channel] + second.beside[channel];
        }
        let (Some(mean), Some(beside)) = (signature.pair_mean.get(pair), signature.pair_beside.get(pair)) else {
            return;
        };
        let strength = ((nodes.0 + 1) * (nodes.1 + 1)) as f32 / 12.0;
        let factors: [f32; 3] = core::array::from_fn(|k| strength * regressors.factors[k]);
        for ((row, steps), factor) in mean.iter().zip(&signature.pair_steps).zip(factors) {
            for channel in 0..TABLED {
                self.mean[channel] += factor * steps[channel] * f32::from(row[channel]);
            }
        }
        for channel in 0..TABLED {
            let scatter = strength * signature.pair_beside_steps[channel] * f32::from(beside[channel]);
            self.beside[channel] += scatter * scatter;
        }
    }
}

/// Effects whose sign depends on the unit carry no weight alone: the tables, learnt from one design, would give them some.
fn unit_dependent(response: &mut Response, cause: usize) {
    let mut widen = |channel: usize, deviation: f32| {
        if let Some(place) = response.beside.get_mut(channel) {
            *place += deviation * deviation;
        }
    };
    match cause {
        // A blocked outdoor coil took one tested unit's subcooling from 9.7 to 0.6 °F, and raised another's: as much as
        // the condensing temperature rises.
        3 => widen(LIQUID_LINE, 0.8 * at(&response.mean, CONDENSING)),
        // A leaking compressor's discharge runs hotter or cooler by the path of the leak.
        5 => widen(DISCHARGE, at(&response.mean, DISCHARGE)),
        _ => {}
    }
}

/// What a scale shows of a charge that is off, %: it needs no table.
fn of_charge(cause: usize, severity: f32) -> f32 {
    match cause {
        0 => 100.0 * math::ln_single(1.0 - severity),
        1 => 100.0 * math::ln_single(1.0 + severity),
        _ => 0.0,
    }
}

/// The causes of a pair, by their numbers less one.
pub(super) fn pair_causes(pair: usize) -> (usize, usize) {
    PAIR_CAUSES.get(pair).copied().unwrap_or((0, 0))
}

/// A severity of the tables.
pub(super) fn severity(signature: &Signature, cause: usize, node: usize) -> f32 {
    signature.severities.get(cause).and_then(|nodes| nodes.get(node)).copied().unwrap_or(0.0)
}
