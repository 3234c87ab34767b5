//! What a test rig must carry for the cabinet in each of its states, and how far a rig that is described is used.

use alloc::vec;
use alloc::vec::Vec;

use super::spectra::NO_ANCHOR_FORCE;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, Outcome, Sheet, StepId, steps};
use crate::load_out::{self, Load};
use crate::project::Project;
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::shake_table::rig::{self, Carried};
use crate::shake_table::{Basis, Fixture, Specimen, spectrum};

steps! { 136 "rig study";
    NEEDED "" Number (INPUT "shake_table" Derived) "what the rig must do, and what it can": Name;
    STATE "" Number (INPUT "shake_table" Derived) "state": Name;
    PAYLOAD "" Number (INPUT "shake_table" Derived) "payload": Name;
    MOMENT "" Number (INPUT "shake_table" Derived) "overturning moment": Name;
    HORIZONTAL "" Number (INPUT "shake_table" Derived) "horizontal acceleration": Name;
    VERTICAL "" Number (INPUT "shake_table" Derived) "vertical acceleration": Name;
    VELOCITY "" Number (INPUT "shake_table" Derived) "velocity, at most": Name;
    TRAVEL "" Number (INPUT "shake_table" Derived) "travel each way, at most": Name;
    THE_RIG "" Number (INPUT "shake_table" Derived) "the rig": Name;
    USED "" Number (INPUT "shake_table" Derived) "how far the rig is used by the state with the largest moment": Name;
    QUANTITY "" Number (INPUT "shake_table" Derived) "quantity": Name;
    SHARE "" Number (INPUT "shake_table" Derived) "needed over what it can": Name;
    OUTCOME "" Number (INPUT "shake_table" Derived) "outcome": Name;
    FORCES "" Number (INPUT "shake_table" Derived) "forces on table and cabinet": Name;
    ANSWERED "" Number (INPUT "shake_table" Derived) "acceleration of the cabinet": Name;
    FORCE "" Number (INPUT "shake_table" Derived) "horizontal force on the table": Name;
    DOWN "" Number (INPUT "shake_table" Derived) "downward force on the table": Name;
    TWIST "" Number (INPUT "shake_table" Derived) "twist of the table": Name;
    PULL "" Number (INPUT "shake_table" Derived) "static pull at the top": Name;
    FIGURE "" Number (INPUT "shake_table" Derived) "the cabinet on its fixture and the table, seen from the front": Name;
    TABLE "" Number (INPUT "shake_table" Derived) "table": Name;
    FIXTURE "" Number (INPUT "shake_table" Derived) "fixture": Name;
    PULL_NAME "" Number (INPUT "shake_table" Derived) "static pull with the same moment": Name;
    FORCE_NAME "" Number (INPUT "shake_table" Derived) "force of the cabinet": Name;

    NO_SHAKE_TABLE "" Number (INPUT "shake_table" Derived) "no shake table is described: give the spectrum and the mass of the fixture under “Shake table”": Reason;
    AS_ONE "" Number (INPUT "shake_table" Derived) "all mass of the cabinet is taken to answer with the highest acceleration that the spectrum asks for at and above its lowest frequency, or anywhere where that is not known; the fixture is taken as rigid": Reason;
    RECORD "" Number (INPUT "shake_table" Derived) "velocity and travel are those of oscillators on the table, more than its own motion where they resonate; the record of the laboratory decides": Reason;
    TOGETHER "" Number (INPUT "shake_table" Derived) "few rigs carry such masses: a rig reaches less acceleration the more it carries, so ask for ratings that hold together, and for the moment about the top of the table": Reason;
    PULL_NOTE "" Number (INPUT "shake_table" Derived) "the static pull bends the base as the test does; it shows nothing of resonance, of contents that strike or of bolts that work loose": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "test-rig", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "test-rig",
    title: "What must a test rig carry?",
    help: "Payload, overturning moment, acceleration, velocity and travel for the cabinet and its fixture under the spectrum that is \
           chosen, and the static pull at the top that bends the base as much. An estimate for the talk with a laboratory.",
    steps: &[&TEXTS, &rig::TEXTS, &super::spectra::TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let table = project.shake_table.as_ref().ok_or(NO_SHAKE_TABLE)?;
    let mut sheet = Sheet::told();
    let spectrum = spectrum(table.test(), &Basis::of(&table.values), &mut sheet)?;
    let motion = rig::motion(&spectrum, table.lowest_hz(), table.agreed_hz(), &mut sheet)?;
    let (fixture, rig) = (table.fixture(), table.rig());
    let loads = load_out::loads(&project.cabinet, &project.contents, &project.all_states());
    let specimen = |load: &Load| Specimen {
        mass_kg: load.mass_kg,
        centre_mm: load.centre_mm,
        height_mm: project.cabinet.height_mm,
        lowest_hz: table.lowest_hz(),
    };
    let carried = |load: &Load, sheet: &mut Sheet| rig::carried(&motion, &specimen(load), &fixture, &rig, sheet);
    let all: Vec<Carried> = loads.iter().map(|load| carried(load, &mut Sheet::quiet())).collect();
    let mut worst = 0;
    for (place, one) in all.iter().enumerate() {
        if one.needed[MOMENT_PLACE].value > all[worst].needed[MOMENT_PLACE].value {
            worst = place;
        }
    }
    let governing = carried(&loads[worst], &mut sheet);
    let mut tables = vec![needed(&loads, &all, worst)];
    tables.extend(used(&governing));
    tables.push(forces(&loads, &all, worst));
    let figure = figure(project, &loads[worst], &governing, &fixture);
    let sections = sheet.sections.into_iter().filter(|section| !section.steps.is_empty()).collect();
    Ok(Shown {
        notes: vec![NO_ANCHOR_FORCE, AS_ONE, RECORD, TOGETHER, PULL_NOTE],
        tables,
        pictures: vec![Picture::Figure(figure)],
        sections,
    })
}

/// Place of the overturning moment among what is needed.
const MOMENT_PLACE: usize = 1;

static QUANTITIES: [(StepId, Kind); 6] = [
    (PAYLOAD, Kind::Mass),
    (MOMENT, Kind::Moment),
    (HORIZONTAL, Kind::Acceleration),
    (VERTICAL, Kind::Acceleration),
    (VELOCITY, Kind::Velocity),
    (TRAVEL, Kind::Length),
];

fn needed(loads: &[Load], all: &[Carried], worst: usize) -> Table {
    let mut columns = vec![Column::words(STATE)];
    columns.extend(QUANTITIES.map(|(name, kind)| Column::up(name, kind)));
    let mut rows = Vec::new();
    for (place, (load, carried)) in loads.iter().zip(all).enumerate() {
        let mut cells = vec![Cell::Text(load.name.clone())];
        cells.extend(carried.needed.map(|needed| Cell::Number(needed.value)));
        rows.push(Line { cells, is_marked: place == worst });
    }
    let mut cells = vec![Cell::Name(THE_RIG)];
    cells.extend(all[worst].needed.map(|needed| needed.rated.map_or(Cell::Nothing, Cell::Number)));
    rows.push(Line::plain(cells));
    Table { name: NEEDED, columns, rows }
}

/// How far the rig is used, where anything of it is known.
fn used(carried: &Carried) -> Option<Table> {
    let rows: Vec<Line> = carried
        .needed
        .iter()
        .zip(QUANTITIES)
        .filter_map(|(needed, (name, _))| {
            let utilisation = needed.utilisation?;
            let outcome = Outcome::Compared { value: needed.value, limit: needed.rated?, utilisation };
            Some(Line::plain(vec![Cell::Name(name), Cell::Number(utilisation), Cell::Status(outcome.status())]))
        })
        .collect();
    let columns = columns![Column::words(QUANTITY), Column::up(SHARE, Kind::Utilisation), Column::words(OUTCOME)];
    (!rows.is_empty()).then_some(Table { name: USED, columns, rows })
}

fn forces(loads: &[Load], all: &[Carried], worst: usize) -> Table {
    let columns = columns![
        Column::words(STATE),
        Column::up(ANSWERED, Kind::Acceleration),
        Column::up(FORCE, Kind::Force),
        Column::up(DOWN, Kind::Force),
        Column::up(TWIST, Kind::Moment),
        Column::up(PULL, Kind::Force),
    ];
    let row = |(place, (load, one)): (usize, (&Load, &Carried))| Line {
        cells: vec![
            Cell::Text(load.name.clone()),
            Cell::Number(one.answered),
            Cell::Number(one.force_n),
            Cell::Number(one.down_n),
            Cell::Number(one.twist_nmm),
            Cell::Number(one.pull_n),
        ],
        is_marked: place == worst,
    };
    Table { name: FORCES, columns, rows: loads.iter().zip(all).enumerate().map(row).collect() }
}

/// Thickness of the table in the figure, and how far it reaches beyond the cabinet.
const TABLE_MM: [f64; 2] = [250.0, 500.0];

fn figure(project: &Project, load: &Load, carried: &Carried, fixture: &Fixture) -> Figure {
    let cabinet = &project.cabinet;
    let (half, height, base) = (cabinet.width_mm / 2.0, cabinet.height_mm, fixture.height_mm);
    let box_of = |class, half: f64, bottom: f64, top: f64| FigurePart::Outline {
        class,
        corners_mm: vec![[-half, bottom], [half, bottom], [half, top], [-half, top]],
    };
    let [thick, beyond] = TABLE_MM;
    let label = |at_mm, name| FigurePart::Label { at_mm, name: PlotName::Row(name), value: None };
    let centre = [load.centre_mm[0], base + load.centre_mm[2]];
    let arrow = |at: [f64; 2], name, value| FigurePart::Arrow {
        class: "force",
        from_mm: [at[0] - 0.9 * cabinet.width_mm, at[1]],
        to_mm: at,
        name: PlotName::Row(name),
        value: Some((value, Kind::Force)),
    };
    let mut parts = vec![box_of("steel", half + beyond, -thick, 0.0)];
    parts.push(label([half + 0.5 * beyond, -0.5 * thick], TABLE));
    if base > 0.0 {
        parts.push(box_of("hatched", half + 0.1 * beyond, 0.0, base));
        parts.push(label([half + 0.1 * beyond, 0.5 * base], FIXTURE));
    }
    parts.push(box_of("cabinet", half, base, base + height));
    parts.push(FigurePart::Circle { class: "centre", middle_mm: centre, radius_mm: 0.03 * height });
    parts.push(arrow(centre, FORCE_NAME, carried.cabinet_n));
    parts.push(arrow([-half, base + height], PULL_NAME, carried.pull_n));
    let right = half + beyond;
    parts.push(FigurePart::Dimension { from_mm: [right, 0.0], to_mm: [right, centre[1]], offset_px: 12.0 });
    parts.push(FigurePart::Dimension { from_mm: [right, 0.0], to_mm: [right, base + height], offset_px: 46.0 });
    Figure { name: FIGURE, parts }
}
