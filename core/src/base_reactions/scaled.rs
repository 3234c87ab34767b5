//! The supports in coordinates of about one, and what they answer to a plane.

use alloc::vec::Vec;

use super::contact::{Contact, partial_contact};
use super::{Anchor, BaseLoad, Foot, Plane};
use crate::geometry::Point;

/// Feet and anchors about their common centre, divided by half their width and by the greatest stiffness.
#[derive(Clone, Debug)]
pub(super) struct ScaledSupports {
    pub centre: Point,
    pub length_mm: f64,
    pub stiffness_n_per_mm: f64,
    pub feet: Vec<ScaledFoot>,
    pub anchors: Vec<ScaledAnchor>,
}

/// A foot with its stiffness moments worked out for the case that all of it is pressed.
#[derive(Clone, Copy, Debug)]
pub(super) struct ScaledFoot {
    pub x: f64,
    pub y: f64,
    pub half_x: f64,
    pub half_y: f64,
    pub stiffness: f64,
    /// How far it hangs above the floor before it is pressed, times the greatest stiffness, in N.
    pub gap_n: f64,
    /// A third of the squared half sizes: the spread of the foot about its own centre.
    pub spread_x: f64,
    pub spread_y: f64,
    pub whole: Resistance,
}

#[derive(Clone, Copy, Debug)]
pub(super) struct ScaledAnchor {
    pub x: f64,
    pub y: f64,
    pub stiffness: f64,
    pub whole: Resistance,
}

/// The symmetric 3 by 3 matrix of sums of k (1, x, y) (1, x, y).
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Resistance {
    pub k: f64,
    pub kx: f64,
    pub ky: f64,
    pub kxx: f64,
    pub kxy: f64,
    pub kyy: f64,
}

/// What the supports answer to a plane: sums of N (1, x, y) less those of T, and how they stiffen.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Answer {
    pub force: [f64; 3],
    pub resistance: Resistance,
    /// Sum of N times the gap under each foot.
    pub gapped: f64,
}

impl Resistance {
    fn at(k: f64, x: f64, y: f64, spread_x: f64, spread_y: f64) -> Resistance {
        let (kx, ky) = (k * x, k * y);
        Resistance { k, kx, ky, kxx: kx * x + k * spread_x, kxy: kx * y, kyy: ky * y + k * spread_y }
    }

    #[inline(always)]
    pub(super) fn add(&mut self, other: &Resistance) {
        self.k += other.k;
        self.kx += other.kx;
        self.ky += other.ky;
        self.kxx += other.kxx;
        self.kxy += other.kxy;
        self.kyy += other.kyy;
    }
}

impl ScaledSupports {
    pub(super) fn new(feet: &[Foot], anchors: &[Anchor]) -> ScaledSupports {
        let corners = feet.iter().flat_map(|foot| foot.rectangle().corners());
        let places = corners.chain(anchors.iter().map(|anchor| anchor.at));
        let everything = (f64::INFINITY, f64::NEG_INFINITY, f64::INFINITY, f64::NEG_INFINITY);
        let (left, right, front, rear) = places.fold(everything, |(left, right, front, rear), place| {
            (left.min(place.x_mm), right.max(place.x_mm), front.min(place.y_mm), rear.max(place.y_mm))
        });
        let stiffnesses = feet.iter().map(|foot| foot.stiffness_n_per_mm);
        let stiffness_n_per_mm =
            stiffnesses.chain(anchors.iter().map(|anchor| anchor.stiffness_n_per_mm)).fold(0.0, f64::max);
        let width_mm = (right - left).max(rear - front);
        let mut scaled = ScaledSupports {
            centre: if width_mm >= 0.0 {
                Point::new((left + right) / 2.0, (front + rear) / 2.0)
            } else {
                Point::default()
            },
            length_mm: if width_mm > 0.0 { width_mm / 2.0 } else { 1.0 },
            stiffness_n_per_mm: if stiffness_n_per_mm > 0.0 { stiffness_n_per_mm } else { 1.0 },
            feet: Vec::new(),
            anchors: Vec::new(),
        };
        scaled.feet = feet.iter().map(|foot| scaled.foot(foot)).collect();
        scaled.anchors = anchors.iter().map(|anchor| scaled.anchor(anchor)).collect();
        scaled
    }

    fn foot(&self, foot: &Foot) -> ScaledFoot {
        let (x, y) = self.scaled(foot.at);
        let (half_x, half_y) = (foot.half.x_mm / self.length_mm, foot.half.y_mm / self.length_mm);
        let (spread_x, spread_y) = (half_x * half_x / 3.0, half_y * half_y / 3.0);
        let stiffness = foot.stiffness_n_per_mm / self.stiffness_n_per_mm;
        let whole = Resistance::at(stiffness, x, y, spread_x, spread_y);
        ScaledFoot { x, y, half_x, half_y, stiffness, gap_n: 0.0, spread_x, spread_y, whole }
    }

    fn anchor(&self, anchor: &Anchor) -> ScaledAnchor {
        let (x, y) = self.scaled(anchor.at);
        let stiffness = anchor.stiffness_n_per_mm / self.stiffness_n_per_mm;
        ScaledAnchor { x, y, stiffness, whole: Resistance::at(stiffness, x, y, 0.0, 0.0) }
    }

    fn scaled(&self, place: Point) -> (f64, f64) {
        ((place.x_mm - self.centre.x_mm) / self.length_mm, (place.y_mm - self.centre.y_mm) / self.length_mm)
    }

    /// The load about the centre, divided by its own size, and that size in N.
    pub(super) fn load(&self, load: &BaseLoad) -> ([f64; 3], f64) {
        let scaled = [
            load.down_n,
            (load.moment_x_nmm - load.down_n * self.centre.x_mm) / self.length_mm,
            (load.moment_y_nmm - load.down_n * self.centre.y_mm) / self.length_mm,
        ];
        let size_n = scaled[0].abs() + scaled[1].abs() + scaled[2].abs();
        if size_n > 0.0 { (scaled.map(|part| part / size_n), size_n) } else { (scaled, 1.0) }
    }

    /// The settled plane in mm, from scaled unknowns under a load of this size.
    pub(super) fn plane(&self, unknowns: &[f64; 3], size_n: f64) -> Plane {
        let unit_mm = size_n / self.stiffness_n_per_mm;
        let slope_x = unknowns[1] * unit_mm / self.length_mm;
        let slope_y = unknowns[2] * unit_mm / self.length_mm;
        let at_origin_mm = unknowns[0] * unit_mm - slope_x * self.centre.x_mm - slope_y * self.centre.y_mm;
        Plane { at_origin_mm, slope_x, slope_y }
    }

    /// The opposite of `plane`.
    pub(super) fn unknowns(&self, plane: &Plane, size_n: f64) -> [f64; 3] {
        let unit_mm = size_n / self.stiffness_n_per_mm;
        [
            plane.at_mm(self.centre) / unit_mm,
            plane.slope_x * self.length_mm / unit_mm,
            plane.slope_y * self.length_mm / unit_mm,
        ]
    }

    /// The answer of all supports to the plane w = a + b x + c y under a load of this size.
    #[inline(always)]
    pub(super) fn answer(&self, unknowns: &[f64; 3], per_size: f64) -> Answer {
        let &[a, b, c] = unknowns;
        let mut answer = Answer::default();
        for foot in &self.feet {
            let gap = foot.gap_n * per_size;
            let middle = a + b * foot.x + c * foot.y - gap;
            let rise = (b * foot.half_x).abs() + (c * foot.half_y).abs();
            if middle >= rise {
                let force = foot.stiffness * middle;
                answer.gapped += force * gap;
                answer.force[0] += force;
                answer.force[1] += force * foot.x + foot.stiffness * foot.spread_x * b;
                answer.force[2] += force * foot.y + foot.stiffness * foot.spread_y * c;
                answer.resistance.add(&foot.whole);
            } else if middle > -rise {
                let contact = partial_contact(middle, b * foot.half_x, c * foot.half_y);
                answer.gapped += foot.stiffness / 4.0 * contact.force * gap;
                // By value, so that the sums of this loop can stay in registers.
                let part = foot.answer_in_part(&contact);
                [0, 1, 2].into_iter().for_each(|i| answer.force[i] += part.force[i]);
                answer.resistance.add(&part.resistance);
            }
        }
        for anchor in &self.anchors {
            let down = a + b * anchor.x + c * anchor.y;
            if down < 0.0 {
                let force = anchor.stiffness * down;
                answer.force[0] += force;
                answer.force[1] += force * anchor.x;
                answer.force[2] += force * anchor.y;
                answer.resistance.add(&anchor.whole);
            }
        }
        answer
    }
}

impl ScaledFoot {
    /// What a partly pressed foot answers. The square -1..1 has the area 4, over which the stiffness is spread.
    fn answer_in_part(&self, contact: &Contact) -> Answer {
        let k = self.stiffness / 4.0;
        let (x, y, half_x, half_y) = (self.x, self.y, self.half_x, self.half_y);
        let (area, u, v) = (contact.area, half_x * contact.u, half_y * contact.v);
        let (uu, uv, vv) = (half_x * half_x * contact.uu, half_x * half_y * contact.uv, half_y * half_y * contact.vv);
        let resistance = Resistance {
            k: k * area,
            kx: k * (x * area + u),
            ky: k * (y * area + v),
            kxx: k * (x * x * area + 2.0 * x * u + uu),
            kxy: k * (x * y * area + x * v + y * u + uv),
            kyy: k * (y * y * area + 2.0 * y * v + vv),
        };
        let force = [
            k * contact.force,
            k * (x * contact.force + half_x * contact.force_u),
            k * (y * contact.force + half_y * contact.force_v),
        ];
        Answer { force, resistance, gapped: 0.0 }
    }
}
