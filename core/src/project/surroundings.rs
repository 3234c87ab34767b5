//! Whether what surrounds the cabinet agrees with it: openings in the slab, boundaries, neighbours.

use alloc::format;

use super::agreement::{APART_MM, overlap, slab_outline};
use super::draft::Draft;
use super::{neighbour, row};
use crate::cabinet::{self, anchor, foot};
use crate::geometry::{Point, Rectangle, Size};
use crate::input::{Problem, Reader};
use crate::slab::{edge, opening};

/// Finds feet, anchors and neighbours that stand where they cannot.
pub fn surroundings(reader: &mut Reader, draft: &Draft) {
    openings(reader, draft);
    boundaries(reader, draft);
    neighbours(reader, draft);
    row(reader, draft);
}

/// Nothing stands in or over an opening.
fn openings(reader: &mut Reader, draft: &Draft) {
    for opening in draft.openings.iter().filter(|opening| opening.is_sound) {
        let hole = opening::rectangle(&opening.values);
        let allowed = format!("clear of {}", opening.spot.path);
        for anchor in &draft.anchors {
            let Some([x_mm, y_mm, _]) = anchor.values.numbers(anchor::AT) else { continue };
            if hole.contains(Point::new(x_mm, y_mm)) {
                reader.member_fault(&anchor.spot, "at_mm", Problem::OutsideSlab, &allowed);
            }
            let built = anchor.values.numbers(anchor::AS_BUILT);
            if built.is_some_and(|[x_mm, y_mm, _]| hole.contains(Point::new(x_mm, y_mm))) {
                reader.member_fault(&anchor.spot, "as_built_mm", Problem::OutsideSlab, &allowed);
            }
        }
        for item in &draft.feet {
            let (Some([x_mm, y_mm, _]), Some([width_mm, depth_mm, _])) =
                (item.values.numbers(foot::AT), item.values.numbers(foot::SIZE))
            else {
                continue;
            };
            let half = Size::new(width_mm / 2.0, depth_mm / 2.0);
            let at = Point::new(x_mm, y_mm);
            if overlap(&Rectangle::around(at, half), &hole) || hole.contains(at) {
                reader.member_fault(&item.spot, "at_mm", Problem::OutsideSlab, &allowed);
            }
        }
    }
}

/// Our own anchors stand on our side of every boundary.
fn boundaries(reader: &mut Reader, draft: &Draft) {
    let Some(lines) = draft.boundary.as_ref().filter(|lines| lines.is_sound) else { return };
    let ours = edge::outline(&lines.values);
    for anchor in &draft.anchors {
        let Some([x_mm, y_mm, _]) = anchor.values.numbers(anchor::AT) else { continue };
        if !is_inside(&ours, Point::new(x_mm, y_mm)) {
            reader.member_fault(&anchor.spot, "at_mm", Problem::OutsideSlab, "within slab.boundary_mm");
        }
    }
}

pub(super) fn is_inside(outline: &Rectangle, at: Point) -> bool {
    outline.left_mm < at.x_mm && at.x_mm < outline.right_mm && outline.front_mm < at.y_mm && at.y_mm < outline.rear_mm
}

/// Cabinets of a row do not stand in each other.
fn row(reader: &mut Reader, draft: &Draft) {
    let Some(item) = &draft.row else { return };
    let width_mm = draft.cabinet.as_ref().and_then(|cabinet| cabinet.values.number(cabinet::WIDTH));
    if let (Some(pitch_mm), Some(width_mm)) = (item.values.number(row::PITCH), width_mm)
        && pitch_mm < width_mm
    {
        reader.member_fault(&item.spot, row::FIELDS[row::PITCH].key, Problem::OnOnePlace, "at least cabinet.width_mm");
    }
}

/// A neighbour stands beside the cabinet and not in it, and its anchors stand in the slab, clear of ours.
fn neighbours(reader: &mut Reader, draft: &Draft) {
    let Some(cabinet) = &draft.cabinet else { return };
    let size = [cabinet::WIDTH, cabinet::DEPTH].map(|side| cabinet.values.number(side));
    let [Some(width_mm), Some(depth_mm)] = size else { return };
    let anchors = || draft.anchors.iter().filter_map(|anchor| anchor.values.numbers(anchor::AT));
    for neighbour in &draft.neighbours {
        let Some([dx_mm, dy_mm, _]) = neighbour.values.numbers(neighbour::AT) else { continue };
        let mut say = |problem, allowed: &str| reader.member_fault(&neighbour.spot, "at_mm", problem, allowed);
        if dx_mm.abs() < width_mm && dy_mm.abs() < depth_mm {
            say(Problem::OnOnePlace, "at least a width or a depth away from this cabinet");
            continue;
        }
        let moved = || anchors().map(|[x_mm, y_mm, _]| Point::new(x_mm + dx_mm, y_mm + dy_mm));
        let own = |at: Point| anchors().any(|[x_mm, y_mm, _]| at.distance_mm(Point::new(x_mm, y_mm)) < APART_MM);
        if moved().any(own) {
            say(Problem::OnOnePlace, "where no anchor of the neighbour meets one of this cabinet");
        }
        if slab_outline(draft).is_some_and(|slab| moved().any(|at| !is_inside(&slab, at))) {
            say(Problem::OutsideSlab, "where all anchors of the neighbour stand within slab.edges_mm");
        }
        for opening in draft.openings.iter().filter(|opening| opening.is_sound) {
            let hole = opening::rectangle(&opening.values);
            if moved().any(|at| hole.contains(at)) {
                say(Problem::OutsideSlab, &format!("where no anchor of the neighbour stands in {}", opening.spot.path));
            }
        }
    }
}
