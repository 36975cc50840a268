//! What the safety answers are made of.

use crate::charge::answers::answers;

answers! {
    /// Where the part of a unit hangs from which refrigerant would come into the room.
    Installation {
        /// On the floor: 0.6 m.
        Floor = 1 "floor" "Standing on the floor: 0.6 m.";
        /// In a window: 1.0 m.
        Window = 2 "window" "In a window: 1.0 m.";
        /// On a wall: 1.8 m.
        Wall = 3 "wall" "On a wall: 1.8 m.";
        /// At the ceiling: 2.2 m.
        Ceiling = 4 "ceiling" "At the ceiling: 2.2 m.";
    }
}

answers! {
    /// Whether the room rule gives a limit.
    RoomOutcome {
        /// The charge formula applies.
        RoomLimit = 1 "room-limit" "The charge is limited by the size of the room.";
        /// So small a charge that the rule asks for no smallest room.
        NoRoomLimit = 2 "no-room-limit" "Up to this charge the clause asks for no smallest room; its other clauses still hold.";
        /// The rule does not apply; the reason says why.
        NotApplicable = 3 "not-applicable" "This room rule does not apply: take the rule that does from the local code.";
    }
}

answers! {
    /// Why.
    RoomReason {
        /// m1 < charge <= m2.
        WithinBand = 1 "within-band"
            "The charge lies above m1 and not above m2, where the formula for unventilated rooms applies.";
        /// Charge <= m1.
        BelowBand = 2 "below-band" "The charge does not exceed m1, up to which no room is too small by this clause.";
        /// m2 < charge <= m3.
        AboveBand = 3 "above-band"
            "The charge exceeds m2, where this formula does not apply: mechanical ventilation or another clause of the standard decides.";
        /// Charge > m3.
        AboveLargest = 4 "above-largest"
            "The charge exceeds m3: the standard does not allow it indoors; another standard for the machinery and its room decides.";
        /// The formula gives less than m1 for the room.
        RoomBelowBand = 5 "room-below-band"
            "In a room this small the formula gives less than m1, where it does not apply: this clause sets no limit up to m1 and allows nothing above it in this room.";
        /// The formula gives more than m2 for the room.
        RoomAboveBand = 6 "room-above-band"
            "The room would hold more than m2, where the formula does not apply: for a charge up to m2 it is large enough; above m2 mechanical ventilation or another clause decides.";
        /// Class 1.
        DoesNotBurn = 7 "does-not-burn"
            "This refrigerant is of class 1 and sets no fire limit: suffocation and toxicity limit its charge, by the concentration limit of the local code.";
        /// Class B.
        Toxic = 8 "toxic"
            "This refrigerant is of higher toxicity: its toxic concentration limits the charge long before fire does; take the limit from the local code.";
        /// No safety class.
        Unclassified = 9 "unclassified"
            "The safety class of this refrigerant is not known here: handle it as flammable and find its class first.";
        /// No lower flammability limit.
        LimitUnknown = 10 "limit-unknown"
            "This refrigerant burns, but its lower flammability limit is not known here: take it from ASHRAE 34 or the safety data sheet.";
        /// Mechanical ventilation.
        Ventilated = 11 "ventilated"
            "The room is ventilated mechanically, and this formula is for unventilated rooms: the ventilation clauses decide.";
    }
}

answers! {
    /// Where the rule stands.
    Clause {
        /// Nothing is read from a clause.
        None = 1 "none" "No clause is applied.";
        /// The formula.
        UnventilatedRoom = 2 "unventilated-room"
            "IEC 60335-2-40, annex GG, charge limit of unventilated rooms (GG.2), as widely quoted; clause number from memory.";
        /// m1.
        SmallCharge = 3 "small-charge"
            "IEC 60335-2-40, annex GG, charges up to m1 (GG.1); clause number and factors of m1, m2 and m3 from memory.";
    }
}

answers! {
    /// What a room limit takes for granted. Where one of these fails, so does the answer.
    Assumption {
        /// No ventilation.
        Unventilated = 1 "unventilated" "The room has no ventilation that counts, and its doors are shut.";
        /// The height.
        ReleaseHeight = 2 "release-height" "Refrigerant comes out at the stated height, not lower.";
        /// The whole charge.
        WholeCharge = 3 "whole-charge" "A single fault lets the whole charge of one circuit into this one room.";
        /// The flammability limit.
        FlammabilityLimit = 4 "flammability-limit"
            "The lower flammability limit is the one shown, from memory of ASHRAE 34 and ISO 817: compare it with the edition in force.";
        /// The factors.
        Bands = 5 "bands"
            "m1, m2 and m3 are 4, 26 and 130 cubic metres times that limit, for class 2L 6, 52 and 260: from memory.";
        /// The kind of unit.
        FixedUnit = 6 "fixed-unit" "The unit is fixed in place; portable units have rules of their own.";
        /// The edition.
        EditionsDiffer = 7 "editions-differ"
            "Editions and national versions differ, and later ones count leak detection and circulation: the local code and the unit's label decide.";
        /// A height above the table.
        HeightAboveTable = 8 "height-above-table"
            "The height exceeds 2.2 m, the greatest of the widely quoted table: use 2.2 m unless the edition in force takes the real height.";
        /// The ceiling of the concentration.
        CeilingHeight = 9 "ceiling-height"
            "The concentration is that of the charge spread evenly up to the height shown; near the leak and the floor it is higher.";
    }
}

answers! {
    /// What limits the filling.
    FillRule {
        /// 80 % of the volume at 77 °F.
        EightyPercent = 1 "eighty-percent"
            "80 % of the water capacity times the specific gravity at 77 °F (AHRI Guideline K).";
        /// Full at the highest temperature.
        LiquidFull = 2 "liquid-full"
            "The liquid would fill the cylinder at the stated highest temperature: less than the 80 % rule allows.";
    }
}

answers! {
    /// How a cylinder's contents compare with its limit.
    FillVerdict {
        /// Below the limit.
        RoomLeft = 1 "room-left" "There is room left: weigh while filling and stop at the limit.";
        /// Above the limit.
        Overfilled = 2 "overfilled"
            "The cylinder is overfilled: keep it cool, do not move it by car, and recover the excess into another cylinder.";
        /// No room for vapour any more.
        FullOfLiquid = 3 "full-of-liquid"
            "At its temperature the cylinder is full of liquid: any warming may burst it. Keep people away, keep it cool, and call for help.";
    }
}

answers! {
    /// Class of an appliance by the pressure of its refrigerant's liquid at 104 °F (40 CFR 82.152; limits from memory).
    ApplianceClass {
        /// Below 45 psia.
        LowPressure = 1 "low-pressure" "Low-pressure appliance: below 45 psia at 104 °F.";
        /// 45 to 170 psia.
        MediumPressure = 2 "medium-pressure" "Medium-pressure appliance: 45 to 170 psia at 104 °F.";
        /// 170 to 355 psia.
        HighPressure = 3 "high-pressure" "High-pressure appliance: 170 to 355 psia at 104 °F.";
        /// Above 355 psia, or a critical temperature below 104 °F.
        VeryHighPressure = 4 "very-high-pressure"
            "Very-high-pressure appliance: above 355 psia at 104 °F, or critical below 104 °F.";
    }
}

answers! {
    /// What to know beside a recovery level.
    RecoveryNote {
        /// Always.
        ReadTheRule = 1 "read-the-rule"
            "Read 40 CFR 82.156 itself: it has exceptions and is amended, and state or local law may be stricter. Recovery is for certified technicians with certified equipment.";
        /// Always.
        EquipmentDate = 2 "equipment-date" "For recovery equipment made on or after 15 November 1993; older equipment has other levels.";
        /// Exception.
        LeakingAppliance = 3 "leaking-appliance"
            "Where a leak would draw in air or makes the level unattainable, the rule has another level: isolate what leaks from what does not.";
        /// Exception.
        SmallAppliance = 4 "small-appliance"
            "Small factory-sealed appliances have a rule of their own, by the share of the charge recovered.";
        /// Exception.
        NonMajorRepair = 5 "non-major-repair"
            "A repair that is not major and not followed by evacuating the appliance to the air has a level of its own.";
        /// Exception.
        Vehicle = 6 "vehicle" "Vehicle air conditioners come under another part of the rules.";
        /// Near a class boundary.
        NearClassBoundary = 7 "near-class-boundary"
            "The pressure at 104 °F lies within 2 % of a class boundary: the rule's own list of refrigerants decides.";
        /// Possibly exempt.
        PossiblyExempt = 8 "possibly-exempt"
            "Some uses of this refrigerant are exempt from the rule; fire, suffocation and local law are not.";
        /// Away from sea level.
        NotSeaLevel = 9 "not-sea-level"
            "The level counts from the standard atmosphere: use the absolute pressure, or the gauge value shown for this ambient pressure.";
    }
}

answers! {
    /// What is being done.
    Situation {
        /// Adding refrigerant.
        Charging = 1 "charging" "Adding refrigerant.";
        /// Recovering refrigerant.
        Recovering = 2 "recovering" "Recovering refrigerant into a cylinder.";
        /// Testing with nitrogen.
        PressureTest = 3 "pressure-test" "Testing for tightness under pressure.";
        /// Opening, cutting, brazing.
        OpeningCircuit = 4 "opening-circuit" "Opening, cutting or brazing the circuit.";
        /// Searching for a leak.
        LeakSearch = 5 "leak-search" "Searching for a leak.";
        /// Storing, moving, warming a cylinder.
        Cylinder = 6 "cylinder" "Storing, carrying or warming a cylinder.";
        /// Measuring on a running unit.
        Measuring = 7 "measuring" "Measuring on a running unit.";
    }
}

answers! {
    /// What can hurt. Numbers start above those of the cautions of a finding, so that neither is taken for the other.
    Caution {
        /// Class 3 or 2.
        Flammable = 101 "flammable"
            "This refrigerant burns and explodes: no flame, spark, switch or hot work near it, fresh air, a detector for it, and tools, pump and cylinder rated for it.";
        /// Class 2L.
        MildlyFlammable = 102 "mildly-flammable"
            "This refrigerant burns: no flame or hot surface near it, fresh air, a detector for it, and tools, pump and cylinder rated for class 2L.";
        /// Class B.
        Toxic = 103 "toxic"
            "This refrigerant is toxic: breathing protection and a way out first; leave at the first smell or alarm.";
        /// Class not known.
        Unclassified = 104 "unclassified"
            "The class of what is inside is not known: handle it as flammable and toxic until it is identified.";
        ///
        CarbonDioxide = 105 "carbon-dioxide"
            "R-744 stands at several times the usual pressure, and far higher when hot: only hoses, gauges and cylinders rated for it, and relieve trapped liquid before it warms. Breathing it harms long before the air runs short.";
        /// Oxygen.
        NeverOxygen = 106 "never-oxygen"
            "Never use oxygen or compressed air: with oil they explode. Dry nitrogen through a regulator only, with a relief valve set for the weakest part.";
        /// Pressure of a test.
        TestPressure = 107 "test-pressure"
            "Stay under the test pressure on the label, raise it in steps from a distance, and keep compressor and low side within theirs.";
        /// Heavier than air.
        Suffocation = 108 "suffocation"
            "Refrigerant vapour is heavier than air and unseen: it fills pits, cellars and low corners and suffocates without warning. Air the place from the floor; nobody alone below ground.";
        /// Lighter than air.
        SuffocationAbove = 109 "suffocation-above"
            "The vapour rises when warm and crawls as a cold cloud first: air the place high and low, and stay upwind.";
        /// Filling.
        FillLimit = 110 "fill-limit"
            "Weigh the cylinder while it fills and stop at its limit, at most 80 % of its volume: one full of liquid bursts when it warms.";
        /// Heat.
        CylinderHeat = 111 "cylinder-heat"
            "Keep cylinders out of the sun and the closed van, below 125 °F (52 °C), upright and secured. Never warm one by flame: lukewarm water at most.";
        /// Relief.
        PressureRelief = 112 "pressure-relief"
            "Never cap, plug or isolate a relief device, and trap no liquid between two closed valves: it bursts the hose as it warms.";
        /// Blends.
        LiquidFromCylinder = 113 "liquid-from-cylinder"
            "Take this blend from the cylinder as liquid, since its vapour has another composition; meter it to vapour before a running compressor.";
        /// Venting.
        RecoverNeverVent = 114 "recover-never-vent" "Recover, never vent: one kind to a cylinder, never mixed.";
        /// Brazing.
        EmptyBeforeFlame = 115 "empty-before-flame"
            "No torch on a circuit that holds refrigerant or pressure: recover, purge with nitrogen and leave it open. Refrigerant in a flame makes acid fumes.";
        /// Pressure.
        Pressure = 116 "pressure"
            "Lines and hoses are under pressure: eye protection and gloves, and open every valve slowly. Liquid on skin freezes it.";
        /// Electricity.
        Electricity = 117 "electricity"
            "Lock out power before panels come off; capacitors stay charged, so discharge and measure before you touch.";
        /// Heat of the machine and the roof.
        HotSurfaces = 118 "hot-surfaces"
            "Discharge line, compressor and metal in the sun burn skin. In the heat drink, take shade, and tell someone where you are.";
        /// Always.
        LicensedPractice = 119 "licensed-practice"
            "Local codes and the maker's instructions come first; this work belongs to licensed and certified people.";
    }
}
