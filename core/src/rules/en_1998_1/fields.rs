//! What EN 1998-1 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    A_GR "reference_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 2.0 }, Fault,
        "Reference peak ground acceleration a_gR",
        "On ground A, in g, from the national map, without the importance of the building.",
        "EN 1998-1 3.2.1", [];
    CLASS "building_class" Choice(&["I", "II", "III", "IV"]), Fault,
        "Importance class of the building",
        "Of the building that it stands in: I minor, II ordinary, III where many gather, IV vital for civil protection.",
        "EN 1998-1 4.2.5, Table 4.3",
        ["I: minor importance", "II: ordinary", "III: important, such as schools and halls", "IV: vital, such as hospitals and power plants"];
    GAMMA_I "building_importance" Number { kind: Kind::Number, min: 0.5, max: 2.0 }, Unknown,
        "Importance factor of the building gamma_I",
        "Stands in place of the recommended factor of the class, where the national annex has another.",
        "EN 1998-1 4.2.5(5)", [];
    SPECTRUM "spectrum" Choice(&["1", "2"]), Fault,
        "Type of the elastic spectrum",
        "Type 2 where the earthquakes that contribute most to the hazard have a surface-wave magnitude of at most 5.5, otherwise type 1. The national annex says which.",
        "EN 1998-1 3.2.2.2(2)", ["Type 1", "Type 2"];
    GROUND "ground_type" Choice(&["A", "B", "C", "D", "E", "S1", "S2"]), Fault,
        "Ground type",
        "Soil under the building, from the soil report.",
        "EN 1998-1 Table 3.1",
        ["A: rock", "B: very dense sand, gravel, very stiff clay", "C: deep dense sand, gravel, stiff clay", "D: loose soil, soft to firm clay",
         "E: soft layer over rock", "S1: study of the site required", "S2: study of the site required"];
    S "soil_factor" Number { kind: Kind::Number, min: 0.5, max: 5.0 }, Unknown,
        "Soil factor S",
        "Stands in place of the recommended value, where the national annex or a study of the site has another.",
        "EN 1998-1 Tables 3.2, 3.3", [];
    GAMMA_A "component_importance" Number { kind: Kind::Number, min: 1.0, max: 2.0 }, Fault,
        "Importance factor of the element gamma_a",
        "At least 1.5 for anchorage of equipment that life safety systems need and for contents that are toxic or explosive; otherwise 1.0. It acts beside the factor of the building.",
        "EN 1998-1 4.3.5.3", [];
    COMPONENT "component" Choice(&["cabinet", "electrical", "rack", "hazardous", "cantilever-high", "cantilever-low", "other", "given"]), Fault,
        "Kind of element",
        "The row of the tables that fits. General equipment stands in neither table: it gets no reduction unless a larger behaviour factor is justified and given.",
        "EN 1998-1 Table 4.4; EN 1992-4 Table C.2",
        ["Permanent cabinet or book stack supported by the floor", "Electrical or communication equipment",
         "Rack for computers, communication or storage", "Tank or storage of hazardous contents",
         "On legs, free over more than half of its height", "On legs, free over less than half, or braced at its centre of mass or above",
         "Other equipment, in neither table", "Values given below"];
    Q_A "behaviour_factor" Number { kind: Kind::Number, min: 1.0, max: 2.0 }, Unknown,
        "Behaviour factor of the element q_a",
        "Stands in place of the row's value.",
        "EN 1998-1 4.3.5.4", [];
    AMPLIFICATION "amplification" Choice(&["resonance", "periods", "table"]), Word(0),
        "Amplification",
        "Where periods are not known, either resonance with the building is taken, which asks for most, or the amplification that EN 1992-4 lists for the kind of element.",
        "EN 1998-1 4.3.5.2(3); EN 1992-4 annex C",
        ["periods not known: resonance with the building", "from the periods of element and building", "as listed in EN 1992-4"];
    T_A "component_period_s" Number { kind: Kind::Time, min: 0.0, max: 10.0 }, Unknown,
        "Period of the element T_a",
        "First period of the cabinet on its anchors in the direction looked at; 0 for a rigid one. Only used with periods.",
        "EN 1998-1 4.3.5.2(3)", [];
    T_1 "building_period_s" Number { kind: Kind::Time, min: 0.02, max: 10.0 }, Unknown,
        "Period of the building T_1",
        "First period of the building in the same direction. Only used with periods.",
        "EN 1998-1 4.3.5.2(3), 4.3.3.2.2", [];
    A_A "amplification_factor" Number { kind: Kind::Number, min: 1.0, max: 3.0 }, Unknown,
        "Amplification factor A_a",
        "Stands in place of the row's value of EN 1992-4. Only used with that list.",
        "EN 1992-4:2018 Table C.2", [];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the foundation, or above the top of a rigid basement, at which the cabinet is attached; 0 or below there.",
        "EN 1998-1 4.3.5.2(3)", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the building",
        "From the foundation or the top of a rigid basement. Needed when the cabinet stands above that.",
        "EN 1998-1 4.3.5.2(3)", [];
    ANCHORS "anchor_design" Choice(&["not-stated", "elastic", "capacity-or-ductile"]), Word(0),
        "Design of the anchors",
        "Elastic design of post-installed anchors may count on a behaviour factor of at most 1.5; only fastenings that are ductile, or stronger than what the cabinet can bring, on that of the table. Where no option is stated, on none.",
        "EN 1992-4:2018 9.2, annex C",
        ["no option stated", "elastic design", "capacity design, or ductile fastenings"];
    VERTICAL_RATIO "vertical_ratio" Number { kind: Kind::Number, min: 0.1, max: 1.5 }, Unknown,
        "Vertical over horizontal ground acceleration",
        "Stands in place of the recommended ratio of the type of spectrum.",
        "EN 1998-1 Table 3.4", [];
}
