//! What is made from the core's lists by `satline-header`, so that a number or name is written once.

#[allow(dead_code)] // most are only for the header
#[rustfmt::skip]
pub(crate) mod codes;
#[rustfmt::skip]
pub(crate) mod full;
#[rustfmt::skip]
pub(crate) mod handles;
#[rustfmt::skip]
pub(crate) mod text;
#[rustfmt::skip]
mod words;
