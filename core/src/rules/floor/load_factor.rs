//! Load factors of floor checks, frame by frame. Working stress and factored load are never mixed.

use super::documents::{ACI_318_19, ACI_360R, ASCE_7_LOADS, EN_1990, TR34};
use crate::calc::clause::PRACTICE;
use crate::calc::{Sheet, StepId, steps};

steps! { 158 "load factors";
    DEAD_ALONE "gamma" Number (ASCE_7_LOADS "2.3.1, combination 1" Memory) "Factor on a load that stays for years with a known mass, alone": Constant;
    LIVE "gamma" Number (ASCE_7_LOADS "2.3.1, combination 2" Memory) "Factor on a load that changes or moves": Constant;
    EN_PERMANENT "gamma" Number (EN_1990 "Table A1.2(B)" Memory) "Factor on a permanent load": Constant;
    EN_VARIABLE "gamma" Number (EN_1990 "Table A1.2(B)" Memory) "Factor on a variable load": Constant;
    TR34_KNOWN "gamma" Number (TR34 "load factors" Memory) "Factor on a known static load": Constant;
    TR34_OTHER "gamma" Number (TR34 "load factors" Memory) "Factor on another static load": Constant;
    TR34_MOVING "gamma" Number (TR34 "load factors" Memory) "Factor on a moving load": Constant;
    SF_STANDING "n_s" Number (ACI_360R "safety factors, 1.4 to 2.0" Memory) "Factor of safety on the flexural strength, standing": Constant;
    SF_SHORT "n_s" Number (PRACTICE "" Memory) "Factor of safety on the flexural strength, short shaking or moving": Constant;
    PHI_PLAIN "phi" Number (ACI_318_19 "21.2.1, chapter 14" Memory) "Strength reduction factor for plain concrete": Constant;
}

/// In which frame loads at rest are factored.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Frame {
    /// ASCE 7 strength design.
    Asce7,
    /// EN 1990 limit states.
    En1990,
    /// TR34, for slabs with fabric or fibres.
    Tr34,
}

/// What the weight of a cabinet counts as.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LoadClass {
    /// It changes or moves, or nobody knows.
    Live,
    /// It stays for years with a known mass.
    Permanent,
}

/// When.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum When {
    /// Standing at rest.
    AtRest,
    /// On the way in.
    Moving,
}

/// The factor on the weight, with the row that says whose it is.
pub fn factor(frame: Frame, class: LoadClass, when: When) -> (StepId, f64) {
    match (frame, class, when) {
        (Frame::Asce7, LoadClass::Permanent, When::AtRest) => (DEAD_ALONE, 1.4),
        (Frame::Asce7, _, _) => (LIVE, 1.6),
        (Frame::En1990, LoadClass::Permanent, When::AtRest) => (EN_PERMANENT, 1.35),
        (Frame::En1990, _, _) => (EN_VARIABLE, 1.5),
        (Frame::Tr34, LoadClass::Permanent, When::AtRest) => (TR34_KNOWN, 1.2),
        (Frame::Tr34, LoadClass::Live, When::AtRest) => (TR34_OTHER, 1.5),
        (Frame::Tr34, _, When::Moving) => (TR34_MOVING, 1.6),
    }
}

/// The factor, told.
pub fn told(frame: Frame, class: LoadClass, when: When, sheet: &mut Sheet) -> f64 {
    let (row, value) = factor(frame, class, when);
    sheet.step(row, value)
}

/// The factor of safety of working stress, told.
pub fn safety(when: When, sheet: &mut Sheet) -> f64 {
    match when {
        When::AtRest => sheet.step(SF_STANDING, 2.0),
        When::Moving => sheet.step(SF_SHORT, 1.7),
    }
}
