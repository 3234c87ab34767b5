//! Every limit of hooked, post-installed and adhesive anchors from both sides, and what is said where a value is missing.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Sheet, Status};
use steadfoot::input::Problem;
use steadfoot::rules::anchor::{Amplification, AnchorSite, Finding, anchor_rule};
use steadfoot_tests::one_anchor::*;
use steadfoot_tests::values::field_values;

/// A kind of anchor with all that its report says, and some members put otherwise; null takes one away.
fn kind(kind: &str, changes: Json) -> Json {
    let mut all = json!({ "anchor_kind": kind, "anchor_category": "1" });
    let report = match kind {
        "adhesive" => json!({ "tau_cr_mpa": 6.0, "tau_uncr_mpa": 10.0, "alpha_n_seis": 0.9, "v_sa_eq_n": 30e3 }),
        "cast-hooked" => json!({ "anchor_category": null, "hook_mm": 60.0 }),
        _ => json!({ "n_p_cr_n": 20e3, "n_p_uncr_n": 30e3, "n_p_eq_n": 15e3, "v_sa_eq_n": 30e3 }),
    };
    for from in [report, changes] {
        for (key, value) in from.as_object().unwrap() {
            all[key] = value.clone();
        }
    }
    all
}

const MODES: [CheckId; 7] = [
    CheckId::AnchorTensionSteel,
    CheckId::AnchorTensionBreakout,
    CheckId::AnchorTensionPullout,
    CheckId::AnchorTensionBond,
    CheckId::AnchorShearSteel,
    CheckId::AnchorShearPryout,
    CheckId::AnchorInteraction,
];

fn uncovered(changes: Json) -> Vec<CheckId> {
    let findings = case(changes).quiet();
    let is_uncovered = |check: &CheckId| {
        findings.iter().any(|finding| finding.check == *check && finding.outcome.status() == Status::NotCovered)
    };
    MODES.into_iter().filter(is_uncovered).collect()
}

#[test]
fn a_complete_report_leaves_nothing_uncovered() {
    for word in ["cast-hooked", "expansion-torque", "expansion-displacement", "undercut", "screw", "adhesive"] {
        for category in ["A-B", "C-F"] {
            let found = uncovered(kind(word, json!({ "seismic_category": category })));
            assert!(found.is_empty(), "{word} in {category}: {found:?}");
        }
    }
}

#[test]
fn adhesive_anchors_are_covered_from_4_to_20_diameters() {
    let depth = |mm: f64| {
        let changes = kind("adhesive", json!({ "embedment_mm": mm, "slab": { "thickness": "600 mm" } }));
        status(changes, CheckId::AnchorTensionBond)
    };
    assert_eq!(depth(63.9), Status::NotCovered);
    assert_eq!(depth(64.0), Status::Holds);
    assert_eq!(depth(320.0), Status::Holds);
    assert_eq!(depth(320.1), Status::NotCovered);
}

#[test]
fn screws_are_covered_from_5_to_10_diameters_and_from_40_mm() {
    let depth = |bolt: &str, embedment: Json, rule: &str| {
        let changes = kind("screw", json!({ "bolt": bolt, "embedment_mm": embedment, "rule": rule }));
        status(changes, CheckId::AnchorTensionBreakout)
    };
    let si = |bolt: &str, mm: f64| depth(bolt, json!(mm), "aci-318-19-si");
    assert_eq!(si("M12", 59.9), Status::NotCovered);
    assert_eq!(si("M12", 60.0), Status::Holds);
    assert_eq!(si("M12", 120.0), Status::Holds);
    assert_eq!(si("M12", 120.1), Status::NotCovered);
    assert_eq!(si("M8", 40.0), Status::Holds, "five diameters of 8 mm");
    assert_eq!(depth("1/4 in", json!("1.49 in"), "aci-318-19"), Status::NotCovered);
    assert_eq!(depth("1/4 in", json!("1.5 in"), "aci-318-19"), Status::Holds);
    assert_eq!(depth("M12", json!(90.0), "aci-318-14-si"), Status::NotCovered, "screws came with the edition of 2019");
}

#[test]
fn hooks_reach_from_3_to_4_5_diameters() {
    let hook = |mm: f64| status(kind("cast-hooked", json!({ "hook_mm": mm })), CheckId::AnchorTensionPullout);
    assert_eq!(hook(47.9), Status::NotCovered);
    assert_eq!(hook(48.0), Status::Holds);
    assert_eq!(hook(72.0), Status::Holds);
    assert_eq!(hook(72.1), Status::NotCovered);
    let other = kind("cast-hooked", json!({ "hook_mm": 80.0 }));
    assert_eq!(uncovered(other), [CheckId::AnchorTensionPullout, CheckId::AnchorInteraction]);
    assert_eq!(
        reason(kind("cast-hooked", json!({})), CheckId::AnchorTensionBlowout),
        "side faces are blown out by headed anchors only"
    );
}

#[test]
fn concrete_above_55_mpa_counts_as_55_for_drilled_anchors() {
    let n_b = |strength: &str, rule: &str| {
        at(kind("undercut", json!({ "rule": rule, "slab": { "strength": strength } })), "tension-breakout/N_b")
    };
    assert!(n_b("54.9 MPa", "aci-318-19-si") < n_b("55 MPa", "aci-318-19-si"));
    assert_eq!(n_b("55 MPa", "aci-318-19-si"), n_b("55.1 MPa", "aci-318-19-si"));
    assert!(n_b("7990 psi", "aci-318-19") < n_b("8000 psi", "aci-318-19"));
    assert!(same(n_b("8000 psi", "aci-318-19"), n_b("8010 psi", "aci-318-19")));
}

#[test]
fn what_a_report_leaves_out_is_named() {
    let missing = |word: &str, field: &str, seismic: bool, check: CheckId| {
        let category = if seismic { "C-F" } else { "A-B" };
        let changes = kind(word, json!({ field: null, "seismic_category": category }));
        (reason(changes.clone(), check), uncovered(changes))
    };
    let says = |(text, found): (&str, Vec<CheckId>), name: &str, check: CheckId| {
        assert!(text.contains(name) && text.contains("missing"), "{text}");
        assert!(found.contains(&check) && found.contains(&CheckId::AnchorInteraction), "{found:?}");
    };
    let (breakout, pullout) = (CheckId::AnchorTensionBreakout, CheckId::AnchorTensionPullout);
    let (bond, shear) = (CheckId::AnchorTensionBond, CheckId::AnchorShearSteel);
    says(missing("undercut", "anchor_category", false, breakout), "anchor category", breakout);
    says(missing("undercut", "n_p_cr_n", false, pullout), "N_p", pullout);
    says(missing("undercut", "n_p_eq_n", true, pullout), "N_p,eq", pullout);
    says(missing("undercut", "v_sa_eq_n", true, shear), "V_sa,eq", shear);
    says(missing("adhesive", "tau_cr_mpa", false, bond), "tau_cr", bond);
    says(missing("adhesive", "tau_uncr_mpa", false, bond), "tau_uncr", bond);
    says(missing("adhesive", "alpha_n_seis", true, bond), "alpha_N,seis", bond);
    says(missing("adhesive", "v_sa_eq_n", true, shear), "V_sa,eq", shear);
    let sleeve = kind("expansion-torque", json!({ "sleeve": true }));
    assert!(reason(sleeve, shear).contains("V_sa"));
    // What is not needed is not asked for.
    for field in ["n_p_eq_n", "v_sa_eq_n"] {
        assert!(missing("undercut", field, false, shear).1.is_empty(), "{field} outside of categories C to F");
    }
    assert!(missing("adhesive", "alpha_n_seis", false, bond).1.is_empty());
    let uncracked = json!({ "tau_cr_mpa": null, "slab": { "cracking": "uncracked" } });
    assert!(uncovered(kind("adhesive", uncracked)).is_empty());
    let not_decisive = json!({ "n_p_cr_n": null, "n_p_uncr_n": null, "pullout": "not-decisive" });
    assert_eq!(status(kind("screw", not_decisive), pullout), Status::NotNeeded);
    assert_eq!(status(kind("adhesive", json!({})), pullout), Status::NotNeeded);
    assert_eq!(status(json!({}), bond), Status::NotNeeded);
}

#[test]
fn an_edge_at_c_ac_does_not_split() {
    let psi = |left: &str, c_ac: f64| {
        let slab = json!({ "cracking": "uncracked", "left": left });
        at(kind("undercut", json!({ "c_ac_mm": c_ac, "slab": slab })), "tension-breakout/psi_cp_N")
    };
    assert_eq!(psi("-240 mm", 240.0), 1.0);
    assert!(same(psi("-239.9 mm", 240.0), 239.9 / 240.0));
    assert!(same(psi("-100 mm", 240.0), 180.0 / 240.0), "not below 1.5 h_ef over c_ac");
    assert_eq!(psi("-100 mm", 170.0), 1.0, "c_ac below 1.5 h_ef");
}

#[test]
fn anchors_2_c_na_apart_pull_out_alone() {
    let c_na = at(kind("adhesive", json!({})), "tension-bond/c_Na");
    let is_group = |apart: f64| {
        let anchors = json!([bolt(0.0, 0.0), bolt(apart, 0.0)]);
        has(kind("adhesive", json!({ "anchors": anchors })), "tension-bond/N_ag")
    };
    assert!(is_group(2.0 * c_na - 0.1) && !is_group(2.0 * c_na));
    let far = |left: f64| {
        !has(kind("adhesive", json!({ "slab": { "left": format!("-{left} mm") } })), "tension-bond/c_a_min")
    };
    assert!(far(c_na) && !far(c_na - 0.1));
}

#[test]
fn spacing_edge_and_thickness_of_drilled_anchors() {
    let check = |word: &str, changes: Json, check: CheckId| status(kind(word, changes), check);
    let apart = |mm: f64| json!({ "anchors": [bolt(0.0, 0.0), bolt(mm, 0.0)] });
    let edge = |mm: f64| json!({ "slab": { "left": format!("-{mm} mm") } });
    for (word, diameters) in [
        ("expansion-torque", 8.0),
        ("expansion-displacement", 10.0),
        ("undercut", 6.0),
        ("screw", 6.0),
        ("adhesive", 6.0),
    ] {
        assert_eq!(check(word, apart(96.0), CheckId::AnchorSpacing), Status::Holds, "{word}");
        assert_eq!(check(word, apart(95.9), CheckId::AnchorSpacing), Status::Fails, "{word}");
        assert_eq!(check(word, edge(16.0 * diameters), CheckId::AnchorEdge), Status::Holds, "{word}");
        assert_eq!(check(word, edge(16.0 * diameters - 0.1), CheckId::AnchorEdge), Status::Fails, "{word}");
    }
    let stones = |mm: f64| json!({ "aggregate_mm": 60.0, "slab": { "left": format!("-{mm} mm") } });
    assert_eq!(check("undercut", stones(120.0), CheckId::AnchorEdge), Status::Holds);
    assert_eq!(check("undercut", stones(119.9), CheckId::AnchorEdge), Status::Fails);
    // 120 mm are two thirds of 180 mm, and 100 mm less than 220 mm.
    let thick = |mm: f64| json!({ "slab": { "thickness": format!("{mm} mm") } });
    assert_eq!(check("undercut", thick(180.0), CheckId::AnchorThickness), Status::Holds);
    assert_eq!(check("undercut", thick(179.9), CheckId::AnchorThickness), Status::Fails);
    assert_eq!(check("adhesive", thick(150.0), CheckId::AnchorThickness), Status::NotNeeded);
    assert_eq!(status(thick(150.0), CheckId::AnchorThickness), Status::NotNeeded);
    let reported = |h_min: f64| json!({ "h_min_mm": h_min, "slab": { "thickness": "180 mm" } });
    assert_eq!(check("adhesive", reported(180.0), CheckId::AnchorThickness), Status::Holds);
    assert_eq!(check("adhesive", reported(180.1), CheckId::AnchorThickness), Status::Fails);
    let deep = json!({ "embedment_mm": 300.0, "slab": { "thickness": "400 mm" } });
    assert_eq!(check("undercut", deep, CheckId::AnchorThickness), Status::Holds);
}

#[test]
fn ductile_steel_needs_stretch_threads_and_protection() {
    let option = |changes: Json| {
        let mut all = json!({ "seismic_category": "C-F", "tension_option": "a", "steel": "f1554-36", "stretch_mm": 128.0,
            "buckling": "protected", "embedment_mm": 250.0, "head": "given", "bearing_area_mm2": 900.0 });
        for (key, value) in changes.as_object().unwrap() {
            all[key] = value.clone();
        }
        all
    };
    let ductile = |changes: Json| {
        let findings = case(option(changes)).quiet();
        let of_check = findings.iter().filter(|finding| finding.check == CheckId::AnchorDuctile);
        of_check.map(|finding| finding.outcome.status()).collect::<Vec<_>>()
    };
    assert!(ductile(json!({})).iter().all(|status| *status == Status::Holds));
    assert!(ductile(json!({ "stretch_mm": 127.9 })).contains(&Status::Fails));
    let strengths =
        |f_y: f64| json!({ "steel": "given", "ductility": "ductile", "yield_mpa": f_y, "tensile_mpa": 520.0 });
    assert!(!ductile(strengths(400.0)).contains(&Status::Fails), "1.3 exactly");
    assert!(ductile(strengths(400.1)).contains(&Status::Fails));
    let threaded = |thread: &str| {
        let mut changes = strengths(450.0);
        changes["thread"] = json!(thread);
        ductile(changes)
    };
    assert!(!threaded("full").contains(&Status::Fails) && !threaded("upset").contains(&Status::Fails));
    assert_eq!(ductile(json!({ "buckling": "open" })), [Status::NotCovered]);
    assert_eq!(ductile(json!({ "steel": "iso-8.8" })), [Status::NotCovered]);
    assert_eq!(ductile(json!({ "steel": "a307-a" })), [Status::NotCovered], "no yield strength to compare with");
    assert!(
        ductile(json!({ "embedment_mm": 120.0, "bearing_area_mm2": 200.0 })).contains(&Status::Fails),
        "the head pulls out first"
    );
    assert_eq!(ductile(json!({ "tension_option": "d" })), [Status::NotNeeded]);
}

#[test]
fn each_seismic_option_asks_for_its_own_demand() {
    let asked = |tension: &str, shear: &str, category: &str| {
        let changes = json!({ "seismic_category": category, "tension_option": tension, "shear_option": shear,
            "attachment_tension_n": 5e3, "attachment_shear_n": 5e3, "stretch_mm": 200.0 });
        let case = case(changes);
        let asked = (case.rule.amplification)(&case.values);
        let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
        let mut findings: Vec<Finding> = Vec::new();
        (case.rule.prepare)(&site).check(&case.forces, Amplification::Plain, &mut Sheet::quiet(), &mut findings);
        let breakout = findings.iter().find(|finding| finding.check == CheckId::AnchorTensionBreakout).unwrap();
        (asked, breakout.outcome.status() == Status::NotCovered)
    };
    assert_eq!(asked("d", "c", "C-F"), (Amplification::Amplified, true));
    assert_eq!(asked("a", "c", "C-F"), (Amplification::ShearOnly, true));
    assert_eq!(asked("d", "a", "C-F"), (Amplification::TensionOnly, true));
    assert_eq!(asked("b", "b", "C-F"), (Amplification::Limited, false));
    assert_eq!(asked("c", "a", "C-F"), (Amplification::Limited, false));
    assert_eq!(asked("d", "c", "A-B"), (Amplification::Plain, false));
}

#[test]
fn faults_of_the_fields_of_kinds_name_the_field() {
    let rule = anchor_rule("aci-318-19-si").unwrap();
    let faults = |changes: Json| {
        let mut input = base();
        for (key, value) in changes.as_object().unwrap() {
            input[key] = value.clone();
        }
        let mut found = Vec::new();
        (rule.faults)(&field_values(rule.fields, &input).unwrap(), &mut found);
        found.iter().map(|&(place, problem, _)| (rule.fields[place].key, problem)).collect::<Vec<_>>()
    };
    assert_eq!(faults(json!({ "anchor_kind": "cast-hooked" })), [("hook_mm", Problem::Missing)]);
    assert_eq!(faults(json!({ "anchor_kind": "undercut", "bolt": "stud 16 mm" })), [("bolt", Problem::NotInRule)]);
    let given = json!({ "anchor_kind": "undercut", "bolt": "given", "diameter_mm": 18.0, "stress_area_mm2": 100.0 });
    assert_eq!(faults(given), [], "a drilled anchor needs no head");
    assert_eq!(faults(json!({ "tau_cr_mpa": 8.0, "tau_uncr_mpa": 7.9 })), [("tau_cr_mpa", Problem::AboveLimit)]);
    assert_eq!(faults(json!({ "tau_cr_mpa": 8.0, "tau_uncr_mpa": 8.0 })), []);
    assert_eq!(faults(json!({ "n_p_cr_n": 8.0, "n_p_uncr_n": 7.9 })), [("n_p_cr_n", Problem::AboveLimit)]);
    assert_eq!(faults(json!({ "k_cr": 9.0, "k_uncr": 8.9 })), [("k_cr", Problem::AboveLimit)]);
    assert_eq!(faults(json!({ "standoff_mm": 50.0 })), [("standoff_mm", Problem::Excludes)]);
    assert_eq!(faults(json!({ "standoff_mm": 0.0 })), []);
    assert_eq!(faults(json!({ "standoff_mm": 50.0, "seat": "grout" })), []);
    assert_eq!(faults(json!({ "standoff_mm": 50.0, "seat": "stand-off" })), []);
    assert_eq!(faults(json!({ "tension_option": "a" })), [("stretch_mm", Problem::Missing)]);
    assert_eq!(faults(json!({ "tension_option": "b" })), [("attachment_tension_n", Problem::Missing)]);
    assert_eq!(faults(json!({ "tension_option": "c" })), [("attachment_tension_n", Problem::Missing)]);
    assert_eq!(faults(json!({ "shear_option": "a" })), [("attachment_shear_n", Problem::Missing)]);
}

#[test]
fn an_anchor_in_an_opening_is_not_covered() {
    let opening = |left: f64| {
        let changes = json!({ "slab": { "openings": [{ "left": left, "right": 400, "front": -50, "rear": 50 }] } });
        status(changes, CheckId::AnchorTensionBreakout)
    };
    assert_eq!(opening(0.0), Status::NotCovered);
    assert_ne!(opening(0.1), Status::NotCovered);
}
