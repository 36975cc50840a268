//! Evidence weighed: what a healthy unit would show, what each fault would change, and how well each explains what was
//! measured.
//!
//! A reading becomes channels with a covariance of their errors ([`channels`]); a healthy unit's channels are expected from
//! its class, the protocol, the maker and its own baseline ([`expected`]); a fault moves them by a mean and a scatter
//! ([`response`]); a hypothesis is as likely as its prior says and its likelihood, a multivariate t-distribution, averaged
//! over severities ([`hypotheses`]). Which of them to stand by is decided by expected harm ([`decide`]).

mod channels;
mod constants;
mod decide;
mod expected;
mod features;
mod hypotheses;
mod mass;
mod matrix;
mod next;
mod response;

use super::amount::ChargeAmount;
use super::cause::{CauseSet, Conclusion, ConclusionReason, Hypotheses};
use super::feature::Features;
use super::finding::NextCheck;
use super::priors::Priors;
use crate::math;
use crate::reading::Reading;
use channels::{Around, Measured, instruments};
use constants::{FEWEST, HEALTHY_CHARGE};
use expected::{Expected, Kind};
use hypotheses::{Chosen, POINTS, Point};
use matrix::{Half, LANES, Vector};
use response::{Regressors, Response};

/// How many channels there are.
const CHANNELS: usize = 15;
const EVAPORATING: usize = 0;
const SUCTION_LINE: usize = 1;
const CONDENSING: usize = 2;
const LIQUID_LINE: usize = 3;
const DISCHARGE: usize = 4;
const SUPPLY: usize = 5;
const CONDENSER_AIR: usize = 6;
const POWER: usize = 7;
const AIRFLOW: usize = 8;
const SURFACE: usize = 9;
const DISCHARGE_CONDENSING: usize = 10;
const COIL_OUTLET: usize = 11;
const SUPPLY_WET: usize = 12;
const LINE_DROP: usize = 13;
const CHARGE: usize = 14;

/// What weighing says of a reading.
#[derive(Debug, Clone, Copy)]
pub(super) struct Evidence {
    pub hypotheses: Hypotheses,
    pub conclusion: Conclusion,
    pub fits: bool,
    pub features: Features,
    pub next_check: NextCheck,
    pub amount: Option<ChargeAmount>,
}

impl Evidence {
    /// None was weighed, and why.
    pub(super) const fn none(reason: ConclusionReason) -> Self {
        Self {
            hypotheses: Hypotheses::NONE,
            conclusion: Conclusion::cannot_tell(reason),
            fits: true,
            features: Features::NONE,
            next_check: NextCheck::TakeMissing,
            amount: None,
        }
    }
}

/// A weighing under way, in slices: an instrument may do other things between two of them.
#[derive(Debug, Clone, Copy)]
pub(super) struct Weighing {
    kind: Kind,
    around: Around,
    measured: Measured,
    expected: Expected,
    chosen: Chosen,
    /// Covariance of measured less expected of a healthy unit, all channels.
    full: Half,
    /// The same of the measured channels, in their order.
    covariance: Half,
    /// Measured less expected of the measured channels, in their order.
    residual: Vector,
    regressors: Regressors,
    logs: [f32; POINTS],
    /// Squared distance of the best point so far, with its logarithm.
    best: (f32, f32),
    done: usize,
}

impl Weighing {
    /// Begins; `None` where the refrigerant or the metering device is not known or too little was measured.
    pub(super) fn begin(reading: &Reading, baseline: &[Reading]) -> Option<Self> {
        let kind = Kind::of(reading)?;
        let around = Around::of(reading);
        let measured = Measured::of(reading, kind.curves, &around);
        if measured.count() < FEWEST {
            return None;
        }
        let expected = Expected::of(&kind, reading, &around, baseline);
        let mut full = instruments(reading, &measured, &around, &kind.slopes(&around));
        full.add_all(&expected.unit, 1.0);
        full.add_all(&kind.within(), 1.0);
        // Healthy does not mean charged to the gram.
        full.add_outer(&Response::slope(kind.signature, 0, HEALTHY_CHARGE));
        let chosen = Chosen::of(&measured.present);
        let off: Vector = core::array::from_fn(|k| expected::at(&measured.value, k) - expected::at(&expected.mean, k));
        let regressors = Regressors::of(&around.kelvin, &expected.mean);
        let (covariance, residual) = (chosen.matrix(&full), chosen.vector(&off));
        Some(Self {
            kind,
            around,
            measured,
            expected,
            chosen,
            full,
            covariance,
            residual,
            regressors,
            logs: [f32::NEG_INFINITY; POINTS],
            best: (f32::INFINITY, f32::NEG_INFINITY),
            done: 0,
        })
    }

    /// Weighs a few more hypotheses; true once all are weighed.
    pub(super) fn step(&mut self) -> bool {
        if self.done >= POINTS {
            return true;
        }
        let (logs, squared) = hypotheses::weigh(
            self.kind.signature,
            &self.regressors,
            &self.chosen,
            &self.covariance,
            &self.residual,
            self.done,
        );
        for (lane, (log, squared)) in logs.into_iter().zip(squared).enumerate() {
            let number = self.done + lane;
            if let Some(place) = self.logs.get_mut(number) {
                *place = log;
                if log > self.best.1 && Point::of(number) != Point::Unmodelled {
                    self.best = (squared, log);
                }
            }
        }
        self.done += LANES;
        self.done >= POINTS
    }

    /// The answer, once all are weighed.
    pub(super) fn finish(&self, reading: &Reading, priors: &Priors) -> Evidence {
        if self.done < POINTS {
            let mut all = *self;
            while !all.step() {}
            return all.finish(reading, priors);
        }
        let weights = self.weights(priors);
        let hypotheses = gathered(&weights);
        let fits = self.fits(&hypotheses);
        let conclusion =
            if fits { decide::decide(&hypotheses) } else { Conclusion::cannot_tell(ConclusionReason::NothingFits) };
        Evidence {
            hypotheses,
            conclusion,
            fits,
            features: features::features(self, reading),
            next_check: next::next_check(self, &weights, &hypotheses, &conclusion),
            amount: mass::amount(self, reading, &weights, &hypotheses, &conclusion),
        }
    }

    /// Probability of every point.
    fn weights(&self, priors: &Priors) -> [f32; POINTS] {
        let mut logs = self.logs;
        for (number, log) in logs.iter_mut().enumerate() {
            let point = Point::of(number);
            let prior = priors.weight(point.causes()) as f32 * point.share(self.kind.signature);
            *log += math::ln_single(prior.max(1e-30));
        }
        let most = logs.iter().copied().fold(f32::NEG_INFINITY, f32::max);
        let mut weights = logs.map(|log| math::exp_single(log - most));
        let sum: f32 = weights.iter().sum();
        weights.iter_mut().for_each(|weight| *weight /= sum);
        weights
    }

    /// Whether the best known explanation is one at all: its squared distance not beyond what one reading in a thousand
    /// has (chi-squared by Wilson and Hilferty's approximation, from memory), and no unknown one likelier than all known.
    fn fits(&self, hypotheses: &Hypotheses) -> bool {
        let count = self.chosen.count as f32;
        let ninth = 2.0 / (9.0 * count);
        let cube = 1.0 - ninth + 3.09 * crate::math::sqrt(f64::from(ninth)) as f32;
        let known =
            hypotheses.first().is_none_or(|first| first.causes != CauseSet::one(super::cause::Cause::Unmodelled));
        known && self.best.0 <= 1.3 * count * cube * cube * cube
    }
}

/// Points gathered into hypotheses, most likely first.
fn gathered(weights: &[f32; POINTS]) -> Hypotheses {
    let mut all = Hypotheses::NONE;
    for (number, weight) in weights.iter().enumerate() {
        all.add(Point::of(number).causes(), f64::from(*weight));
    }
    all.normalise();
    all.sort();
    all
}
