//! Pressure drop, lift, oil return and heat gain of lines against handbooks, textbook formulas and sums by hand.

use satline::Error;
use satline::eos::{End, Model, PhaseKind, Properties, Reference, StateInput, model};
use satline::lineset::{
    Fitting, Fittings, Insulation, LineAdvice, LineCaution, LineEnd, LineHeat, LiquidLine, Run, Surroundings, Tube,
    VaporDuty, VaporLine, lift_pressure_pa, liquid_line, mass_flow_kg_s, oil_return_mass_flux_kg_s_m2, vapor_line,
};
use satline::quantity::{PASCALS_PER_PSI, WATTS_PER_TON, kelvin_from_fahrenheit as fahrenheit};
use satline::uncertain::Uncertain;

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;
const GRAVITY: f64 = 9.80665;
/// Bores of ASTM B280 drawn copper of 1/2, 5/8, 3/4, 7/8, 1-1/8, 1-3/8, 1-5/8, 2-1/8 in.
const BORES_IN: [f64; 8] = [0.430, 0.545, 0.666, 0.785, 1.025, 1.265, 1.505, 1.985];

fn exact(value: f64) -> Uncertain {
    Uncertain::exact(value)
}

fn of(model: &'static Model) -> Properties {
    Properties::of(model, Reference::Iir).unwrap()
}

fn psig(value: f64) -> f64 {
    value * PASCALS_PER_PSI + 101_325.0
}

fn saturated(properties: &Properties, end: End, fahrenheit_value: f64) -> f64 {
    properties.mixture().at_temperature(end, fahrenheit(fahrenheit_value)).unwrap().pressure
}

fn rise(run: Run, metres: f64) -> Run {
    Run { rise_m: exact(metres), ..run }
}

fn bore(inches: f64) -> Tube {
    Tube::from_inside_diameter_m(inches * INCH).unwrap()
}

fn liquid(properties: &Properties, run: Run, flow: f64, pressure: f64, temperature: f64) -> LiquidLine<'_> {
    LiquidLine::new(properties, run, exact(flow), exact(pressure), exact(temperature))
}

fn suction(properties: &Properties, run: Run, flow: f64, pressure: f64, temperature: f64) -> VaporLine<'_> {
    let [flow, pressure, temperature] = [flow, pressure, temperature].map(exact);
    VaporLine::new(properties, VaporDuty::Suction, run, flow, LineEnd::Inlet, pressure, temperature)
}

/// Colebrook's equation by its own fixed point.
fn colebrook(reynolds: f64, roughness: f64) -> f64 {
    let mut root = 10.0;
    for _ in 0..200 {
        root = -2.0 * (roughness / 3.7 + 2.51 * root / reynolds).log10();
    }
    1.0 / (root * root)
}

/// R-454B, 60 ft of 3/8 in, liquid at 95 °F and 350 psig, 20 ft of lift: 8.2 psi or 1.73 °F of subcooling (computed
/// elsewhere with the published equations of state).
#[test]
fn lift_of_r454b() {
    let r454b = of(&model::R454B);
    let (pressure, temperature) = (psig(350.0), fahrenheit(95.0));
    let lift = lift_pressure_pa(&r454b, 20.0 * FOOT, temperature, pressure).unwrap();
    assert!((lift / PASCALS_PER_PSI - 8.2).abs() < 0.05, "{lift}");
    let bubble = |pressure| r454b.mixture().at_pressure(End::Bubble, pressure).unwrap().temperature;
    assert!(((bubble(pressure) - bubble(pressure - lift)) * 1.8 - 1.73).abs() < 0.005);
    // The same as a line with next to no flow: weight alone.
    let run = rise(Run::level(Tube::named("3/8").unwrap(), exact(60.0 * FOOT)), 20.0 * FOOT);
    let line = liquid_line(&liquid(&r454b, run, 1e-4, pressure, temperature)).unwrap();
    assert!((line.lift_pa.value / lift - 1.0).abs() < 5e-4 && line.friction_pa.value < 5.0);
    assert!((line.lift_k * 1.8 - 1.73).abs() < 0.01, "{}", line.lift_k * 1.8);
    // What it gains on the way down is what it lost on the way up.
    let down = liquid_line(&liquid(&r454b, rise(run, -20.0 * FOOT), 1e-4, pressure, temperature)).unwrap();
    assert!((down.lift_pa.value / line.lift_pa.value + 1.0).abs() < 2e-3);
    assert!(down.subcooling_left_k.value > down.subcooling_k.value);
}

/// Darcy and Weisbach with Colebrook's factor, density and viscosity of the state: by hand but for the factor.
#[test]
fn liquid_friction_by_hand() {
    let r410a = of(&model::R410A);
    let (pressure, temperature, flow, diameter, length) = (2.5e6, 305.0, 0.06, 0.311 * INCH, 15.0);
    let tube = Tube::named("3/8").unwrap();
    let fittings = Fittings::NONE.with(Fitting::LongElbow, 4).unwrap().with(Fitting::AngleValve, 1).unwrap();
    let run = Run { fittings, ..Run::level(tube, exact(length)) };
    let line = liquid_line(&liquid(&r410a, run, flow, pressure, temperature)).unwrap();
    let state = r410a.state(StateInput::TemperaturePressure { temperature, pressure }).unwrap();
    let viscosity = r410a.mixture().viscosity(temperature, state.density / r410a.mixture().molar_mass).unwrap();
    let velocity = flow / (state.density * std::f64::consts::PI / 4.0 * diameter * diameter);
    let reynolds = state.density * velocity * diameter / viscosity;
    let factor = colebrook(reynolds, tube.roughness_m() / diameter);
    let equivalent = length + (4.0 * 16.0 + 150.0) * diameter;
    let by_hand = factor * equivalent / diameter * state.density * velocity * velocity / 2.0;
    assert!((line.friction_pa.value / by_hand - 1.0).abs() < 0.022, "{} {by_hand}", line.friction_pa.value);
    assert!((line.velocity_m_s.value / velocity - 1.0).abs() < 1e-9 && (line.reynolds / reynolds - 1.0).abs() < 1e-9);
    assert!((line.outlet_pressure_pa.value - (pressure - line.drop_pa.value)).abs() < 1e-6);
}

/// Isothermal flow of a gas that is nearly ideal, by the textbook: p₁² − p₂² = G² R T (f L/D + 2 ln(p₁/p₂)). Air at the
/// gas's own temperature and a strong film hold it isothermal.
#[test]
fn compressible_flow_by_the_textbook() {
    let r290 = of(&model::R290);
    let (pressure, temperature, diameter, length, flow) = (30e3, 300.0, 0.020, 100.0, 0.0025);
    let tube = Tube::from_outside_diameter_m(0.022, 0.001).unwrap();
    let around =
        Surroundings { outside_coefficient_w_m2_k: exact(500.0), ..Surroundings::still_air(exact(temperature)) };
    let question = VaporLine {
        heat: LineHeat::From(around),
        ..suction(&r290, Run::level(tube, exact(length)), flow, pressure, temperature)
    };
    let line = vapor_line(&question).unwrap();
    let flux = flow / (std::f64::consts::PI / 4.0 * diameter * diameter);
    let state = r290.state(StateInput::TemperaturePressure { temperature, pressure }).unwrap();
    let viscosity = r290.mixture().viscosity(temperature, state.density / r290.mixture().molar_mass).unwrap();
    // The gas constant of propane with its own slight imperfection at the inlet.
    let rt = pressure / state.density;
    let factor = satline::lineset::friction_factor(flux * diameter / viscosity, tube.roughness_m() / diameter).unwrap();
    let mut outlet = pressure;
    for _ in 0..200 {
        let lost = flux * flux * rt * (factor * length / diameter + 2.0 * (pressure / outlet).ln());
        outlet = (pressure * pressure - lost).sqrt();
    }
    let (drop, textbook) = (line.drop_pa.value, pressure - outlet);
    println!("isothermal flow: {drop:.1} Pa, textbook {textbook:.1} Pa of {pressure} Pa");
    assert!(textbook > 0.15 * pressure, "the case must be compressible: {textbook}");
    assert!((drop / textbook - 1.0).abs() < 0.01);
}

/// ASHRAE Refrigeration 2010, chapter 1, R-22 suction lines of copper at 40 °F, loss of 2 °F over 100 ft, 105 °F
/// condensing: tons, and 2.91 psi (from memory).
#[test]
fn suction_line_table() {
    let r22 = of(&model::R22);
    let pressure = saturated(&r22, End::Dew, 40.0);
    let taken_up = r22.saturated_vapor(fahrenheit(40.0)).unwrap().enthalpy
        - r22.saturated_liquid(fahrenheit(105.0)).unwrap().enthalpy;
    let table = [0.6, 1.1, 1.9, 2.9, 5.8, 10.1, 16.0, 33.1];
    let mut worst: f64 = 0.0;
    for (inches, tons) in BORES_IN.into_iter().zip(table) {
        let run = Run::level(bore(inches), exact(100.0 * FOOT));
        let flow = tons * WATTS_PER_TON / taken_up;
        let line = vapor_line(&suction(&r22, run, flow, pressure, fahrenheit(41.0))).unwrap();
        let loss = line.dew_loss_k.unwrap().value * 1.8;
        println!("{inches} in, {tons} tons: {loss:.3} °F, {:.3} psi", line.drop_pa.value / PASCALS_PER_PSI);
        // The loss goes with the flow to the power of 1.8; tons are printed to a tenth.
        let rounding = 1.8 * 0.05 / tons;
        worst = worst.max((loss / 2.0 - 1.0).abs() - rounding);
        assert!((loss / 2.0 - 1.0).abs() < 0.06 + rounding, "{inches} {loss}");
        let per_kelvin = line.drop_pa.value / PASCALS_PER_PSI / loss;
        assert!((per_kelvin / (2.91 / 2.0) - 1.0).abs() < 0.02, "{per_kelvin}");
    }
    println!("worst beyond rounding {worst:.3}");
}

/// The same handbook, R-22 at 40 °F evaporating and 100 °F condensing: a suction line that loses 2 °F leaves 96.4 % of
/// the capacity (from memory). Common practice: 2 to 4 % for 2 °F.
#[test]
fn capacity_lost_by_two_degrees() {
    let r22 = of(&model::R22);
    let pressure = saturated(&r22, End::Dew, 40.0);
    let at = |flow: f64, discharge: Option<f64>| {
        let run = Run::level(bore(0.785), exact(100.0 * FOOT));
        let question = suction(&r22, run, flow, pressure, fahrenheit(42.0));
        vapor_line(&VaporLine { discharge_pressure_pa: discharge, ..question }).unwrap()
    };
    let (mut low, mut high) = (0.01, 0.2);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if at(middle, None).dew_loss_k.unwrap().value * 1.8 < 2.0 { low = middle } else { high = middle }
    }
    let without = at(low, None).capacity_loss.unwrap().value;
    let with = at(low, Some(saturated(&r22, End::Dew, 100.0))).capacity_loss.unwrap().value;
    println!("2 °F of dew loss: {:.2} % by density, {:.2} % with 4 % clearance", 100.0 * without, 100.0 * with);
    assert!((1.0 - without - 0.964).abs() < 0.005 && (1.0 - with - 0.964).abs() < 0.005);
    assert!(without > 0.02 && with < 0.045 && with > without);
}

/// The same handbook, least capacity for oil up a suction riser, R-22 at −40 °F, vapour at −30 °F, liquid at 90 °F, tons
/// (from memory). Its oil is as dense as oil with refrigerant in it is; ours is the stated default.
#[test]
fn oil_return_table() {
    let r22 = of(&model::R22);
    let pressure = saturated(&r22, End::Dew, -40.0);
    let vapor = r22.state(StateInput::TemperaturePressure { temperature: fahrenheit(-30.0), pressure }).unwrap();
    let taken_up = vapor.enthalpy - r22.saturated_liquid(fahrenheit(90.0)).unwrap().enthalpy;
    let table = [0.067, 0.119, 0.197, 0.298, 0.580, 0.981, 1.52, 3.03];
    for (inches, tons) in BORES_IN.into_iter().zip(table) {
        let diameter = inches * INCH;
        let flux = oil_return_mass_flux_kg_s_m2(vapor.density, satline::lineset::DEFAULT_OIL_DENSITY_KG_M3, diameter);
        let least = flux * std::f64::consts::PI / 4.0 * diameter * diameter * taken_up / WATTS_PER_TON;
        assert!((least / tons - 1.0).abs() < 0.05, "{inches} in: {least:.4} against {tons}");
        // And as a line: half of that flow stays behind, twice carries.
        let run = rise(Run::level(bore(inches), exact(3.0)), 3.0);
        for (share, told) in [(0.5, LineAdvice::RiserTooSlow), (1.1, LineAdvice::RiserMarginal)] {
            let flow = share * flux * std::f64::consts::PI / 4.0 * diameter * diameter;
            let line = vapor_line(&suction(&r22, run, flow, pressure, fahrenheit(-30.0))).unwrap();
            assert!(line.advice().any(|advice| advice == told), "{inches} {share}");
            let riser = line.riser.unwrap();
            assert!((riser.flow_over_least.value - share).abs() < 0.01, "{riser:?}");
            assert!((riser.least_mass_flow_kg_s * riser.flow_over_least.value - flow).abs() < 1e-12);
        }
        let flow = 3.0 * flux * std::f64::consts::PI / 4.0 * diameter * diameter;
        let line = vapor_line(&suction(&r22, run, flow, pressure, fahrenheit(-30.0))).unwrap();
        assert!(!line.advice().any(|a| matches!(a, LineAdvice::RiserTooSlow | LineAdvice::RiserMarginal)));
    }
}

/// Heat gain by hand: a bare tube and an insulated one, resistances of films and cylinder in series, NTU of the line.
#[test]
fn heat_gain_by_hand() {
    let r410a = of(&model::R410A);
    let (pressure, temperature, flow, length, air) = (1.0e6, 288.0, 0.05, 15.0, 308.0);
    let run = Run::level(Tube::named("7/8").unwrap(), exact(length));
    let ask = |around: Surroundings, flow: f64| {
        let question = suction(&r410a, run, flow, pressure, temperature);
        vapor_line(&VaporLine { heat: LineHeat::From(around), ..question }).unwrap()
    };
    let bare = Surroundings::still_air(exact(air));
    let insulated = |thickness_m: f64| Surroundings {
        insulation: Some(Insulation { thickness_m, conductivity_w_m_k: exact(0.04) }),
        ..bare
    };
    let capacity = flow
        * r410a
            .state(StateInput::TemperaturePressure { temperature: 289.5, pressure: 0.995e6 })
            .unwrap()
            .isobaric_heat_capacity
            .unwrap();
    let outside = 0.875 * INCH;
    let by_hand = |thickness: f64| {
        let diameter = outside + 2.0 * thickness;
        let layer = (diameter / outside).ln() / (2.0 * std::f64::consts::PI * 0.04);
        let conductance = length / (1.0 / (std::f64::consts::PI * diameter * 9.0) + layer);
        capacity * (air - temperature) * (1.0 - (-conductance / capacity).exp())
    };
    let no_insulation = ask(bare, flow).heat.heat_w.value;
    // The film inside, which the sum by hand leaves out, takes some per cent of a bare line's.
    assert!(no_insulation < by_hand(0.0) && no_insulation > 0.95 * by_hand(0.0), "{no_insulation} {}", by_hand(0.0));
    assert!((ask(insulated(0.0), flow).heat.heat_w.value - no_insulation).abs() < 1e-9);
    for thickness in [0.009, 0.013, 0.019, 0.025] {
        let heat = ask(insulated(thickness), flow).heat.heat_w.value;
        assert!((heat / by_hand(thickness) - 1.0).abs() < 0.015, "{thickness}: {heat} {}", by_hand(thickness));
        assert!(heat < no_insulation);
    }
    // Much flow carries the heat off without warming; little flow comes to the air's temperature.
    let (little, much) = (ask(bare, 2e-4).heat, ask(bare, 0.15).heat);
    assert!((little.temperature_rise_k.value - (air - temperature)).abs() < 0.05, "{little:?}");
    assert!(much.temperature_rise_k.value < ask(bare, 0.05).heat.temperature_rise_k.value);
    assert!(much.heat_w.value > no_insulation);
    // Air as warm as the vapour gives next to nothing; colder air takes heat.
    let same = ask(Surroundings::still_air(exact(temperature)), flow).heat.heat_w.value;
    assert!(same > 0.0 && same < 0.05 * no_insulation, "only what expansion has cooled: {same}");
}

/// Mass and energy: what the line takes up is in the refrigerant, its states computed anew. And the way back finds the
/// state it began with.
#[test]
fn energy_balance_and_the_way_back() {
    let r454b = of(&model::R454B);
    let (flow, length, height) = (0.05, 18.288, 6.096);
    let run = rise(Run::level(Tube::named("3/4").unwrap(), exact(length)), height);
    let enthalpy = |temperature: f64, pressure: f64| {
        r454b.state(StateInput::TemperaturePressure { temperature, pressure }).unwrap().enthalpy
    };
    for flow in [0.2 * flow, flow, 2.0 * flow] {
        let around = Surroundings::still_air(exact(308.0));
        let question = VaporLine { heat: LineHeat::From(around), ..suction(&r454b, run, flow, 9e5, 288.0) };
        let line = vapor_line(&question).unwrap();
        let [t, p] = [line.outlet_temperature_k.value, line.outlet_pressure_pa.value];
        let taken_up = flow * (enthalpy(t, p) - enthalpy(288.0, 9e5) + GRAVITY * height);
        let heat = line.heat.heat_w.value;
        assert!((taken_up / heat - 1.0).abs() < 1e-9, "{taken_up} {heat}");
        let back = VaporLine { known_at: LineEnd::Outlet, pressure_pa: exact(p), temperature_k: exact(t), ..question };
        let back = vapor_line(&back).unwrap();
        // Both ways differ by what the pieces of either leave: 1e-5 of the drop.
        let drop = line.drop_pa.value;
        assert!((back.inlet_pressure_pa.value - 9e5).abs() < 2e-5 * drop, "{}", back.inlet_pressure_pa.value - 9e5);
        assert!((back.inlet_temperature_k.value - 288.0).abs() < 1e-4);
        assert!((back.heat.heat_w.value / heat - 1.0).abs() < 2e-5);
        let rise = line.outlet_superheat_k.unwrap().value - line.inlet_superheat_k.unwrap().value;
        assert!((line.heat.superheat_rise_k.unwrap().value - rise).abs() < 1e-9 && rise > 0.0);
    }
}

/// Trends that no line breaks: more flow, a longer line, a smaller bore lose more, and without a jump through the
/// transition from laminar flow.
#[test]
fn more_flow_loses_more_without_a_jump() {
    let r134a = of(&model::R134A);
    let run = Run::level(Tube::named("7/8").unwrap(), exact(20.0));
    let drop = |run: Run, flow: f64| vapor_line(&suction(&r134a, run, flow, 3.5e5, 283.15)).unwrap();
    let mut before: Option<(f64, f64)> = None;
    let mut reynolds = Vec::new();
    for step in 0..90 {
        let flow = 2e-4 * 1.04_f64.powi(step);
        let line = drop(run, flow);
        let loss = line.friction_pa.value;
        reynolds.push(line.reynolds);
        if let Some((flow_before, loss_before)) = before {
            let power = (loss / loss_before).ln() / (flow / flow_before).ln();
            // In the transition the factor itself rises with the flow to the power of 1.75 at most.
            assert!(power > 0.9 && power < 3.8, "power {power} at Re {}", line.reynolds);
        }
        before = Some((flow, loss));
        assert!(drop(Run { length_m: exact(21.0), ..run }, flow).friction_pa.value > loss);
        assert!(drop(Run { tube: Tube::named("3/4").unwrap(), ..run }, flow).friction_pa.value > loss);
    }
    assert!(reynolds[0] < 1500.0 && reynolds[89] > 20_000.0, "{reynolds:?}");
}

/// Flash gas: begins where the pressure has fallen to the bubble pressure of the liquid's temperature.
#[test]
fn flash_gas_where_the_pressure_says() {
    let r410a = of(&model::R410A);
    let bubble = r410a.mixture().at_pressure(End::Bubble, 2.2e6).unwrap().temperature;
    let run = rise(Run::level(Tube::named("3/8").unwrap(), exact(30.0)), 12.0);
    let enough = liquid_line(&liquid(&r410a, run, 0.05, 2.2e6, bubble - 8.0)).unwrap();
    assert!(enough.flash_begins_m.is_none() && !enough.at_least && enough.flash_vapor_share.is_none());
    let short = liquid_line(&liquid(&r410a, run, 0.05, 2.2e6, bubble - 1.0)).unwrap();
    assert!(short.at_least && short.advice().any(|advice| advice == LineAdvice::FlashGasExpected));
    let at = short.flash_begins_m.unwrap();
    assert!(at > 0.0 && at < 30.0, "{at}");
    // The pressure falls evenly and the enthalpy with the height; the flash at both a little before is still liquid, a
    // little behind no longer.
    let inlet = r410a.state(StateInput::TemperaturePressure { temperature: bubble - 1.0, pressure: 2.2e6 }).unwrap();
    for (place, phase) in [(at - 0.3, PhaseKind::Liquid), (at + 0.3, PhaseKind::TwoPhase)] {
        let pressure = 2.2e6 - short.drop_pa.value * place / 30.0;
        let enthalpy = inlet.enthalpy - GRAVITY * 12.0 * place / 30.0;
        assert_eq!(
            r410a.state(StateInput::PressureEnthalpy { pressure, enthalpy }).unwrap().phase,
            phase,
            "{at} {place}"
        );
    }
    assert!(short.subcooling_left_k.value < 0.0 && short.flash_vapor_share.unwrap() > 0.0);
    assert!(short.cautions().any(|caution| caution == LineCaution::OpenCircuit));
    // What is needed is enough: a little more arrives as liquid, a little less does not.
    let needed = short.subcooling_needed_k.value;
    for (more, arrives) in [(0.15, true), (-0.15, false)] {
        let line = liquid_line(&liquid(&r410a, run, 0.05, 2.2e6, bubble - needed - more)).unwrap();
        assert_eq!(line.flash_begins_m.is_none(), arrives, "{needed} {:?}", line.subcooling_left_k);
    }
    // A drier that takes all the subcooling: at once.
    let plugged = LiquidLine { drier_drop_pa: exact(2e5), ..liquid(&r410a, run, 0.05, 2.2e6, bubble - 2.0) };
    assert_eq!(liquid_line(&plugged).unwrap().flash_begins_m, Some(0.0));
    // Heat from a hot attic can do it too.
    let level = Run { rise_m: exact(0.0), ..run };
    let heated = LiquidLine { heat_gain_w: exact(200.0), ..liquid(&r410a, level, 0.05, 2.2e6, bubble - 2.5) };
    let unheated = liquid_line(&LiquidLine { heat_gain_w: exact(0.0), ..heated }).unwrap();
    let heated = liquid_line(&heated).unwrap();
    assert!(heated.outlet_temperature_k.value > unheated.outlet_temperature_k.value + 1.5);
    assert!(heated.subcooling_left_k.value < unheated.subcooling_left_k.value - 1.5);
}

/// Hot gas and a heat pump's vapour line in winter: the same line, other limits; and above the critical pressure.
#[test]
fn discharge_lines() {
    let r454b = of(&model::R454B);
    let run = rise(Run::level(Tube::named("3/4").unwrap(), exact(18.0)), 6.0);
    let hot = VaporLine { duty: VaporDuty::Discharge, ..suction(&r454b, run, 0.045, 2.6e6, 345.0) };
    let line = vapor_line(&hot).unwrap();
    assert!(line.capacity_loss.is_none() && line.dew_loss_k.unwrap().value > 0.0 && line.riser.is_some());
    assert!(line.advice().any(|advice| advice == LineAdvice::VaporTooSlow), "3/4 in is wide for hot gas");
    let narrow = Run { tube: Tube::named("3/8").unwrap(), ..run };
    let line = vapor_line(&VaporLine { run: narrow, ..hot }).unwrap();
    let told: Vec<_> = line.advice().collect();
    assert!(told.contains(&LineAdvice::DischargeLineTooSmall) && !told.contains(&LineAdvice::SuctionLineTooSmall));
    // Giving off heat: cooler, and refused once it would condense.
    let cooled = VaporLine { heat: LineHeat::Power(exact(-300.0)), ..hot };
    assert!(vapor_line(&cooled).unwrap().heat.temperature_rise_k.value < -3.0);
    let condensing = VaporLine { heat: LineHeat::Power(exact(-3000.0)), ..hot };
    assert!(vapor_line(&condensing).is_err());
    let r744 = of(&model::R744);
    let beyond = VaporLine { duty: VaporDuty::Discharge, ..suction(&r744, narrow, 0.04, 9.5e6, 370.0) };
    let line = vapor_line(&beyond).unwrap();
    assert!(line.dew_loss_k.is_none() && line.inlet_superheat_k.is_none() && line.drop_pa.value > 0.0);
}

#[test]
fn mass_flow_from_a_capacity() {
    let r454b = of(&model::R454B);
    let dew = saturated(&r454b, End::Dew, 45.0);
    let liquid = [exact(fahrenheit(95.0)), exact(psig(350.0))];
    let suction = [exact(fahrenheit(55.0)), exact(dew)];
    let flow = mass_flow_kg_s(&r454b, Uncertain::new(10_551.0, 300.0).unwrap(), liquid, suction).unwrap();
    let enthalpy = |[temperature, pressure]: [Uncertain; 2]| {
        let input = StateInput::TemperaturePressure { temperature: temperature.value, pressure: pressure.value };
        r454b.state(input).unwrap().enthalpy
    };
    assert!((flow.value * (enthalpy(suction) - enthalpy(liquid)) / 10_551.0 - 1.0).abs() < 1e-12);
    assert!((flow.standard_uncertainty / flow.value - 300.0 / 10_551.0).abs() < 1e-9);
    let swapped = mass_flow_kg_s(&r454b, exact(10_551.0), suction, liquid);
    assert!(matches!(swapped, Err(Error::OutOfRange { quantity: "liquid line temperature", .. })), "{swapped:?}");
}

/// A share of the uncertainty that is known by hand: the height's in the lift; and the parts add as squares.
#[test]
fn uncertainty_of_the_lift() {
    let r410a = of(&model::R410A);
    let run = Run { rise_m: Uncertain::new(6.0, 0.2).unwrap(), ..Run::level(Tube::named("3/8").unwrap(), exact(20.0)) };
    let line = liquid_line(&liquid(&r410a, run, 0.05, 2.5e6, 305.0)).unwrap();
    let share = line.lift_pa.standard_uncertainty / line.lift_pa.value;
    assert!((share * 6.0 / 0.2 - 1.0).abs() < 1e-3, "{share}");
    assert!(line.friction_pa.standard_uncertainty > 0.05 * line.friction_pa.value);
    let sum = line.friction_pa.standard_uncertainty.hypot(line.lift_pa.standard_uncertainty);
    assert!((line.drop_pa.standard_uncertainty / sum - 1.0).abs() < 0.01);
    let warmer =
        LiquidLine { temperature_k: Uncertain::new(305.0, 0.5).unwrap(), ..liquid(&r410a, run, 0.05, 2.5e6, 305.0) };
    let left = liquid_line(&warmer).unwrap().subcooling_left_k.standard_uncertainty;
    assert!((left - 0.5).abs() < 0.02, "{left}");
}

#[test]
fn advice_on_long_high_and_small_lines() {
    let r410a = of(&model::R410A);
    let advised = |run: Run, flow: f64| -> Vec<LineAdvice> {
        liquid_line(&liquid(&r410a, run, flow, 3.0e6, 305.0)).unwrap().advice().collect()
    };
    let short = Run::level(Tube::named("3/8").unwrap(), exact(8.0));
    assert_eq!(advised(short, 0.03), [LineAdvice::Nothing]);
    assert!(advised(Run { length_m: exact(30.0), ..short }, 0.03).contains(&LineAdvice::LineLong));
    let high = rise(Run { length_m: exact(20.0), ..short }, 16.0);
    assert!(advised(high, 0.03).contains(&LineAdvice::LiftHigh));
    let small = advised(Run { tube: Tube::named("1/4").unwrap(), ..short }, 0.05);
    assert!(small.contains(&LineAdvice::LiquidLineTooSmall) && small.contains(&LineAdvice::LiquidTooFast));
    let run = Run::level(Tube::named("5/8").unwrap(), exact(20.0));
    let line = vapor_line(&suction(&r410a, run, 0.1, 1e6, 290.0)).unwrap();
    let told: Vec<_> = line.advice().collect();
    assert!(told.contains(&LineAdvice::SuctionLineTooSmall) && told.contains(&LineAdvice::VaporTooFast));
    // An A2L refrigerant brings its caution whatever the advice.
    let r454b = of(&model::R454B);
    let line = liquid_line(&liquid(&r454b, short, 0.03, 3.0e6, 305.0)).unwrap();
    assert!(line.cautions().any(|caution| caution == LineCaution::FlammableRefrigerant));
    // A line at 60 °F in air with a dew point of 70 °F sweats bare.
    let around = Surroundings { dew_point_k: Some(294.0), ..Surroundings::still_air(exact(305.0)) };
    let bare = VaporLine { heat: LineHeat::From(around), ..suction(&r410a, run, 0.05, 1e6, 286.0) };
    let line = vapor_line(&bare).unwrap();
    assert_eq!(line.heat.sweats, Some(true));
    assert!(line.advice().any(|advice| advice == LineAdvice::SurfaceSweats));
    let insulation = Some(Insulation { thickness_m: 0.019, conductivity_w_m_k: exact(0.038) });
    let wrapped = VaporLine { heat: LineHeat::From(Surroundings { insulation, ..around }), ..bare };
    assert_eq!(vapor_line(&wrapped).unwrap().heat.sweats, Some(false));
}

#[test]
fn bad_input_is_named() {
    let r410a = of(&model::R410A);
    let run = rise(Run::level(Tube::named("3/8").unwrap(), exact(10.0)), 2.0);
    let bubble = r410a.mixture().at_pressure(End::Bubble, 2.5e6).unwrap().temperature;
    let good = liquid(&r410a, run, 0.05, 2.5e6, 305.0);
    let named = |line: LiquidLine<'_>| match liquid_line(&line).unwrap_err() {
        Error::OutOfRange { quantity, lower, upper, .. } => (quantity, lower, upper),
        Error::NotFinite { quantity, lower, upper, .. } => (quantity, lower, upper),
        other => panic!("{other:?}"),
    };
    // Lift greater than length: the limit is the length.
    assert_eq!(named(LiquidLine { run: rise(run, 11.0), ..good }), ("rise of the line, by its length", -10.0, 10.0));
    assert_eq!(named(LiquidLine { run: rise(run, -11.0), ..good }).2, 10.0);
    let (quantity, _, upper) = named(LiquidLine { temperature_k: exact(bubble + 5.0), ..good });
    assert_eq!(quantity, "liquid line temperature");
    assert!((upper - bubble).abs() < 1e-9, "the limit is the bubble temperature");
    assert_eq!(named(LiquidLine { mass_flow_kg_s: exact(0.0), ..good }).0, "mass flow");
    let negative = Run { length_m: exact(-10.0), ..run };
    assert_eq!(named(LiquidLine { run: negative, ..good }).0, "length of the line");
    assert_eq!(named(LiquidLine { drier_drop_pa: exact(-1.0), ..good }).0, "pressure drop of the drier");
    assert_eq!(named(LiquidLine { heat_gain_w: exact(f64::NAN), ..good }).0, "heat gain of the line");
    assert_eq!(named(LiquidLine { mass_flow_kg_s: exact(5.0), ..good }).0, "pressure drop of the line");

    let good = suction(&r410a, rise(run, 0.0), 0.01, 1e6, 285.0);
    let dew = r410a.mixture().at_pressure(End::Dew, 1e6).unwrap().temperature;
    let named = |line: VaporLine<'_>| match vapor_line(&line).unwrap_err() {
        Error::OutOfRange { quantity, lower, .. } | Error::NotFinite { quantity, lower, .. } => (quantity, lower),
        Error::NotAvailable { quantity, .. } => (quantity, f64::NAN),
        other => panic!("{other:?}"),
    };
    let (quantity, lower) = named(VaporLine { temperature_k: exact(dew - 3.0), ..good });
    assert_eq!(quantity, "vapour line temperature");
    assert!((lower - dew).abs() < 1e-9, "the limit is the dew temperature");
    assert_eq!(named(VaporLine { mass_flow_kg_s: exact(0.5), ..good }).0, "pressure drop of the line");
    assert_eq!(named(VaporLine { oil_density_kg_m3: exact(0.9), ..good }).0, "density of the oil");
    assert_eq!(named(VaporLine { discharge_pressure_pa: Some(5e5), ..good }).0, "discharge pressure");
    let around = Surroundings { dew_point_k: Some(310.0), ..Surroundings::still_air(exact(305.0)) };
    assert_eq!(named(VaporLine { heat: LineHeat::From(around), ..good }).0, "dew point of the surrounding air");
    let by_bore = Run { tube: bore(0.311), ..run };
    let around = LineHeat::From(Surroundings::still_air(exact(305.0)));
    assert_eq!(named(VaporLine { run: by_bore, heat: around, ..good }).0, "heat from the air");
    // A superheat that the line's own heat gain explains more than fully: the coil's would be negative.
    let port = VaporLine { known_at: LineEnd::Outlet, temperature_k: exact(dew + 1.0), heat: around, ..good };
    assert_eq!(named(port).0, "the vapour line");
}
