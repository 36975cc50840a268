//! What was measured at the circuit, and what follows.

use super::state::{discharge, liquid, suction};
use crate::bounds;
use crate::eos::{Properties, State, StateInput};
use crate::error::Error;
use crate::quantity::WATTS_PER_BTU_H;
use crate::uncertain::{Uncertain, propagate_all};

/// The share of the compressor's power that stays in the gas where nothing better is known: even odds from 0.8 to 1, so
/// ± 0.1/√3. Measured on the unit of NISTIR 7350 it was 0.82 to 0.89; 1 is a shell that loses no heat.
pub const USUAL_WORK_SHARE: Uncertain = Uncertain { value: 0.9, standard_uncertainty: 0.058 };

/// Pressure and temperature at one place, each with its standard uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Probe {
    /// Absolute pressure, Pa.
    pub pressure_pa: Uncertain,
    /// Line temperature, K.
    pub temperature_k: Uncertain,
}

/// What was measured at the circuit in cooling. Give a mass flow, or the compressor's power with the discharge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circuit {
    /// At the suction (vapour) port of the outdoor unit.
    pub suction: Probe,
    /// At the liquid port.
    pub liquid: Probe,
    /// At the compressor's outlet.
    pub discharge: Option<Probe>,
    /// At the indoor coil's outlet; its pressure may be that of the suction port with the drop of the line added.
    pub coil_outlet: Option<Probe>,
    /// Mass flow of refrigerant, kg/s.
    pub mass_flow_kg_s: Option<Uncertain>,
    /// Electric power of the compressor, W.
    pub compressor_power_w: Option<Uncertain>,
    /// Electric power of blower, fan and controls, W: counted in COP and EER; 0 for those of the compressor alone.
    pub other_power_w: Uncertain,
    /// The share of the compressor's power that stays in the gas; [`USUAL_WORK_SHARE`] where nothing better is known.
    /// Used only where no mass flow is given.
    pub work_share: Uncertain,
}

/// Where the evaporator ends in a capacity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EvaporatorEnd {
    /// At the coil's outlet: the heat taken from the room.
    CoilOutlet,
    /// At the suction port: the heat that the suction line gains is in it, which cools nobody.
    SuctionPort,
}

impl EvaporatorEnd {
    /// The name in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::CoilOutlet => "coil-outlet",
            Self::SuctionPort => "suction-port",
        }
    }
}

/// Capacity and efficiency from the refrigerant's side. What was not measured, or contradicts itself, is
/// [`Error::NotAvailable`] with its reason. The uncertainty of the equation of state is not in the ±.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CircuitCapacity {
    /// Mass flow of refrigerant, kg/s.
    pub mass_flow_kg_s: Uncertain,
    /// Heat taken up from the liquid port to `evaporator_end`, W; the liquid line's exchange of heat is neglected.
    pub evaporator_w: Uncertain,
    /// Where that ends.
    pub evaporator_end: EvaporatorEnd,
    /// Heat that the suction line gained, W.
    pub line_gain_w: Result<Uncertain, Error>,
    /// Heat given up from discharge to liquid port, W.
    pub condenser_w: Result<Uncertain, Error>,
    /// Work that stayed in the gas, W.
    pub gas_work_w: Result<Uncertain, Error>,
    /// Work that stayed in the gas over the compressor's power, where the mass flow was measured: above 1 something
    /// is measured wrong.
    pub work_share: Result<Uncertain, Error>,
    /// Discharge over suction pressure, absolute.
    pub pressure_ratio: Result<Uncertain, Error>,
    /// Enthalpy rise of an ideal compressor over the rise found. Heat that the shell loses makes it look better.
    pub isentropic_efficiency: Result<Uncertain, Error>,
    /// Power of an ideal compressor for this mass flow over the compressor's electric power.
    pub overall_efficiency: Result<Uncertain, Error>,
    /// Evaporator capacity over electric power.
    pub cop: Result<Uncertain, Error>,
    /// The same in Btu an hour to a watt.
    pub eer_btu_wh: Result<Uncertain, Error>,
}

/// The states at the ports, and at the end of an ideal compression; those that are not measured are the suction gas.
#[derive(Clone, Copy, Default)]
struct States {
    gas: Option<State>,
    liquid: Option<State>,
    outlet: Option<State>,
    hot: Option<State>,
    ideal: Option<State>,
}

/// The known state where it is at that temperature and pressure, else the one computed.
fn or_known(
    known: Option<State>,
    temperature: f64,
    pressure: f64,
    compute: impl FnOnce() -> Result<State, Error>,
) -> Result<State, Error> {
    match known {
        Some(state) if state.temperature == temperature && state.pressure == pressure => Ok(state),
        _ => compute(),
    }
}

const NOTHING: Uncertain = Uncertain::exact(0.0);
/// How many standard uncertainties an efficiency may exceed one before it contradicts itself.
const COVERAGE: f64 = 2.0;

impl Circuit {
    /// What follows from the measurements, for a refrigerant with these properties.
    ///
    /// # Errors
    /// [`Error::NotAvailable`] where neither mass flow nor power with discharge is given, where the suction is wet or
    /// the liquid line holds vapour as well, or where the discharge gas contradicts the suction gas.
    /// [`Error::OutOfRange`] for a liquid line in which there can only be vapour, a discharge at or below its dew
    /// temperature or not above the suction pressure, and values outside [`bounds::REFRIGERANT_FLOW`],
    /// [`bounds::POWER`] and [`bounds::WORK_SHARE`]; those of [`Properties::state`].
    ///
    /// ```
    /// use satline::capacity::{Circuit, Probe, USUAL_WORK_SHARE};
    /// use satline::eos::{Properties, Reference, model};
    /// use satline::uncertain::Uncertain;
    /// let probe = |pressure, temperature| -> Result<Probe, satline::Error> {
    ///     Ok(Probe { pressure_pa: Uncertain::new(pressure, 7e3)?, temperature_k: Uncertain::new(temperature, 0.4)? })
    /// };
    /// // Demo: R-410A, 2000 W into the compressor.
    /// let circuit = Circuit {
    ///     suction: probe(9.5e5, 288.0)?,
    ///     discharge: Some(probe(2.7e6, 346.0)?),
    ///     liquid: probe(2.6e6, 310.0)?,
    ///     coil_outlet: None,
    ///     mass_flow_kg_s: None,
    ///     compressor_power_w: Some(Uncertain::new(2000.0, 20.0)?),
    ///     other_power_w: Uncertain::exact(0.0),
    ///     work_share: USUAL_WORK_SHARE,
    /// };
    /// let found = circuit.capacity(&Properties::of(&model::R410A, Reference::Iir)?)?;
    /// assert!((found.evaporator_w.value - 9.31e3).abs() < 50.0);
    /// assert!(found.evaporator_w.standard_uncertainty < 700.0);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn capacity(&self, properties: &Properties) -> Result<CircuitCapacity, Error> {
        let inputs = self.inputs()?;
        let known = self.states(properties, &States::default(), inputs.map(|input| input.value))?;
        let all = propagate_all(inputs, |moved| self.results(properties, &known, moved))?;
        let [flow, evaporator, line_gain, condenser, gas_work, work_share, ratio, isentropic, overall, cop, eer] = all;
        let has_discharge = self.discharge.is_some();
        let has_power = self.compressor_power_w.is_some();
        let impossible = isentropic.value > 1.0 + COVERAGE * isentropic.standard_uncertainty;
        if impossible && self.mass_flow_kg_s.is_none() {
            return Err(missing("mass flow from the compressor's power", TOO_COLD));
        }
        let lost = work_share.value > 1.0 + COVERAGE * work_share.standard_uncertainty;
        let given = |known: bool, value: Uncertain, quantity, reason| {
            if known { Ok(value) } else { Err(missing(quantity, reason)) }
        };
        Ok(CircuitCapacity {
            mass_flow_kg_s: flow,
            evaporator_w: evaporator,
            evaporator_end: self.evaporator_end(),
            line_gain_w: given(self.coil_outlet.is_some(), line_gain, "heat gain of the suction line", NO_OUTLET),
            condenser_w: given(has_discharge, condenser, "condenser capacity", NO_DISCHARGE),
            gas_work_w: given(has_discharge, gas_work, "work that stayed in the gas", NO_DISCHARGE),
            work_share: match (self.mass_flow_kg_s, has_discharge && has_power) {
                (Some(_), true) if lost => Err(missing("share of the work in the gas", MORE_THAN_ALL)),
                (Some(_), true) => Ok(work_share),
                _ => Err(missing("share of the work in the gas", "it takes mass flow, power and discharge")),
            },
            pressure_ratio: given(has_discharge, ratio, "pressure ratio", NO_DISCHARGE),
            isentropic_efficiency: if impossible {
                Err(missing("isentropic efficiency", TOO_COLD))
            } else {
                given(has_discharge, isentropic, "isentropic efficiency", NO_DISCHARGE)
            },
            overall_efficiency: given(has_discharge && has_power, overall, "overall efficiency", NO_POWER),
            cop: given(has_power, cop, "coefficient of performance", NO_POWER),
            eer_btu_wh: given(has_power, eer, "energy efficiency ratio", NO_POWER),
        })
    }

    const fn evaporator_end(&self) -> EvaporatorEnd {
        if self.coil_outlet.is_some() { EvaporatorEnd::CoilOutlet } else { EvaporatorEnd::SuctionPort }
    }

    /// Everything measured, checked, in the order of [`Circuit::results`]; 0 for what is not.
    fn inputs(&self) -> Result<[Uncertain; 12], Error> {
        match (self.mass_flow_kg_s, self.compressor_power_w, self.discharge) {
            (Some(flow), _, _) => bounds::REFRIGERANT_FLOW.check(flow.value)?,
            (None, Some(_), Some(_)) => bounds::WORK_SHARE.check(self.work_share.value)?,
            _ => return Err(missing("capacity from the refrigerant's side", NO_FLOW)),
        };
        if let Some(power) = self.compressor_power_w {
            bounds::POWER.check(power.value)?;
        }
        bounds::BLOWER_POWER.check(self.other_power_w.value)?;
        let nowhere = Probe { pressure_pa: NOTHING, temperature_k: NOTHING };
        let (discharge, outlet) = (self.discharge.unwrap_or(nowhere), self.coil_outlet.unwrap_or(nowhere));
        let inputs = [
            self.suction.pressure_pa,
            self.suction.temperature_k,
            self.liquid.pressure_pa,
            self.liquid.temperature_k,
            discharge.pressure_pa,
            discharge.temperature_k,
            outlet.pressure_pa,
            outlet.temperature_k,
            self.mass_flow_kg_s.unwrap_or(NOTHING),
            self.compressor_power_w.unwrap_or(NOTHING),
            self.other_power_w,
            self.work_share,
        ];
        for input in inputs {
            Uncertain::new(input.value, input.standard_uncertainty)?;
        }
        Ok(inputs)
    }

    /// The states at the ports. Those of `known` that belong to the same temperature and pressure are taken from there:
    /// as one measurement is moved after the other, most states stay.
    fn states(&self, properties: &Properties, known: &States, moved: [f64; 12]) -> Result<States, Error> {
        let [suction_pa, suction_k, liquid_pa, liquid_k, discharge_pa, discharge_k, outlet_pa, outlet_k, ..] = moved;
        let gas = or_known(known.gas, suction_k, suction_pa, || suction(properties, suction_k, suction_pa))?;
        let liquid =
            or_known(known.liquid, liquid_k, liquid_pa, || liquid(properties, &self.liquid, liquid_k, liquid_pa))?;
        let outlet = match self.coil_outlet {
            Some(_) => or_known(known.outlet, outlet_k, outlet_pa, || suction(properties, outlet_k, outlet_pa))?,
            None => gas,
        };
        let (mut hot, mut ideal) = (gas, gas);
        if self.discharge.is_some() {
            let advice =
                "the compressor raises the pressure: check that the gauges are not exchanged and both absolute";
            let highest = bounds::ABSOLUTE_PRESSURE.upper;
            bounds::within("discharge pressure", "Pa", discharge_pa, suction_pa, highest, advice)?;
            hot = or_known(known.hot, discharge_k, discharge_pa, || discharge(properties, discharge_k, discharge_pa))?;
            let same_gas = known.gas.is_some_and(|known| known == gas);
            ideal = match known.ideal {
                Some(ideal) if same_gas && ideal.pressure == discharge_pa => ideal,
                _ => properties.state(StateInput::PressureEntropy { pressure: discharge_pa, entropy: gas.entropy })?,
            };
            if hot.enthalpy <= gas.enthalpy {
                return Err(missing("capacity from the refrigerant's side", NOT_COMPRESSED));
            }
        }
        Ok(States { gas: Some(gas), liquid: Some(liquid), outlet: Some(outlet), hot: Some(hot), ideal: Some(ideal) })
    }

    fn results(&self, properties: &Properties, known: &States, moved: [f64; 12]) -> Result<[f64; 11], Error> {
        let [suction_pa, _, _, _, discharge_pa, _, _, _, measured_flow, power, other_power, share] = moved;
        let states = self.states(properties, known, moved)?;
        let enthalpy = |state: Option<State>| state.map_or(0.0, |state| state.enthalpy);
        let (gas, liquid, outlet) = (enthalpy(states.gas), enthalpy(states.liquid), enthalpy(states.outlet));
        let (hot, ideal) = (enthalpy(states.hot), enthalpy(states.ideal));
        let rise = hot - gas;
        let flow = if self.mass_flow_kg_s.is_some() { measured_flow } else { share * power / rise };
        let over = |above: f64, below: f64| if below > 0.0 { above / below } else { 0.0 };
        let evaporator = flow * (outlet - liquid);
        let cop = over(evaporator, power + other_power);
        Ok([
            flow,
            evaporator,
            flow * (gas - outlet),
            flow * (hot - liquid),
            flow * rise,
            over(flow * rise, power),
            discharge_pa / suction_pa,
            over(ideal - gas, rise),
            over(flow * (ideal - gas), power),
            cop,
            cop / WATTS_PER_BTU_H,
        ])
    }
}

const NO_FLOW: &str = "give a mass flow, or the compressor's power together with the discharge";
const NO_OUTLET: &str = "it takes pressure and temperature at the indoor coil's outlet";
const NO_DISCHARGE: &str = "it takes pressure and temperature of the discharge";
const NO_POWER: &str = "it takes the compressor's power, and for an efficiency the discharge";
const NOT_COMPRESSED: &str = "the discharge gas carries no more enthalpy than the suction gas: the compressor does not \
    compress, or the probes are exchanged or loose";
const TOO_COLD: &str = "the discharge gas is colder than an ideal compressor would leave it: liquid comes back to the \
    compressor, or the discharge probe is loose, uninsulated or far from the shell";
const MORE_THAN_ALL: &str = "more heat stays in the gas than the compressor takes up in power: mass flow, power or a \
    temperature is measured wrong";

const fn missing(quantity: &'static str, reason: &'static str) -> Error {
    Error::NotAvailable { quantity, reason }
}
