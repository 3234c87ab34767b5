//! Hazard factors of places in New Zealand.

use crate::calc::Trust;
use crate::rules::documents::NZS_1170_5;
use crate::rules::place::{Place, PlaceTable, PlaceValue::Number};

/// Table 3.3, some rows.
pub static CITIES: PlaceTable = PlaceTable {
    rule: "nzs-1170-5",
    title: "Place",
    fields: &["hazard_factor"],
    rows: &[
        Place { name: "Auckland", values: &[Number(0.13)] },
        Place { name: "Blenheim", values: &[Number(0.33)] },
        Place { name: "Christchurch (0.22 before 2011)", values: &[Number(0.30)] },
        Place { name: "Dunedin", values: &[Number(0.13)] },
        Place { name: "Gisborne", values: &[Number(0.36)] },
        Place { name: "Hamilton", values: &[Number(0.16)] },
        Place { name: "Hastings", values: &[Number(0.39)] },
        Place { name: "Invercargill", values: &[Number(0.17)] },
        Place { name: "Masterton", values: &[Number(0.42)] },
        Place { name: "Napier", values: &[Number(0.38)] },
        Place { name: "Nelson", values: &[Number(0.27)] },
        Place { name: "New Plymouth", values: &[Number(0.18)] },
        Place { name: "Otira, Arthur's Pass", values: &[Number(0.60)] },
        Place { name: "Palmerston North", values: &[Number(0.38)] },
        Place { name: "Queenstown", values: &[Number(0.32)] },
        Place { name: "Rotorua", values: &[Number(0.24)] },
        Place { name: "Tauranga", values: &[Number(0.20)] },
        Place { name: "Wellington", values: &[Number(0.40)] },
    ],
    document: &NZS_1170_5,
    source: "Table 3.3",
    trust: Trust::Memory,
};
