use super::patch::{Extent, Patch};
use super::scale::{FAR_PX, PlanView, Scale};
use super::scene::Scene;
use super::side::{EdgeAt, Side};

/// Where things lie on the sheet, in px.
#[derive(Clone, Copy, Debug)]
pub struct Layout {
    /// How places of the plan become px.
    pub view: PlanView,
    /// What is shown, with the lines of far edges.
    pub rim: Patch,
    /// Level of the dimensions to the left and right edges.
    pub edge_level: f64,
    /// Level of the overall width.
    pub width_level: f64,
    /// Level, across, of the dimensions to the front and rear edges.
    pub edge_upright: f64,
    /// Level, across, of the overall depth.
    pub depth_upright: f64,
    /// Height of the drawing without notes.
    pub height: f64,
}

/// Room left of the plan; the rest of what [`Scale`] keeps free is on the right.
const LEFT_PX: f64 = 58.0;
/// Room on the right.
const RIGHT_PX: f64 = 50.0;
/// Rows above and below the plan, for words and for pulls.
const ROW_PX: f64 = 26.0;
/// From one dimension line to the next.
const TIER_PX: f64 = 22.0;

impl Layout {
    /// The layout of a scene at its scale.
    pub fn new(scene: &Scene, scale: &Scale) -> Layout {
        let far = |side: Side| match side.edge(&scene.slab, &scale.frame) {
            EdgeAt::Far(_) => FAR_PX,
            _ => 0.0,
        };
        let (left, right) = (LEFT_PX + far(Side::Left), RIGHT_PX + far(Side::Right));
        let extent = Extent {
            width: (scale.shown.right_mm - scale.shown.left_mm) * scale.px_per_mm,
            height: (scale.shown.rear_mm - scale.shown.front_mm) * scale.px_per_mm,
        };
        let shown_left = left + (scale.width_px - left - right - extent.width) / 2.0;
        let shown_top = ROW_PX + far(Side::Rear);
        let view = PlanView {
            origin: [
                shown_left - scale.shown.left_mm * scale.px_per_mm,
                shown_top + scale.shown.rear_mm * scale.px_per_mm,
            ],
            px_per_mm: scale.px_per_mm,
        };
        let shown = view.patch(&scale.shown);
        let rim = Patch {
            left: shown.left - far(Side::Left),
            top: shown.top - far(Side::Rear),
            right: shown.right + far(Side::Right),
            bottom: shown.bottom + far(Side::Front),
        };
        let has_edge = |side: Side| side.edge(&scene.slab, &scale.frame) != EdgeAt::Nowhere;
        let edge_level = rim.bottom + ROW_PX + 14.0;
        let tier = if has_edge(Side::Left) || has_edge(Side::Right) { TIER_PX } else { 0.0 };
        Layout {
            view,
            rim,
            edge_level,
            width_level: edge_level + tier,
            edge_upright: rim.right + 20.0,
            depth_upright: rim.left - 18.0,
            height: edge_level + tier + 8.0,
        }
    }
}
