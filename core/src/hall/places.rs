//! The names of places that were met in a schedule, so that none stands twice.

use alloc::vec::Vec;

/// Most places of a schedule, whose names have to be known so that none stands twice.
pub const PLACES_MAX: usize = 1_000_000;

/// The places that were met, as numbers made of their names: a million of them take 16 MB.
#[derive(Debug, Default)]
pub struct Places {
    slots: Vec<u64>,
    count: usize,
}

/// What came of a name.
pub enum Insert {
    /// It was not met before.
    New,
    /// It was.
    Known,
    /// There are too many to know.
    Full,
}

impl Places {
    /// Takes a name in.
    pub fn insert(&mut self, place: &str) -> Insert {
        if 2 * (self.count + 1) > self.slots.len() {
            if self.count >= PLACES_MAX {
                return Insert::Full;
            }
            let grown = alloc::vec![0; (4 * self.count).next_power_of_two().max(64)];
            for mark in core::mem::replace(&mut self.slots, grown) {
                if mark != 0 {
                    let slot = self.slot(mark);
                    self.slots[slot] = mark;
                }
            }
        }
        let mark = mark_of(place);
        let slot = self.slot(mark);
        if self.slots[slot] == mark {
            return Insert::Known;
        }
        self.slots[slot] = mark;
        self.count += 1;
        Insert::New
    }

    /// Where a mark stands, or would stand.
    fn slot(&self, mark: u64) -> usize {
        let last = self.slots.len() - 1;
        let mut slot = mark as usize & last;
        while self.slots[slot] != 0 && self.slots[slot] != mark {
            slot = (slot + 1) & last;
        }
        slot
    }
}

/// A number for a name: two rounds of multiplying and shifting a letter, so that one changed letter changes half its
/// bits. Two of a million names share one with a chance of one in thirty million; then a good row is told as repeated,
/// never a repeated one as good.
fn mark_of(name: &str) -> u64 {
    let mut mark = 0x9e37_79b9_7f4a_7c15u64;
    for byte in name.bytes() {
        mark = (mark ^ u64::from(byte)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mark ^= mark >> 29;
        mark = mark.wrapping_mul(0x94d0_49bb_1331_11eb);
        mark ^= mark >> 32;
    }
    mark.max(1)
}
