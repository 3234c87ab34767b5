//! What several studies of the floor share: the worst that feet feel, and outlines for figures.

use alloc::vec::Vec;

use crate::base_reactions::{BaseLoad, Plane, Reactions};
use crate::project::bench::{Bench, Place, Purpose, Run};
use crate::report::figure::FigurePart;

/// The worst that any foot feels over all states, load cases of feet and directions.
#[derive(Clone, Debug)]
pub struct Stood {
    /// Highest force of a foot.
    pub force_n: f64,
    /// Highest pressure under a foot.
    pub peak_mpa: f64,
    /// Direction of that pressure.
    pub direction_rad: f64,
    /// Place of that pressure, with how the cabinet has settled there.
    pub at: Option<(Place, Plane)>,
}

/// The runs in which feet are looked at.
pub fn foot_runs(bench: &Bench) -> Vec<Run> {
    bench.runs.iter().copied().filter(|run| run.purpose == Purpose::Component).collect()
}

/// The worst that feet feel, over the directions that checks try.
pub fn settled_everywhere(bench: &Bench) -> Stood {
    let mut stood = Stood { force_n: 0.0, peak_mpa: 0.0, direction_rad: 0.0, at: None };
    let mut reactions = Reactions::default();
    for state in 0..bench.loads.len() {
        for run in foot_runs(bench) {
            for &direction_rad in bench.plan_directions(run).list_rad() {
                let place = Place { state, run, direction_rad, stiffness: 0 };
                let load = BaseLoad::from(bench.case_load(&place).push());
                if bench.supports[0].settle_into(&load, &mut reactions).is_err() {
                    continue;
                }
                for foot in &reactions.feet {
                    stood.force_n = stood.force_n.max(foot.force_n);
                    if foot.peak_pressure_mpa > stood.peak_mpa {
                        stood.peak_mpa = foot.peak_pressure_mpa;
                        stood.direction_rad = direction_rad;
                        stood.at = Some((place, reactions.plane));
                    }
                }
            }
        }
    }
    stood
}

/// A rectangle as an outline of a figure.
pub fn outline_of(class: &'static str, at_mm: [f64; 2], half_mm: [f64; 2]) -> FigurePart {
    let corner = |x: f64, y: f64| [at_mm[0] + x * half_mm[0], at_mm[1] + y * half_mm[1]];
    FigurePart::Outline {
        class,
        corners_mm: [corner(-1.0, -1.0), corner(1.0, -1.0), corner(1.0, 1.0), corner(-1.0, 1.0)].into(),
    }
}
