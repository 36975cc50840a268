//! Mixture parameters of Bell, I. H., Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E),
//! R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi
//! 10.1063/5.0135368.

use super::departure;
use super::{Pair, Rule};
use crate::eos::fluid;

/// R-1234yf with R-152a.
pub static R1234YF_WITH_R152A: Pair = Pair {
    components: [&fluid::R1234YF, &fluid::R152A],
    temperature: Rule::BetaGamma(0.995987, 0.978058),
    volume: Rule::BetaGamma(0.99971, 1.008608),
    departure_factor: 1.0,
    departure: &departure::R1234YF_R152A,
};

/// R-1234ze(E) with R-227ea.
pub static R1234ZEE_WITH_R227EA: Pair = Pair {
    components: [&fluid::R1234ZEE, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.001247, 0.98918),
    volume: Rule::BetaGamma(0.99929, 1.001581),
    departure_factor: 1.0,
    departure: &departure::R1234ZE_E_R227EA,
};

/// R-125 with R-1234yf.
pub static R125_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R125, &fluid::R1234YF],
    temperature: Rule::BetaGamma(0.999969, 0.998028),
    volume: Rule::BetaGamma(0.998226, 1.006068),
    departure_factor: 1.0,
    departure: &departure::R125_R1234YF,
};

/// R-32 with R-1234yf.
pub static R32_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R32, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.011011, 0.966965),
    volume: Rule::BetaGamma(1.007852, 1.037663),
    departure_factor: 1.0,
    departure: &departure::R32_R1234YF,
};

/// R-32 with R-1234ze(E).
pub static R32_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R32, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(1.005148, 0.946105),
    volume: Rule::BetaGamma(0.999032, 1.029821),
    departure_factor: 1.0,
    departure: &departure::R32_R1234ZE_E,
};
