//! Mixture parameters of Bell, I. H., McLinden, M. O., The Status of Thermodynamic Data and Models for CF3I and its
//! Mixtures, Int. J. Thermophys. 41 (2020) 125, doi 10.1007/s10765-020-02700-4.

use super::{Pair, Rule};
use crate::eos::fluid;

/// R-744 with R-13I1.
pub static R744_WITH_R13I1: Pair = Pair {
    components: [&fluid::R744, &fluid::R13I1],
    temperature: Rule::BetaGamma(1.01377, 0.963166),
    volume: Rule::BetaGamma(1.0, 1.0),
    departure_factor: 0.0,
    departure: &[],
};
