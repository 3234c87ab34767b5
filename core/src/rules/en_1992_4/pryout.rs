//! Pry-out (7.2.2.4): the resistance to a pull of all sheared fasteners, pulled or not.

use alloc::vec::Vec;

use super::body::{Piece, Reach};
use super::coverage::MIXED_DEPTHS;
use super::document::EN_1992_4;
use super::factor;
use super::facts::{Facts, compared, sum};
use super::fields as f;
use super::group::{Eccentricity, Found, Group, N_ALL, X_I, Y_I};
use super::seismic::{self, Mode};
use super::steel::Shear;
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::limit::at_least;
use crate::calc::number::{hypot, sqrt};
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System, steps};

steps! { 80 "EN 1992-4, pry-out";
    V_X_I "V_x_i" Force (STATICS "base reactions" Derived) "Shear on each fastener of the group, to the right": Solved;
    V_Y_I "V_y_i" Force (STATICS "base reactions" Derived) "Shear on each fastener of the group, to the rear": Solved;
    V_ED_GROUP "V_Ed" Force (STATICS "" Derived) "Resultant shear on the group" = "sqrt(sum(V_x_i)^2 + sum(V_y_i)^2)";
    M_Z "M_z" Moment (STATICS "" Derived) "Twist of the shears about the centroid of the group" = "sum(x_i * V_y_i - y_i * V_x_i) - sum(x_i) / n * sum(V_y_i) + sum(y_i) / n * sum(V_x_i)";
    E_MAX "e_max" Length (PRACTICE "shears that oppose each other" Derived) "From the centroid to the farthest fastener: the resultant of shears that oppose each other may lie anywhere, that of others within": Given;
    E "e_N" Length (EN_1992_4 "7.2.2.4(3)" Memory) "Eccentricity of the shear resultant" = "min(e_max, abs(M_z) / V_Ed)";
    E_X "e_N_x" Length (EN_1992_4 "7.2.2.4(3)" Memory) "Its part along x" = "e_N * abs(sum(V_y_i)) / V_Ed";
    E_Y "e_N_y" Length (EN_1992_4 "7.2.2.4(3)" Memory) "Its part along y" = "e_N * abs(sum(V_x_i)) / V_Ed";
    K_8 "k_8" Number (EN_1992_4 "7.2.2.4(2)" Secondary) "Factor of fasteners at least 60 mm deep": Condition;
    K_8_SHALLOW "k_8" Number (EN_1992_4 "7.2.2.4(2)" Secondary) "Factor of fasteners less than 60 mm deep": Condition;
    K_8_GIVEN "k_8" Number (INPUT "European Technical Assessment" Derived) "Factor for pry-out": Given;
    V_RK "V_Rk_cp" Force (EN_1992_4 "(7.39)" Secondary) "Characteristic resistance to pry-out" = "k_8 * N_Rk_c";
    V_RK_BOND "V_Rk_cp" Force (EN_1992_4 "(7.39)" Secondary) "Characteristic resistance to pry-out, by the bond" = "k_8 * N_Rk_p";
    V_RK_CUT "V_Rk_cp" Force (EN_1992_4 "7.2.2.4(4)" Secondary) "Characteristic resistance to pry-out of the worst fastener, cut half way to its neighbours because their shears oppose" = "k_8 * N_Rk_c";
    V_RK_CUT_BOND "V_Rk_cp" Force (PRACTICE "shears that oppose each other" Memory) "The same, by the bond" = "k_8 * N_Rk_p";
    V_RD "V_Rd_cp" Force (EN_1992_4 "Table 7.2, (C.8)" Secondary) "Design resistance" = "k_eq * V_Rk_cp / gamma_Mc";
    BETA "beta_V" Utilisation (EN_1992_4 "Table 7.2" Secondary) "Action over resistance" = "V_Ed / V_Rd_cp";
}

/// Depth from which the factor is 2.
const DEEP_MM: f64 = 60.0;

/// A group of sheared fasteners.
pub struct Sheared<'a> {
    /// Number of the group, from 1.
    pub number: u16,
    /// The group.
    pub group: &'a Group,
    /// Shears of all fasteners.
    pub shear: &'a [Shear],
    /// How many fasteners share the shear.
    pub sharing: usize,
}

impl Sheared<'_> {
    /// The group against its resultant.
    pub fn check(&self, facts: &Facts, sheet: &mut Sheet) -> Found {
        let members = &self.group.body.members;
        let subject = self.open(Subject::Group(self.number), sheet);
        if !self.group.body.alike {
            return (subject, Outcome::NotCovered(MIXED_DEPTHS));
        }
        self.group.tell(facts, Piece::Whole, sheet);
        if let [only] = members[..] {
            let n_rk = self.group.single(Piece::Whole, sheet);
            let v_ed = self.shear[only].tell(sheet);
            return (subject, self.against(facts, (n_rk, v_ed), Piece::Whole, sheet));
        }
        let at = |place: usize| facts.anchors[place].at;
        if sheet.is_told() {
            let of = |value: &dyn Fn(usize) -> f64| -> Vec<f64> { members.iter().map(|&place| value(place)).collect() };
            sheet.carry_each(V_X_I, &of(&|place| self.shear[place].x));
            sheet.carry_each(V_Y_I, &of(&|place| self.shear[place].y));
            sheet.each(X_I, &of(&|place| at(place).x_mm));
            sheet.each(Y_I, &of(&|place| at(place).y_mm));
        }
        let n = sheet.step(N_ALL, members.len() as f64);
        let shear = self.shear;
        let (v_x, v_y) = (sum(members, |p| shear[p].x), sum(members, |p| shear[p].y));
        let v_ed = sheet.step(V_ED_GROUP, sqrt(v_x * v_x + v_y * v_y));
        let m_z = sum(members, |p| at(p).x_mm * shear[p].y - at(p).y_mm * shear[p].x)
            - sum(members, |p| at(p).x_mm) / n * v_y
            + sum(members, |p| at(p).y_mm) / n * v_x;
        let m_z = sheet.step(M_Z, m_z);
        let middle = [sum(members, |p| at(p).x_mm) / n, sum(members, |p| at(p).y_mm) / n];
        let away = |p: usize| hypot(at(p).x_mm - middle[0], at(p).y_mm - middle[1]);
        let e_max = sheet.step(E_MAX, members.iter().fold(0.0, |far: f64, &place| far.max(away(place))));
        // A pure twist has no resultant; its fasteners are checked alone.
        let size = if v_ed > 0.0 { v_ed } else { f64::INFINITY };
        let off = m_z.abs() / size;
        let off = sheet.step(E, if off > e_max { e_max } else { off });
        let eccentricity =
            Eccentricity { x: sheet.step(E_X, off * v_y.abs() / size), y: sheet.step(E_Y, off * v_x.abs() / size) };
        let n_rk = self.group.resistance(eccentricity, sheet);
        (subject, self.against(facts, (n_rk, v_ed), Piece::Whole, sheet))
    }

    /// The worst single fastener, where shears of the group oppose each other; none where they do not.
    pub fn check_opposed(&self, facts: &Facts, sheet: &mut Sheet) -> Option<(usize, Found)> {
        let members = &self.group.body.members;
        if !self.group.body.alike || !self.is_opposed() {
            return None;
        }
        let quiet = &mut Sheet::quiet();
        let mut worst = (0, f64::NEG_INFINITY);
        for (place, &member) in members.iter().enumerate().filter(|(_, member)| **member < facts.own) {
            let ratio = self.shear[member].size() / self.group.single(Piece::Cut(place), quiet);
            if ratio > worst.1 || ratio.is_nan() {
                worst = (place, ratio);
            }
        }
        let (place, _) = worst;
        let subject = self.open(Subject::Anchor(members[place] as u16), sheet);
        let piece = Piece::Cut(place);
        self.group.tell(facts, piece, sheet);
        let n_rk = self.group.single(piece, sheet);
        let v_ed = self.shear[members[place]].tell(sheet);
        Some((members[place], (subject, self.against(facts, (n_rk, v_ed), piece, sheet))))
    }

    fn open(&self, subject: Subject, sheet: &mut Sheet) -> Subject {
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorShearPryout), System::Si);
        subject
    }

    fn against(&self, facts: &Facts, (n_rk, v_ed): (f64, f64), piece: Piece, sheet: &mut Sheet) -> Outcome {
        let k_8 = match facts.number(f::K_8) {
            Some(given) => sheet.step(K_8_GIVEN, given),
            None if at_least(self.group.body.full_depth, DEEP_MM) => sheet.step(K_8, 2.0),
            None => sheet.step(K_8_SHALLOW, 1.0),
        };
        let id = match (self.group.body.reach, piece) {
            (Reach::Bond, Piece::Whole) => V_RK_BOND,
            (Reach::Bond, _) => V_RK_CUT_BOND,
            (_, Piece::Whole) => V_RK,
            _ => V_RK_CUT,
        };
        let v_rk = sheet.step(id, k_8 * n_rk);
        let k_eq = seismic::reduction(facts, Mode::PryOut, self.sharing, sheet);
        let gamma = factor::concrete_shear(facts, sheet);
        let v_rd = sheet.step(V_RD, k_eq * v_rk / gamma);
        sheet.step(BETA, v_ed / v_rd);
        compared(v_ed, v_rd)
    }

    /// Whether two shears of the group point away from each other.
    fn is_opposed(&self) -> bool {
        let members = &self.group.body.members;
        members.iter().enumerate().any(|(place, &a)| {
            let a = self.shear[a];
            members[place + 1..].iter().any(|&b| a.x * self.shear[b].x + a.y * self.shear[b].y < 0.0)
        })
    }
}
