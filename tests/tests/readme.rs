//! The README states measured numbers only: its table of curves is the one in the generated files.

use std::fs;
use std::path::Path;

/// The rows of the accuracy table, from the headers of the generated files.
fn measured() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src/saturation/table");
    let mut rows = Vec::new();
    for model in satline::eos::model::ALL {
        let designation = model.identity.designation;
        let name = designation.replace('-', "").to_lowercase();
        let text = fs::read_to_string(folder.join(format!("{name}.rs"))).unwrap();
        for line in text.lines().filter_map(|line| line.strip_prefix("//! | ")) {
            if !line.starts_with("line ") {
                rows.push(format!("| {designation} {line}"));
            }
        }
    }
    rows
}

#[test]
fn the_accuracy_table_is_the_measured_one() {
    let readme = fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("../README.md")).unwrap();
    let rows = measured();
    assert!(rows.len() >= satline::eos::model::ALL.len());
    for row in rows {
        assert!(readme.lines().any(|line| line == row), "the README lacks this row:\n{row}");
    }
}
