//! The one door to transcendental functions.
//!
//! All of them come from the `libm` crate, compiled as plain Rust, so that Rust, C, Python and a microcontroller
//! give the same bits. Nothing else in this package may call `libm`.

/// e raised to `x`.
#[inline]
pub(crate) fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm of `x`.
#[inline]
pub(crate) fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// `x` raised to `y`.
#[inline]
pub(crate) fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// Square root of `x`.
#[inline]
pub(crate) fn sqrt(x: f64) -> f64 {
    libm::sqrt(x)
}

/// Cube root of `x`.
#[inline]
pub(crate) fn cbrt(x: f64) -> f64 {
    libm::cbrt(x)
}

/// Arc tangent of `x`.
#[inline]
#[cfg(feature = "eos")]
pub(crate) fn atan(x: f64) -> f64 {
    libm::atan(x)
}

/// e raised to `x`, in single precision: for weights of evidence, where seven digits are plenty.
#[inline]
pub(crate) fn exp_single(x: f32) -> f32 {
    libm::expf(x)
}

/// Natural logarithm of `x`, in single precision.
#[inline]
pub(crate) fn ln_single(x: f32) -> f32 {
    libm::logf(x)
}
