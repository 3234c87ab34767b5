//! What EN 1992-4 asks about an anchorage, and the values that only an assessment gives.

use alloc::vec::Vec;

use crate::calc::Kind;
use crate::fields;
use crate::input::Problem;
use crate::input::field::{Absent::*, FieldShape::*, Values};

/// The words for the sizes, the last one letting the user give the measures.
pub static BOLT_WORDS: &[&str] = &[
    "M8",
    "M10",
    "M12",
    "M14",
    "M16",
    "M18",
    "M20",
    "M22",
    "M24",
    "M27",
    "M30",
    "M33",
    "M36",
    "stud 10 mm",
    "stud 13 mm",
    "stud 16 mm",
    "stud 19 mm",
    "stud 22 mm",
    "stud 25 mm",
    "given",
];

/// The words for the steels, the last one letting the user give the strengths.
pub static STEEL_WORDS: &[&str] = &["iso-4.6", "iso-5.6", "iso-5.8", "iso-8.8", "iso-10.9", "stud-sd1", "given"];

fields! {
    FASTENER "fastener" Choice(&["headed", "expansion", "undercut", "screw", "bonded"]), Fault,
        "Fastener",
        "How it holds in the concrete. All but cast-in headed ones need the values of their European Technical Assessment.",
        "EN 1992-4:2018 1.2",
        ["cast-in headed bolt or stud", "expansion anchor", "undercut anchor", "concrete screw", "bonded anchor"];
    BOLT "bolt" Choice(BOLT_WORDS), Fault,
        "Size",
        "Thread, or diameter of the welded headed stud. Take \"given\" for another one and give its diameter and its stress area.",
        "EN 1992-4:2018 3.2",
        ["M8", "M10", "M12", "M14", "M16", "M18", "M20", "M22", "M24", "M27", "M30", "M33", "M36",
         "headed stud 10 mm", "headed stud 13 mm", "headed stud 16 mm", "headed stud 19 mm", "headed stud 22 mm", "headed stud 25 mm",
         "given below"];
    DIAMETER "diameter_mm" Number { kind: Kind::Length, min: 5.0, max: 100.0 }, Unknown,
        "Diameter d", "Diameter of a fastener of another size.", "EN 1992-4:2018 3.2", [];
    STRESS_AREA "stress_area_mm2" Number { kind: Kind::Area, min: 10.0, max: 8000.0 }, Unknown,
        "Stress area A_s", "Stressed cross section of a fastener of another size.", "EN 1992-4:2018 7.2.1.3", [];
    STEEL "steel" Choice(STEEL_WORDS), Fault,
        "Steel", "Property class of the bolt or rod, from its certificate.", "EN 1993-1-8 Table 3.1",
        ["class 4.6", "class 5.6", "class 5.8", "class 8.8", "class 10.9", "stud, ISO 13918 SD1", "given below"];
    YIELD "yield_mpa" Number { kind: Kind::Stress, min: 100.0, max: 2000.0 }, Unknown,
        "Yield strength f_yk", "Of another steel.", "EN 1992-4:2018 4.4.2.2", [];
    TENSILE "tensile_mpa" Number { kind: Kind::Stress, min: 100.0, max: 2000.0 }, Unknown,
        "Tensile strength f_uk", "Of another steel.", "EN 1992-4:2018 7.2.1.3", [];
    ELONGATION "elongation_percent" Number { kind: Kind::Number, min: 1.0, max: 60.0 }, Unknown,
        "Rupture elongation A_5, %",
        "Of another steel. Up to 8 % a group of fasteners counts with 0.8 of its shear strength; that is taken where it is not given.",
        "EN 1992-4:2018 7.2.2.3", [];
    HEAD "head" Choice(&["own", "round", "given"]), Word(0),
        "Head",
        "What holds a cast-in bolt: its own hexagon head, or the stud's own; a round washer or plate; or a head whose bearing area is given.",
        "EN 1992-4:2018 7.2.1.5", ["hexagon head, or the stud's own head", "round washer, measures below", "bearing area given below"];
    HEAD_DIAMETER "head_diameter_mm" Number { kind: Kind::Length, min: 6.0, max: 1000.0 }, Unknown,
        "Diameter of the head d_h", "Of a round washer or plate.", "EN 1992-4:2018 7.2.1.5", [];
    HEAD_THICKNESS "head_thickness_mm" Number { kind: Kind::Length, min: 1.0, max: 200.0 }, Unknown,
        "Thickness of the head t_h", "Of a round washer or plate: one that is thin beside its width does not bear with all of it.", "EN 1992-4:2018 7.2.1.5", [];
    BEARING_AREA "bearing_area_mm2" Number { kind: Kind::Area, min: 10.0, max: 1_000_000.0 }, Unknown,
        "Bearing area A_h", "Net area of the head that bears on the concrete.", "EN 1992-4:2018 7.2.1.5", [];
    EMBEDMENT "embedment_mm" Number { kind: Kind::Length, min: 20.0, max: 3000.0 }, Fault,
        "Effective embedment h_ef",
        "From the concrete's surface to the bearing face of a head; as the assessment defines it for other fasteners.",
        "EN 1992-4:2018 3.2", [];
    SEAT "seat" Choice(&["concrete", "mortar", "stand-off"]), Unknown,
        "Under the base",
        "What the base stands on at the fastener. Thin mortar counts as concrete; thicker mortar weakens the steel; a rod that passes a gap or a raised floor bends. Left empty, the concrete itself; a cabinet on stems has to say it, since its bolts may pass the gap.",
        "EN 1992-4:2018 6.2.2.3", ["the concrete itself", "a levelling layer of mortar of at least 30 MPa", "a gap: stand-off or raised floor"];
    GROUT "grout_mm" Number { kind: Kind::Length, min: 0.0, max: 100.0 }, Unknown,
        "Thickness of the mortar t_grout", "Of the levelling layer under the base.", "EN 1992-4:2018 6.2.2.3, 7.2.2.3.1", [];
    LEVER "lever_mm" Number { kind: Kind::Length, min: 1.0, max: 2000.0 }, Unknown,
        "Distance e_1",
        "From the concrete's surface, without mortar, to the middle of the base plate or angle: how far above the concrete the shear acts on a rod in a gap.",
        "EN 1992-4:2018 6.2.2.3", [];
    CLAMPED "clamped" Flag, Set(false),
        "Nut and washer at the concrete",
        "Whether the rod is held against the concrete's surface by a nut and washer; else half a diameter is added to its lever.",
        "EN 1992-4:2018 6.2.2.3", [];
    RESTRAINT "restraint" Choice(&["free", "fixed"]), Word(0),
        "Base on the rods",
        "Whether the base can turn where it sits on the rods. Fixed needs a base that is clamped between nuts, stiff, and itself kept from turning.",
        "EN 1992-4:2018 7.2.2.3.2", ["can turn: alpha_M = 1", "cannot turn: alpha_M = 2"];
    CARRIES "rods_carry_weight" Flag, Set(false),
        "Rods carry the weight",
        "Whether the cabinet stands on the rods, by nuts under its base. Rods that are compressed are not covered: EN 1992-4 has no rule for the buckling of their free length, and EN 1993-1-1 needs their lengths and ends.",
        "EN 1992-4:2018 1.3", [];
    HOLES "holes" Choice(&["clearance", "filled"]), Word(0),
        "Holes in the base",
        "With a gap between hole and fastener only those nearest to an edge take the shear towards it, and earthquakes hammer: strengths in shear are halved. Filled means mortar in the gap, or welded.",
        "EN 1992-4:2018 6.2.2.2, C.5", ["with clearance", "filled, or welded to the base"];
    HOLE "hole_mm" Number { kind: Kind::Length, min: 5.0, max: 200.0 }, Unknown,
        "Diameter of the hole d_f", "In the base at the fastener. Left empty, the largest of Table 6.1 is taken as kept.", "EN 1992-4:2018 Table 6.1", [];
    REINFORCEMENT "reinforcement" Choice(&["dense", "wide"]), Word(0),
        "Reinforcement at the surface",
        "Close bars spoil the concrete at shallow fasteners. Wide is at least 150 mm apart, or at most 10 mm thick and at least 100 mm apart.",
        "EN 1992-4:2018 7.2.1.4(5)", ["closer than that, or unknown", "wide apart"];
    ARM "compression_arm_mm" Number { kind: Kind::Length, min: 1.0, max: 5000.0 }, Unknown,
        "Lever arm z to compression",
        "Distance from the pulled fasteners to the compression under the same stiff base, only where at least 0.8 of their pull presses there in every load case. Feet far apart do not count; leave it empty for them.",
        "EN 1992-4:2018 7.2.1.4(7)", [];
    EDGE_BARS "edge_bars" Choice(&["none", "bars-and-stirrups"]), Word(0),
        "Bars along the edge", "Reinforcement between the fasteners and the edge in cracked concrete.", "EN 1992-4:2018 7.2.2.5(11)",
        ["none, or straight bars only", "edge bars with stirrups or mesh at most 100 mm and 2 c_1 apart"];
    SPLITTING "splitting" Choice(&["check", "reinforced"]), Word(0),
        "Splitting",
        "May be left out where reinforcement keeps cracks at 0.3 mm and strengths for cracked concrete are used: that is for the engineer of the slab to confirm.",
        "EN 1992-4:2018 7.2.1.7", ["check it", "reinforcement confirmed that keeps cracks at 0.3 mm"];
    CATEGORY "performance_category" Choice(&["none", "C1", "C2"]), Word(2),
        "Seismic performance category",
        "What the site asks: none up to 0.05 g of a_g S; C1 or C2 above it, C2 above 0.1 g in importance classes II to IV.",
        "EN 1992-4:2018 Table C.1", ["none: very low seismicity", "C1", "C2"];
    DESIGN "seismic_design" Choice(&["elastic", "capacity", "ductile"]), Word(0),
        "Seismic design option",
        "Elastic design takes the forces without any ductility of cabinet or building, from the level that the demand rule has for anchors designed elastically, with elastic design or no option stated there, or by the factor below. The other two are said to be not covered.",
        "EN 1992-4:2018 C.3",
        ["a2: elastic", "a1: capacity design by a yielding base", "b: ductile fasteners"];
    OVERSTRENGTH "elastic_factor" Number { kind: Kind::Number, min: 1.0, max: 10.0 }, Unknown,
        "Factor to elastic forces",
        "Multiplies the horizontal force where the demand rule has no level for anchors designed elastically: the behaviour factors that are in it, and 1.5 with the simplified formula. There is no default. A factor given here also multiplies a level for anchors.",
        "EN 1992-4:2018 C.3, C.4", [];
    QUALIFIED "qualification" Choice(&["none", "C1", "C2"]), Word(0),
        "Qualified for",
        "The seismic performance category on the first pages of the assessment. Cast-in headed bolts of a property class have none and need none here.",
        "EN 1992-4:2018 C.2", ["none", "C1", "C2"];
    GAMMA_INST "gamma_inst" Number { kind: Kind::Number, min: 1.0, max: 1.4 }, Unknown,
        "Installation factor gamma_inst",
        "In the table of the assessment for tension, beside the characteristic resistances: 1.0, 1.2 or 1.4.", "EN 1992-4:2018 Table 4.1", [];
    GAMMA_C "gamma_c" Number { kind: Kind::Number, min: 1.0, max: 2.0 }, Is(1.5),
        "Partial factor of concrete gamma_c", "1.5, where the National Annex does not say otherwise.", "EN 1992-4:2018 Table 4.1", [];
    GAMMA_MS_N "gamma_ms_n" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Partial factor gamma_Ms_N", "Of the steel in tension, from the assessment's table; empty for the formula.", "EN 1992-4:2018 Table 4.1", [];
    GAMMA_MS_V "gamma_ms_v" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Partial factor gamma_Ms_V", "Of the steel in shear, from the assessment's table; empty for the formula.", "EN 1992-4:2018 Table 4.1", [];
    K_CR "k_cr_n" Number { kind: Kind::Number, min: 1.0, max: 20.0 }, Unknown,
        "Factor k_cr_N", "k_1 for the cone in cracked concrete, in the assessment's table for tension; empty for the standard's value.", "EN 1992-4:2018 7.2.1.4(2)", [];
    K_UCR "k_ucr_n" Number { kind: Kind::Number, min: 1.0, max: 20.0 }, Unknown,
        "Factor k_ucr_N", "k_1 for the cone in uncracked concrete, in the assessment's table for tension; empty for the standard's value.", "EN 1992-4:2018 7.2.1.4(2)", [];
    C_CR_N "c_cr_n_mm" Number { kind: Kind::Length, min: 10.0, max: 5000.0 }, Unknown,
        "Edge distance c_cr_N", "In the assessment's table for tension; empty for 1.5 h_ef.", "EN 1992-4:2018 7.2.1.4(3)", [];
    N_RK_S "n_rk_s_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Steel N_Rk_s", "Steel failure in tension, from the assessment; empty for A_s f_uk.", "EN 1992-4:2018 7.2.1.3", [];
    N_RK_P_CR "n_rk_p_cr_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Pull-out N_Rk_p, cracked", "Pull-out in cracked concrete C20/25, in the assessment's table for tension.", "EN 1992-4:2018 7.2.1.5", [];
    N_RK_P_UCR "n_rk_p_ucr_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Pull-out N_Rk_p, uncracked", "Pull-out in uncracked concrete C20/25, in the assessment's table for tension.", "EN 1992-4:2018 7.2.1.5", [];
    TAU_RK_CR "tau_rk_cr_mpa" Number { kind: Kind::Stress, min: 0.5, max: 60.0 }, Unknown,
        "Bond strength tau_Rk_cr", "In cracked concrete C20/25, for the temperatures of the hall, in the assessment's table for tension.", "EN 1992-4:2018 7.2.1.6", [];
    TAU_RK_UCR "tau_rk_ucr_mpa" Number { kind: Kind::Stress, min: 0.5, max: 60.0 }, Unknown,
        "Bond strength tau_Rk_ucr", "In uncracked concrete C20/25: it also says how far bonded anchors disturb each other in cracked concrete.", "EN 1992-4:2018 7.2.1.6(3)", [];
    PSI_C "psi_c" Number { kind: Kind::Number, min: 1.0, max: 3.0 }, Is(1.0),
        "Increasing factor psi_c", "On pull-out and bond for stronger concrete than C20/25, from the assessment's table.", "EN 1992-4:2018 7.2.1.5", [];
    PSI_0_SUS "psi_0_sus" Number { kind: Kind::Number, min: 0.1, max: 1.0 }, Is(0.6),
        "Factor psi0_sus", "On bond under sustained pull, from the assessment; 0.6 where it says nothing.", "EN 1992-4:2018 7.2.1.6(2)", [];
    ALPHA_SUS "alpha_sus" Number { kind: Kind::Number, min: 0.0, max: 1.0 }, Is(0.0),
        "Sustained part of the pull alpha_sus", "Pull that is always there over all of the pull; 0 where only earthquakes pull.", "EN 1992-4:2018 7.2.1.6(2)", [];
    C_CR_SP "c_cr_sp_mm" Number { kind: Kind::Length, min: 10.0, max: 5000.0 }, Unknown,
        "Edge distance c_cr_sp", "For splitting, in the assessment's table for tension; s_cr_sp is twice as much.", "EN 1992-4:2018 7.2.1.7", [];
    N_0_RK_SP "n_0_rk_sp_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Splitting N0_Rk_sp", "From the assessment, if it gives one; empty for the lesser of cone and pull-out.", "EN 1992-4:2018 7.2.1.7", [];
    H_MIN "h_min_mm" Number { kind: Kind::Length, min: 20.0, max: 5000.0 }, Unknown,
        "Least thickness h_min", "In the assessment's table of installation values.", "EN 1992-4:2018 7.2.1.7", [];
    S_MIN "s_min_mm" Number { kind: Kind::Length, min: 10.0, max: 2000.0 }, Unknown,
        "Least spacing s_min", "In the assessment's table of installation values.", "EN 1992-4:2018 7.1", [];
    C_MIN "c_min_mm" Number { kind: Kind::Length, min: 10.0, max: 2000.0 }, Unknown,
        "Least edge distance c_min", "In the assessment's table of installation values.", "EN 1992-4:2018 7.1", [];
    V_0_RK_S "v_0_rk_s_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Steel V0_Rk_s", "Steel failure in shear without lever arm, from the assessment; empty for k_6 A_s f_uk, which holds for bolts and threaded rods.", "EN 1992-4:2018 7.2.2.3.1", [];
    M_0_RK_S "m_0_rk_s_nmm" Number { kind: Kind::Moment, min: 100.0, max: 1e9 }, Unknown,
        "Bending M0_Rk_s", "From the assessment; empty for 1.2 W_el f_uk, which holds for bolts and threaded rods.", "EN 1992-4:2018 7.2.2.3.2", [];
    K_7 "k_7" Number { kind: Kind::Number, min: 0.5, max: 1.0 }, Unknown,
        "Factor k_7", "On steel in shear for ductility, from the assessment; empty for the standard's values.", "EN 1992-4:2018 7.2.2.3.1", [];
    K_8 "k_8" Number { kind: Kind::Number, min: 0.5, max: 4.0 }, Unknown,
        "Factor k_8", "For pry-out, in the assessment's table for shear; empty for 1 below 60 mm and 2 from there.", "EN 1992-4:2018 7.2.2.4", [];
    L_F "l_f_mm" Number { kind: Kind::Length, min: 5.0, max: 1000.0 }, Unknown,
        "Effective length l_f", "For edge failure, in the assessment's table for shear; empty for h_ef.", "EN 1992-4:2018 7.2.2.5", [];
    D_NOM "d_nom_mm" Number { kind: Kind::Length, min: 5.0, max: 100.0 }, Unknown,
        "Outside diameter d_nom", "For edge failure, in the assessment's table for shear: that of a sleeve; empty for the diameter.", "EN 1992-4:2018 7.2.2.5", [];
    N_RK_S_EQ "n_rk_s_eq_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Seismic steel N_Rk_s_eq", "In the assessment's table for the seismic category.", "EN 1992-4:2018 C.5", [];
    N_RK_P_EQ "n_rk_p_eq_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Seismic pull-out N_Rk_p_eq", "In the assessment's table for the seismic category.", "EN 1992-4:2018 C.5", [];
    TAU_RK_EQ "tau_rk_eq_mpa" Number { kind: Kind::Stress, min: 0.2, max: 60.0 }, Unknown,
        "Seismic bond strength tau_Rk_eq", "In the assessment's table for the seismic category.", "EN 1992-4:2018 C.5", [];
    V_RK_S_EQ "v_rk_s_eq_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Seismic steel V_Rk_s_eq", "In the assessment's table for the seismic category.", "EN 1992-4:2018 C.5", [];
    DELTA_EQ "delta_eq_mm" Number { kind: Kind::Length, min: 0.1, max: 100.0 }, Unknown,
        "Displacement delta_eq", "In the assessment's table for C2: the larger of both directions at the limit state looked at.", "EN 1992-4:2018 C.6", [];
    DELTA_REQ "delta_req_mm" Number { kind: Kind::Length, min: 0.1, max: 100.0 }, Unknown,
        "Allowed displacement delta_req", "That the cabinet may stand at the fastener, where one is asked for; strengths are cut where delta_eq is larger.", "EN 1992-4:2018 C.6", [];
}

/// What a single anchor may have otherwise than the anchorage.
pub static ANCHOR_FIELDS: &[usize] = &[
    BOLT,
    DIAMETER,
    STRESS_AREA,
    STEEL,
    YIELD,
    TENSILE,
    ELONGATION,
    HEAD,
    HEAD_DIAMETER,
    HEAD_THICKNESS,
    BEARING_AREA,
    EMBEDMENT,
];

/// What an assessment gives of a fastener, and what has to be known to read it.
pub static REPORT_FIELDS: &[usize] = &[
    FASTENER,
    BOLT,
    DIAMETER,
    STRESS_AREA,
    STEEL,
    YIELD,
    TENSILE,
    ELONGATION,
    EMBEDMENT,
    QUALIFIED,
    GAMMA_INST,
    GAMMA_MS_N,
    GAMMA_MS_V,
    K_CR,
    K_UCR,
    C_CR_N,
    N_RK_S,
    N_RK_P_CR,
    N_RK_P_UCR,
    TAU_RK_CR,
    TAU_RK_UCR,
    PSI_C,
    PSI_0_SUS,
    C_CR_SP,
    N_0_RK_SP,
    H_MIN,
    S_MIN,
    C_MIN,
    V_0_RK_S,
    M_0_RK_S,
    K_7,
    K_8,
    L_F,
    D_NOM,
    N_RK_S_EQ,
    N_RK_P_EQ,
    TAU_RK_EQ,
    V_RK_S_EQ,
    DELTA_EQ,
];

/// The last word of the sizes and of the steels: the measures follow.
pub fn is_given(values: &Values, field: usize) -> bool {
    let words = if field == BOLT { BOLT_WORDS } else { STEEL_WORDS };
    values.choice(field) == Some(words.len() - 1)
}

/// Faults that a single field's limits cannot see.
pub fn faults(values: &Values, found: &mut Vec<(usize, Problem, &'static str)>) {
    let mut need = |field: usize, why: &'static str| {
        if values.number(field).is_none() {
            found.push((field, Problem::Missing, why));
        }
    };
    let is_headed = values.choice(FASTENER) == Some(HEADED);
    if is_given(values, BOLT) {
        need(DIAMETER, "a fastener whose size is given needs its diameter");
        need(STRESS_AREA, "a fastener whose size is given needs its stress area");
    }
    if is_given(values, STEEL) {
        need(TENSILE, "a steel that is given needs its tensile strength");
        need(YIELD, "a steel that is given needs its yield strength");
    }
    if is_headed && values.choice(HEAD) == Some(HEAD_ROUND) {
        need(HEAD_DIAMETER, "a round head needs its diameter");
        need(HEAD_THICKNESS, "a round head needs its thickness");
    }
    if is_headed && values.choice(HEAD) == Some(HEAD_GIVEN) {
        need(BEARING_AREA, "a head that is given needs its bearing area");
    }
    if values.choice(SEAT) == Some(SEAT_MORTAR) {
        need(GROUT, "a base on mortar needs its thickness");
    }
    if values.choice(SEAT) == Some(SEAT_GAP) {
        need(LEVER, "a rod in a gap needs the height at which the shear acts");
    }
    let numbers = |fields: [usize; 2]| match fields.map(|field| values.number(field)) {
        [Some(a), Some(b)] => Some([a, b]),
        _ => None,
    };
    if let (Some([d, a]), true) = (numbers([DIAMETER, STRESS_AREA]), is_given(values, BOLT))
        && a > core::f64::consts::PI / 4.0 * d * d
    {
        found.push((STRESS_AREA, Problem::AboveLimit, "at most the area of a circle of the diameter"));
    }
    if let (Some([f_y, f_u]), true) = (numbers([YIELD, TENSILE]), is_given(values, STEEL))
        && f_y > f_u
    {
        found.push((YIELD, Problem::AboveLimit, "at most the tensile strength"));
    }
    if is_headed && values.choice(HEAD) == Some(HEAD_OWN) && is_given(values, BOLT) {
        found.push((HEAD, Problem::NotInRule, "a bolt whose size is given needs a round head or a given bearing area"));
    }
    if is_headed && values.choice(HEAD) == Some(HEAD_ROUND) {
        let d = diameter_mm(values);
        if values.number(HEAD_DIAMETER).zip(d).is_some_and(|(d_h, d)| d_h <= d) {
            found.push((HEAD_DIAMETER, Problem::BelowLimit, "more than the diameter of the shank"));
        }
    }
    if let Some((hole, d)) = values.number(HOLE).zip(diameter_mm(values))
        && hole < d
    {
        found.push((HOLE, Problem::BelowLimit, "at least the diameter of the fastener"));
    }
}

fn diameter_mm(values: &Values) -> Option<f64> {
    super::bolt::size(values).map_or(values.number(DIAMETER), |size| Some(size.diameter))
}

/// Place of the word "headed".
pub const HEADED: usize = 0;
/// Place of the word "expansion".
pub const EXPANSION: usize = 1;
/// Place of the word "undercut".
pub const UNDERCUT: usize = 2;
/// Place of the word "bonded".
pub const BONDED: usize = 4;
/// Place of the word "own".
pub const HEAD_OWN: usize = 0;
/// Place of the word "round".
pub const HEAD_ROUND: usize = 1;
/// Place of the word "given".
pub const HEAD_GIVEN: usize = 2;
/// Place of the word "mortar".
pub const SEAT_MORTAR: usize = 1;
/// Place of the word "stand-off".
pub const SEAT_GAP: usize = 2;
/// Place of the word "fixed".
pub const FIXED: usize = 1;
/// Place of the word "filled".
pub const FILLED: usize = 1;
/// Place of the word "wide".
pub const WIDE: usize = 1;
/// Place of the word "bars-and-stirrups".
pub const STIRRUPS: usize = 1;
/// Place of the word "reinforced".
pub const REINFORCED: usize = 1;
/// Place of the category "none".
pub const STATIC: usize = 0;
/// Place of the word "elastic".
pub const ELASTIC: usize = 0;
/// Place of the word "capacity".
pub const CAPACITY: usize = 1;
