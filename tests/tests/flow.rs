//! Data runs one way. Each module of the core may use only the modules named for it here; the picture is in
//! DEVELOPERS.md.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// Below everything: any module may use these.
const BASE: [&str; 8] = ["answers", "bounds", "error", "math", "nearest", "quantity", "uncertain", "Error"];

/// What each module may use besides the base and itself.
const ARROWS: &[(&str, &[&str])] = &[
    ("answers", &[]),
    ("error", &[]),
    ("bounds", &[]),
    ("math", &[]),
    ("nearest", &[]),
    ("quantity", &[]),
    ("uncertain", &[]),
    ("identity", &[]),
    // The equations of state know nothing of what is made from them, nor do the curves know where they came from.
    ("eos", &["identity"]),
    ("saturation", &["identity"]),
    // The air knows nothing of targets: who compares a split with one brings the table along.
    ("air", &[]),
    ("capacity", &["eos"]),
    // The rig rests on the equations of state alone, never on what is made from them: else one mistake would hide in both
    // halves of every test. A reading is what it shows.
    ("rig", &["eos", "reading"]),
    // The catalogue's matches are found as the standing-pressure check judges one refrigerant.
    ("refrigerant", &["identity", "saturation", "eos", "visit"]),
    ("reading", &["saturation"]),
    ("charge", &["reading", "saturation"]),
    ("safety", &["refrigerant", "saturation", "identity"]),
    // The pressure test's nitrogen is real, by its equation of state; a vacuum's water and ice are those of the air.
    ("visit", &["saturation", "identity", "eos", "air"]),
    // A refrigerant comes in by reference; the catalogue is not asked.
    ("lineset", &["saturation", "identity", "refrigerant", "eos"]),
    // Heating is judged by its air, and a maker's chart is read on a visit.
    ("diagnosis", &["charge", "reading", "saturation", "identity", "air", "visit"]),
    ("text", &["charge", "diagnosis", "reading", "saturation", "identity", "refrigerant", "visit"]),
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

/// The module that a path inside the crate belongs to.
fn module(segments: &[&str]) -> Option<String> {
    let first = segments.first()?.trim_end_matches(".rs");
    let name = match (first, segments.get(1).map(|second| second.trim_end_matches(".rs"))) {
        // What a refrigerant is lies below the curves; the catalogue, in the same folder, lies above them.
        ("refrigerant", Some("identity")) => "identity",
        // How answers are written: a macro that every module with answers uses.
        ("charge", Some("answers")) => "answers",
        _ => first,
    };
    Some(name.to_string())
}

/// Every `crate::…` in code (not comments), as the modules used; groups such as `crate::{a, b::c}` are opened.
fn used(text: &str) -> BTreeSet<String> {
    let code: String =
        text.lines().filter(|line| !line.trim_start().starts_with("//")).map(|line| format!("{line}\n")).collect();
    let mut found = BTreeSet::new();
    for part in code.split("crate::").skip(1) {
        let paths = match part.strip_prefix('{') {
            Some(group) => group.split('}').next().unwrap().split(',').map(str::trim).collect(),
            None => vec![
                part.split(|letter: char| !(letter.is_alphanumeric() || letter == '_' || letter == ':'))
                    .next()
                    .unwrap(),
            ],
        };
        for path in paths {
            let segments: Vec<&str> = path.split("::").collect();
            found.extend(module(&segments));
        }
    }
    found
}

/// Uses that no arrow allows.
fn breaches(own: &str, text: &str, arrows: &BTreeMap<&str, &[&str]>) -> Vec<String> {
    let allowed = arrows.get(own).unwrap_or_else(|| panic!("no arrows stated for module {own}: add it to the picture"));
    used(text)
        .into_iter()
        .filter(|name| name != own && !BASE.contains(&name.as_str()) && !allowed.contains(&name.as_str()))
        .collect()
}

#[test]
fn arrows_point_one_way() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src");
    let arrows: BTreeMap<&str, &[&str]> = ARROWS.iter().copied().collect();
    let mut files = Vec::new();
    sources(&root, &mut files);
    assert!(files.len() > 20, "the sources were not found");
    let mut wrong = Vec::new();
    for file in files {
        let inside = file.strip_prefix(&root).unwrap();
        let segments: Vec<&str> = inside.iter().map(|part| part.to_str().unwrap()).collect();
        let own = module(&segments).unwrap();
        if own == "lib" {
            continue;
        }
        for name in breaches(&own, &fs::read_to_string(&file).unwrap(), &arrows) {
            wrong.push(format!("{} uses {name}", inside.display()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The check itself can fail.
#[test]
fn a_wrong_arrow_is_seen() {
    let arrows: BTreeMap<&str, &[&str]> = ARROWS.iter().copied().collect();
    assert_eq!(breaches("eos", "use crate::saturation::R410A;", &arrows), ["saturation"]);
    assert_eq!(breaches("eos", "use crate::{math, charge::Target};", &arrows), ["charge"]);
    assert_eq!(breaches("saturation", "let x = crate::refrigerant::find(name);", &arrows), ["refrigerant"]);
    assert!(
        breaches("eos", "// crate::saturation in a comment\nuse crate::refrigerant::identity::R22;", &arrows)
            .is_empty()
    );
}

/// Transcendental functions come through one door, so that their bits are the same everywhere.
#[test]
fn one_door_to_transcendental_functions() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src");
    let mut files = Vec::new();
    sources(&root, &mut files);
    for file in files {
        let text = fs::read_to_string(&file).unwrap();
        let name = file.file_name().unwrap().to_str().unwrap();
        let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
        for line in code {
            assert!(name == "math.rs" || !line.contains("libm::"), "{}: {line}", file.display());
            assert!(!line.contains("mul_add"), "{}: {line}", file.display());
        }
    }
}
