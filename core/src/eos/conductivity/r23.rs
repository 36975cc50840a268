//! a model of its own form, the free-volume liquid and the dilute gas each with its share.
//!
//! Source: Shan, Z., Penoncello, S. G., Jacobsen, R. T, A Generalized Model for Viscosity and Thermal Conductivity of
//! Trifluoromethane, ASHRAE Transactions 106 (2000) 757-767. The numbers were taken from the open libraries CoolProp
//! (MIT licence) and pychemqt, which name this paper and agree.

use crate::math;

/// Thermal conductivity in W/(m·K) at a temperature in K and a density in mol/m³.
pub(super) fn conductivity(temperature: f64, density: f64) -> f64 {
    const CLOSE_PACKED: f64 = 68.345;
    const GAS_SHARE: f64 = 0.94215;
    let density = 1e-3 * density;
    let free = CLOSE_PACKED - density;
    let share = |part: f64| if part > 0.0 { math::pow(part, GAS_SHARE) } else { 0.0 };
    let gas = -2.5370 + 0.05366 * temperature;
    let activation = density / free * 2508.58 / (8.31451 * temperature);
    let liquid = 0.14914 * CLOSE_PACKED * CLOSE_PACKED / free * math::sqrt(temperature) * math::exp(activation);
    let hyperbolic = |x: f64| 2.0 / (math::exp(x) + math::exp(-x));
    let critical = 25.0 * hyperbolic(density - 7.5114) * hyperbolic(temperature - 299.2793);
    1e-3 * (share(free / CLOSE_PACKED) * gas + share(density / CLOSE_PACKED) * liquid + critical)
}
