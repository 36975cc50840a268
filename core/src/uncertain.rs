//! Values with their standard uncertainty, and how it is carried through a computation.

use crate::error::Error;
use crate::math;

/// A value with one standard uncertainty, both in the unit that the name of the value states.
#[repr(C)] // so that lists of what holds one can be taken from C as they are
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertain {
    /// The value.
    pub value: f64,
    /// One standard uncertainty of it, never negative. An instrument's limit of error becomes one by dividing by √3.
    pub standard_uncertainty: f64,
}

impl Uncertain {
    /// A value with its standard uncertainty.
    ///
    /// # Errors
    /// [`Error::NotFinite`] where either is no finite number, [`Error::OutOfRange`] where the uncertainty is negative.
    pub fn new(value: f64, standard_uncertainty: f64) -> Result<Self, Error> {
        let check = |quantity, number: f64, lower| {
            let advice = "give one standard uncertainty: an instrument's limit of error divided by 1.73";
            crate::bounds::within(quantity, "the value's unit", number, lower, f64::MAX, advice)
        };
        Ok(Self {
            value: check("value with an uncertainty", value, f64::MIN)?,
            standard_uncertainty: check("standard uncertainty", standard_uncertainty, 0.0)?,
        })
    }

    /// A value taken as known: no uncertainty is carried on from it.
    #[must_use]
    pub const fn exact(value: f64) -> Self {
        Self { value, standard_uncertainty: 0.0 }
    }
}

/// Carries the uncertainty of independent inputs through `function`.
///
/// Each input's share is half the change of the result as that input moves by ± one standard uncertainty (JCGM 100:2008,
/// 5.1.3, note 2); shares are added as squares. Where the function refuses one side, as a wet bulb above its dry bulb,
/// the other side's change counts. A bias shared by several readings is one input, from which `function` makes them all.
///
/// # Errors
/// What `function` gives at the values, or where it refuses both sides of an input.
///
/// ```
/// use satline::uncertain::{Uncertain, propagate};
/// let (voltage, current) = (Uncertain::new(240.0, 2.4)?, Uncertain::new(10.0, 0.2)?);
/// let power = propagate([voltage, current], |[voltage, current]| Ok(voltage * current))?;
/// assert!((power.value - 2400.0).abs() < 1e-9 && (power.standard_uncertainty - 53.67).abs() < 0.01);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn propagate<const N: usize>(
    inputs: [Uncertain; N],
    function: impl Fn([f64; N]) -> Result<f64, Error>,
) -> Result<Uncertain, Error> {
    let values = inputs.map(|input| input.value);
    let value = function(values)?;
    let mut squares = 0.0;
    for (place, input) in inputs.iter().enumerate() {
        if input.standard_uncertainty == 0.0 {
            continue;
        }
        let moved_by = |change: f64| {
            let mut moved = values;
            if let Some(input) = moved.get_mut(place) {
                *input += change;
            }
            function(moved)
        };
        let share = match (moved_by(input.standard_uncertainty), moved_by(-input.standard_uncertainty)) {
            (Ok(above), Ok(below)) => 0.5 * (above - below),
            (Ok(one), Err(_)) | (Err(_), Ok(one)) => one - value,
            (Err(error), Err(_)) => return Err(error),
        };
        squares += share * share;
    }
    Ok(Uncertain { value, standard_uncertainty: math::sqrt(squares) })
}

/// As [`propagate`], for several results of one function: it is called no more often than for one.
///
/// # Errors
/// As [`propagate`].
pub fn propagate_all<const N: usize, const M: usize>(
    inputs: [Uncertain; N],
    function: impl Fn([f64; N]) -> Result<[f64; M], Error>,
) -> Result<[Uncertain; M], Error> {
    let values = inputs.map(|input| input.value);
    let results = function(values)?;
    let mut squares = [0.0; M];
    for (place, input) in inputs.iter().enumerate() {
        if input.standard_uncertainty == 0.0 {
            continue;
        }
        let moved_by = |change: f64| {
            let mut moved = values;
            if let Some(input) = moved.get_mut(place) {
                *input += change;
            }
            function(moved)
        };
        let (above, below, weight) = match (moved_by(input.standard_uncertainty), moved_by(-input.standard_uncertainty))
        {
            (Ok(above), Ok(below)) => (above, below, 0.5),
            (Ok(one), Err(_)) | (Err(_), Ok(one)) => (one, results, 1.0),
            (Err(error), Err(_)) => return Err(error),
        };
        for ((square, above), below) in squares.iter_mut().zip(above).zip(below) {
            let share = weight * (above - below);
            *square += share * share;
        }
    }
    let mut found = results.map(Uncertain::exact);
    for (found, square) in found.iter_mut().zip(squares) {
        found.standard_uncertainty = math::sqrt(square);
    }
    Ok(found)
}

/// Root of the sum of the squares of independent contributions.
pub(crate) fn root_of_squares<const N: usize>(contributions: [f64; N]) -> f64 {
    root(&contributions)
}

// On a board, size before speed: once, not for every number of contributions.
#[cfg_attr(not(target_arch = "arm"), inline)]
#[cfg_attr(target_arch = "arm", inline(never))]
fn root(contributions: &[f64]) -> f64 {
    math::sqrt(contributions.iter().map(|part| part * part).sum())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sum_and_a_shared_bias() {
        let (left, right) = (Uncertain::new(10.0, 3.0).unwrap(), Uncertain::new(20.0, 4.0).unwrap());
        assert_eq!(propagate([left, right], |[left, right]| Ok(left + right)).unwrap().standard_uncertainty, 5.0);
        // A bias that both share cancels in their difference.
        let bias = Uncertain::new(0.0, 3.0).unwrap();
        let difference = propagate([bias], |[bias]| Ok((20.0 + bias) - (10.0 + bias))).unwrap();
        assert_eq!(difference, Uncertain { value: 10.0, standard_uncertainty: 0.0 });
    }

    #[test]
    fn several_results_are_each_as_one() {
        let inputs = [Uncertain::new(3.0, 0.2).unwrap(), Uncertain::new(1.1, 0.2).unwrap()];
        let bound = |value: f64| crate::bounds::within("share", "1", value, 0.0, 1.2, "give less");
        let both = |[left, right]: [f64; 2]| Ok([left * bound(right)?, left - bound(right)?]);
        let found = propagate_all(inputs, both).unwrap();
        assert_eq!(found[0], propagate(inputs, |inputs| both(inputs).map(|[first, _]| first)).unwrap());
        assert_eq!(found[1], propagate(inputs, |inputs| both(inputs).map(|[_, second]| second)).unwrap());
    }

    #[test]
    fn a_limit_on_one_side_leaves_the_other() {
        let near = Uncertain::new(1.0, 0.5).unwrap();
        let bound = |value: f64| crate::bounds::within("share", "1", value, 0.0, 1.2, "give less");
        assert_eq!(propagate([near], |[value]| bound(value)).unwrap().standard_uncertainty, 0.5);
        let wide = Uncertain::new(1.0, 5.0).unwrap();
        assert!(matches!(propagate([wide], |[value]| bound(value)), Err(Error::OutOfRange { .. })));
        assert!(Uncertain::new(1.0, -0.1).is_err() && Uncertain::new(f64::NAN, 0.1).is_err());
    }
}
