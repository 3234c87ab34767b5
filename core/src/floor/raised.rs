//! A raised floor on the slab: its ratings as the owner or the maker gives them.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*, Values};
use crate::rules::floor::raised::Rating;

/// What the panels are said to carry; the maker's working load comes first, then half of his ultimate
/// load, then class, then grade.
pub fn rating(values: &Values) -> Option<Rating> {
    if let Some(working) = values.number(WORKING) {
        return Some(Rating::Given(working));
    }
    if let Some(ultimate) = values.number(ULTIMATE) {
        return Some(Rating::Ultimate(ultimate));
    }
    if let Some(place) = values.choice(CLASS) {
        let safety = if values.choice(SAFETY) == Some(1) { 3.0 } else { 2.0 };
        return Some(Rating::Class { class: place + 1, safety });
    }
    values.choice(GRADE).map(Rating::Grade)
}

fields! {
    STAND "stand_to_slab" Flag, Set(false),
        "A stand carries the cabinet to the slab", "A frame between the pedestals that bears on the slab itself. Then panels and pedestals carry nothing of the cabinet.", "", [];
    CLASS "en_class" Choice(&["1", "2", "3", "4", "5", "6"]), Unknown,
        "Class of EN 12825", "The first figure of the designation, such as 6/3/A/2.", "EN 12825 Table 1",
        ["1 (4 kN)", "2 (6 kN)", "3 (8 kN)", "4 (9 kN)", "5 (10 kN)", "6 (12 kN)"];
    SAFETY "en_safety" Choice(&["2", "3"]), Word(0),
        "Safety factor of the designation", "The second figure of the designation.", "EN 12825 4.2", ["2", "3"];
    GRADE "psa_grade" Choice(&["light", "medium", "heavy", "extra-heavy"]), Unknown,
        "Performance grade (UK)", "Of the platform floor specification MOB PF2 PS/SPU.", "PSA MOB PF2 PS/SPU", ["light", "medium", "heavy", "extra heavy"];
    WORKING "working_load_n" Number { kind: Kind::Force, min: 100.0, max: 1e6 }, Unknown,
        "Working point load of a panel", "Concentrated load at the weakest point, at service, from the maker. Stands before class and grade.", "", [];
    UNIFORM "uniform_load_mpa" Number { kind: Kind::AreaLoad, min: 0.000_1, max: 1.0 }, Unknown,
        "Uniform load of the panels", "From the maker. The file has it in MPa: 0.012 is 12 kPa (251 psf).", "", [];
    PEDESTAL "pedestal_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Rating of a pedestal", "Axial, from the maker. Left empty, four times the working load of a panel by EN 12825, where a class is given.", "", [];
    ROLLING "rolling_n" Number { kind: Kind::Force, min: 10.0, max: 1e6 }, Unknown,
        "Rolling rating of a panel", "For ten passes of a heavy load. A rating for standing loads says nothing of wheels.", "CISCA", [];
    LEGS "legs_on_a_panel" Number { kind: Kind::Number, min: 1.0, max: 16.0 }, Is(1.0),
        "Legs on one panel", "The most legs that stand on one panel, those of a neighbouring cabinet included.", "", [];
    ULTIMATE "ultimate_load_n" Number { kind: Kind::Force, min: 100.0, max: 1e6 }, Unknown,
        "Ultimate load of a panel", "Concentrated load at which it broke in the test, from the maker. Where no working load is given, half of it counts.", "CISCA", [];
}
