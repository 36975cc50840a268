//! Mixture parameters of Bell, I. H., Lemmon, E. W., Automatic Fitting of Binary Interaction Parameters for
//! Multi-fluid Helmholtz-Energy-Explicit Mixture Models, J. Chem. Eng. Data 61 (2016) 3752-3760, doi
//! 10.1021/acs.jced.6b00257 (citation from memory).

use super::{Pair, Rule};
use crate::eos::fluid;

/// R-115 with R-125.
pub static R115_WITH_R125: Pair = Pair {
    components: [&fluid::R115, &fluid::R125],
    temperature: Rule::BetaGamma(0.99972, 0.96147),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-115 with R-22.
pub static R115_WITH_R22: Pair = Pair {
    components: [&fluid::R115, &fluid::R22],
    temperature: Rule::BetaGamma(1.01422, 0.94989),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-12 with R-134a.
pub static R12_WITH_R134A: Pair = Pair {
    components: [&fluid::R12, &fluid::R134A],
    temperature: Rule::BetaGamma(1.0075, 0.941),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-12 with R-142b.
pub static R12_WITH_R142B: Pair = Pair {
    components: [&fluid::R12, &fluid::R142B],
    temperature: Rule::BetaGamma(1.01193, 0.9765),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-12 with R-143a.
pub static R12_WITH_R143A: Pair = Pair {
    components: [&fluid::R12, &fluid::R143A],
    temperature: Rule::BetaGamma(0.9859, 0.95199),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-12 with R-152a.
pub static R12_WITH_R152A: Pair = Pair {
    components: [&fluid::R12, &fluid::R152A],
    temperature: Rule::BetaGamma(1.01876, 0.94387),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-12 with R-22.
pub static R12_WITH_R22: Pair = Pair {
    components: [&fluid::R12, &fluid::R22],
    temperature: Rule::BetaGamma(0.99654, 0.96477),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1234yf with R-143a.
pub static R1234YF_WITH_R143A: Pair = Pair {
    components: [&fluid::R1234YF, &fluid::R143A],
    temperature: Rule::BetaGamma(1.00024, 0.99523),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1234yf with R-227ea.
pub static R1234YF_WITH_R227EA: Pair = Pair {
    components: [&fluid::R1234YF, &fluid::R227EA],
    temperature: Rule::BetaGamma(0.99938, 0.99916),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-124 with R-134a.
pub static R124_WITH_R134A: Pair = Pair {
    components: [&fluid::R124, &fluid::R134A],
    temperature: Rule::BetaGamma(0.99881, 0.98961),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-124 with R-142b.
pub static R124_WITH_R142B: Pair = Pair {
    components: [&fluid::R124, &fluid::R142B],
    temperature: Rule::BetaGamma(0.99802, 1.0032),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-152a.
pub static R125_WITH_R152A: Pair = Pair {
    components: [&fluid::R125, &fluid::R152A],
    temperature: Rule::BetaGamma(0.99429, 1.00282),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-227ea.
pub static R125_WITH_R227EA: Pair = Pair {
    components: [&fluid::R125, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.00101, 1.00302),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-125 with R-236fa.
pub static R125_WITH_R236FA: Pair = Pair {
    components: [&fluid::R125, &fluid::R236FA],
    temperature: Rule::BetaGamma(0.9996, 1.01028),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-115.
pub static R1270_WITH_R115: Pair = Pair {
    components: [&fluid::R1270, &fluid::R115],
    temperature: Rule::BetaGamma(1.01487, 0.94167),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-12.
pub static R1270_WITH_R12: Pair = Pair {
    components: [&fluid::R1270, &fluid::R12],
    temperature: Rule::BetaGamma(1.00271, 0.9883),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-125.
pub static R1270_WITH_R125: Pair = Pair {
    components: [&fluid::R1270, &fluid::R125],
    temperature: Rule::BetaGamma(1.00733, 0.92944),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-134a.
pub static R1270_WITH_R134A: Pair = Pair {
    components: [&fluid::R1270, &fluid::R134A],
    temperature: Rule::BetaGamma(1.0136, 0.93494),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-142b.
pub static R1270_WITH_R142B: Pair = Pair {
    components: [&fluid::R1270, &fluid::R142B],
    temperature: Rule::BetaGamma(1.00653, 0.9925),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-152a.
pub static R1270_WITH_R152A: Pair = Pair {
    components: [&fluid::R1270, &fluid::R152A],
    temperature: Rule::BetaGamma(1.01177, 0.94791),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-22.
pub static R1270_WITH_R22: Pair = Pair {
    components: [&fluid::R1270, &fluid::R22],
    temperature: Rule::BetaGamma(1.00095, 0.97836),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-1270 with R-32.
pub static R1270_WITH_R32: Pair = Pair {
    components: [&fluid::R1270, &fluid::R32],
    temperature: Rule::BetaGamma(0.99634, 0.90627),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-142b.
pub static R134A_WITH_R142B: Pair = Pair {
    components: [&fluid::R134A, &fluid::R142B],
    temperature: Rule::BetaGamma(1.00176, 0.98544),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-218.
pub static R134A_WITH_R218: Pair = Pair {
    components: [&fluid::R134A, &fluid::R218],
    temperature: Rule::BetaGamma(0.99885, 0.9228),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-22.
pub static R134A_WITH_R22: Pair = Pair {
    components: [&fluid::R134A, &fluid::R22],
    temperature: Rule::BetaGamma(0.99975, 0.99196),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-227ea.
pub static R134A_WITH_R227EA: Pair = Pair {
    components: [&fluid::R134A, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.00135, 0.98915),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-134a with R-236fa.
pub static R134A_WITH_R236FA: Pair = Pair {
    components: [&fluid::R134A, &fluid::R236FA],
    temperature: Rule::BetaGamma(0.99958, 1.00198),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-13I1 with R-1234ze(E).
pub static R13I1_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R13I1, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(1.00346, 0.96604),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-13I1 with R-152a.
pub static R13I1_WITH_R152A: Pair = Pair {
    components: [&fluid::R13I1, &fluid::R152A],
    temperature: Rule::BetaGamma(0.99875, 0.96404),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-13I1 with R-290.
pub static R13I1_WITH_R290: Pair = Pair {
    components: [&fluid::R13I1, &fluid::R290],
    temperature: Rule::BetaGamma(0.99452, 0.98807),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-13I1 with R-600a.
pub static R13I1_WITH_R600A: Pair = Pair {
    components: [&fluid::R13I1, &fluid::R600A],
    temperature: Rule::BetaGamma(1.002, 0.98459),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-142b with R-22.
pub static R142B_WITH_R22: Pair = Pair {
    components: [&fluid::R142B, &fluid::R22],
    temperature: Rule::BetaGamma(1.0043, 1.00646),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-142b with R-32.
pub static R142B_WITH_R32: Pair = Pair {
    components: [&fluid::R142B, &fluid::R32],
    temperature: Rule::BetaGamma(0.98803, 0.9751),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-143a with R-152a.
pub static R143A_WITH_R152A: Pair = Pair {
    components: [&fluid::R143A, &fluid::R152A],
    temperature: Rule::BetaGamma(0.99955, 0.99038),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-143a with R-236fa.
pub static R143A_WITH_R236FA: Pair = Pair {
    components: [&fluid::R143A, &fluid::R236FA],
    temperature: Rule::BetaGamma(0.99911, 1.01834),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-143a with R-32.
pub static R143A_WITH_R32: Pair = Pair {
    components: [&fluid::R143A, &fluid::R32],
    temperature: Rule::BetaGamma(0.99734, 0.97488),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-22.
pub static R152A_WITH_R22: Pair = Pair {
    components: [&fluid::R152A, &fluid::R22],
    temperature: Rule::BetaGamma(1.00239, 1.01169),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-227ea.
pub static R152A_WITH_R227EA: Pair = Pair {
    components: [&fluid::R152A, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.0088, 0.99527),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-152a with R-32.
pub static R152A_WITH_R32: Pair = Pair {
    components: [&fluid::R152A, &fluid::R32],
    temperature: Rule::BetaGamma(0.99966, 0.99709),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-170 with R-1270.
pub static R170_WITH_R1270: Pair = Pair {
    components: [&fluid::R170, &fluid::R1270],
    temperature: Rule::BetaGamma(0.99928, 1.0056),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-170 with R-218.
pub static R170_WITH_R218: Pair = Pair {
    components: [&fluid::R170, &fluid::R218],
    temperature: Rule::BetaGamma(1.03147, 0.93581),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-218 with R-22.
pub static R218_WITH_R22: Pair = Pair {
    components: [&fluid::R218, &fluid::R22],
    temperature: Rule::BetaGamma(0.98269, 0.91598),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-227ea with R-32.
pub static R227EA_WITH_R32: Pair = Pair {
    components: [&fluid::R227EA, &fluid::R32],
    temperature: Rule::BetaGamma(0.98611, 0.97064),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-236fa with R-32.
pub static R236FA_WITH_R32: Pair = Pair {
    components: [&fluid::R236FA, &fluid::R32],
    temperature: Rule::BetaGamma(0.99365, 0.99661),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-125.
pub static R290_WITH_R125: Pair = Pair {
    components: [&fluid::R290, &fluid::R125],
    temperature: Rule::BetaGamma(1.00883, 0.89892),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-1270.
pub static R290_WITH_R1270: Pair = Pair {
    components: [&fluid::R290, &fluid::R1270],
    temperature: Rule::BetaGamma(0.99978, 0.9935),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-134a.
pub static R290_WITH_R134A: Pair = Pair {
    components: [&fluid::R290, &fluid::R134A],
    temperature: Rule::BetaGamma(1.01148, 0.89674),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-143a.
pub static R290_WITH_R143A: Pair = Pair {
    components: [&fluid::R290, &fluid::R143A],
    temperature: Rule::BetaGamma(1.00987, 0.91581),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-152a.
pub static R290_WITH_R152A: Pair = Pair {
    components: [&fluid::R290, &fluid::R152A],
    temperature: Rule::BetaGamma(1.01223, 0.92009),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-227ea.
pub static R290_WITH_R227EA: Pair = Pair {
    components: [&fluid::R290, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.02125, 0.91449),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-236fa.
pub static R290_WITH_R236FA: Pair = Pair {
    components: [&fluid::R290, &fluid::R236FA],
    temperature: Rule::BetaGamma(1.02204, 0.91493),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-290 with R-32.
pub static R290_WITH_R32: Pair = Pair {
    components: [&fluid::R290, &fluid::R32],
    temperature: Rule::BetaGamma(1.00067, 0.86421),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-125.
pub static R600_WITH_R125: Pair = Pair {
    components: [&fluid::R600, &fluid::R125],
    temperature: Rule::BetaGamma(0.99482, 0.90412),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-134a.
pub static R600_WITH_R134A: Pair = Pair {
    components: [&fluid::R600, &fluid::R134A],
    temperature: Rule::BetaGamma(1.00409, 0.89057),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-143a.
pub static R600_WITH_R143A: Pair = Pair {
    components: [&fluid::R600, &fluid::R143A],
    temperature: Rule::BetaGamma(1.00093, 0.91912),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-152a.
pub static R600_WITH_R152A: Pair = Pair {
    components: [&fluid::R600, &fluid::R152A],
    temperature: Rule::BetaGamma(1.00243, 0.91179),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-227ea.
pub static R600_WITH_R227EA: Pair = Pair {
    components: [&fluid::R600, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.01441, 0.90171),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600 with R-32.
pub static R600_WITH_R32: Pair = Pair {
    components: [&fluid::R600, &fluid::R32],
    temperature: Rule::BetaGamma(0.98166, 0.8699),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-1234yf.
pub static R600A_WITH_R1234YF: Pair = Pair {
    components: [&fluid::R600A, &fluid::R1234YF],
    temperature: Rule::BetaGamma(1.0073, 0.93536),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-125.
pub static R600A_WITH_R125: Pair = Pair {
    components: [&fluid::R600A, &fluid::R125],
    temperature: Rule::BetaGamma(0.98858, 0.90644),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-1270.
pub static R600A_WITH_R1270: Pair = Pair {
    components: [&fluid::R600A, &fluid::R1270],
    temperature: Rule::BetaGamma(1.03014, 1.0126),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-134a.
pub static R600A_WITH_R134A: Pair = Pair {
    components: [&fluid::R600A, &fluid::R134A],
    temperature: Rule::BetaGamma(1.00145, 0.89668),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-143a.
pub static R600A_WITH_R143A: Pair = Pair {
    components: [&fluid::R600A, &fluid::R143A],
    temperature: Rule::BetaGamma(1.00047, 0.9195),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-152a.
pub static R600A_WITH_R152A: Pair = Pair {
    components: [&fluid::R600A, &fluid::R152A],
    temperature: Rule::BetaGamma(0.99318, 0.91845),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-227ea.
pub static R600A_WITH_R227EA: Pair = Pair {
    components: [&fluid::R600A, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.01326, 0.90916),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-600a with R-32.
pub static R600A_WITH_R32: Pair = Pair {
    components: [&fluid::R600A, &fluid::R32],
    temperature: Rule::BetaGamma(0.9765, 0.86238),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-601 with R-1234ze(E).
pub static R601_WITH_R1234ZEE: Pair = Pair {
    components: [&fluid::R601, &fluid::R1234ZEE],
    temperature: Rule::BetaGamma(0.98894, 0.93824),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-601 with R-152a.
pub static R601_WITH_R152A: Pair = Pair {
    components: [&fluid::R601, &fluid::R152A],
    temperature: Rule::BetaGamma(0.98932, 0.92023),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-601 with R-22.
pub static R601_WITH_R22: Pair = Pair {
    components: [&fluid::R601, &fluid::R22],
    temperature: Rule::BetaGamma(0.98621, 0.96034),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-125.
pub static R717_WITH_R125: Pair = Pair {
    components: [&fluid::R717, &fluid::R125],
    temperature: Rule::BetaGamma(1.04548, 0.96866),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-1270.
pub static R717_WITH_R1270: Pair = Pair {
    components: [&fluid::R717, &fluid::R1270],
    temperature: Rule::BetaGamma(1.02533, 0.84826),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-290.
pub static R717_WITH_R290: Pair = Pair {
    components: [&fluid::R717, &fluid::R290],
    temperature: Rule::BetaGamma(1.04145, 0.79017),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-600.
pub static R717_WITH_R600: Pair = Pair {
    components: [&fluid::R717, &fluid::R600],
    temperature: Rule::BetaGamma(1.05871, 0.80552),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-717 with R-601.
pub static R717_WITH_R601: Pair = Pair {
    components: [&fluid::R717, &fluid::R601],
    temperature: Rule::BetaGamma(1.09752, 0.8445),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-12.
pub static R744_WITH_R12: Pair = Pair {
    components: [&fluid::R744, &fluid::R12],
    temperature: Rule::BetaGamma(1.01811, 0.9576),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-124.
pub static R744_WITH_R124: Pair = Pair {
    components: [&fluid::R744, &fluid::R124],
    temperature: Rule::BetaGamma(0.99517, 1.01028),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-125.
pub static R744_WITH_R125: Pair = Pair {
    components: [&fluid::R744, &fluid::R125],
    temperature: Rule::BetaGamma(1.0115, 0.96741),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-1270.
pub static R744_WITH_R1270: Pair = Pair {
    components: [&fluid::R744, &fluid::R1270],
    temperature: Rule::BetaGamma(1.01217, 0.93465),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-134a.
pub static R744_WITH_R134A: Pair = Pair {
    components: [&fluid::R744, &fluid::R134A],
    temperature: Rule::BetaGamma(1.01036, 1.01129),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-142b.
pub static R744_WITH_R142B: Pair = Pair {
    components: [&fluid::R744, &fluid::R142B],
    temperature: Rule::BetaGamma(1.01196, 1.00776),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-143a.
pub static R744_WITH_R143A: Pair = Pair {
    components: [&fluid::R744, &fluid::R143A],
    temperature: Rule::BetaGamma(1.02027, 0.98474),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-152a.
pub static R744_WITH_R152A: Pair = Pair {
    components: [&fluid::R744, &fluid::R152A],
    temperature: Rule::BetaGamma(1.00224, 1.00646),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-22.
pub static R744_WITH_R22: Pair = Pair {
    components: [&fluid::R744, &fluid::R22],
    temperature: Rule::BetaGamma(1.00394, 1.01254),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-227ea.
pub static R744_WITH_R227EA: Pair = Pair {
    components: [&fluid::R744, &fluid::R227EA],
    temperature: Rule::BetaGamma(1.00608, 1.00235),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};

/// R-744 with R-32.
pub static R744_WITH_R32: Pair = Pair {
    components: [&fluid::R744, &fluid::R32],
    temperature: Rule::BetaGamma(1.00312, 0.99971),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};
