//! What a demand rule is, and the registry of them.

use alloc::vec::Vec;

use crate::calc::{Document, Sheet, StepId, StepTable};
use crate::input::field::{Field, FieldText, Values};
use crate::input::fault::Problem;
use crate::load_case::{Format, LoadCase};

/// A published edition that says how hard a component is pushed.
pub struct DemandRule {
    /// Its id in the file: `asce-7-22`.
    pub id: &'static str,
    /// The fields it asks for, beside `rule` itself.
    pub fields: &'static [Field],
    /// Format of its numbers for these inputs.
    pub format: fn(&Values) -> Format,
    /// Faults that a single field's limits cannot see: field place, problem, what would do.
    pub faults: fn(&Values, &mut Vec<(usize, Problem, &'static str)>),
    /// The demand for these inputs on a state of the given weight, told on the sheet in section `demand`.
    ///
    /// The reason where the rule does not cover the inputs.
    pub demand: fn(&Values, weight_n: f64, &mut Sheet) -> Result<Demand, StepId>,
    /// The field that scales the strength of shaking, or the zones in rising order.
    pub strength: Strength,
}

/// What a rule asks for.
#[derive(Clone, PartialEq, Debug)]
pub struct Demand {
    /// Horizontal force over weight at component level, before load factors: what the answer calls the push.
    pub push: f64,
    /// Vertical action over weight at component level, upwards or downwards.
    pub vertical: f64,
    /// All load cases.
    pub cases: Vec<LoadCase>,
}

/// How a rule's strength of shaking is scaled when one asks how far it can go.
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

/// All demand rules. Adding an edition is one line here and one in [`DEMAND_RULE_TEXTS`].
pub static DEMAND_RULES: &[&DemandRule] = &[];

/// Their texts, in the same order.
pub static DEMAND_RULE_TEXTS: &[&DemandRuleText] = &[];
