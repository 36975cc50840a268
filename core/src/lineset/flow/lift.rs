//! The weight of a column of refrigerant, and the mass flow behind a capacity.

use crate::bounds;
use crate::eos::{PhaseKind, Properties, StateInput};
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate};

/// Standard acceleration of free fall, m/s² (3rd CGPM, 1901; exact). It differs by up to 0.3 % from place to place.
pub const STANDARD_GRAVITY: f64 = 9.806_65;

/// Pressure in Pa that refrigerant loses over a height in m, in liquid or vapour at a temperature in K and an absolute
/// pressure in Pa: density × g × height. Negative where it flows down.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for a height outside [`bounds::RISE`] and where temperature and pressure
/// are outside the equation of state's range or between dew and bubble pressure.
///
/// ```
/// use satline::eos::{Properties, Reference, model};
/// use satline::lineset::lift_pressure_pa;
/// let r454b = Properties::of(&model::R454B, Reference::Iir)?;
/// // 20 ft of liquid at 95 °F and 350 psig: 8.2 psi.
/// let loss = lift_pressure_pa(&r454b, 6.096, 308.15, 2_514_490.0)?;
/// assert!((loss / 6894.757 - 8.2).abs() < 0.05);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn lift_pressure_pa(
    properties: &Properties,
    height_m: f64,
    temperature_k: f64,
    pressure_pa: f64,
) -> Result<f64, Error> {
    let height = bounds::RISE.check(height_m)?;
    let density = properties.mixture().density(temperature_k, pressure_pa)? * properties.mixture().molar_mass;
    Ok(density * STANDARD_GRAVITY * height)
}

/// The same for saturated liquid at a temperature in K: without a pressure the nearest to a liquid line. Subcooled liquid
/// is denser by some tenths of a per cent.
///
/// # Errors
/// As [`lift_pressure_pa`]; [`Error::OutOfRange`] for a temperature without saturated liquid.
pub fn lift_pressure_saturated_pa(properties: &Properties, height_m: f64, temperature_k: f64) -> Result<f64, Error> {
    let height = bounds::RISE.check(height_m)?;
    let mixture = properties.mixture();
    let bubble = mixture.at_temperature(crate::eos::End::Bubble, temperature_k)?;
    Ok(bubble.bulk_density * mixture.molar_mass * STANDARD_GRAVITY * height)
}

/// Mass flow in kg/s behind a cooling capacity in W: over the enthalpy that the refrigerant takes up between the liquid
/// line (temperature in K, absolute pressure in Pa) and the coil's outlet.
///
/// The capacity is that of the coil's refrigerant side: a nominal capacity, or one measured in the air, less the fan's heat.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for a capacity outside [`bounds::POWER`], a liquid that is no liquid, a
/// vapour that is no vapour.
///
/// ```
/// use satline::eos::{Properties, Reference, model};
/// use satline::lineset::mass_flow_kg_s;
/// use satline::uncertain::Uncertain;
/// let exact = Uncertain::exact;
/// let r410a = Properties::of(&model::R410A, Reference::Iir)?;
/// let capacity = Uncertain::new(10_550.0, 500.0)?;
/// let flow = mass_flow_kg_s(&r410a, capacity, [exact(308.15), exact(2.5e6)], [exact(286.0), exact(933e3)])?;
/// assert!((flow.value - 0.0604).abs() < 1e-4 && (flow.standard_uncertainty / flow.value - 0.047).abs() < 0.001);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn mass_flow_kg_s(
    properties: &Properties,
    capacity_w: Uncertain,
    liquid_temperature_and_pressure: [Uncertain; 2],
    suction_temperature_and_pressure: [Uncertain; 2],
) -> Result<Uncertain, Error> {
    let [liquid_t, liquid_p] = liquid_temperature_and_pressure;
    let [suction_t, suction_p] = suction_temperature_and_pressure;
    propagate([capacity_w, liquid_t, liquid_p, suction_t, suction_p], |[capacity, lt, lp, st, sp]| {
        let capacity = bounds::POWER.check(capacity)?;
        let liquid = enthalpy_of(properties, PhaseKind::Liquid, lt, lp)?;
        let suction = enthalpy_of(properties, PhaseKind::Vapor, st, sp)?;
        let advice = "the vapour must hold more enthalpy than the liquid: check which state is which";
        let rise = bounds::within("enthalpy taken up", "J/kg", suction - liquid, 1e3, bounds::ENTHALPY.upper, advice)?;
        Ok(capacity / rise)
    })
}

fn enthalpy_of(properties: &Properties, phase: PhaseKind, temperature: f64, pressure: f64) -> Result<f64, Error> {
    check_phase(properties, phase, temperature, pressure)?;
    properties.state(StateInput::TemperaturePressure { temperature, pressure }).map(|state| state.enthalpy)
}

/// Refuses a temperature at which the line does not hold the phase that it must, and says where that phase begins. Gives
/// the bubble or dew temperature.
pub(super) fn check_phase(
    properties: &Properties,
    phase: PhaseKind,
    temperature: f64,
    pressure: f64,
) -> Result<f64, Error> {
    let mixture = properties.mixture();
    let (highest, _) = mixture.highest_temperature_and_pressure();
    let checked = |quantity, lower, upper, advice| bounds::within(quantity, "K", temperature, lower, upper, advice);
    match phase {
        PhaseKind::Liquid => {
            let bubble = mixture.at_pressure(crate::eos::End::Bubble, pressure)?.temperature;
            let advice = "at this pressure the refrigerant is liquid only up to its bubble temperature: check probe and gauge; without subcooling a liquid line carries flash gas from its beginning";
            checked("liquid line temperature", mixture.lowest_temperature(), bubble, advice)?;
            Ok(bubble)
        }
        _ => {
            let dew = mixture.at_pressure(crate::eos::End::Dew, pressure)?.temperature;
            let advice = "at this pressure the refrigerant is all vapour only from its dew temperature up: check probe and gauge; without superheat the line carries liquid";
            checked("vapour line temperature", dew, highest, advice)?;
            Ok(dew)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::{Reference, model};

    /// By hand: a column of 1 m of a liquid of 1187 kg/m³ (R-134a at 30 °C; ASHRAE Fundamentals, from memory 1187.5)
    /// weighs 11.6 kPa.
    #[test]
    fn hydrostatics_by_hand() {
        let r134a = Properties::of(&model::R134A, Reference::Iir).unwrap();
        let loss = lift_pressure_saturated_pa(&r134a, 1.0, 303.15).unwrap();
        assert!((loss / (1187.5 * 9.80665) - 1.0).abs() < 1e-4, "{loss}");
        assert_eq!(lift_pressure_saturated_pa(&r134a, -1.0, 303.15).unwrap(), -loss);
        assert_eq!(lift_pressure_saturated_pa(&r134a, 0.0, 303.15).unwrap(), 0.0);
        assert!(matches!(
            lift_pressure_saturated_pa(&r134a, 300.0, 303.15),
            Err(Error::OutOfRange { quantity: "rise of the line", .. })
        ));
        assert!(lift_pressure_saturated_pa(&r134a, 1.0, 400.0).is_err());
    }
}
