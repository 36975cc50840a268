//! What the diagnosis expects of units, learnt from the rig: simulated rows, the numbers fitted to them, and the source
//! file that holds those.

pub mod fit;
mod linear;
pub mod simulate;
pub mod write;
