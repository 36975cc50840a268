//! A unit in time: start, stop, charging, a door opened, a fan slowed.
//!
//! The steps are taken to their end (implicit Euler), with the balances of the steady state and the little that makes a
//! unit slow: what comes into the low side and is not drawn stays there and shifts the charge between the coils; the
//! metal of both coils follows the refrigerant's temperature; the compressor's body, the valve's bulb, and the liquid
//! that gathered in the low side while the unit stood, each by a time constant. So a unit that is left alone comes to
//! exactly the steady state of [`Unit::solve`], and refrigerant is never made nor lost.
//!
//! Simplified: within a step the coils are in balance with the flow through them, so that the heat stored in the
//! refrigerant itself is left out beside that in the metal; lines hold no heat; oil holds no refrigerant; refrigerant is
//! charged as vapour into the low side, and taken from it, and a time constant stands for the minutes in which it finds
//! its place. In the first step the compressor draws vapour just above dew, and what the low side then holds decides what
//! is left for the high side. Time constants are common practice (see [`Inertia::usual`]).

use super::compressor::{Compressor, Leaking};
use super::map::RefrigerantMap;
use super::newton::{Manner, Unknowns, newton};
use super::rest;
use super::steady::{LOWEST_SUCTION_PA, Steady, Unit};
use super::stores::{Inertia, Stores};
use super::unit::{Conditions, Faults};
use crate::bounds;
use crate::error::Error;
use crate::math;

/// Share of the critical pressure at which a unit's high-pressure switch opens: with R-410A 4.26 MPa, common practice.
const HIGHEST_SHARE: f64 = 0.87;
/// Least and most refrigerant, as a share of the nameplate charge, with which a unit is followed.
const CHARGE_SHARES: [f64; 2] = [0.1, 2.0];
/// Into how many parts a step is divided at most where its balances do not close at once.
const MOST_PARTS: u32 = 64;

/// What a unit is given in one step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inputs {
    /// Whether the thermostat calls: compressor and fans run.
    pub calls: bool,
    /// The air around.
    pub conditions: Conditions,
    /// What is wrong; the charge is the motion's own, so under- and overcharge are not looked at.
    pub faults: Faults,
    /// Refrigerant charged into the low side, kg/s; negative when it is taken out.
    pub charging: f64,
}

impl Inputs {
    /// A unit that is called for, sound, and left alone.
    #[must_use]
    pub fn running(conditions: Conditions) -> Self {
        Self { calls: true, conditions, faults: Faults::default(), charging: 0.0 }
    }

    /// A unit that stands.
    #[must_use]
    pub fn standing(conditions: Conditions) -> Self {
        Self { calls: false, ..Self::running(conditions) }
    }
}

/// Why a unit stands although it is called for, until the call ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Trip {
    /// Its low-pressure switch opened.
    LowPressure,
    /// Its high-pressure switch opened.
    HighPressure,
}

/// A unit at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Time since the motion began, s.
    pub seconds: f64,
    /// Whether the compressor runs.
    pub runs: bool,
    /// What stopped it.
    pub trip: Option<Trip>,
    /// Liquid in the low side that has gathered while it stood and is not carried off yet, kg; part of the charge.
    pub gathered: f64,
    /// Refrigerant charged that is not mixed in yet, kg, or, negative, what was taken and is still to be made up for; part
    /// of the charge.
    pub mixing: f64,
    /// Temperature of the compressor's body, K.
    pub shell_temperature: f64,
    /// Temperature of the valve's bulb, K.
    pub bulb_temperature: f64,
    /// What instruments could show. While the unit stands, its flows and powers are 0; `miss` is that of the step.
    pub state: Steady,
}

/// The course of a unit that runs or stands.
#[derive(Debug, Clone, Copy)]
pub(super) enum Course {
    /// The balances' unknowns.
    Running(Unknowns),
    /// Pressures of both sides, Pa.
    Standing([f64; 2]),
}

/// A unit that is followed in time.
///
/// ```
/// use satline::eos::model;
/// use satline::rig::{Device, Inputs, Motion, RATING_CONDITIONS, Rating, RefrigerantMap, Unit};
/// let map = RefrigerantMap::of("R-410A", &model::R410A)?;
/// let unit = Unit::designed(&map, &Rating::usual(10_550.0, Device::TaperedValve))?;
/// let mut motion = Motion::at_rest(&unit, &RATING_CONDITIONS, unit.nameplate_charge)?;
/// let inputs = Inputs::running(RATING_CONDITIONS);
/// let before = motion.moment().state.vapor_port.pressure;
/// for _ in 0..60 {
///     motion.step(1.0, &inputs)?;
/// }
/// assert!(motion.moment().state.vapor_port.pressure < 0.7 * before);
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Motion<'a> {
    pub(super) unit: Unit<'a>,
    pub(super) inertia: Inertia,
    pub(super) charge: f64,
    pub(super) course: Course,
    pub(super) condenser: f64,
    pub(super) evaporator: f64,
    pub(super) moment: Moment,
}

impl<'a> Motion<'a> {
    /// A unit that has run for long.
    ///
    /// # Errors
    /// Those of [`Unit::solve`].
    pub fn settled(unit: &Unit<'a>, conditions: &Conditions, faults: &Faults) -> Result<Self, Error> {
        let state = unit.solve(conditions, faults)?;
        let high = state.discharge.pressure - state.non_condensable_pressure;
        let dew = unit.map.saturation(state.coil_outlet_pressure)?.dew_temperature;
        let at = unit.unknowns(state.compressor_inlet.pressure, state.compressor_inlet.enthalpy, high)?;
        let moment = Moment {
            seconds: 0.0,
            runs: true,
            trip: None,
            gathered: 0.0,
            mixing: 0.0,
            shell_temperature: state.discharge.temperature,
            bulb_temperature: dew + state.evaporator.superheat,
            state,
        };
        Ok(Self {
            unit: *unit,
            inertia: Inertia::usual(&unit.parts),
            charge: unit.nameplate_charge * (1.0 - faults.undercharge + faults.overcharge),
            course: Course::Running(at),
            condenser: unit.map.saturation(high)?.bubble_temperature,
            evaporator: dew,
            moment,
        })
    }

    /// A unit that has stood for long, with a charge in kg.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for conditions or a charge outside their ranges; [`Error::NotConverged`] where the unit could
    /// not start so.
    pub fn at_rest(unit: &Unit<'a>, conditions: &Conditions, charge: f64) -> Result<Self, Error> {
        conditions.check()?;
        check_charge(unit, charge)?;
        let pressure = rest::equal_pressure(unit, conditions, charge)?;
        let (indoors, outdoors) = (conditions.return_dry_bulb, conditions.outdoor_dry_bulb);
        // What it is like when it starts is the form of what it shows while it stands.
        let inertia = Inertia::usual(&unit.parts);
        let gathered = rest::gathers(&inertia, conditions, charge);
        let stores = Stores {
            step: 1.0,
            inertia,
            inside: charge - gathered,
            low_side_charge: None,
            carried: 0.0,
            evaporator: unit.map.saturation(pressure)?.dew_temperature,
            condenser: outdoors,
            shell: outdoors,
            bulb: indoors,
        };
        let (state, _) = start(unit, &stores, [pressure; 2], conditions, &Faults::default())?;
        let moment = Moment {
            seconds: 0.0,
            runs: false,
            trip: None,
            gathered,
            mixing: 0.0,
            shell_temperature: outdoors,
            bulb_temperature: indoors,
            state,
        };
        let motion = Self {
            unit: *unit,
            inertia,
            charge,
            course: Course::Standing([pressure; 2]),
            condenser: outdoors,
            evaporator: indoors,
            moment,
        };
        motion.stood(f64::INFINITY, &Inputs::standing(*conditions))
    }

    /// The same motion with other inertia.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for heat capacities beyond 0 to 1 MJ/K, times beyond 0 to 1 day, and a share that gathers
    /// beyond 0 to 0.5.
    pub fn with_inertia(self, inertia: Inertia) -> Result<Self, Error> {
        inertia.check()?;
        Ok(Self { inertia, ..self })
    }

    /// The map of its refrigerant.
    #[must_use]
    pub const fn map(&self) -> &'a RefrigerantMap {
        self.unit.map
    }

    /// The unit as it is now.
    #[must_use]
    pub fn moment(&self) -> &Moment {
        &self.moment
    }

    /// Refrigerant inside, kg.
    #[must_use]
    pub fn charge(&self) -> f64 {
        self.charge
    }

    /// Goes on by a time in seconds (see [`bounds::TIME_STEP`]).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for inputs outside their ranges, or a charge below a tenth or above twice the nameplate's;
    /// [`Error::NotConverged`] where no balance was found. The motion is then as it was before.
    pub fn step(&mut self, seconds: f64, inputs: &Inputs) -> Result<&Moment, Error> {
        bounds::TIME_STEP.check(seconds)?;
        bounds::CHARGING_RATE.check(inputs.charging)?;
        inputs.conditions.check()?;
        inputs.faults.check()?;
        check_charge(&self.unit, self.charge + seconds * inputs.charging)?;
        let mut next = *self;
        if !inputs.calls {
            next.moment.trip = None;
        }
        if inputs.calls && next.moment.trip.is_none() {
            next = next.in_parts(seconds, inputs)?;
        } else {
            next = next.stood(seconds, inputs)?;
        }
        // Whole steps, so that rounding of parts does not add up.
        next.charge = self.charge + seconds * inputs.charging;
        next.moment.seconds = self.moment.seconds + seconds;
        *self = next;
        Ok(&self.moment)
    }

    /// One step, divided where its balances do not close.
    fn in_parts(&self, seconds: f64, inputs: &Inputs) -> Result<Self, Error> {
        let mut parts = 1;
        loop {
            let mut at = Ok(*self);
            for _ in 0..parts {
                at = at.and_then(|at: Self| at.ran(seconds / f64::from(parts), inputs));
            }
            if at.is_ok() || parts >= MOST_PARTS {
                return at;
            }
            parts *= 4;
        }
    }

    /// After a time in which it ran.
    fn ran(&self, seconds: f64, inputs: &Inputs) -> Result<Self, Error> {
        if self.moment.trip.is_some() {
            return self.stood(seconds, inputs);
        }
        let (unit, map, inertia) = (&self.unit, self.unit.map, self.inertia);
        let (conditions, faults) = (&inputs.conditions, &inputs.faults);
        let added = seconds * inputs.charging;
        let carried = self.moment.gathered / (inertia.clearing_time + seconds);
        let gathered = self.moment.gathered - seconds * carried;
        let mixed = (self.moment.mixing + added) * seconds / (inertia.mixing_time + seconds);
        let mixing = self.moment.mixing + added - mixed;
        let charge = self.charge + added;
        let mut stores = Stores {
            step: seconds,
            inertia,
            inside: charge - gathered - mixing,
            low_side_charge: None,
            carried,
            evaporator: self.evaporator,
            condenser: self.condenser,
            shell: self.moment.shell_temperature,
            bulb: self.moment.bulb_temperature,
        };
        let (state, at) = match self.course {
            Course::Running(at) => {
                stores.low_side_charge = Some(self.moment.state.low_side_charge + mixed);
                close(at, conditions, |at| unit.misses(at, conditions, faults, Some(&stores)))?
            }
            Course::Standing(pressures) => {
                stores.evaporator = map.saturation(pressures[0])?.dew_temperature;
                start(unit, &stores, pressures, conditions, faults)?
            }
        };
        let high = state.discharge.pressure - state.non_condensable_pressure;
        let dew = map.saturation(state.coil_outlet_pressure)?.dew_temperature;
        let compressor = Leaking { sound: &unit.parts.compressor, share: faults.compressor_leakage };
        let run = compressor.run(map, &state.compressor_inlet, state.discharge.pressure)?;
        let gas = map.at_enthalpy(state.discharge.pressure, run.discharge_enthalpy)?.temperature;
        let trip = if state.compressor_inlet.pressure < LOWEST_SUCTION_PA {
            Some(Trip::LowPressure)
        } else if state.discharge.pressure > HIGHEST_SHARE * map.critical_pressure() {
            Some(Trip::HighPressure)
        } else {
            None
        };
        Ok(Self {
            charge,
            course: match trip {
                Some(_) => Course::Standing([state.vapor_port.pressure, high]),
                None => Course::Running(at),
            },
            condenser: map.saturation(high)?.bubble_temperature,
            evaporator: dew,
            moment: Moment {
                seconds: self.moment.seconds + seconds,
                runs: trip.is_none(),
                trip,
                gathered,
                mixing,
                shell_temperature: stores.shell_after(gas),
                bulb_temperature: stores.bulb_after(dew + state.evaporator.superheat),
                state: Steady { charge: state.charge + gathered + mixing, ..state },
            },
            ..*self
        })
    }

    /// After a time in which it stood.
    fn stood(&self, seconds: f64, inputs: &Inputs) -> Result<Self, Error> {
        let (unit, inertia) = (&self.unit, &self.inertia);
        let conditions = &inputs.conditions;
        let charge = self.charge + if inputs.charging == 0.0 { 0.0 } else { seconds * inputs.charging };
        let equal = rest::equal_pressure(unit, conditions, charge)?;
        let before = match self.course {
            Course::Standing(pressures) => pressures,
            Course::Running(_) => {
                let state = &self.moment.state;
                [state.vapor_port.pressure, state.liquid_port.pressure - state.non_condensable_pressure]
            }
        };
        let towards = |from: f64, to: f64, time: f64| to + (from - to) * math::exp(-seconds / time);
        let pressures = before.map(|pressure| towards(pressure, equal, inertia.equalizing_time));
        let outdoors = conditions.outdoor_dry_bulb;
        let cooled = |from: f64, to: f64| towards(from, to, inertia.cooling_time);
        let [_, migration_time] = inertia.migration;
        let gathers = rest::gathers(inertia, conditions, charge);
        let state = rest::standing(unit, conditions, &self.moment.state, pressures, charge, cooled)?;
        Ok(Self {
            charge,
            course: Course::Standing(pressures),
            condenser: cooled(self.condenser, outdoors),
            moment: Moment {
                seconds: self.moment.seconds + if seconds.is_finite() { seconds } else { 0.0 },
                runs: false,
                gathered: towards(self.moment.gathered, gathers, migration_time),
                // At rest it finds its way to the rest.
                mixing: towards(self.moment.mixing, 0.0, inertia.mixing_time),
                shell_temperature: cooled(self.moment.shell_temperature, outdoors),
                bulb_temperature: cooled(self.moment.bulb_temperature, conditions.return_dry_bulb),
                state,
                ..self.moment
            },
            ..*self
        })
    }
}

/// How far beyond the last state the next one is looked for, in logarithms of both pressures, in turn.
const AHEAD: [[f64; 2]; 5] = [[0.0, 0.0], [-0.04, 0.04], [-0.08, 0.1], [0.0, 0.2], [0.04, -0.04]];

/// Where three balances close, near a start.
fn close(
    start: Unknowns,
    conditions: &Conditions,
    misses: impl Fn(&Unknowns) -> Result<([f64; 3], Steady), Error>,
) -> Result<(Steady, Unknowns), Error> {
    for manner in [Manner::Careful, Manner::Bold, Manner::Thorough] {
        for [low, high] in AHEAD {
            let ahead = [start[0] + low, start[1] + high, start[2]];
            // A start outside the map, or at which nothing would flow, is no reason to give up.
            if let Ok(Some((state, at, miss))) = newton(ahead, manner, &misses) {
                return Ok((Steady { miss, ..state }, at));
            }
        }
    }
    Err(Error::NotConverged {
        calculation: "a step of the unit's time",
        value: conditions.outdoor_dry_bulb,
        unit: "K outdoors",
    })
}

/// The first step: the compressor draws vapour just above dew, and the low side holds what belongs to that.
fn start(
    unit: &Unit,
    stores: &Stores,
    [low, high]: [f64; 2],
    conditions: &Conditions,
    faults: &Faults,
) -> Result<(Steady, Unknowns), Error> {
    // A little beyond dew, as the balances bend there: 2 kJ/kg, some 2 K.
    const FIRST: f64 = 0.2;
    let mut last = Err(Error::NotConverged { calculation: "the start of the unit", value: low, unit: "Pa before it" });
    for warmer in [2.0, 5.0, 10.0] {
        for share in [0.9, 0.8, 0.97, 0.65] {
            let condensing = unit.map.bubble_pressure(stores.condenser + warmer)?.max(high);
            let guess = [math::ln(share * low), math::ln(condensing), FIRST];
            last = close(guess, conditions, |at| {
                let ([_, energy, charge], state) = unit.misses(at, conditions, faults, Some(stores))?;
                Ok(([at[2] - FIRST, energy, charge], state))
            });
            if last.is_ok() {
                return last;
            }
        }
    }
    last
}

fn check_charge(unit: &Unit, charge: f64) -> Result<(), Error> {
    let [least, most] = CHARGE_SHARES.map(|share| share * unit.nameplate_charge);
    let advice = "a unit is followed from a tenth to twice its nameplate charge";
    bounds::within("refrigerant inside", "kg", charge, least, most, advice).map(|_| ())
}

/// A change of a unit's inputs at a time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Change {
    /// When, s after the run begins.
    pub at: f64,
    /// What holds from then on.
    pub inputs: Inputs,
}

/// Lets a unit run for a time in seconds, in steps, with inputs that change as a schedule says, its changes in the order
/// of their times; `each` is shown every moment and the inputs that led to it.
///
/// # Errors
/// Those of [`Motion::step`]: what came before them has been shown.
pub fn run(
    motion: &mut Motion,
    first: Inputs,
    schedule: &[Change],
    seconds: f64,
    step: f64,
    mut each: impl FnMut(&Moment, &Inputs),
) -> Result<(), Error> {
    bounds::TIME_STEP.check(step)?;
    let mut inputs = first;
    let mut changes = schedule.iter().peekable();
    let count = (seconds / step + 0.5) as u64;
    for number in 0..count {
        // Half a step of tolerance, so that rounding of the times delays no change.
        let now = (number as f64 + 0.5) * step;
        while let Some(change) = changes.next_if(|change| change.at < now) {
            inputs = change.inputs;
        }
        each(motion.step(step, &inputs)?, &inputs);
    }
    Ok(())
}
