//! Thin bindings of the engine for the page. No engineering here.

use wasm_bindgen::prelude::wasm_bindgen;

/// The engine's version, as printed on every sheet.
#[wasm_bindgen]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").into()
}
