//! Spacing between anchors and distance to edges (17.9).

use super::coverage::{CAST_IN, NO_EDGE, ONE_ANCHOR};
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::kind::AnchorKind;
use super::set::members;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Kind, Outcome, Part, Sheet, Subject, steps};

steps! { 61 "ACI 318-19, spacing and edges";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the thicker of the two anchors": Given;
    D_A_ONE "d_a" Length (INPUT "" Derived) "Diameter of the anchor": Given;
    S_MIN_TORQUED "s_min" Length (ACI_318_19 "17.9.2(a)" Secondary) "Least spacing of cast-in anchors that are torqued" = "6 * d_a";
    S_MIN "s_min" Length (ACI_318_19 "17.9.2(a)" Secondary) "Least spacing of cast-in anchors that are not torqued" = "4 * d_a";
    S_MIN_DRILLED "s_min" Length (ACI_318_19 "17.9.2(a)" Secondary) "Least spacing of expansion and undercut anchors" = "6 * d_a";
    S_MIN_ADHESIVE "s_min" Length (ACI_318_19 "17.9.2(a)" Memory) "Least spacing of adhesive anchors" = "6 * d_a";
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment; of two anchors the larger one": Given;
    S_MIN_SCREW "s_min" Length (ACI_318_19 "17.9.2(a)" Secondary) "Least spacing of screw anchors" = "max(0.6 * h_ef, 6 * d_a)";
    S_MIN_REPORT "s_min" Length (INPUT "evaluation report" Derived) "Least spacing, from the evaluation report": Given;
    A_MAX "a_max" Length (INPUT "" Derived) "Nominal size of the largest aggregate": Given;
    C_MIN_REPORT "c_min_r" Length (INPUT "evaluation report" Derived) "Least edge distance, from the evaluation report": Given;
    C_MIN_6 "c_min_r" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of undercut, screw and adhesive anchors without a report's value" = "6 * d_a";
    C_MIN_8 "c_min_r" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of torque-controlled expansion anchors without a report's value" = "8 * d_a";
    C_MIN_10 "c_min_r" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of displacement-controlled expansion anchors without a report's value" = "10 * d_a";
    C_MIN_DRILLED "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of post-installed anchors: cover, twice the aggregate, and that of the report or the table" = "max(c_cover + d_a / 2, 2 * a_max, c_min_r)";
    H_A "h_a" Length (INPUT "" Derived) "Thickness of the slab": Given;
    H_MIN_REPORT "h_min" Length (INPUT "evaluation report" Derived) "Least thickness of the concrete, from the evaluation report": Given;
    U_H_MIN "u" Utilisation (INPUT "evaluation report" Derived) "Least thickness over thickness" = "h_min / h_a";
    H_EF_MAX "h_ef_max" Length (ACI_318_19 "17.9.4" Secondary) "Largest embedment of expansion, undercut and screw anchors" = "max(2 / 3 * h_a, h_a - h_rest)";
    U_H_EF "u" Utilisation (ACI_318_19 "17.9.4" Secondary) "Embedment over the largest one" = "h_ef / h_ef_max";
    S "s" Length (INPUT "" Derived) "Spacing of the two anchors that stand closest for their size": Geometry;
    U_S "u" Utilisation (ACI_318_19 "17.9.2" Secondary) "Least spacing over spacing" = "s_min / s";
    A_BRG "A_brg" Area (INPUT "" Derived) "Net bearing area of the head": Given;
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    D_HEAD "d_head" Length (STATICS "" Derived) "Diameter of a round head of the same area" = "sqrt(4 * A_brg / pi + d_a^2)";
    C_COVER "c_cover" Length (ACI_318_19 "20.5.1.3" Memory) "Cover that reinforcement would need at the edge": Given;
    C_MIN_TORQUED "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of cast-in anchors that are torqued: six diameters, and cover on the head" = "max(6 * d_a, c_cover + d_head / 2)";
    C_MIN "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of cast-in anchors that are not torqued: cover on the head" = "c_cover + d_head / 2";
    C_MIN_HOOK_TORQUED "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of hooked bolts that are torqued: six diameters, and cover" = "max(6 * d_a, c_cover + d_a / 2)";
    C_MIN_HOOK "c_min" Length (ACI_318_19 "17.9.2(b)" Secondary) "Least edge distance of hooked bolts that are not torqued: cover" = "c_cover + d_a / 2";
    C_A "c_a" Length (INPUT "" Derived) "Distance to the nearest edge of the anchor that is closest for its size": Geometry;
    U_C "u" Utilisation (ACI_318_19 "17.9.2" Secondary) "Least edge distance over edge distance" = "c_min / c_a";
}

fn least_spacing(facts: &Facts, (d_a, h_ef): (f64, f64), sheet: &mut Sheet) -> f64 {
    if let (true, Some(s_min)) = (facts.kind.is_drilled(), facts.report.s_min) {
        return sheet.step(S_MIN_REPORT, s_min);
    }
    match facts.kind {
        AnchorKind::Headed | AnchorKind::Hooked => {}
        AnchorKind::Adhesive => return sheet.step(S_MIN_ADHESIVE, 6.0 * d_a),
        AnchorKind::Screw => {
            sheet.step(H_EF, h_ef);
            return sheet.step(S_MIN_SCREW, f64::max(0.6 * h_ef, 6.0 * d_a));
        }
        _ => return sheet.step(S_MIN_DRILLED, 6.0 * d_a),
    }
    if facts.tightened { sheet.step(S_MIN_TORQUED, 6.0 * d_a) } else { sheet.step(S_MIN, 4.0 * d_a) }
}

/// Two anchors, with their least spacing over their spacing.
struct Pair {
    places: [usize; 2],
    ratio: f64,
    /// The larger diameter and the larger embedment.
    size: (f64, f64),
    s: f64,
}

/// The two anchors that stand closest for their size.
pub fn spacing(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let quiet = &mut Sheet::quiet();
    let mut worst: Option<Pair> = None;
    for (place, anchor) in facts.anchors.iter().enumerate().filter(|&(place, _)| facts.is_own(place)) {
        for (beside, other) in facts.anchors.iter().enumerate().skip(place + 1) {
            let size = (anchor.d_a.max(other.d_a), anchor.h_ef.max(other.h_ef));
            let s = facts.length(anchor.at.distance_mm(other.at));
            let ratio = least_spacing(facts, size, quiet) / s;
            if worst.as_ref().is_none_or(|known| ratio > known.ratio) {
                worst = Some(Pair { places: [place, beside], ratio, size, s });
            }
        }
    }
    let Some(Pair { places, ratio, size, s }) = worst else { return (Subject::Whole, Outcome::NotNeeded(ONE_ANCHOR)) };
    let subject = Subject::Anchor(places[0] as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorSpacing), facts.edition.system);
    sheet.step(D_A, size.0);
    let s_min = least_spacing(facts, size, sheet);
    sheet.detailed(S, s, || facts.line(places.map(|place| facts.anchors[place].at)));
    sheet.step(U_S, ratio);
    (subject, more_is_better(facts, s, s_min, ratio))
}

/// The anchor that stands closest to an edge for its size.
pub fn edge(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let mut worst: Option<(usize, f64)> = None;
    for place in members(facts.own) {
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
    let away = facts.length(anchor.nearest_mm);
    if facts.kind.is_drilled() {
        let c_min = drilled_edge(facts, d_a, sheet);
        return (sheet.detailed(C_A, away, || facts.shortest_line(&[place])), c_min);
    }
    if facts.kind == AnchorKind::Hooked {
        let cover = sheet.step(C_COVER, facts.cover);
        let c_min = if facts.tightened {
            sheet.step(C_MIN_HOOK_TORQUED, f64::max(6.0 * d_a, cover + d_a / 2.0))
        } else {
            sheet.step(C_MIN_HOOK, cover + d_a / 2.0)
        };
        return (sheet.detailed(C_A, away, || facts.shortest_line(&[place])), c_min);
    }
    let a_brg = sheet.step(A_BRG, anchor.a_brg);
    let pi = sheet.step(PI, core::f64::consts::PI);
    let d_head = sheet.step(D_HEAD, sqrt(4.0 * a_brg / pi + d_a * d_a));
    let cover = sheet.step(C_COVER, facts.cover);
    let c_min = if facts.tightened {
        sheet.step(C_MIN_TORQUED, f64::max(6.0 * d_a, cover + d_head / 2.0))
    } else {
        sheet.step(C_MIN, cover + d_head / 2.0)
    };
    (sheet.detailed(C_A, away, || facts.shortest_line(&[place])), c_min)
}

/// Least edge distance of a post-installed anchor (17.9.2(b)).
fn drilled_edge(facts: &Facts, d_a: f64, sheet: &mut Sheet) -> f64 {
    let cover = sheet.step(C_COVER, facts.cover);
    let aggregate = sheet.step(A_MAX, facts.aggregate);
    let least = match (facts.report.c_min, facts.kind) {
        (Some(c_min), _) => sheet.step(C_MIN_REPORT, c_min),
        (None, AnchorKind::TorqueExpansion) => sheet.step(C_MIN_8, 8.0 * d_a),
        (None, AnchorKind::DisplacementExpansion) => sheet.step(C_MIN_10, 10.0 * d_a),
        (None, _) => sheet.step(C_MIN_6, 6.0 * d_a),
    };
    sheet.step(C_MIN_DRILLED, (cover + d_a / 2.0).max(2.0 * aggregate).max(least))
}

/// Whether the slab is thick enough for the anchor that is deepest (17.9.4).
pub fn thickness(facts: &Facts, sheet: &mut Sheet) -> (Subject, Outcome) {
    let deeper = |best: usize, place: usize| {
        if facts.anchors[place].h_ef > facts.anchors[best].h_ef { place } else { best }
    };
    let deepest = members(facts.own).fold(0, deeper);
    let subject = Subject::Anchor(deepest as u16);
    let is_limited = facts.kind.is_mechanical();
    let reported = facts.report.h_min.filter(|_| facts.kind.is_drilled());
    if !is_limited && reported.is_none() {
        return (Subject::Whole, Outcome::NotNeeded(CAST_IN));
    }
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorThickness), facts.edition.system);
    let h_a = sheet.step(H_A, facts.h_a);
    if let Some(h_min) = reported {
        let h_min = sheet.step(H_MIN_REPORT, h_min);
        let ratio = sheet.step(U_H_MIN, h_min / h_a);
        return (subject, more_is_better(facts, h_a, h_min, ratio));
    }
    let h_ef = sheet.step(H_EF, facts.anchors[deepest].h_ef);
    let rest = facts.edition.rest_below.told(sheet);
    let most = sheet.step(H_EF_MAX, f64::max(2.0 / 3.0 * h_a, h_a - rest));
    let ratio = sheet.step(U_H_EF, h_ef / most);
    let utilisation = if crate::calc::limit::at_most(h_ef, most) { ratio.min(1.0) } else { ratio };
    let to_si = |value| facts.edition.system.to_si(value, Kind::Length);
    (subject, Outcome::Compared { value: to_si(h_ef), limit: to_si(most), utilisation })
}

/// A length against its least value. Where both are equal on paper the ratio may lie above 1 by a rounding; the clause
/// includes its limit.
fn more_is_better(facts: &Facts, length: f64, least: f64, ratio: f64) -> Outcome {
    let to_si = |value| facts.edition.system.to_si(value, Kind::Length);
    let utilisation = if crate::calc::limit::at_least(length, least) { ratio.min(1.0) } else { ratio };
    Outcome::Compared { value: to_si(length), limit: to_si(least), utilisation }
}
