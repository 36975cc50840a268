//! Tubes: by their name in a standard, or by their diameters.

use super::sizes::{
    ALL_NAMES, B280_ANNEALED, B280_ANNEALED_NAMES, B280_DRAWN, B280_DRAWN_NAMES, EN12735, EN12735_NAMES, Size,
};
use crate::bounds;
use crate::charge::answers::answers;
use crate::error::Error;
use crate::math;

/// Metres in one inch.
const METRES_PER_INCH: f64 = 0.0254;
/// √3: a limit of error read as a rectangular distribution has its standard uncertainty there.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Roughness of drawn copper tube, m (drawn tubing, 0.000 005 ft: Moody, Trans. ASME 66, 1944; from memory).
pub const DRAWN_COPPER_ROUGHNESS_M: f64 = 1.5e-6;

/// Limit of error of an inside diameter given by hand, m: a caliper in a cut end. Our own allowance.
const CALIPER_LIMIT_M: f64 = 1e-4;
/// Limits of error of a standard tube: outside diameter in m and as a share of it, whichever is more, and wall as a share
/// of it. They cover ASTM B280's tolerances of ±0.002 to ±0.0045 in and ±0.003 to ±0.006 in (from memory).
const OUTSIDE_LIMIT: (f64, f64) = (5e-5, 0.003);
const WALL_LIMIT: f64 = 0.1;

answers! {
    /// How hard a tube is delivered, by which its wall differs.
    Temper {
        /// Soft, in coils.
        Annealed = 1 "annealed" "Soft copper from a coil.";
        /// Hard, in straight lengths.
        Drawn = 2 "drawn" "Hard copper in straight lengths.";
    }
}

/// A tube of a line set.
///
/// ```
/// use satline::lineset::{Temper, Tube};
/// let liquid = Tube::named("3/8")?;
/// assert!((liquid.inside_diameter_m() / 0.0254 - 0.311).abs() < 1e-9);
/// assert_eq!(Tube::b280("1-1/8 in", Temper::Drawn)?.name(), "1-1/8 in ASTM B280 drawn");
/// assert!(Tube::from_outside_diameter_m(0.010, 0.005).is_err()); // no bore is left
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tube {
    name: &'static str,
    inside: f64,
    outside_and_wall: Option<(f64, f64)>,
    inside_uncertainty: f64,
}

impl Tube {
    /// A tube of ASTM B280 by its outside diameter in inches, `3/8`, `1-1/8`, `1 1/8` or `0.375`, with or without `in` or
    /// an inch mark.
    ///
    /// # Errors
    /// [`Error::UnknownChoice`] naming the sizes of that temper.
    pub fn b280(nominal: &str, temper: Temper) -> Result<Self, Error> {
        let (field, sizes, choices) = match temper {
            Temper::Annealed => ("the size of annealed ASTM B280 tube", B280_ANNEALED, B280_ANNEALED_NAMES),
            Temper::Drawn => ("the size of drawn ASTM B280 tube", B280_DRAWN, B280_DRAWN_NAMES),
        };
        inches(nominal)
            .and_then(|outside| sizes.iter().find(|size| same(size.outside, outside, 0.001)))
            .map(|size| Self::of(size, METRES_PER_INCH))
            .ok_or(Error::UnknownChoice { field, choices })
    }

    /// A tube of EN 12735-1 by outside diameter and wall in millimetres, `10x1`, or by its outside diameter alone, `10 mm`,
    /// where there is one wall to it.
    ///
    /// # Errors
    /// [`Error::UnknownChoice`] naming the sizes; also for an outside diameter alone that comes with several walls.
    pub fn en12735(name: &str) -> Result<Self, Error> {
        let refused = |field| Error::UnknownChoice { field, choices: EN12735_NAMES };
        let unknown = refused("the size of EN 12735-1 tube");
        let (outside, wall) = millimetres(name).ok_or(unknown)?;
        let mut found = EN12735
            .iter()
            .filter(|size| same(size.outside, outside, 0.01) && wall.is_none_or(|wall| same(size.wall, wall, 0.005)));
        match (found.next(), found.next()) {
            (Some(size), None) => Ok(Self::of(size, 1e-3)),
            (Some(_), Some(_)) => Err(refused("the size of EN 12735-1 tube without its wall")),
            (None, _) => Err(unknown),
        }
    }

    /// A tube by its name in ASTM B280 (annealed where that exists, else drawn) or EN 12735-1.
    ///
    /// # Errors
    /// [`Error::UnknownChoice`] naming every size.
    pub fn named(name: &str) -> Result<Self, Error> {
        Self::b280(name, Temper::Annealed)
            .or_else(|_| Self::b280(name, Temper::Drawn))
            .or_else(|_| Self::en12735(name))
            .map_err(|_| Error::UnknownChoice { field: "the size of the tube", choices: ALL_NAMES })
    }

    /// A tube of that inside diameter in metres.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::INSIDE_DIAMETER`].
    pub fn from_inside_diameter_m(inside: f64) -> Result<Self, Error> {
        Ok(Self {
            name: "tube by its inside diameter",
            inside: bounds::INSIDE_DIAMETER.check(inside)?,
            outside_and_wall: None,
            inside_uncertainty: CALIPER_LIMIT_M / SQRT_3,
        })
    }

    /// A tube of that outside diameter and wall thickness in metres.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::OUTSIDE_DIAMETER`] and [`bounds::WALL`], and for a
    /// wall that leaves no bore: its upper limit then follows from the outside diameter.
    pub fn from_outside_diameter_m(outside: f64, wall: f64) -> Result<Self, Error> {
        let outside = bounds::OUTSIDE_DIAMETER.check(outside)?;
        let upper = bounds::WALL.upper.min(0.5 * (outside - bounds::INSIDE_DIAMETER.lower));
        let advice = "the wall must stay below the radius, half the outside diameter, so that a bore is left";
        let wall = bounds::within(bounds::WALL.quantity, "m", wall, bounds::WALL.lower, upper, advice)?;
        Ok(Self::standard("tube by its outside diameter", outside, wall))
    }

    /// The same tube with another standard uncertainty of its inside diameter, m. Without it that follows from the
    /// standard's tolerances, or from a caliper's for an inside diameter given by hand.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] where negative or more than a tenth of the inside diameter.
    pub fn with_inside_diameter_uncertainty_m(self, standard_uncertainty: f64) -> Result<Self, Error> {
        let quantity = "standard uncertainty of the inside diameter";
        let advice = "give one standard uncertainty in metres: a tolerance divided by 1.73";
        let checked = bounds::within(quantity, "m", standard_uncertainty, 0.0, 0.1 * self.inside, advice)?;
        Ok(Self { inside_uncertainty: checked, ..self })
    }

    fn of(size: &Size, metres: f64) -> Self {
        Self::standard(size.name, size.outside * metres, size.wall * metres)
    }

    fn standard(name: &'static str, outside: f64, wall: f64) -> Self {
        let (least, share) = OUTSIDE_LIMIT;
        let (of_outside, of_wall) = (least.max(share * outside), 2.0 * WALL_LIMIT * wall);
        Self {
            name,
            inside: outside - 2.0 * wall,
            outside_and_wall: Some((outside, wall)),
            inside_uncertainty: math::sqrt(of_outside * of_outside + of_wall * of_wall) / SQRT_3,
        }
    }

    /// What it is called: its size and standard, or how it was given.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        self.name
    }

    /// Inside diameter, m.
    #[must_use]
    pub const fn inside_diameter_m(&self) -> f64 {
        self.inside
    }

    /// One standard uncertainty of the inside diameter, m.
    #[must_use]
    pub const fn inside_diameter_uncertainty_m(&self) -> f64 {
        self.inside_uncertainty
    }

    /// Outside diameter, m; none where only the inside diameter is known.
    #[must_use]
    pub fn outside_diameter_m(&self) -> Option<f64> {
        self.outside_and_wall.map(|(outside, _)| outside)
    }

    /// Wall thickness, m; none where only the inside diameter is known.
    #[must_use]
    pub fn wall_m(&self) -> Option<f64> {
        self.outside_and_wall.map(|(_, wall)| wall)
    }

    /// Area of the bore, m².
    #[must_use]
    pub const fn bore_area_m2(&self) -> f64 {
        bore_area_m2(self.inside)
    }

    /// Roughness of the wall inside, m: that of drawn copper.
    #[must_use]
    pub const fn roughness_m(&self) -> f64 {
        DRAWN_COPPER_ROUGHNESS_M
    }
}

/// Area of a bore of that diameter, m².
pub(crate) const fn bore_area_m2(inside_diameter: f64) -> f64 {
    0.25 * core::f64::consts::PI * inside_diameter * inside_diameter
}

fn same(known: f64, given: f64, tolerance: f64) -> bool {
    (known - given).abs() < tolerance
}

/// `text` without one of the endings, where it has one.
fn without<'a>(text: &'a str, endings: &[&str]) -> &'a str {
    let text = text.trim();
    endings.iter().find_map(|ending| text.strip_suffix(ending)).unwrap_or(text).trim_end()
}

/// Inches from `3/8`, `1-1/8`, `1 1/8`, `0.375`, with or without a unit.
fn inches(text: &str) -> Option<f64> {
    let text = without(text, &["inches", "inch", "in.", "in", "\"", "''", "\u{2033}", "\u{201d}"]);
    let (whole, rest) = match text.split_once(['-', ' ']) {
        Some((whole, rest)) => (decimal(whole)?, rest.trim_start()),
        None => (0.0, text),
    };
    let rest = match rest.split_once('/') {
        Some((above, below)) => decimal(above)? / decimal(below).filter(|below| *below > 0.0)?,
        None => decimal(rest)?,
    };
    Some(whole + rest)
}

/// Outside diameter and wall in millimetres from `10x1`, `10 x 1 mm`, `10 mm`.
fn millimetres(text: &str) -> Option<(f64, Option<f64>)> {
    let text = without(text, &["mm"]);
    match text.split_once(['x', 'X', '\u{d7}', '*']) {
        Some((outside, wall)) => Some((decimal(without(outside, &["mm"]))?, Some(decimal(wall.trim())?))),
        None => Some((decimal(text)?, None)),
    }
}

/// A plain decimal number with a point or a comma, without sign or exponent. The core's own reader would bring its
/// tables into firmware.
fn decimal(text: &str) -> Option<f64> {
    let (mut value, mut scale, mut digits, mut after_point) = (0.0, 1.0, 0, false);
    for byte in text.bytes() {
        match byte {
            b'0'..=b'9' => {
                value = 10.0 * value + f64::from(byte - b'0');
                scale *= if after_point { 10.0 } else { 1.0 };
                digits += 1;
            }
            b'.' | b',' if !after_point => after_point = true,
            _ => return None,
        }
    }
    (1..=12).contains(&digits).then_some(value / scale)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bore_inches(tube: Tube) -> f64 {
        tube.inside_diameter_m() / METRES_PER_INCH
    }

    #[test]
    fn bores_are_those_of_the_standard() {
        // ASTM B280 (published): annealed, then drawn.
        for (name, bore) in [
            ("1/4", 0.190),
            ("5/16", 0.248),
            ("3/8", 0.311),
            ("1/2", 0.436),
            ("5/8", 0.555),
            ("3/4", 0.680),
            ("7/8", 0.785),
            ("1-1/8", 1.025),
            ("1-3/8", 1.265),
        ] {
            assert!((bore_inches(Tube::b280(name, Temper::Annealed).unwrap()) - bore).abs() < 1e-9, "{name}");
        }
        for (name, bore) in [("3/8", 0.315), ("1/2", 0.430), ("5/8", 0.545), ("3/4", 0.666)] {
            assert!((bore_inches(Tube::b280(name, Temper::Drawn).unwrap()) - bore).abs() < 1e-9, "{name}");
        }
    }

    #[test]
    fn areas_and_weights_are_those_of_the_tube_handbook() {
        // Internal area in square inches and weight in pounds per foot, Copper Tube Handbook, ACR tube (from memory), to
        // their printed digits. The weight, with copper at 0.323 lb/in³, checks wall and outside diameter together.
        for (name, temper, area, weight) in [
            ("1/4", Temper::Annealed, 0.0284, 0.0804),
            ("3/8", Temper::Annealed, 0.0760, 0.134),
            ("3/8", Temper::Drawn, 0.0779, 0.126),
            ("1/2", Temper::Annealed, 0.149, 0.182),
            ("5/8", Temper::Annealed, 0.242, 0.251),
            ("3/4", Temper::Drawn, 0.348, 0.362),
            ("7/8", Temper::Drawn, 0.484, 0.455),
            ("1-1/8", Temper::Drawn, 0.825, 0.655),
            ("1-3/8", Temper::Drawn, 1.26, 0.884),
            ("1-5/8", Temper::Annealed, 1.78, 1.14),
            ("2-1/8", Temper::Drawn, 3.09, 1.75),
        ] {
            let tube = Tube::b280(name, temper).unwrap();
            let square_inches = tube.bore_area_m2() / (METRES_PER_INCH * METRES_PER_INCH);
            assert!((square_inches / area - 1.0).abs() < 4e-3, "{name}: {square_inches}");
            let (outside, wall) = (tube.outside_diameter_m().unwrap(), tube.wall_m().unwrap());
            let copper = core::f64::consts::PI * (outside - wall) * wall / (METRES_PER_INCH * METRES_PER_INCH);
            assert!((copper * 12.0 * 0.323 / weight - 1.0).abs() < 6e-3, "{name}: {}", copper * 12.0 * 0.323);
        }
    }

    #[test]
    fn a_size_is_written_in_many_ways() {
        for name in ["1-1/8", "1 1/8", "1-1/8 in", "1-1/8\"", "1 1/8 inch", "1.125", " 1-1/8in. ", "1,125 in"] {
            assert!((bore_inches(Tube::named(name).unwrap()) - 1.025).abs() < 1e-9, "{name}");
        }
        for name in ["10x1", "10 x 1", "10 mm", "10", "10 mm x 1 mm", "10X1mm", "10.0x1.0", "10×1"] {
            assert!((Tube::named(name).unwrap().inside_diameter_m() - 0.008).abs() < 1e-12, "{name}");
        }
        // Only drawn exists.
        assert_eq!(Tube::named("2-1/8").unwrap().name(), "2-1/8 in ASTM B280 drawn");
        assert_eq!(Tube::named("3/8").unwrap().name(), "3/8 in ASTM B280 annealed");
        assert_eq!(Tube::named("28x1.5").unwrap().name(), "28x1.5 mm EN 12735-1");
    }

    #[test]
    fn what_is_no_size_names_those_there_are() {
        for name in
            ["", "3/", "/8", "3/0", "-", "1--1/8", "nan", "inf", "1e1", "3/7", "-3/8", "10x2", "10 mm x", "x", "3/8/2"]
        {
            let refused = Tube::named(name).unwrap_err();
            let Error::UnknownChoice { choices, .. } = refused else { panic!("{name}: {refused:?}") };
            assert!(choices.contains("1-1/8") && choices.contains("10x1"), "{name}");
        }
        assert!(matches!(
            Tube::b280("2-1/8", Temper::Annealed),
            Err(Error::UnknownChoice { field: "the size of annealed ASTM B280 tube", .. })
        ));
        // Two walls: which is meant is not known.
        assert!(Tube::en12735("28 mm").is_err());
        assert!(Tube::b280("1234567890123", Temper::Drawn).is_err());
    }

    #[test]
    fn a_wall_leaves_a_bore() {
        let tube = Tube::from_outside_diameter_m(0.010, 0.001).unwrap();
        assert_eq!((tube.inside_diameter_m(), tube.wall_m()), (0.008, Some(0.001)));
        for wall in [0.005, 0.0051, 0.00476] {
            let refused = Tube::from_outside_diameter_m(0.010, wall).unwrap_err();
            let Error::OutOfRange { quantity, upper, .. } = refused else { panic!("{refused:?}") };
            assert_eq!(quantity, "wall thickness of the tube");
            assert!((upper - 0.00475).abs() < 1e-12);
        }
        assert!(matches!(Tube::from_outside_diameter_m(0.01, f64::NAN), Err(Error::NotFinite { .. })));
        assert!(matches!(Tube::from_inside_diameter_m(7.9), Err(Error::OutOfRange { .. })));
        assert!(tube.with_inside_diameter_uncertainty_m(-1e-6).is_err());
        assert_eq!(tube.with_inside_diameter_uncertainty_m(2e-5).unwrap().inside_diameter_uncertainty_m(), 2e-5);
    }

    #[test]
    fn the_uncertainty_covers_the_tolerances() {
        // ASTM B280 tolerances of outside diameter and wall in inches (from memory).
        for (name, of_outside, of_wall) in [("1/4", 0.002, 0.003), ("3/8", 0.002, 0.003), ("1-5/8", 0.0045, 0.006)] {
            let limit: f64 = of_outside * of_outside + 4.0 * of_wall * of_wall;
            let stated =
                Tube::named(name).unwrap().inside_diameter_uncertainty_m() * SQRT_3 / (METRES_PER_INCH * limit.sqrt());
            assert!((0.97..1.1).contains(&stated), "{name}: {stated}");
        }
    }
}
