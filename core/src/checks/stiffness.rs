//! Stiffness of feet and anchors where the user gives none: it decides how much a bolt pulls, so it is told.

use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::{Document, Part, Sheet, Subject, System, number, steps};
use crate::geometry::Size;

static ELASTICITY: Document =
    Document { short: "half-space", title: "Stiff rectangular punch on an elastic half-space" };

steps! { 20 "stiffness of feet";
    E_C "E_c" Stress (STATICS "modulus of the anchor rule" Derived) "Modulus of elasticity of the concrete": Given;
    E_C_ASSUMED "E_c" Stress (PRACTICE "" Memory) "Modulus of elasticity of the concrete, taken because no slab is given": Constant;
    NU "nu" Number (PRACTICE "" Memory) "Poisson's ratio of the concrete": Constant;
    A_F "A" Area (INPUT "" Derived) "Area of the foot": Given;
    K_PUNCH "k_p" Stiffness (ELASTICITY "" Derived) "The foot pressed into the concrete" = "1.13 * E_c * sqrt(A) / (1 - nu^2)";
    E_S "E_s" Stress (PRACTICE "" Memory) "Modulus of elasticity of steel": Constant;
    D_S "d_s" Length (INPUT "" Derived) "Diameter of the stem": Given;
    L_S "L_s" Length (INPUT "" Derived) "Free length of the stem": Given;
    K_STEM "k_s" Stiffness (STATICS "" Derived) "The stem in compression" = "E_s * 0.7853981633974483 * d_s^2 / L_s";
    K_FOOT "k_f" Stiffness (STATICS "springs in series" Derived) "The foot on its stem and the concrete" = "1 / (1 / k_p + 1 / k_s)";
    K_PAD "k_pad" Stiffness (INPUT "cabinet.feet" Derived) "Stiffness of the pad or the soft tread, given": Given;
    K_SLAB "k_slab" Stiffness (STATICS "slab on the ground" Derived) "The slab on the ground under one leg, worked out in a section of its own": Given;
    K_EACH "k_i" Stiffness (STATICS "" Derived) "Springs in series: concrete, stem, pad, slab, as far as there are any": Given;
    K_SERIES "k_f" Stiffness (STATICS "springs in series" Derived) "The foot on everything under it" = "1 / sum(1 / k_i)";
    K_ANCHOR "k_a" Stiffness (STATICS "anchor rule" Derived) "Stiffness of the anchor by its rule": Given;
    K_CLIP "k_clip" Stiffness (INPUT "cabinet.anchors" Derived) "Stiffness of its clip or of the corner of the base frame, given": Given;
    K_EACH_A "k_i" Stiffness (STATICS "" Derived) "Springs in series: anchor, clip, slab, as far as there are any": Given;
    K_ANCHORED "k_t" Stiffness (STATICS "springs in series" Derived) "The anchor with everything it holds by" = "1 / sum(1 / k_i)";
    K_GIVEN "k_f" Stiffness (INPUT "" Derived) "Stiffness of the foot, given": Given;
}

/// Modulus of elasticity of steel.
pub const STEEL_MODULUS_MPA: f64 = 200_000.0;
/// What is taken for concrete where no slab is given: a middling strength.
const CONCRETE_MODULUS_MPA: f64 = 25_000.0;
const POISSON: f64 = 0.2;
const QUARTER_PI: f64 = core::f64::consts::FRAC_PI_4;
/// Stiffness of a foot that bears on a point and gives none: as a foot of 100 mm by 100 mm.
const POINT_SIDE_MM: f64 = 100.0;

/// A foot as far as its stiffness goes.
#[derive(Clone, Copy, Debug)]
pub struct FootStiffness {
    /// Place of the foot in the file, from 0.
    pub number: u16,
    /// What the user gives.
    pub given_n_per_mm: Option<f64>,
    /// Its sides.
    pub size: Size,
    /// Diameter and free length of its stem.
    pub stem_mm: Option<(f64, f64)>,
    /// Stiffness of its pad or tread.
    pub pad_n_per_mm: Option<f64>,
    /// Stiffness of the slab on the ground under it.
    pub slab_n_per_mm: Option<f64>,
    /// Modulus of the concrete, where there is a slab.
    pub concrete_mpa: Option<f64>,
}

impl FootStiffness {
    /// The stiffness of the foot, N per mm: the given one, or the stiff punch 1.13 E_c sqrt(A) / (1 - nu^2) in series
    /// with the stem.
    pub fn stiffness_n_per_mm(&self, sheet: &mut Sheet) -> f64 {
        sheet.open(Part::BaseReactions, Subject::Foot(self.number), None, System::Si);
        if let Some(given) = self.given_n_per_mm {
            return sheet.step(K_GIVEN, given);
        }
        let modulus = match self.concrete_mpa {
            Some(modulus) => sheet.step(E_C, modulus),
            None => sheet.step(E_C_ASSUMED, CONCRETE_MODULUS_MPA),
        };
        let poisson = sheet.step(NU, POISSON);
        let area = if self.size.area_mm2() > 0.0 { self.size.area_mm2() } else { POINT_SIDE_MM * POINT_SIDE_MM };
        let area = sheet.step(A_F, area);
        let punch = sheet.step(K_PUNCH, 1.13 * modulus * number::sqrt(area) / (1.0 - number::pow(poisson, 2.0)));
        let mut springs = alloc::vec![punch];
        let mut foot = punch;
        if let Some((diameter, length)) = self.stem_mm {
            let steel = sheet.step(E_S, STEEL_MODULUS_MPA);
            let diameter = sheet.step(D_S, diameter);
            let length = sheet.step(L_S, length);
            let stem = sheet.step(K_STEM, steel * QUARTER_PI * number::pow(diameter, 2.0) / length);
            foot = sheet.step(K_FOOT, 1.0 / (1.0 / punch + 1.0 / stem));
            springs.push(stem);
        }
        for (row, spring) in [(K_PAD, self.pad_n_per_mm), (K_SLAB, self.slab_n_per_mm)] {
            if let Some(spring) = spring {
                springs.push(sheet.step(row, spring));
            }
        }
        if self.pad_n_per_mm.is_none() && self.slab_n_per_mm.is_none() {
            return foot;
        }
        sheet.carry_each(K_EACH, &springs);
        sheet.step(K_SERIES, 1.0 / springs.iter().map(|spring| 1.0 / spring).sum::<f64>())
    }
}

/// An anchor with its clip and the slab in series, N per mm, told in the open section; alone where there is neither.
pub fn anchored_n_per_mm(anchor: f64, clip: Option<f64>, slab: Option<f64>, sheet: &mut Sheet) -> f64 {
    if clip.is_none() && slab.is_none() {
        return anchor;
    }
    let mut springs = alloc::vec![sheet.step(K_ANCHOR, anchor)];
    for (row, spring) in [(K_CLIP, clip), (K_SLAB, slab)] {
        if let Some(spring) = spring {
            springs.push(sheet.step(row, spring));
        }
    }
    sheet.carry_each(K_EACH_A, &springs);
    sheet.step(K_ANCHORED, 1.0 / springs.iter().map(|spring| 1.0 / spring).sum::<f64>())
}
