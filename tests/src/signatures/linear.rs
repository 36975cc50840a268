//! The little linear algebra that fitting takes.

/// Solves the normal equations of least squares: `rows` of regressors, `values` of as many targets at once. A small ridge
/// on all regressors but the first keeps those apart that the data hardly tells apart.
///
/// # Panics
/// On rows of unequal lengths.
#[must_use]
pub fn least_squares(rows: &[Vec<f64>], values: &[Vec<f64>], ridge: f64) -> Vec<Vec<f64>> {
    let (count, targets) = (rows[0].len(), values[0].len());
    let mut normal = vec![vec![0.0; count + targets]; count];
    for (row, value) in rows.iter().zip(values) {
        for i in 0..count {
            for j in 0..count {
                normal[i][j] += row[i] * row[j];
            }
            for (k, one) in value.iter().enumerate() {
                normal[i][count + k] += row[i] * one;
            }
        }
    }
    for (i, row) in normal.iter_mut().enumerate().skip(1) {
        row[i] += ridge * rows.len() as f64;
    }
    for pivot in 0..count {
        let best = (pivot..count).max_by(|a, b| normal[*a][pivot].abs().total_cmp(&normal[*b][pivot].abs())).unwrap();
        normal.swap(pivot, best);
        let lead = normal[pivot].clone();
        for (i, row) in normal.iter_mut().enumerate() {
            if i != pivot {
                let factor = row[pivot] / lead[pivot];
                row.iter_mut().zip(&lead).for_each(|(x, y)| *x -= factor * y);
            }
        }
    }
    (0..count).map(|i| (0..targets).map(|k| normal[i][count + k] / normal[i][i]).collect()).collect()
}

/// The mean of outer products.
#[must_use]
pub fn second_moment(vectors: &[Vec<f64>], divide_by: f64) -> Vec<Vec<f64>> {
    let size = vectors.first().map_or(0, Vec::len);
    let mut moment = vec![vec![0.0; size]; size];
    for vector in vectors {
        for i in 0..size {
            for j in 0..size {
                moment[i][j] += vector[i] * vector[j] / divide_by;
            }
        }
    }
    moment
}

/// The largest principal direction of a covariance, scaled by its standard deviation: by repeated multiplication.
#[must_use]
pub fn principal(covariance: &[Vec<f64>]) -> Vec<f64> {
    let times =
        |x: &[f64]| -> Vec<f64> { covariance.iter().map(|row| row.iter().zip(x).map(|(a, b)| a * b).sum()).collect() };
    let norm = |x: &[f64]| x.iter().map(|a| a * a).sum::<f64>().sqrt();
    let mut x: Vec<f64> = covariance.iter().enumerate().map(|(i, row)| row[i].max(0.0).sqrt()).collect();
    for _ in 0..500 {
        let next = times(&x);
        let size = norm(&next);
        if size == 0.0 {
            return next;
        }
        x = next.into_iter().map(|a| a / size).collect();
    }
    let variance = norm(&times(&x));
    // The sign is free: the largest component is made positive, so that the same data give the same numbers.
    let largest = x.iter().copied().max_by(|a, b| a.abs().total_cmp(&b.abs())).unwrap_or(1.0);
    let scale = variance.sqrt() * largest.signum();
    x.into_iter().map(|a| a * scale).collect()
}

/// A covariance with what is negative in it taken away, by Jacobi's rotations: a difference of two estimates need not be
/// one.
#[must_use]
pub fn without_negative(covariance: &[Vec<f64>]) -> Vec<Vec<f64>> {
    let size = covariance.len();
    let mut a = covariance.to_vec();
    let mut v: Vec<Vec<f64>> = (0..size).map(|i| (0..size).map(|j| if i == j { 1.0 } else { 0.0 }).collect()).collect();
    for _ in 0..60 {
        for p in 0..size {
            for q in p + 1..size {
                if a[p][q].abs() < 1e-14 {
                    continue;
                }
                let theta = 0.5 * (a[q][q] - a[p][p]) / a[p][q];
                let t = theta.signum() / (theta.abs() + (theta * theta + 1.0).sqrt());
                let t = if theta == 0.0 { 1.0 } else { t };
                let c = 1.0 / (t * t + 1.0).sqrt();
                let s = t * c;
                for k in 0..size {
                    let (x, y) = (a[k][p], a[k][q]);
                    (a[k][p], a[k][q]) = (c * x - s * y, s * x + c * y);
                }
                for k in 0..size {
                    let (x, y) = (a[p][k], a[q][k]);
                    (a[p][k], a[q][k]) = (c * x - s * y, s * x + c * y);
                }
                for row in &mut v {
                    let (x, y) = (row[p], row[q]);
                    (row[p], row[q]) = (c * x - s * y, s * x + c * y);
                }
            }
        }
    }
    let mut sum = vec![vec![0.0; size]; size];
    for k in 0..size {
        let value = a[k][k].max(0.0);
        for i in 0..size {
            for j in 0..size {
                sum[i][j] += value * v[i][k] * v[j][k];
            }
        }
    }
    sum
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plane_is_found_again() {
        let rows: Vec<Vec<f64>> = (0..20).map(|i| vec![1.0, f64::from(i % 5), f64::from(i / 5)]).collect();
        let values: Vec<Vec<f64>> = rows.iter().map(|row| vec![2.0 + 3.0 * row[1] - row[2], row[2]]).collect();
        let found = least_squares(&rows, &values, 0.0);
        for (row, expected) in found.iter().zip([[2.0, 0.0], [3.0, 0.0], [-1.0, 1.0]]) {
            for (a, b) in row.iter().zip(expected) {
                assert!((a - b).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn principal_direction_and_negative_part() {
        // 9 along (1,1)/√2, 1 along (1,−1)/√2.
        let found = principal(&[vec![5.0, 4.0], vec![4.0, 5.0]]);
        assert!(found.iter().all(|x| (x - 3.0 / 2f64.sqrt()).abs() < 1e-9), "{found:?}");
        // 2 along (1,1)/√2, −1 along the other.
        let kept = without_negative(&[vec![0.5, 1.5], vec![1.5, 0.5]]);
        assert!(kept.iter().flatten().all(|x| (x - 1.0).abs() < 1e-12), "{kept:?}");
    }
}
