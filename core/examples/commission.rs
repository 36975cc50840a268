//! Evaluates readings and prints a finding for each: the main job.
//!
//! ```text
//! cargo run --release --example commission                    the demo set (invented)
//! cargo run --release --example commission -- FILE            a file of readings
//! cargo run --release --example commission -- --json FILE     findings as JSON
//! cargo run --release --example commission -- --si FILE       in SI units
//! ```

use satline::diagnosis::diagnose;
use satline::text::{Units, finding_to_words, findings_to_json, readings_from_json};
use std::io::Write;
use std::process::ExitCode;

const DEMO: &str = include_str!("demo_school.json");

const HELP: &str = "\
commission [--json] [--si] [FILE]

Evaluates charge readings and prints a finding for each. Without FILE it evaluates a demo set of invented readings.

  --json   findings as a JSON array, in SI
  --si     words in degrees Celsius and kelvin
  --help   this page

FILE holds one reading or an array of readings in JSON, for example:
  {\"label\": \"Roof unit 1\", \"refrigerant\": \"R-410A\", \"metering\": \"fixed-orifice\", \"altitude\": \"600 ft\",
   \"outdoor_dry_bulb\": \"95 degF\", \"return_dry_bulb\": \"78 degF\", \"return_wet_bulb\": \"65 degF\",
   \"supply_dry_bulb\": \"60 degF\", \"suction_pressure\": \"118 psig\", \"suction_line_temperature\": \"52 degF\"}
";

struct Options {
    json: bool,
    units: Units,
    file: Option<String>,
}

fn main() -> ExitCode {
    let options = match options(std::env::args().skip(1)) {
        Ok(Some(options)) => options,
        Ok(None) => return print(HELP),
        Err(wrong) => return fail(&wrong, 2),
    };
    let text = match &options.file {
        None => String::from(DEMO),
        Some(path) => match std::fs::read_to_string(path) {
            Ok(text) => text,
            Err(error) => return fail(&format!("{path}: {error}"), 1),
        },
    };
    let readings = match readings_from_json(&text) {
        Ok(readings) => readings,
        Err(error) => return fail(&format!("{}: {error}", options.file.as_deref().unwrap_or("demo")), 1),
    };
    let findings: Vec<_> = readings.iter().map(|labelled| diagnose(&labelled.reading)).collect();
    if options.json {
        return print(&(findings_to_json(readings.iter().zip(&findings)) + "\n"));
    }
    let mut out = String::new();
    if options.file.is_none() {
        out += "Demo: an invented school. Every reading below is made up.\n\n";
    }
    for (labelled, finding) in readings.iter().zip(&findings) {
        let mark = if labelled.demo { " [demo]" } else { "" };
        out += &finding_to_words(&format!("{}{mark}", labelled.label), &labelled.reading, finding, options.units);
        if labelled.atmosphere_assumed {
            out +=
                "  Gauge pressures were taken at the standard sea-level atmosphere: give the altitude to be exact.\n";
        }
        out.push('\n');
    }
    out += "Every ± is one standard uncertainty.\n";
    print(&out)
}

fn options(arguments: impl Iterator<Item = String>) -> Result<Option<Options>, String> {
    let mut options = Options { json: false, units: Units::Ip, file: None };
    for argument in arguments {
        match argument.as_str() {
            "--help" | "-h" => return Ok(None),
            "--json" => options.json = true,
            "--si" => options.units = Units::Si,
            other if other.starts_with('-') => return Err(format!("unknown option {other}: see --help")),
            _ if options.file.is_some() => return Err(String::from("give one file: see --help")),
            _ => options.file = Some(argument),
        }
    }
    Ok(Some(options))
}

/// A reader that closes early, such as `head`, is no failure.
fn print(text: &str) -> ExitCode {
    match std::io::stdout().write_all(text.as_bytes()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => fail(&format!("cannot write: {error}"), 1),
        _ => ExitCode::SUCCESS,
    }
}

fn fail(message: &str, code: u8) -> ExitCode {
    eprintln!("commission: {message}");
    ExitCode::from(code)
}
