//! Mixture parameters of Bell, I. H., Modeling Mixtures Containing Refrigerants: Updated Interaction Parameters, J.
//! Chem. Eng. Data (2025), doi 10.1021/acs.jced.4c00699.

use super::{Pair, Rule};
use crate::eos::fluid;

/// R-1234yf with R-1233zd(E).
pub static R1234YF_WITH_R1233ZDE: Pair = Pair {
    components: [&fluid::R1234YF, &fluid::R1233ZDE],
    temperature: Rule::BetaGamma(1.0, 0.988723),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1234ze(E) with R-1336mzz(E).
pub static R1234ZEE_WITH_R1336MZZE: Pair = Pair {
    components: [&fluid::R1234ZEE, &fluid::R1336MZZE],
    temperature: Rule::BetaGamma(1.0, 0.99623),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1234ze(E) with R-600a.
pub static R1234ZEE_WITH_R600A: Pair = Pair {
    components: [&fluid::R1234ZEE, &fluid::R600A],
    temperature: Rule::BetaGamma(0.975553, 0.921592),
    volume: Rule::BetaGamma(1.169554, 1.076561),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-1234ze(E).
pub static R125_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R125, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(0.994388, 1.00124),
    volume: Rule::BetaGamma(1.028287, 0.999334),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-13I1.
pub static R125_WITH_R13I1: Pair = Pair {
    components: [&fluid::R125, &fluid::R13I1],
    temperature: Rule::BetaGamma(0.989972, 0.955147),
    volume: Rule::BetaGamma(1.009413, 1.004957),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-1233zd(E).
pub static R134A_WITH_R1233ZDE: Pair = Pair {
    components: [&fluid::R134A, &fluid::R1233ZDE],
    temperature: Rule::BetaGamma(1.0, 0.97102),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-1336mzz(E).
pub static R134A_WITH_R1336MZZE: Pair = Pair {
    components: [&fluid::R134A, &fluid::R1336MZZE],
    temperature: Rule::BetaGamma(1.0, 0.980372),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-143a with R-1234ze(E).
pub static R143A_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R143A, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(0.975352, 0.997695),
    volume: Rule::BetaGamma(1.249976, 1.03652),
    departure_factor: 0.0,
    departure: &[],
};

/// R-143a with R-22.
pub static R143A_WITH_R22: Pair = Pair {
    components: [&fluid::R143A, &fluid::R22],
    temperature: Rule::BetaGamma(1.0, 1.000486),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-1233zd(E).
pub static R152A_WITH_R1233ZDE: Pair = Pair {
    components: [&fluid::R152A, &fluid::R1233ZDE],
    temperature: Rule::BetaGamma(1.0, 0.979525),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-1234ze(E).
pub static R152A_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R152A, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(1.011543, 1.00236),
    volume: Rule::BetaGamma(0.896336, 0.932409),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-1336mzz(E).
pub static R152A_WITH_R1336MZZE: Pair = Pair {
    components: [&fluid::R152A, &fluid::R1336MZZE],
    temperature: Rule::BetaGamma(1.0, 0.974439),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-142b.
pub static R152A_WITH_R142B: Pair = Pair {
    components: [&fluid::R152A, &fluid::R142B],
    temperature: Rule::BetaGamma(1.0, 0.972651),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-218.
pub static R152A_WITH_R218: Pair = Pair {
    components: [&fluid::R152A, &fluid::R218],
    temperature: Rule::BetaGamma(1.0, 0.882036),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-717.
pub static R152A_WITH_R717: Pair = Pair {
    components: [&fluid::R152A, &fluid::R717],
    temperature: Rule::BetaGamma(1.0, 0.915213),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-170 with R-1234ze(E).
pub static R170_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R170, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(1.0, 0.978541),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-218 with R-1234yf.
pub static R218_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R218, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.0, 0.957668),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-218 with R-124.
pub static R218_WITH_R124: Pair = Pair {
    components: [&fluid::R218, &fluid::R124],
    temperature: Rule::BetaGamma(1.0, 0.959339),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-227ea with R-1336mzz(E).
pub static R227EA_WITH_R1336MZZE: Pair = Pair {
    components: [&fluid::R227EA, &fluid::R1336MZZE],
    temperature: Rule::BetaGamma(1.0, 0.99773),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-236fa with R-600a.
pub static R236FA_WITH_R600A: Pair = Pair {
    components: [&fluid::R236FA, &fluid::R600A],
    temperature: Rule::BetaGamma(1.0, 0.906586),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-115.
pub static R290_WITH_R115: Pair = Pair {
    components: [&fluid::R290, &fluid::R115],
    temperature: Rule::BetaGamma(1.0, 0.943234),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-1234yf.
pub static R290_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R290, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.006037, 0.937793),
    volume: Rule::BetaGamma(1.013434, 1.013195),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-1234ze(E).
pub static R290_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R290, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(1.01347, 0.932901),
    volume: Rule::BetaGamma(0.997417, 1.014015),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-1336mzz(E).
pub static R290_WITH_R1336MZZE: Pair = Pair {
    components: [&fluid::R290, &fluid::R1336MZZE],
    temperature: Rule::BetaGamma(1.0, 0.941255),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-22.
pub static R290_WITH_R22: Pair = Pair {
    components: [&fluid::R290, &fluid::R22],
    temperature: Rule::BetaGamma(1.0, 0.942193),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-115.
pub static R32_WITH_R115: Pair = Pair {
    components: [&fluid::R32, &fluid::R115],
    temperature: Rule::BetaGamma(1.0, 0.881714),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-12.
pub static R32_WITH_R12: Pair = Pair {
    components: [&fluid::R32, &fluid::R12],
    temperature: Rule::BetaGamma(1.0, 0.906355),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-1336mzz(E).
pub static R32_WITH_R1336MZZE: Pair = Pair {
    components: [&fluid::R32, &fluid::R1336MZZE],
    temperature: Rule::BetaGamma(1.0, 0.993183),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-13I1.
pub static R32_WITH_R13I1: Pair = Pair {
    components: [&fluid::R32, &fluid::R13I1],
    temperature: Rule::BetaGamma(0.993026, 0.934839),
    volume: Rule::BetaGamma(1.013481, 0.858023),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-218.
pub static R32_WITH_R218: Pair = Pair {
    components: [&fluid::R32, &fluid::R218],
    temperature: Rule::BetaGamma(1.0, 0.851222),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-32 with R-22.
pub static R32_WITH_R22: Pair = Pair {
    components: [&fluid::R32, &fluid::R22],
    temperature: Rule::BetaGamma(1.0, 0.993276),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-1233zd(E).
pub static R600_WITH_R1233ZDE: Pair = Pair {
    components: [&fluid::R600, &fluid::R1233ZDE],
    temperature: Rule::BetaGamma(1.0, 0.970956),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-1234yf.
pub static R600_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R600, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.0, 0.932425),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-601 with R-12.
pub static R601_WITH_R12: Pair = Pair {
    components: [&fluid::R601, &fluid::R12],
    temperature: Rule::BetaGamma(1.0, 1.0048),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-1234yf.
pub static R717_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R717, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.0, 0.859614),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-134a.
pub static R717_WITH_R134A: Pair = Pair {
    components: [&fluid::R717, &fluid::R134A],
    temperature: Rule::BetaGamma(1.0, 0.912635),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-1233zd(E).
pub static R744_WITH_R1233ZDE: Pair = Pair {
    components: [&fluid::R744, &fluid::R1233ZDE],
    temperature: Rule::BetaGamma(1.0, 1.029404),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-1234yf.
pub static R744_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R744, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.025281, 0.972965),
    volume: Rule::BetaGamma(1.051991, 1.029336),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-1234ze(E).
pub static R744_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R744, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(1.008025, 0.973804),
    volume: Rule::BetaGamma(1.142918, 1.076023),
    departure_factor: 0.0,
    departure: &[],
};
