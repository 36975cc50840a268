//! From one end of a line to the other in pieces, with pressure, mass and energy in balance over each.

use super::fluid::Place;
use super::heat::Exchange;
use super::lift::STANDARD_GRAVITY;
use crate::eos::Properties;
use crate::error::Error;
use crate::lineset::friction::churchill;
use crate::math;

/// A pressure drop beyond this share of the pressure at the beginning is refused: the tube is no line for that flow.
const LARGEST_DROP: f64 = 0.5;
/// The pieces are so short that pressure, and with it density, changes by no more than about this share over each.
const CHANGE_PER_PIECE: f64 = 0.01;
/// Nor does the difference to the air change by more than about this share.
const UNITS_PER_PIECE: f64 = 0.25;
/// Fewest and most pieces.
const PIECES: (f64, f64) = (4.0, 64.0);

/// A line with one phase flowing in it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Line<'a> {
    pub properties: &'a Properties,
    /// kg/s.
    pub mass_flow: f64,
    /// Inside, m.
    pub diameter: f64,
    /// m.
    pub roughness: f64,
    /// Along the tube, m.
    pub length: f64,
    /// What friction acts on, the fittings included, m.
    pub friction_length: f64,
    /// m, positive where the flow goes upwards.
    pub rise: f64,
    /// On the friction, for its uncertainty.
    pub friction_scale: f64,
    pub heat: Heat,
}

/// Where heat comes from.
#[derive(Debug, Clone, Copy)]
pub(super) enum Heat {
    /// So many watts, evenly over the line.
    Power(f64),
    /// From the air around it.
    Exchange(Exchange),
}

/// What a piece of line, or a whole one, does. Pressures are losses in Pa, the heat is taken up, W.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Parts {
    pub friction: f64,
    pub lift: f64,
    pub acceleration: f64,
    pub heat: f64,
}

impl Parts {
    pub(super) fn drop(&self) -> f64 {
        self.friction + self.lift + self.acceleration
    }

    pub(super) fn plus(&self, other: &Self) -> Self {
        Self {
            friction: self.friction + other.friction,
            lift: self.lift + other.lift,
            acceleration: self.acceleration + other.acceleration,
            heat: self.heat + other.heat,
        }
    }
}

impl Line<'_> {
    /// Mass flow over bore area, kg/(s·m²).
    pub(super) fn mass_flux(&self) -> f64 {
        self.mass_flow / crate::lineset::tube::bore_area_m2(self.diameter)
    }

    pub(super) fn reynolds(&self, viscosity: f64) -> f64 {
        self.mass_flux() * self.diameter / viscosity
    }

    /// Darcy factor.
    pub(super) fn factor(&self, viscosity: f64) -> f64 {
        churchill(self.reynolds(viscosity), self.roughness / self.diameter)
    }

    /// Loss by friction in Pa for each metre along the tube.
    fn friction(&self, place: &Place) -> f64 {
        let flux = self.mass_flux();
        let straight = self.factor(place.viscosity) / self.diameter * flux * flux / (2.0 * place.density);
        self.friction_scale * straight * self.friction_length / self.length
    }

    /// In how many pieces to take it, from the place where its state is known.
    pub(super) fn pieces(&self, place: &Place) -> u32 {
        let loss = self.friction(place) * self.length + place.density * STANDARD_GRAVITY * self.rise.abs();
        let exchanged = match self.heat {
            Heat::Power(_) => 0.0,
            Heat::Exchange(exchange) => {
                exchange.conductance(self, place) * self.length / (self.mass_flow * place.heat_capacity)
            }
        };
        let wanted = (loss / (place.pressure * CHANGE_PER_PIECE)).max(exchanged / UNITS_PER_PIECE);
        // A compressible loss grows on the way, and only finite numbers come here.
        (wanted + 1.0).clamp(PIECES.0, PIECES.1) as u32
    }

    /// Heat taken up between two places `distance` metres apart, W, both negative against the flow; and by how much it
    /// falls as the second grows warmer, over the flow's heat capacity.
    fn heat(&self, from: &Place, to: &Place, distance: f64) -> (f64, f64) {
        match self.heat {
            Heat::Power(power) => (power * distance / self.length, 0.0),
            Heat::Exchange(exchange) => {
                // The logarithmic mean of the differences at both ends, as the arithmetic one times tanh(u/2)/(u/2): exact
                // where conductance and heat capacity stay the same over the piece, and the same in both directions.
                let conductance = 0.5 * (exchange.conductance(self, from) + exchange.conductance(self, to));
                let capacity = self.mass_flow * 0.5 * (from.heat_capacity + to.heat_capacity);
                let decay = math::exp(-conductance * distance / capacity);
                let half = (1.0 - decay) / (1.0 + decay);
                let differences = 2.0 * exchange.ambient - from.temperature - to.temperature;
                (capacity * half * differences, half)
            }
        }
    }

    /// The place `distance` metres further with the flow, or against it where negative, and what happened between.
    /// Friction and weight by the trapezoid rule, solved together with the state at the other end.
    pub(super) fn step(&self, from: &Place, distance: f64) -> Result<(Place, Parts), Error> {
        let flux = self.mass_flux();
        let slope = self.rise / self.length;
        let (of_friction, mut to) = (self.friction(from), *from);
        for _ in 0..40 {
            let (heat, falling) = self.heat(from, &to, distance);
            let parts = Parts {
                friction: 0.5 * (of_friction + self.friction(&to)) * distance,
                lift: 0.5 * (from.density + to.density) * STANDARD_GRAVITY * slope * distance,
                acceleration: flux * flux * (1.0 / to.density - 1.0 / from.density),
                heat,
            };
            let pressure = from.pressure - parts.drop();
            if !(pressure > (1.0 - LARGEST_DROP) * from.pressure) {
                return Err(self.too_small(from.pressure, parts.drop() * self.length / distance.abs()));
            }
            // What weight takes or gives is taken from the enthalpy; the change of kinetic energy, some 0.01 K, is not.
            let enthalpy = from.enthalpy + parts.heat / self.mass_flow - STANDARD_GRAVITY * slope * distance;
            let (density, here) = Place::density_and_enthalpy(self.properties, to.temperature, pressure, to.density)?;
            let warmer = (enthalpy - here) / (to.heat_capacity * (1.0 + falling));
            let settled = (pressure / to.pressure - 1.0).abs() < 1e-13 && warmer.abs() < 1e-11;
            to = Place { temperature: to.temperature + warmer, pressure, density, ..to };
            if settled {
                return Ok((Place { enthalpy, ..to }, parts));
            }
            to = Place::near(self.properties, to.temperature, pressure, density)?;
        }
        Err(Error::NotConverged { calculation: "pressure along the line", value: from.pressure, unit: "Pa" })
    }

    /// The whole line from one end to the other in so many pieces, with the flow or against it.
    pub(super) fn whole(&self, from: &Place, pieces: u32, with_the_flow: bool) -> Result<(Place, Parts), Error> {
        let sign = if with_the_flow { 1.0 } else { -1.0 };
        let distance = sign * self.length / f64::from(pieces);
        let (mut place, mut sum) = (*from, Parts::default());
        for _ in 0..pieces {
            let (next, parts) = self.step(&place, distance)?;
            (place, sum) = (next, sum.plus(&parts));
            if with_the_flow {
                self.check_drop(from.pressure, sum.drop())?;
            }
        }
        let flip = |loss: f64| sign * loss;
        Ok((
            place,
            Parts {
                friction: flip(sum.friction),
                lift: flip(sum.lift),
                acceleration: flip(sum.acceleration),
                heat: flip(sum.heat),
            },
        ))
    }

    /// Refuses a drop that leaves less than half of the pressure.
    pub(super) fn check_drop(&self, pressure: f64, drop: f64) -> Result<(), Error> {
        if drop <= LARGEST_DROP * pressure { Ok(()) } else { Err(self.too_small(pressure, drop)) }
    }

    fn too_small(&self, pressure: f64, drop: f64) -> Error {
        let advice =
            "the tube is far too small, too long or too high for this flow: check bore, length, rise and mass flow";
        crate::bounds::refuse("pressure drop of the line", "Pa", drop, -pressure, LARGEST_DROP * pressure, advice)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::{Reference, model};
    use crate::lineset::Tube;

    fn line(properties: &Properties, mass_flow: f64) -> (Line<'_>, Place) {
        let tube = Tube::named("3/4").unwrap();
        let line = Line {
            properties,
            mass_flow,
            diameter: tube.inside_diameter_m(),
            roughness: tube.roughness_m(),
            length: 30.0,
            friction_length: 35.0,
            rise: 9.0,
            friction_scale: 1.0,
            heat: Heat::Exchange(Exchange::new(310.0, 9.0, 0.04, 0.013, 0.75 * 0.0254).unwrap()),
        };
        let mixture = properties.mixture();
        let density = mixture.density(286.0, 9e5).unwrap() * mixture.molar_mass;
        (line, Place::near(properties, 286.0, 9e5, density).unwrap())
    }

    /// Against four times as many pieces than ever: from a drop of one per cent to one of a quarter of the pressure.
    #[test]
    fn the_pieces_are_short_enough() {
        let r454b = Properties::of(&model::R454B, Reference::Iir).unwrap();
        for (mass_flow, least_share) in [(0.02, 0.0), (0.06, 0.02), (0.15, 0.2)] {
            let (line, from) = line(&r454b, mass_flow);
            let pieces = line.pieces(&from);
            let (to, parts) = line.whole(&from, pieces, true).unwrap();
            let (exact, of_exact) = line.whole(&from, 256, true).unwrap();
            let error = (parts.drop() / of_exact.drop() - 1.0).abs();
            std::println!("{pieces} pieces, {:.3} of the pressure: error {error:.1e}", parts.drop() / from.pressure);
            assert!(error < 2e-4 && parts.drop() > least_share * from.pressure, "{error}");
            assert!((to.temperature - exact.temperature).abs() < 2e-3);
            assert!((parts.heat / of_exact.heat - 1.0).abs() < 2e-4);
            // One piece alone would not do where the vapour grows thinner.
            if least_share > 0.1 {
                let coarse = line.whole(&from, 1, true).unwrap().1.drop();
                assert!((coarse / of_exact.drop() - 1.0).abs() > 2e-3);
            }
        }
    }

    /// Pressures add up over the pieces, and so does the energy.
    #[test]
    fn what_is_lost_is_gone() {
        let r454b = Properties::of(&model::R454B, Reference::Iir).unwrap();
        let (line, from) = line(&r454b, 0.05);
        let (to, parts) = line.whole(&from, 8, true).unwrap();
        assert!((from.pressure - to.pressure - parts.drop()).abs() < 1e-6);
        let energy = line.mass_flow * (to.enthalpy - from.enthalpy + STANDARD_GRAVITY * line.rise);
        assert!((energy / parts.heat - 1.0).abs() < 1e-9);
        let flux = line.mass_flux();
        assert!((parts.acceleration / (flux * flux * (1.0 / to.density - 1.0 / from.density)) - 1.0).abs() < 1e-9);
    }
}
