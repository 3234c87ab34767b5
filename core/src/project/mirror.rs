//! Mirrors: a cabinet that looks alike from its left and its right feels a push to the left as one to the right.
//!
//! Where everything that a sweep asks is the same beyond a mirror, only one side is asked. What differs between both
//! sides is then only rounding.

use alloc::vec::Vec;
use core::f64::consts::{PI, TAU};

use super::Project;
use crate::base_reactions::Supports;
use crate::cabinet::Anchor;
use crate::geometry::{Point, Rectangle};
use crate::load_out::Load;

/// Which halves of the plan are each other's image.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Mirror {
    /// Left and right.
    left_right: bool,
    /// Front and rear.
    front_rear: bool,
}

/// Directions nearer than this are one.
pub const SAME_RAD: f64 = 1e-9;
/// A centre of gravity this near to the middle is in it.
const MIDDLE_MM: f64 = 1e-9;

impl Mirror {
    /// The mirrors of a project in all its states. On a floor of its own kind, where panels and routes lie, none is looked for.
    pub fn of(project: &Project, loads: &[Load], supports: &Supports) -> Mirror {
        if project.floor.is_some() {
            return Mirror::default();
        }
        let is_mirror = |image: fn(Point) -> Point| {
            let is_middle = |load: &Load| {
                let centre = Point::new(load.centre_mm[0], load.centre_mm[1]);
                centre.distance_mm(image(centre)) <= 2.0 * MIDDLE_MM
            };
            loads.iter().all(is_middle)
                && stands_alike(supports, image)
                && project.cabinet.anchors.iter().all(|anchor| has_image(&project.cabinet.anchors, anchor, image))
                && project.neighbours.iter().all(|one| project.neighbours.iter().any(|other| other.at == image(one.at)))
                && project.slab.as_ref().is_none_or(|slab| {
                    slab.openings.is_empty() && is_image(&slab.outline, image) && is_image(&slab.boundary, image)
                })
        };
        Mirror { left_right: is_mirror(leftwards), front_rear: is_mirror(frontwards) }
    }

    /// The direction that stands for this one and its images: rightwards and to the rear.
    pub fn asked_rad(self, direction_rad: f64) -> f64 {
        let mut asked_rad = direction_rad;
        if self.front_rear && asked_rad > PI {
            asked_rad = TAU - asked_rad;
        }
        if self.left_right && asked_rad > PI / 2.0 && asked_rad < 3.0 * PI / 2.0 {
            asked_rad = if asked_rad <= PI { PI - asked_rad } else { 3.0 * PI - asked_rad };
        }
        asked_rad
    }

    /// A direction and its images.
    pub fn images_rad(self, direction_rad: f64) -> Vec<f64> {
        let mut images = alloc::vec![direction_rad];
        if self.left_right {
            images.push(wrapped(PI - direction_rad));
        }
        if self.front_rear {
            images.extend_from_within(..);
            let half = images.len() / 2;
            images[half..].iter_mut().for_each(|image| *image = wrapped(-*image));
        }
        images
    }

    /// Where the directions that stand for themselves begin and end; none where all do.
    pub fn range_rad(self) -> Option<[f64; 2]> {
        match (self.left_right, self.front_rear) {
            (false, false) => None,
            (true, false) => Some([-PI / 2.0, PI / 2.0]),
            (false, true) => Some([0.0, PI]),
            (true, true) => Some([0.0, PI / 2.0]),
        }
    }
}

fn wrapped(direction_rad: f64) -> f64 {
    if direction_rad < 0.0 { direction_rad + TAU } else { direction_rad }
}

fn leftwards(at: Point) -> Point {
    Point::new(-at.x_mm, at.y_mm)
}

fn frontwards(at: Point) -> Point {
    Point::new(at.x_mm, -at.y_mm)
}

fn stands_alike(supports: &Supports, image: fn(Point) -> Point) -> bool {
    let gap_mm = |foot: usize| supports.gaps_mm().get(foot).copied().unwrap_or(0.0);
    let feet = supports.feet();
    let feet_alike = feet.iter().enumerate().all(|(place, foot)| {
        feet.iter().enumerate().any(|(other_place, other)| {
            other.at == image(foot.at)
                && other.half == foot.half
                && other.stiffness_n_per_mm == foot.stiffness_n_per_mm
                && gap_mm(other_place) == gap_mm(place)
        })
    });
    let anchors = supports.anchors();
    feet_alike
        && anchors.iter().all(|anchor| {
            let is_image = |other: &crate::base_reactions::Anchor| {
                other.at == image(anchor.at) && other.stiffness_n_per_mm == anchor.stiffness_n_per_mm
            };
            anchors.iter().any(is_image)
        })
}

fn has_image(anchors: &[Anchor], anchor: &Anchor, image: fn(Point) -> Point) -> bool {
    let at = image(anchor.at);
    anchors.iter().any(|other| {
        other.at == at
            && other.own == anchor.own
            && other.bracket_mm == anchor.bracket_mm
            && other.stiffness_n_per_mm == anchor.stiffness_n_per_mm
            && other.clip_stiffness_n_per_mm == anchor.clip_stiffness_n_per_mm
    })
}

fn is_image(outline: &Rectangle, image: fn(Point) -> Point) -> bool {
    let [left_front, right_rear] = [(outline.left_mm, outline.front_mm), (outline.right_mm, outline.rear_mm)]
        .map(|(x_mm, y_mm)| image(Point::new(x_mm, y_mm)));
    left_front.x_mm.min(right_rear.x_mm) == outline.left_mm
        && left_front.x_mm.max(right_rear.x_mm) == outline.right_mm
        && left_front.y_mm.min(right_rear.y_mm) == outline.front_mm
        && left_front.y_mm.max(right_rear.y_mm) == outline.rear_mm
}
