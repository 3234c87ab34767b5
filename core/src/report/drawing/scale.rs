use super::patch::Patch;
use super::scene::Scene;
use super::side::{EdgeAt, Side};
use crate::calc::number::hypot;
use crate::geometry::{Point, Rectangle};

/// The one scale of plan and elevation, and what each of them has to show.
///
/// It depends on the geometry and the width alone, not on the result nor on the direction of the push: while a reader
/// turns the push around, the drawings stand still.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// The width of either drawing in px.
    pub width_px: f64,
    /// The scale.
    pub px_per_mm: f64,
    /// What the plan shows to scale: the base, near edges of the slab, breakout.
    pub shown: Rectangle,
    /// How far from the base breakout outlines are drawn and edges count as near.
    pub frame: Rectangle,
    /// The middle about which the elevation turns.
    pub middle: Point,
    /// How far from that middle anything in the elevation lies.
    pub reach_mm: f64,
    /// The highest thing.
    pub top_mm: f64,
}

/// The narrowest drawing, px: below it the labels have no room.
pub const WIDTH_MIN_PX: f64 = 240.0;
/// Room for labels and dimensions beside the plan, left and right together.
const PLAN_SIDES_PX: f64 = 108.0;
/// Room on one side of the plan for an edge that is far away.
pub const FAR_PX: f64 = 26.0;
/// Room beside the elevation: dimensions to the left, the push to the right.
pub const ELEVATION_LEFT_PX: f64 = 50.0;
/// The same on the right.
pub const ELEVATION_RIGHT_PX: f64 = 64.0;
/// The highest and the deepest drawing over its width.
const TALL: f64 = 1.25;
/// The height that even a wide drawing does not exceed, so that it stays on one screen, px.
const TALL_MOST_PX: f64 = 540.0;
/// An edge is near when it is no farther from the base than this part of the base's larger side,
const NEAR: f64 = 0.35;
/// and where there is room to spare, than this part.
const NEAR_MOST: f64 = 0.8;

impl Scale {
    /// The scale at which both drawings of the scene fit the width.
    pub fn shared(scene: &Scene, width_px: f64) -> Scale {
        let width_px = if width_px.is_finite() { width_px.max(WIDTH_MIN_PX) } else { WIDTH_MIN_PX };
        let base = base(scene);
        let (base_width_mm, base_depth_mm) = (base.right_mm - base.left_mm, base.rear_mm - base.front_mm);
        let middle = Point::new((base.left_mm + base.right_mm) / 2.0, (base.front_mm + base.rear_mm) / 2.0);
        let reach_mm = reach_mm(scene, &base, middle);
        let top_mm = scene
            .contents
            .iter()
            .fold(scene.cabinet.height_mm.max(scene.centre_mm[2]), |top, one| top.max(one.top_mm()));
        let tall_px = (TALL * width_px).min(TALL_MOST_PX);
        let seen = ((width_px - ELEVATION_LEFT_PX - ELEVATION_RIGHT_PX) / (2.0 * reach_mm)).min(tall_px / top_mm);
        // Where the elevation decides the scale, the plan has room to spare for edges; they are worth a little more.
        let spare_mm = ((width_px - PLAN_SIDES_PX) / seen - base_width_mm) / 2.0;
        let side_mm = base_width_mm.max(base_depth_mm);
        let near_mm = (1.3 * spare_mm).max(NEAR * side_mm).min(NEAR_MOST * side_mm);
        let frame = Rectangle {
            left_mm: base.left_mm - near_mm,
            right_mm: base.right_mm + near_mm,
            front_mm: base.front_mm - near_mm,
            rear_mm: base.rear_mm + near_mm,
        };
        let shown = shown(scene, base, &frame);
        let far = |side: Side| {
            if matches!(side.edge(&scene.slab, &frame), EdgeAt::Far(_)) { FAR_PX } else { 0.0 }
        };
        let sides_px = PLAN_SIDES_PX + far(Side::Left) + far(Side::Right);
        let limits = [
            seen,
            (width_px - sides_px) / (shown.right_mm - shown.left_mm),
            tall_px / (shown.rear_mm - shown.front_mm),
        ];
        let px_per_mm =
            limits.into_iter().filter(|limit| limit.is_finite() && *limit > 0.0).fold(f64::INFINITY, f64::min);
        let px_per_mm = if px_per_mm.is_finite() { px_per_mm } else { 1.0 };
        Scale { width_px, px_per_mm, shown, frame, middle, reach_mm, top_mm }
    }

    /// The scale the other way round.
    pub fn mm_per_px(&self) -> f64 {
        1.0 / self.px_per_mm
    }
}

/// The plan on paper: where a place of the plan comes to lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanView {
    /// px of the cabinet's origin.
    pub origin: [f64; 2],
    /// The scale.
    pub px_per_mm: f64,
}

impl PlanView {
    /// The place in px; the rear is on top.
    pub fn place(&self, point: Point) -> [f64; 2] {
        [self.origin[0] + point.x_mm * self.px_per_mm, self.origin[1] - point.y_mm * self.px_per_mm]
    }

    /// The patch of a rectangle.
    pub fn patch(&self, rectangle: &Rectangle) -> Patch {
        Patch::between(
            self.place(Point::new(rectangle.left_mm, rectangle.front_mm)),
            self.place(Point::new(rectangle.right_mm, rectangle.rear_mm)),
        )
    }
}

/// Cabinet, feet and anchors in the plan.
fn base(scene: &Scene) -> Rectangle {
    let mut base = scene.cabinet.outline();
    for foot in &scene.feet {
        base = around_both(&base, &foot.outline);
    }
    for anchor in &scene.anchors {
        base = around_both(&base, &dot(anchor.place));
    }
    base
}

/// The base, the edges that are near, the breakout as far as the frame, and drawers that stand out.
fn shown(scene: &Scene, base: Rectangle, frame: &Rectangle) -> Rectangle {
    let mut shown = base;
    for side in Side::ALL {
        if let EdgeAt::Near(edge_mm) = side.edge(&scene.slab, frame) {
            shown = match side {
                Side::Left => Rectangle { left_mm: shown.left_mm.min(edge_mm), ..shown },
                Side::Right => Rectangle { right_mm: shown.right_mm.max(edge_mm), ..shown },
                Side::Front => Rectangle { front_mm: shown.front_mm.min(edge_mm), ..shown },
                Side::Rear => Rectangle { rear_mm: shown.rear_mm.max(edge_mm), ..shown },
            };
        }
    }
    for corner in scene.breakouts.iter().flat_map(|outline| &outline.corners) {
        let kept = Point::new(
            corner.x_mm.max(frame.left_mm).min(frame.right_mm),
            corner.y_mm.max(frame.front_mm).min(frame.rear_mm),
        );
        shown = around_both(&shown, &dot(kept));
    }
    for one in scene.contents.iter().filter(|one| one.drawn_out_mm > 0.0) {
        shown = around_both(&shown, &one.footprint());
    }
    shown
}

fn reach_mm(scene: &Scene, base: &Rectangle, middle: Point) -> f64 {
    let footprints = scene.contents.iter().map(|one| one.footprint());
    let centre = dot(Point::new(scene.centre_mm[0], scene.centre_mm[1]));
    footprints
        .chain([*base, centre])
        .flat_map(|one| one.corners())
        .fold(0.0, |reach: f64, corner| reach.max(hypot(corner.x_mm - middle.x_mm, corner.y_mm - middle.y_mm)))
}

fn around_both(a: &Rectangle, b: &Rectangle) -> Rectangle {
    Rectangle {
        left_mm: a.left_mm.min(b.left_mm),
        right_mm: a.right_mm.max(b.right_mm),
        front_mm: a.front_mm.min(b.front_mm),
        rear_mm: a.rear_mm.max(b.rear_mm),
    }
}

fn dot(point: Point) -> Rectangle {
    Rectangle { left_mm: point.x_mm, right_mm: point.x_mm, front_mm: point.y_mm, rear_mm: point.y_mm }
}
