//! Maps: two knobs turned against each other, every cell a whole assessment.

use alloc::vec::Vec;

use super::found::Found;
use super::knob::{Knob, turned_both};
use crate::project::{HASH_START, Project, built_in, hashed};

/// A knob with the values of an axis.
#[derive(Clone, Copy, Debug)]
pub struct Along<'a> {
    /// The knob.
    pub knob: Knob,
    /// Its values, in any order.
    pub values: &'a [f64],
}

/// Assesses the cells of a portion of a map, the rows of `y` one after the other.
///
/// Nothing is carried from one cell to the next, so a cell comes out the same in whichever portion it is asked, and the
/// same as [`assess`](crate::project::assess) of the project at that point.
///
/// ```
/// use steadfoot::explore::{Along, Knob, Standing, map_cells};
/// let project = steadfoot::project::built_in().unwrap();
/// let x = Along { knob: Knob::Load, values: &[100.0, 1600.0] };
/// let y = Along { knob: Knob::Strength, values: &[0.2] };
/// let cells = map_cells(&project, x, y);
/// assert!(cells[0].utilisation < cells[1].utilisation);
/// assert!(cells.iter().all(|cell| cell.standing == Standing::Holds));
/// ```
pub fn map_cells(project: &Project, x: Along, y: Along) -> Vec<Found> {
    let mut cells = Vec::with_capacity(x.values.len() * y.values.len());
    for &of_y in y.values {
        for &of_x in x.values {
            let turned = turned_both(project, [(x.knob, of_x), (y.knob, of_y)]);
            cells.push(turned.map_or(Found::NOT_BUILT, |turned| Found::assess(&turned, None)));
        }
    }
    cells
}

/// A portion of a map of the built-in cabinet, four loads by three strengths, as a hash; the same on every target.
///
/// ```
/// assert_ne!(steadfoot::explore::map_check(), 0);
/// ```
pub fn map_check() -> u32 {
    let Some(project) = built_in() else { return 0 };
    let x = Along { knob: Knob::Load, values: &[400.0, 800.0, 1200.0, 1600.0] };
    let y = Along { knob: Knob::Strength, values: &[0.4, 0.8, 1.2] };
    map_cells(&project, x, y).iter().flat_map(Found::packed).fold(HASH_START, hashed)
}

/// `count` values from one end to the other, in even steps or even ratios; the notches of a knob that has only some.
pub fn places(knob: Knob, project: &Project, [low, high]: [f64; 2], count: usize) -> Vec<f64> {
    if let Some(notches) = knob.notches(project) {
        return notches.iter().map(|notch| notch.value).collect();
    }
    let last = count.max(2) - 1;
    let place = |step: usize| {
        let part = step as f64 / last as f64;
        match step {
            0 => low,
            _ if step == last => high,
            _ if knob.is_by_ratio() => low * crate::calc::number::pow(high / low, part),
            _ => low + (high - low) * part,
        }
    };
    (0..=last).map(place).collect()
}
