use alloc::vec::Vec;

use crate::calc::order::put_in_order;

/// The places 0 to `count` in the order of a key, the smallest first; equal keys keep their order.
#[inline(never)]
pub fn ordered(count: usize, key: &dyn Fn(usize) -> f64) -> Vec<usize> {
    let mut keys: Vec<(f64, usize)> = (0..count).map(|place| (key(place), place)).collect();
    put_in_order(&mut keys, |a, b| a.0.total_cmp(&b.0));
    keys.into_iter().map(|(_, place)| place).collect()
}
