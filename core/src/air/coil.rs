//! Air before and after the indoor coil: temperature split and capacity.

use super::measured::MeasuredAir;
use super::moist::MoistAir;
use super::standard::STANDARD_AIR_KG_M3;
use crate::air::Humidity;
use crate::bounds;
use crate::error::Error;
use crate::quantity::{AirTemperature, SiQuantity, TemperatureDifference};
use crate::uncertain::{Uncertain, propagate, propagate_all};

/// What was measured of the air before and after the indoor coil. Every ± is one standard uncertainty.
///
/// Two probes of one instrument share a bias: give it once as `shared_bias_k` and only what is each probe's own with its
/// temperature. It hardly moves the split, but it moves the humidity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoilAir {
    /// Air entering the coil (return air, with whatever outdoor air is mixed in).
    pub entering: MeasuredAir,
    /// Dry bulb of the air leaving (supply air), K.
    pub leaving_dry_bulb_k: Uncertain,
    /// Humidity of the air leaving; none where it holds as much water as the air entering: a dry coil, or heating.
    pub leaving_humidity: Option<Humidity>,
    /// Ambient (station) pressure, Pa.
    pub pressure_pa: Uncertain,
    /// One standard uncertainty of a bias that all temperatures share, K.
    pub shared_bias_k: f64,
}

/// Where the volume of an airflow counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirflowPlace {
    /// Volume of the air entering the coil.
    Entering,
    /// Volume of the air leaving the coil.
    Leaving,
    /// Volume at standard air (SCFM), which stands for a mass of dry air: see [`STANDARD_AIR_KG_M3`].
    Standard,
}

impl AirflowPlace {
    /// Every place.
    pub const ALL: [Self; 3] = [Self::Entering, Self::Leaving, Self::Standard];

    /// The name in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Entering => "entering",
            Self::Leaving => "leaving",
            Self::Standard => "standard",
        }
    }

    /// Mass flow of dry air in kg/s to each m³/s.
    fn kg_m3(self, entering: &MoistAir, leaving: &MoistAir) -> f64 {
        match self {
            Self::Entering => 1.0 / entering.specific_volume_m3_kg(),
            Self::Leaving => 1.0 / leaving.specific_volume_m3_kg(),
            Self::Standard => STANDARD_AIR_KG_M3,
        }
    }
}

/// Heat taken from the air, positive in cooling. Negative sensible heat was given to it, negative latent heat means
/// that it left with more water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoilCapacity {
    /// Mass flow of dry air, kg/s.
    pub dry_air_kg_s: Uncertain,
    /// Heat of cooling the air, at the humidity at which it leaves, W.
    pub sensible_w: Uncertain,
    /// Heat of the water taken out, as vapour at the entering dry bulb, W.
    pub latent_w: Uncertain,
    /// Both together, exactly: mass flow of dry air times the difference of enthalpy, W. The enthalpy that leaves with
    /// the condensate is still in it, as in ASHRAE 37 (from memory).
    pub total_w: Uncertain,
    /// Enthalpy that leaves with the condensate at the leaving dry bulb, W: around one per cent.
    pub condensate_w: Uncertain,
    /// Total less condensate, W: what the refrigerant takes up, where no blower stands between the two probes.
    pub coil_w: Uncertain,
    /// Water taken out, kg/s; negative where the air left with more.
    pub condensate_kg_s: Uncertain,
    /// Sensible over total heat; [`Error::NotAvailable`] where the air was not cooled.
    pub sensible_heat_ratio: Result<Uncertain, Error>,
}

/// Temperature split with its target.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Split {
    /// Entering minus leaving dry bulb, K; the shared bias cancels.
    pub split_k: Uncertain,
    /// What the target table asks for at this return air, K; [`Error::NotAvailable`] where it has none.
    pub target_k: Result<Uncertain, Error>,
    /// Split minus target, K.
    pub deviation_k: Result<Uncertain, Error>,
}

/// Heats to a kg of dry air, J/kg.
pub(super) struct PerKilogram {
    pub sensible: f64,
    pub latent: f64,
    pub condensate: f64,
}

impl PerKilogram {
    pub fn of(entering: &MoistAir, leaving: &MoistAir) -> Self {
        let (warm, cold) = (entering.dry_bulb().celsius(), leaving.dry_bulb().celsius());
        let water = entering.humidity_ratio() - leaving.humidity_ratio();
        // First the water is taken out at the entering temperature, then the air is cooled: together the difference of
        // the enthalpies, to the last term.
        let of_condensate = if cold >= 0.0 { 4.186 * cold } else { 2.1 * cold - 333.4 };
        Self {
            sensible: leaving.specific_heat_j_kg_k() * (warm - cold),
            latent: 1e3 * water * (2501.0 + 1.86 * warm),
            condensate: 1e3 * water.max(0.0) * of_condensate,
        }
    }

    pub fn total(&self) -> f64 {
        self.sensible + self.latent
    }
}

/// How many things are measured of the air itself.
pub(super) const INPUTS: usize = 6;

impl CoilAir {
    /// What was measured, in the order that [`CoilAir::states`] takes, with two more numbers.
    pub(super) fn inputs(&self, more: [Uncertain; 2]) -> Result<[Uncertain; INPUTS + 2], Error> {
        let bias = Uncertain::new(0.0, bounds::TEMPERATURE_UNCERTAINTY.check(self.shared_bias_k)?)?;
        let leaving = self.leaving_humidity.as_ref().map_or(Uncertain::exact(0.0), Humidity::input);
        let [first, second] = more;
        let all = [
            self.entering.dry_bulb_k,
            self.entering.humidity.input(),
            self.leaving_dry_bulb_k,
            leaving,
            self.pressure_pa,
            bias,
            first,
            second,
        ];
        for input in all {
            Uncertain::new(input.value, input.standard_uncertainty)?;
        }
        for temperature in [self.entering.dry_bulb_k, self.leaving_dry_bulb_k] {
            bounds::TEMPERATURE_UNCERTAINTY.check(temperature.standard_uncertainty)?;
        }
        Ok(all)
    }

    /// Air entering and leaving.
    pub(super) fn states(&self, moved: [f64; INPUTS + 2]) -> Result<(MoistAir, MoistAir), Error> {
        let [dry, humidity, leaving_dry, leaving_humidity, pressure, bias, ..] = moved;
        let entering = self.entering.humidity.air(dry, humidity, bias, pressure)?;
        let leaving = match &self.leaving_humidity {
            Some(measure) => measure.air(leaving_dry, leaving_humidity, bias, pressure)?,
            None => {
                let dry = AirTemperature::from_kelvin(leaving_dry + bias)?;
                MoistAir::from_humidity_ratio(dry, entering.humidity_ratio(), entering.pressure()).map_err(|_| {
                    Error::NotAvailable {
                        quantity: "humidity of the air leaving",
                        reason: "cooled so far it cannot hold the water with which it entered, so the coil is wet: \
                            measure the wet bulb or the relative humidity of the air leaving",
                    }
                })?
            }
        };
        Ok((entering, leaving))
    }

    /// The air entering and leaving, as measured.
    ///
    /// # Errors
    /// Those of [`MoistAir`]'s functions; [`Error::NotAvailable`] where the leaving humidity is not given and the air
    /// cannot hold what it entered with.
    pub fn air(&self) -> Result<(MoistAir, MoistAir), Error> {
        self.states(self.inputs([Uncertain::exact(0.0); 2])?.map(|input| input.value))
    }

    /// Temperature split: entering minus leaving dry bulb, negative in heating.
    ///
    /// # Errors
    /// Those of [`CoilAir::air`].
    pub fn split_k(&self) -> Result<Uncertain, Error> {
        self.air()?;
        propagate([self.entering.dry_bulb_k, self.leaving_dry_bulb_k], |[warm, cold]| Ok(warm - cold))
    }

    /// Temperature split against its target, by the table that `target` reads: return dry bulb and wet bulb in, target
    /// out. The target moves with the same two probes, which the deviation's uncertainty takes into account.
    ///
    /// # Errors
    /// Those of [`CoilAir::air`].
    ///
    /// ```
    /// use satline::air::{CoilAir, Humidity, MeasuredAir};
    /// use satline::charge::target_split;
    /// use satline::quantity::kelvin_from_fahrenheit;
    /// use satline::uncertain::Uncertain;
    /// let fahrenheit = |value| Uncertain::new(kelvin_from_fahrenheit(value), 0.3);
    /// // Demo: return 78 °F dry and 65 °F wet bulb, supply 58 °F.
    /// let air = CoilAir {
    ///     entering: MeasuredAir { dry_bulb_k: fahrenheit(78.0)?, humidity: Humidity::WetBulb(fahrenheit(65.0)?) },
    ///     leaving_dry_bulb_k: fahrenheit(58.0)?,
    ///     leaving_humidity: Some(Humidity::WetBulb(fahrenheit(56.5)?)),
    ///     pressure_pa: Uncertain::exact(101_325.0),
    ///     shared_bias_k: 0.0,
    /// };
    /// let split = air.split(|dry, wet| target_split(dry, wet).difference())?;
    /// assert!((split.split_k.value - 11.11).abs() < 0.01);
    /// assert!((split.target_k?.value - 10.46).abs() < 0.02);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn split(
        &self,
        target: impl Fn(AirTemperature, AirTemperature) -> Option<TemperatureDifference>,
    ) -> Result<Split, Error> {
        let inputs = self.inputs([Uncertain::exact(0.0); 2])?;
        let split_k = self.split_k()?;
        let both = propagate_all(inputs, |moved| {
            let (entering, leaving) = self.states(moved)?;
            let wet = AirTemperature::from_kelvin(entering.wet_bulb_k())?;
            let target = target(entering.dry_bulb(), wet).ok_or(Error::NotAvailable {
                quantity: "target temperature split",
                reason: "the table is blank or ends at this return air",
            })?;
            let split = entering.dry_bulb().kelvin() - leaving.dry_bulb().kelvin();
            Ok([target.si(), split - target.si()])
        });
        Ok(Split {
            split_k,
            target_k: both.map(|[target, _]| target),
            deviation_k: both.map(|[_, deviation]| deviation),
        })
    }

    /// Sensible, latent and total capacity on the air side.
    ///
    /// `airflow` in m³/s is the volume at `place`. Heat of a blower between the two probes is in it: what the coil did is
    /// more by that power. Sensible and latent heat sum to the total.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for an airflow outside [`bounds::AIRFLOW`]; those of [`CoilAir::air`].
    pub fn capacity(&self, airflow_m3_s: Uncertain, place: AirflowPlace) -> Result<CoilCapacity, Error> {
        bounds::AIRFLOW.check(airflow_m3_s.value)?;
        let inputs = self.inputs([airflow_m3_s, Uncertain::exact(0.0)])?;
        let of = |moved: [f64; INPUTS + 2]| -> Result<(f64, PerKilogram, f64), Error> {
            let (entering, leaving) = self.states(moved)?;
            let [.., airflow, _] = moved;
            let water = entering.humidity_ratio() - leaving.humidity_ratio();
            Ok((airflow * place.kg_m3(&entering, &leaving), PerKilogram::of(&entering, &leaving), water))
        };
        let [dry_air_kg_s, sensible_w, latent_w, total_w, condensate_w, coil_w, condensate_kg_s] =
            propagate_all(inputs, |moved| {
                let (flow, heat, water) = of(moved)?;
                let (sensible, latent, condensate) = (flow * heat.sensible, flow * heat.latent, flow * heat.condensate);
                let total = sensible + latent;
                Ok([flow, sensible, latent, total, condensate, total - condensate, flow * water])
            })?;
        let sensible_heat_ratio = propagate(inputs, |moved| {
            let (_, heat, _) = of(moved)?;
            let cooled = heat.sensible > 0.0 && heat.total() > 0.0;
            if cooled { Ok(heat.sensible / heat.total()) } else { Err(NOT_COOLED) }
        });
        Ok(CoilCapacity {
            dry_air_kg_s,
            sensible_w,
            latent_w,
            total_w,
            condensate_w,
            coil_w,
            condensate_kg_s,
            sensible_heat_ratio,
        })
    }
}

const NOT_COOLED: Error = Error::NotAvailable {
    quantity: "sensible heat ratio",
    reason: "the air leaving is not colder and poorer in heat than the air entering: nothing was cooled",
};
