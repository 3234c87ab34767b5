//! Spacing between anchors and distance to edges (17.9).

use super::coverage::{NO_EDGE, ONE_ANCHOR};
use super::edition::ACI_318_19;
use super::facts::{ALL_SIDES, Facts};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Kind, Outcome, Part, Sheet, Subject, steps};

steps! { 61 "ACI 318-19, spacing and edges";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the thicker of the two anchors": Given;
    D_A_ONE "d_a" Length (INPUT "" Derived) "Diameter of the anchor": Given;
    S_MIN_TORQUED "s_min" Length (ACI_318_19 "17.9.2(a)" Secondary) "Least spacing of cast-in anchors that are torqued" = "6 * d_a";
    S_MIN "s_min" Length (ACI_318_19 "17.9.2(a)" Secondary) "Least spacing of cast-in anchors that are not torqued" = "4 * d_a";
    S "s" Length (INPUT "" Derived) "Spacing of the two anchors that stand closest for their size": Geometry;
    U_S "u" Utilisation (ACI_318_19 "17.9.2" Secondary) "Least spacing over spacing" = "s_min / s";
    A_BRG "A_brg" Area (INPUT "" Derived) "Net bearing area of the head": Given;
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    D_HEAD "d_head" Length (STATICS "" Derived) "Diameter of a round head of the same area" = "sqrt(4 * A_brg / pi + d_a^2)";
    C_COVER "c_cover" Length (ACI_318_19 "20.5.1.3" Memory) "Cover that reinforcement would need at the edge": Given;
    C_MIN_TORQUED "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of cast-in anchors that are torqued: six diameters, and cover on the head" = "max(6 * d_a, c_cover + d_head / 2)";
    C_MIN "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of cast-in anchors that are not torqued: cover on the head" = "c_cover + d_head / 2";
    C_A "c_a" Length (INPUT "" Derived) "Distance to the nearest edge of the anchor that is closest for its size": Geometry;
    U_C "u" Utilisation (ACI_318_19 "17.9.2" Secondary) "Least edge distance over edge distance" = "c_min / c_a";
}

fn least_spacing(facts: &Facts, d_a: f64, sheet: &mut Sheet) -> f64 {
    if facts.tightened { sheet.step(S_MIN_TORQUED, 6.0 * d_a) } else { sheet.step(S_MIN, 4.0 * d_a) }
}

/// The two anchors that stand closest for their size.
pub fn spacing(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let quiet = &mut Sheet::quiet();
    let mut worst: Option<([usize; 2], f64, f64, f64)> = None;
    for (place, anchor) in facts.anchors.iter().enumerate() {
        for (beside, other) in facts.anchors.iter().enumerate().skip(place + 1) {
            let d_a = anchor.d_a.max(other.d_a);
            let s = facts.length(anchor.at.distance_mm(other.at));
            let ratio = least_spacing(facts, d_a, quiet) / s;
            if worst.is_none_or(|known| ratio > known.1) {
                worst = Some(([place, beside], ratio, d_a, s));
            }
        }
    }
    let Some((pair, ratio, d_a, s)) = worst else { return (Subject::Whole, Outcome::NotNeeded(ONE_ANCHOR)) };
    let subject = Subject::Anchor(pair[0] as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorSpacing), facts.edition.system);
    sheet.step(D_A, d_a);
    let s_min = least_spacing(facts, d_a, sheet);
    sheet.detailed(S, s, || facts.line(pair.map(|place| facts.anchors[place].at)));
    sheet.step(U_S, ratio);
    (subject, more_is_better(facts, s, s_min, ratio))
}

/// The anchor that stands closest to an edge for its size.
pub fn edge(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let mut worst: Option<(usize, f64)> = None;
    for place in 0..facts.anchors.len() {
        let (c_a, c_min) = edge_of(facts, place, &mut Sheet::quiet());
        let ratio = c_min / c_a;
        if c_a.is_finite() && worst.is_none_or(|known| ratio > known.1) {
            worst = Some((place, ratio));
        }
    }
    let Some((place, ratio)) = worst else { return (Subject::Whole, Outcome::NotNeeded(NO_EDGE)) };
    let subject = Subject::Anchor(place as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorEdge), facts.edition.system);
    let (c_a, c_min) = edge_of(facts, place, sheet);
    sheet.step(U_C, ratio);
    (subject, more_is_better(facts, c_a, c_min, ratio))
}

fn edge_of(facts: &Facts, place: usize, sheet: &mut Sheet) -> (f64, f64) {
    let anchor = &facts.anchors[place];
    let d_a = sheet.step(D_A_ONE, anchor.d_a);
    let a_brg = sheet.step(A_BRG, anchor.a_brg);
    let pi = sheet.step(PI, core::f64::consts::PI);
    let d_head = sheet.step(D_HEAD, sqrt(4.0 * a_brg / pi + d_a * d_a));
    let cover = sheet.step(C_COVER, facts.cover);
    let c_min = if facts.tightened {
        sheet.step(C_MIN_TORQUED, f64::max(6.0 * d_a, cover + d_head / 2.0))
    } else {
        sheet.step(C_MIN, cover + d_head / 2.0)
    };
    let c_a = sheet
        .detailed(C_A, facts.length(anchor.nearest_edge_mm()), || facts.shortest_line_to_edge(&[place], &ALL_SIDES));
    (c_a, c_min)
}

/// A length against its least value. Where both are equal on paper the ratio may lie above 1 by a rounding; the clause
/// includes its limit.
fn more_is_better(facts: &Facts, length: f64, least: f64, ratio: f64) -> Outcome {
    let to_si = |value| facts.edition.system.to_si(value, Kind::Length);
    let utilisation = if crate::calc::limit::at_least(length, least) { ratio.min(1.0) } else { ratio };
    Outcome::Compared { value: to_si(length), limit: to_si(least), utilisation }
}
