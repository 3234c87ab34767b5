//! What UBC 1997 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    ZONE "zone" Choice(&["1", "2A", "2B", "3", "4"]), Unknown,
        "Seismic zone",
        "Zone of the site on the code's map. Give this with the soil, or give C_a instead.",
        "UBC 1997 Figure 16-2, Table 16-I", ["1", "2A", "2B", "3", "4"];
    SOIL "soil_profile" Choice(&["SA", "SB", "SC", "SD", "SE", "SF"]), Word(3),
        "Soil profile type",
        "Soil under the building, from the soil report. Where it is not known the code takes S_D. Only used with the zone.",
        "UBC 1997 1629.3, Table 16-J",
        ["S_A: hard rock", "S_B: rock", "S_C: very dense soil, soft rock", "S_D: stiff soil, also where not known", "S_E: soft soil",
         "S_F: site investigation required"];
    SOURCE "seismic_source" Choice(&["A", "B", "C"]), Unknown,
        "Type of the nearest seismic source",
        "Only in zone 4: type of the known fault that asks for most at its distance.",
        "UBC 1997 1629.4.2, Table 16-U",
        ["A: large and very active", "B: neither A nor C", "C: small and hardly active"];
    DISTANCE "source_distance_km" Number { kind: Kind::Distance, min: 0.0, max: 1000.0 }, Unknown,
        "Distance to that source",
        "Only in zone 4, for a source of type A or B: closest distance from the site.",
        "UBC 1997 Table 16-S", [];
    C_A "seismic_coefficient" Number { kind: Kind::Acceleration, min: 0.01, max: 1.5 }, Unknown,
        "Seismic coefficient C_a",
        "Where it is already known for the site. It stands in place of zone, soil and source.",
        "UBC 1997 Table 16-Q", [];
    EQUATION "equation" Choice(&["32-2", "32-1"]), Word(0),
        "Equation",
        "The equation with height, amplification and response, between its limits; or the simple one, which is its upper limit and always allowed.",
        "UBC 1997 1632.2", ["32-2: with height and kind of component", "32-1: simple, always allowed"];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Importance factor I_p",
        "1.5 in essential and hazardous facilities and for life-safety systems, otherwise 1.0.",
        "UBC 1997 Table 16-K", [];
    COMPONENT "component" Choice(&[
            "equipment", "equipment-flexible", "tank", "emergency", "cabinet", "storage-rack",
            "rigid-ductile", "rigid-nonductile", "flexible-ductile", "flexible-nonductile", "isolated", "given"]), Fault,
        "Kind of component",
        "The row of the code's table that fits. A cabinet whose natural period is above 0.06 s is flexible.",
        "UBC 1997 Table 16-O",
        ["Electrical, mechanical or plumbing equipment", "Flexible equipment, anchored below its centre of mass", "Tank or vessel",
         "Emergency power, essential communication, battery rack, fuel tank", "Cabinet or book stack over 1.83 m (6 ft) tall, with contents",
         "Storage rack, with contents", "Rigid component, ductile material and attachment", "Rigid component, nonductile material or attachment",
         "Flexible component, ductile material and attachment", "Flexible component, nonductile material or attachment",
         "Vibration-isolated equipment", "Values given below"];
    A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_p",
        "Stands in place of the row's value: 1.0 for rigid, 2.5 for flexible.",
        "UBC 1997 Table 16-O", [];
    R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Component response factor R_p",
        "Stands in place of the row's value.",
        "UBC 1997 Table 16-O", [];
    ANCHORS "anchor_type" Choice(&["deep", "shallow", "nonductile"]), Fault,
        "Type of anchors",
        "Anchors embedded less than eight diameters count as shallow, and so do expansion anchors under vibration isolators. Adhesive anchors count as nonductile.",
        "UBC 1997 1632.2, Table 16-O footnote 14",
        ["embedded at least eight diameters, ductile", "embedded less than eight diameters", "of nonductile material, or adhesive"];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above grade at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "UBC 1997 1632.2", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the roof",
        "Height of the roof above grade. Needed for equation 32-2 when the cabinet stands above grade.",
        "UBC 1997 1632.2", [];
}
