//! Studies: questions about a project that are no single check, answered by tables, plots and figures.

mod anchor_modes;
mod anchor_section;
mod as_built;
mod breakout_profile;
mod cabinets_in_a_row;
mod floor_level;
mod floor_shown;
mod fragility;
mod free_body;
mod hook;
mod how_far;
mod ideas;
pub mod limit_map;
mod not_known;
pub mod pressure_map;
mod reorder;
mod response_spectrum;
mod rig;
pub mod rocking;
mod rocking_beside;
mod row_of_cabinets;
mod setting_out;
mod setting_out_plan;
mod shaking;
pub mod side_by_side;
mod slab_forms;
mod spectra;
mod standing;
mod stiffness;
mod strength;
mod sway;
mod tied_at_top;
mod uneven_floor;
mod ways_of_standing;
mod what_matters;
mod what_would_hold;
pub mod work;
pub mod zone_statement;

use alloc::vec::Vec;

use crate::calc::{Section, StepId, StepTable, StepText};
use crate::project::Project;
use crate::report::bars::Bars;
use crate::report::figure::Figure;
use crate::report::plot::Plot;
use crate::report::table::Table;

/// A question and what answers it.
pub struct Study {
    /// Its id, in small letters and dashes.
    pub id: &'static str,
    /// Answers it for a project; `extra` is what the reader brought beside it, such as a record of motion, else empty.
    ///
    /// The reason row where there is nothing to show.
    pub make: fn(&Project, extra: &str) -> Result<Shown, StepId>,
}

/// The texts of a study, only for native code.
pub struct StudyText {
    /// Id of the study.
    pub id: &'static str,
    /// The question, as a heading.
    pub title: &'static str,
    /// What is shown, and where it stops; one to three sentences.
    pub help: &'static str,
    /// Texts of its names and steps.
    pub steps: &'static [&'static StepTable],
}

/// What a study shows.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Shown {
    /// Rows of sentences that belong to it.
    pub notes: Vec<StepId>,
    /// Tables.
    pub tables: Vec<Table>,
    /// Plots and figures.
    pub pictures: Vec<Picture>,
    /// The working.
    pub sections: Vec<Section>,
}

/// A picture of a study.
#[derive(Clone, PartialEq, Debug)]
#[allow(clippy::large_enum_variant, reason = "a study has a handful of them")]
pub enum Picture {
    /// Numbers on axes.
    Plot(Plot),
    /// Things to scale.
    Figure(Figure),
    /// Bars on one scale.
    Bars(Bars),
}

macro_rules! studies {
    ($($module:ident)*) => {
        /// All studies, in the order in which the page offers them.
        pub static STUDIES: &[&Study] = &[$(&$module::STUDY),*];

        /// Their texts, in the same order; only for native code.
        pub static STUDY_TEXTS: &[&StudyText] = &[$(&$module::TEXT),*];
    };
}

// The registry: a study is a line here, and its `mod`.
studies! {
    not_known
    what_matters
    reorder
    strength
    what_would_hold
    how_far
    limit_map
    setting_out
    as_built
    anchor_section
    anchor_modes
    standing
    rocking
    fragility
    response_spectrum
    ideas
    side_by_side
    zone_statement
    floor_level
    spectra
    rig
    ways_of_standing
    pressure_map
    stiffness
    uneven_floor
    row_of_cabinets
    slab_forms
    cabinets_in_a_row
    sway
    hook
}

/// The study of an id.
///
/// ```
/// use steadfoot::{project::built_in, study::study};
/// let shown = (study("standing-free").unwrap().make)(&built_in().unwrap(), "").unwrap();
/// assert!(!shown.tables.is_empty() || !shown.pictures.is_empty());
/// ```
pub fn study(id: &str) -> Option<&'static Study> {
    STUDIES.iter().copied().find(|study| study.id == id)
}

/// Every text table, those of the studies included; for native code.
pub fn tables() -> Vec<&'static StepTable> {
    let mut tables = crate::report::text_tables::tables();
    for table in STUDY_TEXTS.iter().flat_map(|text| text.steps) {
        if !tables.iter().any(|known| core::ptr::eq(*known, *table)) {
            tables.push(table);
        }
    }
    tables
}

/// The text of a row of any table, for native code.
pub fn text(id: StepId) -> Option<&'static StepText> {
    tables().into_iter().find(|table| table.number == id.table())?.rows.get(id.row())
}
