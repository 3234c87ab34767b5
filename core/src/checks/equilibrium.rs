//! Equilibrium: whether feet and anchors can balance a load at all, and how near it is to turning about an edge.

use alloc::vec;

use crate::base_reactions::{BaseLoad, Push, Supports};
use crate::calc::clause::STATICS;
use crate::calc::number::positive_part;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Subject, System, steps};
use crate::geometry::Edge;

steps! { 19 "equilibrium";
    M_OVER "M_over" Moment (STATICS "moments about the edge" Derived) "Moment of the push about the edge": Geometry;
    M_HOLD "M_hold" Moment (STATICS "moments about the edge" Derived) "Moment of the vertical load that holds against it": Geometry;
    U_OVER "u" Utilisation (STATICS "" Derived) "Overturning over holding" = "M_over / M_hold";
    U_NOTHING "u" Utilisation (STATICS "" Derived) "Beyond all bounds, because the vertical load holds nothing about the edge": Condition;
    BALANCED "" Number (STATICS "cone of the supports" Derived) "feet and anchors stand so that they can balance any load": Reason;
    NOTHING "" Number (STATICS "cone of the supports" Derived) "nothing stands under it": Reason;
}

/// How near a push is to turning the cabinet about an edge that neither feet nor anchors hold.
///
/// Scope: rigid base, rigid floor. Moments in N mm. Not needed where the supports can balance every load; the strength
/// of anchors and feet is checked elsewhere. `towards` is the way of the push, which a sweep knows already.
pub fn check_equilibrium(supports: &Supports, push: &Push, towards: [f64; 2], sheet: &mut Sheet) -> Outcome {
    let vertical = BaseLoad {
        down_n: push.down_n,
        moment_x_nmm: push.down_n * push.at.x_mm,
        moment_y_nmm: push.down_n * push.at.y_mm,
    };
    let tipping = Tipping { towards, moment_nmm: push.horizontal_n * push.height_mm };
    let mut worst: Option<(f64, f64, f64, Edge)> = None;
    for edge in supports.tipping_edges() {
        let (hold, over) = moments_about(edge, &vertical, &tipping);
        let utilisation = if hold > 0.0 { positive_part(over / hold) } else { f64::INFINITY };
        // Without any weight every edge is as bad; the one that the push turns about is told.
        let is_worse = |(known, turning, ..): (f64, f64, f64, Edge)| {
            utilisation > known || (utilisation == known && over > turning)
        };
        if worst.is_none_or(is_worse) {
            worst = Some((utilisation, over, hold, edge));
        }
    }
    match worst {
        None if supports.feet().is_empty() && supports.anchors().is_empty() => Outcome::NotCovered(NOTHING),
        None if supports.holds(&push.base_load(towards)).is_err() => {
            Outcome::Compared { value: push.horizontal_n * push.height_mm, limit: 0.0, utilisation: f64::INFINITY }
        }
        None => Outcome::NotNeeded(BALANCED),
        Some((utilisation, over, hold, edge)) => {
            sheet.open(Part::BaseReactions, Subject::Whole, Some(CheckId::BaseEquilibrium), System::Si);
            let line = || Detail::Shape(vec![[edge.from.x_mm, edge.from.y_mm], [edge.to.x_mm, edge.to.y_mm]]);
            let over = positive_part(over);
            sheet.detailed(M_OVER, over, line);
            sheet.detailed(M_HOLD, hold, line);
            sheet.step(if hold > 0.0 { U_OVER } else { U_NOTHING }, utilisation);
            Outcome::Compared { value: over, limit: positive_part(hold), utilisation }
        }
    }
}

/// The moment of a push, and the way it pushes.
struct Tipping {
    towards: [f64; 2],
    moment_nmm: f64,
}

/// Holding moment of the vertical load and overturning moment of the push about an edge.
fn moments_about(edge: Edge, vertical: &BaseLoad, tipping: &Tipping) -> (f64, f64) {
    let [along, across] = tipping.towards;
    let length_mm = edge.length_mm();
    // An edge runs so that what it holds lies on its left: there the normal points.
    let (normal_x, normal_y) = if length_mm > 0.0 {
        (-(edge.to.y_mm - edge.from.y_mm) / length_mm, (edge.to.x_mm - edge.from.x_mm) / length_mm)
    } else {
        // About a single point the weakest line is the one across the push.
        (-along, -across)
    };
    let offset_mm = -(edge.from.x_mm * normal_x + edge.from.y_mm * normal_y);
    let hold = vertical.down_n * offset_mm + vertical.moment_x_nmm * normal_x + vertical.moment_y_nmm * normal_y;
    let over = -tipping.moment_nmm * (along * normal_x + across * normal_y);
    (hold, over)
}
