//! One anchor in the units of its edition.

use super::chosen;
use super::facts::Facts;
use super::fields as f;
use super::kind::AnchorKind;
use super::steel;
use crate::calc::{Kind, Sheet};
use crate::geometry::Point;
use crate::rules::anchor::AnchorPlace;
use crate::rules::bolts::{Bolt, Head, SIZES, Shank, Toughness};

/// One anchor. Lengths are in units of the edition unless the name says millimetres.
pub struct Anchor {
    /// Where it stands, in mm.
    pub at: Point,
    /// Where it stands.
    pub x: f64,
    /// Where it stands.
    pub y: f64,
    /// The cabinet that it holds: 0 for our own, then the neighbours.
    pub owner: usize,
    /// The bolt.
    pub bolt: Bolt,
    /// Place of its steel's word.
    pub steel: usize,
    /// Diameter.
    pub d_a: f64,
    /// Effective cross section.
    pub a_se: f64,
    /// Bearing area of the head; zero while unknown, which `uncovered` says, and for anchors without a head.
    pub a_brg: f64,
    /// Length of the hook, if it has one.
    pub hook: Option<f64>,
    /// Embedment.
    pub h_ef: f64,
    /// Embedment in mm.
    pub h_ef_mm: f64,
    /// Half the width of what an adhesive anchor pulls out; zero for others.
    pub c_na_mm: f64,
    /// Place of the word for its hole in the base.
    pub hole: usize,
    /// Specified yield strength, if there is one.
    pub f_ya: Option<f64>,
    /// Specified tensile strength.
    pub f_u: f64,
    /// Whether its steel counts as ductile.
    pub toughness: Toughness,
    /// Pullout strength of the report in the state of the concrete, if there is one.
    pub pullout_report: Option<f64>,
    /// Steel strength in shear of the report, if it is needed or given.
    pub shear_report: Option<f64>,
    /// Distances to the nearest edge on the left, on the right, in front and at the rear that meets its body, in mm.
    pub edges_mm: [f64; 4],
    /// Distance to the nearest point of any edge, in mm.
    pub nearest_mm: f64,
    /// That point, in mm; the anchor's own place where no edge is near.
    pub nearest: Point,
    /// Design strength of the steel in tension.
    pub steel_tension: f64,
    /// Design strength of the steel in shear.
    pub steel_shear: f64,
    /// Design strength against pullout.
    pub pullout: f64,
}

impl Anchor {
    /// An anchor of a cabinet, ours being 0.
    pub fn new(facts: &Facts, place: &AnchorPlace, owner: usize) -> Anchor {
        let (values, system) = (&place.values, facts.edition.system);
        // A missing measure is a fault of the input; the anchor then has no strength, and never a made-up one.
        let missing = Bolt { shank: Shank::Listed(&SIZES[0]), head: Head::Given { bearing_area_mm2: f64::NAN } };
        let bolt = chosen::bolt(values).unwrap_or(missing);
        let strengths = steel::specified(values);
        let to = |value, kind| system.from_si(value, kind);
        let quiet = &mut Sheet::quiet();
        let at = place.at;
        let h_ef_mm = values.given(f::EMBEDMENT);
        let has_head = facts.kind == AnchorKind::Headed;
        let pullout = if facts.seismic {
            f::N_P_EQ
        } else if facts.is_cracked || values.number(f::N_P_UNCR).is_none() {
            // What holds in cracked concrete holds in sound concrete too.
            f::N_P_CR
        } else {
            f::N_P_UNCR
        };
        let shear = if facts.seismic { f::V_SA_EQ } else { f::V_SA_REPORT };
        let reported = |field: usize| {
            let number = values.number(field).filter(|_| facts.kind.is_drilled());
            number.map(|force| to(force, Kind::Force))
        };
        let d_a = bolt.diameter(system);
        let mut anchor = Anchor {
            at,
            x: to(at.x_mm, Kind::Length),
            y: to(at.y_mm, Kind::Length),
            owner,
            bolt,
            steel: values.choice(f::STEEL).unwrap_or(0),
            d_a,
            a_se: bolt.stress_area(system, quiet),
            a_brg: if has_head { bolt.bearing_area(system, quiet).unwrap_or(0.0) } else { 0.0 },
            hook: values.number(f::HOOK).map(|hook| to(hook, Kind::Length)),
            h_ef: to(h_ef_mm, Kind::Length),
            h_ef_mm,
            c_na_mm: match facts.kind {
                AnchorKind::Adhesive => super::bond::width_mm(facts, d_a, super::bond::Width::Plain),
                _ => 0.0,
            },
            hole: values.choice(f::HOLES).unwrap_or(0),
            f_ya: strengths.yield_mpa.map(|strength| to(strength, Kind::Stress)),
            f_u: to(strengths.tensile_mpa, Kind::Stress),
            toughness: strengths.toughness,
            pullout_report: reported(pullout),
            shear_report: reported(shear),
            edges_mm: [f64::INFINITY; 4],
            nearest_mm: f64::INFINITY,
            nearest: at,
            steel_tension: 0.0,
            steel_shear: 0.0,
            pullout: 0.0,
        };
        anchor.look_around(facts);
        anchor
    }

    /// Half the width of the widest body that it breaks or pulls out.
    pub fn reach_mm(&self) -> f64 {
        (1.5 * self.h_ef_mm).max(self.c_na_mm)
    }

    fn look_around(&mut self, facts: &Facts) {
        let (at, reach_mm) = (self.at, self.reach_mm());
        for line in &facts.lines {
            let distance_mm = line.distance_mm(self);
            if line.opening.is_none() || (distance_mm > 0.0 && line.meets(self.along_mm(line.side), reach_mm)) {
                let known_mm = &mut self.edges_mm[line.side];
                *known_mm = if distance_mm.is_nan() { distance_mm } else { known_mm.min(distance_mm) };
            }
            // Beyond the side of a slab the distance is negative, which a distance between points would hide.
            let nearest = line.nearest(at);
            let away_mm = if line.opening.is_none() { distance_mm } else { at.distance_mm(nearest) };
            if away_mm < self.nearest_mm || away_mm.is_nan() {
                (self.nearest_mm, self.nearest) = (away_mm, nearest);
            }
        }
    }

    /// Where the anchor stands along an edge on this side, in mm.
    pub fn along_mm(&self, side: usize) -> f64 {
        if side < 2 { self.at.y_mm } else { self.at.x_mm }
    }

    /// The same in units of the edition.
    pub fn along(&self, side: usize) -> f64 {
        if side < 2 { self.y } else { self.x }
    }
}
