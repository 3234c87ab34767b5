//! Cabinets side by side: by themselves, with common concrete, as one body, tied at the top.

use alloc::vec;
use alloc::vec::Vec;

use super::floor_shown::outline_of;
use super::tied_at_top::{self, Leaning, tied};
use super::{Picture, Shown, Study, StudyText};
use crate::base_reactions::Reactions;
use crate::calc::clause::INPUT;
use crate::calc::{CheckId, Kind, Sheet, Status, StepId, limit, steps};
use crate::explore::{NoRow, Pitched, as_one_body, one_of_the_row};
use crate::geometry::Point;
use crate::project::bench::{Bench, Place, Purpose};
use crate::project::row::Tied;
use crate::project::{Project, quick_told};
use crate::report::figure::{Figure, FigurePart};
use crate::report::outcome::Verdict;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 215 "cabinets in a row";
    PLAN "" Number (INPUT "row" Derived) "The row in plan and from the front": Name;
    HOLDS "" Number (INPUT "row" Derived) "How it holds, standing by itself and in the row": Name;
    HOW "" Number (INPUT "row" Derived) "how it stands": Name;
    OUTCOME "" Number (INPUT "row" Derived) "outcome": Name;
    GOVERNS "" Number (INPUT "row" Derived) "what governs": Name;
    UTILISATION "" Number (INPUT "row" Derived) "utilisation": Name;
    STATE "" Number (INPUT "row" Derived) "in which state": Name;
    PULL "" Number (INPUT "row" Derived) "greatest pull of an anchor": Name;
    FOOT "" Number (INPUT "row" Derived) "greatest force in a foot": Name;
    ALONE "" Number (INPUT "row" Derived) "by itself": Name;
    LEFT "" Number (INPUT "row" Derived) "not tied, at the left end": Name;
    INNER "" Number (INPUT "row" Derived) "not tied, second from the left": Name;
    RIGHT "" Number (INPUT "row" Derived) "not tied, at the right end": Name;
    ONE_BODY "" Number (INPUT "row" Derived) "tied to one body": Name;
    TOP "" Number (INPUT "row" Derived) "Tied at the top, some full and some empty, pushed in any direction": Name;
    FULL_ONES "" Number (INPUT "row" Derived) "full cabinets": Name;
    BAR "" Number (INPUT "row" Derived) "force in the bar": Name;
    PULL_FULL "" Number (INPUT "row" Derived) "pull in a full one": Name;
    PULL_EMPTY "" Number (INPUT "row" Derived) "pull in an empty one": Name;
    PULL_FULL_ALONE "" Number (INPUT "row" Derived) "full, not tied": Name;
    PULL_EMPTY_ALONE "" Number (INPUT "row" Derived) "empty, not tied": Name;
    GAPS "" Number (INPUT "row" Derived) "The gap between two of them": Name;
    GAP "" Number (INPUT "row" Derived) "clear gap": Name;
    LEAN "" Number (INPUT "row" Derived) "one top moves by its base": Name;
    BOTH "" Number (INPUT "row" Derived) "two of them, against each other": Name;
    OVER_GAP "" Number (INPUT "row" Derived) "over the gap": Name;
    NO_ROW "" Number (INPUT "row" Derived) "no row is given: how many cabinets, at which pitch": Reason;
    NOT_WHOLE "" Number (INPUT "row" Derived) "a row has a whole number of cabinets": Reason;
    NO_PUSH "" Number (INPUT "row" Derived) "nothing pushes: the site is missing, or its rule does not reach": Reason;
    TOO_MANY "" Number (INPUT "row" Derived) "together they have more than 64 feet or 64 anchors, so the row is not looked at as one body": Reason;
    OFF "" Number (INPUT "row" Derived) "some of the row would stand beside the slab or over an opening; the slab's edges are measured from the cabinet at the left end": Reason;
    TIES "" Number (INPUT "row" Derived) "one body is only what its ties make it: they have to carry the shear between the cabinets, which is not checked here": Reason;
    ACROSS "" Number (INPUT "row" Derived) "bars with pinned ends work along the row only: against a push straight across it each cabinet stands by itself, but for what leans along the row because its mass or its feet stand off centre": Reason;
    CONCRETE "" Number (INPUT "row" Derived) "the anchors are not checked again with the forces of a row that is tied at the top: where a pull or a shear rises above what one cabinet by itself is checked for under pushes in the same direction, they are not covered; every direction of the plan is asked": Reason;
    MOVES "" Number (INPUT "row" Derived) "the lean is that of the base under the rule's own push: multiply it by the response factor that the rule divides by, and add what the frame sways": Reason;
    PART_FILLED "" Number (INPUT "row" Derived) "tied to one body, cabinets are full or empty; part-filled ones are not looked at": Reason;
    FLOOR_APART "" Number (INPUT "row" Derived) "the floor under the row tied to one body is not checked again: it is that of each cabinet by itself": Reason;
    TIED_TOP "" Number (INPUT "row" Derived) "tied at the top": Name;
    SHEAR "" Number (INPUT "row" Derived) "greatest shear under one": Name;
    SHEAR_ALONE "" Number (INPUT "row" Derived) "greatest shear, not tied": Name;
    ANCHORS "" Number (INPUT "row" Derived) "anchors": Name;
    NO_MORE "" Number (INPUT "row" Derived) "no more than by itself": Name;
    LIKELY "" Number (INPUT "row" Derived) "tops that meet strike each other, which no rule for cabinets covers; tie them, or keep them apart": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "cabinets-in-a-row", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "cabinets-in-a-row",
    title: "What if it stands in a row?",
    help: "The same cabinet again and again, side by side: not tied, with common concrete; tied to one body, with common \
           reactions; tied at the top, where full ones lean on empty ones. And whether their tops meet.",
    steps: &[&TEXTS, &tied_at_top::TEXTS],
};

/// How a cabinet or a row holds.
struct Held {
    name: StepId,
    cells: Vec<Cell>,
}

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let row = project.row.ok_or(NO_ROW)?;
    let count = row.count().ok_or(NOT_WHOLE)?;
    let pitched = Pitched { count, pitch_mm: row.pitch_mm };
    let bench = Bench::new(project);
    if bench.runs.is_empty() {
        return Err(NO_PUSH);
    }
    let mut notes = Vec::new();
    let mut note = |why: NoRow| {
        let said = if why == NoRow::TooMany { TOO_MANY } else { OFF };
        if !notes.contains(&said) {
            notes.push(said);
        }
    };
    let mut held = vec![held(ALONE, project)];
    for (name, place) in [(LEFT, 0), (INNER, 1), (RIGHT, count - 1)] {
        if name == INNER && count < 3 {
            continue;
        }
        match one_of_the_row(project, &pitched, place) {
            Ok(one) => held.push(self::held(name, &one)),
            Err(why) => note(why),
        }
    }
    match as_one_body(project, &pitched) {
        Ok(body) => held.push(self::held(ONE_BODY, &body)),
        Err(why) => note(why),
    }
    notes.push(TIES);
    if project.is_part_filled {
        notes.push(PART_FILLED);
    }
    if project.floor.is_some() {
        notes.push(FLOOR_APART);
    }
    let is_present = |name: StepId| match row.tied {
        Tied::Not => name == LEFT,
        Tied::AsOneBody => name == ONE_BODY,
        Tied::AtTheTop => name == TIED_TOP,
    };
    let mut sheet = Sheet::told();
    let height_mm = row.tie_height_mm.unwrap_or(project.cabinet.height_mm);
    let has_load = project.contents.iter().any(|content| content.mass_kg > 0.0);
    let top = has_load.then(|| top(&bench, count, height_mm, &mut sheet));
    if let Some((_, is_covered)) = top {
        held.push(tied_top(&held[0], is_covered));
    }
    let rows = held.into_iter().map(|held| Line { is_marked: is_present(held.name), cells: held.cells }).collect();
    let columns = columns![
        Column::words(HOW),
        Column::words(OUTCOME),
        Column::words(GOVERNS),
        Column::up(UTILISATION, Kind::Utilisation),
        Column::words(STATE),
        Column::up(PULL, Kind::Force),
        Column::up(FOOT, Kind::Force),
    ];
    let mut tables = vec![Table { name: HOLDS, columns, rows }];
    if let Some((table, _)) = top {
        tables.push(table);
        notes.extend([ACROSS, CONCRETE]);
    }
    tables.push(gaps(&bench, row.pitch_mm - project.cabinet.width_mm));
    notes.extend([MOVES, LIKELY]);
    let pictures = vec![Picture::Figure(figure(project, &pitched, row.tied, row.tie_height_mm))];
    Ok(Shown { notes, tables, pictures, sections: sheet.sections })
}

fn held(name: StepId, project: &Project) -> Held {
    let mut bench = Bench::new(project);
    let quick = quick_told(&mut bench);
    let governing = quick.governing();
    let status = match quick.verdict {
        Verdict::Holds => Status::Holds,
        Verdict::DoesNotHold => Status::Fails,
        Verdict::CannotBeSaid => Status::NotCovered,
    };
    let check = governing.and_then(|told| CheckId::named(told.id));
    let state = governing.and_then(|told| told.at).map(|at| bench.loads[at.state].name.clone());
    let [pull_n, foot_n] = greatest(&bench);
    let number = |force_n: f64| if force_n > 0.0 { Cell::Number(force_n) } else { Cell::Nothing };
    let cells = vec![
        Cell::Name(name),
        Cell::Status(status),
        check.map_or(Cell::Nothing, Cell::Check),
        governing.and_then(|told| told.utilisation).map_or(Cell::Nothing, Cell::Number),
        state.map_or(Cell::Nothing, Cell::Text),
        number(pull_n),
        number(foot_n),
    ];
    Held { name, cells }
}

/// A row tied at the top: as one cabinet by itself where that holds and the bars bring no anchor more, else not covered.
fn tied_top(alone: &Held, is_covered: bool) -> Held {
    let holds = is_covered && alone.cells[1] == Cell::Status(Status::Holds);
    let status = if holds { Status::Holds } else { Status::NotCovered };
    let mut cells = vec![Cell::Name(TIED_TOP), Cell::Status(status)];
    cells.resize(alone.cells.len(), Cell::Nothing);
    Held { name: TIED_TOP, cells }
}

/// The greatest pull of an anchor under the loads that anchors are checked for, and the greatest force in a foot under
/// those of the feet, over all states, the directions of the plan and every stiffness that is tried.
fn greatest(bench: &Bench) -> [f64; 2] {
    let mut greatest = [0.0_f64; 2];
    let mut reactions = Reactions::default();
    for state in 0..bench.loads.len() {
        for &run in &bench.runs {
            for &direction_rad in bench.plan_directions(run).list_rad() {
                let load = bench.case_load(&Place { state, run, direction_rad, stiffness: 0 }).push().into();
                for supports in &bench.supports {
                    if supports.settle_into(&load, &mut reactions).is_err() {
                        continue;
                    }
                    match run.purpose {
                        Purpose::Anchors => greatest[0] = greatest[0].max(reactions.tension_max_n()),
                        Purpose::Component => greatest[1] = greatest[1].max(reactions.compression_max_n()),
                    }
                }
            }
        }
    }
    greatest
}

/// Where the loads of a purpose stand, with every stiffness that is tried: along the row, to the right and to the left, and
/// where that is asked in all directions of the plan.
fn places(bench: &Bench, purpose: Purpose, ways: Ways) -> Vec<Place> {
    let mut places = Vec::new();
    for run in bench.runs.iter().copied().filter(|run| run.purpose == purpose) {
        let mut directions_rad = vec![0.0, core::f64::consts::PI];
        if ways == Ways::All {
            directions_rad.extend(bench.plan_directions(run).list_rad());
        }
        for direction_rad in directions_rad {
            for stiffness in 0..bench.supports.len() {
                places.push(Place { state: 0, run, direction_rad, stiffness });
            }
        }
    }
    places
}

/// Which pushes are asked.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Ways {
    /// Along the row.
    Along,
    /// In all directions.
    All,
}

/// Full and empty cabinets under bars at the top, for every number of full ones, at the load that strains the bar most;
/// and whether no anchor gets more than one cabinet by itself is checked for.
fn top(bench: &Bench, count: usize, height_mm: f64, sheet: &mut Sheet) -> (Table, bool) {
    let kind = |state: usize, place: Place, count: usize| {
        let push = bench.case_load(&Place { state, ..place }).push();
        Leaning { supports: &bench.supports[place.stiffness], push, count }
    };
    let purpose = if bench.runs.iter().any(|run| run.purpose == Purpose::Anchors) {
        Purpose::Anchors
    } else {
        Purpose::Component
    };
    let mut rows = Vec::new();
    let mut reactions = Reactions::default();
    // What one cabinet by itself is checked for at each place: pull and shear of the full and of the empty one. States 0
    // and 1 are always these two.
    let places = places(bench, purpose, Ways::All);
    let alone: Vec<[[f64; 2]; 2]> = places
        .iter()
        .map(|&place| {
            [0, 1].map(|state| {
                let one = kind(state, place, 1);
                let pull_n = match one.supports.settle_into(&one.push.into(), &mut reactions) {
                    Ok(()) => reactions.tension_max_n(),
                    Err(_) => 0.0,
                };
                [pull_n, one.push.horizontal_n]
            })
        })
        .collect();
    // The same anchors in the same concrete: pull and shear together are covered where one cabinet by itself, full or empty,
    // is checked for as much of both under a push in the same direction.
    let is_checked = |direction_rad: f64, [pull_n, shear_n]: [f64; 2]| {
        let covers = |one: &[f64; 2]| limit::at_most(pull_n, one[0]) && limit::at_most(shear_n, one[1]);
        let same = places.iter().zip(&alone).filter(|(place, _)| place.direction_rad == direction_rad);
        same.flat_map(|(_, kinds)| kinds).any(covers)
    };
    let most = |state: usize, what: usize| alone.iter().fold(0.0_f64, |most, one| most.max(one[state][what]));
    let by_themselves = [most(0, 0), most(1, 0)];
    let shear_alone = most(0, 1).max(most(1, 1));
    let mut is_covered = true;
    for full in 1..count {
        let mut worst: Option<(f64, Place)> = None;
        let mut pulls = [0.0_f64; 2];
        let (mut shear, mut rises) = (0.0_f64, false);
        for &place in &places {
            let kinds = [kind(0, place, full), kind(1, place, count - full)];
            let Some(tie) = tied(&kinds[0], &kinds[1], height_mm, &mut Sheet::quiet()) else {
                rises = true;
                continue;
            };
            for ((pull_n, shear_n), most_n) in tie.pulls_n.into_iter().zip(tie.shears_n).zip(&mut pulls) {
                *most_n = most_n.max(pull_n);
                shear = shear.max(shear_n);
                rises |= !is_checked(place.direction_rad, [pull_n, shear_n]);
            }
            if worst.is_none_or(|(known, _)| tie.bar_n.abs() > known) {
                worst = Some((tie.bar_n.abs(), place));
            }
        }
        if let (Some((_, place)), true) = (worst, full == count / 2) {
            tied(&kind(0, place, full), &kind(1, place, count - full), height_mm, sheet);
        }
        is_covered &= !rises;
        let known = |force_n: f64| if worst.is_some() { Cell::Number(force_n) } else { Cell::Nothing };
        rows.push(Line::plain(vec![
            Cell::Number(full as f64),
            worst.map_or(Cell::Nothing, |(bar_n, _)| Cell::Number(bar_n)),
            known(pulls[0]),
            Cell::Number(by_themselves[0]),
            known(pulls[1]),
            Cell::Number(by_themselves[1]),
            known(shear),
            Cell::Number(shear_alone),
            if rises { Cell::Status(Status::NotCovered) } else { Cell::Name(NO_MORE) },
        ]));
    }
    let columns = columns![
        Column::nearest(FULL_ONES, Kind::Number),
        Column::up(BAR, Kind::Force),
        Column::up(PULL_FULL, Kind::Force),
        Column::up(PULL_FULL_ALONE, Kind::Force),
        Column::up(PULL_EMPTY, Kind::Force),
        Column::up(PULL_EMPTY_ALONE, Kind::Force),
        Column::up(SHEAR, Kind::Force),
        Column::up(SHEAR_ALONE, Kind::Force),
        Column::words(ANCHORS),
    ];
    (Table { name: TOP, columns, rows }, is_covered)
}

/// How far tops lean towards each other, against the gap.
fn gaps(bench: &Bench, gap_mm: f64) -> Table {
    let mut lean_mm = 0.0_f64;
    let mut reactions = Reactions::default();
    for state in 0..bench.loads.len() {
        for place in places(bench, Purpose::Component, Ways::Along) {
            let load = bench.case_load(&Place { state, ..place }).push().into();
            let settled = bench.supports[place.stiffness].settle_into(&load, &mut reactions);
            let slope = if settled.is_ok() { reactions.plane.slope_x.abs() } else { f64::INFINITY };
            lean_mm = lean_mm.max(slope * bench.project.cabinet.height_mm);
        }
    }
    let known = |value: f64| if value.is_finite() { Cell::Number(value) } else { Cell::Nothing };
    let cells = vec![Cell::Number(gap_mm), known(lean_mm), known(2.0 * lean_mm), known(2.0 * lean_mm / gap_mm)];
    let columns = columns![
        Column::down(GAP, Kind::Length),
        Column::up(LEAN, Kind::Length),
        Column::up(BOTH, Kind::Length),
        Column::up(OVER_GAP, Kind::Utilisation),
    ];
    Table { name: GAPS, columns, rows: vec![Line::plain(cells)] }
}

/// Plan below, front above.
fn figure(project: &Project, row: &Pitched, tied: Tied, tie_height_mm: Option<f64>) -> Figure {
    let cabinet = &project.cabinet;
    let half = [cabinet.width_mm / 2.0, cabinet.depth_mm / 2.0];
    // The front stands above the plan, by a third of a depth.
    let floor_mm = half[1] + cabinet.depth_mm / 3.0;
    let mut parts = Vec::new();
    for place in 0..row.count {
        let x = row.pitch_mm * place as f64;
        parts.push(outline_of("cabinet", [x, 0.0], half));
        let middle = floor_mm + cabinet.height_mm / 2.0;
        parts.push(outline_of("cabinet", [x, middle], [half[0], cabinet.height_mm / 2.0]));
        let at = |point: Point| [x + point.x_mm, point.y_mm];
        for foot in &cabinet.feet {
            parts.push(outline_of("foot", at(foot.at), [foot.size.x_mm / 2.0, foot.size.y_mm / 2.0]));
        }
        for anchor in &cabinet.anchors {
            parts.push(FigurePart::Circle { class: "anchor", middle_mm: at(anchor.at), radius_mm: 16.0 });
        }
    }
    let last = row.pitch_mm * (row.count - 1) as f64;
    parts.push(FigurePart::Line { class: "ground", ends_mm: [[-half[0], floor_mm], [last + half[0], floor_mm]] });
    let bar = |height_mm: f64| FigurePart::Line {
        class: "strong",
        ends_mm: [[0.0, floor_mm + height_mm], [last, floor_mm + height_mm]],
    };
    match tied {
        Tied::Not => {}
        Tied::AsOneBody => parts.extend([bar(cabinet.height_mm * 0.04), bar(cabinet.height_mm * 0.96)]),
        Tied::AtTheTop => parts.push(bar(tie_height_mm.unwrap_or(cabinet.height_mm))),
    }
    parts.push(FigurePart::Dimension { from_mm: [0.0, -half[1]], to_mm: [row.pitch_mm, -half[1]], offset_px: -20.0 });
    Figure { name: PLAN, parts }
}
