//! Sets of anchors, the worst in them, the connected groups, and what is already known about a set.

use alloc::vec::Vec;

/// A set of anchors, one bit each.
pub type Set = u128;

/// The most anchors that fit a set.
pub const ANCHORS_MAX: usize = 128;

/// The anchors of a set in rising order.
pub fn members(mut set: Set) -> impl Iterator<Item = usize> {
    core::iter::from_fn(move || {
        if set == 0 {
            return None;
        }
        let place = set.trailing_zeros() as usize;
        set &= set - 1;
        Some(place)
    })
}

/// A set of one.
#[inline]
pub fn only(place: usize) -> Set {
    // A shift of 128 bits is a call in the browser, one of 64 an instruction.
    let bit = Set::from(1_u64 << (place % 64));
    if place < 64 { bit } else { bit << 64 }
}

/// The larger of two; no number stays no number.
pub fn larger(a: f64, b: f64) -> f64 {
    if a > b || a.is_nan() { a } else { b }
}

/// The place with the largest ratio; one that is no number is the worst of all.
pub fn worst(acting: Set, ratio: impl Fn(usize) -> f64) -> usize {
    let mut worst = (0, f64::NEG_INFINITY);
    for place in members(acting) {
        let ratio = ratio(place);
        if ratio > worst.1 || (ratio.is_nan() && !worst.1.is_nan()) {
            worst = (place, ratio);
        }
    }
    worst.0
}

/// Forces below this share of the largest are rounding of the statics, and move no anchor into a group.
const NOTHING: f64 = 1e-9;

/// The size below which a force is none, beside the largest one.
pub fn floor(largest: f64) -> f64 {
    NOTHING * largest
}

/// The anchors of which a claim is true.
pub fn set_where<T>(of: &[T], claim: impl Fn(&T) -> bool) -> Set {
    let (mut set, mut bit): (Set, Set) = (0, 1);
    for one in of {
        if claim(one) {
            set |= bit;
        }
        bit <<= 1;
    }
    set
}

/// Groups that were worked out for sets of acting anchors.
pub struct Known<T> {
    found: Vec<(Set, T)>,
    last: usize,
}

/// Sets kept at once. A sweep over all directions sees a few dozen.
const KNOWN_MAX: usize = 1024;

impl<T> Known<T> {
    /// Nothing known yet.
    pub fn new() -> Self {
        Known { found: Vec::new(), last: 0 }
    }

    /// What is known for a set, made when it is asked for the first time.
    pub fn of(&mut self, set: Set, make: impl FnOnce() -> T) -> &mut T {
        if self.found.get(self.last).is_none_or(|entry| entry.0 != set) {
            match self.found.iter().position(|entry| entry.0 == set) {
                Some(place) => self.last = place,
                None => {
                    if self.found.len() >= KNOWN_MAX {
                        self.found.clear();
                    }
                    self.found.push((set, make()));
                    self.last = self.found.len() - 1;
                }
            }
        }
        &mut self.found[self.last].1
    }
}

/// Connected sets of acting anchors: two belong together when `linked` says so, directly or through others.
pub fn connected(acting: Set, linked: impl Fn(usize, usize) -> bool) -> Vec<Set> {
    let mut left = acting;
    let mut groups = Vec::new();
    while left != 0 {
        let mut group = only(left.trailing_zeros() as usize);
        let mut fresh = group;
        left &= !group;
        while fresh != 0 {
            let from = fresh.trailing_zeros() as usize;
            fresh &= fresh - 1;
            for to in members(left) {
                if linked(from, to) {
                    group |= only(to);
                    fresh |= only(to);
                    left &= !only(to);
                }
            }
        }
        groups.push(group);
    }
    groups
}
