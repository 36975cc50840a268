//! The rig: a simulated air conditioner, to test diagnosis on, to stand in for hardware, and to teach with.
//!
//! A [`Unit`] is a compressor, a condenser, a metering device, an evaporator and the lines between them, filled with so
//! much refrigerant. [`Unit::designed`] builds one from its [`Rating`] so that it meets its capacity, superheat and
//! subcooling at 95 °F outdoors and 80/67 °F indoors; what it then holds is its nameplate charge. [`Unit::solve`] finds
//! where it settles under [`Conditions`] and with [`Faults`], each of any severity and together: suction pressure,
//! discharge pressure and suction enthalpy at which the metering device passes what the compressor draws, the evaporator
//! leaves what the compressor takes, and the parts hold the charge that is there.
//!
//! * Inputs in SI units and absolute pressures: conditions in K and Pa, severities from 0 (healthy) to the limit of each.
//! * Outside their ranges: [`Error::OutOfRange`](crate::Error::OutOfRange). Where such a unit would not run:
//!   [`Error::NotAvailable`](crate::Error::NotAvailable) with the reason. Where no balance was found:
//!   [`Error::NotConverged`](crate::Error::NotConverged). Never a number that does not close its balances.
//! * Properties come from a [`RefrigerantMap`], made of the equation of state alone and never of the saturation tables,
//!   and moist air from equations of its own: a mistake elsewhere in the library cannot hide in both halves of a test.
//!   Make the map once and keep it, in a static or a box.
//! * [`Motion`] follows a unit in time, step by step: start, stop, charging, changes around it. [`Sensors`] are the
//!   instruments at it, which turn a state into a [`Reading`](crate::Reading).
//! * Deterministic, without heap and without global state.
//!
//! Models and their sources: compressor by ten coefficients (the form of AHRI 540) or by volume flow and efficiency; coils
//! by moving boundaries, the wet evaporator by enthalpies; void fraction by Zivi 1964 or Smith 1969; short tube by Payne
//! and O'Neal 2004; thermostatic valve by Li, Braun and Shen 2004. What the rig reproduces of measured units, and what it
//! misses, stands with numbers in `core/docs/rig.md`.
//!
//! A unit of 3 tons, and the same one a fifth short of its charge:
//!
//! ```
//! use satline::refrigerant;
//! use satline::rig::{Device, Faults, RATING_CONDITIONS, Rating, RefrigerantMap, Unit};
//!
//! let record = refrigerant::find("R-410A")?;
//! let map = RefrigerantMap::of("R-410A", record.model)?;
//! let unit = Unit::designed(&map, &Rating::usual(10_550.0, Device::ShortTube))?;
//!
//! let healthy = unit.solve(&RATING_CONDITIONS, &Faults::default())?;
//! assert!((healthy.capacity - 10_550.0).abs() < 10.0); // W
//!
//! let short = unit.solve(&RATING_CONDITIONS, &Faults { undercharge: 0.2, ..Faults::default() })?;
//! let superheat = short.vapor_port.temperature - map.saturation(short.vapor_port.pressure)?.dew_temperature;
//! assert!(superheat > 15.0); // K, of 7 when healthy
//! assert!(short.capacity < 0.9 * healthy.capacity);
//! assert!(short.vapor_port.pressure < healthy.vapor_port.pressure);
//! # Ok::<(), satline::Error>(())
//! ```

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
pub use heating::{HEATING_RATING_CONDITIONS, Heating, HeatingConditions};
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
