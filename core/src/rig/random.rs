//! The rig's source of chance: the same numbers from the same seed, everywhere.

use crate::math;

/// SplitMix64 (Steele, Lea and Flood 2014): a counter in steps of the golden ratio, stirred. Not for secrets.
///
/// ```
/// use satline::rig::Random;
/// let (mut one, mut other) = (Random::new(7), Random::new(7));
/// assert_eq!(one.normal(), other.normal());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Random {
    state: u64,
}

impl Random {
    /// A source that begins at a seed; any will do.
    #[must_use]
    pub const fn new(seed: u64) -> Self {
        Self { state: seed }
    }

    /// The next 64 bits.
    pub const fn bits(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let stirred = (self.state ^ (self.state >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let stirred = (stirred ^ (stirred >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        stirred ^ (stirred >> 31)
    }

    /// A number from 0, which may come, to 1, which does not, each as likely.
    pub const fn share(&mut self) -> f64 {
        // As many bits as a double holds.
        (self.bits() >> 11) as f64 * (1.0 / (1_u64 << 53) as f64)
    }

    /// A number between two limits, each as likely.
    pub const fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    /// A number of the normal distribution of mean 0 and standard deviation 1, by Marsaglia's polar method; the second
    /// of each pair is dropped, so that nothing but the counter is remembered.
    pub fn normal(&mut self) -> f64 {
        loop {
            let (x, y) = (self.between(-1.0, 1.0), self.between(-1.0, 1.0));
            let square = x * x + y * y;
            if square > 0.0 && square < 1.0 {
                return x * math::sqrt(-2.0 * math::ln(square) / square);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// First numbers of the published generator (from memory).
    #[test]
    fn published_numbers() {
        let mut random = Random::new(1_234_567);
        for expected in [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423] {
            assert_eq!(random.bits(), expected);
        }
        assert_eq!(Random::new(0).bits(), 0xE220_A839_7B1D_CDAF);
    }

    /// Moments up to the fourth of both distributions, within four standard errors.
    #[test]
    fn moments() {
        const COUNT: usize = 100_000;
        let mut random = Random::new(42);
        let [mut mean, mut square, mut cube, mut fourth, mut even, mut even_square] = [0.0; 6];
        for _ in 0..COUNT {
            let normal = random.normal();
            mean += normal;
            square += normal * normal;
            cube += normal * normal * normal;
            fourth += normal * normal * normal * normal;
            let share = random.share();
            assert!((0.0..1.0).contains(&share));
            even += share - 0.5;
            even_square += (share - 0.5) * (share - 0.5);
        }
        let count = COUNT as f64;
        for (sum, expected, variance) in [
            (mean, 0.0, 1.0),
            (square, 1.0, 2.0),
            (cube, 0.0, 15.0),
            (fourth, 3.0, 96.0),
            (even, 0.0, 1.0 / 12.0),
            (even_square, 1.0 / 12.0, 1.0 / 180.0),
        ] {
            let error: f64 = sum / count - expected;
            assert!(error.abs() < 4.0 * f64::sqrt(variance / count), "{error} of {expected}");
        }
    }
}
