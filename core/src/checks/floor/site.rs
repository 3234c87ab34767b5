//! A cabinet on its floor, as far as no load changes it.

use alloc::vec::Vec;

use super::free_edge::FreeEdge;
use super::steps;
use crate::cabinet::Cabinet;
use crate::calc::{Sheet, StepId, limit, number};
use crate::floor::{self, Floor, FloorKind, Reinforcement};
use crate::geometry::{Point, Size};
use crate::rules::floor::load_factor::Frame;
use crate::rules::floor::slab_on_ground::{LoadedSlab, Position, SlabOnGround, modulus_mpa};
use crate::rules::floor::subgrade;
use crate::slab::Slab;

/// How many times as long as wide a rail is at least.
const RAIL_LENGTH: f64 = 3.0;

/// One leg on the slab.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leg {
    /// Its middle.
    pub at: Point,
    /// Half sizes of its contact.
    pub half: Size,
    /// From its sides to the edges of the slab or to openings: left, right, front, rear; infinite where far.
    pub to_edges_mm: [f64; 4],
    /// How much farther than its sides the concrete goes for it on the nearer side, along x and y.
    pub beyond: Size,
    /// Diameter of its stem.
    pub stem_mm: Option<f64>,
}

/// A cabinet on its floor.
#[derive(Clone, Debug)]
pub struct FloorSite<'a> {
    /// The floor.
    pub floor: &'a Floor,
    /// The slab.
    pub slab: &'a Slab,
    /// The legs, in the order of the feet.
    pub legs: Vec<Leg>,
    /// Width and depth of the cabinet.
    pub footprint_mm: [f64; 2],
    /// The one free edge beside the legs, where there is one and no other.
    pub(super) free_edge: Option<FreeEdge>,
}

impl<'a> FloorSite<'a> {
    /// Lays out a cabinet on its floor; `beyond` is the room beside each foot as bearing counts it.
    pub fn new(cabinet: &Cabinet, slab: &'a Slab, floor: &'a Floor, beyond: &[Size]) -> FloorSite<'a> {
        let legs = cabinet.feet.iter().zip(beyond).map(|(foot, &beyond)| {
            let half = Size::new(foot.size.x_mm / 2.0, foot.size.y_mm / 2.0);
            Leg {
                at: foot.at,
                half,
                to_edges_mm: slab.room_mm(&foot.rectangle()),
                beyond,
                stem_mm: foot.stem.map(|stem| stem.diameter_mm),
            }
        });
        let footprint_mm = [cabinet.width_mm, cabinet.depth_mm];
        let mut site = FloorSite { floor, slab, legs: legs.collect(), footprint_mm, free_edge: None };
        site.free_edge = FreeEdge::of(&site);
        site
    }

    /// The frame of load factors for what is no slab of TR34: one that hangs on supports, or that nothing reinforces.
    pub(super) fn structure_frame(&self) -> Frame {
        match self.floor.frame() {
            Frame::Tr34 if !self.is_on_ground() || self.floor.reinforcement() == Reinforcement::Plain => Frame::En1990,
            frame => frame,
        }
    }

    /// Whether the slab lies on the ground.
    pub fn is_on_ground(&self) -> bool {
        self.floor.kind() == FloorKind::OnGround
    }

    /// The slab on its ground, told: modulus and subgrade where they follow from something else.
    ///
    /// Errors: nothing says what the ground is like; a correlation is left.
    pub fn ground(&self, sheet: &mut Sheet) -> Result<SlabOnGround, StepId> {
        let values = &self.floor.values;
        let subgrade_n_per_mm3 = match (values.number(floor::SUBGRADE), values.number(floor::BEARING_RATIO)) {
            (Some(given), _) => given,
            (None, Some(percent)) => subgrade::by_bearing_ratio(percent, sheet)?,
            (None, None) => match values.choice(floor::SOIL) {
                Some(class) => subgrade::by_soil(class, sheet),
                None => return Err(steps::NO_SUBGRADE),
            },
        };
        let modulus = match values.number(floor::MODULUS) {
            Some(given) => given,
            None => modulus_mpa(self.slab.strength_mpa, sheet),
        };
        Ok(SlabOnGround {
            modulus_mpa: modulus,
            poisson: values.given(floor::POISSON),
            thickness_mm: self.slab.thickness_mm,
            subgrade_n_per_mm3,
        })
    }

    /// Where a leg stands, once the radius of relative stiffness is known: nearer than contact and radius together to an
    /// edge, it counts as standing on it (TR34 interpolates between; this is on the safe side, and told).
    pub fn position(&self, leg: usize, loaded: &LoadedSlab) -> Position {
        self.position_within(leg, loaded.radius_mm + loaded.contact_mm)
    }

    /// Where a leg or a rail stands, if edges nearer to its middle than this count; of a rail, to its middle line or its
    /// ends.
    pub(super) fn position_within(&self, leg: usize, near: f64) -> Position {
        let [left, right, front, rear] = self.legs[leg].to_edges_mm;
        // To the middle of a leg; the long half of a rail is left out.
        let Size { x_mm, y_mm } = self.legs[leg].half;
        let (half_x, half_y) = match self.rail(leg) {
            None => (x_mm, y_mm),
            Some(true) => (0.0, y_mm),
            Some(false) => (x_mm, 0.0),
        };
        let along_x = f64::min(left, right) + half_x < near;
        let along_y = f64::min(front, rear) + half_y < near;
        match (along_x, along_y) {
            (true, true) => Position::Corner,
            (false, false) => Position::Interior,
            _ => Position::Edge,
        }
    }

    /// From the middle of a leg to the nearest edge or opening.
    pub(super) fn nearest_edge_mm(&self, leg: usize) -> f64 {
        let Leg { half, to_edges_mm: [left, right, front, rear], .. } = &self.legs[leg];
        f64::min(f64::min(*left, *right) + half.x_mm, f64::min(*front, *rear) + half.y_mm)
    }

    /// From the middle of a leg to the edges of the slab, whatever openings there are: left, right, front, rear.
    pub(super) fn inwards_mm(&self, leg: usize) -> [f64; 4] {
        let (Point { x_mm, y_mm }, outline) = (self.legs[leg].at, &self.slab.outline);
        [x_mm - outline.left_mm, outline.right_mm - x_mm, y_mm - outline.front_mm, outline.rear_mm - y_mm]
    }

    /// Whether a foot counts as a rail, and if so whether it lies along x: where the feet are said to be rails, one that
    /// is at least three times as long as wide.
    pub(super) fn rail(&self, leg: usize) -> Option<bool> {
        if self.floor.values.choice(floor::STANDS_ON) != Some(1) {
            return None;
        }
        let Size { x_mm, y_mm } = self.legs[leg].half;
        let is_long = limit::at_least(f64::max(x_mm, y_mm), RAIL_LENGTH * f64::min(x_mm, y_mm));
        (is_long && self.legs[leg].half.area_mm2() > 0.0).then_some(x_mm > y_mm)
    }

    /// The stiffness of the slab on the ground under every leg, where it can be found; `sheet` takes that of one leg.
    pub fn stiffness_n_per_mm(&self, leg: usize, sheet: &mut Sheet) -> Option<f64> {
        if !self.is_on_ground() || self.legs[leg].half.area_mm2() <= 0.0 {
            return None;
        }
        let ground = self.ground(sheet).ok()?;
        let loaded = ground.loaded(4.0 * self.legs[leg].half.area_mm2(), sheet).ok()?;
        Some(loaded.stiffness_n_per_mm(self.position(leg, &loaded), sheet))
    }

    /// The legs nearer to a leg than a distance, without itself.
    pub fn within(&self, leg: usize, distance_mm: f64) -> impl Iterator<Item = (usize, [f64; 2])> + '_ {
        let at = self.legs[leg].at;
        self.legs.iter().enumerate().filter_map(move |(place, other)| {
            let away = [other.at.x_mm - at.x_mm, other.at.y_mm - at.y_mm];
            let is_near = number::hypot(away[0], away[1]) < distance_mm;
            (place != leg && is_near).then_some((place, away))
        })
    }
}
