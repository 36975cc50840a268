//! Numbers that no table holds. "Tuned" ones were chosen on the development fleet of the rig, whose units have other
//! models of their parts than those that the tables are learnt from: see `core/docs/diagnosis.md`.

/// Variance between units, by that of the tables: real units differ more than designs of one rig do. Tuned.
pub(super) const BETWEEN: f32 = 3.0;
/// Variance from day to day of one unit, likewise. Tuned.
pub(super) const WITHIN: f32 = 1.7;
/// Standard deviation of a fault's scatter, by that of the tables. Tuned.
pub(super) const SCATTER: f32 = 1.2;
/// Scatter of a fault's effect on each channel besides, as a share of its mean: other coils react otherwise. Tuned.
pub(super) const RELATIVE: f32 = 0.15;
/// Degrees of freedom of the distribution of what is left over: fewer than infinite because tails are heavier than normal.
/// Tuned.
pub(super) const FREEDOM: f32 = 15.0;

/// By channel, how far a unit with something unknown may be off, K or %: about twice what severe known faults do.
pub(super) const UNKNOWN: [f32; 15] = [4.0, 8.0, 6.0, 6.0, 15.0, 3.0, 4.0, 12.0, 15.0, 6.0, 6.0, 8.0, 3.0, 2.0, 10.0];

/// What a strapped probe reads of the way to the air around, mean and standard deviation: common practice of insulated
/// clamps.
pub(super) const CLAMP: (f32, f32) = (0.02, 0.012);

/// Standard uncertainty of a maker's subcooling, superheat or approach: printed in whole °F, and met by a unit of the
/// line as sold within about 1 °F (common practice), K.
pub(super) const MAKER_K: f32 = 0.7;
/// Of the protocol's table of superheats, which is one for all units: 8 °F (common practice), K.
pub(super) const PROTOCOL_K: f32 = 4.5;

/// Standard deviation of the charge of a unit that counts as healthy, as a share: 3 % at most, evenly.
pub(super) const HEALTHY_CHARGE: f32 = 0.017;
/// The same of the charge and of the outdoor airflow when a baseline was taken: the unit may have aged already.
pub(super) const BASELINE_CHARGE: f32 = 0.03;
/// See [`BASELINE_CHARGE`].
pub(super) const BASELINE_AIR: f32 = 0.06;
/// Standard deviation of the expected charge of a unit with its line set, %.
pub(super) const EXPECTED_CHARGE: f32 = 3.0;

/// Air that is not known: mean and standard deviation, K. Outdoors, return dry bulb, and the wet bulb's depression.
pub(super) const OUTDOOR_UNKNOWN: (f32, f32) = (304.0, 6.0);
/// See [`OUTDOOR_UNKNOWN`].
pub(super) const RETURN_UNKNOWN: (f32, f32) = (298.0, 2.0);
/// See [`OUTDOOR_UNKNOWN`].
pub(super) const DEPRESSION_UNKNOWN: (f32, f32) = (7.0, 2.0);

/// Fewest channels from which causes are weighed at all.
pub(super) const FEWEST: usize = 3;

/// How common the severities of a cause are, mildest first: small faults are commoner than large ones (common practice).
pub(super) const BY_SEVERITY: [f32; 5] = [0.34, 0.25, 0.18, 0.13, 0.10];
/// The same of the two severities of each cause of a pair.
pub(super) const BY_SEVERITY_OF_PAIR: [f32; 2] = [0.6, 0.4];

/// Share of units in which a wrong charge counts as a fault, by severity, whatever it costs: a tenth off is what
/// technicians correct (common practice), for too much of it lifts the head pressure before it costs capacity.
pub(super) const CHARGE_COUNTS: [f32; 5] = [0.0, 0.6, 0.9, 1.0, 1.0];
