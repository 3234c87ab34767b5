//! Whether a project that was changed for a search could be written to a file and read again without a fault.

use alloc::vec::Vec;

use super::Project;
use super::agreement::{APART_MM, EMBEDMENT_KEY, FRAME_CENTRE_MIN_MM, REACH, overlap};
use super::surroundings::is_inside;
use crate::cabinet::{anchor, foot, frame};
use crate::geometry::{Point, Rectangle};
use crate::input::field::{Field, FieldShape, Values};
use crate::load_out::content;
use crate::slab::{self, Slab};

/// Whether everything stands where it can: numbers within the limits of their fields, feet and anchors on the slab and
/// apart, values that the rules take together. It asks what [`read`](super::read) asks of the same numbers in a file, so
/// that a search is told of a cabinet that cannot be built instead of one that fails.
///
/// Scope: what a search turns. What only a text can be wrong in, such as names, is not looked at again.
pub fn is_buildable(project: &Project) -> bool {
    contents(project) && places(project) && on_slab(project) && neighbours(project) && rules(project)
}

/// Whether a number may stand in a field.
fn fits(field: &Field, number: f64) -> bool {
    match field.shape {
        FieldShape::Number { min, max, .. } | FieldShape::Numbers { min, max, .. } => min <= number && number <= max,
        _ => true,
    }
}

fn contents(project: &Project) -> bool {
    let cabinet = &project.cabinet;
    let height_mm = cabinet.frame.centre_mm[2];
    project.contents.iter().all(|one| {
        fits(&content::FIELDS[content::MASS], one.mass_kg) && fits(&content::FIELDS[content::BOTTOM], one.bottom_mm)
    }) && fits(&frame::FIELDS[frame::MASS], cabinet.frame.mass_kg)
        && FRAME_CENTRE_MIN_MM <= height_mm
        && height_mm <= cabinet.height_mm
}

/// Feet and anchors near the base, and apart from one another.
fn places(project: &Project) -> bool {
    let cabinet = &project.cabinet;
    let [x_mm, y_mm] = [cabinet.width_mm, cabinet.depth_mm].map(|side| (0.5 + REACH) * side);
    let is_near = |at: Point| at.x_mm.abs() <= x_mm && at.y_mm.abs() <= y_mm;
    let (feet, anchors) = (&cabinet.feet, &cabinet.anchors);
    let apart = |place: usize| {
        let own = feet[place].rectangle();
        feet[..place].iter().all(|other| !overlap(&own, &other.rectangle()))
    };
    let alone = |place: usize| anchors[..place].iter().all(|other| other.at.distance_mm(anchors[place].at) >= APART_MM);
    let stiff = |given: Option<f64>, field: &Field| given.is_none_or(|number| fits(field, number));
    feet.iter().all(|one| is_near(one.at) && stiff(one.stiffness_n_per_mm, &foot::FIELDS[foot::STIFFNESS]))
        && anchors
            .iter()
            .all(|one| is_near(one.at) && stiff(one.stiffness_n_per_mm, &anchor::FIELDS[anchor::STIFFNESS]))
        && (0..feet.len()).all(apart)
        && (0..anchors.len()).all(alone)
}

fn on_slab(project: &Project) -> bool {
    let Some(slab) = &project.slab else { return true };
    let (cabinet, outline) = (&project.cabinet, &slab.outline);
    let edges = [-outline.left_mm, outline.right_mm, -outline.front_mm, outline.rear_mm];
    let is_under = |own: &Rectangle| {
        outline.left_mm <= own.left_mm
            && own.right_mm <= outline.right_mm
            && outline.front_mm <= own.front_mm
            && own.rear_mm <= outline.rear_mm
    };
    let is_free =
        |own: &Rectangle, at: Point| slab.openings.iter().all(|hole| !overlap(own, hole) && !hole.contains(at));
    edges.iter().all(|&edge| edge == f64::INFINITY || fits(&slab::edge::FIELDS[slab::edge::LEFT], edge))
        && fits(&slab::FIELDS[slab::STRENGTH], slab.strength_mpa)
        && fits(&slab::FIELDS[slab::THICKNESS], slab.thickness_mm)
        && fits(&slab::FIELDS[slab::FRICTION], slab.friction)
        && cabinet.feet.iter().all(|foot| is_under(&foot.rectangle()) && is_free(&foot.rectangle(), foot.at))
        && cabinet.anchors.iter().all(|anchor| {
            takes_anchor(slab, anchor.at)
                && is_inside(&slab.boundary, anchor.at)
                && anchor.as_built.is_none_or(|hole| takes_anchor(slab, hole))
        })
}

fn takes_anchor(slab: &Slab, at: Point) -> bool {
    is_inside(&slab.outline, at) && !slab.openings.iter().any(|hole| hole.contains(at))
}

fn neighbours(project: &Project) -> bool {
    let anchors = &project.cabinet.anchors;
    project.neighbours.iter().all(|neighbour| {
        anchors.iter().all(|anchor| {
            let at = Point::new(anchor.at.x_mm + neighbour.at.x_mm, anchor.at.y_mm + neighbour.at.y_mm);
            anchors.iter().all(|own| at.distance_mm(own.at) >= APART_MM)
                && project.slab.as_ref().is_none_or(|slab| takes_anchor(slab, at))
        })
    })
}

/// Whether the rules take their values together, and every hole is as deep as its anchor.
fn rules(project: &Project) -> bool {
    let mut faults = Vec::new();
    let mut fit = true;
    if let Some(site) = &project.site {
        (site.rule.faults)(&site.values, &mut faults);
        fit &= all_fit(site.rule.fields, &site.values);
    }
    let mut is_deep_enough = true;
    if let Some(anchorage) = &project.anchorage {
        let place = anchorage.rule.fields.iter().position(|field| field.key == EMBEDMENT_KEY);
        let depth_mm = project.drilling.and_then(|drilling| drilling.depth_mm);
        let mut ask = |values: &Values| {
            (anchorage.rule.faults)(values, &mut faults);
            fit &= all_fit(anchorage.rule.fields, values);
            let embedment_mm = place.and_then(|place| values.number(place));
            is_deep_enough &= embedment_mm.zip(depth_mm).is_none_or(|(embedment, depth)| embedment <= depth);
        };
        ask(&anchorage.values);
        project.cabinet.anchors.iter().for_each(|anchor| ask(&anchor.values(&anchorage.values)));
    }
    faults.is_empty() && fit && is_deep_enough
}

fn all_fit(fields: &[Field], values: &Values) -> bool {
    fields.iter().enumerate().all(|(place, field)| values.number(place).is_none_or(|number| fits(field, number)))
}
