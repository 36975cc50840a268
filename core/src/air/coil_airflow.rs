//! The airflow from a heat that is known another way: air that takes up a known heat shows its mass by how far its
//! temperature moves.

use super::coil::{CoilAir, PerKilogram};
use super::standard::STANDARD_AIR_KG_M3;
use crate::bounds;
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate, propagate_all};

/// A heat that is known, with its standard uncertainty, W. A blower's electric power ends as heat in the air: it counts
/// where the blower stands between the two probes, else it is 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum KnownHeat {
    /// Heat given to the air by electric strips (volts times amperes of all that are on) or by a furnace (its output,
    /// not its input), compressor off.
    Heating {
        /// Heat of strips or furnace.
        heat_w: Uncertain,
        /// Power of a blower between the probes.
        blower_w: Uncertain,
    },
    /// Sensible heat taken from the air between the probes: a net capacity, the blower's heat already taken off.
    Sensible(Uncertain),
    /// Total heat taken from the air between the probes, condensate included, blower's heat taken off.
    Total(Uncertain),
    /// Heat taken up by the refrigerant in the indoor coil, from the refrigerant's side.
    Refrigerant {
        /// Capacity of the evaporator, from coil inlet to coil outlet.
        evaporator_w: Uncertain,
        /// Power of a blower between the probes.
        blower_w: Uncertain,
    },
}

/// An airflow over the indoor coil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoilAirflow {
    /// Mass flow of dry air, kg/s.
    pub dry_air_kg_s: Uncertain,
    /// Volume flow of the air entering, m³/s.
    pub entering_m3_s: Uncertain,
    /// Volume flow of the air leaving, m³/s.
    pub leaving_m3_s: Uncertain,
    /// Flow at standard air, m³/s (SCFM): see [`STANDARD_AIR_KG_M3`].
    pub standard_m3_s: Uncertain,
}

/// How many of its standard uncertainties a change of the air must have for an airflow to be drawn from it.
const LEAST_CHANGE: f64 = 2.0;

impl KnownHeat {
    /// Heat and blower, checked.
    fn powers(&self) -> Result<[Uncertain; 2], Error> {
        let (heat, blower) = match *self {
            Self::Heating { heat_w, blower_w } => (heat_w, blower_w),
            Self::Refrigerant { evaporator_w, blower_w } => (evaporator_w, blower_w),
            Self::Sensible(heat) | Self::Total(heat) => (heat, Uncertain::exact(0.0)),
        };
        bounds::POWER.check(heat.value)?;
        bounds::BLOWER_POWER.check(blower.value)?;
        Ok([heat, blower])
    }

    /// What the air takes up or gives up in all, W.
    fn of_air(&self, heat: f64, blower: f64) -> f64 {
        match self {
            Self::Heating { .. } => heat + blower,
            Self::Sensible(_) | Self::Total(_) => heat,
            Self::Refrigerant { .. } => heat - blower,
        }
    }

    /// The same to a kg of dry air, J/kg.
    fn per_kilogram(&self, heat: &PerKilogram) -> f64 {
        match self {
            Self::Heating { .. } => -heat.sensible,
            Self::Sensible(_) => heat.sensible,
            Self::Total(_) => heat.total(),
            Self::Refrigerant { .. } => heat.total() - heat.condensate,
        }
    }
}

impl CoilAir {
    /// The airflow over the coil from a heat that is known.
    ///
    /// Measure the air where it is mixed, out of sight of strips, burner and coil. Heat that the ducts or the cabinet
    /// lose between the probes is not counted. Heat strips and blowers carry mains electricity: measuring them is for
    /// licensed people.
    ///
    /// # Errors
    /// [`Error::NotAvailable`] where the air changes the wrong way or by less than two standard uncertainties, or a
    /// blower has more power than the coil; [`Error::OutOfRange`] for powers outside [`bounds::POWER`] and
    /// [`bounds::BLOWER_POWER`]; those of [`CoilAir::air`].
    ///
    /// ```
    /// use satline::air::{CoilAir, Humidity, KnownHeat, MeasuredAir};
    /// use satline::uncertain::Uncertain;
    /// // Demo: 9.6 kW of strips and a 400 W blower warm the air from 20 to 40 °C.
    /// let air = CoilAir {
    ///     entering: MeasuredAir {
    ///         dry_bulb_k: Uncertain::new(293.15, 0.2)?,
    ///         humidity: Humidity::Relative(Uncertain::new(0.4, 0.03)?),
    ///     },
    ///     leaving_dry_bulb_k: Uncertain::new(313.15, 0.3)?,
    ///     leaving_humidity: None,
    ///     pressure_pa: Uncertain::exact(101_325.0),
    ///     shared_bias_k: 0.0,
    /// };
    /// let heat = KnownHeat::Heating { heat_w: Uncertain::new(9600.0, 100.0)?, blower_w: Uncertain::new(400.0, 20.0)? };
    /// let flow = air.airflow(heat)?;
    /// assert!((flow.entering_m3_s.value - 0.411).abs() < 0.001);
    /// assert!((flow.entering_m3_s.standard_uncertainty - 0.009).abs() < 0.001);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn airflow(&self, heat: KnownHeat) -> Result<CoilAirflow, Error> {
        let measured = match heat {
            // Heating adds no water, whatever a probe behind a hot coil says.
            KnownHeat::Heating { .. } => Self { leaving_humidity: None, ..*self },
            _ => *self,
        };
        let powers = heat.powers()?;
        let warmed = self.leaving_dry_bulb_k.value > self.entering.dry_bulb_k.value;
        if matches!(heat, KnownHeat::Heating { .. }) && !warmed {
            return Err(refused(WRONG_WAY));
        }
        let inputs = measured.inputs(powers)?;
        let change = propagate(inputs, |moved| {
            let (entering, leaving) = measured.states(moved)?;
            Ok(heat.per_kilogram(&PerKilogram::of(&entering, &leaving)))
        })?;
        let [of_coil, of_blower] = powers;
        if !(heat.of_air(of_coil.value, of_blower.value) > 0.0) {
            return Err(refused("the blower has more power than the coil, so no cooling is left for the air"));
        }
        if !(change.value > 0.0) {
            return Err(refused(WRONG_WAY));
        }
        if !(change.value > LEAST_CHANGE * change.standard_uncertainty) {
            return Err(refused(
                "the air changes by less than two standard uncertainties: run more heat, or use better probes",
            ));
        }
        let [dry_air_kg_s, entering_m3_s, leaving_m3_s, standard_m3_s] = propagate_all(inputs, |moved| {
            let (entering, leaving) = measured.states(moved)?;
            let [.., of_coil, of_blower] = moved;
            let flow = heat.of_air(of_coil, of_blower) / heat.per_kilogram(&PerKilogram::of(&entering, &leaving));
            Ok([
                flow,
                flow * entering.specific_volume_m3_kg(),
                flow * leaving.specific_volume_m3_kg(),
                flow / STANDARD_AIR_KG_M3,
            ])
        })?;
        Ok(CoilAirflow { dry_air_kg_s, entering_m3_s, leaving_m3_s, standard_m3_s })
    }
}

const WRONG_WAY: &str = "the air changes the wrong way: exchange the probes, or check what is running";

const fn refused(reason: &'static str) -> Error {
    Error::NotAvailable { quantity: "airflow from a known heat", reason }
}
