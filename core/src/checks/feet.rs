//! Feet: bearing on concrete by ACI 318-19 22.8.
//!
//! The loaded area is the rectangle in the foot whose middle is where the foot's force acts: the clause is for a load
//! in the middle of its area, and a foot that leans presses harder than its mean.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::positive_part;
use alloc::vec;

use crate::calc::{CheckId, Detail, Document, Kind, Outcome, Part, Sheet, Subject, System, steps};
use crate::geometry::{Point, Size};

/// ACI 318-19, as far as bearing goes.
pub static ACI_318_19: Document = Document {
    short: "ACI 318-19",
    title: "Building Code Requirements for Structural Concrete (ACI 318-19), American Concrete Institute, 2019",
};

steps! { 14 "feet";
    F_C "f'_c" Stress (INPUT "" Derived) "Specified strength of the concrete": Given;
    D_X "d_x" Length (STATICS "base reactions" Derived) "Distance from where the foot's force acts to the nearest side of the foot, along x": Solved;
    D_Y "d_y" Length (STATICS "base reactions" Derived) "The same along y": Solved;
    A_1 "A_1" Area (ACI_318_19 "22.8.3.2" Derived) "Loaded area: the rectangle in the foot with the force in its middle" = "4 * d_x * d_y";
    B_1_X "b_1" Length (STATICS "" Derived) "Half side of that rectangle along x, where the concrete spreads least" = "d_x";
    B_1_Y "b_1" Length (STATICS "" Derived) "Half side of that rectangle along y, where the concrete spreads least" = "d_y";
    S_1 "s_1" Length (ACI_318_19 "22.8.3.2" Memory) "Spread of the load there: to the slab's edge, half way to the next foot, or 1 vertical to 2 horizontal": Geometry;
    R_A "r_A" Number (ACI_318_19 "22.8.3.2" Secondary) "Root of A_2 over A_1, the support being wider on all sides by a similar figure; not more than 2" = "min(2, (b_1 + s_1) / b_1)";
    B_N "B_n" Force (ACI_318_19 "22.8.3.2" Secondary) "Nominal bearing strength" = "r_A * 0.85 * f'_c * A_1";
    PHI "phi" Number (ACI_318_19 "Table 21.2.1" Memory) "Strength reduction factor for bearing; a slab of plain concrete takes 0.60 instead, which only a floor tells (floor.reinforcement)": Constant;
    PHI_PLAIN "phi" Number (ACI_318_19 "Table 21.2.1, 14.5.6" Memory) "Strength reduction factor for bearing of plain concrete, as the floor is said to be": Constant;
    B_U "B_u" Force (STATICS "base reactions" Derived) "Force of the foot on the concrete": Solved;
    U_B "u" Utilisation (ACI_318_19 "22.8.3.1" Secondary) "Demand over strength" = "B_u / (phi * B_n)";
    A_P "A_p" Area (STATICS "base reactions" Derived) "Area under the foot that is pressed": Solved;
    Q_MEAN "q_mean" Pressure (STATICS "" Derived) "Mean pressure over the pressed area" = "B_u / A_p";
    Q_PEAK "q_peak" Pressure (STATICS "base reactions" Derived) "Peak pressure at the most pressed corner": Solved;
    Q_N "q_n" Pressure (ACI_318_19 "22.8.3.2" Derived) "Bearing strength as a pressure" = "phi * B_n / A_1";
    U_Q "u" Utilisation (STATICS "" Derived) "Peak pressure over the bearing strength as a pressure; a stiff foot spreads it" = "q_peak / q_n";
    NOT_STRENGTH "" Number (ACI_318_19 "5.3" Memory) "bearing strength by ACI 318-19 takes factored loads of strength design; the demand rule works in another format": Reason;
    WEAK "" Number (ACI_318_19 "19.2.1.1" Memory) "the concrete is weaker than 17 MPa (2500 psi), the least for structural concrete": Reason;
    NO_SLAB "" Number (INPUT "" Derived) "no slab is given: its strength, thickness and edges are needed": Reason;
    POINT "" Number (INPUT "" Derived) "a foot without size has no area to press with": Reason;
}

/// The least strength of structural concrete.
pub const STRENGTH_MIN_MPA: f64 = 17.0;
/// The strength reduction factor for bearing.
const PHI_BEARING: f64 = 0.65;
/// The same for plain concrete.
const PHI_PLAIN_BEARING: f64 = 0.60;

/// One foot on its slab.
#[derive(Clone, Copy, Debug)]
pub struct FootOnSlab {
    /// Place of the foot in the file, from 0.
    pub number: u16,
    /// Half sizes of the foot.
    pub half: Size,
    /// How much farther than the foot the concrete goes, along x and along y, on the nearer side.
    pub beyond: Size,
    /// Strength of the concrete.
    pub strength_mpa: f64,
    /// Whether the slab is known to be of plain concrete.
    pub is_plain: bool,
    /// The system in whose units the check is computed.
    pub system: System,
}

/// What a foot feels in one load case and direction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FootForce {
    /// Its force.
    pub force_n: f64,
    /// Half sides of the rectangle in the foot whose middle is where the force acts.
    pub bearing_half: Size,
    /// Its pressed area.
    pub area_mm2: f64,
    /// Its highest pressure.
    pub peak_mpa: f64,
}

/// What stands around a foot: the outline of the slab and the other feet.
#[derive(Clone, Copy, Debug)]
pub struct Surroundings<'a> {
    /// Distances from the cabinet's origin to the slab's edges: left, right, front, rear; infinite when far.
    pub edges_mm: [f64; 4],
    /// Thickness of the slab.
    pub thickness_mm: f64,
    /// All feet: centre and half sizes.
    pub feet: &'a [(Point, Size)],
}

/// How far the load of a foot can spread beside it along x and y, on the nearer side (22.8.3.2).
///
/// The spread is limited by the slab's edge, by half the gap to the next foot, and by a slope of 1 vertical to 2
/// horizontal through the thickness.
pub fn spread(foot: usize, around: &Surroundings) -> Size {
    let (at, half) = around.feet[foot];
    let through_mm = 2.0 * around.thickness_mm;
    let [left, right, front, rear] = around.edges_mm;
    let mut beyond_x = through_mm.min(left + at.x_mm - half.x_mm).min(right - at.x_mm - half.x_mm);
    let mut beyond_y = through_mm.min(front + at.y_mm - half.y_mm).min(rear - at.y_mm - half.y_mm);
    for (place, (other, size)) in around.feet.iter().enumerate() {
        if place == foot {
            continue;
        }
        let gap_x = (other.x_mm - at.x_mm).abs() - half.x_mm - size.x_mm;
        let gap_y = (other.y_mm - at.y_mm).abs() - half.y_mm - size.y_mm;
        // Two feet are apart along one axis at least; the spread may use half of the larger gap there.
        if gap_x >= gap_y {
            beyond_x = beyond_x.min(gap_x / 2.0);
        } else {
            beyond_y = beyond_y.min(gap_y / 2.0);
        }
    }
    Size::new(positive_part(beyond_x), positive_part(beyond_y))
}

impl FootOnSlab {
    /// Bearing under factored loads: force against strength (22.8.3), and the peak pressure beside it.
    ///
    /// Returns the two outcomes for [`CheckId::FootBearing`] and [`CheckId::FootPressure`].
    pub fn check(&self, force: &FootForce, sheet: &mut Sheet) -> [Outcome; 2] {
        let of = |value, kind| self.system.from_si(value, kind);
        sheet.open(Part::Feet, Subject::Foot(self.number), Some(CheckId::FootBearing), self.system);
        let strength = sheet.step(F_C, of(self.strength_mpa, Kind::Stress));
        let (d_x, d_y) = (of(force.bearing_half.x_mm, Kind::Length), of(force.bearing_half.y_mm, Kind::Length));
        // Thousands of times quiet for once told: what only a reader wants is not prepared.
        if sheet.is_told() {
            sheet.carry(D_X, d_x);
            sheet.carry(D_Y, d_y);
        }
        let loaded = sheet.step(A_1, 4.0 * d_x * d_y);
        let (beyond_x, beyond_y) = (of(self.beyond.x_mm, Kind::Length), of(self.beyond.y_mm, Kind::Length));
        let (row, half, beyond) =
            if beyond_x * d_y <= beyond_y * d_x { (B_1_X, d_x, beyond_x) } else { (B_1_Y, d_y, beyond_y) };
        if sheet.is_told() {
            sheet.step(row, half);
            sheet.detailed(S_1, beyond, || Detail::Shape(vec![[half, 0.0], [half + beyond, 0.0]]));
        }
        let ratio = sheet.step(R_A, f64::min(2.0, (half + beyond) / half));
        let nominal = sheet.step(B_N, ratio * 0.85 * strength * loaded);
        let (row_phi, phi) = if self.is_plain { (PHI_PLAIN, PHI_PLAIN_BEARING) } else { (PHI, PHI_BEARING) };
        let phi = sheet.step(row_phi, phi);
        let demand = sheet.carry(B_U, of(force.force_n, Kind::Force));
        let utilisation = sheet.step(U_B, demand / (phi * nominal));
        let bearing = Outcome::Compared {
            value: force.force_n,
            limit: self.system.to_si(phi * nominal, Kind::Force),
            utilisation,
        };
        if sheet.is_told() {
            sheet.open(Part::Feet, Subject::Foot(self.number), Some(CheckId::FootPressure), self.system);
            sheet.carry(B_U, demand);
            sheet.carry(A_1, loaded);
            let pressed = sheet.carry(A_P, of(force.area_mm2, Kind::Area));
            sheet.carry(row_phi, phi);
            sheet.carry(B_N, nominal);
            sheet.step(Q_MEAN, demand / pressed);
        }
        let peak = sheet.carry(Q_PEAK, of(force.peak_mpa, Kind::Pressure));
        let allowed = sheet.step(Q_N, phi * nominal / loaded);
        let utilisation = sheet.step(U_Q, peak / allowed);
        let limit = self.system.to_si(allowed, Kind::Pressure);
        [bearing, Outcome::Compared { value: force.peak_mpa, limit, utilisation }]
    }
}
