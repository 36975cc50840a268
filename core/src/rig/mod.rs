//! The rig: a simulated air conditioner.

mod circuit;
mod coil;
mod compressor;
mod design;
mod draws;
pub mod fleet;
mod grid;
mod heating;
mod line;
mod lumped;
mod map;
mod metering;
mod moist;
mod newton;
mod nominal;
mod steady;
mod stop;
mod structure;
mod unit;
mod void;

pub use coil::{Coil, Condensed, Evaporated};
pub use compressor::{Compression, Compressor, CompressorMap, Efficiency, EfficiencyCompressor};
pub use design::{Device, RATING_CONDITIONS, Rating};
pub use draws::Draws;
pub use heating::{HEATING_RATING_CONDITIONS, Heating, HeatingConditions};
pub use line::Line;
pub use map::{Point, RefrigerantMap, Saturation};
pub use metering::{Around, FlashingOrifice, Metering, Needle, ShortTube, ThermostaticValve};
pub use moist::Air;
pub use nominal::{EfficiencyClass, LineSet, WATTS_PER_TON};
pub use steady::{Steady, Unit};
pub use stop::Stop;
pub use structure::{Accumulator, Circuits, Condenser, CondenserModel, Evaporator, ReturnDuct, Streams, Structure};
pub use unit::{AnyCompressor, AnyMetering, ChargeTuning, Conditions, Faults, Parts};
pub use void::VoidFraction;
