//! What the standard library would bring to the browser: memory, and the end of a panic.
//!
//! The engine does without it, because it would weigh a quarter of the engine.

use core::alloc::{GlobalAlloc, Layout};
use core::arch::wasm32::{memory_grow, memory_size, unreachable};
use core::panic::PanicInfo;
use core::sync::atomic::{AtomicUsize, Ordering};

const PAGE_BYTES: usize = 65_536;

/// Memory that is taken one piece after the other, and given back all at once when the next call begins.
///
/// Nothing lives longer than a call: its text comes in, its answer goes out as a copy. So nothing is freed piece by
/// piece, and the code that would do that, in every function that owns a list, falls away.
struct OneCall {
    /// Where the next piece begins; 0 before the first.
    next: AtomicUsize,
}

#[global_allocator]
static MEMORY: OneCall = OneCall { next: AtomicUsize::new(0) };

/// Gives back all memory; for the beginning of a call, when nothing of the last one is needed.
pub fn begin() {
    MEMORY.next.store(first(), Ordering::Relaxed);
}

/// Where the linker's data end.
fn first() -> usize {
    unsafe extern "C" {
        static __heap_base: u8;
    }
    (&raw const __heap_base).addr()
}

impl OneCall {
    /// Takes memory up to an address, whether or not the module has it yet.
    #[inline(never)]
    fn reach(&self, end: usize) -> bool {
        let has = memory_size(0) * PAGE_BYTES;
        if end > has && memory_grow(0, (end - has).div_ceil(PAGE_BYTES)) == usize::MAX {
            return false;
        }
        self.next.store(end, Ordering::Relaxed);
        true
    }
}

// Sound because each piece begins behind the last one, and because the module has one thread.
unsafe impl GlobalAlloc for OneCall {
    #[inline(never)]
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let next = match self.next.load(Ordering::Relaxed) {
            0 => first(),
            next => next,
        };
        let start = next.next_multiple_of(layout.align());
        if self.reach(start + layout.size()) { start as *mut u8 } else { core::ptr::null_mut() }
    }

    unsafe fn dealloc(&self, _: *mut u8, _: Layout) {}

    #[inline(never)]
    unsafe fn realloc(&self, piece: *mut u8, layout: Layout, size: usize) -> *mut u8 {
        // The last piece grows where it stands.
        if piece as usize + layout.size() == self.next.load(Ordering::Relaxed) {
            return if self.reach(piece as usize + size) { piece } else { core::ptr::null_mut() };
        }
        unsafe {
            let longer = self.alloc(Layout::from_size_align_unchecked(size, layout.align()));
            if !longer.is_null() {
                core::ptr::copy_nonoverlapping(piece, longer, layout.size().min(size));
            }
            longer
        }
    }
}

/// A panic stops the engine where it stands, which the page sees as an error whose stack names the engine's functions.
/// What was wrong is told by the same call natively.
#[panic_handler]
fn stop(_: &PanicInfo) -> ! {
    unreachable()
}
