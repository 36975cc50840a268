//!
//!
//! Source: Buecker, D., Wagner, W., A Reference Equation of State for the Thermodynamic Properties of Ethane for
//! Temperatures from the Melting Line to 675 K and Pressures up to 900 MPa, J. Phys. Chem. Ref. Data 35 (2006)
//! 205-266, doi 10.1063/1.1859286.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R170: PureFluid = PureFluid {
    designation: "R-170",
    molar_mass: 0.03006904,
    gas_constant: 8.314472,
    reducing_temperature: 305.322,
    reducing_density: 6856.886685,
    critical_temperature: 305.322,
    critical_pressure: 4872200.0,
    acentric_factor: 0.099,
    lowest_temperature: 90.368,
    highest_temperature: 675.0,
    highest_pressure: 900000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.83440745735241, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.4287360607171, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.34430242210927, t: 0.25, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.42096677920265, t: 0.75, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.012094500886549, t: 0.75, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.57976201597341, t: 2.0, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.033127037870838, t: 4.25, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.1175165489413, t: 0.75, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.11160957833067, t: 2.25, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.062181592654406, t: 3.0, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.098481795434443, t: 1.0, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.098268582682358, t: 1.25, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.00023977831007049, t: 2.75, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.00069885663328821, t: 1.0, d: 9, l: 1, g: 1.0, m: 0.0 },
            Term { n: 1.9665987803305e-05, t: 2.0, d: 10, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.014586152207928, t: 2.5, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.046354100536781, t: 5.5, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0060764622180645, t: 7.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0026447330147828, t: 0.5, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.042931872689904, t: 5.5, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0029987786517263, t: 2.5, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.005291933517501, t: 4.0, d: 8, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0010383897798198, t: 2.0, d: 9, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.054260348214694, t: 10.0, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.21959362918493, t: 16.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.35362456650354, t: 18.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.12477390173714, t: 20.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.18425693591517, t: 14.0, d: 4, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.16192256436754, t: 18.0, d: 4, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.082770876149064, t: 12.0, d: 5, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.050160758096437, t: 19.0, d: 5, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0093614326336655, t: 7.0, d: 6, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.00027839186242864, t: 15.0, d: 11, l: 3, g: 1.0, m: 0.0 },
            Term { n: 2.3560274071481e-05, t: 9.0, d: 14, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0039238329738527, t: 26.0, d: 3, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.00076488325813618, t: 28.0, d: 3, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.004994430444073, t: 28.0, d: 4, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.0018593386407186, t: 22.0, d: 8, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.00061404353331199, t: 13.0, d: 10, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: -0.0023312179367924, t: 0.0, d: 1, eta: 15.0, epsilon: 1.0, beta: 150.0, gamma: 1.05 },
            Bell { n: 0.002930104790876, t: 3.0, d: 1, eta: 15.0, epsilon: 1.0, beta: 150.0, gamma: 1.05 },
            Bell { n: -0.00026912472842883, t: 3.0, d: 3, eta: 15.0, epsilon: 1.0, beta: 150.0, gamma: 1.05 },
            Bell { n: 184.13834111814, t: 0.0, d: 3, eta: 20.0, epsilon: 1.0, beta: 275.0, gamma: 1.22 },
            Bell { n: -10.397127984854, t: 3.0, d: 2, eta: 20.0, epsilon: 1.0, beta: 400.0, gamma: 1.16 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -3.0938209691353986,
        linear: 3.2503021087814803,
        logarithm: 3.003039265,
        powers: &[],
        vibrations: &[
            (1.117433359, 1.409105233),
            (3.467773215, 4.009917071),
            (6.94194464, 6.596709834),
            (5.970850948, 13.97981027),
        ],
    },
};
