//! Prying: a bracket that leans on its toe pulls its bolt harder than the cabinet pulls the bracket.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Part, Sheet, Subject, System, steps};

steps! { 25 "prying";
    T "T" Force (STATICS "" Derived) "Tension of this anchor without prying": Given;
    A "a" Length (INPUT "cabinet.anchors" Derived) "From the bolt to the toe of its bracket": Given;
    B "b" Length (INPUT "cabinet.anchors" Derived) "From the bolt to the line along which the cabinet pulls": Given;
    Q "q" Number (STATICS "moments about the toe, the whole bracket leaning on it" Derived) "Factor for prying, the most that any bracket of this shape can reach" = "1 + b / a";
    T_Q "T_q" Force (STATICS "" Derived) "Tension of this anchor with prying" = "q * T";
}

/// A bracket between the cabinet and its bolt.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bracket {
    /// From the bolt to the toe that presses on the floor, away from the cabinet.
    pub toe_mm: f64,
    /// From the bolt to the line along which the cabinet pulls.
    pub lever_mm: f64,
}

impl Bracket {
    /// The tension in the bolt for a pull of the cabinet, told in a section of its own.
    ///
    /// Statics of a lever on its toe: T (a + b) / a. An upper bound: a thick bracket pries less. Units: N, mm.
    ///
    /// ```
    /// use steadfoot::base_reactions::Bracket;
    /// let bracket = Bracket { toe_mm: 40.0, lever_mm: 50.0 };
    /// let tension_n = bracket.tension_n(8000.0, 0, &mut steadfoot::calc::Sheet::quiet());
    /// assert!((tension_n - 18_000.0).abs() < 1e-9);
    /// ```
    pub fn tension_n(&self, pull_n: f64, anchor: usize, sheet: &mut Sheet) -> f64 {
        if pull_n <= 0.0 {
            return pull_n;
        }
        sheet.open(Part::BaseReactions, Subject::Anchor(anchor as u16), None, System::Si);
        let pull_n = sheet.carry(T, pull_n);
        let toe = sheet.step(A, self.toe_mm);
        let lever = sheet.step(B, self.lever_mm);
        let factor = sheet.step(Q, 1.0 + lever / toe);
        sheet.step(T_Q, factor * pull_n)
    }
}
