//! What is drilled, where: every hole with its number, its distances, and the least of them that the rule asks for.

use alloc::string::String;
use alloc::vec::Vec;

use super::ladder::{choice_word, field, listed_mm};
use crate::calc::{CheckId, Outcome, Sheet, number};
use crate::geometry::{Point, Rectangle};
use crate::project::bench::Bench;
use crate::project::{Project, as_planned};
use crate::rules::anchor::Finding;

/// One hole of the setting-out sheet.
#[derive(Clone, PartialEq, Debug)]
pub struct Hole {
    /// Its number, from 1, in the order of the file.
    pub number: usize,
    /// The anchor's name, where it has one.
    pub name: Option<String>,
    /// Where it stands in the axes of the cabinet.
    pub at: Point,
    /// From the left, right, front and rear edge of the slab; infinite where the edge is far.
    pub edges_mm: [f64; 4],
    /// From the nearest edge of the slab or side of an opening; infinite where all are far.
    pub nearest_edge_mm: f64,
    /// The word of the bolt's size.
    pub bolt: Option<&'static str>,
    /// The bolt's diameter.
    pub diameter_mm: Option<f64>,
    /// Its embedment.
    pub embedment_mm: Option<f64>,
    /// To the nearest other hole; none where it is the only one.
    pub nearest_mm: Option<f64>,
    /// The least spacing to that hole that the rule gives; none where it leaves that to the maker of the anchor.
    pub least_spacing_mm: Option<f64>,
    /// The least distance to an edge; none where the rule leaves that to the maker of the anchor.
    pub least_edge_mm: Option<f64>,
}

/// The holes of a project as it is planned, in the order of the file.
pub fn holes(project: &Project) -> Vec<Hole> {
    let planned = as_planned(project);
    let anchors = &planned.cabinet.anchors;
    let mut holes = Vec::with_capacity(anchors.len());
    for (place, anchor) in anchors.iter().enumerate() {
        let at = anchor.at;
        let outline = planned.slab.as_ref().map_or(Rectangle::EVERYWHERE, |slab| slab.outline);
        let values = planned.anchorage.as_ref().map(|anchorage| (anchorage.rule, anchor.values(&anchorage.values)));
        let number = |key: &str| values.as_ref().and_then(|(rule, values)| values.number(field(rule, key)?));
        let bolt = values.as_ref().and_then(|(rule, values)| choice_word(rule, values, "bolt"));
        let others = (0..anchors.len()).filter(|&other| other != place);
        let nearest = others.min_by(|&a, &b| anchors[a].at.distance_mm(at).total_cmp(&anchors[b].at.distance_mm(at)));
        let edges_mm = [
            at.x_mm - outline.left_mm,
            outline.right_mm - at.x_mm,
            at.y_mm - outline.front_mm,
            outline.rear_mm - at.y_mm,
        ];
        let openings = planned.slab.iter().flat_map(|slab| &slab.openings).map(|opening| away_mm(opening, at));
        let nearest_edge_mm = edges_mm.into_iter().chain(openings).fold(f64::INFINITY, f64::min);
        holes.push(Hole {
            number: place + 1,
            name: anchor.name.clone(),
            at,
            edges_mm,
            nearest_edge_mm,
            bolt,
            diameter_mm: bolt.and_then(listed_mm).or_else(|| number("diameter_mm")),
            embedment_mm: number("embedment_mm"),
            nearest_mm: nearest.map(|other| anchors[other].at.distance_mm(at)),
            least_spacing_mm: nearest.and_then(|other| least(&planned, &[place, other], CheckId::AnchorSpacing)),
            least_edge_mm: least(&planned, &[place], CheckId::AnchorEdge),
        });
    }
    holes
}

/// How far a place lies outside of a rectangle.
fn away_mm(rectangle: &Rectangle, at: Point) -> f64 {
    let x_mm = f64::max(rectangle.left_mm - at.x_mm, at.x_mm - rectangle.right_mm);
    let y_mm = f64::max(rectangle.front_mm - at.y_mm, at.y_mm - rectangle.rear_mm);
    number::hypot(number::positive_part(x_mm), number::positive_part(y_mm))
}

/// An edge this far on every side, so that the rule says what the least distance to one is.
const SOME_EDGE_MM: f64 = 100_000.0;

/// What the rule compares a distance with when only these anchors are there.
fn least(planned: &Project, only: &[usize], check: CheckId) -> Option<f64> {
    let mut alone = planned.clone();
    alone.cabinet.anchors = only.iter().map(|&place| planned.cabinet.anchors[place].clone()).collect();
    // The demand may have nothing to do with these distances, and must not keep them from being told.
    alone.site = None;
    alone.neighbours.clear();
    let slab = alone.slab.as_mut()?;
    let far_mm = SOME_EDGE_MM;
    slab.outline = Rectangle { left_mm: -far_mm, right_mm: far_mm, front_mm: -far_mm, rear_mm: far_mm };
    slab.openings.clear();
    let mut findings: Vec<Finding> = Vec::new();
    Bench::new(&alone).check_places(&mut Sheet::quiet(), &mut findings);
    findings.iter().find_map(|finding| match finding.outcome {
        Outcome::Compared { limit, .. } if finding.check == check => Some(limit),
        _ => None,
    })
}
