//! How much refrigerant a cylinder may hold, from the density of its liquid.
//!
//! Two limits stand side by side. AHRI Guideline K: at most 80 % of the water capacity times the specific gravity at 77 °F,
//! which is four fifths of the volume as liquid at that temperature. And thermodynamics: the liquid swells as it warms and
//! must not fill the cylinder at the highest temperature it may meet (130 °F is the criterion of the cylinders' classes).

use super::answers::{FillRule, FillVerdict};
use crate::bounds;
use crate::error::Error;
use crate::quantity::{Temperature, kelvin_from_fahrenheit};
use crate::refrigerant::Refrigerant;

/// Most refrigerants that may be in a cylinder, where it is not known which.
pub const CANDIDATES_MAX: usize = 16;
/// The share of the volume that liquid may take at 77 °F (AHRI Guideline K).
pub const FILL_SHARE: f64 = 0.8;
/// The highest temperature where none is stated, °F: the criterion of the cylinders' classes.
pub const CYLINDER_HIGHEST_F: f64 = 130.0;
/// The temperature of the 80 % rule, °F.
const RULE_F: f64 = 77.0;
/// Density of water at 60 °F, by whose mass a water capacity is stamped, kg/m³.
const WATER_KG_M3: f64 = 999.02;

/// A question about a cylinder.
#[derive(Debug, Clone, Copy)]
pub struct Cylinder<'a> {
    /// What is, or may be, inside: 1 to [`CANDIDATES_MAX`]. With several, the lightest liquid among them decides, at
    /// each temperature.
    pub candidates: &'a [&'static Refrigerant],
    /// The water capacity stamped on the cylinder, kg of water ([`bounds::WATER_CAPACITY`]). A volume in litres is that
    /// many kilograms within 0.1 %.
    pub water_capacity_kg: f64,
    /// The tare stamped on the cylinder, kg ([`bounds::CYLINDER_MASS`]): gives the limit as a scale shows it.
    pub tare_kg: Option<f64>,
    /// The mass inside, kg; see [`cylinder_contents_kg`].
    pub contents_kg: Option<f64>,
    /// The temperature of the cylinder now.
    pub temperature: Option<Temperature>,
    /// The highest temperature it may meet; 130 °F if none.
    pub highest_temperature: Option<Temperature>,
}

impl<'a> Cylinder<'a> {
    /// An empty cylinder that may become as hot as 130 °F.
    #[must_use]
    pub const fn new(candidates: &'a [&'static Refrigerant], water_capacity_kg: f64) -> Self {
        Self {
            candidates,
            water_capacity_kg,
            tare_kg: None,
            contents_kg: None,
            temperature: None,
            highest_temperature: None,
        }
    }
}

/// The temperature at which a filling becomes nothing but liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FullTemperature {
    /// K.
    pub kelvin: f64,
    /// The density curve ends here, near the critical point, and the cylinder is not full yet: the temperature is at
    /// least this.
    pub at_least: bool,
}

/// How the contents compare.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contents {
    /// In words.
    pub verdict: FillVerdict,
    /// Limit less contents, kg: negative where it is overfilled.
    pub room_left_kg: f64,
    /// When the present contents fill the cylinder.
    pub full: FullTemperature,
    /// That less the highest temperature, K: negative where it would burst before.
    pub margin_k: f64,
    /// That less the cylinder's temperature now, K, where it is given.
    pub margin_now_k: Option<f64>,
}

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct CylinderFill {
    /// Volume inside, m³.
    pub volume_m3: f64,
    /// The most by the 80 % rule, kg.
    pub eighty_percent_kg: f64,
    /// The mass whose liquid fills the cylinder at the highest temperature, kg.
    pub liquid_full_kg: f64,
    /// The lesser of the two: the limit, kg.
    pub limit_kg: f64,
    /// Which of the two it is.
    pub rule: FillRule,
    /// What a scale shows at the limit, kg, where the tare is given.
    pub scale_limit_kg: Option<f64>,
    /// When a cylinder filled to the limit is full of liquid.
    pub full_at_limit: FullTemperature,
    /// That less the highest temperature, K: at least this much where the temperature is at least that.
    pub margin_at_limit_k: f64,
    /// The highest temperature, K.
    pub highest_temperature_k: f64,
    /// How the contents compare, where they are given.
    pub contents: Option<Contents>,
}

/// The mass inside a cylinder: what a scale shows less the tare, kg.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::CYLINDER_MASS`], or where the scale shows less than the
/// tare.
pub fn cylinder_contents_kg(scale_kg: f64, tare_kg: f64) -> Result<f64, Error> {
    let bound = bounds::CYLINDER_MASS;
    let tare = bound.check(tare_kg)?;
    let advice = "a cylinder weighs no less than its tare: check the scale's zero and the stamp";
    Ok(bounds::within("mass on the scale", bound.unit, scale_kg, tare, bound.upper, advice)? - tare)
}

/// How much a cylinder may hold, and how its contents compare.
///
/// The tolerance of scale and stamp is not counted: stop short of the limit by as much as they may be off. A cylinder must
/// also be rated for the refrigerant's pressure and, where it burns, for that; filling is for certified people.
///
/// # Errors
/// [`Error::NotAvailable`] where a candidate has no liquid, or almost none, at 130 °F, as R-744: its cylinders are filled
/// by the ratio stamped on them. [`Error::OutOfRange`] or [`Error::NotFinite`] for values outside their bounds, contents
/// beyond what the coldest liquid would fill, and temperatures outside the refrigerant's density curve.
///
/// ```
/// use satline::refrigerant;
/// use satline::safety::{Cylinder, FillVerdict, cylinder_fill};
/// // A recovery cylinder (demo) of 47.6 lb water capacity and 28.0 lb tare, 20 lb of R-410A inside.
/// let kg = |pounds: f64| pounds * satline::quantity::KG_PER_POUND;
/// let inside = [&refrigerant::R410A];
/// let mut cylinder = Cylinder::new(&inside, kg(47.6));
/// cylinder.tare_kg = Some(kg(28.0));
/// cylinder.contents_kg = Some(kg(20.0));
/// let found = cylinder_fill(&cylinder)?;
/// assert!((found.limit_kg / kg(1.0) - 40.4).abs() < 0.1);
/// assert!((found.scale_limit_kg.unwrap() / kg(1.0) - 68.4).abs() < 0.1);
/// let contents = found.contents.unwrap();
/// assert_eq!(contents.verdict, FillVerdict::RoomLeft);
/// assert!((contents.room_left_kg / kg(1.0) - 20.4).abs() < 0.1);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn cylinder_fill(cylinder: &Cylinder<'_>) -> Result<CylinderFill, Error> {
    bounds::CANDIDATE_COUNT.check(cylinder.candidates.len() as f64)?;
    let volume = bounds::WATER_CAPACITY.check(cylinder.water_capacity_kg)? / WATER_KG_M3;
    let tare = cylinder.tare_kg.map(|tare| bounds::CYLINDER_MASS.check(tare)).transpose()?;
    let liquid = Lightest::of(cylinder.candidates)?;
    let highest = match cylinder.highest_temperature {
        Some(given) => liquid.within("highest temperature of the cylinder", given, kelvin_from_fahrenheit(RULE_F))?,
        None => kelvin_from_fahrenheit(CYLINDER_HIGHEST_F),
    };
    let eighty = FILL_SHARE * volume * liquid.density(kelvin_from_fahrenheit(RULE_F))?;
    let full = volume * liquid.density(highest)?;
    let limit = eighty.min(full);
    let full_at_limit = liquid.full(limit / volume, volume)?;
    Ok(CylinderFill {
        volume_m3: volume,
        eighty_percent_kg: eighty,
        liquid_full_kg: full,
        limit_kg: limit,
        rule: if full < eighty { FillRule::LiquidFull } else { FillRule::EightyPercent },
        scale_limit_kg: tare.map(|tare| tare + limit),
        full_at_limit,
        margin_at_limit_k: full_at_limit.kelvin - highest,
        highest_temperature_k: highest,
        contents: match cylinder.contents_kg {
            Some(contents) => {
                let contents = bounds::CYLINDER_MASS.check(contents)?;
                Some(liquid.contents(contents, volume, limit, highest, cylinder.temperature)?)
            }
            None => {
                // A temperature that cannot be is refused even where nothing depends on it.
                cylinder.temperature.map(|now| liquid.now(now)).transpose()?;
                None
            }
        },
    })
}

/// The lightest liquid among the candidates, at each temperature.
struct Lightest<'a> {
    candidates: &'a [&'static Refrigerant],
    lower: f64,
    upper: f64,
}

impl<'a> Lightest<'a> {
    fn of(candidates: &'a [&'static Refrigerant]) -> Result<Self, Error> {
        let curves = || candidates.iter().map(|candidate| &candidate.properties.liquid_density);
        let lower = curves().fold(0.0, |lower: f64, curve| lower.max(curve.lower));
        let upper = curves().fold(f64::INFINITY, |upper, curve| upper.min(curve.upper));
        if upper < kelvin_from_fahrenheit(CYLINDER_HIGHEST_F) {
            return Err(Error::NotAvailable {
                quantity: "filling of a cylinder by liquid density",
                reason: "at 130 °F (54 °C) this refrigerant has no liquid, or is within 1 % of its critical temperature, so a hot van makes it supercritical: such cylinders are filled by the ratio of mass to volume stamped on them, and rated for that pressure",
            });
        }
        Ok(Self { candidates, lower, upper })
    }

    fn within(&self, quantity: &'static str, temperature: Temperature, lower: f64) -> Result<f64, Error> {
        let advice = "the density of the liquid is known between these; a cylinder does not belong outside them";
        bounds::within(quantity, "K", temperature.kelvin(), lower, self.upper, advice)
    }

    fn now(&self, temperature: Temperature) -> Result<f64, Error> {
        self.within("temperature of the cylinder", temperature, self.lower)
    }

    fn density(&self, kelvin: f64) -> Result<f64, Error> {
        let mut lightest = f64::INFINITY;
        for candidate in self.candidates {
            lightest = lightest.min(candidate.properties.liquid_density.at(kelvin)?);
        }
        Ok(lightest)
    }

    /// Where the liquid's density has come down to that of the filling. Densities fall as the liquid warms, so halving
    /// the interval finds it.
    fn full(&self, filling_density: f64, volume: f64) -> Result<FullTemperature, Error> {
        let (mut colder, mut warmer) = (self.lower, self.upper);
        let most = self.density(colder)?;
        if filling_density > most {
            let advice = "no liquid of this refrigerant is so dense: check scale, tare and water capacity, and stay away from a cylinder that may be full";
            let bound = bounds::CYLINDER_MASS;
            return Err(bounds::refuse(
                "contents of the cylinder",
                bound.unit,
                filling_density * volume,
                bound.lower,
                most * volume,
                advice,
            ));
        }
        if filling_density <= self.density(warmer)? {
            return Ok(FullTemperature { kelvin: warmer, at_least: true });
        }
        for _ in 0..48 {
            let middle = 0.5 * (colder + warmer);
            if self.density(middle)? > filling_density {
                colder = middle;
            } else {
                warmer = middle;
            }
        }
        Ok(FullTemperature { kelvin: 0.5 * (colder + warmer), at_least: false })
    }

    fn contents(
        &self,
        contents: f64,
        volume: f64,
        limit: f64,
        highest: f64,
        now: Option<Temperature>,
    ) -> Result<Contents, Error> {
        let now = now.map(|now| self.now(now)).transpose()?;
        let full = self.full(contents / volume, volume)?;
        let margin_now_k = now.map(|now| full.kelvin - now);
        Ok(Contents {
            verdict: if margin_now_k.is_some_and(|margin| margin <= 0.0 && !full.at_least) {
                FillVerdict::FullOfLiquid
            } else if contents > limit {
                FillVerdict::Overfilled
            } else {
                FillVerdict::RoomLeft
            },
            room_left_kg: limit - contents,
            full,
            margin_k: full.kelvin - highest,
            margin_now_k,
        })
    }
}
