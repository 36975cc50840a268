//! Cubic interpolation between evenly spaced nodes.

/// Four neighbouring nodes and their weights at one argument.
#[derive(Debug, Clone, Copy)]
pub(super) struct Weights {
    first: usize,
    weights: [f64; 4],
}

impl Weights {
    /// Lagrange's polynomial through the four of `count` nodes (at least 4) around `place`, counted in steps from the
    /// first node.
    pub(super) fn at(place: f64, count: usize) -> Self {
        let first = (place.max(1.0) as usize).min(count.saturating_sub(3)).max(1) - 1;
        let x = place - first as f64;
        let (a, b, c, d) = (x, x - 1.0, x - 2.0, x - 3.0);
        Self { first, weights: [-b * c * d / 6.0, a * c * d / 2.0, -a * b * d / 2.0, a * b * c / 6.0] }
    }

    /// The interpolated value of what `values` holds at the nodes.
    pub(super) fn of(&self, values: &[f64]) -> f64 {
        let near = values.iter().skip(self.first).take(4);
        near.zip(self.weights).map(|(value, weight)| value * weight).sum()
    }

    /// The interpolated column of a table whose rows are the nodes.
    pub(super) fn column<const N: usize>(&self, rows: &[[f64; N]]) -> [f64; N] {
        let mut column = [0.0; N];
        for (row, weight) in rows.iter().skip(self.first).take(4).zip(self.weights) {
            for (sum, value) in column.iter_mut().zip(row) {
                *sum += weight * value;
            }
        }
        column
    }
}

/// Where a rising or falling column has a value, counted in steps from its first node; none outside it.
pub(super) fn place_of(column: &[f64], value: f64) -> Option<f64> {
    let (first, last) = (*column.first()?, *column.last()?);
    let rising = last > first;
    let before = |node: f64| if rising { node <= value } else { node >= value };
    if !before(first) || (before(last) && value != last) {
        return None;
    }
    let index = column.partition_point(|node| before(*node)).clamp(1, column.len() - 1);
    let (low, high) = (*column.get(index - 1)?, *column.get(index)?);
    // Newton's steps on the cubic by its secant: the straight line is already within a few thousandths of a step.
    let mut place = (index - 1) as f64 + (value - low) / (high - low);
    // Near saturation, where a column may begin level, they close in slowly.
    for _ in 0..50 {
        let miss = value - Weights::at(place, column.len()).of(column);
        let ahead = Weights::at(place + 1e-4, column.len()).of(column);
        let slope = (ahead - (value - miss)) / 1e-4;
        let step = miss / slope;
        if !step.is_finite() {
            return None;
        }
        place += step;
        if step.abs() < 1e-13 * column.len() as f64 {
            break;
        }
    }
    Some(place)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cubic_is_met_exactly_both_ways() {
        let cubic = |x: f64| 1.0 + x * (0.5 + x * (0.25 + 0.125 * x));
        let column: [f64; 9] = core::array::from_fn(|node| cubic(node as f64));
        for place in [0.0, 0.3, 1.0, 4.5, 7.9, 8.0] {
            let value = cubic(place);
            assert!((Weights::at(place, 9).of(&column) - value).abs() < 1e-12 * value);
            assert!((place_of(&column, value).unwrap() - place).abs() < 1e-9);
        }
        assert!(place_of(&column, 0.9).is_none() && place_of(&column, cubic(8.1)).is_none());
    }
}
