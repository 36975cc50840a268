//! Physical quantities as types, so that a gauge pressure cannot be taken for an absolute one, nor a temperature
//! difference for a temperature.
//!
//! Each holds its SI value and can only be made from a value inside its bound (see [`crate::bounds`]), so every
//! value of these types is finite and plausible.

use crate::bounds::{self, Bound};
use crate::error::Error;
use crate::math;

/// Pascals in one pound-force per square inch (NIST SP 811).
pub const PASCALS_PER_PSI: f64 = 6_894.757_293_168_361;
/// Pascals in one conventional inch of mercury (NIST SP 811).
pub const PASCALS_PER_INCH_OF_MERCURY: f64 = 3_386.389;
/// Kelvins in one degree Fahrenheit of difference.
pub const KELVIN_PER_FAHRENHEIT: f64 = 5.0 / 9.0;
/// Cubic metres per second in one cubic foot per minute.
pub const M3_S_PER_CFM: f64 = 0.028_316_846_592 / 60.0;
/// Watts in one ton of refrigeration (12 000 Btu per hour, International Table Btu).
pub const WATTS_PER_TON: f64 = 3_516.852_842_067;
/// Watts in one International Table Btu per hour.
pub const WATTS_PER_BTU_H: f64 = 0.293_071_070_172;
/// Kilograms in one avoirdupois pound.
pub const KG_PER_POUND: f64 = 0.453_592_37;

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $bound:ident, $from:ident, $get:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("From a value in ", $unit, ".")]
            ///
            /// # Errors
            #[doc = concat!("A value that is not finite or outside [`bounds::", stringify!($bound), "`].")]
            #[inline]
            pub fn $from(value: f64) -> Result<Self, Error> {
                bounds::$bound.check(value).map(Self)
            }

            #[doc = concat!("The value in ", $unit, ".")]
            #[inline]
            #[must_use]
            pub const fn $get(self) -> f64 {
                self.0
            }
        }

        impl SiQuantity for $name {
            const BOUND: &'static Bound = &bounds::$bound;
            fn from_si(value: f64) -> Result<Self, Error> {
                Self::$from(value)
            }
            fn si(self) -> f64 {
                self.0
            }
        }

        impl Within for $name {
            fn within(value: f64) -> Self {
                Self(value)
            }
        }
    };
}

/// From an SI value that was checked against the quantity's bound already.
pub(crate) trait Within: SiQuantity {
    fn within(value: f64) -> Self;
}

/// What every quantity has: an SI value and its accepted range.
pub trait SiQuantity: Copy {
    /// The accepted range.
    const BOUND: &'static Bound;
    /// From the SI value.
    ///
    /// # Errors
    /// A value that is not finite or outside the bound.
    fn from_si(value: f64) -> Result<Self, Error>;
    /// The SI value.
    fn si(self) -> f64;
}

quantity! {
    /// Absolute pressure.
    ///
    /// ```
    /// use satline::quantity::{Atmosphere, Pressure};
    /// let suction = Pressure::from_psi_gauge(118.0, Atmosphere::STANDARD)?;
    /// assert!((suction.pascals() - 914_906.4).abs() < 0.1);
    /// # Ok::<(), satline::Error>(())
    /// ```
    Pressure, ABSOLUTE_PRESSURE, from_pascals, pascals, "pascals, absolute"
}
quantity! {
    /// Pressure above (or, negative, below) the ambient pressure, as a gauge shows it.
    GaugePressure, GAUGE_PRESSURE, from_pascals, pascals, "pascals above ambient"
}
quantity! {
    /// Ambient pressure at the gauge: what turns a gauge pressure into an absolute one.
    Atmosphere, AMBIENT_PRESSURE, from_pascals, pascals, "pascals, absolute"
}
quantity! {
    /// Temperature of refrigerant, lines and machine parts.
    Temperature, TEMPERATURE, from_kelvin, kelvin, "kelvin"
}
quantity! {
    /// Dry or wet bulb temperature of air.
    AirTemperature, AIR_TEMPERATURE, from_kelvin, kelvin, "kelvin"
}
quantity! {
    /// A difference between two temperatures, such as a superheat.
    TemperatureDifference, TEMPERATURE_DIFFERENCE, from_kelvin, kelvin, "kelvin"
}
quantity! {
    /// A maker's target for superheat, subcooling or approach.
    TargetDifference, TARGET_DIFFERENCE, from_kelvin, kelvin, "kelvin"
}
quantity! {
    /// Volume flow of air.
    Airflow, AIRFLOW, from_m3_s, m3_s, "cubic metres a second"
}
quantity! {
    /// Electric or cooling power.
    Power, POWER, from_watts, watts, "watts"
}
quantity! {
    /// Mass of refrigerant.
    Mass, MASS, from_kilograms, kilograms, "kilograms"
}
quantity! {
    /// Time since the unit was started or last changed.
    Minutes, MINUTES, from_minutes, minutes, "minutes"
}

impl Pressure {
    /// From pounds-force per square inch, absolute.
    ///
    /// # Errors
    /// See [`Pressure::from_pascals`].
    pub fn from_psi_absolute(value: f64) -> Result<Self, Error> {
        Self::from_pascals(value * PASCALS_PER_PSI)
    }

    /// From a gauge reading in pounds-force per square inch, and the ambient pressure at the gauge.
    ///
    /// # Errors
    /// A reading below vacuum or outside the bound.
    pub fn from_psi_gauge(value: f64, ambient: Atmosphere) -> Result<Self, Error> {
        Self::from_gauge(GaugePressure::from_psi(value)?, ambient)
    }

    /// From a gauge pressure and the ambient pressure at the gauge.
    ///
    /// # Errors
    /// A gauge pressure at or below vacuum at that ambient pressure.
    pub fn from_gauge(gauge: GaugePressure, ambient: Atmosphere) -> Result<Self, Error> {
        let absolute = gauge.pascals() + ambient.pascals();
        if absolute < bounds::ABSOLUTE_PRESSURE.lower {
            return Err(Error::OutOfRange {
                quantity: bounds::GAUGE_PRESSURE.quantity,
                unit: bounds::GAUGE_PRESSURE.unit,
                value: gauge.pascals(),
                lower: -ambient.pascals(),
                upper: bounds::GAUGE_PRESSURE.upper,
                advice: bounds::GAUGE_PRESSURE.advice,
            });
        }
        Self::from_pascals(absolute)
    }
}

impl GaugePressure {
    /// From pounds-force per square inch above ambient.
    ///
    /// # Errors
    /// See [`GaugePressure::from_pascals`].
    pub fn from_psi(value: f64) -> Result<Self, Error> {
        Self::from_pascals(value * PASCALS_PER_PSI)
    }
}

impl Atmosphere {
    /// The standard atmosphere at sea level, 101 325 Pa.
    pub const STANDARD: Self = Self(101_325.0);

    /// The standard atmosphere at an altitude in metres (ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3).
    /// A barometer at the unit is better: weather moves the pressure by some 2 %.
    ///
    /// # Errors
    /// An altitude outside [`bounds::ALTITUDE`].
    pub fn at_altitude_m(altitude: f64) -> Result<Self, Error> {
        let altitude = bounds::ALTITUDE.check(altitude)?;
        Self::from_pascals(101_325.0 * math::pow(1.0 - 2.255_77e-5 * altitude, 5.255_9))
    }
}

macro_rules! temperature_scales {
    ($($name:ident),*) => {$(
        impl $name {
            /// From degrees Celsius.
            ///
            /// # Errors
            /// A value that is not finite or outside the bound.
            pub fn from_celsius(value: f64) -> Result<Self, Error> {
                Self::from_kelvin(value + 273.15)
            }

            /// From degrees Fahrenheit.
            ///
            /// # Errors
            /// A value that is not finite or outside the bound.
            pub fn from_fahrenheit(value: f64) -> Result<Self, Error> {
                Self::from_kelvin(kelvin_from_fahrenheit(value))
            }

            /// The value in degrees Celsius.
            #[must_use]
            pub fn celsius(self) -> f64 {
                self.0 - 273.15
            }

            /// The value in degrees Fahrenheit.
            #[must_use]
            pub fn fahrenheit(self) -> f64 {
                fahrenheit_from_kelvin(self.0)
            }
        }
    )*};
}
temperature_scales!(Temperature, AirTemperature);

macro_rules! difference_scales {
    ($($name:ident),*) => {$(
        impl $name {
            /// From a difference in degrees Fahrenheit: 10 °F is 5.56 K.
            ///
            /// # Errors
            /// A value that is not finite or outside the bound.
            pub fn from_fahrenheit(value: f64) -> Result<Self, Error> {
                Self::from_kelvin(value * KELVIN_PER_FAHRENHEIT)
            }

            /// The difference in degrees Fahrenheit.
            #[must_use]
            pub fn fahrenheit(self) -> f64 {
                self.0 / KELVIN_PER_FAHRENHEIT
            }
        }
    )*};
}
difference_scales!(TemperatureDifference, TargetDifference);

/// A Fahrenheit temperature in kelvin.
#[must_use]
pub fn kelvin_from_fahrenheit(value: f64) -> f64 {
    (value + 459.67) * KELVIN_PER_FAHRENHEIT
}

/// A kelvin temperature in degrees Fahrenheit.
#[must_use]
pub fn fahrenheit_from_kelvin(value: f64) -> f64 {
    value / KELVIN_PER_FAHRENHEIT - 459.67
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn gauge_needs_the_ambient_pressure() {
        let sea = Pressure::from_psi_gauge(118.0, Atmosphere::STANDARD).unwrap();
        let high = Pressure::from_psi_gauge(118.0, Atmosphere::at_altitude_m(1609.344).unwrap()).unwrap();
        // ASHRAE Fundamentals 2017 ch. 1 table 1 gives 12.23 psia at 5000 ft and 11.78 at 6000 ft.
        assert!(sea.pascals() - high.pascals() > 17_000.0 && sea.pascals() - high.pascals() < 18_500.0);
    }

    #[test]
    fn gauge_below_vacuum_is_refused() {
        let refused = Pressure::from_psi_gauge(-15.0, Atmosphere::STANDARD);
        assert!(matches!(refused, Err(Error::OutOfRange { quantity: "gauge pressure", .. })));
        let at_altitude = Atmosphere::at_altitude_m(3000.0).unwrap();
        assert!(Pressure::from_psi_gauge(-12.0, at_altitude).is_err());
        assert!(Pressure::from_psi_gauge(-12.0, Atmosphere::STANDARD).is_ok());
    }

    #[test]
    fn standard_atmosphere_matches_the_handbook() {
        // ASHRAE Fundamentals 2017 ch. 1 table 1 (published): Pa at metres.
        for (altitude, pressure) in [(500.0, 95_461.0), (1000.0, 89_875.0), (4000.0, 61_640.0)] {
            let computed = Atmosphere::at_altitude_m(altitude).unwrap().pascals();
            assert_relative_eq!(computed, pressure, max_relative = 2e-5);
        }
    }

    #[test]
    fn a_difference_is_not_a_temperature() {
        let difference = TemperatureDifference::from_fahrenheit(10.0).unwrap();
        assert_relative_eq!(difference.kelvin(), 5.555_555_555_555_556);
        let temperature = Temperature::from_fahrenheit(10.0).unwrap();
        assert_relative_eq!(temperature.celsius(), -12.222_222_222_222_2, max_relative = 1e-12);
        assert_relative_eq!(temperature.fahrenheit(), 10.0, max_relative = 1e-12);
    }
}
