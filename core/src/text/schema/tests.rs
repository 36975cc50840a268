//! No name that the reader knows is left out of the schemas.

use super::super::accuracy::LIMITS;
use super::super::read::{BESIDES, WORDS};
use super::*;

#[test]
fn every_name_of_a_list_is_described() {
    for name in WORDS {
        assert_ne!(reading::choices(name), json!(false), "{name}");
    }
    for name in BESIDES {
        assert_ne!(reading::besides(name), json!(false), "{name}");
    }
    for name in LIMITS {
        assert_ne!(reading::limit(name, 1.0, &json!({})), json!(false), "{name}");
    }
    for schema in Schema::ALL {
        // The only use of `false` is that no other names are allowed.
        let text = schema.to_json();
        let refused = text.matches("false").count();
        assert!(refused > 0 && refused == text.matches("\"additionalProperties\": false").count(), "{}", schema.name());
    }
}

#[test]
fn every_quantity_is_listed_once_and_takes_what_the_reader_takes() {
    use super::super::unit::Quantity;
    let names: Vec<&str> = Quantity::ALL.iter().map(|quantity| quantity.name()).collect();
    for (index, name) in names.iter().enumerate() {
        assert!(!names[index + 1..].contains(name));
    }
    for field in crate::reading::Field::ALL {
        assert!(Quantity::ALL.contains(&super::super::read::field_quantity(*field)));
    }
    let pressure = unit::string_with_unit(Quantity::Pressure);
    let pattern = pressure["pattern"].as_str().unwrap();
    // Gauge or absolute must be said.
    assert!(pattern.contains("[pP][sS][iI][gG]") && !pattern.contains("[pP][sS][iI]|"), "{pattern}");
}
