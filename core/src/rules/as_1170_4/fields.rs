//! What AS 1170.4 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    METHOD "method" Choice(&["simple", "floor-acceleration", "category-i"]), Word(0),
        "Method",
        "The simple method from the ground's hazard; the one from a floor acceleration that an analysis of the building gives; or the flat force in a low building of importance level 2 whose design category is I.",
        "AS 1170.4 8.2, 8.3, 5.3",
        ["8.3: simple method", "8.2: floor acceleration known", "5.3: building of design category I, importance level 2"];
    Z "hazard_factor" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Unknown,
        "Hazard factor Z",
        "Of the place, from the table or the maps of the standard. Not used with a known floor acceleration.",
        "AS 1170.4 3.2, Table 3.2", [];
    PROBABILITY "annual_probability"
        Choice(&["1/20", "1/25", "1/50", "1/100", "1/200", "1/250", "1/500", "1/800", "1/1000", "1/1500", "1/2000", "1/2500"]), Unknown,
        "Annual probability of exceedance",
        "From the importance level of the building. By the National Construction Code level 1 has 1/250, level 2 1/500, level 3 1/1000, level 4 1/1500.",
        "AS 1170.4 Table 3.1; National Construction Code",
        ["1/20", "1/25", "1/50", "1/100", "1/200", "1/250", "1/500", "1/800", "1/1000", "1/1500", "1/2000", "1/2500"];
    SOIL "soil_class" Choice(&["Ae", "Be", "Ce", "De", "Ee"]), Unknown,
        "Site sub-soil class",
        "From the soil report. Not used with a known floor acceleration.",
        "AS 1170.4 4.1",
        ["A_e: strong rock", "B_e: rock", "C_e: shallow soil", "D_e: deep or soft soil", "E_e: very soft soil"];
    A_FLOOR "floor_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Design floor acceleration",
        "Only for 8.2: acceleration of the floor at which the cabinet is attached, from an analysis of the building, in g.",
        "AS 1170.4 8.2", [];
    C_MAX "force_limit" Number { kind: Kind::Number, min: 0.1, max: 10.0 }, Unknown,
        "Upper limit of the force over the weight",
        "Only for 8.2: stands in place of the limit of 0.5, which is recalled and shaky. A large number takes the limit away.",
        "AS 1170.4 8.2", [];
    IMPORTANCE "component_importance" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Importance factor of the component I_c",
        "1.5 if it is needed for life safety, holds hazardous material, or must keep working after the disaster; otherwise 1.0.",
        "AS 1170.4 8.3", [];
    COMPONENT "component" Choice(&["rigid-ductile", "rigid-nonductile", "flexible", "given"]), Fault,
        "Kind of component",
        "Rigid is a period of the cabinet with its fixings of at most 0.06 s. Most tall cabinets are flexible.",
        "AS 1170.4 8.3",
        ["Rigid (period up to 0.06 s)", "Rigid, of non-ductile material or with non-ductile connections", "Flexible (period over 0.06 s)",
         "Values given below"];
    A_C "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_c",
        "Stands in place of the row's value.",
        "AS 1170.4 8.3", [];
    R_C "component_ductility" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component ductility factor R_c",
        "Stands in place of the row's value.",
        "AS 1170.4 8.3", [];
    ANCHORS "anchor_design" Choice(&["elastic", "ductile"]), Word(0),
        "Design of the anchors",
        "Elastic is the usual case of post-installed anchors and takes no ductility. Only ductile fastenings, or ones stronger than what the cabinet can bring, may use its ductility.",
        "AS 5216, seismic annex, as EN 1992-4 annex C",
        ["elastic, or not known", "capacity designed or ductile"];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the base of the structure at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "AS 1170.4 8.3", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the building",
        "Total height of the structure above its base. Needed when the cabinet stands above the base.",
        "AS 1170.4 8.3", [];
}
