//! Prints the median time of single calls of the equations of state, in nanoseconds: `name,nanoseconds`. Used by
//! `benches/side_by_side.py`, which times the same calls of an outside library in the same run.

use satline::eos::{End, Mixture, Model, model};
use std::hint::black_box;
use std::time::Instant;

/// Calls in a block, and blocks.
const CALLS: u32 = 200;
const BLOCKS: usize = 41;

/// Median over blocks of the mean time of a call, each call at another temperature.
fn median(mut call: impl FnMut(f64)) -> f64 {
    let mut times: Vec<f64> = (0..BLOCKS)
        .map(|_| {
            let start = Instant::now();
            for index in 0..CALLS {
                call(250.0 + 0.25 * f64::from(index));
            }
            start.elapsed().as_secs_f64() * 1e9 / f64::from(CALLS)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[BLOCKS / 2]
}

fn bubble(model: &'static Model) -> Result<f64, satline::Error> {
    let mixture = Mixture::of(model)?;
    Ok(median(|temperature| {
        black_box(mixture.at_temperature(End::Bubble, black_box(temperature)).is_ok());
    }))
}

fn density(model: &'static Model, pressure: f64) -> Result<f64, satline::Error> {
    let mixture = Mixture::of(model)?;
    Ok(median(|temperature| {
        black_box(mixture.density(black_box(temperature), black_box(pressure)).is_ok());
    }))
}

fn main() -> Result<(), satline::Error> {
    println!("bubble point of a blend of four (R-427A),{:.0}", bubble(&model::R427A)?);
    println!("bubble point of a blend of two (R-410A),{:.0}", bubble(&model::R410A)?);
    println!("saturation of a pure fluid (R-134a),{:.0}", bubble(&model::R134A)?);
    println!("saturation of carbon dioxide (R-744),{:.0}", bubble(&model::R744)?);
    println!("liquid density of a pure fluid (R-134a),{:.0}", density(&model::R134A, 3e6)?);
    // At 8 MPa carbon dioxide is a liquid at all these temperatures but the highest; at 1 MPa a vapour.
    println!("liquid density of carbon dioxide (R-744),{:.0}", density(&model::R744, 8e6)?);
    println!("vapour density of carbon dioxide (R-744),{:.0}", density(&model::R744, 1e6)?);
    Ok(())
}
