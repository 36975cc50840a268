//! Numbers and words of what stands behind a finding: preconditions, features, causes, the conclusion.

use satline::diagnosis::{Cause, ConclusionReason, FeatureName, PreconditionName, PreconditionStatus, Source};

/// Gives each answer's words for its constant's name, its sentence's function, and each number, name and sentence.
fn each(mut kind: impl FnMut(&'static str, &[(i32, &'static str, &'static str)])) {
    macro_rules! kinds {
        ($($kind:ident $name:literal;)*) => {$(
            let rows: Vec<_> =
                $kind::ALL.iter().map(|answer| (answer.number(), answer.name(), answer.sentence())).collect();
            kind($name, &rows);
        )*};
    }
    kinds! {
        Cause "cause";
        FeatureName "feature";
        Source "source";
        PreconditionName "precondition";
        PreconditionStatus "precondition_status";
        ConclusionReason "conclusion";
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
        let constants = kind.to_uppercase();
        let sentences = rows.iter().map(|(number, _, sentence)| (*number, *sentence));
        super::words::function(out, &format!("satline_{kind}_sentence"), &constants, sentences);
        // The two that files and displays name by their words.
        if matches!(kind, "cause" | "feature") {
            let names = rows.iter().map(|(number, name, _)| (*number, *name));
            super::words::function(out, &format!("satline_{kind}_name"), &constants, names);
        }
    });
}
