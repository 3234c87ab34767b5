//! The anchorage in the units of its edition: what no load changes.

use alloc::vec::Vec;

use super::chosen;
use super::coverage;
use super::edition::Edition;
use super::fields as f;
use super::steel;
use crate::calc::{Detail, Kind, Outcome, Sheet, StepId};
use crate::geometry::{Point, Rectangle};
use crate::rules::anchor::{AnchorPlace, AnchorSite, Cracking};
use crate::rules::bolts::{Bolt, Head, SIZES, Shank, Toughness};

/// The anchorage. Lengths are in units of the edition unless the name says millimetres.
pub struct Facts {
    /// The edition.
    pub edition: &'static Edition,
    /// The anchors in the order of the file.
    pub anchors: Vec<Anchor>,
    /// The slab in plan.
    pub outline: Rectangle,
    /// Thickness of the slab.
    pub h_a: f64,
    /// Thickness of the slab in mm.
    pub thickness_mm: f64,
    /// Specified strength of the slab.
    pub f_c_slab: f64,
    /// Strength that the equations take.
    pub f_c: f64,
    /// Lightweight factor.
    pub lambda: f64,
    /// Whether the slab may crack.
    pub cracking: Cracking,
    /// Whether 17.10 applies.
    pub seismic: bool,
    /// Whether the equation for deep anchors is chosen.
    pub deep: bool,
    /// Supplementary reinforcement for tension.
    pub supplementary_tension: bool,
    /// Supplementary reinforcement for shear.
    pub supplementary_shear: bool,
    /// Place of the word for the bars along the edge.
    pub edge_bars: usize,
    /// Place of the word for what the base stands on.
    pub seat: usize,
    /// Thickness of the plate that studs are welded to.
    pub plate: Option<f64>,
    /// Whether anchors are torqued.
    pub tightened: bool,
    /// Cover at the edge.
    pub cover: f64,
    /// Whether the curved interaction is chosen.
    pub five_thirds: bool,
    /// The smallest spacing between two anchors; infinite for one alone.
    pub closest_mm: f64,
    /// Whether something is asked for that is not checked yet.
    pub is_not_yet: bool,
    /// Why the rule does not reach this anchorage, if it does not.
    pub uncovered: Option<StepId>,
}

/// One anchor.
pub struct Anchor {
    /// Where it stands, in mm.
    pub at: Point,
    /// Where it stands.
    pub x: f64,
    /// Where it stands.
    pub y: f64,
    /// The bolt.
    pub bolt: Bolt,
    /// Place of its steel's word.
    pub steel: usize,
    /// Diameter.
    pub d_a: f64,
    /// Effective cross section.
    pub a_se: f64,
    /// Bearing area of the head; zero while unknown, which `uncovered` says.
    pub a_brg: f64,
    /// Embedment.
    pub h_ef: f64,
    /// Embedment in mm.
    pub h_ef_mm: f64,
    /// Specified yield strength, if there is one.
    pub f_ya: Option<f64>,
    /// Specified tensile strength.
    pub f_u: f64,
    /// Whether its steel counts as ductile.
    pub toughness: Toughness,
    /// Distances to the left, right, front and rear edge, in mm.
    pub edges_mm: [f64; 4],
    /// Design strength of the steel in tension.
    pub steel_tension: f64,
    /// Design strength of the steel in shear.
    pub steel_shear: f64,
    /// Design strength against pullout.
    pub pullout: f64,
}

impl Facts {
    /// The facts of a site.
    pub fn new(edition: &'static Edition, site: &AnchorSite) -> Facts {
        let values = site.values;
        let to = |value, kind| edition.system.from_si(value, kind);
        let f_c_slab = to(site.slab.strength_mpa, Kind::Stress);
        let mut facts = Facts {
            edition,
            anchors: Vec::new(),
            outline: site.slab.outline,
            h_a: to(site.slab.thickness_mm, Kind::Length),
            thickness_mm: site.slab.thickness_mm,
            f_c_slab,
            f_c: f64::min(f_c_slab, edition.strength_max.value()),
            lambda: values.given(f::LAMBDA),
            cracking: site.slab.cracking,
            seismic: values.choice(f::SEISMIC_CATEGORY) == Some(chosen::CATEGORY_C_TO_F),
            deep: values.choice(f::BREAKOUT_FORM) == Some(chosen::FORM_DEEP),
            supplementary_tension: values.choice(f::SUPPLEMENTARY_TENSION) == Some(chosen::PRESENT),
            supplementary_shear: values.choice(f::SUPPLEMENTARY_SHEAR) == Some(chosen::PRESENT),
            edge_bars: values.choice(f::EDGE_BARS).unwrap_or(0),
            seat: values.choice(f::SEAT).unwrap_or(0),
            plate: values.number(f::PLATE).map(|plate| to(plate, Kind::Length)),
            tightened: values.flag(f::TIGHTENED),
            cover: to(values.given(f::COVER), Kind::Length),
            five_thirds: values.choice(f::INTERACTION) == Some(chosen::FIVE_THIRDS),
            closest_mm: f64::INFINITY,
            is_not_yet: [f::ANCHOR_KIND, f::HOLES, f::TENSION_OPTION, f::SHEAR_OPTION]
                .iter()
                .any(|&field| values.choice(field).unwrap_or(0) != 0)
                || [f::TENSION_BARS, f::SHEAR_BARS].iter().any(|&field| values.number(field).is_some())
                || site.own != site.anchors.len()
                || !site.slab.openings.is_empty()
                || site.slab.boundary != Rectangle::EVERYWHERE,
            uncovered: None,
        };
        facts.anchors = site.anchors.iter().map(|place| Anchor::new(&facts, place)).collect();
        facts.closest_mm = closest_mm(&facts.anchors);
        facts.uncovered = coverage::uncovered(&facts);
        for place in 0..facts.anchors.len() {
            let quiet = &mut Sheet::quiet();
            let anchor = &facts.anchors[place];
            let strengths = (
                steel::tension(&facts, anchor, quiet),
                steel::shear(&facts, anchor, quiet),
                super::pullout::strength(&facts, anchor, quiet),
            );
            let anchor = &mut facts.anchors[place];
            (anchor.steel_tension, anchor.steel_shear, anchor.pullout) = strengths;
        }
        facts
    }

    /// The smallest spacing between two anchors, in units of the edition.
    pub fn closest(&self) -> f64 {
        self.length(self.closest_mm)
    }

    /// A length in mm, in units of the edition.
    pub fn length(&self, length_mm: f64) -> f64 {
        self.edition.system.from_si(length_mm, Kind::Length)
    }

    /// An area in mm2, in units of the edition.
    pub fn area(&self, area_mm2: f64) -> f64 {
        self.edition.system.from_si(area_mm2, Kind::Area)
    }

    /// A line between two points in mm, as the detail of a length.
    pub fn line(&self, ends: [Point; 2]) -> Detail {
        Detail::Shape(ends.iter().map(|end| [self.length(end.x_mm), self.length(end.y_mm)]).collect())
    }

    /// The line from an anchor to an edge (0 left, 1 right, 2 front, 3 rear).
    pub fn line_to_edge(&self, place: usize, side: usize) -> Detail {
        let at = self.anchors[place].at;
        let outline = &self.outline;
        let to = match side {
            0 => Point::new(outline.left_mm, at.y_mm),
            1 => Point::new(outline.right_mm, at.y_mm),
            2 => Point::new(at.x_mm, outline.front_mm),
            _ => Point::new(at.x_mm, outline.rear_mm),
        };
        self.line([at, to])
    }

    /// The line to an edge from the anchor of a group that is nearest to it, among some sides.
    pub fn shortest_line_to_edge(&self, members: &[usize], sides: &[usize]) -> Detail {
        let mut best = (members[0], sides[0]);
        for &place in members {
            for &side in sides {
                if self.anchors[place].edges_mm[side] < self.anchors[best.0].edges_mm[best.1] {
                    best = (place, side);
                }
            }
        }
        self.line_to_edge(best.0, best.1)
    }

    /// A force demand against a strength, both in units of the edition.
    pub fn compared(&self, demand: f64, strength: f64) -> Outcome {
        let to_si = |force| self.edition.system.to_si(force, Kind::Force);
        Outcome::Compared { value: to_si(demand), limit: to_si(strength), utilisation: demand / strength }
    }
}

fn closest_mm(anchors: &[Anchor]) -> f64 {
    let mut least = f64::INFINITY;
    for (place, anchor) in anchors.iter().enumerate() {
        for other in &anchors[place + 1..] {
            least = least.min(anchor.at.distance_mm(other.at));
        }
    }
    least
}

/// All four edges.
pub const ALL_SIDES: [usize; 4] = [0, 1, 2, 3];

/// The two edges at right angles to one.
pub fn sides_across(side: usize) -> [usize; 2] {
    if side < 2 { [2, 3] } else { [0, 1] }
}

impl Anchor {
    fn new(facts: &Facts, place: &AnchorPlace) -> Anchor {
        let (values, system) = (&place.values, facts.edition.system);
        // A missing measure is a fault of the input; the anchor then has no strength, and never a made-up one.
        let missing = Bolt { shank: Shank::Listed(&SIZES[0]), head: Head::Given { bearing_area_mm2: f64::NAN } };
        let bolt = chosen::bolt(values).unwrap_or(missing);
        let strengths = steel::specified(values);
        let to = |value, kind| system.from_si(value, kind);
        let quiet = &mut Sheet::quiet();
        let (at, outline) = (place.at, &facts.outline);
        let h_ef_mm = values.given(f::EMBEDMENT);
        Anchor {
            at,
            x: to(at.x_mm, Kind::Length),
            y: to(at.y_mm, Kind::Length),
            bolt,
            steel: values.choice(f::STEEL).unwrap_or(0),
            d_a: bolt.diameter(system),
            a_se: bolt.stress_area(system, quiet),
            a_brg: bolt.bearing_area(system, quiet).unwrap_or(0.0),
            h_ef: to(h_ef_mm, Kind::Length),
            h_ef_mm,
            f_ya: strengths.yield_mpa.map(|strength| to(strength, Kind::Stress)),
            f_u: to(strengths.tensile_mpa, Kind::Stress),
            toughness: strengths.toughness,
            edges_mm: [
                at.x_mm - outline.left_mm,
                outline.right_mm - at.x_mm,
                at.y_mm - outline.front_mm,
                outline.rear_mm - at.y_mm,
            ],
            steel_tension: 0.0,
            steel_shear: 0.0,
            pullout: 0.0,
        }
    }

    /// The distance to the nearest edge.
    pub fn nearest_edge_mm(&self) -> f64 {
        self.edges_mm.iter().fold(f64::INFINITY, |least, &edge| least.min(edge))
    }

    /// Where the anchor stands along an edge (0 left, 1 right, 2 front, 3 rear), in mm.
    pub fn along_mm(&self, side: usize) -> f64 {
        if side < 2 { self.at.y_mm } else { self.at.x_mm }
    }

    /// The same in units of the edition.
    pub fn along(&self, side: usize) -> f64 {
        if side < 2 { self.y } else { self.x }
    }
}
