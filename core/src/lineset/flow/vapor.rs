//! Suction and discharge lines: what they lose, whether oil comes back, and how much heat they take up.

use super::answers::{Chosen, LineAdvice, LineCaution, advice_in, cautions_in, cautions_with};
use super::fluid::Place;
use super::heat::{Exchange, LineHeat};
use super::lift::check_phase;
use super::march::{Heat, Line, Parts};
use super::oil::oil_return_mass_flux_kg_s_m2;
use super::run::{LineEnd, Run, friction_factor_of_one};
use crate::bounds;
use crate::charge::answers::answers;
use crate::eos::{End, PhaseKind, Properties, StateInput};
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate_all};

/// Clearance volume over displacement where none is given (common practice for pistons; a scroll's is near 0).
pub const DEFAULT_CLEARANCE: f64 = 0.04;
/// Loss of dew temperature, K, beyond which a vapour line is small: 2 °F (ASHRAE Refrigeration 2010, chapter 1, from memory).
pub const DEW_LOSS_LIMIT_K: f64 = 2.0 / 1.8;
/// Warming on the way, K, beyond which insulation is due (9 °F; common practice).
const WARMING_LIMIT_K: f64 = 5.0;
/// How many standard uncertainties, and what share, a riser's flow must have above the least for oil to be sure of it.
const RISER_MARGIN: (f64, f64) = (2.0, 1.25);

answers! {
    /// What a vapour line does.
    VaporDuty {
        /// From the coil to the compressor; 4.5 to 20 m/s (ASHRAE Refrigeration 2010, chapter 1).
        Suction = 1 "suction" "Suction line, from the evaporating coil to the compressor.";
        /// From the compressor to the condensing coil: also a heat pump's vapour line in winter; 10 to 18 m/s (the same).
        Discharge = 2 "discharge" "Discharge line, from the compressor to the condensing coil.";
    }
}

impl VaporDuty {
    /// Slowest and fastest usual velocity, m/s.
    #[must_use]
    pub const fn velocities_m_s(self) -> (f64, f64) {
        match self {
            Self::Suction => (4.5, 20.0),
            Self::Discharge => (10.0, 18.0),
        }
    }
}

/// A vapour line with its refrigerant. What is not measured is [`Uncertain::exact`].
#[derive(Debug, Clone, Copy)]
pub struct VaporLine<'a> {
    /// The refrigerant's properties; the reference state does not matter.
    pub properties: &'a Properties,
    /// Suction or discharge.
    pub duty: VaporDuty,
    /// The way from one end to the other; the rise is positive where the vapour flows upwards.
    pub run: Run,
    /// kg/s ([`bounds::MASS_FLOW`]).
    pub mass_flow_kg_s: Uncertain,
    /// The end at which pressure and temperature are known: for a suction line read at the outdoor unit, the outlet.
    pub known_at: LineEnd,
    /// There, Pa, absolute.
    pub pressure_pa: Uncertain,
    /// There, K.
    pub temperature_k: Uncertain,
    /// Heat on the way.
    pub heat: LineHeat,
    /// Of the oil-rich liquid on the wall, kg/m³ ([`bounds::OIL_DENSITY`]).
    pub oil_density_kg_m3: Uncertain,
    /// Of a suction line: the compressor's discharge pressure, Pa, absolute, where the share of the clearance in the
    /// capacity loss is wanted.
    pub discharge_pressure_pa: Option<f64>,
    /// Clearance volume over displacement ([`bounds::CLEARANCE`]); counts only with a discharge pressure.
    pub clearance: f64,
}

impl<'a> VaporLine<'a> {
    /// Without heat, with the usual oil.
    #[must_use]
    pub const fn new(
        properties: &'a Properties,
        duty: VaporDuty,
        run: Run,
        mass_flow_kg_s: Uncertain,
        known_at: LineEnd,
        pressure_pa: Uncertain,
        temperature_k: Uncertain,
    ) -> Self {
        Self {
            properties,
            duty,
            run,
            mass_flow_kg_s,
            known_at,
            pressure_pa,
            temperature_k,
            heat: LineHeat::NONE,
            oil_density_kg_m3: Uncertain {
                value: super::oil::DEFAULT_OIL_DENSITY_KG_M3,
                standard_uncertainty: 50.0 / 1.732_050_807_568_877_2,
            },
            discharge_pressure_pa: None,
            clearance: DEFAULT_CLEARANCE,
        }
    }
}

/// Oil in a riser.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Riser {
    /// Mass flow over the least that carries oil up: below 1 oil stays behind. At the end where it is smaller.
    pub flow_over_least: Uncertain,
    /// The least mass flow, kg/s.
    pub least_mass_flow_kg_s: f64,
    /// The least velocity there, m/s.
    pub least_velocity_m_s: f64,
}

/// Heat on the way.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatGain {
    /// Taken up, W; negative where given off.
    pub heat_w: Uncertain,
    /// Outlet less inlet temperature, K.
    pub temperature_rise_k: Uncertain,
    /// Outlet less inlet superheat, K: what a superheat read at the compressor has more than the coil's. The loss of dew
    /// temperature is part of it. None above the critical pressure.
    pub superheat_rise_k: Option<Uncertain>,
    /// Of the outer surface where it is coldest, K; none without surroundings.
    pub coldest_surface_k: Option<Uncertain>,
    /// Whether that lies below the dew point of the air around it; none where that is not given.
    pub sweats: Option<bool>,
}

/// What a vapour line does.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct VaporLineResult {
    /// Loss by friction, fittings included, Pa.
    pub friction_pa: Uncertain,
    /// Loss by height, Pa; negative where the vapour flows down.
    pub lift_pa: Uncertain,
    /// Loss by acceleration, since the vapour grows thinner on the way, Pa.
    pub acceleration_pa: Uncertain,
    /// The whole loss, Pa.
    pub drop_pa: Uncertain,
    /// The loss as one of dew temperature, K; none above the critical pressure.
    pub dew_loss_k: Option<Uncertain>,
    /// Pa, absolute.
    pub inlet_pressure_pa: Uncertain,
    /// Pa, absolute.
    pub outlet_pressure_pa: Uncertain,
    /// K.
    pub inlet_temperature_k: Uncertain,
    /// K.
    pub outlet_temperature_k: Uncertain,
    /// At the inlet, K: of a suction line the coil's. None above the critical pressure.
    pub inlet_superheat_k: Option<Uncertain>,
    /// At the outlet, K: of a suction line the compressor's.
    pub outlet_superheat_k: Option<Uncertain>,
    /// m/s.
    pub inlet_velocity_m_s: Uncertain,
    /// m/s.
    pub outlet_velocity_m_s: Uncertain,
    /// At the inlet.
    pub reynolds: f64,
    /// Where the vapour flows upwards.
    pub riser: Option<Riser>,
    /// Of a suction line: the share of the capacity that its pressure drop costs, at the same state at the coil and the
    /// same compressor.
    pub capacity_loss: Option<Uncertain>,
    /// Heat on the way.
    pub heat: HeatGain,
    advice: u32,
    cautions: u32,
}

impl VaporLineResult {
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

/// Follows vapour through a line, from the end at which its state is known.
///
/// Friction by [`super::super::friction_factor`] with fittings as equivalent length, weight by the rise, acceleration,
/// and heat from the air: free convection and radiation outside, the insulation's cylinder, the film inside by the
/// likeness of friction and heat transfer. The change of kinetic energy, some 0.01 K, is left out.
///
/// Capacity loss: a compressor moves a fixed volume, so mass flow goes with the density at its inlet, and, where a
/// discharge pressure is given, with 1 − c (ρ₂/ρ₁ − 1): the vapour left in the clearance c expands before new comes in, ρ₂
/// after compression without loss. Both against a line without pressure drop but of the same heat gain.
///
/// Oil: see [`super::oil_return_mass_flux_kg_s_m2`]. A unit with several stages or a variable speed has its least flow at
/// the lowest: ask there.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] naming the quantity: a length, flow, air or insulation outside its bound, a
/// rise greater than the length, a temperature below the dew temperature (the state is no vapour), a drop of more than
/// half of the pressure. [`Error::NotAvailable`] where the vapour would condense on the way, and for heat from the air into
/// a tube whose outside diameter is not known. [`Error::NotConverged`] near the critical point.
///
/// ```
/// use satline::eos::{Properties, Reference, model};
/// use satline::lineset::{LineEnd, Run, Tube, VaporDuty, VaporLine, vapor_line};
/// use satline::uncertain::Uncertain;
/// let r454b = Properties::of(&model::R454B, Reference::Iir)?;
/// let run = Run { rise_m: Uncertain::exact(-6.096), ..Run::level(Tube::named("3/4")?, Uncertain::exact(18.288)) };
/// let [flow, pressure, temperature] = [0.05, 900e3, 288.0].map(Uncertain::exact);
/// let question = VaporLine::new(&r454b, VaporDuty::Suction, run, flow, LineEnd::Inlet, pressure, temperature);
/// let line = vapor_line(&question)?;
/// assert!(line.drop_pa.value > 5e3 && line.capacity_loss.is_some() && line.riser.is_none());
/// # Ok::<(), satline::Error>(())
/// ```
pub fn vapor_line(line: &VaporLine<'_>) -> Result<VaporLineResult, Error> {
    let mixture = line.properties.mixture();
    let identity = mixture.model().identity;
    let offset = Uncertain { value: 0.0, standard_uncertainty: identity.saturation_uncertainty_k.unwrap_or(0.0) };
    let none = Uncertain::exact(0.0);
    let (power, air, layer) = match line.heat {
        LineHeat::Power(power) => (power, [none, none], none),
        LineHeat::From(around) => (
            none,
            [around.ambient_k, around.outside_coefficient_w_m2_k],
            around.insulation.map_or(none, |insulation| insulation.conductivity_w_m_k),
        ),
    };
    let [ambient, coefficient] = air;
    let inputs = [
        line.mass_flow_kg_s,
        line.run.length_m,
        line.run.rise_m,
        line.pressure_pa,
        line.temperature_k,
        friction_factor_of_one(mixture.viscosity_error()?),
        line.run.bore(),
        line.oil_density_kg_m3,
        power,
        ambient,
        coefficient,
        layer,
        offset,
    ];
    let nominal = Trace::of(line, inputs.map(|input| input.value), None)?;
    let pieces = Some(nominal.pieces);
    let values = propagate_all(inputs, |moved| Trace::of(line, moved, pieces).map(|trace| trace.numbers))?;
    let [friction_pa, lift_pa, acceleration_pa, drop_pa, inlet_p, outlet_p, inlet_t, outlet_t, rest @ ..] = values;
    let [dew_loss, inlet_superheat, outlet_superheat, inlet_velocity, outlet_velocity, heat_w, rise, more @ ..] = rest;
    let [superheat_rise, surface, oil, lost] = more;

    let with_dew = |value: Uncertain| nominal.has_dew.then_some(value);
    let suction = line.duty == VaporDuty::Suction;
    let riser = (line.run.rise_m.value > 0.0).then_some(Riser {
        flow_over_least: oil,
        least_mass_flow_kg_s: line.mass_flow_kg_s.value / oil.value,
        least_velocity_m_s: nominal.velocity_at_riser / oil.value,
    });
    let (around, dew_point) = match line.heat {
        LineHeat::From(around) => (true, around.dew_point_k),
        LineHeat::Power(_) => (false, None),
    };
    if let Some(dew_point) = dew_point {
        let advice = "the dew point of the air cannot exceed its dry bulb";
        let lowest = bounds::AIR_TEMPERATURE.lower;
        bounds::within("dew point of the surrounding air", "K", dew_point, lowest, ambient.value, advice)?;
    }
    let sweats = dew_point.map(|dew_point| surface.value < dew_point);
    let (slowest, fastest) = line.duty.velocities_m_s();
    let (coverage, share) = RISER_MARGIN;
    let stays = riser.is_some() && oil.value < 1.0;
    let narrow = riser.is_some() && oil.value < (1.0 + coverage * oil.standard_uncertainty).max(share);
    let too_small = if suction { LineAdvice::SuctionLineTooSmall } else { LineAdvice::DischargeLineTooSmall };
    let advice = Chosen::default()
        .with(too_small, nominal.has_dew && dew_loss.value > DEW_LOSS_LIMIT_K)
        .with(LineAdvice::VaporTooFast, inlet_velocity.value.max(outlet_velocity.value) > fastest)
        .with(LineAdvice::VaporTooSlow, inlet_velocity.value.min(outlet_velocity.value) < slowest)
        .with(LineAdvice::RiserTooSlow, stays)
        .with(LineAdvice::RiserMarginal, narrow && !stays)
        .with(LineAdvice::LiftHigh, line.run.is_high())
        .with(LineAdvice::LineLong, line.run.is_long())
        .with(LineAdvice::InsulateLine, suction && rise.value > WARMING_LIMIT_K)
        .with(LineAdvice::SurfaceSweats, sweats == Some(true))
        .bits();
    Ok(VaporLineResult {
        friction_pa,
        lift_pa,
        acceleration_pa,
        drop_pa,
        dew_loss_k: with_dew(dew_loss),
        inlet_pressure_pa: inlet_p,
        outlet_pressure_pa: outlet_p,
        inlet_temperature_k: inlet_t,
        outlet_temperature_k: outlet_t,
        inlet_superheat_k: with_dew(inlet_superheat),
        outlet_superheat_k: with_dew(outlet_superheat),
        inlet_velocity_m_s: inlet_velocity,
        outlet_velocity_m_s: outlet_velocity,
        reynolds: nominal.reynolds,
        riser,
        capacity_loss: suction.then_some(lost),
        heat: HeatGain {
            heat_w,
            temperature_rise_k: rise,
            superheat_rise_k: with_dew(superheat_rise),
            coldest_surface_k: around.then_some(surface),
            sweats,
        },
        advice,
        cautions: cautions_with(advice, identity.safety_class.is_flammable()),
    })
}

/// One way through the line.
struct Trace {
    pieces: u32,
    has_dew: bool,
    reynolds: f64,
    /// Where oil is carried worst, m/s.
    velocity_at_riser: f64,
    numbers: [f64; 19],
}

impl Trace {
    fn of(question: &VaporLine<'_>, values: [f64; 13], pieces: Option<u32>) -> Result<Self, Error> {
        let [mass_flow, length, rise, pressure, temperature, scale, diameter, oil, power, air @ .., offset] = values;
        let (properties, run) = (question.properties, &question.run);
        Run::check(length, rise, mass_flow)?;
        bounds::OIL_DENSITY.check(oil)?;
        let (heat, exchange) = heat(question, power, air)?;
        let line = Line {
            properties,
            mass_flow,
            diameter,
            roughness: run.tube.roughness_m(),
            length,
            friction_length: length + run.fittings.equivalent_length_m(diameter),
            rise,
            friction_scale: scale,
            heat,
        };
        let dew = first_dew(question, temperature, pressure)?;
        let mixture = properties.mixture();
        let density = mixture.density(temperature, pressure)? * mixture.molar_mass;
        let known = Place::near(properties, temperature, pressure, density)?;
        let pieces = pieces.unwrap_or_else(|| line.pieces(&known));
        let with_the_flow = question.known_at == LineEnd::Inlet;
        let (found, parts) = line.whole(&known, pieces, with_the_flow)?;
        let (inlet, outlet) = if with_the_flow { (known, found) } else { (found, known) };

        let dews = match dew {
            Some(_) => [dew_of_vapor(properties, &inlet)?, dew_of_vapor(properties, &outlet)?],
            None => [0.0; 2],
        };
        let (superheat_in, superheat_out) = match dew {
            Some(_) => (inlet.temperature - dews[0] - offset, outlet.temperature - dews[1] - offset),
            None => (0.0, 0.0),
        };
        let flux = line.mass_flux();
        // Oil is carried worst at the end where the vapour is densest for its flow.
        let carried = |place: &Place| flux / oil_return_mass_flux_kg_s_m2(place.density, oil, diameter).max(1e-9);
        let (riser, worst) =
            if carried(&inlet) <= carried(&outlet) { (inlet, carried(&inlet)) } else { (outlet, carried(&outlet)) };
        let surface = match exchange {
            Some(exchange) => exchange.surface(&line, &inlet).min(exchange.surface(&line, &outlet)),
            None => 0.0,
        };
        Ok(Self {
            pieces,
            has_dew: dew.is_some(),
            reynolds: line.reynolds(inlet.viscosity),
            velocity_at_riser: flux / riser.density,
            numbers: [
                parts.friction,
                parts.lift,
                parts.acceleration,
                parts.drop(),
                inlet.pressure,
                outlet.pressure,
                inlet.temperature,
                outlet.temperature,
                dews[0] - dews[1],
                superheat_in,
                superheat_out,
                flux / inlet.density,
                flux / outlet.density,
                parts.heat,
                outlet.temperature - inlet.temperature,
                superheat_out - superheat_in,
                surface,
                worst,
                capacity_loss(question, &inlet, &outlet, &parts)?,
            ],
        })
    }
}

/// The heat of the line, and the exchange with the air where there is one.
fn heat(question: &VaporLine<'_>, power: f64, air: [f64; 3]) -> Result<(Heat, Option<Exchange>), Error> {
    match question.heat {
        LineHeat::Power(_) => Ok((Heat::Power(bounds::LINE_HEAT.check(power)?), None)),
        LineHeat::From(around) => {
            let unknown = Error::NotAvailable {
                quantity: "heat from the air",
                reason: "the tube's outside diameter is not known: give the tube by its name, or by outside diameter and wall",
            };
            let [ambient, coefficient, conductivity] = air;
            let outside = question.run.tube.outside_diameter_m().ok_or(unknown)?;
            let thickness = around.insulation.map_or(0.0, |insulation| insulation.thickness_m);
            let exchange = Exchange::new(ambient, coefficient, conductivity, thickness, outside)?;
            Ok((Heat::Exchange(exchange), Some(exchange)))
        }
    }
}

/// Dew temperature where the state is known, K; none for a discharge line above the critical pressure.
fn first_dew(question: &VaporLine<'_>, temperature: f64, pressure: f64) -> Result<Option<f64>, Error> {
    match check_phase(question.properties, PhaseKind::Vapor, temperature, pressure) {
        Ok(dew) => Ok(Some(dew)),
        Err(error) if question.duty == VaporDuty::Discharge => {
            let input = StateInput::TemperaturePressure { temperature, pressure };
            let beyond = question.properties.state(input).is_ok_and(|state| state.phase == PhaseKind::Supercritical);
            if beyond { Ok(None) } else { Err(error) }
        }
        Err(error) => Err(error),
    }
}

/// Dew temperature of a vapour at the other end; an answer only where it is still vapour.
fn dew_of_vapor(properties: &Properties, place: &Place) -> Result<f64, Error> {
    let dew = properties.mixture().at_pressure(End::Dew, place.pressure)?.temperature;
    if place.temperature >= dew - 1e-9 {
        return Ok(dew);
    }
    Err(Error::NotAvailable {
        quantity: "the vapour line",
        reason: "at its other end the vapour would be below its dew temperature, and part of it liquid: check superheat, mass flow, and the heat that the line takes up or gives off",
    })
}

/// The share of the capacity that the pressure drop costs.
fn capacity_loss(question: &VaporLine<'_>, inlet: &Place, outlet: &Place, parts: &Parts) -> Result<f64, Error> {
    if question.duty == VaporDuty::Discharge {
        return Ok(0.0);
    }
    let properties = question.properties;
    // The same line without a pressure drop: the coil's pressure with the enthalpy that arrives.
    let mut without = Place { pressure: inlet.pressure, ..*outlet };
    for _ in 0..20 {
        without = Place::near(properties, without.temperature, inlet.pressure, without.density)?;
        let warmer = (outlet.enthalpy - without.enthalpy) / without.heat_capacity;
        if warmer.abs() < 1e-10 || parts.drop() == 0.0 {
            break;
        }
        without.temperature += warmer;
    }
    let moved = |place: &Place| -> Result<f64, Error> {
        let Some(discharge) = question.discharge_pressure_pa else { return Ok(place.density) };
        let clearance = bounds::CLEARANCE.check(question.clearance)?;
        let advice = "the discharge pressure must lie above the suction pressure";
        let (_, highest) = properties.mixture().highest_temperature_and_pressure();
        bounds::within("discharge pressure", "Pa", discharge, inlet.pressure, highest, advice)?;
        let input = StateInput::TemperaturePressure { temperature: place.temperature, pressure: place.pressure };
        let entropy = properties.state(input)?.entropy;
        let after = properties.state(StateInput::PressureEntropy { pressure: discharge, entropy })?.density;
        Ok(place.density * (1.0 - clearance * (after / place.density - 1.0)))
    };
    Ok(1.0 - moved(outlet)? / moved(&without)?)
}
