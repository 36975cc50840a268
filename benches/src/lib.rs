//! Benchmarks of satline; run `cargo bench -p satline-benches`. Compare ratios within one run, never seconds between runs.
