//! Estimates the mixture parameters that nobody has published and prints them, with the deviations of published points
//! from the analogies alone, from the fit, and from a fit without the point's own blend.

use satline_tests::estimate::{ANALOGIES, Point, deviation, fit, gammas, growth, held_out, left_out, points, stated};

fn name(point: &Point) -> String {
    format!("{} {:?} {} °C [{}]", point.designation, point.end, point.celsius, point.source)
}

fn main() {
    let points = points();
    let fitted: Vec<_> = points.iter().filter(|point| point.fitted).collect();
    let moves = fit(&fitted);
    let (before, after) = (gammas(&[]), gammas(&moves));
    println!("pair: by analogy, fitted");
    for (analogy, (before, after)) in ANALOGIES.iter().zip(before.iter().zip(&after)) {
        println!("{} with {}: {before:.4}, {after:.4}", analogy.first, analogy.second);
    }
    println!("\npublished point: deviation in K by analogy, of the fit, of a fit without its blend");
    let left_out = left_out();
    for (point, without) in &left_out {
        let use_of_it = if point.fitted { "" } else { " (not fitted)" };
        let (prior, posterior) = (deviation(point, &before), deviation(point, &after));
        println!("{}{use_of_it}: {prior:+.2}, {posterior:+.2}, {without:+.2}", name(point));
    }
    println!("\nblend: uncertainty to be stated, K (growth to 60 °C: {:.2})", growth());
    for (refrigerant, uncertainty) in stated() {
        println!("{}: {uncertainty:.2}", refrigerant.designation());
    }
    println!("\nblends held out: deviation in K by analogy, of the fit");
    for (point, sister) in held_out() {
        let (prior, posterior) = (deviation(&point, &before), deviation(&point, &after));
        println!("{} (with {}): {prior:+.2}, {posterior:+.2}", name(&point), sister.designation());
    }
}
