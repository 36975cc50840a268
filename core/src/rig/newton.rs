//! Newton's method for three balances.

use crate::error::Error;

/// The unknowns: logarithms of both pressures, and suction enthalpy beyond dew in 10 kJ/kg.
pub(super) type Unknowns = [f64; 3];

/// How exactly the three balances close, relatively; and what is still accepted where rounding allows no better.
const CLOSED: f64 = 1e-9;
const ACCEPTED: f64 = 1e-7;
const MOST_ITERATIONS: usize = 25;
/// Iterations in a row that may each bring less than a tenth before the search is given up.
const MOST_SLOW: usize = 3;
/// Steps of the difference quotients.
const STEPS: Unknowns = [1e-6, 1e-6, 1e-5];
/// No pressure moves by more than a fifth at once, nor the enthalpy by more than 15 kJ/kg.
const LONGEST: Unknowns = [0.2, 0.2, 1.5];

/// Where all balances close: the state, the unknowns and the largest miss left.
pub(super) type Found<S> = (S, Unknowns, f64);

/// How a search goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Manner {
    /// Each step must close the balances better.
    Careful,
    /// A step may open them some: past a kink, where liquid begins to boil, the way down may first lead up.
    Bold,
    /// Careful, and where no step helps, along slopes that look further.
    Thorough,
}

/// How many times more a bold step may leave of the squares.
const BOLD: f64 = 30.0;

/// How the steps of the difference quotients are stretched in turn where no step along the slopes closes better: where
/// liquid begins to boil or a valve closes, the balances have a kink, and the slopes of one side do not show the other.
const STRETCHES: [f64; 5] = [1.0, -1.0, -1e3, 1e3, 1e4];

/// Newton's method with difference quotients, each step shortened until the balances close better. None where it
/// comes to rest without closing.
///
/// # Errors
/// Those of the balances at the start.
pub(super) fn newton<S: Copy>(
    start: Unknowns,
    manner: Manner,
    misses_at: impl Fn(&Unknowns) -> Result<([f64; 3], S), Error>,
) -> Result<Option<Found<S>>, Error> {
    let mut at = start;
    let mut slow = 0;
    let (mut misses, mut state) = misses_at(&at)?;
    for _ in 0..MOST_ITERATIONS {
        let size = largest(&misses);
        if size < CLOSED {
            return Ok(Some((state, at, size)));
        }
        let tried = if manner == Manner::Thorough { STRETCHES.len() } else { 1 };
        let allowed = if manner == Manner::Bold { BOLD * squares(&misses) } else { squares(&misses) };
        let closer = STRETCHES.into_iter().take(tried).find_map(|stretch| {
            let step = solve_three(&slopes(&at, &misses, stretch, &misses_at)?, &misses)?;
            search(&at, &step, allowed, &misses_at)
        });
        let Some(next) = closer else { break };
        slow = if squares(&next.1) > 0.81 * squares(&misses) { slow + 1 } else { 0 };
        (at, misses, state) = next;
        if slow > MOST_SLOW && manner != Manner::Bold {
            break;
        }
    }
    let size = largest(&misses);
    Ok((size < ACCEPTED).then_some((state, at, size)))
}

/// The first point on the way back from a full step at which the balances close better.
fn search<S>(
    at: &Unknowns,
    step: &Unknowns,
    squares_here: f64,
    misses_at: impl Fn(&Unknowns) -> Result<([f64; 3], S), Error>,
) -> Option<(Unknowns, [f64; 3], S)> {
    let longest = step.iter().zip(LONGEST).fold(1.0, |most: f64, (step, limit)| most.max(step.abs() / limit));
    let mut share = 1.0 / longest;
    for _ in 0..12 {
        let moved: Unknowns = core::array::from_fn(|place| at[place] - share * step[place]);
        if let Ok((there, state)) = misses_at(&moved) {
            if squares(&there) < squares_here * (1.0 - 1e-3 * share) {
                return Some((moved, there, state));
            }
        }
        share *= 0.5;
    }
    None
}

/// Shortest step of the way from the rating point.
const SHORTEST_STEP: f64 = 1.5e-2;

/// Where to begin, as moves from a guess.
const STARTS: [Unknowns; 5] =
    [[0.0, 0.0, 0.0], [-0.3, 0.2, 1.0], [0.1, 0.0, -2.5], [0.1, -0.1, -0.5], [-0.8, -0.1, 2.5]];

fn from_many<S: Copy>(
    guess: &Unknowns,
    manner: Manner,
    misses_at: impl Fn(&Unknowns) -> Result<([f64; 3], S), Error>,
) -> Option<Found<S>> {
    // Bold searches reach far by themselves.
    let tried = if manner == Manner::Bold { 3 } else { 5 };
    STARTS.into_iter().take(tried).find_map(|shift| {
        let start = core::array::from_fn(|place| guess[place] + shift[place]);
        newton(start, manner, &misses_at).ok().flatten()
    })
}

/// Finds where the balances close at a share of 1 of the way from the rating point of a healthy unit to what is asked:
/// at once if that goes, else along the way, in steps as large as they will go, each begun where the last two point to.
///
/// # Errors
/// The last state on the way that was found, if any.
pub(super) fn settle<S: Copy>(
    guess: impl Fn(f64) -> Unknowns,
    misses_at: impl Fn(f64, &Unknowns) -> Result<([f64; 3], S), Error>,
) -> Result<Found<S>, Option<Found<S>>> {
    let at_once = |manner| from_many(&guess(1.0), manner, |unknowns| misses_at(1.0, unknowns));
    if let Some(found) = at_once(Manner::Careful).or_else(|| at_once(Manner::Bold)) {
        return Ok(found);
    }
    let mut last = from_many(&guess(0.0), Manner::Thorough, |unknowns| misses_at(0.0, unknowns)).ok_or(None)?;
    let (mut reached, mut step) = (0.0, 0.25);
    let mut slope = [0.0; 3];
    while reached < 1.0 {
        let next = f64::min(reached + step, 1.0);
        // A long step that needs a thorough search is better shortened.
        let manner = if step > 0.05 { Manner::Careful } else { Manner::Thorough };
        let at = |start| newton(start, manner, |unknowns| misses_at(next, unknowns)).ok().flatten();
        let ahead = core::array::from_fn(|place| last.1[place] + (next - reached) * slope[place]);
        match at(ahead).or_else(|| at(last.1)) {
            Some(found) => {
                slope = core::array::from_fn(|place| (found.1[place] - last.1[place]) / (next - reached));
                (reached, last) = (next, found);
                step *= 1.6;
            }
            None => step *= 0.35,
        }
        if step < SHORTEST_STEP {
            return Err(Some(last));
        }
    }
    Ok(last)
}

/// Rows of balances, columns of unknowns.
fn slopes<S>(
    at: &Unknowns,
    misses: &[f64; 3],
    stretch: f64,
    misses_at: impl Fn(&Unknowns) -> Result<([f64; 3], S), Error>,
) -> Option<[[f64; 3]; 3]> {
    let mut slopes = [[0.0; 3]; 3];
    for unknown in 0..3 {
        let step = stretch * STEPS[unknown];
        let towards = |step: f64| {
            let mut moved = *at;
            moved[unknown] += step;
            misses_at(&moved).ok().map(|(there, _)| (there, step))
        };
        // At the edge of the map one side is missing.
        let (there, step) = towards(step).or_else(|| towards(-step))?;
        for row in 0..3 {
            slopes[row][unknown] = (there[row] - misses[row]) / step;
        }
    }
    Some(slopes)
}

fn largest(misses: &[f64; 3]) -> f64 {
    misses.iter().fold(0.0, |most, miss| most.max(miss.abs()))
}

fn squares(misses: &[f64; 3]) -> f64 {
    misses.iter().map(|miss| miss * miss).sum()
}

/// Solves three linear equations by Cramer's rule; none where they do not decide.
fn solve_three(slopes: &[[f64; 3]; 3], right: &[f64; 3]) -> Option<[f64; 3]> {
    let determinant = |m: &[[f64; 3]; 3]| {
        m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
            + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
    };
    let whole = determinant(slopes);
    let solution: [f64; 3] = core::array::from_fn(|column| {
        let mut replaced = *slopes;
        for (row, value) in replaced.iter_mut().zip(right) {
            row[column] = *value;
        }
        determinant(&replaced) / whole
    });
    solution.iter().all(|value| value.is_finite()).then_some(solution)
}
