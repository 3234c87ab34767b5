//! Assess: runs the pipeline and makes the report.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::anchored::has_stems;
use super::bench::{Bench, Place, Purpose, STIFFNESS_FACTORS};
use super::floored::at_rest;
use super::handled;
use super::left_open::stated;
use super::sweep::{CHECKS, Ends, Track, sweep};
use super::tell::tell_answer;
use super::unbolted::free;
use super::verdict::{governing, verdict};
use super::{Anchorage, Project};
use crate::calc::{CheckId, Outcome, Sheet, Subject, When, limit};
use crate::load_case::{Directions, Level};
use crate::load_out::Content;
use crate::report::missing::{
    NO_ANCHORAGE, NO_LIFTING, NO_RIGGING, NO_SITE, NO_SLAB, NOT_PRESSED, OVERSTRENGTH_IDLE, PRYING_LEFT_OUT,
    STEMS_BEND, STICKS_OUT,
};
use crate::report::outcome::{At, CaseTold, CheckTold, Report, StateTold, SubjectTold, Verdict};
use crate::rules::anchor::Finding;

/// Everything that is told of a project.
///
/// Runs every state, load case and direction; finds where each check governs; repeats that with anchors four times
/// softer and stiffer where their stiffness was not given, and takes the upper end. Where the file leaves something
/// open, the report says that it was not tried; [`crate::explore::assess_open`] tries it. Numbers are in N, mm, MPa, kg, s
/// and rad, accelerations in multiples of g. It cannot fail: where a clause does not reach, its check is not covered.
///
/// ```
/// use steadfoot::calc::Role;
/// use steadfoot::project::{assess, built_in};
/// let report = assess(&built_in().unwrap());
/// let governing = &report.checks[report.governs.unwrap()];
/// assert_eq!((governing.role, governing.at.is_some()), (Role::Required, true));
/// ```
pub fn assess(project: &Project) -> Report {
    let mut bench = Bench::new(project);
    assess_on(&mut bench)
}

/// The same on a bench that is already laid out.
pub fn assess_on(bench: &mut Bench) -> Report {
    let tracks = sweep(bench, Ends::Both);
    let checks = all_checks(bench, &tracks);
    let verdict = verdict(&checks);
    let governs = governing(&checks);
    let project = bench.project;
    let answer = tell_answer(bench, &checks, governs, verdict);
    let mut report = Report {
        engine: crate::VERSION,
        fingerprint: project.fingerprint.clone(),
        demand_rule: project.site.as_ref().map(|site| site.rule.id),
        anchor_rule: project.anchorage.as_ref().map(|anchorage| anchorage.rule.id),
        verdict,
        answer,
        states: states_told(bench),
        cases: cases_told(bench),
        rose: super::rose::rose(bench, &checks, governs),
        checks,
        governs,
        absent: absent(bench),
        unknown: None,
    };
    stated(project, &mut report, None);
    report
}

fn all_checks(bench: &mut Bench, tracks: &[Track; CHECKS]) -> Vec<CheckTold> {
    let mut told = Vec::new();
    let mut placed = Vec::new();
    bench.check_places(&mut Sheet::quiet(), &mut placed);
    let handled = handled::handled(bench);
    let at_rest = at_rest(bench);
    for &check in CheckId::ALL {
        let whole = |outcome| Finding { check, subject: Subject::Whole, outcome };
        let refused = match check {
            CheckId::Demand => bench.demand.as_ref().and_then(|demand| demand.as_ref().err().copied()),
            CheckId::Anchorage => bench.anchors_refused,
            CheckId::FootBearing => bench.feet_refused,
            _ => None,
        };
        let found = match check.when() {
            _ if refused.is_some() => refused.map(|reason| (whole(Outcome::NotCovered(reason)), None)),
            When::Placed => {
                // A release by the clause is told; a rule that simply reaches is not worth a line.
                let is_told = |finding: &Finding| {
                    check != CheckId::Anchorage || matches!(finding.outcome, Outcome::NotCovered(_))
                };
                worst(&placed, check).filter(is_told).map(|finding| {
                    let is_compared = matches!(finding.outcome, Outcome::Compared { .. });
                    (finding, is_compared.then(|| of_no_case(0, &finding)))
                })
            }
            When::Once if check == CheckId::AnchorAsBuilt => {
                let outcome = super::as_built::check(bench.project, &mut Sheet::quiet());
                outcome.map(whole).map(|finding| (finding, Some(of_no_case(0, &finding))))
            }
            When::AtRest => {
                let found = at_rest.iter().find(|(_, finding)| finding.check == check);
                found.map(|(state, finding)| (*finding, Some(of_no_case(*state, finding))))
            }
            When::Free => free(bench, check).map(|(finding, place)| (finding, Some(place))),
            When::Handled => {
                let found = handled.iter().find(|(finding, _)| finding.check == check);
                found.map(|(finding, state)| (*finding, Some(of_no_case(*state, &whole(finding.outcome)))))
            }
            // Whether the demand rule reaches is told only where it does not.
            When::Once => None,
            When::Shaken => {
                told.extend(swept(bench, check, &tracks[check as usize]));
                None
            }
        };
        told.extend(found.map(|(finding, at)| check_told(bench, finding, at)));
    }
    told
}

/// A check of the sweep. One that is not covered anywhere is never told as holding.
fn swept(bench: &mut Bench, check: CheckId, track: &Track) -> Option<CheckTold> {
    let peak = track.peak;
    let fails = peak.is_some_and(|peak| !(peak.utilisation <= 1.0));
    let reason = |outcome| Finding { check, subject: Subject::Whole, outcome };
    if let (Some(peak), true) = (peak, fails || track.not_covered.is_none()) {
        let mut findings: Vec<Finding> = Vec::new();
        bench.check(&peak.place, &mut Sheet::quiet(), &mut findings);
        let finding = worst(&findings, check)?;
        let mut told = check_told(bench, finding, Some(at(peak.place, finding.subject, check)));
        told.span = track.ends.filter(|ends| {
            let differ = ends[1] - ends[0] > 1e-9 * ends[1];
            differ && ends[0].is_finite() && ends[1].is_finite()
        });
        return Some(told);
    }
    let met = |place: Place| Some(at(place, Subject::Whole, check));
    match (track.not_covered, track.not_needed) {
        (Some((id, place)), _) => Some(check_told(bench, reason(Outcome::NotCovered(id)), met(place))),
        (None, Some((id, place))) => Some(check_told(bench, reason(Outcome::NotNeeded(id)), met(place))),
        // Loads were put on and no foot was pressed: a check that says nothing would look like one that was not asked.
        (None, None) if check == CheckId::FootBearing && !bench.runs.is_empty() => {
            Some(check_told(bench, reason(Outcome::NotNeeded(NOT_PRESSED)), None))
        }
        (None, None) => None,
    }
}

/// Where the working of a finding stands that depends on no load case.
fn of_no_case(state: usize, finding: &Finding) -> At {
    At {
        state,
        case: None,
        anchors: false,
        direction_rad: 0.0,
        subject: subject_told(finding.subject),
        stiffness: 1.0,
        check: Some(finding.check.id()),
    }
}

/// The finding of a check that decides: not covered before compared before not needed, the highest utilisation first.
pub fn worst(findings: &[Finding], check: CheckId) -> Option<Finding> {
    let mut worst: Option<(&Finding, (u8, f64))> = None;
    for finding in findings.iter().filter(|finding| finding.check == check) {
        let rank = match finding.outcome {
            Outcome::Compared { utilisation, .. } if utilisation.is_nan() => (2, f64::INFINITY),
            Outcome::Compared { utilisation, .. } => (2, utilisation),
            Outcome::NotCovered(_) => (1, 0.0),
            Outcome::NotNeeded(_) => (0, 0.0),
        };
        if worst.is_none_or(|(_, known)| rank > known) {
            worst = Some((finding, rank));
        }
    }
    worst.map(|(finding, _)| *finding)
}

fn check_told(bench: &Bench, finding: Finding, at: Option<At>) -> CheckTold {
    let (value, limit, utilisation, reason) = match finding.outcome {
        Outcome::Compared { value, limit, utilisation } => (finite(value), finite(limit), finite(utilisation), None),
        Outcome::NotNeeded(reason) | Outcome::NotCovered(reason) => (None, None, None, Some(reason.code())),
    };
    CheckTold {
        id: finding.check.id(),
        of: of(bench, at.as_ref(), finding.subject),
        at,
        value,
        limit,
        kind: finding.check.kind().code(),
        utilisation,
        span: None,
        status: finding.outcome.status(),
        role: finding.check.role(),
        reason,
    }
}

/// State and subject in one text: `full/group-1`.
pub fn of(bench: &Bench, at: Option<&At>, subject: Subject) -> String {
    let state = at.map_or(String::from("-"), |at| bench.loads[at.state].name.replace('/', "∕"));
    match subject_told(subject) {
        SubjectTold { kind: "whole", .. } => state,
        told => format!("{state}/{}-{}", told.kind, told.number),
    }
}

/// A subject in plain words, counted from 1.
pub fn subject_told(subject: Subject) -> SubjectTold {
    match subject {
        Subject::Whole => SubjectTold { kind: "whole", number: 0 },
        Subject::Foot(place) => SubjectTold { kind: "foot", number: place + 1 },
        Subject::Anchor(place) => SubjectTold { kind: "anchor", number: place + 1 },
        Subject::Group(number) => SubjectTold { kind: "group", number },
    }
}

/// A place of the sweep as it is told.
pub fn at(place: Place, subject: Subject, check: CheckId) -> At {
    At {
        state: place.state,
        case: Some(place.run.case),
        anchors: place.run.purpose == Purpose::Anchors,
        direction_rad: place.direction_rad,
        subject: subject_told(subject),
        stiffness: STIFFNESS_FACTORS[place.stiffness],
        check: Some(check.id()),
    }
}

fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}

fn states_told(bench: &Bench) -> Vec<StateTold> {
    let told = bench.loads.iter().map(|load| StateTold {
        name: load.name.clone(),
        mass_kg: load.mass_kg,
        aboard_kg: load.aboard_kg,
        centre_mm: load.centre_mm,
        inertia_kgmm2: load.inertia_kgmm2,
    });
    told.collect()
}

fn cases_told(bench: &Bench) -> Vec<CaseTold> {
    let told = bench.cases().iter().map(|case| CaseTold {
        name: case.name.code(),
        gravity: case.gravity,
        vertical: case.vertical,
        horizontal: case.horizontal,
        level: match case.level {
            Level::Component => "component",
            Level::Concrete => "concrete",
            Level::Anchorage => "anchorage",
            Level::Amplified => "amplified",
        },
        directions: match case.directions {
            Directions::Any => "any",
            Directions::HundredThirty => "hundred_thirty",
        },
    });
    told.collect()
}

/// What is not checked, and what else a reader should know of the input.
fn absent(bench: &Bench) -> Vec<u16> {
    let project = bench.project;
    let mut rows = Vec::new();
    let mut say = |is_absent: bool, row: crate::calc::StepId| {
        if is_absent {
            rows.push(row.code());
        }
    };
    say(project.site.is_none(), NO_SITE);
    say(project.slab.is_none(), NO_SLAB);
    say(project.anchorage.is_none() && !project.cabinet.anchors.is_empty(), NO_ANCHORAGE);
    let has_brackets = project.cabinet.anchors.iter().any(|anchor| anchor.bracket_mm.is_some());
    say(project.anchorage.is_some() && !project.cabinet.anchors.is_empty() && !has_brackets, PRYING_LEFT_OUT);
    say(project.cabinet.lifting_points.is_empty(), NO_LIFTING);
    say(!project.cabinet.lifting_points.is_empty() && project.lifting.is_none(), NO_RIGGING);
    // A rule that does not ask what is under the base cannot tell whether its bolts bend.
    let asks = |anchorage: &Anchorage| anchorage.rule.fields.iter().any(|field| field.key == "seat");
    let is_untold = project.anchorage.as_ref().is_some_and(|anchorage| !asks(anchorage));
    say(is_untold && has_stems(project) && !project.cabinet.anchors.is_empty(), STEMS_BEND);
    let is_idle = |anchorage: &Anchorage| {
        anchorage.values.number(anchorage.rule.overstrength).is_some() && !anchorage.rule.is_on_levels
    };
    say(project.anchorage.as_ref().is_some_and(is_idle) && bench.has_amplified_level(), OVERSTRENGTH_IDLE);
    let cabinet = &project.cabinet;
    let reaches_beyond = |content: &Content| {
        let [wide_mm, deep_mm, high_mm] = content.size_mm;
        let [x_mm, y_mm] = content.offset_mm;
        limit::more(content.bottom_mm + high_mm, cabinet.height_mm)
            || limit::more(2.0 * x_mm.abs() + wide_mm, cabinet.width_mm)
            || limit::more(2.0 * y_mm.abs() + deep_mm, cabinet.depth_mm)
    };
    say(project.contents.iter().any(reaches_beyond), STICKS_OUT);
    rows
}

/// Only the answer in one word and the id of the check that governs it, for searches that ask often: the same as
/// [`assess`] tells.
///
/// ```
/// use steadfoot::project::{assess, built_in, quick};
/// let project = built_in().unwrap();
/// assert_eq!(quick(&project).0, assess(&project).verdict);
/// ```
pub fn quick(project: &Project) -> (Verdict, Option<&'static str>) {
    let quick = quick_told(&mut Bench::new(project));
    (quick.verdict, quick.governing().map(|check| check.id))
}

/// The answer in one word with all checks, without sentences and rose.
pub fn quick_told(bench: &mut Bench) -> Quick {
    let tracks = sweep(bench, Ends::Worse);
    let checks = all_checks(bench, &tracks);
    Quick { verdict: verdict(&checks), governs: governing(&checks), checks }
}

/// What [`quick_told`] found.
pub struct Quick {
    /// The answer in one word.
    pub verdict: Verdict,
    /// Place of the check that governs.
    pub governs: Option<usize>,
    /// All checks.
    pub checks: Vec<CheckTold>,
}

impl Quick {
    /// The check that governs.
    pub fn governing(&self) -> Option<&CheckTold> {
        self.governs.map(|place| &self.checks[place])
    }
}
