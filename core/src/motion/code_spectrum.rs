//! The spectrum of the ground by a seismic code, beside which a recorded one is laid.
//!
//! Codes agree on its form: it rises straight from rigid things to a level, falls with the period and at last with its
//! square. What scales it comes from the demand rule; corner periods that the rule does not ask for have to be said.

use super::spectrum_rows::*;
use crate::calc::number::sqrt;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::Values;
use crate::rules::DemandRule;

/// A spectrum of the ground, in multiples of g over periods in s.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CodeSpectrum {
    /// At period zero.
    pub rigid: f64,
    /// The level.
    pub top: f64,
    /// End of the rise, end of the level, begin of the fall with the square; none where the rule leaves them open.
    pub corners_s: Option<[f64; 3]>,
}

/// What is said beside the rule.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Beside {
    /// Damping, as a share of the critical one.
    pub damping: f64,
    /// End of the level, where the rule gives none.
    pub corner_s: Option<f64>,
}

impl CodeSpectrum {
    /// The spectrum of a rule for its inputs, told; the reason where there is none.
    ///
    /// Clauses: ASCE 7 11.4, UBC 1997 figure 16-3, EN 1998-1 3.2.2.2. Scope: the ground, horizontal. Damping other than
    /// 5 % only where the code itself scales by it.
    pub fn of(rule: &DemandRule, values: &Values, beside: &Beside, sheet: &mut Sheet) -> Result<CodeSpectrum, StepId> {
        let form = rule.spectrum.ok_or(NO_SPECTRUM)?;
        let scale = form.scaled(rule, values).ok_or(NOT_SCALED)?;
        sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
        let a = sheet.step(A, scale);
        let k_0 = sheet.step(K_0, form.rigid);
        let k_m = sheet.step(K_M, form.top);
        let rigid = sheet.step(S_0, a * k_0);
        let eta = if form.is_damped {
            let xi = sheet.step(XI, beside.damping);
            sheet.step(ETA, f64::max(0.55, sqrt(10.0 / (5.0 + 100.0 * xi))))
        } else {
            sheet.step(ETA_5, 1.0)
        };
        let top = sheet.step(S_M, a * k_m * eta);
        let corners_s = match ((form.corners_s)(values), beside.corner_s) {
            (Some(corners), _) => {
                let ids = [T_B_TABLE, T_C_TABLE, T_D];
                for (id, corner) in ids.into_iter().zip(corners) {
                    sheet.step(id, corner);
                }
                Some(corners)
            }
            (None, Some(corner)) => {
                let t_c = sheet.step(T_C, corner);
                Some([sheet.step(T_B, 0.2 * t_c), t_c, f64::INFINITY])
            }
            (None, None) => None,
        };
        Ok(CodeSpectrum { rigid, top, corners_s })
    }

    /// The acceleration at a period, told in the section of the spectrum; none where the corners are not known.
    pub fn at(&self, period_s: f64, sheet: &mut Sheet) -> Option<f64> {
        let [t_b, t_c, t_d] = self.corners_s?;
        let t = sheet.step(T, period_s);
        Some(if t < t_b {
            sheet.step(RISES, self.rigid + (self.top - self.rigid) * t / t_b)
        } else if t <= t_c {
            sheet.step(LEVEL, self.top)
        } else if t <= t_d {
            sheet.step(FALLS, self.top * t_c / t)
        } else {
            sheet.step(FAR, self.top * t_c * t_d / (t * t))
        })
    }
}
