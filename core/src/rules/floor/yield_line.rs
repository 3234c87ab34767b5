//! Yield lines of a slab on the ground with fabric or fibres (Concrete Society TR34, after Meyerhof 1962).
//!
//! Never for plain concrete: it breaks without warning once it cracks, and there is no plastic moment to count on.

use super::documents::{EN_1992_1_1, TR34};
use super::slab_on_ground::{LoadedSlab, SlabOnGround};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Sheet, StepId, limit, number, steps};

steps! { 144 "yield lines";
    F_CTK "f_ctk" Stress (EN_1992_1_1 "Table 3.1" Memory) "Tensile strength of the concrete, 5 % fractile": Given;
    H_0 "h_0" Length (TR34 "flexural tensile strength" Memory) "Reference depth of the size effect": Constant;
    K_H "k_h" Number (TR34 "flexural tensile strength" Memory) "Factor from direct to flexural tension, not below 1" = "max(1, 1.6 - h / h_0)";
    GAMMA_M "gamma_m" Number (TR34 "" Memory) "Partial factor on concrete": Constant;
    F_CTD "f_ctd" Stress (TR34 "flexural tensile strength" Memory) "Design flexural tensile strength" = "f_ctk * k_h / gamma_m";
    M_N "M_n" Force (TR34 "negative moment" Memory) "Cracking moment at the top, per width" = "f_ctd * h^2 / 6";
    A_S "A_s" Length (INPUT "floor" Derived) "Steel near the bottom, area per width": Given;
    F_YD "f_yd" Stress (INPUT "floor" Derived) "Design yield strength of that steel": Given;
    D "d" Length (INPUT "floor" Derived) "Its effective depth": Given;
    M_P_FABRIC "M_p" Force (TR34 "residual moment, fabric" Memory) "Moment that the fabric keeps after cracking, per width" = "A_s * f_yd * 0.9 * d";
    M_P_GIVEN "M_p" Force (INPUT "floor" Derived) "Moment that the fibres keep after cracking, per width, from tests": Given;
    R_A "r_a" Number (TR34 "" Memory) "Radius of the contact over the radius of relative stiffness" = "a / l";
    P_0_IN "P_0" Force (TR34 "interior" Memory) "Collapse load of a point, far from edges" = "2 * 3.141592653589793 * (M_p + M_n)";
    P_2_IN "P_2" Force (TR34 "interior" Memory) "Collapse load at a / l = 0.2, far from edges" = "4 * 3.141592653589793 * (M_p + M_n) / (1 - 0.2 / 3)";
    P_IN "P_u" Force (TR34 "interior" Memory) "Collapse load, far from edges" = "4 * 3.141592653589793 * (M_p + M_n) / (1 - r_a / 3)";
    P_0_EDGE "P_0" Force (TR34 "edge" Memory) "Collapse load of a point at a free edge" = "3.141592653589793 * (M_p + M_n) / 2 + 2 * M_n";
    P_2_EDGE "P_2" Force (TR34 "edge" Memory) "Collapse load at a / l = 0.2 at a free edge" = "(3.141592653589793 * (M_p + M_n) + 4 * M_n) / (1 - 2 * 0.2 / 3)";
    P_EDGE "P_u" Force (TR34 "edge" Memory) "Collapse load at a free edge" = "(3.141592653589793 * (M_p + M_n) + 4 * M_n) / (1 - 2 * r_a / 3)";
    P_0_CORNER "P_0" Force (TR34 "corner" Memory) "Collapse load of a point at a free corner" = "2 * M_n";
    P_2_CORNER "P_2" Force (TR34 "corner" Memory) "Collapse load at a / l = 0.2 at a free corner" = "4 * M_n / (1 - 0.2)";
    P_CORNER "P_u" Force (TR34 "corner" Memory) "Collapse load at a free corner" = "4 * M_n / (1 - r_a)";
    X "x" Length (INPUT "plan" Derived) "Spacing of the legs along one axis": Given;
    Y "y" Length (INPUT "plan" Derived) "Spacing of the legs along the other axis, 0 for two legs": Given;
    P_0_GROUP "P_0" Force (TR34 "dual and quadruple" Memory) "Collapse load of the group as points" = "(2 * 3.141592653589793 + 1.8 * (x + y) / l) * (M_p + M_n)";
    P_2_GROUP "P_2" Force (TR34 "dual and quadruple" Memory) "Collapse load of the group at a / l = 0.2" = "(4 * 3.141592653589793 / (1 - 0.2 / 3) + 1.8 * (x + y) / (l - 0.2 * l / 2)) * (M_p + M_n)";
    P_GROUP "P_u" Force (TR34 "dual and quadruple" Memory) "Collapse load of the group" = "(4 * 3.141592653589793 / (1 - r_a / 3) + 1.8 * (x + y) / (l - a / 2)) * (M_p + M_n)";
    P_BETWEEN "P_u" Force (TR34 "linear between" Memory) "Collapse load, linear between a / l = 0 and 0.2" = "P_0 + (P_2 - P_0) * r_a / 0.2";
    N_LEGS "n" Number (INPUT "" Derived) "Legs of the group": Given;
    P_ONE "P_1" Force (TR34 "interior" Memory) "Collapse load of a single leg": Given;
    P_CAPPED "P_g" Force (TR34 "dual and quadruple" Memory) "Collapse load of the group, not above that of its legs one by one" = "min(P_u, n * P_1)";
    LAMBDA "lambda" Empirical { force: 0, length: -6 } (STATICS "beam on the ground" Memory) "Stiffness of the slab against the ground" = "(3 * k_s / (E * h^3))^(1 / 4)";
    P_LINE "P_lin" LineLoad (TR34 "line load" Memory) "Line load that it carries, per length" = "4 * lambda * M_n";
    W_STRIP "w_u" AreaLoad (TR34 "uniform load" Memory) "Uniform load that it carries with the worst aisle" = "5.95 * lambda^2 * M_n";
    PLAIN "" Number (TR34 "" Memory) "the slab is of plain concrete, which has no plastic moment: yield lines are never used for it, only the elastic forms": Reason;
    NO_RESIDUAL "" Number (TR34 "" Memory) "neither the moment that the fibres keep (residual_moment_n) nor steel with its effective depth is given: yield lines need it": Reason;
    NEAR "" Number (TR34 "" Memory) "legs stand nearer than twice the thickness: they count as one load on the area around them": Reason;
}

/// The reference depth of the size effect.
const REFERENCE_MM: f64 = 1000.0;
const GAMMA: f64 = 1.5;
/// From this ratio on the formulas for a contact with a size hold; below it is interpolated.
const RATIO_FULL: f64 = 0.2;
const PI: f64 = core::f64::consts::PI;

/// What is left of the moment after cracking, and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Residual {
    /// Steel near the bottom: its area per width, its design strength, its depth.
    Fabric {
        /// Area per width.
        area_mm: f64,
        /// Design yield strength.
        strength_mpa: f64,
        /// Effective depth.
        depth_mm: f64,
    },
    /// From tests of fibre concrete, per width.
    Fibre {
        /// The moment per width.
        moment_n: f64,
    },
}

/// The moments per width with which yield lines work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct YieldMoments {
    /// At the bottom, after cracking.
    pub positive_n: f64,
    /// At the top, at cracking.
    pub negative_n: f64,
}

/// Where the load stands, for the yield lines that form.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pattern {
    /// One leg far from edges.
    Interior,
    /// One leg at a free edge.
    Edge,
    /// One leg at a free corner.
    Corner,
    /// Two or four legs far from edges, with their spacings.
    Group {
        /// Along one axis.
        x_mm: f64,
        /// Along the other; zero for two legs.
        y_mm: f64,
    },
}

/// The moments of a slab whose thickness stands in the section already; tensile strength in MPa.
pub fn moments(slab: &SlabOnGround, tensile_mpa: f64, residual: &Residual, sheet: &mut Sheet) -> YieldMoments {
    let h = slab.thickness_mm;
    let tensile = sheet.step(F_CTK, tensile_mpa);
    let reference = sheet.step(H_0, REFERENCE_MM);
    let factor = sheet.step(K_H, f64::max(1.0, 1.6 - h / reference));
    let gamma = sheet.step(GAMMA_M, GAMMA);
    let design = sheet.step(F_CTD, tensile * factor / gamma);
    let negative_n = sheet.step(M_N, design * number::pow(h, 2.0) / 6.0);
    let positive_n = match *residual {
        Residual::Fabric { area_mm, strength_mpa, depth_mm } => {
            let area = sheet.step(A_S, area_mm);
            let strength = sheet.step(F_YD, strength_mpa);
            let depth = sheet.step(D, depth_mm);
            sheet.step(M_P_FABRIC, area * strength * 0.9 * depth)
        }
        Residual::Fibre { moment_n } => sheet.step(M_P_GIVEN, moment_n),
    };
    YieldMoments { positive_n, negative_n }
}

/// The load under which yield lines form, N.
pub fn collapse_n(loaded: &LoadedSlab, moments: &YieldMoments, pattern: Pattern, sheet: &mut Sheet) -> f64 {
    let (a, l) = (loaded.contact_mm, loaded.radius_mm);
    let (both, top) = (moments.positive_n + moments.negative_n, moments.negative_n);
    let ratio = sheet.step(R_A, a / l);
    let third = |ratio: f64| 4.0 * PI / (1.0 - ratio / 3.0);
    let (rows, point, at_full, full): ([StepId; 3], f64, f64, f64) = match pattern {
        Pattern::Interior => {
            let of = |ratio: f64| 4.0 * PI * both / (1.0 - ratio / 3.0);
            ([P_0_IN, P_2_IN, P_IN], 2.0 * PI * both, of(RATIO_FULL), of(ratio))
        }
        Pattern::Edge => {
            let of = |ratio: f64| (PI * both + 4.0 * top) / (1.0 - 2.0 * ratio / 3.0);
            ([P_0_EDGE, P_2_EDGE, P_EDGE], PI * both / 2.0 + 2.0 * top, of(RATIO_FULL), of(ratio))
        }
        Pattern::Corner => {
            let of = |ratio: f64| 4.0 * top / (1.0 - ratio);
            ([P_0_CORNER, P_2_CORNER, P_CORNER], 2.0 * top, of(RATIO_FULL), of(ratio))
        }
        Pattern::Group { x_mm, y_mm } => {
            let x = sheet.step(X, x_mm);
            let y = sheet.step(Y, y_mm);
            let of = |ratio: f64| (third(ratio) + 1.8 * (x + y) / (l - ratio * l / 2.0)) * both;
            let rows = [P_0_GROUP, P_2_GROUP, P_GROUP];
            (rows, (2.0 * PI + 1.8 * (x + y) / l) * both, of(RATIO_FULL), of(ratio))
        }
    };
    if limit::at_least(ratio, RATIO_FULL) {
        return sheet.step(rows[2], full);
    }
    let point = sheet.step(rows[0], point);
    let at_full = sheet.step(rows[1], at_full);
    sheet.step(P_BETWEEN, point + (at_full - point) * ratio / RATIO_FULL)
}

/// The load under which a group of legs breaks through, not above that of its legs one by one.
///
/// Errors: legs nearer than twice the thickness.
pub fn group_n(
    loaded: &LoadedSlab,
    moments: &YieldMoments,
    spacing_mm: [f64; 2],
    sheet: &mut Sheet,
) -> Result<f64, StepId> {
    let near = 2.0 * loaded.slab.thickness_mm;
    let [x_mm, y_mm] = spacing_mm;
    if limit::less(x_mm, near) || y_mm > 0.0 && limit::less(y_mm, near) {
        return Err(NEAR);
    }
    let one = collapse_n(loaded, moments, Pattern::Interior, &mut Sheet::quiet());
    let group = collapse_n(loaded, moments, Pattern::Group { x_mm, y_mm }, sheet);
    let legs = sheet.step(N_LEGS, if y_mm > 0.0 { 4.0 } else { 2.0 });
    let one = sheet.carry(P_ONE, one);
    Ok(sheet.step(P_CAPPED, f64::min(group, legs * one)))
}

/// The stiffness of the slab against the ground as that of a beam, per mm. The slab stands in the section already.
pub fn lambda_per_mm(slab: &SlabOnGround, sheet: &mut Sheet) -> f64 {
    let quotient = 3.0 * slab.subgrade_n_per_mm3 / (slab.modulus_mpa * number::pow(slab.thickness_mm, 3.0));
    sheet.step(LAMBDA, number::pow(quotient, 0.25))
}

/// Line load per length, and uniform load with the worst aisle, that the slab carries: N per mm and MPa.
pub fn line_and_strip(slab: &SlabOnGround, moments: &YieldMoments, sheet: &mut Sheet) -> [f64; 2] {
    let lambda = lambda_per_mm(slab, sheet);
    let line = sheet.step(P_LINE, 4.0 * lambda * moments.negative_n);
    [line, sheet.step(W_STRIP, 5.95 * number::pow(lambda, 2.0) * moments.negative_n)]
}
