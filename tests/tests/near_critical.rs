//! Bubble and dew lines of every blend close to its critical point. There the equations have a second solution beside the
//! right one, with two all but equal phases, at single temperatures only: it shows between fine steps.

use satline::eos::{End, Mixture, model};

#[test]
fn no_point_leaves_the_line() {
    for model in model::ALL.iter().filter(|model| model.fluids.len() > 1) {
        let mixture = Mixture::of(model).unwrap();
        let critical = mixture.critical_point().unwrap().temperature;
        for end in [End::Bubble, End::Dew] {
            let mut before: Option<(f64, f64)> = None;
            for index in 0..=1500 {
                let temperature = critical * (0.97 + 0.02 * f64::from(index) / 1500.0);
                let label = model.identity.designation;
                let found = mixture.at_temperature(end, temperature);
                let ln_pressure = found.unwrap_or_else(|error| panic!("{label} {temperature}: {error}")).pressure.ln();
                if let Some((last_temperature, last)) = before {
                    // Per kelvin; refrigerants have 0.015 to 0.03 there.
                    let rise = (ln_pressure - last) / (temperature - last_temperature);
                    assert!(rise > 0.0 && rise < 0.1, "{label} {end:?} {temperature}: {rise}");
                }
                before = Some((temperature, ln_pressure));
            }
        }
    }
}
