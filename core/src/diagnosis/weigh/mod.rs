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
use super::signature::Signature;
use crate::math;
use crate::reading::Reading;
use channels::{Around, Measured, instruments};
use constants::{FEWEST, HEALTHY_CHARGE, WITHIN};
use expected::{Expected, Kind};
use features::{Compared, variances};
use hypotheses::{BATCHES, Chosen, POINTS, Point};
use matrix::{Half, Vector};
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

/// What weighing says of a reading, besides its features.
#[derive(Debug, Clone, Copy)]
pub(super) struct Evidence<'a> {
    pub hypotheses: &'a Hypotheses,
    pub features: &'a Features,
    pub conclusion: Conclusion,
    pub fits: bool,
    pub next_check: NextCheck,
    pub amount: Option<ChargeAmount>,
}

/// A weighing under way, in slices: an instrument may do other things between two of them. Begun where it is to stand,
/// since it is too large to be moved about on the stack of a small board.
#[derive(Debug, Clone, Copy)]
pub(super) struct Weighing {
    signature: &'static Signature,
    chosen: Chosen,
    compared: Compared,
    /// Covariance of measured less expected of a healthy unit, measured channels first.
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
    /// Before anything is weighed.
    pub(super) const NONE: Self = Self {
        signature: Signature::VALVE,
        chosen: Chosen::NONE,
        compared: Compared::NONE,
        covariance: Half::ZERO,
        residual: [0.0; CHANNELS],
        regressors: Regressors::NONE,
        logs: [f32::NEG_INFINITY; POINTS],
        best: (f32::INFINITY, f32::NEG_INFINITY),
        done: 0,
    };

    /// Begins anew; false where the refrigerant or the metering device is not known or too little was measured.
    pub(super) fn begin(&mut self, reading: &Reading, baseline: &[Reading]) -> bool {
        let (Some(kind), Some(curves)) = (Kind::of(reading), reading.refrigerant) else { return false };
        let around = Around::of(reading);
        let measured = Measured::of(reading, curves, &around);
        if measured.count() < FEWEST {
            return false;
        }
        let mut expected = Expected::NONE;
        expected.put(&kind, reading, &around, baseline);
        self.signature = kind.signature;
        self.chosen = Chosen::of(&measured.present);
        self.compare(&kind, reading, (&around, &measured), &mut expected);
        let off: Vector = core::array::from_fn(|k| expected::at(&measured.value, k) - expected::at(&expected.mean, k));
        self.residual = self.chosen.vector(&off);
        self.regressors.put(kind.signature, &around.kelvin, &expected.mean);
        self.logs = [f32::NEG_INFINITY; POINTS];
        self.best = (f32::INFINITY, f32::NEG_INFINITY);
        self.done = 0;
        true
    }

    /// The covariance, and what features are made of.
    #[inline(never)]
    fn compare(
        &mut self,
        kind: &Kind,
        reading: &Reading,
        (around, measured): (&Around, &Measured),
        expected: &mut Expected,
    ) {
        let mut full = Half::ZERO;
        instruments(&mut full, reading, measured, around, &kind.slopes(around));
        self.compared.put(measured, around, expected);
        self.compared.of_probes = variances(&full);
        let within = &kind.signature.within;
        full.0.iter_mut().zip(&expected.unit.0).for_each(|(place, unit)| *place += unit);
        full.add_table(within, WITHIN);
        // Healthy does not mean charged to the gram.
        full.add_outer(&Response::slope(kind.signature, 0, HEALTHY_CHARGE));
        self.chosen.put_matrix(&mut self.covariance, &full);
        expected.unit.add_table(within, WITHIN);
        self.compared.of_unit = variances(&expected.unit);
    }

    /// Weighs a few more hypotheses; true once all are weighed.
    pub(super) fn step(&mut self) -> bool {
        self.weigh_up_to(self.done + 1);
        self.is_done()
    }

    /// Weighs all that are left, sooner than step by step.
    pub(super) fn weigh_rest(&mut self) {
        self.weigh_up_to(BATCHES);
    }

    #[inline(never)]
    fn weigh_up_to(&mut self, end: usize) {
        let end = end.min(BATCHES);
        let (logs, best) = (&mut self.logs, &mut self.best);
        hypotheses::weigh(
            (self.signature, &self.regressors),
            (&self.chosen, &self.residual),
            &self.covariance,
            self.done..end,
            |number, log, squared| {
                if let Some(place) = logs.get_mut(number) {
                    *place = log;
                }
                if log > best.1 && Point::of(number) != Point::Unmodelled {
                    *best = (squared, log);
                }
            },
        );
        self.done = end;
    }

    /// Whether all are weighed.
    pub(super) const fn is_done(&self) -> bool {
        self.done >= BATCHES
    }

    /// The answer, once all are weighed; hypotheses and features are written to their places.
    #[inline(never)]
    pub(super) fn finish<'a>(
        &self,
        reading: &Reading,
        priors: &Priors,
        hypotheses: &'a mut Hypotheses,
        features: &'a mut Features,
    ) -> Evidence<'a> {
        let mut weights = [0.0; POINTS];
        self.weigh_priors(&mut weights, priors);
        gather(hypotheses, &weights);
        let hypotheses = &*hypotheses;
        let fits = self.fits(hypotheses);
        let conclusion =
            if fits { decide::decide(hypotheses) } else { Conclusion::cannot_tell(ConclusionReason::NothingFits) };
        features::put(features, &self.compared);
        Evidence {
            hypotheses,
            features,
            conclusion,
            fits,
            next_check: next::next_check(self, &weights, hypotheses, &conclusion),
            amount: mass::amount(self, reading, &weights, hypotheses, &conclusion),
        }
    }

    /// Probability of every point.
    #[inline(never)]
    fn weigh_priors(&self, weights: &mut [f32; POINTS], priors: &Priors) {
        *weights = self.logs;
        let mut prior = (None, 0.0);
        for (number, log) in weights.iter_mut().enumerate() {
            let point = Point::of(number);
            // All points of a hypothesis share its prior, by how common their severities are.
            let causes = Some(point.causes());
            if causes != prior.0 {
                prior = (causes, priors.weight(point.causes()) as f32);
            }
            *log += math::ln_single((prior.1 * point.share(self.signature)).max(1e-30));
        }
        let most = weights.iter().copied().fold(f32::NEG_INFINITY, f32::max);
        weights.iter_mut().for_each(|log| *log = math::exp_single(*log - most));
        let sum: f32 = weights.iter().sum();
        weights.iter_mut().for_each(|weight| *weight /= sum);
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

/// Points gathered into hypotheses, most likely first. Their probabilities sum to 1 to double precision.
#[inline(never)]
fn gather(all: &mut Hypotheses, weights: &[f32; POINTS]) {
    all.clear();
    for (number, weight) in weights.iter().enumerate() {
        all.add(Point::of(number).causes(), f64::from(*weight));
    }
    all.normalise();
    all.sort();
}
