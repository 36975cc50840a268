//! Equations of state: the truth from which the compact curves are made.
//!
//! A refrigerant's [`Model`] names its components' published equations ([`fluid`]) and its pairs' parameters
//! ([`pair`]). A [`Mixture`] is a model at a composition; it gives pressure and fugacities of a phase, bubble and dew
//! points, densities and the critical point. Everything is in SI units with molar densities, on the stack.

mod by_mass;
mod caloric;
mod conductivity;
mod critical;
mod density;
mod envelope;
mod equilibrium;
mod estimate;
mod flash;
pub mod fluid;
mod ideal;
mod isobar;
mod isotherm;
mod leak;
mod linear;
mod mixture;
pub mod model;
mod near;
pub mod pair;
mod pure;
mod reducing;
mod reference;
mod root;
mod special;
mod state;
mod surface_tension;
mod term;
mod vessel;
mod viscosity;

pub use critical::Critical;
pub use envelope::Envelope;
pub use equilibrium::{End, Equilibrium};
pub use flash::{Fixed, TwoPhase};
pub use fluid::PureFluid;
pub use ideal::Ideal;
pub use leak::Leaving;
pub use mixture::{Mixture, PerComponent, Phase};
pub use model::{GAS_CONSTANT, MAX_COMPONENTS, Model};
pub use pair::{Pair, Rule};
pub use reference::{Properties, Reference};
pub use special::{Critical as CriticalTerm, Steep};
pub use state::{PhaseKind, State, StateInput};
pub use term::{Bell, Derivatives, Residual, Term};
pub use vessel::{Filling, Vessel};
