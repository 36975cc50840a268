//! Findings as columns. Words repeat from row to row, so a column of words is a list of the distinct ones and their numbers.

use std::collections::HashMap;

use numpy::PyArray1;
use pyo3::prelude::*;
use satline::charge::NoValidTest;
use satline::diagnosis::{Cause, CauseSet, Finding, PreconditionStatus, Value, ValueBound, ValueName, Values};

/// A column as Python gets it.
#[derive(IntoPyObject)]
pub enum Column<'py> {
    Numbers(Bound<'py, PyArray1<f64>>),
    Truths(Bound<'py, PyArray1<bool>>),
    /// The number of each row's words, and the words.
    Words(Bound<'py, PyArray1<u32>>, Vec<String>),
}

/// What tells one entry of a column of words from another.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
enum Key {
    Word(&'static str),
    Set(u32),
}

/// A row that is no reading says nothing.
const NOTHING: Key = Key::Word("");
const CANNOT_TELL: Key = Key::Word("cannot-tell");

#[derive(Default)]
struct Words {
    numbers: Vec<u32>,
    known: HashMap<Key, u32>,
    words: Vec<String>,
    last: Option<(Key, u32)>,
}

impl Words {
    fn push(&mut self, key: Key, set: impl FnOnce() -> String) {
        let number = match self.last {
            Some((last, number)) if last == key => number,
            _ => *self.known.entry(key).or_insert_with(|| {
                self.words.push(match key {
                    Key::Word(word) => word.to_string(),
                    Key::Set(_) => set(),
                });
                self.words.len() as u32 - 1
            }),
        };
        self.last = Some((key, number));
        self.numbers.push(number);
    }
}

const WORDS: [&str; 15] = [
    "charge",
    "charge_status",
    "reason",
    "conclusion",
    "conclusion_reason",
    "preconditions_not_met",
    "next_check",
    "advice",
    "protocol_action",
    "protocol_reason",
    "protocol_split",
    "superheat_bound",
    "subcooling_bound",
    "amount_bound",
    "cautions",
];

const AMOUNT: [&str; 5] =
    ["amount_share", "amount_share_uncertainty", "amount_lowest_share", "amount_highest_share", "amount_mass_kg"];

/// The findings of some rows.
pub struct Answers {
    words: [Words; WORDS.len()],
    numbers: Vec<Vec<f64>>,
    fits: Vec<bool>,
    faults: Vec<(usize, String)>,
    row: Vec<f64>,
}

impl Answers {
    pub fn with_capacity(rows: usize) -> Self {
        let numbers: Vec<_> = number_names().iter().map(|_| Vec::with_capacity(rows)).collect();
        let row = Vec::with_capacity(numbers.len());
        Self {
            words: std::array::from_fn(|_| Words::default()),
            numbers,
            fits: Vec::with_capacity(rows),
            faults: Vec::new(),
            row,
        }
    }

    pub fn push(&mut self, finding: &Finding) {
        let amount = finding.amount.as_ref();
        let unmet = || finding.preconditions.iter().filter(|one| one.status == PreconditionStatus::NotMet);
        let bound = |bound: Option<ValueBound>| bound.map_or(NOTHING, |bound| Key::Word(bound.name()));
        let keys: [Key; WORDS.len()] = [
            Key::Word(finding.charge.name()),
            Key::Word(finding.charge_status.name()),
            Key::Word(finding.reason.name()),
            finding.conclusion.causes.map_or(CANNOT_TELL, |causes| Key::Set(u32::from(causes.bits()))),
            Key::Word(finding.conclusion.reason.name()),
            Key::Set(unmet().fold(0, |bits, one| bits | 1_u32.wrapping_shl(one.name as u32))),
            Key::Word(finding.next_check.name()),
            Key::Word(finding.advice.name()),
            Key::Word(finding.protocol.action.name()),
            finding.protocol.reason.map_or(NOTHING, |reason: NoValidTest| Key::Word(reason.name())),
            Key::Word(finding.protocol.split.name()),
            bound(finding.values.superheat.map(|value| value.bound)),
            bound(finding.values.subcooling.map(|value| value.bound)),
            bound(amount.map(|amount| amount.bound)),
            Key::Set(finding.cautions.bits()),
        ];
        for ((column, key), name) in self.words.iter_mut().zip(keys).zip(WORDS) {
            column.push(key, || match name {
                "conclusion" => finding.conclusion.causes.map_or(String::new(), causes),
                "cautions" => joined(finding.cautions.iter().map(|caution| caution.name())),
                _ => joined(unmet().map(|one| one.name.name())),
            });
        }
        self.fits.push(finding.fits);
        self.row.clear();
        let weighed = !finding.hypotheses.is_empty();
        let probability = |value: f64| if weighed { value } else { f64::NAN };
        self.row.push(probability(finding.hypotheses.probability(CauseSet::HEALTHY)));
        self.row.extend(Cause::ALL.iter().map(|cause| probability(finding.hypotheses.marginal(*cause))));
        self.row.extend(match amount {
            Some(amount) => [
                amount.share,
                amount.standard_uncertainty,
                amount.lowest,
                amount.highest,
                amount.mass_kg.unwrap_or(f64::NAN),
            ],
            None => [f64::NAN; AMOUNT.len()],
        });
        let known = |values: &Values, name: &ValueName| match values.get(*name) {
            Some(Value { value, standard_uncertainty, .. }) => [value, standard_uncertainty],
            None => [f64::NAN; 2],
        };
        self.row.extend(ValueName::ALL.iter().flat_map(|name| known(&finding.values, name)));
        for (column, cell) in self.numbers.iter_mut().zip(&self.row) {
            column.push(*cell);
        }
    }

    /// A row that is no reading keeps its place.
    pub fn push_fault(&mut self, row: usize, fault: String) {
        for column in &mut self.words {
            column.push(NOTHING, String::new);
        }
        for column in &mut self.numbers {
            column.push(f64::NAN);
        }
        self.fits.push(false);
        self.faults.push((row, fault));
    }

    /// The columns, in the order in which a person reads them.
    #[allow(clippy::type_complexity)] // named nowhere else
    pub fn columns(self, py: Python<'_>) -> PyResult<(Vec<(String, Column<'_>)>, Vec<(usize, String)>)> {
        let words = WORDS.iter().zip(self.words).map(|(name, column)| {
            (name.to_string(), Column::Words(PyArray1::from_vec(py, column.numbers), column.words))
        });
        let numbers = number_names()
            .into_iter()
            .zip(self.numbers)
            .map(|(name, column)| (name, Column::Numbers(PyArray1::from_vec(py, column))));
        let fits = ("fits".to_string(), Column::Truths(PyArray1::from_vec(py, self.fits)));
        Ok((words.chain([fits]).chain(numbers).collect(), self.faults))
    }
}

fn number_names() -> Vec<String> {
    let causes = Cause::ALL.iter().map(|cause| format!("p_{}", cause.name().replace('-', "_")));
    let values = ValueName::ALL.iter().flat_map(|name| [name.name().to_string(), uncertainty_of(name.name())]);
    let healthy = ["p_healthy".to_string()].into_iter();
    healthy.chain(causes).chain(AMOUNT.iter().map(|name| (*name).to_string())).chain(values).collect()
}

/// The name of a value's standard uncertainty: the unit stays last.
fn uncertainty_of(name: &str) -> String {
    let unit = ["_m3_s_w", "_k"].into_iter().find(|unit| name.ends_with(unit)).unwrap_or("");
    let base = name.strip_suffix(unit).unwrap_or(name);
    format!("{base}_uncertainty{unit}")
}

fn causes(causes: CauseSet) -> String {
    if causes.is_empty() { "healthy".to_string() } else { joined(causes.iter().map(|cause| cause.name())) }
}

fn joined(words: impl Iterator<Item = &'static str>) -> String {
    words.collect::<Vec<_>>().join("+")
}
