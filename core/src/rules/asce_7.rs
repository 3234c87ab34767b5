//! What the editions of ASCE 7 share: the force of chapter 13 between its limits, snubbers, load combinations.

use alloc::vec;
use alloc::vec::Vec;

use super::demand::{Faults, governing};
use crate::calc::{Sheet, StepId, limit};
use crate::input::{Problem, Values};
use crate::load_case::{Directions, Level, LoadCase};

/// The steps of the footnote on vibration-isolated components.
#[derive(Clone, Copy)]
pub struct SnubberSteps {
    /// Force over weight after the limits of the clause.
    pub limited: StepId,
    /// The clearance.
    pub gap: StepId,
    /// The clearance up to which nothing is added.
    pub gap_max: StepId,
    /// The force over weight with what the snubbers add.
    pub force: StepId,
}

/// The steps of equations 13.3-1 to 13.3-3 of the editions up to 7-16.
#[derive(Clone, Copy)]
pub struct ForceSteps {
    /// `0.4 * a_p * S_DS / (R_p / I_p) * (1 + 2 * r_z)`
    pub c_1: StepId,
    /// `1.6 * S_DS * I_p`
    pub c_max: StepId,
    /// `0.3 * S_DS * I_p`
    pub c_min: StepId,
}

/// What those equations take.
#[derive(Clone, Copy)]
pub struct ForceTerms {
    /// Amplification of a flexible component.
    pub a_p: f64,
    /// What ductility takes off.
    pub r_p: f64,
    /// Importance of the component.
    pub i_p: f64,
    /// Design acceleration in g.
    pub s_ds: f64,
    /// Height of the attachment over that of the roof.
    pub r_z: f64,
}

impl ForceSteps {
    /// Force over weight between its limits, not yet told, and the step that decided it.
    pub fn limited(self, terms: ForceTerms, sheet: &mut Sheet) -> (f64, StepId) {
        let ForceTerms { a_p, r_p, i_p, s_ds, r_z } = terms;
        let c_1 = sheet.step(self.c_1, 0.4 * a_p * s_ds / (r_p / i_p) * (1.0 + 2.0 * r_z));
        let c_max = sheet.step(self.c_max, 1.6 * s_ds * i_p);
        let c_min = sheet.step(self.c_min, 0.3 * s_ds * i_p);
        let limited = f64::max(c_min, f64::min(c_max, c_1));
        let governs = governing(limited, &[(self.c_1, c_1), (self.c_max, c_max), (self.c_min, c_min)]);
        (limited, governs)
    }
}

/// From this S_DS on every risk category is in seismic design category C or higher (Table 11.6-1).
pub const S_DS_CATEGORY_C: f64 = 0.33;

/// 0.25 in; the millimetres that the standard prints beside it are rounded.
const GAP_MAX_MM: f64 = 0.25 * 25.4;

impl SnubberSteps {
    /// The force doubles where the snubbers leave more than 0.25 in of play.
    pub fn force(self, limited: f64, gap_mm: f64, sheet: &mut Sheet) -> f64 {
        let limited = sheet.step(self.limited, limited);
        let gap_mm = sheet.step(self.gap, gap_mm);
        let gap_max_mm = sheet.step(self.gap_max, GAP_MAX_MM);
        let factor = if limit::more(gap_mm, gap_max_mm) { 2.0 } else { 1.0 };
        sheet.step(self.force, factor * limited)
    }
}

/// Forces over weight that enter the combinations.
#[derive(Clone, Copy)]
pub struct Forces {
    /// Horizontal, at component level.
    pub horizontal: f64,
    /// Horizontal, amplified by overstrength.
    pub amplified: f64,
    /// Vertical, up or down.
    pub vertical: f64,
}

/// The steps that name and tell the two combinations with earthquake: 6 and 7 of 2.3.6, in older editions 5 and 7 of 2.3.2.
#[derive(Clone, Copy)]
pub struct CombinationSteps {
    /// `1.2 + c_v`
    pub down_6: StepId,
    /// `0.9 - c_v`
    pub down_7: StepId,
    /// Names of 6 and 7 at component level.
    pub names: [StepId; 2],
    /// Names of 6 and 7 with overstrength.
    pub amplified_names: [StepId; 2],
}

impl CombinationSteps {
    /// 1.2 D + E_v + E_h and 0.9 D - E_v + E_h, plain and with E_mh in the place of E_h; E_v is never amplified.
    pub fn cases(self, forces: Forces, directions: Directions, sheet: &mut Sheet) -> Vec<LoadCase> {
        let up = forces.vertical;
        sheet.step(self.down_6, 1.2 + up);
        sheet.step(self.down_7, 0.9 - up);
        let six =
            |name, level, horizontal| LoadCase { name, gravity: 1.2, vertical: up, horizontal, level, directions };
        let seven =
            |name, level, horizontal| LoadCase { name, gravity: 0.9, vertical: -up, horizontal, level, directions };
        vec![
            six(self.names[0], Level::Component, forces.horizontal),
            seven(self.names[1], Level::Component, forces.horizontal),
            six(self.amplified_names[0], Level::Amplified, forces.amplified),
            seven(self.amplified_names[1], Level::Amplified, forces.amplified),
        ]
    }
}

/// A clearance at the snubbers that is needed and unknown, or given where there are none.
pub fn gap_faults(values: &Values, gap: usize, is_isolated: bool, faults: &mut Faults) {
    match (values.number(gap), is_isolated) {
        (None, true) => faults.push((gap, Problem::Missing, "a length, because the component is isolated")),
        (Some(_), false) => faults.push((gap, Problem::Excludes, "only with an isolated component")),
        _ => {}
    }
}
