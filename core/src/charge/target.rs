//! The protocol's targets for superheat and temperature split.

use super::answers::answers;
use super::grid::{Gap, Sloped};
use super::split_grid::SPLIT;
use super::superheat_grid::SUPERHEAT;
use crate::quantity::{AirTemperature, KELVIN_PER_FAHRENHEIT, TemperatureDifference};

answers! {
    /// Why a protocol has no valid test.
    NoValidTest {
        /// Outdoor air below 55 °F.
        OutdoorTooCold = 1 "outdoor-too-cold" "Outdoor air below 55 °F: weigh the charge in.";
        /// Outdoor air above the table's last row, 115 °F.
        OutdoorTooHot = 2 "outdoor-too-hot" "Outdoor air above 115 °F, the last row of the table.";
        /// Return wet bulb below the table's first column, 50 °F.
        WetBulbTooLow = 3 "wet-bulb-too-low"
            "Return wet bulb below 50 °F, the first column of the table: the return air is too dry or too cold.";
        /// Return wet bulb above the table's last column, 76 °F.
        WetBulbTooHigh = 4 "wet-bulb-too-high"
            "Return wet bulb above 76 °F, the last column of the table: let the building cool down first.";
        /// The target would be below 5 °F.
        TargetBelowFive = 5 "target-below-5-f"
            "The target superheat would be below 5 °F: too little to tell a safe charge from liquid at the compressor.";
        /// Return dry bulb below 70 °F.
        ReturnTooCold = 6 "return-too-cold" "Return dry bulb below 70 °F: warm the building up first.";
        /// Return dry bulb above the split table's last row, 84 °F.
        ReturnTooWarm = 7 "return-too-warm"
            "Return dry bulb above 84 °F, the last row of the split table: let the building cool down first.";
        /// Return air so dry that the split table is blank.
        ReturnTooDry = 8 "return-too-dry" "The split table is blank for return air this dry.";
        /// Wet bulb above dry bulb.
        WetBulbAboveDryBulb = 9 "wet-bulb-above-dry-bulb"
            "The return wet bulb is above the return dry bulb, which cannot be: wet the wick, check both probes.";
        /// The unit has run less than fifteen minutes since the last change.
        NotSettled = 10 "not-settled" "Less than fifteen minutes since start or the last change.";
        /// A measurement that the protocol records is missing.
        MeasurementMissing = 11 "measurement-missing" "A measurement that the protocol needs is missing.";
        /// A valve is judged against the maker's subcooling, which is not given.
        MakerTargetMissing = 12 "maker-target-missing" "The maker's target subcooling is not given: read it off the label.";
        /// The protocol tests cooling only.
        HeatingMode = 13 "heating-mode" "The protocol tests charge in cooling only.";
        /// The compressor is not at full capacity or in its maker's charging mode.
        NotAtFullCapacity = 14 "not-at-full-capacity"
            "The compressor is not held at full capacity in its maker's charging mode.";
        /// The metering device is in the outdoor unit.
        MeteringOutdoors = 15 "metering-outdoors"
            "The metering device is in the outdoor unit: the small line shows no subcooling.";
        /// A valve that does not hold its superheat.
        ValveOutOfControl = 16 "valve-out-of-control"
            "The superheat is outside the range a valve must hold, so the subcooling test does not count.";
        /// A reading that contradicts itself, or a pressure outside the refrigerant's range.
        ReadingContradicts = 17 "reading-contradicts" "The reading contradicts itself or does not fit the refrigerant.";
    }
}

impl From<Gap> for NoValidTest {
    fn from(gap: Gap) -> Self {
        // The names of the superheat table; the split table maps its own below.
        match gap {
            Gap::RowBelow => Self::OutdoorTooCold,
            Gap::RowAbove => Self::OutdoorTooHot,
            Gap::ColumnBelow => Self::WetBulbTooLow,
            Gap::ColumnAbove => Self::WetBulbTooHigh,
            Gap::Blank => Self::TargetBelowFive,
        }
    }
}

/// What a protocol asks for at given air temperatures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Target {
    /// The target.
    At(TemperatureDifference),
    /// There is no valid test, and so no target.
    NoValidTest(NoValidTest),
}

impl Target {
    /// The target, if there is one.
    #[must_use]
    pub const fn difference(self) -> Option<TemperatureDifference> {
        match self {
            Self::At(difference) => Some(difference),
            Self::NoValidTest(_) => None,
        }
    }
}

/// A target in kelvin with its slopes, in kelvin per kelvin, for the propagation of uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct SlopedTarget {
    pub kelvin: f64,
    /// With the dry bulb: outdoor for superheat, return for the split.
    pub by_dry_bulb: f64,
    /// With the return wet bulb.
    pub by_wet_bulb: f64,
}

impl From<Sloped> for SlopedTarget {
    fn from(sloped: Sloped) -> Self {
        Self { kelvin: sloped.value * KELVIN_PER_FAHRENHEIT, by_dry_bulb: sloped.by_row, by_wet_bulb: sloped.by_column }
    }
}

/// Target superheat of a fixed-orifice unit by the table of California Title 24, Residential Appendix RA3.2 (2008 and
/// 2013 editions; transcribed from memory), for a return wet bulb of 50 to 76 °F and an outdoor dry bulb of 55 to
/// 115 °F, interpolated between its cells.
///
/// A regional protocol: the maker's chart for the unit, where there is one, comes first. Where any cell that would
/// carry weight is blank (the target would be below 5 °F), or the air is outside the table, there is no valid test and
/// no number.
///
/// ```
/// use satline::charge::{NoValidTest, Target, target_superheat};
/// use satline::quantity::AirTemperature;
/// let air = AirTemperature::from_fahrenheit;
/// let target = target_superheat(air(65.0)?, air(95.0)?).difference().unwrap();
/// assert!((target.fahrenheit() - 8.1).abs() < 1e-9);
/// assert_eq!(target_superheat(air(60.0)?, air(95.0)?), Target::NoValidTest(NoValidTest::TargetBelowFive));
/// # Ok::<(), satline::Error>(())
/// ```
#[must_use]
pub fn target_superheat(return_wet_bulb: AirTemperature, outdoor_dry_bulb: AirTemperature) -> Target {
    plain(sloped_superheat(return_wet_bulb, outdoor_dry_bulb))
}

/// Target temperature split by the table of California Title 24, Residential Appendix RA3.2 (2008 and 2013 editions;
/// transcribed from memory; withdrawn as an airflow check in a later edition, also from memory), for a return dry bulb
/// of 70 to 84 °F and a return wet bulb of 50 to 76 °F, interpolated between its cells.
///
/// A wet bulb above the dry bulb is a contradiction and has no valid test.
///
/// ```
/// use satline::charge::target_split;
/// use satline::quantity::AirTemperature;
/// let air = AirTemperature::from_fahrenheit;
/// let target = target_split(air(78.0)?, air(65.0)?).difference().unwrap();
/// assert!((target.fahrenheit() - 18.8).abs() < 1e-9);
/// # Ok::<(), satline::Error>(())
/// ```
#[must_use]
pub fn target_split(return_dry_bulb: AirTemperature, return_wet_bulb: AirTemperature) -> Target {
    plain(sloped_split(return_dry_bulb, return_wet_bulb))
}

fn plain(target: Result<SlopedTarget, NoValidTest>) -> Target {
    match target.map(|target| TemperatureDifference::from_kelvin(target.kelvin)) {
        Ok(Ok(difference)) => Target::At(difference),
        Ok(Err(_)) => Target::NoValidTest(NoValidTest::ReadingContradicts),
        Err(reason) => Target::NoValidTest(reason),
    }
}

pub(crate) fn sloped_superheat(
    return_wet_bulb: AirTemperature,
    outdoor_dry_bulb: AirTemperature,
) -> Result<SlopedTarget, NoValidTest> {
    Ok(SUPERHEAT.at(outdoor_dry_bulb.fahrenheit(), return_wet_bulb.fahrenheit())?.into())
}

pub(crate) fn sloped_split(
    return_dry_bulb: AirTemperature,
    return_wet_bulb: AirTemperature,
) -> Result<SlopedTarget, NoValidTest> {
    if return_wet_bulb.kelvin() > return_dry_bulb.kelvin() {
        return Err(NoValidTest::WetBulbAboveDryBulb);
    }
    match SPLIT.at(return_dry_bulb.fahrenheit(), return_wet_bulb.fahrenheit()) {
        Ok(target) => Ok(target.into()),
        Err(Gap::RowBelow) => Err(NoValidTest::ReturnTooCold),
        Err(Gap::RowAbove) => Err(NoValidTest::ReturnTooWarm),
        Err(Gap::Blank) => Err(NoValidTest::ReturnTooDry),
        Err(column) => Err(column.into()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn air(fahrenheit: f64) -> AirTemperature {
        AirTemperature::from_fahrenheit(fahrenheit).unwrap()
    }

    fn superheat_f(wet_bulb: f64, outdoor: f64) -> Option<f64> {
        target_superheat(air(wet_bulb), air(outdoor)).difference().map(TemperatureDifference::fahrenheit)
    }

    /// The formula behind the split table (from memory, with the table).
    fn split_formula_f(dry_bulb: f64, wet_bulb: f64) -> f64 {
        let (dry, wet) = (dry_bulb - 75.0, wet_bulb - 63.0);
        18.613_19 + 0.543_848_9 * dry - 0.678_288_1 * wet - 0.022_845_34 * wet * wet
    }

    #[test]
    fn every_cell_of_the_split_grid_obeys_its_formula() {
        let mut cells = 0;
        for (row, line) in SPLIT.tenths.iter().enumerate() {
            for column in 0..line.len() {
                if let Some(cell) = SPLIT.cell(row, column) {
                    let expected = split_formula_f(70.0 + row as f64, 50.0 + column as f64);
                    assert!((cell - expected).abs() < 0.1, "{row} {column}: {cell} {expected}");
                    cells += 1;
                }
            }
        }
        assert_eq!(cells, 357);
    }

    #[test]
    fn the_superheat_grid_follows_the_trade_rule_as_far_as_it_should() {
        // Common practice: (3 WB − 80 − DB)/2. Over the whole grid rms 1.4 °F and at worst −6.4 °F, at 115/76; and it
        // gives numbers in 67 cells that the table leaves blank, where the table wins. A slip in the copying
        // of a single cell would show as a jump between neighbours: the second differences stay small.
        let (mut sum, mut count, mut worst, mut blank_but_positive) = (0.0, 0, 0.0_f64, 0);
        for (row, line) in SUPERHEAT.tenths.iter().enumerate() {
            for column in 0..line.len() {
                let rule = (3.0 * (50.0 + column as f64) - 80.0 - (55.0 + row as f64)) / 2.0;
                match SUPERHEAT.cell(row, column) {
                    Some(cell) => {
                        assert!(cell >= 5.0);
                        let difference: f64 = cell - rule;
                        sum += difference * difference;
                        count += 1;
                        if difference.abs() > worst.abs() {
                            worst = difference;
                        }
                        // The table is two smooth pieces that meet at a wet bulb of 65 °F, the sixteenth column.
                        let bend = |before: Option<f64>, after: Option<f64>| match (before, after) {
                            (Some(before), Some(after)) => (before + after - 2.0 * cell).abs(),
                            _ => 0.0,
                        };
                        let across = bend(SUPERHEAT.cell(row, column.wrapping_sub(1)), SUPERHEAT.cell(row, column + 1));
                        let down = bend(SUPERHEAT.cell(row.wrapping_sub(1), column), SUPERHEAT.cell(row + 1, column));
                        assert!(across < if column == 15 { 0.65 } else { 0.35 }, "{row} {column}: {across}");
                        assert!(down < 0.25, "{row} {column}: {down}");
                    }
                    None => blank_but_positive += i32::from(rule >= 5.0),
                }
            }
        }
        let rms = (sum / f64::from(count)).sqrt();
        assert!((rms - 1.4).abs() < 0.05, "{rms}");
        assert!((worst.abs() - 6.4).abs() < 0.25, "{worst}");
        assert_eq!(blank_but_positive, 67);
    }

    #[test]
    fn cells_are_returned_as_they_stand() {
        for (row, line) in SUPERHEAT.tenths.iter().enumerate() {
            for column in 0..line.len() {
                let answer = superheat_f(50.0 + column as f64, 55.0 + row as f64);
                match (SUPERHEAT.cell(row, column), answer) {
                    (Some(cell), Some(answer)) => assert!((cell - answer).abs() < 1e-9, "{row} {column}"),
                    (None, None) => {}
                    other => panic!("{row} {column}: {other:?}"),
                }
            }
        }
    }

    #[test]
    fn interpolates_between_four_cells() {
        // Cells at 95 and 96 °F outdoors, 66 and 67 °F wet bulb: 10.0 12.0 / 9.5 11.4.
        let expected = 0.25 * (10.0 + 12.0 + 9.5 + 11.4);
        assert!((superheat_f(66.5, 95.5).unwrap() - expected).abs() < 1e-9);
    }

    #[test]
    fn a_blank_neighbour_that_carries_weight_means_no_valid_test() {
        // Row 95: 63 °F is blank, 64 °F is 5.6.
        assert!((superheat_f(64.0, 95.0).unwrap() - 5.6).abs() < 1e-9);
        assert_eq!(target_superheat(air(63.99), air(95.0)), Target::NoValidTest(NoValidTest::TargetBelowFive));
        // Row 96 is blank at 64 °F: a hundredth of a degree down the column is enough.
        assert_eq!(target_superheat(air(64.0), air(95.01)), Target::NoValidTest(NoValidTest::TargetBelowFive));
    }

    #[test]
    fn outside_the_tables_there_is_a_reason_and_no_number() {
        let superheat = |wet, outdoor| target_superheat(air(wet), air(outdoor));
        assert_eq!(superheat(60.0, 54.9), Target::NoValidTest(NoValidTest::OutdoorTooCold));
        assert_eq!(superheat(76.0, 115.1), Target::NoValidTest(NoValidTest::OutdoorTooHot));
        assert_eq!(superheat(49.9, 60.0), Target::NoValidTest(NoValidTest::WetBulbTooLow));
        assert_eq!(superheat(76.1, 60.0), Target::NoValidTest(NoValidTest::WetBulbTooHigh));
        assert!(superheat_f(76.0, 115.0).is_some() && superheat_f(50.0, 55.0).is_some());
        let split = |dry, wet| target_split(air(dry), air(wet));
        assert_eq!(split(69.9, 60.0), Target::NoValidTest(NoValidTest::ReturnTooCold));
        assert_eq!(split(84.1, 70.0), Target::NoValidTest(NoValidTest::ReturnTooWarm));
        assert_eq!(split(84.0, 55.0), Target::NoValidTest(NoValidTest::ReturnTooDry));
        assert_eq!(split(75.0, 49.0), Target::NoValidTest(NoValidTest::WetBulbTooLow));
        assert_eq!(split(80.0, 77.0), Target::NoValidTest(NoValidTest::WetBulbTooHigh));
        assert_eq!(split(72.0, 72.1), Target::NoValidTest(NoValidTest::WetBulbAboveDryBulb));
    }

    #[test]
    fn slopes_are_those_of_the_table() {
        let target = sloped_superheat(air(70.0), air(95.0)).unwrap();
        // Neighbours in row 95: 15.8 at 69... 17.8 at 70, 19.7 at 71; in column 70: 18.2 at 94, 17.3 at 96.
        assert!((target.by_wet_bulb - 0.5 * (19.7 - 15.8)).abs() < 1e-9);
        assert!((target.by_dry_bulb - 0.5 * (17.3 - 18.2)).abs() < 1e-9);
    }

    proptest! {
        #[test]
        fn any_air_gives_a_plausible_target_or_a_reason(wet in -70.0..150.0, outdoor in -70.0..150.0) {
            if let Some(target) = superheat_f(wet, outdoor) {
                prop_assert!((5.0..=45.0).contains(&target));
                prop_assert!((50.0..=76.0).contains(&wet) && (55.0..=115.0).contains(&outdoor));
            }
            if let Target::At(target) = target_split(air(outdoor), air(wet)) {
                prop_assert!((3.0..=26.0).contains(&target.fahrenheit()));
            }
        }
    }
}
