//! The bolts as they were chosen: area, allowable stresses and forces.

use alloc::vec::Vec;

use super::fields as f;
use super::steps;
use crate::calc::{Sheet, System};
use crate::geometry::{Point, Rectangle};
use crate::input::field::Values;
use crate::rules::anchor::AnchorSite;
use crate::rules::bolts::{self, Head, SIZE_WORDS, SIZES, Shank};

/// All bolts with what they stand in.
pub struct Facts {
    /// The cabinet's own bolts, then those of its neighbours.
    pub bolts: Vec<Bolt>,
    /// How many of them are the cabinet's own.
    pub own: usize,
    /// Edges of the slab.
    pub outline: Rectangle,
    /// Thickness of the slab.
    pub thickness_mm: f64,
    /// Whether there are openings in the slab.
    pub has_openings: bool,
    /// Height of the bolts' plane, of a hung box.
    pub hung_at_mm: Option<f64>,
    /// The spacing that allowable forces were made for.
    pub least_spacing_mm: Option<f64>,
    /// The edge distance that they were made for.
    pub least_edge_mm: Option<f64>,
    /// The thickness of the slab that they were made for.
    pub least_thickness_mm: Option<f64>,
}

/// One bolt.
pub struct Bolt {
    /// Where it stands.
    pub at: Point,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its stress area.
    pub area_mm2: f64,
    /// Length in the concrete.
    pub embedment_mm: f64,
    /// Short-term allowable stress in tension.
    pub tension: Allowable,
    /// Short-term allowable stress in shear.
    pub shear: Allowable,
    /// Allowable pull in the concrete.
    pub pull_n: Option<f64>,
    /// Allowable shear in the concrete.
    pub concrete_shear_n: Option<f64>,
}

/// An allowable stress and whether the user gave it.
#[derive(Clone, Copy)]
pub struct Allowable {
    /// N/mm2.
    pub stress_mpa: f64,
    /// Whether it stands in place of the table's.
    pub is_given: bool,
}

/// Place of the word "hung".
pub const HUNG: usize = 1;
/// Place of the word "given" of the steels.
pub const STEEL_GIVEN: usize = 2;
/// Allowable tension and shear of the steels, short-term, MPa. Another sheet prints 102 for the shear of SS400.
const STEELS: [[f64; 2]; 2] = [[176.0, 101.0], [158.0, 91.2]];

/// Whether the bolt's measures are given.
pub fn is_given(values: &Values) -> bool {
    values.choice(f::BOLT) == Some(SIZE_WORDS.len() - 1)
}

impl Facts {
    /// The bolts of a site.
    pub fn new(site: &AnchorSite) -> Facts {
        let is_hung = site.values.choice(f::MOUNTING) == Some(HUNG);
        Facts {
            bolts: site.anchors.iter().map(|place| Bolt::new(place.at, &place.values)).collect(),
            own: site.own,
            outline: site.slab.outline,
            thickness_mm: site.slab.thickness_mm,
            has_openings: !site.slab.openings.is_empty(),
            hung_at_mm: site.values.number(f::FIXING).filter(|_| is_hung),
            least_spacing_mm: site.values.number(f::S_MIN),
            least_edge_mm: site.values.number(f::C_MIN),
            least_thickness_mm: site.values.number(f::H_MIN),
        }
    }
}

impl Bolt {
    fn new(at: Point, values: &Values) -> Bolt {
        let chosen = bolt(values);
        let of_steel = values.choice(f::STEEL).and_then(|steel| STEELS.get(steel));
        let allowable = |field, place: usize| match values.number(field) {
            Some(stress_mpa) => Allowable { stress_mpa, is_given: true },
            None => Allowable { stress_mpa: of_steel.map_or(f64::NAN, |row| row[place]), is_given: false },
        };
        Bolt {
            at,
            diameter_mm: chosen.diameter(System::Si),
            area_mm2: chosen.stress_area(System::Si, &mut Sheet::quiet()),
            embedment_mm: values.given(f::EMBEDMENT),
            tension: allowable(f::F_T, 0),
            shear: allowable(f::F_S, 1),
            pull_n: values.number(f::T_A),
            concrete_shear_n: values.number(f::Q_A),
        }
    }

    /// Tells the allowable tension.
    pub fn tell_tension(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(if self.tension.is_given { steps::F_T_GIVEN } else { steps::F_T }, self.tension.stress_mpa)
    }

    /// Tells the allowable shear.
    pub fn tell_shear(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(if self.shear.is_given { steps::F_S_GIVEN } else { steps::F_S }, self.shear.stress_mpa)
    }
}

fn bolt(values: &Values) -> bolts::Bolt {
    let size = values.choice(f::BOLT).and_then(|place| SIZES.get(place));
    let shank = match size {
        Some(size) => Shank::Listed(size),
        None => Shank::Given { diameter_mm: values.given(f::DIAMETER), stress_area_mm2: values.given(f::STRESS_AREA) },
    };
    bolts::Bolt { shank, head: Head::Own }
}
