//! What keeps people from harm: how much refrigerant a room may hold, how full a cylinder may be, how far a circuit is
//! evacuated before it is opened, and what to beware of.
//!
//! Rules are stated with their clause and assumptions, and where a rule does not apply the answer says so instead of
//! giving a number. All of it defers to local codes and licensed practice: editions differ and authorities decide.
//!
//! No heap and no equation of state, so an instrument can answer too. Worked examples: `core/docs/safety.md`.

pub mod answers;
mod cautions;
mod cylinder;
mod recovery;
mod room;

pub use answers::{
    ApplianceClass, Assumption, Caution, Clause, FillRule, FillVerdict, Installation, RecoveryNote, RoomOutcome,
    RoomReason, Situation,
};
pub use cautions::{CAUTIONS_MAX, Cautions, cautions_for};
pub use cylinder::{
    CANDIDATES_MAX, CYLINDER_HIGHEST_F, Contents, Cylinder, CylinderFill, FILL_SHARE, FullTemperature,
    cylinder_contents_kg, cylinder_fill,
};
pub use recovery::{RecoveryLevel, recovery_level};
pub use room::{
    Bands, Concentration, DEFAULT_CEILING_HEIGHT_M, Given, Room, RoomLimit, largest_charge_kg, room_limit,
    smallest_area_m2,
};
