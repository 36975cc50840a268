//! Tables with blanks, on memory that the caller owns: values along one or two ascending axes.
//!
//! Apart from the protocol's tables ([`crate::charge`]), whose axes step by whole degrees: here an axis has any steps, as
//! makers print them. The rule for blanks is the same: nothing is read where a cell that carries weight is blank.

use crate::bounds;
use crate::charge::answers::answers;
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate};

answers! {
    /// Why a table gives no value.
    GridGap {
        /// Below the first row.
        BelowFirstRow = 1 "below-first-row" "Below the first row of the table: nothing is read beyond its ends.";
        /// Above the last row.
        AboveLastRow = 2 "above-last-row" "Above the last row of the table: nothing is read beyond its ends.";
        /// Below the first column.
        BelowFirstColumn = 3 "below-first-column" "Below the first column of the table: nothing is read beyond its ends.";
        /// Above the last column.
        AboveLastColumn = 4 "above-last-column" "Above the last column of the table: nothing is read beyond its ends.";
        /// A blank cell carries weight.
        Blank = 5 "blank" "The table is blank here: its maker gives no value, so there is none to test against.";
        /// Between two steps of an axis that has no between.
        BetweenSteps = 6 "between-steps" "There is no such row or column, and none between two of them.";
        /// The uncertainty reaches out of the table on both sides.
        Uncertain = 7 "uncertain"
            "The inputs are too uncertain for this part of the table: within them it is blank or ends on both sides.";
    }
}

/// A cell of a table: its value, or blank.
pub trait Cell: Copy {
    /// The value; none where the cell is blank.
    fn known(self) -> Option<f64>;
}

impl Cell for Option<f64> {
    fn known(self) -> Option<f64> {
        self
    }
}

/// NaN is blank.
impl Cell for f64 {
    fn known(self) -> Option<f64> {
        (!self.is_nan()).then_some(self)
    }
}

/// The values of an axis, ascending.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis<'a> {
    values: &'a [f64],
    /// Whether there is nothing between two values.
    steps: bool,
}

impl<'a> Axis<'a> {
    /// No axis: the table has one row or column.
    pub const NONE: Self = Self { values: &[], steps: true };

    /// An axis between whose values the table is interpolated.
    #[must_use]
    pub const fn along(values: &'a [f64]) -> Self {
        Self { values, steps: false }
    }

    /// An axis of steps, such as speed taps, between which there is nothing.
    #[must_use]
    pub const fn steps(values: &'a [f64]) -> Self {
        Self { values, steps: true }
    }

    fn count(&self) -> usize {
        self.values.len().max(1)
    }

    fn checked(self) -> Result<Self, Error> {
        bounds::GRID_LINES.check(self.count() as f64)?;
        let mut before = f64::NEG_INFINITY;
        let highest = self.values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        for value in self.values {
            // Equal to the one before is refused as well.
            if !(*value > before && value.is_finite()) {
                let quantity = "value of a table's axis";
                let advice = "give each axis in ascending order, each value once";
                return Err(bounds::refuse(quantity, "the axis' unit", *value, before.max(f64::MIN), highest, advice));
            }
            before = *value;
        }
        Ok(self)
    }

    /// The line at or below a value, and the share of the next one.
    fn place(&self, value: f64, below: GridGap, above: GridGap) -> Result<(usize, f64), GridGap> {
        if self.values.is_empty() {
            return Ok((0, 0.0));
        }
        let mut found = Err(below);
        for (line, lower) in self.values.iter().enumerate() {
            let upper = self.values.get(line + 1);
            // Rounding in a conversion must not put a value off its line, where a blank neighbour would swallow it.
            let step = upper.map_or_else(|| self.step_before(line), |upper| upper - lower);
            let slack = ON_LINE * step;
            if value < lower - slack {
                break;
            }
            found = match upper {
                _ if value <= lower + slack => Ok((line, 0.0)),
                Some(_) if self.steps => Err(GridGap::BetweenSteps),
                Some(upper) => Ok((line, (value - lower) / (upper - lower))),
                None => Err(above),
            };
        }
        found
    }

    fn step_before(&self, line: usize) -> f64 {
        let ends = line.checked_sub(1).and_then(|before| Some((self.values.get(before)?, self.values.get(line)?)));
        ends.map_or(1.0, |(before, here)| here - before)
    }
}

/// Distance from a line, in steps of the axis, below which a value counts as lying on it.
const ON_LINE: f64 = 1e-6;

/// What a table says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Lookup {
    /// The value, with the uncertainty that those of the inputs give it.
    At(Uncertain),
    /// There is none, and so no valid test.
    NoValidTest(GridGap),
}

impl Lookup {
    /// The value, if there is one.
    #[must_use]
    pub const fn value(self) -> Option<Uncertain> {
        match self {
            Self::At(value) => Some(value),
            Self::NoValidTest(_) => None,
        }
    }
}

/// A table with blanks.
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::grid::{Axis, Grid, GridGap, Lookup};
/// let (rows, columns) = ([20.0, 30.0], [10.0, 15.0, 25.0]);
/// let cells = [Some(4.0), Some(6.0), Some(8.0), Some(2.0), Some(5.0), None];
/// let grid = Grid::new(Axis::along(&rows), Axis::along(&columns), &cells)?;
/// let at = |row, column| grid.at(Uncertain::exact(row), Uncertain::exact(column));
/// assert_eq!(at(25.0, 12.5)?, Lookup::At(Uncertain::exact(4.25)));
/// assert_eq!(at(20.0, 20.0)?, Lookup::At(Uncertain::exact(7.0)));
/// assert_eq!(at(21.0, 20.0)?, Lookup::NoValidTest(GridGap::Blank));
/// assert_eq!(at(31.0, 12.0)?, Lookup::NoValidTest(GridGap::AboveLastRow));
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grid<'a, C = Option<f64>> {
    rows: Axis<'a>,
    columns: Axis<'a>,
    cells: &'a [C],
}

impl<'a, C: Cell> Grid<'a, C> {
    /// A table: its cells row by row.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for an axis that does not ascend or has more lines than
    /// [`bounds::GRID_LINES`], a number of cells other than rows times columns, an infinite cell, and a table without
    /// any known cell.
    pub fn new(rows: Axis<'a>, columns: Axis<'a>, cells: &'a [C]) -> Result<Self, Error> {
        let (rows, columns) = (rows.checked()?, columns.checked()?);
        let expected = (rows.count() * columns.count()) as f64;
        let advice = "give one cell for each row and column, row by row, blank ones included";
        bounds::within("number of a table's cells", "cells", cells.len() as f64, expected, expected, advice)?;
        let known = || cells.iter().filter_map(|cell| cell.known());
        for cell in known() {
            bounds::within("cell of a table", "its unit", cell, f64::MIN, f64::MAX, "leave an unknown cell blank")?;
        }
        let advice = "a table needs at least one cell that is not blank";
        bounds::within("number of known cells", "cells", known().count() as f64, 1.0, expected, advice)?;
        Ok(Self { rows, columns, cells })
    }

    /// The table's value, bilinear between four cells (or linear between two, on a line); none where a cell that carries
    /// weight is blank, and none beyond the ends. A missing axis takes any value.
    ///
    /// # Errors
    /// [`Error::NotFinite`] where a value is not a number.
    pub fn at(&self, row: Uncertain, column: Uncertain) -> Result<Lookup, Error> {
        let row = Uncertain::new(row.value, row.standard_uncertainty)?;
        let column = Uncertain::new(column.value, column.standard_uncertainty)?;
        if let Err(gap) = self.read(row.value, column.value) {
            return Ok(Lookup::NoValidTest(gap));
        }
        // Where a neighbourhood is blank on one side, the other side's slope counts; on both, nothing is known of it.
        let unknown = Error::NotAvailable { quantity: "uncertainty of a table's value", reason: "blank on both sides" };
        let found = propagate([row, column], |[row, column]| self.read(row, column).map_err(|_| unknown));
        Ok(found.map_or(Lookup::NoValidTest(GridGap::Uncertain), Lookup::At))
    }

    fn read(&self, row: f64, column: f64) -> Result<f64, GridGap> {
        let (row, down) = self.rows.place(row, GridGap::BelowFirstRow, GridGap::AboveLastRow)?;
        let (column, right) = self.columns.place(column, GridGap::BelowFirstColumn, GridGap::AboveLastColumn)?;
        let mut value = 0.0;
        for (row, row_weight) in [(row, 1.0 - down), (row + 1, down)] {
            for (column, column_weight) in [(column, 1.0 - right), (column + 1, right)] {
                let weight = row_weight * column_weight;
                if weight > 0.0 {
                    let cell = self.cells.get(row * self.columns.count() + column);
                    value += weight * cell.and_then(|cell| cell.known()).ok_or(GridGap::Blank)?;
                }
            }
        }
        Ok(value)
    }

    /// The cells, row by row.
    #[must_use]
    pub const fn cells(&self) -> &'a [C] {
        self.cells
    }
}
