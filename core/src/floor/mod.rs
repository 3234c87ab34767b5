//! The floor: what the slab rests on, what lies on it, and what the cabinet rolls in on. Without it only bearing is checked.

pub mod casters;
pub mod raised;
pub mod standing;

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*, Values};
use crate::rules::floor::load_factor::{Frame, LoadClass};
use crate::rules::floor::westergaard::EdgeForm;

/// What is known of a floor, in the order of the fields of its parts.
#[derive(Clone, PartialEq, Debug)]
pub struct Floor {
    /// The slab as a floor.
    pub values: Values,
    /// A raised floor on it.
    pub raised: Option<Values>,
    /// The wheels that the cabinet comes in on.
    pub casters: Option<Values>,
    /// Other ways of standing, to set beside the present one.
    pub standing: Option<Values>,
}

/// What the slab rests on.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum FloorKind {
    /// The ground.
    OnGround,
    /// Supports.
    Suspended,
}

/// What holds the slab together once it cracks.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Reinforcement {
    /// Nothing.
    Plain,
    /// Fabric or bars.
    Fabric,
    /// Fibres.
    Fibres,
}

impl Floor {
    /// What the slab rests on.
    pub fn kind(&self) -> FloorKind {
        if self.values.choice(KIND) == Some(1) { FloorKind::Suspended } else { FloorKind::OnGround }
    }

    /// The frame of load factors at rest.
    pub fn frame(&self) -> Frame {
        match self.values.choice(LOAD_FACTORS) {
            Some(1) => Frame::En1990,
            Some(2) => Frame::Tr34,
            _ => Frame::Asce7,
        }
    }

    /// What the weight counts as.
    pub fn load_class(&self) -> LoadClass {
        if self.values.choice(LOAD_CLASS) == Some(1) { LoadClass::Permanent } else { LoadClass::Live }
    }

    /// What holds the slab together.
    pub fn reinforcement(&self) -> Reinforcement {
        match self.values.choice(REINFORCEMENT) {
            Some(1) => Reinforcement::Fabric,
            Some(2) => Reinforcement::Fibres,
            _ => Reinforcement::Plain,
        }
    }

    /// The form for an edge.
    pub fn edge_form(&self) -> EdgeForm {
        match self.values.choice(EDGE_FORM) {
            Some(1) => EdgeForm::Semicircle,
            Some(2) => EdgeForm::Early,
            _ => EdgeForm::Circle,
        }
    }
}

fields! {
    KIND "kind" Choice(&["on-ground", "suspended"]), Fault,
        "What the slab rests on", "A slab on the ground bends over the soil; a suspended one spans between supports.", "",
        ["the ground", "supports: a suspended slab"];
    LOAD_CLASS "load_class" Choice(&["live", "permanent"]), Word(0),
        "What the weight counts as", "A cabinet that stands for years with a known mass is a permanent load; one whose contents change is a live load. Unsure: live.", "",
        ["a load that changes or moves", "a load that stays, of known mass"];
    LOAD_FACTORS "load_factors" Choice(&["asce-7", "en-1990", "tr-34"]), Word(0),
        "Load factors at rest", "Whose factors multiply the weight where a strength is compared. In an earthquake the load cases of the seismic rule hold.", "",
        ["ASCE 7, strength design", "EN 1990, limit states", "TR34, for slabs with fabric or fibres"];
    REINFORCEMENT "reinforcement" Choice(&["plain", "fabric", "fibres"]), Word(0),
        "What holds the slab together", "From the drawings. Plain concrete breaks when it cracks and is never checked by yield lines.", "",
        ["nothing: plain concrete", "fabric or bars", "fibres"];
    MODULUS "modulus_mpa" Number { kind: Kind::Stress, min: 1_000.0, max: 100_000.0 }, Unknown,
        "Modulus of elasticity of the slab", "Left empty, it follows from the strength by ACI 318-19 19.2.2.1(b).", "ACI 318-19 19.2.2.1(b)", [];
    POISSON "poisson" Number { kind: Kind::Number, min: 0.0, max: 0.5 }, Is(0.15),
        "Poisson's ratio of the slab", "0.15 is usual in American texts, 0.2 in European ones. The formulas for slabs on the ground reach 0.10 to 0.25.", "", [];
    FLEXURAL "flexural_strength_mpa" Number { kind: Kind::Stress, min: 0.1, max: 30.0 }, Unknown,
        "Flexural strength of the slab", "Modulus of rupture from tests. Left empty, 0.62 times the root of the strength in MPa (7.5 in psi).", "ACI 318-19 19.2.3.1", [];
    TENSILE "tensile_strength_mpa" Number { kind: Kind::Stress, min: 0.1, max: 20.0 }, Unknown,
        "Tensile strength of the slab", "Lower fractile f_ctk,0.05 of the strength class, for limit states and for yield lines.", "EN 1992-1-1 Table 3.1", [];
    DEPTH "effective_depth_mm" Number { kind: Kind::Length, min: 10.0, max: 5_000.0 }, Unknown,
        "Effective depth", "From the compressed face to the middle of the steel. Needed for punching of a reinforced slab.", "", [];
    RATIO "reinforcement_ratio" Number { kind: Kind::Number, min: 0.0, max: 0.1 }, Unknown,
        "Ratio of reinforcement", "Area of steel over width times effective depth. Needed for yield lines with fabric and for punching by EN 1992-1-1.", "", [];
    STEEL "steel_design_strength_mpa" Number { kind: Kind::Stress, min: 50.0, max: 1_000.0 }, Is(435.0),
        "Design strength of the steel", "Yield strength over its partial factor, 500 / 1.15 where nothing else is known.", "", [];
    RESIDUAL "residual_moment_n" Number { kind: Kind::Force, min: 0.0, max: 1e7 }, Unknown,
        "Moment that fibres keep", "Moment per width after cracking, in kN m per m (lbf ft per ft), from tests of the fibre concrete.", "TR34", [];
    SUBGRADE "subgrade_n_per_mm3" Number { kind: Kind::Subgrade, min: 0.000_1, max: 10.0 }, Unknown,
        "Modulus of subgrade reaction", "From a plate test or the soil report. The formulas reach 0.003 to 0.3 N/mm3.", "", [];
    BEARING_RATIO "bearing_ratio_percent" Number { kind: Kind::Number, min: 0.1, max: 200.0 }, Unknown,
        "California bearing ratio", "In per cent, where no modulus of subgrade reaction is known. The table reaches 2 to 100.", "IRC 58", [];
    SOIL "soil" Choice(&["fat-clay", "lean-clay-silt", "silty-clayey-sand", "clean-sand", "silty-clayey-gravel", "clean-gravel"]), Unknown,
        "Class of soil", "Where neither modulus nor bearing ratio is known. The lower end of a rough range is taken.", "common practice",
        ["Fat clay, wet (CH, MH)", "Lean clay or silt (CL, ML)", "Silty or clayey sand (SM, SC)", "Clean sand (SW, SP)", "Silty or clayey gravel (GM, GC)", "Clean gravel (GW, GP)"];
    EDGE_FORM "edge_form" Choice(&["1948-circle", "1948-semicircle", "early"]), Word(0),
        "Form for an edge", "Three forms are in print. The early one lies a fifth and more below the others and is for a Poisson's ratio of 0.15.", "Westergaard",
        ["of 1948, circle", "of 1948, semicircle", "early, with 0.572"];
    CORNER_FORM "corner_form" Choice(&["ioannides", "westergaard"]), Word(0),
        "Form for a corner", "Whose closed form is used at a free corner.", "", ["Ioannides 1985", "Westergaard 1926"];
    SPAN "span_mm" Number { kind: Kind::Length, min: 500.0, max: 50_000.0 }, Unknown,
        "Span", "Of a suspended slab that carries one way, between the middles of its supports.", "", [];
    SPAN_AXIS "span_axis" Choice(&["x", "y"]), Word(0),
        "Direction of the span", "Along which side of the cabinet the slab spans.", "", ["along the width", "along the depth"];
    SUPPORT "distance_to_support_mm" Number { kind: Kind::Length, min: 0.0, max: 50_000.0 }, Unknown,
        "Distance to the nearer support", "From the middle of the cabinet. Left empty, it stands at midspan. A distance beyond midspan is counted from the other support.", "", [];
    OCCUPANCY "occupancy" Choice(crate::rules::floor::live_load::OCCUPANCIES), Unknown,
        "Use that the floor was designed for", "Where its design live load is not known. A table of several codes; each row says whose it is.", "",
        ["Office (ASCE 7)", "Access floor, offices (ASCE 7)", "Access floor, computers (ASCE 7)", "Light storage (ASCE 7)", "Heavy storage (ASCE 7)",
         "Light manufacturing (ASCE 7)", "Heavy manufacturing (ASCE 7)", "Telecommunications room (TIA-569)", "Data hall, least (TIA-942)",
         "Data hall, recommended (TIA-942)", "Office (EN 1991-1-1)", "Storage (EN 1991-1-1)", "Mainframe room (BS 6399-1)", "Plant room (BS 6399-1)"];
    LIVE_LOAD "live_load_mpa" Number { kind: Kind::AreaLoad, min: 0.000_1, max: 1.0 }, Unknown,
        "Design live load", "What the floor was designed for, from its owner. The file has it in MPa: 0.005 is 5 kPa (104 psf).", "", [];
    PITCH "pitch_mm" Numbers { kind: Kind::Length, count: 2, min: 100.0, max: 100_000.0 }, Unknown,
        "Pitch of the cabinets", "Along a row, and from row to row with the aisle between.", "", [];
    AISLE "aisle_load_mpa" Number { kind: Kind::AreaLoad, min: 0.0, max: 0.1 }, Is(0.0),
        "Live load on the aisles", "People and trolleys beside the cabinets while they stand there.", "", [];
    ALPHA_CC "alpha_cc" Number { kind: Kind::Number, min: 0.8, max: 1.0 }, Is(1.0),
        "Long-term factor of EN 1992-1-1", "A choice of the country for concrete in compression: 1.0, or 0.85.", "EN 1992-1-1 3.1.6(1)", [];
    PLATE "foot_plate_mm" Number { kind: Kind::Length, min: 0.5, max: 500.0 }, Unknown,
        "Thickness of the feet's plates", "Of steel. Checked in bending where the feet have stems.", "", [];
    PLATE_YIELD "foot_plate_yield_mpa" Number { kind: Kind::Stress, min: 50.0, max: 1_500.0 }, Is(235.0),
        "Yield strength of the plates", "Of the feet's plates and of spreader plates under them.", "", [];
    PLATE_STEM "foot_plate_stem" Choice(&["swivel", "fixed"]), Word(0),
        "How stems meet the plates", "By a ball or swivel, or fixed to them.", "", ["by a swivel", "fixed"];
    WANTED "wanted_pressure_mpa" Number { kind: Kind::Pressure, min: 0.001, max: 100.0 }, Unknown,
        "Pressure that is wanted", "What spreader plates under the feet are sized for.", "", [];
    STANDS_ON "stands_on" Choice(&["feet", "rails"]), Word(0),
        "What the feet are", "Base rails, skirts and wide bases press along lines: one at least three times as long as wide then counts as a line load on a slab on the ground.", "",
        ["single feet", "base rails, skirts or walls"];
    GROUT "grout_mm" Number { kind: Kind::Length, min: 1.0, max: 300.0 }, Unknown,
        "Thickness of grout under the feet", "Left empty where they stand on the concrete itself.", "EN 1993-1-8 6.2.5(7)", [];
    GROUT_STRENGTH "grout_strength_mpa" Number { kind: Kind::Stress, min: 1.0, max: 150.0 }, Unknown,
        "Strength of the grout", "Compressive, from its maker.", "EN 1993-1-8 6.2.5(7)", [];
    CONCENTRATED "concentrated_load_n" Number { kind: Kind::Force, min: 100.0, max: 1e7 }, Unknown,
        "Design concentrated load", "The single load that a suspended slab was designed for, from its owner. Left empty, that of the use, where its code prints one.", "", [];
}
