//! Motion for the page: the path of a rocking cabinet, and studies that are done in portions.

use serde::Serialize;
use steadfoot::calc::{StepId, System};
use steadfoot::project;
use steadfoot::study::rocking::rocking_path as path_of;
use steadfoot::study::work::{Work, begin_of};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::study::{painted_for, studied};

/// A rocking cabinet seen along its edges, with its angles over time.
#[derive(Serialize)]
struct PathTold {
    left_mm: f64,
    right_mm: f64,
    height_mm: f64,
    top_mm: f64,
    points: Vec<[f64; 2]>,
    end: StepId,
    way: StepId,
    state: String,
}

/// Rocks a built-in body through half a minute of shaking and returns a hash of the bits, without any JavaScript value.
#[wasm_bindgen]
pub fn rocking_check() -> u32 {
    steadfoot::motion::rocking_check()
}

/// The path of the body that lifts first; null where there is nothing to follow. `extra` is the text of a record.
#[wasm_bindgen]
pub fn rocking_path(text: &str, extra: &str) -> JsValue {
    let path = project::read(text, System::Si).ok().and_then(|project| path_of(&project, extra));
    let Some(path) = path else { return JsValue::NULL };
    crate::plain(&PathTold {
        left_mm: path.left_mm,
        right_mm: path.right_mm,
        height_mm: path.height_mm,
        top_mm: path.top_mm,
        points: path.points,
        end: path.end,
        way: path.way,
        state: path.state,
    })
}

/// A study under way.
#[wasm_bindgen]
pub struct StudyWork(Box<dyn Work>);

/// Begins a study that is done in portions; none where it is done at once, or cannot begin.
#[wasm_bindgen]
pub fn begin_study(text: &str, id: &str, extra: &str) -> Option<StudyWork> {
    let begin = begin_of(id)?;
    let project = project::read(text, System::Si).ok()?;
    begin(&project, extra).ok().map(StudyWork)
}

#[wasm_bindgen]
impl StudyWork {
    /// Does one portion; false when nothing is left to do.
    pub fn advance(&mut self) -> bool {
        self.0.advance()
    }

    /// Portions done, and of how many.
    pub fn progress(&self) -> Vec<u32> {
        let (done, of) = self.0.progress();
        vec![done as u32, of as u32]
    }

    /// What is found so far, as [`study`](crate::study::study) tells it.
    pub fn shown(&self, system: &str, width_px: f64, words: &js_sys::Function) -> JsValue {
        let shown = Ok(self.0.shown());
        painted_for((system, width_px, words), |painter| crate::plain(&studied(shown, painter)))
    }
}
