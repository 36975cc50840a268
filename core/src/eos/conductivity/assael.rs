//! Reference correlations by Assael, Huber, Perkins and others: dilute gas as a ratio of polynomials, residual in powers of δ
//! whose coefficients are linear in T/Tc, crossover enhancement with constants from corresponding states.
//!
//! The numbers of R-601, R-601a and R-744 were taken from the open fluid files of CoolProp (MIT licence), those of R-161
//! and R-1270, and reference temperatures, from the open collection pychemqt; both name these papers. Stated errors
//! hold outside the critical region.

use super::enhancement::{Crossover, Enhancement};
use super::parts::{Dilute, Residual};
use super::{Correlation, Form};

/// Vassiliou, C.-M., Assael, M. J., Huber, M. L., Perkins, R. A., Reference Correlation of the Thermal Conductivity of
/// Cyclopentane, iso-Pentane, and n-Pentane, J. Phys. Chem. Ref. Data 44 (2015) 033102, doi 10.1063/1.4927095. Error by its
/// abstract: 1 to 4 % in the liquid, 3 to 5 % in the gas.
pub(super) static R601: Correlation = Correlation {
    designation: "R-601",
    lowest_temperature: 0.0,
    highest_temperature: 500.0,
    highest_pressure: 100000000.0,
    form: Form::Parts {
        dilute: Dilute::Ratio {
            temperature: 469.7,
            numerator: &[-0.00396685, 0.0353805, 0.00511554, -0.108585, 0.179573, 0.0392128],
            denominator: &[2.71636, -5.76265, 6.77885, -0.59135, 1.0],
        },
        residual: Residual::Linear {
            temperature: 469.7,
            density: 232.0,
            coefficients: &[
                (0.000776054, 0.00797696),
                (0.117655, -0.0785888),
                (-0.133101, 0.0916089),
                (0.0534026, -0.0370431),
                (-0.0068793, 0.0050962),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.058,
            gamma: 1.239,
            amplitude: 1.02,
            length: 2.27e-10,
            cutoff: 6.68e-10,
            reference_temperature: 704.55,
        }),
    },
    error: 0.05,
};

/// R-601a. The same paper.
pub(super) static R601A: Correlation = Correlation {
    designation: "R-601a",
    lowest_temperature: 0.0,
    highest_temperature: 500.0,
    highest_pressure: 100000000.0,
    form: Form::Parts {
        dilute: Dilute::Ratio {
            temperature: 460.35,
            numerator: &[0.000773049, -0.0159754, 0.218987, -0.329556, 0.281075, 0.053326],
            denominator: &[5.10467, -8.12044, 8.11607, -0.294969, 1.0],
        },
        residual: Residual::Linear {
            temperature: 460.35,
            density: 236.0,
            coefficients: &[
                (-0.0117507, 0.00514003),
                (-0.0161346, 0.0558445),
                (0.0527254, -0.0951474),
                (-0.027494, 0.0475268),
                (0.00454817, -0.00729296),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.058,
            gamma: 1.239,
            amplitude: 1.02,
            length: 2.27e-10,
            cutoff: 6.64e-10,
            reference_temperature: 690.53,
        }),
    },
    error: 0.05,
};

/// Huber, M. L., Sykioti, E. A., Assael, M. J., Perkins, R. A., Reference Correlation of the Thermal Conductivity of
/// Carbon Dioxide from the Triple Point to 1100 K and up to 200 MPa, J. Phys. Chem. Ref. Data 45 (2016) 013102, doi
/// 10.1063/1.4940892. Error from memory.
pub(super) static R744: Correlation = Correlation {
    designation: "R-744",
    lowest_temperature: 0.0,
    highest_temperature: 500.0,
    highest_pressure: 200000000.0,
    form: Form::Parts {
        dilute: Dilute::Root {
            temperature: 304.1282,
            coefficients: &[0.0151874307, 0.028067404, 0.022856419, -0.0074162421],
            halves: false,
        },
        residual: Residual::Linear {
            temperature: 304.1282,
            density: 467.6,
            coefficients: &[
                (0.0100128, 0.00430829),
                (0.0560488, -0.0358563),
                (-0.081162, 0.067148),
                (0.0624337, -0.0522855),
                (-0.0206336, 0.0174571),
                (0.00253248, -0.00196414),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.052,
            gamma: 1.239,
            amplitude: 1.02,
            length: 1.5e-10,
            cutoff: 4e-10,
            reference_temperature: 456.19,
        }),
    },
    error: 0.05,
};

/// Tsolakidou, C. M., Assael, M. J., Huber, M. L., Perkins, R. A., Correlations for the Viscosity and Thermal Conductivity
/// of Ethyl Fluoride (R161), J. Phys. Chem. Ref. Data 46 (2017) 023103, doi 10.1063/1.4983027. Error by its abstract: 3 % from
/// 234 to 374 K. Made for a later equation of state (Qi and others 2016), whose saturated liquid is 0.9 to 2.2 % thinner than
/// that used here; so the saturated liquid comes out 2.4 to 4.2 % above the paper's, and 7 % is stated.
pub(super) static R161: Correlation = Correlation {
    designation: "R-161",
    lowest_temperature: 234.0,
    highest_temperature: 450.0,
    highest_pressure: 20000000.0,
    form: Form::Parts {
        dilute: Dilute::Ratio {
            temperature: 375.25,
            numerator: &[0.00796804, -0.0125874, -0.0263743, 0.0169894, 0.127545, -0.032548],
            denominator: &[5.406, -18.8331, 24.868, -9.14139, 1.0],
        },
        residual: Residual::Linear {
            temperature: 375.25,
            density: 302.001,
            coefficients: &[
                (-0.00841553, 0.00741456),
                (-0.0397744, 0.0440586),
                (0.106179, -0.0819833),
                (-0.0532351, 0.0376052),
                (0.00823094, -0.00490293),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.055,
            gamma: 1.239,
            amplitude: 1.02,
            length: 1.83e-10,
            cutoff: 3.104e-10,
            reference_temperature: 562.88,
        }),
    },
    error: 0.07,
};

/// R-1270. Assael, M. J., Koutian, A., Huber, M. L., Perkins, R. A., Reference Correlations of the Thermal Conductivity of Ethene and
/// Propene, J. Phys. Chem. Ref. Data 45 (2016) 033104, doi 10.1063/1.4958984. Error by its abstract: 5 % from 180 to 625 K up to
/// 50 MPa.
pub(super) static R1270: Correlation = Correlation {
    designation: "R-1270",
    lowest_temperature: 180.0,
    highest_temperature: 500.0,
    highest_pressure: 50000000.0,
    form: Form::Parts {
        dilute: Dilute::Ratio {
            temperature: 364.211,
            numerator: &[-0.00137218, 0.0173386, -0.00327682, 0.00934452, 0.01288, -0.0015705],
            denominator: &[1.39367, -1.04648, 1.0],
        },
        residual: Residual::Linear {
            temperature: 364.211,
            density: 229.63,
            coefficients: &[
                (0.00271511, 0.00994697),
                (-0.0363839, 0.0242705),
                (0.106159, -0.0659429),
                (-0.0616755, 0.0379916),
                (0.0105424, -0.0056912),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.057,
            gamma: 1.239,
            amplitude: 1.02,
            length: 1.98e-10,
            cutoff: 4.3e-10,
            reference_temperature: 546.32,
        }),
    },
    error: 0.05,
};
