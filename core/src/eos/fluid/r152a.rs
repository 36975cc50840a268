//! R-152a.
//!
//! Source: Outcalt, S. L., McLinden, M. O., A Modified Benedict-Webb-Rubin Equation of State for the Thermodynamic
//! Properties of R152a (1,1-difluoroethane), J. Phys. Chem. Ref. Data 25 (1996) 605-636, doi 10.1063/1.555979.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-152a.
pub static R152A: PureFluid = PureFluid {
    designation: "R-152a",
    molar_mass: 0.066051,
    gas_constant: 8.314471,
    reducing_temperature: 386.411,
    reducing_density: 5571.45,
    critical_temperature: 386.411,
    critical_pressure: 4520000.0,
    acentric_factor: 0.275217114532099,
    lowest_temperature: 154.56,
    highest_temperature: 500.0,
    highest_pressure: 58000000.0,
    residual: Residual {
        terms: &[
            Term { n: -3.546579500185174, t: 3.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.3646312799563631, t: 4.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.03332333306112814, t: 5.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.6809684338301859, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 7.3521264810280345, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -11.247306378057127, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 5.499167142976577, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.401863270213656, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.07090364464394744, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.2132008868213696, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.19783973673284622, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.824947698265976, t: 3.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.08605464767044602, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.8881373668542004, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.9661273471407773, t: 2.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.09852234785295554, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.018341936863418316, t: 2.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.03385502040688226, t: 3.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.012492110085780536, t: 2.0, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.002210567071037713, t: 2.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.002168791332779416, t: 3.0, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0002335976904702689, t: 3.0, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: 3.546579500185174, t: 3.0, d: 0, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.3646312799563631, t: 4.0, d: 0, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.03332333306112814, t: 5.0, d: 0, l: 2, g: 1.0, m: 0.0 },
            Term { n: 2.7613383040168675, t: 3.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.06911857102367282, t: 4.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.03332333306112814, t: 5.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.7827613268561544, t: 3.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.03455928551183641, t: 4.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.13781353206688696, t: 5.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.18617312581521558, t: 3.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.03411193928992716, t: 4.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.04593784402229564, t: 5.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.021647001270605898, t: 3.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00852798482248179, t: 4.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.006203940397171849, t: 5.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0018521029114874563, t: 3.0, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00101674662708817, t: 4.0, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0012407880794343697, t: 5.0, d: 10, l: 2, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -7.9505067716279605,
        linear: 6.870078656540724,
        logarithm: 2.354951,
        powers: &[(-2.122650499999833, -1.0), (-0.6225413333328242, -2.0), (0.13402116666643668, -3.0)],
        vibrations: &[],
    },
};
