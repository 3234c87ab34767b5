use alloc::vec::Vec;

use super::contact::partial_contact;
use super::newton;
use super::scaled::{Resistance, ScaledSupports};
use super::{Anchor, BaseLoad, Directions, Foot, FootReaction, Plane, Reactions};
use crate::calc::number;
use crate::geometry::{Cone, Edge, Hull, Membership, Point, Polygon, Size};

/// Feet and anchors under a rigid body, with all that depends on nothing but them worked out once.
///
/// Scope: any number of feet and anchors, none included; rigid base and floor, no slack, no preload; gaps under feet by
/// [`Supports::with_gaps_mm`].
///
/// ```
/// use steadfoot::base_reactions::{Anchor, BaseLoad, Foot, Supports};
/// use steadfoot::geometry::{Point, Size};
/// let corners = [(-500.0, -500.0), (500.0, -500.0), (500.0, 500.0), (-500.0, 500.0)].map(|(x, y)| Point::new(x, y));
/// let feet = corners.map(|at| Foot { at, half: Size::new(0.0, 0.0), stiffness_n_per_mm: 1e5 });
/// let anchors = corners.map(|at| Anchor { at, stiffness_n_per_mm: 2.5e4 });
/// let supports = Supports::new(&feet, &anchors);
/// let load = BaseLoad { down_n: 40e3, moment_x_nmm: 30e6, moment_y_nmm: 0.0 };
/// let reactions = supports.settle(&load).unwrap();
/// assert!((reactions.anchors_n[0] - 5e3).abs() < 1e-6);
/// assert!((reactions.feet[1].force_n - 25e3).abs() < 1e-6);
/// assert!(supports.without_anchors().settle(&load).is_err());
/// ```
#[derive(Clone, Debug)]
pub struct Supports {
    feet: Vec<Foot>,
    anchors: Vec<Anchor>,
    gaps_mm: Vec<f64>,
    scaled: ScaledSupports,
    feet_alone: Resistance,
    feet_hull: Hull,
    cone: Cone,
}

/// Why there are no reactions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Unbalanced {
    /// Nothing is left against turning about this edge (within 1e-9 of the load).
    OnThePoint(Edge),
    /// The body turns about this edge; without an edge where it lifts off altogether or has no support.
    Tips(Option<Edge>),
    /// The load is not finite, or rounding hides the answer: nothing can be said.
    Unresolved,
}

impl Supports {
    /// Takes the supports in; their order is the order of the reactions.
    ///
    /// # Panics
    /// Where a place, size or stiffness is not finite, a size is negative or a stiffness is not positive. The reader of
    /// the project file lets none of them through.
    pub fn new(feet: &[Foot], anchors: &[Anchor]) -> Supports {
        for foot in feet {
            assert!(is_place(foot.at) && is_stiffness(foot.stiffness_n_per_mm), "a foot has a place and a stiffness");
            assert!(is_half(foot.half.x_mm) && is_half(foot.half.y_mm), "a foot's half sizes are zero or more");
        }
        for anchor in anchors {
            assert!(
                is_place(anchor.at) && is_stiffness(anchor.stiffness_n_per_mm),
                "an anchor has place and stiffness"
            );
        }
        let corners: Vec<Point> = feet.iter().flat_map(pushing_places).collect();
        let pulling: Vec<Point> = anchors.iter().map(|anchor| anchor.at).collect();
        let feet_hull = Hull::new(&corners);
        let scaled = ScaledSupports::new(feet, anchors);
        let mut feet_alone = Resistance::default();
        scaled.feet.iter().for_each(|foot| feet_alone.add(&foot.whole));
        Supports {
            feet: feet.to_vec(),
            anchors: anchors.to_vec(),
            gaps_mm: Vec::new(),
            scaled,
            feet_alone,
            cone: Cone::new(feet_hull.corners(), &pulling),
            feet_hull,
        }
    }

    /// The same feet with nothing that pulls: the cabinet before it is bolted.
    pub fn without_anchors(&self) -> Supports {
        Supports::new(&self.feet, &[]).with_gaps_mm(&self.gaps_mm)
    }

    /// The same supports with every anchor this many times as stiff. Which loads can be carried does not change.
    pub fn with_anchor_stiffness_scaled(&self, factor: f64) -> Supports {
        let mut supports = self.clone();
        for anchor in &mut supports.anchors {
            anchor.stiffness_n_per_mm *= factor;
            assert!(is_stiffness(anchor.stiffness_n_per_mm), "an anchor keeps a stiffness");
        }
        supports.scaled = ScaledSupports::new(&supports.feet, &supports.anchors);
        supports.scale_gaps();
        supports.feet_alone = Resistance::default();
        for foot in &supports.scaled.feet {
            supports.feet_alone.add(&foot.whole);
        }
        supports
    }

    /// The same supports where each foot hangs this far above the floor before it is pressed: a short foot, or a hollow.
    ///
    /// In the order of the feet; which loads can be carried does not change.
    ///
    /// ```
    /// use steadfoot::base_reactions::{BaseLoad, Foot, Supports};
    /// use steadfoot::geometry::{Point, Size};
    /// let corners = [(-500.0, -500.0), (500.0, -500.0), (500.0, 500.0), (-500.0, 500.0)].map(|(x, y)| Point::new(x, y));
    /// let feet = corners.map(|at| Foot { at, half: Size::new(0.0, 0.0), stiffness_n_per_mm: 5e3 });
    /// let hollow = Supports::new(&feet, &[]).with_gaps_mm(&[2.0, 0.0, 0.0, 0.0]);
    /// let reactions = hollow.settle(&BaseLoad { down_n: 40e3, moment_x_nmm: 0.0, moment_y_nmm: 0.0 }).unwrap();
    /// assert!((reactions.feet[0].force_n - 7.5e3).abs() < 1e-6 && (reactions.feet[1].force_n - 12.5e3).abs() < 1e-6);
    /// ```
    ///
    /// # Panics
    /// Where a gap is not finite or negative.
    pub fn with_gaps_mm(mut self, gaps_mm: &[f64]) -> Supports {
        self.gaps_mm.clear();
        self.gaps_mm.extend(self.feet.iter().enumerate().map(|(place, _)| gaps_mm.get(place).copied().unwrap_or(0.0)));
        assert!(self.gaps_mm.iter().all(|gap| is_half(*gap)), "a gap is zero or more");
        self.scale_gaps();
        self
    }

    fn scale_gaps(&mut self) {
        for (foot, gap_mm) in self.scaled.feet.iter_mut().zip(&self.gaps_mm) {
            foot.gap_n = gap_mm * self.scaled.stiffness_n_per_mm;
        }
    }

    /// How far each foot hangs above the floor; empty where all stand on it.
    pub fn gaps_mm(&self) -> &[f64] {
        &self.gaps_mm
    }

    /// The feet, in order.
    pub fn feet(&self) -> &[Foot] {
        &self.feet
    }

    /// The anchors, in order.
    pub fn anchors(&self) -> &[Anchor] {
        &self.anchors
    }

    /// The hull of the feet's corners: what the cabinet stands within.
    pub fn feet_hull(&self) -> &Hull {
        &self.feet_hull
    }

    /// The edges about which a load could turn the body; none where every load can be carried.
    pub fn tipping_edges(&self) -> impl Iterator<Item = Edge> + '_ {
        self.cone.edges()
    }

    /// The directions to try: every 15 degrees and those of this plan's corners and sides.
    pub fn directions(&self) -> Directions {
        let anchors = self.anchors.iter().map(|anchor| anchor.at);
        let places: Vec<Point> = self.feet_hull.corners().iter().copied().chain(anchors).collect();
        Directions::new(&places)
    }

    /// Whether the supports can carry a load at all.
    ///
    /// The load must lie in the cone of what the feet's corners can push and the anchors can pull.
    pub fn holds(&self, load: &BaseLoad) -> Result<(), Unbalanced> {
        let parts = [load.down_n, load.moment_x_nmm, load.moment_y_nmm];
        if !parts.iter().all(|part| part.is_finite()) {
            return Err(Unbalanced::Unresolved);
        }
        match self.cone.membership(parts) {
            Membership::Inside => Ok(()),
            Membership::OnTheSurface(edge) => Err(Unbalanced::OnThePoint(edge)),
            Membership::Outside(edge) => Err(Unbalanced::Tips(edge)),
        }
    }

    /// The reactions to a load, or why there are none.
    pub fn settle(&self, load: &BaseLoad) -> Result<Reactions, Unbalanced> {
        let mut reactions = Reactions::default();
        self.settle_into(load, &mut reactions).map(|()| reactions)
    }

    /// The same, written over reactions that are already there, so that a sweep allocates nothing.
    ///
    /// On an error the old content means nothing.
    pub fn settle_into(&self, load: &BaseLoad, reactions: &mut Reactions) -> Result<(), Unbalanced> {
        self.holds(load)?;
        let (scaled_load, size_n) = self.scaled.load(load);
        let start = self.feet_alone.solve(&scaled_load);
        self.finish(&scaled_load, size_n, start, reactions)
    }

    /// The same, starting from a plane that is near; the last digits depend on where it starts.
    pub fn settle_from(&self, load: &BaseLoad, start: &Plane, reactions: &mut Reactions) -> Result<(), Unbalanced> {
        self.holds(load)?;
        let (scaled_load, size_n) = self.scaled.load(load);
        self.finish(&scaled_load, size_n, self.scaled.unknowns(start, size_n), reactions)
    }

    /// The pressed part of a foot under a settled plane, for drawing; empty where it is lifted or has no area.
    pub fn contact(&self, foot: usize, plane: &Plane) -> Polygon {
        let gap_mm = self.gaps_mm.get(foot).copied().unwrap_or(0.0);
        let lowered = Plane { at_origin_mm: plane.at_origin_mm - gap_mm, ..*plane };
        let polygon = self.feet[foot].rectangle().polygon().clipped(&lowered.pressed());
        if polygon.area_mm2() > 0.0 { polygon } else { Polygon::default() }
    }

    fn finish(
        &self,
        load: &[f64; 3],
        size_n: f64,
        start: [f64; 3],
        reactions: &mut Reactions,
    ) -> Result<(), Unbalanced> {
        let per_size = 1.0 / size_n;
        let scaled_load = newton::ScaledLoad { parts: *load, per_size };
        let settled = newton::settle(&self.scaled, &scaled_load, start).ok_or(Unbalanced::Unresolved)?;
        let [a, b, c] = settled.unknowns;
        reactions.plane = self.scaled.plane(&settled.unknowns, size_n);
        reactions.steps = settled.steps;
        reactions.residual = settled.residual;
        reactions.feet.clear();
        for (foot, scaled) in self.feet.iter().zip(&self.scaled.feet) {
            let middle = a + b * scaled.x + c * scaled.y - scaled.gap_n * per_size;
            let (slope_u, slope_v) = (b * scaled.half_x, c * scaled.half_y);
            let rise = slope_u.abs() + slope_v.abs();
            // A quarter of the integrals over the square -1..1 is the mean of w, and the part that is pressed.
            // Where the force acts, in half sizes from the middle of the foot, follows from the first moments.
            let (mean, contact_fraction, off_u, off_v) = if middle >= rise {
                let off = |slope: f64| if middle > 0.0 { slope / (3.0 * middle) } else { 0.0 };
                (middle, if middle > 0.0 { 1.0 } else { 0.0 }, off(slope_u), off(slope_v))
            } else if middle > -rise {
                let contact = partial_contact(middle, slope_u, slope_v);
                let off = |moment: f64| if contact.force > 0.0 { moment / contact.force } else { 0.0 };
                (contact.force / 4.0, contact.area / 4.0, off(contact.force_u), off(contact.force_v))
            } else {
                (0.0, 0.0, 0.0, 0.0)
            };
            let area_mm2 = foot.area_mm2();
            let force_n = scaled.stiffness * mean * size_n;
            let over = |force_n: f64, area_mm2: f64| if force_n > 0.0 { force_n / area_mm2 } else { 0.0 };
            reactions.feet.push(FootReaction {
                force_n,
                contact_fraction,
                bearing_half: Size::new(foot.half.x_mm * (1.0 - off_u.abs()), foot.half.y_mm * (1.0 - off_v.abs())),
                peak_pressure_mpa: over(scaled.stiffness * number::positive_part(middle + rise) * size_n, area_mm2),
                mean_pressure_mpa: over(force_n, area_mm2 * contact_fraction),
            });
        }
        reactions.anchors_n.clear();
        reactions.anchors_n.extend(self.scaled.anchors.iter().map(|anchor| {
            let down = a + b * anchor.x + c * anchor.y;
            if down < 0.0 { -down * anchor.stiffness * size_n } else { 0.0 }
        }));
        Ok(())
    }
}

/// Where a foot can push alone: its corners, or its one place where it has no size.
fn pushing_places(foot: &Foot) -> impl Iterator<Item = Point> + use<> {
    let count = if foot.half.x_mm == 0.0 && foot.half.y_mm == 0.0 { 1 } else { 4 };
    foot.rectangle().corners().into_iter().take(count)
}

fn is_place(place: Point) -> bool {
    place.x_mm.is_finite() && place.y_mm.is_finite()
}

fn is_stiffness(stiffness_n_per_mm: f64) -> bool {
    stiffness_n_per_mm > 0.0 && stiffness_n_per_mm.is_finite()
}

fn is_half(half_mm: f64) -> bool {
    half_mm >= 0.0 && half_mm.is_finite()
}
