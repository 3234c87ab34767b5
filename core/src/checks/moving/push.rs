use alloc::vec;

use super::{Moved, fields, texts::*};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Detail, Outcome, Sheet, StepId};

/// What one person may push to start a load: 20 kgf for men, 15 kgf for women, as the guidance prints it in newtons.
const START_N: [f64; 2] = [200.0, 150.0];
/// What one person may push to keep a load in motion: 10 and 7 kgf.
const KEEP_N: [f64; 2] = [100.0, 70.0];

impl Moved<'_> {
    /// The force that starts it on the steepest ramp against what the people may push.
    pub(super) fn check_push(&self, sheet: &mut Sheet) -> Outcome {
        if self.is_powered() {
            return Outcome::NotNeeded(POWERED);
        }
        self.open(CheckId::MovePush, sheet);
        let weight = self.tell_weight(sheet);
        let slope = sheet.step(SLOPE, self.values.given(fields::SLOPE));
        let length = sheet.step(L_S, sqrt(1.0 + slope * slope));
        let rolling = sheet.step(C_RR, self.values.given(fields::ROLLING));
        let start = sheet.step(A_S, self.values.given(fields::START));
        let force = sheet.step(F_PUSH, weight * (slope + rolling) / length + weight * start);
        let team = self.tell_team(sheet);
        Outcome::told_ratio(force, team, U_PUSH, sheet)
    }

    /// The force that keeps it in motion on the steepest ramp against what the people may keep up.
    pub(super) fn check_keep(&self, sheet: &mut Sheet) -> Outcome {
        if self.is_powered() {
            return Outcome::NotNeeded(POWERED);
        }
        self.open(CheckId::MoveKeep, sheet);
        let weight = self.tell_weight(sheet);
        let slope = sheet.step(SLOPE, self.values.given(fields::SLOPE));
        let length = sheet.step(L_S, sqrt(1.0 + slope * slope));
        let rolling = sheet.step(C_RR, self.values.given(fields::ROLLING));
        let force = sheet.step(F_KEEP, weight * (slope + rolling) / length);
        let team = self.tell_team_of(F_ONE_KEEPS, KEEP_N, sheet);
        Outcome::told_ratio(force, team, U_PUSH, sheet)
    }

    pub(super) fn is_powered(&self) -> bool {
        self.values.choice(fields::MOVERS) == Some(2)
    }

    /// What the team may push.
    pub(super) fn tell_team(&self, sheet: &mut Sheet) -> f64 {
        self.tell_team_of(F_ONE, START_N, sheet)
    }

    fn tell_team_of(&self, id: StepId, limits_n: [f64; 2], sheet: &mut Sheet) -> f64 {
        let who = self.values.choice(fields::MOVERS).unwrap_or(0).min(1);
        let one = sheet.detailed(id, limits_n[who], || Detail::Rows(vec![[who as f64 + 1.0, limits_n[who]]]));
        let people = sheet.step(N_P, self.values.given(fields::PEOPLE));
        let share = match people {
            few if few < 2.0 => 1.0,
            few if few < 3.0 => 2.0 / 3.0,
            _ => 0.5,
        };
        let share = sheet.detailed(K_N, share, || Detail::Rows(vec![[people, share]]));
        sheet.step(F_TEAM, one * people * share)
    }
}
