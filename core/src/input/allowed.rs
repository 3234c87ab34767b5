//! What may stand in a field, as text in the reader's units.

use alloc::string::String;

use super::fault::push_whole;
use super::field::{Field, FieldShape};
use crate::calc::show::{Reading, Rounding, Style, field_reading, field_value, number_text, show, unit_text};
use crate::calc::{Kind, System};

/// Longest name or text, in characters.
pub const NAME_MAX: usize = 200;

/// Most contents of a cabinet.
pub const CONTENTS_MAX: usize = 1_000;

/// In which units a fault tells what is allowed.
///
/// A file has its own, which the last words of its keys name; a form shows some of them otherwise, such as the loads of
/// floors in kPa, and shows other ones to those who read feet and pounds.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LimitUnits {
    /// As the text has it: the faults of a file, a stream or a schedule.
    File,
    /// As a form shows it in this system: the faults beside its fields.
    Form(System),
}

impl From<System> for LimitUnits {
    fn from(system: System) -> LimitUnits {
        LimitUnits::Form(system)
    }
}

impl LimitUnits {
    /// A length of the file as a fault names it, rounded away from zero.
    pub fn length(self, value_mm: f64) -> String {
        show(value_mm, Kind::Length, Style { reading: Reading::Base, ..Style::plain(self.system(), Rounding::Up) })
    }

    fn system(self) -> System {
        match self {
            LimitUnits::File => System::Si,
            LimitUnits::Form(system) => system,
        }
    }
}

/// The smallest and the largest number of a field, both included, in SI.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Range {
    /// What the numbers measure.
    pub kind: Kind,
    /// The smallest.
    pub min: f64,
    /// The largest.
    pub max: f64,
}

impl Range {
    /// The range as text: `0.1 to 20 000 mm`. Printed limits are rounded inwards, so that what is printed is allowed.
    pub fn text(&self, units: LimitUnits) -> String {
        let system = units.system();
        let (reading, per_base) = match units {
            LimitUnits::File => (Reading::Base, 1.0),
            LimitUnits::Form(_) => (field_reading(self.kind), field_value(1.0, self.kind, system)),
        };
        let show = |limit: f64, away_from_zero: bool| {
            let rounding = if away_from_zero { Rounding::Up } else { Rounding::Down };
            let style = Style { from: system, to: system, reading: Reading::Base, rounding, digits: 0 };
            number_text(limit / per_base, Kind::Number, style)
        };
        let mut text = show(self.min, self.min > 0.0);
        text.push_str(" to ");
        text.push_str(&show(self.max, self.max < 0.0));
        let unit = unit_text(self.kind, system, reading);
        if !unit.is_empty() {
            text.push('\u{a0}');
            text.push_str(&unit);
        }
        text
    }
}

/// What may stand in a field.
pub fn text(field: &Field, units: LimitUnits) -> String {
    match field.shape {
        FieldShape::Number { kind, min, max } => Range { kind, min, max }.text(units),
        FieldShape::Numbers { kind, count, min, max } => {
            let mut text = String::from("a list of ");
            push_whole(&mut text, count);
            text.push_str(" numbers, each ");
            text.push_str(&Range { kind, min, max }.text(units));
            text
        }
        FieldShape::Choice(words) => words.join(", "),
        FieldShape::Flag => "true or false".into(),
        FieldShape::Text => "a text of at most 200 characters on one line".into(),
        FieldShape::Name => "a name of 1 to 200 characters on one line".into(),
        FieldShape::NamesOfContents => "a list of names of contents".into(),
        FieldShape::NumbersOfContents { kind, min, max } => {
            let mut text = String::from("an object with names of contents, each with ");
            text.push_str(&Range { kind, min, max }.text(units));
            text
        }
    }
}
