//! How often a free cabinet falls as the motion is made stronger.

use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

use super::free_body::{self, FreeBody, NO_FEET, free_bodies};
use super::rocking::scheme;
use super::shaking::{self, Absent, NO_MOTION, Shaking, shaking};
use super::work::Work;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, StepId, steps};
use crate::motion::{Fragility, MotionSetting, Side};
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 184 "fragility study";
    NAME "" Number (STATICS "" Derived) "share of runs that fall, over the strength of the motion": Name;
    FACTOR "" Number (INPUT "motion" Derived) "factor on the motion": Name;
    SHARE "" Number (STATICS "" Derived) "share that falls": Name;
    FALL_SHARE "" Number (STATICS "" Derived) "falls": Name;
    PEAK "" Number (STATICS "" Derived) "largest angle over that of falling, where it stands": Name;
    FIRST "" Number (STATICS "" Derived) "weakest factor at which any run falls, between": Name;
    STATE "" Number (INPUT "states" Derived) "state": Name;
    WAY "" Number (STATICS "" Derived) "rocks": Name;
    RUNS "" Number (STATICS "" Derived) "runs at each strength": Name;
    NOT_RISING "" Number (STATICS "" Derived) "a body may fall under a weak motion and stand under a stronger one, so the curve need not rise": Reason;
    ONE_MOTION "" Number (STATICS "" Derived) "of one motion with several impacts and both signs: it shows where falling begins, and is no probability of an earthquake": Reason;
    NO_FALL "" Number (STATICS "" Derived) "nothing falls up to the strongest factor": Reason;
    NONE_ROCKS "" Number (STATICS "" Derived) "no state can be followed in time": Reason;
    RECORD_WRONG "" Number (INPUT "motion" Derived) "the record has faults, which the question about rocking lists": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "fragility", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "fragility",
    title: "How strong before it falls?",
    help: "The pulse or record is made stronger in 200 steps, each with three places of the impulse and both signs, for the \
           body that lifts first. It takes a while; what is found so far is kept when you stop it.",
    steps: &[&TEXTS, &free_body::TEXTS, &shaking::TEXTS],
};

/// How many strengths are tried.
const STRENGTHS: usize = 200;

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let mut work = begin(project, extra)?;
    while work.advance() {}
    Ok(work.shown())
}

/// Begins it in portions.
pub fn begin(project: &Project, extra: &str) -> Result<Box<dyn Work>, StepId> {
    let bench = Bench::new(project);
    let setting = project.motion.clone().unwrap_or_default();
    let motion = shaking(&bench, &setting, extra).map_err(|absent| match absent {
        Absent::Reason(reason) => reason,
        Absent::Faults(_) => RECORD_WRONG,
    })?;
    if let Shaking::Pulse(pulse) = motion
        && pulse.amplitude <= 0.0
    {
        return Err(NO_MOTION);
    }
    let bodies = free_bodies(&bench);
    if bodies.is_empty() {
        return Err(NO_FEET);
    }
    let least = |one: &FreeBody| one.body.edge(Side::Right).uplift.min(one.body.edge(Side::Left).uplift);
    let followed = bodies.into_iter().filter(|one| one.refused.is_none());
    let body = followed.min_by(|a, b| least(a).total_cmp(&least(b))).ok_or(NONE_ROCKS)?;
    let curve = Fragility::new(setting.strongest, STRENGTHS);
    Ok(Box::new(Under { body, motion, setting, curve }))
}

struct Under {
    body: FreeBody,
    motion: Shaking,
    setting: MotionSetting,
    curve: Fragility,
}

impl Work for Under {
    fn advance(&mut self) -> bool {
        self.curve.advance(&scheme(&self.body.body, &[&self.motion], &self.setting)).is_some()
    }

    fn progress(&self) -> (usize, usize) {
        self.curve.progress()
    }

    fn shown(&self) -> Shown {
        let points = self.curve.points();
        let share = |falls: usize, runs: usize| falls as f64 / runs.max(1) as f64;
        let curve = |name, of: &dyn Fn(&crate::motion::FragilityPoint) -> f64, stroke| {
            let points = points.iter().map(|point| [point.factor, of(point)]).collect();
            Curve { name: PlotName::Row(name), points, stroke }
        };
        let axis = |name, kind, ends| Axis { name, kind, scale: AxisScale::Linear, ends };
        let plot = Plot {
            name: NAME,
            x: axis(FACTOR, Kind::Number, Some([0.0, self.setting.strongest])),
            y: axis(SHARE, Kind::Number, Some([0.0, 1.05])),
            curves: vec![
                curve(FALL_SHARE, &|point| share(point.falls, point.runs), Stroke::Strong),
                curve(
                    PEAK,
                    &|point| if point.falls == point.runs { f64::NAN } else { point.peak_ratio },
                    Stroke::Dashed,
                ),
            ],
            points: Vec::new(),
            levels: vec![PlotLevel { name: PlotName::None, y: 0.5 }],
            grid: None,
        };
        let first = self.curve.first_fall();
        let cells = vec![
            Cell::Text(self.body.name.clone()),
            Cell::Name(self.body.way.row()),
            first.map_or(Cell::Nothing, Cell::Range),
            points.first().map_or(Cell::Nothing, |point| Cell::Number(point.runs as f64)),
        ];
        let columns = columns![
            Column::words(STATE),
            Column::words(WAY),
            Column::nearest(FIRST, Kind::Number),
            Column::nearest(RUNS, Kind::Number),
        ];
        let mut notes: Vec<StepId> = vec![ONE_MOTION, NOT_RISING];
        if first.is_none() {
            notes.insert(0, NO_FALL);
        }
        Shown {
            notes,
            tables: vec![Table { name: NAME, columns, rows: vec![Line::plain(cells)] }],
            pictures: vec![Picture::Plot(plot)],
            sections: Vec::new(),
        }
    }
}
