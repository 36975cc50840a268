//! Other correlations, each with its own form of one part.
//!
//! The numbers were taken from the open fluid files and source of CoolProp (MIT licence), which name these papers. Stated
//! errors are from memory of the papers, rounded up; they hold outside the critical region.

use super::enhancement::{Crossover, Enhancement};
use super::parts::{Dilute, Residual};
use super::{Correlation, Form};

/// Laesecke, A., Perkins, R. A., Howley, J. B., An Improved Correlation for the Thermal Conductivity of HCFC123
/// (2,2-Dichloro-1,1,1-Trifluoroethane), Int. J. Refrigeration 19 (1996) 231-238, doi 10.1016/0140-7007(96)00019-9.
pub(super) static R123: Correlation = Correlation {
    designation: "R-123",
    lowest_temperature: 180.0,
    highest_temperature: 500.0,
    highest_pressure: 67000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 1.0, coefficients: &[-0.00778, 5.695e-05] },
        residual: Residual::Powers {
            temperature: 456.831,
            density: 550.0,
            terms: &[
                (0.0642894, 1.5, 1),
                (-0.0530474, 2.0, 1),
                (4.53522e-05, 6.0, 1),
                (-0.139928, 0.0, 2),
                (0.16654, 0.5, 2),
                (-0.0162656, 1.5, 2),
                (0.136819, 0.0, 3),
                (-0.183291, 0.5, 3),
                (0.0357146, 1.5, 3),
                (-0.023121, 0.0, 4),
                (0.0341945, 0.5, 4),
                (-0.00757341, 1.5, 4),
            ],
        },
        enhancement: Enhancement::Bell { n: 0.00486742, a: 100.0, b: 7.08535 },
    },
    error: 0.05,
};

/// R-152a. Krauss, R., Weiss, V. C., Edison, T. A., Sengers, J. V., Stephan, K., Transport Properties of 1,1-Difluoroethane (R152a),
/// Int. J. Thermophys. 17 (1996) 731-757, doi 10.1007/BF01439187. Range from memory.
pub(super) static R152A: Correlation = Correlation {
    designation: "R-152a",
    lowest_temperature: 240.0,
    highest_temperature: 440.0,
    highest_pressure: 20000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers { temperature: 1.0, coefficients: &[-0.014942, 9.73283e-05] },
        residual: Residual::Linear {
            temperature: 386.411,
            density: 368.0,
            coefficients: &[(0.0106039395, 0.0), (0.0136956435, 0.0), (-0.0062916315, 0.0), (0.00197942745, 0.0)],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0487,
            gamma: 1.239,
            amplitude: 1.03,
            length: 1.894e-10,
            cutoff: 4.37e-10,
            reference_temperature: 579.6165,
        }),
    },
    error: 0.05,
};

/// Tufeu, R., Ivanov, D. Y., Garrabos, Y., Le Neindre, B., Thermal Conductivity of Ammonia in a Large Temperature and
/// Pressure Range Including the Critical Region, Ber. Bunsenges. Phys. Chem. 88 (1984) 422-427, doi 10.1002/bbpc.19840880421.
/// 10 % is stated, because a later correlation, whose numbers could not be checked well enough to be taken (Monogenidou and
/// others 2018, doi 10.1063/1.5053087), states 6.8 % and lies below it by 4 % at 300 K and by 12 % at 250 K.
pub(super) static R717: Correlation = Correlation {
    designation: "R-717",
    lowest_temperature: 0.0,
    highest_temperature: 500.0,
    highest_pressure: 80000000.0,
    form: Form::Parts {
        dilute: Dilute::Powers {
            temperature: 1.0,
            coefficients: &[0.03589, -0.000175, 4.551e-07, 1.685e-10, -4.828e-13],
        },
        residual: Residual::Linear {
            temperature: 1.0,
            density: 235.0,
            coefficients: &[(0.03808645, 0.0), (0.06647986, 0.0), (-0.0300295, 0.0), (0.00998779, 0.0)],
        },
        enhancement: Enhancement::Ammonia,
    },
    error: 0.1,
};

/// Friend, D. G., Ingham, H., Ely, J. F., Thermophysical Properties of Ethane, J. Phys. Chem. Ref. Data 20 (1991) 275-347, doi
/// 10.1063/1.555881. The amplitude and the reference temperature, twice the critical one, as the open collection pychemqt has
/// them; CoolProp has 1.03 and one and a half times.
pub(super) static R170: Correlation = Correlation {
    designation: "R-170",
    lowest_temperature: 0.0,
    highest_temperature: 500.0,
    highest_pressure: 70000000.0,
    form: Form::Parts {
        dilute: Dilute::Ethane,
        residual: Residual::Powers {
            temperature: 305.33,
            density: 206.5809,
            terms: &[
                (0.00424487082791, 0.0, 1),
                (0.0121492188197, 0.0, 2),
                (-0.000117556113502, 0.0, 3),
                (-0.00034524130818, 0.0, 4),
                (0.000966686923145, 0.0, 5),
                (0.0105364030395, 1.5, 1),
                (-0.00331843007922, 1.0, 3),
            ],
        },
        enhancement: Enhancement::Crossover(Crossover {
            gamma_amplitude: 0.0563,
            gamma: 1.242,
            amplitude: 1.01,
            length: 1.9e-10,
            cutoff: 5.45e-10,
            reference_temperature: 610.66,
        }),
    },
    error: 0.05,
};

/// See [`super::r23`].
pub(super) static R23: Correlation = Correlation {
    designation: "R-23",
    lowest_temperature: 0.0,
    highest_temperature: 475.0,
    highest_pressure: 60e6,
    form: Form::R23,
    error: 0.05,
};
