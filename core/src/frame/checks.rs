//! The checks of the frame: period, gap, slack, braces, rails and latches.

use alloc::vec;

use super::axis::{Axis, Swayed, System};
use super::fields::{
    BRACE_AREA, BRACE_NET, BRACE_RADIUS, CURVE, GAP_FIELD, LATCH, MODULUS, MOVEMENT, NEIGHBOUR, RAIL, SLACK_FIELD,
    STANDARD, STOREYS, TENSILE, YIELD,
};
use super::strength::{Buckling, Curve, aisc_critical_mpa};
use super::texts::*;
use crate::calc::number::{hypot, sqrt};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Subject, System as Units};
use crate::load_case::Format;
use crate::rules::anchor::{Finding, Findings};

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
        let elastic = sheet.step(U_E, push * top / (1.0 - theta));
        let factor = sheet.step(R_F, factor);
        let real = sheet.step(U_R, factor * elastic);
        let neighbour = sheet.step(U_N, self.values.given(NEIGHBOUR));
        if check == CheckId::FrameGap {
            let gap = sheet.step(GAP, given);
            let needed = sheet.step(S_MIN, real + neighbour);
            return Outcome::told_ratio(needed, gap, U_GAP, sheet);
        }
        let slack = sheet.step(SLACK, given);
        let spare = sheet.step(SPARE, SPARE_MM);
        let needed = sheet.step(L_MIN, real + neighbour + spare);
        Outcome::told_ratio(needed, slack, U_SLACK, sheet)
    }

    /// The force in a brace of the lowest storey against its strength.
    fn check_brace(&self, axis: Axis, asked: &Asked, sheet: &mut Sheet) -> Outcome {
        let system = self.system(axis);
        if !matches!(system, System::SingleBrace | System::CrossBrace) {
            return Outcome::NotNeeded(NO_BRACES);
        }
        let Some(area) = self.values.number(BRACE_AREA) else { return Outcome::NotCovered(NO_SECTION) };
        let given = (self.values.number(YIELD), self.values.number(TENSILE), self.values.number(BRACE_NET));
        let (Some(yields), Some(tensile), Some(net)) = given else { return Outcome::NotCovered(NO_YIELD) };
        if let Err(reason) = self.are_whole() {
            return Outcome::NotCovered(reason);
        }
        let is_en = self.values.choice(STANDARD) == Some(1);
        if is_en != (asked.format == Format::LimitStates) {
            return Outcome::NotCovered(OTHER_FORMAT);
        }
        sheet.open(Part::Frame, Subject::Whole, Some(CheckId::FrameBrace), Units::Si);
        sheet.step(if axis == Axis::X { AXIS_X } else { AXIS_Y }, 0.0);
        let mass = sheet.carry(M, self.mass_kg);
        sheet.step(G, G_N_PER_KG);
        let push = sheet.step(C_H, asked.horizontal);
        let shear = sheet.step(V_S, push * mass * G_N_PER_KG);
        let count = sheet.step(N, crate::calc::number::floor(self.values.given(STOREYS)).max(1.0));
        let height = sheet.step(H_F, self.height_mm());
        let storey = sheet.step(H_S, height / count);
        let span = sheet.step(L_B, self.span_mm(axis));
        let faces = sheet.step(N_F, self.faces(axis));
        let length = sheet.step(L_D, hypot(span, storey));
        let cosine = sheet.step(COS, span / length);
        let force = sheet.step(N_D, shear / (faces * cosine));
        let area = sheet.step(A_D, area);
        let net = sheet.step(A_N, net);
        let yields = sheet.step(F_Y, yields);
        let tensile = sheet.step(F_U, tensile);
        let (gross, through) = match (is_en, asked.format) {
            (true, _) => (sheet.step(R_GROSS_E, yields * area / 1.0), sheet.step(R_NET_E, 0.9 * tensile * net / 1.25)),
            (_, Format::AllowableStress) => {
                (sheet.step(R_GROSS_A, yields * area / 1.67), sheet.step(R_NET_A, tensile * net / 2.0))
            }
            _ => (sheet.step(R_GROSS, 0.9 * yields * area), sheet.step(R_NET, 0.75 * tensile * net)),
        };
        let tension = sheet.step(R_T_MIN, gross.min(through));
        let in_tension = Outcome::told_ratio(force, tension, U_BRACE, sheet);
        if system == System::CrossBrace {
            return in_tension;
        }
        let Some(radius) = self.values.number(BRACE_RADIUS) else { return Outcome::NotCovered(NO_RADIUS) };
        let modulus = sheet.step(E, self.values.given(MODULUS));
        sheet.step(PI, core::f64::consts::PI);
        let radius = sheet.step(RADIUS, radius);
        let slenderness = sheet.step(SLENDER, length / radius);
        let compression = match is_en {
            true => self.tell_en(&Buckling { slenderness, yield_mpa: yields, modulus_mpa: modulus }, area, sheet),
            false => {
                let member = Buckling { slenderness, yield_mpa: yields, modulus_mpa: modulus };
                let pi = core::f64::consts::PI;
                sheet.step(F_E, pi * pi * modulus / (slenderness * slenderness));
                let critical = sheet.step(F_CR, aisc_critical_mpa(&member));
                match asked.format {
                    Format::AllowableStress => sheet.step(R_C_A, critical * area / 1.67),
                    _ => sheet.step(R_C, 0.9 * critical * area),
                }
            }
        };
        let in_compression = Outcome::told_ratio(force, compression, U_BRACE, sheet);
        if compression < tension { in_compression } else { in_tension }
    }

    fn tell_en(&self, member: &Buckling, area: f64, sheet: &mut Sheet) -> f64 {
        let curve = Curve::of(self.values.choice(CURVE).unwrap_or(3));
        let one = sheet.step(LAMBDA_1, core::f64::consts::PI * sqrt(member.modulus_mpa / member.yield_mpa));
        let relative = sheet.step(LAMBDA_R, member.slenderness / one);
        let place = self.values.choice(CURVE).unwrap_or(3) as f64;
        let alpha = sheet.detailed(ALPHA, curve.imperfection(), || Detail::Rows(vec![[place, curve.imperfection()]]));
        sheet.step(PHI_E, 0.5 * (1.0 + alpha * (relative - 0.2) + relative * relative));
        let chi = sheet.step(CHI, super::strength::en_reduction(relative, curve));
        sheet.step(R_C_E, chi * member.yield_mpa * area / 1.0)
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
