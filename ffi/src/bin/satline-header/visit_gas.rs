//! Numbers and words of the pressure test, the decay test, tubes and lines, the charge by the scale and recovery.

use satline::visit::{ChargeBalance, RecoveredBalance, RoomVerdict, evacuation, line_drop, pressure_test, tube_rating};

/// Gives each answer's words for its constant's name, its sentence's function, and each number, name and sentence.
fn each(mut kind: impl FnMut(&'static str, &[(i32, &'static str, &'static str)])) {
    macro_rules! kinds {
        ($($kind:path, $name:literal;)*) => {$(
            let rows: Vec<_> =
                <$kind>::ALL.iter().map(|answer| (answer.number(), answer.name(), answer.sentence())).collect();
            kind($name, &rows);
        )*};
    }
    kinds! {
        pressure_test::Outcome, "pressure_test_outcome";
        pressure_test::Reason, "pressure_test_reason";
        pressure_test::Advice, "pressure_test_advice";
        pressure_test::Caution, "pressure_test_caution";
        evacuation::Outcome, "decay_outcome";
        evacuation::Reason, "decay_reason";
        evacuation::Behaviour, "decay_behaviour";
        evacuation::Cause, "decay_cause";
        evacuation::Advice, "decay_advice";
        evacuation::Caution, "decay_caution";
        tube_rating::Temper, "tube_temper";
        tube_rating::Joint, "tube_joint";
        tube_rating::Outcome, "tube_outcome";
        tube_rating::Caution, "tube_caution";
        line_drop::Flash, "line_flash";
        line_drop::Outcome, "line_drop_outcome";
        line_drop::Caution, "line_drop_caution";
        ChargeBalance, "charge_balance";
        RoomVerdict, "recovery_room";
        RecoveredBalance, "recovered_balance";
    }
}

pub fn codes(out: &mut String) {
    each(|kind, rows| {
        for (number, name, sentence) in rows {
            super::codes::constant(out, sentence, &[kind, name], *number);
        }
    });
}

pub fn words(out: &mut String) {
    each(|kind, rows| {
        let sentences = rows.iter().map(|(number, _, sentence)| (*number, *sentence));
        super::words::function(out, &format!("satline_{kind}_sentence"), &kind.to_uppercase(), sentences);
    });
}
