use satline::diagnosis::*;
use satline_tests::guard::pool::pool;
use satline_tests::guard::rules::violated;
#[test]
fn look() {
    let start = std::time::Instant::now();
    let rows = pool();
    println!("{} rows {:?}", rows.len(), start.elapsed());
    let start = std::time::Instant::now();
    let mut seen = std::collections::BTreeMap::new();
    for row in rows {
        for baseline in [&[][..], &[row.baseline]] {
            let f = diagnose_with(&row.reading, &Options { baseline, ..Options::default() });
            *seen.entry(format!("advice {:?}", f.advice)).or_insert(0)+=1;
            for v in violated(&row.reading, &f) { println!("{v}: {}", row.line()); *seen.entry(v).or_insert(0) += 1; }
            if row.truth.contains(Cause::NonCondensables) && !row.truth.contains(Cause::Overcharge) {
                if f.charge == Charge::High { println!("NC called high {:?}: {} {:?}", f.advice, row.line(), f.reason);}
                *seen.entry(format!("NC {:?} {:?}", f.charge, f.advice)).or_insert(0)+=1;
            }
        }
    }
    println!("{seen:#?} {:?}", start.elapsed());
}
