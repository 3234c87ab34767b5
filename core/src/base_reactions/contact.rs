//! The pressed part of a foot, integrated exactly.

/// The integrals over the pressed part of the square -1..1 by -1..1, in the foot's own half sizes.
///
/// `force`, `force_u`, `force_v` are those of w, w u, w v; the others of 1, u, v, u u, u v, v v.
#[derive(Clone, Copy, Default)]
pub(super) struct Contact {
    pub force: f64,
    pub force_u: f64,
    pub force_v: f64,
    pub area: f64,
    pub u: f64,
    pub v: f64,
    pub uu: f64,
    pub uv: f64,
    pub vv: f64,
}

/// The contact of a foot that is pressed in part: `middle` is w at its centre, `slope_u` and `slope_v` the change of w
/// from there to its sides, and |middle| < |slope_u| + |slope_v|.
pub(super) fn partial_contact(middle: f64, slope_u: f64, slope_v: f64) -> Contact {
    let (steep_u, steep_v) = (slope_u.abs(), slope_v.abs());
    let mut contact = if steep_v >= steep_u {
        standing(middle, steep_u, steep_v)
    } else {
        let lying = standing(middle, steep_v, steep_u);
        Contact {
            force_u: lying.force_v,
            force_v: lying.force_u,
            u: lying.v,
            v: lying.u,
            uu: lying.vv,
            vv: lying.uu,
            ..lying
        }
    };
    if slope_u < 0.0 {
        (contact.force_u, contact.u, contact.uv) = (-contact.force_u, -contact.u, -contact.uv);
    }
    if slope_v < 0.0 {
        (contact.force_v, contact.v, contact.uv) = (-contact.force_v, -contact.v, -contact.uv);
    }
    contact
}

/// Gauss's two points integrate polynomials of the third degree without error.
const GAUSS: f64 = 0.577_350_269_189_625_8;

/// The same for 0 <= slope_u <= slope_v: at every u the pressed part reaches down from the side v = 1.
///
/// How far it reaches, the depth, is linear in u until it is the whole width. All integrands are polynomials in u of at
/// most the third degree, so two points are exact. Only what is positive is summed, so a sliver keeps its digits.
fn standing(middle: f64, slope_u: f64, slope_v: f64) -> Contact {
    let at_rear = middle + slope_v;
    let at_front = middle - slope_v;
    let from = if at_rear < slope_u { -at_rear / slope_u } else { -1.0 };
    let to = if -at_front < slope_u { -at_front / slope_u } else { 1.0 };
    let mut contact = Contact::default();
    let half = (to - from) / 2.0;
    let centre = (to + from) / 2.0;
    for u in [centre - GAUSS * half, centre + GAUSS * half] {
        let depth = (at_rear + slope_u * u) / slope_v;
        let (square, cube) = (depth * depth / 2.0, depth * depth * depth / 6.0);
        let area = half * depth;
        let v = half * (depth - square);
        let force = half * slope_v * square;
        contact.force += force;
        contact.force_u += u * force;
        contact.force_v += half * slope_v * (square - cube);
        contact.area += area;
        contact.u += u * area;
        contact.v += v;
        contact.uu += u * u * area;
        contact.uv += u * v;
        contact.vv += half * (depth - 2.0 * square + 2.0 * cube);
    }
    // The rest, up to u = 1, is pressed over the whole width.
    let length = 1.0 - to;
    if length > 0.0 {
        let centre = (1.0 + to) / 2.0;
        let area = 2.0 * length;
        let uu = area * (centre * centre + length * length / 12.0);
        contact.force += area * (middle + slope_u * centre);
        contact.force_u += area * middle * centre + slope_u * uu;
        contact.force_v += slope_v * area / 3.0;
        contact.area += area;
        contact.u += area * centre;
        contact.uu += uu;
        contact.vv += area / 3.0;
    }
    contact
}
