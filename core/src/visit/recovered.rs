//! Recovery: whether the cylinder has room for what is expected, and whether all of it came out.

use super::account::checked;
use super::account_answers::{RecoveredBalance, RoomVerdict};
use crate::bounds;
use crate::error::Error;
use crate::uncertain::{Uncertain, root_of_squares};

/// By how many standard uncertainties a difference must exceed its tolerance to count.
const COVERAGE: f64 = 2.0;

/// A recovery: before it, and after it where the cylinder was weighed again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Recovery {
    /// What the unit is expected to hold, kg ([`bounds::MASS`]): see [`super::ExpectedCharge::total_kg`].
    pub expected_kg: Uncertain,
    /// The most that the cylinder may hold, kg ([`bounds::MASS`]): the module `safety` finds it from the density of the
    /// liquid; of an unknown mixture, from the lightest liquid that it may be.
    pub cylinder_limit_kg: f64,
    /// What is in the cylinder before, kg: the scale less the tare.
    pub before_kg: Uncertain,
    /// What is in it after, kg.
    pub after_kg: Option<Uncertain>,
    /// How far expected and recovered mass may be apart, as a share of the expected
    /// ([`CHARGE_TOLERANCE`](super::CHARGE_TOLERANCE)).
    pub tolerance: f64,
}

/// What follows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RecoveryFinding {
    /// Room in the cylinder before, kg; negative where it is overfilled already.
    pub room_kg: Uncertain,
    /// Whether what is expected goes in.
    pub room: RoomVerdict,
    /// What does not go in and needs another cylinder, kg.
    pub excess_kg: f64,
    /// What came out, kg.
    pub recovered_kg: Option<Uncertain>,
    /// Recovered less expected, kg.
    pub deviation_kg: Option<Uncertain>,
    /// Room in the cylinder after, kg; negative where it is overfilled.
    pub room_after_kg: Option<f64>,
    /// How they compare.
    pub balance: RecoveredBalance,
}

/// Whether the cylinder has room, and whether all came out.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for masses outside [`bounds::MASS`], a tolerance outside
/// [`bounds::SHARE`], and where the cylinder holds less after than before.
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::{CHARGE_TOLERANCE, RecoveredBalance, Recovery, RoomVerdict, recovery};
/// // Demo: 3.5 kg expected; the cylinder may hold 18.3 kg and has 9.1 kg inside, afterwards 11.9 kg.
/// let found = recovery(&Recovery {
///     expected_kg: Uncertain::new(3.5, 0.04)?,
///     cylinder_limit_kg: 18.3,
///     before_kg: Uncertain::new(9.1, 0.01)?,
///     after_kg: Some(Uncertain::new(11.9, 0.01)?),
///     tolerance: CHARGE_TOLERANCE,
/// })?;
/// assert_eq!((found.room, found.balance), (RoomVerdict::Enough, RecoveredBalance::Short));
/// # Ok::<(), satline::Error>(())
/// ```
pub fn recovery(question: &Recovery) -> Result<RecoveryFinding, Error> {
    let expected = checked(&bounds::MASS, question.expected_kg)?;
    let before = checked(&bounds::MASS, question.before_kg)?;
    let limit = bounds::MASS.check(question.cylinder_limit_kg)?;
    let tolerance = bounds::SHARE.check(question.tolerance)?;
    let room = Uncertain { value: limit - before.value, ..before };
    let spare = room.value - expected.value;
    let doubt = COVERAGE * root_of_squares([room.standard_uncertainty, expected.standard_uncertainty]);
    let verdict = match (room.value <= 0.0, spare > doubt, spare < -doubt) {
        (true, ..) => RoomVerdict::Full,
        (_, true, _) => RoomVerdict::Enough,
        (_, _, true) => RoomVerdict::TooLittle,
        _ => RoomVerdict::Barely,
    };
    let nothing = RecoveryFinding {
        room_kg: room,
        room: verdict,
        excess_kg: (-spare).max(0.0),
        recovered_kg: None,
        deviation_kg: None,
        room_after_kg: None,
        balance: RecoveredBalance::NotYet,
    };
    let Some(after) = question.after_kg else { return Ok(nothing) };
    let after = checked(&bounds::MASS, after)?;
    let advice = "a cylinder does not lose by recovery: check which weighing is which, and the tare";
    let bound = bounds::MASS;
    bounds::within("mass in the cylinder after", bound.unit, after.value, before.value, bound.upper, advice)?;
    let recovered = Uncertain {
        value: after.value - before.value,
        standard_uncertainty: root_of_squares([after.standard_uncertainty, before.standard_uncertainty]),
    };
    let deviation = Uncertain {
        value: recovered.value - expected.value,
        standard_uncertainty: root_of_squares([recovered.standard_uncertainty, expected.standard_uncertainty]),
    };
    let beyond = deviation.value.abs() - tolerance * expected.value;
    let doubt = COVERAGE * deviation.standard_uncertainty;
    let balance = match (beyond > doubt, beyond < -doubt, deviation.value < 0.0) {
        (true, _, true) => RecoveredBalance::Short,
        (true, _, false) => RecoveredBalance::More,
        (_, true, _) => RecoveredBalance::All,
        _ => RecoveredBalance::TooUncertain,
    };
    Ok(RecoveryFinding {
        recovered_kg: Some(recovered),
        deviation_kg: Some(deviation),
        room_after_kg: Some(limit - after.value),
        balance,
        ..nothing
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn question(before: f64, after: Option<f64>) -> Recovery {
        let weighed = |mass| Uncertain { value: mass, standard_uncertainty: 0.01 };
        Recovery {
            expected_kg: Uncertain { value: 3.5, standard_uncertainty: 0.05 },
            cylinder_limit_kg: 18.0,
            before_kg: weighed(before),
            after_kg: after.map(weighed),
            tolerance: 0.05,
        }
    }

    #[test]
    fn room_before_and_balance_after() {
        let room = |before| recovery(&question(before, None)).unwrap();
        assert_eq!(room(9.0).room, RoomVerdict::Enough);
        assert_eq!(room(16.0).room, RoomVerdict::TooLittle);
        assert!((room(16.0).excess_kg - 1.5).abs() < 1e-12);
        assert_eq!(room(14.5).room, RoomVerdict::Barely);
        assert_eq!(room(18.5).room, RoomVerdict::Full);
        let balance = |after| recovery(&question(9.0, Some(after))).unwrap().balance;
        assert_eq!(balance(12.5), RecoveredBalance::All);
        assert_eq!(balance(12.0), RecoveredBalance::Short);
        assert_eq!(balance(13.0), RecoveredBalance::More);
        assert_eq!(balance(12.325), RecoveredBalance::TooUncertain);
        let lost = recovery(&question(9.0, Some(8.0)));
        assert!(matches!(lost, Err(Error::OutOfRange { quantity: "mass in the cylinder after", .. })));
    }
}
