//! The measured unit of NISTIR 7350 as a rig, and its rows.

use satline::quantity::{
    KELVIN_PER_FAHRENHEIT, KG_PER_POUND, PASCALS_PER_PSI, WATTS_PER_BTU_H, kelvin_from_fahrenheit,
};
use satline::rig::{
    Air, AnyCompressor, AnyMetering, Conditions, Device, Efficiency, EfficiencyCompressor, Faults, Rating,
    RefrigerantMap, Steady, ThermostaticValve, Unit,
};
use std::collections::BTreeMap;

/// A row of measurements by column name.
pub type Row = BTreeMap<&'static str, f64>;

/// All rows.
pub fn rows() -> Vec<Row> {
    let text = include_str!("../data/rig_measured.csv");
    let mut lines = text.lines().filter(|line| !line.starts_with('#'));
    let names: Vec<&str> = lines.next().unwrap().split(',').collect();
    lines.map(|line| names.iter().copied().zip(line.split(',').map(|value| value.parse().unwrap())).collect()).collect()
}

/// What is tuned, as multiples of the designed unit's parts unless said otherwise.
#[derive(Debug, Clone, Copy)]
pub struct Tuned {
    pub condenser: f64,
    pub evaporator: f64,
    /// kg.
    pub charge: f64,
    /// K.
    pub static_superheat: f64,
    pub valve: f64,
    /// kPa at the design flow.
    pub evaporator_drop: f64,
    pub condenser_drop: f64,
    pub outdoor_airflow: f64,
    pub liquid_share: f64,
    /// Bore of the suction line.
    pub suction_bore: f64,
}

impl Tuned {
    pub const START: [f64; 10] = [1.0, 1.0, 1.9, 3.0, 1.0, 53.0, 45.0, 1.0, 1.0, 1.0];

    pub fn of(x: &[f64]) -> Self {
        Self {
            condenser: x[0],
            evaporator: x[1],
            charge: x[2],
            static_superheat: x[3],
            valve: x[4],
            evaporator_drop: x[5],
            condenser_drop: x[6],
            outdoor_airflow: x[7],
            liquid_share: x[8],
            suction_bore: x[9],
        }
    }
}

/// The unit: the compressor by the curves that reference its report's data, the rest designed and tuned.
pub fn unit<'a>(map: &'a RefrigerantMap, tuned: &Tuned) -> Unit<'a> {
    let capacity = 2.5 * 3516.852_842_067;
    let mut rating = Rating::usual(capacity, Device::TaperedValve);
    rating.superheat = 7.8;
    rating.subcooling = 4.5;
    let mut unit = Unit::designed(map, &rating).unwrap();
    let parts = &mut unit.parts;
    parts.compressor = AnyCompressor::Efficiency(EfficiencyCompressor {
        volume_flow: [1.5899e-3, 7.194e-5],
        efficiency: Efficiency::Parabola([0.0837, 0.5084, -0.1021]),
        heat_kept: 0.855,
    });
    let flow = parts.design_flow;
    parts.condenser.air_conductance *= tuned.condenser;
    parts.condenser.two_phase_conductance *= tuned.condenser;
    parts.condenser.single_phase_conductance *= tuned.condenser * tuned.liquid_share;
    parts.condenser.drop *= tuned.condenser_drop / 45.0;
    parts.evaporator.air_conductance *= tuned.evaporator;
    parts.evaporator.two_phase_conductance *= tuned.evaporator;
    parts.evaporator.single_phase_conductance *= tuned.evaporator;
    parts.evaporator.drop *= tuned.evaporator_drop / 30.0;
    parts.outdoor_airflow *= tuned.outdoor_airflow;
    parts.condenser.design_air *= tuned.outdoor_airflow;
    parts.suction_line.diameter *= tuned.suction_bore;
    parts.suction_inlet.diameter *= tuned.suction_bore;
    let _ = flow;
    if let AnyMetering::Valve(valve) = &mut parts.metering {
        *valve = ThermostaticValve {
            coefficient: valve.coefficient * tuned.valve,
            static_superheat: tuned.static_superheat,
            ..*valve
        };
    }
    unit.nameplate_charge = tuned.charge;
    unit
}

/// The unit at a row's conditions.
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

/// Computed minus measured: dew temperature at the coil's outlet and at the condenser's inlet (K), superheat at the coil's
/// outlet and at the vapour port (K), subcooling at the liquid port (K), capacity and power (relative), discharge (K),
/// leaving air outdoors (K), pressures.
pub fn misses(map: &RefrigerantMap, found: &Steady, row: &Row) -> [f64; 9] {
    let dew = |pressure: f64| map.saturation(pressure).unwrap().dew_temperature;
    let bubble = |pressure: f64| map.saturation(pressure).unwrap().bubble_temperature;
    let pa = |name: &str| row[name] * PASCALS_PER_PSI;
    let kelvin = |name: &str| kelvin_from_fahrenheit(row[name]);
    [
        dew(found.coil_outlet_pressure) - dew(pa("coil_outlet_psia")),
        dew(found.discharge.pressure) - dew(pa("compressor_discharge_psia")),
        found.evaporator.superheat - (kelvin("coil_outlet_f") - dew(pa("coil_outlet_psia"))),
        (found.vapor_port.temperature - dew(found.vapor_port.pressure))
            - (kelvin("vapor_port_f") - dew(pa("vapor_port_psia"))),
        (bubble(found.liquid_port.pressure) - found.liquid_port.temperature)
            - (bubble(pa("liquid_port_psia")) - kelvin("liquid_port_f")),
        found.capacity / (row["refrigerant_capacity_btu_h"] * WATTS_PER_BTU_H) - 1.0,
        found.compressor_power / row["compressor_power_w"] - 1.0,
        found.mass_flow / (row["mass_flow_lb_h"] * KG_PER_POUND / 3600.0) - 1.0,
        (found.condenser.air_temperature - kelvin("condenser_leaving_dry_bulb_f")) * KELVIN_PER_FAHRENHEIT
            / KELVIN_PER_FAHRENHEIT,
    ]
}
