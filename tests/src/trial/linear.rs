//! Least squares of a few unknowns.

/// Solves `matrix · x = right` by Gaussian elimination with pivots; rows without a pivot give 0.
#[must_use]
pub fn solve(mut matrix: Vec<Vec<f64>>, mut right: Vec<f64>) -> Vec<f64> {
    let size = right.len();
    for column in 0..size {
        let largest = |rows: &[Vec<f64>]| {
            (column..size).max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs())).unwrap_or(column)
        };
        let pivot = largest(&matrix);
        matrix.swap(column, pivot);
        right.swap(column, pivot);
        if matrix[column][column].abs() < 1e-12 {
            continue;
        }
        for row in column + 1..size {
            let factor = matrix[row][column] / matrix[column][column];
            for place in column..size {
                matrix[row][place] -= factor * matrix[column][place];
            }
            right[row] -= factor * right[column];
        }
    }
    let mut found = vec![0.0; size];
    for row in (0..size).rev() {
        let known: f64 = (row + 1..size).map(|place| matrix[row][place] * found[place]).sum();
        if matrix[row][row].abs() >= 1e-12 {
            found[row] = (right[row] - known) / matrix[row][row];
        }
    }
    found
}

/// Weights of inputs that give the outputs best, with a penalty on their squares.
#[must_use]
pub fn least_squares(points: &[(Vec<f64>, f64)], penalty: f64) -> Vec<f64> {
    let size = points.first().map_or(0, |(inputs, _)| inputs.len());
    let mut matrix = vec![vec![0.0; size]; size];
    let mut right = vec![0.0; size];
    for (inputs, output) in points {
        for row in 0..size {
            right[row] += inputs[row] * output;
            for column in 0..size {
                matrix[row][column] += inputs[row] * inputs[column];
            }
        }
    }
    for place in 0..size {
        matrix[place][place] += penalty;
    }
    solve(matrix, right)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plane_is_found_again() {
        let plane = |x: f64, y: f64| (vec![1.0, x, y], 2.0 - 3.0 * x + 0.5 * y);
        let points: Vec<_> = (0..20).map(|n| plane(f64::from(n % 5), f64::from(n / 5))).collect();
        let found = least_squares(&points, 0.0);
        for (found, given) in found.iter().zip([2.0, -3.0, 0.5]) {
            assert!((found - given).abs() < 1e-9);
        }
    }
}
