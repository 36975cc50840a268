//! The maker's own method: a target read from the unit's chart, blanks kept, and the reading against it.

use super::grid::{Axis, Cell, Grid, Lookup};
use crate::bounds::{self, Bound};
use crate::charge::answers::answers;
use crate::error::Error;
use crate::quantity::{AirTemperature, Temperature};
use crate::uncertain::{Uncertain, propagate};

answers! {
    /// What a maker's chart gives.
    GridTarget {
        /// Superheat, K.
        Superheat = 1 "superheat" "Superheat: suction line minus dew temperature, K.";
        /// Subcooling, K.
        Subcooling = 2 "subcooling" "Subcooling: bubble minus liquid line temperature, K.";
        /// Approach, K.
        Approach = 3 "approach" "Approach: liquid line minus outdoor dry bulb temperature, K.";
        /// Liquid pressure, Pa absolute, as in charts for heating.
        LiquidPressure = 4 "liquid-pressure" "Pressure at the liquid port, Pa absolute.";
        /// Discharge pressure, Pa absolute, as in charts for heating.
        DischargePressure = 5 "discharge-pressure" "Pressure at the discharge, Pa absolute.";
        /// Suction pressure, Pa absolute.
        SuctionPressure = 6 "suction-pressure" "Pressure at the suction port, Pa absolute.";
        /// Discharge temperature, K.
        DischargeTemperature = 7 "discharge-temperature" "Temperature of the discharge line, K.";
        /// Temperature split, K.
        TemperatureSplit = 8 "temperature-split" "Temperature split: return minus supply dry bulb, K.";
        /// Capacity, W.
        Capacity = 9 "capacity" "Cooling or heating capacity, W.";
        /// Electric power, W.
        Power = 10 "power" "Electric power, W.";
    }
}

answers! {
    /// What an axis of a maker's chart is.
    GridAxis {
        /// Outdoor dry bulb temperature, K.
        OutdoorDryBulb = 1 "outdoor-dry-bulb" "Outdoor dry bulb temperature, K.";
        /// Return dry bulb temperature, K.
        ReturnDryBulb = 2 "return-dry-bulb" "Return dry bulb temperature, K.";
        /// Return wet bulb temperature, K.
        ReturnWetBulb = 3 "return-wet-bulb" "Return wet bulb temperature, K.";
        /// Suction pressure, Pa absolute.
        SuctionPressure = 4 "suction-pressure" "Pressure at the suction port, Pa absolute.";
        /// Liquid pressure, Pa absolute.
        LiquidPressure = 5 "liquid-pressure" "Pressure at the liquid port, Pa absolute.";
        /// Airflow, m³/s.
        Airflow = 6 "airflow" "Airflow over the indoor coil, m³/s.";
    }
}

answers! {
    /// How a reading compares with its target, tolerance and uncertainty allowed for.
    TargetOutcome {
        /// Within the tolerance by more than the uncertainty.
        OnTarget = 1 "on-target" "It is on target within the tolerance.";
        /// Below it.
        Below = 2 "below" "It is below the target by more than the tolerance.";
        /// Above it.
        Above = 3 "above" "It is above the target by more than the tolerance.";
        /// Too near to the end of the tolerance to tell.
        CannotTell = 4 "cannot-tell" "It is nearer to the end of the tolerance than the measurement can tell.";
        /// The chart has no target here.
        NoValidTest = 5 "no-valid-test" "The chart has no target at these conditions: weigh the charge in, or come back.";
    }
}

answers! {
    /// What can hurt, or mislead, where a unit is charged by its maker's chart. Show all of them.
    ChartCaution {
        /// Always.
        RightChart = 1 "right-chart"
            "A chart is for one model, one line set and its maker's conditions: check each on the unit's label before a target is used.";
        /// Always.
        Settle = 2 "settle"
            "Let the unit run at its maker's charging conditions until readings settle, and again after every change.";
        /// Always.
        Pressure = 3 "pressure"
            "Refrigerant is under pressure and some of it burns: gloves and eye protection, no ignition source, hoses bled with care.";
        /// Always.
        LicensedPractice = 4 "licensed-practice"
            "Work on refrigerant follows local codes and belongs to licensed practice.";
    }
}

impl GridTarget {
    /// The accepted range of a target.
    #[must_use]
    pub const fn bound(self) -> &'static Bound {
        match self {
            Self::Superheat | Self::Subcooling | Self::Approach | Self::TemperatureSplit => &bounds::TARGET_DIFFERENCE,
            Self::LiquidPressure | Self::DischargePressure | Self::SuctionPressure => &bounds::ABSOLUTE_PRESSURE,
            Self::DischargeTemperature => &bounds::TEMPERATURE,
            Self::Capacity | Self::Power => &bounds::POWER,
        }
    }

    /// The accepted range of what is measured and held against such a target.
    #[must_use]
    pub const fn measured_bound(self) -> &'static Bound {
        match self {
            // A difference may be negative where it is measured.
            Self::Superheat | Self::Subcooling | Self::Approach | Self::TemperatureSplit => {
                &bounds::TEMPERATURE_DIFFERENCE
            }
            _ => self.bound(),
        }
    }
}

impl GridAxis {
    /// The accepted range of a value on the axis.
    #[must_use]
    pub const fn bound(self) -> &'static Bound {
        match self {
            Self::OutdoorDryBulb | Self::ReturnDryBulb | Self::ReturnWetBulb => &bounds::AIR_TEMPERATURE,
            Self::SuctionPressure | Self::LiquidPressure => &bounds::ABSOLUTE_PRESSURE,
            Self::Airflow => &bounds::AIRFLOW,
        }
    }
}

/// How many standard uncertainties a deviation must lie from the end of its tolerance to be told.
pub const COVERAGE: f64 = 2.0;

/// A maker's chart of targets with one or two axes, on memory that the caller owns.
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::target_grid::{GridAxis, GridTarget, TargetGrid, TargetOutcome};
/// // Demo: subcooling of 5, 6 and 7 K at 25, 35 and 45 °C outdoors, the last left blank by its maker.
/// let outdoor = [298.15, 308.15, 318.15];
/// let cells = [Some(5.0), Some(6.0), None];
/// let chart = TargetGrid::new(GridTarget::Subcooling, (GridAxis::OutdoorDryBulb, &outdoor), None, &cells)?;
/// let outside = Uncertain::new(303.15, 0.5)?;
/// let found = chart.compare(Uncertain::new(8.0, 0.6)?, outside, None, 1.0)?;
/// assert_eq!(found.outcome, TargetOutcome::Above);
/// assert!((found.deviation.unwrap().value - 2.5).abs() < 1e-9);
/// let hot = chart.compare(Uncertain::new(8.0, 0.6)?, Uncertain::new(312.0, 0.5)?, None, 1.0)?;
/// assert_eq!((hot.outcome, hot.deviation), (TargetOutcome::NoValidTest, None));
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct TargetGrid<'a, C = Option<f64>> {
    target: GridTarget,
    row: GridAxis,
    column: Option<GridAxis>,
    grid: Grid<'a, C>,
}

/// A reading against the target of a chart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TargetDeviation {
    /// How it compares.
    pub outcome: TargetOutcome,
    /// What the chart says.
    pub target: Lookup,
    /// Measured minus target; none where the chart has no target.
    pub deviation: Option<Uncertain>,
}

impl<'a, C: Cell> TargetGrid<'a, C> {
    /// A chart: what it gives, its axes with their ascending values, and its cells row by row, all in SI.
    ///
    /// # Errors
    /// As [`Grid::new`]; [`Error::OutOfRange`] for an axis value outside [`GridAxis::bound`] or a cell outside
    /// [`GridTarget::bound`].
    pub fn new(
        target: GridTarget,
        (row, rows): (GridAxis, &'a [f64]),
        column: Option<(GridAxis, &'a [f64])>,
        cells: &'a [C],
    ) -> Result<Self, Error> {
        let columns = column.map_or(Axis::NONE, |(_, columns)| Axis::along(columns));
        let grid = Grid::new(Axis::along(rows), columns, cells)?;
        for value in rows {
            row.bound().check(*value)?;
        }
        if let Some((column, columns)) = column {
            for value in columns {
                column.bound().check(*value)?;
            }
        }
        for cell in cells.iter().filter_map(|cell| cell.known()) {
            target.bound().check(cell)?;
        }
        Ok(Self { target, row, column: column.map(|(axis, _)| axis), grid })
    }

    /// What the chart gives.
    #[must_use]
    pub const fn target(&self) -> GridTarget {
        self.target
    }

    /// What its rows are.
    #[must_use]
    pub const fn row(&self) -> GridAxis {
        self.row
    }

    /// What its columns are, if it has any.
    #[must_use]
    pub const fn column(&self) -> Option<GridAxis> {
        self.column
    }

    /// The chart's target where its axes have these values; `column` is needed for a chart with two axes.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for a value outside its axis' [`GridAxis::bound`];
    /// [`Error::NotAvailable`] where a column is needed and missing, or given and not needed.
    pub fn at(&self, row: Uncertain, column: Option<Uncertain>) -> Result<Lookup, Error> {
        self.row.bound().check(row.value)?;
        match (self.column, column) {
            (Some(axis), Some(column)) => {
                axis.bound().check(column.value)?;
                self.grid.at(row, column)
            }
            (None, None) => self.grid.at(row, Uncertain::exact(0.0)),
            (Some(_), None) => Err(Error::NotAvailable {
                quantity: "target of a chart",
                reason: "the chart has two axes: give a value for its columns too",
            }),
            (None, Some(_)) => Err(Error::NotAvailable {
                quantity: "target of a chart",
                reason: "the chart has one axis: leave the value for columns out",
            }),
        }
    }

    /// A reading against the chart, with a tolerance in the target's unit: the maker's, or the protocol's.
    ///
    /// # Errors
    /// As [`TargetGrid::at`]; [`Error::OutOfRange`] or [`Error::NotFinite`] for a measured value outside
    /// [`GridTarget::measured_bound`] or a tolerance outside [`bounds::TARGET_TOLERANCE`].
    pub fn compare(
        &self,
        measured: Uncertain,
        row: Uncertain,
        column: Option<Uncertain>,
        tolerance: f64,
    ) -> Result<TargetDeviation, Error> {
        self.target.measured_bound().check(measured.value)?;
        let tolerance = bounds::TARGET_TOLERANCE.check(tolerance)?;
        let target = self.at(row, column)?;
        let Some(wanted) = target.value() else {
            return Ok(TargetDeviation { outcome: TargetOutcome::NoValidTest, target, deviation: None });
        };
        let deviation = propagate([measured, wanted], |[measured, wanted]| Ok(measured - wanted))?;
        let reach = COVERAGE * deviation.standard_uncertainty;
        let outcome = if deviation.value.abs() + reach <= tolerance {
            TargetOutcome::OnTarget
        } else if deviation.value - reach > tolerance {
            TargetOutcome::Above
        } else if deviation.value + reach < -tolerance {
            TargetOutcome::Below
        } else {
            TargetOutcome::CannotTell
        };
        Ok(TargetDeviation { outcome, target, deviation: Some(deviation) })
    }
}

/// Approach: liquid line minus outdoor dry bulb temperature, K, from two temperatures in K.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::TEMPERATURE`] or [`bounds::AIR_TEMPERATURE`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::target_grid::approach;
/// let found = approach(Uncertain::new(313.15, 0.4)?, Uncertain::new(308.15, 0.3)?)?;
/// assert!((found.value - 5.0).abs() < 1e-9 && (found.standard_uncertainty - 0.5).abs() < 1e-9);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn approach(liquid_line_k: Uncertain, outdoor_dry_bulb_k: Uncertain) -> Result<Uncertain, Error> {
    propagate([liquid_line_k, outdoor_dry_bulb_k], |[line, outdoor]| {
        Ok(Temperature::from_kelvin(line)?.kelvin() - AirTemperature::from_kelvin(outdoor)?.kelvin())
    })
}
