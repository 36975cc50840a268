//! What pressure a copper tube may hold: by its size, its temper, how it is joined, and its temperature.
//!
//! The formula of the pressure piping code (ASME B31, from memory), P = 2St/(D − 0.8t), with the allowable stresses and
//! the practice of the Copper Tube Handbook, tables 3a to 3e (read): the least wall and the largest diameter that the
//! tolerance allows, and annealed stresses wherever a tube was brazed or welded, because the flame anneals it.

use crate::bounds;
use crate::charge::answers::answers;
use crate::error::Error;
use crate::quantity::{GaugePressure, KELVIN_PER_FAHRENHEIT, PASCALS_PER_PSI, Temperature, fahrenheit_from_kelvin};
use crate::uncertain::{Uncertain, propagate};

answers! {
    /// How hard the tube was delivered.
    Temper {
        /// Soft, in coils.
        Annealed = 1 "annealed" "Soft tube, as it comes in coils.";
        /// Hard, in straight lengths.
        Drawn = 2 "drawn" "Hard tube, as it comes in straight lengths.";
    }
}

answers! {
    /// How the tube is joined.
    Joint {
        /// By flame.
        Brazed = 1 "brazed" "Brazed or welded: the flame anneals the tube, which then counts as soft.";
        /// Without.
        Unheated = 2 "unheated" "Joined without a flame, by flares or pressed fittings: the tube keeps its temper.";
    }
}

answers! {
    /// Whether the tube is strong enough.
    Outcome {
        /// It is.
        Sufficient = 1 "sufficient" "The tube is rated for the design pressure.";
        /// It is not.
        Insufficient = 2 "insufficient" "The tube is not rated for the design pressure: use a thicker wall or a smaller size.";
        /// It is with the nominal wall, and not with the least that the tolerance allows.
        Marginal = 3 "marginal"
            "Rated for the design pressure with its nominal wall only, not with the least wall that the tolerance allows.";
    }
}

answers! {
    /// What can hurt.
    Caution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Tube, fittings and their ratings follow local codes and the maker's instructions, and belong to licensed practice.";
        /// Always.
        WeakestPart = 2 "weakest-part"
            "Fittings, valves, hoses and dents may hold less than the tube: the weakest part decides.";
        /// Always.
        VapourLineIsDischarge = 3 "vapour-line-is-discharge"
            "In heating, the vapour line of a heat pump is its discharge line: it must hold the high-side design pressure at discharge temperature.";
        /// Only copper of the stated kind.
        CopperOnly = 4 "copper-only"
            "This holds for seamless copper tube of air-conditioning quality: not for aluminium, coated or corroded tube.";
    }
}

/// Allowable stresses, psi, at temperatures in °F: annealed and drawn (Copper Tube Handbook, tables 3a to 3e, read there).
/// The first holds down to −20 °F.
const STRESSES: [(f64, f64, f64); 7] = [
    (100.0, 6000.0, 10_300.0),
    (150.0, 5100.0, 10_300.0),
    (200.0, 4900.0, 10_300.0),
    (250.0, 4800.0, 10_300.0),
    (300.0, 4700.0, 10_000.0),
    (350.0, 4000.0, 9700.0),
    (400.0, 3000.0, 9400.0),
];

/// How much thinner than nominal a wall may be where nothing is said, as a share of it. The ratings published for ASTM
/// B280 tube rest on 0.003 in of 0.030 to 0.006 in of 0.055, which are 9 to 11.4 %.
pub const DEFAULT_WALL_TOLERANCE: f64 = 0.12;
/// How much larger than nominal an outside diameter may be where nothing is said, m: 0.002 in, on which the same rest.
pub const DEFAULT_DIAMETER_TOLERANCE_M: f64 = 0.002 * 0.0254;
/// √3, which makes a standard uncertainty of a tolerance.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// A tube, and how hot it gets.
#[derive(Debug, Clone, Copy)]
pub struct CopperTube {
    /// Nominal outside diameter, m.
    pub outside_diameter_m: f64,
    /// Nominal wall, m.
    pub wall_m: f64,
    /// How hard it was delivered.
    pub temper: Temper,
    /// How it is joined.
    pub joint: Joint,
    /// The highest temperature of the wall.
    pub temperature: Temperature,
    /// How much thinner the wall may be, m; [`DEFAULT_WALL_TOLERANCE`] of it if none.
    pub wall_tolerance_m: Option<f64>,
    /// How much larger the outside diameter may be, m; [`DEFAULT_DIAMETER_TOLERANCE_M`] if none.
    pub diameter_tolerance_m: Option<f64>,
}

/// What the tube may hold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct TubeRating {
    /// Largest inside pressure above ambient, with the least wall and the largest diameter: the figure to work with.
    pub rating: GaugePressure,
    /// The same with nominal sizes, Pa above ambient; uncertainty of the tolerances.
    pub nominal_pa: Uncertain,
    /// Allowable stress, Pa.
    pub allowable_stress_pa: f64,
    /// The temper that counts: annealed for every brazed tube.
    pub counted_as: Temper,
    /// Against the design pressure, where one was given.
    pub outcome: Option<Outcome>,
    /// Rating less design pressure, Pa, likewise.
    pub margin_pa: Option<f64>,
}

impl TubeRating {
    /// What can hurt, in the order of their numbers: the same for every tube.
    pub fn cautions(&self) -> impl Iterator<Item = Caution> + '_ {
        Caution::ALL.iter().copied()
    }
}

/// The pressure that a copper tube may hold, and whether that covers a design pressure (above ambient, as nameplates and
/// refrigerant makers state it).
///
/// Between the temperatures of the table the stress is interpolated in a straight line; below 100 °F it is that of 100 °F.
///
/// # Errors
/// [`Error::OutOfRange`] outside [`bounds::OUTSIDE_DIAMETER`], [`bounds::WALL`] and [`bounds::TUBE_TEMPERATURE`]; a
/// wall of half the diameter or more; a tolerance that leaves no wall.
///
/// ```
/// use satline::quantity::{GaugePressure, PASCALS_PER_PSI, Temperature};
/// use satline::visit::tube_rating::{CopperTube, Joint, Outcome, Temper, copper_tube_rating};
/// // Demo: 3/4 in hard tube, brazed, as the vapour line of an R-410A heat pump: 600 psi at 200 °F in heating.
/// let tube = CopperTube {
///     outside_diameter_m: 0.750 * 0.0254,
///     wall_m: 0.042 * 0.0254,
///     temper: Temper::Drawn,
///     joint: Joint::Brazed,
///     temperature: Temperature::from_fahrenheit(200.0)?,
///     wall_tolerance_m: None,
///     diameter_tolerance_m: None,
/// };
/// let found = copper_tube_rating(&tube, Some(GaugePressure::from_psi(600.0)?))?;
/// // By hand: 2·4900·0.03696/(0.752 − 0.8·0.03696) = 501 psi.
/// assert!((found.rating.pascals() / PASCALS_PER_PSI - 501.4).abs() < 0.1);
/// assert_eq!((found.counted_as, found.outcome), (Temper::Annealed, Some(Outcome::Insufficient)));
/// # Ok::<(), satline::Error>(())
/// ```
pub fn copper_tube_rating(tube: &CopperTube, design: Option<GaugePressure>) -> Result<TubeRating, Error> {
    let diameter = bounds::OUTSIDE_DIAMETER.check(tube.outside_diameter_m)?;
    let wall = bounds::WALL.check(tube.wall_m)?;
    let advice = "a wall is less than half of the outside diameter";
    bounds::within("wall of the tube", "m", wall, bounds::WALL.lower, 0.49 * diameter, advice)?;
    let advice = "give by how much a wall or diameter may differ from nominal, in metres";
    let tolerance = |quantity, value, upper| bounds::within(quantity, "m", value, 0.0, upper, advice);
    let thinner = tube.wall_tolerance_m.unwrap_or(DEFAULT_WALL_TOLERANCE * wall);
    let thinner = tolerance("tolerance of the wall", thinner, 0.9 * wall)?;
    let larger = tube.diameter_tolerance_m.unwrap_or(DEFAULT_DIAMETER_TOLERANCE_M);
    let larger = tolerance("tolerance of the outside diameter", larger, 0.1 * diameter)?;
    let counted_as = match (tube.temper, tube.joint) {
        (Temper::Drawn, Joint::Unheated) => Temper::Drawn,
        _ => Temper::Annealed,
    };
    let kelvin = bounds::TUBE_TEMPERATURE.check(tube.temperature.kelvin())?;
    let stress = allowable_stress_pa(counted_as, kelvin);
    let holds = |diameter: f64, wall: f64| 2.0 * stress * wall / (diameter - 0.8 * wall);
    let rating = holds(diameter + larger, wall - thinner);
    let sizes = [Uncertain::new(diameter, larger / SQRT_3)?, Uncertain::new(wall, thinner / SQRT_3)?];
    let nominal_pa = propagate(sizes, |[diameter, wall]| Ok(holds(diameter, wall)))?;
    let outcome = design.map(|design| match design.pascals() {
        design if rating >= design => Outcome::Sufficient,
        design if nominal_pa.value >= design => Outcome::Marginal,
        _ => Outcome::Insufficient,
    });
    Ok(TubeRating {
        rating: GaugePressure::from_pascals(rating.min(bounds::GAUGE_PRESSURE.upper))?,
        nominal_pa,
        allowable_stress_pa: stress,
        counted_as,
        outcome,
        margin_pa: design.map(|design| rating - design.pascals()),
    })
}

fn allowable_stress_pa(temper: Temper, kelvin: f64) -> f64 {
    let fahrenheit = fahrenheit_from_kelvin(kelvin);
    let of = |(_, annealed, drawn): &(f64, f64, f64)| if temper == Temper::Drawn { *drawn } else { *annealed };
    let mut psi = None;
    for (lower, upper) in STRESSES.iter().zip(STRESSES.iter().skip(1)) {
        if psi.is_none() && fahrenheit <= upper.0 {
            let share = ((fahrenheit - lower.0) / (upper.0 - lower.0)).max(0.0);
            psi = Some(of(lower) + share * (of(upper) - of(lower)));
        }
    }
    // 477.6 K is a hair above 400 °F.
    let psi = psi.or(STRESSES.last().map(of)).unwrap_or(0.0);
    psi * PASCALS_PER_PSI
}

/// Where the table begins and ends, K, against the bound.
const _: () = assert!(bounds::TUBE_TEMPERATURE.upper < (400.1 + 459.67) * KELVIN_PER_FAHRENHEIT);
