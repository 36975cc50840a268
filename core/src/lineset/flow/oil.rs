//! Whether vapour carries oil up a riser.

use super::lift::STANDARD_GRAVITY;
use crate::math;

/// Density of the oil-rich liquid on the wall where none is given, kg/m³: polyolester with some refrigerant in it, between
/// 900 (mineral oil) and 1000 (common practice). Ten per cent of it moves the least flow by five.
pub const DEFAULT_OIL_DENSITY_KG_M3: f64 = 950.0;

/// Square of the dimensionless gas velocity at which an oil film is still carried upwards, 0.85² (Jacobs, Scheideman,
/// Travers and others, Oil transport by refrigerant vapor, ASHRAE Transactions 82, part 2, 1976; from memory).
const FLOODING: f64 = 0.723;

/// The least mass flux in kg/(s·m²) at which vapour carries oil up a vertical tube: 0.723 √(ρᵥ g D (ρₒ − ρᵥ)), from the
/// vapour's and the oil's density in kg/m³ and the inside diameter in m. 0 where the vapour is as dense as the oil.
#[must_use]
pub fn oil_return_mass_flux_kg_s_m2(vapor_density: f64, oil_density: f64, inside_diameter_m: f64) -> f64 {
    let lighter = (oil_density - vapor_density).max(0.0);
    FLOODING * math::sqrt(vapor_density * STANDARD_GRAVITY * inside_diameter_m * lighter)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// √(30 · 9.80665 · 0.0173 · 920) = 68.43 by hand.
    #[test]
    fn by_hand() {
        let flux = oil_return_mass_flux_kg_s_m2(30.0, 950.0, 0.0173);
        assert!((flux - 0.723 * 68.43).abs() < 0.01, "{flux}");
        assert_eq!(oil_return_mass_flux_kg_s_m2(1000.0, 950.0, 0.01), 0.0);
    }
}
