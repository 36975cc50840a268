//!
//!
//! Source: Kamei, A., Beyerlein, S. W., Jacobsen, R. T, Application of Nonlinear Regression in the Development of a
//! Wide Range Formulation for HCFC-22, Int. J. Thermophys. 16 (1995) 1155-1164, doi 10.1007/BF02081283.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R22: PureFluid = PureFluid {
    designation: "R-22",
    molar_mass: 0.086468,
    gas_constant: 8.31451,
    reducing_temperature: 369.295,
    reducing_density: 6058.22,
    critical_temperature: 369.295,
    critical_pressure: 4990000.0,
    acentric_factor: 0.22082,
    lowest_temperature: 115.73,
    highest_temperature: 550.0,
    highest_pressure: 60000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.0695645445236, t: -1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 25.2275419999, t: 1.75, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -202.351148311, t: 2.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 350.063090302, t: 2.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -223.134648863, t: 2.75, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 48.8345904592, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0108874958556, t: 5.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.590315073614, t: 1.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.689043767432, t: 1.75, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.284224445844, t: 3.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.125436457897, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0113338666416, t: 4.5, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.063138895917, t: 1.5, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00974021015232, t: 0.5, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.000408406844722, t: 4.5, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00074194877357, t: 1.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.000315912525922, t: 4.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 8.76009723338e-06, t: 5.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.000110343340301, t: -0.5, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: -7.05323356879e-05, t: 3.5, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.23585073151, t: 5.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.192640494729, t: 7.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00375218008557, t: 12.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -4.48926036678e-05, t: 15.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0198120520635, t: 3.5, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.0356958425255, t: 3.5, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0319594161562, t: 8.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 2.60284291078e-06, t: 15.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00897629021967, t: 25.0, d: 4, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.0345482791645, t: 3.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00411831711251, t: 9.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00567428536529, t: 19.0, d: 6, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.00563368989908, t: 2.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00191384919423, t: 7.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00178930036389, t: 13.0, d: 8, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -11.853420922628633,
        linear: 8.086894982106875,
        logarithm: 3.0052614044599997,
        powers: &[(-0.0222800387550675, -1.0)],
        vibrations: &[
            (1.0, 11.78545471777306),
            (1.0, 5.240144329059424),
            (1.0, 5.111575732138263),
            (1.0, 4.589509308276581),
            (1.0, 4.34795618678834),
            (1.0, 3.147982615524174),
            (1.0, 2.322026780757931),
            (1.0, 1.640223615266927),
            (1.0, 1.437630674663887),
        ],
    },
};
