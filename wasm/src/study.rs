//! Studies for the page: tables as they are, pictures painted.

use serde::Serialize;
use steadfoot::calc::{StepId, System};
use steadfoot::project;
use steadfoot::report::drawing::{self, Drawing, Painter};
use steadfoot::report::sheet_told::{SectionTold, section_told};
use steadfoot::report::table::Table;
use steadfoot::study::{self, Picture, Shown};
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

/// What came of a study.
#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Studied {
    Shown { notes: Vec<StepId>, tables: Vec<Table>, pictures: Vec<Drawing>, sections: Vec<SectionTold> },
    Reason(StepId),
}

/// Answers a study for a project: `{ shown: { notes, tables, pictures, sections } }`, or `{ reason }` with the row that
/// says why there is nothing to show; null where the project has faults or the study is unknown.
///
/// `extra` is what the reader brought beside the project; `words` gives the words of a row and what the input at a path is
/// called, which pictures need.
#[wasm_bindgen]
pub fn study(text: &str, system: &str, id: &str, extra: &str, width_px: f64, words: &js_sys::Function) -> JsValue {
    let (Ok(project), Some(study)) = (project::read(text, System::Si), study::study(id)) else { return JsValue::NULL };
    let made = (study.make)(&project, extra);
    painted_for((system, width_px, words), |painter| crate::plain(&studied(made, painter)))
}

pub fn studied(made: Result<Shown, StepId>, painter: &Painter) -> Studied {
    match made {
        Ok(Shown { notes, tables, pictures, sections }) => Studied::Shown {
            notes,
            tables,
            pictures: pictures.iter().map(|picture| painted(picture, painter)).collect(),
            sections: sections.iter().map(|section| section_told(section, String::new())).collect(),
        },
        Err(reason) => Studied::Reason(reason),
    }
}

fn painted(picture: &Picture, painter: &Painter) -> Drawing {
    match picture {
        Picture::Plot(plot) => drawing::plot(plot, painter),
        Picture::Bars(bars) => drawing::bars(bars, painter),
        Picture::Figure(figure) => drawing::figure(figure, painter),
    }
}

/// Paints for a reader: units, width, and a function of the page that says the words of a row, given its code, and what an
/// input is called, given its path.
pub fn painted_for<T>(
    (system, width_px, words): (&str, f64, &js_sys::Function),
    paint: impl FnOnce(&Painter) -> T,
) -> T {
    let said =
        |of: JsValue| words.call1(&JsValue::NULL, &of).ok().and_then(|word| word.as_string()).unwrap_or_default();
    let (rows, inputs) = (|id: StepId| said(id.code().into()), |path: &str| said(path.into()));
    paint(&Painter { width_px, system: crate::system_of(system), words: &rows, inputs: &inputs })
}
