//! What an anchor rule is, and the registry of them.

use alloc::boxed::Box;
use alloc::vec::Vec;

use crate::calc::{CheckId, Document, Outcome, Sheet, StepId, StepTable, Subject, System};
use crate::geometry::{Point, Polygon, Rectangle};
use crate::input::fault::Problem;
use crate::input::field::{Field, FieldText, Values};
use crate::load_case::Format;

/// A published edition that says how much anchors in concrete carry.
pub struct AnchorRule {
    /// Its id in the file: `aci-318-19-si`.
    pub id: &'static str,
    /// The fields it asks for, beside `rule` itself; the file is always in SI.
    pub fields: &'static [Field],
    /// The places of the fields that a single anchor may have otherwise.
    pub anchor_fields: &'static [usize],
    /// The places of the fields that the anchor's evaluation report or approval gives and nothing else does. A rule may
    /// lack any of them; then what needs it is not covered, and the reason names it.
    pub report_fields: &'static [usize],
    /// The format of the demand that its strengths may be compared with.
    pub format: Format,
    /// The system in whose units it computes.
    pub system: System,
    /// Faults that a single field's limits cannot see, on the values of one anchor: field place, problem, what would do.
    pub faults: fn(&Values, &mut Vec<(usize, Problem, &'static str)>),
    /// The demand that it asks for with these inputs.
    pub amplification: fn(&Values) -> Amplification,
    /// The field that holds the overstrength factor for demand rules without an amplified level.
    pub overstrength: usize,
    /// Whether that factor also multiplies the level that a demand rule has of its own.
    pub is_on_levels: bool,
    /// The row of a text table that says why a demand of another format is refused, and what would fit.
    pub other_format: StepId,
    /// Everything about the anchorage that no load changes.
    pub prepare: fn(&AnchorSite) -> Box<dyn PreparedAnchors>,
    /// Modulus of elasticity of concrete of this strength, both in MPa.
    pub concrete_modulus_mpa: fn(f64) -> f64,
}

/// Whether seismic forces in anchors are amplified by overstrength.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Amplification {
    /// The horizontal action is multiplied by the overstrength factor, and the statics are done with it.
    Amplified,
    /// The pull is found with it, the shear without.
    TensionOnly,
    /// The shear is found with it, the pull without.
    ShearOnly,
    /// It is not, because something else limits both, such as an attachment that yields.
    Limited,
    /// It is not, and no earthquake rule asks for it.
    Plain,
}

/// The anchors of a cabinet in their concrete.
pub struct AnchorSite<'a> {
    /// What the anchorage says for all anchors, in the order of the rule's fields.
    pub values: &'a Values,
    /// The anchors: the cabinet's own in the order of the file, then those of its neighbours, which stand in the same
    /// concrete and feel the same forces at the same time.
    pub anchors: &'a [AnchorPlace],
    /// How many of them are the cabinet's own. What is found is theirs; a group of neighbours alone is nobody's finding.
    pub own: usize,
    /// The concrete.
    pub slab: &'a AnchorSlab,
}

/// One anchor.
#[derive(Clone, PartialEq, Debug)]
pub struct AnchorPlace {
    /// Where it stands.
    pub at: Point,
    /// Its values in the order of the rule's fields, its own ones put in.
    pub values: Values,
}

/// The concrete that anchors stand in.
#[derive(Clone, PartialEq, Debug)]
pub struct AnchorSlab {
    /// Specified compressive strength of cylinders.
    pub strength_mpa: f64,
    /// Thickness.
    pub thickness_mm: f64,
    /// Whether it may be cracked.
    pub cracking: Cracking,
    /// Its outline in the plan of the cabinet; infinite where the edge is far.
    pub outline: Rectangle,
    /// Lines beyond which the concrete belongs to somebody unknown: bodies are cut there, but they are no edges.
    pub boundary: Rectangle,
    /// Openings in it: bodies are cut there, and their sides count as edges.
    pub openings: Vec<Rectangle>,
}

/// Whether concrete may be cracked at the anchors.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Cracking {
    /// It may crack under service loads.
    Cracked,
    /// Analysis shows that it does not.
    Uncracked,
}

/// What one anchor feels in one load case and direction, simultaneously with the others.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct AnchorForce {
    /// Pull, positive or zero.
    pub tension_n: f64,
    /// Shear on the anchor to the right.
    pub shear_x_n: f64,
    /// Shear on the anchor to the rear.
    pub shear_y_n: f64,
}

/// The cabinet as a whole in one load case and direction, for practices that have statics of their own.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct WholeLoad {
    /// Weight with its load factor.
    pub weight_n: f64,
    /// Vertical action, upwards positive.
    pub upward_n: f64,
    /// Horizontal action.
    pub horizontal_n: f64,
    /// The centre of gravity in the plan.
    pub at: Point,
    /// Its height.
    pub height_mm: f64,
    /// Which way the horizontal action pushes, from +x towards +y.
    pub direction_rad: f64,
}

/// The outcome of one failure mode for one anchor or group.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Finding {
    /// The failure mode.
    pub check: CheckId,
    /// What it was found for: the anchor of this place in the file from 0, or the group counted from 1.
    pub subject: Subject,
    /// What it came to, in SI.
    pub outcome: Outcome,
}

/// Takes findings as they come.
pub trait Findings {
    /// Takes one.
    fn find(&mut self, finding: Finding);
}

impl Findings for Vec<Finding> {
    fn find(&mut self, finding: Finding) {
        self.push(finding);
    }
}

/// An anchorage whose geometry and steel are worked out.
///
/// Groups are made by geometry for each mode and each set of forces; their areas are kept by the set of anchors that
/// act, so asking again with the same anchors pulling is cheap.
pub trait PreparedAnchors {
    /// What does not depend on the load: whether the rule reaches this anchorage, spacing, edge distances.
    ///
    /// Finds exactly one outcome each for [`CheckId::Anchorage`], [`CheckId::AnchorSpacing`], [`CheckId::AnchorEdge`] and
    /// [`CheckId::AnchorThickness`].
    fn place(&self, sheet: &mut Sheet, findings: &mut dyn Findings);

    /// Every failure mode under simultaneous forces, one force for each anchor in the order of the file.
    ///
    /// Finds at least one outcome for each of the other anchor checks: the worst anchor for steel and pullout, every
    /// group for the rest.
    fn check(&mut self, forces: &[AnchorForce], level: Amplification, sheet: &mut Sheet, findings: &mut dyn Findings);

    /// What the rule finds by statics of its own, beside the forces that it is given.
    fn check_whole(&self, _load: &WholeLoad, _sheet: &mut Sheet, _findings: &mut dyn Findings) {}

    /// Whether the hole of an anchor lets it take shear along x and along y.
    fn takes_shear(&self, _anchor: usize) -> [bool; 2] {
        [true, true]
    }

    /// The stiffness of an anchor in tension where none is given, E_s A_se / h_ef, written into the open section, which
    /// must be in SI.
    fn stiffness_n_per_mm(&self, anchor: usize, sheet: &mut Sheet) -> f64;

    /// The least embedment over diameter of all anchors.
    fn least_depth_diameters(&self) -> f64;

    /// Whether any anchor is adhesive or of steel that does not count as ductile.
    fn has_nonductile(&self) -> bool {
        false
    }

    /// Whether any anchor is an expansion anchor.
    fn has_expansion(&self) -> bool {
        false
    }

    /// Whether any anchor is cast in and of steel that does not count as ductile.
    fn has_brittle_cast_in(&self) -> bool {
        false
    }

    /// The outlines of the breakout bodies on the surface of the concrete when these anchors are pulled, in mm.
    fn breakout_outlines(&self, pulled: &[usize]) -> Vec<Polygon>;
}

/// The texts of a rule, only for native code.
pub struct AnchorRuleText {
    /// Id of the rule.
    pub id: &'static str,
    /// Its title, as the guide's table of rules prints it.
    pub title: &'static str,
    /// The document that it is.
    pub document: &'static Document,
    /// Texts of its fields.
    pub fields: &'static [FieldText],
    /// Texts of its steps.
    pub steps: &'static [&'static StepTable],
    /// Where it stops, one paragraph.
    pub stops: &'static str,
}

macro_rules! anchor_rules {
    ($($module:ident $rule:ident $text:ident;)*) => {
        /// All anchor rules.
        pub static ANCHOR_RULES: &[&AnchorRule] = &[$(&super::$module::$rule),*];

        /// Their texts, in the same order; only for native code.
        pub static ANCHOR_RULE_TEXTS: &[&AnchorRuleText] = &[$(&super::$module::$text),*];
    };
}

// The registry: an edition is a line, in the order in which the page offers them.
anchor_rules! {
    aci_318_19 ACI_318_19_SI ACI_318_19_SI_TEXT;
    aci_318_19 ACI_318_19_US ACI_318_19_US_TEXT;
    aci_318_19 ACI_318_14_SI ACI_318_14_SI_TEXT;
    aci_318_19 ACI_318_14_US ACI_318_14_US_TEXT;
    aci_318_19 ACI_318_11_SI ACI_318_11_SI_TEXT;
    aci_318_19 ACI_318_11_US ACI_318_11_US_TEXT;
    en_1992_4 RULE TEXT;
    japan_bolts RULE TEXT;
}

/// The rule with an id.
///
/// ```
/// use steadfoot::rules::anchor::anchor_rule;
/// assert!(anchor_rule("aci-318-19").is_some());
/// assert!(anchor_rule("anything else").is_none());
/// ```
pub fn anchor_rule(id: &str) -> Option<&'static AnchorRule> {
    ANCHOR_RULES.iter().find(|rule| rule.id == id).copied()
}
