//! Tunes the rig of the measured unit on five of its rows by least squares and prints all rows.
//!
//! `cargo run --release -p satline-tests --bin rig_tuning`

use satline::refrigerant;
use satline::rig::RefrigerantMap;
use satline_tests::measured::{COUNT, Misses, Row, TUNED_ON, Tuned, at, misses, rows, unit};

fn main() {
    let record = refrigerant::find("R-410A").unwrap();
    let map = RefrigerantMap::of("R-410A", record.model).unwrap();
    let rows = rows();
    let tuned: Vec<&Row> = rows.iter().filter(|row| TUNED_ON.contains(&row["test"])).collect();
    // Logarithms of the numbers, so that all stay positive and steps are relative.
    let residuals = |logs: &[f64; COUNT]| -> Option<Vec<f64>> {
        let unit = unit(&map, &Tuned::of(&logs.map(f64::exp))).ok()?;
        let mut all = Vec::new();
        for row in &tuned {
            all.extend(misses(&map, &at(&unit, row).ok()?, row).weighed());
        }
        // A weak pull to what was designed settles what the rows do not.
        all.extend(logs.iter().zip(Tuned::START).map(|(log, start)| (log - start.ln()) / 1.0));
        Some(all)
    };
    let mut best = Tuned::START.map(f64::ln);
    let mut now = residuals(&best).expect("the unit as designed runs");
    let mut damping = 1.0;
    for _ in 0..200 {
        let mut slopes = Vec::new();
        for place in 0..COUNT {
            let mut moved = best;
            moved[place] += 1e-4;
            let there = residuals(&moved).expect("runs nearby");
            slopes.push(there.iter().zip(&now).map(|(there, now)| (there - now) / 1e-4).collect::<Vec<f64>>());
        }
        let Some((moved, there)) = (0..12).find_map(|_| {
            let step = solve(&slopes, &now, damping);
            let moved: [f64; COUNT] = std::array::from_fn(|place| best[place] - step[place].clamp(-0.3, 0.3));
            match residuals(&moved) {
                Some(there) if squares(&there) < squares(&now) => {
                    damping *= 0.3;
                    Some((moved, there))
                }
                _ => {
                    damping *= 4.0;
                    None
                }
            }
        }) else {
            break;
        };
        let gain = squares(&now) - squares(&there);
        (best, now) = (moved, there);
        if gain < 1e-6 * squares(&now) {
            break;
        }
    }
    let found = best.map(f64::exp);
    println!("squares {:.2}", squares(&now));
    println!("{:.3?}", Tuned::of(&found));
    println!("{:?}", found.map(|x| (x * 1e4).round() / 1e4));
    let unit = unit(&map, &Tuned::of(&found)).unwrap();
    println!("   test      Tevap Tcond   SH coil port   SC     capacity reported power flow   air    drops");
    for row in &rows {
        let mark = if TUNED_ON.contains(&row["test"]) { "tuned" } else { "     " };
        let found = at(&unit, row).unwrap();
        let m: Misses = misses(&map, &found, row);
        println!(
            "{:2} {mark}   {:+.2} {:+.2}   {:+.2} {:+.2}   {:+.2}   {:+.3} {:+.3} {:+.3} {:+.3}   {:+.2}   {:+.2?} lift {:.2}",
            row["test"],
            m.evaporating,
            m.condensing,
            m.coil_superheat,
            m.port_superheat,
            m.subcooling,
            m.capacity,
            m.reported_capacity,
            m.power,
            m.mass_flow,
            m.leaving_air,
            m.drops,
            found.valve_lift.unwrap()
        );
    }
}

fn squares(values: &[f64]) -> f64 {
    values.iter().map(|value| value * value).sum()
}

/// Levenberg and Marquardt's step: the normal equations with a damped diagonal, by elimination.
fn solve(slopes: &[Vec<f64>], residuals: &[f64], damping: f64) -> [f64; COUNT] {
    let dot = |left: &[f64], right: &[f64]| left.iter().zip(right).map(|(l, r)| l * r).sum::<f64>();
    let mut rows: Vec<Vec<f64>> = (0..COUNT)
        .map(|row| {
            let mut line: Vec<f64> = (0..COUNT).map(|column| dot(&slopes[row], &slopes[column])).collect();
            line[row] *= 1.0 + damping;
            line.push(dot(&slopes[row], residuals));
            line
        })
        .collect();
    for pivot in 0..COUNT {
        let line = rows[pivot].clone();
        for (place, other) in rows.iter_mut().enumerate() {
            if place != pivot {
                let share = other[pivot] / line[pivot];
                for (value, above) in other.iter_mut().zip(&line) {
                    *value -= share * above;
                }
            }
        }
    }
    std::array::from_fn(|place| rows[place][COUNT] / rows[place][place])
}
