//! Plan, elevation and rose as lists of marks.
//!
//! A drawing is made here, in px of a given width, and only painted elsewhere: page and builder turn every mark into
//! one SVG element with the mark's class. So both paint the same, labels are placed once, and a test can read the
//! coordinates back.

mod arrow;
mod bars;
mod base;
mod board;
mod centre;
mod contour;
mod dimension;
mod division;
mod elevation;
mod elevation_view;
mod field;
mod figure;
mod floor;
mod force;
mod hatch;
mod lettering;
mod mark;
mod name;
mod note;
mod number_text;
mod of;
mod order;
mod painter;
mod patch;
mod plan;
mod plan_layout;
mod plot;
mod ring;
mod rose;
mod rose_edge;
mod rose_name;
mod scale;
mod scene;
mod side;
mod slab;
mod spot;
mod tray;

pub use bars::bars;
pub use elevation::elevation;
pub use figure::figure;
pub use lettering::Lettering;
pub use mark::{Anchor as TextAnchor, Drawing, Mark, Shape};
pub use name::TEXTS;
pub use of::Of;
pub use painter::Painter;
pub use plan::plan;
pub use plot::plot;
pub use rose::rose;
pub use scale::Scale;
pub use scene::{Anchor, Cabinet, Contents, Ending, Foot, Push, RosePoint, RoseScene, Scene};
pub use side::Side;
