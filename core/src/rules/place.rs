//! Tables of places: what a map gives for a city or a region, to be put into a rule's fields and changed at will.
//!
//! Only native code refers to these tables; the builder bakes them into the page, whose form offers them as a list. The
//! engine never looks a place up: what it computes with are the fields, however they were filled.

use super::{as_1170_4, japan_equipment, nscp_2015, nzs_1170_5};
use crate::calc::{Document, Trust};

/// What one document gives for the places of a rule.
pub struct PlaceTable {
    /// Id of the demand rule whose fields it fills.
    pub rule: &'static str,
    /// What the list is of, as its label: "Place", "Province".
    pub title: &'static str,
    /// Keys of the fields that a row fills, in the order of its values.
    pub fields: &'static [&'static str],
    /// The rows, in the order in which they are offered.
    pub rows: &'static [Place],
    /// The document.
    pub document: &'static Document,
    /// Its table, figure or map, or who quotes it.
    pub source: &'static str,
    /// How far the values can be trusted.
    pub trust: Trust,
}

/// One row.
pub struct Place {
    /// Name of the place.
    pub name: &'static str,
    /// A value for each field of the table.
    pub values: &'static [PlaceValue],
}

/// What a place puts into a field.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum PlaceValue {
    /// A number, in the unit of the file.
    Number(f64),
    /// One of the field's words.
    Word(&'static str),
}

/// All tables of places. A rule may have several; adding one is one line here.
pub static PLACE_TABLES: &[&PlaceTable] =
    &[&nzs_1170_5::CITIES, &as_1170_4::CITIES, &japan_equipment::REGIONS, &nscp_2015::ZONES];

/// The tables of a rule.
///
/// ```
/// use steadfoot::rules::place::places_of;
/// assert_eq!(places_of("direct").count(), 0);
/// ```
pub fn places_of(rule: &str) -> impl Iterator<Item = &'static PlaceTable> {
    PLACE_TABLES.iter().copied().filter(move |table| table.rule == rule)
}
