//! Every hypothesis at some severity, and how well it explains what was measured.

use super::CHANNELS;
use super::constants::{BY_SEVERITY, BY_SEVERITY_OF_PAIR, CHARGE_COUNTS, FREEDOM, UNKNOWN};
use super::expected::at;
use super::matrix::{HALF, Half, LANES, Lane, Vector, distances};
use super::response::{RESTRICTION, Regressors, Response, pair_causes};
use crate::diagnosis::cause::{Cause, CauseSet};
use crate::diagnosis::signature::{CAUSES, NODES, PAIRS, Signature};
use crate::math;

/// Severities at which each cause of a pair is weighed, by their places.
pub(super) const PAIR_NODES: [usize; 2] = [1, 3];
/// How many points there are: healthy, unmodelled, causes and pairs by severity.
pub(super) const POINTS: usize = 2 + CAUSES * NODES + PAIRS * 4 + NODES;

/// A hypothesis at a severity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Point {
    Healthy,
    Unmodelled,
    /// A cause by its number less one, and the place of its severity.
    Single(usize, usize),
    /// A pair, and the places of both severities.
    Pair(usize, usize, usize),
    /// A restriction behind which no liquid flashes, by the place of its severity.
    Still(usize),
}

impl Point {
    pub(super) const fn of(number: usize) -> Self {
        const SINGLES: usize = 2 + CAUSES * NODES;
        const ALL_PAIRS: usize = SINGLES + PAIRS * 4;
        match number {
            0 => Self::Healthy,
            1 => Self::Unmodelled,
            _ if number < SINGLES => Self::Single((number - 2) / NODES, (number - 2) % NODES),
            _ if number >= ALL_PAIRS => Self::Still(number - ALL_PAIRS),
            _ => {
                let place = number - SINGLES;
                let first = if place % 4 >= 2 { PAIR_NODES[1] } else { PAIR_NODES[0] };
                let second = if place % 2 == 1 { PAIR_NODES[1] } else { PAIR_NODES[0] };
                Self::Pair(place / 4, first, second)
            }
        }
    }

    /// The causes.
    pub(super) fn causes(self) -> CauseSet {
        match self {
            Self::Healthy => CauseSet::HEALTHY,
            Self::Unmodelled => CauseSet::one(Cause::Unmodelled),
            Self::Single(cause, _) => CauseSet::one(numbered(cause)),
            Self::Still(_) => CauseSet::one(numbered(RESTRICTION)),
            Self::Pair(pair, ..) => {
                let (first, second) = pair_causes(pair);
                CauseSet::two(numbered(first), numbered(second))
            }
        }
    }

    /// How common its severity is among those of its hypothesis.
    pub(super) fn share(self, signature: &Signature) -> f32 {
        let of_pair = |node| BY_SEVERITY_OF_PAIR.get(usize::from(node == PAIR_NODES[1])).copied().unwrap_or(0.0);
        match self {
            Self::Healthy | Self::Unmodelled => 1.0,
            // What is too small to count is no fault: it belongs to healthy units.
            Self::Single(cause, node) => {
                let mut shares = signature.counts.get(cause).copied().unwrap_or(BY_SEVERITY);
                if cause <= 1 {
                    shares.iter_mut().zip(CHARGE_COUNTS).for_each(|(place, least)| *place = place.max(least));
                }
                shares.iter_mut().zip(BY_SEVERITY).for_each(|(place, common)| *place *= common);
                let sum: f32 = shares.iter().sum();
                let still = if cause == RESTRICTION { signature.still.get(node).copied().unwrap_or(0.0) } else { 0.0 };
                (1.0 - still) * shares.get(node).copied().unwrap_or(0.0) / sum.max(1e-6)
            }
            Self::Still(node) => {
                let still = signature.still.get(node).copied().unwrap_or(0.0);
                still / (1.0 - still).max(1e-3) * Self::Single(RESTRICTION, node).share(signature)
            }
            Self::Pair(_, first, second) => of_pair(first) * of_pair(second),
        }
    }
}

/// A cause by its number less one.
pub(super) fn numbered(cause: usize) -> Cause {
    Cause::ALL.get(cause).copied().unwrap_or(Cause::Unmodelled)
}

/// What a point changes, with the scatter of up to two causes.
pub(super) struct Change {
    pub response: Response,
    pub second_along: Vector,
}

impl Change {
    pub(super) fn of(signature: &Signature, point: Point, regressors: &Regressors) -> Self {
        let single = |cause, node| Response::of(signature, cause, node, regressors);
        match point {
            Point::Healthy => Self { response: Response::NONE, second_along: [0.0; CHANNELS] },
            Point::Unmodelled => Self {
                response: Response { beside: UNKNOWN.map(|one| one * one), ..Response::NONE },
                second_along: [0.0; CHANNELS],
            },
            Point::Single(RESTRICTION, node) => Self {
                response: Response::of_restriction(signature, node, regressors, true),
                second_along: [0.0; CHANNELS],
            },
            Point::Still(node) => Self {
                response: Response::of_restriction(signature, node, regressors, false),
                second_along: [0.0; CHANNELS],
            },
            Point::Single(cause, node) => Self { response: single(cause, node), second_along: [0.0; CHANNELS] },
            Point::Pair(pair, first_node, second_node) => {
                let (first, second) = pair_causes(pair);
                let (one, other) = (single(first, first_node), single(second, second_node));
                let nodes = (first_node, second_node);
                let both = Response::of_pair(signature, pair, nodes, (&one, &other), regressors);
                Self { response: Response { along: one.along, ..both }, second_along: other.along }
            }
        }
    }
}

/// The channels that were measured, in order, and how many.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Chosen {
    pub place: [u8; CHANNELS],
    pub count: usize,
}

impl Chosen {
    pub(super) fn of(present: &[bool; CHANNELS]) -> Self {
        let mut chosen = Self { place: [0; CHANNELS], count: 0 };
        for (channel, present) in (0_u8..).zip(present) {
            if let (true, Some(place)) = (*present, chosen.place.get_mut(chosen.count)) {
                *place = channel;
                chosen.count += 1;
            }
        }
        chosen
    }

    pub(super) fn vector(&self, full: &Vector) -> Vector {
        let mut short = [0.0; CHANNELS];
        for (place, channel) in short.iter_mut().zip(self.place).take(self.count) {
            *place = at(full, usize::from(channel));
        }
        short
    }

    pub(super) fn matrix(&self, full: &Half) -> Half {
        let mut short = Half::ZERO;
        for (i, row) in self.place.iter().enumerate().take(self.count) {
            for (j, column) in self.place.iter().enumerate().take(i + 1) {
                short.add(i, j, full.get(usize::from(*row), usize::from(*column)));
            }
        }
        short
    }
}

/// Logarithms of the likelihoods of [`LANES`] points from the one of a number on, up to what all share; and the squared
/// distances. Points beyond the last repeat it.
#[inline(never)]
pub(super) fn weigh(
    signature: &Signature,
    regressors: &Regressors,
    chosen: &Chosen,
    covariance: &Half,
    residual: &Vector,
    from: usize,
) -> (Lane, Lane) {
    let size = chosen.count;
    let mut residuals = [[0.0; LANES]; CHANNELS];
    let mut first = [[0.0; LANES]; CHANNELS];
    let mut second = [[0.0; LANES]; CHANNELS];
    let mut beside = [[0.0; LANES]; CHANNELS];
    for lane in 0..LANES {
        let point = Point::of((from + lane).min(POINTS - 1));
        let change = Change::of(signature, point, regressors);
        for (place, channel) in chosen.place.iter().enumerate().take(size) {
            let channel = usize::from(*channel);
            let put = |target: &mut [Lane; CHANNELS], value: f32| {
                if let Some(one) = target.get_mut(place).and_then(|row| row.get_mut(lane)) {
                    *one = value;
                }
            };
            put(&mut residuals, at(residual, place) - at(&change.response.mean, channel));
            put(&mut first, at(&change.response.along, channel));
            put(&mut second, at(&change.second_along, channel));
            put(&mut beside, at(&change.response.beside, channel));
        }
    }
    let mut matrices = [[0.0; LANES]; HALF];
    let mut rest: &mut [Lane] = &mut matrices;
    let mut known: &[f32] = &covariance.0;
    for i in 0..size {
        let (Some((row, after)), Some((from, known_after))) =
            (rest.split_at_mut_checked(i + 1), known.split_at_checked(i + 1))
        else {
            break;
        };
        let (Some(x), Some(y), Some(extra)) = (first.get(i), second.get(i), beside.get(i)) else { break };
        for (((place, base), a), b) in row.iter_mut().zip(from).zip(&first).zip(&second) {
            *place = core::array::from_fn(|k| base + x[k] * a[k] + y[k] * b[k]);
        }
        if let Some(place) = row.last_mut() {
            *place = core::array::from_fn(|k| place[k] + extra[k]);
        }
        (rest, known) = (after, known_after);
    }
    let (squared, determinant) = distances(&mut matrices, &mut residuals, size);
    let half = -0.5 * (FREEDOM + size as f32);
    let logs = core::array::from_fn(|k| {
        half * math::ln_single(1.0 + squared[k] / FREEDOM) - 0.5 * math::ln_single(determinant[k])
    });
    (logs, squared)
}
