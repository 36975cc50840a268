//! Correlations of alkanes by Marsh, Perkins and others of 2002: dilute gas in powers of T/Tc, residual in powers of δ whose
//! coefficients are linear in T/Tc, crossover enhancement.
//!
//! The numbers were taken from the open fluid files of CoolProp (MIT licence), which name these papers; the reference
//! temperatures are one and a half times the critical ones. Stated errors are from memory of the papers, rounded up; they
//! hold outside the critical region.

use super::enhancement::{Crossover, Enhancement};
use super::parts::{Dilute, Residual};
use super::{Correlation, Form};

/// Marsh, K. N., Perkins, R. A., Ramires, M. L. V., Measurement and Correlation of the Thermal Conductivity of Propane
/// from 86 K to 600 K at Pressures to 70 MPa, J. Chem. Eng. Data 47 (2002) 932-940, doi 10.1021/je010001m.
pub(super) static R290: Correlation = Correlation {
    designation: "R-290",
    lowest_temperature: 86.0,
    highest_temperature: 500.0,
    highest_pressure: 70000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 369.85, coefficients: &[-0.00124778, 0.00816371, 0.0199374] },
        residual: Residual::Linear {
            temperature: 369.82,
            density: 220.3,
            coefficients: &[
                (-0.03695, 0.0482798),
                (0.148658, -0.135636),
                (-0.119986, 0.117588),
                (0.0412431, -0.0436911),
                (-0.00486905, 0.00616079),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 7.16635e-10,
            reference_temperature: 554.835,
        }),
    },
    error: 0.05,
};

/// Perkins, R. A., Ramires, M. L. V., Nieto de Castro, C. A., Cusco, L., Measurement and Correlation of the Thermal
/// Conductivity of Butane from 135 K to 600 K at Pressures to 70 MPa, J. Chem. Eng. Data 47 (2002) 1263-1271, doi
/// 10.1021/je0101202.
pub(super) static R600: Correlation = Correlation {
    designation: "R-600",
    lowest_temperature: 135.0,
    highest_temperature: 500.0,
    highest_pressure: 70000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 425.16, coefficients: &[0.00162676, 0.000975703, 0.0289887] },
        residual: Residual::Linear {
            temperature: 425.16,
            density: 227.8,
            coefficients: &[
                (-0.0304337, 0.0418357),
                (0.16582, -0.147163),
                (-0.148144, 0.133542),
                (0.05255, -0.0485489),
                (-0.00629367, 0.00644307),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 8.7535e-10,
            reference_temperature: 637.6875,
        }),
    },
    error: 0.05,
};

/// R-600a. Perkins, R. A., Measurement and Correlation of the Thermal Conductivity of Isobutane from 114 K to 600 K at
/// Pressures to 70 MPa, J. Chem. Eng. Data 47 (2002) 1272-1279, doi 10.1021/je010121u.
pub(super) static R600A: Correlation = Correlation {
    designation: "R-600a",
    lowest_temperature: 114.0,
    highest_temperature: 500.0,
    highest_pressure: 70000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 407.85, coefficients: &[-0.00237901, 0.0106601, 0.0215811] },
        residual: Residual::Linear {
            temperature: 407.85,
            density: 224.4,
            coefficients: &[
                (-0.0411789, 0.0476346),
                (0.146805, -0.128445),
                (-0.11919, 0.107565),
                (0.0410226, -0.0385968),
                (-0.00488704, 0.00520901),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 6.57661e-10,
            reference_temperature: 611.715,
        }),
    },
    error: 0.05,
};
