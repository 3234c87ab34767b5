//! The anchors of a project as their rule sees them.

use alloc::boxed::Box;
use alloc::vec::Vec;

use super::Project;
use crate::cabinet::Anchor;
use crate::calc::{CheckId, Outcome, Status, StepId, Subject, limit};
use crate::geometry::Point;
use crate::load_case::Level;
use crate::report::missing::{NOTHING_HOLDS, RULE_MISSING, SLAB_MISSING, STEMS_BEND};
use crate::rules::anchor::{
    Amplification, AnchorPlace, AnchorSite, AnchorSlab, Cracking, Finding, Findings, PreparedAnchors,
};
use crate::rules::demand::Demand;

/// How the anchors' demand is amplified: by the demand rule's own level, by the anchorage's factor, or not at all.
pub(super) fn amplification(project: &Project, demand: Option<&Demand>) -> (Amplification, f64) {
    let Some(anchorage) = &project.anchorage else { return (Amplification::Plain, 1.0) };
    let asked = (anchorage.rule.amplification)(&anchorage.values);
    if matches!(asked, Amplification::Plain | Amplification::Limited) {
        return (asked, 1.0);
    }
    let has_level = demand.is_some_and(|demand| demand.cases.iter().any(|case| case.level == Level::Amplified));
    match anchorage.values.number(anchorage.rule.overstrength) {
        Some(factor) if !has_level || anchorage.rule.is_on_levels => (asked, factor),
        None if !has_level => (Amplification::Plain, 1.0),
        _ => (asked, 1.0),
    }
}

/// Why this demand was made for other anchors: in a category that asks for amplification, or deeper or
/// more ductile ones.
pub(super) fn other_anchors(
    project: &Project,
    demand: Option<&Result<Demand, StepId>>,
    anchors: &dyn PreparedAnchors,
) -> Option<StepId> {
    let anchorage = project.anchorage.as_ref()?;
    let demand = demand?.as_ref().ok()?;
    let is_plain = (anchorage.rule.amplification)(&anchorage.values) == Amplification::Plain;
    let is_shallow = |&(diameters, _): &(f64, StepId)| limit::less(anchors.least_depth_diameters(), diameters);
    let depth = demand.anchors.depth.filter(is_shallow).map(|(_, reason)| reason);
    let ductility = demand.anchors.not_ductile.filter(|_| anchors.has_nonductile());
    let expansion = demand.anchors.not_expansion.filter(|_| anchors.has_expansion());
    let qualified = demand.anchors.not_qualified.filter(|_| anchors.has_brittle_cast_in());
    demand.category_c.filter(|_| is_plain).or(depth).or(ductility).or(expansion).or(qualified)
}

/// Whether an anchor may bend: feet on stems lift the base off the floor, and nothing says how it reaches the concrete.
pub(super) fn may_bend(project: &Project) -> bool {
    let Some(anchorage) = &project.anchorage else { return false };
    let Some(seat) = anchorage.rule.fields.iter().position(|field| field.key == "seat") else { return false };
    let is_open =
        |anchor: &Anchor| anchor.bracket_mm.is_none() && anchor.values(&anchorage.values).choice(seat).is_none();
    has_stems(project) && project.cabinet.anchors.iter().any(is_open)
}

/// Whether a foot stands on a stem.
pub(super) fn has_stems(project: &Project) -> bool {
    project.cabinet.feet.iter().any(|foot| foot.stem.is_some())
}

/// Takes what is found of anchors that may bend: steel that holds otherwise is not covered, what fails fails.
pub(super) struct MayBend<'f>(pub &'f mut dyn Findings);

impl Findings for MayBend<'_> {
    fn find(&mut self, mut finding: Finding) {
        let is_steel = matches!(finding.check, CheckId::AnchorTensionSteel | CheckId::AnchorShearSteel);
        if is_steel && finding.outcome.status() == Status::Holds {
            finding.outcome = Outcome::NotCovered(STEMS_BEND);
        }
        self.0.find(finding);
    }
}

/// Takes what is found of anchors whose shear cannot be shared out: it is not covered, their pulls are.
pub(super) struct Unshared<'f> {
    /// Where it goes.
    pub findings: &'f mut dyn Findings,
    /// Why it cannot.
    pub reason: StepId,
}

impl Findings for Unshared<'_> {
    fn find(&mut self, mut finding: Finding) {
        let with_shear = [
            CheckId::AnchorShearSteel,
            CheckId::AnchorShearBreakout,
            CheckId::AnchorShearPryout,
            CheckId::AnchorInteractionSteel,
            CheckId::AnchorInteraction,
        ];
        if with_shear.contains(&finding.check) {
            finding = Finding { subject: Subject::Whole, outcome: Outcome::NotCovered(self.reason), ..finding };
        }
        self.findings.find(finding);
    }
}

/// The anchors in their concrete, or why they are not checked.
pub(super) fn prepared_anchors(project: &Project) -> Result<Box<dyn PreparedAnchors>, StepId> {
    if project.cabinet.anchors.is_empty() {
        return Err(NOTHING_HOLDS);
    }
    let slab = project.slab.as_ref().ok_or(SLAB_MISSING)?;
    let anchorage = project.anchorage.as_ref().ok_or(RULE_MISSING)?;
    let mut anchors: Vec<AnchorPlace> = project
        .cabinet
        .anchors
        .iter()
        .map(|anchor| AnchorPlace { at: anchor.at, values: anchor.values(&anchorage.values) })
        .collect();
    let own = anchors.len();
    for neighbour in &project.neighbours {
        for place in 0..own {
            let AnchorPlace { at, values } = anchors[place].clone();
            let at = Point::new(at.x_mm + neighbour.at.x_mm, at.y_mm + neighbour.at.y_mm);
            anchors.push(AnchorPlace { at, values });
        }
    }
    let slab = AnchorSlab {
        strength_mpa: slab.strength_mpa,
        thickness_mm: slab.thickness_mm,
        cracking: if slab.is_cracked { Cracking::Cracked } else { Cracking::Uncracked },
        outline: slab.outline,
        boundary: slab.boundary,
        openings: slab.openings.clone(),
    };
    Ok((anchorage.rule.prepare)(&AnchorSite { values: &anchorage.values, anchors: &anchors, own, slab: &slab }))
}
