//! What a straight free edge sends back: the plate on springs of a half plane, beside the plate without an edge.
//!
//! Along the edge the settlement under one load is a sum of cosines, cos(s x). Across it, each of them bends as a beam on
//! springs under a pull s: W'''' - 2 s^2 W'' + (s^4 + 1) W = 0, whose parts die away as exp(-alpha y) and exp(-beta y),
//! alpha^2 = s^2 + i and beta^2 = s^2 - i. The plate without an edge, cut there, has moments M_y and forces V_y on the cut;
//! the two parts that undo both are what the edge sends back. Lengths in radii of relative stiffness, loads and rigidity 1.
//!
//! The integral over s is taken on a ray into the upper quarter of the plane, where cos(s x) dies away too; any ray below
//! the branch point at 45 degrees gives the same, which the sheet uses to check one with another.

use core::f64::consts::PI;
use core::ops::{Add, Div, Mul, Sub};

use crate::calc::number;

/// Where a load stands as seen from the place that is looked at; lengths over the radius of relative stiffness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seen {
    /// Along the edge, from the place to the load.
    pub along: f64,
    /// From the edge to the place.
    pub place: f64,
    /// From the edge to the load.
    pub load: f64,
}

/// The ray that is taken, in radians, and another one to check it with.
pub const RAYS: [f64; 2] = [0.35, 0.3];
/// Step of the trapezoidal rule in u, with |s| = exp(u - exp(-u)).
const STEP: f64 = 0.1;
/// Where that begins, at |s| below 1e-10.
const BEGIN: f64 = -3.0;
/// What is smaller than this is not summed.
const NOTHING: f64 = 1e-13;

/// The moments per width that the edge sends back to the place, for a load of 1: along the edge, across it, twisting.
///
/// Scope: load or place off the edge or apart from each other. Nothing is sent back over more than a few radii.
///
/// ```
/// use steadfoot::rules::floor::free_edge::{RAYS, Seen, sent_back};
/// let [along, across, twist] = sent_back(&Seen { along: -1.0, place: 0.5, load: 0.5 }, 0.15, RAYS[0]);
/// assert!((along - 0.002998).abs() < 1e-6 && (across + 0.047376).abs() < 1e-6 && (twist + 0.037797).abs() < 1e-6);
/// ```
pub fn sent_back(seen: &Seen, poisson: f64, ray: f64) -> [f64; 3] {
    let turned = Complex { re: number::cos(ray), im: number::sin(ray) };
    let i = Complex { re: 0.0, im: 1.0 };
    let x = seen.along.abs();
    let mut sums = [0.0; 3];
    let mut u = BEGIN;
    loop {
        let small = number::exp(-u);
        let length = number::exp(u - small);
        let s = turned * length;
        let square = s * s;
        let (alpha, beta) = (root(square + i), root(square - i));
        let p = square * (1.0 - poisson);
        // M_y and V_y of both parts are these times their sizes, and alpha or beta for V_y.
        let (plus, minus) = (p + i, p - i);
        let (load_a, load_b) = (exp(alpha * -seen.load), exp(beta * -seen.load));
        let moment = plus * load_a / alpha - minus * load_b / beta;
        let force = minus * load_a - plus * load_b;
        let determinant = (beta * plus * plus - alpha * minus * minus) * i;
        let weight = turned * (STEP * length * (1.0 + small) / (4.0 * PI));
        let share = weight / determinant;
        let wave = s * i * x;
        let a = share * (moment * beta * plus + force * minus) * exp(alpha * -seen.place + wave);
        let b = share * (force * plus + moment * alpha * minus) * exp(beta * -seen.place + wave) * -1.0;
        sums[0] += (a * (p - i * poisson) + b * (p + i * poisson)).re;
        sums[1] -= (a * plus + b * minus).re;
        sums[2] -= (1.0 - poisson) * (s * (a * alpha + b * beta)).im;
        if u > 0.0 && a.size() + b.size() < NOTHING {
            break;
        }
        u += STEP;
    }
    // Seen from the place, the load lies the other way.
    if seen.along > 0.0 {
        sums[2] = -sums[2];
    }
    sums
}

#[derive(Clone, Copy)]
struct Complex {
    re: f64,
    im: f64,
}

impl Complex {
    fn size(self) -> f64 {
        self.re.abs() + self.im.abs()
    }
}

impl Add for Complex {
    type Output = Complex;
    fn add(self, other: Complex) -> Complex {
        Complex { re: self.re + other.re, im: self.im + other.im }
    }
}

impl Sub for Complex {
    type Output = Complex;
    fn sub(self, other: Complex) -> Complex {
        self + other * -1.0
    }
}

impl Mul for Complex {
    type Output = Complex;
    fn mul(self, other: Complex) -> Complex {
        Complex { re: self.re * other.re - self.im * other.im, im: self.re * other.im + self.im * other.re }
    }
}

impl Mul<f64> for Complex {
    type Output = Complex;
    fn mul(self, factor: f64) -> Complex {
        Complex { re: self.re * factor, im: self.im * factor }
    }
}

impl Div for Complex {
    type Output = Complex;
    fn div(self, other: Complex) -> Complex {
        let conjugate = Complex { re: other.re, im: -other.im };
        self * conjugate * (1.0 / (other.re * other.re + other.im * other.im))
    }
}

/// The root to the right of the imaginary axis; on the rays its square is there as well.
fn root(z: Complex) -> Complex {
    let re = number::sqrt((number::hypot(z.re, z.im) + z.re) / 2.0);
    Complex { re, im: z.im / (2.0 * re) }
}

fn exp(z: Complex) -> Complex {
    let size = number::exp(z.re);
    Complex { re: size * number::cos(z.im), im: size * number::sin(z.im) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_ray_gives_the_same_moments() {
        for place in [0.03, 0.1, 0.5, 1.3] {
            for (along, load) in [(0.2, 0.03), (0.5, 0.1), (1.0, 0.5), (2.0, 1.3), (4.0, 0.1), (8.0, 0.03), (0.0, 2.0)]
            {
                let seen = Seen { along, place, load };
                let [one, other] = RAYS.map(|ray| sent_back(&seen, 0.15, ray));
                for (one, other) in one.iter().zip(other) {
                    // What the step of the sum leaves where the load is near the edge and far along it.
                    assert!((one - other).abs() < 2e-9, "{seen:?}: {one} {other}");
                }
            }
        }
    }

    #[test]
    fn far_from_the_edge_nothing_is_sent_back() {
        let far = |place: f64| sent_back(&Seen { along: 1.0, place, load: place }, 0.2, RAYS[0]);
        assert!(far(1.0).iter().any(|moment| moment.abs() > 1e-3));
        assert!(far(6.0).iter().all(|moment| moment.abs() < 1e-4), "{:?}", far(6.0));
    }
}
