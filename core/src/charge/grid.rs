//! A table of the protocol with bilinear interpolation and the blank rule. No panic, no guess.

/// A cell without a value.
pub(super) const BLANK: u16 = u16::MAX;

/// Distance from a grid line, in its unit, below which a value counts as lying on it. A temperature that went through
/// kelvin comes back with an error of some 1e-13 °F; without this, a blank neighbour would then swallow a valid cell.
const ON_LINE: f64 = 1e-6;

/// A table in tenths of a degree Fahrenheit, with steps of one degree Fahrenheit both ways.
pub(super) struct Grid<const ROWS: usize, const COLUMNS: usize> {
    /// The first row's value.
    pub first_row: f64,
    /// The first column's value.
    pub first_column: f64,
    /// The cells.
    pub tenths: [[u16; COLUMNS]; ROWS],
}

/// An interpolated value and how it changes with its two arguments.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Sloped {
    pub value: f64,
    pub by_row: f64,
    pub by_column: f64,
}

/// Why a table gives no value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Gap {
    RowBelow,
    RowAbove,
    ColumnBelow,
    ColumnAbove,
    Blank,
}

impl<const ROWS: usize, const COLUMNS: usize> Grid<ROWS, COLUMNS> {
    /// Bilinear interpolation. Blank as soon as any cell that carries weight is blank.
    pub(super) fn at(&self, row: f64, column: f64) -> Result<Sloped, Gap> {
        self.cells().at(row - self.first_row, column - self.first_column)
    }

    /// A cell in degrees Fahrenheit; none when it is blank or off the table.
    #[cfg(test)]
    pub(super) fn cell(&self, row: usize, column: usize) -> Option<f64> {
        self.cells().cell(row, column)
    }

    fn cells(&self) -> Cells<'_> {
        Cells { tenths: self.tenths.as_flattened(), rows: ROWS, columns: COLUMNS }
    }
}

/// The cells of a table of any size: what is computed with them is there once, not for each size.
#[derive(Clone, Copy)]
struct Cells<'a> {
    tenths: &'a [u16],
    rows: usize,
    columns: usize,
}

impl Cells<'_> {
    /// By the place from the first row and column.
    #[cfg_attr(target_arch = "arm", inline(never))]
    fn at(self, row: f64, column: f64) -> Result<Sloped, Gap> {
        let (row, down) = split(row, self.rows, Gap::RowBelow, Gap::RowAbove)?;
        let (column, right) = split(column, self.columns, Gap::ColumnBelow, Gap::ColumnAbove)?;
        let mut value = 0.0;
        for (row, row_weight) in [(row, 1.0 - down), (row + 1, down)] {
            for (column, column_weight) in [(column, 1.0 - right), (column + 1, right)] {
                let weight = row_weight * column_weight;
                if weight > 0.0 {
                    value += weight * self.cell(row, column).ok_or(Gap::Blank)?;
                }
            }
        }
        // Slopes only serve the uncertainty, so those along the nearest row and column of the table will do.
        let near_row = if down < 0.5 { row } else { row + 1 };
        let near_column = if right < 0.5 { column } else { column + 1 };
        let slope = |before: Option<f64>, here: Option<f64>, after: Option<f64>| match (before, here, after) {
            (Some(before), _, Some(after)) => 0.5 * (after - before),
            (Some(before), Some(here), None) => here - before,
            (None, Some(here), Some(after)) => after - here,
            _ => 0.0,
        };
        let here = self.cell(near_row, near_column);
        let above = near_row.checked_sub(1).and_then(|row| self.cell(row, near_column));
        let left = near_column.checked_sub(1).and_then(|column| self.cell(near_row, column));
        Ok(Sloped {
            value,
            by_row: slope(above, here, self.cell(near_row + 1, near_column)),
            by_column: slope(left, here, self.cell(near_row, near_column + 1)),
        })
    }

    fn cell(self, row: usize, column: usize) -> Option<f64> {
        if column >= self.columns {
            return None;
        }
        let tenths = *self.tenths.get(row.checked_mul(self.columns)?.checked_add(column)?)?;
        if tenths == BLANK { None } else { Some(f64::from(tenths) / 10.0) }
    }
}

/// The index of the cell at or below a position, and the share of the next one.
fn split(position: f64, count: usize, below: Gap, above: Gap) -> Result<(usize, f64), Gap> {
    let last = count.saturating_sub(1) as f64;
    if position.is_nan() || position < -ON_LINE {
        return Err(below);
    }
    if position > last + ON_LINE {
        return Err(above);
    }
    let index = (position + ON_LINE) as usize;
    let share = position - index as f64;
    Ok((index, if share < ON_LINE { 0.0 } else { share }))
}
