//!
//!
//! Source: Tillner-Roth, R., Yokozeki, A., An international standard equation of state for difluoromethane for
//! temperatures from the triple point at 136.34 K to 435 K and pressures up to 70 MPa, J. Phys. Chem. Ref. Data 26
//! (1997) 1273-1328, doi 10.1063/1.556002.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R32: PureFluid = PureFluid {
    designation: "R-32",
    molar_mass: 0.052024,
    gas_constant: 8.314471,
    reducing_temperature: 351.255,
    reducing_density: 8150.0846,
    critical_temperature: 351.255,
    critical_pressure: 5782000.0,
    acentric_factor: 0.2769,
    lowest_temperature: 136.34,
    highest_temperature: 435.0,
    highest_pressure: 70000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.046634, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.5451165, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.002448595, t: -0.25, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.04877002, t: -1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.03520158, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00162275, t: 2.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 2.377225e-05, t: 0.75, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.029149, t: 0.25, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.003386203, t: 18.0, d: 4, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.004202444, t: 26.0, d: 4, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0004782025, t: -1.0, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.005504323, t: 25.0, d: 3, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.02418396, t: 1.75, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.4209034, t: 4.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.4616537, t: 5.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -1.200513, t: 1.0, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: -2.59155, t: 1.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.400145, t: 1.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.8263017, t: 0.5, d: 3, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -8.258096,
        linear: 6.353098,
        logarithm: 3.004486,
        powers: &[],
        vibrations: &[(1.160761, 2.2718538), (2.645151, 11.914421), (5.794987, 5.1415638), (1.129475, 32.768217)],
    },
};
