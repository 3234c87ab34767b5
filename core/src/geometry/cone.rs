use alloc::vec::Vec;

use super::{Edge, Hull, Point};
use crate::calc::number;

/// How near to the surface of the cone a load counts as being on it, relative to the load's own size.
const ON_THE_SURFACE: f64 = 1e-9;
/// Distances below this are no distance: a nanometre is on no drawing.
const NO_DISTANCE_MM: f64 = 1e-6;

/// All loads (P, P ex, P ey) that places which can only push, and places which can only pull, are able to carry.
///
/// A pushing place at x, y carries multiples of (1, x, y), a pulling one multiples of (-1, -x, -y). Their sums fill a
/// cone. Each of its facets is a line in the plan with all pushing places on one side and all pulling ones on the
/// other: about such a line nothing holds the body back. The facets are made once for a geometry.
#[derive(Clone, Debug)]
pub struct Cone {
    frame: Frame,
    shape: Shape,
}

/// Where a load lies with respect to a cone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Membership {
    /// It can be carried.
    Inside,
    /// It can just be carried, with nothing left against turning about this edge.
    OnTheSurface(Edge),
    /// It cannot be carried, and turns about this edge; no edge where there is nothing to turn about, because no
    /// place holds at all or every edge lets go at once (the body lifts off).
    Outside(Option<Edge>),
}

/// Coordinates in which the plan is about one unit wide and lies about the origin, so that tolerances have a meaning.
#[derive(Clone, Copy, Debug)]
struct Frame {
    centre: Point,
    length_mm: f64,
}

/// A line in the plan, as the function that is its signed distance, and the places that it touches.
#[derive(Clone, Copy, Debug)]
struct Facet {
    normal: [f64; 3],
    edge: Edge,
}

#[derive(Clone, Debug)]
enum Shape {
    /// No place at all.
    Nothing,
    /// One place, with what it can do.
    OnePlace { place: Point, pushes: bool, pulls: bool },
    /// All places on one line: the line itself, and what stops turning about a place on it.
    OneLine { line: Facet, stops: Vec<Facet> },
    /// A solid cone; without facets it is the whole space.
    Solid { facets: Vec<Facet> },
}

impl Cone {
    /// The cone of these places.
    ///
    /// ```
    /// use steadfoot::geometry::{Cone, Membership, Point};
    /// let feet = [(-500.0, -500.0), (500.0, -500.0), (500.0, 500.0), (-500.0, 500.0)].map(|(x, y)| Point::new(x, y));
    /// let standing = Cone::new(&feet, &[]);
    /// assert_eq!(standing.membership([1000.0, 400.0e3, 0.0]), Membership::Inside);
    /// assert!(matches!(standing.membership([1000.0, 600.0e3, 0.0]), Membership::Outside(Some(_))));
    /// let bolted = Cone::new(&feet, &feet);
    /// assert_eq!(bolted.membership([1000.0, 600.0e3, 0.0]), Membership::Inside);
    /// ```
    pub fn new(pushing: &[Point], pulling: &[Point]) -> Cone {
        let all: Vec<Point> = pushing.iter().chain(pulling).copied().collect();
        let Some(frame) = Frame::around(&all) else {
            return Cone { frame: Frame { centre: Point::default(), length_mm: 1.0 }, shape: Shape::Nothing };
        };
        if frame.length_mm <= NO_DISTANCE_MM {
            let (pushes, pulls) = (!pushing.is_empty(), !pulling.is_empty());
            let frame = Frame { length_mm: 1.0, ..frame };
            return Cone { frame, shape: Shape::OnePlace { place: frame.centre, pushes, pulls } };
        }
        // Only corners of the hulls can lie on a facet.
        let places = Places { pushing: Hull::new(pushing), pulling: Hull::new(pulling) };
        let shape = match line_through(&all, &frame) {
            Some(line) => Shape::OneLine { line, stops: places.stops(&line, &frame) },
            None => Shape::Solid { facets: places.facets(&frame) },
        };
        Cone { frame, shape }
    }

    /// Where a load lies: P down, P ex and P ey about the origin of the plan. Units: N, N mm, N mm.
    pub fn membership(&self, load: [f64; 3]) -> Membership {
        let load = self.frame.load(load);
        let slack = ON_THE_SURFACE * (load[0].abs() + load[1].abs() + load[2].abs());
        match &self.shape {
            Shape::Nothing => Membership::Outside(None),
            &Shape::OnePlace { place, pushes, pulls } => {
                let edge = Edge { from: place, to: place };
                let turns = load[1].abs() > slack || load[2].abs() > slack;
                let lifts = (load[0] > 0.0 && !pushes) || (load[0] < 0.0 && !pulls);
                if turns {
                    Membership::Outside(Some(edge))
                } else if lifts {
                    Membership::Outside(None)
                } else {
                    Membership::OnTheSurface(edge)
                }
            }
            Shape::OneLine { line, stops } => {
                if line.holds(&load).abs() > slack {
                    return Membership::Outside(Some(line.edge));
                }
                match within(stops, &load, slack) {
                    Membership::Outside(edge) => Membership::Outside(edge),
                    // Nothing but balance keeps it from turning about the line.
                    _ => Membership::OnTheSurface(line.edge),
                }
            }
            Shape::Solid { facets } => within(facets, &load, slack),
        }
    }

    /// The edges about which a load could turn the body, none where every load can be carried.
    pub fn edges(&self) -> impl Iterator<Item = Edge> + '_ {
        let facets: &[Facet] = match &self.shape {
            Shape::Solid { facets } => facets,
            Shape::OneLine { line, .. } => core::slice::from_ref(line),
            _ => &[],
        };
        facets.iter().map(|facet| facet.edge)
    }
}

fn within(facets: &[Facet], load: &[f64; 3], slack: f64) -> Membership {
    let mut weakest: Option<(f64, Edge)> = None;
    let mut letting_go = 0;
    for facet in facets {
        let held = facet.holds(load);
        // A load that is not a number is not held by anything.
        if !(held >= -slack) {
            letting_go += 1;
        }
        if weakest.is_none_or(|(least, _)| !(held >= least)) {
            weakest = Some((held, facet.edge));
        }
    }
    match weakest {
        _ if letting_go > 2 && letting_go == facets.len() => Membership::Outside(None),
        Some((_, edge)) if letting_go > 0 => Membership::Outside(Some(edge)),
        Some((held, edge)) if held <= slack => Membership::OnTheSurface(edge),
        _ => Membership::Inside,
    }
}

impl Facet {
    /// What keeps the body from turning about this facet's edge; negative where nothing does.
    fn holds(&self, load: &[f64; 3]) -> f64 {
        self.normal[0] * load[0] + self.normal[1] * load[1] + self.normal[2] * load[2]
    }

    fn at(&self, place: Point, frame: &Frame) -> f64 {
        let (x, y) = frame.scaled(place);
        self.normal[0] + self.normal[1] * x + self.normal[2] * y
    }

    /// The line through two places with the left side positive, or none where they coincide.
    fn through(from: Point, to: Point, frame: &Frame) -> Option<Facet> {
        let ((x0, y0), (x1, y1)) = (frame.scaled(from), frame.scaled(to));
        let length = number::hypot(x1 - x0, y1 - y0);
        if length <= ON_THE_SURFACE {
            return None;
        }
        let (normal_x, normal_y) = ((y0 - y1) / length, (x1 - x0) / length);
        // About the middle of both ends, so that neither has more rounding than the other.
        let constant = -(normal_x * (x0 + x1) + normal_y * (y0 + y1)) / 2.0;
        Some(Facet { normal: [constant, normal_x, normal_y], edge: Edge { from, to } })
    }

    fn reversed(&self) -> Facet {
        let [constant, x, y] = self.normal;
        Facet { normal: [-constant, -x, -y], edge: Edge { from: self.edge.to, to: self.edge.from } }
    }

    fn is_the_same(&self, other: &Facet) -> bool {
        self.normal.iter().zip(&other.normal).all(|(a, b)| (a - b).abs() <= ON_THE_SURFACE)
    }
}

impl Frame {
    fn around(places: &[Point]) -> Option<Frame> {
        let first = *places.first()?;
        let (mut low, mut high) = (first, first);
        for place in places {
            low = Point::new(low.x_mm.min(place.x_mm), low.y_mm.min(place.y_mm));
            high = Point::new(high.x_mm.max(place.x_mm), high.y_mm.max(place.y_mm));
        }
        let length_mm = (high.x_mm - low.x_mm).max(high.y_mm - low.y_mm) / 2.0;
        Some(Frame { centre: Point::new((low.x_mm + high.x_mm) / 2.0, (low.y_mm + high.y_mm) / 2.0), length_mm })
    }

    fn scaled(&self, place: Point) -> (f64, f64) {
        ((place.x_mm - self.centre.x_mm) / self.length_mm, (place.y_mm - self.centre.y_mm) / self.length_mm)
    }

    fn load(&self, [down, along_x, along_y]: [f64; 3]) -> [f64; 3] {
        [
            down,
            (along_x - down * self.centre.x_mm) / self.length_mm,
            (along_y - down * self.centre.y_mm) / self.length_mm,
        ]
    }
}

/// The line on which all places lie, or none where they span an area.
fn line_through(places: &[Point], frame: &Frame) -> Option<Facet> {
    let farthest = |from: Point| {
        places.iter().copied().max_by(|a, b| from.distance_mm(*a).total_cmp(&from.distance_mm(*b))).unwrap_or(from)
    };
    let one_end = farthest(places[0]);
    let line = Facet::through(one_end, farthest(one_end), frame)?;
    places.iter().all(|&place| line.at(place, frame).abs() <= ON_THE_SURFACE).then_some(line)
}

struct Places {
    pushing: Hull,
    pulling: Hull,
}

impl Places {
    fn all(&self) -> impl Iterator<Item = Point> + Clone + '_ {
        self.pushing.corners().iter().chain(self.pulling.corners()).copied()
    }

    /// True where every pushing place is on the positive side and every pulling one on the negative side.
    fn are_parted_by(&self, facet: &Facet, frame: &Frame) -> bool {
        self.pushing.corners().iter().all(|&place| facet.at(place, frame) >= -ON_THE_SURFACE)
            && self.pulling.corners().iter().all(|&place| facet.at(place, frame) <= ON_THE_SURFACE)
    }

    /// Every line through two places that parts the pushing from the pulling ones.
    fn facets(&self, frame: &Frame) -> Vec<Facet> {
        let places: Vec<Point> = self.all().collect();
        let mut facets: Vec<Facet> = Vec::new();
        for (index, &from) in places.iter().enumerate() {
            for &to in &places[index + 1..] {
                let Some(line) = Facet::through(from, to, frame) else { continue };
                for mut facet in [line, line.reversed()] {
                    if self.are_parted_by(&facet, frame) && !facets.iter().any(|known| known.is_the_same(&facet)) {
                        facet.edge = longest_on(&facet, &places, frame);
                        facets.push(facet);
                    }
                }
            }
        }
        facets
    }

    /// For places on one line: the lines across it, through one place each, that part pushing from pulling ones.
    fn stops(&self, line: &Facet, frame: &Frame) -> Vec<Facet> {
        let mut stops: Vec<Facet> = Vec::new();
        let [_, normal_x, normal_y] = line.normal;
        for place in self.all() {
            let (x, y) = frame.scaled(place);
            let across = Facet {
                normal: [normal_y * x - normal_x * y, -normal_y, normal_x],
                edge: Edge { from: place, to: place },
            };
            for stop in [across, across.reversed()] {
                if self.are_parted_by(&stop, frame) && !stops.iter().any(|known| known.is_the_same(&stop)) {
                    stops.push(stop);
                }
            }
        }
        stops
    }
}

/// The two places farthest apart among those that a facet touches, in the facet's own direction.
fn longest_on(facet: &Facet, places: &[Point], frame: &Frame) -> Edge {
    let along = |place: &Point| facet.normal[2] * place.x_mm - facet.normal[1] * place.y_mm;
    let touched = || places.iter().filter(|&&place| facet.at(place, frame).abs() <= ON_THE_SURFACE);
    let from = touched().min_by(|a, b| along(a).total_cmp(&along(b)));
    let to = touched().max_by(|a, b| along(a).total_cmp(&along(b)));
    Edge { from: from.copied().unwrap_or(facet.edge.from), to: to.copied().unwrap_or(facet.edge.to) }
}
