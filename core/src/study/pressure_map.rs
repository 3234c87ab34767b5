//! Contact pressure under every foot, for every state and direction of the push.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::floor_shown::{foot_runs, outline_of, settled_everywhere};
use super::{Picture, Shown, Study, StudyText};
use crate::base_reactions::{BaseLoad, FootReaction, Reactions, Supports};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, Sheet, StepId, steps};
use crate::floor;
use crate::project::Project;
use crate::project::bench::{Bench, Place};
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::rules::floor::foot_plate::{PlateFormat, Spread};
use crate::rules::floor::suspended::AreaLoad;

steps! { 166 "pressure map";
    ROUND "" Number (INPUT "" Derived) "Peak pressure under each foot over the direction of the push, worst state and case": Name;
    DIRECTION "" Number (INPUT "" Derived) "direction of the push": Name;
    PEAK "" Number (INPUT "" Derived) "peak pressure": Name;
    MEAN "" Number (INPUT "" Derived) "mean over what is pressed": Name;
    STATE "" Number (INPUT "" Derived) "state": Name;
    FOOT "" Number (INPUT "" Derived) "foot": Name;
    FORCE "" Number (INPUT "" Derived) "force": Name;
    CONTACT "" Number (INPUT "" Derived) "part of the foot that is pressed": Name;
    EACH "" Number (INPUT "" Derived) "The worst pressure of every foot in every state": Name;
    PRESSED "" Number (INPUT "" Derived) "What is pressed where the pressure is highest": Name;
    PUSH "" Number (INPUT "" Derived) "push": Name;
    SPREADERS "" Number (INPUT "" Derived) "Square spreader plates for the wanted pressure, strength design, under the heaviest foot": Name;
    WANTED "" Number (INPUT "" Derived) "wanted pressure": Name;
    SIDE "" Number (INPUT "" Derived) "side": Name;
    THICK "" Number (INPUT "" Derived) "thickness": Name;
    DISPERSED "" Number (INPUT "" Derived) "in the middle of the slab, spread at 45 degrees": Name;
    NO_PUSH "" Number (INPUT "site" Derived) "without a seismic rule nothing is pushed, and there is no direction to look at": Reason;
    NO_AREA "" Number (INPUT "cabinet.feet" Derived) "no foot has a size, so there is no pressure": Reason;
    LIFTED "" Number (INPUT "" Derived) "a foot that is lifted presses nothing; where the cabinet tips there is no pressure to tell": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "pressure-map", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "pressure-map",
    title: "How hard does each foot press, and when?",
    help: "Highest pressure under every foot while the push goes once round, over all states and load cases of the feet; \
           and the part of each foot that is pressed where it is worst.",
    steps: &[&TEXTS],
};

/// Directions once round.
const ROUND_STEPS: usize = 72;

/// Highest pressures of all feet under pushes from every direction: the rows of directions one after the other.
///
/// Units: MPa. Directions that nothing balances are not a number.
pub fn pressures_mpa(bench: &Bench, supports: &Supports, start: &Place, directions: usize) -> Vec<f64> {
    let feet = supports.feet().len();
    let mut found = Vec::with_capacity(feet * directions);
    let mut reactions = Reactions::default();
    for step in 0..directions {
        let direction_rad = core::f64::consts::TAU * step as f64 / directions as f64;
        let load = BaseLoad::from(bench.case_load(&Place { direction_rad, ..*start }).push());
        match supports.settle_into(&load, &mut reactions) {
            Ok(()) => found.extend(reactions.feet.iter().map(|foot| foot.peak_pressure_mpa)),
            Err(_) => found.extend(core::iter::repeat_n(f64::NAN, feet)),
        }
    }
    found
}

/// The pressures of the built-in cabinet on eight feet from 360 directions, as a hash of their bits; for counting what
/// they cost.
pub fn pressure_check() -> u32 {
    let Some(mut project) = crate::project::built_in() else { return 0 };
    let mut feet = project.cabinet.feet.clone();
    for foot in &mut feet {
        foot.at.x_mm *= 0.4;
        foot.name.push('2');
    }
    project.cabinet.feet.extend(feet);
    let bench = Bench::new(&project);
    let Some(&run) = foot_runs(&bench).first() else { return 0 };
    let start = Place { state: 0, run, direction_rad: 0.0, stiffness: 0 };
    let found = pressures_mpa(&bench, &bench.supports[0], &start, 360);
    found
        .iter()
        .fold(0, |hash: u32, value| hash.rotate_left(5) ^ value.to_bits() as u32 ^ (value.to_bits() >> 32) as u32)
}

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let bench = Bench::new(project);
    if bench.cases().is_empty() {
        return Err(NO_PUSH);
    }
    if project.cabinet.feet.iter().all(|foot| foot.size.area_mm2() <= 0.0) {
        return Err(NO_AREA);
    }
    let feet = project.cabinet.feet.len();
    let supports = &bench.supports[0];
    let mut highest = vec![f64::NAN; feet * ROUND_STEPS];
    for state in 0..bench.loads.len() {
        for run in foot_runs(&bench) {
            let start = Place { state, run, direction_rad: 0.0, stiffness: 0 };
            for (known, found) in highest.iter_mut().zip(pressures_mpa(&bench, supports, &start, ROUND_STEPS)) {
                if !(*known >= found) && found.is_finite() {
                    *known = found;
                }
            }
        }
    }
    let strokes = [Stroke::Strong, Stroke::Plain, Stroke::Dashed, Stroke::Dotted];
    let curve = |foot: usize| {
        let point = |step: usize| {
            let direction_rad = core::f64::consts::TAU * step as f64 / ROUND_STEPS as f64;
            [direction_rad, highest[step % ROUND_STEPS * feet + foot]]
        };
        let name = PlotName::Text(project.cabinet.feet[foot].name.clone());
        Curve { name, points: (0..=ROUND_STEPS).map(point).collect(), stroke: strokes[foot % strokes.len()] }
    };
    let axis = |name, kind, ends| Axis { name, kind, scale: AxisScale::Linear, ends };
    let plot = Plot {
        name: ROUND,
        x: axis(DIRECTION, Kind::Angle, Some([0.0, core::f64::consts::TAU])),
        y: axis(PEAK, Kind::Pressure, None),
        // More than eight lines cannot be told apart; the table has all feet.
        curves: (0..feet.min(8)).map(curve).collect(),
        points: Vec::new(),
        levels: Vec::new(),
        grid: None,
    };
    let mut pictures = vec![Picture::Plot(plot)];
    pictures.extend(pressed(&bench).map(Picture::Figure));
    let mut tables = vec![table(&bench)];
    tables.extend(spreaders(&bench));
    Ok(Shown { notes: vec![LIFTED], tables, pictures, sections: Vec::new() })
}

fn table(bench: &Bench) -> Table {
    let supports = &bench.supports[0];
    let mut rows = Vec::new();
    let mut reactions = Reactions::default();
    let mut marked: (f64, usize) = (0.0, 0);
    for state in 0..bench.loads.len() {
        let feet = supports.feet().len();
        let mut worst: Vec<Option<(FootReaction, f64)>> = vec![None; feet];
        for run in foot_runs(bench) {
            for step in 0..ROUND_STEPS {
                let direction_rad = core::f64::consts::TAU * step as f64 / ROUND_STEPS as f64;
                let place = Place { state, run, direction_rad, stiffness: 0 };
                let load = BaseLoad::from(bench.case_load(&place).push());
                if supports.settle_into(&load, &mut reactions).is_err() {
                    continue;
                }
                for (worst, foot) in worst.iter_mut().zip(&reactions.feet) {
                    if worst.is_none_or(|(known, _)| foot.peak_pressure_mpa > known.peak_pressure_mpa) {
                        *worst = Some((*foot, direction_rad));
                    }
                }
            }
        }
        for (foot, worst) in worst.into_iter().enumerate() {
            let mut cells = vec![
                Cell::Text(bench.loads[state].name.clone()),
                Cell::Text(String::from(bench.project.cabinet.feet[foot].name.as_str())),
            ];
            match worst {
                Some((foot, direction_rad)) => {
                    if foot.peak_pressure_mpa > marked.0 {
                        marked = (foot.peak_pressure_mpa, rows.len());
                    }
                    let pressures = [foot.peak_pressure_mpa, foot.mean_pressure_mpa, foot.force_n];
                    cells.extend(pressures.map(Cell::Number));
                    cells.extend([foot.contact_fraction, direction_rad].map(Cell::Number));
                }
                None => cells.extend([const { Cell::Nothing }; 5]),
            }
            rows.push(Line::plain(cells));
        }
    }
    if let Some(row) = rows.get_mut(marked.1) {
        row.is_marked = true;
    }
    let columns = columns![
        Column::words(STATE),
        Column::words(FOOT),
        Column::up(PEAK, Kind::Pressure),
        Column::up(MEAN, Kind::Pressure),
        Column::up(FORCE, Kind::Force),
        Column::nearest(CONTACT, Kind::Number),
        Column::nearest(DIRECTION, Kind::Angle),
    ];
    Table { name: EACH, columns, rows }
}

/// Spreader plates under the heaviest foot: for the wanted pressure where one is given, else for three usual ones.
fn spreaders(bench: &Bench) -> Option<Table> {
    let load_n = settled_everywhere(bench).force_n;
    let foot = bench.project.cabinet.feet.iter().map(|foot| f64::min(foot.size.x_mm, foot.size.y_mm));
    let foot_mm = foot.fold(f64::INFINITY, f64::min);
    let values = bench.project.floor.as_ref().map(|floor| &floor.values);
    let wanted = values.and_then(|values| values.number(floor::WANTED));
    let yield_mpa = values.map_or(235.0, |values| values.given(floor::PLATE_YIELD));
    let mut rows = Vec::new();
    for wanted_mpa in wanted.map_or(vec![1.0, 0.5, 0.25], |wanted| vec![wanted]) {
        let spread = Spread { load_n, wanted_mpa, foot_mm, yield_mpa };
        if let Ok([side, thick]) = spread.plate_mm(PlateFormat::Strength, &mut Sheet::quiet()) {
            let slab = bench.project.slab.as_ref();
            let below = slab.map_or(Cell::Nothing, |slab| {
                Cell::Number(AreaLoad::dispersed_mpa(load_n, [side; 2], slab.thickness_mm, &mut Sheet::quiet()))
            });
            let plate = [wanted_mpa, side, thick].map(Cell::Number);
            rows.push(Line::plain(plate.into_iter().chain([below]).collect()));
        }
    }
    let columns = columns![
        Column::down(WANTED, Kind::Pressure),
        Column::up(SIDE, Kind::Length),
        Column::up(THICK, Kind::Length),
        Column::up(DISPERSED, Kind::AreaLoad),
    ];
    (!rows.is_empty()).then_some(Table { name: SPREADERS, columns, rows })
}

/// The pressed part of every foot where the pressure is highest.
fn pressed(bench: &Bench) -> Option<Figure> {
    let (place, plane) = settled_everywhere(bench).at?;
    let cabinet = &bench.project.cabinet;
    let half = [cabinet.width_mm / 2.0, cabinet.depth_mm / 2.0];
    let mut parts = vec![outline_of("cabinet", [0.0, 0.0], half)];
    for (number, foot) in cabinet.feet.iter().enumerate() {
        let half = [foot.size.x_mm / 2.0, foot.size.y_mm / 2.0];
        parts.push(outline_of("foot", [foot.at.x_mm, foot.at.y_mm], half));
        let contact = bench.supports[0].contact(number, &plane);
        if contact.corners.len() > 2 {
            let corners_mm = contact.corners.iter().map(|corner| [corner.x_mm, corner.y_mm]).collect();
            parts.push(FigurePart::Outline { class: "hatched", corners_mm });
        }
    }
    let (sin, cos) = (crate::calc::number::sin(place.direction_rad), crate::calc::number::cos(place.direction_rad));
    let reach = 0.35 * f64::min(cabinet.width_mm, cabinet.depth_mm);
    parts.push(FigurePart::Arrow {
        class: "force",
        from_mm: [0.0, 0.0],
        to_mm: [reach * cos, reach * sin],
        name: PlotName::Row(PUSH),
        value: Some((place.direction_rad, Kind::Angle)),
    });
    Some(Figure { name: PRESSED, parts })
}
