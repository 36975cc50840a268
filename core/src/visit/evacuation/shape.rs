//! Which of the four shapes the pressures have, and what follows from it.
//!
//! Steady, a straight line, a curve that levels off, and one that levels off onto a straight line, are compared by
//! Akaike's criterion with its correction for few readings (Hurvich and Tsai 1989): χ² + 2k + 2k(k+1)/(n−k−1), of k
//! parameters. A shape is taken for shown where it beats the simpler one by [`DECISIVE`]; a straight line must also beat
//! every curve that would level off within about twice the time watched.

use super::Sample;
use super::answers::Behaviour;
use super::fit::{Fit, best, fit, levelling};
use crate::math;
use crate::uncertain::Uncertain;

/// By how much the criterion must differ: the better shape is then e³, 20 times, as likely. A choice of our own.
pub const DECISIVE: f64 = 6.0;
/// Longest time constant of a curve, in times watched: a longer one cannot be told from a straight line.
const LONGEST: f64 = 2.0;
/// Shortest, likewise.
const SHORTEST: f64 = 0.02;

/// What the readings show.
#[derive(Debug, Clone, Copy)]
pub(super) struct Shape {
    pub behaviour: Behaviour,
    /// Scatter of one reading, Pa: what was given, or what is left of the best fit where that is more.
    pub noise_pa: f64,
    pub first_pa: Uncertain,
    pub last_pa: Uncertain,
    /// Of the straight part, Pa/s.
    pub rate_pa_s: Uncertain,
    /// Where the curve levels off, were there no straight part.
    pub plateau_pa: Option<Uncertain>,
    pub time_constant_s: Option<f64>,
    /// Criterion of the straight line less that of the curve: positive where the curve fits better.
    pub for_curve: Option<f64>,
}

/// The criterion; infinite where there are too few readings for so many parameters.
fn criterion(squares: f64, variance: f64, parameters: u8, count: f64) -> f64 {
    let k = f64::from(parameters);
    let spare = count - k - 1.0;
    if spare > 0.0 { squares / variance + 2.0 * k + 2.0 * k * (k + 1.0) / spare } else { f64::INFINITY }
}

/// The shape of the pressures of a span of time, with the scatter of one reading, Pa. Readings are in order.
pub(super) fn shape(samples: &[Sample], start: f64, span: f64, noise: f64) -> Option<Shape> {
    let count = samples.len() as f64;
    let since = move |time: f64| time - start;
    let steady = fit(samples, |_| (0.0, 0.0))?;
    let straight = fit(samples, |time| (0.0, since(time)))?;
    let limits = (SHORTEST * span, LONGEST * span);
    let curve_at = |tau: f64| fit(samples, |time| (levelling(since(time), tau), 0.0));
    let both_at = |tau: f64| fit(samples, |time| (levelling(since(time), tau), since(time)));
    let curve = best(limits.0, limits.1, curve_at)?;
    // Next to a straight line a long curve is another straight line: here it must level off within the time watched.
    let both = best(limits.0, 0.5 * span, both_at).filter(|(_, both)| both.first > 0.0 && both.second > 0.0);

    // Where no shape fits within the scatter given, the scatter is what is left of the best.
    let left =
        |squares: f64, parameters: f64| if count > parameters + 3.0 { squares / (count - parameters) } else { 0.0 };
    let least = left(curve.1.squares, 3.0).min(both.map_or(f64::INFINITY, |(_, both)| left(both.squares, 4.0)));
    let variance = (noise * noise).max(least);
    let of = |fit: &Fit, parameters| criterion(fit.squares, variance, parameters, count);
    let (of_steady, of_straight, of_curve) = (of(&steady, 1), of(&straight, 2), of(&curve.1, 3));
    let of_both = both.map_or(f64::INFINITY, |(_, both)| of(&both, 4));

    let beats = |one: f64, other: f64| other - one >= DECISIVE;
    let best_rising = of_straight.min(of_curve).min(of_both);
    let rises = curve.1.first > 0.0;
    let behaviour = if !beats(best_rising, of_steady) {
        Behaviour::Steady
    } else if straight.second < 0.0 {
        Behaviour::Falling
    } else if beats(of_both, of_curve) && beats(of_both, of_straight) {
        Behaviour::Both
    } else if rises && beats(of_curve, of_straight) {
        Behaviour::LevellingOff
    } else if beats(of_straight, of_curve) {
        Behaviour::Straight
    } else {
        Behaviour::Undecided
    };

    let levels = matches!(behaviour, Behaviour::LevellingOff | Behaviour::Both);
    let (tau, chosen) = match (behaviour, both) {
        (Behaviour::Both, Some(both)) => both,
        (Behaviour::LevellingOff, _) => curve,
        (Behaviour::Steady, _) => (span, steady),
        _ => (span, straight),
    };
    let uncertain =
        |(value, scale): (f64, f64)| Uncertain { value, standard_uncertainty: math::sqrt(variance * scale.max(0.0)) };
    let at = |time: f64| uncertain(chosen.at(if levels { levelling(time, tau) } else { 0.0 }, time));
    // How much of a leak there can be beside a curve, only a fit of both can say.
    let sloped = if levels { both_at(tau.min(0.5 * span)) } else { None }.unwrap_or(straight);
    let plateau_pa = match behaviour {
        Behaviour::LevellingOff => Some(plateau(curve, &curve_at, limits, variance)),
        Behaviour::Both => Some(uncertain(chosen.at(1.0, 0.0))),
        Behaviour::Steady => Some(at(span)),
        _ => None,
    };
    Some(Shape {
        behaviour,
        noise_pa: math::sqrt(variance),
        first_pa: at(0.0),
        last_pa: at(span),
        rate_pa_s: uncertain((sloped.second, sloped.second_variance())),
        plateau_pa,
        time_constant_s: levels.then_some(tau),
        for_curve: of_curve.is_finite().then_some(of_straight - of_curve),
    })
}

/// Where the curve levels off. Its time constant is known only to where χ² has grown by one, and the plateau moves with
/// it.
fn plateau(
    (tau, fit): (f64, Fit),
    fit_at: &impl Fn(f64) -> Option<Fit>,
    (shortest, longest): (f64, f64),
    variance: f64,
) -> Uncertain {
    let (value, scale) = fit.at(1.0, 0.0);
    let moved = |step: f64| {
        let (mut at, mut found) = (tau, value);
        for _ in 0..200 {
            at *= step;
            if at < shortest || at > longest {
                break;
            }
            let Some(other) = fit_at(at) else { break };
            found = other.at(1.0, 0.0).0;
            if other.squares > fit.squares + variance {
                break;
            }
        }
        found
    };
    let by_tau = 0.5 * (moved(1.02) - moved(1.0 / 1.02));
    Uncertain { value, standard_uncertainty: math::sqrt(variance * scale.max(0.0) + by_tau * by_tau) }
}
