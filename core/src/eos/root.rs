//! The density at which an isotherm has a pressure, sought from outside: a vapour from below, a liquid from above.
//!
//! From outside Newton's method meets a curve that bends one way only and comes to the outermost root, which is the
//! stable one of its kind; whatever loops the equations make between the phases are never entered.

use super::isotherm::{Along, Isotherm};

/// Most steps of a search.
const MOST_STEPS: usize = 200;
/// A step relatively smaller than this is the last: convergence is quadratic.
const LAST_STEP: f64 = 1e-9;

/// What a step of the search says.
enum Next {
    Density(f64),
    Found(f64),
    Nothing,
}

fn newton(here: &Along, wanted: f64) -> Next {
    let next = here.density - (here.pressure() - wanted) / here.slope();
    let moved = (next - here.density).abs();
    if !(next > 0.0 && next.is_finite()) {
        Next::Density(0.5 * here.density)
    } else if moved < LAST_STEP * here.density {
        Next::Found(next)
    } else {
        Next::Density(next)
    }
}

impl<const MOST: usize> Isotherm<'_, MOST> {
    /// Steps from a state until one says that the root is found; the last step is not evaluated again.
    fn seek(&self, start: Along, step: impl Fn(&Along) -> Next) -> Option<Along> {
        let mut here = start;
        for _ in 0..MOST_STEPS {
            match step(&here) {
                Next::Density(next) => here = self.at(next),
                Next::Found(density) => return Some(Along { density, ..here }),
                Next::Nothing => return None,
            }
        }
        None
    }

    /// The vapour's density at a pressure in Pa, sought from one no higher than `most`, which must be a vapour's; `None`
    /// where a vapour does not stretch to that pressure.
    pub fn thin(&self, pressure: f64, most: f64) -> Option<Along> {
        let wanted = pressure / self.rt;
        self.seek(self.at(wanted.min(most)), |here| {
            match (here.slope() > 0.0, here.pressure() < wanted) {
                // Below the end of the vapour: the pressure sought lies beyond it.
                (false, true) => Next::Nothing,
                (false, false) => Next::Density(0.5 * here.density),
                (true, _) => match newton(here, wanted) {
                    Next::Density(next) => Next::Density(next.min(1.5 * here.density)),
                    other => other,
                },
            }
        })
    }

    /// The liquid's density at a pressure in Pa, from a state near it; `None` where a liquid does not expand to it.
    pub fn dense(&self, pressure: f64, estimate: Along) -> Option<Along> {
        let wanted = pressure / self.rt;
        // First up to a density that is surely a liquid's and has more than the pressure, in steps that do not pass
        // far beyond: there the equations mean nothing.
        let mut start = estimate;
        let mut tries = 0;
        while !(start.slope() > 0.0 && start.pressure() >= wanted) {
            let up = if start.slope() > 0.0 {
                // The curve bends upwards, so that this arrives at or above the root.
                (start.density + (wanted - start.pressure()) / start.slope()).min(1.1 * start.density)
            } else {
                1.05 * start.density
            };
            if (up - start.density).abs() < LAST_STEP * start.density {
                return Some(Along { density: up, ..start });
            }
            start = self.at(up);
            tries += 1;
            if tries > MOST_STEPS {
                return None;
            }
        }
        self.seek(start, |here| if here.slope() > 0.0 { newton(here, wanted) } else { Next::Nothing })
    }

    /// The density at a pressure in Pa where pressure rises with density all the way.
    pub fn only(&self, pressure: f64) -> Option<Along> {
        let wanted = pressure / self.rt;
        let (mut low, mut high) = (0.0, f64::INFINITY);
        let mut density = wanted.min(self.typical_density());
        for _ in 0..MOST_STEPS {
            let here = self.at(density);
            if here.pressure() > wanted {
                high = density;
            } else {
                low = density;
            }
            let next = match newton(&here, wanted) {
                Next::Found(found) if here.slope() > 0.0 => return Some(Along { density: found, ..here }),
                Next::Density(next) if here.slope() > 0.0 && next > low && next < high => next.min(1.2 * density),
                _ if high.is_finite() => 0.5 * (low + high),
                _ => 1.1 * density,
            };
            // A root so flat that the bracket closes on it first.
            if next == density {
                return Some(here);
            }
            density = next;
        }
        None
    }
}
