//! Springs in series under each corner, and what they do to the pull in the bolts.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::base_reactions::{Anchor, BaseLoad, Foot, Reactions, Supports};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, Sheet, StepId, number, steps};
use crate::checks::stiffness::{
    K_ANCHOR, K_ANCHORED, K_CLIP, K_FOOT, K_GIVEN, K_PAD, K_PUNCH, K_SERIES, K_SLAB, K_STEM,
};
use crate::project::Project;
use crate::project::bench::{Bench, Place, Purpose};
use crate::report::plot::{Axis, AxisScale, Curve, Grid, Plot, PlotName, PlotPoint, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 167 "stiffness study";
    SERIES "" Number (INPUT "" Derived) "Springs in series": Name;
    CORNER "" Number (INPUT "" Derived) "of": Name;
    WHICH "" Number (INPUT "" Derived) "number": Name;
    SPRING "" Number (INPUT "" Derived) "spring": Name;
    STIFFNESS "" Number (INPUT "" Derived) "stiffness": Name;
    FEET_TITLE "" Number (INPUT "" Derived) "foot": Name;
    ANCHORS_TITLE "" Number (INPUT "" Derived) "anchor": Name;
    MAP "" Number (INPUT "" Derived) "Largest pull of a bolt over the stiffness of feet and anchors": Name;
    OF_FEET "" Number (INPUT "" Derived) "stiffness of the softest foot": Name;
    OF_ANCHORS "" Number (INPUT "" Derived) "stiffness of the softest anchor": Name;
    NOW "" Number (INPUT "" Derived) "now": Name;
    RATIO "" Number (INPUT "" Derived) "Largest pull over the ratio of stiffness": Name;
    KAPPA "" Number (INPUT "" Derived) "foot over anchor": Name;
    PULL "" Number (INPUT "" Derived) "largest pull": Name;
    PRESS "" Number (INPUT "" Derived) "largest force of a foot": Name;
    RATIOS "" Number (INPUT "" Derived) "The usual envelope: ratios 1, 5 and 20, and the present one": Name;
    ALL_SCALED "" Number (INPUT "" Derived) "all feet are scaled together, and all anchors; what is hatched pulls harder than now. Softer feet pull harder on the bolts, stiffer anchors too; with ratio 1 it is the linear bolt group": Reason;
    NO_ANCHORS "" Number (INPUT "cabinet.anchors" Derived) "without anchors nothing pulls": Reason;
    NO_PUSH "" Number (INPUT "site" Derived) "without a seismic rule that reaches, nothing pulls": Reason;
    NEVER "" Number (INPUT "" Derived) "no anchor pulls in any load case": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "stiffness", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "stiffness",
    title: "What do soft feet and stiff bolts do to the pull?",
    help: "Every spring under feet and anchors, each with what it is made of; then the largest pull of a bolt while all \
           feet and all anchors become softer or stiffer, in the state and load case where it is largest now.",
    steps: &[&TEXTS, &crate::checks::stiffness::TEXTS],
};

/// Places along each side of the map.
const SIDE: usize = 13;
/// How far the map reaches both ways.
const REACH: f64 = 30.0;
const DIRECTIONS: usize = 72;

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    if project.cabinet.anchors.is_empty() {
        return Err(NO_ANCHORS);
    }
    let bench = Bench::new(project);
    let pushed = Pushed::worst(&bench).ok_or(NO_PUSH)?;
    let now = pushed.pull_n(&bench, 1.0, 1.0);
    if !(now[0] > 0.0) {
        return Err(NEVER);
    }
    let supports = &bench.supports[0];
    let softest = |stiffness: &mut dyn Iterator<Item = f64>| stiffness.fold(f64::INFINITY, f64::min);
    let foot = softest(&mut supports.feet().iter().map(|foot| foot.stiffness_n_per_mm));
    let anchor = softest(&mut supports.anchors().iter().map(|anchor| anchor.stiffness_n_per_mm));
    let factor = |place: usize| number::pow(REACH, 2.0 * place as f64 / (SIDE - 1) as f64 - 1.0);
    let places: Vec<f64> = (0..SIDE).map(factor).collect();
    let mut values = Vec::new();
    for &of_anchors in &places {
        for &of_feet in &places {
            values.push(pushed.pull_n(&bench, of_feet, of_anchors)[0]);
        }
    }
    let axis = |name| Axis { name, kind: Kind::Stiffness, scale: AxisScale::Log, ends: None };
    let map = Plot {
        name: MAP,
        x: axis(OF_FEET),
        y: axis(OF_ANCHORS),
        curves: Vec::new(),
        points: vec![PlotPoint { name: PlotName::Row(NOW), at: [foot, anchor], is_present: true }],
        levels: Vec::new(),
        grid: Some(Grid {
            x: places.iter().map(|factor| factor * foot).collect(),
            y: places.iter().map(|factor| factor * anchor).collect(),
            values,
            checks: Vec::new(),
            contours: vec![now[0] * (1.0 + 1e-9), now[0] * 1.5, now[0] * 2.0],
            blanks: Vec::new(),
        }),
    };
    let ratio_now = foot / anchor;
    let ratios: Vec<f64> = (0..=30).map(|step| number::pow(10.0, -0.6 + 0.12 * step as f64)).collect();
    let along = |ratio: f64| pushed.pull_n(&bench, 1.0, ratio_now / ratio);
    let line = Plot {
        name: RATIO,
        x: Axis { name: KAPPA, kind: Kind::Number, scale: AxisScale::Log, ends: None },
        y: Axis { name: PULL, kind: Kind::Force, scale: AxisScale::Linear, ends: None },
        curves: vec![
            Curve {
                name: PlotName::Row(PULL),
                points: ratios.iter().map(|&ratio| [ratio, along(ratio)[0]]).collect(),
                stroke: Stroke::Strong,
            },
            Curve {
                name: PlotName::Row(PRESS),
                points: ratios.iter().map(|&ratio| [ratio, along(ratio)[1]]).collect(),
                stroke: Stroke::Dashed,
            },
        ],
        points: vec![PlotPoint { name: PlotName::Row(NOW), at: [ratio_now, now[0]], is_present: true }],
        levels: Vec::new(),
        grid: None,
    };
    let mut rows: Vec<Line> = [1.0, 5.0, 20.0]
        .map(|ratio| {
            let [pull, press] = along(ratio);
            Line::plain([ratio, pull, press].map(Cell::Number).into())
        })
        .into();
    rows.push(Line { cells: [ratio_now, now[0], now[1]].map(Cell::Number).into(), is_marked: true });
    let envelope = Table {
        name: RATIOS,
        columns: columns![
            Column::nearest(KAPPA, Kind::Number),
            Column::up(PULL, Kind::Force),
            Column::up(PRESS, Kind::Force),
        ],
        rows,
    };
    let mut sheet = Sheet::told();
    bench.tell_stiffness(&mut sheet);
    let pictures = vec![Picture::Plot(map), Picture::Plot(line)];
    Ok(Shown { notes: vec![ALL_SCALED], tables: vec![springs(&sheet), envelope], pictures, sections: sheet.sections })
}

/// The springs that were told, one a row.
fn springs(sheet: &Sheet) -> Table {
    let kept = [K_PUNCH, K_STEM, K_FOOT, K_PAD, K_SLAB, K_SERIES, K_GIVEN, K_ANCHOR, K_CLIP, K_ANCHORED];
    let mut rows = Vec::new();
    for section in &sheet.sections {
        let (title, place) = match section.subject {
            crate::calc::Subject::Foot(place) => (FEET_TITLE, place),
            crate::calc::Subject::Anchor(place) => (ANCHORS_TITLE, place),
            _ => continue,
        };
        for step in section.steps.iter().filter(|step| kept.contains(&step.id)) {
            let cells = vec![
                Cell::Name(title),
                Cell::Number(place as f64 + 1.0),
                Cell::Name(step.id),
                Cell::Number(step.value),
            ];
            rows.push(Line::plain(cells));
        }
    }
    Table {
        name: SERIES,
        columns: columns![
            Column::words(CORNER),
            Column::nearest(WHICH, Kind::Number),
            Column::words(SPRING),
            Column::nearest(STIFFNESS, Kind::Stiffness),
        ],
        rows,
    }
}

/// The state and load case in which a bolt is pulled hardest.
struct Pushed {
    place: Place,
}

impl Pushed {
    fn worst(bench: &Bench) -> Option<Pushed> {
        let mut best: Option<(f64, Pushed)> = None;
        let of_anchors = bench.runs.iter().any(|run| run.purpose == Purpose::Anchors);
        for state in 0..bench.loads.len() {
            for &run in bench.runs.iter().filter(|run| !of_anchors || run.purpose == Purpose::Anchors) {
                let pushed = Pushed { place: Place { state, run, direction_rad: 0.0, stiffness: 0 } };
                let pull = pushed.pull_n(bench, 1.0, 1.0)[0];
                if best.as_ref().is_none_or(|(known, _)| pull > *known) {
                    best = Some((pull, pushed));
                }
            }
        }
        best.map(|(_, pushed)| pushed)
    }

    /// Largest pull of an anchor and largest force of a foot, with all feet and all anchors scaled; NaN where it tips.
    fn pull_n(&self, bench: &Bench, of_feet: f64, of_anchors: f64) -> [f64; 2] {
        let given = &bench.supports[0];
        let feet: Vec<Foot> = given
            .feet()
            .iter()
            .map(|foot| Foot { stiffness_n_per_mm: foot.stiffness_n_per_mm * of_feet, ..*foot })
            .collect();
        let anchors: Vec<Anchor> = given
            .anchors()
            .iter()
            .map(|anchor| Anchor { stiffness_n_per_mm: anchor.stiffness_n_per_mm * of_anchors, ..*anchor })
            .collect();
        let supports = Supports::new(&feet, &anchors).with_gaps_mm(given.gaps_mm());
        let mut reactions = Reactions::default();
        let mut most = [0.0_f64; 2];
        for step in 0..DIRECTIONS {
            let direction_rad = core::f64::consts::TAU * step as f64 / DIRECTIONS as f64;
            let load = BaseLoad::from(bench.case_load(&Place { direction_rad, ..self.place }).push());
            if supports.settle_into(&load, &mut reactions).is_err() {
                return [f64::NAN; 2];
            }
            most[0] = most[0].max(reactions.tension_max_n());
            most[1] = most[1].max(reactions.compression_max_n());
        }
        most
    }
}
