//! Pairs for which nobody has published parameters: estimated here, and every refrigerant that needs one is marked
//! so.
//!
//! One parameter a pair, γT; β and γV are 1 and there is no departure function. By analogy: the mean of γT of
//! published pairs that resemble it. Fitted: moved away from the analogy towards published normal bubble and dew
//! points. `cargo run --release -p satline-tests --bin estimate` repeats both and prints what each pair and point
//! comes to; `tests/tests/estimated.rs` compares.

use super::{Pair, Rule};
use crate::eos::fluid;

/// R-125 with R-22. By analogy 0.9994: the mean of R-32, R-134a, R-143a and R-152a with R-22. Fitted to R-402A,
/// R-402B and R-408A; R-402A and R-402B decide.
pub static R125_WITH_R22: Pair = Pair {
    components: [&fluid::R125, &fluid::R22],
    temperature: Rule::BetaGamma(1.0, 0.9776),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-22 with R-124. By analogy 0.9978: the mean of R-124 with R-134a and R-142b, and of R-22 with R-134a and R-142b.
/// Fitted to R-401A, R-409A and R-414B.
pub static R22_WITH_R124: Pair = Pair {
    components: [&fluid::R22, &fluid::R124],
    temperature: Rule::BetaGamma(1.0, 0.999),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-124. By analogy: the mean of R-124 with R-134a and R-142b, and of R-152a with R-227ea, R-142b and
///
pub static R152A_WITH_R124: Pair = Pair {
    components: [&fluid::R152A, &fluid::R124],
    temperature: Rule::BetaGamma(1.0, 0.9945),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-218. By analogy: the mean of R-170 with R-218, and of R-290 and R-1270 with R-115.
pub static R290_WITH_R218: Pair = Pair {
    components: [&fluid::R290, &fluid::R218],
    temperature: Rule::BetaGamma(1.0, 0.9402),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-22 with R-600a. By analogy: the mean of R-22 with.
pub static R22_WITH_R600A: Pair = Pair {
    components: [&fluid::R22, &fluid::R600A],
    temperature: Rule::BetaGamma(1.0, 0.9513),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-124 with R-600a. By analogy: the mean of R-600a with R-227ea and R-134a, of R-290 with, and of
/// R-601 with R-22.
pub static R124_WITH_R600A: Pair = Pair {
    components: [&fluid::R124, &fluid::R600A],
    temperature: Rule::BetaGamma(1.0, 0.9303),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-124 with R-600. By analogy: the mean of R-600 with R-227ea and R-134a, of R-290 with, and of
/// R-601 with R-22.
pub static R124_WITH_R600: Pair = Pair {
    components: [&fluid::R124, &fluid::R600],
    temperature: Rule::BetaGamma(1.0, 0.9276),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-142b. By analogy: R-600a with R-152a, changed as R-1270 changes from R-152a to R-142b; and R-1270
/// with R-142b, changed as R-22 changes from R-1270 to R-290; the mean.
pub static R600A_WITH_R142B: Pair = Pair {
    components: [&fluid::R600A, &fluid::R142B],
    temperature: Rule::BetaGamma(1.0, 0.9597),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-227ea with R-236fa. By analogy: the mean of R-134a and R-125 with either of the two.
pub static R227EA_WITH_R236FA: Pair = Pair {
    components: [&fluid::R227EA, &fluid::R236FA],
    temperature: Rule::BetaGamma(1.0, 1.0011),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-601a. By analogy 0.8824: R-600 with R-32, changed as the butane changes to R-601 with R-152a and with
/// R-1234ze(E), the mean. Fitted, by one move common to the pentanes, to R-424A, R-437A, R-438A and R-453A.
pub static R32_WITH_R601A: Pair = Pair {
    components: [&fluid::R32, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 0.8895),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-601a. By analogy 0.9167: R-600 with R-125, changed as the butane changes to R-601 with R-152a and
/// with R-1234ze(E), the mean. Fitted, by one move common to the pentanes, to R-424A, R-437A, R-438A and R-453A.
pub static R125_WITH_R601A: Pair = Pair {
    components: [&fluid::R125, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 0.9237),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-601a. By analogy 0.9031: R-600 with R-134a, changed as the butane changes to R-601 with R-152a and
/// with R-1234ze(E), the mean. Fitted, by one move common to the pentanes, to R-424A, R-437A, R-438A and R-453A.
pub static R134A_WITH_R601A: Pair = Pair {
    components: [&fluid::R134A, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 0.9102),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-227ea with R-601a. By analogy 0.9143: R-600 with R-227ea, changed as the butane changes to R-601 with R-152a and
/// with R-1234ze(E), the mean. Fitted, by one move common to the pentanes, to R-424A, R-437A, R-438A and R-453A.
pub static R227EA_WITH_R601A: Pair = Pair {
    components: [&fluid::R227EA, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 0.9213),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-601. By analogy 0.9167: R-600 with R-125, changed as the butane changes to R-601 with R-152a and with
/// R-1234ze(E), the mean. Fitted, by one move common to the pentanes, to R-424A, R-437A, R-438A and R-453A.
pub static R125_WITH_R601: Pair = Pair {
    components: [&fluid::R125, &fluid::R601],
    temperature: Rule::BetaGamma(1.0, 0.9237),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-601. By analogy 0.9031: R-600 with R-134a, changed as the butane changes to R-601 with R-152a and
/// with R-1234ze(E), the mean. Fitted, by one move common to the pentanes, to R-424A, R-437A, R-438A and R-453A.
pub static R134A_WITH_R601: Pair = Pair {
    components: [&fluid::R134A, &fluid::R601],
    temperature: Rule::BetaGamma(1.0, 0.9102),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};
