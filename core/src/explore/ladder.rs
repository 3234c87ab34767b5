//! What can be changed about an anchorage, and the values worth trying: the ladders that "what would hold" climbs.

use alloc::vec::Vec;

use super::pattern::{Pitch, spread};
use crate::cabinet::ANCHORS_MAX;
use crate::calc::{Kind, System, number};
use crate::geometry::Point;
use crate::input::field::{FieldShape, Value, Values};
use crate::project::Project;
use crate::report::outcome::Verdict;
use crate::rules::anchor::AnchorRule;
use crate::rules::bolts::{SIZE_WORDS, SIZES, Thread};

/// What can be changed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Change {
    /// The size of all bolts.
    Bolt,
    /// The embedment of all anchors.
    Embedment,
    /// How far the nearest edge of the slab is from the anchor nearest to it; the cabinet is moved away from it.
    Edge,
    /// The strength of the concrete.
    Strength,
    /// How many bolts there are, each of the present ones becoming a close group.
    Number,
}

/// All changes, in the order of the places of a variant.
pub const CHANGES: [Change; 5] = [Change::Bolt, Change::Embedment, Change::Edge, Change::Strength, Change::Number];

/// The places of the rungs of one variant, in the order of [`CHANGES`].
pub type Rungs = [u8; 5];

/// One value of a ladder.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Rung {
    /// The value in SI: diameter, embedment, edge distance, strength, bolts in all.
    pub value: f64,
    /// The word of the file, where the value is a word.
    pub word: Option<&'static str>,
    /// Its place among the words, or how many bolts stand where one did.
    pub(super) place: usize,
}

/// The values of one change from the least to the most.
#[derive(Clone, PartialEq, Debug)]
pub struct Ladder {
    /// What is changed.
    pub change: Change,
    /// The values; only the present one where nothing can be changed.
    pub rungs: Vec<Rung>,
    /// Place of the present value.
    pub now: usize,
}

/// How many rungs there are below and above the present value.
#[derive(Clone, Copy, Debug)]
struct Reach {
    bolts: [usize; 2],
    embedments: [usize; 2],
    edges: [usize; 2],
    strengths: [usize; 2],
}

/// About a project that does not hold, mostly upwards.
const UPWARDS: Reach = Reach { bolts: [2, 4], embedments: [3, 5], edges: [1, 2], strengths: [1, 1] };
/// About one that holds, mostly downwards: what is there to spare.
const DOWNWARDS: Reach = Reach { bolts: [5, 1], embedments: [6, 2], edges: [2, 1], strengths: [2, 0] };
/// How many bolts stand where one did.
const GROUPS: [usize; 3] = [1, 2, 4];
/// An embedment is stepped by about this part of the present one, in these round steps.
const EMBEDMENT_STEP: f64 = 0.125;
/// Edge distances and strengths that people write on drawings.
const EDGES_MM: &[f64] = &[75.0, 100.0, 150.0, 200.0, 300.0, 400.0, 600.0, 900.0, 1200.0];
const EDGES_IN: &[f64] = &[3.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0, 36.0, 48.0];
const STRENGTHS_MPA: &[f64] = &[17.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0];
const STRENGTHS_PSI: &[f64] = &[2500.0, 3000.0, 4000.0, 5000.0, 6000.0, 8000.0];
/// An edge beyond this is no reason to move a cabinet.
const EDGE_FAR_MM: f64 = 1000.0;
/// A written value nearer to the present one than this part of it is the present one.
const SAME: f64 = 0.04;

impl Ladder {
    /// The present value.
    pub fn present(&self) -> Rung {
        self.rungs[self.now]
    }

    /// Whether there is anything to change.
    pub fn is_open(&self) -> bool {
        self.rungs.len() > 1
    }

    fn new(change: Change, below: Vec<Rung>, present: Rung, above: Vec<Rung>) -> Ladder {
        let now = below.len();
        let mut rungs = below;
        rungs.push(present);
        rungs.extend(above);
        Ladder { change, rungs, now }
    }
}

/// The ladders of a project, in the order of [`CHANGES`]; none without slab, anchorage or anchors.
pub fn ladders(project: &Project, now: Verdict) -> Option<[Ladder; 5]> {
    let reach = if now == Verdict::Holds { DOWNWARDS } else { UPWARDS };
    project.slab.as_ref().filter(|_| !project.cabinet.anchors.is_empty())?;
    project.anchorage.as_ref()?;
    Some([
        bolts(project, reach.bolts)?,
        embedments(project, reach.embedments)?,
        edges(project, reach.edges)?,
        strengths(project, reach.strengths)?,
        numbers(project),
    ])
}

/// The place of a field of an anchor rule.
pub fn field(rule: &AnchorRule, key: &str) -> Option<usize> {
    rule.fields.iter().position(|field| field.key == key)
}

/// The word that is chosen in a field of an anchor rule.
pub fn choice_word(rule: &AnchorRule, values: &Values, key: &str) -> Option<&'static str> {
    let place = field(rule, key)?;
    let FieldShape::Choice(words) = rule.fields[place].shape else { return None };
    words.get(values.choice(place)?).copied()
}

/// The diameter of the bolts that the anchorage speaks of; zero where it is not known.
pub fn diameter_mm(project: &Project) -> f64 {
    let Some(anchorage) = &project.anchorage else { return 0.0 };
    let given = field(anchorage.rule, "diameter_mm").and_then(|place| anchorage.values.number(place));
    let listed = choice_word(anchorage.rule, &anchorage.values, "bolt").and_then(listed_mm);
    listed.or(given).unwrap_or(0.0)
}

/// Whether an anchor has a value of its own for a field.
pub(super) fn has_own(project: &Project, field: usize) -> bool {
    project.cabinet.anchors.iter().any(|anchor| anchor.own.0.get(field).is_some_and(|value| *value != Value::Unknown))
}

/// The diameter of a size that stands in the tables.
pub fn listed_mm(word: &str) -> Option<f64> {
    let place = SIZE_WORDS.iter().position(|known| *known == word)?;
    SIZES.get(place).map(|size| size.system.to_si(size.diameter, Kind::Length))
}

/// The words of anchors that are set into drilled holes; their rules ask for values of the very product.
const DRILLED: &[&str] =
    &["expansion", "expansion-torque", "expansion-displacement", "undercut", "screw", "adhesive", "bonded"];

/// Whether the anchors live by values of their evaluation report or approval, which belong to one size and embedment.
pub fn is_by_report(project: &Project) -> bool {
    let Some(anchorage) = &project.anchorage else { return false };
    let kind = |key: &str| choice_word(anchorage.rule, &anchorage.values, key);
    kind("anchor_kind").or(kind("fastener")).is_some_and(|word| DRILLED.contains(&word))
}

/// The sizes of the present bolt's own kind.
pub(super) fn bolts(project: &Project, reach: [usize; 2]) -> Option<Ladder> {
    let anchorage = project.anchorage.as_ref()?;
    let present = Rung { value: diameter_mm(project), word: None, place: 0 };
    let alone = Ladder::new(Change::Bolt, Vec::new(), present, Vec::new());
    let Some(place) = field(anchorage.rule, "bolt").filter(|&place| !has_own(project, place) && !is_by_report(project))
    else {
        return Some(alone);
    };
    let FieldShape::Choice(words) = anchorage.rule.fields[place].shape else { return Some(alone) };
    let Some(now) = anchorage.values.choice(place) else { return Some(alone) };
    let family = |word: &str| {
        let size = SIZES.get(SIZE_WORDS.iter().position(|known| *known == word)?)?;
        Some((size.system, matches!(size.thread, Thread::Stud(_))))
    };
    let Some(own) = family(words[now]) else { return Some(alone) };
    let rung = |place: usize| Rung { value: listed_mm(words[place]).unwrap_or(0.0), word: Some(words[place]), place };
    let alike = |place: &usize| family(words[*place]) == Some(own);
    let mut below: Vec<Rung> = (0..now).rev().filter(alike).take(reach[0]).map(rung).collect();
    below.reverse();
    let above = (now + 1..words.len()).filter(alike).take(reach[1]).map(rung).collect();
    Some(Ladder::new(Change::Bolt, below, rung(now), above))
}

fn embedments(project: &Project, reach: [usize; 2]) -> Option<Ladder> {
    let (anchorage, slab) = (project.anchorage.as_ref()?, project.slab.as_ref()?);
    let place = field(anchorage.rule, "embedment_mm")?;
    let present_mm = anchorage.values.number(place)?;
    let rung = |value: f64| Rung { value, word: None, place };
    if has_own(project, place) || is_by_report(project) {
        return Some(Ladder::new(Change::Embedment, Vec::new(), rung(present_mm), Vec::new()));
    }
    let FieldShape::Number { min, max, .. } = anchorage.rule.fields[place].shape else { return None };
    let round_mm = if anchorage.rule.system == System::Us { 12.7 } else { 10.0 };
    let step_mm = number::ceil(EMBEDMENT_STEP * present_mm / round_mm) * round_mm;
    let at = |count: f64| present_mm + count * step_mm;
    let below = (1..=reach[0]).rev().map(|count| at(-(count as f64))).filter(|&mm| mm >= min).map(rung).collect();
    let most_mm = max.min(slab.thickness_mm);
    let above = (1..=reach[1]).map(|count| at(count as f64)).filter(|&mm| mm <= most_mm).map(rung).collect();
    Some(Ladder::new(Change::Embedment, below, rung(present_mm), above))
}

/// The values of a written list about a present one.
fn written(list: &[f64], present: Rung, reach: [usize; 2], change: Change) -> Ladder {
    let rung = |&value: &f64| Rung { value, word: None, place: 0 };
    let mut below: Vec<Rung> =
        list.iter().rev().filter(|&&one| one < present.value * (1.0 - SAME)).take(reach[0]).map(rung).collect();
    below.reverse();
    let above = list.iter().filter(|&&one| one > present.value * (1.0 + SAME)).take(reach[1]).map(rung).collect();
    Ladder::new(change, below, present, above)
}

fn in_mm(list: &[f64], system: System, kind: Kind) -> Vec<f64> {
    list.iter().map(|&value| system.to_si(value, kind)).collect()
}

fn edges(project: &Project, reach: [usize; 2]) -> Option<Ladder> {
    let Some(nearest) = nearest_edge(project) else {
        let far = Rung { value: f64::INFINITY, word: None, place: 0 };
        return Some(Ladder::new(Change::Edge, Vec::new(), far, Vec::new()));
    };
    let system = project.anchorage.as_ref()?.rule.system;
    if nearest.distance_mm > EDGE_FAR_MM {
        let present = Rung { value: nearest.distance_mm, word: None, place: 0 };
        return Some(Ladder::new(Change::Edge, Vec::new(), present, Vec::new()));
    }
    let list = if system == System::Us { in_mm(EDGES_IN, system, Kind::Length) } else { EDGES_MM.to_vec() };
    let present = Rung { value: nearest.distance_mm, word: None, place: 0 };
    Some(written(&list, present, reach, Change::Edge))
}

fn strengths(project: &Project, reach: [usize; 2]) -> Option<Ladder> {
    let system = project.anchorage.as_ref()?.rule.system;
    let list = if system == System::Us { in_mm(STRENGTHS_PSI, system, Kind::Stress) } else { STRENGTHS_MPA.to_vec() };
    let present = Rung { value: project.slab.as_ref()?.strength_mpa, word: None, place: 0 };
    Some(written(&list, present, reach, Change::Strength))
}

fn numbers(project: &Project) -> Ladder {
    let anchors = project.cabinet.anchors.len();
    let rung = |group: usize| Rung { value: (group * anchors) as f64, word: None, place: group };
    // Without a diameter nobody can say how far apart the bolts of a group have to be.
    let known = diameter_mm(project) > 0.0;
    let above = GROUPS[1..].iter().filter(|&&group| known && group * anchors <= ANCHORS_MAX).map(|&group| rung(group));
    Ladder::new(Change::Number, Vec::new(), rung(1), above.collect())
}

/// The edge of the slab that is nearest to an anchor.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct NearestEdge {
    /// From the nearest anchor to the edge.
    pub distance_mm: f64,
    /// The way from the edge into the slab.
    pub inward: Point,
}

/// The nearest edge; none where all are far.
pub fn nearest_edge(project: &Project) -> Option<NearestEdge> {
    let outline = &project.slab.as_ref()?.outline;
    let mut nearest: Option<NearestEdge> = None;
    for anchor in &project.cabinet.anchors {
        let at = anchor.at;
        for (distance_mm, inward) in [
            (at.x_mm - outline.left_mm, Point::new(1.0, 0.0)),
            (outline.right_mm - at.x_mm, Point::new(-1.0, 0.0)),
            (at.y_mm - outline.front_mm, Point::new(0.0, 1.0)),
            (outline.rear_mm - at.y_mm, Point::new(0.0, -1.0)),
        ] {
            if distance_mm.is_finite() && nearest.is_none_or(|known| distance_mm < known.distance_mm) {
                nearest = Some(NearestEdge { distance_mm, inward });
            }
        }
    }
    nearest
}

/// The project with the rungs of a variant put in; none where it cannot be built: a foot off the slab, a bolt that the
/// rule refuses.
pub fn varied(project: &Project, ladders: &[Ladder; 5], rungs: Rungs) -> Option<Project> {
    let rung = |change: usize| ladders[change].rungs[rungs[change] as usize];
    let is_now = |change: usize| rungs[change] as usize == ladders[change].now;
    let mut varied = project.clone();
    let anchorage = varied.anchorage.as_mut()?;
    if !is_now(0) {
        anchorage.values.0[field(anchorage.rule, "bolt")?] = Value::Choice(rung(0).place);
    }
    if !is_now(1) {
        anchorage.values.0[rung(1).place] = Value::Number(rung(1).value);
    }
    let mut faults = Vec::new();
    (anchorage.rule.faults)(&anchorage.values, &mut faults);
    if !faults.is_empty() {
        return None;
    }
    if !is_now(4) {
        let along = nearest_edge(project).map_or(Point::new(1.0, 0.0), |edge| edge.inward.turned_right());
        spread(&mut varied, Pitch { count: rung(4).place, along });
    }
    let slab = varied.slab.as_mut()?;
    if !is_now(2) {
        let nearest = nearest_edge(project)?;
        let away_mm = rung(2).value - nearest.distance_mm;
        // The cabinet moves inwards, so in its own axes the slab moves the other way.
        *slab = slab.shifted(Point::new(-away_mm * nearest.inward.x_mm, -away_mm * nearest.inward.y_mm));
    }
    let on_slab = |foot: &crate::cabinet::Foot| slab.is_under_all(&foot.rectangle());
    let in_slab = |anchor: &crate::cabinet::Anchor| slab.is_under(anchor.at);
    if !varied.cabinet.feet.iter().all(on_slab) || !varied.cabinet.anchors.iter().all(in_slab) {
        return None;
    }
    if !is_now(3) {
        slab.strength_mpa = rung(3).value;
    }
    Some(varied)
}
