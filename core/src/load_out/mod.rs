//! Load-out: contents and states, and the mass, the centre of gravity and the inertia of each state.

pub mod content;
mod load;
pub mod load_state;
pub mod state;

pub use content::Content;
pub use load::{Load, TEXTS, load, loads, tell};
pub use load_state::{Aboard, LoadState};
pub use state::State;
