//! The published schemas, the demo record and the page on records are what the library makes.

use satline::text::{VISIT_FORMAT, VisitRecord, VisitStep};
use std::fs;
use std::path::Path;

#[test]
fn the_files_are_up_to_date() {
    let root = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/.."));
    for (path, made) in satline_tests::schemas::files() {
        let old = fs::read_to_string(root.join(&path)).unwrap_or_default();
        assert!(old == made, "{path} differs: run `cargo run -p satline-tests --bin schemas`");
    }
}

#[test]
fn the_page_shows_a_record_and_its_canonical_form() {
    let page = include_str!("../../core/docs/record.md");
    let blocks: Vec<&str> = page.split("```json\n").skip(1).map(|rest| rest.split("\n```").next().unwrap()).collect();
    let record = VisitRecord::from_json(blocks[0]).unwrap();
    assert_eq!(String::from_utf8(record.to_canonical_bytes().unwrap()).unwrap(), blocks[1]);
    assert!(record.demo && record.tables_are_these());
    assert!(page.contains(VISIT_FORMAT) && record.steps.iter().any(|step| step.step == VisitStep::LeakRepaired));
}
