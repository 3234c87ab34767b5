//! What is not known, tried in portions for the page.

use steadfoot::calc::System;
use steadfoot::explore::Unknowns;
use steadfoot::project;
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

/// Tries what a built-in cabinet leaves open and returns a hash of what was found, without any JavaScript value.
#[wasm_bindgen]
pub fn open_check() -> u32 {
    steadfoot::explore::open_check()
}

/// The trying of what is not known, on its way.
#[wasm_bindgen]
pub struct OpenWork(Unknowns);

/// Begins to try what a project leaves open; none where everything is known.
#[wasm_bindgen]
pub fn begin_open(text: &str) -> Option<OpenWork> {
    Unknowns::new(&project::read(text, System::Si).ok()?).map(OpenWork)
}

#[wasm_bindgen]
impl OpenWork {
    /// Tries one more; false when nothing is left to try.
    pub fn advance(&mut self) -> bool {
        self.0.next(1)
    }

    /// How many were tried, and of how many.
    pub fn progress(&self) -> Vec<u32> {
        self.0.progress().map(|count| count as u32).to_vec()
    }

    /// The report over what was tried so far.
    pub fn report(&self) -> JsValue {
        crate::plain(&self.0.report())
    }
}
