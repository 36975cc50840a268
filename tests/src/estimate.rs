//! How the mixture parameters that nobody has published were estimated: `satline::eos::pair`'s estimated pairs.
//!
//! Every such pair has one parameter, γT; βT = βV = γV = 1, and no departure function. A value without data comes by
//! analogy with published pairs ([`ANALOGIES`]). A few of them decide where published blends boil ([`SHIFTS`]): they move
//! away from the analogy as far as the published points ask, by least squares with a penalty on the move. The published
//! points are those of `data/published_points.csv`: of AHRI 700 where there are such, otherwise of ASHRAE 34.

use satline::Error;
use satline::eos::{End, Mixture, Model, Pair, PureFluid, Rule, model, pair};
use satline::refrigerant::identity::{Component, Identity, SafetyClass};
use satline::refrigerant::{self, Confidence, Refrigerant};

/// What γT is taken to be: the mean of lines, each a sum of γT of published pairs with their signs.
pub struct Analogy {
    /// One component.
    pub first: &'static str,
    /// The other.
    pub second: &'static str,
    /// The lines.
    pub lines: &'static [&'static [(f64, &'static Pair)]],
}

/// The mean over pairs that resemble it.
macro_rules! mean {
    ($first:literal, $second:literal, [$($pair:ident)+]) => {
        Analogy { first: $first, second: $second, lines: &[$(&[(1.0, &pair::$pair)]),+] }
    };
}

/// A pentane instead of butane: the difference is taken from two partners for which both are published.
macro_rules! pentane {
    ($first:literal, $second:literal, $butane:ident) => {
        Analogy {
            first: $first,
            second: $second,
            lines: &[
                &[(1.0, &pair::$butane), (1.0, &pair::R601_WITH_R152A), (-1.0, &pair::R600_WITH_R152A)],
                &[(1.0, &pair::$butane), (1.0, &pair::R601_WITH_R1234ZEE), (-1.0, &pair::R1234ZEE_WITH_R600A)],
            ],
        }
    };
}

/// Every estimated pair.
pub static ANALOGIES: &[Analogy] = &[
    mean!("R-125", "R-22", [R32_WITH_R22 R134A_WITH_R22 R143A_WITH_R22 R152A_WITH_R22]),
    mean!("R-22", "R-124", [R124_WITH_R134A R124_WITH_R142B R142B_WITH_R22 R134A_WITH_R22]),
    mean!("R-152a", "R-124", [R124_WITH_R134A R124_WITH_R142B R152A_WITH_R227EA R152A_WITH_R142B R152A_WITH_R22]),
    mean!("R-290", "R-218", [R170_WITH_R218 R290_WITH_R115 R1270_WITH_R115]),
    mean!("R-22", "R-600a", [R290_WITH_R22 R601_WITH_R22]),
    mean!("R-124", "R-600a", [R290_WITH_R22 R601_WITH_R22 R290_WITH_R115 R600A_WITH_R227EA R600A_WITH_R134A]),
    mean!("R-124", "R-600", [R290_WITH_R22 R601_WITH_R22 R290_WITH_R115 R600_WITH_R227EA R600_WITH_R134A]),
    Analogy {
        first: "R-600a",
        second: "R-142b",
        lines: &[
            &[(1.0, &pair::R600A_WITH_R152A), (1.0, &pair::R1270_WITH_R142B), (-1.0, &pair::R1270_WITH_R152A)],
            &[(1.0, &pair::R1270_WITH_R142B), (1.0, &pair::R290_WITH_R22), (-1.0, &pair::R1270_WITH_R22)],
        ],
    },
    pentane!("R-32", "R-601a", R600_WITH_R32),
    pentane!("R-125", "R-601a", R600_WITH_R125),
    pentane!("R-134a", "R-601a", R600_WITH_R134A),
    pentane!("R-227ea", "R-601a", R600_WITH_R227EA),
    pentane!("R-125", "R-601", R600_WITH_R125),
    pentane!("R-134a", "R-601", R600_WITH_R134A),
    mean!("R-227ea", "R-236fa", [R134A_WITH_R227EA R134A_WITH_R236FA R125_WITH_R227EA R125_WITH_R236FA]),
];

/// What is fitted: a move of γT away from the analogy, shared by pairs; and how far it is expected to go.
pub struct Shift {
    /// The pairs that move together.
    pub pairs: &'static [(&'static str, &'static str)],
    /// Standard deviation of the move without data.
    pub expected: f64,
}

/// The pairs of which a change by 0.01 moves a published point by some tenths of a kelvin. Pairs of halogenated
/// components scatter about their analogies by 0.01, those with hydrocarbons by 0.02.
pub static SHIFTS: &[Shift] = &[
    Shift { pairs: &[("R-125", "R-22")], expected: 0.01 },
    Shift { pairs: &[("R-22", "R-124")], expected: 0.01 },
    Shift {
        pairs: &[
            ("R-32", "R-601a"),
            ("R-125", "R-601a"),
            ("R-134a", "R-601a"),
            ("R-227ea", "R-601a"),
            ("R-125", "R-601"),
            ("R-134a", "R-601"),
        ],
        expected: 0.02,
    },
];

/// Standard uncertainty given to a published point, K: what the blends of published pairs show.
pub const POINT_UNCERTAINTY: f64 = 0.3;

/// Published points to which nothing is fitted although there is no other: as remembered, the dew point of R-401A in
/// AHRI 700 is that of ASHRAE 34, whose bubble point is 1.5 K lower.
pub static DOUBTED: &[(&str, &str)] = &[("R-401A", "dew")];

/// Published points that contradict others, and that no value of the estimated pair reaches: R-22 with R-218 boils at
/// −47.0 °C in the shares of R-509A (ASHRAE 34; the published pair gives −47.2 °C); at those of R-403B it hardly boils
/// higher, and propane lowers that.
pub static CONTRADICTED: &[(&str, &str)] = &[("R-403B", "bubble"), ("R-403B", "dew")];

/// A published bubble or dew point.
#[derive(Debug, Clone)]
pub struct Point {
    /// The blend.
    pub designation: String,
    /// Its composition.
    pub components: Vec<Component>,
    /// Bubble or dew.
    pub end: End,
    /// The published temperature at 101 325 Pa.
    pub celsius: f64,
    /// Who published it.
    pub source: String,
    /// Whether the estimate uses it.
    pub fitted: bool,
}

fn rows(text: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    text.lines().filter(|line| !line.starts_with('#')).skip(1).map(|line| line.split(',').collect())
}

/// The published points of the estimated refrigerants.
pub fn points() -> Vec<Point> {
    let mut points = Vec::new();
    for row in rows(include_str!("../data/published_points.csv")) {
        let [designation, point, celsius, source, _] = row[..] else { panic!("{row:?}") };
        let Ok(refrigerant) = refrigerant::find(designation) else { continue };
        if refrigerant.confidence != Confidence::Estimated || point == "critical" {
            continue;
        }
        points.push(Point {
            designation: designation.into(),
            components: refrigerant.identity().components.to_vec(),
            end: if point == "dew" { End::Dew } else { End::Bubble },
            celsius: celsius.parse().expect("a number"),
            source: source.into(),
            fitted: !DOUBTED.contains(&(designation, point)) && !CONTRADICTED.contains(&(designation, point)),
        });
    }
    // ASHRAE 34 only where AHRI 700 has nothing.
    let ahri = |point: &Point| ["2", "4"].contains(&point.source.as_str());
    let with_ahri: Vec<String> =
        points.iter().filter(|point| ahri(point)).map(|point| point.designation.clone()).collect();
    for point in &mut points {
        point.fitted &= ahri(point) || !with_ahri.contains(&point.designation);
    }
    points
}

/// Points of blends of the same components in other shares, not in the catalogue and never fitted, with the
/// refrigerant whose pairs they share.
pub fn held_out() -> Vec<(Point, &'static Refrigerant)> {
    let read = |row: Vec<&'static str>| {
        let [designation, sister, shares, point, celsius, source, _] = row[..] else { panic!("{row:?}") };
        let sister = refrigerant::find(sister).expect("a refrigerant");
        let components = shares.split(' ').map(|share| {
            let (designation, percent) = share.split_once('=').expect("component=percent");
            let percent: f64 = percent.parse().expect("a number");
            Component { designation, mass_fraction: percent / 100.0 }
        });
        let point = Point {
            designation: designation.into(),
            components: components.collect(),
            end: if point == "dew" { End::Dew } else { End::Bubble },
            celsius: celsius.parse().expect("a number"),
            source: source.into(),
            fitted: false,
        };
        (point, sister)
    };
    rows(include_str!("../data/estimated_held_out.csv")).map(read).collect()
}

/// γT of a published pair, whichever rule it is published with.
fn gamma_of(pair: &Pair) -> f64 {
    match pair.temperature {
        Rule::BetaGamma(_, gamma) => gamma,
        Rule::Excess(excess) => {
            let [t1, t2] = pair.components.map(|fluid| fluid.reducing_temperature);
            (t1 + t2 + excess) / (2.0 * (t1 * t2).sqrt())
        }
    }
}

impl Analogy {
    /// γT without data.
    pub fn gamma(&self) -> f64 {
        let line = |line: &&[(f64, &Pair)]| -> f64 { line.iter().map(|(sign, pair)| sign * gamma_of(pair)).sum() };
        self.lines.iter().map(line).sum::<f64>() / self.lines.len() as f64
    }
}

/// γT of every pair, in the order of [`ANALOGIES`], after the moves.
pub fn gammas(moves: &[f64]) -> Vec<f64> {
    let moved = |analogy: &Analogy| {
        let of_pair =
            SHIFTS.iter().zip(moves).filter(|(shift, _)| shift.pairs.contains(&(analogy.first, analogy.second)));
        analogy.gamma() + of_pair.map(|(_, by)| by).sum::<f64>()
    };
    ANALOGIES.iter().map(moved).collect()
}

fn fluid(designation: &str) -> &'static PureFluid {
    let pure = model::ALL.iter().filter_map(|model| match model.fluids {
        [fluid] => Some(*fluid),
        _ => None,
    });
    pure.into_iter().find(|fluid| fluid.designation == designation).expect("a pure fluid")
}

/// A blend with trial values of γT. Models are static: what is made here stays until the program ends.
fn mixture(point: &Point, gammas: &[f64]) -> Mixture {
    fn keep<T>(value: T) -> &'static T {
        Box::leak(Box::new(value))
    }
    let fluids: Vec<_> = point.components.iter().map(|component| fluid(component.designation)).collect();
    let inside = |pair: &&Pair| pair.components.iter().all(|end| fluids.iter().any(|one| std::ptr::eq(*one, *end)));
    let estimates = ANALOGIES.iter().zip(gammas).map(|(analogy, gamma)| -> &'static Pair {
        keep(Pair {
            components: [fluid(analogy.first), fluid(analogy.second)],
            temperature: Rule::BetaGamma(1.0, *gamma),
            volume: Rule::BetaGamma(1.0, 1.0),
            departure_factor: 0.0,
            departure: &[],
        })
    });
    // The first match counts: the trial values come before those of the catalogue.
    let published = model::ALL.iter().flat_map(|model| model.pairs).copied();
    let pairs: Vec<&'static Pair> = estimates.chain(published).filter(inside).collect();
    let identity = keep(Identity {
        designation: String::leak(point.designation.clone()),
        components: Vec::leak(point.components.clone()),
        safety_class: SafetyClass::Unclassified,
        lower_flammability_limit_kg_m3: None,
        saturation_uncertainty_k: None,
    });
    let model: &'static Model = keep(Model { identity, fluids: Vec::leak(fluids), pairs: Vec::leak(pairs) });
    Mixture::of(model).expect("a blend with all its pairs")
}

/// Computed minus published, K.
pub fn deviation(point: &Point, gammas: &[f64]) -> f64 {
    let found = mixture(point, gammas).at_pressure(point.end, 101_325.0).expect("a normal boiling point");
    found.temperature - 273.15 - point.celsius
}

/// The moves that fit these points: Gauss-Newton with slopes by differences.
pub fn fit(points: &[&Point]) -> Vec<f64> {
    const STEP: f64 = 1e-3;
    let count = SHIFTS.len();
    let mut moves = vec![0.0; count];
    for _ in 0..6 {
        // Normal equations, first of the penalties, then of the points.
        let mut matrix = vec![vec![0.0; count + 1]; count];
        for (index, shift) in SHIFTS.iter().enumerate() {
            matrix[index][index] = 1.0 / (shift.expected * shift.expected);
            matrix[index][count] = -moves[index] * matrix[index][index];
        }
        for point in points {
            let here = deviation(point, &gammas(&moves));
            let slopes: Vec<f64> = (0..count)
                .map(|index| {
                    let mut moved = moves.clone();
                    moved[index] += STEP;
                    (deviation(point, &gammas(&moved)) - here) / STEP
                })
                .collect();
            let weight = 1.0 / (POINT_UNCERTAINTY * POINT_UNCERTAINTY);
            for row in 0..count {
                for column in 0..count {
                    matrix[row][column] += weight * slopes[row] * slopes[column];
                }
                matrix[row][count] -= weight * slopes[row] * here;
            }
        }
        for (place, step) in moves.iter_mut().zip(solve(matrix)) {
            *place += step;
        }
    }
    moves
}

/// Gauss's elimination of a positive definite system.
fn solve(mut matrix: Vec<Vec<f64>>) -> Vec<f64> {
    let count = matrix.len();
    for pivot in 0..count {
        let head = matrix[pivot].clone();
        for (row, line) in matrix.iter_mut().enumerate() {
            if row != pivot {
                let factor = line[pivot] / head[pivot];
                line.iter_mut().zip(&head).for_each(|(entry, above)| *entry -= factor * above);
            }
        }
    }
    (0..count).map(|row| matrix[row][count] / matrix[row][row]).collect()
}

/// For every published point its deviation when no point of its own blend is fitted.
pub fn left_out() -> Vec<(Point, f64)> {
    let points = points();
    let off = |point: &Point| {
        let others: Vec<_> =
            points.iter().filter(|other| other.fitted && other.designation != point.designation).collect();
        deviation(point, &gammas(&fit(&others)))
    };
    points.iter().map(|point| (point.clone(), off(point))).collect()
}

/// Root mean square, K.
pub fn root_mean_square(deviations: &[f64]) -> f64 {
    (deviations.iter().map(|off| off * off).sum::<f64>() / deviations.len() as f64).sqrt()
}

/// How much more a change of γT moves the bubble or dew temperature at [`HOT`] than at 101 325 Pa, at most: measured by
/// [`growth`], rounded up.
pub const GROWTH: f64 = 1.8;
/// A condenser's temperature on a hot day, K.
pub const HOT: f64 = 333.15;
/// Nothing better is stated of an estimate, K: the published points are not better than this.
pub const LEAST_UNCERTAINTY: f64 = 0.5;

/// The standard uncertainty to be stated of each estimated refrigerant, K: the root mean square deviation of all its
/// published points from a fit without them, carried from 101 325 Pa to the pressures of a hot condenser. Where no point
/// can be used, that of all other blends from the analogies alone.
pub fn stated() -> Vec<(&'static Refrigerant, f64)> {
    let left_out = left_out();
    let contradicted = |point: &Point| {
        let end = if point.end == End::Dew { "dew" } else { "bubble" };
        CONTRADICTED.contains(&(point.designation.as_str(), end))
    };
    let usable: Vec<_> = left_out.iter().filter(|(point, _)| !contradicted(point)).collect();
    let by_analogy: Vec<f64> = usable.iter().map(|(point, _)| deviation(point, &gammas(&[]))).collect();
    let estimated = refrigerant::ALL.iter().filter(|refrigerant| refrigerant.confidence == Confidence::Estimated);
    let of = |refrigerant: &&'static Refrigerant| {
        let own: Vec<f64> = usable
            .iter()
            .filter(|(point, _)| point.designation == refrigerant.designation())
            .map(|(_, off)| *off)
            .collect();
        let typical = root_mean_square(if own.is_empty() { &by_analogy } else { &own });
        (*refrigerant, (GROWTH * typical).max(LEAST_UNCERTAINTY))
    };
    estimated.map(of).collect()
}

/// The largest growth among blends of which γT matters at 101 325 Pa.
pub fn growth() -> f64 {
    let here = gammas(&[]);
    let moved: Vec<f64> = here.iter().map(|gamma| gamma + 0.01).collect();
    let mut largest: f64 = 0.0;
    for point in points() {
        let (one, other) = (mixture(&point, &here), mixture(&point, &moved));
        let change = |pressure: f64| -> Result<f64, Error> {
            let temperature = |mixture: &Mixture| Ok(mixture.at_pressure(point.end, pressure)?.temperature);
            Ok(temperature(&other)? - temperature(&one)?)
        };
        let hot = one.at_temperature(point.end, HOT).expect("a point below the critical one").pressure;
        let (cold, hot) = (change(101_325.0).expect("a boiling point"), change(hot).expect("a boiling point"));
        if cold > 0.3 {
            largest = largest.max(hot / cold);
        }
    }
    largest
}
