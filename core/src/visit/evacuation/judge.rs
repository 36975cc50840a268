//! From the shape of the pressures to the answer.

use super::answers::{Advice, Behaviour, Cause, Caution, Outcome, Reason};
use super::shape::Shape;
use super::{
    CAUSES_MAX, COVERAGE, DEFAULT_LEAST_TIME_S, DEFAULT_LIMIT_PA, DEFAULT_RESOLUTION_PA, DEFAULT_SHARE,
    DEFAULT_TARGET_PA, Decay, DecayFinding, LOOK_AHEAD, SQRT_3, bit, frost_point,
};
use crate::air::water;
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::quantity::Temperature;
use crate::uncertain::Uncertain;
use crate::uncertain::root_of_squares;
use crate::visit::standing::Uncertainty;

const SQRT_12: f64 = 2.0 * SQRT_3;

/// What is asked for, defaults filled in.
pub(super) struct Asked {
    pub noise_pa: f64,
    share: f64,
    target_pa: f64,
    limit_pa: f64,
    least_time_s: f64,
}

impl Asked {
    pub fn of(decay: &Decay<'_>) -> Result<Self, Error> {
        let resolution = bounds::VACUUM_NOISE.check(decay.resolution_pa.unwrap_or(DEFAULT_RESOLUTION_PA))?;
        let noise = decay.noise_pa.map_or(Ok(0.0), |noise| bounds::VACUUM_NOISE.check(noise))?;
        let target_pa = bounds::VACUUM_LIMIT.check(decay.target_pa.unwrap_or(DEFAULT_TARGET_PA))?;
        let limit_pa = bounds::VACUUM_LIMIT.check(decay.limit_pa.unwrap_or(DEFAULT_LIMIT_PA))?;
        let bound = bounds::VACUUM_LIMIT;
        let advice = "the limit after isolation lies above the target of the evacuation";
        bounds::within(bound.quantity, bound.unit, limit_pa, target_pa, bound.upper, advice)?;
        Ok(Self {
            noise_pa: root_of_squares([resolution / SQRT_12, noise]),
            share: bounds::VACUUM_SHARE.check(decay.share.unwrap_or(DEFAULT_SHARE))?,
            target_pa,
            limit_pa,
            least_time_s: bounds::TEST_DURATION.check(decay.least_time_s.unwrap_or(DEFAULT_LEAST_TIME_S))?,
        })
    }

    pub fn water(&self, coldest: Temperature, uncertainty_k: Option<f64>) -> Result<Uncertain, Error> {
        let (value, slope) = water::saturation(bounds::WATER_TEMPERATURE.check(coldest.kelvin())?);
        let kelvin = Uncertainty::given(None, uncertainty_k, coldest)?.temperature_k;
        Uncertain::new(value, slope * kelvin)
    }

    /// With the uncertainty of the gauge's scale.
    fn scaled(&self, pressure: Uncertain) -> Uncertain {
        let standard_uncertainty = root_of_squares([pressure.standard_uncertainty, self.share * pressure.value]);
        Uncertain { standard_uncertainty, ..pressure }
    }

    /// The least time for a straight rise from a pressure to the limit within the time asked for to show at an interval
    /// between readings: the slope of n even readings over T has the standard uncertainty noise·√(12/n)/T.
    fn least_time(&self, from: f64, noise: f64, interval: f64) -> f64 {
        let rate = (self.limit_pa - from) / self.least_time_s;
        if rate > 0.0 {
            let needed = math::pow(COVERAGE * noise * math::sqrt(12.0 * interval) / rate, 2.0 / 3.0);
            needed.max(self.least_time_s)
        } else {
            self.least_time_s
        }
    }

    fn judge(
        &self,
        found: &Shape,
        first: Uncertain,
        last: Uncertain,
        water: f64,
        span: f64,
        reaches: Option<f64>,
    ) -> Reason {
        let wide = |pressure: Uncertain| COVERAGE * pressure.standard_uncertainty;
        if found.behaviour == Behaviour::Falling {
            Reason::Fell
        } else if last.value - wide(last) > self.limit_pa {
            Reason::AboveLimit
        } else if first.value - wide(first) > self.target_pa {
            Reason::NotPulledDown
        } else if span < self.least_time_s {
            Reason::TooShort
        } else if reaches.is_some_and(|time| time < LOOK_AHEAD * self.least_time_s) {
            Reason::StillRising
        } else if last.value + wide(last) > self.limit_pa {
            Reason::NearLimit
        } else if water < self.limit_pa {
            Reason::TooColdToSeeWater
        } else {
            Reason::Held
        }
    }
}

/// When the shape reaches a limit, s from its beginning.
fn reaches(found: &Shape, limit: f64) -> Option<f64> {
    let (first, rate) = (found.first_pa.value, found.rate_pa_s.value);
    match (found.behaviour, found.plateau_pa, found.time_constant_s) {
        (Behaviour::Straight | Behaviour::Undecided, ..) => (rate > 0.0).then(|| ((limit - first) / rate).max(0.0)),
        (Behaviour::LevellingOff, Some(plateau), Some(tau)) => {
            let share = (limit - first) / (plateau.value - first);
            (share < 1.0).then(|| -tau * math::ln(1.0 - share.max(0.0)))
        }
        // The straight part carries it on from the level.
        (Behaviour::Both, Some(plateau), _) => (rate > 0.0).then(|| ((limit - plateau.value) / rate).max(0.0)),
        _ => None,
    }
}

pub(super) fn finding(
    asked: &Asked,
    found: &Shape,
    water: Uncertain,
    (start, span): (f64, f64),
    count: f64,
) -> DecayFinding {
    let (first, last) = (asked.scaled(found.first_pa), asked.scaled(found.last_pa));
    let plateau = found.plateau_pa.map(|plateau| asked.scaled(plateau));
    let reaches_limit_s = reaches(found, asked.limit_pa);
    let reason = asked.judge(found, first, last, water.value, span, reaches_limit_s);
    let outcome = match reason {
        Reason::Held => Outcome::Pass,
        Reason::AboveLimit | Reason::NotPulledDown => Outcome::Fail,
        _ => Outcome::CannotTell,
    };
    let causes = causes(found.behaviour, plateau, water);
    let wet = causes.contains(&Some(Cause::Moisture));
    let leaks = causes.first() == Some(&Some(Cause::Leak));
    let frozen = last.value < water::saturation(water::TRIPLE_POINT_K).0;
    DecayFinding {
        outcome,
        reason,
        behaviour: found.behaviour,
        causes,
        advice: match reason {
            Reason::Held => Advice::Charge,
            Reason::Fell => Advice::CheckGauge,
            Reason::TooColdToSeeWater => Advice::Warm,
            Reason::NotPulledDown | Reason::AboveLimit if wet => Advice::BreakWithNitrogen,
            Reason::AboveLimit | Reason::StillRising if leaks && found.behaviour != Behaviour::Undecided => {
                Advice::FindLeak
            }
            Reason::NotPulledDown | Reason::AboveLimit => Advice::PumpLonger,
            Reason::TooShort | Reason::NearLimit | Reason::StillRising => Advice::WatchLonger,
        },
        cautions: [
            (Caution::LicensedPractice, true),
            (Caution::NoMotorInVacuum, true),
            (Caution::GaugeAway, true),
            (Caution::WaterFreezes, frozen),
        ]
        .into_iter()
        .filter(|(_, given)| *given)
        .fold(0, |bits, (caution, _)| bits | bit(caution)),
        watched_s: span,
        least_time_s: asked.least_time(first.value, found.noise_pa, span / (count - 1.0)),
        first_pa: first,
        last_pa: last,
        rate_pa_s: found.rate_pa_s,
        smallest_rate_pa_s: COVERAGE * found.rate_pa_s.standard_uncertainty,
        plateau_pa: plateau,
        time_constant_s: found.time_constant_s,
        reaches_limit_s: reaches_limit_s.map(|time| start + time),
        water_pressure_pa: water,
        frost_point_k: frost_point(last.value).ok().map(Temperature::kelvin),
        noise_pa: found.noise_pa,
        evidence_for_curve: found.for_curve,
    }
}

fn causes(behaviour: Behaviour, plateau: Option<Uncertain>, water: Uncertain) -> [Option<Cause>; CAUSES_MAX] {
    let at_water = plateau.is_some_and(|plateau| {
        let apart = root_of_squares([plateau.standard_uncertainty, water.standard_uncertainty]);
        (plateau.value - water.value).abs() <= COVERAGE * apart
    });
    let (likelier, other) = if at_water {
        (Some(Cause::Moisture), Some(Cause::Outgassing))
    } else {
        (Some(Cause::Outgassing), Some(Cause::SlowMoisture))
    };
    match behaviour {
        Behaviour::Steady if at_water => [Some(Cause::Moisture), None, None],
        Behaviour::Steady | Behaviour::Falling => [None; CAUSES_MAX],
        Behaviour::Straight => [Some(Cause::Leak), Some(Cause::SlowMoisture), None],
        Behaviour::LevellingOff => [likelier, other, None],
        Behaviour::Both => [Some(Cause::Leak), likelier, other],
        Behaviour::Undecided => [Some(Cause::Leak), Some(Cause::Outgassing), Some(Cause::SlowMoisture)],
    }
}
