//! What ACI 318-19 asks about an anchorage.

use alloc::vec::Vec;

use crate::calc::{Kind, Sheet, System};
use crate::fields;
use crate::input::Problem;
use crate::input::field::{Absent::*, FieldShape::*, Values};
use crate::rules::bolts::{Bolt, Head, SIZE_WORDS, SIZES, STEEL_WORDS, Shank};

fields! {
    BOLT "bolt" Choice(SIZE_WORDS), Fault,
        "Size",
        "Size of the cast-in bolt, or diameter of the welded headed stud. Take \"given\" for another one and give its diameter, its stress area and the bearing area of its head.",
        "ACI 318-19 R17.6.1.2",
        ["M8", "M10", "M12", "M14", "M16", "M18", "M20", "M22", "M24", "M27", "M30", "M33", "M36",
         "1/4 in. UNC", "5/16 in. UNC", "3/8 in. UNC", "7/16 in. UNC", "1/2 in. UNC", "5/8 in. UNC", "3/4 in. UNC", "7/8 in. UNC",
         "1 in. UNC", "1-1/8 in. UNC", "1-1/4 in. UNC", "1-3/8 in. UNC", "1-1/2 in. UNC", "1-3/4 in. UNC", "2 in. UNC",
         "headed stud 10 mm", "headed stud 13 mm", "headed stud 16 mm", "headed stud 19 mm", "headed stud 22 mm", "headed stud 25 mm",
         "headed stud 3/8 in.", "headed stud 1/2 in.", "headed stud 5/8 in.", "headed stud 3/4 in.", "headed stud 7/8 in.", "headed stud 1 in.",
         "given below"];
    DIAMETER "diameter_mm" Number { kind: Kind::Length, min: 5.0, max: 200.0 }, Unknown,
        "Diameter", "Outside diameter of a bolt of another size.", "ACI 318-19 2.2", [];
    STRESS_AREA "stress_area_mm2" Number { kind: Kind::Area, min: 10.0, max: 40_000.0 }, Unknown,
        "Stress area A_se", "Effective cross section of a bolt of another size, from its maker or its standard.", "ACI 318-19 17.6.1.2", [];
    STEEL "steel" Choice(STEEL_WORDS), Fault,
        "Steel",
        "What the bolt is made of, from its certificate. A36 and the ISO classes count as brittle, because their standards ask for no reduction of area.",
        "ACI 318-19 2.3",
        ["ASTM F1554 grade 36", "ASTM F1554 grade 55", "ASTM F1554 grade 105", "ASTM A193 B7", "ASTM A307 grade A", "ASTM A36",
         "ISO 898-1 class 4.6", "ISO 898-1 class 5.6", "ISO 898-1 class 5.8", "ISO 898-1 class 8.8", "ISO 898-1 class 10.9",
         "stud, AWS D1.1 type B", "stud, ISO 13918 SD1", "given below"];
    YIELD "yield_mpa" Number { kind: Kind::Stress, min: 100.0, max: 2000.0 }, Unknown,
        "Yield strength f_ya", "Specified yield strength of another steel.", "ACI 318-19 17.6.1.2", [];
    TENSILE "tensile_mpa" Number { kind: Kind::Stress, min: 100.0, max: 2000.0 }, Unknown,
        "Tensile strength f_uta", "Specified tensile strength of another steel.", "ACI 318-19 17.6.1.2", [];
    DUCTILITY "ductility" Choice(&["as-steel", "ductile", "brittle"]), Word(0),
        "Ductility",
        "A ductile steel element has at least 14 % elongation and 30 % reduction of area in its test. Take \"ductile\" only with a certificate that shows both.",
        "ACI 318-19 2.3", ["as the steel's standard asks", "ductile, by certificate", "brittle"];
    HEAD "head" Choice(&["own", "heavy-hex", "given"]), Word(0),
        "Head",
        "What holds the anchor in the concrete: the bolt's hexagon head or the stud's own head, a heavy hexagon head or nut (inch sizes), or a washer or plate whose bearing area is given.",
        "ACI 318-19 17.6.3.2.2", ["hexagon head, or the stud's own head", "heavy hexagon head or nut, inch series", "bearing area given below"];
    BEARING_AREA "bearing_area_mm2" Number { kind: Kind::Area, min: 10.0, max: 1_000_000.0 }, Unknown,
        "Bearing area A_brg", "Net area of the head, washer or plate that bears on the concrete: its area less that of the shank.", "ACI 318-19 17.6.3.2.2", [];
    EMBEDMENT "embedment_mm" Number { kind: Kind::Length, min: 20.0, max: 3000.0 }, Fault,
        "Embedment h_ef", "Effective depth: from the concrete's surface to the bearing face of the head.", "ACI 318-19 2.2", [];
    BREAKOUT_FORM "breakout_form" Choice(&["common", "deep"]), Word(0),
        "Breakout equation",
        "For headed anchors 280 to 635 mm (11 to 25 in.) deep another equation is permitted, which gives more. Outside that range the common one is taken.",
        "ACI 318-19 17.6.2.2.3", ["common: embedment to the power 1.5", "deep headed anchors: embedment to the power 5/3, where permitted"];
    SEAT "seat" Choice(&["concrete", "grout", "stand-off"]), Word(0),
        "Under the base",
        "What the base stands on at the anchor. An anchor that reaches the slab through a gap or a raised floor bends; its steel is not covered here.",
        "ACI 318-19 17.7.1.2.1", ["the concrete itself", "a built-up grout pad", "a gap: stand-off or raised floor"];
    PLATE "plate_mm" Number { kind: Kind::Length, min: 1.0, max: 200.0 }, Unknown,
        "Plate thickness", "Thickness of the plate that studs are welded to. A plate thick enough lets their edge strength count higher.", "ACI 318-19 17.7.2.2.2", [];
    TIGHTENED "tightened" Flag, Set(true),
        "Nut is tightened", "Whether the anchor gets a torque. Every equipment bolt with a tightened nut does; it needs more spacing and edge distance.", "ACI 318-19 17.9.2", [];
    COVER "cover_mm" Number { kind: Kind::Length, min: 0.0, max: 150.0 }, Is(20.0),
        "Concrete cover",
        "Cover that reinforcement would need at the slab's edge: 20 mm (3/4 in.) for slabs indoors, 40 to 75 mm outdoors or against soil.",
        "ACI 318-19 20.5.1.3", [];
    SUPPLEMENTARY_TENSION "supplementary_tension" Choice(&["absent", "present"]), Word(0),
        "Supplementary reinforcement, tension",
        "Bars that tie the breakout body under tension to the slab, without being designed for the whole force.",
        "ACI 318-19 17.5.3", ["absent", "present"];
    SUPPLEMENTARY_SHEAR "supplementary_shear" Choice(&["absent", "present"]), Word(0),
        "Supplementary reinforcement, shear",
        "Bars that tie the breakout body at the edge to the slab, without being designed for the whole force.",
        "ACI 318-19 17.5.3", ["absent", "present"];
    EDGE_BARS "edge_bars" Choice(&["none", "bar", "bar-and-stirrups"]), Word(0),
        "Bars along the edge",
        "Reinforcement between the anchors and the edge in cracked concrete.",
        "ACI 318-19 17.7.2.5", ["none, or thinner than 13 mm (No. 4)", "a bar of at least 13 mm (No. 4)", "the same, enclosed in stirrups at most 100 mm (4 in.) apart"];
    LAMBDA "lightweight_factor" Number { kind: Kind::Number, min: 0.75, max: 1.0 }, Is(1.0),
        "Lightweight factor lambda", "1.0 for normalweight concrete, 0.85 for sand-lightweight, 0.75 for all-lightweight.", "ACI 318-19 19.2.4", [];
    SEISMIC_CATEGORY "seismic_category" Choice(&["A-B", "C-F"]), Word(1),
        "Seismic design category",
        "From the building's structural engineer. In categories C to F anchors in concrete are designed for amplified forces and reduced concrete strength.",
        "ACI 318-19 17.10.1", ["A or B", "C, D, E or F"];
    OVERSTRENGTH "overstrength" Number { kind: Kind::Number, min: 1.0, max: 5.0 }, Unknown,
        "Overstrength factor",
        "Multiplies the horizontal force in the anchors where the demand rule has no amplified level of its own. There is no default: the engineer of record says it.",
        "ACI 318-19 17.10.5.3, 17.10.6.3", [];
    INTERACTION "interaction" Choice(&["trilinear", "five-thirds"]), Word(0),
        "Tension with shear",
        "How tension and shear ratios add up. The straight lines are the code's own; the curve is the commentary's alternative.",
        "ACI 318-19 17.8, R17.8", ["straight lines, sum at most 1.2", "powers of 5/3, sum at most 1"];
}

/// What a single anchor may have otherwise than the anchorage.
pub static ANCHOR_FIELDS: &[usize] =
    &[BOLT, DIAMETER, STRESS_AREA, STEEL, YIELD, TENSILE, DUCTILITY, HEAD, BEARING_AREA, EMBEDMENT];

/// The last word of the sizes and of the steels: the measures follow.
pub fn is_given(values: &Values, field: usize) -> bool {
    let words = if field == BOLT { SIZE_WORDS } else { STEEL_WORDS };
    values.choice(field) == Some(words.len() - 1)
}

/// Faults that a single field's limits cannot see.
pub fn faults(values: &Values, found: &mut Vec<(usize, Problem, &'static str)>) {
    let mut need = |field: usize, why: &'static str| {
        if values.number(field).is_none() {
            found.push((field, Problem::Missing, why));
        }
    };
    if is_given(values, BOLT) {
        need(DIAMETER, "a bolt whose size is given needs its diameter");
        need(STRESS_AREA, "a bolt whose size is given needs its stress area");
    }
    if is_given(values, STEEL) {
        need(TENSILE, "a steel that is given needs its tensile strength");
        need(YIELD, "a steel that is given needs its yield strength");
    }
    if values.choice(HEAD) == Some(HEAD_GIVEN) {
        need(BEARING_AREA, "a head that is given needs its bearing area");
    }
    if is_given(values, BOLT) {
        let (diameter, area) = (values.number(DIAMETER), values.number(STRESS_AREA));
        if let (Some(d), Some(a)) = (diameter, area)
            && a > core::f64::consts::PI / 4.0 * d * d
        {
            found.push((STRESS_AREA, Problem::AboveLimit, "at most the area of a circle of the diameter"));
        }
    }
    if let (Some(f_y), Some(f_u), true) = (values.number(YIELD), values.number(TENSILE), is_given(values, STEEL))
        && f_y > f_u
    {
        found.push((YIELD, Problem::AboveLimit, "at most the tensile strength"));
    }
    if is_given(values, BOLT) && values.choice(HEAD) != Some(HEAD_GIVEN) {
        found.push((
            HEAD,
            Problem::NotInRule,
            "a bolt whose size is given needs the head \"given\" with its bearing area",
        ));
    } else if values.choice(HEAD) == Some(HEAD_HEAVY) && !has_heavy_head(values) {
        found.push((
            HEAD,
            Problem::NotInRule,
            "inch bolts from 1/2 in. on have a heavy head; give the bearing area for others",
        ));
    }
}

/// Place of the word "heavy-hex".
pub const HEAD_HEAVY: usize = 1;
/// Place of the word "given".
pub const HEAD_GIVEN: usize = 2;
/// Place of the word "deep".
pub const FORM_DEEP: usize = 1;
/// Place of the word "grout".
pub const SEAT_GROUT: usize = 1;
/// Place of the word "stand-off".
pub const SEAT_GAP: usize = 2;
/// Place of the word "present".
pub const PRESENT: usize = 1;
/// Place of the word "C-F".
pub const CATEGORY_C_TO_F: usize = 1;
/// Place of the word "five-thirds".
pub const FIVE_THIRDS: usize = 1;
/// Places of the words of ductility.
pub const DUCTILE: usize = 1;
/// Place of the word "brittle".
pub const BRITTLE: usize = 2;

fn has_heavy_head(values: &Values) -> bool {
    bolt(values).is_some_and(|bolt| bolt.bearing_area(System::Si, &mut Sheet::quiet()).is_some())
}

/// The bolt that the values speak of; none while a measure of it is missing.
pub fn bolt(values: &Values) -> Option<Bolt> {
    let shank = match values.choice(BOLT)? {
        place if place < SIZES.len() => Shank::Listed(&SIZES[place]),
        _ => Shank::Given { diameter_mm: values.number(DIAMETER)?, stress_area_mm2: values.number(STRESS_AREA)? },
    };
    let head = match values.choice(HEAD)? {
        HEAD_HEAVY => Head::HeavyHexagon,
        HEAD_GIVEN => Head::Given { bearing_area_mm2: values.number(BEARING_AREA)? },
        _ => Head::Own,
    };
    Some(Bolt { shank, head })
}
