//! Whether a body that stands free can be said to stand: never from one restitution, one sign and one record.
//!
//! Where an impact acts is known badly, the answer is not monotone in it, and a record turned round is another record.
//! So a body is followed for several restitutions, both signs and two strengths of every motion, each once more with
//! half the step, and the worst counts.

use alloc::vec::Vec;

use super::body::RockingBody;
use super::course::{GroundMotion, Scaled};
use super::rocking::{End, Following, Rocked, rock};
use crate::calc::clause::PRACTICE;
use crate::calc::steps;

steps! { 175 "verdict of rocking";
    STANDS "" Number (PRACTICE "" Memory) "stands": Name;
    MARGINAL "" Number (PRACTICE "" Memory) "marginal": Name;
    MAY_FALL "" Number (PRACTICE "" Memory) "may fall": Name;
    SENSITIVE "" Number (PRACTICE "" Memory) "sensitive": Name;
}

/// The word for it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Word {
    /// Below half of the angle of falling in every run.
    Stands,
    /// Between half of it and all of it in some run.
    Marginal,
    /// Beyond it in some run, or fallen.
    MayFall,
    /// Half the step gives another word.
    Sensitive,
}

impl Word {
    /// Its row.
    pub fn row(self) -> crate::calc::StepId {
        match self {
            Word::Stands => STANDS,
            Word::Marginal => MARGINAL,
            Word::MayFall => MAY_FALL,
            Word::Sensitive => SENSITIVE,
        }
    }
}

/// Where the impulse of an impact is taken to act: by Housner, and nearer to the centre, where tests put it too.
pub const IMPULSES: [f64; 3] = [1.0, 0.85, 0.7];
/// How strong each motion is made.
pub const STRENGTHS: [f64; 2] = [1.0, 1.2];
/// Up to this part of the angle of falling it stands.
pub const STANDS_TO: f64 = 0.5;
/// Half the step may move the peak by this part of it.
pub const MOVES: f64 = 0.01;

/// One run of the scheme.
#[derive(Clone, Debug)]
pub struct Run {
    /// Place of the motion.
    pub motion: usize,
    /// Where the impulse acts.
    pub impulse: f64,
    /// Factor on the motion, negative where it is turned round.
    pub factor: f64,
    /// What became of the body.
    pub rocked: Rocked,
    /// Whether half the step gives another end, or moves the peak by more than a hundredth.
    pub is_sensitive: bool,
}

/// What all runs come to.
#[derive(Clone, Debug)]
pub struct Verdict {
    /// The word.
    pub word: Word,
    /// Whether the peak of any run moves when the step is halved, though not the word.
    pub is_sensitive: bool,
    /// The run with the largest angle; of those that fall, the one that falls first.
    pub worst: usize,
    /// The friction without which it would slide in some run.
    pub friction_needed: f64,
    /// All runs.
    pub runs: Vec<Run>,
}

/// What is tried.
#[derive(Clone, Copy)]
pub struct Scheme<'a> {
    /// The body.
    pub body: &'a RockingBody,
    /// The motions.
    pub motions: &'a [&'a dyn GroundMotion],
    /// Another place of the impulse, where the user gives one.
    pub impulse: Option<f64>,
}

impl Scheme<'_> {
    /// The places of the impulse.
    pub fn impulses(&self) -> Vec<f64> {
        let own = self.impulse.filter(|own| !IMPULSES.contains(own));
        IMPULSES.into_iter().chain(own).collect()
    }

    /// One run without its repetition.
    pub fn once(&self, motion: usize, impulse: f64, factor: f64) -> Rocked {
        let motion = Scaled { motion: self.motions[motion], horizontal: factor, vertical: factor.abs() };
        rock(self.body, &motion, &Following { impulse, ..Following::USUAL }, &mut |_, _| {})
    }

    /// One run with its repetition.
    pub fn run(&self, motion: usize, impulse: f64, factor: f64) -> Run {
        let motion_here = Scaled { motion: self.motions[motion], horizontal: factor, vertical: factor.abs() };
        let of = |fineness: f64| {
            rock(self.body, &motion_here, &Following { impulse, fineness, ..Following::USUAL }, &mut |_, _| {})
        };
        let (rocked, finer) = (of(1.0), of(2.0));
        let is_sensitive = differs(&rocked, &finer);
        // Of the two the worse one counts.
        let worse = if severity(&finer) > severity(&rocked) { finer } else { rocked };
        Run { motion, impulse, factor, rocked: worse, is_sensitive }
    }

    /// All runs and what they come to.
    pub fn verdict(&self) -> Verdict {
        let mut runs = Vec::new();
        for motion in 0..self.motions.len() {
            for impulse in self.impulses() {
                for strength in STRENGTHS {
                    for sign in [1.0, -1.0] {
                        runs.push(self.run(motion, impulse, sign * strength));
                    }
                }
            }
        }
        judge(runs)
    }
}

/// What these runs come to.
pub fn judge(runs: Vec<Run>) -> Verdict {
    let mut worst = 0;
    let mut word = Word::Stands;
    let mut friction_needed = 0.0;
    let mut is_sensitive = false;
    for (place, run) in runs.iter().enumerate() {
        if severity(&run.rocked) > severity(&runs[worst].rocked) {
            worst = place;
        }
        word = word.max(word_of(&run.rocked));
        is_sensitive |= run.is_sensitive;
        friction_needed = f64::max(friction_needed, run.rocked.friction_needed);
    }
    // A run whose end hangs on the step may hide a fall; where one falls anyway, that is said.
    let hides = |run: &Run| run.is_sensitive && run.rocked.peak_ratio > STANDS_TO;
    if word == Word::Marginal && runs.iter().any(hides) {
        word = Word::Sensitive;
    }
    Verdict { word, is_sensitive, worst, friction_needed, runs }
}

/// The word for one run.
pub fn word_of(rocked: &Rocked) -> Word {
    match rocked.end {
        End::NeverLifts => Word::Stands,
        End::Recovers if rocked.peak_ratio <= STANDS_TO => Word::Stands,
        End::Recovers if rocked.peak_ratio <= 1.0 => Word::Marginal,
        _ => Word::MayFall,
    }
}

fn severity(rocked: &Rocked) -> (bool, f64) {
    match rocked.end {
        // Among falls the earliest is the worst.
        End::Overturns => (true, -rocked.end_s),
        End::LeavesTheFloor | End::StillRocks => (true, f64::NEG_INFINITY),
        _ => (false, rocked.peak_ratio),
    }
}

fn differs(one: &Rocked, finer: &Rocked) -> bool {
    if one.end != finer.end {
        return true;
    }
    let (a, b) = (one.peak_ratio, finer.peak_ratio);
    one.end != End::Overturns && (a - b).abs() > MOVES * a.max(b)
}
