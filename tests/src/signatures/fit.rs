//! From simulated rows to the numbers that the diagnosis expects units by.
//!
//! Healthy units: a regression on the air, an offset by refrigerant, and two covariances: between units, and of one unit
//! from day to day. Faults: for each cause and severity the mean change against the same unit healthy in the same air, as a
//! regression on the air and on the healthy superheat and subcooling; and how units scatter about that, as one principal
//! direction and the rest by channel.

use super::linear::{least_squares, principal, second_moment, without_negative};
use super::simulate::{CAUSES, PAIRS, REFRIGERANTS, Row, severities};
use std::collections::BTreeMap;

/// Channels of the tables: those of [`super::simulate`] without the charge, which needs no table, and without the
/// standing pressure, which no reading has.
pub const CHANNELS: usize = 14;

fn channels(row: &Row) -> Vec<f64> {
    row.channels[..13].iter().chain(&row.channels[14..15]).copied().collect()
}

/// What healthy units are expected by.
#[must_use]
pub fn basis(air: &[f64; 4]) -> Vec<f64> {
    let (o, w, d) = ((air[0] - 308.15) / 10.0, (air[2] - 291.0) / 3.0, (air[1] - 299.0) / 3.0);
    vec![1.0, o, w, d, o * o, o * w, w * w]
}

/// What changes by a fault are expected by: air, and superheat and subcooling of the healthy unit.
fn reaction(air: &[f64; 4], healthy: &[f64]) -> Vec<f64> {
    let (superheat, subcooling) = (healthy[1] - healthy[0], healthy[2] - healthy[3]);
    vec![1.0, (air[0] - 308.15) / 10.0, (air[2] - 291.0) / 3.0, (superheat - 6.0) / 4.0, (subcooling - 6.0) / 2.0]
}

/// The response to one severity of one cause.
#[derive(Debug, Clone)]
pub struct Response {
    /// Mean change by regressor and channel.
    pub mean: Vec<Vec<f64>>,
    /// Principal direction of the scatter.
    pub along: Vec<f64>,
    /// Standard deviation of what is left of the scatter.
    pub beside: Vec<f64>,
    /// Share of units whose liquid line is no colder for it, within [`STILL_K`].
    pub still: f64,
    /// How many rows it rests on.
    pub rows: usize,
    /// Mean capacity against the healthy unit.
    pub capacity: f64,
    /// Share of units to which it does enough to count as a fault: see [`counts`].
    pub counts: f64,
}

/// A change of the liquid line's temperature drop that nobody would see, K.
const STILL_K: f64 = 0.1;

/// Whether a fault counts: it costs 3 % of the capacity, or 5 % of the cooling by power of the compressor.
#[must_use]
pub fn counts(capacity: f64, efficiency: f64) -> bool {
    capacity <= 0.97 || efficiency <= 0.95
}

/// A row with a fault against the healthy one: regressors, changes, capacity and efficiency.
struct Change(Vec<f64>, Vec<f64>, f64, f64);

/// What two causes do beyond the sum of both.
#[derive(Debug, Clone)]
pub struct Interplay {
    /// Mean by regressor (the first three) and channel, for severities of a product of 1 (see [`weight`]).
    pub mean: Vec<Vec<f64>>,
    /// Standard deviation about it.
    pub beside: Vec<f64>,
}

/// All that is learnt of one kind of metering device.
#[derive(Debug, Clone)]
pub struct Fit {
    /// By regressor of [`basis`] and channel.
    pub healthy: Vec<Vec<f64>>,
    /// By refrigerant and channel; the first is zero.
    pub offsets: Vec<Vec<f64>>,
    /// Covariance between units.
    pub between: Vec<Vec<f64>>,
    /// Covariance of one unit from day to day.
    pub within: Vec<Vec<f64>>,
    /// By cause and severity.
    pub responses: Vec<Vec<Response>>,
    /// In the order of [`PAIRS`].
    pub interplay: Vec<Interplay>,
    /// How many units.
    pub units: usize,
}

/// How strong the interplay of two severities is, by their places.
#[must_use]
pub fn weight(first: usize, second: usize) -> f64 {
    ((first + 1) * (second + 1)) as f64 / 12.0
}

fn place(cause: usize, severity: f64, valve: bool) -> usize {
    severities(cause, valve).iter().position(|one| (one - severity).abs() < 1e-9).unwrap_or(0)
}

/// Fits the rows of valve units or of fixed orifices.
///
/// # Panics
/// Without rows.
#[must_use]
pub fn fit(rows: &[Row], valve: bool) -> Fit {
    let rows: Vec<&Row> = rows.iter().filter(|row| row.valve == valve).collect();
    let key = |row: &Row| (row.unit, row.air[0].to_bits());
    let healthy: BTreeMap<_, &Row> =
        rows.iter().filter(|row| row.faults.is_empty()).map(|row| (key(row), *row)).collect();

    // Healthy units.
    let regressors: Vec<Vec<f64>> = healthy
        .values()
        .map(|row| {
            let mut all = basis(&row.air);
            all.extend((1..REFRIGERANTS.len()).map(|place| f64::from(u8::from(place == row.refrigerant))));
            all
        })
        .collect();
    let values: Vec<Vec<f64>> = healthy.values().map(|row| channels(row)).collect();
    let found = least_squares(&regressors, &values, 1e-6);
    let (mean, offsets) = found.split_at(7);
    let mut offsets = offsets.to_vec();
    offsets.insert(0, vec![0.0; CHANNELS]);
    let left: Vec<Vec<f64>> = regressors
        .iter()
        .zip(&values)
        .map(|(x, y)| {
            (0..CHANNELS).map(|j| y[j] - x.iter().zip(&found).map(|(a, row)| a * row[j]).sum::<f64>()).collect()
        })
        .collect();
    let mut by_unit: BTreeMap<usize, Vec<&Vec<f64>>> = BTreeMap::new();
    for (row, one) in healthy.values().zip(&left) {
        by_unit.entry(row.unit).or_default().push(one);
    }
    let average = |all: &[&Vec<f64>]| -> Vec<f64> {
        (0..CHANNELS).map(|j| all.iter().map(|one| one[j]).sum::<f64>() / all.len() as f64).collect()
    };
    let units: Vec<Vec<f64>> = by_unit.values().map(|all| average(all)).collect();
    let days: Vec<Vec<f64>> = by_unit
        .values()
        .flat_map(|all| {
            let mean = average(all);
            all.iter().map(move |one| one.iter().zip(&mean).map(|(a, b)| a - b).collect()).collect::<Vec<_>>()
        })
        .collect();
    let within = second_moment(&days, (days.len() - units.len()) as f64);
    let visits = days.len() as f64 / units.len() as f64;
    let mut between = second_moment(&units, units.len() as f64);
    for (row, of_days) in between.iter_mut().zip(&within) {
        row.iter_mut().zip(of_days).for_each(|(a, b)| *a -= b / visits);
    }
    let between = without_negative(&between);

    // Faults.
    let changes = |row: &Row| -> Option<Change> {
        let base = *healthy.get(&key(row))?;
        let before = channels(base);
        let change = channels(row).iter().zip(&before).map(|(a, b)| a - b).collect();
        let (capacity, power) = (row.capacity / base.capacity, row.power / base.power);
        Some(Change(reaction(&row.air, &before), change, capacity, capacity / power))
    };
    let responses: Vec<Vec<Response>> = (0..CAUSES)
        .map(|cause| {
            severities(cause, valve)
                .iter()
                .map(|severity| {
                    let found: Vec<_> = rows
                        .iter()
                        .filter(|row| row.faults == [(cause, *severity)])
                        .filter_map(|row| changes(row))
                        .collect();
                    response(&found)
                })
                .collect()
        })
        .collect();
    let interplay = PAIRS
        .iter()
        .map(|(first, second)| {
            let found: Vec<_> = rows
                .iter()
                .filter(|row| row.faults.len() == 2 && row.faults[0].0 == *first && row.faults[1].0 == *second)
                .filter_map(|row| {
                    let Change(x, y, ..) = changes(row)?;
                    let (i, j) = (place(*first, row.faults[0].1, valve), place(*second, row.faults[1].1, valve));
                    let sum = |k: usize| -> f64 {
                        let both = responses[*first][i].mean.iter().zip(&responses[*second][j].mean);
                        x.iter().zip(both).map(|(a, (p, q))| a * (p[k] + q[k])).sum()
                    };
                    let beyond: Vec<f64> = y.iter().enumerate().map(|(k, one)| one - sum(k)).collect();
                    let scaled: Vec<f64> = x[..3].iter().map(|a| a * weight(i, j)).collect();
                    Some((scaled, beyond))
                })
                .collect();
            interplay_of(&found)
        })
        .collect();
    Fit { healthy: mean.to_vec(), offsets, between, within, responses, interplay, units: units.len() }
}

fn left_over(x: &[Vec<f64>], y: &[Vec<f64>], mean: &[Vec<f64>]) -> Vec<Vec<f64>> {
    x.iter()
        .zip(y)
        .map(|(x, y)| {
            (0..CHANNELS).map(|j| y[j] - x.iter().zip(mean).map(|(a, row)| a * row[j]).sum::<f64>()).collect()
        })
        .collect()
}

fn response(found: &[Change]) -> Response {
    let x: Vec<Vec<f64>> = found.iter().map(|one| one.0.clone()).collect();
    let y: Vec<Vec<f64>> = found.iter().map(|one| one.1.clone()).collect();
    let mean = least_squares(&x, &y, 1e-3);
    let scatter = second_moment(&left_over(&x, &y, &mean), x.len() as f64);
    let along = principal(&scatter);
    let beside = (0..CHANNELS).map(|j| (scatter[j][j] - along[j] * along[j]).max(0.0).sqrt()).collect();
    let capacity = found.iter().map(|one| one.2).sum::<f64>() / found.len() as f64;
    let still = y.iter().filter(|change| change[CHANNELS - 1].abs() < STILL_K).count();
    let counting = found.iter().filter(|one| counts(one.2, one.3)).count();
    Response {
        mean,
        along,
        beside,
        still: still as f64 / found.len() as f64,
        rows: x.len(),
        capacity,
        counts: counting as f64 / found.len() as f64,
    }
}

fn interplay_of(found: &[(Vec<f64>, Vec<f64>)]) -> Interplay {
    let x: Vec<Vec<f64>> = found.iter().map(|one| one.0.clone()).collect();
    let y: Vec<Vec<f64>> = found.iter().map(|one| one.1.clone()).collect();
    let mean = least_squares(&x, &y, 1e-3);
    let scatter = second_moment(&left_over(&x, &y, &mean), x.len() as f64);
    Interplay { mean, beside: (0..CHANNELS).map(|j| scatter[j][j].sqrt()).collect() }
}
