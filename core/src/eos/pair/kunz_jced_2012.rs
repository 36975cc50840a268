//! Mixture parameters of Kunz, O., Wagner, W., The GERG-2008 Wide-Range Equation of State for Natural Gases and Other
//! Mixtures: An Expansion of GERG-2004, J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b.

use super::departure;
use super::{Pair, Rule};
use crate::eos::fluid;

/// R-170 with R-290.
pub static R170_WITH_R290: Pair = Pair {
    components: [&fluid::R170, &fluid::R290],
    temperature: Rule::BetaGamma(0.996199694, 1.01473019),
    volume: Rule::BetaGamma(0.997607277, 1.00303472),
    departure_factor: 0.13042476515,
    departure: &departure::GENERALIZEDALKANE,
};

/// R-170 with R-600.
pub static R170_WITH_R600: Pair = Pair {
    components: [&fluid::R170, &fluid::R600],
    temperature: Rule::BetaGamma(0.999130554, 1.034832749),
    volume: Rule::BetaGamma(0.999157205, 1.006179146),
    departure_factor: 0.281570073085,
    departure: &departure::GENERALIZEDALKANE,
};

/// R-170 with R-600a.
pub static R170_WITH_R600A: Pair = Pair {
    components: [&fluid::R170, &fluid::R600A],
    temperature: Rule::BetaGamma(1.0, 1.033283811),
    volume: Rule::BetaGamma(1.0, 1.006616886),
    departure_factor: 0.260632376098,
    departure: &departure::GENERALIZEDALKANE,
};

/// R-170 with R-601.
pub static R170_WITH_R601: Pair = Pair {
    components: [&fluid::R170, &fluid::R601],
    temperature: Rule::BetaGamma(0.998688946, 1.066665676),
    volume: Rule::BetaGamma(0.993851009, 1.026085655),
    departure_factor: 0.0,
    departure: &[],
};

/// R-170 with R-601a.
pub static R170_WITH_R601A: Pair = Pair {
    components: [&fluid::R170, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 1.021150247),
    volume: Rule::BetaGamma(1.0, 1.045439935),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-600.
pub static R290_WITH_R600: Pair = Pair {
    components: [&fluid::R290, &fluid::R600],
    temperature: Rule::BetaGamma(1.000310289, 1.007392782),
    volume: Rule::BetaGamma(0.999795868, 1.003264179),
    departure_factor: 0.0312572600489,
    departure: &departure::GENERALIZEDALKANE,
};

/// R-290 with R-600a.
pub static R290_WITH_R600A: Pair = Pair {
    components: [&fluid::R290, &fluid::R600A],
    temperature: Rule::BetaGamma(0.998012298, 1.005250774),
    volume: Rule::BetaGamma(0.999243146, 1.001156119),
    departure_factor: -0.0551609771024,
    departure: &departure::GENERALIZEDALKANE,
};

/// R-290 with R-601.
pub static R290_WITH_R601: Pair = Pair {
    components: [&fluid::R290, &fluid::R601],
    temperature: Rule::BetaGamma(0.996484021, 1.008344412),
    volume: Rule::BetaGamma(1.044919431, 1.019921513),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-601a.
pub static R290_WITH_R601A: Pair = Pair {
    components: [&fluid::R290, &fluid::R601A],
    temperature: Rule::BetaGamma(0.994364425, 1.0032695),
    volume: Rule::BetaGamma(1.040459289, 0.999432118),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-600a.
pub static R600_WITH_R600A: Pair = Pair {
    components: [&fluid::R600, &fluid::R600A],
    temperature: Rule::BetaGamma(1.000077547, 1.001432824),
    volume: Rule::BetaGamma(1.000880464, 1.00041444),
    departure_factor: -0.0551240293009,
    departure: &departure::GENERALIZEDALKANE,
};

/// R-600 with R-601.
pub static R600_WITH_R601: Pair = Pair {
    components: [&fluid::R600, &fluid::R601],
    temperature: Rule::BetaGamma(1.0, 1.00214364),
    volume: Rule::BetaGamma(1.0, 1.01815965),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-601a.
pub static R600_WITH_R601A: Pair = Pair {
    components: [&fluid::R600, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 1.000792201),
    volume: Rule::BetaGamma(1.0, 1.002728434),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-601.
pub static R600A_WITH_R601: Pair = Pair {
    components: [&fluid::R600A, &fluid::R601],
    temperature: Rule::BetaGamma(1.0, 1.002495889),
    volume: Rule::BetaGamma(1.0, 1.002779804),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-601a.
pub static R600A_WITH_R601A: Pair = Pair {
    components: [&fluid::R600A, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 1.001835788),
    volume: Rule::BetaGamma(1.0, 1.002284353),
    departure_factor: 0.0,
    departure: &[],
};

/// R-601 with R-601a.
pub static R601_WITH_R601A: Pair = Pair {
    components: [&fluid::R601, &fluid::R601A],
    temperature: Rule::BetaGamma(1.0, 1.000050537),
    volume: Rule::BetaGamma(1.0, 1.000024335),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-170.
pub static R744_WITH_R170: Pair = Pair {
    components: [&fluid::R744, &fluid::R170],
    temperature: Rule::BetaGamma(1.013871147, 0.90094953),
    volume: Rule::BetaGamma(1.002525718, 1.032876701),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-290.
pub static R744_WITH_R290: Pair = Pair {
    components: [&fluid::R744, &fluid::R290],
    temperature: Rule::BetaGamma(1.033620538, 0.908772477),
    volume: Rule::BetaGamma(0.996898004, 1.047596298),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-600.
pub static R744_WITH_R600: Pair = Pair {
    components: [&fluid::R744, &fluid::R600],
    temperature: Rule::BetaGamma(1.018171004, 0.911498231),
    volume: Rule::BetaGamma(1.174760923, 1.222437324),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-600a.
pub static R744_WITH_R600A: Pair = Pair {
    components: [&fluid::R744, &fluid::R600A],
    temperature: Rule::BetaGamma(1.023339824, 0.929982936),
    volume: Rule::BetaGamma(1.076551882, 1.081909003),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-601.
pub static R744_WITH_R601: Pair = Pair {
    components: [&fluid::R744, &fluid::R601],
    temperature: Rule::BetaGamma(1.027000795, 0.979217302),
    volume: Rule::BetaGamma(1.024311498, 1.068406078),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-601a.
pub static R744_WITH_R601A: Pair = Pair {
    components: [&fluid::R744, &fluid::R601A],
    temperature: Rule::BetaGamma(1.019180957, 0.961218039),
    volume: Rule::BetaGamma(1.060793104, 1.116793198),
    departure_factor: 0.0,
    departure: &[],
};
