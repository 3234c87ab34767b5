//! Contents and states: what is in the cabinet at each time of its life.

pub mod content;
pub mod state;

pub use content::Content;
pub use state::State;
