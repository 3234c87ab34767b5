//! EN 1992-4:2018: fastenings in concrete, cast-in headed ones and post-installed ones with their assessment.
//!
//! Covered: steel, cone, pull-out, bond, splitting, blow-out; shear of the steel without and with a lever arm, pry-out,
//! edges; tension with shear; annex C for elastic design. Not covered: supplementary reinforcement, anchor channels,
//! rods that are compressed, capacity design and ductile fasteners under earthquakes, fire and fatigue.

mod anchorage;
mod blowout;
mod body;
mod bolt;
mod bond;
mod concrete;
mod cone;
mod coverage;
mod document;
mod edge;
mod factor;
mod facts;
mod fields;
mod group;
mod hole;
mod interaction;
mod lever;
mod pryout;
mod pulled;
mod pullout;
mod row;
mod seismic;
mod sheared;
mod spacing;
mod splitting;
mod steel;
mod stiffness;

use alloc::boxed::Box;

pub use document::EN_1992_4;
pub use fields::*;

use self::anchorage::Anchorage;
use self::facts::Facts;
use super::anchor::{Amplification, AnchorRule, AnchorRuleText};
use crate::calc::{StepTable, System};
use crate::input::field::Values;
use crate::load_case::Format;

/// EN 1992-4:2018.
pub static RULE: AnchorRule = AnchorRule {
    id: "en-1992-4-2018",
    fields: fields::FIELDS,
    anchor_fields: fields::ANCHOR_FIELDS,
    report_fields: fields::REPORT_FIELDS,
    format: Format::LimitStates,
    system: System::Si,
    faults: fields::faults,
    amplification,
    overstrength: fields::OVERSTRENGTH,
    is_on_levels: true,
    other_format: coverage::OTHER_FORMAT,
    prepare: |site| Box::new(Anchorage::new(Facts::new(site))),
    concrete_modulus_mpa: concrete::modulus,
};

/// Elastic design of annex C takes forces without behaviour factors: the amplified level of a demand.
fn amplification(values: &Values) -> Amplification {
    let is_static = values.choice(fields::CATEGORY) == Some(fields::STATIC);
    if is_static || values.choice(fields::DESIGN) != Some(fields::ELASTIC) {
        return Amplification::Plain;
    }
    Amplification::Amplified
}

/// Its texts.
pub static TEXT: AnchorRuleText = AnchorRuleText {
    id: "en-1992-4-2018",
    title: "EN 1992-4:2018",
    document: &EN_1992_4,
    fields: fields::FIELD_TEXTS,
    steps: STEPS,
    stops: "Fasteners of at least 6 mm, 40 mm deep, in concrete C12/15 to C90/105 (above 60 MPa it counts as 60), within the slab. Everything but cast-in headed bolts needs the values of its European Technical Assessment, which are asked for by their symbols; what is missing is named, and its check is not covered. Of annex C only elastic design (a2) is offered, not capacity design (a1) and ductile fasteners (b); in a gap or on thick mortar the steel in shear is then not covered. Not covered at all: supplementary reinforcement (7.2.1.9, 7.2.2.6), shear lugs, openings near fasteners, anchor channels, rods that are compressed over a free length, prying of the base, fire and fatigue. Most values are from memory or from texts that quote the standard, which is said beside each; where an assessment or a National Annex says otherwise its value is put in and printed.",
};

static STEPS: &[&StepTable] = &[
    &coverage::TEXTS,
    &factor::TEXTS,
    &bolt::TEXTS,
    &steel::TEXTS,
    &cone::TEXTS,
    &lever::TEXTS,
    &bond::TEXTS,
    &splitting::TEXTS,
    &pullout::TEXTS,
    &edge::TEXTS,
    &pryout::TEXTS,
    &blowout::TEXTS,
    &interaction::TEXTS,
    &seismic::TEXTS,
    &spacing::TEXTS,
    &concrete::TEXTS,
    &group::TEXTS,
    &hole::TEXTS,
    &stiffness::TEXTS,
];
