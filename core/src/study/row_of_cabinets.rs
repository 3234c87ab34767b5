//! A row of cabinets at a pitch with aisles: area loads in plan.

use alloc::vec;
use alloc::vec::Vec;

use super::floor_shown::outline_of;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Kind, Part, Sheet, StepId, Subject, System, steps};
use crate::floor;
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, PlotPoint, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::rules::floor::live_load;
use crate::rules::floor::suspended::{AreaLoad, psf_mpa};

steps! { 169 "row of cabinets";
    PLAN "" Number (INPUT "" Derived) "Cabinets at their pitch, in plan": Name;
    OVER_AISLE "" Number (INPUT "" Derived) "Load over the pitch, over the width of the aisle": Name;
    AISLE "" Number (INPUT "" Derived) "aisle between rows": Name;
    LOAD "" Number (INPUT "" Derived) "load over the pitch": Name;
    VENDOR "" Number (INPUT "" Derived) "by the formula of a maker of computers": Name;
    OVER_LIVE "" Number (INPUT "" Derived) "over the design live load": Name;
    LIVE "" Number (INPUT "" Derived) "design live load": Name;
    HEAVIEST "" Number (INPUT "" Derived) "Heaviest state, aisle by aisle": Name;
    NOW "" Number (INPUT "" Derived) "now": Name;
    STRUCTURE "" Number (INPUT "" Derived) "a load over an area is a question of the structural slab, not of a raised floor on it; single legs are checked by themselves": Reason;
    NO_LIVE "" Number (INPUT "floor" Derived) "no design live load is given: ask the owner of the floor": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "row-of-cabinets", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "row-of-cabinets",
    title: "How wide must the aisles be for the floor?",
    help: "A row of the same cabinets side by side, rows apart by an aisle: the load that the structural slab carries over \
           the pitch, against what it was designed for.",
    steps: &[&TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let cabinet = &project.cabinet;
    let mass_kg = Bench::new(project).loads.iter().map(|load| load.mass_kg).fold(0.0, f64::max);
    let load = AreaLoad { weight_n: mass_kg * G_N_PER_KG, footprint_mm: [cabinet.width_mm, cabinet.depth_mm] };
    let values = project.floor.as_ref().map(|floor| &floor.values);
    let pitch = values.and_then(|values| values.numbers(floor::PITCH)).map(|[x, y, _]| [x, y]);
    let aisle_mpa = values.map_or(0.0, |values| values.given(floor::AISLE));
    let live = values.and_then(|values| {
        let by_use = || values.choice(floor::OCCUPANCY).map(|place| live_load::LIVE_LOADS[place].uniform_mpa);
        values.number(floor::LIVE_LOAD).or_else(by_use)
    });
    let along = pitch.map_or(cabinet.width_mm, |pitch| f64::max(pitch[0], cabinet.width_mm));
    let over = |aisle_mm: f64, sheet: &mut Sheet| {
        load.over_footprint_mpa(sheet);
        load.over_pitch_mpa([along, cabinet.depth_mm + aisle_mm], aisle_mpa, sheet).unwrap_or(f64::NAN)
    };
    let mut rows = Vec::new();
    let now = pitch.map(|pitch| pitch[1] - cabinet.depth_mm).filter(|aisle| *aisle >= 0.0);
    let mut aisles: Vec<f64> = vec![0.0, 600.0, 900.0, 1200.0, 1500.0, 1800.0];
    aisles.extend(now);
    crate::calc::order::put_in_order(&mut aisles, f64::total_cmp);
    aisles.dedup();
    let quiet = &mut Sheet::quiet();
    for &aisle in &aisles {
        let q = over(aisle, quiet);
        let area_mm2 = along * (cabinet.depth_mm + aisle);
        let footprint_mm2 = cabinet.width_mm * cabinet.depth_mm;
        let us = |value: f64, kind| System::Us.from_si(value, kind);
        let vendor = AreaLoad::vendor_psi(
            us(load.weight_n, Kind::Force),
            us(footprint_mm2, Kind::Area),
            us(area_mm2, Kind::Area),
            quiet,
        );
        rows.push(Line {
            cells: vec![
                Cell::Number(aisle),
                Cell::Number(q),
                Cell::Number(vendor * 144.0 * psf_mpa()),
                live.map_or(Cell::Nothing, |live| Cell::Number(q / live)),
            ],
            is_marked: now == Some(aisle),
        });
    }
    let columns = columns![
        Column::nearest(AISLE, Kind::Length),
        Column::up(LOAD, Kind::AreaLoad),
        Column::up(VENDOR, Kind::AreaLoad),
        Column::up(OVER_LIVE, Kind::Utilisation),
    ];
    let points: Vec<[f64; 2]> =
        (0..=30).map(|step| 80.0 * step as f64).map(|aisle| [aisle, over(aisle, quiet)]).collect();
    let plot = Plot {
        name: OVER_AISLE,
        x: Axis { name: AISLE, kind: Kind::Length, scale: AxisScale::Linear, ends: None },
        y: Axis { name: LOAD, kind: Kind::AreaLoad, scale: AxisScale::Linear, ends: None },
        points: now
            .map(|aisle| PlotPoint { name: PlotName::Row(NOW), at: [aisle, over(aisle, quiet)], is_present: true })
            .into_iter()
            .collect(),
        curves: vec![Curve { name: PlotName::None, points, stroke: Stroke::Strong }],
        levels: live.map(|live| PlotLevel { name: PlotName::Row(LIVE), y: live }).into_iter().collect(),
        grid: None,
    };
    let mut sheet = Sheet::told();
    sheet.open(Part::Floor, Subject::Whole, None, System::Si);
    over(now.unwrap_or(0.0), &mut sheet);
    let aisle = now.unwrap_or(1200.0);
    let mut notes = vec![STRUCTURE];
    if live.is_none() {
        notes.push(NO_LIVE);
    }
    let tables = vec![Table { name: HEAVIEST, columns, rows }];
    let pictures = vec![Picture::Figure(plan(cabinet.width_mm, cabinet.depth_mm, along, aisle)), Picture::Plot(plot)];
    Ok(Shown { notes, tables, pictures, sections: sheet.sections })
}

fn plan(width_mm: f64, depth_mm: f64, along_mm: f64, aisle_mm: f64) -> Figure {
    let pitch = depth_mm + aisle_mm;
    let half = [width_mm / 2.0, depth_mm / 2.0];
    let mut parts = Vec::new();
    for row in 0..2 {
        for place in 0..4 {
            parts.push(outline_of("cabinet", [along_mm * place as f64, pitch * row as f64], half));
        }
    }
    parts.push(outline_of("dashed", [along_mm, 0.0], [along_mm / 2.0, pitch / 2.0]));
    parts.push(FigurePart::Dimension {
        from_mm: [along_mm / 2.0, -pitch / 2.0],
        to_mm: [along_mm * 1.5, -pitch / 2.0],
        offset_px: -22.0,
    });
    let right = 3.0 * along_mm + half[0];
    parts.push(FigurePart::Dimension { from_mm: [right, half[1]], to_mm: [right, pitch - half[1]], offset_px: 26.0 });
    Figure { name: PLAN, parts }
}
