//! The one script that brings a worksheet into another site.

use crate::{dist::Dist, product::Product};

pub const NAME: &str = "steadfoot.js";

/// Adds the script: text tables, engine, code and the worksheets' style in one, both parts of each.
pub fn add(dist: &mut Dist, product: &Product) {
    // Included twice, it leaves nothing behind the second time.
    dist.put(NAME, format!("if(!globalThis.steadfoot){{\n{}{}{}}}\n", product.texts, product.later, product.script));
}
