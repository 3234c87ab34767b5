//! Hazard factors of places in Australia.

use crate::calc::Trust;
use crate::rules::documents::AS_1170_4;
use crate::rules::place::{Place, PlaceTable, PlaceValue::Number};

/// Table 3.2, some rows.
pub static CITIES: PlaceTable = PlaceTable {
    rule: "as-1170-4",
    title: "Place",
    fields: &["hazard_factor"],
    rows: &[
        Place { name: "Adelaide", values: &[Number(0.10)] },
        Place { name: "Brisbane", values: &[Number(0.05)] },
        Place { name: "Broome", values: &[Number(0.12)] },
        Place { name: "Cairns", values: &[Number(0.06)] },
        Place { name: "Canberra", values: &[Number(0.08)] },
        Place { name: "Cunderdin", values: &[Number(0.22)] },
        Place { name: "Darwin", values: &[Number(0.09)] },
        Place { name: "Geelong", values: &[Number(0.10)] },
        Place { name: "Gold Coast", values: &[Number(0.05)] },
        Place { name: "Hobart", values: &[Number(0.03)] },
        Place { name: "Launceston", values: &[Number(0.04)] },
        Place { name: "Macquarie Island", values: &[Number(0.60)] },
        Place { name: "Meckering", values: &[Number(0.20)] },
        Place { name: "Melbourne", values: &[Number(0.08)] },
        Place { name: "Newcastle", values: &[Number(0.11)] },
        Place { name: "Perth", values: &[Number(0.09)] },
        Place { name: "Sydney", values: &[Number(0.08)] },
        Place { name: "Tennant Creek", values: &[Number(0.13)] },
        Place { name: "Townsville", values: &[Number(0.07)] },
        Place { name: "Wollongong", values: &[Number(0.09)] },
    ],
    document: &AS_1170_4,
    source: "Table 3.2",
    trust: Trust::Memory,
};
