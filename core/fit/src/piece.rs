//! One polynomial piece, through the curve's own points.

use satline::saturation::DEGREE;

/// Where a piece meets the equation of state, in its local variable: the extrema of the Chebyshev polynomial of fifth
/// degree, ends included, so that neighbouring pieces meet at their joint. cos(kπ/5), written out so that every
/// machine uses the same bits.
pub const NODES: [f64; DEGREE + 1] =
    [-1.0, -0.809_016_994_374_947_5, -0.309_016_994_374_947_45, 0.309_016_994_374_947_45, 0.809_016_994_374_947_5, 1.0];

/// Coefficients of a piece, lowest power first.
pub type Piece = [f64; DEGREE + 1];

/// The polynomial through the values at `places` (local coordinates), by divided differences.
pub fn through(places: &Piece, values: &Piece) -> Piece {
    let mut differences = *values;
    for order in 1..=DEGREE {
        for index in (order..=DEGREE).rev() {
            differences[index] =
                (differences[index] - differences[index - 1]) / (places[index] - places[index - order]);
        }
    }
    // From Newton's form to powers.
    let mut powers = [0.0; DEGREE + 1];
    for index in (0..=DEGREE).rev() {
        for place in (1..=DEGREE).rev() {
            powers[place] = powers[place - 1] - places[index] * powers[place];
        }
        powers[0] = differences[index] - places[index] * powers[0];
    }
    powers
}

/// Fits a piece whose local variable runs from −1 at `from` to 1 at `to`, through points between `low` and `high`: the
/// part of the piece that is in use.
pub fn fit<E>(
    from: f64,
    to: f64,
    low: f64,
    high: f64,
    mut curve: impl FnMut(f64) -> Result<f64, E>,
) -> Result<Piece, E> {
    let mut places = [0.0; DEGREE + 1];
    let mut values = [0.0; DEGREE + 1];
    for (index, node) in NODES.iter().enumerate() {
        // The ends exactly, whatever rounding the middle suffers.
        let argument = match index {
            0 => low,
            DEGREE => high,
            _ => low + (high - low) * 0.5 * (1.0 + node),
        };
        places[index] = ((argument - from) - (to - argument)) / (to - from);
        values[index] = curve(argument)?;
    }
    Ok(through(&places, &values))
}

/// Pieces in even steps of the argument, from `lower` up; the last is used in part.
pub fn even<E>(
    lower: f64,
    upper: f64,
    steps_per_unit: f64,
    mut curve: impl FnMut(f64) -> Result<f64, E>,
) -> Result<Vec<Piece>, E> {
    let width = 1.0 / steps_per_unit;
    let mut pieces = Vec::new();
    let mut from = lower;
    while from < upper {
        let to = from + width;
        pieces.push(fit(from, to, from, to.min(upper), &mut curve)?);
        from = to;
    }
    Ok(pieces)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reproduces_a_polynomial_of_its_own_degree() {
        let wanted = [3.0, -1.0, 0.5, 2.0, -0.25, 0.125];
        let value = |x: f64| wanted.iter().rev().fold(0.0, |sum, c| sum * x + c);
        let found = fit(10.0, 14.0, 10.0, 13.0, |t| Ok::<_, ()>(value((t - 12.0) / 2.0))).unwrap();
        for (found, wanted) in found.iter().zip(wanted) {
            assert!((found - wanted).abs() < 1e-13, "{found} {wanted}");
        }
    }
}
