//! All bolts under simultaneous forces, and once more by the practice's own statics.

use alloc::vec;
use alloc::vec::Vec;

use super::facts::{Bolt, Facts};
use super::overturning::{Axis, Span};
use super::steps as s;
use super::stress::{MODES, Pulled, Statics, is_worse, rest};
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Subject, System, limit, number};
use crate::geometry::Polygon;
use crate::rules::anchor::{Amplification, AnchorForce, AnchorSite, Finding, Findings, PreparedAnchors, WholeLoad};

/// The bolts, prepared.
pub struct Bolts {
    facts: Facts,
}

impl Bolts {
    /// The bolts of a site.
    pub fn new(site: &AnchorSite) -> Bolts {
        Bolts { facts: Facts::new(site) }
    }

    fn own(&self) -> &[Bolt] {
        &self.facts.bolts[..self.facts.own]
    }

    /// The two bolts that stand closest, against the spacing that the allowable forces were made for.
    fn spacing(&self, sheet: &mut Sheet) -> (Subject, Outcome) {
        let bolts = &self.facts.bolts;
        let mut closest: Option<(usize, usize, f64)> = None;
        for (place, bolt) in self.own().iter().enumerate() {
            for (beside, other) in bolts.iter().enumerate().skip(place + 1) {
                let s_mm = bolt.at.distance_mm(other.at);
                if closest.is_none_or(|known| s_mm < known.2) {
                    closest = Some((place, beside, s_mm));
                }
            }
        }
        let Some((place, beside, s_mm)) = closest else { return (Subject::Whole, Outcome::NotNeeded(s::ONE_BOLT)) };
        let Some(least) = self.facts.least_spacing_mm else {
            return (Subject::Whole, Outcome::NotCovered(s::NO_S_MIN));
        };
        let subject = Subject::Anchor(place as u16);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorSpacing), System::Si);
        sheet.step(s::S_MIN, least);
        let [from, to] = [place, beside].map(|place| bolts[place].at);
        sheet.detailed(s::S, s_mm, || Detail::Shape(vec![[from.x_mm, from.y_mm], [to.x_mm, to.y_mm]]));
        (subject, least_length(s_mm, least, sheet.step(s::U_S, least / s_mm)))
    }

    /// The bolt that stands closest to an edge, against the distance that the allowable forces were made for.
    fn edge(&self, sheet: &mut Sheet) -> (Subject, Outcome) {
        let mut closest: Option<(usize, f64)> = None;
        for (place, bolt) in self.own().iter().enumerate() {
            let c_mm = self.edge_mm(bolt);
            if c_mm.is_finite() && closest.is_none_or(|known| c_mm < known.1) {
                closest = Some((place, c_mm));
            }
        }
        let Some((place, c_mm)) = closest else { return (Subject::Whole, Outcome::NotNeeded(s::NO_EDGE)) };
        let Some(least) = self.facts.least_edge_mm else {
            return (Subject::Whole, Outcome::NotCovered(s::NO_C_MIN));
        };
        let subject = Subject::Anchor(place as u16);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorEdge), System::Si);
        sheet.step(s::C_MIN, least);
        let at = self.facts.bolts[place].at;
        sheet.detailed(s::C, c_mm, || Detail::Shape(vec![[at.x_mm, at.y_mm]]));
        (subject, least_length(c_mm, least, sheet.step(s::U_C, least / c_mm)))
    }

    /// The slab against the thickness that the allowable forces were made for.
    fn thickness(&self, sheet: &mut Sheet) -> (Subject, Outcome) {
        let Some(least) = self.facts.least_thickness_mm else {
            return (Subject::Whole, Outcome::NotCovered(s::NO_H_MIN));
        };
        sheet.open(Part::Anchors, Subject::Whole, Some(CheckId::AnchorThickness), System::Si);
        sheet.step(s::H_MIN, least);
        let thickness = sheet.step(s::H, self.facts.thickness_mm);
        (Subject::Whole, least_length(thickness, least, sheet.step(s::U_H, least / thickness)))
    }

    fn edge_mm(&self, bolt: &Bolt) -> f64 {
        let outline = &self.facts.outline;
        let [x, y] = [bolt.at.x_mm, bolt.at.y_mm];
        [x - outline.left_mm, outline.right_mm - x, y - outline.front_mm, outline.rear_mm - y]
            .into_iter()
            .fold(f64::INFINITY, f64::min)
    }

    /// What no bolt is asked for by itself.
    fn rest(&self, is_pulled: bool, findings: &mut dyn Findings) {
        let mut find = |check, outcome| findings.find(Finding { check, subject: Subject::Whole, outcome });
        let pull = self.own().iter().map(|bolt| bolt.pull_n).fold(Some(0.0), Option::and);
        for check in [
            CheckId::AnchorTensionBreakout,
            CheckId::AnchorTensionTributary,
            CheckId::AnchorTensionBond,
            CheckId::AnchorTensionSplitting,
            CheckId::AnchorTensionBlowout,
        ] {
            find(check, rest(is_pulled, pull));
        }
        let has_shear = self.own().iter().all(|bolt| bolt.concrete_shear_n.is_some());
        let pryout = if has_shear { Outcome::NotNeeded(s::IN_Q_A) } else { Outcome::NotCovered(s::NO_Q_A) };
        find(CheckId::AnchorShearPryout, pryout);
        let together = match (is_pulled, pull, has_shear) {
            (false, _, _) => Outcome::NotNeeded(s::NO_TENSION),
            (true, None, _) => Outcome::NotCovered(s::NO_T_A),
            (true, _, false) => Outcome::NotCovered(s::NO_Q_A),
            (true, _, true) => Outcome::NotNeeded(s::EACH_ALONE),
        };
        find(CheckId::AnchorInteraction, together);
    }
}

impl PreparedAnchors for Bolts {
    fn place(&self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let mut find = |check, subject, outcome| findings.find(Finding { check, subject, outcome });
        if self.facts.hung_at_mm.is_some() {
            find(CheckId::Anchorage, Subject::Whole, Outcome::NotCovered(s::HUNG));
        }
        if self.facts.has_openings {
            find(CheckId::Anchorage, Subject::Whole, Outcome::NotCovered(s::OPENINGS));
        }
        if self.own().iter().any(|bolt| limit::at_least(bolt.embedment_mm, self.facts.thickness_mm)) {
            find(CheckId::Anchorage, Subject::Whole, Outcome::NotCovered(s::THROUGH));
        }
        let (subject, outcome) = self.spacing(sheet);
        find(CheckId::AnchorSpacing, subject, outcome);
        let (subject, outcome) = self.edge(sheet);
        find(CheckId::AnchorEdge, subject, outcome);
        let (subject, outcome) = self.thickness(sheet);
        find(CheckId::AnchorThickness, subject, outcome);
    }

    fn check(&mut self, forces: &[AnchorForce], _level: Amplification, sheet: &mut Sheet, findings: &mut dyn Findings) {
        assert_eq!(forces.len(), self.facts.bolts.len(), "there must be one force for each anchor");
        if self.facts.hung_at_mm.is_some() {
            // The forces are those of a cabinet that stands.
            return;
        }
        let forces: &[AnchorForce] = &forces[..self.facts.own];
        let pulled = |force: &AnchorForce| Pulled {
            pull_n: force.tension_n,
            shear_n: number::hypot(force.shear_x_n, force.shear_y_n),
            statics: Statics::BaseReactions,
        };
        for (mode, check) in MODES {
            let mut worst: Option<(usize, Outcome)> = None;
            for (place, (bolt, force)) in self.own().iter().zip(forces).enumerate() {
                let outcome = pulled(force).of(mode, bolt, Subject::Anchor(place as u16), &mut Sheet::quiet());
                if worst.as_ref().is_none_or(|(_, known)| is_worse(&outcome, known)) {
                    worst = Some((place, outcome));
                }
            }
            let Some((place, outcome)) = worst else { continue };
            let subject = match outcome {
                Outcome::Compared { .. } => Subject::Anchor(place as u16),
                _ => Subject::Whole,
            };
            if sheet.is_told() {
                pulled(&forces[place]).of(mode, &self.own()[place], subject, sheet);
            }
            findings.find(Finding { check, subject, outcome });
        }
        self.rest(forces.iter().any(|force| force.tension_n > 0.0), findings);
    }

    fn check_whole(&self, load: &WholeLoad, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let is_hung = self.facts.hung_at_mm.is_some();
        let mut worst: Option<(Span, Pulled)> = None;
        for axis in Axis::of(load.direction_rad) {
            let Some(span) = Span::new(&self.facts, load, axis) else {
                let outcome = Outcome::NotCovered(s::ONE_ROW);
                findings.find(Finding { check: CheckId::AnchorTensionSteel, subject: Subject::Whole, outcome });
                continue;
            };
            let pulled = span.pulled(load, is_hung, CheckId::AnchorTensionSteel, &mut Sheet::quiet());
            if worst.as_ref().is_none_or(|(_, known)| pulled.pull_n > known.pull_n) {
                worst = Some((span, pulled));
            }
        }
        let Some((span, pulled)) = worst else { return };
        for (mode, check) in MODES {
            let outcomes = self.own().iter().map(|bolt| pulled.of(mode, bolt, Subject::Whole, &mut Sheet::quiet()));
            let mut weakest: Option<(usize, Outcome)> = None;
            for (place, outcome) in outcomes.enumerate() {
                if weakest.as_ref().is_none_or(|(_, known)| is_worse(&outcome, known)) {
                    weakest = Some((place, outcome));
                }
            }
            let Some((place, outcome)) = weakest else { continue };
            if sheet.is_told() && matches!(outcome, Outcome::Compared { .. }) {
                span.pulled(load, is_hung, check, sheet);
                pulled.of(mode, &self.own()[place], Subject::Whole, sheet);
            }
            findings.find(Finding { check, subject: Subject::Whole, outcome });
        }
        if is_hung {
            self.rest(pulled.pull_n > 0.0, findings);
        }
    }

    fn stiffness_n_per_mm(&self, anchor: usize, sheet: &mut Sheet) -> f64 {
        let bolt = &self.facts.bolts[anchor];
        let e_s = sheet.step(s::E_S, E_S_MPA);
        let area = sheet.step(s::A, bolt.area_mm2);
        let h_ef = sheet.step(s::H_EF, bolt.embedment_mm);
        sheet.step(s::K_A, e_s * area / h_ef)
    }

    fn least_depth_diameters(&self) -> f64 {
        self.facts.bolts.iter().fold(f64::INFINITY, |least, bolt| least.min(bolt.embedment_mm / bolt.diameter_mm))
    }

    fn breakout_outlines(&self, _pulled: &[usize]) -> Vec<Polygon> {
        Vec::new()
    }
}

/// Modulus of elasticity of steel.
const E_S_MPA: f64 = 200_000.0;

/// A length against its least value; both equal on paper may differ by a rounding.
fn least_length(length_mm: f64, least_mm: f64, utilisation: f64) -> Outcome {
    let utilisation = if limit::at_least(length_mm, least_mm) { utilisation.min(1.0) } else { utilisation };
    Outcome::Compared { value: length_mm, limit: least_mm, utilisation }
}
