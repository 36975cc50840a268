//! Tunes the rig of the measured unit on five of its rows and prints the rest.
//!
//! `cargo run --release -p satline-tests --bin rig_tuning`

use satline::refrigerant;
use satline::rig::RefrigerantMap;
use satline_tests::measured::{Tuned, at, misses, rows, unit};

const TUNED_ON: [f64; 5] = [2.0, 5.0, 8.0, 11.0, 15.0];

fn main() {
    let record = refrigerant::find("R-410A").unwrap();
    let map = RefrigerantMap::of("R-410A", record.model).unwrap();
    let rows = rows();
    let cost = |x: &[f64]| -> f64 {
        if x.iter().any(|value| *value <= 0.0) {
            return 1e9;
        }
        let unit = unit(&map, &Tuned::of(x));
        let mut sum = 0.0;
        for row in rows.iter().filter(|row| TUNED_ON.contains(&row["test"])) {
            match at(&unit, row) {
                Ok(found) => {
                    let m = misses(&map, &found, row);
                    let scales = [0.3, 0.3, 0.6, 0.6, 0.6, 0.02, 0.02, 0.02, 1.0];
                    sum += m.iter().zip(scales).map(|(miss, scale)| (miss / scale) * (miss / scale)).sum::<f64>();
                }
                Err(_) => sum += 1e4,
            }
        }
        sum
    };
    let mut best = Tuned::START.to_vec();
    for round in 0..6 {
        best = nelder_mead(&cost, &best, 0.1 / f64::from(round + 1), 1500);
        eprintln!("{round}: {:.2} {best:?}", cost(&best));
    }
    let unit = unit(&map, &Tuned::of(&best));
    for row in &rows {
        let mark = if TUNED_ON.contains(&row["test"]) { "tuned" } else { "     " };
        match at(&unit, row) {
            Ok(found) => println!(
                "{:2} {mark} {}",
                row["test"],
                misses(&map, &found, row).map(|miss| format!("{miss:+.3}")).join(" ")
            ),
            Err(error) => println!("{:2} {error:?}", row["test"]),
        }
    }
}

fn nelder_mead(cost: &dyn Fn(&[f64]) -> f64, start: &[f64], spread: f64, most: usize) -> Vec<f64> {
    let n = start.len();
    let mut simplex: Vec<(f64, Vec<f64>)> = (0..=n)
        .map(|corner| {
            let mut x = start.to_vec();
            if corner > 0 {
                x[corner - 1] *= 1.0 + spread;
            }
            (cost(&x), x)
        })
        .collect();
    for _ in 0..most {
        simplex.sort_by(|left, right| left.0.total_cmp(&right.0));
        let center: Vec<f64> =
            (0..n).map(|place| simplex[..n].iter().map(|corner| corner.1[place]).sum::<f64>() / n as f64).collect();
        let worst = simplex[n].clone();
        let along = |share: f64| -> (f64, Vec<f64>) {
            let x: Vec<f64> = center.iter().zip(&worst.1).map(|(c, w)| c + share * (w - c)).collect();
            (cost(&x), x)
        };
        let reflected = along(-1.0);
        if reflected.0 < simplex[0].0 {
            let further = along(-2.0);
            simplex[n] = if further.0 < reflected.0 { further } else { reflected };
        } else if reflected.0 < simplex[n - 1].0 {
            simplex[n] = reflected;
        } else {
            let nearer = if reflected.0 < worst.0 { along(-0.5) } else { along(0.5) };
            if nearer.0 < worst.0.min(reflected.0) {
                simplex[n] = nearer;
            } else {
                let first = simplex[0].1.clone();
                for corner in simplex.iter_mut().skip(1) {
                    let x: Vec<f64> = corner.1.iter().zip(&first).map(|(c, f)| 0.5 * (c + f)).collect();
                    *corner = (cost(&x), x);
                }
            }
        }
    }
    simplex.sort_by(|left, right| left.0.total_cmp(&right.0));
    simplex[0].1.clone()
}
