//! The steady state: suction pressure, discharge pressure and suction enthalpy at which the metering device passes what
//! the compressor draws, the evaporator leaves what the compressor takes, and the parts hold the charge that is there.

use super::coil::{Condensed, Evaporated, condense_warming, evaporate_cooling};
use super::compressor::{Compression, Compressor, Leaking};
use super::map::{Point, RefrigerantMap};
use super::metering::{Around, Metering};
use super::moist::Air;
use super::stores::Stores;
use super::unit::{AnyMetering, Conditions, Faults, LOOSE_BULB_K, Parts};
use crate::error::Error;
use crate::math;

/// How exactly the three balances close, relatively.
const CLOSED: f64 = 1e-9;
const MOST_ITERATIONS: usize = 80;
/// Molar gas constant over the volume that a mole of nitrogen fills at 101 325 Pa and 294 K: pressure by temperature of
/// a severity of 1.
const FILLING_PA_K: f64 = 101_325.0 / 294.0;
/// Share of the condenser's volume in which non-condensables gather: what liquid leaves.
const GAS_SPACE: f64 = 0.7;
/// Below this suction pressure a unit stops: its low-pressure switch, or ice.
pub(super) const LOWEST_SUCTION_PA: f64 = 120e3;

/// A unit at rest in its course: everything an instrument could show, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steady {
    /// Refrigerant flow, kg/s.
    pub mass_flow: f64,
    /// Compressor's electric power, W.
    pub compressor_power: f64,
    /// Power of both fans, W.
    pub fan_power: f64,
    /// What the indoor coil takes from the air, W; the fan's heat not taken off.
    pub capacity: f64,
    /// The part that cools the air, W.
    pub sensible_capacity: f64,
    /// Refrigerant inside, kg.
    pub charge: f64,
    /// The part of it between the metering device and the compressor's cylinders, kg.
    pub low_side_charge: f64,
    /// At the compressor's inlet.
    pub compressor_inlet: Point,
    /// At its outlet, with what non-condensables add to the pressure.
    pub discharge: Point,
    /// At the outdoor unit's vapour port.
    pub vapor_port: Point,
    /// At the outdoor unit's liquid port.
    pub liquid_port: Point,
    /// Before the metering device.
    pub metering_inlet: Point,
    /// The indoor coil.
    pub evaporator: Evaporated,
    /// The outdoor coil.
    pub condenser: Condensed,
    /// Pressure of the refrigerant where the coil's outlet is, Pa.
    pub coil_outlet_pressure: f64,
    /// Partial pressure of non-condensables, Pa.
    pub non_condensable_pressure: f64,
    /// Indoor airflow, m³/s, at the state of the supply air.
    pub indoor_airflow: f64,
    /// Supply air behind the fan, K.
    pub supply_dry_bulb: f64,
    /// Lift of a thermostatic valve's needle, 0 to 1.
    pub valve_lift: Option<f64>,
    /// Largest of the three balances' misses, relative.
    pub miss: f64,
}

/// The unknowns: logarithms of both pressures, and suction enthalpy beyond dew in 10 kJ/kg.
pub(super) type Unknowns = [f64; 3];
const ENTHALPY_SCALE: f64 = 1e4;

/// A unit with its refrigerant and charge.
#[derive(Debug, Clone, Copy)]
pub struct Unit<'a> {
    /// The refrigerant's map.
    pub map: &'a RefrigerantMap,
    /// What it is made of.
    pub parts: Parts,
    /// Nameplate charge with its line set, kg.
    pub nameplate_charge: f64,
}

impl Unit<'_> {
    /// Where the unit settles.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for conditions and faults outside their ranges; [`Error::NotAvailable`] where such a unit
    /// would not run, with the reason; [`Error::NotConverged`] where no balance was found.
    pub fn solve(&self, conditions: &Conditions, faults: &Faults) -> Result<Steady, Error> {
        conditions.check()?;
        faults.check()?;
        let guess = self.guess(conditions)?;
        if let Ok((found, _)) = self.balance(guess, conditions, faults) {
            return Self::running(found);
        }
        // From the healthy unit to the faulty one, in steps as large as they will go.
        let healthy = Faults::default();
        let (_, mut at) = self.balance_from_many(guess, conditions, &healthy)?;
        let (mut reached, mut step) = (0.0, 0.25);
        while reached < 1.0 {
            let next = f64::min(reached + step, 1.0);
            match self.balance(at, conditions, &faults.scaled(next)) {
                Ok((found, there)) => {
                    (reached, at) = (next, there);
                    step *= 1.6;
                    if reached >= 1.0 {
                        return Self::running(found);
                    }
                }
                Err(error) => {
                    step *= 0.4;
                    if step < 2e-3 {
                        return Err(match error {
                            Error::NotConverged { .. } => Error::NotAvailable {
                                quantity: "steady state",
                                reason: "the unit finds no steady state with faults so severe: it would trip or freeze",
                            },
                            other => other,
                        });
                    }
                }
            }
        }
        Err(not_converged(conditions))
    }

    fn running(found: Steady) -> Result<Steady, Error> {
        if found.compressor_inlet.pressure < LOWEST_SUCTION_PA {
            return Err(Error::NotAvailable {
                quantity: "steady state",
                reason: "the suction pressure falls so low that the unit stops: too little refrigerant reaches the coil",
            });
        }
        Ok(found)
    }

    fn guess(&self, conditions: &Conditions) -> Result<Unknowns, Error> {
        let (lowest, highest) = self.map.pressure_range();
        let boiling = (conditions.return_wet_bulb - 11.0).clamp(255.0, 295.0);
        let low = self.map.dew_pressure(boiling).unwrap_or(2.0 * lowest);
        let hot = (conditions.outdoor_dry_bulb + 11.0).max(boiling + 12.0);
        let high = self.map.bubble_pressure(hot).unwrap_or(0.85 * highest);
        Ok([math::ln(low), math::ln(high), 0.8])
    }

    fn balance_from_many(
        &self,
        guess: Unknowns,
        conditions: &Conditions,
        faults: &Faults,
    ) -> Result<(Steady, Unknowns), Error> {
        let mut last = Err(not_converged(conditions));
        for (low, high, enthalpy) in [
            (0.0, 0.0, 0.0),
            (-0.15, 0.1, 0.5),
            (0.1, -0.1, -0.5),
            (-0.3, 0.2, 1.0),
            (-0.4, 0.0, 1.5),
            (0.15, 0.2, -0.8),
        ] {
            let start = [guess[0] + low, guess[1] + high, guess[2] + enthalpy];
            last = self.balance(start, conditions, faults);
            if last.is_ok() {
                break;
            }
        }
        last
    }

    /// Newton's method with differences for slopes, each step shortened until the balances close better.
    fn balance(&self, start: Unknowns, conditions: &Conditions, faults: &Faults) -> Result<(Steady, Unknowns), Error> {
        Self::close(start, conditions, |at| self.misses(at, conditions, faults, None))
    }

    /// The same for any three balances.
    pub(super) fn close(
        start: Unknowns,
        conditions: &Conditions,
        balances: impl Fn(&Unknowns) -> Result<([f64; 3], Steady), Error>,
    ) -> Result<(Steady, Unknowns), Error> {
        let mut at = start;
        let (mut misses, mut found) = balances(&at)?;
        for _ in 0..MOST_ITERATIONS {
            let size = largest(&misses);
            if size < CLOSED {
                return Ok((Steady { miss: size, ..found }, at));
            }
            let mut slopes = [[0.0; 3]; 3];
            for (unknown, step) in [1e-6, 1e-6, 1e-5].into_iter().enumerate() {
                let mut moved = at;
                moved[unknown] += step;
                let there = match balances(&moved) {
                    Ok((there, _)) => there.map(|miss| (miss, step)),
                    Err(_) => {
                        moved[unknown] -= 2.0 * step;
                        balances(&moved)?.0.map(|miss| (miss, -step))
                    }
                };
                for (row, (miss, step)) in there.into_iter().enumerate() {
                    slopes[row][unknown] = (miss - misses[row]) / step;
                }
            }
            let Some(step) = solve_three(&slopes, &misses) else { break };
            // No pressure moves by more than a fifth at once, nor the enthalpy by more than 15 kJ/kg.
            let longest = (step[0].abs() / 0.2).max(step[1].abs() / 0.2).max(step[2].abs() / 1.5).max(1.0);
            let mut share = 1.0 / longest;
            let mut better = None;
            for _ in 0..14 {
                let moved: Unknowns = core::array::from_fn(|place| at[place] - share * step[place]);
                if let Ok((there, state)) = balances(&moved) {
                    if squares(&there) < squares(&misses) * (1.0 - 1e-3 * share) {
                        better = Some((moved, there, state));
                        break;
                    }
                }
                share *= 0.5;
            }
            let Some((moved, there, state)) = better else { break };
            (at, misses, found) = (moved, there, state);
        }
        let size = largest(&misses);
        if size < 1e-7 {
            return Ok((Steady { miss: size, ..found }, at));
        }
        Err(not_converged(conditions))
    }

    /// How far each balance is from closing, relatively, and the state that was tried; with what the parts store while
    /// the unit is not at rest in its course.
    pub(super) fn misses(
        &self,
        unknowns: &Unknowns,
        conditions: &Conditions,
        faults: &Faults,
        stores: Option<&Stores>,
    ) -> Result<([f64; 3], Steady), Error> {
        let (map, parts) = (self.map, &self.parts);
        let suction_pressure = math::exp(unknowns[0]);
        let discharge_pressure = math::exp(unknowns[1]);
        let suction_enthalpy = map.saturation(suction_pressure)?.vapor_enthalpy + unknowns[2] * ENTHALPY_SCALE;
        let inlet = map.at_enthalpy(suction_pressure, suction_enthalpy)?;
        let compressor = Leaking { sound: &parts.compressor, share: faults.compressor_leakage };
        // Non-condensables stand with the refrigerant in the condenser: the compressor works against both.
        let volume = self.whole_volume();
        let warm = conditions.outdoor_dry_bulb + 10.0;
        let foreign = faults.non_condensables * FILLING_PA_K * warm * volume / (GAS_SPACE * parts.condenser.volume);
        let total_pressure = discharge_pressure + foreign;
        let Compression { mass_flow, power, discharge_enthalpy } = compressor.run(map, &inlet, total_pressure)?;
        if !(mass_flow > 0.0) {
            return Err(not_converged(conditions));
        }

        let discharge_enthalpy = match stores {
            Some(stores) => stores.past_shell(map, total_pressure, discharge_enthalpy, mass_flow)?,
            None => discharge_enthalpy,
        };

        // Discharge line, condenser, to the liquid port.
        let outdoor = Air::from_dew_point(conditions.outdoor_dry_bulb, 283.15, conditions.ambient_pressure);
        let outdoor_air = parts.outdoor_airflow * (1.0 - faults.restricted_condenser_air) * outdoor.dry_density();
        let gas = map.at_enthalpy(discharge_pressure, discharge_enthalpy)?;
        let (condenser_pressure, condenser_enthalpy, discharge_charge) = parts.discharge_line.liquid(
            map,
            (discharge_pressure, discharge_enthalpy),
            mass_flow,
            conditions.outdoor_dry_bulb,
            0.0,
        )?;
        let metal = stores.map_or(Ok(0.0), |stores| stores.condenser_heat(map, discharge_pressure))?;
        let entering = (condenser_pressure, condenser_enthalpy);
        let outdoor = (&outdoor, outdoor_air);
        let condensed = condense_warming(&parts.condenser, map, parts.void, entering, mass_flow, outdoor, metal)?;
        let (liquid_pressure, liquid_enthalpy, outlet_charge) = parts.condenser_outlet.liquid(
            map,
            (condensed.pressure, condensed.enthalpy),
            mass_flow,
            conditions.outdoor_dry_bulb,
            0.0,
        )?;
        let flow = mass_flow / parts.design_flow;
        let restriction = faults.liquid_line_restriction * parts.design_drop * flow * flow;
        let (metering_pressure, metering_enthalpy, liquid_charge) = parts.liquid_line.liquid(
            map,
            (liquid_pressure, liquid_enthalpy),
            mass_flow,
            conditions.outdoor_dry_bulb,
            restriction,
        )?;

        // From the compressor back to the coil.
        let ambient = conditions.outdoor_dry_bulb;
        let (port_pressure, port_enthalpy, inlet_charge) =
            parts.suction_inlet.vapor_backwards(map, (suction_pressure, suction_enthalpy), mass_flow, ambient)?;
        let mut line = parts.suction_line;
        line.conductance *= 1.0 + faults.suction_line_heat_gain;
        let (coil_pressure, coil_enthalpy, line_charge) =
            line.vapor_backwards(map, (port_pressure, port_enthalpy), mass_flow, ambient)?;

        // The indoor coil.
        let air =
            Air::from_wet_bulb(conditions.return_dry_bulb, conditions.return_wet_bulb, conditions.ambient_pressure);
        let airflow = parts.indoor_airflow * (1.0 - faults.low_indoor_airflow);
        let supply = Air { temperature: conditions.return_dry_bulb - 10.0, ..air };
        let indoor_air = airflow * supply.dry_density();
        let (metal, carried) = match stores {
            Some(stores) => (
                stores.evaporator_heat(map, coil_pressure)?,
                stores.carried_heat(map, coil_pressure, metering_enthalpy)?,
            ),
            None => (0.0, 0.0),
        };
        let leaving = (coil_pressure, metering_enthalpy - carried / mass_flow);
        let indoor = (&air, indoor_air);
        let evaporated = evaporate_cooling(&parts.evaporator, map, parts.void, leaving, mass_flow, indoor, metal)?;

        // The metering device.
        let before = map.at_enthalpy(metering_pressure, metering_enthalpy)?;
        let loose = match parts.metering {
            AnyMetering::Valve(_) => LOOSE_BULB_K * faults.metering_overfeeding,
            _ => 0.0,
        };
        let felt = match stores {
            Some(stores) => stores.bulb_superheat(map, coil_pressure, evaporated.superheat)?,
            None => evaporated.superheat,
        };
        let around = Around { inlet: before, outlet_pressure: evaporated.inlet_pressure, bulb_superheat: felt + loose };
        let wider = match parts.metering {
            AnyMetering::Valve(_) => 1.0,
            _ => 1.0 + faults.metering_overfeeding,
        };
        let passed = parts.metering.flow(map, &around)? * wider * (1.0 - faults.metering_underfeeding);

        let shell_charge = parts.shell_volume * inlet.density;
        let tuning = parts.tuning.constant + parts.tuning.slope * (condensed.shares[2] - parts.tuning.at_share);
        let low_side_charge = evaporated.charge + line_charge + inlet_charge + shell_charge;
        let charge = low_side_charge + condensed.charge + discharge_charge + outlet_charge + liquid_charge + tuning;
        let (inside, gathering) = match stores {
            Some(stores) => (stores.inside, stores.gathering(low_side_charge)),
            None => (self.nameplate_charge * (1.0 - faults.undercharge + faults.overcharge), 0.0),
        };

        let misses = [
            (passed - gathering - mass_flow) / mass_flow,
            (evaporated.enthalpy - coil_enthalpy) / 1e5,
            (charge - inside) / inside,
        ];
        let share = airflow / parts.indoor_airflow;
        let fan = parts.indoor_fan_power * share;
        let state = Steady {
            mass_flow,
            compressor_power: power,
            fan_power: fan + parts.outdoor_fan_power,
            capacity: evaporated.heat,
            sensible_capacity: evaporated.sensible_heat,
            charge,
            low_side_charge,
            compressor_inlet: inlet,
            discharge: Point { pressure: total_pressure, ..gas },
            vapor_port: map.at_enthalpy(port_pressure, port_enthalpy)?,
            liquid_port: Point {
                pressure: liquid_pressure + foreign,
                ..map.at_enthalpy(liquid_pressure, liquid_enthalpy)?
            },
            metering_inlet: before,
            evaporator: evaporated,
            condenser: condensed,
            coil_outlet_pressure: coil_pressure,
            non_condensable_pressure: foreign,
            indoor_airflow: airflow,
            supply_dry_bulb: evaporated.air.temperature + fan / (indoor_air * evaporated.air.heat_capacity()),
            valve_lift: match parts.metering {
                AnyMetering::Valve(valve) => Some(valve.lift(around.bulb_superheat)),
                _ => None,
            },
            miss: 0.0,
        };
        Ok((misses, state))
    }

    /// The unknowns of a state that is known otherwise.
    pub(super) fn unknowns(&self, suction: f64, enthalpy: f64, discharge: f64) -> Result<Unknowns, Error> {
        let dew = self.map.saturation(suction)?.vapor_enthalpy;
        Ok([math::ln(suction), math::ln(discharge), (enthalpy - dew) / ENTHALPY_SCALE])
    }

    /// What the unit holds in such a state, kg.
    pub(super) fn charge_at(
        &self,
        unknowns: &Unknowns,
        conditions: &Conditions,
        faults: &Faults,
    ) -> Result<f64, Error> {
        Ok(self.misses(unknowns, conditions, faults, None)?.1.charge)
    }

    /// Inside volume of the whole unit, m³.
    pub(super) fn whole_volume(&self) -> f64 {
        let parts = &self.parts;
        let lines = [
            &parts.liquid_line,
            &parts.suction_line,
            &parts.condenser_outlet,
            &parts.suction_inlet,
            &parts.discharge_line,
        ];
        parts.condenser.volume
            + parts.evaporator.volume
            + parts.shell_volume
            + lines.map(|line| line.volume()).iter().sum::<f64>()
    }
}

fn not_converged(conditions: &Conditions) -> Error {
    Error::NotConverged {
        calculation: "the balance of the unit",
        value: conditions.outdoor_dry_bulb,
        unit: "K outdoors",
    }
}

fn largest(misses: &[f64; 3]) -> f64 {
    misses.iter().fold(0.0, |most, miss| most.max(miss.abs()))
}

fn squares(misses: &[f64; 3]) -> f64 {
    misses.iter().map(|miss| miss * miss).sum()
}

/// Solves three linear equations by Cramer's rule; none where they do not decide.
fn solve_three(slopes: &[[f64; 3]; 3], right: &[f64; 3]) -> Option<[f64; 3]> {
    let determinant = |m: &[[f64; 3]; 3]| {
        m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
            + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
    };
    let whole = determinant(slopes);
    let solution: [f64; 3] = core::array::from_fn(|column| {
        let mut replaced = *slopes;
        for (row, value) in replaced.iter_mut().zip(right) {
            row[column] = *value;
        }
        determinant(&replaced) / whole
    });
    solution.iter().all(|value| value.is_finite()).then_some(solution)
}
