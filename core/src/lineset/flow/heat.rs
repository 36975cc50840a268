//! Heat from the air into a line, through insulation.

use super::fluid::Place;
use super::march::Line;
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::uncertain::Uncertain;

/// Heat transfer coefficient outside where none is given, W/(m²·K): free convection and radiation in still air indoors
/// (common practice: 8 to 10); 20 to 40 in wind.
pub const DEFAULT_OUTSIDE_COEFFICIENT_W_M2_K: f64 = 9.0;

/// Prandtl number of refrigerant vapour: 0.75 to 1.0 for common ones. It enters only the resistance inside, a few per cent
/// of the whole for a bare line and less than one for an insulated.
const PRANDTL: f64 = 0.9;
/// Nusselt number of laminar flow in a tube of one wall temperature.
const LAMINAR_NUSSELT: f64 = 3.66;

/// Insulation around a tube.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Insulation {
    /// m ([`bounds::INSULATION_THICKNESS`]).
    pub thickness_m: f64,
    /// W/(m·K) ([`bounds::CONDUCTIVITY`]): 0.036 to 0.042 for closed-cell foam at room temperature, dry (common practice).
    pub conductivity_w_m_k: Uncertain,
}

/// The air around a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surroundings {
    /// Dry bulb, K ([`bounds::AIR_TEMPERATURE`]).
    pub ambient_k: Uncertain,
    /// Dew point of that air, K, where sweating is asked for.
    pub dew_point_k: Option<f64>,
    /// Convection and radiation together, W/(m²·K) ([`bounds::OUTSIDE_COEFFICIENT`]).
    pub outside_coefficient_w_m2_k: Uncertain,
    /// None for a bare line.
    pub insulation: Option<Insulation>,
}

impl Surroundings {
    /// Still air around a bare line: an outside coefficient of 9 ± 1 W/(m²·K).
    #[must_use]
    pub const fn still_air(ambient_k: Uncertain) -> Self {
        let outside_coefficient_w_m2_k =
            Uncertain { value: DEFAULT_OUTSIDE_COEFFICIENT_W_M2_K, standard_uncertainty: 1.0 };
        Self { ambient_k, dew_point_k: None, outside_coefficient_w_m2_k, insulation: None }
    }
}

/// Heat into a vapour line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LineHeat {
    /// So many watts over the whole line, negative where it gives heat off ([`bounds::LINE_HEAT`]).
    Power(Uncertain),
    /// From the air around it.
    From(Surroundings),
}

impl LineHeat {
    /// None at all.
    pub const NONE: Self = Self::Power(Uncertain::exact(0.0));
}

/// The air around a tube, ready to compute with.
#[derive(Debug, Clone, Copy)]
pub(super) struct Exchange {
    /// K.
    pub ambient: f64,
    /// From the air to the outside of the copper, for one metre, m·K/W. The copper itself resists nothing.
    outside: f64,
    /// Of that the part from the air to the insulation's surface.
    film: f64,
}

impl Exchange {
    /// From ambient, outside coefficient, conductivity, thickness and the copper's outside diameter.
    pub(super) fn new(
        ambient: f64,
        coefficient: f64,
        conductivity: f64,
        thickness: f64,
        outside_diameter: f64,
    ) -> Result<Self, Error> {
        let ambient = bounds::AIR_TEMPERATURE.check(ambient)?;
        let coefficient = bounds::OUTSIDE_COEFFICIENT.check(coefficient)?;
        let thickness = bounds::INSULATION_THICKNESS.check(thickness)?;
        let diameter = outside_diameter + 2.0 * thickness;
        let film = 1.0 / (core::f64::consts::PI * diameter * coefficient);
        let layer = if thickness > 0.0 {
            let conductivity = bounds::CONDUCTIVITY.check(conductivity)?;
            math::ln(diameter / outside_diameter) / (2.0 * core::f64::consts::PI * conductivity)
        } else {
            0.0
        };
        Ok(Self { ambient, outside: film + layer, film })
    }

    /// From the air to the refrigerant at a place, for one metre, W/(m·K).
    pub(super) fn conductance(&self, line: &Line<'_>, place: &Place) -> f64 {
        1.0 / (self.outside + inside(line, place))
    }

    /// Temperature of the outer surface at a place, K.
    pub(super) fn surface(&self, line: &Line<'_>, place: &Place) -> f64 {
        let share = self.film * self.conductance(line, place);
        self.ambient + share * (place.temperature - self.ambient)
    }
}

/// Resistance between the refrigerant and the wall, for one metre, m·K/W: by the likeness of friction and heat transfer
/// (Chilton and Colburn), no less than laminar.
fn inside(line: &Line<'_>, place: &Place) -> f64 {
    let stanton = line.factor(place.viscosity) / 8.0 / math::pow(PRANDTL, 2.0 / 3.0);
    let turbulent = stanton * line.mass_flux() * place.heat_capacity;
    let laminar = LAMINAR_NUSSELT * place.viscosity * place.heat_capacity / PRANDTL / line.diameter;
    1.0 / (core::f64::consts::PI * line.diameter * turbulent.max(laminar))
}
