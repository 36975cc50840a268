//! Writes `include/satline.h` and `src/generated/` from the core's own lists; with `--check`, fails where a byte
//! would change instead.

mod codes;
mod evidence;
mod full;
mod handles;
mod text;
mod visit_gas;
mod words;

use std::path::Path;
use std::process::ExitCode;

/// The command that each generated file names.
const COMMAND: &str = "cargo run -p satline-ffi --features header --bin satline-header";

/// The sources of the header, in the order in which it presents them.
const SOURCES: &[&str] = &[
    "generated/codes.rs",
    "version.rs",
    "status.rs",
    "handle.rs",
    "generated/handles.rs",
    "catalogue.rs",
    "limits.rs",
    "pressure.rs",
    "saturation.rs",
    "target.rs",
    "reading.rs",
    "accuracies.rs",
    "finding.rs",
    "evidence.rs",
    "diagnosis_options.rs",
    "diagnosis.rs",
    "standing.rs",
    "safety.rs",
    "uncertain.rs",
    "air.rs",
    "coil.rs",
    "evacuation.rs",
    "tube_rating.rs",
    "uncertain.rs",
    "airflow.rs",
    "target_grid.rs",
    "performance.rs",
    "account.rs",
    "recovery.rs",
    "full.rs",
    "generated/full.rs",
    "saturated.rs",
    "state.rs",
    "cylinder.rs",
    "capacity.rs",
    "pressure_test.rs",
    "retrofit.rs",
    "rig.rs",
    "transport.rs",
    "capacity.rs",
    "line_pressure.rs",
    "tube.rs",
    "lineset.rs",
    "generated/words.rs",
];

fn main() -> ExitCode {
    let check = match std::env::args().nth(1).as_deref() {
        None => false,
        Some("--check") => true,
        Some(_) => {
            eprintln!("usage: satline-header [--check]");
            return ExitCode::FAILURE;
        }
    };
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let generated = root.join("src/generated");
    let mut same = put(&generated.join("codes.rs"), &codes::write(), check);
    same &= put(&generated.join("full.rs"), &full::write(), check);
    same &= put(&generated.join("handles.rs"), &handles::write(), check);
    same &= put(&generated.join("text.rs"), &text::write(), check);
    same &= put(&generated.join("words.rs"), &words::write(), check);
    match header(root) {
        Ok(header) => same &= put(&root.join("include/satline.h"), &header, check),
        Err(problem) => {
            eprintln!("{problem}");
            same = false;
        }
    }
    if same { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// Writes a file, or compares it. Says what it did; false when it failed or differs.
fn put(path: &Path, content: &str, check: bool) -> bool {
    let shown = path.strip_prefix(env!("CARGO_MANIFEST_DIR")).unwrap_or(path).display();
    if std::fs::read_to_string(path).is_ok_and(|old| old == content) {
        println!("{shown}: up to date");
        return true;
    }
    if check {
        eprintln!("{shown}: differs from what the sources give; run `{COMMAND}`");
        return false;
    }
    match std::fs::write(path, content) {
        Ok(()) => {
            println!("{shown}: written");
            true
        }
        Err(problem) => {
            eprintln!("{shown}: {problem}");
            false
        }
    }
}

fn header(root: &Path) -> Result<String, String> {
    let config = cbindgen::Config::from_file(root.join("cbindgen.toml"))?;
    let sources = SOURCES.iter().map(|source| root.join("src").join(source));
    let builder =
        sources.fold(cbindgen::Builder::new().with_config(config), |builder, source| builder.with_src(source));
    let mut header = Vec::new();
    builder.generate().map_err(|problem| problem.to_string())?.write(&mut header);
    let header = String::from_utf8(header).map_err(|problem| problem.to_string())?;
    Ok(header.lines().map(|line| bracket_negative(line) + "\n").collect())
}

/// `#define X -1` as `#define X (-1)`, so that `-X` and `2 -X` mean what they say.
fn bracket_negative(line: &str) -> String {
    match line.strip_prefix("#define ").and_then(|rest| rest.split_once(" -")) {
        Some((name, number)) => format!("#define {name} (-{number})"),
        None => line.to_string(),
    }
}
