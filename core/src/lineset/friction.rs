//! Friction in a tube: the Darcy factor in every regime, and what fittings add to the length.

use crate::bounds;
use crate::charge::answers::answers;
use crate::error::Error;
use crate::math;

/// Below this Reynolds number the flow is laminar, above [`TURBULENT_FROM`] turbulent; between, it may be either.
pub const LAMINAR_TO: f64 = 2100.0;
/// See [`LAMINAR_TO`].
pub const TURBULENT_FROM: f64 = 4000.0;

/// One standard uncertainty of a friction factor, as a share of it: Churchill's equation lies within 3.2 % of Colebrook's
/// where that holds, and tubes in the field are bent, brazed and not quite round. An allowance of our own.
pub const FRICTION_ALLOWANCE: f64 = 0.05;

/// Darcy friction factor at a Reynolds number and a roughness relative to the inside diameter.
///
/// Churchill (Chemical Engineering 84, no. 24, 1977, p. 91): one equation from laminar flow, where it becomes 64/Re,
/// through the transition to rough turbulent flow, without a jump.
///
/// Measured against Colebrook's equation (Re 4000 to 1e8, relative roughness 0 to 0.05): within 2.2 % above Re 10 000,
/// 3.2 % down to 4000, where Colebrook's own validity ends. In the transition no equation is trustworthy to better than
/// some ten per cent.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::REYNOLDS`] and [`bounds::RELATIVE_ROUGHNESS`].
///
/// ```
/// use satline::lineset::friction_factor;
/// assert!((friction_factor(500.0, 0.0)? - 64.0 / 500.0).abs() < 1e-6);
/// // Moody's chart for a smooth tube at a Reynolds number of 100 000: 0.018.
/// assert!((friction_factor(1e5, 0.0)? - 0.018).abs() < 2e-4);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn friction_factor(reynolds: f64, relative_roughness: f64) -> Result<f64, Error> {
    bounds::REYNOLDS.check(reynolds)?;
    bounds::RELATIVE_ROUGHNESS.check(relative_roughness)?;
    Ok(churchill(reynolds, relative_roughness))
}

/// The same without a check, for numbers that come from a flow.
pub(super) fn churchill(reynolds: f64, relative_roughness: f64) -> f64 {
    let rough = math::pow(7.0 / reynolds, 0.9) + 0.27 * relative_roughness;
    let turbulent = power16(-2.457 * math::ln(rough));
    let transition = power16(37_530.0 / reynolds);
    let sum = turbulent + transition;
    let eighth = 8.0 / reynolds;
    let squared = eighth * eighth;
    let fourth = squared * squared;
    let laminar = fourth * fourth * fourth;
    8.0 * math::pow(laminar + 1.0 / (sum * math::sqrt(sum)), 1.0 / 12.0)
}

fn power16(value: f64) -> f64 {
    let squared = value * value;
    let fourth = squared * squared;
    let eighth = fourth * fourth;
    eighth * eighth
}

answers! {
    /// A fitting. Each stands for a straight length of so many inside diameters: Crane, Technical Paper 410, from memory;
    /// they agree with the lengths of ASHRAE Refrigeration 2010, chapter 1 (from memory) within a quarter. Makers' data of
    /// the very fitting are better.
    Fitting {
        /// 90° elbow with a bend radius of 1.5 diameters: 16.
        LongElbow = 1 "long-elbow" "Elbow of 90 degrees, long radius.";
        /// 90° elbow with a bend radius of 1 diameter: 30.
        ShortElbow = 2 "short-elbow" "Elbow of 90 degrees, short radius.";
        /// 45° elbow: 16.
        HalfElbow = 3 "half-elbow" "Elbow of 45 degrees.";
        /// Tee, straight through: 20.
        TeeThrough = 4 "tee-through" "Tee, flow straight through.";
        /// Tee, into or out of the branch: 60.
        TeeBranch = 5 "tee-branch" "Tee, flow through the branch.";
        /// Ball valve of full bore, open: 3.
        BallValve = 6 "ball-valve" "Ball valve with a full bore, open.";
        /// Angle valve, such as a service valve, open: 150.
        AngleValve = 7 "angle-valve" "Angle valve, open.";
        /// Globe valve or solenoid valve of globe pattern, open: 340.
        GlobeValve = 8 "globe-valve" "Globe valve, open.";
    }
}

impl Fitting {
    /// The straight length that it stands for, over the inside diameter.
    #[must_use]
    pub const fn length_over_diameter(self) -> f64 {
        match self {
            Self::LongElbow | Self::HalfElbow => 16.0,
            Self::ShortElbow => 30.0,
            Self::TeeThrough => 20.0,
            Self::TeeBranch => 60.0,
            Self::BallValve => 3.0,
            Self::AngleValve => 150.0,
            Self::GlobeValve => 340.0,
        }
    }
}

/// The fittings of a line, as the straight length that they stand for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fittings {
    diameters: f64,
    other_m: f64,
}

impl Fittings {
    /// A line without fittings: bends of a large radius by hand count as straight.
    pub const NONE: Self = Self { diameters: 0.0, other_m: 0.0 };

    /// With so many fittings of a kind more.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a count outside [`bounds::FITTING_COUNT`].
    pub fn with(self, fitting: Fitting, count: u32) -> Result<Self, Error> {
        let count = bounds::FITTING_COUNT.check(f64::from(count))?;
        Ok(Self { diameters: self.diameters + count * fitting.length_over_diameter(), ..self })
    }

    /// With the straight length in metres that other fittings stand for, by their maker.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::EQUIVALENT_LENGTH`].
    pub fn with_length_m(self, length: f64) -> Result<Self, Error> {
        Ok(Self { other_m: self.other_m + bounds::EQUIVALENT_LENGTH.check(length)?, ..self })
    }

    /// The straight length in metres that they stand for in a tube of that inside diameter in metres.
    #[must_use]
    pub fn equivalent_length_m(&self, inside_diameter_m: f64) -> f64 {
        self.diameters * inside_diameter_m + self.other_m
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    /// Colebrook's equation solved by its own fixed point, from far off.
    fn colebrook(reynolds: f64, roughness: f64) -> f64 {
        let mut root = 10.0;
        for _ in 0..200 {
            root = -2.0 * (roughness / 3.7 + 2.51 * root / reynolds).log10();
        }
        1.0 / (root * root)
    }

    #[test]
    fn laminar_is_64_over_re() {
        for reynolds in [1e-3, 1.0, 100.0, 1000.0] {
            let factor = friction_factor(reynolds, 0.01).unwrap();
            assert!((factor * reynolds / 64.0 - 1.0).abs() < 1e-6, "{reynolds} {factor}");
        }
        assert!((friction_factor(2000.0, 0.0).unwrap() * 2000.0 / 64.0 - 1.0).abs() < 1.4e-3);
    }

    /// What the documentation states.
    #[test]
    fn colebrook_within_what_is_stated() {
        let worst = |lowest: f64| {
            let roughnesses = [0.0, 1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.012, 0.017, 0.025, 0.05];
            let reynolds = (0..=400).map(|step| lowest * (1e8 / lowest).powf(f64::from(step) / 400.0));
            let pairs = reynolds.flat_map(|reynolds| roughnesses.map(|roughness| (reynolds, roughness)));
            pairs
                .map(|(reynolds, roughness)| {
                    friction_factor(reynolds, roughness).unwrap() / colebrook(reynolds, roughness) - 1.0
                })
                .fold(0.0_f64, |worst, error| worst.max(error.abs()))
        };
        let (above, all) = (worst(1e4), worst(4e3));
        std::println!("Churchill against Colebrook: {above:.4} above Re 10 000, {all:.4} above 4000");
        assert!(above < 0.022 && above > 0.021 && all < 0.032 && all > 0.031, "{above} {all}");
    }

    /// Points read off Moody's chart (Trans. ASME 66, 1944; from memory, to its two digits).
    #[test]
    fn moody_chart() {
        for (reynolds, roughness, factor) in
            [(1e5, 0.0, 0.018), (1e6, 0.0, 0.0117), (1e7, 1e-3, 0.0197), (1e8, 0.01, 0.038), (1e8, 1e-4, 0.012)]
        {
            let computed = friction_factor(reynolds, roughness).unwrap();
            assert!((computed / factor - 1.0).abs() < 0.03, "{reynolds} {roughness}: {computed}");
        }
    }

    /// No jump, and more flow never loses less: f·Re² rises through the transition.
    #[test]
    fn no_jump_and_rising_loss() {
        for roughness in [0.0, 1e-4, 1e-2] {
            let reynolds: Vec<f64> = (0..20_000).map(|step| 100.0 * 1.0005_f64.powi(step)).collect();
            for pair in reynolds.windows(2) {
                let [before, after] = [pair[0], pair[1]].map(|reynolds| friction_factor(reynolds, roughness).unwrap());
                // A step of 0.05 % in the flow moves the factor by less than 0.1 %.
                assert!((after / before - 1.0).abs() < 1e-3, "{pair:?}");
                assert!(after * pair[1] * pair[1] > before * pair[0] * pair[0], "{pair:?}");
            }
        }
    }

    /// ASHRAE Refrigeration 2010, chapter 1, fitting losses for 1/2 in. pipe of 0.622 in. bore, ft (from memory).
    #[test]
    fn fittings_agree_with_the_handbook() {
        let bore = 0.622 * 0.0254;
        for (fitting, feet) in [
            (Fitting::ShortElbow, 1.4),
            (Fitting::LongElbow, 0.9),
            (Fitting::HalfElbow, 0.7),
            (Fitting::TeeBranch, 2.7),
            (Fitting::TeeThrough, 0.9),
            (Fitting::GlobeValve, 17.0),
            (Fitting::AngleValve, 7.0),
        ] {
            let length = Fittings::NONE.with(fitting, 1).unwrap().equivalent_length_m(bore) / 0.3048;
            assert!((length / feet - 1.0).abs() < 0.25, "{} {length} {feet}", fitting.name());
        }
        let both = Fittings::NONE.with(Fitting::LongElbow, 2).unwrap().with_length_m(1.5).unwrap();
        assert_eq!(both.equivalent_length_m(0.01), 1.5 + 2.0 * 16.0 * 0.01);
        assert!(Fittings::NONE.with_length_m(-1.0).is_err() && Fittings::NONE.with(Fitting::TeeBranch, 5000).is_err());
    }

    #[test]
    fn refused() {
        assert!(matches!(friction_factor(0.0, 0.0), Err(Error::OutOfRange { quantity: "Reynolds number", .. })));
        assert!(matches!(friction_factor(1e5, -1e-9), Err(Error::OutOfRange { .. })));
        assert!(matches!(friction_factor(f64::NAN, 0.0), Err(Error::NotFinite { .. })));
    }
}
