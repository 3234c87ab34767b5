//! What the Japanese practice asks about the bolts.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};
use crate::rules::bolts::SIZE_WORDS;

fields! {
    MOUNTING "mounting" Choice(&["floor", "hung"]), Word(0),
        "Mounting",
        "A box on the floor, or one that hangs from bolts above it.",
        "Building Centre of Japan guideline", ["on the floor", "hung from above"];
    FIXING "fixing_height_mm" Number { kind: Kind::Length, min: 10.0, max: 20_000.0 }, Unknown,
        "Height of the fixing plane",
        "Only for a hung box: height of the plane of its bolts above the zero of the cabinet's own heights.",
        "Building Centre of Japan guideline", [];
    BOLT "bolt" Choice(SIZE_WORDS), Fault,
        "Size",
        "Size of the bolt. Take \"given\" for another one and give its diameter and stress area.",
        "Building Centre of Japan guideline",
        ["M8", "M10", "M12", "M14", "M16", "M18", "M20", "M22", "M24", "M27", "M30", "M33", "M36",
         "1/4 in. UNC", "5/16 in. UNC", "3/8 in. UNC", "7/16 in. UNC", "1/2 in. UNC", "5/8 in. UNC", "3/4 in. UNC", "7/8 in. UNC",
         "1 in. UNC", "1-1/8 in. UNC", "1-1/4 in. UNC", "1-3/8 in. UNC", "1-1/2 in. UNC", "1-3/4 in. UNC", "2 in. UNC",
         "headed stud 10 mm", "headed stud 13 mm", "headed stud 16 mm", "headed stud 19 mm", "headed stud 22 mm", "headed stud 25 mm",
         "headed stud 3/8 in.", "headed stud 1/2 in.", "headed stud 5/8 in.", "headed stud 3/4 in.", "headed stud 7/8 in.", "headed stud 1 in.",
         "given below"];
    DIAMETER "diameter_mm" Number { kind: Kind::Length, min: 5.0, max: 200.0 }, Unknown,
        "Diameter", "Outside diameter of a bolt of another size.", "", [];
    STRESS_AREA "stress_area_mm2" Number { kind: Kind::Area, min: 10.0, max: 40_000.0 }, Unknown,
        "Stress area A", "Effective cross section of a bolt of another size, from its maker or its standard.", "", [];
    STEEL "steel" Choice(&["ss400", "a2-50", "given"]), Fault,
        "Steel",
        "What the bolt is made of. Chooses the short-term allowable stresses.",
        "Building Centre of Japan guideline, short-term allowable stresses",
        ["carbon steel SS400", "stainless steel A2-50", "given below"];
    F_T "allowable_tension_mpa" Number { kind: Kind::Stress, min: 10.0, max: 1000.0 }, Unknown,
        "Allowable tension f_t", "Short-term allowable stress in tension. Stands in place of the steel's value.",
        "Building Centre of Japan guideline, short-term allowable stresses", [];
    F_S "allowable_shear_mpa" Number { kind: Kind::Stress, min: 10.0, max: 1000.0 }, Unknown,
        "Allowable shear f_s", "Short-term allowable stress in shear. Stands in place of the steel's value.",
        "Building Centre of Japan guideline, short-term allowable stresses", [];
    EMBEDMENT "embedment_mm" Number { kind: Kind::Length, min: 20.0, max: 3000.0 }, Fault,
        "Embedment", "Length of the bolt in the concrete; it decides the bolt's stiffness where none is given.", "", [];
    T_A "allowable_pull_n" Number { kind: Kind::Force, min: 10.0, max: 10_000_000.0 }, Unknown,
        "Allowable pull T_a",
        "Short-term pull of one bolt in this concrete, from the guideline's table for its kind, size and depth, or from the maker. Without it the pull in the concrete is not covered.",
        "Building Centre of Japan guideline, allowable pull of bolts", [];
    Q_A "allowable_concrete_shear_n" Number { kind: Kind::Force, min: 10.0, max: 10_000_000.0 }, Unknown,
        "Allowable shear in the concrete",
        "Short-term shear of one bolt where the concrete behind it or towards an edge decides. Without it that is not covered.",
        "", [];
    S_MIN "least_spacing_mm" Number { kind: Kind::Length, min: 1.0, max: 10_000.0 }, Unknown,
        "Least spacing", "Spacing of bolts for which the allowable pull and shear were made.", "", [];
    C_MIN "least_edge_mm" Number { kind: Kind::Length, min: 1.0, max: 10_000.0 }, Unknown,
        "Least edge distance", "Edge distance for which the allowable pull and shear were made.", "", [];
    H_MIN "least_thickness_mm" Number { kind: Kind::Length, min: 1.0, max: 10_000.0 }, Unknown,
        "Least thickness", "Thickness of the slab for which the allowable pull and shear were made.", "", [];
}

/// Fields that a single anchor may have otherwise.
pub const ANCHOR_FIELDS: &[usize] = &[BOLT, DIAMETER, STRESS_AREA, STEEL, F_T, F_S, EMBEDMENT, T_A, Q_A];

/// Fields that the guideline's tables or the maker gives.
pub const REPORT_FIELDS: &[usize] = &[T_A, Q_A, S_MIN, C_MIN, H_MIN];
