//! Thin bindings of the engine for the page. No engineering here.
//!
//! Projects come in as the text that the user made; results go out as plain JavaScript values, texts of rows as codes
//! that the page looks up in its baked tables.

mod approval;
mod compare;
mod hall;
mod map;
mod motion;
mod open;
mod place;
mod print;
mod study;

use serde::Serialize;
use steadfoot::calc::System;
use steadfoot::input::Fault;
use steadfoot::project::{self, Project};
use steadfoot::report::outcome::Report;
use steadfoot::{explore, report::drawing};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::place::read_place;

// A little lighter and faster than the standard library's allocator.
// SAFETY: the module has one thread; the page's workers have a module each.
#[cfg(target_arch = "wasm32")]
#[global_allocator]
static MEMORY: talc::TalckWasm = unsafe { talc::TalckWasm::new_global() };

/// What came of a text: a report, or what is wrong with the text.
#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
#[allow(clippy::large_enum_variant, reason = "there is one of them a call")]
enum Assessed {
    Report(Report),
    Faults(Vec<FaultTold>),
}

/// A fault with its sentence.
#[derive(Serialize)]
pub(crate) struct FaultTold {
    path: String,
    problem: steadfoot::input::Problem,
    given: String,
    allowed: String,
    line: u32,
    column: u32,
    sentence: String,
}

/// Runs once when the engine is opened: a panic is told on the console with its place.
#[wasm_bindgen(start)]
pub fn open() {
    console_error_panic_hook::set_once();
}

/// The engine's version, as printed on every sheet.
#[wasm_bindgen]
pub fn version() -> String {
    steadfoot::VERSION.into()
}

/// Assesses a project: `{ report }` or `{ faults }`. The limits that faults name are as a form shows its fields in
/// `system` ("si" or "us"); their sentences speak of the file, in its units.
#[wasm_bindgen]
pub fn assess(text: &str, system: &str) -> JsValue {
    plain(&match project::read(text, system_of(system)) {
        Ok(project) => Assessed::Report(project::assess(&project)),
        Err(faults) => {
            let of_file = project::fault_sentences(text).into_iter();
            Assessed::Faults(faults.into_iter().zip(of_file).map(|(fault, sentence)| with(fault, sentence)).collect())
        }
    })
}

/// The sections that lead to one result of a report of the same text; `at` is the JSON text of the report's place.
#[wasm_bindgen]
pub fn working(text: &str, at: &str) -> JsValue {
    with_project(text, |project| match read_place(at) {
        Some(at) => plain(&project::working_told(project, &at)),
        None => JsValue::NULL,
    })
}

/// One drawing, "plan", "elevation" or "rose", of a place in the sweep; of the first state at rest where `at`
/// is the text `null`.
#[wasm_bindgen]
pub fn drawings(text: &str, system: &str, at: &str, width_px: f64, which: &str) -> JsValue {
    with_project(text, |project| {
        let system = system_of(system);
        let at = read_place(at);
        match which {
            "rose" => plain(&drawing::rose(&project::rose_scene(&project::assess(project)), width_px)),
            "elevation" => plain(&drawing::elevation(&project::scene(project, at.as_ref()), width_px, system)),
            _ => plain(&drawing::plan(&project::scene(project, at.as_ref()), width_px, system)),
        }
    })
}

/// The strongest demand, the highest zone and the largest load that the cabinet still holds, bolted and free.
#[wasm_bindgen]
pub fn limits(text: &str) -> JsValue {
    with_project(text, |project| plain(&explore::limits(project)))
}

/// Which fields to set so that a live number of the answer becomes a value.
#[wasm_bindgen]
pub fn turned(text: &str, live: &str, value: f64) -> JsValue {
    with_project(text, |project| plain(&explore::turned(project, live, value)))
}

/// The anchors of a pattern ("one", "across", "along", "three", "corners") about every foot, clear of its sides, as a
/// field to set; null where there are none.
#[wasm_bindgen]
pub fn patterned(text: &str, pattern: &str, clear_mm: f64) -> JsValue {
    with_project(text, |project| {
        plain(&explore::Pattern::of_word(pattern).and_then(|pattern| explore::patterned(project, pattern, clear_mm)))
    })
}

/// Searches what would hold for a built-in cabinet and returns a hash of what was found, without any JavaScript value.
#[wasm_bindgen]
pub fn search_check() -> u32 {
    explore::search_check()
}

/// The pressures under eight feet from 360 directions as a hash, without any JavaScript value.
#[wasm_bindgen]
pub fn pressure_check() -> u32 {
    steadfoot::study::pressure_map::pressure_check()
}

/// A number with its unit, printed by the engine.
#[wasm_bindgen]
pub fn show(value: f64, kind: u16, from: &str, to: &str, reading: &str, rounding: &str, digits: u8) -> String {
    print::show(value, kind, print::Wish { from, to, reading, rounding, digits })
}

/// The name of a kind's unit in a system; empty for plain numbers.
#[wasm_bindgen]
pub fn unit_text(kind: u16, system: &str, reading: &str) -> String {
    print::unit_text(kind, system_of(system), reading)
}

/// The text of an input field for a value in SI.
#[wasm_bindgen]
pub fn field_text(value: f64, kind: u16, system: &str) -> String {
    print::field_text(value, kind, system_of(system))
}

/// The SI value of what was typed in a field, or NaN where it is no number.
#[wasm_bindgen]
pub fn field_value(text: &str, kind: u16, system: &str) -> f64 {
    print::field_value(text, kind, system_of(system))
}

/// Assesses a built-in cabinet and returns a hash of the bits of its results, without any JavaScript value.
#[wasm_bindgen]
pub fn self_check() -> u32 {
    project::self_check()
}

/// "us" is US customary; anything else is SI.
pub(crate) fn system_of(system: &str) -> System {
    if system == "us" { System::Us } else { System::Si }
}

pub(crate) fn with_project(text: &str, then: impl FnOnce(&Project) -> JsValue) -> JsValue {
    match project::read(text, System::Si) {
        Ok(project) => then(&project),
        Err(_) => JsValue::NULL,
    }
}

pub(crate) fn told(fault: Fault) -> FaultTold {
    let sentence = fault.sentence();
    with(fault, sentence)
}

fn with(fault: Fault, sentence: String) -> FaultTold {
    let Fault { path, problem, given, allowed, line, column } = fault;
    FaultTold { path, problem, given, allowed, line, column, sentence }
}

/// A plain JavaScript value. The shapes are our own and always convert; null says that one did not.
pub(crate) fn plain<T: Serialize>(value: &T) -> JsValue {
    let serializer = serde_wasm_bindgen::Serializer::new().serialize_missing_as_null(true);
    value.serialize(&serializer).unwrap_or(JsValue::NULL)
}
