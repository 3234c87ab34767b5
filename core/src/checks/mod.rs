//! The checks: standing free, anchors, feet.

pub mod feet;
pub mod standing_free;
