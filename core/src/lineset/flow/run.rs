//! The way of a line: tube, length, rise and fittings.

use crate::bounds;
use crate::error::Error;
use crate::lineset::{FRICTION_ALLOWANCE, Fittings, Tube};
use crate::math;
use crate::uncertain::Uncertain;

/// Height beyond which makers commonly set limits, m (50 ft; common practice).
pub(super) const HIGH_LIFT_M: f64 = 15.24;
/// Length beyond which makers commonly ask for more than usual, m (80 ft; common practice).
pub(super) const LONG_LINE_M: f64 = 24.384;

/// An end of a line, by the way the refrigerant flows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineEnd {
    /// Where the refrigerant enters: for a suction line the coil.
    Inlet,
    /// Where it leaves: for a suction line the compressor.
    Outlet,
}

/// The way of a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Run {
    /// The tube.
    pub tube: Tube,
    /// Length along the tube, m ([`bounds::LINE_LENGTH`]).
    pub length_m: Uncertain,
    /// Height of its end over its beginning, by the way the refrigerant flows, m: positive where it flows upwards. It is
    /// taken as spread evenly over the length. Cannot exceed the length.
    pub rise_m: Uncertain,
    /// What fittings add to the friction.
    pub fittings: Fittings,
}

impl Run {
    /// A level line without fittings.
    #[must_use]
    pub const fn level(tube: Tube, length_m: Uncertain) -> Self {
        Self { tube, length_m, rise_m: Uncertain::exact(0.0), fittings: Fittings::NONE }
    }

    /// What every line checks: a length, a rise no greater than it, a flow.
    pub(super) fn check(length: f64, rise: f64, mass_flow: f64) -> Result<(), Error> {
        let length = bounds::LINE_LENGTH.check(length)?;
        bounds::RISE.check(rise)?;
        let advice =
            "the height between the ends of a line cannot exceed its length along the tube: check which is which";
        bounds::within("rise of the line, by its length", "m", rise, -length, length, advice)?;
        bounds::MASS_FLOW.check(mass_flow)?;
        Ok(())
    }

    pub(super) fn is_high(&self) -> bool {
        self.rise_m.value.abs() > HIGH_LIFT_M
    }

    pub(super) fn is_long(&self) -> bool {
        self.length_m.value > LONG_LINE_M
    }

    /// The bore as an uncertain number, m.
    pub(super) fn bore(&self) -> Uncertain {
        Uncertain {
            value: self.tube.inside_diameter_m(),
            standard_uncertainty: self.tube.inside_diameter_uncertainty_m(),
        }
    }
}

/// Factor on the friction: 1, with its uncertainty from the friction factor and the viscosity. Friction goes with the
/// viscosity to the power of about a fifth to a quarter; the stated error of the viscosity is read as a limit.
pub(super) fn friction_factor_of_one(viscosity_error: f64) -> Uncertain {
    let from_viscosity = 0.25 * viscosity_error / math::sqrt(3.0);
    Uncertain {
        value: 1.0,
        standard_uncertainty: math::sqrt(FRICTION_ALLOWANCE * FRICTION_ALLOWANCE + from_viscosity * from_viscosity),
    }
}
