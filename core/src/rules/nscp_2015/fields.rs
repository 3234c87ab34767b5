//! What NSCP 2015 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    ZONE "zone" Choice(&["2", "4"]), Unknown,
        "Seismic zone",
        "Zone 2 is Palawan with few other islands, zone 4 the rest of the country. Give this with the soil, or give C_a instead.",
        "NSCP 2015 208.4", ["2: Z = 0.2", "4: Z = 0.4"];
    SOIL "soil_profile" Choice(&["SA", "SB", "SC", "SD", "SE", "SF"]), Word(3),
        "Soil profile type",
        "Soil under the building, from the soil report. Where it is not known S_D is taken. Only used with the zone.",
        "NSCP 2015 208.4",
        ["S_A: hard rock", "S_B: rock", "S_C: very dense soil, soft rock", "S_D: stiff soil, also where not known", "S_E: soft soil",
         "S_F: site investigation required"];
    SOURCE "seismic_source" Choice(&["A", "B", "C"]), Unknown,
        "Type of the nearest seismic source",
        "Only in zone 4: type of the known fault that asks for most at its distance.",
        "NSCP 2015 208.4", ["A: large and very active", "B: neither A nor C", "C: small and hardly active"];
    DISTANCE "source_distance_km" Number { kind: Kind::Distance, min: 0.0, max: 1000.0 }, Unknown,
        "Distance to that source",
        "Only in zone 4, for a source of type A or B: closest distance from the site.",
        "NSCP 2015 208.4", [];
    C_A "seismic_coefficient" Number { kind: Kind::Acceleration, min: 0.01, max: 1.5 }, Unknown,
        "Seismic coefficient C_a",
        "Where it is already known for the site. It stands in place of zone, soil and source.",
        "NSCP 2015 208.4", [];
    EQUATION "equation" Choice(&["full", "simple"]), Word(0),
        "Equation",
        "The equation with height, amplification and response, between its limits; or the simple one, 4.0 C_a I_p, which is its upper limit and always allowed.",
        "NSCP 2015 208.9", ["with height and kind of component", "simple, always allowed"];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Importance factor I_p",
        "1.5 in essential and hazardous facilities and for life-safety systems, otherwise 1.0.",
        "NSCP 2015 208.9", [];
    COMPONENT "component" Choice(&["equipment", "equipment-flexible", "given"]), Fault,
        "Kind of component",
        "A cabinet whose natural period is above 0.06 s is flexible.",
        "NSCP 2015 208.9",
        ["Rigid electrical or mechanical equipment", "Flexible equipment, anchored below its centre of mass", "Values given below"];
    A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_p",
        "Stands in place of the row's value: 1.0 for rigid, 2.5 for flexible.",
        "NSCP 2015 208.9", [];
    R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Component response factor R_p",
        "Stands in place of the row's value.",
        "NSCP 2015 208.9", [];
    ANCHORS "anchor_type" Choice(&["deep", "shallow", "nonductile"]), Fault,
        "Type of anchors",
        "Anchors embedded less than eight diameters count as shallow, adhesive ones as nonductile.",
        "NSCP 2015 208.9",
        ["embedded at least eight diameters, ductile", "embedded less than eight diameters", "of nonductile material, or adhesive"];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above grade at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "NSCP 2015 208.9", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the roof",
        "Height of the roof above grade. Needed for the full equation when the cabinet stands above grade.",
        "NSCP 2015 208.9", [];
}
