//! The liquid line: what it loses, how much subcooling is left at the metering device, and whether the liquid boils before.

use super::answers::{Chosen, LineAdvice, LineCaution, advice_in, cautions_in, cautions_with};
use super::fluid::Place;
use super::lift::{STANDARD_GRAVITY, check_phase};
use super::march::{Heat, Line, Parts};
use super::run::{Run, friction_factor_of_one};
use crate::bounds;
use crate::eos::{End, PhaseKind, Properties, StateInput};
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate_all};

/// How many standard uncertainties of subcooling must be left for flash gas to be ruled out.
pub const FLASH_COVERAGE: f64 = 2.0;
/// Friction beyond this loss of bubble temperature, K: the line is small (common practice: 1 to 2 °F; ASHRAE Refrigeration
/// 2010, chapter 1, sizes liquid lines for 0.5 to 1 K; from memory).
const FRICTION_LIMIT_K: f64 = 1.0;
/// Liquid faster than this, m/s, hammers at valves that shut quickly (300 ft/min; common practice).
const FASTEST_M_S: f64 = 1.524;

/// A liquid line with its refrigerant. What is not measured is [`Uncertain::exact`].
#[derive(Debug, Clone, Copy)]
pub struct LiquidLine<'a> {
    /// The refrigerant's properties; the reference state does not matter.
    pub properties: &'a Properties,
    /// From the outdoor unit's liquid port to the metering device; the rise is the lift where the evaporator is above.
    pub run: Run,
    /// kg/s ([`bounds::MASS_FLOW`]).
    pub mass_flow_kg_s: Uncertain,
    /// At the liquid port, Pa, absolute.
    pub pressure_pa: Uncertain,
    /// At the liquid port, K.
    pub temperature_k: Uncertain,
    /// What a drier or other accessories lose at this flow, Pa, taken as at the beginning ([`bounds::ACCESSORY_DROP`]).
    pub drier_drop_pa: Uncertain,
    /// Heat that the whole line takes up, W, negative where it gives heat off ([`bounds::LINE_HEAT`]).
    pub heat_gain_w: Uncertain,
}

impl<'a> LiquidLine<'a> {
    /// Without a drier and without heat gain.
    #[must_use]
    pub const fn new(
        properties: &'a Properties,
        run: Run,
        mass_flow_kg_s: Uncertain,
        pressure_pa: Uncertain,
        temperature_k: Uncertain,
    ) -> Self {
        let none = Uncertain::exact(0.0);
        Self { properties, run, mass_flow_kg_s, pressure_pa, temperature_k, drier_drop_pa: none, heat_gain_w: none }
    }
}

/// What a liquid line does. Where flash gas begins on the way, the drop is at least that computed: two phases lose more
/// than the liquid does as which the rest of the line is counted.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct LiquidLineResult {
    /// Loss by friction, fittings included, Pa.
    pub friction_pa: Uncertain,
    /// Loss by height, Pa; negative where the liquid flows down.
    pub lift_pa: Uncertain,
    /// The whole loss, drier included, Pa.
    pub drop_pa: Uncertain,
    /// At the metering device, Pa, absolute.
    pub outlet_pressure_pa: Uncertain,
    /// At the metering device, K, as liquid.
    pub outlet_temperature_k: Uncertain,
    /// Subcooling at the liquid port, K.
    pub subcooling_k: Uncertain,
    /// Subcooling left at the metering device, K. Negative: so much is missing for liquid to arrive.
    pub subcooling_left_k: Uncertain,
    /// Subcooling that the line takes, K: at least so much is needed at the port for liquid to arrive.
    pub subcooling_needed_k: Uncertain,
    /// Friction as a loss of bubble temperature, K.
    pub friction_k: f64,
    /// Lift as a loss of bubble temperature, K.
    pub lift_k: f64,
    /// At the port, m/s.
    pub velocity_m_s: Uncertain,
    /// At the port.
    pub reynolds: f64,
    /// Whether the loss is more than computed, since flash gas begins on the way.
    pub at_least: bool,
    /// Where flash gas begins, metres along the tube; none where liquid arrives.
    pub flash_begins_m: Option<f64>,
    /// The vapour's share of the mass at the metering device; at least this much. None where liquid arrives.
    pub flash_vapor_share: Option<f64>,
    advice: u32,
    cautions: u32,
}

impl LiquidLineResult {
    /// What to do, or to look at, in the order of their numbers.
    pub fn advice(&self) -> impl Iterator<Item = LineAdvice> + '_ {
        advice_in(self.advice)
    }

    /// The advice as a bit set: bit `n` stands for the advice of number `n`.
    #[must_use]
    pub const fn advice_bits(&self) -> u32 {
        self.advice
    }

    /// What can hurt or mislead.
    pub fn cautions(&self) -> impl Iterator<Item = LineCaution> + '_ {
        cautions_in(self.cautions)
    }

    /// The cautions as a bit set.
    #[must_use]
    pub const fn caution_bits(&self) -> u32 {
        self.cautions
    }
}

/// Follows the liquid from the outdoor unit's port to the metering device.
///
/// Friction by [`super::super::friction_factor`] with fittings as equivalent length, weight by the rise, the drier at the
/// beginning; the liquid keeps its enthalpy but for the heat gain and what it loses to the height. The rise and the heat
/// are taken as even over the length. Uncertain besides the inputs: the bore by the tube's tolerance, the friction factor
/// (5 %), the viscosity by its stated error, an estimated blend's bubble temperatures.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] naming the quantity: a length, flow, drop or heat outside its bound, a rise
/// greater than the length, a temperature above the bubble temperature (the state is no liquid), a drop of more than half
/// of the pressure. [`Error::NotConverged`] near the critical point.
///
/// ```
/// use satline::eos::{Properties, Reference, model};
/// use satline::lineset::{Fittings, LiquidLine, Run, Tube, liquid_line};
/// use satline::uncertain::Uncertain;
/// let r454b = Properties::of(&model::R454B, Reference::Iir)?;
/// let run = Run {
///     tube: Tube::named("3/8")?,
///     length_m: Uncertain::new(18.288, 0.3)?,
///     rise_m: Uncertain::new(6.096, 0.1)?,
///     fittings: Fittings::NONE,
/// };
/// let (flow, pressure) = (Uncertain::new(0.05, 0.003)?, Uncertain::new(2_514_490.0, 14e3)?);
/// let line = liquid_line(&LiquidLine::new(&r454b, run, flow, pressure, Uncertain::new(308.15, 0.5)?))?;
/// assert!((line.lift_pa.value / 6894.757 - 8.2).abs() < 0.05 && line.flash_begins_m.is_none());
/// assert!(line.subcooling_left_k.value < line.subcooling_k.value);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn liquid_line(line: &LiquidLine<'_>) -> Result<LiquidLineResult, Error> {
    let mixture = line.properties.mixture();
    let identity = mixture.model().identity;
    let offset = Uncertain { value: 0.0, standard_uncertainty: identity.saturation_uncertainty_k.unwrap_or(0.0) };
    let inputs = [
        line.mass_flow_kg_s,
        line.run.length_m,
        line.run.rise_m,
        line.pressure_pa,
        line.temperature_k,
        line.drier_drop_pa,
        line.heat_gain_w,
        friction_factor_of_one(mixture.viscosity_error()?),
        line.run.bore(),
        offset,
    ];
    let nominal = Trace::of(line, inputs.map(|input| input.value), None)?;
    let pieces = Some(nominal.pieces);
    let values = propagate_all(inputs, |moved| Trace::of(line, moved, pieces).map(|trace| trace.numbers()))?;
    let [friction_pa, lift_pa, drop_pa, outlet_pressure_pa, outlet_temperature_k, subcooling_k, left, taken, velocity] =
        values;

    let to_kelvin = |loss: f64| nominal.bubble_loss(loss);
    let (friction_k, lift_k) = (to_kelvin(nominal.parts.friction), to_kelvin(nominal.parts.lift));
    let flash_vapor_share = match nominal.flash_begins {
        Some(_) => nominal.vapor_share(line.properties)?,
        None => None,
    };
    let flashes = nominal.flash_begins.is_some();
    let advice = Chosen::default()
        .with(LineAdvice::FlashGasExpected, flashes)
        .with(LineAdvice::FlashGasPossible, !flashes && left.value < FLASH_COVERAGE * left.standard_uncertainty)
        .with(LineAdvice::LiquidLineTooSmall, friction_k > FRICTION_LIMIT_K)
        .with(LineAdvice::LiquidTooFast, velocity.value > FASTEST_M_S)
        .with(LineAdvice::LiftHigh, line.run.is_high())
        .with(LineAdvice::LineLong, line.run.is_long())
        .bits();
    Ok(LiquidLineResult {
        friction_pa,
        lift_pa,
        drop_pa,
        outlet_pressure_pa,
        outlet_temperature_k,
        subcooling_k,
        subcooling_left_k: left,
        subcooling_needed_k: taken,
        friction_k,
        lift_k,
        velocity_m_s: velocity,
        reynolds: nominal.reynolds,
        at_least: flashes,
        flash_begins_m: nominal.flash_begins,
        flash_vapor_share,
        advice,
        cautions: cautions_with(advice, identity.safety_class.is_flammable()),
    })
}

/// One way through the line.
struct Trace {
    pieces: u32,
    parts: Parts,
    drop: f64,
    from: Place,
    to: Place,
    subcooling: f64,
    left: f64,
    /// Bubble temperatures at both ends, K.
    bubbles: [f64; 2],
    velocity: f64,
    reynolds: f64,
    flash_begins: Option<f64>,
}

impl Trace {
    fn of(question: &LiquidLine<'_>, values: [f64; 10], pieces: Option<u32>) -> Result<Self, Error> {
        let [mass_flow, length, rise, pressure, temperature, drier, heat, scale, diameter, offset] = values;
        let (properties, run) = (question.properties, &question.run);
        Run::check(length, rise, mass_flow)?;
        bounds::ACCESSORY_DROP.check(drier)?;
        bounds::LINE_HEAT.check(heat)?;
        let inlet_bubble = check_phase(properties, PhaseKind::Liquid, temperature, pressure)?;
        let mixture = properties.mixture();
        let line = Line {
            properties,
            mass_flow,
            diameter,
            roughness: run.tube.roughness_m(),
            length,
            friction_length: length + run.fittings.equivalent_length_m(diameter),
            rise,
            friction_scale: scale,
            heat: Heat::Power(heat),
        };
        let bubble_at = |pressure: f64| Ok(mixture.at_pressure(End::Bubble, pressure)?.temperature);
        let density = mixture.density(temperature, pressure)? * mixture.molar_mass;
        let from = Place::near(properties, temperature, pressure, density)?;
        line.check_drop(pressure, drier)?;
        let bubble = if drier > 0.0 { bubble_at(pressure - drier)? } else { inlet_bubble };
        // Behind the drier; should it make the liquid boil, the liquid before it counts on.
        let mut margin = bubble - temperature;
        let mut flash_begins = (margin < 0.0).then_some(0.0);
        let mut place = match flash_begins {
            None if drier > 0.0 => Place::near(properties, temperature, pressure - drier, density)?,
            _ => Place { pressure: pressure - drier, ..from },
        };
        let pieces = pieces.unwrap_or_else(|| line.pieces(&from));
        let distance = length / f64::from(pieces);
        let (mut parts, mut end_bubble) = (Parts::default(), bubble);
        for piece in 0..pieces {
            let (next, change) = match flash_begins {
                None => line.step(&place, distance)?,
                Some(_) => line.held(&place, distance),
            };
            parts = parts.plus(&change);
            line.check_drop(pressure, drier + parts.drop())?;
            end_bubble = bubble_at(next.pressure)?;
            let before = margin;
            margin = end_bubble - next.temperature;
            if flash_begins.is_none() && margin < 0.0 {
                flash_begins = Some(distance * (f64::from(piece) + before / (before - margin)));
            }
            place = next;
        }
        Ok(Self {
            pieces,
            drop: drier + parts.drop(),
            subcooling: inlet_bubble + offset - temperature,
            left: margin + offset,
            bubbles: [inlet_bubble, end_bubble],
            velocity: line.mass_flux() / from.density,
            reynolds: line.reynolds(from.viscosity),
            parts,
            from,
            to: place,
            flash_begins,
        })
    }

    fn numbers(&self) -> [f64; 9] {
        [
            self.parts.friction,
            self.parts.lift,
            self.drop,
            self.to.pressure,
            self.to.temperature,
            self.subcooling,
            self.left,
            self.subcooling - self.left,
            self.velocity,
        ]
    }

    /// A part of the drop as its share of the loss of bubble temperature.
    fn bubble_loss(&self, loss: f64) -> f64 {
        let [inlet, outlet] = self.bubbles;
        let drop = self.from.pressure - self.to.pressure;
        if drop.abs() < 1e-6 * self.from.pressure { 0.0 } else { loss * (inlet - outlet) / drop }
    }

    /// The vapour's share at the end, where the liquid has boiled.
    fn vapor_share(&self, properties: &Properties) -> Result<Option<f64>, Error> {
        let input = StateInput::PressureEnthalpy { pressure: self.to.pressure, enthalpy: self.to.enthalpy };
        Ok(properties.state(input)?.quality)
    }
}

impl Line<'_> {
    /// A piece in which the liquid stays as it is, but for its pressure and enthalpy.
    fn held(&self, from: &Place, distance: f64) -> (Place, Parts) {
        let flux = self.mass_flux();
        let straight = self.factor(from.viscosity) / self.diameter * flux * flux / (2.0 * from.density);
        let climb = STANDARD_GRAVITY * self.rise / self.length * distance;
        let heat = match self.heat {
            Heat::Power(power) => power * distance / self.length,
            Heat::Exchange(_) => 0.0,
        };
        let parts = Parts {
            friction: self.friction_scale * straight * self.friction_length / self.length * distance,
            lift: from.density * climb,
            acceleration: 0.0,
            heat,
        };
        let enthalpy = from.enthalpy + heat / self.mass_flow - climb;
        (Place { pressure: from.pressure - parts.drop(), enthalpy, ..*from }, parts)
    }
}
