//! The engine's memory: free blocks in lists, one list for each power of two.
//!
//! The engine asks for small lists by the thousand and gives them back soon after. A block of the right size is then the
//! first of its list, which takes a dozen instructions; the standard allocator takes five times as many and weighs eight
//! kilobytes. The price: a block may be twice as large as what was asked for, and one that was cut stays of its size.

use core::alloc::{GlobalAlloc, Layout};
use core::arch::wasm32::memory_grow;
use core::cell::Cell;
use core::ptr::null_mut;

#[global_allocator]
static MEMORY: Memory = Memory { free: [const { Cell::new(null_mut()) }; SIZES], from: Cell::new(0), to: Cell::new(0) };

/// Sizes of blocks: powers of two that an address of 32 bits can tell.
const SIZES: usize = 32;
/// The smallest block, and the alignment of every block.
const LEAST: usize = 16;
/// A page of memory in bytes, and how many are asked for at once at least.
const PAGE: usize = 65_536;
const PAGES_LEAST: usize = 4;

struct Memory {
    /// The first free block of each size; every free block begins with the address of the next.
    free: [Cell<*mut u8>; SIZES],
    /// What no block was cut from yet.
    from: Cell<usize>,
    to: Cell<usize>,
}

// SAFETY: the module has one thread; the page's workers have a module each.
unsafe impl Sync for Memory {}

/// The power of two of the block that something of this layout takes.
fn power(layout: Layout) -> usize {
    let size = if layout.size() > LEAST { layout.size() } else { LEAST };
    (usize::BITS - (size - 1).leading_zeros()) as usize
}

impl Memory {
    /// Cuts a new block; null where the browser gives no more memory.
    #[inline(never)]
    fn cut(&self, power: usize, align: usize) -> *mut u8 {
        let align = if align > LEAST { align } else { LEAST };
        let Some(size) = 1_usize.checked_shl(power as u32) else { return null_mut() };
        let aligned = |from: usize| from.checked_add(align - 1).map(|from| from & !(align - 1));
        let end = |from: usize| from.checked_add(size);
        let mut begin = aligned(self.from.get());
        if begin.and_then(end).is_none_or(|end| end > self.to.get()) {
            let Some(pages) = size.checked_add(align).map(|bytes| bytes.div_ceil(PAGE)) else { return null_mut() };
            let pages = if pages > PAGES_LEAST { pages } else { PAGES_LEAST };
            let page = memory_grow(0, pages);
            if page == usize::MAX {
                return null_mut();
            }
            // Where nobody else took memory in between, the rest of the last piece goes on into the new one.
            if page * PAGE != self.to.get() {
                self.from.set(page * PAGE);
            }
            self.to.set((page + pages).saturating_mul(PAGE));
            begin = aligned(self.from.get());
        }
        let Some(begin) = begin else { return null_mut() };
        self.from.set(begin + size);
        begin as *mut u8
    }
}

// SAFETY: a block is either in one list or handed out, is as large as the power of its layout says, and starts at a
// multiple of the alignment: of LEAST when it comes from a list, of its own when it asked for more and was cut.
unsafe impl GlobalAlloc for Memory {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let power = power(layout);
        let Some(free) = self.free.get(power) else { return null_mut() };
        let block = free.get();
        if block.is_null() || layout.align() > LEAST {
            return self.cut(power, layout.align());
        }
        // SAFETY: a free block begins with the address of the next.
        free.set(unsafe { *block.cast::<*mut u8>() });
        block
    }

    unsafe fn dealloc(&self, block: *mut u8, layout: Layout) {
        if let Some(free) = self.free.get(power(layout)) {
            // SAFETY: nobody else has the block any more, and the smallest one holds an address.
            unsafe { *block.cast::<*mut u8>() = free.get() };
            free.set(block);
        }
    }

    unsafe fn realloc(&self, block: *mut u8, layout: Layout, size: usize) -> *mut u8 {
        // SAFETY: whoever asks keeps the size below what an address can tell, as this function's contract says.
        let wanted = unsafe { Layout::from_size_align_unchecked(size, layout.align()) };
        if power(wanted) == power(layout) {
            return block;
        }
        // SAFETY: as much as the smaller of both is copied between two blocks that do not meet.
        unsafe {
            let other = self.alloc(wanted);
            if !other.is_null() {
                let kept = if size < layout.size() { size } else { layout.size() };
                other.copy_from_nonoverlapping(block, kept);
                self.dealloc(block, layout);
            }
            other
        }
    }
}
