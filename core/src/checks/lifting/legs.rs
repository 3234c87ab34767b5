//! The pulls in the legs of a sling.

use alloc::vec::Vec;

use super::{Hung, Sharing};
use crate::calc::number::{atan2, hypot, sqrt};
use crate::calc::unit::G_N_PER_KG;

/// One leg of the sling at its worst.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Leg {
    /// Place of its lifting point in the file.
    pub point: usize,
    /// The hardest pull that any way of sharing gives it, the allowance for hoisting included.
    pub tension_n: f64,
    /// Its angle from the vertical, once the centre of gravity hangs below the hook.
    pub from_vertical_rad: f64,
    /// Its angle from the upright axis of the cabinet, which is that of an eyebolt in its top.
    pub from_axis_rad: f64,
    /// What is left of the equations, relative to the weight.
    pub residual: f64,
}

/// Every leg with its hardest pull.
///
/// Statics of forces that meet in the hook: three unknown pulls, three equations. Scope: at least three lifting points
/// below the hook; none where no three of them hold the load. Equalised legs share like springs of equal stiffness, so
/// their vertical parts lie on a plane over the plan of the points.
///
/// ```
/// use steadfoot::cabinet::LiftingPoint;
/// use steadfoot::checks::lifting::{FIELDS, Hung, legs};
/// use steadfoot::input::field::{Value, Values};
/// let mut values = Values(vec![Value::Unknown; FIELDS.len()]);
/// values.0[0] = Value::Number(1000.0);
/// values.0[2] = Value::Choice(0);
/// values.0[4] = Value::Number(1.0);
/// let points = [[-500.0, -500.0], [500.0, -500.0], [500.0, 500.0], [-500.0, 500.0]];
/// let points = points.map(|[x, y]| LiftingPoint { at_mm: [x, y, 2000.0] });
/// let hung = Hung { mass_kg: 1000.0, centre_mm: [0.0, 0.0, 1000.0], points: &points, values: &values };
/// // A centred load hangs on two opposite legs: half the weight each, 35.3 degrees from the vertical.
/// let pull = 0.5 * 1000.0 * 9.80665 / (35.264f64).to_radians().cos();
/// assert!(legs(&hung).iter().all(|leg| (leg.tension_n / pull - 1.0).abs() < 1e-5));
/// ```
pub fn legs(hung: &Hung) -> Vec<Leg> {
    let hook = hung.hook_mm();
    let down = less(hung.centre_mm, hook);
    let weight = hung.mass_kg * G_N_PER_KG * hung.values.given(super::fields::DYNAMIC);
    let count = hung.points.len();
    if count < 3 || !(down[2] < 0.0) || hung.points.iter().any(|point| !(point.at_mm[2] < hook[2])) {
        return Vec::new();
    }
    let down = unit(down);
    let ways: Vec<[f64; 3]> = hung.points.iter().map(|point| unit(less(hook, point.at_mm))).collect();
    let load = down.map(|part| part * weight);
    let mut pulls: Vec<Option<(f64, f64)>> = alloc::vec![None; count];
    let mut take = |point: usize, tension_n: f64, residual: f64| {
        if pulls[point].is_none_or(|(known, _)| tension_n > known) {
            pulls[point] = Some((tension_n, residual));
        }
    };
    if hung.sharing() == Sharing::Equalised {
        for (point, (tension_n, residual)) in equalised(&ways, load).into_iter().enumerate() {
            take(point, tension_n, residual);
        }
    } else {
        for (a, b, c) in triples(count) {
            if let Some((tensions, residual)) = held([ways[a], ways[b], ways[c]], load) {
                for (point, tension_n) in [a, b, c].into_iter().zip(tensions) {
                    take(point, tension_n, residual);
                }
            }
        }
    }
    if pulls.iter().all(Option::is_none) {
        return Vec::new();
    }
    let legs = pulls.iter().zip(&ways).enumerate().map(|(point, (pull, way))| {
        let (tension_n, residual) = pull.unwrap_or((0.0, 0.0));
        Leg {
            point,
            tension_n,
            from_vertical_rad: between(*way, down.map(|part| -part)),
            from_axis_rad: between(*way, [0.0, 0.0, 1.0]),
            residual,
        }
    });
    legs.collect()
}

/// All sets of three places.
fn triples(count: usize) -> impl Iterator<Item = (usize, usize, usize)> {
    (0..count).flat_map(move |a| (a + 1..count).flat_map(move |b| (b + 1..count).map(move |c| (a, b, c))))
}

/// A leg may push by this part of the weight before its set does not hold: a load right above two legs.
const SLACK: f64 = 1e-9;

/// The pulls of three legs that balance a load, and what is left of the equations; none where one would have to push.
fn held(ways: [[f64; 3]; 3], load: [f64; 3]) -> Option<([f64; 3], f64)> {
    let size = length(load);
    let whole = determinant(ways);
    if whole.abs() < 1e-12 {
        return None;
    }
    let target = load.map(|part| -part);
    let mut tensions = [0.0; 3];
    for place in 0..3 {
        let mut replaced = ways;
        replaced[place] = target;
        let tension = determinant(replaced) / whole;
        if !(tension > -SLACK * size) {
            return None;
        }
        tensions[place] = crate::calc::number::positive_part(tension);
    }
    let mut left = load;
    for (way, tension) in ways.iter().zip(tensions) {
        for axis in 0..3 {
            left[axis] += way[axis] * tension;
        }
    }
    Some((tensions, length(left) / size))
}

/// The pulls of legs that share like equal springs: the smallest sum of squares that balances the load.
fn equalised(ways: &[[f64; 3]], load: [f64; 3]) -> Vec<(f64, f64)> {
    // T = A^t (A A^t)^-1 (-load), A the matrix of the legs' directions.
    let mut square = [[0.0; 3]; 3];
    for way in ways {
        for row in 0..3 {
            for column in 0..3 {
                square[row][column] += way[row] * way[column];
            }
        }
    }
    let whole = determinant(square);
    let target = load.map(|part| -part);
    let size = length(load);
    let mut factors = [0.0; 3];
    for (place, factor) in factors.iter_mut().enumerate() {
        let mut replaced = square;
        replaced[place] = target;
        *factor = determinant(replaced) / whole;
    }
    let tensions: Vec<f64> = ways.iter().map(|way| (0..3).map(|axis| way[axis] * factors[axis]).sum::<f64>()).collect();
    if !(whole.abs() > 1e-12) || tensions.iter().any(|tension| !(*tension > -SLACK * size)) {
        return Vec::new();
    }
    let mut left = load;
    for (way, tension) in ways.iter().zip(&tensions) {
        for axis in 0..3 {
            left[axis] += way[axis] * tension;
        }
    }
    tensions.into_iter().map(|tension| (crate::calc::number::positive_part(tension), length(left) / size)).collect()
}

fn determinant([a, b, c]: [[f64; 3]; 3]) -> f64 {
    let cross = [b[1] * c[2] - b[2] * c[1], b[2] * c[0] - b[0] * c[2], b[0] * c[1] - b[1] * c[0]];
    a[0] * cross[0] + a[1] * cross[1] + a[2] * cross[2]
}

fn between(a: [f64; 3], b: [f64; 3]) -> f64 {
    let cross = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
    atan2(length(cross), a[0] * b[0] + a[1] * b[1] + a[2] * b[2])
}

fn less(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn length(a: [f64; 3]) -> f64 {
    hypot(hypot(a[0], a[1]), a[2])
}

fn unit(a: [f64; 3]) -> [f64; 3] {
    let size = sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
    a.map(|part| part / size)
}
