//! A finding as JSON: the names of the vocabulary, SI with the unit in the name, and nothing that is not known.

mod evidence;

use super::read::LabelledReading;
use crate::diagnosis::{Cautions, Finding, Value, ValueName, Values};
use alloc::string::String;
use alloc::vec::Vec;
use evidence::{WrittenAmount, WrittenCauses, WrittenFeatures, WrittenHypotheses, WrittenPreconditions};
use serde::ser::{Serialize, SerializeMap, Serializer};

/// The first entry of every finding: what it is, and in which version. A later version may add names; none of these changes
/// its meaning within version 1.
pub const FINDING_FORMAT: &str = "satline-finding/1";
/// What stands for the conclusion when the finding cannot tell.
pub(super) const CANNOT_TELL: &str = "cannot-tell";

/// A finding as a JSON object. What is not known is left out rather than `null`.
///
/// ```
/// use satline::diagnosis::diagnose;
/// use satline::text::finding_to_json;
/// let json = finding_to_json(&diagnose(&satline::Reading::default()));
/// assert!(json.contains("\"charge\": \"not-judged\""));
/// ```
#[must_use]
pub fn finding_to_json(finding: &Finding) -> String {
    pretty(&Written { labelled: None, finding })
}

/// Findings as a JSON array, each with the label, note and demo mark of its reading.
#[must_use]
pub fn findings_to_json<'a>(findings: impl IntoIterator<Item = (&'a LabelledReading, &'a Finding)>) -> String {
    let written = findings.into_iter().map(|(labelled, finding)| Written { labelled: Some(labelled), finding });
    pretty(&written.collect::<Vec<_>>())
}

pub(super) fn pretty(value: &impl Serialize) -> String {
    // Writing to memory with string keys and finite numbers has no way to fail.
    serde_json::to_string_pretty(value).unwrap_or_default()
}

struct Written<'a> {
    labelled: Option<&'a LabelledReading>,
    finding: &'a Finding,
}

impl Serialize for Written<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let finding = self.finding;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("format", FINDING_FORMAT)?;
        if let Some(labelled) = self.labelled {
            for (name, text) in [("label", &labelled.label), ("note", &labelled.note)] {
                if !text.is_empty() {
                    map.serialize_entry(name, text)?;
                }
            }
            if labelled.demo {
                map.serialize_entry("demo", &true)?;
            }
            if labelled.atmosphere_assumed {
                map.serialize_entry("atmosphere_assumed", &true)?;
            }
        }
        map.serialize_entry("charge", finding.charge.name())?;
        map.serialize_entry("charge_status", finding.charge_status.name())?;
        map.serialize_entry("reason", finding.reason.name())?;
        map.serialize_entry("protocol", &WrittenProtocol(finding))?;
        map.serialize_entry("values", &WrittenValues(&finding.values))?;
        map.serialize_entry(
            "missing",
            &finding
                .missing
                .iter()
                .map(|one| WrittenMissing(one.field.name(), one.needed_for.name()))
                .collect::<Vec<_>>(),
        )?;
        map.serialize_entry("next_check", finding.next_check.name())?;
        map.serialize_entry("advice", finding.advice.name())?;
        map.serialize_entry("cautions", &WrittenCautions(&finding.cautions))?;
        map.serialize_entry("preconditions", &WrittenPreconditions(&finding.preconditions))?;
        map.serialize_entry("features", &WrittenFeatures(&finding.features))?;
        map.serialize_entry("hypotheses", &WrittenHypotheses(&finding.hypotheses))?;
        match finding.conclusion.causes {
            Some(causes) => map.serialize_entry("conclusion", &WrittenCauses(causes))?,
            None => map.serialize_entry("conclusion", CANNOT_TELL)?,
        }
        map.serialize_entry("conclusion_reason", finding.conclusion.reason.name())?;
        map.serialize_entry("fits", &finding.fits)?;
        if let Some(amount) = &finding.amount {
            map.serialize_entry("amount", &WrittenAmount(amount))?;
        }
        map.end()
    }
}

struct WrittenProtocol<'a>(&'a Finding);

impl Serialize for WrittenProtocol<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let protocol = &self.0.protocol;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("action", protocol.action.name())?;
        if let Some(reason) = protocol.reason {
            map.serialize_entry("reason", reason.name())?;
        }
        map.serialize_entry("edition", protocol.edition.name())?;
        map.serialize_entry("role", protocol.role.name())?;
        map.serialize_entry("split", protocol.split.name())?;
        map.end()
    }
}

struct WrittenValues<'a>(&'a Values);

impl Serialize for WrittenValues<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let known = ValueName::ALL.iter().filter_map(|name| Some((name.name(), WrittenValue(self.0.get(*name)?))));
        serializer.collect_map(known)
    }
}

pub(super) struct WrittenValue(pub(super) Value);

impl Serialize for WrittenValue {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let value = self.0;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("value", &value.value)?;
        map.serialize_entry("standard_uncertainty", &value.standard_uncertainty)?;
        for (name, known) in [
            ("target", value.target),
            ("deviation", value.deviation),
            ("deviation_uncertainty", value.deviation_uncertainty),
        ] {
            if let Some(known) = known {
                map.serialize_entry(name, &known)?;
            }
        }
        map.serialize_entry("bound", value.bound.name())?;
        map.end()
    }
}

/// A field that was not given, and what it is needed for.
pub(super) struct WrittenMissing(pub(super) &'static str, pub(super) &'static str);

impl Serialize for WrittenMissing {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(2))?;
        map.serialize_entry("field", self.0)?;
        map.serialize_entry("needed_for", self.1)?;
        map.end()
    }
}

struct WrittenCautions<'a>(&'a Cautions);

impl Serialize for WrittenCautions<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.iter().map(|caution| caution.name()))
    }
}
