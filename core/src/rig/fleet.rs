//! A fleet: units as they stand in the field, drawn by seed and number, the same everywhere.
//!
//! What makes units differ is kept in layers. Choices (size, class, device) are what was bought; [`UnitErrors`] is fixed
//! in one unit when it leaves the works; [`Installation`] is what the installer did. Errors of instruments belong to the
//! instrument, noise to the sample: neither is here.

use super::design::{Device, Rating};
use super::draws::Draws;
use super::map::RefrigerantMap;
use super::nominal::{EfficiencyClass, LineSet};
use super::steady::Unit;
use super::structure::{CondenserModel, Structure};
use super::unit::{AnyCompressor, Faults};
use super::void::VoidFraction;
use crate::error::Error;
use crate::math;

/// Nominal sizes sold, tons.
pub const SIZES_TONS: [f64; 7] = [1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0];

/// How one unit differs from its design: factors, 1 where it does not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UnitErrors {
    /// On the conductances of the condenser; standard deviation 0.10.
    pub condenser: f64,
    /// On those of the evaporator; 0.10.
    pub evaporator: f64,
    /// On the volume that the compressor draws in; 0.05.
    pub displacement: f64,
    /// On the indoor airflow: the blower's speed is set wrong; 0.10.
    pub blower: f64,
}

impl UnitErrors {
    /// None.
    pub const NONE: Self = Self { condenser: 1.0, evaporator: 1.0, displacement: 1.0, blower: 1.0 };

    fn draw(draws: &mut Draws) -> Self {
        // Products of many small causes: logarithms are normal, cut off at two and a half deviations.
        let mut factor = |deviation: f64| math::exp(deviation * draws.normal().clamp(-2.5, 2.5));
        Self { condenser: factor(0.1), evaporator: factor(0.1), displacement: factor(0.05), blower: factor(0.1) }
    }

    /// A unit with these errors; its nameplate stays the design's.
    #[must_use]
    pub fn on<'a>(&self, unit: &Unit<'a>) -> Unit<'a> {
        let mut made = *unit;
        let parts = &mut made.parts;
        for (coil, factor) in [(&mut parts.condenser, self.condenser), (&mut parts.evaporator, self.evaporator)] {
            coil.air_conductance *= factor;
            coil.two_phase_conductance *= factor;
            coil.single_phase_conductance *= factor;
        }
        match &mut parts.compressor {
            AnyCompressor::Map(map) => map.scale *= self.displacement,
            AnyCompressor::Efficiency(one) => one.volume_flow = one.volume_flow.map(|flow| flow * self.displacement),
        }
        parts.indoor_airflow *= self.blower;
        made
    }
}

/// What the installer did.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Installation {
    /// The line set; the nameplate charge counts it in.
    pub line_set: LineSet,
    /// Share of the nameplate charge that is too much, negative where it lacks.
    pub charge_error: f64,
}

impl Installation {
    fn draw(draws: &mut Draws) -> Self {
        let length = draws.uniform(4.5, 18.0);
        let lift = draws.uniform(-1.0, 1.0) * f64::min(6.0, 0.5 * length);
        // Common practice: most units are within a tenth of their charge, some are far off.
        let wide = draws.uniform(0.0, 1.0) < 0.2;
        let charge_error = (if wide { 0.15 } else { 0.05 } * draws.normal()).clamp(-0.4, 0.4);
        Self { line_set: LineSet { length, lift }, charge_error }
    }

    /// The charge error as a fault.
    #[must_use]
    pub fn faults(&self) -> Faults {
        Faults {
            undercharge: f64::max(-self.charge_error, 0.0),
            overcharge: f64::max(self.charge_error, 0.0),
            ..Faults::default()
        }
    }
}

/// One unit of a fleet, before it meets its refrigerant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Member {
    /// Nominal size, tons.
    pub tons: f64,
    /// Efficiency class.
    pub class: EfficiencyClass,
    /// Metering device.
    pub device: Device,
    /// Evaporating temperature it is designed for, K.
    pub evaporating: f64,
    /// Subcooling it is designed for, K.
    pub subcooling: f64,
    /// Superheat at the coil that it is designed for, K.
    pub superheat: f64,
    /// Indoor airflow it is designed for, by that of 400 cfm by ton.
    pub airflow: f64,
    /// How its coils are modelled.
    pub structure: Structure,
    /// How liquid and vapour share its coils.
    pub void: VoidFraction,
    /// Errors of this one unit.
    pub errors: UnitErrors,
    /// How it was installed.
    pub installation: Installation,
}

/// The member of a number in the fleet of a seed: each is drawn from a stream of its own.
#[must_use]
pub fn member(seed: u64, number: u64) -> Member {
    let mut draws = Draws::of(seed, number);
    let devices = [Device::ShortTube, Device::FlashingOrifice, Device::TaperedValve, Device::LinearValve];
    let device = draws.choose(&devices, Device::TaperedValve);
    let fixed = matches!(device, Device::ShortTube | Device::FlashingOrifice);
    let class = draws.choose(&EfficiencyClass::ALL, EfficiencyClass::Standard);
    let tons = draws.choose(&SIZES_TONS, 3.0);
    Member {
        tons,
        class,
        device,
        // Return air of 80 °F less 35 ± 2 °F.
        evaporating: 280.4 + 1.1 * draws.normal().clamp(-2.0, 2.0),
        // 10 ± 1 °F.
        subcooling: 5.5 + 0.55 * draws.normal().clamp(-2.0, 2.0),
        superheat: if fixed { draws.uniform(4.5, 8.0) } else { draws.uniform(4.5, 7.0) },
        airflow: 1.0 + 0.05 * draws.normal().clamp(-2.0, 2.0),
        void: draws.choose(&[VoidFraction::Zivi, VoidFraction::Smith], VoidFraction::Zivi),
        structure: Structure {
            condenser: draws.choose(
                &[CondenserModel::MovingBoundary, CondenserModel::MovingBoundary, CondenserModel::Lumped],
                CondenserModel::MovingBoundary,
            ),
            ..Structure::default()
        },
        errors: UnitErrors::draw(&mut draws),
        installation: Installation::draw(&mut draws),
    }
}

impl Member {
    /// What its maker designed it from.
    ///
    /// # Errors
    /// Those of [`Rating::nominal`].
    pub fn rating(&self, map: &RefrigerantMap) -> Result<Rating, Error> {
        let usual = Rating::nominal(map, self.tons, self.class, self.device, self.installation.line_set)?;
        Ok(Rating {
            evaporating: self.evaporating,
            subcooling: self.subcooling,
            superheat: self.superheat,
            indoor_airflow_by_capacity: usual.indoor_airflow_by_capacity * self.airflow,
            void: self.void,
            structure: self.structure,
            ..usual
        })
    }

    /// The unit as its maker meant it.
    ///
    /// # Errors
    /// Those of [`Unit::designed`].
    pub fn designed<'a>(&self, map: &'a RefrigerantMap) -> Result<Unit<'a>, Error> {
        Unit::designed(map, &self.rating(map)?)
    }

    /// The unit as it stands, with its own errors; its wrong charge is in [`Installation::faults`].
    ///
    /// # Errors
    /// Those of [`Unit::designed`].
    pub fn unit<'a>(&self, map: &'a RefrigerantMap) -> Result<Unit<'a>, Error> {
        Ok(self.errors.on(&self.designed(map)?))
    }
}
