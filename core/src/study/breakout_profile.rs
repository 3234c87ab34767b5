//! The bodies that bolts would pull out of the concrete, cut by an upright plane.

use alloc::vec::Vec;

use crate::calc::order::put_in_order;

/// A bolt as the plane of a section meets its body.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Cut {
    /// Where the bolt stands along the section.
    pub along_mm: f64,
    /// How far it stands off the plane.
    pub off_mm: f64,
    /// Its embedment.
    pub depth_mm: f64,
}

/// A body rises by one over this much.
const SLOPE: f64 = 1.5;

impl Cut {
    /// How deep the body reaches in the plane at a place along it; not positive outside of it.
    ///
    /// The body is a pyramid on a square, so the larger of the two distances counts.
    pub fn depth_at_mm(&self, along_mm: f64) -> f64 {
        self.depth_mm - (along_mm - self.along_mm).abs().max(self.off_mm) / SLOPE
    }
}

/// The united bodies between two ends of the section, as outlines below the surface at y = 0.
pub fn profiles(cuts: &[Cut], ends_mm: [f64; 2]) -> Vec<Vec<[f64; 2]>> {
    let mut places: Vec<f64> = ends_mm.into();
    for (number, cut) in cuts.iter().enumerate() {
        let reach_mm = SLOPE * cut.depth_mm;
        for along_mm in [0.0, cut.off_mm, reach_mm] {
            places.extend([cut.along_mm - along_mm, cut.along_mm + along_mm]);
        }
        // Where one body gives way to another: slope meets slope, or slope meets the flat top of one off the plane.
        for (other_number, other) in cuts.iter().enumerate() {
            if other_number == number {
                continue;
            }
            let lead_mm = SLOPE * (cut.depth_mm - other.depth_mm);
            places.push((lead_mm + cut.along_mm + other.along_mm) / 2.0);
            let flat_mm = SLOPE * (cut.depth_mm - other.depth_mm) + other.off_mm;
            places.extend([cut.along_mm - flat_mm, cut.along_mm + flat_mm]);
        }
    }
    places.retain(|place| *place >= ends_mm[0] && *place <= ends_mm[1]);
    put_in_order(&mut places, f64::total_cmp);
    places.dedup();
    let depth_mm = |along_mm: f64| cuts.iter().fold(0.0, |deepest: f64, cut| deepest.max(cut.depth_at_mm(along_mm)));
    let mut outlines: Vec<Vec<[f64; 2]>> = Vec::new();
    let mut open: Vec<[f64; 2]> = Vec::new();
    for (number, &place) in places.iter().enumerate() {
        let here_mm = depth_mm(place);
        let goes_on = places.get(number + 1).is_some_and(|next| depth_mm((place + next) / 2.0) > NOTHING_MM);
        if open.is_empty() && goes_on {
            open.push([place, 0.0]);
        }
        if !open.is_empty() {
            open.push([place, -here_mm]);
        }
        if !goes_on && !open.is_empty() {
            open.push([place, 0.0]);
            open.dedup();
            outlines.push(core::mem::take(&mut open));
        }
    }
    outlines
}

/// A body shallower than this is rounding.
const NOTHING_MM: f64 = 1e-9;
