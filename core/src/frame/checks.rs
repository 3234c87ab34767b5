//! The checks of the frame: period, gap, slack, rails and latches; braces have a file of their own.

use alloc::vec;

use super::axis::{Axis, Swayed, System};
use super::fields::{
    GAP_FIELD, LATCH, MODULUS, MOVEMENT, NEIGHBOUR, NEIGHBOUR_PERIOD, RAIL, SKIN_THICKNESS, SLACK_FIELD,
};
use super::texts::*;
use crate::calc::number::hypot;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, StepId, Subject, System as Units, limit};
use crate::load_case::Format;
use crate::rules::anchor::{Finding, Findings};
use core::f64::consts::PI;

/// What the demand rule asks of the cabinet itself.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Asked {
    /// The largest horizontal action over the weight.
    pub horizontal: f64,
    /// The largest downward action over the weight, gravity included.
    pub downwards: f64,
    /// The format of both.
    pub format: Format,
}

const RIGID_S: f64 = 0.06;
const SPARE_MM: f64 = 25.0;
/// Periods further apart than this part of the longer one hardly keep step.
const PERIODS_DIFFER: f64 = 0.1;

impl Swayed<'_> {
    /// All checks of the frame in this state, quiet or told; `asked` is none where no rule is chosen or it does not reach.
    pub fn check(&self, asked: Option<Asked>, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let mut find = |check, outcome| findings.find(Finding { check, subject: Subject::Whole, outcome });
        find(CheckId::FramePeriod, self.both(|axis| self.check_period(axis, sheet)));
        let Some(asked) = asked else {
            for check in
                [CheckId::FrameBrace, CheckId::FrameGap, CheckId::FrameSlack, CheckId::FrameRails, CheckId::FrameLatch]
            {
                find(check, Outcome::NotCovered(NO_DEMAND));
            }
            return;
        };
        find(CheckId::FrameBrace, self.both(|axis| self.check_brace(axis, &asked, sheet)));
        find(CheckId::FrameGap, self.both(|axis| self.check_movement(axis, CheckId::FrameGap, &asked, sheet)));
        find(CheckId::FrameSlack, self.both(|axis| self.check_movement(axis, CheckId::FrameSlack, &asked, sheet)));
        find(CheckId::FrameRails, self.check_rails(&asked, sheet));
        find(CheckId::FrameLatch, self.check_latch(&asked, sheet));
    }

    fn check_period(&self, axis: Axis, sheet: &mut Sheet) -> Outcome {
        let period = match self.sway(axis, CheckId::FramePeriod, sheet) {
            Ok(sway) => sway.period_s,
            Err(reason) => return Outcome::NotCovered(reason),
        };
        let rigid = sheet.step(T_R, RIGID_S);
        Outcome::told_ratio(period, rigid, U_T, sheet)
    }

    /// The gap, or the slack of what is joined, against the real movement of the top.
    fn check_movement(&self, axis: Axis, check: CheckId, asked: &Asked, sheet: &mut Sheet) -> Outcome {
        let field = if check == CheckId::FrameGap { GAP_FIELD } else { SLACK_FIELD };
        let Some(given) = self.values.number(field) else { return Outcome::NotNeeded(NOT_ASKED) };
        let Some(factor) = self.values.number(MOVEMENT) else { return Outcome::NotCovered(NO_FACTOR) };
        let sway = match self.sway(axis, check, sheet) {
            Ok(sway) => sway,
            Err(reason) => return Outcome::NotCovered(reason),
        };
        let push = sheet.step(C_H, asked.horizontal);
        let top = sheet.detailed(D_TOP, sway.top_mm(), || Detail::Residuals(vec![sway.residual]));
        let theta = sheet.step(THETA, top / self.height_mm());
        if !(theta < 1.0) {
            sheet.step(UNSTABLE, 0.0);
            return Outcome::Compared { value: f64::INFINITY, limit: given, utilisation: f64::INFINITY };
        }
        if let Err(reason) = self.tell_skin(axis, push, sheet) {
            return Outcome::NotCovered(reason);
        }
        let elastic = sheet.step(U_E, push * top / (1.0 - theta));
        let factor = sheet.step(R_F, factor);
        let real = sheet.step(U_R, factor * elastic);
        let neighbour = sheet.step(U_N, self.values.given(NEIGHBOUR));
        if check == CheckId::FrameGap {
            let gap = sheet.step(GAP, given);
            let other = self.values.number(NEIGHBOUR_PERIOD).filter(|other| {
                let differs = (sway.period_s - other).abs() > PERIODS_DIFFER * f64::max(sway.period_s, *other);
                differs && !self.cabinet.anchors.is_empty()
            });
            let needed = match other {
                Some(other) => {
                    sheet.step(T_N, other);
                    sheet.step(S_MIN_ROOT, hypot(real, neighbour))
                }
                None => sheet.step(S_MIN, real + neighbour),
            };
            return Outcome::told_ratio(needed, gap, U_GAP, sheet);
        }
        let slack = sheet.step(SLACK, given);
        let spare = sheet.step(SPARE, SPARE_MM);
        let needed = sheet.step(L_MIN, real + neighbour + spare);
        Outcome::told_ratio(needed, slack, U_SLACK, sheet)
    }

    /// Whether the skins of the lowest storey stay flat under the push; nothing to say of other systems.
    fn tell_skin(&self, axis: Axis, push: f64, sheet: &mut Sheet) -> Result<(), StepId> {
        let (System::Skin, Some(thickness)) = (self.system(axis), self.values.number(SKIN_THICKNESS)) else {
            return Ok(());
        };
        let (span, storey) = (self.span_mm(axis), self.storey_mm());
        let short = sheet.step(S_S, f64::min(span, storey));
        let long = sheet.step(L_S, f64::max(span, storey));
        let factor = sheet.step(K_TAU, 5.34 + 4.0 * ((short / long) * (short / long)));
        let slender = thickness / short;
        let critical = factor * (PI * PI) * self.values.given(MODULUS) / 10.92 * (slender * slender);
        let critical = sheet.step(TAU_CR, critical);
        let mass = sheet.carry(M, self.mass_kg);
        sheet.step(G, G_N_PER_KG);
        let shear = sheet.step(V_S, push * mass * G_N_PER_KG);
        let stress = sheet.step(TAU, shear / (self.faces(axis) * thickness * span));
        if limit::more(stress, critical) { Err(BUCKLES) } else { Ok(()) }
    }

    fn heaviest_kg(&self) -> f64 {
        self.aboard.iter().map(|content| content.mass_kg).fold(0.0, f64::max)
    }

    fn check_rails(&self, asked: &Asked, sheet: &mut Sheet) -> Outcome {
        let Some(rating) = self.values.number(RAIL) else { return Outcome::NotNeeded(NOT_ASKED) };
        sheet.open(Part::Frame, Subject::Whole, Some(CheckId::FrameRails), Units::Si);
        let mass = sheet.step(M_C, self.heaviest_kg());
        let factor = sheet.step(F_V, asked.downwards);
        let felt = sheet.step(M_V, mass * factor);
        let rating = sheet.step(M_RAIL, rating);
        Outcome::told_ratio(felt, rating, U_RAIL, sheet)
    }

    fn check_latch(&self, asked: &Asked, sheet: &mut Sheet) -> Outcome {
        let Some(holds) = self.values.number(LATCH) else { return Outcome::NotNeeded(NOT_ASKED) };
        sheet.open(Part::Frame, Subject::Whole, Some(CheckId::FrameLatch), Units::Si);
        let push = sheet.step(C_H, asked.horizontal);
        let mass = sheet.step(M_C, self.heaviest_kg());
        sheet.step(G, G_N_PER_KG);
        let force = sheet.step(F_H, push * mass * G_N_PER_KG);
        let holds = sheet.step(F_RET, holds);
        Outcome::told_ratio(force, holds, U_RET, sheet)
    }
}
