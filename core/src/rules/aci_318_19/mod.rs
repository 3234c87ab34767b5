//! ACI 318-19 chapter 17: anchors in concrete, in its inch-pound and its SI edition, and in those of 2014 and 2011.
//!
//! Covered: cast-in headed and hooked bolts, welded headed studs, expansion, undercut, screw and adhesive anchors, the last
//! four by the values of their evaluation report; anchor reinforcement; rods that bend under welded washers, by AISC Design
//! Guide 1. Not covered: shear lugs, anchors that bend in a gap under the base.

mod anchor;
mod anchorage;
mod attachment;
mod bars;
mod blowout;
mod body;
mod bond;
mod breakout;
mod chosen;
mod concrete;
mod coverage;
mod ductile;
mod edge;
mod edition;
mod facts;
mod fields;
mod gaps;
mod interaction;
pub mod kind;
mod line;
mod pryout;
mod pulled;
mod pulled_group;
mod pullout;
mod reduction;
mod report;
mod row;
mod sheared;
mod spacing;
mod steel;
mod stiffness;
mod washers;

use alloc::boxed::Box;

pub use edition::{ACI_318_11, ACI_318_14, ACI_318_19, ACI_318M_19};
pub use fields::*;

use self::anchorage::Anchorage;
use self::edition::{EDITION_11_SI, EDITION_11_US, EDITION_14_SI, EDITION_14_US, EDITION_SI, EDITION_US, Edition};
use self::facts::Facts;
use super::anchor::{AnchorRule, AnchorRuleText, AnchorSite, PreparedAnchors};
use super::{anchor_set as set, bolts};
use crate::calc::{StepTable, System};
use crate::load_case::Format;

/// What all editions share.
const RULE: AnchorRule = AnchorRule {
    id: "",
    fields: fields::FIELDS,
    anchor_fields: fields::ANCHOR_FIELDS,
    report_fields: fields::REPORT_FIELDS,
    format: Format::Strength,
    system: System::Si,
    faults: chosen::faults,
    amplification: chosen::amplification,
    overstrength: fields::OVERSTRENGTH,
    is_on_levels: false,
    other_format: coverage::OTHER_FORMAT,
    prepare: |site| prepare(&EDITION_SI, site),
    concrete_modulus_mpa: concrete::modulus_si,
};

/// ACI 318M-19, in N, mm and MPa.
pub static ACI_318_19_SI: AnchorRule = AnchorRule {
    id: "aci-318-19-si",
    system: System::Si,
    prepare: |site| prepare(&EDITION_SI, site),
    concrete_modulus_mpa: concrete::modulus_si,
    ..RULE
};

/// ACI 318-19, in lbf, in. and psi.
pub static ACI_318_19_US: AnchorRule = AnchorRule {
    id: "aci-318-19",
    system: System::Us,
    prepare: |site| prepare(&EDITION_US, site),
    concrete_modulus_mpa: concrete::modulus_us,
    ..RULE
};

/// ACI 318M-14, in N, mm and MPa.
pub static ACI_318_14_SI: AnchorRule = AnchorRule {
    id: "aci-318-14-si",
    system: System::Si,
    prepare: |site| prepare(&EDITION_14_SI, site),
    concrete_modulus_mpa: concrete::modulus_si,
    ..RULE
};

/// ACI 318-14, in lbf, in. and psi.
pub static ACI_318_14_US: AnchorRule = AnchorRule {
    id: "aci-318-14",
    system: System::Us,
    prepare: |site| prepare(&EDITION_14_US, site),
    concrete_modulus_mpa: concrete::modulus_us,
    ..RULE
};

/// ACI 318M-11, in N, mm and MPa.
pub static ACI_318_11_SI: AnchorRule = AnchorRule {
    id: "aci-318-11-si",
    system: System::Si,
    prepare: |site| prepare(&EDITION_11_SI, site),
    concrete_modulus_mpa: concrete::modulus_si,
    ..RULE
};

/// ACI 318-11, in lbf, in. and psi.
pub static ACI_318_11_US: AnchorRule = AnchorRule {
    id: "aci-318-11",
    system: System::Us,
    prepare: |site| prepare(&EDITION_11_US, site),
    concrete_modulus_mpa: concrete::modulus_us,
    ..RULE
};

fn prepare(edition: &'static Edition, site: &AnchorSite) -> Box<dyn PreparedAnchors> {
    Box::new(Anchorage::new(Facts::new(edition, site)))
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
    &bond::TEXTS,
    &bars::TEXTS,
    &ductile::TEXTS,
    &attachment::TEXTS,
    &washers::TEXTS,
    &bolts::TEXTS,
];

const STOPS: &str = "Cast-in headed and hooked bolts and welded headed studs in concrete of 17 to 70 MPa (2500 to 10 000 psi; a higher strength counts as the limit); expansion, undercut, screw and adhesive anchors up to 55 MPa (8000 psi), by the values of their own evaluation report, and not without them. Up to 100 mm (4 in.) thick, embedded within the slab. Rods that bend in the plate under welded washers go by AISC Design Guide 1. Shear lugs (17.11), prying of the base and anchors that bend in a gap under the base are not covered, nor are through-bolts, grouted or power-driven anchors, the underside of metal deck, zones where the structure yields (17.10.2), fatigue and impact. In seismic design categories C to F one of the options of 17.10 limits the forces; the release where the earthquake makes a fifth of the force or less (17.10.5.1, 17.10.6.1) is never taken, which can only make the answer harder: weight that presses a cabinet down leaves its bolts no pull and no shear but that of the earthquake.";

const STOPS_14: &str = "As the edition of 2019, of which it differs by numbering and by screw anchors, which it does not know. Clauses are cited by their numbers in ACI 318-19: 17.6.1 to 17.6.5 were 17.4.1 to 17.4.5, 17.7 was 17.5, 17.8 was 17.6, 17.9 was 17.7, 17.10 was 17.2.3, 17.5.3 was 17.3.3 and 17.2.4 was 17.2.6. That nothing else differs is from memory.";

const STOPS_11: &str = "As the edition of 2019, of which it differs by numbering and by screw anchors, which it does not know. Clauses are cited by their numbers in ACI 318-19: 17.6.1 to 17.6.5 were D.5.1 to D.5.5, 17.7 was D.6, 17.8 was D.7, 17.9 was D.8, 17.10 was D.3.3, 17.5.3 was D.4.3 and 17.2.4 was D.3.6. That nothing else differs is from memory.";

/// What the texts of all editions share.
const TEXT: AnchorRuleText = AnchorRuleText {
    id: "",
    title: "",
    document: &ACI_318_19,
    fields: fields::FIELD_TEXTS,
    steps: STEPS,
    stops: STOPS,
};

/// Texts of the SI edition of 2019.
pub static ACI_318_19_SI_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-19-si",
    title: "ACI 318-19 chapter 17, SI edition (318M)",
    document: &ACI_318M_19,
    stops: STOPS,
    ..TEXT
};

/// Texts of the inch-pound edition of 2019.
pub static ACI_318_19_US_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-19",
    title: "ACI 318-19 chapter 17, inch-pound edition",
    document: &ACI_318_19,
    stops: STOPS,
    ..TEXT
};

/// Texts of the SI edition of 2014.
pub static ACI_318_14_SI_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-14-si",
    title: "ACI 318-14 chapter 17, SI edition (318M)",
    document: &ACI_318_14,
    stops: STOPS_14,
    ..TEXT
};

/// Texts of the inch-pound edition of 2014.
pub static ACI_318_14_US_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-14",
    title: "ACI 318-14 chapter 17, inch-pound edition",
    document: &ACI_318_14,
    stops: STOPS_14,
    ..TEXT
};

/// Texts of the SI edition of 2011.
pub static ACI_318_11_SI_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-11-si",
    title: "ACI 318-11 appendix D, SI edition (318M)",
    document: &ACI_318_11,
    stops: STOPS_11,
    ..TEXT
};

/// Texts of the inch-pound edition of 2011.
pub static ACI_318_11_US_TEXT: AnchorRuleText = AnchorRuleText {
    id: "aci-318-11",
    title: "ACI 318-11 appendix D, inch-pound edition",
    document: &ACI_318_11,
    stops: STOPS_11,
    ..TEXT
};
