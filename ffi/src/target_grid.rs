//! The maker's chart of targets, in C: arrays that the caller owns.

use crate::airflow::{looked_up, numbers};
use crate::answer::{Answer, answer, given, status};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::uncertain::{Uncertain, taken};
use satline::visit::grid::Lookup;
use satline::visit::target_grid::{self, GridAxis, GridTarget};

/// A maker's chart of targets with one or two axes. Start with satline_target_grid_init; the arrays stay the caller's and
/// must live as long as the chart is used.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct TargetGrid {
    /// sizeof(satline_target_grid), set by satline_target_grid_init.
    pub struct_size: u32,
    /// SATLINE_GRID_TARGET_...: what the chart gives.
    pub target: i32,
    /// SATLINE_GRID_AXIS_...: what its rows are.
    pub row_axis: i32,
    /// SATLINE_GRID_AXIS_...: what its columns are; 0 (by satline_target_grid_init) for a chart with one axis.
    pub column_axis: i32,
    /// How many rows, and columns; no columns for a chart with one axis.
    pub row_count: u32,
    pub column_count: u32,
    /// The rows' values, ascending, in SI.
    pub rows: *const f64,
    /// The columns' values, ascending, in SI; null for a chart with one axis.
    pub columns: *const f64,
    /// row_count times column_count cells (row_count for one axis), row by row, in SI; a blank cell is NaN.
    pub cells: *const f64,
}

/// A reading against the target of a chart. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct TargetDeviation {
    /// SATLINE_TARGET_OUTCOME_...
    pub outcome: i32,
    /// SATLINE_GRID_GAP_...: why there is no target; 0 where there is one.
    pub gap: i32,
    /// What the chart says; 0 where it has no target.
    pub target: Uncertain,
    /// Measured minus target; 0 where the chart has no target.
    pub deviation: Uncertain,
}

// Their layouts are part of the binary interface, here with pointers of eight bytes.
const _: () = assert!(size_of::<*const f64>() != 8 || size_of::<TargetGrid>() == 48);
const _: () = assert!(size_of::<TargetDeviation>() == 40);

impl TargetGrid {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        target: 0,
        row_axis: 0,
        column_axis: 0,
        row_count: 0,
        column_count: 0,
        rows: core::ptr::null(),
        columns: core::ptr::null(),
        cells: core::ptr::null(),
    };

    /// The chart, checked.
    ///
    /// # Safety
    /// The arrays hold what the counts say.
    unsafe fn checked(&self) -> Answer<target_grid::TargetGrid<'_, f64>> {
        if self.struct_size != Self::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let target = GridTarget::from_number(self.target).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
        let row = GridAxis::from_number(self.row_axis).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
        // SAFETY: promised by the caller.
        let rows = unsafe { numbers(self.rows, self.row_count) }?;
        let (column, count) = if self.column_axis == 0 && self.column_count == 0 {
            (None, self.row_count)
        } else {
            let axis = GridAxis::from_number(self.column_axis).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
            // SAFETY: promised by the caller.
            let columns = unsafe { numbers(self.columns, self.column_count) }?;
            let count = self.row_count.checked_mul(self.column_count).ok_or(SATLINE_STATUS_OUT_OF_RANGE)?;
            (Some((axis, columns)), count)
        };
        // SAFETY: promised by the caller.
        let cells = unsafe { numbers(self.cells, count) }?;
        target_grid::TargetGrid::new(target, (row, rows), column, cells).map_err(status)
    }
}

/// A value that may be left out by a null pointer.
///
/// # Safety
/// `pointer` is null or points at a value.
unsafe fn maybe(pointer: *const Uncertain) -> Answer<Option<satline::uncertain::Uncertain>> {
    // SAFETY: promised by the caller.
    if pointer.is_null() { Ok(None) } else { unsafe { taken(pointer) }.map(Some) }
}

/// Empties a chart. struct_size: sizeof(satline_target_grid).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_target_grid_init(grid: *mut TargetGrid, struct_size: u32) -> i32 {
    let right = struct_size == TargetGrid::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(grid, || if right { Ok(TargetGrid::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// The chart's target where its axes have these values, in SI: bilinear between known cells, nothing from a blank one or
/// beyond the ends. column: null for a chart with one axis.
///
/// Status: SATLINE_STATUS_NO_VALID_TEST (blank, or beyond the ends), SATLINE_STATUS_NOT_AVAILABLE (column missing, or
/// given where there is none), SATLINE_STATUS_OUT_OF_RANGE (also for an axis that does not ascend),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_UNKNOWN_CHOICE, SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_target_grid_at(
    grid: *const TargetGrid,
    row: *const Uncertain,
    column: *const Uncertain,
    target: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for a chart and values.
        let (grid, row, column) = unsafe { (given(grid)?, taken(row)?, maybe(column)?) };
        // SAFETY: the header asks for arrays of that many numbers.
        looked_up(unsafe { grid.checked() }?.at(row, column))
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(target, compute) }
}

/// A reading against the chart, with a tolerance in the target's unit. Show the cautions SATLINE_CHART_CAUTION_... with it.
/// Where the chart has no target the outcome is
/// SATLINE_TARGET_OUTCOME_NO_VALID_TEST and the status is SATLINE_STATUS_OK.
///
/// Status: as satline_target_grid_at, without SATLINE_STATUS_NO_VALID_TEST.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_target_grid_compare(
    grid: *const TargetGrid,
    measured: *const Uncertain,
    row: *const Uncertain,
    column: *const Uncertain,
    tolerance: f64,
    deviation: *mut TargetDeviation,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for a chart and values.
        let (grid, measured, row, column) = unsafe { (given(grid)?, taken(measured)?, taken(row)?, maybe(column)?) };
        // SAFETY: the header asks for arrays of that many numbers.
        let found = unsafe { grid.checked() }?.compare(measured, row, column, tolerance).map_err(status)?;
        let of = |value: Option<_>| value.map_or(Uncertain::EMPTY, Uncertain::of);
        Ok(TargetDeviation {
            outcome: found.outcome.number(),
            gap: if let Lookup::NoValidTest(gap) = found.target { gap.number() } else { 0 },
            target: of(found.target.value()),
            deviation: of(found.deviation),
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(deviation, compute) }
}

/// Approach: liquid line minus outdoor dry bulb temperature, kelvin, from two temperatures in kelvin.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_approach_k(
    liquid_line_k: *const Uncertain,
    outdoor_dry_bulb_k: *const Uncertain,
    approach_k: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (line, outdoor) = unsafe { (taken(liquid_line_k)?, taken(outdoor_dry_bulb_k)?) };
        target_grid::approach(line, outdoor).map(Uncertain::of).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(approach_k, compute) }
}
