//! Equations of state: the truth from which the compact curves are made.
//!
//! A refrigerant's [`Model`] names its components' published equations ([`fluid`]) and its pairs' parameters
//! ([`pair`]). A [`Mixture`] is a model at a composition; it gives pressure and fugacities of a phase, bubble and dew
//! points, densities and the critical point. Everything is in SI units with molar densities, on the stack.

mod critical;
mod density;
mod equilibrium;
mod estimate;
pub mod fluid;
mod linear;
mod mixture;
pub mod model;
pub mod pair;
mod term;

pub use critical::Critical;
pub use equilibrium::{End, Equilibrium};
pub use fluid::PureFluid;
pub use mixture::{Mixture, PerComponent, Phase};
pub use model::{GAS_CONSTANT, MAX_COMPONENTS, Model};
pub use pair::Pair;
pub use term::{Derivatives, Term};
