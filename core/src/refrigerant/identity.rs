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
    /// Not classified, or the class is not known here: to be handled as flammable.
    Unclassified,
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
            Self::Unclassified => "unclassified",
        }
    }

    /// Whether the refrigerant can burn (2L, 2 or 3), or must be taken to.
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
    /// Standard uncertainty of bubble and dew temperatures in K where a mixture parameter was estimated: how far published
    /// bubble and dew points lie that were not used for the estimate. `None` where all parameters are published.
    pub saturation_uncertainty_k: Option<f64>,
}

/// A number that may be left away.
macro_rules! stated {
    () => {
        None
    };
    ($value:literal) => {
        Some($value)
    };
}

macro_rules! identities {
    ($($name:ident = $designation:literal, $class:ident, $limit:expr, [$($component:literal $fraction:literal),+] $(estimated $uncertainty:literal)?;)*) => {
        $(#[doc = concat!("What ", $designation, " is.")]
        pub static $name: Identity = Identity {
            designation: $designation,
            components: &[$(Component { designation: $component, mass_fraction: $fraction }),+],
            safety_class: SafetyClass::$class,
            lower_flammability_limit_kg_m3: $limit,
            saturation_uncertainty_k: stated!($($uncertainty)?),
        };)*
    };
}

identities! {
    R11 = "R-11", A1, None, ["R-11" 1.0];
    R12 = "R-12", A1, None, ["R-12" 1.0];
    R13 = "R-13", A1, None, ["R-13" 1.0];
    R13I1 = "R-13I1", A1, None, ["R-13I1" 1.0];
    R14 = "R-14", A1, None, ["R-14" 1.0];
    R22 = "R-22", A1, None, ["R-22" 1.0];
    R23 = "R-23", A1, None, ["R-23" 1.0];
    R32 = "R-32", A2L, Some(0.307), ["R-32" 1.0];
    R41 = "R-41", Unclassified, None, ["R-41" 1.0];
    R113 = "R-113", A1, None, ["R-113" 1.0];
    R114 = "R-114", A1, None, ["R-114" 1.0];
    R115 = "R-115", A1, None, ["R-115" 1.0];
    R116 = "R-116", A1, None, ["R-116" 1.0];
    R123 = "R-123", B1, None, ["R-123" 1.0];
    R124 = "R-124", A1, None, ["R-124" 1.0];
    R125 = "R-125", A1, None, ["R-125" 1.0];
    R134A = "R-134a", A1, None, ["R-134a" 1.0];
    R141B = "R-141b", Unclassified, None, ["R-141b" 1.0];
    R142B = "R-142b", A2, Some(0.329), ["R-142b" 1.0];
    R143A = "R-143a", A2L, Some(0.282), ["R-143a" 1.0];
    R152A = "R-152a", A2, Some(0.13), ["R-152a" 1.0];
    R161 = "R-161", Unclassified, Some(0.075), ["R-161" 1.0];
    R170 = "R-170", A3, Some(0.038), ["R-170" 1.0];
    R218 = "R-218", A1, None, ["R-218" 1.0];
    R227EA = "R-227ea", A1, None, ["R-227ea" 1.0];
    R236FA = "R-236fa", A1, None, ["R-236fa" 1.0];
    R245FA = "R-245fa", B1, None, ["R-245fa" 1.0];
    R290 = "R-290", A3, Some(0.038), ["R-290" 1.0];
    RC318 = "R-C318", A1, None, ["R-C318" 1.0];
    R401A = "R-401A", A1, None, ["R-22" 0.53, "R-152a" 0.13, "R-124" 0.34] estimated 1.9;
    R402A = "R-402A", A1, None, ["R-125" 0.6, "R-290" 0.02, "R-22" 0.38] estimated 0.5;
    R402B = "R-402B", A1, None, ["R-125" 0.38, "R-290" 0.02, "R-22" 0.6] estimated 0.5;
    R403B = "R-403B", A1, None, ["R-290" 0.05, "R-22" 0.56, "R-218" 0.39] estimated 2.0;
    R404A = "R-404A", A1, None, ["R-125" 0.44, "R-143a" 0.52, "R-134a" 0.04];
    R407A = "R-407A", A1, None, ["R-32" 0.2, "R-125" 0.4, "R-134a" 0.4];
    R407B = "R-407B", A1, None, ["R-32" 0.1, "R-125" 0.7, "R-134a" 0.2];
    R407C = "R-407C", A1, None, ["R-32" 0.23, "R-125" 0.25, "R-134a" 0.52];
    R407D = "R-407D", A1, None, ["R-32" 0.15, "R-125" 0.15, "R-134a" 0.7];
    R407E = "R-407E", A1, None, ["R-32" 0.25, "R-125" 0.15, "R-134a" 0.6];
    R407F = "R-407F", A1, None, ["R-32" 0.3, "R-125" 0.3, "R-134a" 0.4];
    R407G = "R-407G", A1, None, ["R-32" 0.025, "R-125" 0.025, "R-134a" 0.95];
    R407H = "R-407H", A1, None, ["R-32" 0.325, "R-125" 0.15, "R-134a" 0.525];
    R407I = "R-407I", A1, None, ["R-32" 0.195, "R-125" 0.085, "R-134a" 0.72];
    R408A = "R-408A", A1, None, ["R-125" 0.07, "R-143a" 0.46, "R-22" 0.47] estimated 1.3;
    R409A = "R-409A", A1, None, ["R-22" 0.6, "R-124" 0.25, "R-142b" 0.15] estimated 1.9;
    R410A = "R-410A", A1, None, ["R-32" 0.5, "R-125" 0.5];
    R410B = "R-410B", A1, None, ["R-32" 0.45, "R-125" 0.55];
    R411A = "R-411A", A2, Some(0.186), ["R-1270" 0.015, "R-22" 0.875, "R-152a" 0.11];
    R411B = "R-411B", A2, Some(0.239), ["R-1270" 0.03, "R-22" 0.94, "R-152a" 0.03];
    R414B = "R-414B", A1, None, ["R-22" 0.5, "R-124" 0.39, "R-600a" 0.015, "R-142b" 0.095] estimated 1.8;
    R415A = "R-415A", A2, Some(0.188), ["R-22" 0.82, "R-152a" 0.18];
    R415B = "R-415B", A2, None, ["R-22" 0.25, "R-152a" 0.75];
    R416A = "R-416A", A1, None, ["R-134a" 0.59, "R-124" 0.395, "R-600" 0.015] estimated 0.8;
    R417A = "R-417A", A1, None, ["R-125" 0.466, "R-134a" 0.5, "R-600" 0.034];
    R417B = "R-417B", A1, None, ["R-125" 0.79, "R-134a" 0.183, "R-600" 0.027];
    R417C = "R-417C", A1, None, ["R-125" 0.195, "R-134a" 0.788, "R-600" 0.017];
    R418A = "R-418A", A2, Some(0.31), ["R-290" 0.015, "R-22" 0.96, "R-152a" 0.025];
    R420A = "R-420A", A1, None, ["R-134a" 0.88, "R-142b" 0.12];
    R421A = "R-421A", A1, None, ["R-125" 0.58, "R-134a" 0.42];
    R421B = "R-421B", A1, None, ["R-125" 0.85, "R-134a" 0.15];
    R422A = "R-422A", A1, None, ["R-125" 0.851, "R-134a" 0.115, "R-600a" 0.034];
    R422B = "R-422B", A1, None, ["R-125" 0.55, "R-134a" 0.42, "R-600a" 0.03];
    R422C = "R-422C", A1, None, ["R-125" 0.82, "R-134a" 0.15, "R-600a" 0.03];
    R422D = "R-422D", A1, None, ["R-125" 0.651, "R-134a" 0.315, "R-600a" 0.034];
    R422E = "R-422E", A1, None, ["R-125" 0.58, "R-134a" 0.393, "R-600a" 0.027];
    R423A = "R-423A", A1, None, ["R-134a" 0.525, "R-227ea" 0.475];
    R424A = "R-424A", A1, None, ["R-125" 0.505, "R-134a" 0.47, "R-600a" 0.009, "R-600" 0.01, "R-601a" 0.006] estimated 1.8;
    R425A = "R-425A", A1, None, ["R-32" 0.185, "R-134a" 0.695, "R-227ea" 0.12];
    R427A = "R-427A", A1, None, ["R-32" 0.15, "R-125" 0.25, "R-143a" 0.1, "R-134a" 0.5];
    R427C = "R-427C", A1, None, ["R-32" 0.25, "R-125" 0.25, "R-143a" 0.1, "R-134a" 0.4];
    R428A = "R-428A", A1, None, ["R-125" 0.775, "R-143a" 0.2, "R-290" 0.006, "R-600a" 0.019];
    R430A = "R-430A", A3, Some(0.084), ["R-152a" 0.76, "R-600a" 0.24];
    R431A = "R-431A", A3, Some(0.044), ["R-290" 0.71, "R-152a" 0.29];
    R433A = "R-433A", A3, Some(0.036), ["R-1270" 0.3, "R-290" 0.7];
    R433B = "R-433B", A3, None, ["R-1270" 0.05, "R-290" 0.95];
    R433C = "R-433C", A3, None, ["R-1270" 0.25, "R-290" 0.75];
    R434A = "R-434A", A1, None, ["R-125" 0.632, "R-143a" 0.18, "R-134a" 0.16, "R-600a" 0.028];
    R436A = "R-436A", A3, Some(0.032), ["R-290" 0.56, "R-600a" 0.44];
    R436B = "R-436B", A3, Some(0.033), ["R-290" 0.52, "R-600a" 0.48];
    R436C = "R-436C", A3, None, ["R-290" 0.95, "R-600a" 0.05];
    R437A = "R-437A", A1, None, ["R-125" 0.195, "R-134a" 0.785, "R-600" 0.014, "R-601" 0.006] estimated 1.0;
    R438A = "R-438A", A1, None, ["R-32" 0.085, "R-125" 0.45, "R-134a" 0.442, "R-600" 0.017, "R-601a" 0.006] estimated 0.9;
    R439A = "R-439A", A2, Some(0.304), ["R-32" 0.5, "R-125" 0.47, "R-600a" 0.03];
    R440A = "R-440A", A2, Some(0.124), ["R-290" 0.006, "R-134a" 0.016, "R-152a" 0.978];
    R441A = "R-441A", A3, Some(0.032), ["R-170" 0.031, "R-290" 0.548, "R-600a" 0.06, "R-600" 0.361];
    R442A = "R-442A", A1, None, ["R-32" 0.31, "R-125" 0.31, "R-134a" 0.3, "R-152a" 0.03, "R-227ea" 0.05];
    R443A = "R-443A", A3, Some(0.035), ["R-1270" 0.55, "R-290" 0.4, "R-600a" 0.05];
    R444A = "R-444A", A2L, Some(0.324), ["R-32" 0.12, "R-152a" 0.05, "R-1234ze(E)" 0.83];
    R444B = "R-444B", A2L, None, ["R-32" 0.415, "R-152a" 0.1, "R-1234ze(E)" 0.485];
    R445A = "R-445A", A2L, None, ["R-744" 0.06, "R-134a" 0.09, "R-1234ze(E)" 0.85];
    R447A = "R-447A", A2L, Some(0.303), ["R-32" 0.68, "R-125" 0.035, "R-1234ze(E)" 0.285];
    R447B = "R-447B", A2L, None, ["R-32" 0.68, "R-125" 0.08, "R-1234ze(E)" 0.24];
    R448A = "R-448A", A1, None, ["R-32" 0.26, "R-125" 0.26, "R-1234yf" 0.2, "R-134a" 0.21, "R-1234ze(E)" 0.07];
    R448B = "R-448B", A1, None, ["R-32" 0.21, "R-125" 0.21, "R-1234yf" 0.2, "R-134a" 0.31, "R-1234ze(E)" 0.07];
    R449A = "R-449A", A1, None, ["R-32" 0.243, "R-125" 0.247, "R-1234yf" 0.253, "R-134a" 0.257];
    R449B = "R-449B", A1, None, ["R-32" 0.252, "R-125" 0.243, "R-1234yf" 0.232, "R-134a" 0.273];
    R449C = "R-449C", A1, None, ["R-32" 0.2, "R-125" 0.2, "R-1234yf" 0.31, "R-134a" 0.29];
    R450A = "R-450A", A1, None, ["R-134a" 0.42, "R-1234ze(E)" 0.58];
    R451A = "R-451A", A2L, None, ["R-1234yf" 0.898, "R-134a" 0.102];
    R451B = "R-451B", A2L, None, ["R-1234yf" 0.888, "R-134a" 0.112];
    R452A = "R-452A", A1, None, ["R-32" 0.11, "R-125" 0.59, "R-1234yf" 0.3];
    R452B = "R-452B", A2L, Some(0.31), ["R-32" 0.67, "R-125" 0.07, "R-1234yf" 0.26];
    R452C = "R-452C", A1, None, ["R-32" 0.125, "R-125" 0.61, "R-1234yf" 0.265];
    R453A = "R-453A", A1, None, ["R-32" 0.2, "R-125" 0.2, "R-134a" 0.538, "R-227ea" 0.05, "R-600" 0.006, "R-601a" 0.006] estimated 0.5;
    R454A = "R-454A", A2L, Some(0.278), ["R-32" 0.35, "R-1234yf" 0.65];
    R454B = "R-454B", A2L, Some(0.297), ["R-32" 0.689, "R-1234yf" 0.311];
    R454C = "R-454C", A2L, Some(0.293), ["R-32" 0.215, "R-1234yf" 0.785];
    R455A = "R-455A", A2L, Some(0.431), ["R-744" 0.03, "R-32" 0.215, "R-1234yf" 0.755];
    R456A = "R-456A", A1, None, ["R-32" 0.06, "R-134a" 0.45, "R-1234ze(E)" 0.49];
    R457A = "R-457A", A2L, Some(0.216), ["R-32" 0.18, "R-1234yf" 0.7, "R-152a" 0.12];
    R457B = "R-457B", A2L, None, ["R-32" 0.35, "R-1234yf" 0.55, "R-152a" 0.1];
    R457C = "R-457C", A2L, None, ["R-32" 0.075, "R-1234yf" 0.78, "R-152a" 0.145];
    R458A = "R-458A", A1, None, ["R-32" 0.205, "R-125" 0.04, "R-134a" 0.614, "R-227ea" 0.135, "R-236fa" 0.006] estimated 0.5;
    R459A = "R-459A", A2L, None, ["R-32" 0.68, "R-1234yf" 0.26, "R-1234ze(E)" 0.06];
    R459B = "R-459B", A2L, None, ["R-32" 0.21, "R-1234yf" 0.69, "R-1234ze(E)" 0.1];
    R460A = "R-460A", A1, None, ["R-32" 0.12, "R-125" 0.52, "R-134a" 0.14, "R-1234ze(E)" 0.22];
    R460B = "R-460B", A1, None, ["R-32" 0.28, "R-125" 0.25, "R-134a" 0.2, "R-1234ze(E)" 0.27];
    R460C = "R-460C", A1, None, ["R-32" 0.025, "R-125" 0.025, "R-134a" 0.46, "R-1234ze(E)" 0.49];
    R462A = "R-462A", A2, None, ["R-32" 0.09, "R-125" 0.42, "R-143a" 0.02, "R-134a" 0.44, "R-600" 0.03];
    R463A = "R-463A", A1, None, ["R-744" 0.06, "R-32" 0.36, "R-125" 0.3, "R-1234yf" 0.14, "R-134a" 0.14];
    R464A = "R-464A", A1, None, ["R-32" 0.27, "R-125" 0.27, "R-1234ze(E)" 0.4, "R-227ea" 0.06];
    R465A = "R-465A", A2, None, ["R-32" 0.21, "R-290" 0.079, "R-1234yf" 0.711];
    R466A = "R-466A", A1, None, ["R-32" 0.49, "R-125" 0.115, "R-13I1" 0.395];
    R467A = "R-467A", A2L, None, ["R-32" 0.22, "R-125" 0.05, "R-134a" 0.724, "R-600a" 0.006];
    R469A = "R-469A", A1, None, ["R-744" 0.35, "R-32" 0.325, "R-125" 0.325];
    R470A = "R-470A", A1, None, ["R-744" 0.1, "R-32" 0.17, "R-125" 0.19, "R-134a" 0.07, "R-1234ze(E)" 0.44, "R-227ea" 0.03];
    R470B = "R-470B", A1, None, ["R-744" 0.1, "R-32" 0.115, "R-125" 0.115, "R-134a" 0.03, "R-1234ze(E)" 0.57, "R-227ea" 0.07];
    R471A = "R-471A", A1, None, ["R-1234ze(E)" 0.787, "R-227ea" 0.043, "R-1336mzz(E)" 0.17];
    R472A = "R-472A", A1, None, ["R-744" 0.69, "R-32" 0.12, "R-134a" 0.19];
    R472B = "R-472B", A1, None, ["R-744" 0.58, "R-32" 0.1, "R-134a" 0.32];
    R475A = "R-475A", A1, None, ["R-1234yf" 0.45, "R-134a" 0.43, "R-1234ze(E)" 0.12];
    R476A = "R-476A", A1, None, ["R-134a" 0.1, "R-1234ze(E)" 0.78, "R-1336mzz(E)" 0.12];
    R500 = "R-500", A1, None, ["R-12" 0.738, "R-152a" 0.262];
    R502 = "R-502", A1, None, ["R-22" 0.488, "R-115" 0.512];
    R507A = "R-507A", A1, None, ["R-125" 0.5, "R-143a" 0.5];
    R513A = "R-513A", A1, None, ["R-1234yf" 0.56, "R-134a" 0.44];
    R513B = "R-513B", A1, None, ["R-1234yf" 0.585, "R-134a" 0.415];
    R515A = "R-515A", A1, None, ["R-1234ze(E)" 0.88, "R-227ea" 0.12];
    R515B = "R-515B", A1, None, ["R-1234ze(E)" 0.911, "R-227ea" 0.089];
    R516A = "R-516A", A2L, None, ["R-1234yf" 0.775, "R-134a" 0.085, "R-152a" 0.14];
    R600 = "R-600", A3, Some(0.038), ["R-600" 1.0];
    R600A = "R-600a", A3, Some(0.043), ["R-600a" 1.0];
    R601 = "R-601", A3, Some(0.035), ["R-601" 1.0];
    R601A = "R-601a", A3, Some(0.038), ["R-601a" 1.0];
    R717 = "R-717", B2L, Some(0.116), ["R-717" 1.0];
    R728 = "R-728", A1, None, ["R-728" 1.0];
    R744 = "R-744", A1, None, ["R-744" 1.0];
    R1224YDZ = "R-1224yd(Z)", A1, None, ["R-1224yd(Z)" 1.0];
    R1233ZDE = "R-1233zd(E)", A1, None, ["R-1233zd(E)" 1.0];
    R1234YF = "R-1234yf", A2L, Some(0.289), ["R-1234yf" 1.0];
    R1234ZEE = "R-1234ze(E)", A2L, Some(0.303), ["R-1234ze(E)" 1.0];
    R1234ZEZ = "R-1234ze(Z)", Unclassified, None, ["R-1234ze(Z)" 1.0];
    R1243ZF = "R-1243zf", Unclassified, None, ["R-1243zf" 1.0];
    R1270 = "R-1270", A3, Some(0.046), ["R-1270" 1.0];
    R1336MZZE = "R-1336mzz(E)", A1, None, ["R-1336mzz(E)" 1.0];
    R1336MZZZ = "R-1336mzz(Z)", A1, None, ["R-1336mzz(Z)" 1.0];
    RE170 = "R-E170", A3, Some(0.064), ["R-E170" 1.0];
}
