//! Equations of state of pure fluids: one file each, with its paper.

mod r11;
mod r113;
mod r114;
mod r115;
mod r116;
mod r12;
mod r1224ydz;
mod r123;
mod r1233zde;
mod r1234yf;
mod r1234zee;
mod r1234zez;
mod r124;
mod r1243zf;
mod r125;
mod r1270;
mod r13;
mod r1336mzze;
mod r1336mzzz;
mod r134a;
mod r13i1;
mod r14;
mod r141b;
mod r142b;
mod r143a;
mod r152a;
mod r161;
mod r170;
mod r218;
mod r22;
mod r227ea;
mod r23;
mod r236fa;
mod r245fa;
mod r290;
mod r32;
mod r41;
mod r600;
mod r600a;
mod r601;
mod r601a;
mod r717;
mod r728;
mod r744;
mod rc318;
mod re170;

pub use r11::R11;
pub use r12::R12;
pub use r13::R13;
pub use r13i1::R13I1;
pub use r14::R14;
pub use r22::R22;
pub use r23::R23;
pub use r32::R32;
pub use r41::R41;
pub use r113::R113;
pub use r114::R114;
pub use r115::R115;
pub use r116::R116;
pub use r123::R123;
pub use r124::R124;
pub use r125::R125;
pub use r134a::R134A;
pub use r141b::R141B;
pub use r142b::R142B;
pub use r143a::R143A;
pub use r152a::R152A;
pub use r161::R161;
pub use r170::R170;
pub use r218::R218;
pub use r227ea::R227EA;
pub use r236fa::R236FA;
pub use r245fa::R245FA;
pub use r290::R290;
pub use r600::R600;
pub use r600a::R600A;
pub use r601::R601;
pub use r601a::R601A;
pub use r717::R717;
pub use r728::R728;
pub use r744::R744;
pub use r1224ydz::R1224YDZ;
pub use r1233zde::R1233ZDE;
pub use r1234yf::R1234YF;
pub use r1234zee::R1234ZEE;
pub use r1234zez::R1234ZEZ;
pub use r1243zf::R1243ZF;
pub use r1270::R1270;
pub use r1336mzze::R1336MZZE;
pub use r1336mzzz::R1336MZZZ;
pub use rc318::RC318;
pub use re170::RE170;

use super::ideal::Ideal;
use super::term::Residual;

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
    /// The residual part.
    pub residual: Residual,
    /// The ideal-gas part.
    pub ideal: Ideal,
}
