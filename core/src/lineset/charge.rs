//! The charge for a line set: what both lines hold beyond the length that the factory charge covers, and accessories.

use super::answers::{ChargeAction, ChargeAdvice, ChargeCaution, LinePhase};
use super::density::{Behind, Flashed, LineDensities};
use super::set::{Line, LineSet, OutdoorDevice, uncertain};
use super::tube::{Tube, bore_area_m2};
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::refrigerant::identity::Identity;
use crate::uncertain::{Uncertain, propagate, root_of_squares};

/// By how many standard uncertainties the maker's figure and the computed one may differ.
const COVERAGE: f64 = 2.0;

/// What one line holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineCharge {
    /// Mean density in it, kg/m³.
    pub density_kg_m3: Uncertain,
    /// Quality of the flow behind an outdoor metering device; none in a line of one phase.
    pub quality: Option<f64>,
    /// Mass per length, kg/m.
    pub charge_per_length_kg_m: Uncertain,
    /// Mass in the whole line, kg.
    pub holds_kg: Uncertain,
    /// Mass beyond what the factory charge covers, kg; negative where it covers more.
    pub beyond_kg: Uncertain,
}

/// The charge for a line set.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct LineSetCharge {
    /// What to add to the factory charge, kg; negative: what to recover.
    pub mass_kg: Uncertain,
    /// Add, recover or leave.
    pub action: ChargeAction,
    /// What to check of the figures.
    pub advice: ChargeAdvice,
    cautions: u32,
    /// What the small line holds.
    pub liquid: LineCharge,
    /// What the large line holds.
    pub vapor: LineCharge,
    /// Both lines per length, computed, kg/m.
    pub charge_per_length_kg_m: Uncertain,
    /// Both lines beyond what is covered, computed, kg; the same as the mass less accessories unless the maker's figure
    /// was given.
    pub computed_kg: Uncertain,
    /// Drier and accessories, kg.
    pub accessories_kg: Uncertain,
}

impl LineSetCharge {
    /// What can hurt, in the order of their numbers.
    pub fn cautions(&self) -> impl Iterator<Item = ChargeCaution> + '_ {
        ChargeCaution::ALL.iter().copied().filter(|caution| self.cautions & bit(*caution) != 0)
    }

    /// The cautions as a bit set: bit `n` stands for the caution with number `n`.
    #[must_use]
    pub const fn caution_bits(&self) -> u32 {
        self.cautions
    }
}

const fn bit(caution: ChargeCaution) -> u32 {
    1_u32.wrapping_shl(caution.number() as u32)
}

/// The charge for a line set: what both lines hold beyond the length that the factory charge covers, with drier and
/// accessories; or, where the maker's figure per length is given, by that figure, with the computed one beside it.
///
/// The uncertainty is that of lengths, bores, temperatures, pressures, densities and, behind an outdoor metering device,
/// of the slip model; each is independent of the others but for the lengths.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for values outside [`bounds::LINE_SET_LENGTH`], [`bounds::COVERED_LENGTH`],
/// [`bounds::MASS`], [`bounds::CHARGE_PER_LENGTH`] and the bounds of their uncertainties, and as
/// [`LineDensities::liquid_density`], [`LineDensities::vapor_density`] and [`LineDensities::behind_device`]: a liquid line
/// given a vapour's state names the bubble temperature as its limit, a vapour line given a liquid's the dew temperature.
///
/// ```
/// use satline::lineset::{Compact, ChargeAction, Covered, Line, LineSet, Tube, line_set_charge};
/// use satline::refrigerant::R454B;
/// use satline::uncertain::Uncertain;
/// // Demo: 60 ft of 3/8 and 3/4 in, 15 ft covered; liquid at 95 °F and 350 psig, vapour at 55 °F and 45 °F dew.
/// let set = LineSet {
///     liquid: Line::new(Tube::named("3/8")?, 18.288, 308.15, Some(2.5145e6)),
///     vapor: Line::new(Tube::named("3/4")?, 18.288, 285.93, Some(917_222.0)),
///     outdoor_device: None,
///     covered: Covered::length_m(4.572),
///     accessories_kg: &[],
///     makers_charge_per_length_kg_m: None,
/// };
/// let charge = line_set_charge(&Compact(&R454B), &set)?;
/// assert_eq!(charge.action, ChargeAction::Add);
/// assert!((charge.mass_kg.value - 0.728).abs() < 0.01 && charge.mass_kg.standard_uncertainty < 0.03);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn line_set_charge(densities: &impl LineDensities, set: &LineSet<'_>) -> Result<LineSetCharge, Error> {
    let (liquid, vapor) = (set.liquid.checked()?, set.vapor.checked()?);
    let covered_length = uncertain(&bounds::COVERED_LENGTH, set.covered.length_m, &bounds::LENGTH_UNCERTAINTY)?;
    let (liquid_density, quality) = small_line_density(densities, &liquid, set.outdoor_device)?;
    let vapor_density = line_density(densities, LinePhase::Vapor, &vapor)?;

    let small = Contents { line: &liquid, density: liquid_density, covered_tube: set.covered.liquid_tube };
    let large = Contents { line: &vapor, density: vapor_density, covered_tube: set.covered.vapor_tube };
    let both = total(&[small, large], covered_length)?;
    let accessories = sum(set.accessories_kg)?;
    let per_length = sum_of([small.per_length()?, large.per_length()?]);

    let makers = match set.makers_charge_per_length_kg_m {
        Some(figure) => Some(uncertain(&bounds::CHARGE_PER_LENGTH, figure, &bounds::CHARGE_PER_LENGTH)?),
        None => None,
    };
    let lines = match makers {
        Some(figure) => propagate([figure, liquid.length_m, covered_length], |[figure, length, covered]| {
            Ok(figure * (length - covered))
        })?,
        None => both,
    };
    let mass = sum_of([lines, accessories]);
    Ok(LineSetCharge {
        mass_kg: mass,
        action: if mass.value.abs() <= mass.standard_uncertainty {
            ChargeAction::Nothing
        } else if mass.value > 0.0 {
            ChargeAction::Add
        } else {
            ChargeAction::Recover
        },
        advice: match makers {
            None => ChargeAdvice::AskForMakersFigure,
            Some(figure) => {
                let apart = sum_of([figure, per_length]).standard_uncertainty;
                if (figure.value - per_length.value).abs() > COVERAGE * apart {
                    ChargeAdvice::FiguresDiffer
                } else {
                    ChargeAdvice::WeighThenVerify
                }
            }
        },
        cautions: cautions(densities.identity()),
        liquid: small.charge(quality, covered_length)?,
        vapor: large.charge(None, covered_length)?,
        charge_per_length_kg_m: per_length,
        computed_kg: both,
        accessories_kg: accessories,
    })
}

/// A density with the uncertainty of its state, and `share` of it beside that.
fn widened(density: Uncertain, share: f64) -> Uncertain {
    Uncertain {
        value: density.value,
        standard_uncertainty: root_of_squares([density.standard_uncertainty, share * density.value]),
    }
}

fn line_density(densities: &impl LineDensities, phase: LinePhase, line: &Line) -> Result<Uncertain, Error> {
    let at_state = match line.pressure_pa {
        Some(pressure) => propagate([line.temperature_k, pressure], |[temperature, pressure]| {
            densities.line_density(phase, temperature, Some(pressure))
        }),
        None => propagate([line.temperature_k], |[temperature]| densities.line_density(phase, temperature, None)),
    }?;
    Ok(widened(at_state, densities.relative_uncertainty(phase)))
}

/// The density in the small line, and its quality where it is two-phase.
fn small_line_density(
    densities: &impl LineDensities,
    line: &Line,
    device: Option<OutdoorDevice>,
) -> Result<(Uncertain, Option<f64>), Error> {
    let Some(device) = device else { return Ok((line_density(densities, LinePhase::Liquid, line)?, None)) };
    let (known, bound, place): (_, _, fn(f64) -> Behind) = match device.behind {
        Behind::Temperature(value) => (value, &bounds::TEMPERATURE_UNCERTAINTY, Behind::Temperature),
        Behind::Pressure(value) => (value, &bounds::PRESSURE_UNCERTAINTY, Behind::Pressure),
    };
    let known = Uncertain { value: known, standard_uncertainty: bound.check(device.standard_uncertainty)? };
    let at = |temperature, pressure, known| -> Result<Flashed, Error> {
        densities.behind_device(temperature, pressure, place(known))
    };
    let density = match line.pressure_pa {
        Some(pressure) => propagate([line.temperature_k, pressure, known], |[temperature, pressure, known]| {
            Ok(at(temperature, Some(pressure), known)?.density)
        }),
        None => {
            propagate([line.temperature_k, known], |[temperature, known]| Ok(at(temperature, None, known)?.density))
        }
    }?;
    let here = at(line.temperature_k.value, line.pressure_pa.map(|pressure| pressure.value), known.value)?;
    Ok((widened(density, here.relative_uncertainty), Some(here.quality)))
}

/// A line and the density in it.
#[derive(Clone, Copy)]
struct Contents<'a> {
    line: &'a Line,
    density: Uncertain,
    covered_tube: Option<Tube>,
}

impl Contents<'_> {
    fn inside(&self) -> Uncertain {
        let tube = &self.line.tube;
        Uncertain { value: tube.inside_diameter_m(), standard_uncertainty: tube.inside_diameter_uncertainty_m() }
    }

    /// Mass beyond the covered length, at those values. The maker's tube is taken as it is named.
    fn beyond(&self, inside: f64, density: f64, length: f64, covered: f64) -> f64 {
        let own = bore_area_m2(inside);
        let covered_area = self.covered_tube.map_or(own, |tube| tube.bore_area_m2());
        density * (own * length - covered_area * covered)
    }

    fn per_length(&self) -> Result<Uncertain, Error> {
        propagate([self.inside(), self.density], |[inside, density]| Ok(self.beyond(inside, density, 1.0, 0.0)))
    }

    fn charge(&self, quality: Option<f64>, covered: Uncertain) -> Result<LineCharge, Error> {
        Ok(LineCharge {
            density_kg_m3: self.density,
            quality,
            charge_per_length_kg_m: self.per_length()?,
            holds_kg: propagate([self.inside(), self.density, self.line.length_m], |[inside, density, length]| {
                Ok(self.beyond(inside, density, length, 0.0))
            })?,
            beyond_kg: total(&[*self], covered)?,
        })
    }
}

/// What lines hold beyond the covered length. The errors of their lengths are one, of the tape; so is that of the
/// covered length. The others are each line's own.
fn total(lines: &[Contents<'_>], covered: Uncertain) -> Result<Uncertain, Error> {
    let all = |tape: f64, covered: f64| -> f64 {
        let of = |contents: &Contents<'_>| {
            let length = contents.line.length_m;
            let moved = length.value + tape * length.standard_uncertainty;
            contents.beyond(contents.inside().value, contents.density.value, moved, covered)
        };
        lines.iter().map(of).sum()
    };
    let tape = Uncertain { value: 0.0, standard_uncertainty: 1.0 };
    let lengths = propagate([tape, covered], |[tape, covered]| Ok(all(tape, covered)))?;
    let mut squares = lengths.standard_uncertainty * lengths.standard_uncertainty;
    for contents in lines {
        let length = contents.line.length_m.value;
        let own = propagate([contents.inside(), contents.density], |[inside, density]| {
            Ok(contents.beyond(inside, density, length, covered.value))
        })?;
        squares += own.standard_uncertainty * own.standard_uncertainty;
    }
    Ok(Uncertain { value: lengths.value, standard_uncertainty: math::sqrt(squares) })
}

fn sum(masses: &[Uncertain]) -> Result<Uncertain, Error> {
    let mut all = Uncertain::exact(0.0);
    for mass in masses {
        all = sum_of([all, uncertain(&bounds::MASS, *mass, &bounds::MASS)?]);
    }
    Ok(all)
}

/// The sum of independent values.
fn sum_of<const N: usize>(values: [Uncertain; N]) -> Uncertain {
    Uncertain {
        value: values.iter().map(|value| value.value).sum(),
        standard_uncertainty: root_of_squares(values.map(|value| value.standard_uncertainty)),
    }
}

fn cautions(identity: &Identity) -> u32 {
    let class = identity.safety_class;
    let carbon_dioxide =
        identity.components.iter().any(|component| component.designation == "R-744" && component.mass_fraction > 0.5);
    [
        (ChargeCaution::LicensedPractice, true),
        (ChargeCaution::Pressure, true),
        (ChargeCaution::FlammableRefrigerant, class.is_flammable()),
        (ChargeCaution::RoomLimit, class.is_flammable() || class.name().starts_with('B')),
        (ChargeCaution::ToxicRefrigerant, class.name().starts_with('B')),
        (ChargeCaution::ChargeAsLiquid, identity.components.len() > 1),
        (ChargeCaution::HighPressure, carbon_dioxide),
    ]
    .into_iter()
    .filter(|(_, given)| *given)
    .fold(0, |bits, (caution, _)| bits | bit(caution))
}
