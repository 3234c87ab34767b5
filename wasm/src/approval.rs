//! The approval file of the anchorage: read and written.

use serde::Serialize;
use steadfoot::calc::System;
use steadfoot::project::{self, approval};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::{FaultTold, plain, system_of, told};

/// What is wrong with an approval file.
#[derive(Serialize)]
struct Faults {
    faults: Vec<FaultTold>,
}

/// Reads an approval file: `{ format, rule, title, anchorage }` with the values that it gives, or `{ faults }`.
#[wasm_bindgen]
pub fn approval_read(text: &str, system: &str) -> JsValue {
    match approval::read(text, system_of(system)) {
        Ok(approval) => plain(&approval),
        Err(faults) => plain(&Faults { faults: faults.into_iter().map(told).collect() }),
    }
}

/// The approval file of a project's anchorage as the same object; null where the project has faults or no such data.
#[wasm_bindgen]
pub fn approval_write(text: &str) -> JsValue {
    let approval = project::read(text, System::Si).ok().and_then(|project| approval::of_project(&project));
    approval.map_or(JsValue::NULL, |approval| plain(&approval))
}
