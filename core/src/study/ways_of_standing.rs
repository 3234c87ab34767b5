//! Three ways of standing side by side: casters, levelling feet, wide bases, for the same cabinet on the same floor.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::floor_shown::{Stood, outline_of, settled_everywhere};
use super::{Picture, Shown, Study, StudyText};
use crate::base_reactions::{BaseLoad, Push};
use crate::cabinet::Foot;
use crate::calc::clause::INPUT;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Kind, Sheet, StepId, steps};
use crate::floor::{self, casters, standing};
use crate::geometry::{Point, Size};
use crate::input::{Absent, Field, Value, Values};
use crate::project::Project;
use crate::project::bench::Bench;
use crate::project::{Quick, quick_told};
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::rules::floor::wheel::{Elastic, Wheel};
use crate::rules::floor::{raised, rolling};

steps! { 165 "ways of standing";
    AT_REST "" Number (INPUT "" Derived) "At rest": Name;
    SHAKEN "" Number (INPUT "" Derived) "In an earthquake": Name;
    WAY_IN "" Number (INPUT "" Derived) "On the way in": Name;
    WAY "" Number (INPUT "" Derived) "way of standing": Name;
    CASTERS "" Number (INPUT "" Derived) "casters": Name;
    FEET "" Number (INPUT "" Derived) "levelling feet": Name;
    BASES "" Number (INPUT "" Derived) "wide bases": Name;
    HEAVIEST "" Number (INPUT "" Derived) "heaviest support": Name;
    AREA "" Number (INPUT "" Derived) "contact of one": Name;
    MEAN "" Number (INPUT "" Derived) "mean pressure": Name;
    PEAK "" Number (INPUT "" Derived) "peak pressure": Name;
    DIRECTION "" Number (INPUT "" Derived) "direction of the push": Name;
    TIPS "" Number (INPUT "" Derived) "push that tips it unbolted": Name;
    PULL "" Number (INPUT "" Derived) "largest pull of an anchor": Name;
    GOVERNS "" Number (INPUT "" Derived) "what governs": Name;
    UTILISATION "" Number (INPUT "" Derived) "utilisation": Name;
    BENDING "" Number (INPUT "" Derived) "slab in bending": Name;
    PUNCHING_OUT "" Number (INPUT "" Derived) "punching": Name;
    WHEEL "" Number (INPUT "" Derived) "heaviest wheel or foot, one of four counted out": Name;
    DOES "" Number (INPUT "" Derived) "what it does": Name;
    ROLLS "" Number (INPUT "" Derived) "rolls on its own wheels": Name;
    ON_WHEELS "" Number (INPUT "" Derived) "rolls in on the same wheels": Name;
    SET_DOWN "" Number (INPUT "" Derived) "is set down, three feet first": Name;
    SET_DOWN_BASE "" Number (INPUT "" Derived) "is set down, one base first, half of it still held": Name;
    PUSHING "" Number (INPUT "" Derived) "Pushing it in": Name;
    LEVEL "" Number (INPUT "" Derived) "push on the level": Name;
    UP "" Number (INPUT "" Derived) "push up the ramp": Name;
    HOLD "" Number (INPUT "" Derived) "what holds it on the way down": Name;
    DRAWN_CASTERS "" Number (INPUT "" Derived) "Casters in plan, with the contact of one": Name;
    DRAWN_FEET "" Number (INPUT "" Derived) "Levelling feet in plan, with the contact of one": Name;
    DRAWN_BASES "" Number (INPUT "" Derived) "Wide bases in plan, with the contact of one": Name;
    PLACES "" Number (INPUT "" Derived) "all three stand at the outermost places of the present feet; stiffness, stems and gaps of the present feet are left out, so that the ways are alike but for their contact": Reason;
    PATCH "" Number (INPUT "" Derived) "the patch of a caster is that of Hertz's line contact under its load at rest; a soft tread spreads further": Reason;
    WHOLE "" Number (INPUT "" Derived) "on the way in everything rolls, with the dynamic factor of the way; levelling feet and wide bases are set down afterwards, slowly, and take no factor": Reason;
    FEW "" Number (INPUT "cabinet.feet" Derived) "with fewer than three feet, or with feet on one line, there is no rectangle to stand on": Reason;
    NO_CASE "" Number (INPUT "site" Derived) "without a seismic rule nothing is pushed, and only the state at rest and the way in are set side by side": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "ways-of-standing", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "ways-of-standing",
    title: "Casters, levelling feet or wide bases?",
    help: "The same cabinet on the same floor, standing three ways: what each presses at rest, in an earthquake, and on \
           the way in. Sizes are those of the part \u{201c}ways of standing to compare\u{201d}, or usual ones.",
    steps: &[&TEXTS],
};

/// The three ways.
const WAYS: [(StepId, StepId); 3] = [(CASTERS, DRAWN_CASTERS), (FEET, DRAWN_FEET), (BASES, DRAWN_BASES)];

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let corners = corners(project).ok_or(FEW)?;
    let mut rest = Vec::new();
    let mut shaken = Vec::new();
    let mut pictures = Vec::new();
    for (way, (name, drawn)) in WAYS.into_iter().enumerate() {
        let stands = standing(project, way, &corners);
        pictures.push(Picture::Figure(plan(&stands, drawn)));
        let mut bench = Bench::new(&stands);
        let quick = quick_told(&mut bench);
        rest.push(at_rest(&bench, &quick, name));
        shaken.extend(in_earthquake(&bench, &quick, name));
    }
    let mut notes = vec![PLACES, PATCH, WHOLE];
    let mut tables = vec![Table {
        name: AT_REST,
        columns: columns![
            Column::words(WAY),
            Column::up(HEAVIEST, Kind::Force),
            Column::nearest(AREA, Kind::Area),
            Column::up(MEAN, Kind::Pressure),
            Column::up(PEAK, Kind::Pressure),
            Column::up(BENDING, Kind::Utilisation),
            Column::up(PUNCHING_OUT, Kind::Utilisation),
        ],
        rows: rest,
    }];
    if shaken.is_empty() {
        notes.push(NO_CASE);
    } else {
        tables.push(Table {
            name: SHAKEN,
            columns: columns![
                Column::words(WAY),
                Column::up(HEAVIEST, Kind::Force),
                Column::up(PEAK, Kind::Pressure),
                Column::nearest(DIRECTION, Kind::Angle),
                Column::up(PULL, Kind::Force),
                Column::down(TIPS, Kind::Acceleration),
                Column::words(GOVERNS),
                Column::up(UTILISATION, Kind::Utilisation),
            ],
            rows: shaken,
        });
    }
    tables.push(way_in(project, &corners));
    tables.push(pushing(project));
    Ok(Shown { notes, tables, pictures, sections: Vec::new() })
}

/// The outermost places of the present feet.
fn corners(project: &Project) -> Option<[Point; 4]> {
    let feet = &project.cabinet.feet;
    let range = |of: fn(&Foot) -> f64| {
        feet.iter().map(of).fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], at| [low.min(at), high.max(at)])
    };
    let ([left, right], [front, rear]) = (range(|foot| foot.at.x_mm), range(|foot| foot.at.y_mm));
    let is_wide = feet.len() >= 3 && right - left > 1.0 && rear - front > 1.0;
    is_wide.then(|| {
        [(left, front), (right, front), (right, rear), (left, rear)].map(|(x_mm, y_mm)| Point::new(x_mm, y_mm))
    })
}

/// The sizes to compare, as given or by their defaults.
pub(super) fn sizes(project: &Project) -> Values {
    let usual = |field: &Field| match field.absent {
        Absent::Is(number) => Value::Number(number),
        _ => Value::Unknown,
    };
    let given = project.floor.as_ref().and_then(|floor| floor.standing.clone());
    given.unwrap_or_else(|| Values(standing::FIELDS.iter().map(usual).collect()))
}

/// The wheel that it stands or rolls on.
pub(super) fn wheel(project: &Project) -> Wheel {
    let sizes = sizes(project);
    let given = project.floor.as_ref().and_then(|floor| floor.casters.as_ref());
    let of_floor = |field: usize| project.floor.as_ref().and_then(|floor| floor.values.number(field));
    let by_strength = project
        .slab
        .as_ref()
        .map_or(25e3, |slab| crate::rules::floor::slab_on_ground::modulus_mpa(slab.strength_mpa, &mut Sheet::quiet()));
    Wheel {
        radius_mm: given.map_or(sizes.given(standing::CASTER_RADIUS), |given| given.given(casters::RADIUS)),
        width_mm: given.map_or(sizes.given(standing::CASTER_WIDTH), |given| given.given(casters::WIDTH)),
        tread: given.map_or(casters::TREADS[2], casters::tread),
        floor: Elastic {
            modulus_mpa: of_floor(floor::MODULUS).unwrap_or(by_strength),
            poisson: of_floor(floor::POISSON).unwrap_or(0.15),
        },
    }
}

/// The project on other supports: 0 casters, 1 levelling feet, 2 wide bases.
fn standing(project: &Project, way: usize, corners: &[Point; 4]) -> Project {
    let sizes = sizes(project);
    let mut stands = project.clone();
    let foot = |name: &str, at, size| Foot {
        name: String::from(name),
        at,
        size,
        stiffness_n_per_mm: None,
        stem: None,
        pad_stiffness_n_per_mm: None,
        gap_mm: 0.0,
    };
    let four = |size: Size| {
        let names = ["front left", "front right", "rear right", "rear left"];
        names.iter().zip(corners).map(|(name, &at)| foot(name, at, size)).collect::<Vec<_>>()
    };
    stands.cabinet.feet = match way {
        0 => {
            let mass_kg = Bench::new(project).loads.iter().map(|load| load.mass_kg).fold(0.0, f64::max);
            let wheel = wheel(project);
            let patch = wheel.line(mass_kg * G_N_PER_KG / 4.0, &mut Sheet::quiet());
            // It rolls to the front: the line of contact lies across.
            four(Size::new(wheel.width_mm, 2.0 * patch.half_mm))
        }
        1 => {
            let side = sizes.given(standing::PAD);
            four(Size::new(side, side))
        }
        _ => {
            let length = corners[2].y_mm - corners[1].y_mm + sizes.given(standing::PAD);
            let size = Size::new(sizes.given(standing::BASE_WIDTH), length);
            let middle = (corners[2].y_mm + corners[1].y_mm) / 2.0;
            // A wide base presses the slab along a line.
            if let Some(floor) = &mut stands.floor {
                floor.values.set_choice(floor::STANDS_ON, 1);
            }
            // Under the cabinet, not beside it.
            let reach = f64::max(0.0, (project.cabinet.width_mm - size.x_mm) / 2.0);
            let at = |x_mm: f64| Point::new(x_mm.max(-reach).min(reach), middle);
            vec![foot("left", at(corners[0].x_mm), size), foot("right", at(corners[1].x_mm), size)]
        }
    };
    stands
}

/// How much of a check is used, or what it came to where it has no number.
fn used(quick: &Quick, check: CheckId) -> Cell {
    match quick.checks.iter().find(|told| told.id == check.id()) {
        None => Cell::Nothing,
        Some(told) => told.utilisation.map_or(Cell::Status(told.status), Cell::Number),
    }
}

fn at_rest(bench: &Bench, quick: &Quick, name: StepId) -> Line {
    let (mut force, mut mean, mut peak) = (0.0, 0.0, 0.0);
    for load in &bench.loads {
        let push = Push {
            down_n: load.mass_kg * G_N_PER_KG,
            at: Point::new(load.centre_mm[0], load.centre_mm[1]),
            height_mm: load.centre_mm[2],
            horizontal_n: 0.0,
            direction_rad: 0.0,
        };
        let Ok(settled) = bench.supports[0].settle(&BaseLoad::from(push)) else {
            (force, mean, peak) = (f64::NAN, f64::NAN, f64::NAN);
            break;
        };
        for foot in &settled.feet {
            force = f64::max(force, foot.force_n);
            mean = f64::max(mean, foot.mean_pressure_mpa);
            peak = f64::max(peak, foot.peak_pressure_mpa);
        }
    }
    let area = bench.project.cabinet.feet.first().map_or(0.0, |foot| foot.size.area_mm2());
    let numbers = [force, area, mean, peak].map(Cell::Number);
    let slab = [CheckId::SlabRestBending, CheckId::SlabRestPunching].map(|check| used(quick, check));
    Line::plain([Cell::Name(name)].into_iter().chain(numbers).chain(slab).collect())
}

fn in_earthquake(bench: &Bench, quick: &Quick, name: StepId) -> Option<Line> {
    if bench.cases().is_empty() {
        return None;
    }
    let Stood { force_n, peak_mpa, direction_rad, .. } = settled_everywhere(bench);
    let mut tips = f64::INFINITY;
    for state in 0..bench.loads.len() {
        if let Some(free) = bench.standing(state) {
            tips = f64::min(tips, free.tipping_push(free.weakest_direction_rad()));
        }
    }
    let pull = quick.checks.iter().find(|check| check.id == CheckId::AnchorTensionSteel.id());
    let pull = pull.and_then(|check| check.value).map_or(Cell::Nothing, Cell::Number);
    let governing = quick.governing();
    let check = governing.and_then(|told| CheckId::named(told.id));
    let utilisation = governing.and_then(|told| told.utilisation).map_or(Cell::Nothing, Cell::Number);
    Some(Line::plain(vec![
        Cell::Name(name),
        Cell::Number(force_n),
        Cell::Number(peak_mpa),
        Cell::Number(direction_rad),
        pull,
        Cell::Number(tips),
        check.map_or(Cell::Nothing, Cell::Check),
        utilisation,
    ]))
}

/// All three come in on the same wheels, and two of them are set down.
fn way_in(project: &Project, corners: &[Point; 4]) -> Table {
    let sizes = sizes(project);
    let given = project.floor.as_ref().and_then(|floor| floor.casters.as_ref());
    let rolled = crate::rules::floor::raised::Rolled {
        weight_n: Bench::new(project).loads.iter().map(|load| load.mass_kg).fold(0.0, f64::max) * G_N_PER_KG,
        wheels: given.map_or(4.0, |given| given.given(casters::WHEELS)),
        dynamic: given.map_or(1.25, |given| given.given(casters::DYNAMIC)),
    };
    let quiet = &mut Sheet::quiet();
    let load_n = rolled.wheel_n(quiet);
    let wheel = wheel(project);
    let patch = wheel.line(load_n, quiet);
    let peak = patch.peak_mpa.map_or(Cell::Nothing, Cell::Number);
    let row = |way, does, [load_n, area_mm2, mean_mpa]: [f64; 3], peak: Cell| {
        let numbers = [load_n, area_mm2, mean_mpa].map(Cell::Number);
        Line::plain([Cell::Name(way), Cell::Name(does)].into_iter().chain(numbers).chain([peak]).collect())
    };
    let rolling = [load_n, 2.0 * patch.half_mm * wheel.width_mm, patch.mean_mpa];
    let down = |area_mm2: f64, load_n: f64| ([load_n, area_mm2, load_n / area_mm2], Cell::Number(load_n / area_mm2));
    let pad = sizes.given(standing::PAD);
    let (pads, pads_peak) = down(pad * pad, raised::three_legs_n(rolled.weight_n, quiet));
    let length = corners[2].y_mm - corners[1].y_mm + pad;
    let (base, base_peak) = down(sizes.given(standing::BASE_WIDTH) * length, rolled.weight_n / 2.0);
    Table {
        name: WAY_IN,
        columns: columns![
            Column::words(WAY),
            Column::words(DOES),
            Column::up(WHEEL, Kind::Force),
            Column::nearest(AREA, Kind::Area),
            Column::up(MEAN, Kind::Pressure),
            Column::up(PEAK, Kind::Pressure),
        ],
        rows: vec![
            row(CASTERS, ROLLS, rolling, peak.clone()),
            row(FEET, ON_WHEELS, rolling, peak.clone()),
            row(FEET, SET_DOWN, pads, pads_peak),
            row(BASES, ON_WHEELS, rolling, peak),
            row(BASES, SET_DOWN_BASE, base, base_peak),
        ],
    }
}

/// Rolling resistance on the level and on the steepest ramp.
fn pushing(project: &Project) -> Table {
    let given = project.floor.as_ref().and_then(|floor| floor.casters.as_ref());
    let weight_n = Bench::new(project).loads.iter().map(|load| load.mass_kg).fold(0.0, f64::max) * G_N_PER_KG;
    let (lever, slope) = given.map_or((2.2, 0.0), |given| (given.given(casters::LEVER), given.given(casters::SLOPE)));
    let radius = wheel(project).radius_mm;
    let quiet = &mut Sheet::quiet();
    let level = rolling::level_n(weight_n, radius, lever, quiet);
    let [up, hold] = rolling::ramp_n(weight_n, lever / radius, slope, quiet);
    Table {
        name: PUSHING,
        columns: columns![Column::up(LEVEL, Kind::Force), Column::up(UP, Kind::Force), Column::up(HOLD, Kind::Force)],
        rows: vec![Line::plain([level, up, hold].map(Cell::Number).into())],
    }
}

fn plan(project: &Project, name: StepId) -> Figure {
    let cabinet = &project.cabinet;
    let half = [cabinet.width_mm / 2.0, cabinet.depth_mm / 2.0];
    let mut parts = vec![outline_of("cabinet", [0.0, 0.0], half)];
    for foot in &cabinet.feet {
        let half = [foot.size.x_mm / 2.0, foot.size.y_mm / 2.0];
        parts.push(outline_of("foot", [foot.at.x_mm, foot.at.y_mm], half));
    }
    if let Some(foot) = cabinet.feet.first() {
        parts.push(FigurePart::Label {
            at_mm: [0.0, 0.0],
            name: PlotName::None,
            value: Some((foot.size.area_mm2(), Kind::Area)),
        });
    }
    parts.push(FigurePart::Dimension { from_mm: [-half[0], -half[1]], to_mm: [half[0], -half[1]], offset_px: -24.0 });
    Figure { name, parts }
}
