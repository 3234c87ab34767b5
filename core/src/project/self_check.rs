//! Self check: assesses a built-in cabinet and hashes the bits of its results.

use super::{Project, assess, read};
use crate::calc::System;
use crate::report::outcome::Report;

/// A cabinet with two contents, four feet and four anchors under ASCE 7-16 and ACI 318-19, near one edge;
/// the strength of its concrete and the embedment of its bolts stand between the pieces.
const CABINET: [&str; 3] = [
    r#"{"format":"steadfoot 1","title":"self check",
"cabinet":{"width_mm":1000,"depth_mm":1300,"height_mm":2300,"frame":{"mass_kg":650,"centre_mm":[0,0,900]},
"feet":[{"name":"a","at_mm":[-430,-580],"size_mm":[120,120]},{"name":"b","at_mm":[430,-580],"size_mm":[120,120]},
{"name":"c","at_mm":[430,580],"size_mm":[120,120]},{"name":"d","at_mm":[-430,580],"size_mm":[120,120]}],
"anchors":[{"at_mm":[-470,-620]},{"at_mm":[470,-620]},{"at_mm":[470,620]},{"at_mm":[-470,620]}]},
"contents":[{"name":"low","mass_kg":900,"bottom_mm":300,"size_mm":[900,1100,500]},
{"name":"high","mass_kg":700,"bottom_mm":1200,"size_mm":[900,1100,600],"offset_mm":[40,-30]}],
"slab":{"strength_mpa":"#,
    r#","thickness_mm":200,"edges_mm":{"left":900}},
"site":{"rule":"asce-7-16","s_ds":1.0,"importance_factor":1,"component":"sheet-metal-cabinet","attachment_height_m":0,"roof_height_m":12},
"anchorage":{"rule":"aci-318-19-si","bolt":"M16","steel":"iso-8.8","embedment_mm":"#,
    "}}",
];

/// The FNV-1a hash of the bits of all utilisations, values and limits of the built-in cabinet; the same on every target.
///
/// Zero says that the cabinet could not be read, which a test holds to be impossible.
pub fn self_check() -> u32 {
    built_in().map_or(0, |project| hash(&assess(&project)))
}

/// The built-in cabinet; a test holds that it can be read.
pub fn built_in() -> Option<Project> {
    built_in_of("28", "125")
}

/// The same of another concrete strength and embedment, as a file would have them.
pub fn built_in_of(strength_mpa: &str, embedment_mm: &str) -> Option<Project> {
    let [start, middle, end] = CABINET;
    read(&[start, strength_mpa, middle, embedment_mm, end].concat(), System::Si).ok()
}

/// Where a hash begins.
pub const HASH_START: u32 = 0x811c_9dc5;

/// The FNV-1a hash with the bits of one more number.
pub fn hashed(hash: u32, value: f64) -> u32 {
    value.to_bits().to_le_bytes().iter().fold(hash, |hash, byte| (hash ^ u32::from(*byte)).wrapping_mul(0x0100_0193))
}

fn hash(report: &Report) -> u32 {
    let mut hash = HASH_START;
    let mut take = |value| hash = hashed(hash, value);
    for check in &report.checks {
        for value in [check.value, check.limit, check.utilisation].into_iter().flatten() {
            take(value);
        }
    }
    for point in &report.rose {
        take(point.direction_rad);
        point.utilisation.into_iter().for_each(&mut take);
    }
    hash
}
