//! What a demand rule is, and the registry of them.

use alloc::vec::Vec;

use crate::calc::{Document, Sheet, StepId, StepTable};
use crate::input::fault::Problem;
use crate::input::field::{Field, FieldText, Values};
use crate::load_case::{Directions, Format, LoadCase};
use crate::rules::ground_spectrum::GroundSpectrum;

/// A published edition that says how hard a component is pushed.
pub struct DemandRule {
    /// Its id in the file: `asce-7-22`.
    pub id: &'static str,
    /// The fields it asks for, beside `rule` itself.
    pub fields: &'static [Field],
    /// Format of its numbers for these inputs.
    pub format: fn(&Values) -> Format,
    /// Faults that a single field's limits cannot see. Values of faulty fields may be unknown here.
    pub faults: fn(&Values, &mut Faults),
    /// The demand for these inputs on a state of the given weight, told on the sheet in section `demand`.
    ///
    /// The reason where the rule does not cover the inputs.
    pub demand: fn(&Values, weight_n: f64, &mut Sheet) -> Result<Demand, StepId>,
    /// What scales the strength of shaking for these inputs.
    pub strength: fn(&Values) -> Strength,
    /// The spectrum of the ground that can be drawn from what it asks for; none where it gives forces only.
    pub spectrum: Option<&'static GroundSpectrum>,
}

/// Faults of a rule's fields together: place of the field, problem, what would do.
pub type Faults = Vec<(usize, Problem, &'static str)>;

/// What a rule asks for.
#[derive(Clone, PartialEq, Debug)]
pub struct Demand {
    /// Horizontal force over weight at component level, before load factors: what the answer calls the push.
    pub push: f64,
    /// The step of the sheet that decided the push: the force of the clause where it lies between its limits, the limit
    /// where one governs, the push itself where the clause has none. [`governing`] finds it.
    pub governs: StepId,
    /// Vertical action over weight at component level, upwards or downwards.
    pub vertical: f64,
    /// All load cases.
    pub cases: Vec<LoadCase>,
    /// Why there is no case of [`Level::Amplified`](crate::load_case::Level::Amplified); none where there is one.
    pub not_amplified: Option<StepId>,
    /// Why this demand alone puts the building in seismic design category C or higher, so that anchors may not be
    /// designed as in A or B; none where the category may be lower, or cannot be known from it.
    pub category_c: Option<StepId>,
    /// What it asks of the anchors.
    pub anchors: AnchorsAsked,
}

/// What a demand was made for, so that other anchors do not answer to it. Nothing, by default.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct AnchorsAsked {
    /// How many diameters deep every anchor must be for this demand to hold, and what is wrong where one is not; none
    /// where it does not depend on that.
    pub depth: Option<(f64, StepId)>,
    /// What is wrong where an anchor is nonductile, because this demand was made for ductile ones; none where it does not
    /// depend on that.
    pub not_ductile: Option<StepId>,
    /// What is wrong where an anchor is an expansion anchor, because this demand was made for others; none where it does
    /// not depend on that.
    pub not_expansion: Option<StepId>,
    /// What is wrong where a cast-in anchor is of brittle steel, because this demand was made for anchors whose ductile
    /// steel governs, or that are prequalified for earthquakes, which only drilled ones are; none where it does not
    /// depend on that.
    pub not_qualified: Option<StepId>,
}

/// How a rule's strength of shaking is scaled when one asks how far it can go.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Strength {
    /// A field whose number is scaled.
    Field(usize),
    /// A choice whose words are zones in rising order.
    Zones(usize),
}

/// The texts of a rule, only for native code.
pub struct DemandRuleText {
    /// Id of the rule.
    pub id: &'static str,
    /// Its title, as the guide's table of rules prints it.
    pub title: &'static str,
    /// The document that it is.
    pub document: &'static Document,
    /// Texts of its fields.
    pub fields: &'static [FieldText],
    /// Texts of its steps.
    pub steps: &'static StepTable,
    /// Where it stops, one paragraph.
    pub stops: &'static str,
}

macro_rules! demand_rules {
    ($($module:ident $rule:ident $text:ident;)*) => {
        /// All demand rules.
        pub static DEMAND_RULES: &[&DemandRule] = &[$(&super::$module::$rule),*];

        /// Their texts, in the same order; only for native code.
        pub static DEMAND_RULE_TEXTS: &[&DemandRuleText] = &[$(&super::$module::$text),*];
    };
}

// The registry: an edition is a line, in the order in which the page offers them.
demand_rules! {
    ubc_1994 RULE TEXT;
    ubc_1997 RULE TEXT;
    asce_7_05 RULE TEXT;
    asce_7_10 RULE TEXT;
    asce_7_16 RULE TEXT;
    asce_7_22 RULE TEXT;
    ti_809_04 RULE TEXT;
    japan_equipment RULE TEXT;
    gb_50011 RULE TEXT;
    taiwan RULE TEXT;
    nscp_2015 RULE TEXT;
    sni_1726 RULE TEXT;
    peru_e_030 RULE TEXT;
    nsr_10 RULE TEXT;
    en_1998_1 RULE TEXT;
    ntc_2018 RULE TEXT;
    p100_1 RULE TEXT;
    is_1893 RULE TEXT;
    nzs_1170_5 RULE TEXT;
    as_1170_4 RULE TEXT;
    nbc RULE_2015 TEXT_2015;
    nbc RULE_2020 TEXT_2020;
    direct RULE TEXT;
}

/// The rule of an id in the file.
///
/// ```
/// use steadfoot::rules::demand::demand_rule;
/// assert!(demand_rule("asce-7-16").is_some() && demand_rule("asce-7").is_none());
/// ```
pub fn demand_rule(id: &str) -> Option<&'static DemandRule> {
    DEMAND_RULES.iter().copied().find(|rule| rule.id == id)
}

/// Which of these steps decided a force: the first whose value it has. The force before its limits comes first, so that a
/// limit that changes nothing is not said to govern.
///
/// Panics where none has the value: then the force is not one of them, which is a mistake in the rule.
pub(super) fn governing(force: f64, steps: &[(StepId, f64)]) -> StepId {
    match steps.iter().find(|(_, value)| *value == force) {
        Some((step, _)) => *step,
        None => panic!("the force is none of the steps that may decide it"),
    }
}

/// The directions of a field with the words `any` and `100-30`.
pub(super) fn directions(values: &Values, field: usize) -> Directions {
    if values.choice(field) == Some(1) { Directions::HundredThirty } else { Directions::Any }
}
