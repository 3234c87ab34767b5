//! Braces of single angles, joined by bolts through one leg.
//!
//! The force runs beside the centre of the angle. Both standards cover that by a larger slenderness in compression, and by
//! counting a part of the section in tension; no bending is then added.

use super::fields::{BOLT_PITCH, BRACE_AXIS_RADIUS, BRACE_BOLTS, BRACE_EDGE, BRACE_HOLE, BRACE_THICKNESS};
use super::texts::{AISC_360, EN_1993_1_1, NOT_WHOLE};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::floor;
use crate::calc::{Detail, Document, Sheet, StepId, limit, steps};
use crate::input::field::Values;

/// EN 1993-1-8.
pub static EN_1993_1_8: Document = Document {
    short: "EN 1993-1-8",
    title: "EN 1993-1-8:2005, Eurocode 3: Design of steel structures, Part 1-8: Design of joints",
};

steps! { 192 "angle braces";
    N_B "n_b" Number (INPUT "structure" Derived) "Bolts in line at each end": Given;
    T_L "t" Length (INPUT "structure" Derived) "Thickness of the leg": Given;
    D_0 "d_0" Length (INPUT "structure" Derived) "Diameter of the holes": Given;
    E_2 "e_2" Length (INPUT "structure" Derived) "Middle of the holes to the edge of the leg": Given;
    P_1 "p_1" Length (INPUT "structure" Derived) "Bolt to bolt along the brace": Given;
    A_NET "A_net" Area (EN_1993_1_1 "6.2.2.2" Memory) "Area through a hole" = "A_d - d_0 * t";
    D_X "d_x" Length (AISC_360 "B4.3b" Memory) "What the edge of a hole loses beside its diameter": Condition;
    A_NET_US "A_n" Area (AISC_360 "B4.3b" Memory) "Area through a hole" = "A_d - (d_0 + d_x) * t";
    U_LAG "U" Number (AISC_360 "Table D3.1, case 8" Memory) "What shear lag leaves": Table;
    A_E "A_e" Area (AISC_360 "D3-1" Memory) "Area that works" = "U * A_n";
    R_ONE "R_u" Force (EN_1993_1_8 "3.10.3, equation 3.11" Memory) "Strength through the hole of a single bolt" = "2 * (e_2 - 0.5 * d_0) * t * F_u / 1.25";
    BETA_2 "beta" Number (EN_1993_1_8 "3.10.3, Table 3.8" Memory) "What two bolts in line let work" = "min(0.7, max(0.4, 0.4 + 0.3 * (p_1 / d_0 - 2.5) / 2.5))";
    BETA_3 "beta" Number (EN_1993_1_8 "3.10.3, Table 3.8" Memory) "What three and more bolts in line let work" = "min(0.7, max(0.5, 0.5 + 0.2 * (p_1 / d_0 - 2.5) / 2.5))";
    R_MORE "R_u" Force (EN_1993_1_8 "3.10.3, equations 3.12 and 3.13" Memory) "Strength of the section through the holes" = "beta * A_net * F_u / 1.25";
    R_A "r_a" Length (INPUT "structure" Derived) "Radius of gyration about the axis along the joined leg": Given;
    LAMBDA_A "lambda_a" Number (AISC_360 "E5" Memory) "Slenderness about that axis" = "L_d / r_a";
    LAMBDA_E5 "lambda" Number (AISC_360 "E5(a), equal legs, braces in a plane" Memory) "Slenderness with what the end by one leg adds" = "if(lambda_a <= 80, 72 + 0.75 * lambda_a, 32 + 1.25 * lambda_a)";
    LAMBDA_V "lambda_v" Number (EN_1993_1_1 "6.3.1.2" Memory) "Relative slenderness about the weakest axis" = "L_d / i / lambda_1";
    LAMBDA_Y "lambda_y" Number (EN_1993_1_1 "6.3.1.2" Memory) "Relative slenderness about the axis along the joined leg" = "L_d / r_a / lambda_1";
    LAMBDA_EFF "lambda_r" Number (EN_1993_1_1 "BB.1.2, two bolts or more" Memory) "Effective relative slenderness" = "max(0.35 + 0.7 * lambda_v, 0.5 + 0.7 * lambda_y)";
    NO_ANGLE "" Number (INPUT "structure" Derived) "a number of the angle's end is not given: bolts, thickness, holes, edge or distance of bolts (brace_bolts, brace_thickness_mm, brace_hole_mm, brace_edge_mm, brace_pitch_mm)": Reason;
    NO_AXIS "" Number (INPUT "structure" Derived) "the radius of gyration along the joined leg is not given (brace_axis_radius_mm)": Reason;
    FEW_BOLTS "" Number (AISC_360 "Table D3.1, case 8" Memory) "the table tells what shear lag leaves of an angle from three bolts in line; with fewer, say the area that works and that the ends are whole (brace_net_area_mm2, brace_ends)": Reason;
    ONE_BOLT "" Number (STATICS "" Memory) "in compression a single bolt leaves the force beside the centre of the angle, which neither AISC 360 E5 nor EN 1993-1-1 BB.1.2 covers": Reason;
    TOO_SLENDER "" Number (AISC_360 "E5" Memory) "AISC 360 E5 ends at a slenderness of 200": Reason;
}

/// AISC 360 counts holes 1/16 in wider than they are, 2 mm in its metric form.
const HOLE_LOSS_MM: f64 = 2.0;
/// Where E5 ends.
const SLENDERNESS_MAX: f64 = 200.0;

/// The end of an angle.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Angle {
    bolts: f64,
    thickness_mm: f64,
    hole_mm: f64,
    edge_mm: f64,
    pitch_mm: f64,
    axis_radius_mm: Option<f64>,
}

impl Angle {
    /// What the file gives of it; the reason where a number that the standard needs is missing, or it does not reach.
    pub(super) fn of(values: &Values, is_en: bool) -> Result<Angle, StepId> {
        let given = |field: usize| values.number(field).ok_or(NO_ANGLE);
        let bolts = given(BRACE_BOLTS)?;
        if bolts != floor(bolts) {
            return Err(NOT_WHOLE);
        }
        if !is_en && bolts < 3.0 {
            return Err(FEW_BOLTS);
        }
        Ok(Angle {
            bolts,
            thickness_mm: given(BRACE_THICKNESS)?,
            hole_mm: given(BRACE_HOLE)?,
            edge_mm: if is_en && bolts < 2.0 { given(BRACE_EDGE)? } else { 0.0 },
            pitch_mm: if is_en && bolts >= 2.0 { given(BOLT_PITCH)? } else { 0.0 },
            axis_radius_mm: values.number(BRACE_AXIS_RADIUS),
        })
    }

    /// The area that works in tension by AISC 360 D3.
    pub(super) fn tell_aisc_area(&self, area: f64, sheet: &mut Sheet) -> f64 {
        let bolts = sheet.step(N_B, self.bolts);
        let thickness = sheet.step(T_L, self.thickness_mm);
        let hole = sheet.step(D_0, self.hole_mm);
        let loss = sheet.step(D_X, HOLE_LOSS_MM);
        let net = sheet.step(A_NET_US, area - (hole + loss) * thickness);
        let lag = if bolts >= 4.0 { 0.8 } else { 0.6 };
        let lag = sheet.detailed(U_LAG, lag, || Detail::Rows(alloc::vec![[bolts, lag]]));
        sheet.step(A_E, lag * net)
    }

    /// The strength in tension through the holes by EN 1993-1-8 3.10.3.
    pub(super) fn tell_en_tension(&self, area: f64, tensile: f64, sheet: &mut Sheet) -> f64 {
        let bolts = sheet.step(N_B, self.bolts);
        let t = sheet.step(T_L, self.thickness_mm);
        let d_0 = sheet.step(D_0, self.hole_mm);
        if bolts < 2.0 {
            let e_2 = sheet.step(E_2, self.edge_mm);
            return sheet.step(R_ONE, 2.0 * (e_2 - 0.5 * d_0) * t * tensile / 1.25);
        }
        let p_1 = sheet.step(P_1, self.pitch_mm);
        let net = sheet.step(A_NET, area - d_0 * t);
        let beta = if bolts < 3.0 {
            sheet.step(BETA_2, (0.4 + 0.3 * (p_1 / d_0 - 2.5) / 2.5).clamp(0.4, 0.7))
        } else {
            sheet.step(BETA_3, (0.5 + 0.2 * (p_1 / d_0 - 2.5) / 2.5).clamp(0.5, 0.7))
        };
        sheet.step(R_MORE, beta * net * tensile / 1.25)
    }

    /// The slenderness of AISC 360 E5(a).
    pub(super) fn tell_aisc_slenderness(&self, length: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
        let radius = sheet.step(R_A, self.axis_radius_mm.ok_or(NO_AXIS)?);
        let about = sheet.step(LAMBDA_A, length / radius);
        let found = if about <= 80.0 { 72.0 + 0.75 * about } else { 32.0 + 1.25 * about };
        let found = sheet.step(LAMBDA_E5, found);
        if limit::more(found, SLENDERNESS_MAX) { Err(TOO_SLENDER) } else { Ok(found) }
    }

    /// The relative slenderness of EN 1993-1-1 BB.1.2; `one` is that at which elastic buckling meets yielding.
    pub(super) fn tell_en_slenderness(
        &self,
        length: f64,
        radius: f64,
        one: f64,
        sheet: &mut Sheet,
    ) -> Result<f64, StepId> {
        if self.bolts < 2.0 {
            return Err(ONE_BOLT);
        }
        let along = sheet.step(R_A, self.axis_radius_mm.ok_or(NO_AXIS)?);
        let weak = sheet.step(LAMBDA_V, length / radius / one);
        let about = sheet.step(LAMBDA_Y, length / along / one);
        Ok(sheet.step(LAMBDA_EFF, f64::max(0.35 + 0.7 * weak, 0.5 + 0.7 * about)))
    }
}
