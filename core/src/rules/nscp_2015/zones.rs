//! Seismic zones of the Philippines.

use crate::calc::Trust;
use crate::rules::documents::NSCP_2015;
use crate::rules::place::{Place, PlaceTable, PlaceValue::Word};

/// The map of zones, in words. Few islands beside Palawan are in zone 2; those are not listed.
pub static ZONES: PlaceTable = PlaceTable {
    rule: "nscp-2015",
    title: "Place",
    fields: &["zone"],
    rows: &[
        Place { name: "Cebu", values: &[Word("4")] },
        Place { name: "Manila", values: &[Word("4")] },
        Place { name: "Palawan", values: &[Word("2")] },
    ],
    document: &NSCP_2015,
    source: "map of seismic zones",
    trust: Trust::Memory,
};
