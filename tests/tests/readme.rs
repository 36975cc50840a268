//! The README states measured numbers only: each row of its tables is one of the generated accuracy page, and what it says of
//! the diagnosis stands in the figures of the diagnosis page.

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

/// A cell of the diagnosis page's first table, up to its interval.
fn figure(page: &str, judge: &str, column: usize) -> String {
    let row = page.lines().find(|line| line.starts_with(&format!("| {judge} |"))).unwrap();
    let cell = row.split('|').nth(column + 1).unwrap().trim();
    cell.split(" (").next().unwrap().to_string()
}

#[test]
fn what_the_readme_says_of_the_diagnosis_is_what_the_scorecard_found() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let read =
        |path: &str| fs::read_to_string(root.join(path)).unwrap().split_whitespace().collect::<Vec<_>>().join(" ");
    let readme = read("README.md");
    let page = fs::read_to_string(root.join("core/docs/diagnosis.md")).unwrap();
    let [alone, baseline] = ["evidence", "evidence, baseline"];
    let says = |text: String| assert!(readme.contains(&text), "the README does not say: {text}");
    says(format!("were named in {} % of readings", figure(&page, alone, 2)));
    says(format!("healthy readings in {} %", figure(&page, baseline, 2)));
    says(format!("false alarms were {} and {} %", figure(&page, alone, 5), figure(&page, baseline, 5)));
    let harmed = |judge| figure(&page, judge, 6).split(':').next().unwrap().to_string();
    says(format!("given in {} and {} of these readings", harmed(alone), harmed(baseline)));
    let words: Vec<&str> = page.split(" designs drawn ").nth(1).unwrap().split(' ').collect();
    let rows = page.split("would be sold, ").nth(1).unwrap().split(' ').next().unwrap();
    says(format!("judged on {} others ({rows} readings of known truth)", words[0]));
}
