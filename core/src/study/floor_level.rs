//! How the push grows with the height in the building, by every rule that asks for a height or a storey.

use alloc::vec;
use alloc::vec::Vec;

use super::side_by_side::{Filled, fill, heights_m, name_cell, plot_name, storeys_of};
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, Sheet, StepId, steps};
use crate::load_case::Format;
use crate::project::Project;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotName, PlotPoint, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::rules::demand::DEMAND_RULES;

steps! { 137 "floor level study";
    STRENGTH "" Number (INPUT "site" Derived) "push over the height of the building, strength design": Name;
    LIMIT_STATES "" Number (INPUT "site" Derived) "push over the height of the building, limit states": Name;
    ALLOWABLE_STRESS "" Number (INPUT "site" Derived) "push over the height of the building, allowable stress": Name;
    PUSH "" Number (INPUT "site" Derived) "push over weight by the clause": Name;
    HEIGHT "" Number (INPUT "site" Derived) "height of the floor": Name;
    RULE "" Number (INPUT "site" Derived) "rule": Name;
    BASE "" Number (INPUT "site" Derived) "at the base": Name;
    MIDDLE "" Number (INPUT "site" Derived) "half-way up": Name;
    ROOF "" Number (INPUT "site" Derived) "at the roof": Name;
    RATIO "" Number (INPUT "site" Derived) "roof over base": Name;
    NOW "" Number (INPUT "site" Derived) "your floor": Name;

    GROUNDS "" Number (INPUT "site" Derived) "each line has the ground of its own rule and stands before load factors; what compares is how it grows": Reason;
    LIMITS "" Number (INPUT "site" Derived) "where a line is upright a smallest or a largest force of the rule governs": Reason;
    JUMPS "" Number (INPUT "site" Derived) "ASCE 7-22 and UBC 1994 have other factors at grade than a little above, so their lines jump there; storeys make steps": Reason;
    MISSING "" Number (INPUT "site" Derived) "rules that ask for no height, need other inputs or do not reach a floor are left out, and so is the part of a line that they do not reach": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "floor-level", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "floor-level",
    title: "How much does the floor matter?",
    help: "The push of every rule that knows heights or storeys, from the base of the building to its roof. Inputs are those of \
           the comparison of rules.",
    steps: &[&TEXTS],
};

/// Floors that are tried, evenly from base to roof.
const FLOORS: usize = 41;

static FORMATS: [(Format, StepId); 3] =
    [(Format::Strength, STRENGTH), (Format::LimitStates, LIMIT_STATES), (Format::AllowableStress, ALLOWABLE_STRESS)];

/// How a rule says where the cabinet stands.
#[derive(Clone, Copy)]
enum Heights {
    /// Fields of the attachment and, where the rule asks for one, the roof; m.
    Metres(usize, Option<usize>),
    /// Fields of the storey and their count.
    Storeys(usize, usize),
}

/// A rule with its push at every floor: push over weight and height in m.
struct Grown {
    filled: Filled,
    is_own: bool,
    points: Vec<[f64; 2]>,
}

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let site = project.site.as_ref();
    let [now_m, roof_m] = heights_m(site);
    let grown: Vec<Grown> = DEMAND_RULES
        .iter()
        .filter_map(|rule| {
            let filled = fill(rule, site);
            let points = points(&filled, roof_m)?;
            let is_own = site.is_some_and(|site| core::ptr::eq(site.rule, filled.rule));
            Some(Grown { filled, is_own, points })
        })
        .collect();
    let mut shown = Shown { notes: vec![GROUNDS, LIMITS, JUMPS, MISSING], ..Shown::default() };
    for (format, name) in FORMATS {
        let told: Vec<&Grown> =
            grown.iter().filter(|one| (one.filled.rule.format)(&one.filled.values) == format).collect();
        if !told.is_empty() {
            shown.pictures.push(Picture::Plot(drawn(name, &told, now_m)));
            shown.tables.push(table(name, &told));
        }
    }
    Ok(shown)
}

fn heights(filled: &Filled) -> Option<Heights> {
    let place = |key: &str| filled.rule.fields.iter().position(|field| field.key == key);
    match (place("attachment_height_m"), place("storey").zip(place("storeys"))) {
        (Some(attachment), _) => Some(Heights::Metres(attachment, place("roof_height_m"))),
        (None, Some((storey, storeys))) => Some(Heights::Storeys(storey, storeys)),
        (None, None) => None,
    }
}

/// The push of a rule at every floor; none where it asks for no height or gives no number anywhere.
fn points(filled: &Filled, roof_m: f64) -> Option<Vec<[f64; 2]>> {
    let heights = heights(filled)?;
    if !filled.needed.is_empty() {
        return None;
    }
    let push = |height_m: f64| {
        let mut values = filled.values.clone();
        match heights {
            Heights::Metres(attachment, roof) => {
                values.set_number(attachment, height_m);
                if let Some(roof) = roof {
                    values.set_number(roof, roof_m);
                }
            }
            Heights::Storeys(storey, storeys) => {
                let [at, of] = storeys_of([height_m, roof_m]);
                values.set_number(storey, at);
                values.set_number(storeys, of);
            }
        }
        let mut faults = Vec::new();
        (filled.rule.faults)(&values, &mut faults);
        let demand = faults.is_empty().then(|| (filled.rule.demand)(&values, 1.0, &mut Sheet::quiet()));
        // A floor that the rule does not reach breaks the line.
        demand.and_then(Result::ok).map_or(f64::NAN, |demand| demand.push)
    };
    let points: Vec<[f64; 2]> = (0..FLOORS)
        .map(|floor| {
            let height_m = roof_m * floor as f64 / (FLOORS - 1) as f64;
            [push(height_m), height_m]
        })
        .collect();
    points.iter().any(|point| point[0].is_finite()).then_some(points)
}

fn drawn(name: StepId, told: &[&Grown], now_m: f64) -> Plot {
    const OTHERS: [Stroke; 3] = [Stroke::Plain, Stroke::Dashed, Stroke::Dotted];
    let curve = |(place, one): (usize, &&Grown)| Curve {
        name: plot_name(one.filled.rule.id),
        points: one.points.clone(),
        stroke: if one.is_own { Stroke::Strong } else { OTHERS[place % 3] },
    };
    let own = told.iter().find(|one| one.is_own);
    let present = own.and_then(|one| {
        let demand = (one.filled.rule.demand)(&one.filled.values, 1.0, &mut Sheet::quiet()).ok()?;
        Some(PlotPoint { name: PlotName::Row(NOW), at: [demand.push, f64::max(0.0, now_m)], is_present: true })
    });
    let axis = |name, kind| Axis { name, kind, scale: AxisScale::Linear, ends: None };
    Plot {
        name,
        x: axis(PUSH, Kind::Acceleration),
        y: axis(HEIGHT, Kind::Height),
        curves: told.iter().enumerate().map(curve).collect(),
        points: present.into_iter().collect(),
        levels: Vec::new(),
        grid: None,
    }
}

fn table(name: StepId, told: &[&Grown]) -> Table {
    let columns = columns![
        Column::words(RULE),
        Column::up(BASE, Kind::Acceleration),
        Column::up(MIDDLE, Kind::Acceleration),
        Column::up(ROOF, Kind::Acceleration),
        Column::nearest(RATIO, Kind::Number),
    ];
    let number = |value: f64| if value.is_finite() { Cell::Number(value) } else { Cell::Nothing };
    let row = |one: &&Grown| {
        let [base, middle, roof] = [0, FLOORS / 2, FLOORS - 1].map(|floor| one.points[floor][0]);
        let cells =
            vec![name_cell(one.filled.rule.id), number(base), number(middle), number(roof), number(roof / base)];
        Line { cells, is_marked: one.is_own }
    };
    Table { name, columns, rows: told.iter().map(row).collect() }
}
