//! The README states measured numbers only: each row of its tables is one of the generated accuracy page.

use std::fs;
use std::path::Path;

#[test]
fn every_row_of_the_readme_is_a_measured_one() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let readme = fs::read_to_string(root.join("README.md")).unwrap();
    let measured = fs::read_to_string(root.join("core/docs/accuracy.md")).unwrap();
    let rows: Vec<_> = readme.lines().filter(|line| line.starts_with("| R-")).collect();
    assert!(rows.len() >= 8, "the README lost its accuracy table");
    for row in rows {
        assert!(measured.lines().any(|line| line == row), "not in core/docs/accuracy.md:\n{row}");
    }
}
