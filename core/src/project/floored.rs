//! The floor of a project: what is checked of it at rest and on the way in for every state, and in an earthquake.

use alloc::vec::Vec;

use super::Project;
use super::bench::Bench;
use super::footed::floor_site;
use crate::base_reactions::{BaseLoad, Push, Reactions};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System};
use crate::checks::feet::FootForce;
use crate::checks::floor::{FALLS, FloorSite, Standing, check_bearing, check_group, check_leg, check_rest, shaken};
use crate::geometry::{Point, Size};
use crate::load_case::Format;
use crate::rules::anchor::{Finding, Findings};

/// A cabinet on its floor with the format of its seismic rule.
pub struct Floored<'p> {
    site: FloorSite<'p>,
    format: Option<Format>,
}

impl<'p> Floored<'p> {
    /// The cabinet on its floor; none where no floor or no slab is given.
    pub fn new(project: &'p Project, format: Option<Format>) -> Option<Floored<'p>> {
        floor_site(project).map(|site| Floored { site, format })
    }

    /// The cabinet on its floor.
    pub fn site(&self) -> &FloorSite<'p> {
        &self.site
    }

    /// The stiffness of the slab under every leg, told once for those that are alike.
    pub fn tell_stiffness(&self, sheet: &mut Sheet) {
        let mut told: Vec<f64> = Vec::new();
        for leg in 0..self.site.legs.len() {
            let found = self.site.stiffness_n_per_mm(leg, &mut Sheet::quiet());
            if let Some(stiffness) = found.filter(|stiffness| !told.contains(stiffness)) {
                sheet.open(Part::Floor, Subject::Foot(leg as u16), None, System::Si);
                self.site.stiffness_n_per_mm(leg, sheet);
                told.push(stiffness);
            }
        }
    }

    /// What is checked in a load case, with the reactions to it.
    pub fn check_shaken(&self, reactions: &Reactions, weight_n: f64, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let Some(format) = self.format else { return };
        let legs_n: Vec<f64> = reactions.feet.iter().map(|foot| foot.force_n).collect();
        let pressed_half: Vec<Size> = reactions.feet.iter().map(|foot| foot.bearing_half).collect();
        let standing = Standing { weight_n, legs_n: &legs_n, pressed_half: &pressed_half };
        for (leg, reaction) in reactions.feet.iter().enumerate() {
            if reaction.force_n <= 0.0 {
                continue;
            }
            let subject = Subject::Foot(leg as u16);
            let mut found = check_leg(&self.site, leg, &standing, format, sheet);
            let force = FootForce {
                force_n: reaction.force_n,
                bearing_half: reaction.bearing_half,
                area_mm2: reaction.contact_fraction * 4.0 * self.site.legs[leg].half.area_mm2(),
                peak_mpa: reaction.peak_pressure_mpa,
            };
            found.extend(check_bearing(&self.site, leg, &force, format, sheet).into_iter().flatten());
            for (check, outcome) in found {
                findings.find(Finding { check, subject, outcome });
            }
        }
        if let Some(outcome) = check_group(&self.site, &standing, format, sheet) {
            findings.find(Finding { check: CheckId::SlabQuakeBending, subject: Subject::Whole, outcome });
        }
        if let Some(reason) = shaken(&self.site) {
            let outcome = Outcome::NotCovered(reason);
            findings.find(Finding { check: CheckId::RaisedShaken, subject: Subject::Whole, outcome });
        }
    }
}

/// Everything of the floor that does not depend on a load case, in one state.
pub(super) fn check_state(bench: &Bench, state: usize, sheet: &mut Sheet) -> Vec<Finding> {
    let mut findings = Vec::new();
    let Some(floor) = &bench.floor else { return findings };
    let load = &bench.loads[state];
    let weight_n = load.mass_kg * G_N_PER_KG;
    let push = Push {
        down_n: weight_n,
        at: Point::new(load.centre_mm[0], load.centre_mm[1]),
        height_mm: load.centre_mm[2],
        horizontal_n: 0.0,
        direction_rad: 0.0,
    };
    match bench.supports[0].settle(&BaseLoad::from(push)) {
        Ok(reactions) => {
            let legs_n: Vec<f64> = reactions.feet.iter().map(|foot| foot.force_n).collect();
            let pressed_half: Vec<Size> = reactions.feet.iter().map(|foot| foot.bearing_half).collect();
            let standing = Standing { weight_n, legs_n: &legs_n, pressed_half: &pressed_half };
            check_rest(&floor.site, &standing, sheet, &mut findings);
        }
        // What falls by itself presses on no floor in a way that could be checked.
        Err(_) => {
            let outcome = Outcome::NotCovered(FALLS);
            findings.push(Finding { check: CheckId::SlabRestPunching, subject: Subject::Whole, outcome });
        }
    }
    findings
}

/// The worst of every check that does not depend on a load case, over all states: not covered decides where nothing fails.
pub(super) fn at_rest(bench: &Bench) -> Vec<(usize, Finding)> {
    let mut worst: Vec<(usize, Finding)> = Vec::new();
    if bench.floor.is_none() {
        return worst;
    }
    let rank = |finding: &Finding| match finding.outcome {
        Outcome::Compared { utilisation, .. } if !(utilisation <= 1.0) => {
            (3, if utilisation.is_nan() { f64::INFINITY } else { utilisation })
        }
        Outcome::NotCovered(_) => (2, 0.0),
        Outcome::Compared { utilisation, .. } => (1, utilisation),
        Outcome::NotNeeded(_) => (0, 0.0),
    };
    for state in 0..bench.loads.len() {
        for finding in check_state(bench, state, &mut Sheet::quiet()) {
            match worst.iter_mut().find(|(_, known)| known.check == finding.check) {
                None => worst.push((state, finding)),
                Some(known) if rank(&finding) > rank(&known.1) => *known = (state, finding),
                Some(_) => {}
            }
        }
    }
    worst
}
