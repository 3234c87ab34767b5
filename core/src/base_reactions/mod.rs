//! Base reactions: a rigid body on feet that only push and anchors that only pull.
//!
//! The body settles by a plane w = a + b x + c y. Three unknowns, whatever the number of supports; the stored energy
//! is convex, so there is one answer, and whether there is one is known before it is looked for.
//! Assumed: rigid base, rigid floor, no preload in the anchors.

mod contact;
mod direction;
mod load;
mod newton;
mod pivot;
mod prying;
mod reactions;
mod samples;
mod scaled;
mod shear;
mod slotted;
mod support;
mod supports;
mod switches;
pub mod told;

pub use direction::{Directions, Peak};
pub use load::{BaseLoad, Push};
pub use pivot::{Pivot, pivots};
pub use prying::{Bracket, TEXTS as PRYING_TEXTS};
pub use reactions::{FootReaction, Plane, Reactions};
pub use shear::{Horizontal, Shear, ShearShares, shear_shares};
pub use slotted::{Held, slotted_shares};
pub use support::{Anchor, Foot};
pub use supports::{Supports, Unbalanced};
