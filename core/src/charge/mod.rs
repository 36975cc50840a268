//! Charge targets and the verdict of a named verification protocol.
//!
//! Superheat and subcooling themselves are methods of [`crate::saturation::SaturationCurves`]. Here stand what a
//! protocol asks for ([`target_superheat`], [`target_split`]) and what it concludes ([`protocol::Protocol`]). What the
//! evidence says of the charge is another matter, decided in [`crate::diagnosis`].

pub(crate) mod answers;
mod contradiction;
mod grid;
pub mod protocol;
mod split_grid;
mod superheat_grid;
mod target;

pub(crate) use contradiction::{Contradiction, GAUGES_DISAGREE_PA, contradiction};
pub use protocol::{Action, Edition, Protocol, ProtocolVerdict, Role, SplitCheck};
pub use target::{NoValidTest, Target, target_split, target_superheat};
pub(crate) use target::{SlopedTarget, sloped_split, sloped_superheat};
