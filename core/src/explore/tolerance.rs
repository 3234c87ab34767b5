//! Earned tolerance: how far a hole may be drilled beside its mark before a required check passes 1.
//!
//! Each bolt is moved alone, in the direction that is worst for it, and then all are moved at once, each in one of eight
//! directions. The anchor is moved in the concrete and under the cabinet alike, as if its bracket followed it. A radius is told
//! as an interval: at its low end every direction tried holds, at its high end one does not.

use alloc::vec::Vec;
use core::f64::consts::{FRAC_1_SQRT_2, TAU};

use super::trial::Trials;
use crate::calc::{CheckId, number, order::put_in_order};
use crate::geometry::Point;
use crate::project::{Project, as_planned};
use crate::report::outcome::Verdict;

/// Nobody drills farther off than this and calls it tolerance.
pub const MOST_MM: f64 = 100.0;
/// Radii are tried in steps of this; a bracket is one step wide.
pub const STEP_MM: f64 = 1.0;
/// The most, in steps.
const MOST: u32 = (MOST_MM / STEP_MM) as u32;
/// Even directions tried for each bolt, beside those to and from its neighbours.
const EVEN: usize = 16;
/// Of the moves at one radius, this many, the worst at the places already known, are swept as a whole: every direction of
/// a single bolt, since it may be another place that fails when it comes to an edge.
const SWEPT: usize = 32;
/// Up to this many bolts every combination of corners, and of sides, is tried together; with more, the worst is climbed for.
const ALL_COMBINED_MAX: usize = 4;
/// Two anchors nearer than this stand on one place.
const APART_MM: f64 = 1.0;

/// How far off holds.
#[derive(Clone, PartialEq, Debug)]
pub struct Circle {
    /// Every direction tried holds at this radius.
    pub holds_mm: f64,
    /// One does not at this radius; none where all hold as far as is tried.
    pub fails_mm: Option<f64>,
    /// The direction in which it fails first; of the first bolt where all are moved.
    pub towards_rad: f64,
    /// What fails there; none where the hole would leave the slab or meet another, or where something is not covered.
    pub governs: Option<CheckId>,
}

/// The search on its way: one bolt after the other, then all together.
pub struct Tolerance {
    project: Project,
    trials: Trials,
    /// Circles found so far, in the order of the anchors.
    pub circles: Vec<Circle>,
    /// With all bolts moved at once.
    pub together: Option<Circle>,
}

/// Where a move fails first.
struct Failure {
    step: u32,
    towards_rad: f64,
    governs: Option<CheckId>,
}

fn mm(step: u32) -> f64 {
    f64::from(step) * STEP_MM
}

/// A move of all bolts by one unit each.
type Moves = Vec<Point>;

impl Tolerance {
    /// Prepares the search; none for a project that does not hold as it is drawn, or has no anchors: it has nothing to spare.
    pub fn new(project: &Project) -> Option<Tolerance> {
        let (project, mut trials) = (as_planned(project), Trials::new());
        let holds = !project.cabinet.anchors.is_empty() && trials.learn(&project).verdict == Verdict::Holds;
        holds.then(|| Tolerance { project, trials, circles: Vec::new(), together: None })
    }

    /// Searches the next circle; true while some are left.
    #[allow(clippy::should_implement_trait, reason = "it says whether there is more, as every search here does")]
    pub fn next(&mut self) -> bool {
        let count = self.project.cabinet.anchors.len();
        if self.circles.len() < count {
            let anchor = self.circles.len();
            let moves: Vec<Moves> =
                self.directions_rad(anchor).into_iter().map(|rad| alone(count, anchor, rad)).collect();
            let circle = self.circle(MOST, |_, _| moves.clone());
            self.circles.push(circle);
        } else if self.together.is_none() {
            let least_mm = self.circles.iter().fold(MOST_MM, |least, circle| least.min(circle.holds_mm));
            self.together = Some(self.circle((least_mm / STEP_MM) as u32, Tolerance::combinations));
        }
        self.together.is_none()
    }

    /// All at once.
    pub fn finish(&mut self) {
        while self.next() {}
    }

    /// The largest radius, in whole steps up to `most`, at which none of the moves fails.
    fn circle(&mut self, most: u32, moves_at: impl Fn(&mut Tolerance, f64) -> Vec<Moves>) -> Circle {
        let mut circle = Circle { holds_mm: 0.0, fails_mm: None, towards_rad: 0.0, governs: None };
        let (mut holds, mut fails) = (0, most + 1);
        let mut tried = most;
        while tried > holds {
            let moves = moves_at(self, mm(tried));
            match self.failure(&moves, tried) {
                None => holds = tried,
                Some(failure) => {
                    fails = failure.step;
                    (circle.towards_rad, circle.governs) = (failure.towards_rad, failure.governs);
                    // A failure within what held before: nothing beyond the planned place is believed any more.
                    holds = if failure.step <= holds { 0 } else { holds };
                }
            }
            // What is known already stops most radii without a sweep, so the bracket is first narrowed by that alone.
            let mut low = holds;
            while fails - low > 1 {
                let middle = low + (fails - low) / 2;
                match self.known_failure(&moves, middle) {
                    Some(failure) => {
                        fails = middle;
                        (circle.towards_rad, circle.governs) = (failure.towards_rad, failure.governs);
                    }
                    None => low = middle,
                }
            }
            tried = low;
        }
        circle.holds_mm = mm(holds);
        circle.fails_mm = (fails <= most).then_some(mm(fails));
        if circle.fails_mm.is_some() {
            let moves = moves_at(self, mm(fails));
            if let Some(worst) = self.worst(&moves, fails) {
                (circle.towards_rad, circle.governs) = (worst.towards_rad, worst.governs);
            }
        }
        circle
    }

    /// Where and why one of the moves fails at a radius or at a part of it; found with whole sweeps of the worst.
    fn failure(&mut self, moves: &[Moves], step: u32) -> Option<Failure> {
        for quarter in 1..4 {
            if let Some(failure) = self.known_failure(moves, step * quarter / 4) {
                return Some(failure);
            }
        }
        let radius_mm = mm(step);
        let mut ranked: Vec<(f64, usize)> = Vec::new();
        for (place, one) in moves.iter().enumerate() {
            let level =
                self.moved(one, radius_mm).map_or(f64::INFINITY, |moved| self.trials.glance(&moved).utilisation);
            ranked.push((level, place));
        }
        put_in_order(&mut ranked, |a, b| b.0.total_cmp(&a.0));
        ranked.iter().take(SWEPT).find_map(|&(_, place)| {
            let towards_rad = towards_rad(&moves[place]);
            let Some(moved) = self.moved(&moves[place], radius_mm) else {
                return Some(Failure { step, towards_rad, governs: None });
            };
            let trial = self.trials.attempt(&moved);
            let fails = trial.verdict != Verdict::Holds;
            fails.then_some(Failure { step, towards_rad, governs: trial.governs })
        })
    }

    /// Of the moves that plainly fail at a radius, the one that fails most.
    fn worst(&mut self, moves: &[Moves], step: u32) -> Option<Failure> {
        let mut worst: Option<(f64, Failure)> = None;
        for one in moves {
            let Some(moved) = self.moved(one, mm(step)) else { continue };
            let level = self.trials.glance(&moved).utilisation;
            let is_worse = worst.as_ref().is_none_or(|(known, _)| level > *known);
            if is_worse && let Some(trial) = self.trials.stopped_early(&moved) {
                worst = Some((level, Failure { step, towards_rad: towards_rad(one), governs: trial.governs }));
            }
        }
        worst.map(|(_, failure)| failure)
    }

    /// The first move that plainly fails at a place already known.
    fn known_failure(&mut self, moves: &[Moves], step: u32) -> Option<Failure> {
        moves.iter().find_map(|one| {
            let towards_rad = towards_rad(one);
            let Some(moved) = self.moved(one, mm(step)) else {
                return Some(Failure { step, towards_rad, governs: None });
            };
            self.trials.stopped_early(&moved).map(|trial| Failure { step, towards_rad, governs: trial.governs })
        })
    }

    /// The project with its bolts moved; none where one leaves the slab or meets another.
    fn moved(&self, moves: &Moves, radius_mm: f64) -> Option<Project> {
        let mut moved = self.project.clone();
        for (anchor, by) in moved.cabinet.anchors.iter_mut().zip(moves) {
            anchor.at = Point::new(anchor.at.x_mm + radius_mm * by.x_mm, anchor.at.y_mm + radius_mm * by.y_mm);
        }
        let anchors = &moved.cabinet.anchors;
        let is_free = |place: usize| {
            let at = anchors[place].at;
            anchors[..place].iter().all(|other| other.at.distance_mm(at) >= APART_MM)
        };
        let is_inside = |at: Point| moved.slab.as_ref().is_none_or(|slab| slab.is_under(at));
        let is_sound = (0..anchors.len()).all(|place| is_free(place) && is_inside(anchors[place].at));
        is_sound.then_some(moved)
    }

    /// Even directions, and those to and from the nearest other bolts, those of neighbours among them, and the middle of the
    /// base.
    fn directions_rad(&self, anchor: usize) -> Vec<f64> {
        let anchors = &self.project.cabinet.anchors;
        let at = anchors[anchor].at;
        let mut directions: Vec<f64> = (0..EVEN).map(|step| TAU * step as f64 / EVEN as f64).collect();
        // A neighbour's bolts are moved as this cabinet's own: they come nearer from its side as from ours.
        let beside = self.project.neighbours.iter().flat_map(|one| [one.at, Point::new(-one.at.x_mm, -one.at.y_mm)]);
        let bases = core::iter::once(Point::default()).chain(beside);
        let others = bases.flat_map(|by| {
            anchors.iter().map(move |other| Point::new(other.at.x_mm + by.x_mm, other.at.y_mm + by.y_mm))
        });
        let mut near: Vec<Point> =
            others.chain([Point::default()]).filter(|other| other.distance_mm(at) > APART_MM).collect();
        put_in_order(&mut near, |a, b| a.distance_mm(at).total_cmp(&b.distance_mm(at)));
        for other in near.into_iter().take(4) {
            directions.extend([at.direction_rad(other), other.direction_rad(at)]);
        }
        directions
    }

    /// Combinations of moves of all bolts, those that are worst at the places already known: corners of squares, and
    /// straight along the sides, which is how two bolts of a row come nearest to one another.
    fn combinations(&mut self, radius_mm: f64) -> Vec<Moves> {
        let count = self.project.cabinet.anchors.len();
        if count <= ALL_COMBINED_MAX {
            let of = |ways: &'static [Point; 4]| {
                (0..4_usize.pow(count as u32)).map(move |number| combination(ways, number, count))
            };
            let mut all: Vec<Moves> = of(&CORNERS).chain(of(&SIDES)).collect();
            all.push(self.climbed(all[0].clone(), radius_mm));
            return all;
        }
        let mut starts: Vec<Moves> = ways().map(|way| alloc::vec![way; count]).collect();
        let places: Vec<Point> = self.project.cabinet.anchors.iter().map(|anchor| anchor.at).collect();
        for out in [FRAC_1_SQRT_2, -FRAC_1_SQRT_2] {
            let way = |at: &Point| Point::new(out * at.x_mm.signum(), out * at.y_mm.signum());
            starts.push(places.iter().map(way).collect());
            starts.push(places.iter().map(|at| way(at).turned_right()).collect());
        }
        let climbed: Vec<Moves> = starts.iter().map(|start| self.climbed(start.clone(), radius_mm)).collect();
        starts.extend(climbed);
        starts
    }

    /// From one combination, every bolt in turn to where it is worst.
    fn climbed(&self, mut moves: Moves, radius_mm: f64) -> Moves {
        let level = |moves: &Moves| {
            self.moved(moves, radius_mm).map_or(f64::INFINITY, |moved| self.trials.glance(&moved).utilisation)
        };
        let mut highest = level(&moves);
        for place in 0..moves.len() {
            for way in ways() {
                let before = core::mem::replace(&mut moves[place], way);
                let here = level(&moves);
                if here > highest { highest = here } else { moves[place] = before }
            }
        }
        moves
    }
}

/// The corners of a square whose corners are one unit from its middle.
const CORNERS: [Point; 4] = [
    Point::new(FRAC_1_SQRT_2, FRAC_1_SQRT_2),
    Point::new(-FRAC_1_SQRT_2, FRAC_1_SQRT_2),
    Point::new(-FRAC_1_SQRT_2, -FRAC_1_SQRT_2),
    Point::new(FRAC_1_SQRT_2, -FRAC_1_SQRT_2),
];

/// Straight to the sides, as far.
const SIDES: [Point; 4] = [Point::new(1.0, 0.0), Point::new(0.0, 1.0), Point::new(-1.0, 0.0), Point::new(0.0, -1.0)];

fn ways() -> impl Iterator<Item = Point> {
    CORNERS.into_iter().chain(SIDES)
}

fn combination(ways: &[Point; 4], number: usize, count: usize) -> Moves {
    (0..count).map(|place| ways[number >> (2 * place) & 3]).collect()
}

fn alone(count: usize, anchor: usize, rad: f64) -> Moves {
    let mut moves = alloc::vec![Point::default(); count];
    moves[anchor] = Point::new(number::cos(rad), number::sin(rad));
    moves
}

/// The way of the first bolt that is moved.
fn towards_rad(moves: &Moves) -> f64 {
    let first = moves.iter().copied().find(|by| *by != Point::default()).unwrap_or_default();
    Point::default().direction_rad(first)
}
