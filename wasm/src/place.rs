//! A place in the sweep as the page hands it back.

use serde::Deserialize;
use steadfoot::calc::CheckId;
use steadfoot::report::outcome::{At, SubjectTold};
use wasm_bindgen::prelude::JsValue;

#[derive(Deserialize)]
struct PlaceAsked {
    state: usize,
    case: Option<usize>,
    anchors: bool,
    direction_rad: f64,
    subject: SubjectAsked,
    stiffness: f64,
    check: Option<String>,
}

#[derive(Deserialize)]
struct SubjectAsked {
    kind: String,
    number: u16,
}

/// A place from a report, handed back by the page; none for null and for anything that is no place.
pub fn read_place(at: JsValue) -> Option<At> {
    if at.is_null() || at.is_undefined() {
        return None;
    }
    let asked: PlaceAsked = serde_wasm_bindgen::from_value(at).ok()?;
    let kind = ["whole", "foot", "anchor", "group"].into_iter().find(|&kind| kind == asked.subject.kind)?;
    let check = asked.check.and_then(|id| CheckId::ALL.iter().find(|check| check.id() == id));
    Some(At {
        state: asked.state,
        case: asked.case,
        anchors: asked.anchors,
        direction_rad: asked.direction_rad,
        subject: SubjectTold { kind, number: asked.subject.number },
        stiffness: asked.stiffness,
        check: check.map(|check| check.id()),
    })
}
