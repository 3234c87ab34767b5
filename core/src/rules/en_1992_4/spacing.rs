//! Least spacing, edge distance and thickness: pass or fail before any resistance (7.1, by the assessment).

use super::coverage as c;
use super::facts::{ALL_SIDES, Facts};
use super::fields as f;
use crate::calc::clause::INPUT;
use crate::calc::limit::at_least;
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, steps};

use super::document::EN_1992_4;

steps! { 84 "EN 1992-4, distances";
    S_MIN "s_min" Length (INPUT "European Technical Assessment" Derived) "Least spacing": Given;
    S "s" Length (INPUT "" Derived) "Spacing of the two fasteners that stand closest": Geometry;
    U_S "u" Utilisation (EN_1992_4 "7.1" Memory) "Least spacing over spacing" = "s_min / s";
    C_MIN "c_min" Length (INPUT "European Technical Assessment" Derived) "Least edge distance": Given;
    C "c" Length (INPUT "" Derived) "Distance to the nearest edge": Geometry;
    U_C "u" Utilisation (EN_1992_4 "7.1" Memory) "Least edge distance over edge distance" = "c_min / c";
    H_MIN "h_min" Length (INPUT "European Technical Assessment" Derived) "Least thickness": Given;
    H "h" Length (INPUT "" Derived) "Thickness of the slab": Given;
    U_H "u" Utilisation (EN_1992_4 "7.1" Memory) "Least thickness over thickness" = "h_min / h";
}

/// The two fasteners that stand closest.
pub fn spacing(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let mut closest: Option<([usize; 2], f64)> = None;
    for (place, anchor) in facts.own_anchors().iter().enumerate() {
        for (beside, other) in facts.anchors.iter().enumerate().skip(place + 1) {
            let s = anchor.at.distance_mm(other.at);
            if closest.is_none_or(|(_, known)| s < known) {
                closest = Some(([place, beside], s));
            }
        }
    }
    let Some((pair, s)) = closest else { return (Subject::Whole, Outcome::NotNeeded(c::ONE_ANCHOR)) };
    let subject = open(Subject::Anchor(pair[0] as u16), CheckId::AnchorSpacing, sheet);
    let Some(s_min) = least(facts, f::S_MIN, S_MIN, sheet) else {
        return (Subject::Whole, Outcome::NotCovered(c::MISSING_S_MIN));
    };
    sheet.detailed(S, s, || facts.line(pair.map(|place| facts.anchors[place].at)));
    (subject, more_is_better((s, s_min), U_S, sheet))
}

/// The fastener that stands closest to an edge.
pub fn edge(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let distance = |place: usize| facts.anchors[place].nearest_edge_mm();
    let nearest = (0..facts.own).reduce(|a, b| if distance(b) < distance(a) { b } else { a });
    let Some(place) = nearest.filter(|&place| distance(place).is_finite()) else {
        return (Subject::Whole, Outcome::NotNeeded(c::NO_EDGE));
    };
    let subject = open(Subject::Anchor(place as u16), CheckId::AnchorEdge, sheet);
    let Some(c_min) = least(facts, f::C_MIN, C_MIN, sheet) else {
        return (Subject::Whole, Outcome::NotCovered(c::MISSING_C_MIN));
    };
    let c = sheet.detailed(C, distance(place), || facts.shortest_line_to_edge(&[place], &ALL_SIDES));
    (subject, more_is_better((c, c_min), U_C, sheet))
}

/// The thickness of the slab.
pub fn thickness(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let subject = open(Subject::Whole, CheckId::AnchorThickness, sheet);
    let Some(h_min) = least(facts, f::H_MIN, H_MIN, sheet) else {
        return (subject, Outcome::NotCovered(c::MISSING_H_MIN));
    };
    let h = sheet.step(H, facts.h);
    (subject, more_is_better((h, h_min), U_H, sheet))
}

fn open(subject: Subject, check: CheckId, sheet: &mut Sheet) -> Subject {
    sheet.open(Part::Anchors, subject, Some(check), System::Si);
    subject
}

fn least(facts: &Facts, field: usize, id: StepId, sheet: &mut Sheet) -> Option<f64> {
    facts.number(field).map(|least| sheet.step(id, least))
}

/// A length against its least value. Where both are equal on paper the ratio may lie above 1 by a rounding; the clause
/// includes its limit.
fn more_is_better((length, least): (f64, f64), id: StepId, sheet: &mut Sheet) -> Outcome {
    let ratio = sheet.step(id, least / length);
    let utilisation = if at_least(length, least) { ratio.min(1.0) } else { ratio };
    Outcome::Compared { value: length, limit: least, utilisation }
}
