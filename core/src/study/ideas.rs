//! The ideas that all seismic rules share, in one picture: ground, soil, height, flexibility, importance, ductility.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::STATICS;
use crate::calc::{StepId, steps};
use crate::project::Project;
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::PlotName;

steps! { 138 "ideas study";
    FIGURE "" Number (STATICS "" Derived) "what every rule counts, from the rock to the bolt": Name;
    GROUND "" Number (STATICS "" Derived) "1 ground": Name;
    SOIL "" Number (STATICS "" Derived) "2 soil": Name;
    HEIGHT "" Number (STATICS "" Derived) "3 height": Name;
    FLEXIBILITY "" Number (STATICS "" Derived) "4 flexibility": Name;
    IMPORTANCE "" Number (STATICS "" Derived) "5 importance": Name;
    DUCTILITY "" Number (STATICS "" Derived) "6 ductility": Name;
    ARROWS "" Number (STATICS "" Derived) "the arrows grow with height by 1 + 2 z/h, as in ASCE 7-16; other rules grow otherwise": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "shaking-ideas", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "shaking-ideas",
    title: "The six ideas in one picture",
    help: "From the rock to the bolt: six ideas that the rules of all countries share, each with its own numbers.",
    steps: &[&TEXTS],
};

/// Height of a storey, their number, and half the width of the building, mm.
const STOREY_MM: f64 = 3600.0;
const STOREYS: usize = 4;
const HALF_MM: f64 = 4200.0;
/// Depth of the soil over the rock, mm.
const SOIL_MM: f64 = 3200.0;
/// Half the length of the line under a name, mm.
const SHELF_MM: f64 = 1500.0;
/// Length of the arrow of the ground's motion, mm.
const ARROW_MM: f64 = 1300.0;

fn make(_project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let figure = Figure { name: FIGURE, parts: parts() };
    Ok(Shown { notes: vec![ARROWS], pictures: vec![Picture::Figure(figure)], ..Shown::default() })
}

fn rectangle(class: &'static str, [left, bottom]: [f64; 2], [right, top]: [f64; 2]) -> FigurePart {
    FigurePart::Outline { class, corners_mm: vec![[left, bottom], [right, bottom], [right, top], [left, top]] }
}

fn parts() -> Vec<FigurePart> {
    let reach = HALF_MM + 4200.0;
    let roof = STOREYS as f64 * STOREY_MM;
    let mut parts = vec![
        rectangle("concrete", [-reach, -SOIL_MM - 1800.0], [reach, -SOIL_MM]),
        rectangle("ground", [-reach, -SOIL_MM], [reach, 0.0]),
    ];
    let mut arrow = |level: f64, length: f64| {
        parts.push(FigurePart::Arrow {
            class: "force",
            from_mm: [-HALF_MM - 500.0 - length, level],
            to_mm: [-HALF_MM - 500.0, level],
            name: PlotName::None,
            value: None,
        });
    };
    arrow(-SOIL_MM - 900.0, 0.7 * ARROW_MM);
    for storey in 0..=STOREYS {
        let level = storey as f64 * STOREY_MM;
        arrow(level, ARROW_MM * (1.0 + 2.0 * level / roof));
    }
    for storey in 0..=STOREYS {
        let level = storey as f64 * STOREY_MM;
        parts.push(FigurePart::Line { class: "strong", ends_mm: [[-HALF_MM, level], [HALF_MM, level]] });
    }
    for x in [-HALF_MM, -HALF_MM / 3.0, HALF_MM / 3.0, HALF_MM] {
        parts.push(FigurePart::Line { class: "strong", ends_mm: [[x, 0.0], [x, roof]] });
    }
    // The building as it swings: most at the roof.
    let sway = |level: f64| 1100.0 * (level / roof) * (level / roof);
    let swing = (0..=20).map(|step| roof * f64::from(step) / 20.0);
    for side in [-HALF_MM, HALF_MM] {
        let points_mm = swing.clone().map(|level| [side + sway(level), level]).collect();
        parts.push(FigurePart::Path { class: "dashed", points_mm });
    }
    // The cabinet on the second floor, upright and as it sways.
    let floor = 2.0 * STOREY_MM;
    let (left, right, top) = (-500.0, 500.0, floor + 2300.0);
    parts.push(rectangle("cabinet", [left, floor], [right, top]));
    for tray in 0..3 {
        let bottom = floor + 400.0 + 550.0 * f64::from(tray);
        parts.push(rectangle("content", [left + 120.0, bottom], [right - 120.0, bottom + 380.0]));
    }
    let lean = (0..=10).map(|step| f64::from(step) / 10.0);
    for side in [left, right] {
        let points_mm = lean.clone().map(|part| [side + 420.0 * part * part, floor + 2300.0 * part]).collect();
        parts.push(FigurePart::Path { class: "dashed", points_mm });
    }
    for side in [left - 80.0, right + 80.0] {
        parts.push(FigurePart::Line { class: "anchor", ends_mm: [[side, floor + 160.0], [side, floor - 300.0]] });
    }
    // A name stands on a shelf, from whose nearer end a line leads to what it names.
    let mut pointed = |name: StepId, [x, y]: [f64; 2], to_mm: [f64; 2]| {
        let (near, far) = if to_mm[0] < x { (x - SHELF_MM, x + SHELF_MM) } else { (x + SHELF_MM, x - SHELF_MM) };
        parts.push(FigurePart::Path { class: "thin", points_mm: vec![[far, y], [near, y], to_mm] });
        parts.push(FigurePart::Label { at_mm: [x, y], name: PlotName::Row(name), value: None });
    };
    let text = HALF_MM + 2600.0;
    pointed(FLEXIBILITY, [text, floor + 3000.0], [right + 330.0, floor + 2150.0]);
    pointed(IMPORTANCE, [text, floor + 1300.0], [right + 60.0, floor + 1300.0]);
    pointed(DUCTILITY, [text, floor - 600.0], [right + 140.0, floor]);
    pointed(HEIGHT, [text, roof + 500.0], [HALF_MM + 1000.0, roof - 200.0]);
    pointed(SOIL, [text, 900.0], [HALF_MM + 1000.0, -0.4 * SOIL_MM]);
    pointed(GROUND, [-text, 900.0], [-HALF_MM - 1600.0, -SOIL_MM - 700.0]);
    parts
}
