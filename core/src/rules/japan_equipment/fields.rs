//! What the Japanese practice for building equipment asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    REGION "region_factor" Choice(&["0.7", "0.8", "0.9", "1.0"]), Word(3),
        "Region factor Z",
        "1.0 in most of the country, Tokyo and Osaka with it; 0.7 in Okinawa; by notification 1793 of 1980.",
        "Notification 1793 of 1980", ["0.7", "0.8", "0.9", "1.0"];
    COMPONENT "component" Choice(&["equipment", "isolated", "tank"]), Fault,
        "Kind of equipment",
        "Equipment on vibration isolators takes at least class A; water tanks have higher values on the ground floor and below.",
        "Building Centre of Japan guideline, table of standard coefficients",
        ["Equipment", "Equipment on vibration isolators", "Water tank"];
    CLASS "seismic_class" Choice(&["S", "A", "B"]), Unknown,
        "Seismic class",
        "The owner's choice. In government buildings S is for important equipment of specific facilities, A for general equipment there and important equipment elsewhere, B for the rest.",
        "Building Centre of Japan guideline, table of standard coefficients",
        ["S: highest", "A", "B"];
    STOREYS "storeys" Number { kind: Kind::Number, min: 1.0, max: 200.0 }, Unknown,
        "Storeys of the building",
        "Above ground, without the roof and its penthouse.",
        "Building Centre of Japan guideline, table of standard coefficients", [];
    STOREY "storey" Number { kind: Kind::Number, min: -20.0, max: 201.0 }, Unknown,
        "Storey on whose floor the cabinet stands",
        "1 is the ground floor, -1 the first basement; the roof or penthouse is one more than the storeys.",
        "Building Centre of Japan guideline, table of standard coefficients", [];
    K_S "standard_coefficient" Number { kind: Kind::Acceleration, min: 0.1, max: 4.0 }, Unknown,
        "Standard coefficient K_S",
        "Stands in place of class and storeys.",
        "Building Centre of Japan guideline, table of standard coefficients", [];
}
