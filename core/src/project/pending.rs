//! Stands in for the registry of anchor rules until that is there.

use alloc::vec::Vec;

use crate::input::{Field, Problem, Values};

/// An anchor rule, as far as the reader asks it.
pub struct AnchorRule {
    /// Its id in the file.
    pub id: &'static str,
    /// Its fields.
    pub fields: &'static [Field],
    /// Places of the fields that one anchor may have otherwise.
    pub anchor_fields: &'static [usize],
    /// Faults that a single field's limits cannot see.
    pub faults: fn(&Values, &mut Vec<(usize, Problem, &'static str)>),
}

/// All anchor rules.
pub static ANCHOR_RULES: &[&AnchorRule] = &[];
