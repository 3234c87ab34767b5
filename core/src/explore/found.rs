//! What a whole assessment of one turned project came to, for searches and maps that ask for many.

use super::trial::Trial;
use crate::calc::{CheckId, Status};
use crate::project::{Project, bench::Bench, quick_told};
use crate::report::outcome::Verdict;

/// How it stands with one project.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
#[repr(u8)]
pub enum Standing {
    /// Everything asked holds.
    Holds,
    /// Something fails.
    Fails,
    /// Nothing fails, but something is not covered or not asked at all.
    NotCovered,
    /// There is no such project: a foot off the slab, a value that a rule refuses.
    NotBuilt,
}

/// One project as it came out.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Found {
    /// How it stands.
    pub standing: Standing,
    /// The check that governs.
    pub governs: Option<CheckId>,
    /// Its utilisation, the upper end of its span; infinite where it fails without a number, no number where nothing is
    /// compared.
    pub utilisation: f64,
    /// Code of the row that says why it is not covered.
    pub reason: Option<u16>,
}

impl Found {
    /// What is found where nothing can be built.
    pub const NOT_BUILT: Found =
        Found { standing: Standing::NotBuilt, governs: None, utilisation: f64::NAN, reason: None };

    /// All required checks of a project, or one check of whatever role alone, by a whole sweep.
    pub fn assess(project: &Project, of: Option<CheckId>) -> Found {
        let quick = quick_told(&mut Bench::new(project));
        let Some(check) = of else {
            return Found::from(super::trial::trial(quick.verdict, quick.governing(), &quick.checks));
        };
        let Some(told) = quick.checks.iter().find(|one| one.id == check.id()) else {
            return Found { standing: Standing::NotCovered, ..Found::NOT_BUILT };
        };
        let (standing, none) = match told.status {
            Status::Holds | Status::NotNeeded => (Standing::Holds, f64::NAN),
            Status::Fails => (Standing::Fails, f64::INFINITY),
            Status::NotCovered => (Standing::NotCovered, f64::NAN),
        };
        let reason = told.reason.filter(|_| standing == Standing::NotCovered);
        Found { standing, governs: Some(check), utilisation: told.utilisation.unwrap_or(none), reason }
    }

    /// As three plain numbers: utilisation, standing, and the place of the check or the code of the reason.
    pub fn packed(&self) -> [f64; 3] {
        let third = match (self.standing, self.governs, self.reason) {
            (Standing::NotCovered, _, Some(reason)) => f64::from(reason),
            (Standing::NotCovered | Standing::NotBuilt, ..) | (_, None, _) => -1.0,
            (_, Some(check), _) => f64::from(check as u8),
        };
        [self.utilisation, f64::from(self.standing as u8), third]
    }

    /// What was packed; what is no such triple counts as not assessed, which is told as not covered.
    pub fn unpacked([utilisation, standing, third]: [f64; 3]) -> Found {
        let standing = match standing as u8 {
            0 => Standing::Holds,
            1 => Standing::Fails,
            3 => Standing::NotBuilt,
            _ => Standing::NotCovered,
        };
        let is_compared = matches!(standing, Standing::Holds | Standing::Fails);
        Found {
            standing,
            governs: CheckId::ALL.get(third as usize).copied().filter(|_| is_compared && third >= 0.0),
            utilisation,
            reason: (standing == Standing::NotCovered && third >= 0.0).then_some(third as u16),
        }
    }
}

impl From<Trial> for Found {
    fn from(trial: Trial) -> Found {
        let standing = match trial.verdict {
            Verdict::Holds => Standing::Holds,
            Verdict::DoesNotHold => Standing::Fails,
            Verdict::CannotBeSaid => Standing::NotCovered,
        };
        let none = if standing == Standing::Fails { f64::INFINITY } else { f64::NAN };
        Found { standing, governs: trial.governs, utilisation: trial.utilisation.unwrap_or(none), reason: trial.reason }
    }
}
