//! Region factors of places in Japan.

use crate::calc::Trust;
use crate::rules::documents::JAPAN_EQUIPMENT;
use crate::rules::place::{Place, PlaceTable, PlaceValue::Word};

/// Notification 1793 of 1980, some rows.
pub static REGIONS: PlaceTable = PlaceTable {
    rule: "japan-equipment",
    title: "Place",
    fields: &["region_factor"],
    rows: &[
        Place { name: "Okinawa", values: &[Word("0.7")] },
        Place { name: "Osaka", values: &[Word("1.0")] },
        Place { name: "Tokyo", values: &[Word("1.0")] },
    ],
    document: &JAPAN_EQUIPMENT,
    source: "notification 1793 of 1980",
    trust: Trust::Memory,
};
