//!
//!
//! Source: Span, R., Wagner, W., A New Equation of State for Carbon Dioxide Covering the Fluid Region from the Triple
//! Point Temperature to 1100 K at Pressures up to 800 MPa, J. Phys. Chem. Ref. Data 25 (1996) 1509-1596, doi
//! 10.1063/1.555991.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::special::Critical;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R744: PureFluid = PureFluid {
    designation: "R-744",
    molar_mass: 0.0440098,
    gas_constant: 8.31451,
    reducing_temperature: 304.1282,
    reducing_density: 10624.9063,
    critical_temperature: 304.1282,
    critical_pressure: 7377300.0,
    acentric_factor: 0.22394,
    lowest_temperature: 216.592,
    highest_temperature: 2000.0,
    highest_pressure: 800000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.388568232032, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 2.93854759427, t: 0.75, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -5.5867188535, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.767531995925, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.317290055804, t: 0.75, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.548033158978, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.122794112203, t: 0.75, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 2.16589615432, t: 1.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 1.58417351097, t: 1.5, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.231327054055, t: 2.5, d: 4, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.0581169164314, t: 0.0, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.553691372054, t: 1.5, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.489466159094, t: 2.0, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0242757398435, t: 0.0, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.0624947905017, t: 1.0, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.121758602252, t: 2.0, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.370556852701, t: 3.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0167758797004, t: 6.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.11960736638, t: 3.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0456193625088, t: 6.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0356127892703, t: 8.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00744277271321, t: 6.0, d: 7, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00173957049024, t: 0.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0218101212895, t: 7.0, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0243321665592, t: 12.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.0374401334235, t: 16.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.143387157569, t: 22.0, d: 5, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.134919690833, t: 24.0, d: 5, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.0231512250535, t: 16.0, d: 6, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.0123631254929, t: 24.0, d: 7, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.00210583219729, t: 8.0, d: 8, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.000339585190264, t: 2.0, d: 10, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.00559936517716, t: 28.0, d: 4, l: 5, g: 1.0, m: 0.0 },
            Term { n: -0.000303351180556, t: 14.0, d: 8, l: 6, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: -213.654886883, t: 1.0, d: 2, eta: 25.0, epsilon: 1.0, beta: 325.0, gamma: 1.16 },
            Bell { n: 26641.5691493, t: 0.0, d: 2, eta: 25.0, epsilon: 1.0, beta: 300.0, gamma: 1.19 },
            Bell { n: -24027.2122046, t: 1.0, d: 2, eta: 25.0, epsilon: 1.0, beta: 300.0, gamma: 1.19 },
            Bell { n: -283.41603424, t: 3.0, d: 3, eta: 15.0, epsilon: 1.0, beta: 275.0, gamma: 1.25 },
            Bell { n: 212.472844002, t: 3.0, d: 3, eta: 20.0, epsilon: 1.0, beta: 275.0, gamma: 1.22 },
        ],
        steep: &[],
        critical: &[
            Critical {
                n: -0.666422765408,
                a: 3.5,
                b: 0.875,
                beta: 0.3,
                upper_a: 0.7,
                upper_b: 0.3,
                upper_c: 10.0,
                upper_d: 275.0,
            },
            Critical {
                n: 0.726086323499,
                a: 3.5,
                b: 0.925,
                beta: 0.3,
                upper_a: 0.7,
                upper_b: 0.3,
                upper_c: 10.0,
                upper_d: 275.0,
            },
            Critical {
                n: 0.0550686686128,
                a: 3.0,
                b: 0.875,
                beta: 0.3,
                upper_a: 0.7,
                upper_b: 1.0,
                upper_c: 12.5,
                upper_d: 275.0,
            },
        ],
    },
    ideal: Ideal {
        constant: -6.1248710624319,
        linear: 5.115596318014529,
        logarithm: 2.5,
        powers: &[],
        vibrations: &[
            (1.99427042, 3.15163),
            (0.62105248, 6.1119),
            (0.41195293, 6.77708),
            (1.04028922, 11.32384),
            (0.08327678, 27.08792),
        ],
    },
};
