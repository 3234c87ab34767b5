//! Whether a free cabinet rocks, and how far: every state, both ways, under a pulse or a record.

use alloc::vec;
use alloc::vec::Vec;

use super::free_body::{self, AXIS, FreeBody, NO_FEET, STATE, free_bodies};
use super::rocking_beside::{beside_table, sliding_table, tell_beside};
use super::shaking::{self, Shaking, shaking};
use super::{Picture, Shown, Study, StudyText, rocking_beside};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, Part, Sheet, StepId, Subject, System, steps};
use crate::motion::{
    BODY_TEXTS, CRITERIA_TEXTS, End, Following, GroundMotion, MotionSetting, RockingBody, Scaled, Scheme, Side,
    VERDICT_TEXTS, Verdict, rock,
};
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 181 "rocking study";
    BODIES "" Number (STATICS "" Derived) "rocking in every state": Name;
    HEIGHT "" Number (STATICS "" Derived) "centre of gravity at": Name;
    ALPHA_HIGH "" Number (STATICS "" Derived) "falls by itself at, right or rear": Name;
    ALPHA_LOW "" Number (STATICS "" Derived) "falls by itself at, left or front": Name;
    P_COLUMN "" Number (STATICS "" Derived) "frequency parameter": Name;
    LIFTS "" Number (STATICS "" Derived) "lifts an edge at": Name;
    WORD "" Number (STATICS "" Derived) "what can be said": Name;
    PEAK "" Number (STATICS "" Derived) "largest angle over that of falling": Name;
    FRICTION "" Number (STATICS "" Derived) "friction without which it slides": Name;
    RUNS "" Number (STATICS "" Derived) "all runs of the worst": Name;
    IMPULSE "" Number (INPUT "motion" Derived) "place of the impulse": Name;
    FACTOR "" Number (INPUT "motion" Derived) "factor on the motion": Name;
    ENDS "" Number (STATICS "" Derived) "how it ends": Name;
    AT "" Number (STATICS "" Derived) "when": Name;
    IMPACTS "" Number (STATICS "" Derived) "impacts": Name;
    STEADY "" Number (STATICS "" Derived) "half the step": Name;
    SAME "" Number (STATICS "" Derived) "the same": Name;
    OTHER "" Number (STATICS "" Derived) "sensitive": Name;
    NEVER_LIFTS "" Number (STATICS "" Derived) "never lifts": Name;
    RECOVERS "" Number (STATICS "" Derived) "comes to rest": Name;
    OVERTURNS "" Number (STATICS "" Derived) "falls over": Name;
    LEAVES "" Number (STATICS "" Derived) "leaves the floor, which is not followed": Name;
    STILL_ROCKS "" Number (STATICS "" Derived) "still rocks when the following stops": Name;
    OVER_TIME "" Number (STATICS "" Derived) "angle over that of falling, in the worst run": Name;
    TIME "" Number (STATICS "" Derived) "time": Name;
    FALLING "" Number (STATICS "" Derived) "stands on one edge": Name;
    HALF "" Number (STATICS "" Derived) "half of it": Name;
    NOT_ONE_RUN "" Number (STATICS "" Derived) "nothing is said from one restitution, one sign or one record: every motion is tried with several places of the impulse, both ways round, as it is and 1.2 times as strong, and each once more with half the step": Reason;
    WORDS "" Number (STATICS "" Derived) "it stands where every run stays below half of the angle at which it would fall by its weight; it is marginal where some run passes half of it, and may fall where some run passes it or falls over; sensitive, where half the step gives another word": Reason;
    ONE_MOTION "" Number (STATICS "EN 1998-1 4.3.3.4.3" Memory) "one motion is tried here; an assessment takes at least three records, and seven before a mean counts": Reason;
    SLIDES_TOO "" Number (STATICS "" Derived) "where rocking needs more friction than there is, it slides as well, which this model of pure rocking does not reach": Reason;
    SENSITIVE_NOTE "" Number (STATICS "" Derived) "sensitive: in some run half the step moves the largest angle by more than a hundredth; its digits mean little": Reason;
    NONE_FOLLOWED "" Number (STATICS "" Derived) "no state can be followed in time: each falls by itself, is too squat to rock, or turns about a corner": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "rocking", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "rocking",
    title: "Would it rock, and fall?",
    help: "A rigid body that turns about one edge, comes down and turns about the other, followed in time under a pulse, or \
           under a record of motion that you open here. Neither bending of the frame nor rolling contents are in it; sliding \
           is followed apart.",
    steps: &[
        &TEXTS,
        &free_body::TEXTS,
        &shaking::TEXTS,
        &rocking_beside::TEXTS,
        &BODY_TEXTS,
        &CRITERIA_TEXTS,
        &VERDICT_TEXTS,
    ],
};

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let bench = Bench::new(project);
    let setting = project.motion.clone().unwrap_or_default();
    let motion = match shaking(&bench, &setting, extra) {
        Ok(motion) => motion,
        Err(absent) => return absent.shown(),
    };
    let bodies = free_bodies(&bench);
    if bodies.is_empty() {
        return Err(NO_FEET);
    }
    let verdicts: Vec<Option<Verdict>> = bodies
        .iter()
        .map(|one| one.refused.is_none().then(|| scheme(&one.body, &[&motion], &setting).verdict()))
        .collect();
    let worst = worst(&verdicts).ok_or(NONE_FOLLOWED)?;
    let Some(verdict) = &verdicts[worst] else { return Err(NONE_FOLLOWED) };
    let body = &bodies[worst];
    let friction = project.slab.as_ref().map_or(crate::slab::FRICTION_DEFAULT, |slab| slab.friction);
    let mut notes = vec![WORDS, NOT_ONE_RUN, ONE_MOTION];
    if verdict.friction_needed > friction {
        notes.push(SLIDES_TOO);
    }
    if motion.vertical_peak() > 0.0 {
        notes.push(shaking::VERTICAL_TOO);
    }
    if verdicts.iter().flatten().any(|verdict| verdict.is_sensitive) {
        notes.push(SENSITIVE_NOTE);
    }
    let mut sheet = Sheet::told();
    for side in [Side::Right, Side::Left] {
        sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
        RockingBody::of(&body.given, &mut sheet);
        body.body.tell(side, 1.0, &mut sheet);
    }
    tell_beside(body, &motion, &mut sheet);
    let tables = vec![
        bodies_table(&bodies, &verdicts, worst),
        runs_table(verdict),
        sliding_table(&motion, [friction, setting.friction_low]),
        beside_table(body, &motion),
    ];
    let pictures = vec![Picture::Plot(over_time(&body.body, &motion, verdict))];
    Ok(Shown { notes, tables, pictures, sections: sheet.sections })
}

/// What is tried of a body under motions.
pub(super) fn scheme<'a>(
    body: &'a RockingBody,
    motions: &'a [&'a dyn GroundMotion],
    setting: &MotionSetting,
) -> Scheme<'a> {
    Scheme { body, motions, impulse: setting.impulse }
}

fn worst(verdicts: &[Option<Verdict>]) -> Option<usize> {
    let level = |verdict: &Verdict| (verdict.word, verdict.runs[verdict.worst].rocked.peak_ratio);
    let mut best: Option<usize> = None;
    for (place, verdict) in verdicts.iter().enumerate() {
        let Some(verdict) = verdict else { continue };
        let known = best.and_then(|best| verdicts[best].as_ref());
        if known.is_none_or(|known| level(verdict) > level(known)) {
            best = Some(place);
        }
    }
    best
}

fn bodies_table(bodies: &[FreeBody], verdicts: &[Option<Verdict>], worst: usize) -> Table {
    let rows = bodies.iter().zip(verdicts).enumerate().map(|(place, (one, verdict))| {
        let (right, left) = (one.body.edge(Side::Right), one.body.edge(Side::Left));
        let mut cells = vec![Cell::Text(one.name.clone()), Cell::Name(one.way.row()), Cell::Number(one.body.height_mm)];
        match (verdict, one.refused) {
            (Some(verdict), _) => {
                let run = &verdict.runs[verdict.worst];
                let peak = if run.rocked.end == End::Overturns {
                    Cell::Name(OVERTURNS)
                } else {
                    number(run.rocked.peak_ratio)
                };
                cells.extend([
                    Cell::Number(right.alpha_rad),
                    Cell::Number(left.alpha_rad),
                    Cell::Number(right.p_rad_per_s.min(left.p_rad_per_s)),
                    Cell::Number(right.uplift.min(left.uplift)),
                    peak,
                    number(verdict.friction_needed),
                    Cell::Name(verdict.word.row()),
                ]);
            }
            (None, refused) => {
                cells.extend([
                    Cell::Nothing,
                    Cell::Nothing,
                    Cell::Nothing,
                    Cell::Nothing,
                    Cell::Nothing,
                    Cell::Nothing,
                ]);
                cells.push(refused.map_or(Cell::Nothing, Cell::Name));
            }
        }
        Line { cells, is_marked: place == worst }
    });
    let columns = columns![
        Column::words(STATE),
        Column::words(AXIS),
        Column::nearest(HEIGHT, Kind::Length),
        Column::down(ALPHA_HIGH, Kind::Angle),
        Column::down(ALPHA_LOW, Kind::Angle),
        Column::nearest(P_COLUMN, Kind::AngularVelocity),
        Column::down(LIFTS, Kind::Acceleration),
        Column::up(PEAK, Kind::Utilisation),
        Column::up(FRICTION, Kind::Utilisation),
        Column::words(WORD),
    ];
    Table { name: BODIES, columns, rows: rows.collect() }
}

fn runs_table(verdict: &Verdict) -> Table {
    let rows = verdict.runs.iter().enumerate().map(|(place, run)| {
        let falls = run.rocked.end == End::Overturns;
        let cells = vec![
            Cell::Number(run.impulse),
            Cell::Number(run.factor),
            Cell::Name(end_row(run.rocked.end)),
            if falls { Cell::Nothing } else { number(run.rocked.peak_ratio) },
            Cell::Number(if falls { run.rocked.end_s } else { run.rocked.peak_s }),
            Cell::Number(run.rocked.impacts as f64),
            Cell::Name(if run.is_sensitive { OTHER } else { SAME }),
        ];
        Line { cells, is_marked: place == verdict.worst }
    });
    let columns = columns![
        Column::nearest(IMPULSE, Kind::Number),
        Column::nearest(FACTOR, Kind::Number),
        Column::words(ENDS),
        Column::up(PEAK, Kind::Utilisation),
        Column::nearest(AT, Kind::Time),
        Column::nearest(IMPACTS, Kind::Number),
        Column::words(STEADY),
    ];
    Table { name: RUNS, columns, rows: rows.collect() }
}

fn end_row(end: End) -> StepId {
    match end {
        End::NeverLifts => NEVER_LIFTS,
        End::Recovers => RECOVERS,
        End::Overturns => OVERTURNS,
        End::LeavesTheFloor => LEAVES,
        End::StillRocks => STILL_ROCKS,
    }
}

/// A cell of a number, nothing where it is none.
pub(super) fn number(value: f64) -> Cell {
    if value.is_finite() { Cell::Number(value) } else { Cell::Nothing }
}

/// Most points of a drawn path.
const POINTS_MAX: usize = 900;
/// Beyond this part of the angle of falling nothing is drawn.
const DRAWN_TO: f64 = 1.6;

fn over_time(body: &RockingBody, motion: &Shaking, verdict: &Verdict) -> Plot {
    let run = &verdict.runs[verdict.worst];
    let motion = Scaled { motion, horizontal: run.factor, vertical: run.factor.abs() };
    let points = path(body, &motion, run.impulse);
    let points = points.into_iter().map(|[time_s, angle_rad]| {
        let side = if angle_rad >= 0.0 { Side::Right } else { Side::Left };
        [time_s, angle_rad / body.edge(side).alpha_rad]
    });
    let points: Vec<[f64; 2]> = points.filter(|point| point[1].abs() <= DRAWN_TO).collect();
    let axis = |name, kind| Axis { name, kind, scale: AxisScale::Linear, ends: None };
    let level = |name, y| PlotLevel { name: PlotName::Row(name), y };
    Plot {
        name: OVER_TIME,
        x: axis(TIME, Kind::Time),
        y: Axis { ends: Some([-1.2, 1.2]), ..axis(PEAK, Kind::Number) },
        curves: vec![Curve { name: PlotName::None, points, stroke: Stroke::Strong }],
        points: Vec::new(),
        levels: vec![level(FALLING, 1.0), level(HALF, 0.5), level(HALF, -0.5), level(FALLING, -1.0)],
        grid: None,
    }
}

/// Times and angles of a body, thinned so that a drawing can bear them; turning points stay.
pub fn path(body: &RockingBody, motion: &dyn GroundMotion, impulse: f64) -> Vec<[f64; 2]> {
    let mut all: Vec<[f64; 2]> = vec![[0.0, 0.0]];
    rock(body, motion, &Following { impulse, ..Following::USUAL }, &mut |time_s, angle_rad| {
        all.push([time_s, angle_rad]);
    });
    let every = all.len().div_ceil(POINTS_MAX).max(1);
    let is_turn = |place: usize| {
        let (before, here) = (all[place][1] - all[place - 1][1], all[place + 1][1] - all[place][1]);
        before * here < 0.0 && all[place][1].abs() > 0.02
    };
    let last = all.len() - 1;
    let kept = (0..all.len()).filter(|&place| place == 0 || place == last || place % every == 0 || is_turn(place));
    kept.map(|place| all[place]).collect()
}

/// The path of the body that lifts first, as it is drawn in motion: Housner's impacts, the motion as it is.
#[derive(Clone, Debug, PartialEq)]
pub struct RockingPath {
    /// From the left or front edge to the centre of gravity.
    pub left_mm: f64,
    /// From the centre of gravity to the right or rear edge.
    pub right_mm: f64,
    /// Height of the centre of gravity.
    pub height_mm: f64,
    /// Height of the cabinet.
    pub top_mm: f64,
    /// Times in s and angles in rad, positive to the right or rear.
    pub points: Vec<[f64; 2]>,
    /// Row of how it ends.
    pub end: StepId,
    /// Row of which way it rocks.
    pub way: StepId,
    /// Name of the state.
    pub state: alloc::string::String,
}

/// The path for a figure that moves; none where there is nothing to follow.
pub fn rocking_path(project: &Project, extra: &str) -> Option<RockingPath> {
    let bench = Bench::new(project);
    let setting = project.motion.clone().unwrap_or_default();
    let motion = shaking(&bench, &setting, extra).ok()?;
    let least = |one: &FreeBody| one.body.edge(Side::Right).uplift.min(one.body.edge(Side::Left).uplift);
    let bodies = free_bodies(&bench);
    let followed = bodies.iter().filter(|one| one.refused.is_none());
    let one = followed.min_by(|a, b| least(a).total_cmp(&least(b)))?;
    let end = rock(&one.body, &motion, &Following::USUAL, &mut |_, _| {}).end;
    Some(RockingPath {
        left_mm: one.body.left_mm,
        right_mm: one.body.right_mm,
        height_mm: one.body.height_mm,
        top_mm: project.cabinet.height_mm,
        points: path(&one.body, &motion, 1.0),
        end: end_row(end),
        way: one.way.row(),
        state: one.name.clone(),
    })
}
