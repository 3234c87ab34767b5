//! The plan of the setting-out sheet: holes with their numbers and circles, dimensioned from the axes and the edges.

use alloc::vec;
use alloc::vec::Vec;

use super::setting_out::number_text;
use crate::calc::clause::INPUT;
use crate::calc::order::put_in_order;
use crate::calc::steps;
use crate::explore::{Circle, Hole};
use crate::geometry::{Point, Rectangle};
use crate::project::Project;
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::PlotName;

steps! { 94 "plan of holes";
    PLAN "" Number (INPUT "cabinet.anchors" Derived) "Plan of the holes, rear on top": Name;
    EDGE "" Number (INPUT "slab" Derived) "edge of the slab": Name;
    OPENING "" Number (INPUT "slab" Derived) "opening": Name;
    FRONT "" Number (INPUT "cabinet" Derived) "front of the cabinet": Name;
}

/// An edge is drawn where it is if it lies no farther from the cabinet than this part of its larger side.
const NEAR: f64 = 0.8;
/// How far lines run beyond what they belong to, as a part of the larger side.
const BEYOND: f64 = 0.06;
/// Lines of dimensions on each side of the plan; what does not fit stands in the table alone.
const TIERS: usize = 3;
const TIER_PX: f64 = 17.0;
const FIRST_PX: f64 = 14.0;
/// Half of the cross at a hole.
const CROSS_MM: f64 = 18.0;

/// The figure.
pub fn plan(project: &Project, holes: &[Hole], circles: &[Circle]) -> Figure {
    let cabinet = &project.cabinet;
    let base = Rectangle {
        left_mm: -cabinet.width_mm / 2.0,
        right_mm: cabinet.width_mm / 2.0,
        front_mm: -cabinet.depth_mm / 2.0,
        rear_mm: cabinet.depth_mm / 2.0,
    };
    let around = holes.iter().fold(base, |around, hole| Rectangle {
        left_mm: around.left_mm.min(hole.at.x_mm),
        right_mm: around.right_mm.max(hole.at.x_mm),
        front_mm: around.front_mm.min(hole.at.y_mm),
        rear_mm: around.rear_mm.max(hole.at.y_mm),
    });
    let side_mm = (around.right_mm - around.left_mm).max(around.rear_mm - around.front_mm);
    let mut parts = vec![outline("cabinet", &base)];
    parts.extend(cabinet.feet.iter().map(|foot| outline("foot", &foot.rectangle())));
    parts.extend(axes(&around, BEYOND * side_mm));
    parts.push(FigurePart::Label { at_mm: [0.0, base.front_mm], name: PlotName::Row(FRONT), value: None });
    let slab = project.slab.as_ref().map_or(Rectangle::EVERYWHERE, |slab| slab.outline);
    let is_near = edges(&mut parts, &slab, &around, holes, side_mm);
    for opening in project.slab.iter().flat_map(|slab| &slab.openings) {
        let near_mm = NEAR * side_mm;
        let frame = Rectangle {
            left_mm: around.left_mm - near_mm,
            right_mm: around.right_mm + near_mm,
            front_mm: around.front_mm - near_mm,
            rear_mm: around.rear_mm + near_mm,
        };
        if let Some(seen) = opening.clipped(&frame) {
            parts.push(outline("strong", &seen));
            let at_mm = [(seen.left_mm + seen.right_mm) / 2.0, (seen.front_mm + seen.rear_mm) / 2.0];
            parts.push(FigurePart::Label { at_mm, name: PlotName::Row(OPENING), value: None });
        }
    }
    for (place, hole) in holes.iter().enumerate() {
        draw_hole(&mut parts, project, hole, circles.get(place));
    }
    let x = holes.iter().map(|hole| hole.at.x_mm).collect();
    let y = holes.iter().map(|hole| hole.at.y_mm).collect();
    // Dimensions stand where no edge of the slab is in their way.
    if is_near[2] && !is_near[3] {
        dimensions(&mut parts, x, |along| [along, around.rear_mm], 1.0);
    } else {
        dimensions(&mut parts, x, |along| [along, around.front_mm], -1.0);
    }
    if is_near[1] && !is_near[0] {
        dimensions(&mut parts, y, |along| [around.left_mm, along], -1.0);
    } else {
        dimensions(&mut parts, y, |along| [around.right_mm, along], 1.0);
    }
    Figure { name: PLAN, parts }
}

fn outline(class: &'static str, of: &Rectangle) -> FigurePart {
    FigurePart::Outline { class, corners_mm: of.corners().map(|corner| [corner.x_mm, corner.y_mm]).into() }
}

fn axes(around: &Rectangle, beyond_mm: f64) -> [FigurePart; 2] {
    let axis = |ends_mm| FigurePart::Line { class: "axis", ends_mm };
    [
        axis([[around.left_mm - beyond_mm, 0.0], [around.right_mm + beyond_mm, 0.0]]),
        axis([[0.0, around.front_mm - beyond_mm], [0.0, around.rear_mm + beyond_mm]]),
    ]
}

/// The slab's edges that are near (left, right, front, rear), and how far the nearest hole is from each.
fn edges(parts: &mut Vec<FigurePart>, slab: &Rectangle, around: &Rectangle, holes: &[Hole], side_mm: f64) -> [bool; 4] {
    let beyond_mm = BEYOND * side_mm;
    let near_mm = NEAR * side_mm;
    let is_near = [
        around.left_mm - slab.left_mm <= near_mm,
        slab.right_mm - around.right_mm <= near_mm,
        around.front_mm - slab.front_mm <= near_mm,
        slab.rear_mm - around.rear_mm <= near_mm,
    ];
    let pick = |near: bool, edge_mm: f64, free_mm: f64| if near { edge_mm } else { free_mm };
    let [left, right, front, rear] = [
        pick(is_near[0], slab.left_mm, around.left_mm - beyond_mm),
        pick(is_near[1], slab.right_mm, around.right_mm + beyond_mm),
        pick(is_near[2], slab.front_mm, around.front_mm - beyond_mm),
        pick(is_near[3], slab.rear_mm, around.rear_mm + beyond_mm),
    ];
    let lines = [
        [[left, front], [left, rear]],
        [[right, front], [right, rear]],
        [[left, front], [right, front]],
        [[left, rear], [right, rear]],
    ];
    for side in (0..4).filter(|&side| is_near[side]) {
        parts.push(FigurePart::Line { class: "strong", ends_mm: lines[side] });
        let [from, to] = lines[side];
        let middle = [(from[0] + to[0]) / 2.0, (from[1] + to[1]) / 2.0];
        parts.push(FigurePart::Label { at_mm: middle, name: PlotName::Row(EDGE), value: None });
        let Some(nearest) = holes.iter().min_by(|a, b| a.edges_mm[side].total_cmp(&b.edges_mm[side])) else { continue };
        let at = [nearest.at.x_mm, nearest.at.y_mm];
        let to_mm = if side < 2 { [lines[side][0][0], at[1]] } else { [at[0], lines[side][0][1]] };
        parts.push(FigurePart::Dimension { from_mm: at, to_mm, offset_px: if side < 2 { 12.0 } else { -12.0 } });
    }
    is_near
}

fn draw_hole(parts: &mut Vec<FigurePart>, project: &Project, hole: &Hole, circle: Option<&Circle>) {
    let Point { x_mm: x, y_mm: y } = hole.at;
    let drilled_mm = project.drilling.and_then(|drilling| drilling.diameter_mm);
    let diameter_mm = drilled_mm.or(hole.diameter_mm).unwrap_or(0.0);
    let line = |ends_mm| FigurePart::Line { class: "thin", ends_mm };
    parts.push(line([[x - CROSS_MM, y], [x + CROSS_MM, y]]));
    parts.push(line([[x, y - CROSS_MM], [x, y + CROSS_MM]]));
    parts.push(FigurePart::Circle { class: "hole", middle_mm: [x, y], radius_mm: diameter_mm / 2.0 });
    if let Some(circle) = circle.filter(|circle| circle.holds_mm > 0.0) {
        parts.push(FigurePart::Circle { class: "dashed", middle_mm: [x, y], radius_mm: circle.holds_mm });
    }
    parts.push(FigurePart::Label { at_mm: [x, y], name: PlotName::Text(number_text(hole.number)), value: None });
}

/// Dimensions from an axis to every place along it, the nearest innermost, on both sides of the axis.
fn dimensions(parts: &mut Vec<FigurePart>, mut places: Vec<f64>, at: impl Fn(f64) -> [f64; 2], side: f64) {
    put_in_order(&mut places, |a, b| a.abs().total_cmp(&b.abs()));
    for is_after in [true, false] {
        let mut told: Vec<f64> = Vec::new();
        for &place in places.iter().filter(|&&place| place != 0.0 && (place > 0.0) == is_after) {
            if told.len() == TIERS || told.iter().any(|known| (known - place).abs() < 0.5) {
                continue;
            }
            let offset_px = side * (FIRST_PX + TIER_PX * told.len() as f64);
            parts.push(FigurePart::Dimension { from_mm: at(0.0), to_mm: at(place), offset_px });
            told.push(place);
        }
    }
}
