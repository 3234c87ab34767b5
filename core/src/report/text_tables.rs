//! All text tables, for native code: the builder bakes them into the page, the command line and the tests read them.

use crate::calc::{StepId, StepTable, StepText};

/// Every table of step texts; rules bring their own.
pub fn tables() -> alloc::vec::Vec<&'static StepTable> {
    let mut tables: alloc::vec::Vec<&'static StepTable> = alloc::vec![
        &crate::load_out::TEXTS,
        &crate::base_reactions::told::TEXTS,
        &crate::base_reactions::PRYING_TEXTS,
        &crate::checks::standing_free::TEXTS,
        &crate::checks::stability::TEXTS,
        &crate::checks::other_tests::TEXTS,
        &crate::checks::thresholds::TEXTS,
        &crate::motion::BODY_TEXTS,
        &crate::motion::SLIDING_TEXTS,
        &crate::motion::CLOSED_FORM_TEXTS,
        &crate::motion::CRITERIA_TEXTS,
        &crate::motion::ASCE_43_TEXTS,
        &crate::motion::spectrum_rows::TEXTS,
        &crate::motion::VERDICT_TEXTS,
        &crate::checks::feet::TEXTS,
        &crate::checks::lifting::TEXTS,
        &crate::checks::moving::TEXTS,
        &crate::checks::moving::CARRIER_TEXTS,
        &crate::frame::TEXTS,
        &crate::frame::ANGLE_TEXTS,
        &crate::frame::CANTILEVER_TEXTS,
        &crate::checks::EQUILIBRIUM_TEXTS,
        &crate::checks::stiffness::TEXTS,
        &crate::checks::floor::TEXTS,
        &crate::checks::floor::LEG_TEXTS,
        &crate::checks::as_built::TEXTS,
        &super::answer::TEXTS,
        &super::drawing::TEXTS,
        &super::missing::TEXTS,
        &super::not_known::TEXTS,
    ];
    for table in crate::rules::floor::TABLES {
        push_new(&mut tables, table);
    }
    tables.extend(crate::shake_table::TABLES);
    for rule in crate::rules::demand::DEMAND_RULE_TEXTS {
        push_new(&mut tables, rule.steps);
    }
    for rule in crate::rules::anchor::ANCHOR_RULE_TEXTS {
        for table in rule.steps {
            push_new(&mut tables, table);
        }
    }
    tables
}

/// The text of a step, reason or name.
pub fn text(id: StepId) -> Option<&'static StepText> {
    tables().into_iter().find(|table| table.number == id.table())?.rows.get(id.row())
}

fn push_new(tables: &mut alloc::vec::Vec<&'static StepTable>, table: &'static StepTable) {
    // By address and not by number, so that two tables of one number are seen.
    if !tables.iter().any(|known| core::ptr::eq(*known, table)) {
        tables.push(table);
    }
}

/// The text of a row by its code.
pub fn text_of_code(code: u16) -> Option<&'static StepText> {
    text(StepId::from_code(code))
}
