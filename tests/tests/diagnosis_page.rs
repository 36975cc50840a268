//! The figures in core/docs/diagnosis.md stand where the scorecard puts them, in the form it gives them. Not the figures
//! themselves: the whole fleet takes minutes. And the page names guardrails that exist.

use satline_tests::trial::fleet::maps;
use satline_tests::trial::page::Wanted;
use satline_tests::trial::recipe::Fleet;
use satline_tests::trial::short::{BEGIN, END, replaced, short};
use std::fs;
use std::path::Path;

const PAGE: &str = include_str!("../../core/docs/diagnosis.md");

/// A text without its numbers: lines of the same form are the same.
fn form(text: &str) -> Vec<String> {
    let of_line = |line: &str| {
        // A share of a few units may be one that nothing was counted of.
        let cells: Vec<String> = line.split('|').map(|cell| cell.trim().to_string()).collect();
        let plain = |cell: &String| if cell == "-" { "0 (0-0)".to_string() } else { cell.clone() };
        let line: String = cells.iter().map(plain).collect::<Vec<_>>().join("|");
        let mut form = String::new();
        for one in line.chars() {
            let one = if one.is_ascii_digit() || one == '.' { '0' } else { one };
            if !(one == '0' && form.ends_with('0')) {
                form.push(one);
            }
        }
        form
    };
    text.lines().map(of_line).collect()
}

#[test]
fn the_figures_have_the_form_of_the_scorecard() {
    let seed = Fleet::Develop.seed().unwrap();
    let made = short(&Wanted { fleet: Fleet::Develop, seed, units: 3, learnt: 4, listed: 0 }, &maps());
    let figures = PAGE.split(BEGIN).nth(1).and_then(|rest| rest.split(END).next()).unwrap().trim_start_matches('\n');
    assert_eq!(form(figures), form(&made));
    assert!(figures.lines().count() > 20 && !figures.contains("NaN"));
    assert!(replaced(PAGE, figures).unwrap() == PAGE);
}

/// Every name in the guardrails' table is that of a test.
#[test]
fn the_guardrails_are_tests() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests");
    let mut tests = String::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.file_name().is_some_and(|name| name.to_string_lossy().starts_with("guardrails")) {
            tests += &fs::read_to_string(path).unwrap();
        }
    }
    let table = PAGE.split("## Guardrails").nth(1).unwrap().split("\n## ").next().unwrap();
    let names: Vec<&str> = table
        .lines()
        .filter(|line| line.starts_with("| ") && !line.starts_with("| rule"))
        .flat_map(|line| line.rsplit('|').nth(1).unwrap().split('`').skip(1).step_by(2))
        .filter(|name| !name.starts_with("guardrails"))
        .collect();
    assert!(names.len() > 20, "{names:?}");
    for name in names {
        assert!(tests.contains(&format!("fn {name}(")), "no guardrail is tested by {name}");
    }
}
