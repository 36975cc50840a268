//! Correlations by Perkins and others: dilute gas in powers of T/Tc, residual in powers of δ whose coefficients are linear
//! in T/Tc, crossover enhancement.
//!
//! The numbers were taken from the open fluid files of CoolProp (MIT licence), which name these papers; those of
//! R-1233zd(E) and R-1336mzz(Z), and reference temperatures, from the open collection pychemqt, which does. Stated errors
//! are from memory of the papers, rounded up; they hold outside the critical region.

use super::enhancement::{Crossover, Enhancement};
use super::parts::{Dilute, Residual};
use super::{Correlation, Form};

/// R-134a. Perkins, R. A., Laesecke, A., Howley, J., Ramires, M. L. V., Gurova, A. N., Cusco, L., Experimental Thermal
/// Conductivity Values for the IUPAC Round-Robin Sample of 1,1,1,2-Tetrafluoroethane (R134a), NISTIR 6605 (2000).
pub(super) static R134A: Correlation = Correlation {
    designation: "R-134a",
    lowest_temperature: 0.0,
    highest_temperature: 455.0,
    highest_pressure: 70000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 1.0, coefficients: &[-0.0105248, 8.00982e-05] },
        residual: Residual::Linear {
            temperature: 1.0,
            density: 515.249968352,
            coefficients: &[(0.00377406093, 0.0), (0.010534223865, 0.0), (-0.002952794565, 0.0), (0.00128672592, 0.0)],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 5.285356e-10,
            reference_temperature: 561.411,
        }),
    },
    error: 0.05,
};

/// Perkins, R. A., Huber, M. L., Measurement and Correlation of the Thermal Conductivity of Pentafluoroethane (R125)
/// from 190 K to 512 K at Pressures to 70 MPa, J. Chem. Eng. Data 51 (2006) 898-904, doi 10.1021/je050372t.
pub(super) static R125: Correlation = Correlation {
    designation: "R-125",
    lowest_temperature: 190.0,
    highest_temperature: 500.0,
    highest_pressure: 70000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 339.17, coefficients: &[-0.0046082, 0.0168688, 0.00488345] },
        residual: Residual::Linear {
            temperature: 339.17,
            density: 573.582,
            coefficients: &[
                (-0.0072941, 0.0110497),
                (0.0416339, -0.0289236),
                (-0.0311487, 0.0278399),
                (0.0112682, -0.01211),
                (-0.00138322, 0.00211196),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 5.834646e-10,
            reference_temperature: 508.755,
        }),
    },
    error: 0.04,
};

/// R-1234yf. Perkins, R. A., Huber, M. L., Measurement and Correlation of the Thermal Conductivity of
/// 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf) and trans-1,3,3,3-Tetrafluoropropene (R1234ze(E)), J. Chem. Eng. Data 56 (2011)
/// 4868-4874, doi 10.1021/je200811n.
pub(super) static R1234YF: Correlation = Correlation {
    designation: "R-1234yf",
    lowest_temperature: 240.0,
    highest_temperature: 410.0,
    highest_pressure: 23000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 367.85, coefficients: &[-0.0102778, 0.0291098, 0.000860643] },
        residual: Residual::Linear {
            temperature: 367.85,
            density: 475.55,
            coefficients: &[
                (-0.0368219, 0.0397166),
                (0.0883226, -0.077239),
                (-0.0705909, 0.0664707),
                (0.0259026, -0.0249071),
                (-0.0032295, 0.00336228),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 5.835e-10,
            reference_temperature: 551.775,
        }),
    },
    error: 0.05,
};

/// R-1234ze(E). The same paper.
pub(super) static R1234ZEE: Correlation = Correlation {
    designation: "R-1234ze(E)",
    lowest_temperature: 213.15,
    highest_temperature: 420.0,
    highest_pressure: 23000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 382.52, coefficients: &[-0.0103589, 0.0308929, 0.000230348] },
        residual: Residual::Linear {
            temperature: 382.52,
            density: 489.24,
            coefficients: &[
                (-0.0428296, 0.0434288),
                (0.0927099, -0.0605844),
                (-0.0702107, 0.0440187),
                (0.0249708, -0.0155082),
                (-0.00301838, 0.0021019),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0496,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.94e-10,
            cutoff: 5.835e-10,
            reference_temperature: 573.78,
        }),
    },
    error: 0.05,
};

/// R-1233zd(E). Perkins, R. A., Huber, M. L., Measurement and Correlation of the Thermal Conductivity of
/// trans-1-Chloro-3,3,3-trifluoropropene (R1233zd(E)), J. Chem. Eng. Data 62 (2017) 2659-2665, doi 10.1021/acs.jced.7b00106.
/// Made with an earlier equation of state, whose critical temperature is 0.74 K higher.
pub(super) static R1233ZDE: Correlation = Correlation {
    designation: "R-1233zd(E)",
    lowest_temperature: 204.0,
    highest_temperature: 450.0,
    highest_pressure: 67000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 439.6, coefficients: &[-0.0140033, 0.037816, -0.00245832] },
        residual: Residual::Linear {
            temperature: 439.6,
            density: 480.219,
            coefficients: &[
                (0.00862816, 0.000914709),
                (-0.0208988, -0.00407914),
                (0.0511968, 0.00845668),
                (-0.0349076, -0.0108985),
                (0.00975727, 0.00538262),
                (-0.000926484, -0.000806009),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.059,
            gamma: 1.239,
            amplitude: 1.02,
            length: 2.13e-10,
            cutoff: 5.98e-10,
            reference_temperature: 659.4,
        }),
    },
    error: 0.04,
};

/// R-1336mzz(Z). Perkins, R. A., Huber, M. L., Measurement and Correlation of the Thermal Conductivity of
/// cis-1,1,1,4,4,4-hexafluoro-2-butene, Int. J. Thermophys. 41 (2020) 103, doi 10.1007/s10765-020-02681-0.
pub(super) static R1336MZZZ: Correlation = Correlation {
    designation: "R-1336mzz(Z)",
    lowest_temperature: 200.0,
    highest_temperature: 500.0,
    highest_pressure: 46000000.0,
    form: Form::Parts {
        dilute: Dilute::Root { temperature: 444.5, coefficients: &[0.033207, -0.089513, 0.101275], halves: true },
        residual: Residual::Linear {
            temperature: 444.5,
            density: 499.386464,
            coefficients: &[
                (0.018267, -0.0138014),
                (0.105672, -0.0756253),
                (-0.119719, 0.0919892),
                (0.0431845, -0.0327931),
                (-0.00497023, 0.00384035),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.058,
            gamma: 1.239,
            amplitude: 1.02,
            length: 2.21e-10,
            cutoff: 9.55e-10,
            reference_temperature: 666.75,
        }),
    },
    error: 0.04,
};
