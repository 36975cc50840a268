//! The equation of state of each refrigerant: its components, their shares and their pairs.

use super::fluid::{self, PureFluid};
use super::pair::{self, Pair};
use crate::refrigerant::identity::{self, Identity};

/// Most components a refrigerant can have.
pub const MAX_COMPONENTS: usize = 6;

/// The gas constant of mixtures, J/(mol·K) (2019 SI; exact). Pure fluids keep their paper's.
pub const GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// The equation of state of a refrigerant.
#[derive(Debug)]
pub struct Model {
    /// What the refrigerant is; its mass fractions are in the order of `fluids`.
    pub identity: &'static Identity,
    /// The components' equations of state.
    pub fluids: &'static [&'static PureFluid],
    /// The parameters of every pair of components.
    pub pairs: &'static [&'static Pair],
}

macro_rules! models {
    ($($name:ident [$($fluid:ident),+] [$($pair:ident),*];)*) => {
        $(#[doc = concat!("Equation of state of ", stringify!($name), ".")]
        pub static $name: Model = Model {
            identity: &identity::$name,
            fluids: &[$(&fluid::$fluid),+],
            pairs: &[$(&pair::$pair),*],
        };)*

        /// Every model.
        pub static ALL: &[&Model] = &[$(&$name),*];
    };
}

models! {
    R22 [R22] [];
    R32 [R32] [];
    R125 [R125] [];
    R134A [R134A] [];
    R407C [R32, R125, R134A] [R32_WITH_R125, R32_WITH_R134A, R125_WITH_R134A];
    R410A [R32, R125] [R32_WITH_R125];
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn components_are_in_the_order_of_the_identity_and_every_pair_is_there() {
        for model in ALL {
            assert_eq!(model.fluids.len(), model.identity.components.len());
            for (fluid, component) in model.fluids.iter().zip(model.identity.components) {
                assert_eq!(fluid.designation, component.designation);
            }
            for (index, first) in model.fluids.iter().enumerate() {
                for second in &model.fluids[index + 1..] {
                    let found = model.pairs.iter().filter(|pair| pair.joins(first, second)).count();
                    assert_eq!(
                        found, 1,
                        "{} with {} in {}",
                        first.designation, second.designation, model.identity.designation
                    );
                }
            }
        }
    }
}
