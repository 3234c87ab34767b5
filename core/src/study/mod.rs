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

/// All studies, in the order in which the page offers them. Adding one is one line here and one in [`STUDY_TEXTS`].
#[rustfmt::skip]
pub static STUDIES: &[&Study] = &[
    &not_known::STUDY,
    &what_matters::STUDY,
    &reorder::STUDY,
    &strength::STUDY,
    &what_would_hold::STUDY,
    &how_far::STUDY,
    &limit_map::STUDY,
    &setting_out::STUDY,
    &as_built::STUDY,
    &anchor_section::STUDY,
    &anchor_modes::STUDY,
    &standing::STUDY,
    &rocking::STUDY,
    &fragility::STUDY,
    &response_spectrum::STUDY,
    &ideas::STUDY,
    &side_by_side::STUDY,
    &zone_statement::STUDY,
    &floor_level::STUDY,
    &spectra::STUDY,
    &rig::STUDY,
    &ways_of_standing::STUDY,
    &pressure_map::STUDY,
    &stiffness::STUDY,
    &uneven_floor::STUDY,
    &row_of_cabinets::STUDY,
    &slab_forms::STUDY,
    &cabinets_in_a_row::STUDY,
    &sway::STUDY,
    &hook::STUDY,
];

/// Their texts, in the same order.
#[rustfmt::skip]
pub static STUDY_TEXTS: &[&StudyText] = &[
    &not_known::TEXT,
    &what_matters::TEXT,
    &reorder::TEXT,
    &strength::TEXT,
    &what_would_hold::TEXT,
    &how_far::TEXT,
    &limit_map::TEXT,
    &setting_out::TEXT,
    &as_built::TEXT,
    &anchor_section::TEXT,
    &anchor_modes::TEXT,
    &standing::TEXT,
    &rocking::TEXT,
    &fragility::TEXT,
    &response_spectrum::TEXT,
    &ideas::TEXT,
    &side_by_side::TEXT,
    &zone_statement::TEXT,
    &floor_level::TEXT,
    &spectra::TEXT,
    &rig::TEXT,
    &ways_of_standing::TEXT,
    &pressure_map::TEXT,
    &stiffness::TEXT,
    &uneven_floor::TEXT,
    &row_of_cabinets::TEXT,
    &slab_forms::TEXT,
    &cabinets_in_a_row::TEXT,
    &sway::TEXT,
    &hook::TEXT,
];

/// The study of an id.
pub fn study(id: &str) -> Option<&'static Study> {
    STUDIES.iter().copied().find(|study| study.id == id)
}

/// Every text table, those of the studies included; for native code.
pub fn tables() -> Vec<&'static StepTable> {
    let mut tables = crate::report::text_tables::tables();
    for table in STUDY_TEXTS.iter().flat_map(|text| text.steps) {
        if tables.iter().all(|known| known.number != table.number) {
            tables.push(table);
        }
    }
    tables
}

/// The text of a row of any table, for native code.
pub fn text(id: StepId) -> Option<&'static StepText> {
    tables().into_iter().find(|table| table.number == id.table())?.rows.get(id.row())
}
