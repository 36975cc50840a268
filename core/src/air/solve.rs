//! The root of a rising function between two ends.

/// Newton's steps that are at most tried before the bracket is only halved.
const NEWTON_STEPS: u32 = 24;
/// Steps in all: halving alone narrows a bracket of 200 K to the spacing of numbers in 52.
const STEPS: u32 = 96;
/// A step of less than this, K, is the last: convergence is quadratic, so what is left is below 1e-10 K.
const LAST_STEP: f64 = 1e-6;

/// Where `function`, which gives value and slope and rises from `low` to `high`, is zero. Where it is above zero at
/// `low` or below it at `high`, as by rounding of a root at an end, the answer is that end.
pub(super) fn rising_root(mut low: f64, mut high: f64, function: impl Fn(f64) -> (f64, f64)) -> f64 {
    let mut here = high;
    for step in 0..STEPS {
        let (value, slope) = function(here);
        if value == 0.0 {
            return here;
        }
        if value > 0.0 {
            high = here;
        } else {
            low = here;
        }
        let next = here - value / slope;
        if step < NEWTON_STEPS && next >= low && next <= high {
            if (next - here).abs() < LAST_STEP {
                return next;
            }
            here = next;
        } else {
            let middle = 0.5 * (low + high);
            if middle <= low || middle >= high {
                return here;
            }
            here = middle;
        }
    }
    here
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    #[test]
    fn finds_roots_inside_and_at_the_ends() {
        let cube = |x: f64| (x * x * x - 2.0, 3.0 * x * x);
        assert_abs_diff_eq!(rising_root(0.0, 100.0, cube), 2.0_f64.cbrt(), epsilon = 1e-12);
        assert_eq!(rising_root(0.0, 1.0, cube), 1.0);
        assert_abs_diff_eq!(rising_root(5.0, 9.0, cube), 5.0, epsilon = 1e-12);
        // A slope that is no help: the bracket alone gets there.
        assert_abs_diff_eq!(rising_root(-7.0, 11.0, |x| (x - 1.0, 1e-9)), 1.0, epsilon = 1e-12);
    }
}
