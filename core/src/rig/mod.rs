//! The rig: a simulated air conditioner.

mod coil;
mod compressor;
mod design;
mod grid;
mod line;
mod map;
mod metering;
mod moist;
mod steady;
mod unit;
mod void;

pub use coil::{Coil, Condensed, Evaporated};
pub use compressor::{Compression, Compressor, CompressorMap, Efficiency, EfficiencyCompressor};
pub use design::{Device, RATING_CONDITIONS, Rating};
pub use line::Line;
pub use map::{Point, RefrigerantMap, Saturation};
pub use metering::{Around, FlashingOrifice, Metering, Needle, ShortTube, ThermostaticValve};
pub use moist::Air;
pub use steady::{Steady, Unit};
pub use unit::{AnyCompressor, AnyMetering, ChargeTuning, Conditions, Faults, Parts};
pub use void::VoidFraction;
