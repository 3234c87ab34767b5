//! The scene of one result, for the drawings.

use alloc::vec::Vec;

use super::Project;
use super::bench::Bench;
use super::working::place;
use crate::base_reactions::{self, BaseLoad, Reactions, Supports, Unbalanced};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Sheet};
use crate::geometry::{Edge, Point, Polygon, Rectangle};
use crate::load_out::Load;
use crate::report::drawing::{Anchor, Cabinet, Contents, Ending, Foot, Push, RosePoint, RoseScene, Scene};
use crate::report::outcome::{At, Report};
use crate::rules::anchor::AnchorForce;

/// The scene of a place in the sweep; the first state at rest where no place is given.
pub fn scene(project: &Project, at: Option<&At>) -> Scene {
    let mut bench = Bench::new(project);
    let known = at.filter(|at| at.state < bench.loads.len() && at.case.is_none_or(|case| case < bench.cases().len()));
    let state = known.map_or(0, |at| at.state);
    let swept = known.and_then(place).filter(|place| place.stiffness < bench.supports.len());
    let load = bench.loads[state].clone();
    let (base_load, push) = match (&swept, known) {
        (Some(place), _) => {
            let push = bench.case_load(place).push();
            let acceleration_g = push.horizontal_n / (load.mass_kg * G_N_PER_KG);
            let told = Push {
                direction_rad: push.direction_rad,
                force_n: push.horizontal_n,
                acceleration_g,
                down_n: push.down_n,
            };
            (BaseLoad::from(push), told)
        }
        (None, known) => unbolted(&bench, &load, known),
    };
    let stiffness = swept.map_or(0, |place| place.stiffness);
    // What depends on no load case is told of the cabinet that stands by its weight alone.
    let supports = if swept.is_some() || known.is_none() {
        bench.supports[stiffness].clone()
    } else {
        bench.supports[stiffness].without_anchors()
    };
    let settled = supports.settle(&base_load);
    let mut forces = alloc::vec![AnchorForce::default(); project.cabinet.anchors.len()];
    if let (Some(place), Ok(reactions)) = (&swept, &settled) {
        bench.check(place, &mut Sheet::quiet(), &mut Vec::new());
        if bench.anchor_forces().len() == forces.len() {
            forces.copy_from_slice(bench.anchor_forces());
        }
        for (force, &tension_n) in forces.iter_mut().zip(&reactions.anchors_n) {
            force.tension_n = tension_n;
        }
    }
    let pulled: Vec<usize> = (0..forces.len()).filter(|&anchor| forces[anchor].tension_n > 0.0).collect();
    let pivot = match &settled {
        Err(Unbalanced::OnThePoint(edge)) => Some(*edge),
        Err(Unbalanced::Tips(edge)) => *edge,
        _ => pivot(&bench, &load, push),
    };
    let ending = match &settled {
        Ok(_) => Ending::Settles,
        Err(Unbalanced::OnThePoint(_)) => Ending::OnThePoint,
        Err(_) => Ending::Tips,
    };
    Scene {
        cabinet: Cabinet {
            width_mm: project.cabinet.width_mm,
            depth_mm: project.cabinet.depth_mm,
            height_mm: project.cabinet.height_mm,
        },
        feet: feet(&supports, settled.as_ref().ok()),
        anchors: anchors(project, &forces, settled.is_ok()),
        slab: project.slab.as_ref().map_or(Rectangle::EVERYWHERE, |slab| slab.outline),
        openings: project.slab.as_ref().map_or(Vec::new(), |slab| slab.openings.clone()),
        neighbours: neighbours(project),
        breakouts: bench.breakout_outlines(&pulled),
        contents: contents(project, state),
        centre_mm: load.centre_mm,
        push,
        pivot,
        ending,
    }
}

/// Where the anchors of the neighbours stand.
fn neighbours(project: &Project) -> Vec<Point> {
    let all = project.neighbours.iter().flat_map(|neighbour| {
        let anchors = project.cabinet.anchors.iter();
        anchors.map(move |anchor| Point::new(anchor.at.x_mm + neighbour.at.x_mm, anchor.at.y_mm + neighbour.at.y_mm))
    });
    all.collect()
}

/// The rose of a report.
pub fn rose_scene(report: &Report) -> RoseScene {
    let governing = report.governs.and_then(|place| report.checks[place].at);
    let mut points = Vec::new();
    let mut highest: Option<usize> = None;
    for (index, point) in report.rose.iter().enumerate() {
        let id = point.check.map(|check| report.checks[check].id);
        let Some(check) = id.and_then(CheckId::named) else { continue };
        let is_governing = governing.is_some_and(|at| (at.direction_rad - point.direction_rad).abs() < 1e-9);
        if is_governing {
            highest = Some(points.len());
        }
        let utilisation = point.utilisation.unwrap_or(f64::INFINITY);
        points.push(RosePoint { direction_rad: point.direction_rad, utilisation, check, at: Some(index as u16) });
    }
    RoseScene { points, governing: highest }
}

/// Standing free: the weight, less the vertical motion, and the push of the demand rule; the weight alone where no
/// place is asked for.
fn unbolted(bench: &Bench, load: &Load, at: Option<&At>) -> (BaseLoad, Push) {
    let weight_n = load.mass_kg * G_N_PER_KG;
    let standing = at.and_then(|at| bench.standing(at.state));
    let (acceleration_g, vertical) = standing.map_or((0.0, 0.0), |standing| (standing.push, standing.vertical));
    let push = base_reactions::Push {
        down_n: (1.0 - vertical) * weight_n,
        at: Point::new(load.centre_mm[0], load.centre_mm[1]),
        height_mm: load.centre_mm[2],
        horizontal_n: acceleration_g * weight_n,
        direction_rad: at.map_or(0.0, |at| at.direction_rad),
    };
    let told =
        Push { direction_rad: push.direction_rad, force_n: push.horizontal_n, acceleration_g, down_n: push.down_n };
    (BaseLoad::from(push), told)
}

fn pivot(bench: &Bench, load: &Load, push: Push) -> Option<Edge> {
    if push.force_n <= 0.0 {
        return None;
    }
    let centre = Point::new(load.centre_mm[0], load.centre_mm[1]);
    bench.supports[0].feet_hull().ray_exit(centre, push.direction_rad).map(|side| side.edge)
}

fn feet(supports: &Supports, reactions: Option<&Reactions>) -> Vec<Foot> {
    let feet = supports.feet().iter().enumerate();
    feet.map(|(index, foot)| {
        let reaction = reactions.map(|reactions| &reactions.feet[index]);
        let contact: Polygon = match reactions {
            Some(reactions) => supports.contact(index, &reactions.plane),
            None => Polygon::new(Vec::new()),
        };
        Foot {
            outline: foot.rectangle(),
            pressed: if contact.corners.len() > 2 { alloc::vec![contact] } else { Vec::new() },
            force_n: reaction.map(|reaction| reaction.force_n),
            peak_mpa: reaction.map(|reaction| reaction.peak_pressure_mpa).filter(|peak| peak.is_finite()),
            at: None,
        }
    })
    .collect()
}

fn anchors(project: &Project, forces: &[AnchorForce], is_settled: bool) -> Vec<Anchor> {
    let anchors = project.cabinet.anchors.iter().zip(forces);
    anchors
        .map(|(anchor, force)| Anchor {
            place: anchor.at,
            tension_n: is_settled.then_some(force.tension_n),
            shear_n: [force.shear_x_n, force.shear_y_n],
            at: None,
        })
        .collect()
}

fn contents(project: &Project, state: usize) -> Vec<Contents> {
    let states = project.all_states();
    let aboard = states[state].aboard.iter();
    aboard
        .map(|aboard| {
            let content = &project.contents[aboard.content];
            Contents {
                mass_kg: content.mass_kg,
                centre: Point::new(content.offset_mm[0], content.offset_mm[1]),
                size_mm: content.size_mm,
                bottom_mm: content.bottom_mm,
                drawn_out_mm: aboard.drawn_out_mm,
            }
        })
        .collect()
}
