//! The reducing temperature and volume of a mixture as forms of second degree in the partial densities.
//!
//! Multiplied by ρ², both mixing rules in use become Q = Σᵢ ρᵢ²cᵢᵢ + Σ over pairs of sᵢⱼ·ρᵢρⱼ·(ρᵢ + ρⱼ)/(β²ρᵢ + ρⱼ). With
//! β = 1, as in most pairs, the last factor is one.

use super::mixture::{PerComponent, Square};
use super::model::MAX_COMPONENTS;

/// One form: constants of the components and of the pairs.
#[derive(Debug, Clone, Copy)]
pub(super) struct Form {
    /// Constants of the components on the diagonal, sᵢⱼ beside it.
    pub strengths: Square,
    /// β² of the pair, in the order of the place.
    pub skews: Square,
}

/// A form at mole fractions, with its first and second derivatives in partial densities (times ρ⁻², ρ⁻¹ and 1).
#[derive(Debug, Clone, Copy)]
pub(super) struct Value {
    value: f64,
    slopes: PerComponent,
    seconds: Square,
    /// Power of ρ that divides the form to give the reduced variable.
    degree: f64,
}

impl Form {
    pub const ZERO: Self =
        Self { strengths: [[0.0; MAX_COMPONENTS]; MAX_COMPONENTS], skews: [[1.0; MAX_COMPONENTS]; MAX_COMPONENTS] };

    pub fn at(&self, fractions: &PerComponent, count: usize, degree: f64) -> Value {
        let mut form = Value {
            value: 0.0,
            slopes: [0.0; MAX_COMPONENTS],
            seconds: [[0.0; MAX_COMPONENTS]; MAX_COMPONENTS],
            degree,
        };
        for i in 0..count {
            let x = fractions[i];
            let own = self.strengths[i][i];
            form.value += own * x * x;
            form.slopes[i] += 2.0 * own * x;
            form.seconds[i][i] += 2.0 * own;
            for j in i + 1..count {
                let (y, s) = (fractions[j], self.strengths[i][j]);
                let skew = self.skews[i][j];
                let [value, by_x, by_y, by_xx, by_xy, by_yy] =
                    if skew == 1.0 { [x * y, y, x, 0.0, 1.0, 0.0] } else { skewed(x, y, skew) };
                form.value += s * value;
                form.slopes[i] += s * by_x;
                form.slopes[j] += s * by_y;
                form.seconds[i][i] += s * by_xx;
                form.seconds[j][j] += s * by_yy;
                form.seconds[i][j] += s * by_xy;
                form.seconds[j][i] += s * by_xy;
            }
        }
        form
    }
}

/// xy(x + y)/(bx + y) with its derivatives by x, y, xx, xy and yy.
fn skewed(x: f64, y: f64, b: f64) -> [f64; 6] {
    let below = b * x + y;
    let value = x * y * (x + y) / below;
    let by_x = (2.0 * x * y + y * y - value * b) / below;
    let by_y = (x * x + 2.0 * x * y - value) / below;
    let by_xx = (2.0 * y - 2.0 * by_x * b) / below;
    let by_xy = (2.0 * (x + y) - by_x - by_y * b) / below;
    let by_yy = (2.0 * x - 2.0 * by_y) / below;
    [value, by_x, by_y, by_xx, by_xy, by_yy]
}

impl Value {
    /// The reduced quantity itself: the form over ρ².
    pub fn value(&self) -> f64 {
        self.value
    }

    fn relative(&self, place: usize) -> f64 {
        self.slopes[place] / self.value
    }

    /// ρ times the slope of ln(form/ρ^degree) in a partial density.
    pub fn slope(&self, place: usize) -> f64 {
        self.relative(place) - self.degree
    }

    /// ρ² times the second derivative of that logarithm.
    pub fn second(&self, first: usize, other: usize) -> f64 {
        self.seconds[first][other] / self.value - self.relative(first) * self.relative(other) + self.degree
    }
}
