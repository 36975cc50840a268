//! A rival: the protocol applied to the letter.

use super::judge::{Call, Judge};
use super::row::Row;
use satline::charge::{Action, Protocol, SplitCheck};
use satline::diagnosis::{Cause, CauseSet};

/// Airflow by the temperature split first, then add, remove or pass.
#[derive(Debug, Clone, Copy, Default)]
pub struct ByProtocol;

impl Judge for ByProtocol {
    fn name(&self) -> &'static str {
        "protocol"
    }

    fn judge(&self, row: &Row, _: bool) -> Call {
        let verdict = Protocol::default().verdict(&row.reading);
        if verdict.split == SplitCheck::Above {
            return Call::standing(CauseSet::one(Cause::LowIndoorAirflow));
        }
        match verdict.action {
            Action::Add => Call::standing(CauseSet::one(Cause::Undercharge)),
            Action::Remove => Call::standing(CauseSet::one(Cause::Overcharge)),
            Action::Pass => Call::standing(CauseSet::HEALTHY),
            _ => Call::default(),
        }
    }
}
