//! Sections of the sheet as plain data.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use crate::calc::{Detail, Part, Section, System};

/// A section as plain data.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct SectionTold {
    /// Part of the pipeline.
    pub part: Part,
    /// State and subject.
    pub of: String,
    /// Id of the check that it proves.
    pub check: Option<&'static str>,
    /// The system of its values.
    pub system: System,
    /// Its steps.
    pub steps: Vec<StepTold>,
}

/// A step as plain data.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct StepTold {
    /// Row of the text table.
    pub id: u16,
    /// Its value; absent where it is not a finite number.
    pub value: Option<f64>,
    /// Place of an indexed quantity, from 1; 0 for a plain one.
    pub index: u16,
    /// Whether it was brought from another section.
    pub carried: bool,
    /// What it carries beside its value.
    pub detail: Option<DetailTold>,
}

/// What a step carries beside its value.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum DetailTold {
    /// Rows of a table.
    Rows(Vec<[f64; 2]>),
    /// Corners of a shape; null pairs end a polygon.
    Shape(Vec<Option<[f64; 2]>>),
    /// Residuals of equations.
    Residuals(Vec<f64>),
    /// Ends of a search.
    Bracket([f64; 2]),
}

/// A section as plain data; `of` names its state and subject.
pub fn section_told(section: &Section, of: String) -> SectionTold {
    let steps = section.steps.iter().map(|step| StepTold {
        id: step.id.code(),
        value: step.value.is_finite().then_some(step.value),
        index: step.index,
        carried: step.carried,
        detail: detail_told(&step.detail),
    });
    SectionTold {
        part: section.part,
        of,
        check: section.check.map(|check| check.id()),
        system: section.system,
        steps: steps.collect(),
    }
}

fn detail_told(detail: &Detail) -> Option<DetailTold> {
    match detail {
        Detail::None => None,
        Detail::Rows(rows) => Some(DetailTold::Rows(rows.clone())),
        Detail::Shape(corners) => {
            let corners = corners.iter().map(|corner| corner[0].is_finite().then_some(*corner));
            Some(DetailTold::Shape(corners.collect()))
        }
        Detail::Residuals(residuals) => Some(DetailTold::Residuals(residuals.clone())),
        Detail::Bracket(ends) => Some(DetailTold::Bracket(*ends)),
    }
}
