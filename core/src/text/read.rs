//! Readings from JSON.

use super::accuracy::accuracies;
use super::error::{Fault, TextError};
use super::json::{Entries, Entry, Kind, kind, line_of};
use super::unit::{Quantity, Si, to_si};
use crate::error::code;
use crate::nearest::nearest;
use crate::quantity::Atmosphere;
use crate::reading::{
    Compressor, Field, Metering, MeteringPlace, Mode, Operation, Reading, RefrigerantCondition, Stage,
};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::value::RawValue;

/// A reading from a file, with what the file says about it.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct LabelledReading {
    /// The name of the unit; empty when the file gives none.
    pub label: String,
    /// A remark; empty when the file gives none.
    pub note: String,
    /// Whether the file marks the reading as invented.
    pub demo: bool,
    /// The reading.
    pub reading: Reading,
    /// Whether a gauge pressure was made absolute with the standard sea-level atmosphere, because the file gives neither
    /// ambient pressure nor altitude. One thousand feet too low reads about half a psi too high.
    pub atmosphere_assumed: bool,
}

/// Names that are not fields of a reading, but of its entry in a file.
pub(super) const BESIDES: &[&str] = &["label", "note", "demo", "altitude", "altitude_m", "uncertainty"];
/// Fields whose value is a word.
pub(super) const WORDS: &[&str] =
    &["refrigerant", "metering", "metering_place", "mode", "compressor", "stage", "operation", "refrigerant_condition"];

/// Reads one reading or an array of readings.
///
/// Every field of [`Reading`] may stand as a number in SI under its name (`suction_pressure_pa`), or as a string with a
/// unit under its name without the unit (`"suction_pressure": "118 psig"`). Besides: `label`, `note`, `demo`, `altitude`
/// (`"5280 ft"`) in place of an ambient pressure, and `uncertainty`, an object from field name to what [`Accuracy`] says of
/// its channel: `of_reading` (a fraction), `of_full_scale` (a fraction) with `full_scale`, `absolute`, `resolution` and
/// `group`, any word: channels with the same word share one error. A field that is `null` counts as not given.
///
/// ```
/// use satline::reading::Field;
/// use satline::text::readings_from_json;
/// let manifold = r#"{"of_full_scale": 0.005, "full_scale": "800 psi", "resolution": "1 psi", "group": "manifold"}"#;
/// let text = format!(
///     r#"{{"suction_pressure": "118 psig", "liquid_pressure": "340 psig", "operation": "steady",
///         "uncertainty": {{"suction_pressure": {manifold}, "liquid_pressure": {manifold}}}}}"#
/// );
/// let reading = readings_from_json(&text)?[0].reading;
/// let [suction, liquid] = [Field::SuctionPressure, Field::LiquidPressure].map(|field| reading.accuracy[field as usize]);
/// assert_eq!((suction.map(|accuracy| accuracy.group), suction), (Some(1), liquid));
/// # Ok::<(), satline::text::TextError>(())
/// ```
///
/// [`Accuracy`]: crate::reading::Accuracy
///
/// # Errors
/// The first thing that cannot be understood, with its line, reading and field: malformed JSON, an unknown field,
/// choice, refrigerant or unit (with the nearest known one), a field given twice, a value outside its range, a gauge
/// pressure below vacuum, a pressure that does not say gauge or absolute, a share of full scale without the full scale.
pub fn readings_from_json(text: &str) -> Result<Vec<LabelledReading>, TextError> {
    let malformed = |error: serde_json::Error| malformed(text, &error);
    let whole: &RawValue = serde_json::from_str(text).map_err(malformed)?;
    match kind(whole.get()) {
        Kind::Object => Ok(Vec::from([one(text, whole, None)?])),
        Kind::Array => {
            let parts: Vec<&RawValue> = serde_json::from_str(text).map_err(malformed)?;
            if parts.is_empty() {
                return Err(fail(text, whole.get(), None, None, Fault::form("the array holds no reading")));
            }
            parts.iter().enumerate().map(|(index, part)| one(text, part, Some(index + 1))).collect()
        }
        _ => Err(fail(text, whole.get(), None, None, Fault::form("expected a reading {...} or an array of readings"))),
    }
}

pub(super) fn fail(text: &str, piece: &str, reading: Option<usize>, field: Option<&str>, fault: Fault) -> TextError {
    TextError {
        line: line_of(text, piece),
        reading,
        field: field.map(String::from),
        message: fault.message,
        code: fault.code,
    }
}

/// Names the line of broken JSON and, when the value of a field is what is broken, the field.
pub(super) fn malformed(text: &str, error: &serde_json::Error) -> TextError {
    let before = before(text, error.line(), error.column());
    let field = before.rsplit_once(':').and_then(|(name, value)| {
        let name = name.trim_end().strip_suffix('"')?.rsplit('"').next()?;
        // Anything but the beginning of a bare word means that the value itself was whole.
        value
            .bytes()
            .all(|byte| byte.is_ascii_whitespace() || byte.is_ascii_alphanumeric() || byte == b'-')
            .then_some(name)
    });
    let said = format!("{error}");
    let said = said.split(" at line ").next().unwrap_or("");
    let line = text.lines().nth(error.line().saturating_sub(1)).unwrap_or("");
    let not_a_number = field.is_some() && ["NaN", "Infinity", "nan", "inf"].iter().any(|word| line.contains(word));
    let message = if not_a_number {
        format!("{said}: NaN and infinities are not values; give a finite number or leave the field out")
    } else {
        format!("not valid JSON: {said} (column {})", error.column())
    };
    let code = if not_a_number { code::NOT_FINITE } else { code::MALFORMED_TEXT };
    TextError { line: error.line().max(1), reading: None, field: field.map(String::from), message, code }
}

/// The text up to a line and column, both from 1, the column in bytes.
fn before(text: &str, line: usize, column: usize) -> &str {
    let start: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    text.get(..start.saturating_add(column.saturating_sub(1))).unwrap_or("")
}

fn one(text: &str, raw: &RawValue, reading: Option<usize>) -> Result<LabelledReading, TextError> {
    if kind(raw.get()) != Kind::Object {
        return Err(fail(text, raw.get(), reading, None, Fault::form("expected a reading: an object with fields")));
    }
    let Entries(entries) = serde_json::from_str(raw.get())
        .map_err(|error| fail(text, raw.get(), reading, None, Fault::form(format!("{error}"))))?;
    let at = |entry: &Entry<'_>, fault: Fault| fail(text, entry.value.get(), reading, Some(&entry.name), fault);
    let mut seen: Vec<(Name, &Entry<'_>)> = Vec::new();
    for entry in &entries {
        let name = Name::of(&entry.name).map_err(|fault| at(entry, fault))?;
        if let Some((_, before)) = seen.iter().find(|(known, _)| known.same(name)) {
            let line = line_of(text, before.value.get());
            let message = format!("given twice: already as {} on line {line}; keep one", before.name);
            return Err(at(entry, Fault::form(message)));
        }
        // Not measured is the same as not written.
        if kind(entry.value.get()) != Kind::Null {
            seen.push((name, entry));
        }
    }
    let mut labelled = LabelledReading::default();
    // The ambient pressure first: gauge pressures need it.
    for (name, entry) in &seen {
        if let Name::Numeric(Field::AmbientPressure, _) | Name::Altitude(_) = name {
            let ambient = ambient(*name, entry.value).map_err(|fault| at(entry, fault))?;
            labelled.reading.ambient_pressure = Some(ambient);
        }
    }
    for (name, entry) in &seen {
        take(&mut labelled, *name, entry.value).map_err(|fault| at(entry, fault))?;
        if let Name::Uncertainty = name {
            accuracies(text, &mut labelled.reading, entry, reading)?;
        }
    }
    Ok(labelled)
}

/// What a name in a file stands for.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Name {
    Label,
    Note,
    Demo,
    Altitude(Spelling),
    Uncertainty,
    /// A field whose value is a word.
    Word(&'static str),
    Numeric(Field, Spelling),
}

/// How a numeric field is spelled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Spelling {
    /// With the SI unit in the name: a number.
    Number,
    /// Without: a string with its unit.
    Unit,
    /// A name that is the same both ways: either.
    Either,
}

/// A field's name without its unit.
pub(super) fn base_name(field: Field) -> &'static str {
    let name = field.name();
    ["_m3_s", "_pa", "_kg", "_k", "_w"].iter().find_map(|unit| name.strip_suffix(unit)).unwrap_or(name)
}

impl Name {
    fn of(name: &str) -> Result<Self, Fault> {
        match name {
            "label" => return Ok(Self::Label),
            "note" => return Ok(Self::Note),
            "demo" => return Ok(Self::Demo),
            "altitude" => return Ok(Self::Altitude(Spelling::Unit)),
            "altitude_m" => return Ok(Self::Altitude(Spelling::Number)),
            "uncertainty" => return Ok(Self::Uncertainty),
            _ => {}
        }
        if let Some(word) = WORDS.iter().find(|word| **word == name) {
            return Ok(Self::Word(word));
        }
        numeric(name).map(|(field, spelling)| Self::Numeric(field, spelling)).ok_or_else(|| unknown_field(name, true))
    }

    /// Whether two names give the same thing, in whatever spelling.
    fn same(self, other: Self) -> bool {
        match (self, other) {
            (Self::Numeric(left, _), Self::Numeric(right, _)) => left == right,
            // An altitude stands in for an ambient pressure.
            (Self::Altitude(_), Self::Altitude(_) | Self::Numeric(Field::AmbientPressure, _))
            | (Self::Numeric(Field::AmbientPressure, _), Self::Altitude(_)) => true,
            (left, right) => left == right,
        }
    }
}

pub(super) fn numeric(name: &str) -> Option<(Field, Spelling)> {
    Field::ALL.iter().find_map(|field| match (field.name() == name, base_name(*field) == name) {
        (true, true) => Some((*field, Spelling::Either)),
        (true, false) => Some((*field, Spelling::Number)),
        (false, true) => Some((*field, Spelling::Unit)),
        (false, false) => None,
    })
}

pub(super) fn unknown_field(name: &str, with_words: bool) -> Fault {
    let numeric = Field::ALL.iter().flat_map(|field| [base_name(*field), field.name()]);
    let words = WORDS.iter().chain(BESIDES).copied().filter(|_| with_words);
    let nearest = nearest(name, numeric.chain(words));
    Fault::new(code::UNKNOWN_FIELD, format!("unknown field: the nearest is {nearest}"))
}

fn take(labelled: &mut LabelledReading, name: Name, raw: &RawValue) -> Result<(), Fault> {
    let reading = &mut labelled.reading;
    match name {
        Name::Label => labelled.label = string(raw)?,
        Name::Note => labelled.note = string(raw)?,
        Name::Demo => labelled.demo = boolean(raw)?,
        Name::Word(field) => word(reading, field, &string(raw)?)?,
        // Dealt with before and after.
        Name::Altitude(_) | Name::Uncertainty | Name::Numeric(Field::AmbientPressure, _) => {}
        Name::Numeric(field, spelling) => {
            let si = value(raw, field_quantity(field), spelling, (field.name(), base_name(field)), reading)?;
            labelled.atmosphere_assumed |= si.gauge && reading.ambient_pressure.is_none();
            reading.set(field, si.value).map_err(|error| with_original(raw, error.into()))?;
        }
    }
    Ok(())
}

fn ambient(name: Name, raw: &RawValue) -> Result<Atmosphere, Fault> {
    let nothing = Reading::default();
    match name {
        Name::Altitude(spelling) => {
            let names = ("altitude_m", "altitude");
            Atmosphere::at_altitude_m(value(raw, Quantity::Altitude, spelling, names, &nothing)?.value)
        }
        Name::Numeric(_, spelling) => {
            let names = ("ambient_pressure_pa", "ambient_pressure");
            Atmosphere::from_pascals(value(raw, Quantity::Ambient, spelling, names, &nothing)?.value)
        }
        _ => Ok(Atmosphere::STANDARD),
    }
    .map_err(|error| with_original(raw, error.into()))
}

/// A value out of range is told in SI; beside it stands what was written.
fn with_original(raw: &RawValue, fault: Fault) -> Fault {
    if kind(raw.get()) == Kind::String && fault.code == code::OUT_OF_RANGE {
        Fault::new(fault.code, format!("{} is out of range: {}", raw.get(), fault.message))
    } else {
        fault
    }
}

/// A value in SI. The two names are those with and without the unit.
fn value(
    raw: &RawValue,
    quantity: Quantity,
    spelling: Spelling,
    (number_name, unit_name): (&str, &str),
    reading: &Reading,
) -> Result<Si, Fault> {
    match (kind(raw.get()), spelling) {
        (Kind::Number, Spelling::Number | Spelling::Either) => Ok(Si { value: number(raw)?, gauge: false }),
        (Kind::Number, Spelling::Unit) => Err(Fault::new(
            code::UNKNOWN_UNIT,
            format!("the unit is missing: write a string with its unit, or {number_name} for a number in SI"),
        )),
        (Kind::String, Spelling::Unit | Spelling::Either) => {
            let ambient = reading.ambient_pressure.unwrap_or(Atmosphere::STANDARD);
            to_si(&string(raw)?, quantity, ambient).map_err(|fault| with_original(raw, fault))
        }
        (Kind::String, Spelling::Number) => {
            Err(Fault::form(format!("expected a number in SI: write {unit_name} for a string with its unit")))
        }
        _ => Err(Fault::form("expected a number or a string with its unit")),
    }
}

pub(super) fn field_quantity(field: Field) -> Quantity {
    match field {
        Field::AmbientPressure => Quantity::Ambient,
        Field::SuctionPressure | Field::LiquidPressure | Field::DischargePressure => Quantity::Pressure,
        Field::AirflowOverCoil => Quantity::Airflow,
        Field::NominalCapacity | Field::CompressorPower => Quantity::Power,
        Field::ExpectedCharge | Field::WeighedCharge => Quantity::Mass,
        Field::MinutesSinceChange => Quantity::Minutes,
        Field::TargetSuperheat | Field::TargetSubcooling | Field::TargetApproach => Quantity::TemperatureDifference,
        Field::OutdoorDryBulb
        | Field::CondenserLeavingDryBulb
        | Field::ReturnDryBulb
        | Field::ReturnWetBulb
        | Field::SupplyDryBulb
        | Field::SupplyWetBulb
        | Field::SuctionLineTemperature
        | Field::LiquidLineTemperature
        | Field::MeteringInletTemperature
        | Field::DischargeLineTemperature
        | Field::CoilOutletTemperature
        | Field::CondensingSurfaceTemperature
        | Field::SumpTemperature => Quantity::Temperature,
    }
}

fn word(reading: &mut Reading, field: &str, word: &str) -> Result<(), Fault> {
    match field {
        "refrigerant" => {
            let found = crate::refrigerant::find(word).map_err(|error| quoted(word, error.into()))?;
            reading.refrigerant = Some(found.curves);
        }
        "metering" => reading.metering = Some(choice(word, Metering::from_name(word), Metering::ALL, Metering::name)?),
        "metering_place" => {
            let found = MeteringPlace::from_name(word);
            reading.metering_place = Some(choice(word, found, MeteringPlace::ALL, MeteringPlace::name)?);
        }
        "mode" => reading.mode = Some(choice(word, Mode::from_name(word), Mode::ALL, Mode::name)?),
        "compressor" => {
            let found = Compressor::from_name(word);
            reading.compressor = Some(choice(word, found, Compressor::ALL, Compressor::name)?);
        }
        "operation" => {
            let found = Operation::from_name(word);
            reading.operation = Some(choice(word, found, Operation::ALL, Operation::name)?);
        }
        "refrigerant_condition" => {
            let found = RefrigerantCondition::from_name(word);
            let known = choice(word, found, RefrigerantCondition::ALL, RefrigerantCondition::name)?;
            reading.refrigerant_condition = Some(known);
        }
        _ => reading.stage = Some(choice(word, Stage::from_name(word), Stage::ALL, Stage::name)?),
    }
    Ok(())
}

fn quoted(word: &str, fault: Fault) -> Fault {
    Fault::new(fault.code, format!("\"{word}\": {}", fault.message))
}

fn choice<T: Copy>(
    word: &str,
    found: Result<T, crate::Error>,
    all: &[T],
    name: fn(T) -> &'static str,
) -> Result<T, Fault> {
    found.map_err(|error| {
        let nearest = nearest(word, all.iter().map(|choice| name(*choice)));
        Fault::new(error.code(), format!("\"{word}\": {error}; the nearest is {nearest}"))
    })
}

pub(super) fn number(raw: &RawValue) -> Result<f64, Fault> {
    raw.get().parse().map_err(|_| Fault::form("expected a number"))
}

pub(super) fn string(raw: &RawValue) -> Result<String, Fault> {
    serde_json::from_str(raw.get()).map_err(|_| Fault::form("expected a string"))
}

pub(super) fn boolean(raw: &RawValue) -> Result<bool, Fault> {
    serde_json::from_str(raw.get()).map_err(|_| Fault::form("expected true or false"))
}
