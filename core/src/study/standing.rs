//! At what push, slope or tilt a free cabinet slides or tips: every state, every side.

use alloc::vec;
use alloc::vec::Vec;
use core::f64::consts::PI;

use super::free_body::{self, NO_FEET, STATE, states};
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Kind, Outcome, Sheet, StepId, number, steps};
use crate::checks::other_tests::{self, OtherTests, other_tests};
use crate::checks::stability::Tested;
use crate::checks::thresholds::{FRICTION_BAN, Stand, thresholds};
use crate::geometry::Point;
use crate::load_out::{LoadState, load};
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 180 "standing study";
    THRESHOLDS "" Number (STATICS "" Derived) "push over the weight at which it slides or tips": Name;
    DIRECTION "" Number (STATICS "" Derived) "direction of the push": Name;
    REACH "" Number (STATICS "" Derived) "centre of gravity to the edge": Name;
    TIPS_AT "" Number (STATICS "" Derived) "tips at": Name;
    SLIDES_AT "" Number (STATICS "" Derived) "slides at": Name;
    FIRST "" Number (STATICS "" Derived) "what comes first": Name;
    TILT "" Number (STATICS "" Derived) "tips when tilted by": Name;
    PUSH "" Number (INPUT "motion" Derived) "hand push that tips it": Name;
    PUSH_SLIDES "" Number (INPUT "motion" Derived) "hand push that slides it": Name;
    TESTS "" Number (STATICS "IEC 62368-1:2018 8.6.2.2" Secondary) "stability tests of IEC 62368-1, one of which is asked for": Name;
    WORST "" Number (STATICS "" Derived) "worst towards": Name;
    TEST_TILT "" Number (STATICS "" Derived) "tilt of 10°, utilisation": Name;
    TEST_TILT_15 "" Number (STATICS "IEC 62368-1:2018 8.6.5" Secondary) "tilt of 15°": Name;
    TEST_FIFTH "" Number (STATICS "IEC 60950-1 4.1" Memory) "push with a fifth of the weight up to 2 m": Name;
    TEST_800 "" Number (STATICS "IEC 60950-1 4.1" Memory) "800 N on what stands out": Name;
    OTHERS "" Number (STATICS "IEC 60950-1 4.1, IEC 62368-1 8.6.3 and 8.6.5" Memory) "the last three columns are tests of other clauses, each over its worst side: IEC 60950-1 4.1 pushes with a fifth of the weight, at most 250 N, and presses 800 N on level surfaces up to 1 m above the floor, here on whatever stands out; IEC 62368-1 asks for the same push of what is moved on casters or may do more harm, or for a tilt of 15°": Reason;
    TEST_PUSH "" Number (STATICS "" Derived) "push with load, utilisation": Name;
    DRAWN "" Number (INPUT "contents" Derived) "drawn out as far as it travels": Name;
    ALL_DRAWN "" Number (INPUT "contents" Derived) "everything": Name;
    AS_STATE "" Number (INPUT "states" Derived) "as the state has it": Name;
    TIPS_LEVEL "" Number (STATICS "" Derived) "slides": Name;
    DEMAND_LEVEL "" Number (STATICS "" Derived) "push of the rule": Name;
    UNLOADED "" Number (STATICS "" Derived) "thresholds count the vertical motion of the seismic rule as taking weight away": Reason;
    LOW_NOTE "" Number (INPUT "motion" Derived) "friction is known badly: tipping and rocking are looked at as if it held, sliding as if it were low": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "standing-free", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "standing-free",
    title: "At what push does it slide or tip?",
    help: "Thresholds of every state towards every side, by weight and friction alone, on the slope that is given; and the \
           stability tests of equipment, also with drawers out. Statics of a rigid body: a short jolt may do less, a long \
           one no more.",
    steps: &[&TEXTS, &free_body::TEXTS, &other_tests::TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let bench = Bench::new(project);
    if bench.supports[0].feet_hull().corners().len() < 3 {
        return Err(NO_FEET);
    }
    let mut sheet = Sheet::told();
    let (table, pictured) = (thresholds_table(&bench, &mut sheet), picture(&bench));
    let tests = tests_table(&bench, &mut sheet);
    let mut notes = vec![LOW_NOTE, FRICTION_BAN, OTHERS];
    if vertical(&bench) > 0.0 {
        notes.push(UNLOADED);
    }
    Ok(Shown { notes, tables: vec![table, tests], pictures: vec![Picture::Plot(pictured)], sections: sheet.sections })
}

fn vertical(bench: &Bench) -> f64 {
    match &bench.demand {
        Some(Ok(demand)) => demand.vertical,
        _ => 0.0,
    }
}

fn stand(bench: &Bench, state: usize, direction_rad: f64) -> Stand {
    let (project, load) = (bench.project, &bench.loads[state]);
    let setting = project.motion.clone().unwrap_or_default();
    let centre = Point::new(load.centre_mm[0], load.centre_mm[1]);
    let side = bench.supports[0].feet_hull().ray_exit(centre, direction_rad);
    Stand {
        mass_kg: load.mass_kg,
        height_mm: load.centre_mm[2],
        reach_mm: side.map_or(0.0, |side| side.distance_mm),
        friction: project.slab.as_ref().map_or(crate::slab::FRICTION_DEFAULT, |slab| slab.friction),
        vertical: vertical(bench),
        slope_rad: number::atan2(setting.slope, 1.0),
        push_height_mm: setting.push_height_mm,
    }
}

/// To the right, to the rear, to the left, to the front.
const QUARTERS: [f64; 4] = [0.0, PI / 2.0, PI, -PI / 2.0];
/// Directions nearer than this are one.
const SAME_RAD: f64 = 1e-6;

/// The quarters, and at right angles to the nearest side of the feet's hull where that is none of them.
fn directions_rad(bench: &Bench, state: usize) -> Vec<f64> {
    let [x_mm, y_mm, _] = bench.loads[state].centre_mm;
    let nearest = bench.supports[0].feet_hull().nearest_edge(Point::new(x_mm, y_mm));
    let across = nearest.map(|side| side.edge.from.direction_rad(side.edge.to) - PI / 2.0);
    let is_new = |across: &f64| QUARTERS.iter().all(|quarter| number::cos(across - quarter) < number::cos(SAME_RAD));
    let across = across.filter(is_new).map(|across| if across <= -PI { across + 2.0 * PI } else { across });
    QUARTERS.into_iter().chain(across).collect()
}

fn thresholds_table(bench: &Bench, sheet: &mut Sheet) -> Table {
    let mut rows: Vec<Line> = Vec::new();
    let mut worst: Option<(f64, usize, Stand)> = None;
    for state in states(bench) {
        for direction_rad in directions_rad(bench, state) {
            let stand = stand(bench, state, direction_rad);
            let found = thresholds(&stand, &mut Sheet::quiet());
            if worst.as_ref().is_none_or(|(least, ..)| found.tips < *least) {
                worst = Some((found.tips, rows.len(), stand));
            }
            rows.push(Line::plain(vec![
                Cell::Text(bench.loads[state].name.clone()),
                Cell::Number(direction_rad),
                Cell::Number(stand.reach_mm),
                Cell::Number(found.tips),
                Cell::Number(found.slides),
                Cell::Name(found.first()),
                Cell::Number(found.tips_rad),
                Cell::Number(found.tipping_push_n),
                Cell::Number(found.sliding_push_n),
            ]));
        }
    }
    if let Some((_, row, stand)) = worst {
        rows[row].is_marked = true;
        thresholds(&stand, sheet);
    }
    let columns = columns![
        Column::words(STATE),
        Column::nearest(DIRECTION, Kind::Angle),
        Column::down(REACH, Kind::Length),
        Column::down(TIPS_AT, Kind::Acceleration),
        Column::down(SLIDES_AT, Kind::Acceleration),
        Column::words(FIRST),
        Column::down(TILT, Kind::Angle),
        Column::down(PUSH, Kind::Force),
        Column::down(PUSH_SLIDES, Kind::Force),
    ];
    Table { name: THRESHOLDS, columns, rows }
}

/// Every state, and the full one with contents drawn out as far as they travel.
fn tests_table(bench: &Bench, sheet: &mut Sheet) -> Table {
    let project = bench.project;
    let mut rows = Vec::new();
    let mut add = |state: usize, drawn: Cell, tested: &Tested| {
        let one = |check: CheckId| {
            let side = tested.worst(check);
            match tested.check(check, &side, &mut Sheet::quiet()) {
                Outcome::Compared { utilisation, .. } if utilisation.is_finite() => {
                    (side.direction_rad, Cell::Number(utilisation), utilisation > 1.0)
                }
                _ => (side.direction_rad, Cell::Nothing, true),
            }
        };
        let (tilt, push) = (one(CheckId::FreeTilt), one(CheckId::FreePush));
        let sides = tested.sides();
        let worst = |of: fn(&OtherTests) -> f64| {
            let each = sides.iter().map(|side| of(&other_tests(tested, side, &mut Sheet::quiet())));
            // Nothing is said over a side beyond which its centre stands: there it falls by itself.
            let beyond = sides.iter().any(|side| !(side.reach_mm > 0.0));
            if beyond { Cell::Nothing } else { Cell::Number(each.fold(0.0, f64::max)) }
        };
        let others = [worst(|found| found.tilt), worst(|found| found.push), worst(|found| found.down)];
        if rows.is_empty() {
            other_tests(tested, &tested.worst(CheckId::FreePush), sheet);
        }
        let name = Cell::Text(bench.loads[state].name.clone());
        let mut cells = vec![name, drawn, Cell::Number(tilt.0), tilt.1, push.1];
        cells.extend(others);
        rows.push(Line { cells, is_marked: tilt.2 && push.2 });
    };
    for state in states(bench) {
        add(state, Cell::Name(AS_STATE), &bench.tested(state));
    }
    let travels: Vec<usize> = (0..project.contents.len())
        .filter(|&place| project.contents[place].travel_mm.is_some_and(|travel_mm| travel_mm > 0.0))
        .take(12)
        .collect();
    let full = &project.all_states()[0];
    let drawn = |places: &[usize]| {
        let mut state: LoadState = full.clone();
        for aboard in &mut state.aboard {
            if places.contains(&aboard.content) {
                aboard.drawn_out_mm = project.contents[aboard.content].travel_mm.unwrap_or(0.0);
            }
        }
        state
    };
    for &place in &travels {
        let state = drawn(&[place]);
        let load = load_of(project, &state);
        add(0, Cell::Text(project.contents[place].name.clone()), &bench.tested_as(&state, &load));
    }
    if travels.len() > 1 {
        let state = drawn(&travels);
        let load = load_of(project, &state);
        add(0, Cell::Name(ALL_DRAWN), &bench.tested_as(&state, &load));
    }
    let columns = columns![
        Column::words(STATE),
        Column::words(DRAWN),
        Column::nearest(WORST, Kind::Angle),
        Column::up(TEST_TILT, Kind::Utilisation),
        Column::up(TEST_PUSH, Kind::Utilisation),
        Column::up(TEST_TILT_15, Kind::Utilisation),
        Column::up(TEST_FIFTH, Kind::Utilisation),
        Column::up(TEST_800, Kind::Utilisation),
    ];
    Table { name: TESTS, columns, rows }
}

fn load_of(project: &Project, state: &LoadState) -> crate::load_out::Load {
    load(&project.cabinet, &project.contents, state, &mut Sheet::quiet())
}

fn picture(bench: &Bench) -> Plot {
    let strokes = [Stroke::Strong, Stroke::Plain, Stroke::Dashed, Stroke::Dotted];
    let curves = states(bench).into_iter().take(4).zip(strokes).map(|(state, stroke)| {
        let points = (0..=72).map(|step| {
            let direction_rad = step as f64 * 5.0 * PI / 180.0;
            [direction_rad, thresholds(&stand(bench, state, direction_rad), &mut Sheet::quiet()).tips]
        });
        Curve { name: PlotName::Text(bench.loads[state].name.clone()), points: points.collect(), stroke }
    });
    let slides = thresholds(&stand(bench, 0, 0.0), &mut Sheet::quiet()).slides;
    let mut levels = vec![PlotLevel { name: PlotName::Row(TIPS_LEVEL), y: slides }];
    if let Some(standing) = bench.standing(0) {
        levels.push(PlotLevel { name: PlotName::Row(DEMAND_LEVEL), y: standing.push });
    }
    let axis = |name, kind, ends| Axis { name, kind, scale: AxisScale::Linear, ends };
    Plot {
        name: THRESHOLDS,
        x: axis(DIRECTION, Kind::Angle, Some([0.0, 2.0 * PI])),
        y: axis(TIPS_AT, Kind::Acceleration, None),
        curves: curves.collect(),
        points: Vec::new(),
        levels,
        grid: None,
    }
}
