//! Tables of places fill fields that their rule has with values that the fields take.

use std::collections::BTreeSet;

use steadfoot::input::FieldShape;
use steadfoot::rules::demand::demand_rule;
use steadfoot::rules::place::{PLACE_TABLES, PlaceTable, PlaceValue, places_of};

#[test]
fn every_place_fills_fields_of_its_rule_with_values_that_they_take() {
    for table in PLACE_TABLES {
        let rule = demand_rule(table.rule).unwrap_or_else(|| panic!("no rule {}", table.rule));
        for place in table.rows {
            assert_eq!(place.values.len(), table.fields.len(), "{}: {}", table.rule, place.name);
            for (key, value) in table.fields.iter().zip(place.values) {
                let field = rule.fields.iter().find(|field| field.key == *key);
                let shape = field.unwrap_or_else(|| panic!("{} has no field {key}", table.rule)).shape;
                let is_taken = match (shape, value) {
                    (FieldShape::Number { min, max, .. }, PlaceValue::Number(number)) => (min..=max).contains(number),
                    (FieldShape::Choice(words), PlaceValue::Word(word)) => words.contains(word),
                    _ => false,
                };
                assert!(is_taken, "{}: {}: {key} does not take {value:?}", table.rule, place.name);
            }
        }
    }
}

#[test]
fn places_of_a_table_have_names_of_their_own_in_order_and_a_source() {
    for table in PLACE_TABLES {
        let names: Vec<&str> = table.rows.iter().map(|place| place.name).collect();
        assert_eq!(names.iter().collect::<BTreeSet<_>>().len(), names.len(), "{}: {}", table.rule, table.title);
        assert!(names.iter().all(|name| !name.trim().is_empty()) && !table.title.is_empty());
        assert!(!table.fields.is_empty() && !table.source.is_empty() && !table.document.short.is_empty());
    }
}

#[test]
fn a_rule_offers_its_own_tables_only() {
    let of = |rule: &str| places_of(rule).map(|table: &PlaceTable| table.title).collect::<Vec<_>>();
    assert_eq!(of("nzs-1170-5"), ["Place"]);
    assert_eq!(of("asce-7-16"), [] as [&str; 0]);
}

/// From memory of the tables; each is held here a second time, as it was first written down.
#[test]
fn hazard_factors_of_a_few_cities_are_those_that_were_noted() {
    let of = |rule: &str, name: &str| {
        let row = places_of(rule).flat_map(|table| table.rows).find(|place| place.name.starts_with(name));
        row.unwrap_or_else(|| panic!("{rule} has no {name}")).values[0]
    };
    for (name, z) in [("Auckland", 0.13), ("Wellington", 0.40), ("Christchurch", 0.30), ("Otira", 0.60)] {
        assert_eq!(of("nzs-1170-5", name), PlaceValue::Number(z));
    }
    for (name, z) in [("Sydney", 0.08), ("Adelaide", 0.10), ("Newcastle", 0.11), ("Hobart", 0.03), ("Cairns", 0.06)] {
        assert_eq!(of("as-1170-4", name), PlaceValue::Number(z));
    }
}
