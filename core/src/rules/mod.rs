//! Published standards, one file or folder an edition.
//!
//! A rule is one `static` and one line in a registry here. Everything else, the form, the reading of its fields, the
//! sheet, the guide's table of rules, the tests, is made from that.

pub mod aci_318_19;
pub mod anchor;
pub(crate) mod anchor_set;
mod as_1170_4;
mod asce_7;
mod asce_7_05;
mod asce_7_10;
mod asce_7_16;
mod asce_7_22;
mod attachment;
pub mod bolts;
mod combination;
mod component_row;
pub mod demand;
mod direct;
mod documents;
pub mod en_1992_4;
mod en_1998_1;
pub mod floor;
mod gb_50011;
pub mod ground_spectrum;
mod is_1893;
mod japan_bolts;
mod japan_equipment;
mod nbc;
mod nscp_2015;
mod nsr_10;
mod ntc_2018;
mod nzs_1170_5;
mod p100_1;
mod peru_e_030;
pub mod place;
mod site_class;
mod sni_1726;
mod table;
mod taiwan;
mod ti_809_04;
mod ubc_1994;
mod ubc_1997;

pub use demand::{DEMAND_RULES, DemandRule};
