//! A slab on the ground under its heaviest leg at rest, by every form that is in print, side by side.

use alloc::vec;
use alloc::vec::Vec;

use super::{Shown, Study, StudyText};
use crate::base_reactions::{BaseLoad, Push};
use crate::calc::clause::INPUT;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Kind, Part, Sheet, StepId, Subject, System, number, steps};
use crate::floor;
use crate::geometry::Point;
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::rules::floor::army::ArmySlab;
use crate::rules::floor::slab_on_ground::Position;
use crate::rules::floor::westergaard::{Bending, EdgeForm};
use crate::rules::floor::{ioannides, meyerhof, westergaard};

steps! { 162 "forms for a slab on the ground";
    STRESSES "" Number (INPUT "" Derived) "Tension under the heaviest leg at rest, at service": Name;
    LOADS "" Number (INPUT "" Derived) "Loads under which the slab breaks, without a factor of safety": Name;
    AREAS "" Number (INPUT "" Derived) "Loads of the Army manual": Name;
    FORM "" Number (INPUT "" Derived) "form": Name;
    STRESS "" Number (INPUT "" Derived) "tension": Name;
    SETTLES "" Number (INPUT "" Derived) "settlement, in mm": Name;
    SHARE "" Number (INPUT "" Derived) "over the flexural strength": Name;
    LOAD "" Number (INPUT "" Derived) "load of one leg": Name;
    PRESSURE "" Number (INPUT "" Derived) "allowed load over an area": Name;
    INNER "" Number (INPUT "" Derived) "interior, Westergaard": Name;
    EARLY "" Number (INPUT "" Derived) "edge, early form with 0.572 (nu 0.15 only)": Name;
    CIRCLE "" Number (INPUT "" Derived) "edge, 1948, circle": Name;
    HALF "" Number (INPUT "" Derived) "edge, 1948, semicircle": Name;
    CORNER_W "" Number (INPUT "" Derived) "corner, Westergaard": Name;
    CORNER_I "" Number (INPUT "" Derived) "corner, Ioannides": Name;
    M_INNER "" Number (INPUT "" Derived) "interior, Meyerhof as in ACI 360R": Name;
    M_EDGE "" Number (INPUT "" Derived) "edge, Meyerhof as in ACI 360R": Name;
    M_CORNER "" Number (INPUT "" Derived) "corner, Meyerhof as in ACI 360R": Name;
    LINES "" Number (INPUT "" Derived) "Line loads of walls and rails that the Army manual allows": Name;
    LINE "" Number (INPUT "" Derived) "allowed load along a line": Name;
    WALL_MIDDLE "" Number (INPUT "" Derived) "in the middle of a slab, by the formula behind Table 3-2": Name;
    WALL_TABLE "" Number (INPUT "" Derived) "in the middle of a slab, Table 3-2 as printed": Name;
    WALL_EDGE "" Number (INPUT "" Derived) "at a free edge, by the formula behind Table 3-3": Name;
    WALL_CAUTIOUS "" Number (INPUT "" Derived) "under walls the manual allows 0.18 of the flexural strength, under loads over an area half of it": Reason;
    STATIONARY "" Number (INPUT "" Derived) "stationary live load, Table 3-1": Name;
    SINGLE "" Number (INPUT "" Derived) "each line is a single leg; neighbours come on top, and the check counts them": Reason;
    PLASTIC "" Number (INPUT "" Derived) "Meyerhof's loads count on a slab that keeps its moment when it cracks: a plain slab does not": Reason;
    NO_FLOOR "" Number (INPUT "floor" Derived) "no slab on the ground is given": Reason;
    NO_LEG "" Number (INPUT "cabinet.feet" Derived) "nothing presses at rest on an area": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "slab-forms", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "slab-forms",
    title: "Which formula says what of a slab on the ground?",
    help: "The heaviest leg at rest by every closed form that is in print: far from edges, at a free edge, at a free \
           corner. The early form of the edge lies a fifth and more below that of 1948. Beside them what an Army manual allows over \
           an area and along a line.",
    steps: &[
        &TEXTS,
        &crate::rules::floor::slab_on_ground::TEXTS,
        &westergaard::TEXTS,
        &ioannides::TEXTS,
        &meyerhof::TEXTS,
    ],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let bench = Bench::new(project);
    let site = bench.floor_site().filter(|site| site.is_on_ground()).ok_or(NO_FLOOR)?;
    let (leg, load_n) = heaviest(&bench).ok_or(NO_LEG)?;
    let area_mm2 = 4.0 * site.legs[leg].half.area_mm2();
    let mut sheet = Sheet::told();
    sheet.open(Part::Floor, Subject::Foot(leg as u16), None, System::Si);
    let loaded = site.ground(&mut sheet)?.loaded(area_mm2, &mut sheet)?;
    let given = site.floor.values.number(floor::FLEXURAL);
    let rupture = given.unwrap_or(0.62 * number::sqrt(site.slab.strength_mpa));
    let mut rows = Vec::new();
    let mut say = |name, bending: Result<Bending, StepId>| {
        let cells = match bending {
            Ok(Bending { stress_mpa, deflection_mm }) => [
                Cell::Number(stress_mpa),
                deflection_mm.map_or(Cell::Nothing, Cell::Number),
                Cell::Number(stress_mpa / rupture),
            ],
            Err(_) => [const { Cell::Nothing }; 3],
        };
        rows.push(Line::plain([Cell::Name(name)].into_iter().chain(cells).collect()));
    };
    say(INNER, Ok(westergaard::interior(&loaded, load_n, &mut sheet)));
    for (name, form) in [(EARLY, EdgeForm::Early), (CIRCLE, EdgeForm::Circle), (HALF, EdgeForm::Semicircle)] {
        say(name, westergaard::edge(&loaded, form, load_n, &mut Sheet::quiet()));
    }
    say(CORNER_W, Ok(westergaard::corner(&loaded, load_n, &mut Sheet::quiet())));
    say(CORNER_I, Ok(ioannides::corner(&loaded, load_n, &mut sheet)));
    let plastic = [(M_INNER, Position::Interior), (M_EDGE, Position::Edge), (M_CORNER, Position::Corner)];
    let loads = plastic.map(|(name, position)| {
        let load = meyerhof::collapse_n(&loaded, rupture, position, &mut Sheet::quiet());
        Line::plain(vec![Cell::Name(name), Cell::Number(load)])
    });
    let us = |value: f64, kind| System::Us.from_si(value, kind);
    let army = ArmySlab {
        flexural_psi: us(rupture, Kind::Stress),
        thickness_in: us(site.slab.thickness_mm, Kind::Length),
        subgrade_pci: us(loaded.slab.subgrade_n_per_mm3, Kind::Subgrade),
    };
    let mut tables = vec![
        Table {
            name: STRESSES,
            columns: columns![
                Column::words(FORM),
                Column::up(STRESS, Kind::Stress),
                Column::up(SETTLES, Kind::Number),
                Column::up(SHARE, Kind::Utilisation),
            ],
            rows,
        },
        Table {
            name: LOADS,
            columns: columns![Column::words(FORM), Column::down(LOAD, Kind::Force)],
            rows: loads.into(),
        },
    ];
    let quiet = &mut Sheet::quiet();
    let one =
        |name, us_value: f64, kind| Line::plain(vec![Cell::Name(name), Cell::Number(System::Us.to_si(us_value, kind))]);
    if let Ok(stationary) = army.stationary_psi(quiet) {
        tables.push(Table {
            name: AREAS,
            columns: columns![Column::words(FORM), Column::down(PRESSURE, Kind::AreaLoad)],
            rows: vec![one(STATIONARY, stationary, Kind::AreaLoad)],
        });
    }
    let [middle, edge] = army.wall_by_formula(quiet);
    let mut walls = vec![one(WALL_MIDDLE, middle, Kind::LineLoad)];
    // The factor of the table is on the thickness; only for its own subgrade is the load as printed.
    walls.extend(
        army.wall_by_table(quiet)
            .ok()
            .filter(|[_, factor]| *factor == 1.0)
            .map(|[printed, _]| one(WALL_TABLE, printed, Kind::LineLoad)),
    );
    walls.push(one(WALL_EDGE, edge, Kind::LineLoad));
    let columns = columns![Column::words(FORM), Column::down(LINE, Kind::LineLoad)];
    tables.push(Table { name: LINES, columns, rows: walls });
    Ok(Shown { notes: vec![SINGLE, PLASTIC, WALL_CAUTIOUS], tables, pictures: Vec::new(), sections: sheet.sections })
}

/// The heaviest leg at rest over all states, with its load.
fn heaviest(bench: &Bench) -> Option<(usize, f64)> {
    let mut best: Option<(usize, f64)> = None;
    for load in &bench.loads {
        let push = Push {
            down_n: load.mass_kg * G_N_PER_KG,
            at: Point::new(load.centre_mm[0], load.centre_mm[1]),
            height_mm: load.centre_mm[2],
            horizontal_n: 0.0,
            direction_rad: 0.0,
        };
        let Ok(settled) = bench.supports[0].settle(&BaseLoad::from(push)) else { continue };
        for (leg, foot) in settled.feet.iter().enumerate() {
            let has_area = bench.project.cabinet.feet[leg].size.area_mm2() > 0.0;
            if has_area && best.is_none_or(|(_, known)| foot.force_n > known) {
                best = Some((leg, foot.force_n));
            }
        }
    }
    best
}
