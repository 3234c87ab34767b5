//! The frame of a state pushed along one axis of its plan.

use alloc::vec;
use alloc::vec::Vec;

use super::cantilever::Cantilevers;
use super::fields::{
    BASE, BASE_ON, BEAM_INERTIA_X, BEAM_INERTIA_Y, BRACE_AREA, CORNER_STIFFNESS, CORNERS, FACES_X, FACES_Y, HEIGHT,
    MODULUS, POST_AREA, POST_INERTIA_X, POST_INERTIA_Y, POSTS, SKIN_SHARE, SKIN_THICKNESS, SPAN_X, SPAN_Y, STOREYS,
    SYSTEM_X, SYSTEM_Y,
};
use super::storey::{Column, column_stiffness_n_per_mm};
use super::sway::{G_MM_PER_S2, Levels, Sway, whole_movement_mm};
use super::texts::*;
use crate::cabinet::Cabinet;
use crate::calc::number::{floor, hypot, pow, sqrt};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, StepId, Subject, System as Units};
use crate::input::field::Values;
use crate::load_out::Content;

/// Which way it is pushed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Axis {
    /// To the right or to the left.
    X,
    /// To the rear or to the front.
    Y,
}

/// What makes the faces along an axis stiff.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum System {
    /// Posts and beams.
    Portal,
    /// One diagonal a face.
    SingleBrace,
    /// Two crossing diagonals a face.
    CrossBrace,
    /// A sheet.
    Skin,
}

/// The frame with everything that it carries in one state.
#[derive(Clone, Copy, Debug)]
pub struct Swayed<'a> {
    /// What is known of the frame, in the order of its fields.
    pub values: &'a Values,
    /// The cabinet.
    pub cabinet: &'a Cabinet,
    /// What is aboard in this state.
    pub aboard: &'a [&'a Content],
    /// Mass of the state.
    pub mass_kg: f64,
    /// Stiffness of the base against turning under a push along x and along y, moment per radian; none without feet.
    pub base_nmm: Option<[f64; 2]>,
    /// Where the feet stand, and the anchors where they are counted on.
    pub feet_mm: &'a [[f64; 2]],
}

/// How stiff the storeys are.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Storeys {
    /// Stiffness of the lowest one.
    pub lowest_n_per_mm: f64,
    /// Stiffness of each other.
    pub other_n_per_mm: f64,
    /// Stiffness against the lengthening of posts, as [`Levels`] has it.
    pub posts_nmm2: f64,
}

impl Storeys {
    fn alike(each_n_per_mm: f64) -> Storeys {
        Storeys { lowest_n_per_mm: each_n_per_mm, other_n_per_mm: each_n_per_mm, posts_nmm2: f64::INFINITY }
    }
}

impl Swayed<'_> {
    /// The system of an axis.
    pub fn system(&self, axis: Axis) -> System {
        let field = if axis == Axis::X { SYSTEM_X } else { SYSTEM_Y };
        match self.values.choice(field) {
            Some(1) => System::SingleBrace,
            Some(2) => System::CrossBrace,
            Some(3) => System::Skin,
            _ => System::Portal,
        }
    }

    /// How it sways along an axis under its own weight laid sideways, told in a section of the check.
    pub fn sway(&self, axis: Axis, check: CheckId, sheet: &mut Sheet) -> Result<Sway, StepId> {
        let base = self.base_nmm.ok_or(NO_FEET)?[usize::from(axis == Axis::Y)];
        sheet.open(Part::Frame, Subject::Whole, Some(check), Units::Si);
        sheet.step(if axis == Axis::X { AXIS_X } else { AXIS_Y }, 0.0);
        let storeys = self.tell_storey(axis, sheet)?;
        let levels = self.levels(&storeys, base);
        sheet.each_detailed(M_J, &levels.masses_kg, || Detail::Shape(heights(&levels)));
        sheet.each_detailed(H_J, &levels.heights_mm, || Detail::Shape(heights(&levels)));
        let id = if self.base_is_held() { K_TH_HELD } else { K_TH };
        sheet.detailed(id, base, || Detail::Shape(self.feet_mm.to_vec()));
        let movements_mm = levels.movements_mm();
        let residual = residual(&levels, &movements_mm);
        sheet.each_detailed(D_J, &movements_mm, || Detail::Residuals(vec![residual]));
        let whole_mm = sheet.step(D_E, whole_movement_mm(&levels.masses_kg, &movements_mm));
        sheet.step(G_F, G_MM_PER_S2);
        sheet.step(PI, core::f64::consts::PI);
        let period_s = sheet.step(T_1, 2.0 * core::f64::consts::PI * sqrt(whole_mm / G_MM_PER_S2));
        Ok(Sway { heights_mm: levels.heights_mm, movements_mm, period_s, residual })
    }

    /// Levels with their masses: the frame evenly over its height, contents at the levels beside their middles. What
    /// falls to the base does not sway.
    fn levels(&self, storeys: &Storeys, base_nmm: f64) -> Levels {
        let count = self.storeys();
        let storey = self.height_mm() / count as f64;
        let mut masses = vec![0.0; count];
        let mut lay = |height_mm: f64, mass_kg: f64| {
            let place = (height_mm / storey).max(0.0).min(count as f64);
            let below = floor(place);
            let part = place - below;
            for (level, share) in [(below, 1.0 - part), (below + 1.0, part)] {
                if level >= 1.0 && level <= count as f64 {
                    masses[level as usize - 1] += share * mass_kg;
                }
            }
        };
        let frame = self.cabinet.frame.mass_kg / count as f64;
        for level in 0..count {
            lay((level as f64 + 0.5) * storey, frame);
        }
        for content in self.aboard {
            lay(content.bottom_mm + content.size_mm[2] / 2.0, content.mass_kg);
        }
        Levels {
            masses_kg: masses,
            heights_mm: (1..=count).map(|level| level as f64 * storey).collect(),
            storeys_n_per_mm: (0..count)
                .map(|level| if level == 0 { storeys.lowest_n_per_mm } else { storeys.other_n_per_mm })
                .collect(),
            posts_nmm2: storeys.posts_nmm2,
            base_nmm,
        }
    }

    /// Its posts alone, where they are what resists and their section is known.
    pub fn posts_alone(&self, axis: Axis) -> Option<Cantilevers> {
        let inertia = if axis == Axis::X { POST_INERTIA_X } else { POST_INERTIA_Y };
        let is_portal = self.system(axis) == System::Portal && self.are_whole().is_ok();
        let even_kg = self.cabinet.frame.mass_kg;
        is_portal.then_some(Cantilevers {
            posts: self.values.given(POSTS),
            modulus_mpa: self.values.given(MODULUS),
            inertia_mm4: self.values.number(inertia)?,
            height_mm: self.height_mm(),
            top_kg: self.mass_kg - even_kg,
            even_kg,
        })
    }

    /// Whether tight anchors are to keep the base from turning, too.
    pub fn base_is_held(&self) -> bool {
        self.values.choice(BASE_ON) == Some(1)
    }

    /// Refuses counts that are no whole numbers.
    pub(super) fn are_whole(&self) -> Result<(), StepId> {
        let is_whole = |field: usize| self.values.given(field) == floor(self.values.given(field));
        if [STOREYS, POSTS, FACES_X, FACES_Y].into_iter().all(is_whole) { Ok(()) } else { Err(NOT_WHOLE) }
    }

    fn storeys(&self) -> usize {
        floor(self.values.given(STOREYS)).max(1.0) as usize
    }

    /// Height of the frame.
    pub fn height_mm(&self) -> f64 {
        self.values.number(HEIGHT).unwrap_or(self.cabinet.height_mm)
    }

    /// Height of a storey.
    pub(super) fn storey_mm(&self) -> f64 {
        self.height_mm() / self.storeys() as f64
    }

    pub(super) fn span_mm(&self, axis: Axis) -> f64 {
        match axis {
            Axis::X => self.values.number(SPAN_X).unwrap_or(self.cabinet.width_mm),
            Axis::Y => self.values.number(SPAN_Y).unwrap_or(self.cabinet.depth_mm),
        }
    }

    pub(super) fn faces(&self, axis: Axis) -> f64 {
        self.values.given(if axis == Axis::X { FACES_X } else { FACES_Y })
    }

    /// The shape of the storeys, told; the stiffness of the lowest and of the others.
    fn tell_storey(&self, axis: Axis, sheet: &mut Sheet) -> Result<Storeys, StepId> {
        self.are_whole()?;
        let count = sheet.step(N, self.storeys() as f64);
        let height = sheet.step(H_F, self.height_mm());
        let storey = sheet.step(H_S, height / count);
        let modulus = sheet.step(E, self.values.given(MODULUS));
        let span = sheet.step(L_B, self.span_mm(axis));
        match self.system(axis) {
            System::Portal => self.tell_portal(axis, [modulus, storey, span], sheet),
            System::Skin => {
                let thickness = self.values.number(SKIN_THICKNESS).ok_or(NO_SECTION)?;
                let faces = sheet.step(N_F, self.faces(axis));
                let shear = sheet.step(G_S, modulus / 2.6);
                let thickness = sheet.step(T_S, thickness);
                let share = sheet.step(ETA, self.values.given(SKIN_SHARE));
                let stiffness = sheet.step(K_SKIN, faces * share * shear * thickness * span / storey);
                Ok(Storeys::alike(stiffness))
            }
            System::SingleBrace | System::CrossBrace => {
                let area = self.values.number(BRACE_AREA).ok_or(NO_SECTION)?;
                let post = self.values.number(POST_AREA).ok_or(NO_SECTION)?;
                let faces = sheet.step(N_F, self.faces(axis));
                let area = sheet.step(A_D, area);
                let length = sheet.step(L_D, hypot(span, storey));
                let cosine = sheet.step(COS, span / length);
                let braces = sheet.step(K_D, faces * modulus * area / length * (cosine * cosine));
                let post = sheet.step(A_C, post);
                sheet.step(K_P, faces * modulus * post * (span * span) / pow(storey, 3.0));
                let posts_nmm2 = faces * modulus * post * (span * span);
                Ok(Storeys { posts_nmm2, ..Storeys::alike(braces) })
            }
        }
    }

    fn tell_portal(&self, axis: Axis, [modulus, storey, span]: [f64; 3], sheet: &mut Sheet) -> Result<Storeys, StepId> {
        let (post, beam) = match axis {
            Axis::X => (POST_INERTIA_X, BEAM_INERTIA_X),
            Axis::Y => (POST_INERTIA_Y, BEAM_INERTIA_Y),
        };
        let post = self.values.number(post).ok_or(NO_SECTION)?;
        let beam = self.values.number(beam).ok_or(NO_SECTION)?;
        let post = sheet.step(I_C, post);
        let posts = sheet.step(N_C, self.values.given(POSTS));
        let beam = sheet.step(I_B, beam);
        let head = match (self.values.choice(CORNERS), self.values.number(CORNER_STIFFNESS)) {
            (Some(1), _) => sheet.step(R_T_RIGID, 6.0 * modulus * beam / span),
            (Some(2), Some(corner)) => {
                let corner = sheet.step(K_J, corner);
                sheet.step(R_T, 1.0 / (span / (6.0 * modulus * beam) + 1.0 / corner))
            }
            _ => return Err(NO_CORNER),
        };
        let shared = sheet.step(N_J, if self.storeys() > 1 { 2.0 } else { 1.0 });
        let alpha = sheet.step(ALPHA_T, head * storey / (shared * modulus * post));
        let is_fixed = self.values.choice(BASE) == Some(1);
        let column = |foot_nmm: f64| Column {
            bending_nmm2: modulus * post,
            height_mm: storey,
            head_nmm: alpha * modulus * post / storey,
            foot_nmm,
        };
        let one = match is_fixed {
            true => sheet.step(K_FIXED, column_stiffness_n_per_mm(&column(f64::INFINITY))),
            false => sheet.step(K_PINNED, column_stiffness_n_per_mm(&column(0.0))),
        };
        let lowest = sheet.step(K_PORTAL, posts * one);
        if self.storeys() == 1 {
            return Ok(Storeys::alike(lowest));
        }
        sheet.carry(K_LOW, lowest);
        let between = column(alpha * modulus * post / storey);
        let one = sheet.step(K_BOTH, column_stiffness_n_per_mm(&between));
        Ok(Storeys { other_n_per_mm: sheet.step(K_PORTAL, posts * one), ..Storeys::alike(lowest) })
    }

    /// An outcome of both axes: the worse one.
    pub(super) fn both(&self, mut of: impl FnMut(Axis) -> Outcome) -> Outcome {
        let (x, y) = (of(Axis::X), of(Axis::Y));
        let rank = |outcome: &Outcome| match outcome {
            Outcome::Compared { utilisation, .. } if !(*utilisation <= 1.0) => (3, *utilisation),
            Outcome::NotCovered(_) => (2, 0.0),
            Outcome::Compared { utilisation, .. } => (1, *utilisation),
            Outcome::NotNeeded(_) => (0, 0.0),
        };
        if rank(&y) > rank(&x) { y } else { x }
    }
}

/// The heights of the levels, one above the other.
fn heights(levels: &Levels) -> Vec<[f64; 2]> {
    levels.heights_mm.iter().map(|&height| [0.0, height]).collect()
}

/// What the movements leave of the balance of the lowest storey, relative to the weight.
fn residual(levels: &Levels, movements: &[f64]) -> f64 {
    let weight = |level: usize| levels.masses_kg[level] * G_N_PER_KG;
    let whole: f64 = (0..movements.len()).map(weight).sum();
    let turning: f64 = (0..movements.len()).map(|level| weight(level) * levels.heights_mm[level]).sum();
    let sway = movements[0] - turning / levels.base_nmm * levels.heights_mm[0] - levels.lengthening_mm(0);
    (sway * levels.storeys_n_per_mm[0] - whole) / whole
}
