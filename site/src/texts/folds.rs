//! Which fields of an anchor rule the form folds together, so that what most anchorages need stands by itself. A fold is
//! open while one of its fields has a value or a fault, and while another field has a word that asks for it.

use serde_json::{Value, json};
use steadfoot::input::field::Field;

struct Fold {
    title: &'static str,
    keys: &'static [&'static str],
    /// A field and its words that ask for these fields.
    asked_by: &'static [(&'static str, &'static [&'static str])],
}

/// The folds of a rule; none where all its fields stand by themselves.
pub fn of(rule: &str, fields: &[Field]) -> Value {
    let folds = if rule.starts_with("aci-318") {
        ACI_318
    } else if rule.starts_with("en-1992-4") {
        EN_1992_4
    } else {
        &[]
    };
    let known = |key: &str| fields.iter().any(|field| field.key == key);
    let told = folds.iter().map(|fold| {
        let asking = fold.asked_by.iter().map(|(key, _)| key);
        for key in fold.keys.iter().chain(asking) {
            assert!(known(key), "the form folds {key}, which {rule} does not ask");
        }
        json!({ "title": fold.title, "keys": fold.keys, "asked_by": fold.asked_by })
    });
    Value::Array(told.collect())
}

const ACI_318: &[Fold] = &[
    Fold {
        title: "Another size, steel or head",
        keys: &[
            "diameter_mm",
            "stress_area_mm2",
            "yield_mpa",
            "tensile_mpa",
            "ductility",
            "head",
            "bearing_area_mm2",
            "hook_mm",
            "breakout_form",
        ],
        asked_by: &[("bolt", &["given"]), ("steel", &["given"]), ("anchor_kind", &["cast-hooked"])],
    },
    Fold {
        title: "Stand-off, plate and nut",
        keys: &["seat", "standoff_mm", "plate_mm", "tightened"],
        asked_by: &[("seat", &["grout", "stand-off"])],
    },
    Fold {
        title: "Reinforcement, cover and aggregate",
        keys: &[
            "cover_mm",
            "aggregate_mm",
            "supplementary_tension",
            "supplementary_shear",
            "edge_bars",
            "splitting_bars",
            "tension_bars_mm2",
            "shear_bars_mm2",
            "bars_yield_mpa",
            "lightweight_factor",
        ],
        asked_by: &[],
    },
    Fold {
        title: "Options of the seismic design",
        keys: &[
            "tension_option",
            "shear_option",
            "attachment_tension_n",
            "attachment_shear_n",
            "stretch_mm",
            "buckling",
            "thread",
            "interaction",
        ],
        asked_by: &[],
    },
    Fold {
        title: "Values of the evaluation report",
        keys: &[
            "anchor_category",
            "k_cr",
            "k_uncr",
            "pullout",
            "n_p_cr_n",
            "n_p_uncr_n",
            "n_p_eq_n",
            "v_sa_n",
            "v_sa_eq_n",
            "sleeve",
            "c_ac_mm",
            "s_min_mm",
            "c_min_mm",
            "h_min_mm",
        ],
        asked_by: &[("anchor_kind", &["expansion-torque", "expansion-displacement", "undercut", "screw", "adhesive"])],
    },
    Fold {
        title: "Bond of adhesive anchors",
        keys: &["bond_stress", "tau_cr_mpa", "tau_uncr_mpa", "alpha_n_seis", "sustained_tension_n"],
        asked_by: &[("anchor_kind", &["adhesive"])],
    },
];

const EN_1992_4: &[Fold] = &[
    Fold {
        title: "Another size, steel or head",
        keys: &[
            "diameter_mm",
            "stress_area_mm2",
            "yield_mpa",
            "tensile_mpa",
            "elongation_percent",
            "head",
            "head_diameter_mm",
            "head_thickness_mm",
            "bearing_area_mm2",
        ],
        asked_by: &[("bolt", &["given"]), ("steel", &["given"])],
    },
    Fold {
        title: "Stand-off and grout",
        keys: &["seat", "grout_mm", "lever_mm", "clamped", "restraint", "rods_carry_weight"],
        asked_by: &[],
    },
    Fold {
        title: "Reinforcement",
        keys: &["reinforcement", "compression_arm_mm", "edge_bars", "splitting"],
        asked_by: &[],
    },
    Fold { title: "Other partial factors", keys: &["gamma_c", "gamma_ms_n", "gamma_ms_v"], asked_by: &[] },
    Fold {
        title: "Values of the assessment",
        keys: &[
            "gamma_inst",
            "k_cr_n",
            "k_ucr_n",
            "c_cr_n_mm",
            "n_rk_s_n",
            "n_rk_p_cr_n",
            "n_rk_p_ucr_n",
            "tau_rk_cr_mpa",
            "tau_rk_ucr_mpa",
            "psi_c",
            "psi_0_sus",
            "alpha_sus",
            "n_0_rk_sp_n",
            "v_0_rk_s_n",
            "m_0_rk_s_nmm",
            "k_7",
            "k_8",
            "l_f_mm",
            "d_nom_mm",
            "n_rk_s_eq_n",
            "n_rk_p_eq_n",
            "tau_rk_eq_mpa",
            "v_rk_s_eq_n",
            "delta_eq_mm",
            "delta_req_mm",
        ],
        asked_by: &[("fastener", &["expansion", "undercut", "screw", "bonded"])],
    },
];
