//! Learns from the rig what the diagnosis expects of units, and writes it as a source file.
//!
//! `--write` writes `core/src/diagnosis/signature/table.rs`, `--check` compares with it; a number of units may be given.

use satline_tests::signatures::fit::fit;
use satline_tests::signatures::simulate::{rows, structure_a};
use satline_tests::signatures::write::file;
use std::io::Write;
use std::process::{Command, ExitCode, Stdio};

/// How many designs the checked-in file rests on, and in how many days of weather each.
const UNITS: usize = 300;
const DAYS: usize = 6;

fn formatted(text: &str) -> String {
    let mut rustfmt = Command::new("rustfmt")
        .args(["--edition", "2024", "--config", "max_width=120,use_small_heuristics=Max"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("rustfmt runs");
    rustfmt.stdin.take().unwrap().write_all(text.as_bytes()).unwrap();
    String::from_utf8(rustfmt.wait_with_output().unwrap().stdout).unwrap()
}

fn main() -> ExitCode {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../core/src/diagnosis/signature/table.rs");
    let rows = rows(UNITS, DAYS, structure_a);
    println!("{} rows of {UNITS} designs", rows.len());
    let text = formatted(&file(&fit(&rows, false), &fit(&rows, true), UNITS));
    match std::env::args().nth(1).as_deref() {
        Some("--write") => {
            std::fs::write(path, text).unwrap();
            ExitCode::SUCCESS
        }
        _ if std::fs::read_to_string(path).unwrap_or_default() == text => {
            println!("the checked-in table is what the rig gives");
            ExitCode::SUCCESS
        }
        _ => {
            println!("the checked-in table differs: run with --write and read the difference");
            ExitCode::FAILURE
        }
    }
}
