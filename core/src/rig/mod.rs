//! The rig: a simulated air conditioner.

mod circuit;
mod coil;
mod compressor;
mod design;
mod draws;
pub mod fleet;
mod grid;
mod line;
mod lumped;
mod map;
mod metering;
mod moist;
mod motion;
#[cfg(test)]
mod motion_tests;
mod newton;
mod nominal;
mod rest;
mod sensor;
mod steady;
mod stop;
mod stores;
mod structure;
mod unit;
mod void;

pub use coil::{Coil, Condensed, Evaporated};
pub use compressor::{Compression, Compressor, CompressorMap, Efficiency, EfficiencyCompressor};
pub use design::{Device, RATING_CONDITIONS, Rating};
pub use draws::Draws;
pub use line::Line;
pub use map::{Point, RefrigerantMap, Saturation};
pub use metering::{Around, FlashingOrifice, Metering, Needle, ShortTube, ThermostaticValve};
pub use moist::Air;
pub use motion::{Change, Inputs, Moment, Motion, Trip, run};
pub use nominal::{EfficiencyClass, LineSet, WATTS_PER_TON};
pub use sensor::{Instruments, Sensor, Sensors};
pub use steady::{Steady, Unit};
pub use stop::Stop;
pub use stores::Inertia;
pub use structure::{Accumulator, Circuits, Condenser, CondenserModel, Evaporator, ReturnDuct, Streams, Structure};
pub use unit::{AnyCompressor, AnyMetering, ChargeTuning, Conditions, Faults, Parts};
pub use void::VoidFraction;
