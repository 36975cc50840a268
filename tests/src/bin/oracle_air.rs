//! Prints moist air over a grid for tests/python/oracle_air.py: pressure, dry bulb, relative humidity, humidity ratio, wet
//! bulb, dew point, enthalpy, specific volume, density and degree of saturation, all in SI.

use satline::air::MoistAir;
use satline::quantity::{AirTemperature, Atmosphere};

const SHARES: [f64; 13] = [0.005, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.95, 1.0];

fn main() -> Result<(), satline::Error> {
    for pressure_pa in [60e3, 70e3, 80e3, 90e3, 101_325.0, 108e3] {
        let pressure = Atmosphere::from_pascals(pressure_pa)?;
        // Steps of 1.25 K, and finer around freezing, where ice gives way to liquid.
        let coarse = (0..=80).map(|step| -40.0 + 1.25 * f64::from(step));
        let fine = (0..=60).map(|step| -1.5 + 0.1 * f64::from(step));
        for celsius in coarse.chain(fine) {
            let dry = AirTemperature::from_celsius(celsius)?;
            for share in SHARES {
                let air = MoistAir::from_relative_humidity(dry, share, pressure)?;
                println!(
                    "{pressure_pa:?},{:?},{share:?},{:?},{:?},{:?},{:?},{:?},{:?},{:?}",
                    dry.kelvin(),
                    air.humidity_ratio(),
                    air.wet_bulb_k(),
                    air.dew_point_k()?,
                    air.enthalpy_j_kg(),
                    air.specific_volume_m3_kg(),
                    air.density_kg_m3(),
                    air.degree_of_saturation(),
                );
            }
        }
    }
    Ok(())
}
