//! Limits: the strongest demand and the largest load that a cabinet still holds, bolted and standing free.
//!
//! A limit is scanned first, so that an answer that comes and goes is noticed, and then bracketed on the true checks. It
//! is told as an interval that holds: at its low end the cabinet holds, at its high end it does not.

use alloc::vec::Vec;

use serde::Serialize;

use super::scaled::{scaled_load, scaled_strength};
use crate::calc::{CheckId, Kind, Outcome, Sheet, Status};
use crate::input::field::{FieldShape, Value};
use crate::project::{Project, bench::Bench, quick};
use crate::report::outcome::Verdict;
use crate::rules::demand::Strength;

/// Values that the scan tries.
const SCAN: usize = 24;
/// The scan reaches from the present value over this factor to it times this factor.
const REACH: f64 = 64.0;
/// The bracket is narrowed until its ends are this near, relative.
const NARROW: f64 = 5e-4;

/// One limit.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Limit {
    /// Bolted, or standing free.
    pub of: LimitOf,
    /// What is made larger.
    pub what: What,
    /// The value in the project now, in SI.
    pub now: f64,
    /// The largest value tried at which it holds.
    pub low: Option<f64>,
    /// The smallest value tried at which it does not.
    pub high: Option<f64>,
    /// Code of the kind of the values.
    pub kind: u16,
    /// The highest zone that holds, where the rule has zones.
    pub zone: Option<&'static str>,
    /// The check that governs at the high end, or at the low end where it holds to the end.
    pub governs: Option<&'static str>,
    /// How the search ended.
    pub ending: Ending,
}

/// Whether the cabinet is bolted.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum LimitOf {
    /// With its anchors.
    Bolted,
    /// By its weight alone.
    Free,
}

/// What is made larger.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum What {
    /// The field that the demand rule names as its strength.
    Demand,
    /// The zone of a rule that has zones.
    Zone,
    /// The mass of all contents together; the frame stays.
    Load,
}

/// How the search for a limit ended.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Ending {
    /// Between low and high.
    Bracketed,
    /// It holds up to the largest value tried.
    HoldsToTheEnd,
    /// It does not hold even at the smallest value tried.
    NeverHolds,
    /// It fails at one value and holds again at a larger one; the bracket is the first.
    NotMonotone,
    /// Something required is not covered.
    CannotBeSaid,
}

/// What one trial came to.
struct Trial {
    verdict: Verdict,
    governs: Option<&'static str>,
}

/// A rising scan on its way.
struct Scan {
    limit: Limit,
    /// Whether something required was not covered before anything failed.
    met_uncovered: bool,
}

/// How far it can go: the strongest demand and the largest load, bolted and free; the highest zone for a rule with zones.
///
/// Demands are pushes over the weight, loads are in kg; every mass grows alike, and every strength tried is a whole check.
/// A search that stops at the end of its reach, or where a clause ends, says so.
pub fn limits(project: &Project) -> Vec<Limit> {
    let mut found = Vec::new();
    for of in [LimitOf::Bolted, LimitOf::Free] {
        found.extend(strength_limit(project, of));
        found.extend(load_limit(project, of));
    }
    found
}

/// The largest load by the same search, for what asks for it alone; none where nothing is aboard, or without a demand rule.
pub fn load_limit(project: &Project, of: LimitOf) -> Option<Limit> {
    let now: f64 = project.contents.iter().map(|content| content.mass_kg).sum();
    if now <= 0.0 || project.site.is_none() {
        return None;
    }
    let trial = |value: f64| attempt(&scaled_load(project, value / now), of);
    let mut limit = search(now, now * REACH, &trial);
    (limit.of, limit.what, limit.kind) = (of, What::Load, Kind::Mass.code());
    Some(limit)
}

fn strength_limit(project: &Project, of: LimitOf) -> Option<Limit> {
    let site = project.site.as_ref()?;
    match (site.rule.strength)(&site.values) {
        Strength::Field(field) => {
            let now = site.values.number(field)?;
            let FieldShape::Number { kind, max, .. } = site.rule.fields[field].shape else { return None };
            if now <= 0.0 {
                return None;
            }
            let trial = |value: f64| match scaled_strength(project, value) {
                Some(scaled) => attempt(&scaled, of),
                None => Trial { verdict: Verdict::CannotBeSaid, governs: None },
            };
            let mut limit = search(now, max.min(now * REACH), &trial);
            (limit.of, limit.what, limit.kind) = (of, What::Demand, kind.code());
            Some(limit)
        }
        Strength::Zones(field) => {
            let FieldShape::Choice(words) = site.rule.fields[field].shape else { return None };
            let mut scan = Scan::new(site.values.choice(field)? as f64);
            for (zone, word) in words.iter().enumerate() {
                let mut other = project.clone();
                if let Some(site) = other.site.as_mut() {
                    site.values.0[field] = Value::Choice(zone);
                }
                let trial = attempt(&other, of);
                scan.take(zone as f64, &trial);
                if trial.verdict == Verdict::Holds && scan.limit.high.is_none() {
                    scan.limit.zone = Some(word);
                }
            }
            let mut limit = scan.limit;
            (limit.of, limit.what, limit.kind) = (of, What::Zone, Kind::Number.code());
            Some(limit)
        }
    }
}

/// Scans upwards in even ratios, then halves the bracket in which the answer changes.
fn search(now: f64, end: f64, trial: &dyn Fn(f64) -> Trial) -> Limit {
    let mut scan = Scan::new(now);
    let begin = now / REACH;
    let ratio = crate::calc::number::pow(end / begin, 1.0 / (SCAN - 1) as f64);
    let mut value = begin;
    for step in 0..SCAN {
        let value_now = if step + 1 == SCAN { end } else { value };
        scan.take(value_now, &trial(value_now));
        value *= ratio;
    }
    let mut limit = scan.limit;
    while let (Some(low), Some(high), true) = (limit.low, limit.high, limit.ending != Ending::CannotBeSaid) {
        if high - low <= NARROW * high {
            break;
        }
        let middle = low + (high - low) / 2.0;
        let result = trial(middle);
        match result.verdict {
            Verdict::Holds => limit.low = Some(middle),
            Verdict::DoesNotHold => (limit.high, limit.governs) = (Some(middle), result.governs),
            // Between holding and failing lies a stretch that nothing covers: no bracket can be told.
            Verdict::CannotBeSaid => limit.ending = Ending::CannotBeSaid,
        }
    }
    limit
}

impl Scan {
    fn new(now: f64) -> Scan {
        let limit = Limit {
            of: LimitOf::Bolted,
            what: What::Load,
            now,
            low: None,
            high: None,
            kind: 0,
            zone: None,
            governs: None,
            ending: Ending::CannotBeSaid,
        };
        Scan { limit, met_uncovered: false }
    }

    /// Takes one trial of a rising scan.
    fn take(&mut self, value: f64, trial: &Trial) {
        let limit = &mut self.limit;
        match trial.verdict {
            Verdict::Holds if limit.high.is_none() => {
                (limit.low, limit.governs, limit.ending) = (Some(value), trial.governs, Ending::HoldsToTheEnd);
            }
            Verdict::Holds => limit.ending = Ending::NotMonotone,
            Verdict::DoesNotHold if limit.high.is_none() => {
                (limit.high, limit.governs) = (Some(value), trial.governs);
                limit.ending = match limit.low {
                    _ if self.met_uncovered => Ending::CannotBeSaid,
                    Some(_) => Ending::Bracketed,
                    None => Ending::NeverHolds,
                };
            }
            Verdict::CannotBeSaid if limit.high.is_none() => {
                self.met_uncovered = true;
                limit.ending = Ending::CannotBeSaid;
            }
            _ => {}
        }
    }
}

fn attempt(project: &Project, of: LimitOf) -> Trial {
    match of {
        LimitOf::Bolted => {
            let (verdict, governs) = quick(project);
            Trial { verdict, governs }
        }
        LimitOf::Free => free(project),
    }
}

/// Whether the cabinet neither slides nor tips in any state.
fn free(project: &Project) -> Trial {
    let bench = Bench::new(project);
    let mut worst: Option<(f64, CheckId)> = None;
    let mut verdict = Verdict::Holds;
    for state in 0..bench.loads.len() {
        let Some(standing) = bench.standing(state) else {
            return Trial { verdict: Verdict::CannotBeSaid, governs: None };
        };
        let outcomes = [
            (CheckId::FreeTipping, standing.check_tipping(standing.weakest_direction_rad(), &mut Sheet::quiet())),
            (CheckId::FreeSliding, standing.check_sliding(&mut Sheet::quiet())),
        ];
        for (check, outcome) in outcomes {
            if outcome.status() != Status::Holds {
                verdict = Verdict::DoesNotHold;
            }
            if let Outcome::Compared { utilisation, .. } = outcome
                && worst.is_none_or(|(known, _)| !(utilisation <= known))
            {
                worst = Some((utilisation, check));
            }
        }
    }
    match worst {
        Some((_, check)) => Trial { verdict, governs: Some(check.id()) },
        None => Trial { verdict: Verdict::CannotBeSaid, governs: None },
    }
}
