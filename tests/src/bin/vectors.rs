//! Writes `tests/data/vectors.csv`; with `--check`, fails where it would change instead.

use std::process::ExitCode;

fn main() -> ExitCode {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/data/vectors.csv");
    let made = satline_tests::vectors::file();
    match std::env::args().nth(1).as_deref() {
        None => match std::fs::write(path, &made) {
            Ok(()) => println!("{} vectors written", satline_tests::vectors::all().len()),
            Err(problem) => {
                eprintln!("{path}: {problem}");
                return ExitCode::FAILURE;
            }
        },
        Some("--check") if std::fs::read_to_string(path).is_ok_and(|old| old == made) => println!("vectors up to date"),
        Some("--check") => {
            eprintln!("{path} differs from what the library gives; run `cargo run -p satline-tests --bin vectors`");
            return ExitCode::FAILURE;
        }
        Some(_) => {
            eprintln!("usage: vectors [--check]");
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}
