//! The editions of ACI 318: the same clauses with constants in inch-pound units and in SI, and two earlier ones.

use super::kind::AnchorKind;
use crate::calc::clause::Document;
use crate::calc::{Sheet, StepId, System, steps};

/// ACI 318-19; the SI edition is numbered alike.
pub static ACI_318_19: Document = Document {
    short: "ACI 318-19",
    title: "ACI CODE-318-19, Building Code Requirements for Structural Concrete, American Concrete Institute, 2019",
};
/// ACI 318M-19.
pub static ACI_318M_19: Document = Document {
    short: "ACI 318M-19",
    title: "ACI CODE-318M-19, Building Code Requirements for Structural Concrete, SI units, American Concrete Institute, 2019",
};
/// ACI 318-14.
pub static ACI_318_14: Document = Document {
    short: "ACI 318-14",
    title: "ACI 318-14, Building Code Requirements for Structural Concrete, American Concrete Institute, 2014",
};
/// ACI 318-11.
pub static ACI_318_11: Document = Document {
    short: "ACI 318-11",
    title: "ACI 318-11, Building Code Requirements for Structural Concrete, American Concrete Institute, 2011",
};

steps! { 50 "ACI 318-19, constants of the two editions";
    NOTE_14 "" Number (ACI_318_14 "chapter 17" Memory) "by ACI 318-14, whose clauses are cited by their numbers in 318-19: 17.6.1 to 17.6.5 were 17.4.1 to 17.4.5, 17.7 was 17.5, 17.8 was 17.6, 17.9 was 17.7, 17.10 was 17.2.3, 17.5.3 was 17.3.3, 17.2.4 was 17.2.6": Name;
    NOTE_11 "" Number (ACI_318_11 "appendix D" Memory) "by ACI 318-11, whose clauses are cited by their numbers in 318-19: 17.6.1 to 17.6.5 were D.5.1 to D.5.5, 17.7 was D.6, 17.8 was D.7, 17.9 was D.8, 17.10 was D.3.3, 17.5.3 was D.4.3, 17.2.4 was D.3.6": Name;
    K_C_SI "k_c" Empirical { force: 3, length: -3 } (ACI_318M_19 "17.6.2.2.1" Secondary) "Coefficient for basic breakout of cast-in anchors": Constant;
    K_C_US "k_c" Empirical { force: 3, length: -3 } (ACI_318_19 "17.6.2.2.1" Secondary) "Coefficient for basic breakout of cast-in anchors": Constant;
    K_DEEP_SI "k_c" Empirical { force: 3, length: -4 } (ACI_318M_19 "17.6.2.2.3" Secondary) "Coefficient for basic breakout of deep headed anchors": Constant;
    K_DEEP_US "k_c" Empirical { force: 3, length: -4 } (ACI_318_19 "17.6.2.2.3" Secondary) "Coefficient for basic breakout of deep headed anchors": Constant;
    K_SIDE_SI "k_sb" Empirical { force: 3, length: -6 } (ACI_318M_19 "17.6.4.1" Secondary) "Coefficient for side-face blowout": Constant;
    K_SIDE_US "k_sb" Empirical { force: 3, length: -6 } (ACI_318_19 "17.6.4.1" Secondary) "Coefficient for side-face blowout": Constant;
    K_EDGE_SI "k_v" Empirical { force: 3, length: -6 } (ACI_318M_19 "17.7.2.2.1a" Secondary) "Coefficient for shear breakout": Constant;
    K_EDGE_US "k_v" Empirical { force: 3, length: -6 } (ACI_318_19 "17.7.2.2.1a" Memory) "Coefficient for shear breakout": Constant;
    K_WELDED_SI "k_v" Empirical { force: 3, length: -6 } (ACI_318M_19 "17.7.2.2.2" Secondary) "Coefficient for shear breakout, anchors welded to the plate": Constant;
    K_WELDED_US "k_v" Empirical { force: 3, length: -6 } (ACI_318_19 "17.7.2.2.2" Secondary) "Coefficient for shear breakout, anchors welded to the plate": Constant;
    K_ANY_SI "k_v2" Empirical { force: 3, length: -3 } (ACI_318M_19 "17.7.2.2.1b" Secondary) "Coefficient for shear breakout, upper bound": Constant;
    K_ANY_US "k_v2" Empirical { force: 3, length: -3 } (ACI_318_19 "17.7.2.2.1b" Secondary) "Coefficient for shear breakout, upper bound": Constant;
    K_DRILLED_SI "k_c" Empirical { force: 3, length: -3 } (ACI_318M_19 "17.6.2.2.1" Secondary) "Coefficient for basic breakout of post-installed anchors": Constant;
    K_DRILLED_US "k_c" Empirical { force: 3, length: -3 } (ACI_318_19 "17.6.2.2.1" Secondary) "Coefficient for basic breakout of post-installed anchors": Constant;
    F_C_DRILLED_SI "f'_c_max" Stress (ACI_318M_19 "17.3.1" Secondary) "Largest strength that post-installed anchors may count on": Constant;
    F_C_DRILLED_US "f'_c_max" Stress (ACI_318_19 "17.3.1" Secondary) "Largest strength that post-installed anchors may count on": Constant;
    TAU_REF_SI "tau_ref" Stress (ACI_318M_19 "17.6.5.1.2b" Secondary) "Bond stress that the width of what is pulled out is measured against": Constant;
    TAU_REF_US "tau_ref" Stress (ACI_318_19 "17.6.5.1.2b" Secondary) "Bond stress that the width of what is pulled out is measured against": Constant;
    H_REST_SI "h_rest" Length (ACI_318M_19 "17.9.4" Secondary) "Concrete that has to remain beneath the anchor": Constant;
    H_REST_US "h_rest" Length (ACI_318_19 "17.9.4" Secondary) "Concrete that has to remain beneath the anchor": Constant;
    F_C_MAX_SI "f'_c_max" Stress (ACI_318M_19 "17.3.1" Secondary) "Largest strength that cast-in anchors may count on": Constant;
    F_C_MAX_US "f'_c_max" Stress (ACI_318_19 "17.3.1" Secondary) "Largest strength that cast-in anchors may count on": Constant;
    F_UTA_MAX_SI "f_uta_max" Stress (ACI_318M_19 "17.6.1.2" Secondary) "Largest tensile strength that may be counted on": Constant;
    F_UTA_MAX_US "f_uta_max" Stress (ACI_318_19 "17.6.1.2" Secondary) "Largest tensile strength that may be counted on": Constant;
}

/// A constant with the row that describes it.
#[derive(Clone, Copy, Debug)]
pub struct Constant {
    id: StepId,
    value: f64,
}

impl Constant {
    /// Records it and gives its value.
    pub fn told(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(self.id, self.value)
    }

    /// Its value.
    pub fn value(&self) -> f64 {
        self.value
    }
}

/// One edition: its units and its constants, in its own units.
#[derive(Debug)]
pub struct Edition {
    /// What has to be said of an earlier edition whose clauses are cited by their later numbers.
    pub note: Option<StepId>,
    /// Units in which it computes and prints.
    pub system: System,
    /// 17.6.2.2.1
    pub breakout: Constant,
    /// 17.6.2.2.3
    pub deep_breakout: Constant,
    /// 17.6.2.2.3: from this embedment on.
    pub deep_from: f64,
    /// 17.6.2.2.3: to this embedment.
    pub deep_to: f64,
    /// 17.6.4.1
    pub side_face: Constant,
    /// 17.7.2.2.1a
    pub edge: Constant,
    /// 17.7.2.2.2
    pub edge_welded: Constant,
    /// 17.7.2.2.1b
    pub edge_any: Constant,
    /// 17.7.2.2.2: least thickness of the plate.
    pub welded_plate: f64,
    /// 17.7.2.2.2: least spacing.
    pub welded_spacing: f64,
    /// 17.7.3.1: pryout coefficient 2 from this embedment on.
    pub pryout_deep: f64,
    /// 17.3.1, cast-in anchors
    pub cast_strength_max: Constant,
    /// 17.3.1, post-installed anchors
    pub drilled_strength_max: Constant,
    /// 17.6.2.2.1, post-installed anchors
    pub drilled_breakout: Constant,
    /// 17.6.5.1.2b
    pub bond_reference: Constant,
    /// Table 17.6.5.2.5: least bond stresses, cracked and uncracked, outdoors and indoors.
    pub least_bond: [[f64; 2]; 2],
    /// 17.3.4: least embedment of screw anchors; none where the edition does not know them.
    pub screw_depth_min: Option<f64>,
    /// 17.9.4
    pub rest_below: Constant,
    /// 19.2.1.1: least strength of structural concrete.
    pub strength_min: f64,
    /// 17.6.1.2
    pub tensile_max: Constant,
    /// 17.3.2: largest diameter that the breakout equations reach.
    pub diameter_max: f64,
    /// 19.2.2.1b: modulus of concrete over the root of its strength.
    pub modulus: f64,
}

impl Edition {
    /// The largest strength of concrete that anchors of a kind may count on (17.3.1).
    pub fn strength_max(&self, kind: AnchorKind) -> Constant {
        if kind.is_drilled() { self.drilled_strength_max } else { self.cast_strength_max }
    }
}

/// ACI 318M-19, in N, mm and MPa.
pub static EDITION_SI: Edition = SI;

/// ACI 318-19, in lbf, in. and psi.
pub static EDITION_US: Edition = US;

/// ACI 318M-14.
pub static EDITION_14_SI: Edition = Edition { screw_depth_min: None, note: Some(NOTE_14), ..SI };

/// ACI 318-14.
pub static EDITION_14_US: Edition = Edition { screw_depth_min: None, note: Some(NOTE_14), ..US };

/// ACI 318M-11.
pub static EDITION_11_SI: Edition = Edition { screw_depth_min: None, note: Some(NOTE_11), ..SI };

/// ACI 318-11.
pub static EDITION_11_US: Edition = Edition { screw_depth_min: None, note: Some(NOTE_11), ..US };

const SI: Edition = Edition {
    note: None,
    system: System::Si,
    breakout: Constant { id: K_C_SI, value: 10.0 },
    deep_breakout: Constant { id: K_DEEP_SI, value: 3.9 },
    deep_from: 280.0,
    deep_to: 635.0,
    side_face: Constant { id: K_SIDE_SI, value: 13.0 },
    edge: Constant { id: K_EDGE_SI, value: 0.6 },
    edge_welded: Constant { id: K_WELDED_SI, value: 0.66 },
    edge_any: Constant { id: K_ANY_SI, value: 3.7 },
    welded_plate: 10.0,
    welded_spacing: 65.0,
    pryout_deep: 65.0,
    cast_strength_max: Constant { id: F_C_MAX_SI, value: 70.0 },
    drilled_strength_max: Constant { id: F_C_DRILLED_SI, value: 55.0 },
    drilled_breakout: Constant { id: K_DRILLED_SI, value: 7.0 },
    bond_reference: Constant { id: TAU_REF_SI, value: 7.6 },
    least_bond: [[1.4, 4.5], [2.1, 7.0]],
    screw_depth_min: Some(40.0),
    rest_below: Constant { id: H_REST_SI, value: 100.0 },
    strength_min: 17.0,
    tensile_max: Constant { id: F_UTA_MAX_SI, value: 860.0 },
    diameter_max: 100.0,
    modulus: 4700.0,
};

const US: Edition = Edition {
    note: None,
    system: System::Us,
    breakout: Constant { id: K_C_US, value: 24.0 },
    deep_breakout: Constant { id: K_DEEP_US, value: 16.0 },
    deep_from: 11.0,
    deep_to: 25.0,
    side_face: Constant { id: K_SIDE_US, value: 160.0 },
    edge: Constant { id: K_EDGE_US, value: 7.0 },
    edge_welded: Constant { id: K_WELDED_US, value: 8.0 },
    edge_any: Constant { id: K_ANY_US, value: 9.0 },
    welded_plate: 0.375,
    welded_spacing: 2.5,
    pryout_deep: 2.5,
    cast_strength_max: Constant { id: F_C_MAX_US, value: 10_000.0 },
    drilled_strength_max: Constant { id: F_C_DRILLED_US, value: 8_000.0 },
    drilled_breakout: Constant { id: K_DRILLED_US, value: 17.0 },
    bond_reference: Constant { id: TAU_REF_US, value: 1_100.0 },
    least_bond: [[200.0, 650.0], [300.0, 1_000.0]],
    screw_depth_min: Some(1.5),
    rest_below: Constant { id: H_REST_US, value: 4.0 },
    strength_min: 2500.0,
    tensile_max: Constant { id: F_UTA_MAX_US, value: 125_000.0 },
    diameter_max: 4.0,
    modulus: 57_000.0,
};
