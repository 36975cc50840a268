//! Small symmetric matrices, lower halves by rows, and their factors. Sizes are at most [`CHANNELS`].
//!
//! Single precision: a microcontroller of the kind that instruments have computes it in hardware, and what is weighed is
//! known to two digits at best. Rows are walked by iterators, so that no index can be out of range.

use super::CHANNELS;

/// Numbers in half a matrix of all channels.
pub(super) const HALF: usize = CHANNELS * (CHANNELS + 1) / 2;

/// A vector over the channels.
pub(super) type Vector = [f32; CHANNELS];

/// Variances below this are taken as this: K² or %².
const LEAST: f32 = 1e-6;

/// A symmetric matrix.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Half(pub [f32; HALF]);

/// Where a row begins.
const fn start(row: usize) -> usize {
    row * (row + 1) / 2
}

impl Half {
    pub(super) const ZERO: Self = Self([0.0; HALF]);

    pub(super) fn get(&self, i: usize, j: usize) -> f32 {
        let (row, column) = if i >= j { (i, j) } else { (j, i) };
        self.0.get(start(row) + column).copied().unwrap_or(0.0)
    }

    pub(super) fn add(&mut self, i: usize, j: usize, value: f32) {
        let (row, column) = if i >= j { (i, j) } else { (j, i) };
        if let Some(place) = self.0.get_mut(start(row) + column) {
            *place += value;
        }
    }

    /// Adds the outer product of a vector.
    pub(super) fn add_outer(&mut self, vector: &Vector) {
        self.add_scaled_outer(vector, 1.0);
    }

    pub(super) fn add_scaled_outer(&mut self, vector: &Vector, factor: f32) {
        let mut rest: &mut [f32] = &mut self.0;
        for (i, x) in vector.iter().enumerate() {
            let Some((row, after)) = rest.split_at_mut_checked(i + 1) else { return };
            let scaled = factor * x;
            row.iter_mut().zip(vector).for_each(|(place, y)| *place += scaled * y);
            rest = after;
        }
    }

    /// Adds a table of its first numbers, in the same order.
    pub(super) fn add_table(&mut self, table: &[f32], factor: f32) {
        self.0.iter_mut().zip(table).for_each(|(place, x)| *place += factor * x);
    }

    /// The matrix times a vector, each sum in the order of the channels.
    #[inline(never)]
    pub(super) fn times(&self, vector: &Vector) -> Vector {
        let mut product = [0.0; CHANNELS];
        let mut rest: &[f32] = &self.0;
        for (i, x) in vector.iter().enumerate() {
            let Some((row, after)) = rest.split_at_checked(i + 1) else { break };
            rest = after;
            // A row stands for its column too: what is above the diagonal is added to the rows before.
            let mut own = 0.0;
            for ((element, y), place) in row.iter().zip(vector).zip(&mut product).take(i) {
                own += element * y;
                *place += element * x;
            }
            if let (Some(place), Some(element)) = (product.get_mut(i), row.last()) {
                *place = own + element * x;
            }
        }
        product
    }

    /// One row up to the diagonal.
    pub(super) fn row(&self, i: usize) -> &[f32] {
        self.0.get(start(i)..=start(i) + i).unwrap_or(&[])
    }

    /// Variance of one channel, or of one less another.
    pub(super) fn variance(&self, plus: usize, minus: Option<usize>) -> f32 {
        match minus {
            None => self.get(plus, plus),
            Some(minus) => {
                let shared = self.get(plus, minus);
                (self.get(plus, plus) - shared) - (shared - self.get(minus, minus))
            }
        }
    }
}

/// A matrix as L·D·Lᵀ: no square roots.
#[derive(Debug)]
pub(super) struct Factors {
    /// L below the diagonal, 1/D on it.
    pub rows: Half,
    size: usize,
}

impl Factors {
    /// Of a matrix's first `size` rows.
    pub(super) fn of(matrix: &Half, size: usize) -> Self {
        let mut factors = Self::of_nothing(size);
        factors.rows.0.copy_from_slice(&matrix.0);
        factors.factor();
        factors
    }

    /// Of a matrix that is to be written to `rows`, and then factored there.
    pub(super) const fn of_nothing(size: usize) -> Self {
        Self { rows: Half::ZERO, size }
    }

    /// Factors what stands in `rows`.
    #[inline(never)]
    pub(super) fn factor(&mut self) {
        let (size, rows) = (self.size, &mut self.rows.0);
        for i in 0..size {
            let Some((before, row)) = rows.split_at_mut_checked(start(i)) else { break };
            let mut before: &[f32] = before;
            let mut diagonal = row.get(i).copied().unwrap_or(LEAST);
            for j in 0..i {
                let Some((other, after)) = before.split_at_checked(j + 1) else { break };
                before = after;
                let Some((known, rest)) = row.split_at_mut_checked(j) else { break };
                let Some(place) = rest.first_mut() else { break };
                // What stands in `known` are L times D.
                *place -= known.iter().zip(other).map(|(x, l)| x * l).sum::<f32>();
            }
            let mut before: &[f32] = rows.get(..start(i)).unwrap_or(&[]);
            let mut scaled = [0.0; CHANNELS];
            for (j, place) in scaled.iter_mut().enumerate().take(i) {
                let Some((other, after)) = before.split_at_checked(j + 1) else { break };
                before = after;
                *place = other.last().copied().unwrap_or(0.0);
            }
            let Some(row) = rows.get_mut(start(i)..) else { break };
            for (x, inverse) in row.iter_mut().zip(scaled).take(i) {
                let unscaled = *x;
                *x *= inverse;
                diagonal -= unscaled * *x;
            }
            if let Some(place) = row.get_mut(i) {
                *place = 1.0 / diagonal.max(LEAST);
            }
        }
    }

    /// The solution of (L·D·Lᵀ) x = b.
    #[inline(never)]
    pub(super) fn solve(&self, b: &Vector) -> Vector {
        let mut x = *b;
        for i in 0..self.size {
            let row = self.row(i);
            let (known, rest) = x.split_at_mut(i.min(CHANNELS));
            if let Some(place) = rest.first_mut() {
                *place -= row.iter().zip(known.iter()).map(|(l, y)| l * y).sum::<f32>();
            }
        }
        for (i, place) in x.iter_mut().enumerate() {
            let inverse = if i < self.size { self.row(i).last().copied().unwrap_or(0.0) } else { 0.0 };
            *place *= inverse;
        }
        for i in (0..self.size).rev() {
            let row = self.row(i);
            let (before, rest) = x.split_at_mut(i.min(CHANNELS));
            if let Some(value) = rest.first().copied() {
                before.iter_mut().zip(row).for_each(|(place, l)| *place -= l * value);
            }
        }
        x
    }

    fn row(&self, i: usize) -> &[f32] {
        self.rows.row(i)
    }
}

/// How many hypotheses are weighed side by side: as many as fit a host's registers. On a microcontroller it is two, and
/// each is computed in the same order either way, to the same bits.
pub(super) const LANES: usize = if cfg!(target_arch = "arm") { 2 } else { 8 };
/// One number of each.
pub(super) type Lane = [f32; LANES];

#[inline]
fn each(mut of: impl FnMut(usize) -> f32) -> Lane {
    core::array::from_fn(&mut of)
}

/// What is weighed side by side: hypotheses' residuals and covariances, each of the latter a covariance that all share,
/// two directions of scatter and a variance beside them.
pub(super) struct Batch {
    pub residuals: [Lane; CHANNELS],
    pub first: [Lane; CHANNELS],
    pub second: [Lane; CHANNELS],
    pub beside: [Lane; CHANNELS],
    /// L below the diagonal, while it is computed; kept here so that it is emptied but once.
    rows: [Lane; HALF],
    /// 1/D of the rows done.
    inverses: [Lane; CHANNELS],
}

impl Batch {
    pub(super) const NONE: Self = Self {
        residuals: [[0.0; LANES]; CHANNELS],
        first: [[0.0; LANES]; CHANNELS],
        second: [[0.0; LANES]; CHANNELS],
        beside: [[0.0; LANES]; CHANNELS],
        rows: [[0.0; LANES]; HALF],
        inverses: [[0.0; LANES]; CHANNELS],
    };

    /// Writes the covariances to the rows.
    fn fill(&mut self, shared: &Half, size: usize) {
        let mut places = self.rows.iter_mut().zip(&shared.0);
        let scatter = self.first.iter().zip(&self.second).zip(&self.beside);
        for (i, ((x, y), beside)) in scatter.enumerate().take(size) {
            for ((a, b), (place, base)) in self.first.iter().zip(&self.second).take(i).zip(&mut places) {
                *place = each(|k| base + x[k] * a[k] + y[k] * b[k]);
            }
            if let Some((place, base)) = places.next() {
                *place = each(|k| base + x[k] * x[k] + y[k] * y[k] + beside[k]);
            }
        }
    }

    /// The squared distance of the residuals by their covariances, and the product of the diagonals D, which is the
    /// determinant. Uses the residuals up.
    #[inline(never)]
    pub(super) fn distances(&mut self, shared: &Half, size: usize) -> (Lane, Lane) {
        let mut squared = [0.0; LANES];
        let mut determinant = [1.0; LANES];
        self.fill(shared, size);
        for i in 0..size {
            let Some((before, rest)) = self.rows.split_at_mut_checked(start(i)) else { break };
            let Some((base, row)) = rest.get_mut(..=i).and_then(<[Lane]>::split_last_mut) else { break };
            let mut before: &[Lane] = before;
            for j in 0..i {
                let Some((other, after)) = before.split_at_checked(j + 1) else { break };
                before = after;
                let Some((known, rest)) = row.split_at_mut_checked(j) else { break };
                let Some(place) = rest.first_mut() else { break };
                let mut sum = *place;
                for (x, l) in known.iter().zip(other) {
                    sum = each(|k| sum[k] - x[k] * l[k]);
                }
                *place = sum;
            }
            let Some((done, left)) = self.residuals.split_at_mut_checked(i) else { break };
            let Some(residual) = left.first_mut() else { break };
            let (mut diagonal, mut value) = (*base, *residual);
            for ((x, inverse), known) in row.iter_mut().zip(&self.inverses).zip(done.iter()) {
                let unscaled = *x;
                *x = each(|k| unscaled[k] * inverse[k]);
                diagonal = each(|k| diagonal[k] - unscaled[k] * x[k]);
                value = each(|k| value[k] - x[k] * known[k]);
            }
            diagonal = diagonal.map(|one| one.max(LEAST));
            let inverse = diagonal.map(|one| 1.0 / one);
            *residual = value;
            if let Some(place) = self.inverses.get_mut(i) {
                *place = inverse;
            }
            squared = each(|k| squared[k] + value[k] * value[k] * inverse[k]);
            determinant = each(|k| determinant[k] * diagonal[k]);
        }
        (squared, determinant)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sample() -> Half {
        // Diagonally dominant: positive definite.
        let mut matrix = Half::ZERO;
        for i in 0..CHANNELS {
            for j in 0..=i {
                let value = if i == j { 5.0 + i as f32 } else { 1.0 / (1.0 + (i - j) as f32) };
                matrix.add(i, j, value);
            }
        }
        matrix
    }

    #[test]
    fn solutions_solve() {
        let matrix = sample();
        let b: Vector = core::array::from_fn(|i| (i as f32 - 4.0) * 0.7);
        let x = Factors::of(&matrix, CHANNELS).solve(&b);
        for (left, right) in matrix.times(&x).iter().zip(b) {
            assert!((left - right).abs() < 1e-5, "{left} {right}");
        }
    }

    #[test]
    fn side_by_side_is_one_by_one() {
        let matrix = sample();
        let b: Vector = core::array::from_fn(|i| (i as f32 - 4.0) * 0.7);
        let (along, across): (Vector, Vector) = (b.map(|x| 0.3 * x), core::array::from_fn(|i| 1.0 / (i + 1) as f32));
        let mut scattered = matrix;
        scattered.add_outer(&along);
        scattered.add_outer(&across);
        (0..CHANNELS).for_each(|i| scattered.add(i, i, 0.5));
        for size in [1, 4, CHANNELS] {
            let short: Vector = core::array::from_fn(|i| if i < size { b[i] } else { 0.0 });
            let known = |matrix: &Half| {
                let factors = Factors::of(matrix, size);
                let determinant: f32 = (0..size).map(|i| 1.0 / factors.row(i)[i]).product();
                (factors.solve(&short).iter().zip(short).map(|(x, y)| x * y).sum::<f32>(), determinant)
            };
            // The first as it is, then one with a scatter, with twice the residual; the rest with none.
            let mut batch = Batch::NONE;
            for (i, x) in b.into_iter().enumerate() {
                (batch.residuals[i][0], batch.residuals[i][1], batch.residuals[i][2]) = (x, x, 2.0 * x);
                (batch.first[i][1], batch.second[i][1], batch.beside[i][1]) = (along[i], across[i], 0.5);
            }
            let (squared, determinant) = batch.distances(&matrix, size);
            let (plain, wide) = (known(&matrix), known(&scattered));
            for (lane, expected) in [plain, wide, (4.0 * plain.0, plain.1), (0.0, plain.1)].into_iter().enumerate() {
                assert!((squared[lane] - expected.0).abs() <= 1e-4 * expected.0);
                assert!((determinant[lane] / expected.1 - 1.0).abs() < 1e-4);
            }
        }
    }
}
