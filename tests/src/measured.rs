//! The measured unit of NISTIR 7350 as a rig, and its rows.

use satline::quantity::{KG_PER_POUND, PASCALS_PER_PSI, WATTS_PER_BTU_H, kelvin_from_fahrenheit};
use satline::rig::{
    Air, AnyCompressor, AnyMetering, Conditions, Device, Efficiency, EfficiencyCompressor, Faults, Rating,
    RefrigerantMap, Steady, ThermostaticValve, Unit,
};
use std::collections::BTreeMap;

/// A row of measurements by column name.
pub type Row = BTreeMap<&'static str, f64>;

/// All rows.
///
/// # Panics
/// If the file is not a table of numbers.
#[must_use]
pub fn rows() -> Vec<Row> {
    let text = include_str!("../data/rig_measured.csv");
    let mut lines = text.lines().filter(|line| !line.starts_with('#'));
    let names: Vec<&str> = lines.next().unwrap().split(',').collect();
    lines.map(|line| names.iter().copied().zip(line.split(',').map(|value| value.parse().unwrap())).collect()).collect()
}

/// The rows on which the unit is tuned; the others are predicted.
pub const TUNED_ON: [f64; 5] = [2.0, 5.0, 8.0, 11.0, 15.0];

/// How many numbers are tuned.
pub const COUNT: usize = 16;

/// What is tuned: factors on the designed unit's parts unless said otherwise.
#[derive(Debug, Clone, Copy)]
pub struct Tuned {
    /// Condenser's conductances.
    pub condenser: f64,
    /// Evaporator's conductances.
    pub evaporator: f64,
    /// Charge, kg.
    pub charge: f64,
    /// Superheat at which the valve begins to open, K.
    pub static_superheat: f64,
    /// Superheat more, at which it is fully open, K.
    pub opening_superheat: f64,
    /// Valve's flow coefficient.
    pub valve: f64,
    /// Evaporator's pressure drop.
    pub evaporator_drop: f64,
    /// Condenser's pressure drop.
    pub condenser_drop: f64,
    /// Outdoor airflow.
    pub outdoor_airflow: f64,
    /// Condenser's conductance to liquid and hot gas, beyond that of all its conductances.
    pub condenser_single_phase: f64,
    /// Evaporator's conductance to vapour, beyond that of all its conductances.
    pub evaporator_single_phase: f64,
    /// Suction line's bore.
    pub suction_bore: f64,
    /// Liquid line's bore.
    pub liquid_bore: f64,
    /// Heat that the suction line takes up.
    pub suction_heat: f64,
    /// Heat that the liquid takes up inside the outdoor unit, W/K.
    pub liquid_heat: f64,
    /// Length that the passages between condenser and liquid port are worth, m.
    pub outlet_length: f64,
}

impl Tuned {
    /// As designed.
    pub const START: [f64; COUNT] = [1.0, 1.0, 1.9, 3.0, 9.9, 1.0, 1.7, 1.0, 1.0, 1.0, 1.0, 1.0, 0.9, 1.0, 1.0, 3.0];
    /// From `rig_tuning`, on the five rows.
    pub const FOUND: [f64; COUNT] = [
        1.6531, 2.4705, 2.5549, 4.1149, 8.9032, 1.3683, 2.4246, 0.6459, 0.9698, 0.226, 0.2439, 0.7562, 0.6979, 2.4045,
        1.0068, 15.0956,
    ];

    /// From the numbers in the order of the fields.
    #[must_use]
    pub const fn of(x: &[f64; COUNT]) -> Self {
        Self {
            condenser: x[0],
            evaporator: x[1],
            charge: x[2],
            static_superheat: x[3],
            opening_superheat: x[4],
            valve: x[5],
            evaporator_drop: x[6],
            condenser_drop: x[7],
            outdoor_airflow: x[8],
            condenser_single_phase: x[9],
            evaporator_single_phase: x[10],
            suction_bore: x[11],
            liquid_bore: x[12],
            suction_heat: x[13],
            liquid_heat: x[14],
            outlet_length: x[15],
        }
    }
}

/// The compressor by curves through the report's data.
pub const COMPRESSOR: EfficiencyCompressor = EfficiencyCompressor {
    volume_flow: [1.5899e-3, 7.194e-5],
    efficiency: Efficiency::Parabola([0.0837, 0.5084, -0.1021]),
    heat_kept: 0.855,
};

/// The unit: the compressor by the curves that stand for its report's data, the rest designed and tuned.
///
/// # Errors
/// Where no such unit can be designed.
pub fn unit<'a>(map: &'a RefrigerantMap, tuned: &Tuned) -> Result<Unit<'a>, satline::Error> {
    let capacity = 2.5 * 3_516.852_842_067;
    let mut rating = Rating::usual(capacity, Device::TaperedValve);
    rating.superheat = 7.8;
    rating.subcooling = 4.5;
    let mut unit = Unit::designed(map, &rating)?;
    let parts = &mut unit.parts;
    parts.compressor = AnyCompressor::Efficiency(COMPRESSOR);
    parts.condenser.air_conductance *= tuned.condenser;
    parts.condenser.two_phase_conductance *= tuned.condenser;
    parts.condenser.single_phase_conductance *= tuned.condenser * tuned.condenser_single_phase;
    parts.condenser.drop *= tuned.condenser_drop;
    parts.evaporator.air_conductance *= tuned.evaporator;
    parts.evaporator.two_phase_conductance *= tuned.evaporator;
    parts.evaporator.single_phase_conductance *= tuned.evaporator * tuned.evaporator_single_phase;
    parts.evaporator.drop *= tuned.evaporator_drop;
    parts.outdoor_airflow *= tuned.outdoor_airflow;
    parts.condenser.design_air *= tuned.outdoor_airflow;
    for line in [&mut parts.suction_line, &mut parts.suction_inlet] {
        line.diameter *= tuned.suction_bore;
        line.conductance *= tuned.suction_heat;
    }
    parts.liquid_line.diameter *= tuned.liquid_bore;
    parts.condenser_outlet.length *= tuned.outlet_length;
    parts.condenser_outlet.conductance = tuned.liquid_heat;
    if let AnyMetering::Valve(valve) = &mut parts.metering {
        *valve = ThermostaticValve {
            coefficient: valve.coefficient * tuned.valve,
            static_superheat: tuned.static_superheat,
            opening_superheat: tuned.opening_superheat,
            ..*valve
        };
    }
    unit.nameplate_charge = tuned.charge;
    Ok(unit)
}

/// The unit at a row's conditions.
///
/// # Errors
/// Where the unit does not run there.
pub fn at(unit: &Unit, row: &Row) -> Result<Steady, satline::Error> {
    let kelvin = |name: &str| kelvin_from_fahrenheit(row[name]);
    let pressure = 101_325.0;
    let air = Air::from_dew_point(kelvin("return_dry_bulb_f"), kelvin("return_dew_point_f"), pressure);
    let mut unit = *unit;
    // Standard cubic feet a minute: mass, at 1.2 kg/m³.
    let mass = row["airflow_scfm"] * 0.028_316_846_592 / 60.0 * 1.2;
    let supply = Air { temperature: air.temperature - 10.0, ..air };
    unit.parts.indoor_airflow = mass / (1.0 + air.humidity_ratio) / supply.dry_density();
    let conditions = Conditions {
        outdoor_dry_bulb: kelvin("outdoor_dry_bulb_f"),
        return_dry_bulb: air.temperature,
        return_wet_bulb: air.wet_bulb(),
        ambient_pressure: pressure,
    };
    unit.solve(&conditions, &Faults::default())
}

/// Computed minus measured.
#[derive(Debug, Clone, Copy)]
pub struct Misses {
    /// Dew temperature at the coil's outlet, K.
    pub evaporating: f64,
    /// Dew temperature at the compressor's discharge, K.
    pub condensing: f64,
    /// Superheat at the coil's outlet, K.
    pub coil_superheat: f64,
    /// Superheat at the outdoor unit's vapour port, K.
    pub port_superheat: f64,
    /// Subcooling at the outdoor unit's liquid port, K.
    pub subcooling: f64,
    /// Heat of the indoor coil against the row's own mass flow times its enthalpies, relative.
    pub capacity: f64,
    /// The same against the report's number of it, relative.
    pub reported_capacity: f64,
    /// Compressor's power, relative.
    pub power: f64,
    /// Mass flow, relative.
    pub mass_flow: f64,
    /// Air leaving the condenser, K.
    pub leaving_air: f64,
    /// Pressure drops as dew temperatures, K: evaporator, suction line to the compressor, condenser, liquid line.
    pub drops: [f64; 4],
}

impl Misses {
    /// Divided by what each is expected to miss.
    #[must_use]
    pub fn weighed(&self) -> [f64; 13] {
        [
            self.evaporating / 0.2,
            self.condensing / 0.15,
            self.coil_superheat / 0.6,
            self.port_superheat / 0.6,
            self.subcooling / 0.6,
            self.capacity / 0.02,
            self.power / 0.02,
            self.mass_flow / 0.02,
            self.leaving_air / 1.0,
            self.drops[0] / 0.2,
            self.drops[1] / 0.2,
            self.drops[2] / 0.2,
            self.drops[3] / 0.3,
        ]
    }
}

/// What a row's mass flow carries from its valve to its coil's outlet, W.
///
/// # Panics
/// If the row's states lie outside the map.
#[must_use]
pub fn mass_flow_times_enthalpy(map: &RefrigerantMap, row: &Row) -> f64 {
    let pa = |name: &str| row[name] * PASCALS_PER_PSI;
    let kelvin = |name: &str| kelvin_from_fahrenheit(row[name]);
    let vapor = map.vapor_at_temperature(pa("coil_outlet_psia"), kelvin("coil_outlet_f")).unwrap();
    let liquid = map.liquid_at_temperature(pa("valve_inlet_psia"), kelvin("liquid_port_f")).unwrap();
    row["mass_flow_lb_h"] * KG_PER_POUND / 3600.0 * (vapor.enthalpy - liquid.enthalpy)
}

/// Compares what the unit did at a row's conditions with the row.
///
/// # Panics
/// If a pressure lies outside the map.
#[must_use]
pub fn misses(map: &RefrigerantMap, found: &Steady, row: &Row) -> Misses {
    let dew = |pressure: f64| map.saturation(pressure).unwrap().dew_temperature;
    let bubble = |pressure: f64| map.saturation(pressure).unwrap().bubble_temperature;
    let pa = |name: &str| row[name] * PASCALS_PER_PSI;
    let kelvin = |name: &str| kelvin_from_fahrenheit(row[name]);
    let drop = |from: f64, to: f64, measured_from: &str, measured_to: &str| {
        dew(from) - dew(to) - dew(pa(measured_from)) + dew(pa(measured_to))
    };
    Misses {
        evaporating: dew(found.coil_outlet_pressure) - dew(pa("coil_outlet_psia")),
        condensing: dew(found.discharge.pressure) - dew(pa("compressor_discharge_psia")),
        coil_superheat: found.evaporator.superheat - (kelvin("coil_outlet_f") - dew(pa("coil_outlet_psia"))),
        port_superheat: (found.vapor_port.temperature - dew(found.vapor_port.pressure))
            - (kelvin("vapor_port_f") - dew(pa("vapor_port_psia"))),
        subcooling: (bubble(found.liquid_port.pressure) - found.liquid_port.temperature)
            - (bubble(pa("liquid_port_psia")) - kelvin("liquid_port_f")),
        capacity: found.capacity / mass_flow_times_enthalpy(map, row) - 1.0,
        reported_capacity: found.capacity / (row["refrigerant_capacity_btu_h"] * WATTS_PER_BTU_H) - 1.0,
        power: found.compressor_power / row["compressor_power_w"] - 1.0,
        mass_flow: found.mass_flow / (row["mass_flow_lb_h"] * KG_PER_POUND / 3600.0) - 1.0,
        leaving_air: found.condenser.air_temperature - kelvin("condenser_leaving_dry_bulb_f"),
        drops: [
            drop(
                found.evaporator.inlet_pressure,
                found.coil_outlet_pressure,
                "evaporator_inlet_psia",
                "coil_outlet_psia",
            ),
            drop(
                found.coil_outlet_pressure,
                found.compressor_inlet.pressure,
                "coil_outlet_psia",
                "compressor_suction_psia",
            ),
            drop(found.discharge.pressure, found.liquid_port.pressure, "compressor_discharge_psia", "liquid_port_psia"),
            drop(found.liquid_port.pressure, found.metering_inlet.pressure, "liquid_port_psia", "valve_inlet_psia"),
        ],
    }
}

/// Rows of the tables in `core/docs/rig.md` as they should be.
#[derive(Debug, Default)]
pub struct Page(Vec<(String, Vec<(f64, usize)>)>);

impl Page {
    /// A row: its name, which may hold several cells, and its values with so many digits.
    pub fn row(&mut self, name: &str, values: &[f64], digits: usize) {
        self.0.push((name.to_string(), values.iter().map(|value| (*value, digits)).collect()));
    }

    /// More values of the last row.
    pub fn more(&mut self, values: &[f64], digits: usize) {
        if let Some((_, cells)) = self.0.last_mut() {
            cells.extend(values.iter().map(|value| (*value, digits)));
        }
    }

    /// Fails with every row that the page lacks or that is off by more than three units of its last digit.
    ///
    /// # Panics
    /// If a row fails.
    pub fn stands(&self) {
        let page = include_str!("../../core/docs/rig.md");
        let wrong: Vec<String> = self
            .0
            .iter()
            .filter(|(name, values)| {
                let found = page.lines().find_map(|line| line.strip_prefix(&format!("| {name} | ")));
                let cells: Vec<f64> = found
                    .iter()
                    .flat_map(|line| line.trim_end_matches(" |").split(" | "))
                    .filter_map(|cell| cell.parse().ok())
                    .collect();
                let near = |((value, digits), cell): (&(f64, usize), &f64)| {
                    (value - cell).abs() < 3.0 * 0.1_f64.powi(i32::try_from(*digits).unwrap_or(0))
                };
                cells.len() != values.len() || !values.iter().zip(&cells).all(near)
            })
            .map(|(name, values)| {
                let cells: Vec<String> = values.iter().map(|(value, digits)| format!("{value:+.digits$}")).collect();
                format!("| {name} | {} |", cells.join(" | "))
            })
            .collect();
        assert!(wrong.is_empty(), "not so in core/docs/rig.md:\n{}", wrong.join("\n"));
    }
}
