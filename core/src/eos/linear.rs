//! Solution of a small dense linear system by elimination with row exchange.

/// Largest system of a bubble or dew point: the incipient phase's components, the bulk density and the temperature.
pub(crate) const LARGEST: usize = super::model::MAX_COMPONENTS + 2;

pub(crate) type Vector = [f64; LARGEST];
pub(crate) type Matrix = [Vector; LARGEST];

/// Solves the leading `size` rows in place; `None` for a singular matrix.
pub(crate) fn solve<const MOST: usize>(
    mut matrix: [[f64; MOST]; MOST],
    mut right: [f64; MOST],
    size: usize,
) -> Option<[f64; MOST]> {
    for column in 0..size {
        // Rows are scaled alike by the caller, so the largest entry is a fair pivot.
        let mut pivot = column;
        for row in column + 1..size {
            if matrix[row][column].abs() > matrix[pivot][column].abs() {
                pivot = row;
            }
        }
        let largest = matrix[pivot][column];
        // Also refuses NaN.
        if !(largest.abs() > 0.0 && largest.is_finite()) {
            return None;
        }
        matrix.swap(column, pivot);
        right.swap(column, pivot);
        for row in column + 1..size {
            let factor = matrix[row][column] / matrix[column][column];
            if factor != 0.0 {
                for place in column..size {
                    matrix[row][place] -= factor * matrix[column][place];
                }
                right[row] -= factor * right[column];
            }
        }
    }
    for row in (0..size).rev() {
        for place in row + 1..size {
            right[row] -= matrix[row][place] * right[place];
        }
        right[row] /= matrix[row][row];
        if !right[row].is_finite() {
            return None;
        }
    }
    Some(right)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn solves_with_row_exchange_and_refuses_a_singular_matrix() {
        let mut matrix = [[0.0; LARGEST]; LARGEST];
        matrix[0][..3].copy_from_slice(&[0.0, 2.0, 1.0]);
        matrix[1][..3].copy_from_slice(&[1.0, -1.0, 3.0]);
        matrix[2][..3].copy_from_slice(&[4.0, 1.0, -2.0]);
        let mut right = [0.0; LARGEST];
        right[..3].copy_from_slice(&[7.0, 8.0, 0.0]); // the solution is 1, 2, 3
        let solution = solve(matrix, right, 3).unwrap();
        for (found, wanted) in solution.iter().zip([1.0, 2.0, 3.0]) {
            assert!((found - wanted).abs() < 1e-14);
        }
        matrix[2] = matrix[1];
        assert!(solve(matrix, right, 3).is_none());
    }
}
