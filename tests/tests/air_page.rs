//! The worked example of core/docs/air.md: each row of its tables is computed here and must stand there.

use satline::air::{
    AirflowPlace, CoilAir, Humidity, KnownHeat, MeasuredAir, MoistAir, cfm_per_ton_from_m3_s_w, density_ratio,
};
use satline::charge::target_split;
use satline::quantity::{
    AirTemperature, Atmosphere, KELVIN_PER_FAHRENHEIT, M3_S_PER_CFM, PASCALS_PER_PSI, WATTS_PER_BTU_H,
    fahrenheit_from_kelvin, kelvin_from_fahrenheit,
};
use satline::uncertain::Uncertain;

const PAGE: &str = include_str!("../../core/docs/air.md");

/// A thermometer with a limit of error of 1 °F.
fn probe(fahrenheit: f64) -> Uncertain {
    Uncertain::new(kelvin_from_fahrenheit(fahrenheit), KELVIN_PER_FAHRENHEIT / 3.0_f64.sqrt()).unwrap()
}

struct Rows(Vec<String>);

impl Rows {
    fn plain(&mut self, name: &str, si: &str, ip: &str) {
        self.0.push(format!("| {name} | {si} | {ip} |"));
    }

    /// A value with ±, in SI times `si` and in IP units times `ip`, with that many places.
    fn with(
        &mut self,
        name: &str,
        value: Uncertain,
        (si, si_places, si_unit): (f64, usize, &str),
        (ip, ip_places, ip_unit): (f64, usize, &str),
    ) {
        let text = |factor: f64, places: usize, unit: &str| {
            let (value, uncertainty) = (value.value * factor, value.standard_uncertainty * factor);
            format!("{value:.places$} ± {uncertainty:.places$} {unit}").trim_end().to_string()
        };
        self.plain(name, &text(si, si_places, si_unit), &text(ip, ip_places, ip_unit));
    }
}

fn rows() -> Rows {
    let mut rows = Rows(Vec::new());
    let ambient = Atmosphere::at_altitude_m(5280.0 * 0.3048).unwrap();
    let pa = ambient.pascals();
    rows.plain("ambient pressure", &format!("{:.2} kPa", pa / 1e3), &format!("{:.2} psia", pa / PASCALS_PER_PSI));
    let f = |value| AirTemperature::from_fahrenheit(value).unwrap();
    let air = MoistAir::from_wet_bulb(f(75.0), f(61.0), ambient).unwrap();
    rows.plain(
        "relative humidity",
        &format!("{:.1} %", 100.0 * air.relative_humidity()),
        &format!("{:.1} %", 100.0 * air.relative_humidity()),
    );
    rows.plain(
        "humidity ratio",
        &format!("{:.5} kg/kg", air.humidity_ratio()),
        &format!("{:.1} grains/lb", 7000.0 * air.humidity_ratio()),
    );
    let dew = air.dew_point_k().unwrap();
    rows.plain("dew point", &format!("{:.2} °C", dew - 273.15), &format!("{:.1} °F", fahrenheit_from_kelvin(dew)));
    rows.plain(
        "enthalpy, to dry air",
        &format!("{:.2} kJ/kg", air.enthalpy_j_kg() / 1e3),
        &format!("{:.2} Btu/lb above 0 °C", air.enthalpy_j_kg() / 2326.0),
    );
    rows.plain(
        "density",
        &format!("{:.4} kg/m³", air.density_kg_m3()),
        &format!("{:.4} lb/ft³", air.density_kg_m3() * 0.062_427_96),
    );
    rows.plain(
        "density over standard air",
        &format!("{:.3}", density_ratio(&air)),
        &format!("{:.3}", density_ratio(&air)),
    );

    let heating = CoilAir {
        entering: MeasuredAir {
            dry_bulb_k: probe(70.0),
            humidity: Humidity::Relative(Uncertain::new(0.40, 0.03).unwrap()),
        },
        leaving_dry_bulb_k: probe(98.0),
        leaving_humidity: None,
        pressure_pa: Uncertain::new(pa, 1000.0).unwrap(),
        shared_bias_k: 0.0,
    };
    let strips = KnownHeat::Heating {
        heat_w: Uncertain::new(9400.0, 150.0).unwrap(),
        blower_w: Uncertain::new(450.0, 20.0).unwrap(),
    };
    let flow = heating.airflow(strips).unwrap();
    let (per_s, cfm) = ((1.0, 3, "m³/s"), (1.0 / M3_S_PER_CFM, 0, "cfm"));
    rows.with("airflow at the return", flow.entering_m3_s, per_s, cfm);
    rows.with("airflow at standard air", flow.standard_m3_s, per_s, (1.0 / M3_S_PER_CFM, 0, "scfm"));

    let cooling = CoilAir {
        entering: MeasuredAir { dry_bulb_k: probe(75.0), humidity: Humidity::WetBulb(probe(61.0)) },
        leaving_dry_bulb_k: probe(55.0),
        leaving_humidity: Some(Humidity::WetBulb(probe(52.0))),
        pressure_pa: Uncertain::new(pa, 1000.0).unwrap(),
        shared_bias_k: 0.0,
    };
    let split = cooling.split(|dry, wet| target_split(dry, wet).difference()).unwrap();
    let (kelvin, degrees) = ((1.0, 2, "K"), (1.0 / KELVIN_PER_FAHRENHEIT, 1, "°F"));
    rows.with("temperature split", split.split_k, kelvin, degrees);
    rows.with("its target", split.target_k.unwrap(), kelvin, degrees);
    rows.with("deviation", split.deviation_k.unwrap(), kelvin, degrees);
    let capacity = cooling.capacity(flow.standard_m3_s, AirflowPlace::Standard).unwrap();
    let (kilowatt, btu) = ((1e-3, 2, "kW"), (1.0 / WATTS_PER_BTU_H, 0, "Btu/h"));
    rows.with("sensible capacity", capacity.sensible_w, kilowatt, btu);
    rows.with("latent capacity", capacity.latent_w, kilowatt, btu);
    rows.with("total capacity", capacity.total_w, kilowatt, btu);
    rows.with("sensible heat ratio", capacity.sensible_heat_ratio.unwrap(), (1.0, 2, ""), (1.0, 2, ""));
    rows.with("condensate", capacity.condensate_kg_s, (3600.0, 2, "kg/h"), (3600.0 / 0.453_592_37, 2, "lb/h"));
    let each = flow.entering_m3_s.value / capacity.total_w.value;
    rows.plain(
        "airflow to capacity",
        &format!("{:.2e} m³/s to a watt", each),
        &format!("{:.0} cfm to a ton", cfm_per_ton_from_m3_s_w(each).unwrap()),
    );
    let surface = cooling.apparatus_dew_point().unwrap();
    rows.plain(
        "apparatus dew point",
        &format!("{:.1} ± {:.1} °C", surface.temperature_k.value - 273.15, surface.temperature_k.standard_uncertainty),
        &format!(
            "{:.1} ± {:.1} °F",
            fahrenheit_from_kelvin(surface.temperature_k.value),
            surface.temperature_k.standard_uncertainty / KELVIN_PER_FAHRENHEIT
        ),
    );
    rows.with("bypass factor", surface.bypass_factor, (1.0, 2, ""), (1.0, 2, ""));
    rows
}

#[test]
fn every_row_of_the_page_is_computed() {
    let rows = rows().0;
    let missing: Vec<_> = rows.iter().filter(|row| !PAGE.lines().any(|line| line == row.as_str())).collect();
    assert!(missing.is_empty(), "not in core/docs/air.md:\n{missing:#?}");
    // And nothing else stands in its tables.
    let shown = PAGE.lines().filter(|line| line.starts_with("| ") && !line.starts_with("| quantity")).count();
    assert_eq!(shown, rows.len());
}
