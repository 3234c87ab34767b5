//! The sheet: every number that reaches a reader was recorded here as a step.

use alloc::vec::Vec;

use super::check::CheckId;
use super::step::StepId;
use super::unit::System;

/// Which part of the pipeline a section belongs to: the first word of a step's address.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Part {
    /// Mass, centre of gravity and inertia.
    LoadOut,
    /// How hard it is pushed.
    Demand,
    /// What feet and anchors feel.
    BaseReactions,
    /// Before it is bolted down.
    StandingFree,
    /// Anchors in concrete.
    Anchors,
    /// Bearing under the feet.
    Feet,
    /// The floor under it, and the way in.
    Floor,
    /// The frame between its braces.
    Frame,
    /// On its way.
    Moving,
    /// Hanging on a hook.
    Lifting,
    /// What a shake table must show and carry.
    ShakeTable,
    /// How far it can go.
    Limits,
}

/// What a section is about, beside its state.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Subject {
    /// The whole cabinet.
    Whole,
    /// The foot of this place in the file.
    Foot(u16),
    /// The anchor of this place in the file.
    Anchor(u16),
    /// A group of anchors, counted from 1 in the order of their first anchor.
    Group(u16),
}

/// A run of steps that belong together. A formula names only symbols recorded earlier in the same section.
#[derive(Clone, PartialEq, Debug)]
pub struct Section {
    /// The part of the pipeline.
    pub part: Part,
    /// What it is about.
    pub subject: Subject,
    /// The check that it proves, if it proves one.
    pub check: Option<CheckId>,
    /// The system in whose base units its values are.
    pub system: System,
    /// Its steps in the order of the clause.
    pub steps: Vec<Step>,
}

/// One recorded number.
#[derive(Clone, PartialEq, Debug)]
pub struct Step {
    /// Which row of the text tables describes it.
    pub id: StepId,
    /// The value, in base units of the section's system.
    pub value: f64,
    /// 0, or the place of an indexed quantity (`T_i`) counted from 1.
    pub index: u16,
    /// True where the number was computed in another section and only brought here.
    pub carried: bool,
    /// What the step's shape asks for beside the value.
    pub detail: Detail,
}

/// What a step carries beside its value.
#[derive(Clone, PartialEq, Debug)]
pub enum Detail {
    /// Nothing.
    None,
    /// The rows of a table that were used: pairs of argument and value.
    Rows(Vec<[f64; 2]>),
    /// The corners of polygons; a polygon ends where a pair of NaN stands.
    Shape(Vec<[f64; 2]>),
    /// Residuals of the equations, relative.
    Residuals(Vec<f64>),
    /// The two ends of a search.
    Bracket([f64; 2]),
}

/// Records steps when told, and only passes values through when quiet, so that a sweep and its working are one code.
#[derive(Debug, Default)]
pub struct Sheet {
    told: bool,
    /// The sections recorded so far.
    pub sections: Vec<Section>,
}

impl Sheet {
    /// A sheet that records.
    ///
    /// ```
    /// use steadfoot::calc::{Part, Sheet, Subject, System, steps, Kind, clause::STATICS};
    /// steps! { 251 "example"; M "m" Mass (STATICS "" Derived) "Mass": Given; }
    /// let mut sheet = Sheet::told();
    /// sheet.open(Part::LoadOut, Subject::Whole, None, System::Si);
    /// assert_eq!(sheet.step(M, 4000.0), 4000.0);
    /// assert_eq!(sheet.sections[0].steps[0].value, 4000.0);
    /// ```
    pub fn told() -> Sheet {
        Sheet { told: true, sections: Vec::new() }
    }

    /// A sheet that records nothing.
    pub fn quiet() -> Sheet {
        Sheet::default()
    }

    /// Whether steps are recorded. Ask before preparing a detail that costs time.
    pub fn is_told(&self) -> bool {
        self.told
    }

    // In the browser every number counts in bytes: a recording that is copied into each of its thousand places would be
    // a third of the engine.
    /// Opens the section to which the following steps belong.
    pub fn open(&mut self, part: Part, subject: Subject, check: Option<CheckId>, system: System) {
        if self.told {
            self.sections.push(Section { part, subject, check, system, steps: Vec::new() });
        }
    }

    /// Records a step of this section and returns its value.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn step(&mut self, id: StepId, value: f64) -> f64 {
        if self.told {
            self.push(Step { id, value, index: 0, carried: false, detail: Detail::None });
        }
        value
    }

    /// Records a number that was computed in another section.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn carry(&mut self, id: StepId, value: f64) -> f64 {
        if self.told {
            self.push(Step { id, value, index: 0, carried: true, detail: Detail::None });
        }
        value
    }

    /// Records the values of an indexed quantity that was computed in another section.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn carry_each(&mut self, id: StepId, values: &[f64]) {
        if self.told {
            for (place, &value) in values.iter().enumerate() {
                self.push(Step { id, value, index: place as u16 + 1, carried: true, detail: Detail::None });
            }
        }
    }

    /// Records the values of an indexed quantity (`T_i`), which a sum in a later formula runs over.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn each(&mut self, id: StepId, values: &[f64]) {
        if self.told {
            for (place, &value) in values.iter().enumerate() {
                self.push(Step { id, value, index: place as u16 + 1, carried: false, detail: Detail::None });
            }
        }
    }

    /// Records the values of an indexed quantity, all with one detail.
    pub fn each_detailed(&mut self, id: StepId, values: &[f64], detail: impl FnOnce() -> Detail) {
        if self.told && !values.is_empty() {
            let detail = detail();
            for (place, &value) in values.iter().enumerate() {
                self.push(Step { id, value, index: place as u16 + 1, carried: false, detail: detail.clone() });
            }
        }
    }

    /// Records a step with its detail; the detail is made only when the sheet is told.
    pub fn detailed(&mut self, id: StepId, value: f64, detail: impl FnOnce() -> Detail) -> f64 {
        if self.told {
            self.push(Step { id, value, index: 0, carried: false, detail: detail() });
        }
        value
    }

    #[inline(never)]
    fn push(&mut self, step: Step) {
        match self.sections.last_mut() {
            Some(section) => section.steps.push(step),
            None => panic!("a step was recorded before a section was opened"),
        }
    }
}
