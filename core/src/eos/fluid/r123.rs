//!
//!
//! Source: Younglove, B. A., An International Standard Equation of State for the Thermodynamic Properties of
//! Refrigerant 123 (2,2-Dichloro-1,1,1-Trifluoroethane), J. Phys. Chem. Ref. Data 23 (1994) 731-779, doi
//! 10.1063/1.555950.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R123: PureFluid = PureFluid {
    designation: "R-123",
    molar_mass: 0.152931,
    gas_constant: 8.31451,
    reducing_temperature: 456.831,
    reducing_density: 3596.417,
    critical_temperature: 456.831,
    critical_pressure: 3672000.0,
    acentric_factor: 0.2819224970363519,
    lowest_temperature: 166.0,
    highest_temperature: 600.0,
    highest_pressure: 76000000.0,
    residual: Residual {
        terms: &[
            Term { n: -0.2843794314511017, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 5.939281103209252, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -9.3656038952803, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 4.166607936753421, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.7402329295113845, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.17701990536487813, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.5472169226048678, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.618204955902326, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 2.889035293831577, t: 3.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.11849387475720602, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.3095226620887583, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.1730810371070863, t: 2.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.1281251319502905, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.07860873875128996, t: 2.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.08160004993052974, t: 3.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.053645105431063045, t: 2.0, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.006800782119285551, t: 2.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.007012640821910758, t: 3.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0009017623973110119, t: 3.0, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: -10.024264609507279, t: 3.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.28060765935596244, t: 4.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.020681452051475355, t: 5.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 10.024264609507279, t: 3.0, d: 0, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.28060765935596244, t: 4.0, d: 0, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.020681452051475355, t: 5.0, d: 0, l: 2, g: 1.0, m: 0.0 },
            Term { n: 7.989238691092167, t: 3.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.5479720681527366, t: 4.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.020681452051475355, t: 5.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 2.4914272182002284, t: 3.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.2739860340763683, t: 4.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.23600186106591514, t: 5.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.5405282468302359, t: 3.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.06004575637764492, t: 4.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.07866728702197172, t: 5.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0708085870232336, t: 3.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.01501143909441123, t: 4.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.001822051976772171, t: 5.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0031497857360693253, t: 3.0, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.007844555699191144, t: 4.0, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0003644103953544342, t: 5.0, d: 10, l: 2, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -13.232699500541475,
        linear: 10.948125204763993,
        logarithm: 1.0460090000000002,
        powers: &[(-11.1159955, -1.0), (1.9430818333333335, -2.0), (-0.22430541666666667, -3.0)],
        vibrations: &[],
    },
};
