//! Every limit of ASCE 7-16 chapter 13, hit from both sides.

use serde_json::json;
use steadfoot_tests::demand_input::{asce_7_16, asce_7_16_site, near, of};
use steadfoot_tests::run_demand::run;

#[test]
fn asce_7_16_lower_limit_governs_sheet_metal_up_to_four_tenths_of_the_height() {
    for (component, a_p, r_p, turn) in [("sheet-metal-cabinet", 2.5, 6.0, 0.4), ("communication", 1.0, 2.5, 0.4375)] {
        let at = |ratio: f64, symbol: &str| {
            of(&asce_7_16(json!({"component": component, "attachment_height_m": 10.0 * ratio})), symbol)
        };
        near(at(turn - 0.01, "c_p"), 0.3);
        assert!(at(turn - 0.01, "c_1") < 0.3);
        near(at(turn, "c_p"), 0.3);
        near(at(turn + 0.01, "c_p"), 0.4 * a_p / r_p * (1.0 + 2.0 * (turn + 0.01)));
        assert!(at(turn + 0.01, "c_p") > 0.3);
    }
}

#[test]
fn asce_7_16_upper_limit_governs_a_brittle_flexible_component_from_seven_tenths_up() {
    let at =
        |ratio: f64| of(&asce_7_16(json!({"component": "flexible-low", "attachment_height_m": 10.0 * ratio})), "c_p");
    near(at(0.69), 0.4 * 2.5 / 1.5 * (1.0 + 2.0 * 0.69));
    near(at(0.71), 1.6);
    near(at(1.0), 1.6);
}

#[test]
fn asce_7_16_limits_grow_with_importance() {
    near(of(&asce_7_16(json!({"importance_factor": 1.5})), "c_p"), 0.45);
    let roof = json!({"importance_factor": 1.5, "component": "flexible-low", "attachment_height_m": 10.0});
    near(of(&asce_7_16(roof), "c_p"), 2.4);
}

#[test]
fn asce_7_16_site_coefficients_are_the_printed_ones_at_their_columns_and_straight_between() {
    let columns = [0.25, 0.50, 0.75, 1.00, 1.25, 1.50];
    let rows: [(&str, [f64; 6]); 7] = [
        ("A", [0.8; 6]),
        ("B", [0.9; 6]),
        ("B-unmeasured", [1.0; 6]),
        ("C", [1.3, 1.3, 1.2, 1.2, 1.2, 1.2]),
        ("D", [1.6, 1.4, 1.2, 1.1, 1.0, 1.0]),
        ("D-default", [1.6, 1.4, 1.2, 1.2, 1.2, 1.2]),
        ("E", [2.4, 1.7, 1.3, 1.2, 1.2, 1.2]),
    ];
    for (class, row) in rows {
        let f_a = |s_s: f64| of(&asce_7_16_site(s_s, class), "F_a");
        for (s_s, expected) in columns.iter().zip(row) {
            near(f_a(*s_s), expected);
        }
        near(f_a(0.05), row[0]);
        near(f_a(0.249), row[0]);
        near(f_a(1.501), row[5]);
        near(f_a(4.0), row[5]);
        for place in 0..5 {
            let middle = if class == "D-default" { row[place].max(1.2) } else { row[place] };
            near(f_a((columns[place] + columns[place + 1]) / 2.0), (middle + row[place + 1]) / 2.0);
        }
    }
}

#[test]
fn unknown_soil_takes_class_d_but_never_less_than_1_2() {
    near(of(&asce_7_16_site(0.74, "D-default"), "F_a"), 1.2 + 0.2 * 0.01 / 0.25);
    near(of(&asce_7_16_site(0.76, "D-default"), "F_a"), 1.2);
    near(of(&asce_7_16_site(0.76, "D"), "F_a"), 1.2 - 0.1 * 0.01 / 0.25);
    assert_eq!(
        of(&asce_7_16(json!({"s_ds": null, "s_s": 0.9})), "F_a"),
        of(&asce_7_16_site(0.9, "D-default"), "F_a"),
        "soil that is not named is not known"
    );
}

#[test]
fn class_e_takes_the_exception_from_one_up_and_class_f_is_not_covered() {
    near(of(&asce_7_16_site(0.999_999, "E"), "F_a"), 1.2 + 0.1 * 0.000_001 / 0.25);
    assert_eq!(of(&asce_7_16_site(1.0, "E"), "F_a"), 1.2);
    // Just below 1 in floating point is 1 to the clause.
    assert_eq!(of(&asce_7_16_site(1.0 - 1e-13, "E"), "F_a"), 1.2);
    assert!(run(&asce_7_16_site(0.5, "F")).unwrap_err().contains("class F"));
}

#[test]
fn doubling_comes_after_the_limits() {
    let roof = json!({"component": "isolated-springs", "attachment_height_m": 10.0, "isolator_gap_mm": 20});
    let doubled = asce_7_16(roof);
    near(of(&doubled, "c_1"), 0.4 * 2.5 / 2.0 * 3.0);
    near(of(&doubled, "c_p"), 2.0 * 1.5);
    assert!(of(&doubled, "c_p") > of(&doubled, "c_max"));
}
