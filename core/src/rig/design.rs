//! A unit built from its nominal rating: parts sized so that it meets the rating point, and the charge that it then
//! holds is its nameplate's.
//!
//! What a rating does not say is common practice: temperatures of the rating point by efficiency class, air by ton,
//! inside volumes by capacity. Each is a field that can be set.

use super::coil::{Coil, evaporate, mean_volume};
use super::compressor::{Compressor, Efficiency, EfficiencyCompressor};
use super::line::Line;
use super::map::RefrigerantMap;
use super::metering::{Around, FlashingOrifice, Metering, Needle, ShortTube, ThermostaticValve};
use super::moist::Air;
use super::steady::Unit;
use super::structure::{Condenser, ReturnDuct, Streams, Structure};
use super::unit::{AnyCompressor, AnyMetering, ChargeTuning, Conditions, Faults, Parts};
use super::void::VoidFraction;
use crate::error::Error;
use crate::math;

/// Which metering device a unit is built with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Device {
    /// Fixed orifice by Payne and O'Neal.
    ShortTube,
    /// Fixed orifice by a square-root law.
    FlashingOrifice,
    /// Thermostatic valve with a tapered needle.
    TaperedValve,
    /// Thermostatic valve with a linear needle.
    LinearValve,
}

/// The rating and the choices from which a unit is built.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rating {
    /// Total cooling capacity at the rating point, W.
    pub capacity: f64,
    /// Metering device.
    pub device: Device,
    /// Condensing (bubble) temperature above the outdoor air at the rating point, K.
    pub condensing_over_ambient: f64,
    /// Evaporating (dew) temperature at the coil's outlet at the rating point, K.
    pub evaporating: f64,
    /// Superheat at the coil's outlet at the rating point, K.
    pub superheat: f64,
    /// Subcooling at the condenser's outlet at the rating point, K.
    pub subcooling: f64,
    /// Highest overall efficiency of the compressor.
    pub compressor_efficiency: f64,
    /// Indoor airflow by capacity, m³/J.
    pub indoor_airflow_by_capacity: f64,
    /// Outdoor airflow by capacity, m³/J.
    pub outdoor_airflow_by_capacity: f64,
    /// Bore, length and lift of the liquid line; m.
    pub liquid_line: [f64; 3],
    /// Bore and length of the suction line, m.
    pub suction_line: [f64; 2],
    /// Inside volume of the condenser by capacity, m³/W.
    pub condenser_volume: f64,
    /// Inside volume of the evaporator by capacity, m³/W.
    pub evaporator_volume: f64,
    /// How liquid and vapour share the coils.
    pub void: VoidFraction,
    /// Superheat at the rating point above that at which a thermostatic valve begins to open, K.
    pub superheat_above_static: f64,
    /// Flow of a thermostatic valve when fully open beyond that of the rating point, as a share of it.
    pub valve_reserve: f64,
    /// Charge by capacity beyond what coils, lines and shell hold: dissolved in oil, in the filter-drier, headers and
    /// distributor; kg/W.
    pub charge_beyond: f64,
    /// The same that follows the share of the condenser with liquid only, kg/W for the whole of it.
    pub charge_slope: f64,
    /// Which models of its parts.
    pub structure: Structure,
}

/// Pressure drops of the coils at the rating point, Pa: some 0.7 K of condensing and of evaporating temperature.
const CONDENSER_DROP_PA: f64 = 45e3;
const EVAPORATOR_DROP_PA: f64 = 30e3;

/// Rating conditions of AHRI 210/240, A: 95 °F outdoors, 80/67 °F indoors.
pub const RATING_CONDITIONS: Conditions = Conditions {
    outdoor_dry_bulb: 308.15,
    return_dry_bulb: 299.816_666_666_666_7,
    return_wet_bulb: 292.594_444_444_444_4,
    ambient_pressure: 101_325.0,
};

impl Rating {
    /// A unit of common practice with a 25 ft line set, of a capacity in W.
    #[must_use]
    pub fn usual(capacity: f64, device: Device) -> Self {
        // 400 and 900 cfm a ton; bores for velocities usual in residential line sets.
        let cfm_by_ton = 0.028_316_846_592 / 60.0 / 3_516.852_842_067;
        let size = math::sqrt(capacity / 10_550.0);
        Self {
            capacity,
            device,
            condensing_over_ambient: 11.0,
            evaporating: 281.5,
            superheat: if matches!(device, Device::ShortTube | Device::FlashingOrifice) { 6.5 } else { 6.0 },
            subcooling: 5.5,
            compressor_efficiency: 0.70,
            indoor_airflow_by_capacity: 400.0 * cfm_by_ton,
            outdoor_airflow_by_capacity: 900.0 * cfm_by_ton,
            liquid_line: [0.0079 * size.max(0.8), 7.6, 0.0],
            suction_line: [0.0187 * size, 7.6],
            condenser_volume: 3.3e-7,
            evaporator_volume: 2.2e-7,
            void: VoidFraction::Zivi,
            // 2.6 K and, when fully open, some 6 K more: a quarter of the flow in reserve is used up where a fifth of the
            // charge is missing, as measured.
            superheat_above_static: 3.4,
            valve_reserve: 0.25,
            // 0.38 kg of 3 tons: a liquid-line drier's filling and what the oil dissolves. With it a valve unit's
            // subcooling and capacity follow the charge as measured; `tests/tests/rig_measured.rs`.
            charge_beyond: 3.6e-5,
            charge_slope: 0.0,
            structure: Structure::default(),
        }
    }
}

/// Finds where a rising function is zero between two values, by halving.
fn halve(mut low: f64, mut high: f64, miss: impl Fn(f64) -> Result<f64, Error>) -> Result<f64, Error> {
    for _ in 0..100 {
        let middle = 0.5 * (low + high);
        if miss(middle)? > 0.0 {
            high = middle;
        } else {
            low = middle;
        }
    }
    Ok(0.5 * (low + high))
}

impl<'a> Unit<'a> {
    /// Builds a unit that meets its rating with a refrigerant.
    ///
    /// # Errors
    /// States outside the refrigerant's map; no coil that meets the rating.
    pub fn designed(map: &'a RefrigerantMap, rating: &Rating) -> Result<Self, Error> {
        let conditions = RATING_CONDITIONS;
        let coil_pressure = map.dew_pressure(rating.evaporating)?;
        let high = map.bubble_pressure(conditions.outdoor_dry_bulb + rating.condensing_over_ambient)?;
        let coil_outlet = map.vapor_at_temperature(coil_pressure, rating.evaporating + rating.superheat)?;
        let leaving = high - CONDENSER_DROP_PA;
        let bubble = map.saturation(leaving)?.bubble_temperature;
        let liquid = map.liquid_at_temperature(leaving, bubble - rating.subcooling)?;
        let mass_flow = rating.capacity / (coil_outlet.enthalpy - liquid.enthalpy);

        // Lines, and the state at the compressor.
        let [liquid_bore, liquid_length, lift] = rating.liquid_line;
        let [suction_bore, suction_length] = rating.suction_line;
        let liquid_line = Line { diameter: liquid_bore, length: liquid_length, rise: lift, conductance: 0.0 };
        let suction_line =
            Line { diameter: suction_bore, length: suction_length, rise: 0.0, conductance: 0.25 * suction_length };
        let condenser_outlet = Line { diameter: liquid_bore, length: 1.0, rise: 0.0, conductance: 0.0 };
        let suction_inlet = Line { diameter: suction_bore, length: 1.0, rise: 0.0, conductance: 0.3 };
        let discharge_line = Line { diameter: 0.0125, length: 0.8, rise: 0.0, conductance: 0.0 };
        let ambient = conditions.outdoor_dry_bulb;
        // The lines' own functions go backwards from the compressor: find the compressor's inlet that gives the coil's.
        let forwards = |line: &Line, (pressure, enthalpy): (f64, f64)| -> Result<(f64, f64), Error> {
            let mut end = (pressure, enthalpy);
            for _ in 0..60 {
                let start = line.vapor_backwards(map, end, mass_flow, ambient)?;
                end = (end.0 + pressure - start.0, end.1 + enthalpy - start.1);
            }
            Ok(end)
        };
        let port = forwards(&suction_line, (coil_pressure, coil_outlet.enthalpy))?;
        let (suction_pressure, suction_enthalpy) = forwards(&suction_inlet, port)?;
        let inlet = map.at_enthalpy(suction_pressure, suction_enthalpy)?;

        let ratio = high / suction_pressure;
        // Scroll: some 3 % of the volume is lost for each unit of the pressure ratio.
        let whole = mass_flow / inlet.density / (1.0 - 0.03 * ratio);
        let compressor = EfficiencyCompressor {
            volume_flow: [whole, 0.03 * whole],
            efficiency: Efficiency::Peak { peak: rating.compressor_efficiency, best_ratio: 2.7, width: 1.0 },
            heat_kept: 0.92,
        };
        let run = compressor.run(map, &inlet, high)?;

        // The condenser: air-side conductance such that it leaves just the subcooling.
        let outdoor = Air::from_dew_point(ambient, 283.15, conditions.ambient_pressure);
        let outdoor_airflow = rating.outdoor_airflow_by_capacity * rating.capacity;
        let outdoor_air = outdoor_airflow * outdoor.dry_density();
        let discharge = discharge_line.liquid(map, (high, run.discharge_enthalpy), mass_flow, ambient, 0.0)?;
        let density = map.saturation(high)?.vapor_density;
        let condenser_of = |conductance: f64| Coil {
            air_conductance: conductance,
            two_phase_conductance: 2.5 * conductance,
            single_phase_conductance: 0.9 * conductance,
            design_air: outdoor_air,
            design_flow: mass_flow,
            volume: rating.condenser_volume * rating.capacity,
            drop: CONDENSER_DROP_PA * density / (mass_flow * mass_flow),
        };
        let condensed = |conductance: f64| {
            let streams = Streams {
                pressure: discharge.0,
                enthalpy: discharge.1,
                mass_flow,
                air: outdoor,
                dry_air: outdoor_air,
                void: rating.void,
                metal: 0.0,
            };
            rating.structure.condenser.condense(&condenser_of(conductance), map, &streams)
        };
        let base = rating.capacity / 10.0;
        let scale = halve(math::ln(0.02), math::ln(60.0), |scale| {
            let out = condensed(base * math::exp(scale))?;
            let bubble = map.saturation(out.pressure)?.bubble_temperature;
            let outlet = map.at_enthalpy(out.pressure, out.enthalpy)?;
            let subcooling = if outlet.quality < 0.0 { bubble - outlet.temperature } else { -1.0 };
            Ok(subcooling - rating.subcooling)
        })?;
        let condenser = condenser_of(base * math::exp(scale));
        let condensed = condensed(condenser.air_conductance)?;
        let (liquid_pressure, liquid_enthalpy, _) =
            condenser_outlet.liquid(map, (condensed.pressure, condensed.enthalpy), mass_flow, ambient, 0.0)?;
        let (metering_pressure, metering_enthalpy, _) =
            liquid_line.liquid(map, (liquid_pressure, liquid_enthalpy), mass_flow, ambient, 0.0)?;

        // The evaporator: likewise for the superheat.
        let air =
            Air::from_wet_bulb(conditions.return_dry_bulb, conditions.return_wet_bulb, conditions.ambient_pressure);
        let indoor_airflow = rating.indoor_airflow_by_capacity * rating.capacity;
        let supply = Air { temperature: conditions.return_dry_bulb - 10.0, ..air };
        let indoor_air = indoor_airflow * supply.dry_density();
        let low = map.saturation(coil_pressure)?;
        let flashed = (metering_enthalpy - low.liquid_enthalpy) / (low.vapor_enthalpy - low.liquid_enthalpy);
        let evaporator_of = |conductance: f64| Coil {
            air_conductance: conductance,
            two_phase_conductance: 2.5 * conductance,
            single_phase_conductance: 0.5 * conductance,
            design_air: indoor_air,
            design_flow: mass_flow,
            volume: rating.evaporator_volume * rating.capacity,
            drop: EVAPORATOR_DROP_PA / (mean_volume(&low, flashed) * mass_flow * mass_flow),
        };
        let evaporated = |conductance: f64| {
            let leaving = (coil_pressure, metering_enthalpy);
            evaporate(&evaporator_of(conductance), map, rating.void, leaving, mass_flow, &air, indoor_air)
        };
        let scale = halve(math::ln(0.02), math::ln(60.0), |scale| {
            Ok(evaporated(base * math::exp(scale))?.superheat - rating.superheat)
        })?;
        let evaporator = evaporator_of(base * math::exp(scale));
        let evaporated = evaporated(evaporator.air_conductance)?;

        // The metering device passes the flow.
        let before = map.at_enthalpy(metering_pressure, metering_enthalpy)?;
        let around =
            Around { inlet: before, outlet_pressure: evaporated.inlet_pressure, bulb_superheat: evaporated.superheat };
        let metering = match rating.device {
            Device::ShortTube => {
                let length = 12.7e-3;
                let diameter =
                    halve(0.3e-3, 8e-3, |diameter| Ok(ShortTube { diameter, length }.flow(map, &around)? - mass_flow))?;
                AnyMetering::ShortTube(ShortTube { diameter, length })
            }
            Device::FlashingOrifice => {
                let one = FlashingOrifice { effective_area: 1e-6, choking_share: 0.88 };
                AnyMetering::FlashingOrifice(FlashingOrifice {
                    effective_area: 1e-6 * mass_flow / one.flow(map, &around)?,
                    ..one
                })
            }
            Device::TaperedValve | Device::LinearValve => {
                let needle = if rating.device == Device::TaperedValve { Needle::Tapered } else { Needle::Linear };
                // The lift at which the flow has its reserve left, and from it the superheat that opens the valve.
                let area = 1.0 / (1.0 + rating.valve_reserve);
                let lift = if needle == Needle::Tapered { 1.0 - math::sqrt(1.0 - area) } else { area };
                let one = ThermostaticValve {
                    coefficient: 1e-6,
                    static_superheat: rating.superheat - rating.superheat_above_static,
                    opening_superheat: rating.superheat_above_static / lift,
                    needle,
                    least_lift: 0.0,
                };
                AnyMetering::Valve(ThermostaticValve { coefficient: 1e-6 * mass_flow / one.flow(map, &around)?, ..one })
            }
        };

        let parts = Parts {
            compressor: AnyCompressor::Efficiency(compressor),
            metering,
            condenser,
            evaporator,
            liquid_line,
            suction_line,
            condenser_outlet,
            suction_inlet,
            discharge_line,
            shell_volume: 3e-7 * rating.capacity,
            void: rating.void,
            tuning: ChargeTuning {
                constant: rating.charge_beyond * rating.capacity,
                slope: rating.charge_slope * rating.capacity,
                at_share: condensed.shares[2],
            },
            indoor_airflow,
            outdoor_airflow,
            indoor_fan_power: 0.0335 * rating.capacity,
            outdoor_fan_power: 0.019 * rating.capacity,
            design_drop: metering_pressure - evaporated.inlet_pressure,
            design_flow: mass_flow,
            // Its maker knows of no duct and no bent fins.
            structure: Structure { air_imbalance: 0.0, return_duct: ReturnDuct::default(), ..rating.structure },
            heating_metering: None,
        };
        let unit = Self { map, parts, nameplate_charge: 1.0 };
        // The unit of any charge in that state: what it holds there is its nameplate charge.
        let unknowns = unit.unknowns(suction_pressure, suction_enthalpy, high)?;
        let nameplate_charge = unit.charge_at(&unknowns, &conditions, &Faults::default())?;
        Ok(Self { nameplate_charge, parts: Parts { structure: rating.structure, ..parts }, ..unit })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    #[test]
    fn a_designed_unit_meets_its_rating() {
        let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
        for device in [Device::ShortTube, Device::FlashingOrifice, Device::TaperedValve, Device::LinearValve] {
            let rating = Rating::usual(10_550.0, device);
            let unit = Unit::designed(&map, &rating).unwrap();
            let found = unit.solve(&RATING_CONDITIONS, &Faults::default()).unwrap();
            assert!((found.capacity / rating.capacity - 1.0).abs() < 1e-3);
            assert!((found.charge / unit.nameplate_charge - 1.0).abs() < 1e-6);
            assert!((found.evaporator.superheat - rating.superheat).abs() < 0.02);
        }
    }
}
