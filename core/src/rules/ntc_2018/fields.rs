//! What NTC 2018 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    A_G "ground_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 2.0 }, Fault,
        "Ground acceleration a_g",
        "On rigid level ground, in g, at the limit state for the safeguard of life (SLV), for the reference period of the building: importance is in it.",
        "NTC 2018 3.2, 3.2.3.2", [];
    F_O "spectral_amplification" Number { kind: Kind::Number, min: 2.2, max: 4.0 }, Unknown,
        "Largest amplification of the spectrum F_o",
        "From the same tables as a_g. Needed on soils B to E.",
        "NTC 2018 3.2.3.2, Table 3.2.IV", [];
    GROUND "ground_type" Choice(&["A", "B", "C", "D", "E", "other"]), Fault,
        "Soil category",
        "Soil under the building, from the soil report.",
        "NTC 2018 3.2.2, Table 3.2.II",
        ["A: rock or very stiff soil", "B: soft rock, very dense coarse soil, very stiff clay", "C: medium dense coarse soil, stiff clay",
         "D: loose coarse soil, soft clay", "E: soft soil over rock", "other: study of the site required"];
    TOPOGRAPHY "topography" Choice(&["T1", "T2", "T3", "T4"]), Fault,
        "Topographic category",
        "Only used without a given soil factor.",
        "NTC 2018 3.2.2, Tables 3.2.III, 3.2.V",
        ["T1: level, or slopes up to 15 degrees", "T2: slopes over 15 degrees", "T3: narrow ridge, slopes of 15 to 30 degrees",
         "T4: narrow ridge, slopes over 30 degrees"];
    S "soil_factor" Number { kind: Kind::Number, min: 0.5, max: 5.0 }, Unknown,
        "Soil factor S",
        "Stands in place of soil and topography, for instance from a study of the site.",
        "NTC 2018 3.2.3.2.1", [];
    BUILDING "building" Choice(&["framed", "other"]), Fault,
        "Structure of the building",
        "The simplified form is for framed buildings. For others the form of EN 1998-1 is taken.",
        "Circolare 2019 C7.2.3",
        ["framed: simplified form C7.2.11", "other: with the periods of element and building"];
    T_1 "building_period_s" Number { kind: Kind::Time, min: 0.02, max: 10.0 }, Unknown,
        "Period of the building T_1",
        "First period in the direction looked at. Needed for a framed building; for others together with that of the element, or neither.",
        "Circolare 2019 C7.2.3", [];
    T_A "component_period_s" Number { kind: Kind::Time, min: 0.0, max: 10.0 }, Unknown,
        "Period of the element T_a",
        "First period of the cabinet on its anchors; 0 for a rigid one. Where it is not known the largest amplification is taken.",
        "Circolare 2019 C7.2.3", [];
    COMPONENT "component" Choice(&["cabinet", "given"]), Fault,
        "Kind of element",
        "Only the behaviour factor of cabinets on the floor is recalled. For other elements look it up and give it.",
        "Circolare 2019 Table C7.2.I",
        ["Permanent cabinet or book stack supported by the floor", "Values given below"];
    Q_A "behaviour_factor" Number { kind: Kind::Number, min: 1.0, max: 3.0 }, Unknown,
        "Behaviour factor of the element q_a",
        "Stands in place of the row's value.",
        "NTC 2018 7.2.3", [];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the foundation at which the cabinet is attached; 0 or below there.",
        "Circolare 2019 C7.2.3", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the building",
        "From the foundation. Needed when the cabinet stands above it.",
        "Circolare 2019 C7.2.3", [];
    ANCHORS "anchor_design" Choice(&["not-stated", "elastic", "capacity-or-ductile"]), Word(0),
        "Design of the anchors",
        "Elastic design of post-installed anchors may count on a behaviour factor of at most 1.5; only fastenings that are ductile, or stronger than what the cabinet can bring, on that of the element. Where no option is stated, on none.",
        "EN 1992-4:2018 9.2, annex C",
        ["no option stated", "elastic design", "capacity design, or ductile fastenings"];
    DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(1),
        "Directions",
        "100 % along one axis together with 30 % along the other; or the full force in any horizontal direction.",
        "NTC 2018 7.3.5",
        ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
}
