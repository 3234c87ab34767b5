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

impl Push {
    /// The way it pushes as a vector of length one.
    pub fn towards(&self) -> [f64; 2] {
        [number::cos(self.direction_rad), number::sin(self.direction_rad)]
    }

    /// What presses on the base, for what knows the way of the push already.
    pub fn base_load(&self, [along, across]: [f64; 2]) -> BaseLoad {
        let tipping_nmm = self.horizontal_n * self.height_mm;
        BaseLoad {
            down_n: self.down_n,
            moment_x_nmm: self.down_n * self.at.x_mm + tipping_nmm * along,
            moment_y_nmm: self.down_n * self.at.y_mm + tipping_nmm * across,
        }
    }
}

impl From<Push> for BaseLoad {
    #[inline(always)]
    fn from(push: Push) -> BaseLoad {
        push.base_load(push.towards())
    }
}
