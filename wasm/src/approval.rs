//! The approval file of the anchorage: read and written.

use serde::Serialize;
use steadfoot::calc::System;
use steadfoot::project::{self, approval};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::{FaultTold, plain, told};

/// What an approval file gives, and which fields of such documents it says nothing of.
#[derive(Serialize)]
struct Read {
    rule: &'static str,
    title: String,
    anchorage: approval::Known,
    left_out: Vec<&'static str>,
}

/// What is wrong with an approval file.
#[derive(Serialize)]
struct Faults {
    faults: Vec<FaultTold>,
}

/// Reads an approval file: `{ rule, title, anchorage, left_out }`, the values that it gives and the keys of those that it
/// could give and does not; or `{ faults }`.
#[wasm_bindgen]
pub fn approval_read(text: &str) -> JsValue {
    match approval::read(text) {
        Ok(approval) => plain(&Read {
            rule: approval.rule.id,
            left_out: approval.left_out(),
            title: approval.title,
            anchorage: approval.known,
        }),
        Err(faults) => plain(&Faults { faults: faults.into_iter().map(told).collect() }),
    }
}

/// The approval file of a project's anchorage as the same object; null where the project has faults or no such data.
#[wasm_bindgen]
pub fn approval_write(text: &str) -> JsValue {
    let approval = project::read(text, System::Si).ok().and_then(|project| approval::of_project(&project));
    approval.map_or(JsValue::NULL, |approval| plain(&approval))
}
