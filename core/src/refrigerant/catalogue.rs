//! The full records. Only the list at the end names them all.

use super::{Confidence, Refrigerant};
#[cfg(feature = "eos")]
use crate::eos::model;
use crate::saturation;

const MIXTURE_2004: &str =
    "Lemmon and Jacobsen, J. Phys. Chem. Ref. Data 33 (2004) 593, doi 10.1063/1.1649997 (mixture model)";
const R22_PAPER: &str = "Kamei, Beyerlein and Jacobsen, Int. J. Thermophys. 16 (1995) 1155, doi 10.1007/BF02081283";
const R32_PAPER: &str = "Tillner-Roth and Yokozeki, J. Phys. Chem. Ref. Data 26 (1997) 1273, doi 10.1063/1.556002";
const R125_PAPER: &str = "Lemmon and Jacobsen, J. Phys. Chem. Ref. Data 34 (2005) 69, doi 10.1063/1.1797813";
const R134A_PAPER: &str = "Tillner-Roth and Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657, doi 10.1063/1.555958";
const ASHRAE_34: &str = "ANSI/ASHRAE Standard 34 (composition; safety class and flammability limit from memory)";

macro_rules! catalogue {
    ($($name:ident, $title:literal, $confidence:ident, [$($source:expr),+];)*) => {
        $(#[doc = $title]
        pub static $name: Refrigerant = Refrigerant {
            curves: &saturation::$name,
            confidence: Confidence::$confidence,
            sources: &[$($source),+],
            #[cfg(feature = "eos")]
            model: &model::$name,
        };)*

        /// Every refrigerant of the catalogue.
        pub static ALL: &[&Refrigerant] = &[$(&$name),*];
    };
}

catalogue! {
    R22, "R-22, chlorodifluoromethane.", Published, [R22_PAPER, ASHRAE_34];
    R32, "R-32, difluoromethane.", Published, [R32_PAPER, ASHRAE_34];
    R125, "R-125, pentafluoroethane.", Published, [R125_PAPER, ASHRAE_34];
    R134A, "R-134a, 1,1,1,2-tetrafluoroethane.", Published, [R134A_PAPER, ASHRAE_34];
    R407C, "R-407C, R-32/125/134a 23/25/52 by mass.", Published, [MIXTURE_2004, R32_PAPER, R125_PAPER, R134A_PAPER, ASHRAE_34];
    R410A, "R-410A, R-32/125 50/50 by mass.", Published, [MIXTURE_2004, R32_PAPER, R125_PAPER, ASHRAE_34];
}
