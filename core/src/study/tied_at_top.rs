//! Two kinds of cabinet in a row, full ones and empty ones, whose tops bars keep together while they lean.

use crate::base_reactions::{BaseLoad, Push, Reactions, Supports};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Detail, Part, Sheet, Subject, System, number, steps};

steps! { 216 "tied at the top";
    H_T "h_t" Length (INPUT "row" Derived) "Height of the bars": Given;
    N_F "n_F" Number (INPUT "row" Derived) "Full cabinets": Given;
    N_E "n_E" Number (INPUT "row" Derived) "Empty cabinets": Given;
    F_EACH "f" Force (STATICS "both kinds lean alike at the bars" Derived) "What the bars add to each empty cabinet; the residual is the difference of the leans": Solved;
    F_BACK "f_F" Force (STATICS "" Derived) "What they take off each full one" = "n_E * f / n_F";
    F_T "F_t" Force (STATICS "sum of forces" Derived) "Force in the bar between full and empty ones" = "n_E * f";
}

/// One kind of cabinet under its push.
#[derive(Clone, Copy)]
pub struct Leaning<'s> {
    /// What it stands on.
    pub supports: &'s Supports,
    /// The push; the bars work along x.
    pub push: Push,
    /// How many of its kind.
    pub count: usize,
}

/// What the bars do.
#[derive(Clone, Copy, Debug)]
pub struct Tie {
    /// Force in the bar between the kinds.
    pub bar_n: f64,
    /// Greatest pull of an anchor of a full cabinet, and of an empty one.
    pub pulls_n: [f64; 2],
    /// Shear under a full cabinet, and under an empty one.
    pub shears_n: [f64; 2],
}

/// Halvings of the bracket of the force.
const HALVINGS: usize = 60;

impl Leaning<'_> {
    fn load(&self, added_nmm: f64) -> BaseLoad {
        let load = BaseLoad::from(self.push);
        BaseLoad { moment_x_nmm: load.moment_x_nmm + added_nmm, ..load }
    }

    /// How far its base turns under its push and an added moment; infinite where it tips.
    fn lean(&self, added_nmm: f64, reactions: &mut Reactions) -> f64 {
        let load = self.load(added_nmm);
        match self.supports.settle_into(&load, reactions) {
            Ok(()) => reactions.plane.slope_x,
            Err(_) => {
                let corners = self.supports.feet_hull().corners();
                let middle_mm = corners.iter().map(|corner| corner.x_mm).sum::<f64>() / corners.len() as f64;
                if load.moment_x_nmm > load.down_n * middle_mm { f64::INFINITY } else { f64::NEG_INFINITY }
            }
        }
    }
}

/// The force that makes full and empty cabinets lean alike; none where together they tip.
///
/// Clause: equilibrium of rigid bodies on one-sided supports, joined by bars with pinned ends at one height. Scope: a
/// push in any direction, both kinds pushed at the same time and alike; the bars work along the row only; the bars stay straight, the bases do not slide. Units: N, mm.
pub fn tied(full: &Leaning, empty: &Leaning, height_mm: f64, sheet: &mut Sheet) -> Option<Tie> {
    let (many_full, many_empty) = (full.count as f64, empty.count as f64);
    let mut reactions = Reactions::default();
    let (along, across) = (number::cos(full.push.direction_rad), number::sin(full.push.direction_rad));
    let towards = if along < 0.0 { -1.0 } else { 1.0 };
    // Positive where the empty ones lean further that way than the full ones.
    let mut ahead = |each_n: f64| {
        let empty_lean = empty.lean(each_n * height_mm, &mut reactions);
        let full_lean = full.lean(-each_n * height_mm * many_empty / many_full, &mut reactions);
        // Where both tip the same way nothing tells them apart.
        if empty_lean == full_lean { 0.0 } else { empty_lean - full_lean }
    };
    let most_n = 2.0 * (full.push.horizontal_n * full.push.height_mm + empty.push.horizontal_n * empty.push.height_mm)
        / height_mm;
    let (mut low, mut high) = (-most_n, most_n);
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        if ahead(middle) > 0.0 { high = middle } else { low = middle }
    }
    let each_n = (low + high) / 2.0;
    let mut pull = |kind: &Leaning, added_nmm: f64| {
        kind.supports.settle_into(&kind.load(added_nmm), &mut reactions).ok()?;
        Some((reactions.tension_max_n(), reactions.plane.slope_x))
    };
    let (full_n, full_lean) = pull(full, -each_n * height_mm * many_empty / many_full)?;
    let (empty_n, empty_lean) = pull(empty, each_n * height_mm)?;
    sheet.open(Part::BaseReactions, Subject::Whole, None, System::Si);
    sheet.step(H_T, height_mm);
    sheet.step(N_F, many_full);
    sheet.step(N_E, many_empty);
    let told_n = sheet.detailed(F_EACH, towards * each_n, || Detail::Residuals(alloc::vec![empty_lean - full_lean]));
    sheet.step(F_BACK, many_empty * told_n / many_full);
    let bar_n = sheet.step(F_T, many_empty * told_n);
    // What the bars take off the full ones they bring to the empty ones, and so to their anchors.
    let shears_n = [(full, -each_n * many_empty / many_full), (empty, each_n)].map(|(kind, added_n)| {
        number::hypot(kind.push.horizontal_n * along + added_n, kind.push.horizontal_n * across)
    });
    Some(Tie { bar_n, pulls_n: [full_n, empty_n], shears_n })
}
