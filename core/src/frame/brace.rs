//! The braces of the lowest storey against their strength.

use alloc::vec;

use super::angle::Angle;
use super::axis::{Axis, Swayed, System};
use super::checks::Asked;
use super::fields::{
    BRACE_AREA, BRACE_ENDS, BRACE_NET, BRACE_RADIUS, CURVE, MODULUS, STANDARD, STOREYS, TENSILE, YIELD,
};
use super::strength::{Buckling, Curve, aisc_critical_mpa};
use super::texts::*;
use crate::calc::number::{hypot, sqrt};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Status, Subject, System as Units};
use crate::load_case::Format;

impl Swayed<'_> {
    /// The force in a brace of the lowest storey against its strength.
    pub(super) fn check_brace(&self, axis: Axis, asked: &Asked, sheet: &mut Sheet) -> Outcome {
        let system = self.system(axis);
        if !matches!(system, System::SingleBrace | System::CrossBrace) {
            return Outcome::NotNeeded(NO_BRACES);
        }
        let Some(area) = self.values.number(BRACE_AREA) else { return Outcome::NotCovered(NO_SECTION) };
        let given = (self.values.number(YIELD), self.values.number(TENSILE));
        let (Some(yields), Some(tensile)) = given else { return Outcome::NotCovered(NO_YIELD) };
        if let Err(reason) = self.are_whole() {
            return Outcome::NotCovered(reason);
        }
        let is_en = self.values.choice(STANDARD) == Some(1);
        if is_en != (asked.format == Format::LimitStates) {
            return Outcome::NotCovered(OTHER_FORMAT);
        }
        let angle = match (self.values.choice(BRACE_ENDS) == Some(1)).then(|| Angle::of(self.values, is_en)) {
            Some(Err(reason)) => return Outcome::NotCovered(reason),
            Some(Ok(angle)) => Some(angle),
            None => None,
        };
        let net = self.values.number(BRACE_NET);
        if net.is_none() && angle.is_none() {
            return Outcome::NotCovered(NO_YIELD);
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
        let yields = sheet.step(F_Y, yields);
        let tensile = sheet.step(F_U, tensile);
        let is_allowable = asked.format == Format::AllowableStress;
        let gross = match (is_en, is_allowable) {
            (true, _) => sheet.step(R_GROSS_E, yields * area / 1.0),
            (_, true) => sheet.step(R_GROSS_A, yields * area / 1.67),
            _ => sheet.step(R_GROSS, 0.9 * yields * area),
        };
        let through = match (angle, is_en) {
            (Some(angle), true) => angle.tell_en_tension(area, tensile, sheet),
            (angle, _) => {
                let net = match angle {
                    Some(angle) => angle.tell_aisc_area(area, sheet),
                    None => sheet.step(A_N, net.unwrap_or(0.0)),
                };
                match (is_en, is_allowable) {
                    (true, _) => sheet.step(R_NET_E, 0.9 * tensile * net / 1.25),
                    (_, true) => sheet.step(R_NET_A, tensile * net / 2.0),
                    _ => sheet.step(R_NET, 0.75 * tensile * net),
                }
            }
        };
        let tension = sheet.step(R_T_MIN, gross.min(through));
        let in_tension = Outcome::told_ratio(force, tension, U_BRACE, sheet);
        if system == System::CrossBrace {
            return in_tension;
        }
        // What fails in tension fails, whatever is not known of compression.
        let refused = |reason| {
            if in_tension.status() == Status::Fails { in_tension } else { Outcome::NotCovered(reason) }
        };
        // E5 goes by the other axis.
        let radius = match (self.values.number(BRACE_RADIUS), angle) {
            (Some(radius), _) => radius,
            (None, Some(_)) if !is_en => f64::NAN,
            (None, _) => return refused(NO_RADIUS),
        };
        let modulus = sheet.step(E, self.values.given(MODULUS));
        sheet.step(PI, core::f64::consts::PI);
        let compression = match is_en {
            true => {
                let radius = sheet.step(RADIUS, radius);
                let one = sheet.step(LAMBDA_1, core::f64::consts::PI * sqrt(modulus / yields));
                let relative = match angle {
                    Some(angle) => match angle.tell_en_slenderness(length, radius, one, sheet) {
                        Ok(relative) => relative,
                        Err(reason) => return refused(reason),
                    },
                    None => {
                        let slenderness = sheet.step(SLENDER, length / radius);
                        sheet.step(LAMBDA_R, slenderness / one)
                    }
                };
                self.tell_en(relative, [yields, area], sheet)
            }
            false => {
                let slenderness = match angle {
                    Some(angle) => match angle.tell_aisc_slenderness(length, sheet) {
                        Ok(slenderness) => slenderness,
                        Err(reason) => return refused(reason),
                    },
                    None => {
                        let radius = sheet.step(RADIUS, radius);
                        sheet.step(SLENDER, length / radius)
                    }
                };
                let member = Buckling { slenderness, yield_mpa: yields, modulus_mpa: modulus };
                let pi = core::f64::consts::PI;
                sheet.step(F_E, pi * pi * modulus / (slenderness * slenderness));
                let critical = sheet.step(F_CR, aisc_critical_mpa(&member));
                match is_allowable {
                    true => sheet.step(R_C_A, critical * area / 1.67),
                    false => sheet.step(R_C, 0.9 * critical * area),
                }
            }
        };
        let in_compression = Outcome::told_ratio(force, compression, U_BRACE_C, sheet);
        if compression < tension { in_compression } else { in_tension }
    }

    fn tell_en(&self, relative: f64, [yields, area]: [f64; 2], sheet: &mut Sheet) -> f64 {
        let place = self.values.choice(CURVE).unwrap_or(3);
        let curve = Curve::of(place);
        let alpha =
            sheet.detailed(ALPHA, curve.imperfection(), || Detail::Rows(vec![[place as f64, curve.imperfection()]]));
        sheet.step(PHI_E, 0.5 * (1.0 + alpha * (relative - 0.2) + relative * relative));
        let chi = sheet.step(CHI, super::strength::en_reduction(relative, curve));
        sheet.step(R_C_E, chi * yields * area / 1.0)
    }
}
