//! Knobs: inputs that can be turned as one number, so that one can ask how far each may go.

use alloc::string::String;
use alloc::vec::Vec;

use super::ladder::{NearestEdge, bolts, field, has_own, is_by_report, listed_mm, nearest_edge};
use super::scaled::{scaled_load, scaled_strength};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, StepId, number, steps};
use crate::geometry::Point;
use crate::input::field::{Field, FieldShape, Value};
use crate::project::{Project, bench::Bench, is_buildable};
use crate::rules::demand::Strength;
use crate::slab;

steps! { 200 "knobs";
    LOAD "" Number (INPUT "contents" Derived) "mass of all contents": Name;
    CENTRE "" Number (INPUT "contents" Derived) "height of the full cabinet's centre of mass": Name;
    STRENGTH "" Number (INPUT "site" Derived) "strength of the shaking": Name;
    ZONE "" Number (INPUT "site" Derived) "zone, counted from the first of the rule": Name;
    CONCRETE "" Number (INPUT "slab.strength_mpa" Derived) "strength of the concrete": Name;
    THICKNESS "" Number (INPUT "slab.thickness_mm" Derived) "thickness of the slab": Name;
    FRICTION "" Number (INPUT "slab.friction" Derived) "friction under the feet": Name;
    EMBEDMENT "" Number (INPUT "anchorage.embedment_mm" Derived) "embedment of all anchors": Name;
    BOLT "" Number (INPUT "anchorage.bolt" Derived) "diameter of all bolts": Name;
    EDGE "" Number (INPUT "slab.edges_mm" Derived) "distance from the edge that is nearest now to its nearest anchor": Name;
    WIDTH "" Number (INPUT "cabinet" Derived) "width between the outermost feet": Name;
    DEPTH "" Number (INPUT "cabinet" Derived) "depth between the outermost feet": Name;
    STIFFNESS "" Number (INPUT "cabinet.anchors" Derived) "stiffness of every anchor, taken as known": Name;
}

/// An input that can be turned as one number.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
#[repr(u8)]
pub enum Knob {
    /// The mass of all contents together; each keeps its share, the frame stays.
    Load,
    /// The height of the centre of mass with everything aboard: all contents are raised or lowered alike, or the
    /// frame's own centre where there are none.
    Centre,
    /// The field that the demand rule names as its strength.
    Strength,
    /// The zone of a rule that has zones, by its place from 1.
    Zone,
    /// The strength of the concrete.
    Concrete,
    /// The thickness of the slab.
    Thickness,
    /// Friction between feet and floor.
    Friction,
    /// The embedment of all anchors.
    Embedment,
    /// The size of all bolts, by diameter.
    Bolt,
    /// How far the edge of the slab that is nearest now is from the anchor nearest to it; the cabinet is moved away from it,
    /// and may come to another edge.
    Edge,
    /// The width between the outermost feet; feet and anchors are spread about the middle of the base.
    Width,
    /// The depth between the outermost feet, likewise.
    Depth,
    /// The stiffness of every anchor, as if it were known.
    Stiffness,
}

/// All knobs with their words and the rows of their names, in the order in which they are told.
#[rustfmt::skip]
pub const KNOBS: [(&str, Knob, StepId); 13] = [
    ("load", Knob::Load, LOAD),
    ("centre", Knob::Centre, CENTRE),
    ("strength", Knob::Strength, STRENGTH),
    ("zone", Knob::Zone, ZONE),
    ("concrete", Knob::Concrete, CONCRETE),
    ("thickness", Knob::Thickness, THICKNESS),
    ("friction", Knob::Friction, FRICTION),
    ("embedment", Knob::Embedment, EMBEDMENT),
    ("bolt", Knob::Bolt, BOLT),
    ("edge", Knob::Edge, EDGE),
    ("width", Knob::Width, WIDTH),
    ("depth", Knob::Depth, DEPTH),
    ("stiffness", Knob::Stiffness, STIFFNESS),
];

/// One value of a knob that has only some.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Notch {
    /// The value.
    pub value: f64,
    /// The word of the file.
    pub word: &'static str,
}

/// A search reaches from the present value over this factor to it times this factor, where the file lets it.
const REACH: f64 = 64.0;
/// What is built is varied less than what is put on it.
const REACH_BUILT: f64 = 8.0;
/// No floor is smoother than this.
const FRICTION_LEAST: f64 = 0.01;
/// A map reaches from this part of the present value ...
const WINDOW: [f64; 2] = [0.25, 2.0];
/// ... and that of a stiffness, which nobody knows well, this far.
const WINDOW_STIFFNESS: f64 = 16.0;

impl Knob {
    /// The knob of a word.
    ///
    /// ```
    /// use steadfoot::explore::Knob;
    /// assert_eq!(Knob::of_word("load"), Some(Knob::Load));
    /// assert_eq!(Knob::of_word("loaf"), None);
    /// ```
    pub fn of_word(word: &str) -> Option<Knob> {
        KNOBS.iter().find(|(known, ..)| *known == word).map(|(_, knob, _)| *knob)
    }

    /// Its word.
    pub fn word(self) -> &'static str {
        KNOBS[self as usize].0
    }

    /// Row of its name.
    pub fn name(self) -> StepId {
        KNOBS[self as usize].2
    }

    /// The path of the field that it turns, where that is one of the demand rule's own, with a name of its own.
    pub fn field_of_rule(self, project: &Project) -> Option<String> {
        let site = project.site.as_ref().filter(|_| matches!(self, Knob::Strength | Knob::Zone))?;
        let (Strength::Field(field) | Strength::Zones(field)) = (site.rule.strength)(&site.values);
        Some(["site", site.rule.fields[field].key].join("."))
    }

    /// The present value in SI; none where the project has no such thing, or must not have it turned: values of an
    /// evaluation report belong to one size and embedment, holes that are drilled stay where they are.
    pub fn now(self, project: &Project) -> Option<f64> {
        let slab = project.slab.as_ref();
        let now = match self {
            Knob::Load => aboard_kg(project),
            Knob::Centre => centre_mm(project),
            Knob::Strength => match strength(project)? {
                Strength::Field(field) => project.site.as_ref()?.values.number(field)?,
                Strength::Zones(_) => return None,
            },
            Knob::Zone => match strength(project)? {
                Strength::Zones(field) => project.site.as_ref()?.values.choice(field)? as f64 + 1.0,
                Strength::Field(_) => return None,
            },
            Knob::Concrete => slab?.strength_mpa,
            Knob::Thickness => slab?.thickness_mm,
            Knob::Friction => slab?.friction,
            Knob::Embedment => {
                let place = embedment(project)?;
                project.anchorage.as_ref()?.values.number(place)?
            }
            Knob::Bolt => {
                let ladder = bolts(project, [usize::MAX; 2]).filter(|ladder| ladder.is_open())?;
                ladder.present().value
            }
            Knob::Edge => nearest_edge(project)?.distance_mm,
            Knob::Width => spread_mm(project, |at| at.x_mm)?,
            Knob::Depth => spread_mm(project, |at| at.y_mm)?,
            Knob::Stiffness => {
                let anchors = &project.cabinet.anchors;
                if anchors.is_empty() || anchors.iter().any(|anchor| anchor.clip_stiffness_n_per_mm.is_some()) {
                    return None;
                }
                let given = anchors[0].stiffness_n_per_mm;
                given.unwrap_or_else(|| Bench::new(project).supports[0].anchors()[0].stiffness_n_per_mm)
            }
        };
        (now > 0.0 && now.is_finite()).then_some(now)
    }

    /// What it measures.
    pub fn kind(self, project: &Project) -> Kind {
        match self {
            Knob::Load => Kind::Mass,
            Knob::Strength => match (strength(project), &project.site) {
                (Some(Strength::Field(field)), Some(site)) => kind_of(&site.rule.fields[field]),
                _ => Kind::Number,
            },
            Knob::Zone | Knob::Friction => Kind::Number,
            Knob::Concrete => Kind::Stress,
            Knob::Stiffness => Kind::Stiffness,
            _ => Kind::Length,
        }
    }

    /// Its values, rising, where it has only some.
    pub fn notches(self, project: &Project) -> Option<Vec<Notch>> {
        match self {
            Knob::Zone => {
                let (Strength::Zones(field), Some(site)) = (strength(project)?, &project.site) else { return None };
                let FieldShape::Choice(words) = site.rule.fields[field].shape else { return None };
                let notch = |(place, word): (usize, &&'static str)| Notch { value: place as f64 + 1.0, word };
                Some(words.iter().enumerate().map(notch).collect())
            }
            Knob::Bolt => {
                let ladder = bolts(project, [usize::MAX; 2])?;
                let notch = |word: &'static str| Some(Notch { value: listed_mm(word)?, word });
                Some(ladder.rungs.iter().filter_map(|rung| notch(rung.word?)).collect())
            }
            _ => None,
        }
    }

    /// As far as a search for a limit reaches, from the least to the most.
    pub fn reach(self, project: &Project) -> Option<[f64; 2]> {
        let now = self.now(project)?;
        if let Some(notches) = self.notches(project) {
            return Some([notches.first()?.value, notches.last()?.value]);
        }
        let about = |factor: f64| [now / factor, now * factor];
        let within = |[low, high]: [f64; 2], field: &Field| match field.shape {
            FieldShape::Number { min, max, .. } => [low.max(min), high.min(max)],
            _ => [low, high],
        };
        Some(match self {
            Knob::Centre => [now - lowest_mm(project), project.cabinet.height_mm.max(now)],
            Knob::Strength => match (strength(project), &project.site) {
                (Some(Strength::Field(field)), Some(site)) => within(about(REACH), &site.rule.fields[field]),
                _ => return None,
            },
            Knob::Concrete => within(about(REACH_BUILT), &slab::FIELDS[slab::STRENGTH]),
            Knob::Thickness => within(about(REACH_BUILT), &slab::FIELDS[slab::THICKNESS]),
            Knob::Friction => within([FRICTION_LEAST.min(now), now * REACH], &slab::FIELDS[slab::FRICTION]),
            Knob::Embedment => {
                let rule = project.anchorage.as_ref()?.rule;
                within(about(REACH_BUILT), &rule.fields[embedment(project)?])
            }
            Knob::Width | Knob::Depth => about(REACH_BUILT),
            _ => about(REACH),
        })
    }

    /// As far as a map of it is worth looking at, in round numbers.
    pub fn window(self, project: &Project) -> Option<[f64; 2]> {
        let (now, [least, most]) = (self.now(project)?, self.reach(project)?);
        if self.notches(project).is_some() {
            return Some([least, most]);
        }
        if self == Knob::Stiffness {
            return Some([now / WINDOW_STIFFNESS, now * WINDOW_STIFFNESS]);
        }
        let [low, high] = WINDOW.map(|part| in_two_digits(part * now, number::round));
        Some([if low < least { in_two_digits(least, number::ceil) } else { low }, high.min(most)])
    }

    /// Whether equal ratios of it are worth equal steps.
    pub fn is_by_ratio(self) -> bool {
        self == Knob::Stiffness
    }

    /// The project with the knob turned to a value; none where it cannot be built so: a foot off the slab, a tray
    /// below the floor, a bolt that the rule refuses, a value that is no notch.
    pub fn turned(self, project: &Project, value: f64) -> Option<Project> {
        self.turn(project, value).filter(is_buildable)
    }

    /// The same without asking whether it can be built.
    fn turn(self, project: &Project, value: f64) -> Option<Project> {
        let now = self.now(project)?;
        if !(value > 0.0 && value.is_finite()) {
            return None;
        }
        let mut turned = match self {
            Knob::Load => scaled_load(project, value / now),
            Knob::Strength => scaled_strength(project, value)?,
            _ => project.clone(),
        };
        match self {
            Knob::Load | Knob::Strength => {}
            Knob::Centre => raise(&mut turned, value - now),
            Knob::Zone => {
                let Strength::Zones(field) = strength(project)? else { return None };
                let place = self.notches(project)?.iter().position(|notch| notch.value == value)?;
                turned.site.as_mut()?.values.set_choice(field, place);
            }
            Knob::Concrete => turned.slab.as_mut()?.strength_mpa = value,
            Knob::Thickness => turned.slab.as_mut()?.thickness_mm = value,
            Knob::Friction => turned.slab.as_mut()?.friction = value,
            Knob::Embedment => {
                let place = embedment(project)?;
                turned.anchorage.as_mut()?.values.set_number(place, value);
            }
            Knob::Bolt => {
                let ladder = bolts(project, [usize::MAX; 2])?;
                let place = ladder.rungs.iter().find(|rung| rung.value == value)?.place;
                let anchorage = turned.anchorage.as_mut()?;
                anchorage.values.0[field(anchorage.rule, "bolt")?] = Value::Choice(place);
            }
            Knob::Edge => {
                let NearestEdge { distance_mm, inward } = nearest_edge(project)?;
                let away_mm = value - distance_mm;
                // The cabinet moves inwards, so in its own axes the slab moves the other way.
                let by = Point::new(-away_mm * inward.x_mm, -away_mm * inward.y_mm);
                let slab = turned.slab.as_mut()?;
                *slab = slab.shifted(by);
            }
            Knob::Width => places(&mut turned, |at| at.x_mm *= value / now),
            Knob::Depth => places(&mut turned, |at| at.y_mm *= value / now),
            Knob::Stiffness => {
                turned.cabinet.anchors.iter_mut().for_each(|anchor| anchor.stiffness_n_per_mm = Some(value));
            }
        }
        Some(turned)
    }
}

/// The project with two different knobs turned; none where it cannot be built so. Which is named first makes no
/// difference: the mass comes before its centre, and the cabinet is moved to its edge last, on the base that it then has.
pub fn turned_both(project: &Project, [a, b]: [(Knob, f64); 2]) -> Option<Project> {
    let rank = |knob: Knob| if knob == Knob::Edge { u8::MAX } else { knob as u8 };
    if a.0 == b.0 {
        return None;
    }
    let [first, second] = if rank(a.0) < rank(b.0) { [a, b] } else { [b, a] };
    let turned = first.0.turn(project, first.1)?;
    second.0.turn(&turned, second.1).filter(is_buildable)
}

fn strength(project: &Project) -> Option<Strength> {
    project.site.as_ref().map(|site| (site.rule.strength)(&site.values))
}

fn kind_of(field: &Field) -> Kind {
    match field.shape {
        FieldShape::Number { kind, .. } => kind,
        _ => Kind::Number,
    }
}

/// The field of the embedment, where it may be varied.
fn embedment(project: &Project) -> Option<usize> {
    let place = field(project.anchorage.as_ref()?.rule, "embedment_mm")?;
    (!project.cabinet.anchors.is_empty() && !has_own(project, place) && !is_by_report(project)).then_some(place)
}

fn aboard_kg(project: &Project) -> f64 {
    project.contents.iter().map(|content| content.mass_kg).sum()
}

/// The height of the centre of mass with everything aboard.
fn centre_mm(project: &Project) -> f64 {
    let frame = &project.cabinet.frame;
    let contents = project.contents.iter();
    let moment: f64 = contents.map(|one| one.mass_kg * (one.bottom_mm + one.size_mm[2] / 2.0)).sum();
    (frame.mass_kg * frame.centre_mm[2] + moment) / (frame.mass_kg + aboard_kg(project))
}

/// How far the centre of mass may be lowered before something reaches the floor.
fn lowest_mm(project: &Project) -> f64 {
    let aboard_kg = aboard_kg(project);
    if aboard_kg > 0.0 {
        let lowest = project.contents.iter().fold(f64::INFINITY, |least, one| least.min(one.bottom_mm));
        return lowest * aboard_kg / (aboard_kg + project.cabinet.frame.mass_kg);
    }
    project.cabinet.frame.centre_mm[2] * (1.0 - 1.0 / REACH)
}

/// Raises the centre of mass with everything aboard by so much.
fn raise(project: &mut Project, by_mm: f64) {
    let (aboard_kg, frame) = (aboard_kg(project), &mut project.cabinet.frame);
    if aboard_kg > 0.0 {
        let each_mm = by_mm * (aboard_kg + frame.mass_kg) / aboard_kg;
        project.contents.iter_mut().for_each(|content| content.bottom_mm += each_mm);
    } else {
        frame.centre_mm[2] += by_mm;
    }
}

/// How far the outermost feet stand apart, or the anchors of a cabinet without feet; none where holes are drilled.
fn spread_mm(project: &Project, along: impl Fn(Point) -> f64) -> Option<f64> {
    let cabinet = &project.cabinet;
    if cabinet.anchors.iter().any(|anchor| anchor.as_built.is_some()) {
        return None;
    }
    let of = |places: &mut dyn Iterator<Item = Point>| {
        let ends = places
            .fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], at| [low.min(along(at)), high.max(along(at))]);
        ends[1] - ends[0]
    };
    let feet = of(&mut cabinet.feet.iter().map(|foot| foot.at));
    Some(if feet > 0.0 { feet } else { of(&mut cabinet.anchors.iter().map(|anchor| anchor.at)) })
}

fn places(project: &mut Project, change: impl Fn(&mut Point)) {
    let cabinet = &mut project.cabinet;
    cabinet.feet.iter_mut().for_each(|foot| change(&mut foot.at));
    cabinet.anchors.iter_mut().for_each(|anchor| change(&mut anchor.at));
}

/// The number in two digits, taken up or to the nearest.
fn in_two_digits(value: f64, whole: fn(f64) -> f64) -> f64 {
    let unit = number::pow(10.0, number::floor(number::log10(value)) - 1.0);
    whole(value / unit) * unit
}
