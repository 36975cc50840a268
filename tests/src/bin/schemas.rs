//! Writes the schemas under `core/docs/schema/` and the demo record of a visit; with `--check`, fails where one would change
//! instead.

use std::path::Path;
use std::process::ExitCode;

fn main() -> ExitCode {
    let check = match std::env::args().nth(1).as_deref() {
        None => false,
        Some("--check") => true,
        Some(_) => {
            eprintln!("usage: schemas [--check]");
            return ExitCode::FAILURE;
        }
    };
    let root = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/.."));
    for (path, made) in satline_tests::schemas::files() {
        let full = root.join(&path);
        if check && std::fs::read_to_string(&full).is_ok_and(|old| old == made) {
            continue;
        }
        if check {
            eprintln!("{path} differs from what the library gives; run `cargo run -p satline-tests --bin schemas`");
            return ExitCode::FAILURE;
        }
        let written = full.parent().map_or(Ok(()), std::fs::create_dir_all).and_then(|()| std::fs::write(&full, made));
        if let Err(problem) = written {
            eprintln!("{path}: {problem}");
            return ExitCode::FAILURE;
        }
    }
    println!("schemas and demo record {}", if check { "up to date" } else { "written" });
    ExitCode::SUCCESS
}
