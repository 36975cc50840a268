//! What each refrigerant is: the few facts that every handle of it shares.
//!
//! Compositions: ANSI/ASHRAE Standard 34. Safety classes and lower flammability limits: from memory of ASHRAE 34 /
//! ISO 817, to be checked against the current edition before relying on them for a safety decision.

/// ASHRAE 34 safety class: toxicity A (lower) or B (higher); flammability 1 (no flame propagation), 2L, 2, 3.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs)]
pub enum SafetyClass {
    A1,
    A2L,
    A2,
    A3,
    B1,
    B2L,
    B2,
    B3,
}

impl SafetyClass {
    /// The class as ASHRAE 34 writes it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::A1 => "A1",
            Self::A2L => "A2L",
            Self::A2 => "A2",
            Self::A3 => "A3",
            Self::B1 => "B1",
            Self::B2L => "B2L",
            Self::B2 => "B2",
            Self::B3 => "B3",
        }
    }

    /// Whether the refrigerant can burn (2L, 2 or 3).
    #[must_use]
    pub const fn is_flammable(self) -> bool {
        !matches!(self, Self::A1 | Self::B1)
    }
}

/// A component of a refrigerant with its share of the mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Component {
    /// Designation of the pure component.
    pub designation: &'static str,
    /// Mass fraction, 0 to 1.
    pub mass_fraction: f64,
}

/// What a refrigerant is. Small, so that an instrument which links one refrigerant's curves links little text.
#[derive(Debug, PartialEq)]
pub struct Identity {
    /// ASHRAE 34 designation.
    pub designation: &'static str,
    /// Components by mass; one for a pure fluid.
    pub components: &'static [Component],
    /// Safety class.
    pub safety_class: SafetyClass,
    /// Lower flammability limit in kg/m³, where the refrigerant burns.
    pub lower_flammability_limit_kg_m3: Option<f64>,
}

macro_rules! identities {
    ($($name:ident = $designation:literal, $class:ident, $limit:expr, [$($component:literal $fraction:literal),+];)*) => {
        $(#[doc = concat!("What ", $designation, " is.")]
        pub static $name: Identity = Identity {
            designation: $designation,
            components: &[$(Component { designation: $component, mass_fraction: $fraction }),+],
            safety_class: SafetyClass::$class,
            lower_flammability_limit_kg_m3: $limit,
        };)*
    };
}

identities! {
    R22 = "R-22", A1, None, ["R-22" 1.0];
    R32 = "R-32", A2L, Some(0.307), ["R-32" 1.0];
    R125 = "R-125", A1, None, ["R-125" 1.0];
    R134A = "R-134a", A1, None, ["R-134a" 1.0];
    R407C = "R-407C", A1, None, ["R-32" 0.23, "R-125" 0.25, "R-134a" 0.52];
    R410A = "R-410A", A1, None, ["R-32" 0.5, "R-125" 0.5];
}
