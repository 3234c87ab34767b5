//! Fields: what a part of the project file or a rule asks for, and within which limits.
//!
//! One table makes the form on the page, the reading and its faults, the JSON Schema, the guide's tables and the tests.
//! Keys, shapes and limits are part of the engine; labels and help stand in a parallel table that only native code uses.

use alloc::string::String;
use alloc::vec::Vec;

use crate::calc::Kind;

/// One field.
#[derive(Clone, Copy, Debug)]
pub struct Field {
    /// Its key in the file; the unit is the last word.
    pub key: &'static str,
    /// What may stand there.
    pub shape: FieldShape,
    /// What happens when it is absent.
    pub absent: Absent,
}

/// What may stand in a field.
#[derive(Clone, Copy, Debug)]
pub enum FieldShape {
    /// A number within limits, both included.
    Number {
        /// What it measures; the file is in SI.
        kind: Kind,
        /// Smallest value allowed.
        min: f64,
        /// Largest value allowed.
        max: f64,
    },
    /// A list of numbers (position, size), each within limits.
    Numbers {
        /// What they measure.
        kind: Kind,
        /// How many.
        count: usize,
        /// Smallest value allowed.
        min: f64,
        /// Largest value allowed.
        max: f64,
    },
    /// One of the words.
    Choice(&'static [&'static str]),
    /// True or false.
    Flag,
    /// A text of at most 200 characters.
    Text,
    /// A text of 1 to 200 characters that no other item of its list has.
    Name,
    /// A list of names of contents, none of them twice.
    NamesOfContents,
    /// An object whose keys are names of contents, with a number within limits for each.
    NumbersOfContents {
        /// What they measure.
        kind: Kind,
        /// Smallest value allowed.
        min: f64,
        /// Largest value allowed.
        max: f64,
    },
}

/// What happens when a field is absent (or null).
#[derive(Clone, Copy, Debug)]
pub enum Absent {
    /// That is a fault.
    Fault,
    /// It stays unknown; the code that needs it says so.
    Unknown,
    /// This number.
    Is(f64),
    /// These numbers, as many as the field counts, all the same.
    Are(f64),
    /// The word of this place.
    Word(usize),
    /// This truth value.
    Set(bool),
}

/// The texts of a field, in the order of the field table.
#[derive(Clone, Copy, Debug)]
pub struct FieldText {
    /// Label on the form.
    pub label: &'static str,
    /// One or two plain sentences: what it is, where it is found.
    pub help: &'static str,
    /// Clause where the field is defined, or empty.
    pub clause: &'static str,
    /// Labels of the words of a choice, in their order; empty elsewhere.
    pub words: &'static [&'static str],
}

/// What was read for one field.
#[derive(Clone, PartialEq, Debug, Default)]
pub enum Value {
    /// Absent, and its field says `Unknown`.
    #[default]
    Unknown,
    /// A number, in SI.
    Number(f64),
    /// Numbers, in SI.
    Numbers([f64; 3]),
    /// The place of the word.
    Choice(usize),
    /// True or false.
    Flag(bool),
    /// A text.
    Text(String),
    /// Places of contents in the file, rising.
    Contents(Vec<usize>),
    /// Numbers of contents by their places in the file, rising; in SI.
    NumbersOfContents(Vec<(usize, f64)>),
}

/// The values read by a table of fields, in its order.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Values(pub Vec<Value>);

impl Values {
    /// The number of a field; `None` while it is unknown.
    pub fn number(&self, field: usize) -> Option<f64> {
        match self.0.get(field) {
            Some(Value::Number(number)) => Some(*number),
            _ => None,
        }
    }

    /// The number of a field that always has one.
    ///
    /// Panics when the field table lets it be unknown: that is a mistake in the table, not in the input.
    pub fn given(&self, field: usize) -> f64 {
        match self.number(field) {
            Some(number) => number,
            None => panic!("field {field} must be required or have a default"),
        }
    }

    /// The numbers of a field; unused places are zero.
    pub fn numbers(&self, field: usize) -> Option<[f64; 3]> {
        match self.0.get(field) {
            Some(Value::Numbers(numbers)) => Some(*numbers),
            _ => None,
        }
    }

    /// The place of the chosen word.
    pub fn choice(&self, field: usize) -> Option<usize> {
        match self.0.get(field) {
            Some(Value::Choice(place)) => Some(*place),
            _ => None,
        }
    }

    /// The flag of a field, false while unknown.
    pub fn flag(&self, field: usize) -> bool {
        matches!(self.0.get(field), Some(Value::Flag(true)))
    }

    /// Two numbers of a field that always has them; panics as [`Values::given`] does.
    pub fn pair(&self, field: usize) -> [f64; 2] {
        let [first, second, _] = self.triple(field);
        [first, second]
    }

    /// Three numbers of a field that always has them; panics as [`Values::given`] does.
    pub fn triple(&self, field: usize) -> [f64; 3] {
        match self.numbers(field) {
            Some(numbers) => numbers,
            None => panic!("field {field} must be required or have a default"),
        }
    }

    /// Places of contents in the file.
    pub fn contents(&self, field: usize) -> &[usize] {
        match self.0.get(field) {
            Some(Value::Contents(places)) => places,
            _ => &[],
        }
    }

    /// Numbers of contents by their places in the file.
    pub fn numbers_of_contents(&self, field: usize) -> &[(usize, f64)] {
        match self.0.get(field) {
            Some(Value::NumbersOfContents(numbers)) => numbers,
            _ => &[],
        }
    }

    /// The text of a field.
    pub fn text(&self, field: usize) -> Option<&str> {
        match self.0.get(field) {
            Some(Value::Text(text)) => Some(text),
            _ => None,
        }
    }

    /// These values with others put in their places where those are known.
    pub fn replaced_by(&self, others: &Values) -> Values {
        let mut values = self.clone();
        for (value, other) in values.0.iter_mut().zip(&others.0) {
            if *other != Value::Unknown {
                value.clone_from(other);
            }
        }
        values
    }

    /// Puts another number in the place of a field, as the search for the strongest demand does.
    pub fn set_number(&mut self, field: usize, number: f64) {
        self.0[field] = Value::Number(number);
    }

    /// Puts another word in the place of a field, as the search for the highest zone does.
    pub fn set_choice(&mut self, field: usize, place: usize) {
        self.0[field] = Value::Choice(place);
    }
}

/// Makes a table of fields, the places of its fields as constants, and the parallel table of texts.
///
/// ```
/// use steadfoot::calc::Kind;
/// use steadfoot::fields;
/// use steadfoot::input::field::{Absent::*, FieldShape::*};
/// fields! {
///     S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.0, max: 5.0 }, Fault,
///         "S_DS", "Design spectral acceleration at short periods.", "ASCE 7-16 11.4.5", [];
///     SOIL "site_class" Choice(&["A", "B"]), Word(0),
///         "Site class", "From the soil report.", "ASCE 7-16 20.3", ["hard rock", "rock"];
/// }
/// assert_eq!(FIELDS[SOIL].key, "site_class");
/// assert_eq!(FIELD_TEXTS[S_DS].label, "S_DS");
/// ```
#[macro_export]
macro_rules! fields {
    ($($id:ident $key:literal $shape:expr, $absent:expr, $label:literal, $help:literal, $clause:literal, [$($word:literal),* $(,)?];)*) => {
        #[allow(non_camel_case_types, clippy::upper_case_acronyms)]
        enum FieldPlace { $($id),* }
        $(
            #[doc = $help]
            pub const $id: usize = FieldPlace::$id as usize;
        )*
        /// The fields, in the order in which they are asked for.
        pub static FIELDS: &[$crate::input::field::Field] =
            &[$($crate::input::field::Field { key: $key, shape: $shape, absent: $absent }),*];
        /// Their texts.
        pub static FIELD_TEXTS: &[$crate::input::field::FieldText] =
            &[$($crate::input::field::FieldText { label: $label, help: $help, clause: $clause, words: &[$($word),*] }),*];
    };
}
