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
pub(super) struct Regressors([f32; 5]);

impl Regressors {
    /// Of the usual unit in the usual air.
    pub(super) const NONE: Self = Self([1.0, 0.0, 0.0, 0.0, 0.0]);

    /// Of the air (K: outdoors, return dry and wet bulb) and of what is expected of the healthy unit.
    pub(super) fn of(air: &[f32; 3], expected: &Vector) -> Self {
        let [outdoor, _, wet] = *air;
        // As far as the tables reach: beyond, they would be stretched.
        let superheat = (at(expected, SUCTION_LINE) - at(expected, EVAPORATING)).clamp(0.0, 16.0);
        let subcooling = (at(expected, CONDENSING) - at(expected, LIQUID_LINE)).clamp(1.0, 12.0);
        Self([1.0, (outdoor - 308.15) / 10.0, (wet - 291.0) / 3.0, (superheat - 6.0) / 4.0, (subcooling - 6.0) / 2.0])
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
        for channel in 0..TABLED {
            let mut sum = 0.0;
            for ((row, steps), factor) in mean.iter().zip(&signature.mean_steps).zip(&regressors.0) {
                sum += factor * steps[channel] * f32::from(row[channel]);
            }
            self.mean[channel] = sum;
            self.along[channel] = SCATTER * signature.along_steps[channel] * f32::from(along[channel]);
            let rest = signature.beside_steps[channel] * f32::from(beside[channel]);
            let other = RELATIVE * signature.mean_steps[0][channel] * f32::from(mean[0][channel]);
            self.beside[channel] = SCATTER * SCATTER * (rest * rest + other * other);
        }
        self.along[CHARGE] = 0.0;
        self.beside[CHARGE] = 0.0;
        // What a scale shows of the charge needs no table.
        let severity = severity(signature, cause, node);
        self.mean[CHARGE] = match cause {
            0 => 100.0 * math::ln_single(1.0 - severity),
            1 => 100.0 * math::ln_single(1.0 + severity),
            _ => 0.0,
        };
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
        let mut least = Self::NONE;
        least.put(signature, cause, 0, &Regressors::NONE);
        let factor = severity_now / severity(signature, cause, 0).max(1e-3);
        least.mean.map(|x| factor * x)
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
        let factors: [f32; 3] = core::array::from_fn(|k| strength * regressors.0[k]);
        for channel in 0..TABLED {
            for ((row, steps), factor) in mean.iter().zip(&signature.pair_steps).zip(factors) {
                self.mean[channel] += factor * steps[channel] * f32::from(row[channel]);
            }
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

/// The causes of a pair, by their numbers less one.
pub(super) fn pair_causes(pair: usize) -> (usize, usize) {
    PAIR_CAUSES.get(pair).copied().unwrap_or((0, 0))
}

/// A severity of the tables.
pub(super) fn severity(signature: &Signature, cause: usize, node: usize) -> f32 {
    signature.severities.get(cause).and_then(|nodes| nodes.get(node)).copied().unwrap_or(0.0)
}
