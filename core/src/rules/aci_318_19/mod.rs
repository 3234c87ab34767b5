//! ACI 318-19 chapter 17: anchors in concrete, in its inch-pound and its SI edition.
//!
//! Covered: cast-in headed bolts and welded headed studs. Not covered: hooked bolts, post-installed and adhesive anchors,
//! anchor reinforcement, shear lugs, anchors that bend in a gap under the base.

mod anchorage;
mod blowout;
mod body;
mod breakout;
mod chosen;
mod concrete;
mod coverage;
mod edge;
mod edition;
mod facts;
mod fields;
mod interaction;
pub mod kind;
mod pryout;
mod pulled;
mod pulled_group;
mod pullout;
mod reduction;
mod row;
mod sheared;
mod spacing;
mod steel;
mod stiffness;

use alloc::boxed::Box;

pub use edition::{ACI_318_19, ACI_318M_19};
pub use fields::*;

use self::anchorage::Anchorage;
use self::edition::{EDITION_SI, EDITION_US, Edition};
use self::facts::Facts;
use super::anchor::{Amplification, AnchorRule, AnchorRuleText, AnchorSite, PreparedAnchors};
use super::{anchor_set as set, bolts};
use crate::calc::{StepTable, System};
use crate::input::field::Values;
use crate::load_case::Format;

/// ACI 318M-19, in N, mm and MPa.
pub static ACI_318_19_SI: AnchorRule = AnchorRule {
    id: "aci-318-19-si",
    fields: fields::FIELDS,
    anchor_fields: fields::ANCHOR_FIELDS,
    report_fields: fields::REPORT_FIELDS,
    format: Format::Strength,
    system: System::Si,
    faults: chosen::faults,
    amplification,
    overstrength: fields::OVERSTRENGTH,
    other_format: coverage::OTHER_FORMAT,
    prepare: |site| prepare(&EDITION_SI, site),
    concrete_modulus_mpa: concrete::modulus_si,
};

/// ACI 318-19, in lbf, in. and psi.
pub static ACI_318_19_US: AnchorRule = AnchorRule {
    id: "aci-318-19",
    fields: fields::FIELDS,
    anchor_fields: fields::ANCHOR_FIELDS,
    report_fields: fields::REPORT_FIELDS,
    format: Format::Strength,
    system: System::Us,
    faults: chosen::faults,
    amplification,
    overstrength: fields::OVERSTRENGTH,
    other_format: coverage::OTHER_FORMAT,
    prepare: |site| prepare(&EDITION_US, site),
    concrete_modulus_mpa: concrete::modulus_us,
};

fn prepare(edition: &'static Edition, site: &AnchorSite) -> Box<dyn PreparedAnchors> {
    Box::new(Anchorage::new(Facts::new(edition, site)))
}

/// In seismic design categories C to F the force is amplified: options (d) of 17.10.5.3 and (c) of 17.10.6.3.
fn amplification(values: &Values) -> Amplification {
    if values.choice(fields::SEISMIC_CATEGORY) == Some(chosen::CATEGORY_C_TO_F) {
        Amplification::Amplified
    } else {
        Amplification::Plain
    }
}

static STEPS: &[&StepTable] = &[
    &edition::TEXTS,
    &concrete::TEXTS,
    &reduction::TEXTS,
    &steel::TEXTS,
    &breakout::TEXTS,
    &pullout::TEXTS,
    &blowout::TEXTS,
    &edge::TEXTS,
    &pryout::TEXTS,
    &interaction::TEXTS,
    &spacing::TEXTS,
    &coverage::TEXTS,
    &stiffness::TEXTS,
    &bolts::TEXTS,
];

const STOPS: &str = "Cast-in headed bolts and welded headed studs in concrete of 17 to 70 MPa (2500 to 10 000 psi; a higher strength counts as the limit), up to 100 mm (4 in.) thick, embedded within the slab. Hooked bolts, post-installed and adhesive anchors, anchor reinforcement, shear lugs, prying of the base and anchors that bend in a gap under the base are not covered. In seismic design categories C to F the force is amplified by overstrength; the other seismic options are not offered.";

/// Texts of the SI edition.
pub static ACI_318_19_SI_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-19-si",
    title: "ACI 318-19 chapter 17, SI edition (318M)",
    document: &ACI_318M_19,
    fields: fields::FIELD_TEXTS,
    steps: STEPS,
    stops: STOPS,
};

/// Texts of the inch-pound edition.
pub static ACI_318_19_US_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-19",
    title: "ACI 318-19 chapter 17, inch-pound edition",
    document: &ACI_318_19,
    fields: fields::FIELD_TEXTS,
    steps: STEPS,
    stops: STOPS,
};
