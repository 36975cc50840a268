//! Least squares of the four shapes that a pressure after isolation can have.
//!
//! Every shape is a constant plus at most two given functions of time, so the sums can be solved by hand.

use super::Sample;
use crate::math;

/// A constant plus `first` and `second` times a function of time each.
#[derive(Debug, Clone, Copy)]
pub(super) struct Fit {
    /// Mean of the pressures, and of the two functions at their times.
    means: (f64, f64, f64),
    /// What the two functions are multiplied by.
    pub first: f64,
    pub second: f64,
    /// Variances and covariance of the two, for a variance of one of each pressure.
    variances: (f64, f64, f64),
    count: f64,
    /// Sum of the squares of what is left.
    pub squares: f64,
}

impl Fit {
    /// At values of the two functions: the pressure and its variance, for a variance of one of each pressure.
    pub fn at(&self, first: f64, second: f64) -> (f64, f64) {
        let (mean, mean_first, mean_second) = self.means;
        let (x, y) = (first - mean_first, second - mean_second);
        let (of_first, of_second, together) = self.variances;
        let variance = 1.0 / self.count + x * x * of_first + y * y * of_second + 2.0 * x * y * together;
        (mean + self.first * x + self.second * y, variance)
    }

    /// Variance of `second`, for a variance of one of each pressure.
    pub fn second_variance(&self) -> f64 {
        self.variances.1
    }
}

/// Fits the two functions; one that does not vary takes no part. `None` where they cannot be told apart.
pub(super) fn fit(samples: &[Sample], functions: impl Fn(f64) -> (f64, f64)) -> Option<Fit> {
    let count = samples.len() as f64;
    let mut sums = (0.0, 0.0, 0.0);
    for sample in samples {
        let (first, second) = functions(sample.time_s);
        sums = (sums.0 + sample.pressure_pa, sums.1 + first, sums.2 + second);
    }
    let means = (sums.0 / count, sums.1 / count, sums.2 / count);
    let centred = |sample: &Sample| {
        let (first, second) = functions(sample.time_s);
        (sample.pressure_pa - means.0, first - means.1, second - means.2)
    };
    let (mut xx, mut yy, mut xy, mut px, mut py) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (p, x, y) in samples.iter().map(centred) {
        xx += x * x;
        yy += y * y;
        xy += x * y;
        px += p * x;
        py += p * y;
    }
    let (first, second, variances) = match (xx > 0.0, yy > 0.0) {
        (false, false) => (0.0, 0.0, (0.0, 0.0, 0.0)),
        (true, false) => (px / xx, 0.0, (1.0 / xx, 0.0, 0.0)),
        (false, true) => (0.0, py / yy, (0.0, 1.0 / yy, 0.0)),
        (true, true) => {
            let determinant = xx * yy - xy * xy;
            if !(determinant > 1e-12 * xx * yy) {
                return None;
            }
            let solved = ((px * yy - py * xy) / determinant, (py * xx - px * xy) / determinant);
            (solved.0, solved.1, (yy / determinant, xx / determinant, -xy / determinant))
        }
    };
    let left = samples.iter().map(centred).map(|(p, x, y)| p - first * x - second * y);
    let squares = left.map(|left| left * left).sum();
    Some(Fit { means, first, second, variances, count, squares })
}

/// 1 − exp(−t/τ).
pub(super) fn levelling(time: f64, time_constant: f64) -> f64 {
    1.0 - math::exp(-time / time_constant)
}

/// Of a curve that levels off, the fit with the best time constant between two limits, and that time constant.
pub(super) fn best(lower: f64, upper: f64, fit_at: impl Fn(f64) -> Option<Fit>) -> Option<(f64, Fit)> {
    const STEPS: u32 = 24;
    let ratio = math::pow(upper / lower, 1.0 / f64::from(STEPS));
    let mut found: Option<(f64, Fit)> = None;
    let mut consider = |time_constant: f64| {
        if let Some(fit) = fit_at(time_constant) {
            if found.is_none_or(|(_, best)| fit.squares < best.squares) {
                found = Some((time_constant, fit));
            }
        }
        found.map(|(best, _)| best)
    };
    let mut time_constant = lower;
    let mut centre = None;
    for _ in 0..=STEPS {
        centre = consider(time_constant.min(upper));
        time_constant *= ratio;
    }
    // Around the best of the grid, ever finer; the squares have one low there.
    let (mut centre, mut width) = (centre?, ratio);
    for _ in 0..14 {
        width = math::sqrt(width);
        consider((centre / width).max(lower));
        centre = consider((centre * width).min(upper))?;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    #[test]
    fn what_was_put_in_comes_out() {
        let pressure = |t: f64| 60.0 + 40.0 * levelling(t, 130.0) + 0.05 * t;
        let samples: Vec<Sample> =
            (0..60).map(|i| f64::from(i) * 10.0).map(|t| Sample { time_s: t, pressure_pa: pressure(t) }).collect();
        let (time_constant, found) = best(12.0, 1200.0, |tau| fit(&samples, |t| (levelling(t, tau), t))).unwrap();
        assert!((time_constant / 130.0 - 1.0).abs() < 1e-3, "{time_constant}");
        assert!((found.first / 40.0 - 1.0).abs() < 1e-2 && (found.second / 0.05 - 1.0).abs() < 1e-2);
        assert!((found.at(levelling(590.0, time_constant), 590.0).0 - pressure(590.0)).abs() < 1e-3);
        // The textbook's variance of a slope: 12/(n·span²) for many even steps.
        let line = fit(&samples, |t| (0.0, t)).unwrap();
        assert!((line.second_variance() * 60.0 * 600.0 * 600.0 / 12.0 - 1.0).abs() < 1e-3);
        assert!(fit(&samples, |t| (t, 2.0 * t)).is_none());
    }
}
