//! The balances of a unit that cools: from its three unknowns once around the circuit.

use super::compressor::{Compression, Compressor, Leaking};
use super::map::Point;
use super::metering::{Around, Metering};
use super::moist::Air;
use super::newton::Unknowns;
use super::steady::{Steady, Unit};
use super::stop::Stop;
use super::stores::Stores;
use super::structure::{Circuits, Condenser, Evaporator, Streams};
use super::unit::{AnyMetering, Conditions, Faults, LOOSE_BULB_K};
use crate::error::Error;
use crate::math;

/// Molar gas constant over the volume that a mole of nitrogen fills at 101 325 Pa and 294 K: pressure by temperature of
/// a severity of 1.
pub(super) const FILLING_PA_K: f64 = 101_325.0 / 294.0;
/// Share of the condenser's volume in which non-condensables gather: what liquid leaves.
pub(super) const GAS_SPACE: f64 = 0.7;
pub(super) const ENTHALPY_SCALE: f64 = 1e4;

impl Unit<'_> {
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
        let structure = &parts.structure;
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
            return Err(Stop::NoBalance.error());
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
        let entering = (condenser_pressure, condenser_enthalpy);
        let streams = Streams {
            pressure: entering.0,
            enthalpy: entering.1,
            mass_flow,
            air: outdoor,
            dry_air: outdoor_air,
            void: parts.void,
            metal: stores.map_or(Ok(0.0), |stores| stores.condenser_heat(map, discharge_pressure))?,
        };
        let condensed = structure.condenser.condense(&parts.condenser, map, &streams)?;
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
        let entering_air = structure.return_duct.entering(&air, &outdoor, indoor_air);
        let (metal, carried) = match stores {
            Some(stores) => (
                stores.evaporator_heat(map, coil_pressure)?,
                stores.carried_heat(map, coil_pressure, metering_enthalpy)?,
            ),
            None => (0.0, 0.0),
        };
        let streams = Streams {
            pressure: coil_pressure,
            enthalpy: metering_enthalpy - carried / mass_flow,
            mass_flow,
            air: entering_air,
            dry_air: indoor_air,
            void: parts.void,
            metal,
        };
        let circuits = Circuits { imbalance: structure.air_imbalance };
        let evaporated = circuits.evaporate(&parts.evaporator, map, &streams)?;

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
        let kept_back = structure.accumulator.charge(map, suction_pressure, inlet.quality, inlet.density)?;
        let tuning = parts.tuning.constant + parts.tuning.slope * (condensed.shares[2] - parts.tuning.at_share);
        let low_side_charge = evaporated.charge + line_charge + inlet_charge + shell_charge + kept_back;
        let charge = low_side_charge + condensed.charge + discharge_charge + outlet_charge + liquid_charge + tuning;
        let (inside, gathering) = match stores {
            Some(stores) => (stores.inside, stores.gathering(low_side_charge)),
            None => (self.nameplate_charge * (1.0 - faults.undercharge + faults.overcharge), 0.0),
        };

        // In motion a valve may well be shut for a while.
        let shut = match (parts.metering, stores) {
            (AnyMetering::Valve(valve), None) => valve.short_of_opening(around.bulb_superheat),
            _ => 0.0,
        };
        let misses = [
            (passed - gathering - mass_flow) / mass_flow - 0.1 * shut,
            (evaporated.enthalpy - coil_enthalpy) / 1e5,
            (charge - inside) / inside,
        ];
        // A miss that is no number would pass for none.
        if !misses.iter().all(|miss| miss.is_finite()) {
            return Err(Stop::NoBalance.error());
        }
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
            indoor_air: (entering_air, indoor_air),
            outdoor_air: (outdoor, outdoor_air),
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
            + parts.structure.accumulator.volume
            + lines.map(|line| line.volume()).iter().sum::<f64>()
    }
}
