//! Mixture parameters of Bell, I. H., Mixture Models for Refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and
//! R-134a/1234ze(E) and Interim Models for R-125/1234yf, R-1234ze(E)/227ea, and R-1234yf/152a, J. Phys. Chem. Ref.
//! Data 51 (2022) 013103, doi 10.1063/5.0086060.

use super::departure;
use super::{Pair, Rule};
use crate::eos::fluid;

/// R-1234yf with R-1234ze(E).
pub static R1234YF_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R1234YF, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(0.998886, 0.999309),
    volume: Rule::BetaGamma(0.999302, 0.99859),
    departure_factor: 1.0,
    departure: &departure::R1234YF_R1234ZE_E,
};

/// R-1234yf with R-134a.
pub static R1234YF_WITH_R134A: Pair = Pair {
    components: [&fluid::R1234YF, &fluid::R134A],
    temperature: Rule::BetaGamma(1.000026, 0.987057),
    volume: Rule::BetaGamma(1.000272, 1.003747),
    departure_factor: 1.0,
    departure: &departure::R1234YF_R134A,
};

/// R-134a with R-1234ze(E).
pub static R134A_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R134A, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(0.998593, 0.992009),
    volume: Rule::BetaGamma(0.998995, 0.998621),
    departure_factor: 1.0,
    departure: &departure::R134A_R1234ZE_E,
};
