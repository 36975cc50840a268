//! Mixture parameters of Lemmon, E. W., Jacobsen, R. T, Equations of State for Mixtures of, R-134a,
//! R-143a, and R-152a, J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997.

use super::departure;
use super::{Pair, Rule};
use crate::eos::fluid;

/// R-125 with R-134a.
pub static R125_WITH_R134A: Pair = Pair {
    components: [&fluid::R125, &fluid::R134A],
    temperature: Rule::Excess(-0.4326),
    volume: Rule::Excess(-3.453e-07),
    departure_factor: 1.0,
    departure: &departure::GENERALIZEDHFC,
};

/// R-125 with R-143a.
pub static R125_WITH_R143A: Pair = Pair {
    components: [&fluid::R125, &fluid::R143A],
    temperature: Rule::Excess(5.551),
    volume: Rule::Excess(-4.452e-07),
    departure_factor: 1.1697,
    departure: &departure::GENERALIZEDHFC,
};

/// R-134a with R-143a.
pub static R134A_WITH_R143A: Pair = Pair {
    components: [&fluid::R134A, &fluid::R143A],
    temperature: Rule::Excess(2.324),
    volume: Rule::Excess(6.182e-07),
    departure_factor: 0.5557,
    departure: &departure::GENERALIZEDHFC,
};

/// R-134a with R-152a.
pub static R134A_WITH_R152A: Pair = Pair {
    components: [&fluid::R134A, &fluid::R152A],
    temperature: Rule::Excess(4.202),
    volume: Rule::Excess(4.223e-06),
    departure_factor: 2.0,
    departure: &departure::GENERALIZEDHFC,
};

/// R-32 with R-125.
pub static R32_WITH_R125: Pair = Pair {
    components: [&fluid::R32, &fluid::R125],
    temperature: Rule::Excess(28.95),
    volume: Rule::Excess(-6.008e-06),
    departure_factor: 1.0,
    departure: &departure::R32_R125,
};

/// R-32 with R-134a.
pub static R32_WITH_R134A: Pair = Pair {
    components: [&fluid::R32, &fluid::R134A],
    temperature: Rule::Excess(7.909),
    volume: Rule::Excess(-2.039e-06),
    departure_factor: 1.0,
    departure: &departure::R32_R134A,
};
