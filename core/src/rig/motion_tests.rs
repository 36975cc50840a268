use super::*;
use crate::eos::model;

#[test]
fn explore() {
    let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
    for device in [Device::ShortTube, Device::TaperedValve, Device::FlashingOrifice, Device::LinearValve] {
        let unit = Unit::designed(&map, &Rating::usual(10_550.0, device)).unwrap();
        let show = |m: &Moment| {
            let s = &m.state;
            let low = map.saturation(s.vapor_port.pressure).unwrap();
            let high = map.saturation(s.liquid_port.pressure).unwrap();
            std::eprintln!(
                "{:6.0} {} Te {:.2} SH {:.2} Tc {:.2} SC {:.2} Tdis {:.1} shell {:.1} m {:.4} Q {:.0} W {:.0} low {:.3} ch {:.4} gath {:.3} lift {:?} miss {:.0e}",
                m.seconds,
                m.runs,
                low.dew_temperature - 273.15,
                s.vapor_port.temperature - low.dew_temperature,
                high.bubble_temperature - 273.15,
                high.bubble_temperature - s.liquid_port.temperature,
                s.discharge.temperature - 273.15,
                m.shell_temperature - 273.15,
                s.mass_flow,
                s.capacity,
                s.compressor_power,
                s.low_side_charge,
                s.charge,
                m.gathered,
                s.valve_lift,
                s.miss
            );
        };
        std::eprintln!("{device:?} start");
        let mut motion = match Motion::at_rest(&unit, &RATING_CONDITIONS, unit.nameplate_charge) {
            Ok(m) => m,
            Err(e) => {
                std::eprintln!("{e:?}");
                continue;
            }
        };
        show(motion.moment());
        let inputs = Inputs::running(RATING_CONDITIONS);
        let now = std::time::Instant::now();
        let mut worst = std::time::Duration::ZERO;
        for second in 1..=1800 {
            let one = std::time::Instant::now();
            if let Err(e) = motion.step(1.0, &inputs) {
                std::eprintln!("{second}: {e:?}");
                break;
            }
            worst = worst.max(one.elapsed());
            if second < 20 || (second < 200 && second % 10 == 0) || second % 300 == 0 {
                show(motion.moment());
            }
        }
        std::eprintln!("{:?} for 1800, worst {:?}", now.elapsed(), worst);
        let Ok(mut motion) = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()) else { continue };
        std::eprintln!("charge +0.2 kg in 100 s");
        show(motion.moment());
        for second in 1..=1800 {
            let charging = if second <= 100 { 0.002 } else { 0.0 };
            if let Err(e) = motion.step(1.0, &Inputs { charging, ..inputs }) {
                std::eprintln!("{second}: {e:?}");
                break;
            }
            if second < 5 || (second < 300 && second % 20 == 0) || second % 300 == 0 {
                show(motion.moment());
            }
        }
    }
}
