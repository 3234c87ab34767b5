//! Putting a few things in order.
//!
//! The sort of the standard library is made for millions of items and weighs about six kilobytes of wasm for every type
//! that it sorts. What is sorted here are corners, cuts, labels, contents: a thousand at most.

use core::cmp::Ordering;

/// Puts the items in order; equal ones keep their places.
///
/// ```
/// use steadfoot::calc::order::put_in_order;
/// let mut numbers = [3.0, 1.0, 2.0];
/// put_in_order(&mut numbers, f64::total_cmp);
/// assert_eq!(numbers, [1.0, 2.0, 3.0]);
/// ```
pub fn put_in_order<T>(items: &mut [T], mut compare: impl FnMut(&T, &T) -> Ordering) {
    for next in 1..items.len() {
        let mut place = next;
        while place > 0 && compare(&items[place - 1], &items[place]) == Ordering::Greater {
            items.swap(place - 1, place);
            place -= 1;
        }
    }
}
