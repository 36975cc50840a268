//! Heating: the outdoor coil takes heat from the outdoor air, the indoor coil condenses, the vapour line carries hot gas
//! and a metering device of its own feeds the outdoor coil.
//!
//! Frost is told, not grown: a steady state has none. Water freezing on the coil gives its heat of fusion, which the
//! rig's air leaves out, some 13 % of the latent part.

use super::circuit::{ENTHALPY_SCALE, FILLING_PA_K, GAS_SPACE};
use super::coil::{Condensed, Evaporated};
use super::compressor::{Compression, Compressor, Leaking};
use super::map::Point;
use super::metering::{Around, FlashingOrifice, Metering, ShortTube, ThermostaticValve};
use super::moist::Air;
use super::newton::{Found, Unknowns, settle};
use super::steady::{Extremes, Unit};
use super::stop::Stop;
use super::structure::{Circuits, Condenser, Evaporator, Streams};
use super::unit::{AnyMetering, Faults, LOOSE_BULB_K};
use crate::bounds;
use crate::error::Error;
use crate::math;

/// The air around a unit that heats.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatingConditions {
    /// Air entering the outdoor coil, K.
    pub outdoor_dry_bulb: f64,
    /// Its wet bulb, K.
    pub outdoor_wet_bulb: f64,
    /// Return air at the indoor coil, K.
    pub return_dry_bulb: f64,
    /// Station pressure, Pa.
    pub ambient_pressure: f64,
}

/// Rating conditions of AHRI 210/240, H1: 47/43 °F outdoors, 70 °F indoors.
pub const HEATING_RATING_CONDITIONS: HeatingConditions = HeatingConditions {
    outdoor_dry_bulb: 281.483_333_333_333_3,
    outdoor_wet_bulb: 279.261_111_111_111_1,
    return_dry_bulb: 294.261_111_111_111_1,
    ambient_pressure: 101_325.0,
};

impl HeatingConditions {
    fn check(&self) -> Result<(), Error> {
        let advice = "units heat from outdoor air of -30 to 30 °C, room air of 5 to 40 °C";
        bounds::within("outdoor dry bulb", "K", self.outdoor_dry_bulb, 243.15, 303.15, advice)?;
        bounds::within("return dry bulb", "K", self.return_dry_bulb, 278.15, 313.15, advice)?;
        bounds::AMBIENT_PRESSURE.check(self.ambient_pressure)?;
        let advice = "air is never drier than dry nor wetter than saturated: check both bulbs";
        let (lower, upper) = (self.outdoor_dry_bulb - 45.0, self.outdoor_dry_bulb);
        bounds::within("outdoor wet bulb", "K", self.outdoor_wet_bulb, lower, upper, advice).map(|_| ())
    }

    /// So far on the way from the rating conditions to these.
    fn on_the_way(&self, share: f64) -> Self {
        let start = HEATING_RATING_CONDITIONS;
        let mix = |from: f64, to: f64| from + share * (to - from);
        Self {
            outdoor_dry_bulb: mix(start.outdoor_dry_bulb, self.outdoor_dry_bulb),
            outdoor_wet_bulb: mix(start.outdoor_wet_bulb, self.outdoor_wet_bulb),
            return_dry_bulb: mix(start.return_dry_bulb, self.return_dry_bulb),
            ambient_pressure: mix(start.ambient_pressure, self.ambient_pressure),
        }
    }
}

/// A unit that heats, at rest in its course, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heating {
    /// Refrigerant flow, kg/s.
    pub mass_flow: f64,
    /// Compressor's electric power, W.
    pub compressor_power: f64,
    /// Power of both fans, W.
    pub fan_power: f64,
    /// Heat to the indoor air, with the indoor fan's, W.
    pub capacity: f64,
    /// That by the power of compressor and fans.
    pub cop: f64,
    /// Supply air behind the fan, K.
    pub supply_dry_bulb: f64,
    /// Refrigerant inside, kg.
    pub charge: f64,
    /// At the compressor's inlet, which is the outdoor coil's outlet.
    pub compressor_inlet: Point,
    /// At its outlet, with what non-condensables add to the pressure.
    pub discharge: Point,
    /// At the outdoor unit's vapour port, where the hot gas leaves.
    pub vapor_port: Point,
    /// At the outdoor unit's liquid port, where the liquid enters.
    pub liquid_port: Point,
    /// Before the outdoor metering device.
    pub metering_inlet: Point,
    /// The indoor coil.
    pub condenser: Condensed,
    /// The outdoor coil.
    pub evaporator: Evaporated,
    /// Air entering the indoor coil, and its dry air in kg/s.
    pub indoor_air: (Air, f64),
    /// Air entering the outdoor coil, and its dry air in kg/s.
    pub outdoor_air: (Air, f64),
    /// Whether the outdoor coil gathers frost: its surface is below freezing and below the air's dew point.
    pub frosts: bool,
    /// Lift of a thermostatic valve's needle, 0 to 1.
    pub valve_lift: Option<f64>,
    /// Largest of the three balances' misses, relative.
    pub miss: f64,
}

impl Heating {
    fn extremes(&self) -> Extremes {
        Extremes {
            inlet: self.compressor_inlet,
            discharge: self.discharge,
            metering_drop: self.metering_inlet.pressure - self.evaporator.inlet_pressure,
            flash_gas: self.metering_inlet.quality,
            liquid_share: self.condenser.shares.last().copied().unwrap_or_default(),
        }
    }
}

impl<'a> Unit<'a> {
    /// The unit with a metering device for heating, sized so that at the heating rating point the outdoor coil's
    /// superheat is that asked for, K.
    ///
    /// # Errors
    /// [`Error::NotAvailable`] where the unit with its charge finds no steady state there.
    pub fn with_heating(&self, superheat: f64) -> Result<Unit<'a>, Error> {
        let sized = |scale: f64| Unit {
            parts: super::unit::Parts { heating_metering: Some(scaled(&self.parts.metering, scale)), ..self.parts },
            ..*self
        };
        // A larger device leaves less superheat. Where nothing settles, one larger than for cooling floods, one smaller
        // starves.
        let (mut small, mut large) = (math::ln(0.2), math::ln(2.5));
        for _ in 0..40 {
            let middle = 0.5 * (small + large);
            let found = sized(math::exp(middle)).solve_heating(&HEATING_RATING_CONDITIONS, &Faults::default());
            let too_large = match &found {
                Ok(found) => found.evaporator.superheat < superheat,
                Err(error) => middle > 0.0 || Stop::of(error) == Some(Stop::FloodedCompressor),
            };
            if too_large {
                large = middle;
            } else {
                small = middle;
            }
        }
        let unit = sized(math::exp(0.5 * (small + large)));
        unit.solve_heating(&HEATING_RATING_CONDITIONS, &Faults::default())?;
        Ok(unit)
    }

    /// Where the unit settles when it heats.
    ///
    /// # Errors
    /// As [`Unit::solve`]; [`Error::NotAvailable`] too for a unit that cannot heat.
    pub fn solve_heating(&self, conditions: &HeatingConditions, faults: &Faults) -> Result<Heating, Error> {
        conditions.check()?;
        faults.check()?;
        self.parts.check()?;
        let Some(metering) = self.parts.heating_metering else {
            return Err(Error::NotAvailable {
                quantity: "heating",
                reason: "this unit only cools: give it a metering device for heating",
            });
        };
        let settled = settle(
            |share| self.heating_guess(&conditions.on_the_way(share)),
            |share, unknowns| {
                let (reached, fault) = (conditions.on_the_way(share), faults.scaled(share));
                self.heating_misses(unknowns, &metering, &reached, &fault)
            },
        );
        let within = |found: &Found<Heating>| self.limit(&found.0.extremes());
        let (state, _, miss) = settled.map_err(|last| last.as_ref().map_or(Stop::NoBalance, within).error())?;
        Self::running(&state.extremes()).map_or(Ok(Heating { miss, ..state }), |stop| Err(stop.error()))
    }

    fn heating_guess(&self, conditions: &HeatingConditions) -> Unknowns {
        let (lowest, highest) = self.map.pressure_range();
        let low = self.map.dew_pressure(conditions.outdoor_dry_bulb - 8.0).unwrap_or(1.5 * lowest);
        let high = self.map.bubble_pressure(conditions.return_dry_bulb + 18.0).unwrap_or(0.85 * highest);
        [math::ln(low), math::ln(high), 0.6]
    }

    /// How far each balance is from closing, relatively, and the state that was tried.
    fn heating_misses(
        &self,
        unknowns: &Unknowns,
        metering: &AnyMetering,
        conditions: &HeatingConditions,
        faults: &Faults,
    ) -> Result<([f64; 3], Heating), Error> {
        let (map, parts) = (self.map, &self.parts);
        let structure = &parts.structure;
        let [ln_suction, ln_discharge, beyond_dew] = *unknowns;
        let (suction, high) = (math::exp(ln_suction), math::exp(ln_discharge));
        let inlet = map.at_enthalpy(suction, map.saturation(suction)?.vapor_enthalpy + beyond_dew * ENTHALPY_SCALE)?;
        let compressor = Leaking { sound: &parts.compressor, share: faults.compressor_leakage };
        let warm = conditions.return_dry_bulb + 15.0;
        let foreign =
            faults.non_condensables * FILLING_PA_K * warm * self.whole_volume() / (GAS_SPACE * parts.evaporator.volume);
        let Compression { mass_flow, power, discharge_enthalpy } = compressor.run(map, &inlet, high + foreign)?;
        if !(mass_flow > 0.0) {
            return Err(Stop::NoBalance.error());
        }

        // Hot gas to the indoor coil.
        let ambient = conditions.outdoor_dry_bulb;
        let mut line = parts.suction_line;
        line.conductance *= 1.0 + faults.suction_line_heat_gain;
        let (p, h, discharge_charge) =
            parts.discharge_line.vapor_forwards(map, (high, discharge_enthalpy), mass_flow, ambient)?;
        let (port_p, port_h, inlet_charge) = parts.suction_inlet.vapor_forwards(map, (p, h), mass_flow, ambient)?;
        let (p, h, line_charge) = line.vapor_forwards(map, (port_p, port_h), mass_flow, ambient)?;
        let room = Air::from_dew_point(conditions.return_dry_bulb, 278.15, conditions.ambient_pressure);
        let outdoor = Air::from_wet_bulb(ambient, conditions.outdoor_wet_bulb, conditions.ambient_pressure);
        let share = 1.0 - faults.low_indoor_airflow;
        let indoor_dry = parts.indoor_airflow * share * room.dry_density();
        let entering = structure.return_duct.entering(&room, &outdoor, indoor_dry);
        let void = parts.void;
        let streams =
            Streams { pressure: p, enthalpy: h, mass_flow, air: entering, dry_air: indoor_dry, void, metal: 0.0 };
        let condensed = structure.condenser.condense(&parts.evaporator, map, &streams)?;

        // Liquid back to the outdoor coil: what rises in cooling falls now.
        let flow = mass_flow / parts.design_flow;
        let restriction = faults.liquid_line_restriction * parts.design_drop * flow * flow;
        let mut down = parts.liquid_line;
        down.rise = -down.rise;
        let end = (condensed.pressure, condensed.enthalpy);
        let (liquid_p, liquid_h, liquid_charge) = down.liquid(map, end, mass_flow, ambient, restriction)?;
        let (p, h, outlet_charge) =
            parts.condenser_outlet.liquid(map, (liquid_p, liquid_h), mass_flow, ambient, 0.0)?;
        let before = map.at_enthalpy(p, h)?;
        let outdoor_dry = parts.outdoor_airflow * (1.0 - faults.restricted_condenser_air) * outdoor.dry_density();
        let streams =
            Streams { pressure: suction, enthalpy: h, mass_flow, air: outdoor, dry_air: outdoor_dry, void, metal: 0.0 };
        let evaporated = Circuits { imbalance: 0.0 }.evaporate(&parts.condenser, map, &streams)?;

        // The metering device.
        let (loose, wider, shut, lift) = match metering {
            AnyMetering::Valve(valve) => {
                let felt = evaporated.superheat + LOOSE_BULB_K * faults.metering_overfeeding;
                (felt - evaporated.superheat, 1.0, valve.short_of_opening(felt), Some(valve.lift(felt)))
            }
            _ => (0.0, 1.0 + faults.metering_overfeeding, 0.0, None),
        };
        let bulb_superheat = evaporated.superheat + loose;
        let around = Around { inlet: before, outlet_pressure: evaporated.inlet_pressure, bulb_superheat };
        let passed = metering.flow(map, &around)? * wider * (1.0 - faults.metering_underfeeding);

        let charge = condensed.charge
            + evaporated.charge
            + discharge_charge
            + inlet_charge
            + line_charge
            + liquid_charge
            + outlet_charge
            + parts.shell_volume * inlet.density
            + structure.accumulator.charge(map, suction, inlet.quality, inlet.density)?
            + parts.tuning.constant
            + parts.tuning.slope * (condensed.shares[2] - parts.tuning.at_share);
        let inside = self.nameplate_charge * (1.0 - faults.undercharge + faults.overcharge);
        let misses = [
            passed / mass_flow - 1.0 - 0.1 * shut,
            (evaporated.enthalpy - inlet.enthalpy) / 1e5,
            (charge - inside) / inside,
        ];
        if !misses.iter().all(|miss| miss.is_finite()) {
            return Err(Stop::NoBalance.error());
        }
        let fan = parts.indoor_fan_power * share;
        let capacity = condensed.heat + fan;
        let fan_power = fan + parts.outdoor_fan_power;
        let surface = evaporated.surface_temperature;
        let state = Heating {
            mass_flow,
            compressor_power: power,
            fan_power,
            capacity,
            cop: capacity / (power + fan_power),
            supply_dry_bulb: condensed.air_temperature + fan / (indoor_dry * entering.heat_capacity()),
            charge,
            compressor_inlet: inlet,
            discharge: Point { pressure: high + foreign, ..map.at_enthalpy(high, discharge_enthalpy)? },
            vapor_port: map.at_enthalpy(port_p, port_h)?,
            liquid_port: Point { pressure: liquid_p + foreign, ..map.at_enthalpy(liquid_p, liquid_h)? },
            metering_inlet: before,
            condenser: condensed,
            evaporator: evaporated,
            indoor_air: (entering, indoor_dry),
            outdoor_air: (outdoor, outdoor_dry),
            frosts: surface < 273.15 && surface < outdoor.dew_point(),
            valve_lift: lift,
            miss: 0.0,
        };
        Ok((misses, state))
    }
}

/// A device of the same kind that passes so many times more.
fn scaled(metering: &AnyMetering, times: f64) -> AnyMetering {
    match *metering {
        AnyMetering::ShortTube(tube) => {
            AnyMetering::ShortTube(ShortTube { diameter: tube.diameter * math::sqrt(times), ..tube })
        }
        AnyMetering::FlashingOrifice(one) => {
            AnyMetering::FlashingOrifice(FlashingOrifice { effective_area: one.effective_area * times, ..one })
        }
        AnyMetering::Valve(valve) => {
            AnyMetering::Valve(ThermostaticValve { coefficient: valve.coefficient * times, ..valve })
        }
    }
}
