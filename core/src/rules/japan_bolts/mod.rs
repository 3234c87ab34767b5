//! Japanese practice for building equipment (Building Centre of Japan): bolts by short-term allowable stresses.
//!
//! Covers the practice's own pull and shear of the bolts of a box on the floor or hung from above, and the stresses in
//! the bolts; concrete by allowable forces that the user gives. Does not cover: the guideline's tables of those forces.

mod bolts;
mod facts;
mod fields;
mod overturning;
mod steps;
mod stress;

use alloc::boxed::Box;
use alloc::vec::Vec;

use self::bolts::Bolts;
use super::anchor::{Amplification, AnchorRule, AnchorRuleText};
use super::documents::JAPAN_EQUIPMENT;
use crate::calc::{StepTable, System, number};
use crate::input::fault::Problem;
use crate::input::field::Values;
use crate::load_case::Format;

/// The rule.
pub static RULE: AnchorRule = AnchorRule {
    id: "japan-bolts",
    fields: fields::FIELDS,
    anchor_fields: fields::ANCHOR_FIELDS,
    report_fields: fields::REPORT_FIELDS,
    format: Format::AllowableStress,
    system: System::Si,
    faults,
    amplification: |_| Amplification::Plain,
    // There is no such factor, so there is no such field.
    overstrength: usize::MAX,
    is_on_levels: false,
    other_format: steps::OTHER_FORMAT,
    prepare: |site| Box::new(Bolts::new(site)),
    concrete_modulus_mpa: |strength_mpa| ROOT_MODULUS * number::sqrt(strength_mpa),
};

/// Its texts.
pub static TEXT: AnchorRuleText = AnchorRuleText {
    id: "japan-bolts",
    title: "Japan: practice for building equipment (Building Centre of Japan), bolts",
    document: &JAPAN_EQUIPMENT,
    fields: fields::FIELD_TEXTS,
    steps: STEPS,
    stops: "The guideline itself was not read: its formulas for pull and shear and the allowable stresses come from makers' strength sheets, \
        the rule for stresses together is from memory. Its tables of the allowable pull of bolts in concrete were not at hand: give the \
        short-term pull of one bolt, the shear of one bolt where the concrete decides, and the least spacing and edge distance that they \
        were made for; what is missing is named, and its check is not covered. Both the practice's own statics and those of the base \
        reactions are checked, and the worse counts. The practice's pull counts only the row of bolts opposite to the push and the row \
        about which it turns; it has no span where all bolts stand in one row. A hung box is told by its formulas, but the base reactions \
        are those of a cabinet that stands, so its anchorage is not covered as a whole.",
};

static STEPS: &[&StepTable] = &[&steps::TEXTS];

/// E_c = 4700 sqrt(f_c), only for the stiffness of feet; another modulus can be given as a stiffness there.
const ROOT_MODULUS: f64 = 4700.0;

fn faults(values: &Values, found: &mut Vec<(usize, Problem, &'static str)>) {
    let mut need = |field: usize, why: &'static str| {
        if values.number(field).is_none() {
            found.push((field, Problem::Missing, why));
        }
    };
    if facts::is_given(values) {
        need(fields::DIAMETER, "a bolt whose size is given needs its diameter");
        need(fields::STRESS_AREA, "a bolt whose size is given needs its stress area");
    }
    if values.choice(fields::STEEL) == Some(facts::STEEL_GIVEN) {
        need(fields::F_T, "a steel that is given needs its allowable tension");
        need(fields::F_S, "a steel that is given needs its allowable shear");
    }
    match (values.choice(fields::MOUNTING) == Some(facts::HUNG), values.number(fields::FIXING)) {
        (true, None) => found.push((fields::FIXING, Problem::Missing, "a height, because the box is hung")),
        (false, Some(_)) => found.push((fields::FIXING, Problem::Excludes, "only with a hung box")),
        _ => {}
    }
}
