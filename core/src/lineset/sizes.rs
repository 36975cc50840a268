//! Sizes of copper tube for refrigeration, as tables.
//!
//! ASTM B280: the annealed coils up to 1-3/8 in and the drawn bores of 3/8 to 3/4 in are as published in the standard's
//! tables; 1-5/8 in annealed and the drawn lengths from 7/8 in are from memory. EN 12735-1: all from memory, the sizes
//! that are usual in the trade.

/// One size: how it is called, outside diameter and wall.
pub(super) struct Size {
    pub(super) name: &'static str,
    pub(super) outside: f64,
    pub(super) wall: f64,
}

macro_rules! sizes {
    ($suffix:literal: $($name:literal $outside:literal $wall:literal),+ $(,)?) => {
        &[$(Size { name: concat!($name, $suffix), outside: $outside, wall: $wall }),+]
    };
}

/// Annealed coils of ASTM B280, inches.
pub(super) const B280_ANNEALED: &[Size] = sizes![" in ASTM B280 annealed":
    "1/4" 0.250 0.030, "5/16" 0.312 0.032, "3/8" 0.375 0.032, "1/2" 0.500 0.032, "5/8" 0.625 0.035, "3/4" 0.750 0.035,
    "7/8" 0.875 0.045, "1-1/8" 1.125 0.050, "1-3/8" 1.375 0.055, "1-5/8" 1.625 0.060,
];
pub(super) const B280_ANNEALED_NAMES: &str =
    "1/4, 5/16, 3/8, 1/2, 5/8, 3/4, 7/8, 1-1/8, 1-3/8, 1-5/8 in, or give the inside diameter";

/// Drawn straight lengths of ASTM B280, inches.
pub(super) const B280_DRAWN: &[Size] = sizes![" in ASTM B280 drawn":
    "3/8" 0.375 0.030, "1/2" 0.500 0.035, "5/8" 0.625 0.040, "3/4" 0.750 0.042, "7/8" 0.875 0.045,
    "1-1/8" 1.125 0.050, "1-3/8" 1.375 0.055, "1-5/8" 1.625 0.060, "2-1/8" 2.125 0.070,
];
pub(super) const B280_DRAWN_NAMES: &str =
    "3/8, 1/2, 5/8, 3/4, 7/8, 1-1/8, 1-3/8, 1-5/8, 2-1/8 in, or give the inside diameter";

/// Metric sizes of EN 12735-1 and its inch sizes in millimetres, millimetres.
pub(super) const EN12735: &[Size] = sizes![" mm EN 12735-1":
    "6x1" 6.0 1.0, "6.35x0.8" 6.35 0.8, "8x1" 8.0 1.0, "9.52x0.8" 9.52 0.8, "10x1" 10.0 1.0, "12x1" 12.0 1.0,
    "12.7x0.8" 12.7 0.8, "15x1" 15.0 1.0, "15.87x1" 15.87 1.0, "16x1" 16.0 1.0, "18x1" 18.0 1.0, "19.05x1" 19.05 1.0,
    "22x1" 22.0 1.0, "28x1" 28.0 1.0, "28x1.5" 28.0 1.5, "35x1.5" 35.0 1.5, "42x1.5" 42.0 1.5, "54x2" 54.0 2.0,
];
pub(super) const EN12735_NAMES: &str = "6x1, 6.35x0.8, 8x1, 9.52x0.8, 10x1, 12x1, 12.7x0.8, 15x1, 15.87x1, 16x1, 18x1, \
19.05x1, 22x1, 28x1, 28x1.5, 35x1.5, 42x1.5, 54x2 mm, or give the inside diameter";

/// Every size there is, for a name that is none of them.
pub(super) const ALL_NAMES: &str = "1/4, 5/16, 3/8, 1/2, 5/8, 3/4, 7/8, 1-1/8, 1-3/8, 1-5/8, 2-1/8 in (ASTM B280), 6x1, \
6.35x0.8, 8x1, 9.52x0.8, 10x1, 12x1, 12.7x0.8, 15x1, 15.87x1, 16x1, 18x1, 19.05x1, 22x1, 28x1, 28x1.5, 35x1.5, 42x1.5, \
54x2 mm (EN 12735-1), or give the inside diameter";

#[cfg(test)]
mod tests {
    use super::*;

    /// What an error offers must be what is known, and every size must be tube.
    #[test]
    fn the_lists_name_every_size() {
        for (sizes, names) in
            [(B280_ANNEALED, B280_ANNEALED_NAMES), (B280_DRAWN, B280_DRAWN_NAMES), (EN12735, EN12735_NAMES)]
        {
            let offered: std::vec::Vec<&str> =
                names.split(',').map(|name| name.trim().trim_end_matches(" in").trim_end_matches(" mm")).collect();
            assert_eq!(offered.len(), sizes.len() + 1, "{names}");
            for (size, name) in sizes.iter().zip(offered) {
                assert_eq!(size.name.split(' ').next(), Some(name));
                assert!(ALL_NAMES.contains(name), "{name}");
                assert!(size.wall > 0.0 && size.wall < 0.25 * size.outside, "{name}");
            }
        }
    }
}
