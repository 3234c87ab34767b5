//! How far can it go: asks `assess` again and again.

mod edit;
mod found;
mod how_far;
mod knob;
mod ladder;
mod limit;
mod map;
mod pattern;
mod reorder;
mod row;
mod scaled;
mod setting_out;
mod tolerance;
mod trial;
mod unknowns;
mod what_matters;
mod what_would_hold;

pub use edit::edits;
pub use found::{Found, Standing};
pub use how_far::{Bound, HowFar, Ranged, Stretch};
pub use knob::{KNOBS, Knob, Notch, TEXTS as KNOB_TEXTS, turned_both};
pub use ladder::{CHANGES, Change, Ladder, Rung, Rungs, is_by_report, nearest_edge};
pub use limit::{Ending, Limit, LimitOf, What, limits, load_limit};
pub use map::{Along, map_cells, places};
pub use pattern::{AnchorsEdit, Pattern, PlainAnchor, patterned};
pub use reorder::{ORDERS_MAX, Ordered, Reorder};
pub use row::{NoRow, Pitched, as_one_body, one_of_the_row};
pub use scaled::{Edit, scaled_load, scaled_strength, turned};
pub use setting_out::{Hole, holes};
pub use tolerance::{Circle, MOST_MM, STEP_MM, Tolerance};
pub use trial::{Glance, Trial, Trials};
pub use unknowns::{Came, Unknowns, assess_open, open_check};
pub use what_matters::{Group, Moved, SHARE, SHIFT_MM, WhatMatters};
pub use what_would_hold::{Entry, PLOTTED, Refusal, WhatWouldHold, search_check};
