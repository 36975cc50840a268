//! What a fault of some severity does to a unit's channels, and how units scatter about that.

use super::constants::{RELATIVE, SCATTER};
use super::expected::at;
use super::matrix::Vector;
use super::{CHANNELS, CHARGE, CONDENSING, DISCHARGE, EVAPORATING, LINE_DROP, LIQUID_LINE, SUCTION_LINE};
use crate::diagnosis::signature::{PAIR_CAUSES, Signature};
use crate::math;

/// The restriction by its number less one.
pub(super) const RESTRICTION: usize = 4;
/// Scatter of a liquid line that does not flash, K.
const STILL_K: f32 = 0.1;

/// What the response of a unit depends on: the air, and its own healthy superheat and subcooling.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Regressors([f32; 5]);

impl Regressors {
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

    /// Of one cause (by its number less one) at one of its severities.
    pub(super) fn of(signature: &Signature, cause: usize, node: usize, regressors: &Regressors) -> Self {
        let mut response = Self::NONE;
        let tables = (
            signature.mean.get(cause).and_then(|nodes| nodes.get(node)),
            signature.along.get(cause).and_then(|nodes| nodes.get(node)),
            signature.beside.get(cause).and_then(|nodes| nodes.get(node)),
        );
        if let (Some(mean), Some(along), Some(beside)) = tables {
            for ((row, steps), factor) in mean.iter().zip(&signature.mean_steps).zip(&regressors.0) {
                for ((place, count), step) in response.mean.iter_mut().zip(row).zip(steps) {
                    *place += factor * step * f32::from(*count);
                }
            }
            for ((place, count), step) in response.along.iter_mut().zip(along).zip(&signature.along_steps) {
                *place = SCATTER * step * f32::from(*count);
            }
            let usual = mean.first().into_iter().flatten().zip(signature.mean_steps.first().into_iter().flatten());
            let scatter = beside.iter().zip(&signature.beside_steps);
            for ((place, (count, step)), (mean_count, mean_step)) in response.beside.iter_mut().zip(scatter).zip(usual)
            {
                let rest = step * f32::from(*count);
                let other = RELATIVE * mean_step * f32::from(*mean_count);
                *place = SCATTER * SCATTER * (rest * rest + other * other);
            }
        }
        unit_dependent(&mut response, cause);
        // What a scale shows of the charge needs no table.
        let severity = severity(signature, cause, node);
        let share = match cause {
            0 => 1.0 - severity,
            1 => 1.0 + severity,
            _ => 1.0,
        };
        if let Some(place) = response.mean.get_mut(CHARGE) {
            *place = 100.0 * math::ln_single(share);
        }
        response
    }

    /// Of a restriction in the liquid line: where some of the liquid flashes behind it, or where none does and the line is
    /// as warm as it was.
    pub(super) fn of_restriction(signature: &Signature, node: usize, regressors: &Regressors, flashes: bool) -> Self {
        let mut response = Self::of(signature, RESTRICTION, node, regressors);
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
        response
    }

    /// The usual change for a small severity, in proportion from the least one of the tables.
    pub(super) fn slope(signature: &Signature, cause: usize, severity_now: f32) -> Vector {
        let usual = Regressors([1.0, 0.0, 0.0, 0.0, 0.0]);
        let least = Self::of(signature, cause, 0, &usual);
        let factor = severity_now / severity(signature, cause, 0).max(1e-3);
        least.mean.map(|x| factor * x)
    }

    /// Of a pair of causes: the sum of both, and what they do beyond it.
    pub(super) fn of_pair(
        signature: &Signature,
        pair: usize,
        nodes: (usize, usize),
        responses: (&Self, &Self),
        regressors: &Regressors,
    ) -> Self {
        let strength = ((nodes.0 + 1) * (nodes.1 + 1)) as f32 / 12.0;
        let (first, second) = responses;
        let mut both = Self::NONE;
        for (place, (x, y)) in both.mean.iter_mut().zip(first.mean.iter().zip(&second.mean)) {
            *place = x + y;
        }
        for (place, (x, y)) in both.beside.iter_mut().zip(first.beside.iter().zip(&second.beside)) {
            *place = x + y;
        }
        if let (Some(mean), Some(beside)) = (signature.pair_mean.get(pair), signature.pair_beside.get(pair)) {
            for ((row, steps), factor) in mean.iter().zip(&signature.pair_steps).zip(&regressors.0) {
                for ((place, count), step) in both.mean.iter_mut().zip(row).zip(steps) {
                    *place += strength * factor * step * f32::from(*count);
                }
            }
            for ((place, count), step) in both.beside.iter_mut().zip(beside).zip(&signature.pair_beside_steps) {
                let scatter = strength * step * f32::from(*count);
                *place += scatter * scatter;
            }
        }
        both
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
