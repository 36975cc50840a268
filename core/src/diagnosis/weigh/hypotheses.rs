//! Every hypothesis at some severity, and how well it explains what was measured.

use super::CHANNELS;
use super::constants::{BY_SEVERITY, BY_SEVERITY_OF_PAIR, CHARGE_COUNTS, FREEDOM, UNKNOWN};
use super::expected::at;
use super::matrix::{Batch, Half, LANES, Vector};
use super::response::{RESTRICTION, Regressors, Response, pair_causes};
use crate::diagnosis::cause::{Cause, CauseSet};
use crate::diagnosis::signature::{CAUSES, NODES, PAIRS, Signature};
use crate::math;

/// Severities at which each cause of a pair is weighed, by their places.
pub(super) const PAIR_NODES: [usize; 2] = [1, 3];
/// How many points there are: healthy, unmodelled, causes and pairs by severity.
pub(super) const POINTS: usize = ALL_PAIRS + NODES;
/// How many of them come before the pairs, and before the restrictions behind which nothing flashes.
const SINGLES: usize = 2 + CAUSES * NODES;
const ALL_PAIRS: usize = SINGLES + PAIRS * 4;

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

/// How many points are weighed in one step: single causes, or pairs at all their severities.
pub(super) const BATCH: usize = 8;
/// How many batches there are: single causes, pairs, restrictions behind which nothing flashes.
pub(super) const BATCHES: usize = SINGLES.div_ceil(BATCH) + PAIR_BATCHES + NODES.div_ceil(BATCH);
const PAIR_BATCHES: usize = (PAIRS * 4).div_ceil(BATCH);

/// The points of a batch.
const fn points(number: usize) -> (usize, usize) {
    let pairs = SINGLES.div_ceil(BATCH);
    let (before, group, end) = if number < pairs {
        (0, number, SINGLES)
    } else if number < pairs + PAIR_BATCHES {
        (SINGLES, number - pairs, ALL_PAIRS)
    } else {
        (ALL_PAIRS, number - pairs - PAIR_BATCHES, POINTS)
    };
    let first = before + group * BATCH;
    (first, if first + BATCH < end { first + BATCH } else { end })
}

/// What a point changes, with the scatter of up to two causes.
pub(super) struct Change {
    pub response: Response,
    pub second_along: Vector,
}

impl Change {
    pub(super) const NONE: Self = Self { response: Response::NONE, second_along: [0.0; CHANNELS] };

    /// Writes what a point changes over this.
    #[inline(never)]
    pub(super) fn put(&mut self, signature: &Signature, point: Point, regressors: &Regressors) {
        match point {
            Point::Healthy => *self = Self::NONE,
            Point::Unmodelled => {
                *self = Self::NONE;
                self.response.beside = UNKNOWN.map(|one| one * one);
            }
            Point::Single(RESTRICTION, node) | Point::Still(node) => {
                let flashes = !matches!(point, Point::Still(_));
                self.response.put_restriction(signature, node, regressors, flashes);
                self.second_along = [0.0; CHANNELS];
            }
            Point::Single(cause, node) => {
                self.response.put(signature, cause, node, regressors);
                self.second_along = [0.0; CHANNELS];
            }
            Point::Pair(pair, first, second) => self.put_whole_pair(signature, pair, (first, second), regressors),
        }
    }

    /// Not inlined, so that only who has no parts of a pair pays for them on the stack.
    #[inline(never)]
    fn put_whole_pair(&mut self, signature: &Signature, pair: usize, nodes: (usize, usize), regressors: &Regressors) {
        let causes = pair_causes(pair);
        let mut parts = [Response::NONE; 2];
        let [one, other] = &mut parts;
        one.put(signature, causes.0, nodes.0, regressors);
        other.put(signature, causes.1, nodes.1, regressors);
        self.put_pair(signature, pair, nodes, (one, other), regressors);
    }

    /// The same of a pair whose parts are known.
    fn put_pair(
        &mut self,
        signature: &Signature,
        pair: usize,
        nodes: (usize, usize),
        (one, other): (&Response, &Response),
        regressors: &Regressors,
    ) {
        self.response.put_pair(signature, pair, nodes, (one, other), regressors);
        self.response.along = one.along;
        self.second_along = other.along;
    }
}

/// The channels in another order, those that were measured first; and how many were.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Chosen {
    pub place: [u8; CHANNELS],
    pub count: usize,
}

impl Chosen {
    pub(super) const NONE: Self = Self { place: [0; CHANNELS], count: 0 };

    pub(super) fn of(present: &[bool; CHANNELS]) -> Self {
        let mut chosen = Self::NONE;
        let mut next = 0;
        for measured in [true, false] {
            for (channel, _) in (0_u8..).zip(present).filter(|(_, one)| **one == measured) {
                if let Some(place) = chosen.place.get_mut(next) {
                    *place = channel;
                    next += 1;
                }
            }
            if measured {
                chosen.count = next;
            }
        }
        chosen
    }

    /// The measured channels, in order.
    pub(super) fn measured(&self) -> impl Iterator<Item = usize> + '_ {
        self.place.iter().take(self.count).map(|channel| usize::from(*channel))
    }

    /// Where a channel that was not measured stands; `None` for one that was.
    pub(super) fn unmeasured(&self, channel: usize) -> Option<usize> {
        self.place.iter().position(|one| usize::from(*one) == channel).filter(|place| *place >= self.count)
    }

    /// Measured channels only.
    pub(super) fn vector(&self, full: &Vector) -> Vector {
        let mut short = [0.0; CHANNELS];
        for (place, channel) in short.iter_mut().zip(self.measured()) {
            *place = at(full, channel);
        }
        short
    }

    /// All channels, so that the measured ones are the leading block.
    #[inline(never)]
    pub(super) fn put_matrix(&self, ordered: &mut Half, full: &Half) {
        let mut places = ordered.0.iter_mut();
        for (i, row) in self.place.iter().enumerate() {
            for (column, place) in self.place.iter().take(i + 1).zip(&mut places) {
                *place = full.get(usize::from(*row), usize::from(*column));
            }
        }
    }
}

impl Batch {
    /// A point's change, and what it leaves of the residual: of the measured channels.
    #[inline(never)]
    fn put(&mut self, lane: usize, chosen: &Chosen, residual: &Vector, change: &Change) {
        let mut put = |place: usize, channel: usize, known: f32| {
            let (change, along) = (&change.response, &change.second_along);
            *self.residuals.get_mut(place)?.get_mut(lane)? = known - change.mean.get(channel)?;
            *self.first.get_mut(place)?.get_mut(lane)? = *change.along.get(channel)?;
            *self.second.get_mut(place)?.get_mut(lane)? = *along.get(channel)?;
            *self.beside.get_mut(place)?.get_mut(lane)? = *change.beside.get(channel)?;
            Some(())
        };
        for (place, (channel, known)) in chosen.measured().zip(residual).enumerate() {
            put(place, channel, *known);
        }
    }
}

/// Logarithm of the likelihood, up to what all share.
fn likelihood(squared: f32, determinant: f32, size: usize) -> f32 {
    let half = -0.5 * (FREEDOM + size as f32);
    half * math::ln_single(1.0 + squared / FREEDOM) - 0.5 * math::ln_single(determinant)
}

/// Weighs batches of points: gives each point's number, the logarithm of its likelihood up to what all share, and its
/// squared distance. The covariance's leading rows are those of the chosen channels.
#[inline(never)]
pub(super) fn weigh(
    (signature, regressors): (&Signature, &Regressors),
    (chosen, residual): (&Chosen, &Vector),
    covariance: &Half,
    batches: core::ops::Range<usize>,
    mut found: impl FnMut(usize, f32, f32),
) {
    let mut parts = Parts::NONE;
    let mut batch = Batch::NONE;
    let mut change = Change::NONE;
    for number in batches {
        let (from, to) = points(number);
        for start in (from..to).step_by(LANES) {
            for lane in 0..LANES {
                let point = Point::of((start + lane).min(to - 1));
                match point {
                    Point::Pair(pair, ..) => {
                        parts.put(signature, pair_causes(pair), regressors);
                        parts.put_change(&mut change, signature, point, regressors);
                    }
                    _ => change.put(signature, point, regressors),
                }
                batch.put(lane, chosen, residual, &change);
            }
            let (squared, determinants) = batch.distances(covariance, chosen.count);
            for (number, (squared, determinant)) in (start..to).zip(squared.into_iter().zip(determinants)) {
                found(number, likelihood(squared, determinant, chosen.count), squared);
            }
        }
    }
}

/// Of the pair that is weighed, each cause's response at both severities: kept while pairs follow that share it.
struct Parts {
    causes: [usize; 2],
    responses: [[Response; 2]; 2],
}

impl Parts {
    const NONE: Self = Self { causes: [usize::MAX; 2], responses: [[Response::NONE; 2]; 2] };

    fn put(&mut self, signature: &Signature, causes: (usize, usize), regressors: &Regressors) {
        for ((known, responses), cause) in self.causes.iter_mut().zip(&mut self.responses).zip([causes.0, causes.1]) {
            if *known != cause {
                *known = cause;
                for (response, node) in responses.iter_mut().zip(PAIR_NODES) {
                    response.put(signature, cause, node, regressors);
                }
            }
        }
    }

    fn put_change(&self, change: &mut Change, signature: &Signature, point: Point, regressors: &Regressors) {
        let Point::Pair(pair, first, second) = point else { return };
        let [[one_less, one_more], [other_less, other_more]] = &self.responses;
        let one = if first == PAIR_NODES[0] { one_less } else { one_more };
        let other = if second == PAIR_NODES[0] { other_less } else { other_more };
        change.put_pair(signature, pair, (first, second), (one, other), regressors);
    }
}
