//! Equations of state of pure fluids: one file each, with its paper.

mod r125;
mod r134a;
mod r22;
mod r32;

pub use r22::R22;
pub use r32::R32;
pub use r125::R125;
pub use r134a::R134A;

use super::term::Term;

/// A pure fluid's published equation of state.
#[derive(Debug)]
pub struct PureFluid {
    /// ASHRAE 34 designation.
    pub designation: &'static str,
    /// Molar mass, kg/mol.
    pub molar_mass: f64,
    /// The gas constant of the paper, J/(mol·K).
    pub gas_constant: f64,
    /// Temperature that makes τ = 1, K.
    pub reducing_temperature: f64,
    /// Density that makes δ = 1, mol/m³.
    pub reducing_density: f64,
    /// Critical temperature, K.
    pub critical_temperature: f64,
    /// Critical pressure, Pa.
    pub critical_pressure: f64,
    /// Acentric factor, for first estimates only.
    pub acentric_factor: f64,
    /// Lowest temperature of the equation (the triple point), K.
    pub lowest_temperature: f64,
    /// Highest temperature of the equation, K.
    pub highest_temperature: f64,
    /// Highest pressure of the equation, Pa.
    pub highest_pressure: f64,
    /// Terms of the residual Helmholtz energy.
    pub residual: &'static [Term],
}
