//! Prints how well the diagnosis does on a fleet of simulated units, beside other ways to judge the same readings.
//!
//! `cargo run --release -p satline-tests --bin scorecard -- [--fleet tune|develop|sealed] [--units N] [--quick]
//! [--listed N] [--sealed-seed S --salt T] [--page]`
//!
//! `--page` writes the figures in short into `core/docs/diagnosis.md`, between its markers, and prints nothing else.
//! The sealed fleet opens only with the seed and the salt that were committed to. The exit code tells of wrong arguments
//! and of nothing else.

use satline_tests::trial::fleet::maps;
use satline_tests::trial::page::{Wanted, page};
use satline_tests::trial::recipe::Fleet;
use satline_tests::trial::sealed;
use satline_tests::trial::short::{replaced, short};
use std::process::ExitCode;

fn wanted(mut arguments: impl Iterator<Item = String>) -> Result<(Wanted, bool), String> {
    let mut wanted = Wanted { fleet: Fleet::Develop, seed: 0, units: 240, learnt: 240, listed: 20 };
    let (mut seed, mut salt, mut short) = (None, None, false);
    while let Some(argument) = arguments.next() {
        let mut value = || arguments.next().ok_or(format!("{argument} wants a value"));
        let number = |text: String| text.parse::<u64>().map_err(|_| format!("{text} is not a number"));
        match argument.as_str() {
            "--fleet" => {
                let name = value()?;
                wanted.fleet = Fleet::named(&name).ok_or(format!("{name} is none of tune, develop, sealed"))?;
            }
            "--units" => wanted.units = number(value()?)?.max(1),
            "--listed" => wanted.listed = number(value()?)? as usize,
            "--quick" => (wanted.units, wanted.learnt) = (12, 16),
            "--page" => short = true,
            "--sealed-seed" => seed = Some(value()?),
            "--salt" => salt = Some(value()?),
            other => return Err(format!("{other} is not known")),
        }
    }
    wanted.seed = match (wanted.fleet.seed(), seed, salt) {
        (Some(known), None, None) => known,
        (Some(_), ..) => return Err("only the sealed fleet takes a seed and a salt".to_string()),
        (None, Some(seed), Some(salt)) => sealed::open(&seed, &salt)?,
        (None, ..) => return Err("the sealed fleet opens with --sealed-seed and --salt".to_string()),
    };
    Ok((wanted, short))
}

fn write_page(wanted: &Wanted) -> Result<(), String> {
    if wanted.fleet != Fleet::Develop {
        return Err("the page's figures are those of the development fleet".to_string());
    }
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../core/docs/diagnosis.md");
    let figures = short(wanted, &maps());
    let page = std::fs::read_to_string(path).map_err(|error| error.to_string())?;
    let page = replaced(&page, &figures)?;
    std::fs::write(path, page).map_err(|error| error.to_string())
}

fn main() -> ExitCode {
    match wanted(std::env::args().skip(1)) {
        Ok((wanted, true)) => match write_page(&wanted) {
            Ok(()) => ExitCode::SUCCESS,
            Err(error) => {
                eprintln!("scorecard: {error}");
                ExitCode::FAILURE
            }
        },
        Ok((wanted, false)) => {
            print!("{}", page(&wanted, &maps()));
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("scorecard: {error}");
            ExitCode::FAILURE
        }
    }
}
