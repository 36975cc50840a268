//! The numbers of the pressure part of `core/docs/line_set.md`, computed anew: each row of the page's tables is made here.

use satline::Error;
use satline::eos::{End, Properties, Reference, model};
use satline::lineset::{
    Fitting, Fittings, Insulation, LineAdvice, LineEnd, LineHeat, LiquidLine, Run, Surroundings, Tube, VaporDuty,
    VaporLine, liquid_line, mass_flow_kg_s, vapor_line,
};
use satline::quantity::{PASCALS_PER_PSI, WATTS_PER_TON, kelvin_from_fahrenheit as fahrenheit};
use satline::uncertain::Uncertain;

const PAGE: &str = include_str!("../../core/docs/line_set.md");
const FOOT: f64 = 0.3048;

fn psi(value: Uncertain) -> String {
    let [value, deviation] = [value.value, value.standard_uncertainty].map(|pascals| pascals / PASCALS_PER_PSI);
    format!("{value:.1} ± {deviation:.1} psi = {:.1} kPa", value * PASCALS_PER_PSI / 1e3)
}

fn kelvin(value: Uncertain) -> String {
    let [value, deviation] = [value.value, value.standard_uncertainty];
    format!("{:.1} ± {:.1} °F = {value:.2} K", 1.8 * value, 1.8 * deviation)
}

#[test]
fn the_page_says_what_is_computed() -> Result<(), Error> {
    let uncertain = |value, deviation| Uncertain::new(value, deviation).unwrap();
    let r454b = Properties::of(&model::R454B, Reference::Iir)?;
    let liquid = [uncertain(fahrenheit(95.0), 0.5), uncertain(350.0 * PASCALS_PER_PSI + 101_325.0, 14e3)];
    let dew = r454b.mixture().at_temperature(End::Dew, fahrenheit(45.0))?.pressure;
    let vapor = [uncertain(fahrenheit(55.0), 0.5), uncertain(dew, 10e3)];
    let flow = mass_flow_kg_s(&r454b, uncertain(3.0 * WATTS_PER_TON, 500.0), liquid, vapor)?;
    let way = |size: &str, feet_up: f64| -> Result<Run, Error> {
        Ok(Run {
            tube: Tube::named(size)?,
            length_m: uncertain(60.0 * FOOT, 0.3 / 1.73),
            rise_m: uncertain(feet_up * FOOT, 0.1),
            fittings: Fittings::NONE.with(Fitting::LongElbow, 4)?,
        })
    };
    let mut rows = vec![format!("| mass flow | {:.4} ± {:.4} kg/s |", flow.value, flow.standard_uncertainty)];
    let mut row = |name: &str, value: String| rows.push(format!("| {name} | {value} |"));

    let [temperature, pressure] = liquid;
    let question = LiquidLine::new(&r454b, way("3/8", 20.0)?, flow, pressure, temperature);
    let line = liquid_line(&question)?;
    row("lift", psi(line.lift_pa));
    row("friction, four long elbows included", psi(line.friction_pa));
    row("together", psi(line.drop_pa));
    row("subcooling at the port", kelvin(line.subcooling_k));
    row("subcooling that the line takes", kelvin(line.subcooling_needed_k));
    row("**subcooling left at the metering device**", format!("**{}**", kelvin(line.subcooling_left_k)));
    row(
        "velocity",
        format!("{:.2} m/s = {:.0} ft/min", line.velocity_m_s.value, line.velocity_m_s.value / FOOT * 60.0),
    );
    assert_eq!(line.advice().collect::<Vec<_>>(), [LineAdvice::Nothing]);
    // With 1 K of subcooling at the port.
    let bubble = r454b.mixture().at_pressure(End::Bubble, pressure.value)?.temperature;
    let short = liquid_line(&LiquidLine { temperature_k: uncertain(bubble - 1.0, 0.5), ..question })?;
    let begins = short.flash_begins_m.unwrap();
    row("with 1 K (1.8 °F) at the port, flash gas begins after", format!("{:.0} ft = {begins:.1} m", begins / FOOT));

    let [temperature, pressure] = vapor;
    let insulation = Insulation { thickness_m: 0.0127, conductivity_w_m_k: uncertain(0.038, 0.003) };
    let air = Surroundings {
        dew_point_k: Some(fahrenheit(75.0)),
        insulation: Some(insulation),
        ..Surroundings::still_air(uncertain(fahrenheit(95.0), 1.0))
    };
    let question = VaporLine {
        heat: LineHeat::From(air),
        discharge_pressure_pa: Some(liquid[1].value),
        ..VaporLine::new(&r454b, VaporDuty::Suction, way("3/4", -20.0)?, flow, LineEnd::Outlet, pressure, temperature)
    };
    let line = vapor_line(&question)?;
    row("suction line: friction", psi(line.friction_pa));
    row("the vapour's weight on its way down", psi(line.lift_pa));
    row("together, with acceleration", psi(line.drop_pa));
    row("loss of dew temperature", kelvin(line.dew_loss_k.unwrap()));
    let lost = line.capacity_loss.unwrap();
    row("capacity lost", format!("{:.1} ± {:.1} %", 100.0 * lost.value, 100.0 * lost.standard_uncertainty));
    row(
        "vapour velocity",
        format!("{:.1} to {:.1} m/s", line.inlet_velocity_m_s.value, line.outlet_velocity_m_s.value),
    );
    row("superheat at the outdoor port", kelvin(line.outlet_superheat_k.unwrap()));
    row("**superheat at the coil**", format!("**{}**", kelvin(line.inlet_superheat_k.unwrap())));
    row("heat gained", format!("{:.0} ± {:.0} W", line.heat.heat_w.value, line.heat.heat_w.standard_uncertainty));
    let surface = line.heat.coldest_surface_k.unwrap().value;
    row("surface where it is coldest", format!("{:.0} °F = {:.1} °C", 1.8 * surface - 459.67, surface - 273.15));
    assert!(line.riser.is_none() && line.heat.sweats == Some(false));
    let bare = Surroundings { insulation: None, ..air };
    let bare = vapor_line(&VaporLine { heat: LineHeat::From(bare), ..question })?;
    row("bare: heat gained", format!("{:.0} ± {:.0} W", bare.heat.heat_w.value, bare.heat.heat_w.standard_uncertainty));
    row("bare: superheat at the coil", kelvin(bare.inlet_superheat_k.unwrap()));
    assert_eq!(bare.heat.sweats, Some(true));
    // The coil below instead: a riser.
    let up = vapor_line(&VaporLine { run: way("3/4", 20.0)?, ..question })?;
    let riser = up.riser.unwrap();
    let over = riser.flow_over_least;
    row(
        "coil 20 ft below instead: flow over the least that carries oil up",
        format!("{:.1} ± {:.1}", over.value, over.standard_uncertainty),
    );
    row("least velocity in that riser", format!("{:.1} m/s", riser.least_velocity_m_s));
    let least = riser.least_mass_flow_kg_s / flow.value;
    row("oil comes back down to this share of the flow", format!("{:.0} %", 100.0 * least));
    let missing: Vec<_> = rows.iter().filter(|row| !PAGE.contains(row.as_str())).collect();
    println!("{}", rows.join("\n"));
    assert!(missing.is_empty(), "not on the page: {missing:#?}");
    Ok(())
}
