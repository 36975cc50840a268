//! Departure functions, each with its publication.

use crate::eos::term::Term;

/// GeneralizedAlkane: Kunz, O., Wagner, W., The GERG-2008 Wide-Range Equation of State for Natural Gases and Other
/// Mixtures: An Expansion of GERG-2004, J. Chem. Eng. Data 57 (2012) 3032-3091, doi 10.1021/je300655b.
pub(super) static GENERALIZEDALKANE: [Term; 10] = [
    Term { n: 2.5574776844118, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
    Term { n: -7.9846357136353, t: 1.55, d: 1, l: 0, g: 1.0, m: 0.0 },
    Term { n: 4.7859131465806, t: 1.7, d: 1, l: 0, g: 1.0, m: 0.0 },
    Term { n: -0.73265392369587, t: 0.25, d: 2, l: 0, g: 1.0, m: 0.0 },
    Term { n: 1.3805471345312, t: 1.35, d: 2, l: 0, g: 1.0, m: 0.0 },
    Term { n: 0.28349603476365, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
    Term { n: -0.49087385940425, t: 1.25, d: 3, l: 0, g: 1.0, m: 0.0 },
    Term { n: -0.10291888921447, t: 0.0, d: 4, l: 0, g: 1.0, m: 0.0 },
    Term { n: 0.11836314681968, t: 0.7, d: 4, l: 0, g: 1.0, m: 0.0 },
    Term { n: 5.5527385721943e-05, t: 5.4, d: 4, l: 0, g: 1.0, m: 0.0 },
];

/// GeneralizedHFC: Lemmon, E. W., Jacobsen, R. T, Equations of State for Mixtures of, R-134a, R-143a, and
/// R-152a, J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997.
pub(super) static GENERALIZEDHFC: [Term; 4] = [
    Term { n: -0.013073, t: 7.4, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.018259, t: 0.35, d: 3, l: 1, g: 1.0, m: 0.0 },
    Term { n: 8.1299e-06, t: 10.0, d: 11, l: 2, g: 1.0, m: 0.0 },
    Term { n: 0.0078496, t: 5.3, d: 2, l: 3, g: 1.0, m: 0.0 },
];

/// R1234yf-R1234ze(E): Bell, I. H., Mixture Models for Refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and
/// R-134a/1234ze(E) and Interim Models for R-125/1234yf, R-1234ze(E)/227ea, and R-1234yf/152a, J. Phys. Chem. Ref.
/// Data 51 (2022) 013103, doi 10.1063/5.0086060.
pub(super) static R1234YF_R1234ZE_E: [Term; 2] = [
    Term { n: 0.07264, t: 0.012645, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.024746, t: 3.992829, d: 2, l: 2, g: 1.0, m: 0.0 },
];

/// R1234yf-R134a: Bell, I. H., Mixture Models for Refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and
/// R-134a/1234ze(E) and Interim Models for R-125/1234yf, R-1234ze(E)/227ea, and R-1234yf/152a, J. Phys. Chem. Ref.
/// Data 51 (2022) 013103, doi 10.1063/5.0086060.
pub(super) static R1234YF_R134A: [Term; 2] = [
    Term { n: 0.0519, t: 2.477314, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.011472, t: 0.070541, d: 2, l: 2, g: 1.0, m: 0.0 },
];

/// R1234yf-R152a: Bell, I. H., Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea,
/// R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368.
pub(super) static R1234YF_R152A: [Term; 3] = [
    Term { n: 0.009165, t: 3.221227, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.014392, t: 1.007082, d: 2, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.014246, t: 3.790953, d: 3, l: 1, g: 1.0, m: 0.0 },
];

/// R1234ze(E)-R227ea: Bell, I. H., Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E),
/// R-1234ze(E)/227ea, R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi
/// 10.1063/5.0135368.
pub(super) static R1234ZE_E_R227EA: [Term; 3] = [
    Term { n: -0.057178, t: 1.290298, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.031318, t: 0.038796, d: 2, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.027496, t: 2.640532, d: 3, l: 1, g: 1.0, m: 0.0 },
];

/// R125-R1234yf: Bell, I. H., Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea,
/// R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368.
pub(super) static R125_R1234YF: [Term; 1] = [Term { n: -0.032013, t: 0.00803, d: 1, l: 1, g: 1.0, m: 0.0 }];

/// R134a-R1234ze(E): Bell, I. H., Mixture Models for Refrigerants R-1234yf/134a, R-1234yf/1234ze(E), and
/// R-134a/1234ze(E) and Interim Models for R-125/1234yf, R-1234ze(E)/227ea, and R-1234yf/152a, J. Phys. Chem. Ref.
/// Data 51 (2022) 013103, doi 10.1063/5.0086060.
pub(super) static R134A_R1234ZE_E: [Term; 2] = [
    Term { n: 0.068889, t: 3.184446, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.004831, t: 2.034344, d: 2, l: 2, g: 1.0, m: 0.0 },
];

/// R32-R1234yf: Bell, I. H., Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea,
/// R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368.
pub(super) static R32_R1234YF: [Term; 3] = [
    Term { n: 0.449487, t: 2.538296, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.099708, t: 3.208604, d: 2, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.098897, t: 0.456509, d: 3, l: 1, g: 1.0, m: 0.0 },
];

/// R32-R1234ze(E): Bell, I. H., Mixture Model for Refrigerant Pairs R-32/1234yf, R-32/1234ze(E), R-1234ze(E)/227ea,
/// R-1234yf/152a, and R-125/1234yf, J. Phys. Chem. Ref. Data 52 (2023) 013101, doi 10.1063/5.0135368.
pub(super) static R32_R1234ZE_E: [Term; 4] = [
    Term { n: 0.295192, t: 0.500457, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.737904, t: 3.104735, d: 2, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.542962, t: 3.20172, d: 3, l: 1, g: 1.0, m: 0.0 },
    Term { n: -0.201951, t: 2.567118, d: 4, l: 1, g: 1.0, m: 0.0 },
];

/// R32-R125: Lemmon, E. W., Jacobsen, R. T, Equations of State for Mixtures of, R-134a, R-143a, and
/// R-152a, J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997.
pub(super) static R32_R125: [Term; 8] = [
    Term { n: -0.0072955, t: 4.5, d: 2, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.078035, t: 0.57, d: 5, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.61007, t: 1.9, d: 1, l: 2, g: 1.0, m: 0.0 },
    Term { n: 0.64246, t: 1.2, d: 3, l: 2, g: 1.0, m: 0.0 },
    Term { n: 0.014965, t: 0.5, d: 9, l: 2, g: 1.0, m: 0.0 },
    Term { n: -0.34049, t: 2.6, d: 2, l: 3, g: 1.0, m: 0.0 },
    Term { n: 0.085658, t: 11.4, d: 3, l: 3, g: 1.0, m: 0.0 },
    Term { n: -0.064429, t: 4.5, d: 6, l: 3, g: 1.0, m: 0.0 },
];

/// R32-R134a: Lemmon, E. W., Jacobsen, R. T, Equations of State for Mixtures of, R-134a, R-143a, and
/// R-152a, J. Phys. Chem. Ref. Data 33 (2004) 593-620, doi 10.1063/1.1649997.
pub(super) static R32_R134A: [Term; 4] = [
    Term { n: 0.22909, t: 1.9, d: 1, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.094074, t: 0.25, d: 3, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.00039876, t: 0.07, d: 8, l: 1, g: 1.0, m: 0.0 },
    Term { n: 0.021113, t: 2.0, d: 1, l: 2, g: 1.0, m: 0.0 },
];
