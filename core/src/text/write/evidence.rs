//! The weighing of a finding as JSON: preconditions, features, hypotheses, the amount.

use crate::diagnosis::{
    CauseSet, ChargeAmount, Feature, Features, Hypotheses, Hypothesis, Precondition, Preconditions,
};
use serde::ser::{Serialize, SerializeMap, Serializer};

pub(super) struct WrittenPreconditions<'a>(pub &'a Preconditions);

impl Serialize for WrittenPreconditions<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        struct One(Precondition);
        impl Serialize for One {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                let mut map = serializer.serialize_map(None)?;
                map.serialize_entry("name", self.0.name.name())?;
                map.serialize_entry("status", self.0.status.name())?;
                if let Some(reason) = self.0.reason {
                    map.serialize_entry("reason", reason.name())?;
                }
                map.end()
            }
        }
        serializer.collect_seq(self.0.iter().map(One))
    }
}

pub(super) struct WrittenFeatures<'a>(pub &'a Features);

impl Serialize for WrittenFeatures<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        struct One(Feature);
        impl Serialize for One {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                let mut map = serializer.serialize_map(Some(6))?;
                map.serialize_entry("value", &self.0.value)?;
                map.serialize_entry("standard_uncertainty", &self.0.standard_uncertainty)?;
                map.serialize_entry("expected", &self.0.expected)?;
                map.serialize_entry("expected_uncertainty", &self.0.expected_uncertainty)?;
                map.serialize_entry("deviation", &self.0.deviation())?;
                map.serialize_entry("source", self.0.source.name())?;
                map.end()
            }
        }
        serializer.collect_map(self.0.iter().map(|(name, feature)| (name.name(), One(feature))))
    }
}

pub(super) struct WrittenHypotheses<'a>(pub &'a Hypotheses);

impl Serialize for WrittenHypotheses<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        struct One(Hypothesis);
        impl Serialize for One {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                let mut map = serializer.serialize_map(Some(2))?;
                map.serialize_entry("causes", &WrittenCauses(self.0.causes))?;
                map.serialize_entry("probability", &self.0.probability)?;
                map.end()
            }
        }
        serializer.collect_seq(self.0.iter().map(One))
    }
}

/// A set of causes as an array of their names; empty for a healthy unit.
pub(super) struct WrittenCauses(pub CauseSet);

impl Serialize for WrittenCauses {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.0.iter().map(crate::diagnosis::Cause::name))
    }
}

pub(super) struct WrittenAmount<'a>(pub &'a ChargeAmount);

impl Serialize for WrittenAmount<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let amount = self.0;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("share", &amount.share)?;
        map.serialize_entry("standard_uncertainty", &amount.standard_uncertainty)?;
        map.serialize_entry("lowest", &amount.lowest)?;
        map.serialize_entry("highest", &amount.highest)?;
        if let Some(mass) = amount.mass_kg {
            map.serialize_entry("mass_kg", &mass)?;
        }
        map.serialize_entry("bound", amount.bound.name())?;
        map.end()
    }
}
