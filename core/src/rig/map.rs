//! The rig's own map of a refrigerant, made from its equation of state: a unit's balance asks for thousands of states,
//! each of which would take the equation some microseconds.
//!
//! Nodes are even in the logarithm of pressure. Vapour reaches from dew to the hottest temperature of a unit, closer
//! together near dew; liquid from bubble down by [`SUBCOOLING_K`]. Two phases are placed by how far their enthalpy is on
//! the way from bubble to dew; a blend's quality bends off that way and is mapped with it. Against the equation of
//! state: 3 mK, 2e-4 of enthalpy (by the heat of evaporation) and density, from 2.5 bar to 0.88 of the critical pressure.

use super::grid::{Weights, place_of};
use crate::bounds;
use crate::eos::{End, Mixture, Model, Properties, Reference, StateInput};
use crate::error::Error;
use crate::math;

const PRESSURES: usize = 72;
const VAPORS: usize = 24;
const LIQUIDS: usize = 16;
/// Coldest dew temperature of the map, K, where the equation of state reaches so far down.
const COLDEST_K: f64 = 223.15;
/// Hottest vapour, K, where the equation of state reaches so far up.
const HOTTEST_K: f64 = 453.15;
/// Highest pressure, as a share of the critical pressure.
const HIGHEST_SHARE: f64 = 0.92;
/// How far below its bubble temperature the liquid is mapped, K.
const SUBCOOLING_K: f64 = 65.0;

const ADVICE: &str = "the rig's units do not run there: choose milder conditions or a fault less severe";

/// Temperature, enthalpy, entropy and density of one phase or of two.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// K.
    pub temperature: f64,
    /// Pa, absolute.
    pub pressure: f64,
    /// J/kg.
    pub enthalpy: f64,
    /// kg/m³; of two phases without slip.
    pub density: f64,
    /// J/(kg·K), of vapour only.
    pub entropy: Option<f64>,
    /// Share of the way from bubble to dew by enthalpy, of a pure refrigerant the vapour's share of the mass: below 0 of
    /// subcooled liquid, above 1 of superheated vapour.
    pub quality: f64,
}

/// Both ends of the two-phase region at one pressure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Saturation {
    /// Pa, absolute.
    pub pressure: f64,
    /// K.
    pub bubble_temperature: f64,
    /// K.
    pub dew_temperature: f64,
    /// Temperature half way from bubble to dew by enthalpy, K.
    pub middle_temperature: f64,
    /// Quality there: of a blend not quite a half.
    pub middle_quality: f64,
    /// Enthalpy at the bubble point, J/kg.
    pub liquid_enthalpy: f64,
    /// Enthalpy at the dew point, J/kg.
    pub vapor_enthalpy: f64,
    /// Density at the bubble point, kg/m³.
    pub liquid_density: f64,
    /// Density at the dew point, kg/m³.
    pub vapor_density: f64,
    /// Viscosity at the bubble point, Pa·s.
    pub liquid_viscosity: f64,
    /// Viscosity at the dew point, Pa·s.
    pub vapor_viscosity: f64,
}

impl Saturation {
    /// The vapour's share of the mass at a share of the way from bubble to dew by enthalpy.
    #[must_use]
    pub fn mass_quality(&self, share: f64) -> f64 {
        share + 4.0 * (self.middle_quality - 0.5) * share * (1.0 - share)
    }

    /// Temperature at a share of the way from bubble to dew by enthalpy, K.
    #[must_use]
    pub fn temperature(&self, quality: f64) -> f64 {
        let (bubble, middle, dew) = (self.bubble_temperature, self.middle_temperature, self.dew_temperature);
        // The parabola through bubble, middle and dew.
        let bow = 4.0 * (middle - 0.5 * (bubble + dew));
        bubble + quality * (dew - bubble) + bow * quality * (1.0 - quality)
    }

    /// Mean temperature from one share to another, K: what a coil's two-phase zone is worth.
    #[must_use]
    pub fn mean_temperature(&self, from: f64, to: f64) -> f64 {
        // Simpson's rule, exact for the parabola.
        (self.temperature(from) + 4.0 * self.temperature(0.5 * (from + to)) + self.temperature(to)) / 6.0
    }
}

/// The map of one refrigerant, about 66 kB: keep it in a static or a box.
#[derive(Debug, Clone)]
pub struct RefrigerantMap {
    designation: &'static str,
    /// Natural logarithm of the lowest pressure in Pa, and the step.
    first: f64,
    step: f64,
    hottest: f64,
    coldest: f64,
    critical_pressure: f64,
    critical_temperature: f64,
    bubble_temperature: [f64; PRESSURES],
    middle_temperature: [f64; PRESSURES],
    middle_quality: [f64; PRESSURES],
    dew_temperature: [f64; PRESSURES],
    liquid_enthalpy: [f64; PRESSURES],
    vapor_enthalpy: [f64; PRESSURES],
    liquid_ln_density: [f64; PRESSURES],
    vapor_ln_density: [f64; PRESSURES],
    liquid_ln_viscosity: [f64; PRESSURES],
    vapor_ln_viscosity: [f64; PRESSURES],
    enthalpy: [[f64; VAPORS]; PRESSURES],
    entropy: [[f64; VAPORS]; PRESSURES],
    ln_density: [[f64; VAPORS]; PRESSURES],
    cold_enthalpy: [[f64; LIQUIDS]; PRESSURES],
    cold_ln_density: [[f64; LIQUIDS]; PRESSURES],
}

impl RefrigerantMap {
    /// Maps a refrigerant, in some tens of milliseconds.
    ///
    /// # Errors
    /// Those of the equation of state.
    pub fn of(designation: &'static str, model: &'static Model) -> Result<Self, Error> {
        let properties = Properties::of(model, Reference::Iir)?.with_envelope()?;
        let mixture = *properties.mixture();
        let critical = mixture.critical_point()?;
        let (limit, _) = mixture.highest_temperature_and_pressure();
        let coldest = COLDEST_K.max(mixture.lowest_temperature() + 1.0);
        let first = math::ln(lowest_pressure(&mixture, coldest)?);
        let last = math::ln(HIGHEST_SHARE * critical.pressure);
        let hottest = HOTTEST_K.min(limit - 1.0);
        let mut map = Self {
            designation,
            first,
            step: (last - first) / (PRESSURES - 1) as f64,
            hottest,
            coldest: mixture.lowest_temperature() + 1.0,
            critical_pressure: critical.pressure,
            critical_temperature: critical.temperature,
            bubble_temperature: [0.0; PRESSURES],
            middle_temperature: [0.0; PRESSURES],
            middle_quality: [0.0; PRESSURES],
            dew_temperature: [0.0; PRESSURES],
            liquid_enthalpy: [0.0; PRESSURES],
            vapor_enthalpy: [0.0; PRESSURES],
            liquid_ln_density: [0.0; PRESSURES],
            vapor_ln_density: [0.0; PRESSURES],
            liquid_ln_viscosity: [0.0; PRESSURES],
            vapor_ln_viscosity: [0.0; PRESSURES],
            enthalpy: [[0.0; VAPORS]; PRESSURES],
            entropy: [[0.0; VAPORS]; PRESSURES],
            ln_density: [[0.0; VAPORS]; PRESSURES],
            cold_enthalpy: [[0.0; LIQUIDS]; PRESSURES],
            cold_ln_density: [[0.0; LIQUIDS]; PRESSURES],
        };
        for row in 0..PRESSURES {
            map.fill(row, &properties)?;
        }
        Ok(map)
    }

    fn fill(&mut self, row: usize, properties: &Properties) -> Result<(), Error> {
        let pressure = math::exp(self.first + row as f64 * self.step);
        let at = |quality| properties.state(StateInput::PressureQuality { pressure, quality });
        let (liquid, vapor) = (at(0.0)?, at(1.0)?);
        let half = 0.5 * (liquid.enthalpy + vapor.enthalpy);
        let middle = properties.state(StateInput::PressureEnthalpy { pressure, enthalpy: half })?;
        let mixture = properties.mixture();
        let mass = mixture.molar_mass;
        for (column, value) in [
            (&mut self.bubble_temperature, liquid.temperature),
            (&mut self.middle_temperature, middle.temperature),
            (&mut self.middle_quality, middle.quality.unwrap_or(0.5)),
            (&mut self.dew_temperature, vapor.temperature),
            (&mut self.liquid_enthalpy, liquid.enthalpy),
            (&mut self.vapor_enthalpy, vapor.enthalpy),
            (&mut self.liquid_ln_density, math::ln(liquid.density)),
            (&mut self.vapor_ln_density, math::ln(vapor.density)),
            (&mut self.liquid_ln_viscosity, math::ln(mixture.viscosity(liquid.temperature, liquid.density / mass)?)),
            (&mut self.vapor_ln_viscosity, math::ln(mixture.viscosity(vapor.temperature, vapor.density / mass)?)),
        ] {
            put(column, row, value);
        }
        let (mut enthalpy, mut entropy, mut ln_density) = ([0.0; VAPORS], [0.0; VAPORS], [0.0; VAPORS]);
        for node in 0..VAPORS {
            let temperature = vapor.temperature + (self.hottest - vapor.temperature) * squared_share(node, VAPORS);
            let state = match node {
                0 => vapor,
                _ => properties.state(StateInput::TemperaturePressure { temperature, pressure })?,
            };
            put(&mut enthalpy, node, state.enthalpy);
            put(&mut entropy, node, state.entropy);
            put(&mut ln_density, node, math::ln(state.density));
        }
        put(&mut self.enthalpy, row, enthalpy);
        put(&mut self.entropy, row, entropy);
        put(&mut self.ln_density, row, ln_density);
        let (mut enthalpy, mut ln_density) = ([0.0; LIQUIDS], [0.0; LIQUIDS]);
        for node in 0..LIQUIDS {
            let temperature = liquid.temperature - squared_share(node, LIQUIDS) * self.depth(liquid.temperature);
            let state = match node {
                0 => liquid,
                _ => properties.state(StateInput::TemperaturePressure { temperature, pressure })?,
            };
            put(&mut enthalpy, node, state.enthalpy);
            put(&mut ln_density, node, math::ln(state.density));
        }
        put(&mut self.cold_enthalpy, row, enthalpy);
        put(&mut self.cold_ln_density, row, ln_density);
        Ok(())
    }

    /// How far below a bubble temperature the liquid is mapped.
    fn depth(&self, bubble_temperature: f64) -> f64 {
        SUBCOOLING_K.min(bubble_temperature - self.coldest)
    }

    /// The refrigerant.
    #[must_use]
    pub const fn designation(&self) -> &'static str {
        self.designation
    }

    /// Critical pressure, Pa.
    #[must_use]
    pub const fn critical_pressure(&self) -> f64 {
        self.critical_pressure
    }

    /// Critical temperature, K.
    #[must_use]
    pub const fn critical_temperature(&self) -> f64 {
        self.critical_temperature
    }

    /// Lowest and highest pressure of the map, Pa.
    #[must_use]
    pub fn pressure_range(&self) -> (f64, f64) {
        (math::exp(self.first), math::exp(self.first + self.step * (PRESSURES - 1) as f64))
    }

    /// Hottest vapour of the map, K.
    #[must_use]
    pub const fn hottest(&self) -> f64 {
        self.hottest
    }

    fn weights(&self, pressure: f64) -> Result<Weights, Error> {
        let place = (math::ln(pressure) - self.first) / self.step;
        // A hundredth of a step more, so that a value at the end is not lost to rounding.
        if place >= -0.01 && place <= (PRESSURES - 1) as f64 + 0.01 {
            return Ok(Weights::at(place, PRESSURES));
        }
        let (lower, upper) = self.pressure_range();
        Err(bounds::refuse("absolute pressure", "Pa", pressure, lower, upper, ADVICE))
    }

    /// Both ends of the two-phase region at a pressure in Pa.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the map.
    pub fn saturation(&self, pressure: f64) -> Result<Saturation, Error> {
        let weights = self.weights(pressure)?;
        Ok(Saturation {
            pressure,
            bubble_temperature: weights.of(&self.bubble_temperature),
            middle_temperature: weights.of(&self.middle_temperature),
            middle_quality: weights.of(&self.middle_quality),
            dew_temperature: weights.of(&self.dew_temperature),
            liquid_enthalpy: weights.of(&self.liquid_enthalpy),
            vapor_enthalpy: weights.of(&self.vapor_enthalpy),
            liquid_density: math::exp(weights.of(&self.liquid_ln_density)),
            vapor_density: math::exp(weights.of(&self.vapor_ln_density)),
            liquid_viscosity: math::exp(weights.of(&self.liquid_ln_viscosity)),
            vapor_viscosity: math::exp(weights.of(&self.vapor_ln_viscosity)),
        })
    }

    /// Pressure in Pa at a dew temperature in K.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the map.
    pub fn dew_pressure(&self, temperature: f64) -> Result<f64, Error> {
        self.saturation_pressure(&self.dew_temperature, "dew temperature", temperature)
    }

    /// Pressure in Pa at a bubble temperature in K.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the map.
    pub fn bubble_pressure(&self, temperature: f64) -> Result<f64, Error> {
        self.saturation_pressure(&self.bubble_temperature, "bubble temperature", temperature)
    }

    fn saturation_pressure(
        &self,
        column: &[f64; PRESSURES],
        quantity: &'static str,
        temperature: f64,
    ) -> Result<f64, Error> {
        let place = place_of(column, temperature).ok_or_else(|| {
            let (lower, upper) = ends(column);
            bounds::refuse(quantity, "K", temperature, lower, upper, ADVICE)
        })?;
        Ok(math::exp(self.first + place * self.step))
    }

    /// Vapour at a pressure in Pa and a temperature in K at or above dew.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below dew or outside the map.
    pub fn vapor_at_temperature(&self, pressure: f64, temperature: f64) -> Result<Point, Error> {
        let weights = self.weights(pressure)?;
        let dew = weights.of(&self.dew_temperature);
        let share = (temperature - dew) / (self.hottest - dew);
        if !(-1e-9..=1.0).contains(&share) {
            return Err(bounds::refuse("vapour temperature", "K", temperature, dew, self.hottest, ADVICE));
        }
        Ok(self.vapor(&weights, pressure, dew, place_of_share(share, VAPORS)))
    }

    /// Vapour at a pressure in Pa and an enthalpy in J/kg at or above that of dew.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below dew or outside the map.
    pub fn vapor_at_enthalpy(&self, pressure: f64, enthalpy: f64) -> Result<Point, Error> {
        let weights = self.weights(pressure)?;
        let column = weights.column(&self.enthalpy);
        let place = place_of(&column, enthalpy).ok_or_else(|| {
            let (lower, upper) = ends(&column);
            bounds::refuse("vapour enthalpy", "J/kg", enthalpy, lower, upper, ADVICE)
        })?;
        Ok(self.vapor(&weights, pressure, weights.of(&self.dew_temperature), place))
    }

    /// Vapour at a pressure in Pa and an entropy in J/(kg·K) at or above that of dew.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] below dew or outside the map.
    pub fn vapor_at_entropy(&self, pressure: f64, entropy: f64) -> Result<Point, Error> {
        let weights = self.weights(pressure)?;
        let column = weights.column(&self.entropy);
        let place = place_of(&column, entropy).ok_or_else(|| {
            let (lower, upper) = ends(&column);
            bounds::refuse("vapour entropy", "J/(kg K)", entropy, lower, upper, ADVICE)
        })?;
        Ok(self.vapor(&weights, pressure, weights.of(&self.dew_temperature), place))
    }

    fn vapor(&self, weights: &Weights, pressure: f64, dew: f64, place: f64) -> Point {
        let across = Weights::at(place, VAPORS);
        let enthalpy = across.of(&weights.column(&self.enthalpy));
        let share = place / (VAPORS - 1) as f64;
        let (liquid, saturated) = (weights.of(&self.liquid_enthalpy), weights.of(&self.vapor_enthalpy));
        Point {
            temperature: dew + (self.hottest - dew) * share * share,
            pressure,
            enthalpy,
            density: math::exp(across.of(&weights.column(&self.ln_density))),
            entropy: Some(across.of(&weights.column(&self.entropy))),
            quality: (enthalpy - liquid) / (saturated - liquid),
        }
    }

    /// Liquid at a pressure in Pa and a temperature in K at or below bubble.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] above bubble or outside the map.
    pub fn liquid_at_temperature(&self, pressure: f64, temperature: f64) -> Result<Point, Error> {
        let weights = self.weights(pressure)?;
        let bubble = weights.of(&self.bubble_temperature);
        let depth = self.depth(bubble);
        let share = (bubble - temperature) / depth;
        if !(-1e-9..=1.0).contains(&share) {
            return Err(bounds::refuse("liquid temperature", "K", temperature, bubble - depth, bubble, ADVICE));
        }
        Ok(self.liquid(&weights, pressure, place_of_share(share, LIQUIDS)))
    }

    fn liquid(&self, weights: &Weights, pressure: f64, place: f64) -> Point {
        let across = Weights::at(place, LIQUIDS);
        let bubble = weights.of(&self.bubble_temperature);
        let share = place / (LIQUIDS - 1) as f64;
        let enthalpy = across.of(&weights.column(&self.cold_enthalpy));
        let (saturated, vapor) = (weights.of(&self.liquid_enthalpy), weights.of(&self.vapor_enthalpy));
        Point {
            temperature: bubble - share * share * self.depth(bubble),
            pressure,
            enthalpy,
            density: math::exp(across.of(&weights.column(&self.cold_ln_density))),
            entropy: None,
            quality: (enthalpy - saturated) / (vapor - saturated),
        }
    }

    /// The state at a pressure in Pa and an enthalpy in J/kg: liquid, both phases, or vapour.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the map.
    pub fn at_enthalpy(&self, pressure: f64, enthalpy: f64) -> Result<Point, Error> {
        let weights = self.weights(pressure)?;
        let (liquid, vapor) = (weights.of(&self.liquid_enthalpy), weights.of(&self.vapor_enthalpy));
        let quality = (enthalpy - liquid) / (vapor - liquid);
        if quality > 1.0 {
            return self.vapor_at_enthalpy(pressure, enthalpy);
        }
        if quality < 0.0 {
            let column = weights.column(&self.cold_enthalpy);
            let place = place_of(&column, enthalpy).ok_or_else(|| {
                let (upper, lower) = ends(&column);
                bounds::refuse("liquid enthalpy", "J/kg", enthalpy, lower, upper, ADVICE)
            })?;
            return Ok(self.liquid(&weights, pressure, place));
        }
        let saturation = self.saturation(pressure)?;
        let vapor = saturation.mass_quality(quality);
        let volume = (1.0 - vapor) / saturation.liquid_density + vapor / saturation.vapor_density;
        Ok(Point {
            temperature: saturation.temperature(quality),
            pressure,
            enthalpy,
            density: 1.0 / volume,
            entropy: None,
            quality,
        })
    }
}

/// How far a node lies on the way from saturation to the end of the map: near saturation, where properties bend, nodes
/// are closer together.
fn squared_share(node: usize, count: usize) -> f64 {
    let place = node as f64 / (count - 1) as f64;
    place * place
}

/// Sets one cell.
fn put<T>(cells: &mut [T], place: usize, value: T) {
    if let Some(cell) = cells.get_mut(place) {
        *cell = value;
    }
}

/// First and last of a column.
fn ends(column: &[f64]) -> (f64, f64) {
    (column.first().copied().unwrap_or_default(), column.last().copied().unwrap_or_default())
}

fn place_of_share(share: f64, count: usize) -> f64 {
    math::sqrt(share.max(0.0)) * (count - 1) as f64
}

/// Where the map begins, Pa: a little above the dew pressure at a temperature in K, or, of a blend so wide that its liquid
/// would be colder there than its equation or its viscosity reaches, where that liquid still is warm enough.
fn lowest_pressure(mixture: &Mixture, coldest: f64) -> Result<f64, Error> {
    let dew = mixture.at_temperature(End::Dew, coldest)?.pressure * 1.02;
    let limit = mixture.lowest_temperature().max(bounds::AIR_TEMPERATURE.lower);
    match mixture.at_pressure(End::Bubble, dew) {
        Ok(bubble) if bubble.temperature > limit + 1.0 => Ok(dew),
        _ => Ok(mixture.at_temperature(End::Bubble, limit + 6.0)?.pressure.max(dew)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    /// Which refrigerants the rig can hold: all but R-14, a gas at every temperature of an air conditioner, and R-472B, of
    /// which no vapour is found near its critical pressure.
    #[test]
    fn nearly_every_refrigerant_has_a_map() {
        let mut without = std::vec::Vec::new();
        for model in model::ALL {
            if let Err(error) = RefrigerantMap::of(model.identity.designation, model) {
                without.push((model.identity.designation, error));
            }
        }
        assert!(without.iter().map(|(name, _)| *name).eq(["R-14", "R-472B"]), "{without:?}");
    }

    /// The map against the equation of state, away from its nodes.
    #[test]
    fn the_map_is_the_equation_of_state() {
        for (designation, model) in
            [("R-410A", &model::R410A), ("R-22", &model::R22), ("R-454B", &model::R454B), ("R-407C", &model::R407C)]
        {
            let map = RefrigerantMap::of(designation, model).unwrap();
            let properties = Properties::of(model, Reference::Iir).unwrap().with_envelope().unwrap();
            let worst = core::cell::Cell::new([0.0_f64; 6]);
            let note = |place: usize, miss: f64| {
                let mut now = worst.get();
                now[place] = now[place].max(miss.abs());
                worst.set(now);
            };
            for step in 1..40 {
                let pressure = 2.5e5 * (0.88 * map.critical_pressure / 2.5e5).powf(f64::from(step) / 40.0);
                let saturation = map.saturation(pressure).unwrap();
                let at = |input| properties.state(input).unwrap();
                let (liquid, vapor) = (
                    at(StateInput::PressureQuality { pressure, quality: 0.0 }),
                    at(StateInput::PressureQuality { pressure, quality: 1.0 }),
                );
                let latent = vapor.enthalpy - liquid.enthalpy;
                note(0, saturation.bubble_temperature - liquid.temperature);
                note(0, saturation.dew_temperature - vapor.temperature);
                note(0, map.dew_pressure(vapor.temperature).unwrap() / pressure * 20.0 - 20.0);
                note(1, (saturation.liquid_enthalpy - liquid.enthalpy) / latent);
                note(1, (saturation.vapor_enthalpy - vapor.enthalpy) / latent);
                note(2, saturation.liquid_density / liquid.density - 1.0);
                note(2, saturation.vapor_density / vapor.density - 1.0);
                for superheat in [0.4, 3.0, 11.0, 33.0, 71.0] {
                    if vapor.temperature + superheat > 405.0 {
                        continue;
                    }
                    let temperature = vapor.temperature + superheat;
                    let exact = at(StateInput::TemperaturePressure { temperature, pressure });
                    let found = map.vapor_at_temperature(pressure, temperature).unwrap();
                    note(3, (found.enthalpy - exact.enthalpy) / latent);
                    note(4, found.density / exact.density - 1.0);
                    note(5, found.entropy.unwrap() - exact.entropy);
                    let back = map.vapor_at_enthalpy(pressure, exact.enthalpy).unwrap();
                    note(0, back.temperature - temperature);
                    let by_entropy = map.vapor_at_entropy(pressure, exact.entropy).unwrap();
                    note(3, (by_entropy.enthalpy - exact.enthalpy) / latent);
                }
                for subcooling in [0.5, 4.0, 17.0, 35.0] {
                    let temperature = liquid.temperature - subcooling;
                    if temperature < 225.0 {
                        continue;
                    }
                    let exact = at(StateInput::TemperaturePressure { temperature, pressure });
                    let found = map.liquid_at_temperature(pressure, temperature).unwrap();
                    note(3, (found.enthalpy - exact.enthalpy) / latent);
                    note(4, found.density / exact.density - 1.0);
                    let back = map.at_enthalpy(pressure, exact.enthalpy).unwrap();
                    note(0, back.temperature - temperature);
                }
            }
            // Temperature in K; enthalpy by the heat of evaporation and density of saturation; both of one phase; entropy
            // in J/(kg K).
            let limits = [3e-3, 2e-4, 2e-4, 1.5e-4, 1.5e-4, 3e-2];
            assert!(worst.get().iter().zip(limits).all(|(worst, limit)| *worst < limit), "{designation} {worst:?}");
        }
        assert!(core::mem::size_of::<RefrigerantMap>() < 70_000);
    }
}
