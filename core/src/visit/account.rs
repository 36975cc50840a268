//! The charge by the scale: what a unit should hold, what it holds by what went in and came out, and how fast it leaks by
//! what had to be added.

use super::account_answers::ChargeBalance;
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::uncertain::{Uncertain, root_of_squares};

/// By how many standard uncertainties a difference must exceed its tolerance to count.
const COVERAGE: f64 = 2.0;
/// How far the mass inside may be from the expected mass, as a share of it, unless said otherwise: common practice.
pub const CHARGE_TOLERANCE: f64 = 0.05;
/// Standard uncertainty of a charging scale that all its weighings share, as a share of the mass, unless said otherwise:
/// common practice, a limit of error of 0.5 %.
pub const SCALE_SHARE: f64 = 0.005 / 1.732_050_807_568_877_2;
const DAYS_A_YEAR: f64 = 365.0;

/// What a unit should hold: its nameplate, and what the installation needs more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ExpectedCharge {
    /// Charge of the nameplate, kg ([`bounds::MASS`]); it covers the length of line set that the maker states.
    pub nameplate_kg: Uncertain,
    /// Mass that the line set holds beyond that length, kg; negative where it is shorter.
    /// The module `lineset` computes it.
    pub line_set_kg: Uncertain,
    /// Driers and accessories, kg.
    pub accessories_kg: Uncertain,
}

impl ExpectedCharge {
    /// The sum, kg.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] where nameplate, accessories or the sum are outside
    /// [`bounds::MASS`], or the line set outside [`bounds::MASS_CHANGE`].
    pub fn total_kg(&self) -> Result<Uncertain, Error> {
        let parts = [
            checked(&bounds::MASS, self.nameplate_kg)?,
            checked(&bounds::MASS_CHANGE, self.line_set_kg)?,
            checked(&bounds::MASS, self.accessories_kg)?,
        ];
        checked(&bounds::MASS, sum(&parts))
    }
}

/// Refrigerant that was weighed in or out.
#[repr(C)] // so that lists of it can be taken from C as they are
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighing {
    /// kg: above zero what was added, below zero what was recovered.
    pub change_kg: f64,
    /// Standard uncertainty of this weighing alone, kg: the scale's step, hoses.
    pub standard_uncertainty_kg: f64,
}

/// What was inside before the weighings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Start {
    /// Not known.
    Unknown,
    /// Nothing: evacuated.
    Evacuated,
    /// A known mass, kg.
    Holds(Uncertain),
}

/// What the scale says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChargeAccount {
    /// What should be inside, kg.
    pub expected_kg: Uncertain,
    /// What is inside, kg; none where the start is not known.
    pub inside_kg: Option<Uncertain>,
    /// Inside less expected, kg.
    pub deviation_kg: Option<Uncertain>,
    /// The same as a share of the expected mass.
    pub deviation: Option<Uncertain>,
    /// How they compare.
    pub balance: ChargeBalance,
}

/// Compares what a unit holds by the scale with what it should hold.
///
/// `scale_share` is the standard uncertainty that all weighings share, as a share of the mass ([`SCALE_SHARE`]);
/// `tolerance` how far the two may be apart, as a share of the expected mass ([`CHARGE_TOLERANCE`]).
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for masses outside [`bounds::MASS`] and [`bounds::MASS_CHANGE`], shares
/// outside [`bounds::SHARE`], and where more was recovered than was ever inside.
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::{ChargeBalance, ExpectedCharge, Start, Weighing, charge_account, CHARGE_TOLERANCE, SCALE_SHARE};
/// // Demo: nameplate 2.72 kg, 0.73 kg for the line set; evacuated, then 3.10 kg weighed in.
/// let expected = ExpectedCharge {
///     nameplate_kg: Uncertain::new(2.72, 0.02)?,
///     line_set_kg: Uncertain::new(0.73, 0.03)?,
///     accessories_kg: Uncertain::exact(0.0),
/// };
/// let weighed = [Weighing { change_kg: 3.10, standard_uncertainty_kg: 0.01 }];
/// let account = charge_account(&expected, Start::Evacuated, &weighed, SCALE_SHARE, CHARGE_TOLERANCE)?;
/// assert_eq!(account.balance, ChargeBalance::Short);
/// assert!((account.deviation_kg.unwrap().value + 0.35).abs() < 1e-9);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn charge_account(
    expected: &ExpectedCharge,
    start: Start,
    weighings: &[Weighing],
    scale_share: f64,
    tolerance: f64,
) -> Result<ChargeAccount, Error> {
    let expected = expected.total_kg()?;
    let (scale, tolerance) = (bounds::SHARE.check(scale_share)?, bounds::SHARE.check(tolerance)?);
    let (change, own) = weighed(weighings)?;
    let start = match start {
        Start::Unknown => None,
        Start::Evacuated => Some(Uncertain::exact(0.0)),
        Start::Holds(mass) => Some(checked(&bounds::MASS, mass)?),
    };
    let Some(start) = start else {
        return Ok(ChargeAccount {
            expected_kg: expected,
            inside_kg: None,
            deviation_kg: None,
            deviation: None,
            balance: ChargeBalance::Unknown,
        });
    };
    // The scale's own error goes with all that it weighed.
    let inside = Uncertain {
        value: start.value + change,
        standard_uncertainty: root_of_squares([start.standard_uncertainty, own, scale * change]),
    };
    let advice = "more was recovered than was inside: check the start and the signs of the weighings";
    let (lowest, highest) = (-COVERAGE * inside.standard_uncertainty, bounds::MASS.upper);
    bounds::within("mass inside by the scale", "kg", inside.value, lowest, highest, advice)?;
    let deviation = Uncertain {
        value: inside.value - expected.value,
        standard_uncertainty: root_of_squares([inside.standard_uncertainty, expected.standard_uncertainty]),
    };
    let beyond = deviation.value.abs() - tolerance * expected.value;
    let within = COVERAGE * deviation.standard_uncertainty;
    let balance = match (beyond > within, beyond < -within, deviation.value < 0.0) {
        (true, _, true) => ChargeBalance::Short,
        (true, _, false) => ChargeBalance::Over,
        (_, true, _) => ChargeBalance::Right,
        _ => ChargeBalance::TooUncertain,
    };
    let share = (expected.value > 0.0).then(|| Uncertain {
        value: deviation.value / expected.value,
        standard_uncertainty: root_of_squares([
            inside.standard_uncertainty / expected.value,
            inside.value * expected.standard_uncertainty / (expected.value * expected.value),
        ]),
    });
    Ok(ChargeAccount {
        expected_kg: expected,
        inside_kg: Some(inside),
        deviation_kg: Some(deviation),
        deviation: share,
        balance,
    })
}

/// An addition in a unit's log.
#[repr(C)] // so that lists of it can be taken from C as they are
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Addition {
    /// Days since any day: only differences count.
    pub day: f64,
    /// What had to be added to make the charge right, kg.
    pub mass_kg: Uncertain,
}

/// How fast a unit leaks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeakRate {
    /// From the first to the last addition, days.
    pub days: f64,
    /// What was added after the first, which only made the charge right, kg.
    pub lost_kg: Uncertain,
    /// kg a year.
    pub kg_a_year: Uncertain,
    /// As a share of the full charge a year.
    pub share_a_year: Uncertain,
    /// The last addition alone over the days since the one before, at most a year of them, as a share of the full charge
    /// a year: the annualizing method of 40 CFR 82.152 (from memory: read the rule).
    pub last_share_a_year: f64,
}

/// How fast a unit leaks, by what had to be added from time to time. Each addition is taken to have made the charge right;
/// the first begins the account.
///
/// # Errors
/// [`Error::NotAvailable`] with fewer than two additions. [`Error::OutOfRange`] for a day before the one before it, or
/// masses outside [`bounds::MASS`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::{Addition, leak_rate};
/// // Demo: 0.40 kg after 200 days, 0.35 kg after 165 more, of a charge of 3.45 kg.
/// let log = [(0.0, 0.5), (200.0, 0.40), (365.0, 0.35)].map(|(day, mass)| Addition { day, mass_kg: Uncertain::exact(mass) });
/// let rate = leak_rate(Uncertain::exact(3.45), &log)?;
/// assert!((rate.kg_a_year.value - 0.75).abs() < 1e-12 && (rate.share_a_year.value - 0.2174).abs() < 1e-4);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn leak_rate(full_charge_kg: Uncertain, additions: &[Addition]) -> Result<LeakRate, Error> {
    let full = checked(&bounds::FULL_CHARGE, full_charge_kg)?;
    let ([first, ..], [.., before, last]) = (additions, additions) else {
        return Err(Error::NotAvailable {
            quantity: "leak rate",
            reason: "one addition says nothing of how fast it leaks: give the one that made the charge right, and a later one",
        });
    };
    let advice = "give additions in the order of time, at least an hour apart";
    let mut squares = 0.0;
    let mut lost = 0.0;
    for (earlier, later) in additions.iter().zip(additions.iter().skip(1)) {
        let lowest = bounds::DAY.check(earlier.day)? + 1.0 / 24.0;
        bounds::within("day of an addition", "days", later.day, lowest, bounds::DAY.upper, advice)?;
        let mass = checked(&bounds::MASS, later.mass_kg)?;
        lost += mass.value;
        squares += mass.standard_uncertainty * mass.standard_uncertainty;
    }
    checked(&bounds::MASS, first.mass_kg)?;
    let lost_kg = Uncertain { value: lost, standard_uncertainty: math::sqrt(squares) };
    let days = last.day - first.day;
    let yearly = DAYS_A_YEAR / days;
    let kg_a_year = Uncertain { value: yearly * lost, standard_uncertainty: yearly * lost_kg.standard_uncertainty };
    let share = kg_a_year.value / full.value;
    Ok(LeakRate {
        days,
        lost_kg,
        kg_a_year,
        share_a_year: Uncertain {
            value: share,
            standard_uncertainty: root_of_squares([
                kg_a_year.standard_uncertainty / full.value,
                share * full.standard_uncertainty / full.value,
            ]),
        },
        last_share_a_year: last.mass_kg.value / full.value * DAYS_A_YEAR / (last.day - before.day).min(DAYS_A_YEAR),
    })
}

/// The sum of the weighings, and the standard uncertainty of what is each one's own.
fn weighed(weighings: &[Weighing]) -> Result<(f64, f64), Error> {
    let (mut change, mut squares) = (0.0, 0.0);
    for weighing in weighings {
        let one = Uncertain { value: weighing.change_kg, standard_uncertainty: weighing.standard_uncertainty_kg };
        let one = checked(&bounds::MASS_CHANGE, one)?;
        change += one.value;
        squares += one.standard_uncertainty * one.standard_uncertainty;
    }
    Ok((change, math::sqrt(squares)))
}

/// A mass with its uncertainty, refused outside a bound.
pub(super) fn checked(bound: &bounds::Bound, value: Uncertain) -> Result<Uncertain, Error> {
    bounds::MASS_UNCERTAINTY.check(value.standard_uncertainty)?;
    Ok(Uncertain { value: bound.check(value.value)?, ..value })
}

fn sum(parts: &[Uncertain]) -> Uncertain {
    let squares: f64 = parts.iter().map(|part| part.standard_uncertainty * part.standard_uncertainty).sum();
    Uncertain { value: parts.iter().map(|part| part.value).sum(), standard_uncertainty: math::sqrt(squares) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn expected() -> ExpectedCharge {
        ExpectedCharge {
            nameplate_kg: Uncertain::new(2.72, 0.02).unwrap(),
            line_set_kg: Uncertain::new(0.73, 0.03).unwrap(),
            accessories_kg: Uncertain::new(0.05, 0.01).unwrap(),
        }
    }

    fn account(change: f64) -> ChargeAccount {
        let weighed = [Weighing { change_kg: change, standard_uncertainty_kg: 0.01 }];
        charge_account(&expected(), Start::Evacuated, &weighed, SCALE_SHARE, CHARGE_TOLERANCE).unwrap()
    }

    #[test]
    fn masses_add_and_uncertainties_add_as_squares() {
        let total = expected().total_kg().unwrap();
        assert!((total.value - 3.50).abs() < 1e-12);
        // By hand: √(0.02² + 0.03² + 0.01²).
        assert!((total.standard_uncertainty - 0.037_416_6).abs() < 1e-6);
        assert_eq!(account(3.50).balance, ChargeBalance::Right);
        assert_eq!(account(3.10).balance, ChargeBalance::Short);
        assert_eq!(account(3.90).balance, ChargeBalance::Over);
        // Five per cent off is neither right nor wrong for certain.
        assert_eq!(account(3.325).balance, ChargeBalance::TooUncertain);
    }

    #[test]
    fn what_was_recovered_counts_against_what_was_added() {
        let log = |changes: [f64; 3]| changes.map(|change_kg| Weighing { change_kg, standard_uncertainty_kg: 0.0 });
        let start = Start::Holds(Uncertain::new(3.0, 0.1).unwrap());
        let found = charge_account(&expected(), start, &log([0.4, -0.2, 0.3]), SCALE_SHARE, CHARGE_TOLERANCE).unwrap();
        assert!((found.inside_kg.unwrap().value - 3.5).abs() < 1e-12);
        let refused = charge_account(&expected(), start, &log([-2.0, -2.0, 0.0]), SCALE_SHARE, CHARGE_TOLERANCE);
        assert!(matches!(refused, Err(Error::OutOfRange { quantity: "mass inside by the scale", .. })));
        let unknown = charge_account(&expected(), Start::Unknown, &log([0.1, 0.0, 0.0]), SCALE_SHARE, CHARGE_TOLERANCE);
        assert_eq!(unknown.unwrap().balance, ChargeBalance::Unknown);
    }

    #[test]
    fn a_scale_that_is_off_is_off_in_every_weighing() {
        let one = |change_kg| Weighing { change_kg, standard_uncertainty_kg: 0.0 };
        let of = |weighed: &[Weighing]| {
            charge_account(&expected(), Start::Evacuated, weighed, 0.01, CHARGE_TOLERANCE).unwrap().inside_kg.unwrap()
        };
        // Ten weighings by one scale are no better known than a single one of the same mass.
        assert!((of(&[one(0.3); 10]).standard_uncertainty - of(&[one(3.0)]).standard_uncertainty).abs() < 1e-12);
    }

    #[test]
    fn leaks() {
        let addition = |day, mass| Addition { day, mass_kg: Uncertain::new(mass, 0.01).unwrap() };
        let full = Uncertain::new(3.0, 0.05).unwrap();
        let rate = leak_rate(full, &[addition(10.0, 1.0), addition(83.0, 0.3)]).unwrap();
        // By hand: 0.3 kg in 73 days is 1.5 kg a year, half the charge.
        assert!((rate.kg_a_year.value - 1.5).abs() < 1e-9 && (rate.share_a_year.value - 0.5).abs() < 1e-9);
        assert!((rate.last_share_a_year - 0.5).abs() < 1e-9);
        // Two years since the last addition: the rule divides by one year at most.
        let slow = leak_rate(full, &[addition(0.0, 1.0), addition(730.0, 0.3)]).unwrap();
        assert!((slow.share_a_year.value - 0.05).abs() < 1e-9 && (slow.last_share_a_year - 0.1).abs() < 1e-9);
        assert!(matches!(leak_rate(full, &[addition(0.0, 1.0)]), Err(Error::NotAvailable { .. })));
        let backwards = leak_rate(full, &[addition(9.0, 1.0), addition(2.0, 0.3)]);
        assert!(matches!(backwards, Err(Error::OutOfRange { quantity: "day of an addition", .. })));
        assert!(leak_rate(Uncertain::exact(0.0), &[addition(0.0, 1.0), addition(2.0, 0.3)]).is_err());
    }
}
