//! Load cases: types only. A demand rule lists its cases; nobody else multiplies heavy and light with up and down.

use crate::calc::{StepId, number};

/// One combination of gravity and earthquake that a rule asks for.
///
/// With W the weight of a state, the vertical load is `(gravity + vertical) W` downwards and the horizontal load is
/// `horizontal W` at the centre of gravity.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct LoadCase {
    /// The row of the rule's text table that names it.
    pub name: StepId,
    /// Factor on gravity.
    pub gravity: f64,
    /// Vertical action over the weight, downwards positive.
    pub vertical: f64,
    /// Horizontal action over the weight.
    pub horizontal: f64,
    /// What the case is for.
    pub level: Level,
    /// Which way the push may act.
    pub directions: Directions,
}

/// What a load case is for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Level {
    /// The component itself: feet and floor where the rule has no level of their own for concrete, standing free, steel.
    Component,
    /// Concrete that the feet press on, where the rule has another load factor for it than for the component.
    Concrete,
    /// Anchors in concrete, at the level that the demand rule itself gives for them, without overstrength.
    Anchorage,
    /// Anchors in concrete, amplified by overstrength.
    Amplified,
}

/// Which way the push may act.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Directions {
    /// Every horizontal direction with its full value.
    Any,
    /// 100 % along one axis with 30 % along the other: eight directions, a vector 1.044 long.
    HundredThirty,
}

impl Directions {
    /// How many times the push of a load case the whole of it is, both axes together.
    pub fn longer(self) -> f64 {
        if self == Directions::HundredThirty { HUNDRED_THIRTY } else { 1.0 }
    }

    /// The directions that a rule names, in radians from +x towards +y, ascending; none where it means every one.
    pub fn named_rad(self) -> Option<[f64; 8]> {
        let small = number::atan2(0.3, 1.0);
        let right = core::f64::consts::FRAC_PI_2;
        let named = |place: usize| {
            let quarter = (place / 2) as f64;
            if place.is_multiple_of(2) { quarter * right + small } else { (quarter + 1.0) * right - small }
        };
        (self == Directions::HundredThirty).then(|| core::array::from_fn(named))
    }
}

/// The format in which a rule's numbers are made. Demand and capacity of different formats are never compared.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Format {
    /// Strength design with load factors.
    Strength,
    /// Limit states with partial factors.
    LimitStates,
    /// Allowable stress.
    AllowableStress,
}

/// The length of the vector of 100 % with 30 %.
pub const HUNDRED_THIRTY: f64 = 1.044_030_650_891_055;
