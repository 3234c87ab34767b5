//! What TI 809-04 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    S_S "s_s" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Mapped acceleration S_S",
        "Mapped spectral acceleration at short periods for the maximum considered earthquake, in g. Give this with the site class, or give S_DS instead.",
        "FEMA 302 4.1.2", [];
    SITE_CLASS "site_class" Choice(&["A", "B", "C", "D", "E", "F"]), Word(3),
        "Site class",
        "Soil under the building, from the soil report. Where the soil is not known class D is taken. Only used with S_S.",
        "FEMA 302 4.1.2.1",
        ["A: hard rock", "B: rock", "C: very dense soil, soft rock", "D: stiff soil, also where not known", "E: soft clay",
         "F: site analysis required"];
    MOTION "ground_motion" Choice(&["A", "B"]), Unknown,
        "Ground motion",
        "A is two thirds of the maximum considered earthquake, B three quarters of it, for the enhanced performance objectives. Needed with S_S.",
        "TI 809-04 chapter 4", ["A: two thirds of the maximum considered", "B: three quarters of the maximum considered"];
    S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Design acceleration S_DS",
        "Design spectral acceleration at short periods, in g, where it is already known for the site and the performance objective. It stands in place of S_S, site class and ground motion.",
        "TI 809-04 chapter 4", [];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Component importance factor I_p",
        "1.0 for performance objective 1A; for the enhanced objectives by paragraph 10-1d.",
        "TI 809-04 10-1d", [];
    COMPONENT "component" Choice(&[
            "electrical", "mechanical", "ventilation", "storage-laboratory", "rigid-high", "rigid-limited", "rigid-low",
            "flexible-high", "flexible-limited", "flexible-low", "given"]), Fault,
        "Kind of component",
        "The row of the tables that fits. A component whose natural period is above 0.06 s, or that is flexibly attached, is flexible.",
        "TI 809-04 Tables 10-1, 10-2",
        ["General electrical equipment", "General mechanical equipment", "Ventilation and air conditioning, not isolated",
         "Storage cabinet, laboratory equipment",
         "Other rigid component, high deformability", "Other rigid component, limited deformability", "Other rigid component, low deformability",
         "Other flexible component, high deformability", "Other flexible component, limited deformability",
         "Other flexible component, low deformability", "Values given below"];
    A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_p",
        "Stands in place of the row's value: 1.0 for rigid, 2.5 for flexible, never below 1.0.",
        "TI 809-04 Table 10-1", [];
    R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 6.0 }, Unknown,
        "Component response factor R_p",
        "Stands in place of the row's value.",
        "TI 809-04 Table 10-1", [];
    ANCHORS "anchor_type" Choice(&["deep", "shallow"]), Fault,
        "Type of anchors",
        "Anchors embedded less than eight diameters count as shallow: for them R_p may not be more than 1.5.",
        "FEMA 302 6.1.6", ["embedded at least eight diameters", "embedded less than eight diameters"];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above grade at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "TI 809-04 10-1", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Average height of the roof",
        "Height of the roof above grade. Needed when the cabinet stands above grade.",
        "TI 809-04 10-1", [];
}
