//! What a zone statement holds for: the frame, its bolts, the concrete.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::steps;
use crate::calc::{Kind, StepId};
use crate::input::field::{FieldShape, Value};
use crate::load_out;
use crate::project::Project;
use crate::report::table::{Cell, Column, Line, Table};
use crate::study::side_by_side::spoken;

/// Everything that others have to do alike.
pub fn facts(project: &Project) -> Table {
    let mut rows: Vec<Line> = Vec::new();
    let measured = |value: f64, kind: Kind| Cell::Measured { ends: [value; 2], kind };
    let mut say = |name: StepId, cell: Cell| rows.push(Line::plain(vec![Cell::Name(name), cell]));
    let aboard_kg = project.contents.iter().map(|content| content.mass_kg).sum();
    say(steps::FRAME, measured(project.cabinet.frame.mass_kg, Kind::Mass));
    say(steps::ABOARD, measured(aboard_kg, Kind::Mass));
    let loads = load_out::loads(&project.cabinet, &project.contents, &project.all_states());
    if let Some(full) = loads.first() {
        say(steps::CENTRE, measured(full.centre_mm[2], Kind::Length));
    }
    if let Some(slab) = &project.slab {
        say(steps::CONCRETE, measured(slab.strength_mpa, Kind::Stress));
        say(steps::CRACKED, Cell::Name(if slab.is_cracked { steps::IS_CRACKED } else { steps::UNCRACKED }));
        say(steps::THICKNESS, measured(slab.thickness_mm, Kind::Length));
        say(steps::FRICTION, measured(slab.friction, Kind::Number));
        let outline = &slab.outline;
        for (name, distance_mm) in [
            (steps::LEFT, -outline.left_mm),
            (steps::RIGHT, outline.right_mm),
            (steps::FRONT, -outline.front_mm),
            (steps::REAR, outline.rear_mm),
        ] {
            let is_far = !distance_mm.is_finite();
            say(name, if is_far { Cell::Name(steps::FAR) } else { measured(distance_mm, Kind::Length) });
        }
    }
    let anchors = &project.cabinet.anchors;
    say(steps::BOLTS, measured(anchors.len() as f64, Kind::Number));
    if let Some(anchorage) = project.anchorage.as_ref().filter(|_| !anchors.is_empty()) {
        let own = anchors.iter().filter(|anchor| anchor.own.0.iter().any(|value| *value != Value::Unknown)).count();
        if own > 0 {
            say(steps::OTHERWISE, measured(own as f64, Kind::Number));
        }
        say(steps::ANCHOR_RULE, Cell::Text(anchorage.rule.id.into()));
        for (field, value) in anchorage.rule.fields.iter().zip(&anchorage.values.0) {
            let told = match (value, field.shape) {
                (Value::Number(number), FieldShape::Number { kind, .. }) => measured(*number, kind),
                (Value::Choice(chosen), FieldShape::Choice(words)) => Cell::Text(words[*chosen].into()),
                (Value::Flag(flag), _) => Cell::Text(String::from(if *flag { "yes" } else { "no" })),
                _ => continue,
            };
            rows.push(Line::plain(vec![Cell::Text(spoken(field.key).0), told]));
        }
    }
    Table { name: steps::ABOUT, columns: vec![Column::words(steps::WHAT), Column::words(steps::VALUE)], rows }
}
