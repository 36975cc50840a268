//! What the viscosity of each pure fluid needs: eleven numbers.
//!
//! Source: Martinek, Bell, Herzog, Richter and Yang, Entropy scaling of viscosity IV: application to 124 industrially
//! important fluids, Journal of Chemical and Engineering Data 70 (2025) 727-742, doi 10.1021/acs.jced.4c00451 (open
//! access, CC BY 4.0). The published coefficients were taken from the open parameter files of EntropyScaling.jl and
//! CoolProp (MIT licence), which name this paper; units were changed.
//!
//! The paper gives a fluid either coefficients of its own or those of its group with one scale. Its own bend down below
//! the temperatures where they were fitted, because the highest power has a negative sign, in R-32, R-142b, R-143a,
//! R-1224yd(Z) and R-1336mzz(Z); they run away in R-14 and R-13I1; in R-23 they are 13 % below the paper's own measured
//! value at 273 K. These eight take the group's, with the scale that the paper gives them for it.
//!
//! Two are not the paper's. R-116: its scale of 1.1981 rests on the gas alone and makes the liquid 40 % thinner than
//! the fluids of the same family; here it is the mean of those of and R-C318. R-1336mzz(E), which the
//! paper does not have: the scale of the Z isomer, and a dilute gas by Chapman and Enskog's theory with the
//! corresponding-states parameters of Chung and others (1988, doi 10.1021/ie00076a024).

/// Viscosity parameters of a pure fluid.
#[derive(Debug)]
pub(super) struct Parameters {
    /// ASHRAE 34 designation.
    pub designation: &'static str,
    /// Dilute gas: coefficients of T⁰ to T⁴, in µPa·s and K.
    pub dilute: [f64; 5],
    /// Coefficients of the powers 1.8, 2.4 and 2.8 of the scaled residual entropy.
    pub residual: [f64; 3],
    /// Scale of the residual entropy.
    pub scale: f64,
    /// Below this temperature in K the dilute polynomial does not hold; 0 where it holds as far as the equation of
    /// state.
    pub lowest_temperature: f64,
    /// Stated relative error: 0.15 where compared over the saturation lines from 233 K to 0.95 of the critical
    /// temperature, 0.20 where only with single measured values, 0.30 where no measured liquid was found.
    pub error: f64,
}

/// The paper's coefficients of the group to which nearly all refrigerants belong.
const GROUP: [f64; 3] = [0.392983, -0.167528, 0.037984];

/// The parameters of a fluid.
pub(super) fn find(designation: &str) -> Option<&'static Parameters> {
    ALL.iter().find(|parameters| parameters.designation == designation)
}

static ALL: &[Parameters] = &[
    Parameters {
        designation: "R-11",
        dilute: [1.037589, 0.02089706, 5.686112e-05, -8.946433e-08, 4.415465e-11],
        residual: [0.424119, -0.188906, 0.04421],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-12",
        dilute: [0.9544266, 0.02418057, 7.82003e-05, -1.499669e-07, 8.982629e-11],
        residual: [0.336945, -0.094121, 0.011411],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-13",
        dilute: [0.7167216, 0.03134369, 0.000125246, -3.44463e-07, 2.89131e-10],
        residual: [0.385255, -0.158415, 0.035273],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-13I1",
        dilute: [1.483781, 0.02905876, 0.0001088742, -2.024809e-07, 1.213474e-10],
        residual: GROUP,
        scale: 0.9358,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-14",
        dilute: [-1.267878, 0.07423255, -4.313163e-05, 1.153668e-09, 1.57362e-11],
        residual: GROUP,
        scale: 1.0194,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-22",
        dilute: [0.9177993, 0.02677417, 8.158184e-05, -1.612226e-07, 9.798157e-11],
        residual: [0.392154, -0.174282, 0.040375],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-23",
        dilute: [-2.067695, 0.06662084, -3.209106e-05, -7.216957e-09, 2.140144e-11],
        residual: GROUP,
        scale: 1.0851,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-32",
        dilute: [1.0596, 0.02459583, 9.194887e-05, -1.84014e-07, 1.172179e-10],
        residual: GROUP,
        scale: 1.1102,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-41",
        dilute: [0.7190676, 0.02245698, 8.742476e-05, -2.039371e-07, 1.486202e-10],
        residual: GROUP,
        scale: 0.9871,
        lowest_temperature: 0.0,
        error: 0.3,
    },
    Parameters {
        designation: "R-113",
        dilute: [-0.1937595, 0.03709998, -6.290321e-06, 2.506143e-09, -5.671101e-13],
        residual: [0.470361, -0.225442, 0.054716],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-114",
        dilute: [-1.781774, 0.05862169, -6.108399e-05, 5.399282e-08, -2.136494e-11],
        residual: [0.615057, -0.378672, 0.10544],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-115",
        dilute: [-0.7348013, 0.04750863, 2.334252e-06, -5.492277e-08, 4.539165e-11],
        residual: [0.416234, -0.185289, 0.044498],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-116",
        dilute: [-0.1590227, 0.05016833, -1.43211e-05, 9.906696e-09, -4.107178e-12],
        residual: GROUP,
        scale: 0.9862,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-123",
        dilute: [-2.273638, 0.05099859, -2.402786e-05, 0.0, 0.0],
        residual: [0.34979, -0.135478, 0.028526],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-124",
        dilute: [0.8868563, 0.02338429, 8.451023e-05, -1.75485e-07, 1.144382e-10],
        residual: [0.41212, -0.18945, 0.044478],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-125",
        dilute: [0.2490051, 0.0350188, 6.19198e-05, -1.53936e-07, 1.066756e-10],
        residual: [0.326005, -0.109154, 0.019807],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-134a",
        dilute: [-0.1766998, 0.04267365, -9.057271e-06, 4.4985e-09, -1.269154e-12],
        residual: [0.310059, -0.106155, 0.020416],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-141b",
        dilute: [0.9964938, 0.01819019, 5.287627e-05, -8.268453e-08, 4.111597e-11],
        residual: [0.368577, -0.146787, 0.032034],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-142b",
        dilute: [0.8022061, 0.0210495, 7.530063e-05, -1.551479e-07, 1.004221e-10],
        residual: GROUP,
        scale: 1.0054,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-143a",
        dilute: [0.6066659, 0.0270211, 5.372734e-05, -9.97909e-08, 5.436539e-11],
        residual: GROUP,
        scale: 1.0306,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-152a",
        dilute: [1.030615, 0.01993069, 5.96516e-05, -9.728077e-08, 5.037542e-11],
        residual: [0.265764, -0.066609, 0.008754],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-161",
        dilute: [0.113365, 0.0343875, -9.38042e-06, 1.174026e-08, -6.965281e-12],
        residual: GROUP,
        scale: 1.0527,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-170",
        dilute: [-8.210732e-16, 0.03165009, 7.040207e-20, -8.075719e-09, 0.0],
        residual: [0.404667, -0.168529, 0.0384],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-218",
        dilute: [0.9354121, 0.0248585, 9.566975e-05, -2.064725e-07, 1.405451e-10],
        residual: [0.361546, -0.142715, 0.031279],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-227ea",
        dilute: [0.9460059, 0.02308323, 8.203532e-05, -1.630847e-07, 1.023186e-10],
        residual: [0.333557, -0.123002, 0.02453],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-236fa",
        dilute: [1.032122, 0.02081948, 7.95716e-05, -1.516172e-07, 9.306741e-11],
        residual: [0.323674, -0.119077, 0.023505],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-245fa",
        dilute: [-1.942044, 0.04118558, 2.913957e-05, -1.225412e-07, 9.41189e-11],
        residual: [0.354663, -0.153191, 0.035329],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-290",
        dilute: [8.35646e-15, 0.02684617, 5.310593e-06, -1.475908e-08, 5.425586e-12],
        residual: [0.406055, -0.178357, 0.041571],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-600",
        dilute: [-0.1686378, 0.02654261, -3.906016e-06, 2.284883e-10, 5.817852e-13],
        residual: [0.369686, -0.148651, 0.032041],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-600a",
        dilute: [-0.2581768, 0.02808468, -6.999111e-06, 6.551607e-10, 1.082216e-12],
        residual: [0.443856, -0.203979, 0.048521],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-601",
        dilute: [0.6217814, 0.01408799, 3.6746e-05, -5.951075e-08, 2.985512e-11],
        residual: [0.404638, -0.184815, 0.042214],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-601a",
        dilute: [0.6694866, 0.01496306, 3.569751e-05, -5.420363e-08, 2.48418e-11],
        residual: [0.391104, -0.168977, 0.038118],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-717",
        dilute: [4.437514, -0.008501736, 0.0001357689, -1.666322e-07, 7.101944e-11],
        residual: [0.238911, -0.07776, 0.017714],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-744",
        dilute: [-1.484764, 0.06274267, -2.85092e-05, 9.864163e-09, -1.425519e-12],
        residual: [0.2335, 0.007837, -0.023471],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-1224yd(Z)",
        dilute: [1.058977, 0.02109964, 6.73097e-05, -1.152309e-07, 6.298125e-11],
        residual: GROUP,
        scale: 1.1264,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-1233zd(E)",
        dilute: [1.034675, 0.02036127, 6.173873e-05, -1.021594e-07, 5.359969e-11],
        residual: [0.3948, -0.184015, 0.042551],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-1234yf",
        dilute: [-21.16422, 0.2488831, -0.0007995648, 1.399102e-06, -9.55601e-10],
        residual: [0.267769, -0.055341, 0.001703],
        scale: 1.0,
        lowest_temperature: 213.15,
        error: 0.15,
    },
    Parameters {
        designation: "R-1234ze(E)",
        dilute: [-9.306718, 0.08362977, 1.083412e-05, -2.741049e-07, 2.989021e-10],
        residual: [0.307227, -0.107687, 0.020815],
        scale: 1.0,
        lowest_temperature: 213.15,
        error: 0.15,
    },
    Parameters {
        designation: "R-1234ze(Z)",
        dilute: [0.9810939, 0.01789431, 6.31732e-05, -1.101446e-07, 6.19488e-11],
        residual: GROUP,
        scale: 1.1051,
        lowest_temperature: 0.0,
        error: 0.3,
    },
    Parameters {
        designation: "R-1243zf",
        dilute: [1.019534, 0.02226845, 8.299135e-05, -1.614206e-07, 1.004061e-10],
        residual: GROUP,
        scale: 1.0406,
        lowest_temperature: 0.0,
        error: 0.3,
    },
    Parameters {
        designation: "R-1270",
        dilute: [0.350665, 0.02288568, 2.867238e-05, -5.135163e-08, 2.473506e-11],
        residual: [0.511568, -0.269974, 0.067762],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-1336mzz(E)",
        dilute: [0.9366887, 0.020537898, 6.6681587e-05, -1.202378e-07, 6.8653051e-11],
        residual: GROUP,
        scale: 1.1513,
        lowest_temperature: 0.0,
        error: 0.3,
    },
    Parameters {
        designation: "R-1336mzz(Z)",
        dilute: [1.076017, 0.01974467, 6.28816e-05, -1.03747e-07, 5.47891e-11],
        residual: GROUP,
        scale: 1.1513,
        lowest_temperature: 0.0,
        error: 0.2,
    },
    Parameters {
        designation: "R-C318",
        dilute: [0.3474758, 0.03108061, 4.607984e-05, -8.781487e-08, 4.741563e-11],
        residual: [0.490322, -0.247741, 0.061422],
        scale: 1.0,
        lowest_temperature: 0.0,
        error: 0.15,
    },
    Parameters {
        designation: "R-E170",
        dilute: [8.012193, -0.03025205, 0.0001709708, -2.384361e-07, 1.611183e-10],
        residual: [0.357695, -0.15162, 0.03393],
        scale: 1.0,
        lowest_temperature: 213.15,
        error: 0.15,
    },
];
