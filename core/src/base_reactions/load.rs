use crate::calc::number;
use crate::geometry::Point;

/// What presses on the base: a force down and two moments about the origin of the plan.
///
/// Units: N and N mm. With the force P acting at ex, ey the moments are P ex and P ey: a positive moment along x presses
/// the feet at positive x. In equilibrium, with feet N and anchors T,
/// sum N - sum T = P, sum N x - sum T x = P ex, sum N y - sum T y = P ey.
/// The force may be zero or negative (net uplift); then the moments stand for themselves.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BaseLoad {
    /// P, the force down.
    pub down_n: f64,
    /// P ex.
    pub moment_x_nmm: f64,
    /// P ey.
    pub moment_y_nmm: f64,
}

/// Gravity with a horizontal push, as a load case has them.
///
/// The direction is the way the push acts on the cabinet, in radians from +x towards +y.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Push {
    /// The force down, vertical motion included.
    pub down_n: f64,
    /// The place under the centre of gravity.
    pub at: Point,
    /// The height of the centre of gravity above the floor.
    pub height_mm: f64,
    /// The horizontal force.
    pub horizontal_n: f64,
    /// The way it pushes.
    pub direction_rad: f64,
}

impl From<Push> for BaseLoad {
    fn from(push: Push) -> BaseLoad {
        let tipping_nmm = push.horizontal_n * push.height_mm;
        BaseLoad {
            down_n: push.down_n,
            moment_x_nmm: push.down_n * push.at.x_mm + tipping_nmm * number::cos(push.direction_rad),
            moment_y_nmm: push.down_n * push.at.y_mm + tipping_nmm * number::sin(push.direction_rad),
        }
    }
}
