//! The answer to a reading. Fixed size, no heap; every choice has a number for C and a name for files.

use super::amount::ChargeAmount;
use super::cause::{Conclusion, Hypotheses};
use super::feature::Features;
use super::precondition::Preconditions;
use crate::charge::ProtocolVerdict;
use crate::charge::answers::answers;
use crate::reading::Field;

answers! {
    /// What the evidence says of the charge.
    Charge {
        /// Less refrigerant than the unit needs.
        Low = 1 "low" "The charge is low.";
        /// The right amount, within the band of the test.
        Correct = 2 "correct" "The charge is correct.";
        /// More refrigerant than the unit needs.
        High = 3 "high" "The charge is high.";
        /// The evidence does not allow a judgement; the finding's reason says why.
        NotJudged = 4 "not-judged" "The charge cannot be judged from this reading.";
    }
}

answers! {
    /// How firmly [`Charge`] stands.
    ChargeStatus {
        /// Settled, airflow known, and clear of the band by one standard uncertainty.
        Confirmed = 1 "confirmed" "Settled unit, known airflow, and clear of the band by one standard uncertainty.";
        /// Something that could overturn it is not known; see the finding's missing fields and next check.
        Provisional = 2 "provisional" "Something that could overturn this is not known yet.";
    }
}

answers! {
    /// Why the charge was judged as it was, or not at all.
    Reason {
        /// Superheat against its target (fixed orifice).
        JudgedBySuperheat = 1 "judged-by-superheat"
            "A fixed orifice is judged by its superheat against the target for today's air.";
        /// Subcooling against the maker's target (valve).
        JudgedBySubcooling = 2 "judged-by-subcooling"
            "A valve system is judged by its subcooling against the maker's figure.";
        /// Subcooling from the discharge pressure, because no liquid pressure was taken.
        JudgedByDischargePressure = 3 "judged-by-discharge-pressure"
            "No liquid pressure was taken, so subcooling comes from the discharge pressure and is less certain: on a tested unit it read 1.4 to 2.5 °F high.";
        /// A measurement that the judgement needs is missing.
        MissingMeasurement = 4 "missing-measurement" "A measurement that this judgement needs is missing.";
        /// Heating: neither superheat nor subcooling has a target.
        HeatingMode = 5 "heating-mode" "In heating there is no superheat or subcooling target to judge by.";
        /// A staged or variable compressor that was not held in its maker's charging mode.
        NotInChargingMode = 6 "not-in-charging-mode"
            "A two-stage or variable compressor was not held in its maker's charging mode.";
        /// Less than fifteen minutes since start or the last change.
        NotSettled = 7 "not-settled" "The unit has not run fifteen minutes since it was started or changed.";
        /// Too cold outdoors for either test.
        OutdoorTooCold = 8 "outdoor-too-cold" "Below 55 °F outdoors neither superheat nor subcooling tells the charge.";
        /// The metering device is in the outdoor unit: the small line is two-phase.
        MeteringOutdoors = 9 "metering-outdoors"
            "The metering device is in the outdoor unit, so the small line carries a boiling mixture and shows no subcooling.";
        /// Suction pressure at or above the high-side pressure.
        PressuresContradict = 10 "pressures-contradict"
            "The pressures contradict each other: the suction pressure is not below the high side, or the liquid pressure is above the discharge. The compressor is not pumping, or hoses or fields are swapped.";
        /// Wet bulb above dry bulb, or supply air not colder than return air.
        AirTemperaturesContradict = 11 "air-temperatures-contradict"
            "The air temperatures contradict each other: a wet bulb is above its dry bulb, or the supply air is not colder than the return air.";
        /// A line temperature that its pressure does not allow.
        LineTemperatureContradicts = 12 "line-temperature-contradicts"
            "A line temperature does not fit its pressure or the outdoor air: probe contact, gauge zero, or the wrong refrigerant.";
        /// A pressure at which this refrigerant has no saturated state in the tables.
        PressureOutsideCurve = 13 "pressure-outside-curve"
            "A pressure lies outside this refrigerant's saturation range: wrong refrigerant, wrong unit of pressure, or gauge taken for absolute.";
        /// Airflow over the indoor coil comes first: it hides a charge fault.
        AirflowFirst = 14 "airflow-first"
            "The indoor coil gets too little air for a charge test: low airflow can hide a low charge.";
        /// Low superheat with unknown airflow: low airflow looks the same as too much charge.
        AirflowUnknown = 15 "airflow-unknown"
            "The superheat is low, and without the airflow too little air and too much charge look the same.";
        /// The outdoor coil rejects its heat badly: its air comes first.
        CondenserAirFirst = 16 "condenser-air-first"
            "The condensing temperature stands too high over the outdoor air: a blocked outdoor coil can imitate a charge fault.";
        /// The coil is at or below freezing.
        CoilFreezing = 17 "coil-freezing"
            "The evaporating temperature is at freezing: too little air does that, and so does too little refrigerant; ice on the coil spoils every charge test.";
        /// High superheat with high subcooling: refrigerant is held back before the coil.
        RestrictionSuspected = 18 "restriction-suspected"
            "The coil is starved while liquid is stacked up in front of it: a restriction or a valve that does not open, rather than the charge.";
        /// A valve that lets too much through: low superheat.
        MeteringOverfeeds = 19 "metering-overfeeds"
            "The superheat is below what a valve holds, so the valve is not in control and subcooling does not tell the charge.";
        /// Superheat and subcooling point in different directions.
        SignsConflict = 20 "signs-conflict"
            "Low superheat together with low subcooling is not what too much charge does: think of the compressor or the metering device.";
        /// At saturation: the deviation is one-sided, so "correct" cannot be said.
        AtSaturation = 21 "at-saturation"
            "The line cannot be told from saturation, so the true amount is unknown.";
        /// The protocol's table has no target at these conditions.
        NoTarget = 22 "no-target" "There is no target superheat for this air: the table is blank here.";
        /// The discharge pressure is too loose a substitute to decide.
        LiquidPressureNeeded = 23 "liquid-pressure-needed"
            "The discharge pressure is too loose a stand-in for the liquid pressure to decide here.";
        /// The condensing temperature is below the outdoor air.
        CondensingBelowAmbient = 24 "condensing-below-ambient"
            "The condensing temperature comes out below the outdoor air, which a running unit cannot do: wrong refrigerant named, gauge or hose, or a stopped compressor.";
        /// Suction and high side at the same pressure.
        EqualPressures = 25 "equal-pressures"
            "Suction and high side stand at the same pressure: the compressor is not pumping, or both hoses are on one port.";
        /// A gauge that shows the pressure of the air.
        HoseNotSeated = 26 "hose-not-seated"
            "A gauge shows the pressure of the air around it: the hose is not seated, its valve is closed, or the circuit is empty.";
        /// The discharge stands far over the liquid port.
        ServiceValvePartClosed = 27 "service-valve-part-closed"
            "The discharge pressure stands far above the liquid pressure: a service valve that is not fully open, or hoses at other ports than named.";
        /// Pull-down, defrost, fan cycling or head-pressure control.
        OperationUnsteady = 28 "operation-unsteady"
            "The unit was pulling down, defrosting, cycling its outdoor fan or holding its head pressure: none of that is a test of the charge.";
        /// Unknown, mixed or shifted refrigerant.
        RefrigerantInDoubt = 29 "refrigerant-in-doubt"
            "The refrigerant is unknown, mixed, or has shifted by a leak of vapour: its pressures do not tell its temperatures. Recover it and charge afresh.";
        /// Other causes are likelier than the charge.
        OtherCauseLikelier = 30 "other-cause-likelier"
            "Another fault is likelier than the charge: find it first, for a charge corrected on top of it becomes a new fault.";
        /// Judged by weighing all features, without a target of its own.
        JudgedByEvidence = 31 "judged-by-evidence"
            "No target was given for this unit; all that was measured together tells the charge.";
        /// The explanations are too close.
        EvidenceTooClose = 32 "evidence-too-close"
            "The measurements fit more than one explanation too well to act on the charge.";
        /// The scale says there is enough in it.
        ChargeAlreadyWeighed = 33 "charge-already-weighed"
            "The charge that was weighed in is already what the unit should hold: adding more would be on top of another fault.";
        /// Suction below the pressure of the air.
        SuctionBelowAtmosphere = 34 "suction-below-atmosphere"
            "The suction pressure is below the pressure of the air around: a leak would draw air in. Stop and find out why before adding anything.";
        /// The discharge line is colder than condensing.
        DischargeLineContradicts = 35 "discharge-line-contradicts"
            "The discharge line is colder than the condensing temperature: the probe is not on the discharge line or does not touch it.";
        /// Return air too cold or too warm for a charge test.
        IndoorOutsideRange = 36 "indoor-outside-range"
            "The return air is outside 70 to 80 °F: the house is too cold for a charge test, or still being pulled down.";
    }
}

answers! {
    /// The measurement or action that would settle most.
    NextCheck {
        /// Nothing more is needed.
        None = 0 "none" "Nothing more is needed for this verdict.";
        /// Take the missing measurements.
        TakeMissing = 1 "take-missing" "Take the missing measurements and read again.";
        /// Let the unit settle, then read again.
        Settle = 2 "settle" "Let it run fifteen minutes without touching anything, then read again.";
        /// Compare the weighed charge with what the unit should hold.
        WeighCharge = 3 "weigh-charge"
            "Recover and weigh the charge, and compare it with the nameplate and the line set.";
        /// Check filter, blower, coil and registers.
        IndoorAirflow = 4 "indoor-airflow" "Check filter, blower, indoor coil and registers; then settle and read again.";
        /// Check outdoor coil and fan.
        CondenserAir = 5 "condenser-air"
            "Check the outdoor coil for dirt, its fan and whether its hot air comes back; then settle and read again.";
        /// Thaw the coil and find out why it froze.
        ThawCoil = 6 "thaw-coil"
            "Run the blower alone until the coil is clear, check the airflow, then start, settle and read again.";
        /// Check gauges, hoses and probes.
        CheckInstruments = 7 "check-instruments"
            "Check hoses, gauge zero, probe contact and insulation, and that each value stands in its own field.";
        /// Identify the refrigerant.
        IdentifyRefrigerant = 8 "identify-refrigerant" "Check the nameplate and identify the refrigerant in the unit.";
        /// Look for a temperature drop along the liquid line.
        LiquidLineDrop = 9 "liquid-line-drop"
            "Feel for a temperature drop along the liquid line: filter-drier, valves, strainer and metering device.";
        /// Check the metering device.
        MeteringDevice = 10 "metering-device"
            "Check the metering device: bulb contact and insulation, size, and whether it is stuck.";
        /// Put the compressor into its maker's charging mode.
        ChargingMode = 11 "charging-mode" "Put the unit into its maker's charging mode, settle and read again.";
        /// Measure airflow or the temperature split.
        MeasureAirflow = 12 "measure-airflow"
            "Measure return and supply dry bulb and return wet bulb, or the airflow, and read again.";
        /// Take the liquid side as well.
        MeasureLiquidSide = 13 "measure-liquid-side"
            "Take pressure and line temperature at the liquid port as well, to rule out a restriction.";
        /// Take the suction side as well.
        MeasureSuctionSide = 14 "measure-suction-side"
            "Take pressure and line temperature at the vapour port as well, to see whether the valve is in control.";
        /// Look for the leak.
        FindLeak = 15 "find-leak" "Refrigerant does not wear out: look for the leak before adding any.";
        /// Read once more for a firmer verdict.
        ReadAgain = 16 "read-again" "The result is near the edge of its band: read again with better probes or after a while.";
        /// Discharge line temperature.
        MeasureDischargeLine = 17 "measure-discharge-line"
            "Measure the temperature of the discharge line, a hand's breadth from the compressor.";
        /// Outdoor coil's leaving air.
        MeasureCondenserAir = 18 "measure-condenser-air"
            "Measure the air that leaves the outdoor coil, beside the air that enters it.";
        /// Compressor power.
        MeasurePower = 19 "measure-power" "Measure the compressor's power.";
        /// A two-phase surface of the outdoor coil.
        MeasureCoilSurface = 20 "measure-coil-surface"
            "Measure a return bend in the middle of the outdoor coil, insulated: a saturation temperature well above it means air or nitrogen inside.";
        /// The pressure of the standing unit.
        StandingPressure = 21 "standing-pressure"
            "Stop the unit, let everything come to one temperature, and compare the pressure with that of the refrigerant.";
        /// Supply wet bulb.
        MeasureSupplyWetBulb = 22 "measure-supply-wet-bulb" "Measure the supply wet bulb: with the airflow it gives the capacity.";
        /// Coil outlet.
        MeasureCoilOutlet = 23 "measure-coil-outlet" "Measure the temperature of the line that leaves the indoor coil.";
        /// Compressor test.
        CompressorTest = 24 "compressor-test"
            "Test the compressor: pump-down or the drop of its power and pressures; on a heat pump also the reversing valve's temperatures.";
    }
}

answers! {
    /// What to do about the charge.
    Advice {
        /// Leave the charge as it is.
        LeaveCharge = 1 "leave-charge" "Leave the charge as it is.";
        /// Do not touch the charge until the reason is dealt with.
        DoNotCharge = 2 "do-not-charge" "Do not add or remove refrigerant on this reading.";
        /// Add in small steps.
        AddInSteps = 3 "add-in-steps"
            "Once the leak is found, add at most 5 % of the nameplate charge at a time, and let it settle fifteen minutes after each.";
        /// Recover some.
        Recover = 4 "recover"
            "Recover refrigerant into a recovery cylinder, a little at a time, and let it settle fifteen minutes after each.";
        /// Weigh the charge in.
        WeighIn = 5 "weigh-in" "Weigh the charge in by the nameplate and the line set instead.";
    }
}

answers! {
    /// What can hurt. A finding carries a set of these.
    Caution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant and its records follow local codes and belong to licensed practice.";
        /// Always.
        Pressure = 2 "pressure" "The circuit is under pressure: gloves and eye protection, and purge hoses with care.";
        /// Always.
        Electricity = 3 "electricity" "Open panels expose live parts and capacitors that stay charged.";
        /// The refrigerant can burn.
        FlammableRefrigerant = 4 "flammable-refrigerant"
            "This refrigerant can burn: no ignition source, fresh air, a leak detector, and tools and cylinder rated for it.";
        /// The refrigerant is not known.
        UnknownRefrigerant = 5 "unknown-refrigerant"
            "The refrigerant is not known: treat it as flammable until it is identified.";
        /// The coil may freeze.
        Freezing = 6 "freezing" "The indoor coil is near or below freezing: ice, then liquid to the compressor.";
        /// Liquid may reach the compressor.
        Floodback = 7 "floodback" "Superheat cannot be told from zero: liquid may be reaching the compressor.";
        /// Removing means recovering.
        RecoverOnly = 8 "recover-only" "Removing always means recovering into a cylinder, filled to 80 % at most; never vent.";
        /// Adding goes in small steps.
        SmallSteps = 9 "small-steps" "If refrigerant is to be added: small weighed steps, fifteen minutes after each.";
        /// Blends leave the cylinder as liquid.
        LiquidFromCylinder = 10 "liquid-from-cylinder"
            "A blend leaves its cylinder as liquid, metered to vapour before it reaches a running compressor.";
        /// At saturation, the amount is unknown.
        AmountUnknown = 11 "amount-unknown"
            "A value at saturation is one-sided: it says at least how far off the charge is, not the amount.";
        /// A discharge pressure stood in for the liquid pressure.
        DischargePressureUsed = 12 "discharge-pressure-used"
            "A discharge pressure stood in for the liquid pressure: on a tested unit that read 1.4 to 2.5 °F too much subcooling.";
        /// The head pressure is high.
        HighHead = 13 "high-head" "The high side runs hot: do not add refrigerant, and watch for the pressure switch.";
        /// A leak of something that burns, indoors.
        FlammableLeak = 14 "flammable-leak"
            "If it may be leaking indoors: ventilate and remove every source of ignition before anything else.";
        /// Liquid floods the compressor.
        FloodedCompressor = 15 "flooded-compressor"
            "Too much refrigerant, or liquid coming back, washes out the compressor's oil and breaks it: do not leave it running so.";
        /// A sweating shell proves nothing.
        SweatingShell = 16 "sweating-shell"
            "A sweating compressor shell alone proves nothing on a humid day: the sump over the dew temperature, or the discharge superheat, does.";
        /// The discharge line is too hot.
        HotDischarge = 17 "hot-discharge"
            "The discharge line is hotter than about 225 °F (common practice; the maker's figure rules): oil and valves suffer.";
        /// A leak would draw in air.
        SuctionBelowAtmosphere = 18 "suction-below-atmosphere"
            "The suction side is below the pressure of the air: a leak there draws air in.";
    }
}

answers! {
    /// Whether a value stands on both sides.
    ValueBound {
        /// The value is what it is, give or take its uncertainty.
        Exact = 1 "exact" "Two-sided.";
        /// Saturation was reached at the probe: the departure from the target is at least what is shown.
        AtLeast = 2 "at-least" "One-sided: at least this far off, by an unknown amount.";
    }
}

answers! {
    /// What a missing field is needed for.
    NeededFor {
        /// Without it the charge cannot be judged.
        Verdict = 1 "verdict" "to judge the charge";
        /// Without it the verdict stays provisional.
        Confirmation = 2 "confirmation" "to confirm the verdict";
        /// Without it the protocol has no valid test.
        Protocol = 3 "protocol" "for the protocol's test";
    }
}

/// A value of a finding, in the SI unit of its name.
///
/// Standard uncertainties come from the limits of error of the instruments, each divided by √3 and combined by
/// root-sum-square. Where a reading does not state an accuracy, the limits that the 2013 edition of California Title
/// 24, appendix RA3.2, asks of instruments are taken (from memory): suction ±3.5 psi, liquid ±7 psi, thermometers
/// ±(0.1 % of the Fahrenheit value + 1.3 °F).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Value {
    /// The value.
    pub value: f64,
    /// One standard uncertainty of the value.
    pub standard_uncertainty: f64,
    /// What a standard, a table or the maker asks for.
    pub target: Option<f64>,
    /// Value minus target.
    pub deviation: Option<f64>,
    /// One standard uncertainty of the deviation: a target read from a table carries the error of the air temperatures.
    pub deviation_uncertainty: Option<f64>,
    /// Whether the value is one-sided.
    pub bound: ValueBound,
}

macro_rules! values {
    ($($(#[$doc:meta])* $variant:ident $field:ident = $number:literal $name:literal $title:literal;)*) => {
        /// Everything computed from the reading. A value that its fields do not allow is `None`.
        #[derive(Debug, Clone, Copy, Default, PartialEq)]
        #[non_exhaustive]
        pub struct Values { $($(#[$doc])* pub $field: Option<Value>,)* }

        /// The name of a value.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[non_exhaustive]
        #[repr(i32)]
        pub enum ValueName { $($(#[$doc])* $variant = $number),* }

        /// How many values there are.
        pub const VALUE_COUNT: usize = [$($number),*].len();

        impl ValueName {
            /// Every name, in the order of their numbers.
            pub const ALL: &[Self] = &[$(Self::$variant),*];

            /// The fixed number that the C interface uses: the index of the value.
            #[must_use]
            pub const fn number(self) -> i32 {
                self as i32
            }

            /// The name with its unit, as used in files and in every language.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $name),* }
            }

            /// The name in plain words, without unit.
            #[must_use]
            pub const fn title(self) -> &'static str {
                match self { $(Self::$variant => $title),* }
            }
        }

        impl Values {
            /// The value of that name, if it could be computed.
            #[must_use]
            pub const fn get(&self, name: ValueName) -> Option<Value> {
                match name { $(ValueName::$variant => self.$field),* }
            }
        }
    };
}

values! {
    /// Superheat at the vapour port of the outdoor unit, K: line temperature minus dew temperature.
    Superheat superheat = 0 "superheat_k" "superheat";
    /// Subcooling at the liquid port of the outdoor unit, K: bubble temperature minus line temperature.
    Subcooling subcooling = 1 "subcooling_k" "subcooling";
    /// Target superheat, K: the maker's, or the protocol's table.
    TargetSuperheat target_superheat = 2 "target_superheat_k" "target superheat";
    /// Temperature split, K: return minus supply dry bulb.
    TemperatureSplit temperature_split = 3 "temperature_split_k" "temperature split";
    /// Target temperature split of the protocol's table, K.
    TargetSplit target_split = 4 "target_split_k" "target split";
    /// Dew temperature at the suction pressure, K: where the indoor coil evaporates, or a little below.
    DewTemperature dew_temperature = 5 "dew_temperature_k" "evaporating (dew) temperature";
    /// Bubble temperature at the liquid pressure (or, said so by a caution, the discharge pressure), K.
    BubbleTemperature bubble_temperature = 6 "bubble_temperature_k" "condensing (bubble) temperature";
    /// Bubble temperature minus outdoor dry bulb, K.
    CondensingOverAmbient condensing_over_ambient = 7 "condensing_over_ambient_k" "condensing over outdoor air";
    /// Approach, K: liquid line temperature minus outdoor dry bulb.
    Approach approach = 8 "approach_k" "liquid line over outdoor air";
    /// Airflow over the indoor coil for each watt of nominal capacity, m³/(s·W).
    AirflowPerCapacity airflow_per_capacity = 9 "airflow_per_capacity_m3_s_w" "airflow for the capacity";
    /// Discharge superheat, K: discharge line temperature minus dew temperature at the discharge (or liquid) pressure.
    DischargeSuperheat discharge_superheat = 10 "discharge_superheat_k" "discharge superheat";
    /// Sump over dew temperature at the suction pressure, K.
    SumpOverDew sump_over_dew = 11 "sump_over_dew_k" "sump over evaporating temperature";
}

/// A field of a reading, numeric or not.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FieldName {
    /// The refrigerant.
    Refrigerant,
    /// The metering device.
    Metering,
    /// A numeric field.
    Numeric(Field),
}

impl FieldName {
    /// The fixed number: that of the numeric [`Field`], or 100 for the refrigerant, 101 for the metering device.
    #[must_use]
    pub const fn number(self) -> i32 {
        match self {
            Self::Refrigerant => 100,
            Self::Metering => 101,
            Self::Numeric(field) => field as i32,
        }
    }

    /// The name with its unit, as used in files and in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Refrigerant => "refrigerant",
            Self::Metering => "metering",
            Self::Numeric(field) => field.name(),
        }
    }
}

/// A field that the reading does not have, and what for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MissingField {
    /// The field.
    pub field: FieldName,
    /// What it is needed for.
    pub needed_for: NeededFor,
}

/// Most missing fields that a finding names.
pub const MISSING_MAX: usize = 16;

/// The missing fields of a finding, most needed first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Missing {
    items: [Option<MissingField>; MISSING_MAX],
}

impl Missing {
    pub(crate) const NONE: Self = Self { items: [None; MISSING_MAX] };

    /// The missing fields, most needed first.
    pub fn iter(&self) -> impl Iterator<Item = MissingField> + '_ {
        NeededFor::ALL.iter().flat_map(|purpose| {
            self.items.iter().copied().flatten().filter(move |missing| missing.needed_for == *purpose)
        })
    }

    /// Whether that field is missing for that purpose.
    #[must_use]
    pub fn contains(&self, field: FieldName, needed_for: NeededFor) -> bool {
        self.iter().any(|missing| missing.field == field && missing.needed_for == needed_for)
    }

    /// Adds a field, once, for its most pressing purpose.
    pub(crate) fn add(&mut self, field: FieldName, needed_for: NeededFor) {
        for place in &mut self.items {
            match place {
                Some(known) if known.field == field => {
                    if needed_for.number() < known.needed_for.number() {
                        known.needed_for = needed_for;
                    }
                    return;
                }
                Some(_) => {}
                None => {
                    *place = Some(MissingField { field, needed_for });
                    return;
                }
            }
        }
    }
}

/// The cautions of a finding.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Cautions {
    bits: u32,
}

impl Cautions {
    pub(crate) const NONE: Self = Self { bits: 0 };

    pub(crate) fn add(&mut self, caution: Caution) {
        self.bits |= 1_u32.wrapping_shl(caution as u32);
    }

    /// Whether the caution is given.
    #[must_use]
    pub const fn contains(&self, caution: Caution) -> bool {
        self.bits & 1_u32.wrapping_shl(caution as u32) != 0
    }

    /// The cautions, in the order of their numbers.
    pub fn iter(&self) -> impl Iterator<Item = Caution> + '_ {
        Caution::ALL.iter().copied().filter(|caution| self.contains(*caution))
    }

    /// As a bit set: bit `n` stands for the caution with number `n`.
    #[must_use]
    pub const fn bits(&self) -> u32 {
        self.bits
    }
}

/// The answer to a reading.
///
/// `hypotheses` weighs all causes together; `conclusion` says which of them the finding stands by, if any; `charge` says
/// what that, and the rules of the trade, allow to be said of the charge itself.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Finding {
    /// What the evidence says of the charge.
    pub charge: Charge,
    /// How firmly that stands; provisional whenever the charge is not judged.
    pub charge_status: ChargeStatus,
    /// Why.
    pub reason: Reason,
    /// The named protocol's own verdict, kept apart from the evidence.
    pub protocol: ProtocolVerdict,
    /// Everything computed, each value with its standard uncertainty.
    pub values: Values,
    /// What was not measured, and what for.
    pub missing: Missing,
    /// The measurement or action that would settle most.
    pub next_check: NextCheck,
    /// What to do about the charge.
    pub advice: Advice,
    /// What can hurt.
    pub cautions: Cautions,
    /// What must hold before a diagnosis, and whether it does.
    pub preconditions: Preconditions,
    /// What each feature was expected to be.
    pub features: Features,
    /// What may be wrong, most likely first.
    pub hypotheses: Hypotheses,
    /// What the finding stands by.
    pub conclusion: Conclusion,
    /// Whether what is most likely also fits: false means that no known fault explains the readings.
    pub fits: bool,
    /// How much to add or recover, where the charge is off by the evidence.
    pub amount: Option<ChargeAmount>,
}
