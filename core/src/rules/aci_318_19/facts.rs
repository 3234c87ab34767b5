//! The anchorage in the units of its edition: what no load changes.

use alloc::vec::Vec;

use super::anchor::Anchor;
use super::chosen;
use super::coverage;
use super::edition::{Constant, Edition};
use super::fields as f;
use super::gaps::Gaps;
use super::kind::AnchorKind;
use super::line::{EdgeLine, lines, note_reach};
use super::report::Report;
use super::set::{Set, only};
use super::steel;
use crate::calc::{Detail, Kind, Outcome, Sheet, StepId};
use crate::geometry::{Point, Rectangle};
use crate::rules::anchor::{Amplification, AnchorSite, Cracking};

/// The anchorage. Lengths are in units of the edition unless the name says millimetres.
pub struct Facts {
    /// The edition.
    pub edition: &'static Edition,
    /// How the anchors hold.
    pub kind: AnchorKind,
    /// The anchors: our own in the order of the file, then those of the neighbours.
    pub anchors: Vec<Anchor>,
    /// Our own.
    pub own: Set,
    /// The concrete in plan up to where it is ours to count on.
    pub clip: Rectangle,
    /// Openings in it.
    pub openings: Vec<Rectangle>,
    /// Its edges.
    pub lines: Vec<EdgeLine>,
    /// Thickness of the slab.
    pub h_a: f64,
    /// Thickness of the slab in mm.
    pub thickness_mm: f64,
    /// Specified strength of the slab.
    pub f_c_slab: f64,
    /// Strength that the equations take.
    pub f_c: f64,
    /// Lightweight factor of the concrete.
    pub lambda: f64,
    /// Lightweight factor of the anchors in concrete failure.
    pub lambda_a: f64,
    /// Whether the slab may crack.
    pub cracking: Cracking,
    /// Whether the anchors are designed for cracked concrete.
    pub is_cracked: bool,
    /// Whether 17.10 applies.
    pub seismic: bool,
    /// Whether the equation for deep anchors is chosen.
    pub deep: bool,
    /// Supplementary reinforcement for tension.
    pub supplementary_tension: bool,
    /// Supplementary reinforcement for shear.
    pub supplementary_shear: bool,
    /// Reinforcement against splitting.
    pub splitting_bars: bool,
    /// Anchor reinforcement of one anchor.
    pub bars: Bars,
    /// Place of the word for the bars along the edge.
    pub edge_bars: usize,
    /// Place of the word for what the base stands on.
    pub seat: usize,
    /// Thickness of the plate that studs are welded to.
    pub plate: Option<f64>,
    /// Thickness of washers that are welded to the base.
    pub washer: Option<f64>,
    /// Whether anchors are torqued.
    pub tightened: bool,
    /// Cover at the edge.
    pub cover: f64,
    /// Largest aggregate.
    pub aggregate: f64,
    /// How 17.10 limits the forces.
    pub options: Options,
    /// What the evaluation report says.
    pub report: Report,
    /// Lasting pull on the most loaded anchor.
    pub sustained: f64,
    /// Whether the curved interaction is chosen.
    pub five_thirds: bool,
    /// The smallest spacing between two anchors; infinite for one alone.
    pub closest_mm: f64,
    /// Why the rule does not reach this anchorage, if it does not.
    pub uncovered: Option<StepId>,
    /// Why single modes are not covered.
    pub gaps: Gaps,
}

/// Anchor reinforcement of one anchor (17.5.2.1).
#[derive(Clone, Copy, Debug)]
pub struct Bars {
    /// Area in tension.
    pub tension: Option<f64>,
    /// Area in shear.
    pub shear: Option<f64>,
    /// Specified yield strength.
    pub f_y: f64,
}

/// How forces are limited in seismic design categories C to F (17.10.5.3, 17.10.6.3).
#[derive(Clone, Copy, Debug)]
pub struct Options {
    /// The demand that the options ask for.
    pub amplification: Amplification,
    /// Whether ductile steel has to yield first.
    pub ductile: bool,
    /// The pull that the attachment passes, where that limits it.
    pub tension: Option<f64>,
    /// Place of the word of the option in tension.
    pub tension_word: usize,
    /// The shear that the attachment passes, where that limits it.
    pub shear: Option<f64>,
    /// Stretch length.
    pub stretch: f64,
    /// Whether the anchor is protected against buckling.
    pub is_protected: bool,
    /// Place of the word for the thread.
    pub thread: usize,
}

impl Facts {
    /// The facts of a site.
    pub fn new(edition: &'static Edition, site: &AnchorSite) -> Facts {
        let values = site.values;
        let to = |value, kind| edition.system.from_si(value, kind);
        let known = |field: usize, kind| values.number(field).map(|number| to(number, kind));
        let f_c_slab = to(site.slab.strength_mpa, Kind::Stress);
        let kind = AnchorKind::of(values.choice(f::ANCHOR_KIND));
        let seismic = values.choice(f::SEISMIC_CATEGORY) == Some(chosen::CATEGORY_C_TO_F);
        let lambda = values.given(f::LAMBDA);
        let slab = site.slab;
        let mut facts = Facts {
            edition,
            kind,
            anchors: Vec::new(),
            own: (0..site.own.min(site.anchors.len()).min(super::set::ANCHORS_MAX))
                .fold(0, |set, place| set | only(place)),
            clip: cut(&slab.outline, &slab.boundary),
            openings: slab.openings.clone(),
            lines: lines(&slab.outline, &slab.openings),
            h_a: to(slab.thickness_mm, Kind::Length),
            thickness_mm: slab.thickness_mm,
            f_c_slab,
            f_c: f64::min(f_c_slab, edition.strength_max(kind).value()),
            lambda,
            lambda_a: super::concrete::lightweight(kind, lambda).1,
            cracking: slab.cracking,
            is_cracked: seismic || slab.cracking == Cracking::Cracked,
            seismic,
            deep: values.choice(f::BREAKOUT_FORM) == Some(chosen::FORM_DEEP) && kind == AnchorKind::Headed,
            supplementary_tension: values.choice(f::SUPPLEMENTARY_TENSION) == Some(chosen::PRESENT),
            supplementary_shear: values.choice(f::SUPPLEMENTARY_SHEAR) == Some(chosen::PRESENT),
            splitting_bars: values.flag(f::SPLITTING_BARS),
            bars: Bars {
                tension: known(f::TENSION_BARS, Kind::Area),
                shear: known(f::SHEAR_BARS, Kind::Area),
                f_y: to(values.given(f::BARS_YIELD), Kind::Stress),
            },
            edge_bars: values.choice(f::EDGE_BARS).unwrap_or(0),
            seat: values.choice(f::SEAT).unwrap_or(0),
            plate: known(f::PLATE, Kind::Length),
            washer: known(f::WASHER, Kind::Length),
            tightened: values.flag(f::TIGHTENED),
            cover: to(values.given(f::COVER), Kind::Length),
            aggregate: to(values.given(f::AGGREGATE), Kind::Length),
            options: Options::new(edition, site, seismic),
            report: Report::new(edition, values),
            sustained: to(values.given(f::SUSTAINED), Kind::Force),
            five_thirds: values.choice(f::INTERACTION) == Some(chosen::FIVE_THIRDS),
            closest_mm: f64::INFINITY,
            uncovered: None,
            gaps: Gaps::default(),
        };
        let owner = |place: usize| place.checked_div(site.own).unwrap_or(0);
        let anchors = site.anchors.iter().enumerate();
        facts.anchors = anchors.map(|(place, anchor)| Anchor::new(&facts, anchor, owner(place))).collect();
        facts.closest_mm = closest_mm(&facts.anchors);
        facts.uncovered = coverage::uncovered(&facts);
        if facts.uncovered.is_some() {
            return facts;
        }
        facts.gaps = Gaps::new(&facts);
        note_reach(&mut facts.lines, &facts.anchors);
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

    /// The largest strength of concrete that the equations may count on.
    pub fn strength_max(&self) -> Constant {
        self.edition.strength_max(self.kind)
    }

    /// Whether an anchor is our own and not a neighbour's.
    pub fn is_own(&self, place: usize) -> bool {
        self.own & only(place) != 0
    }

    /// Whether the concrete may split at the anchors (17.6.2.6).
    pub fn may_split(&self) -> bool {
        self.kind.is_drilled() && !self.is_cracked && !self.splitting_bars
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

    /// The line from the anchor of a group that is nearest to an edge on one of these sides, at right angles to it.
    pub fn shortest_line_to_edge(&self, members: &[usize], sides: &[usize]) -> Detail {
        let mut best = (members[0], sides[0]);
        for &place in members {
            for &side in sides {
                if self.anchors[place].edges_mm[side] < self.anchors[best.0].edges_mm[best.1] {
                    best = (place, side);
                }
            }
        }
        let (at, distance_mm) = (self.anchors[best.0].at, self.anchors[best.0].edges_mm[best.1]);
        let foot = match best.1 {
            0 => Point::new(at.x_mm - distance_mm, at.y_mm),
            1 => Point::new(at.x_mm + distance_mm, at.y_mm),
            2 => Point::new(at.x_mm, at.y_mm - distance_mm),
            _ => Point::new(at.x_mm, at.y_mm + distance_mm),
        };
        self.line([at, foot])
    }

    /// The shortest line from an anchor of a group to the nearest point of any edge.
    pub fn shortest_line(&self, members: &[usize]) -> Detail {
        let nearer = |best: usize, place: usize| {
            if self.anchors[place].nearest_mm < self.anchors[best].nearest_mm { place } else { best }
        };
        let best = &self.anchors[members.iter().fold(members[0], |best, &place| nearer(best, place))];
        self.line([best.at, best.nearest])
    }

    /// A force demand against a strength, both in units of the edition.
    pub fn compared(&self, demand: f64, strength: f64) -> Outcome {
        let to_si = |force| self.edition.system.to_si(force, Kind::Force);
        Outcome::Compared { value: to_si(demand), limit: to_si(strength), utilisation: demand / strength }
    }
}

impl Options {
    fn new(edition: &Edition, site: &AnchorSite, seismic: bool) -> Options {
        let values = site.values;
        let word = |field| if seismic { values.choice(field).unwrap_or(0) } else { 0 };
        let (tension, shear) = (word(f::TENSION_OPTION), word(f::SHEAR_OPTION));
        let force = |field: usize, applies: bool| {
            let given = values.number(field).filter(|_| applies);
            given.map(|newtons| edition.system.from_si(newtons, Kind::Force))
        };
        Options {
            amplification: chosen::amplification(values),
            ductile: tension == chosen::OPTION_DUCTILE,
            tension: force(f::ATTACHMENT_TENSION, tension >= chosen::OPTION_ATTACHMENT),
            tension_word: tension,
            shear: force(f::ATTACHMENT_SHEAR, shear != chosen::OPTION_AMPLIFIED),
            stretch: values.number(f::STRETCH).map_or(0.0, |stretch| edition.system.from_si(stretch, Kind::Length)),
            is_protected: values.choice(f::BUCKLING) == Some(1),
            thread: values.choice(f::THREAD).unwrap_or(0),
        }
    }
}

/// The part of an outline within a boundary; where they share nothing, no area.
fn cut(outline: &Rectangle, boundary: &Rectangle) -> Rectangle {
    Rectangle {
        left_mm: outline.left_mm.max(boundary.left_mm),
        right_mm: outline.right_mm.min(boundary.right_mm),
        front_mm: outline.front_mm.max(boundary.front_mm),
        rear_mm: outline.rear_mm.min(boundary.rear_mm),
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

/// All four sides.
pub const ALL_SIDES: [usize; 4] = [0, 1, 2, 3];
