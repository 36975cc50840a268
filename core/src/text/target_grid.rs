//! A maker's chart of targets from JSON.

use super::error::{Fault, TextError};
use super::json::{Entries, Entry, Kind, kind};
use super::read::{boolean, fail, malformed, number, string};
use super::unit::{Quantity, to_si};
use crate::error::{Error, code};
use crate::nearest::nearest;
use crate::quantity::Atmosphere;
use crate::visit::target_grid::{GridAxis, GridTarget, TargetGrid};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::value::RawValue;

/// A chart from a file, in SI, with what the file says about it.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadedTargetGrid {
    /// The name of the chart; empty when the file gives none.
    pub label: String,
    /// A remark, such as where the chart was copied from; empty when the file gives none.
    pub note: String,
    /// Whether the file marks the chart as invented.
    pub demo: bool,
    /// What the chart gives.
    pub target: GridTarget,
    /// What its rows are.
    pub row: GridAxis,
    /// The rows' values.
    pub rows: Vec<f64>,
    /// What its columns are and their values; none for a chart with one axis.
    pub column: Option<(GridAxis, Vec<f64>)>,
    /// The cells, row by row; none where the chart is blank.
    pub cells: Vec<Option<f64>>,
    /// Whether gauge pressures were made absolute with the standard sea-level atmosphere, as the file gives no ambient
    /// pressure.
    pub atmosphere_assumed: bool,
}

impl LoadedTargetGrid {
    /// The chart, ready to be asked.
    ///
    /// # Errors
    /// None for a chart as it was loaded; as [`TargetGrid::new`] where it was changed since.
    pub fn grid(&self) -> Result<TargetGrid<'_>, Error> {
        let column = self.column.as_ref().map(|(axis, values)| (*axis, values.as_slice()));
        TargetGrid::new(self.target, (self.row, &self.rows), column, &self.cells)
    }
}

const NAMES: &[&str] = &["label", "note", "demo", "target", "unit", "ambient_pressure_pa", "rows", "columns", "cells"];
const AXIS_NAMES: &[&str] = &["axis", "unit", "values"];

/// Reads a maker's chart: an object with `target` (a name of [`GridTarget`]) and its `unit`; `rows` and, for two axes,
/// `columns`, each an object with `axis` (a name of [`GridAxis`]), `unit` and ascending `values`; and `cells`, one array
/// for each row (or one number for each row of a chart with one axis), `null` where the chart is blank. Units are those of
/// readings (`degF`, `psig`, `cfm` ...). Besides: `label`, `note`, `demo`, and `ambient_pressure_pa` for gauge pressures.
///
/// # Errors
/// The first thing that cannot be understood, with its line and field.
///
/// ```
/// use satline::text::target_grid_from_json;
/// use satline::uncertain::Uncertain;
/// let chart = target_grid_from_json(r#"{
///     "label": "heat pump, cooling", "demo": true,
///     "target": "subcooling", "unit": "degF",
///     "rows": {"axis": "outdoor-dry-bulb", "unit": "degF", "values": [75, 95, 115]},
///     "cells": [9, 10, null]
/// }"#)?;
/// let found = chart.grid().unwrap().at(Uncertain::exact(302.594_444), None).unwrap();
/// assert!((found.value().unwrap().value * 1.8 - 9.5).abs() < 1e-4); // 85 °F
/// # Ok::<(), satline::text::TextError>(())
/// ```
pub fn target_grid_from_json(text: &str) -> Result<LoadedTargetGrid, TextError> {
    let whole: &RawValue = serde_json::from_str(text).map_err(|error| malformed(text, &error))?;
    let form = |piece: &str, field: Option<&str>, message: String| fail(text, piece, None, field, Fault::form(message));
    let found = object(text, whole, NAMES, None)?;
    let get = |name: &str| found.iter().find(|entry| entry.name == name && kind(entry.value.get()) != Kind::Null);
    let need = |name: &str| get(name).ok_or_else(|| form(whole.get(), None, format!("{name} is missing")));
    let at = |entry: &Entry<'_>, fault: Fault| fail(text, entry.value.get(), None, Some(&entry.name), fault);
    let words = |name: &str| get(name).map_or(Ok(String::new()), |entry| string(entry.value).map_err(|f| at(entry, f)));
    let demo = get("demo").map_or(Ok(false), |entry| boolean(entry.value).map_err(|fault| at(entry, fault)))?;
    let ambient = get("ambient_pressure_pa")
        .map(|entry| {
            let pascals = number(entry.value).and_then(|value| Ok(Atmosphere::from_pascals(value)?));
            pascals.map_err(|fault| at(entry, fault))
        })
        .transpose()?;
    let entry = need("target")?;
    let target = choice(entry.value, GridTarget::ALL, GridTarget::name).map_err(|fault| at(entry, fault))?;
    let units = Units { text, ambient: ambient.unwrap_or(Atmosphere::STANDARD) };
    let unit_entry = need("unit")?;
    let unit = string(unit_entry.value).map_err(|fault| at(unit_entry, fault))?;
    let mut gauge = false;
    let (row, rows) = units.axis(need("rows")?, &mut gauge)?;
    let column = get("columns").map(|entry| units.axis(entry, &mut gauge)).transpose()?;
    let entry = need("cells")?;
    let lines = array(text, entry.value, "cells")?;
    if lines.len() != rows.len() {
        let message = format!("{} rows of cells for {} rows: give one for each", lines.len(), rows.len());
        return Err(form(entry.value.get(), Some("cells"), message));
    }
    let mut cells = Vec::new();
    for line in lines {
        match &column {
            None => cells.push(units.cell(line, target, &unit, &mut gauge)?),
            Some((_, columns)) => {
                let parts = array(text, line, "cells")?;
                if parts.len() != columns.len() {
                    let message = format!(
                        "{} cells for {} columns: give one for each, null where blank",
                        parts.len(),
                        columns.len()
                    );
                    return Err(form(line.get(), Some("cells"), message));
                }
                for part in parts {
                    cells.push(units.cell(part, target, &unit, &mut gauge)?);
                }
            }
        }
    }
    let loaded = LoadedTargetGrid {
        label: words("label")?,
        note: words("note")?,
        demo,
        target,
        row,
        rows,
        column,
        cells,
        atmosphere_assumed: gauge && ambient.is_none(),
    };
    // What is left to refuse, such as a chart that is blank all over.
    loaded.grid().map_err(|error| fail(text, entry.value.get(), None, Some("cells"), error.into()))?;
    Ok(loaded)
}

/// The entries of an object, each known and none twice.
fn object<'a>(
    text: &'a str,
    raw: &'a RawValue,
    names: &'static [&'static str],
    field: Option<&str>,
) -> Result<Vec<Entry<'a>>, TextError> {
    if kind(raw.get()) != Kind::Object {
        return Err(fail(text, raw.get(), None, field, Fault::form("expected an object {...}")));
    }
    let Entries(entries) = serde_json::from_str(raw.get())
        .map_err(|error| fail(text, raw.get(), None, field, Fault::form(format!("{error}"))))?;
    for (place, entry) in entries.iter().enumerate() {
        if !names.contains(&entry.name.as_str()) {
            let nearest = nearest(&entry.name, names.iter().copied());
            let fault = Fault::new(code::UNKNOWN_FIELD, format!("unknown field: the nearest is {nearest}"));
            return Err(fail(text, entry.value.get(), None, Some(&entry.name), fault));
        }
        if entries.iter().take(place).any(|before| before.name == entry.name) {
            let fault = Fault::form("given twice; keep one");
            return Err(fail(text, entry.value.get(), None, Some(&entry.name), fault));
        }
    }
    Ok(entries)
}

fn array<'a>(text: &str, raw: &'a RawValue, field: &str) -> Result<Vec<&'a RawValue>, TextError> {
    let refuse = || fail(text, raw.get(), None, Some(field), Fault::form("expected an array [...]"));
    if kind(raw.get()) != Kind::Array {
        return Err(refuse());
    }
    serde_json::from_str(raw.get()).map_err(|_| refuse())
}

fn choice<T: Copy>(raw: &RawValue, all: &[T], name: fn(T) -> &'static str) -> Result<T, Fault> {
    let given = string(raw)?;
    all.iter().copied().find(|choice| name(*choice) == given).ok_or_else(|| {
        let nearest = nearest(&given, all.iter().map(|choice| name(*choice)));
        Fault::new(code::UNKNOWN_CHOICE, format!("unknown choice \"{given}\": the nearest is {nearest}"))
    })
}

/// How numbers of the file become SI.
struct Units<'a> {
    text: &'a str,
    ambient: Atmosphere,
}

impl Units<'_> {
    fn si(&self, raw: &RawValue, unit: &str, quantity: Quantity, gauge: &mut bool) -> Result<f64, Fault> {
        let si = to_si(&format!("{} {unit}", number(raw)?), quantity, self.ambient)?;
        *gauge |= si.gauge;
        Ok(si.value)
    }

    fn axis(&self, entry: &Entry<'_>, gauge: &mut bool) -> Result<(GridAxis, Vec<f64>), TextError> {
        let at = |piece: &str, fault: Fault| fail(self.text, piece, None, Some(&entry.name), fault);
        let found = object(self.text, entry.value, AXIS_NAMES, Some(&entry.name))?;
        let need = |name: &str| {
            let known = found.iter().find(|entry| entry.name == name).map(|entry| entry.value);
            known.ok_or_else(|| at(entry.value.get(), Fault::form(format!("{name} is missing"))))
        };
        let piece = need("axis")?;
        let axis = choice(piece, GridAxis::ALL, GridAxis::name).map_err(|fault| at(piece.get(), fault))?;
        let piece = need("unit")?;
        let unit = string(piece).map_err(|fault| at(piece.get(), fault))?;
        let quantity = match axis {
            GridAxis::OutdoorDryBulb | GridAxis::ReturnDryBulb | GridAxis::ReturnWetBulb => Quantity::Temperature,
            GridAxis::SuctionPressure | GridAxis::LiquidPressure => Quantity::Pressure,
            GridAxis::Airflow => Quantity::Airflow,
        };
        let mut values: Vec<f64> = Vec::new();
        for piece in array(self.text, need("values")?, &entry.name)? {
            let value = self.si(piece, &unit, quantity, gauge).and_then(|value| Ok(axis.bound().check(value)?));
            let value = value.map_err(|fault| at(piece.get(), fault))?;
            if values.last().is_some_and(|before| *before >= value) {
                return Err(at(piece.get(), Fault::new(code::OUT_OF_RANGE, "the values of an axis must ascend")));
            }
            values.push(value);
        }
        Ok((axis, values))
    }

    fn cell(
        &self,
        piece: &RawValue,
        target: GridTarget,
        unit: &str,
        gauge: &mut bool,
    ) -> Result<Option<f64>, TextError> {
        if kind(piece.get()) == Kind::Null {
            return Ok(None);
        }
        let quantity = match target {
            GridTarget::Superheat | GridTarget::Subcooling | GridTarget::Approach | GridTarget::TemperatureSplit => {
                Quantity::TemperatureDifference
            }
            GridTarget::LiquidPressure | GridTarget::DischargePressure | GridTarget::SuctionPressure => {
                Quantity::Pressure
            }
            GridTarget::DischargeTemperature => Quantity::Temperature,
            GridTarget::Capacity | GridTarget::Power => Quantity::Power,
        };
        let value = self.si(piece, unit, quantity, gauge).and_then(|value| Ok(target.bound().check(value)?));
        value.map(Some).map_err(|fault| fail(self.text, piece.get(), None, Some("cells"), fault))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::uncertain::Uncertain;
    use crate::visit::grid::{GridGap, Lookup};

    /// Demo: a heating chart in psig by outdoor and return dry bulb.
    const CHART: &str = r#"{
  "label": "heating",
  "demo": true,
  "target": "liquid-pressure",
  "unit": "psig",
  "rows": {"axis": "outdoor-dry-bulb", "unit": "degF", "values": [20, 40, 60]},
  "columns": {"axis": "return-dry-bulb", "unit": "degF", "values": [60, 70]},
  "cells": [
    [290, 310],
    [320, 345],
    [null, 380]
  ]
}"#;

    #[test]
    fn a_chart_with_two_axes_in_the_units_of_the_trade() {
        let loaded = target_grid_from_json(CHART).unwrap();
        assert!(loaded.demo && loaded.atmosphere_assumed && loaded.label == "heating");
        let at = |row: f64, column: f64| {
            let kelvin = |fahrenheit: f64| Uncertain::exact((fahrenheit + 459.67) / 1.8);
            loaded.grid().unwrap().at(kelvin(row), Some(kelvin(column))).unwrap()
        };
        // By hand: the middle of 290, 310, 320 and 345 psig is 316.25.
        let expected = 316.25 * 6_894.757_293_168 + 101_325.0;
        assert!((at(30.0, 65.0).value().unwrap().value - expected).abs() < 1e-3);
        assert_eq!(at(50.0, 65.0), Lookup::NoValidTest(GridGap::Blank));
        let higher = CHART.replace("\"demo\": true", "\"ambient_pressure_pa\": 84000");
        let higher = target_grid_from_json(&higher).unwrap();
        assert!(!higher.demo && !higher.atmosphere_assumed);
        assert!((loaded.cells[0].unwrap() - higher.cells[0].unwrap() - 17_325.0).abs() < 1e-6);
    }

    #[test]
    fn what_cannot_be_understood_names_its_line() {
        for (was, becomes, line, says, number) in [
            ("[320, 345]", "[320]", 10, "1 cells for 2 columns", code::MALFORMED_TEXT),
            ("[320, 345],", "", 8, "2 rows of cells for 3 rows", code::MALFORMED_TEXT),
            ("345", "\"345\"", 10, "expected a number", code::MALFORMED_TEXT),
            ("345", "34500000", 10, "gauge pressure", code::OUT_OF_RANGE),
            ("20, 40", "40, 20", 6, "ascend", code::OUT_OF_RANGE),
            ("20, 40", "40, 40", 6, "ascend", code::OUT_OF_RANGE),
            ("liquid-pressure", "liquid-presure", 4, "nearest is liquid-pressure", code::UNKNOWN_CHOICE),
            ("return-dry-bulb", "return-bulb", 7, "nearest is return-", code::UNKNOWN_CHOICE),
            ("psig", "psi", 9, "gauge or absolute", code::UNKNOWN_UNIT),
            ("\"unit\": \"degF\", \"values\": [60", "\"values\": [60", 7, "unit is missing", code::MALFORMED_TEXT),
            ("\"demo\"", "\"dmo\"", 3, "nearest is demo", code::UNKNOWN_FIELD),
            ("\"demo\": true", "\"label\": \"two\"", 3, "given twice", code::MALFORMED_TEXT),
            ("\"rows\": {", "\"rows\": 5, \"note\": {", 6, "expected an object", code::MALFORMED_TEXT),
            ("[60, 70]", "[60, NaN]", 7, "not valid JSON", code::MALFORMED_TEXT),
            ("[60, 70]", "[160, 170]", 7, "air temperature", code::OUT_OF_RANGE),
        ] {
            assert!(CHART.contains(was), "{was}");
            let error = target_grid_from_json(&CHART.replace(was, becomes)).unwrap_err();
            assert!(error.message.contains(says), "{becomes}: {error}");
            assert_eq!((error.line, error.code), (line, number), "{becomes}: {error}");
        }
        assert!(target_grid_from_json("[]").is_err() && target_grid_from_json("").is_err());
        let blank = "{\"target\":\"superheat\",\"unit\":\"K\",\"rows\":{\"axis\":\"airflow\",\"unit\":\"cfm\",\"values\":[900]},\"cells\":[null]}";
        assert!(target_grid_from_json(blank).unwrap_err().message.contains("not blank"));
    }
}
