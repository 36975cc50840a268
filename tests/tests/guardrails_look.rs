use satline::diagnosis::*;
use satline::reading::*;
use satline::saturation::*;
use satline_tests::guard::by_hand::*;
pub fn trap(outdoor: f64, suction: f64, sh: f64) -> ByHand {
    ByHand::of(&R410A, Metering::ThermostaticValve).air(outdoor, 78., 66., 60.).cfm(1200.).psig(Field::SuctionPressure, suction).superheat(sh).psig(Field::LiquidPressure, 400.-14.7).subcooling(0.6).df(Field::TargetSubcooling, 9.7)
}
#[test]
fn look() {
    let skip = [Field::SuctionPressure, Field::SuctionLineTemperature, Field::LiquidPressure, Field::LiquidLineTemperature];
    for outdoor in [75., 80., 85., 88., 90., 92.5, 95., 97.5, 100., 105.] {
      for (s, sh) in [(130., 12.), (135., 8.), (128., 16.)] {
        let t = trap(outdoor, s, sh);
        let present: Vec<Field> = Field::ALL.iter().copied().filter(|f| t.0.get(*f).is_some() && !skip.contains(f)).collect();
        let mut n = [0; 4]; let mut withbase = 0; let mut which = vec![];
        for base in [false, true] { for mask in 0..1u32 << present.len() {
            let r = keeping(&t.0, |f| skip.contains(&f) || present.iter().position(|p| *p == f).is_some_and(|p| mask >> p & 1 == 1));
            let clean = R410A.bubble_pressure(satline::quantity::Temperature::from_fahrenheit(outdoor + if outdoor > 92. {10.} else {17.}).unwrap()).unwrap().pascals() / 6894.757 - 14.7;
            let b = trap(outdoor, s, 10.).psig(Field::LiquidPressure, clean).subcooling(9.7).0;
            let f = ByHand(r).finding_beside(if base { std::slice::from_ref(&b) } else { &[] });
            n[0] += 1;
            if f.advice == Advice::AddInSteps { n[1] += 1; if base {withbase += 1;} which.push((base, present.iter().enumerate().filter(|(p, _)| mask >> p & 1 == 1).map(|(_, f)| f.name()).collect::<Vec<_>>())); }
            if f.charge == Charge::Low { n[2] += 1; }
            if f.conclusion.causes.is_some_and(|c| c.contains(Cause::Undercharge)) { n[3] += 1; }
        } }
        println!("{outdoor} {s} {sh}: of {} adds {} ({withbase} base) low {} stands {}  {:?}", n[0], n[1], n[2], n[3], which.len());
      }
    }
}
