//! The verdict: what all checks come to.

use crate::calc::{CheckId, Role, Status, When};
use crate::report::outcome::{CheckTold, Verdict};

/// The answer in one word.
pub fn verdict(checks: &[CheckTold]) -> Verdict {
    let required = || checks.iter().filter(|check| check.role == Role::Required);
    if required().any(|check| check.status == Status::Fails) {
        return Verdict::DoesNotHold;
    }
    // Nothing required that was compared under a push is no proof of anything; distances are kept, and the floor carries
    // the cabinet at rest, without any.
    let was_compared =
        required().any(|check| check.status == Status::Holds && !is_distance(check) && !is_at_rest(check));
    if !was_compared || required().any(|check| check.status == Status::NotCovered) {
        return Verdict::CannotBeSaid;
    }
    Verdict::Holds
}

/// The required check with the highest utilisation; one without a number comes first.
pub fn governing(checks: &[CheckTold]) -> Option<usize> {
    let level = |check: &CheckTold| check.utilisation.unwrap_or(f64::INFINITY);
    let mut best: Option<usize> = None;
    for (place, check) in checks.iter().enumerate() {
        // Minimum distances are kept or not; only where they are not do they govern.
        let counts = check.role == Role::Required
            && (check.status == Status::Fails || check.status == Status::Holds && !is_distance(check));
        if counts && best.is_none_or(|known| level(check) > level(&checks[known])) {
            best = Some(place);
        }
    }
    best
}

fn is_at_rest(check: &CheckTold) -> bool {
    CheckId::named(check.id).is_some_and(|check| check.when() == When::AtRest)
}

fn is_distance(check: &CheckTold) -> bool {
    [CheckId::AnchorSpacing.id(), CheckId::AnchorEdge.id(), CheckId::AnchorThickness.id()].contains(&check.id)
}
