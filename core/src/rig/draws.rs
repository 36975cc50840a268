//! Pseudo-random numbers that are the same everywhere.

use crate::math;

/// `SplitMix64` (Steele, Lea and Flood 2014): a counter whose bits are mixed. Deterministic, no state but its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Draws(u64);

impl Draws {
    /// A stream by its seed.
    #[must_use]
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The stream of one of many things that share a seed, whatever else was drawn before.
    #[must_use]
    pub fn of(seed: u64, index: u64) -> Self {
        let mut mixed = Self(seed ^ 0x5851_f42d_4c95_7f2d);
        let start = mixed.bits();
        let mut own = Self(start ^ index.wrapping_mul(0xd134_2543_de82_ef95));
        Self(own.bits())
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Even between two values.
    pub fn uniform(&mut self, lower: f64, upper: f64) -> f64 {
        // 53 bits, as many as a number between 0 and 1 holds.
        let share = (self.bits() >> 11) as f64 / 9_007_199_254_740_992.0;
        lower + share * (upper - lower)
    }

    /// Normal with mean 0 and standard deviation 1, by Marsaglia's polar method.
    pub fn normal(&mut self) -> f64 {
        // Each round fails with 21 %: that a hundred do is out of reach of 64 bits.
        for _ in 0..100 {
            let (x, y) = (self.uniform(-1.0, 1.0), self.uniform(-1.0, 1.0));
            let square = x * x + y * y;
            if square > 0.0 && square < 1.0 {
                return x * math::sqrt(-2.0 * math::ln(square) / square);
            }
        }
        0.0
    }

    /// One of some values, each as likely; the given one where there are none.
    pub fn choose<T: Copy>(&mut self, from: &[T], otherwise: T) -> T {
        let place = self.uniform(0.0, from.len() as f64) as usize;
        from.get(place).copied().unwrap_or(otherwise)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The first numbers of the published generator for a seed of 1234567 (reference code of the authors, from memory).
    #[test]
    fn the_published_sequence() {
        let mut draws = Draws::new(1_234_567);
        let first = [draws.bits(), draws.bits(), draws.bits()];
        assert_eq!(first, [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]);
    }

    #[test]
    fn moments() {
        let mut draws = Draws::of(7, 3);
        let (mut even, mut mean, mut square) = (0.0, 0.0, 0.0);
        let count = 20_000;
        for _ in 0..count {
            even += draws.uniform(0.0, 1.0);
            let value = draws.normal();
            mean += value;
            square += value * value;
        }
        let count = f64::from(count);
        assert!(
            (even / count - 0.5).abs() < 0.01 && (mean / count).abs() < 0.03 && (square / count - 1.0).abs() < 0.04
        );
        assert_ne!(Draws::of(7, 4), Draws::of(7, 3));
    }
}
