//! What ACI 318-19 asks about an anchorage.

use super::kind::KIND_WORDS;
use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};
use crate::rules::bolts::{SIZE_WORDS, STEEL_WORDS};

fields! {
    ANCHOR_KIND "anchor_kind" Choice(KIND_WORDS), Word(0),
        "Kind of anchor",
        "How it holds in the concrete. Anchors that are installed in hardened concrete need values from their own evaluation report; what is missing is named, and what needs it is not covered. Adhesive anchors need concrete that is at least 21 days old (17.2.2).",
        "ACI 318-19 17.1.2, 2.3",
        ["cast-in, with a head, nut or washer, or a welded stud", "cast-in, hooked (J or L)", "expansion, torque-controlled", "expansion, displacement-controlled", "undercut", "screw", "adhesive"];
    BOLT "bolt" Choice(SIZE_WORDS), Fault,
        "Size",
        "Size of the bolt, rod or anchor, or diameter of the welded headed stud. Take \"given\" for another one and give its diameter and stress area, and the bearing area of its head if it has one.",
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
    HOOK "hook_mm" Number { kind: Kind::Length, min: 5.0, max: 1000.0 }, Unknown,
        "Hook e_h", "Of a hooked bolt: from the inner face of the shank to the tip of the hook, 3 to 4.5 diameters.", "ACI 318-19 17.6.3.2.2", [];
    EMBEDMENT "embedment_mm" Number { kind: Kind::Length, min: 20.0, max: 3000.0 }, Fault,
        "Embedment h_ef", "Effective depth: from the concrete's surface to the bearing face of the head, to the inside of a hook's bend, or as the evaluation report says.", "ACI 318-19 2.2", [];
    BREAKOUT_FORM "breakout_form" Choice(&["common", "deep"]), Word(0),
        "Breakout equation",
        "For headed anchors 280 to 635 mm (11 to 25 in.) deep another equation is permitted, which gives more. Outside that range the common one is taken.",
        "ACI 318-19 17.6.2.2.3", ["common: embedment to the power 1.5", "deep headed anchors: embedment to the power 5/3, where permitted"];
    SEAT "seat" Choice(&["concrete", "grout", "stand-off"]), Unknown,
        "Under the base",
        "What the base stands on at the anchor. An anchor that reaches the slab through a gap or a raised floor bends; its steel is not covered here. Left empty, the concrete itself; a cabinet on stems has to say it, since its bolts may pass the gap.",
        "ACI 318-19 17.7.1.2.1", ["the concrete itself", "a built-up grout pad", "a gap: stand-off or raised floor"];
    STANDOFF "standoff_mm" Number { kind: Kind::Length, min: 0.0, max: 2000.0 }, Unknown,
        "Free length", "Between the base and the concrete, grouted or not: the height of the grout pad, the gap or the raised floor.", "ACI 318-19 17.7.1.2.1", [];
    HOLES "holes" Choice(HOLE_WORDS), Word(0),
        "Holes in the base",
        "Decides which anchors take shear. In standard holes the row nearest to the edge may bear alone; tight, filled or welded ones share; a slotted hole takes nothing along its slot.",
        "ACI 318-19 R17.7.2.1", ["standard clearance, 1.5 to 3 mm (1/16 to 1/8 in.)", "tight, filled or welded", "slotted to the right and left", "slotted to front and rear"];
    PLATE "plate_mm" Number { kind: Kind::Length, min: 1.0, max: 200.0 }, Unknown,
        "Plate thickness", "Thickness of the plate that studs are welded to. A plate thick enough lets their edge strength count higher.", "ACI 318-19 17.7.2.2.2", [];
    TIGHTENED "tightened" Flag, Set(true),
        "Nut is tightened", "Whether the anchor gets a torque. Every equipment bolt with a tightened nut does; it needs more spacing and edge distance.", "ACI 318-19 17.9.2", [];
    COVER "cover_mm" Number { kind: Kind::Length, min: 0.0, max: 150.0 }, Is(20.0),
        "Concrete cover",
        "Cover that reinforcement would need at the slab's edge: 20 mm (3/4 in.) for slabs indoors, 40 to 75 mm outdoors or against soil.",
        "ACI 318-19 20.5.1.3", [];
    AGGREGATE "aggregate_mm" Number { kind: Kind::Length, min: 4.0, max: 100.0 }, Is(20.0),
        "Largest aggregate", "Nominal size of the largest stones in the concrete; drilled anchors keep twice that from an edge.", "ACI 318-19 17.9.2", [];
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
    SPLITTING_BARS "splitting_bars" Flag, Set(false),
        "Bars against splitting", "Whether reinforcement is placed that controls splitting of the concrete at drilled anchors.", "ACI 318-19 17.6.2.6.2, 17.9.1", [];
    TENSION_BARS "tension_bars_mm2" Number { kind: Kind::Area, min: 10.0, max: 100_000.0 }, Unknown,
        "Anchor reinforcement, tension",
        "Area of the bars that carry the whole pull of one anchor, developed on both sides of the breakout surface and near the anchor. Takes the place of breakout in tension.",
        "ACI 318-19 17.5.2.1", [];
    SHEAR_BARS "shear_bars_mm2" Number { kind: Kind::Area, min: 10.0, max: 100_000.0 }, Unknown,
        "Anchor reinforcement, shear",
        "Area of the bars in the direction of the shear that carry the whole shear of one anchor, developed on both sides of the breakout surface at every near edge. Takes the place of breakout in shear.",
        "ACI 318-19 17.5.2.1", [];
    BARS_YIELD "bars_yield_mpa" Number { kind: Kind::Stress, min: 200.0, max: 690.0 }, Is(420.0),
        "Yield strength of those bars", "Specified yield strength f_y of the anchor reinforcement.", "ACI 318-19 17.5.2.1, 20.2", [];
    LAMBDA "lightweight_factor" Number { kind: Kind::Number, min: 0.75, max: 1.0 }, Is(1.0),
        "Lightweight factor lambda", "1.0 for normalweight concrete, 0.85 for sand-lightweight, 0.75 for all-lightweight.", "ACI 318-19 19.2.4", [];
    SEISMIC_CATEGORY "seismic_category" Choice(&["A-B", "C-F"]), Word(1),
        "Seismic design category",
        "From the building's structural engineer. In categories C to F anchors in concrete are designed for amplified forces and reduced concrete strength.",
        "ACI 318-19 17.10.1", ["A or B", "C, D, E or F"];
    TENSION_OPTION "tension_option" Choice(&["d", "a", "b", "c"]), Word(0),
        "Tension: seismic option",
        "How the pull is limited in categories C to F. (d) amplifies the earthquake; (a) lets ductile steel yield first; (b) and (c) take the greatest force that the attachment can pass on.",
        "ACI 318-19 17.10.5.3", ["(d) earthquake times overstrength", "(a) ductile steel that yields first", "(b) an attachment that yields", "(c) the most that a non-yielding attachment passes"];
    SHEAR_OPTION "shear_option" Choice(&["c", "a", "b"]), Word(0),
        "Shear: seismic option",
        "How the shear is limited in categories C to F. (c) amplifies the earthquake; (a) and (b) take the greatest force that the attachment can pass on.",
        "ACI 318-19 17.10.6.3", ["(c) earthquake times overstrength", "(a) an attachment that yields", "(b) the most that a non-yielding attachment passes"];
    ATTACHMENT_TENSION "attachment_tension_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Pull that the attachment passes",
        "For options (b) and (c): the greatest pull that the attachment can bring to one anchor, with expected yield, overstrength and hardening of its material.",
        "ACI 318-19 17.10.5.3(b), (c)", [];
    ATTACHMENT_SHEAR "attachment_shear_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Shear that the attachment passes",
        "For options (a) and (b): the greatest shear that the attachment can bring to one anchor, with expected yield, overstrength and hardening of its material.",
        "ACI 318-19 17.10.6.3(a), (b)", [];
    STRETCH "stretch_mm" Number { kind: Kind::Length, min: 1.0, max: 5000.0 }, Unknown,
        "Stretch length", "For option (a): length of the anchor, outside the concrete or debonded in it, over which it can yield.", "ACI 318-19 17.10.5.3(a)(ii), 2.3", [];
    BUCKLING "buckling" Choice(&["open", "protected"]), Word(0),
        "Buckling of the anchor", "For option (a): whether the anchor is protected against buckling when the force turns round.", "ACI 318-19 17.10.5.3(a)(iii)", ["nothing protects it", "protected"];
    THREAD "thread" Choice(&["part", "full", "upset"]), Word(0),
        "Thread of the anchor", "For option (a): a bolt threaded over a part of its length only needs upset ends, or a steel that is much stronger than its yield.",
        "ACI 318-19 17.10.5.3(a)(iv)", ["over a part of its length", "over its whole length", "over a part, upset there"];
    OVERSTRENGTH "overstrength" Number { kind: Kind::Number, min: 1.0, max: 5.0 }, Unknown,
        "Overstrength factor",
        "Multiplies the horizontal force in the anchors where the demand rule has no amplified level of its own. There is no default: the engineer of record says it.",
        "ACI 318-19 17.10.5.3, 17.10.6.3", [];
    INTERACTION "interaction" Choice(&["trilinear", "five-thirds"]), Word(0),
        "Tension with shear",
        "How tension and shear ratios add up. The straight lines are the code's own; the curve is the commentary's alternative.",
        "ACI 318-19 17.8, R17.8", ["straight lines, sum at most 1.2", "powers of 5/3, sum at most 1"];
    CATEGORY "anchor_category" Choice(&["1", "2", "3"]), Unknown,
        "Anchor category", "How sensitive the anchor is to its installation. In the report's table of design values, as \u{201c}anchor category\u{201d}.", "ACI 318-19 17.5.3, ACI 355.2, ACI 355.4", ["1: low sensitivity", "2: medium", "3: high"];
    K_CR "k_cr" Number { kind: Kind::Empirical { force: 3, length: -3 }, min: 7.0, max: 10.1 }, Unknown,
        "k_c, cracked", "Effectiveness factor for cracked concrete, in the report's table for tension as k_cr. Without one the code's own 7 (17 in inch-pounds) is taken.", "ACI 318-19 17.6.2.2.2", [];
    K_UNCR "k_uncr" Number { kind: Kind::Empirical { force: 3, length: -3 }, min: 7.0, max: 14.2 }, Unknown,
        "k_c, uncracked", "Effectiveness factor for uncracked concrete, in the report's table for tension as k_uncr; psi_c,N is then 1. Without one the code's own values are taken.", "ACI 318-19 17.6.2.2.2, 17.6.2.5", [];
    PULLOUT "pullout" Choice(&["by-value", "not-decisive"]), Word(0),
        "Pullout of the report", "Where the report's table prints no value because pullout does not decide, take \u{201c}not decisive\u{201d}.", "ACI 318-19 17.6.3.2.1", ["by the values below", "not decisive, says the report"];
    N_P_CR "n_p_cr_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Pullout N_p,cr", "Pullout strength in cracked concrete, in the report's table for tension, times the report's own factor for the strength of the concrete.", "ACI 318-19 17.6.3.2.1", [];
    N_P_UNCR "n_p_uncr_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Pullout N_p,uncr", "Pullout strength in uncracked concrete, in the report's table for tension, times the report's own factor for the strength of the concrete.", "ACI 318-19 17.6.3.2.1", [];
    N_P_EQ "n_p_eq_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Pullout N_p,eq", "Pullout strength under simulated earthquakes, in the report's table for tension as N_p,eq or N_p,seis. Needed in categories C to F.", "ACI 318-19 17.10.3", [];
    BOND_STRESS "bond_stress" Choice(&["report", "table-outdoor", "table-indoor"]), Word(0),
        "Bond stress",
        "From the report, or the least values of the code's table, for anchors that are qualified and installed in holes drilled by hammer, in concrete at least 21 days old, above 10 \u{b0}C, of at least 17 MPa.",
        "ACI 318-19 Table 17.6.5.2.5", ["from the report", "least values: outdoors, dry to saturated", "least values: indoors, dry"];
    TAU_CR "tau_cr_mpa" Number { kind: Kind::Stress, min: 0.1, max: 50.0 }, Unknown,
        "Bond stress tau_cr", "Characteristic bond stress in cracked concrete, in the report's table for bond, at the temperature, moisture and drilling of the place.", "ACI 318-19 17.6.5.2", [];
    TAU_UNCR "tau_uncr_mpa" Number { kind: Kind::Stress, min: 0.1, max: 50.0 }, Unknown,
        "Bond stress tau_uncr", "Characteristic bond stress in uncracked concrete, in the same table. Needed in cracked concrete too, because it sets the width of what breaks out.", "ACI 318-19 17.6.5.1.2", [];
    ALPHA_N_SEIS "alpha_n_seis" Number { kind: Kind::Number, min: 0.1, max: 1.0 }, Unknown,
        "Bond factor alpha_N,seis", "Factor on bond stress under simulated earthquakes, in the report's table for bond. Needed in categories C to F.", "ACI 318-19 17.10.3", [];
    V_SA_REPORT "v_sa_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Steel in shear V_sa", "Strength of the steel in shear, in the report's table for shear. Needed for anchors with a sleeve through the shear plane; for others the code has a formula.", "ACI 318-19 17.7.1.2", [];
    V_SA_EQ "v_sa_eq_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "Steel in shear V_sa,eq", "Strength of the steel in shear under simulated earthquakes, in the report's table for shear as V_sa,eq or alpha_V,seis V_sa. Needed in categories C to F.", "ACI 318-19 17.10.3", [];
    SLEEVE "sleeve" Flag, Set(false),
        "Distance sleeve", "Whether a sleeve passes the shear plane or keeps the expanding part away from the surface; the report's drawing shows it.", "ACI 318-19 17.7.1.2, 17.7.2.2.1", [];
    C_AC "c_ac_mm" Number { kind: Kind::Length, min: 5.0, max: 10_000.0 }, Unknown,
        "Critical edge distance c_ac", "Edge distance from which uncracked concrete does not split, in the report's table of installation values. Without one the code's own is taken.", "ACI 318-19 17.9.5", [];
    S_MIN "s_min_mm" Number { kind: Kind::Length, min: 5.0, max: 10_000.0 }, Unknown,
        "Least spacing s_min", "In the report's table of installation values. Without one the code's own is taken.", "ACI 318-19 17.9.2", [];
    C_MIN "c_min_mm" Number { kind: Kind::Length, min: 5.0, max: 10_000.0 }, Unknown,
        "Least edge distance c_min", "In the report's table of installation values. Without one the code's own is taken.", "ACI 318-19 17.9.2", [];
    H_MIN "h_min_mm" Number { kind: Kind::Length, min: 10.0, max: 10_000.0 }, Unknown,
        "Least thickness h_min", "Of the concrete, in the report's table of installation values. Without one the code's own limit of embedment is taken.", "ACI 318-19 17.9.4", [];
    SUSTAINED "sustained_tension_n" Number { kind: Kind::Force, min: 0.0, max: 10_000_000.0 }, Is(0.0),
        "Lasting pull on an anchor", "Factored pull that lasts, on the most loaded adhesive anchor: none where the weight presses the cabinet down.", "ACI 318-19 17.5.2.2", [];
}

/// What a single anchor may have otherwise than the anchorage.
pub static ANCHOR_FIELDS: &[usize] = &[
    BOLT,
    DIAMETER,
    STRESS_AREA,
    STEEL,
    YIELD,
    TENSILE,
    DUCTILITY,
    HEAD,
    BEARING_AREA,
    HOOK,
    EMBEDMENT,
    HOLES,
    N_P_CR,
    N_P_UNCR,
    N_P_EQ,
    V_SA_REPORT,
    V_SA_EQ,
];

/// What only the anchor's evaluation report gives.
pub static REPORT_FIELDS: &[usize] = &[
    CATEGORY,
    K_CR,
    K_UNCR,
    PULLOUT,
    N_P_CR,
    N_P_UNCR,
    N_P_EQ,
    TAU_CR,
    TAU_UNCR,
    ALPHA_N_SEIS,
    V_SA_REPORT,
    V_SA_EQ,
    SLEEVE,
    C_AC,
    S_MIN,
    C_MIN,
    H_MIN,
];

/// The words for the holes in the base, the common one first.
pub static HOLE_WORDS: &[&str] = &["standard", "tight", "slot-x", "slot-y"];
