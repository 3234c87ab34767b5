//! Maps for the page: which inputs can be turned, portions of cells, the picture, and how the reader gets to a point.

use serde::Serialize;
use steadfoot::calc::{CheckId, System};
use steadfoot::explore::{Along, Found, KNOBS, Knob, edits, map_cells, places, turned_both};
use steadfoot::project::{self, Project};
use steadfoot::report::drawing::plot;
use steadfoot::study::limit_map::{LimitMap, PAIRS, pair};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::study::painted_for;

/// What the page is told of the inputs that can be turned.
#[derive(Serialize)]
struct KnobsTold {
    knobs: Vec<KnobTold>,
    /// Pairs worth looking at, by their words.
    pairs: Vec<[&'static str; 2]>,
    /// All checks in the order in which portions count them.
    checks: &'static [CheckId],
}

#[derive(Serialize)]
struct KnobTold {
    word: &'static str,
    name: u16,
    kind: u16,
    now: f64,
    window: [f64; 2],
    by_ratio: bool,
    /// Words of its values, where it has only some.
    words: Option<Vec<&'static str>>,
}

/// The inputs of a project that can be turned, with pairs of them; null where the project has faults.
#[wasm_bindgen]
pub fn knobs(text: &str) -> JsValue {
    crate::with_project(text, |project| {
        let knobs = KNOBS.iter().filter_map(|&(word, knob, name)| {
            Some(KnobTold {
                word,
                name: name.code(),
                kind: knob.kind(project).code(),
                now: knob.now(project)?,
                window: knob.window(project)?,
                by_ratio: knob.is_by_ratio(),
                words: knob.notches(project).map(|notches| notches.iter().map(|notch| notch.word).collect()),
            })
        });
        let pairs = PAIRS.iter().filter_map(|one| pair(project, one)).map(|pair| pair.map(Knob::word));
        crate::plain(&KnobsTold { knobs: knobs.collect(), pairs: pairs.collect(), checks: CheckId::ALL })
    })
}

/// The values of an axis from one end to the other; those of the knob itself where it has only some.
#[wasm_bindgen]
pub fn map_places(text: &str, knob: &str, low: f64, high: f64, count: usize) -> Vec<f64> {
    let project = project::read(text, System::Si).ok();
    project.zip(Knob::of_word(knob)).map_or(Vec::new(), |(project, knob)| places(knob, &project, [low, high], count))
}

/// Assesses the cells of a portion, the rows of `ys` one after the other: three numbers for each, its utilisation, how it
/// stands (0 holds, 1 fails, 2 not covered, 3 cannot be built), and the place of the check that governs, or the code of
/// the reason why it is not covered, or -1. Empty where the project has faults.
#[wasm_bindgen]
pub fn map_portion(text: &str, knob_x: &str, xs: &[f64], knob_y: &str, ys: &[f64]) -> Vec<f64> {
    with_axes(text, [(knob_x, xs), (knob_y, ys)], |project, x, y| {
        map_cells(project, x, y).iter().flat_map(Found::packed).collect()
    })
    .unwrap_or_default()
}

/// A portion of a map of the built-in cabinet as a hash, without any JavaScript value.
#[wasm_bindgen]
pub fn map_check() -> u32 {
    steadfoot::explore::map_check()
}

/// The picture of a map from the numbers of its portions; null where the project has faults.
#[wasm_bindgen]
#[allow(clippy::too_many_arguments, reason = "plain values are all that crosses to the page")]
pub fn map_drawing(
    text: &str,
    system: &str,
    knob_x: &str,
    xs: &[f64],
    knob_y: &str,
    ys: &[f64],
    cells: &[f64],
    width_px: f64,
    words: &js_sys::Function,
) -> JsValue {
    let drawn = with_axes(text, [(knob_x, xs), (knob_y, ys)], |project, x, y| {
        let mut cells: Vec<Found> = cells.as_chunks().0.iter().map(|cell| Found::unpacked(*cell)).collect();
        cells.resize(xs.len() * ys.len(), Found::NOT_BUILT);
        let map = LimitMap { project, x, y, cells: &cells }.plot();
        painted_for((system, width_px, words), |painter| crate::plain(&plot(&map, painter)))
    });
    drawn.unwrap_or(JsValue::NULL)
}

/// Which fields to set to come to a point of a map; null where it cannot be built.
#[wasm_bindgen]
pub fn map_edits(text: &str, knob_x: &str, x: f64, knob_y: &str, y: f64) -> JsValue {
    let edits = with_axes(text, [(knob_x, &[x]), (knob_y, &[y])], |project, along_x, along_y| {
        let turned = turned_both(project, [(along_x.knob, x), (along_y.knob, y)])?;
        Some(crate::plain(&edits(project, &turned)))
    });
    edits.flatten().unwrap_or(JsValue::NULL)
}

fn with_axes<T>(text: &str, axes: [(&str, &[f64]); 2], then: impl FnOnce(&Project, Along, Along) -> T) -> Option<T> {
    let project = project::read(text, System::Si).ok()?;
    let along = |(word, values)| Some(Along { knob: Knob::of_word(word)?, values });
    let [x, y] = axes;
    Some(then(&project, along(x)?, along(y)?))
}
