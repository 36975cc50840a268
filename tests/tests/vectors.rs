//! The conformance vectors in Rust: equal bits for every line of `data/vectors.csv`.

use satline_tests::vectors::{Vector, read};
use std::collections::BTreeSet;

const FILE: &str = include_str!("../data/vectors.csv");

#[test]
fn every_vector_gives_the_same_bits() {
    for vector in read(FILE).expect("the file reads") {
        let computed = Vector::compute(&vector.function, &vector.refrigerant, &vector.arguments);
        // By line, since a NaN argument equals nothing.
        assert_eq!(computed.line(), vector.line());
    }
}

#[test]
fn the_file_covers_every_function_refrigerant_and_kind_of_answer() {
    let vectors = read(FILE).expect("the file reads");
    assert!(vectors.len() >= 200, "{}", vectors.len());
    let functions: BTreeSet<_> = vectors.iter().map(|vector| vector.function.as_str()).collect();
    assert_eq!(functions.len(), 13, "{functions:?}");
    for refrigerant in satline::refrigerant::ALL {
        let named = vectors.iter().filter(|vector| vector.refrigerant == refrigerant.designation());
        let functions: BTreeSet<_> = named.map(|vector| vector.function.as_str()).collect();
        assert_eq!(functions.len(), 10, "{functions:?}");
    }
    for status in [0, 1, 2, 3, 100] {
        assert!(vectors.iter().any(|vector| vector.status == status), "{status}");
    }
    for vector in &vectors {
        assert_eq!(vector.status == 0, vector.result.is_some_and(f64::is_finite), "{}", vector.line());
    }
}

#[test]
fn a_changed_bit_is_noticed() {
    let line = read(FILE).expect("the file reads").into_iter().find(|vector| vector.status == 0).expect("an answer");
    let mut changed = line.clone();
    changed.result = line.result.map(f64::next_up);
    assert_ne!(changed.line(), line.line());
}
