//! One set of measurements taken at a unit.
//!
//! Every field is optional: what is missing is reported in the finding, with the measurement that would help. The
//! fields and their names are the same in Rust, C, Python and JSON; [`Field`] is their one list.

use crate::bounds;
use crate::error::Error;
use crate::quantity::{
    AirTemperature, Airflow, Atmosphere, Mass, Minutes, Power, Pressure, SiQuantity, TargetDifference, Temperature,
    Within as _,
};
use crate::saturation::SaturationCurves;

macro_rules! choices {
    ($(#[$doc:meta])* $name:ident $field:literal { $($(#[$vdoc:meta])* $variant:ident = $number:literal $text:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum $name { $($(#[$vdoc])* $variant = $number),+ }

        impl $name {
            /// Every choice.
            pub const ALL: &[Self] = &[$(Self::$variant),+];
            const CHOICES: &str = concat!($($text, " ",)+);

            /// The word used in files and in every language.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $text),+ }
            }

            /// From the word.
            ///
            /// # Errors
            /// [`Error::UnknownChoice`] for any other word.
            pub fn from_name(name: &str) -> Result<Self, Error> {
                Self::ALL.iter().copied().find(|choice| choice.name() == name)
                    .ok_or(Error::UnknownChoice { field: $field, choices: Self::CHOICES })
            }

            /// From the number that the C interface uses.
            ///
            /// # Errors
            /// [`Error::UnknownChoice`] for any other number.
            pub fn from_number(number: i32) -> Result<Self, Error> {
                Self::ALL.iter().copied().find(|choice| *choice as i32 == number)
                    .ok_or(Error::UnknownChoice { field: $field, choices: Self::CHOICES })
            }
        }
    };
}

choices! {
    /// How refrigerant is metered into the indoor coil.
    Metering "metering" {
        /// Piston, orifice plate or capillary: judged by superheat.
        FixedOrifice = 1 "fixed-orifice",
        /// Thermostatic expansion valve: judged by subcooling.
        ThermostaticValve = 2 "thermostatic-valve",
        /// Electronic expansion valve: judged by subcooling.
        ElectronicValve = 3 "electronic-valve",
    }
}
choices! {
    /// Where the metering device of the running mode is.
    MeteringPlace "metering_place" {
        /// At the indoor coil: the small line carries liquid.
        Indoor = 1 "indoor",
        /// In the outdoor unit: the small line is two-phase and tells no subcooling.
        Outdoor = 2 "outdoor",
    }
}
choices! {
    /// What the unit is doing.
    Mode "mode" {
        /// Cooling.
        Cooling = 1 "cooling",
        /// Heating.
        Heating = 2 "heating",
    }
}
choices! {
    /// The compressor's kind.
    Compressor "compressor" {
        /// One speed.
        SingleSpeed = 1 "single-speed",
        /// Two stages.
        TwoStage = 2 "two-stage",
        /// Continuously variable speed.
        Variable = 3 "variable",
    }
}
choices! {
    /// The stage or mode in which the compressor ran during the reading.
    Stage "stage" {
        /// Low stage.
        Low = 1 "low",
        /// High stage.
        High = 2 "high",
        /// The maker's own charging or test mode.
        MakerChargingMode = 3 "maker-charging-mode",
    }
}
choices! {
    /// What the unit was doing during the reading besides its mode; not known when not given.
    Operation "operation" {
        /// Running steadily: nothing switched on, off or over.
        Steady = 1 "steady",
        /// Pulling down a warm house, or heating up a cold one, far from its set point.
        PullDown = 2 "pull-down",
        /// Defrosting its outdoor coil.
        Defrost = 3 "defrost",
        /// Switching its outdoor fan on and off.
        FanCycling = 4 "fan-cycling",
        /// Holding its condensing pressure up, by a fan's speed or a valve.
        HeadPressureControl = 5 "head-pressure-control",
    }
}
choices! {
    /// What is known of the refrigerant inside; nothing is said when not given.
    RefrigerantCondition "refrigerant_condition" {
        /// What the label says.
        AsLabelled = 1 "as-labelled",
        /// It may be another than the label says.
        Unknown = 2 "unknown",
        /// Mixed with another refrigerant.
        Mixed = 3 "mixed",
        /// A blend that leaked as vapour, so that its composition has shifted.
        LeakShifted = 4 "leak-shifted",
    }
}

macro_rules! reading {
    ($($(#[$doc:meta])* $variant:ident $field:ident: $kind:ty = $number:literal $name:literal;)*) => {
        /// One set of measurements. Pressures are absolute.
        ///
        /// ```
        /// use satline::quantity::{Atmosphere, Pressure, Temperature};
        /// use satline::reading::{Metering, Reading};
        /// use satline::saturation::R410A;
        /// let reading = Reading {
        ///     refrigerant: Some(&R410A),
        ///     metering: Some(Metering::FixedOrifice),
        ///     suction_pressure: Some(Pressure::from_psi_gauge(118.0, Atmosphere::STANDARD)?),
        ///     suction_line_temperature: Some(Temperature::from_fahrenheit(62.0)?),
        ///     ..Reading::default()
        /// };
        /// assert!(reading.liquid_pressure.is_none());
        /// # Ok::<(), satline::Error>(())
        /// ```
        #[derive(Debug, Clone, Copy, Default, PartialEq)]
        pub struct Reading {
            /// The refrigerant in the unit.
            pub refrigerant: Option<&'static SaturationCurves>,
            /// How refrigerant is metered into the indoor coil.
            pub metering: Option<Metering>,
            /// Where the metering device is.
            pub metering_place: Option<MeteringPlace>,
            /// What the unit is doing; cooling when not given.
            pub mode: Option<Mode>,
            /// The compressor's kind; single-speed when not given.
            pub compressor: Option<Compressor>,
            /// The stage or mode in which it ran.
            pub stage: Option<Stage>,
            /// What it was doing besides its mode.
            pub operation: Option<Operation>,
            /// What is known of the refrigerant inside.
            pub refrigerant_condition: Option<RefrigerantCondition>,
            $($(#[$doc])* pub $field: Option<$kind>,)*
            /// Accuracy of each numeric field, where it is better known than the default.
            pub accuracy: [Option<Accuracy>; FIELD_COUNT],
        }

        /// A numeric field of a reading.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Field { $($(#[$doc])* $variant = $number),* }

        /// How many numeric fields there are.
        pub const FIELD_COUNT: usize = [$($number),*].len();

        impl Field {
            /// Every numeric field, in the order of its number.
            pub const ALL: &[Self] = &[$(Self::$variant),*];

            /// The name with its unit, as used in every language and in files.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $name),* }
            }

            /// The accepted range, with the quantity and unit.
            #[must_use]
            pub const fn bound(self) -> &'static crate::bounds::Bound {
                match self { $(Self::$variant => <$kind as SiQuantity>::BOUND),* }
            }
        }

        impl Reading {
            /// Sets a numeric field from its SI value.
            ///
            /// # Errors
            /// A value that is not finite or outside the field's bound; the reading is then unchanged.
            pub fn set(&mut self, field: Field, value: f64) -> Result<(), Error> {
                // Checked once for all: a check of each kind would be most of a small program.
                let value = field.bound().check(value)?;
                match field { $(Field::$variant => self.$field = Some(<$kind>::within(value))),* }
                Ok(())
            }

            /// The SI value of a numeric field, if it is set.
            #[must_use]
            pub fn get(&self, field: Field) -> Option<f64> {
                match field { $(Field::$variant => self.$field.map(SiQuantity::si)),* }
            }
        }
    };
}

reading! {
    /// Dry bulb of the air entering the outdoor coil.
    OutdoorDryBulb outdoor_dry_bulb: AirTemperature = 0 "outdoor_dry_bulb_k";
    /// Dry bulb of the air leaving the outdoor coil.
    CondenserLeavingDryBulb condenser_leaving_dry_bulb: AirTemperature = 1 "condenser_leaving_dry_bulb_k";
    /// Dry bulb of the return air at the indoor coil.
    ReturnDryBulb return_dry_bulb: AirTemperature = 2 "return_dry_bulb_k";
    /// Wet bulb of the return air at the indoor coil.
    ReturnWetBulb return_wet_bulb: AirTemperature = 3 "return_wet_bulb_k";
    /// Dry bulb of the supply air.
    SupplyDryBulb supply_dry_bulb: AirTemperature = 4 "supply_dry_bulb_k";
    /// Wet bulb of the supply air.
    SupplyWetBulb supply_wet_bulb: AirTemperature = 5 "supply_wet_bulb_k";
    /// Ambient (station) pressure at the unit.
    AmbientPressure ambient_pressure: Atmosphere = 6 "ambient_pressure_pa";
    /// Pressure at the vapour port of the outdoor unit.
    SuctionPressure suction_pressure: Pressure = 7 "suction_pressure_pa";
    /// Temperature of the vapour line at the outdoor unit.
    SuctionLineTemperature suction_line_temperature: Temperature = 8 "suction_line_temperature_k";
    /// Pressure at the liquid port of the outdoor unit.
    LiquidPressure liquid_pressure: Pressure = 9 "liquid_pressure_pa";
    /// Temperature of the liquid line at the outdoor unit.
    LiquidLineTemperature liquid_line_temperature: Temperature = 10 "liquid_line_temperature_k";
    /// Pressure at the compressor discharge.
    DischargePressure discharge_pressure: Pressure = 11 "discharge_pressure_pa";
    /// Temperature of the discharge line.
    DischargeLineTemperature discharge_line_temperature: Temperature = 12 "discharge_line_temperature_k";
    /// Temperature of the refrigerant line leaving the indoor coil.
    CoilOutletTemperature coil_outlet_temperature: Temperature = 13 "coil_outlet_temperature_k";
    /// Temperature of a two-phase surface of the outdoor coil (a return bend).
    CondensingSurfaceTemperature condensing_surface_temperature: Temperature = 14 "condensing_surface_temperature_k";
    /// Temperature of the compressor's oil sump.
    SumpTemperature sump_temperature: Temperature = 15 "sump_temperature_k";
    /// Airflow over the indoor coil.
    AirflowOverCoil airflow: Airflow = 16 "airflow_m3_s";
    /// Nominal cooling capacity of the unit.
    NominalCapacity nominal_capacity: Power = 17 "nominal_capacity_w";
    /// Electric power of the compressor.
    CompressorPower compressor_power: Power = 18 "compressor_power_w";
    /// The charge the unit should hold with its line set.
    ExpectedCharge expected_charge: Mass = 19 "expected_charge_kg";
    /// The charge weighed in.
    WeighedCharge weighed_charge: Mass = 20 "weighed_charge_kg";
    /// Minutes since start, or since charge or airflow were last changed.
    MinutesSinceChange minutes_since_change: Minutes = 21 "minutes_since_change";
    /// The maker's target superheat, where there is one.
    TargetSuperheat target_superheat: TargetDifference = 22 "target_superheat_k";
    /// The maker's target subcooling, where there is one.
    TargetSubcooling target_subcooling: TargetDifference = 23 "target_subcooling_k";
    /// The maker's target approach (liquid line minus outdoor air), where there is one.
    TargetApproach target_approach: TargetDifference = 24 "target_approach_k";
    /// Temperature of the liquid line before the metering device: what it is colder than at the liquid port shows a
    /// restriction between them. Best taken with the same probe, both in one accuracy group.
    MeteringInletTemperature metering_inlet_temperature: Temperature = 25 "metering_inlet_temperature_k";
}

/// Limits of error of one instrument channel, in the field's SI unit unless noted. They add up; dividing the sum by
/// √3 makes it one standard uncertainty (a limit read as a rectangular distribution).
///
/// ```
/// use satline::reading::{Accuracy, Field, Reading};
/// // Both gauges of one manifold, within 0.5 % of their 5.5 MPa and zeroed together.
/// let gauge = Accuracy { of_full_scale: 0.005, full_scale: 5.5e6, group: 1, ..Accuracy::EXACT }.checked()?;
/// let mut reading = Reading::default();
/// for field in [Field::SuctionPressure, Field::LiquidPressure] {
///     reading.accuracy[field as usize] = Some(gauge);
/// }
/// assert!(Accuracy { full_scale: 0.0, ..gauge }.checked().is_err());
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Accuracy {
    /// Fraction of the reading (for a temperature: of its Celsius value; for a pressure: of its gauge value).
    pub of_reading: f64,
    /// Fraction of the instrument's full scale.
    pub of_full_scale: f64,
    /// The full scale: the span between the ends of the instrument's range (of a gauge: its highest gauge pressure; of a
    /// thermometer: from its lowest to its highest temperature). Only together with `of_full_scale`.
    pub full_scale: f64,
    /// Absolute limit.
    pub absolute: f64,
    /// Smallest step shown; half of it is added.
    pub resolution: f64,
    /// 0 for an error of its own. Channels of one reading with the same other number share one error, all but the step
    /// shown: both gauges of one manifold that were zeroed against the same reference.
    pub group: u8,
}

impl Accuracy {
    /// Without any error.
    pub const EXACT: Self =
        Self { of_reading: 0.0, of_full_scale: 0.0, full_scale: 0.0, absolute: 0.0, resolution: 0.0, group: 0 };

    /// Gives the accuracy back if it can be one of an instrument.
    ///
    /// # Errors
    /// A limit that is not finite, negative, or above [`bounds::ACCURACY_SHARE`] or [`bounds::ACCURACY_LIMIT`]; a share of
    /// full scale without the full scale, or the other way round (both are 0, or neither).
    pub fn checked(self) -> Result<Self, Error> {
        bounds::ACCURACY_SHARE.check(self.of_reading)?;
        if self.of_full_scale != 0.0 || self.full_scale != 0.0 {
            bounds::FULL_SCALE_SHARE.check(self.of_full_scale)?;
            bounds::FULL_SCALE.check(self.full_scale)?;
        }
        bounds::ACCURACY_LIMIT.check(self.absolute)?;
        bounds::ACCURACY_LIMIT.check(self.resolution)?;
        Ok(self)
    }
}

impl Field {
    /// From the name with its unit.
    ///
    /// # Errors
    /// [`Error::UnknownField`] with the nearest name.
    pub fn from_name(name: &str) -> Result<Self, Error> {
        Self::ALL.iter().copied().find(|field| field.name() == name).ok_or_else(|| Error::UnknownField {
            nearest: crate::nearest::nearest(name, Self::ALL.iter().map(|field| field.name())),
        })
    }

    /// From the number that the C interface uses.
    ///
    /// # Errors
    /// [`Error::UnknownField`] for a number without a field.
    pub fn from_number(number: i32) -> Result<Self, Error> {
        usize::try_from(number)
            .ok()
            .and_then(|index| Self::ALL.get(index).copied())
            .ok_or(Error::UnknownField { nearest: "one of the numbered fields" })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn choices_know_their_words_and_numbers_and_no_others() {
        for (number, word) in (1..).zip(["steady", "pull-down", "defrost", "fan-cycling", "head-pressure-control"]) {
            let operation = Operation::from_name(word).unwrap();
            assert_eq!((operation.name(), Operation::from_number(number)), (word, Ok(operation)));
        }
        for (number, word) in (1..).zip(["as-labelled", "unknown", "mixed", "leak-shifted"]) {
            let condition = RefrigerantCondition::from_name(word).unwrap();
            assert_eq!((condition.name(), RefrigerantCondition::from_number(number)), (word, Ok(condition)));
        }
        for refused in [Operation::from_number(0), Operation::from_number(6), Operation::from_name("Steady")] {
            assert!(matches!(refused, Err(Error::UnknownChoice { field: "operation", .. })));
        }
        for refused in [RefrigerantCondition::from_number(5), RefrigerantCondition::from_name("shifted")] {
            let Err(Error::UnknownChoice { field, choices }) = refused else { panic!("{refused:?}") };
            assert!(field == "refrigerant_condition" && choices.contains("leak-shifted"), "{field}: {choices}");
        }
    }

    #[test]
    fn an_accuracy_is_finite_not_negative_and_names_what_is_wrong() {
        let good = Accuracy {
            of_reading: 0.01,
            of_full_scale: 0.005,
            full_scale: 5.5e6,
            absolute: 700.0,
            resolution: 690.0,
            group: 255,
        };
        assert_eq!((good.checked(), Accuracy::EXACT.checked()), (Ok(good), Ok(Accuracy::default())));
        for bad in [-1.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            for (wrong, quantity) in [
                (Accuracy { of_reading: bad, ..good }, "share of the reading"),
                (Accuracy { of_full_scale: bad, ..good }, "share of full scale"),
                (Accuracy { full_scale: bad, ..good }, "full scale of the instrument"),
                (Accuracy { absolute: bad, ..good }, "limit of error"),
                (Accuracy { resolution: bad, ..good }, "limit of error"),
            ] {
                let Err(Error::OutOfRange { quantity: named, .. } | Error::NotFinite { quantity: named, .. }) =
                    wrong.checked()
                else {
                    panic!("{wrong:?}")
                };
                assert!(named.starts_with(quantity), "{named}");
            }
        }
        for one_without_the_other in [
            Accuracy { full_scale: 0.0, ..good },
            Accuracy { of_full_scale: 0.0, ..good },
            Accuracy { of_reading: 1.001, ..good },
            Accuracy { of_full_scale: 1.001, ..good },
        ] {
            assert!(matches!(one_without_the_other.checked(), Err(Error::OutOfRange { .. })));
        }
    }
}
