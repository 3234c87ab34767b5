//! An uneven floor: a hollow under one foot, the three-point limit, and what shimming changes.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::base_reactions::{BaseLoad, Push, Reactions, Supports};
use crate::calc::clause::INPUT;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Kind, StepId, steps};
use crate::geometry::Point;
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 168 "uneven floor";
    HOLLOW "" Number (INPUT "" Derived) "Forces of the feet over the hollow under the first one, full": Name;
    GAP "" Number (INPUT "" Derived) "hollow": Name;
    FORCE "" Number (INPUT "" Derived) "force of a foot": Name;
    THIRD "" Number (INPUT "" Derived) "a third of the weight": Name;
    LIMITS "" Number (INPUT "" Derived) "Three-point limit of every foot, full": Name;
    FOOT "" Number (INPUT "" Derived) "foot": Name;
    NOW_GAP "" Number (INPUT "" Derived) "gap as given": Name;
    SHIMMED "" Number (INPUT "" Derived) "force, shimmed": Name;
    AS_GIVEN "" Number (INPUT "" Derived) "force, with the gaps as given": Name;
    LIFTS "" Number (INPUT "" Derived) "hollow at which it hangs, in mm": Name;
    HEAVIEST "" Number (INPUT "" Derived) "heaviest other foot then": Name;
    SHARE "" Number (INPUT "" Derived) "over its share on an even floor": Name;
    RIGID "" Number (INPUT "" Derived) "the base is taken as rigid: a frame that twists follows the floor and levels the feet; on a stiff frame less than a millimetre unloads a foot": Reason;
    THREE "" Number (INPUT "" Derived) "with three feet or fewer the floor may be as uneven as it likes: they always bear": Reason;
    BESIDE "" Number (INPUT "" Derived) "the centre of gravity does not stand over the feet": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "uneven-floor", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "uneven-floor",
    title: "What does an uneven floor do?",
    help: "A hollow under one foot moves its load to the other diagonal until it hangs and three feet bear. For every foot: \
           the hollow at which that happens, and what shimming the gaps as given changes.",
    steps: &[&TEXTS],
};

const STEPS: usize = 24;

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    if project.cabinet.feet.len() < 4 {
        return Err(THREE);
    }
    let bench = Bench::new(project);
    let load = &bench.loads[0];
    let weight_n = load.mass_kg * G_N_PER_KG;
    let push = Push {
        down_n: weight_n,
        at: Point::new(load.centre_mm[0], load.centre_mm[1]),
        height_mm: load.centre_mm[2],
        horizontal_n: 0.0,
        direction_rad: 0.0,
    };
    let standing = Standing { supports: bench.supports[0].without_anchors(), load: BaseLoad::from(push) };
    let feet = project.cabinet.feet.len();
    let even = standing.forces_n(&vec![0.0; feet]).ok_or(BESIDE)?;
    let given: Vec<f64> = project.cabinet.feet.iter().map(|foot| foot.gap_mm).collect();
    let as_given = standing.forces_n(&given).ok_or(BESIDE)?;
    let mut rows = Vec::new();
    let mut first = 0.0;
    for foot in 0..feet {
        let lifts = standing.lifting_mm(foot, feet);
        if foot == 0 {
            first = lifts;
        }
        let mut gaps = vec![0.0; feet];
        gaps[foot] = lifts;
        let then = standing.forces_n(&gaps).unwrap_or_default();
        let heaviest = then.iter().copied().fold(0.0, f64::max);
        let share = then.iter().zip(&even).map(|(then, even)| then / even).fold(0.0, f64::max);
        rows.push(Line {
            cells: vec![
                Cell::Text(project.cabinet.feet[foot].name.clone()),
                Cell::Number(even[foot]),
                Cell::Number(given[foot]),
                Cell::Number(as_given[foot]),
                Cell::Number(lifts),
                Cell::Number(heaviest),
                Cell::Number(share),
            ],
            is_marked: given[foot] > 0.0,
        });
    }
    let columns = columns![
        Column::words(FOOT),
        Column::up(SHIMMED, Kind::Force),
        Column::nearest(NOW_GAP, Kind::Length),
        Column::up(AS_GIVEN, Kind::Force),
        Column::down(LIFTS, Kind::Number),
        Column::up(HEAVIEST, Kind::Force),
        Column::up(SHARE, Kind::Number),
    ];
    let hollow = |step: usize| 1.5 * first * step as f64 / STEPS as f64;
    let forces: Vec<Vec<f64>> = (0..=STEPS)
        .map(|step| {
            let mut gaps = vec![0.0; feet];
            gaps[0] = hollow(step);
            standing.forces_n(&gaps).unwrap_or_default()
        })
        .collect();
    let strokes = [Stroke::Strong, Stroke::Plain, Stroke::Dashed, Stroke::Dotted];
    let curve = |foot: usize| Curve {
        name: PlotName::Text(project.cabinet.feet[foot].name.clone()),
        points: forces
            .iter()
            .enumerate()
            .map(|(step, forces)| [hollow(step), forces.get(foot).copied().unwrap_or(f64::NAN)])
            .collect(),
        stroke: strokes[foot % strokes.len()],
    };
    let plot = Plot {
        name: HOLLOW,
        x: Axis { name: GAP, kind: Kind::Length, scale: AxisScale::Linear, ends: None },
        y: Axis { name: FORCE, kind: Kind::Force, scale: AxisScale::Linear, ends: None },
        curves: (0..feet.min(4)).map(curve).collect(),
        points: Vec::new(),
        levels: vec![PlotLevel { name: PlotName::Row(THIRD), y: weight_n / 3.0 }],
        grid: None,
    };
    let tables = vec![Table { name: LIMITS, columns, rows }];
    Ok(Shown { notes: vec![RIGID], tables, pictures: vec![Picture::Plot(plot)], sections: Vec::new() })
}

struct Standing {
    supports: Supports,
    load: BaseLoad,
}

impl Standing {
    fn forces_n(&self, gaps_mm: &[f64]) -> Option<Vec<f64>> {
        let mut reactions = Reactions::default();
        self.supports.clone().with_gaps_mm(gaps_mm).settle_into(&self.load, &mut reactions).ok()?;
        Some(reactions.feet.iter().map(|foot| foot.force_n).collect())
    }

    /// The hollow at which a foot hangs, by halving.
    fn lifting_mm(&self, foot: usize, feet: usize) -> f64 {
        let bears = |gap_mm: f64| {
            let mut gaps = vec![0.0; feet];
            gaps[foot] = gap_mm;
            self.forces_n(&gaps).is_some_and(|forces| forces[foot] > 0.0)
        };
        let mut high = 1e-3;
        while bears(high) && high < 1e3 {
            high *= 2.0;
        }
        let mut low = 0.0;
        for _ in 0..40 {
            let middle = (low + high) / 2.0;
            if bears(middle) { low = middle } else { high = middle }
        }
        high
    }
}
