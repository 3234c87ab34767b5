//! Two files held against each other, for the page.

use serde::Serialize;
use steadfoot::calc::StepId;
use steadfoot::explore::{Compared, compare as held};
use steadfoot::input::LimitUnits;
use steadfoot::project;
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::FaultTold;

/// What came of two texts.
#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
#[allow(clippy::large_enum_variant, reason = "there is one of them a call")]
enum Held {
    Compared(Compared),
    Faults(Vec<FaultTold>),
}

/// Holds two texts against each other, the earlier one first: `{ compared }`, or `{ faults }` of the first that has any.
///
/// `uses` says of the code of a row its shape, its symbol or a dash, and the symbols of its formula, with spaces between.
#[wasm_bindgen]
pub fn compare(before: &str, after: &str, uses: &js_sys::Function) -> JsValue {
    let read = |text: &str| project::read(text, LimitUnits::File);
    let faults = |faults: Vec<_>| crate::plain(&Held::Faults(faults.into_iter().map(crate::told).collect()));
    let (before, after) = match (read(before), read(after)) {
        (Ok(before), Ok(after)) => (before, after),
        (Err(found), _) | (_, Err(found)) => return faults(found),
    };
    let uses = |id: StepId| {
        let words = uses.call1(&JsValue::NULL, &id.code().into()).ok().and_then(|words| words.as_string());
        words.unwrap_or_default()
    };
    crate::plain(&Held::Compared(held(&before, &after, &uses)))
}
