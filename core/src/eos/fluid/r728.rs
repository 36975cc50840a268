//! R-728, nitrogen: the gas of pressure tests, not a refrigerant of the catalogue.
//!
//! Source: Span, R., Lemmon, E. W., Jacobsen, R. T, Wagner, W., Yokozeki, A., A Reference Equation of State for the
//! Thermodynamic Properties of Nitrogen for Temperatures from 63.151 to 1000 K and Pressures to 2200 MPa, J. Phys.
//! Chem. Ref. Data 29 (2000) 1361-1433, doi 10.1063/1.1349047. Densities are stated to 0.02 % up to 523 K and 12 MPa.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. The reducing density is the 313.3 kg/m³ of the paper over its molar mass.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R728: PureFluid = PureFluid {
    designation: "R-728",
    molar_mass: 0.02801348,
    gas_constant: 8.31451,
    reducing_temperature: 126.192,
    reducing_density: 11183.901464580624,
    critical_temperature: 126.192,
    critical_pressure: 3395800.0,
    acentric_factor: 0.0372,
    lowest_temperature: 63.151,
    highest_temperature: 1000.0,
    highest_pressure: 2200000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.924803575275, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.492448489428, t: 0.875, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.661883336938, t: 0.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.92902649201, t: 0.875, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0622469309629, t: 0.375, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.349943957581, t: 0.75, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.564857472498, t: 0.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.61720005987, t: 0.75, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.481395031883, t: 2.0, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.421150636384, t: 1.25, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0161962230825, t: 3.5, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.172100994165, t: 1.0, d: 4, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.00735448924933, t: 0.5, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.0168077305479, t: 3.0, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.00107626664179, t: 0.0, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0137318088513, t: 2.75, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.000635466899859, t: 0.75, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.00304432279419, t: 2.5, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0435762336045, t: 4.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0723174889316, t: 6.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0389644315272, t: 6.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.021220136391, t: 3.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00408822981509, t: 3.0, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: -5.51990017984e-05, t: 6.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0462016716479, t: 16.0, d: 4, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.00300311716011, t: 11.0, d: 5, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0368825891208, t: 15.0, d: 5, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.0025585684622, t: 12.0, d: 8, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.00896915264558, t: 12.0, d: 3, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.0044151337035, t: 7.0, d: 5, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.00133722924858, t: 4.0, d: 6, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.000264832491957, t: 16.0, d: 9, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 19.6688194015, t: 0.0, d: 1, eta: 20.0, epsilon: 1.0, beta: 325.0, gamma: 1.16 },
            Bell { n: -20.911560073, t: 1.0, d: 1, eta: 20.0, epsilon: 1.0, beta: 325.0, gamma: 1.16 },
            Bell { n: 0.0167788306989, t: 2.0, d: 3, eta: 15.0, epsilon: 1.0, beta: 300.0, gamma: 1.13 },
            Bell { n: 2627.67566274, t: 3.0, d: 2, eta: 25.0, epsilon: 1.0, beta: 275.0, gamma: 1.25 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -12.76952708,
        linear: -0.00784163,
        logarithm: 2.5,
        powers: &[(-0.0001934819, -1.0), (-1.247742e-05, -2.0), (6.678326e-08, -3.0)],
        vibrations: &[(1.012941, 26.657878470901483)],
    },
};
