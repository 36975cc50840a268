//! Generates the compact saturation tables from the equations of state.
//!
//! `cargo run --release -p satline-fit` writes `core/src/saturation/table/*.rs`; with `--check` it writes nothing and
//! fails if a byte would change.

mod emit;
mod line;
mod piece;
mod property;
mod record;

use satline::eos::{End, Mixture, Model, model};
use std::path::PathBuf;
use std::process::ExitCode;

/// Below this no unit works; tables start here or at the equation's own lowest temperature, K.
const COLDEST: f64 = 213.15;
/// Tables end at this share of the computed critical temperature, where the curves are still smooth.
const HOTTEST: f64 = 0.99;

/// Every generated file with its text. The refrigerants are shared out among the processor's cores; the order of the
/// result, and every number, is the same on any machine.
fn generate() -> Result<Vec<(String, String)>, String> {
    let workers = std::thread::available_parallelism().map_or(1, |count| count.get());
    let mut files = std::thread::scope(|scope| {
        let handles: Vec<_> = (0..workers)
            .map(|worker| {
                scope.spawn(move || -> Result<Vec<(usize, String, String)>, String> {
                    let mine = model::ALL.iter().enumerate().skip(worker).step_by(workers);
                    mine.map(|(place, model)| Ok((place, format!("{}.rs", emit::module_name(model)), one(model)?)))
                        .collect()
                })
            })
            .collect();
        let mut all = Vec::new();
        for handle in handles {
            all.extend(handle.join().map_err(|_| "a worker stopped")??);
        }
        Ok::<_, String>(all)
    })?;
    files.sort();
    let mut files: Vec<_> = files.into_iter().map(|(_, name, text)| (name, text)).collect();
    files.push(("mod.rs".into(), emit::index(model::ALL)));
    Ok(files)
}

fn one(model: &'static Model) -> Result<String, String> {
    let said = |error: satline::Error| format!("{}: {error}", model.identity.designation);
    let mixture = Mixture::of(model).map_err(said)?;
    let critical = mixture.critical_point().map_err(said)?;
    let lower = COLDEST.max(mixture.lowest_temperature());
    let upper = (HOTTEST * critical.temperature * 100.0).floor() / 100.0;
    let bubble = line::fit(&mixture, End::Bubble, lower, upper)?;
    let dew = if mixture.count() > 1 { Some(line::fit(&mixture, End::Dew, lower, upper)?) } else { None };
    let properties = record::properties(&mixture, (lower, upper, critical.temperature)).map_err(said)?;
    let points = record::points(&mixture, critical).map_err(said)?;
    Ok(emit::refrigerant(model, &bubble, dew.as_ref(), &properties, &points))
}

fn run() -> Result<(), String> {
    let check = match std::env::args().skip(1).collect::<Vec<_>>().as_slice() {
        [] => false,
        [only] if only == "--check" => true,
        _ => return Err("usage: satline-fit [--check]".into()),
    };
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../src/saturation/table");
    let mut changed = Vec::new();
    for (name, text) in generate()? {
        let path = folder.join(&name);
        if std::fs::read_to_string(&path).ok().as_deref() == Some(text.as_str()) {
            continue;
        }
        if !check {
            std::fs::write(&path, text).map_err(|error| format!("{name}: {error}"))?;
        }
        changed.push(name);
    }
    match (check, changed.is_empty()) {
        (_, true) => println!("tables are up to date"),
        (false, false) => println!("written: {}", changed.join(", ")),
        (true, false) => return Err(format!("tables would change: {}; run `{}`", changed.join(", "), emit::COMMAND)),
    }
    Ok(())
}

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}
