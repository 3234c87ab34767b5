//! The rows of a zone statement: every rule at every zone, or at a few strengths of shaking, and what each comes to.

use alloc::vec::Vec;

use crate::explore::{Found, Limit, LimitOf, Standing, load_limit};
use crate::input::field::{FieldShape, Value, Values};
use crate::project::{Project, Site};
use crate::rules::demand::{DEMAND_RULES, DemandRule, Strength};
use crate::study::side_by_side::{Filled, fill};

/// One rule at one strength of shaking.
pub struct Row {
    /// The rule with all its inputs, those of this row put in.
    pub filled: Filled,
    /// The field whose zone or number this row is about.
    pub field: usize,
    /// Whether it is what the project itself says.
    pub is_present: bool,
    /// What the present load comes to, bolted; none where it was not asked yet.
    pub present: Option<Found>,
    /// The largest load, bolted and free; none where it was not searched yet.
    pub limits: Option<[Option<Limit>; 2]>,
}

/// Short-period accelerations that are met in practice, as multiples of g.
const SPECTRAL: [f64; 4] = [0.25, 0.5, 1.0, 1.5];
/// Accelerations of the ground and factors like them.
const GROUND: [f64; 4] = [0.1, 0.2, 0.3, 0.4];
/// Fields that are short-period accelerations; all other strengths are accelerations of the ground.
const SPECTRAL_FIELDS: [&str; 5] = ["s_ds", "s_s", "s_a_02", "s_02", "horizontal_coefficient"];

/// The field in which a rule asks which kind of anchors there is.
const ANCHOR_TYPE: &str = "anchor_type";

/// All rows of a project, and the rules that cannot be asked because inputs are missing.
pub fn rows(project: &Project) -> (Vec<Row>, Vec<Filled>) {
    let (mut rows, mut left_out) = (Vec::new(), Vec::new());
    for rule in DEMAND_RULES {
        let mut filled = fill(rule, project.site.as_ref());
        if !filled.needed.is_empty() {
            left_out.push(filled);
            continue;
        }
        suit_anchors(project, &mut filled);
        let is_own = project.site.as_ref().is_some_and(|site| core::ptr::eq(site.rule, *rule));
        let (Strength::Field(field) | Strength::Zones(field)) = (rule.strength)(&filled.values);
        for value in values(rule, &filled.values, is_own) {
            let mut values = filled.values.clone();
            let is_present = is_own && values.0[field] == value;
            values.0[field] = value;
            let own = filled.own.clone();
            let filled = Filled { rule, values, own, needed: Vec::new() };
            rows.push(Row { filled, field, is_present, present: None, limits: None });
        }
    }
    (rows, left_out)
}

/// A rule that asks which kind of anchors there is, and does not reach with the kind of its sample, is asked with the first
/// that it reaches with.
fn suit_anchors(project: &Project, filled: &mut Filled) {
    let rule = filled.rule;
    let Some(field) = rule.fields.iter().position(|field| field.key == ANCHOR_TYPE) else { return };
    let FieldShape::Choice(words) = rule.fields[field].shape else { return };
    if filled.own.contains(&field) {
        return;
    }
    let is_reached = |values: &Values| {
        let site = Some(Site { rule, values: values.clone() });
        Found::assess(&Project { site, ..project.clone() }, None).standing != Standing::NotCovered
    };
    let first = filled.values.0[field].clone();
    let others = (0..words.len()).map(Value::Choice).filter(|other| *other != first);
    let all: Vec<Value> = core::iter::once(first.clone()).chain(others).collect();
    for word in all {
        filled.values.0[field] = word;
        if is_reached(&filled.values) {
            return;
        }
    }
    filled.values.0[field] = first;
}

/// Every zone, or the usual strengths, the project's own among them.
fn values(rule: &DemandRule, values: &Values, is_own: bool) -> Vec<Value> {
    match ((rule.strength)(values), is_own) {
        (Strength::Zones(field), _) => {
            let FieldShape::Choice(words) = rule.fields[field].shape else { return Vec::new() };
            (0..words.len()).map(Value::Choice).collect()
        }
        (Strength::Field(field), is_own) => {
            let FieldShape::Number { min, max, .. } = rule.fields[field].shape else { return Vec::new() };
            let usual = if SPECTRAL_FIELDS.contains(&rule.fields[field].key) { SPECTRAL } else { GROUND };
            let mut numbers: Vec<f64> = usual.into_iter().filter(|number| (min..=max).contains(number)).collect();
            if let Some(now) = values.number(field).filter(|now| is_own && !numbers.contains(now)) {
                numbers.insert(numbers.partition_point(|&number| number < now), now);
            }
            numbers.into_iter().map(Value::Number).collect()
        }
    }
}

impl Row {
    /// The project shaken by this row.
    pub fn project(&self, project: &Project) -> Project {
        let site = Some(Site { rule: self.filled.rule, values: self.filled.values.clone() });
        Project { site, ..project.clone() }
    }

    /// Asks what the present load comes to.
    pub fn ask_present(&mut self, project: &Project) {
        let mut faults = Vec::new();
        (self.filled.rule.faults)(&self.filled.values, &mut faults);
        let is_sound = faults.is_empty();
        self.present = Some(if is_sound { Found::assess(&self.project(project), None) } else { Found::NOT_BUILT });
    }

    /// Searches the largest load. Where the formats of demand and anchors differ, no load of a bolted cabinet is ever
    /// covered, so none is tried.
    pub fn search_limits(&mut self, project: &Project) {
        if self.present.is_some_and(|found| found.standing == Standing::NotBuilt) {
            self.limits = Some([None, None]);
            return;
        }
        let shaken = self.project(project);
        let bolted = if self.is_other_format(project) { None } else { load_limit(&shaken, LimitOf::Bolted) };
        self.limits = Some([bolted, load_limit(&shaken, LimitOf::Free)]);
    }

    /// Whether the rule speaks another format than the anchors' own.
    pub fn is_other_format(&self, project: &Project) -> bool {
        let format = (self.filled.rule.format)(&self.filled.values);
        project.anchorage.as_ref().is_some_and(|anchorage| anchorage.rule.format != format)
    }
}
