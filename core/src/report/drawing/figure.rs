use alloc::string::String;
use alloc::vec::Vec;

use super::arrow::Arrow;
use super::board::{Board, Label};
use super::dimension::{Course, Dimension, Lie};
use super::hatch::hatch;
use super::lettering::Lettering;
use super::mark::{Drawing, Shape, hundredth};
use super::number_text::length_text;
use super::of::Of;
use super::painter::Painter;
use super::patch::{Extent, Patch};
use crate::report::figure::{Figure, FigurePart};

/// A figure painted to scale.
///
/// Scope: any figure with at least two places apart. Every part becomes a mark of its own class, so its coordinates can
/// be read back: one px is `mm_per_px` millimetres.
///
/// ```
/// use steadfoot::calc::{StepId, System};
/// use steadfoot::report::drawing::{Painter, figure};
/// use steadfoot::report::figure::{Figure, FigurePart};
/// let corners_mm = vec![[0.0, 0.0], [1000.0, 0.0], [1000.0, 500.0], [0.0, 500.0]];
/// let block = FigurePart::Outline { class: "cabinet", corners_mm };
/// let wide = FigurePart::Dimension { from_mm: [0.0, 0.0], to_mm: [1000.0, 0.0], offset_px: -20.0 };
/// let one = Figure { name: StepId::of(0, 0), parts: vec![block, wide] };
/// let words = |_: StepId| String::new();
/// let drawing = figure(&one, &Painter { width_px: 320.0, system: System::Si, words: &words });
/// assert!(drawing.marks.iter().any(|mark| mark.text.starts_with("1000")));
/// ```
pub fn figure(figure: &Figure, painter: &Painter) -> Drawing {
    let width = painter.width();
    let extent = extent(figure);
    let (across_mm, tall_mm) = ((extent.right - extent.left).max(1e-9), (extent.bottom - extent.top).max(1e-9));
    let px_per_mm = ((width - 2.0 * ROOM_PX) / across_mm).min(TALL_MOST_PX / tall_mm);
    let view = View {
        px_per_mm,
        left_px: (width - across_mm * px_per_mm) / 2.0,
        left_mm: extent.left,
        upper_mm: extent.bottom,
    };
    let height = tall_mm * px_per_mm + 2.0 * ROOM_PX;
    let mut board = Board::new(width, height);
    for part in &figure.parts {
        draw(&mut board, part, &view);
    }
    for part in &figure.parts {
        write(&mut board, part, &view, painter);
    }
    let title = (painter.words)(figure.name);
    // The room above and below that no label needed is given back.
    let [top, bottom] = board.levels_around([ROOM_PX, height - ROOM_PX]);
    let (up, height) = (top - MARGIN_PX, bottom - top + 2.0 * MARGIN_PX);
    let mut marks = board.into_marks();
    for point in marks.iter_mut().flat_map(|mark| &mut mark.points) {
        point[1] = hundredth(point[1] - up);
    }
    Drawing { view: "figure", width, height, mm_per_px: 1.0 / px_per_mm, title, marks }
}

/// Room around for labels and dimensions, px.
const ROOM_PX: f64 = 54.0;
/// What of it stays above and below, px.
const MARGIN_PX: f64 = 6.0;
/// A figure does not become higher than this, px.
const TALL_MOST_PX: f64 = 420.0;
const HATCH_PX: f64 = 8.0;

static FORCE: Arrow = Arrow { shaft: "push", head: "push head", tip_px: 8.0, weight: 3.0 };

struct View {
    px_per_mm: f64,
    left_px: f64,
    left_mm: f64,
    upper_mm: f64,
}

impl View {
    fn place(&self, at_mm: [f64; 2]) -> [f64; 2] {
        [
            self.left_px + (at_mm[0] - self.left_mm) * self.px_per_mm,
            ROOM_PX + (self.upper_mm - at_mm[1]) * self.px_per_mm,
        ]
    }
}

/// The smallest patch in mm around all parts; its `bottom` is the highest y.
fn extent(figure: &Figure) -> Patch {
    let mut extent: Option<Patch> = None;
    let mut take = |at: [f64; 2]| {
        if at[0].is_finite() && at[1].is_finite() {
            let dot = Patch::between(at, at);
            extent = Some(extent.map_or(dot, |known| known.with(&dot)));
        }
    };
    for part in &figure.parts {
        match part {
            FigurePart::Outline { corners_mm: points, .. } | FigurePart::Path { points_mm: points, .. } => {
                points.iter().for_each(|at| take(*at));
            }
            FigurePart::Line { ends_mm, .. } => ends_mm.iter().for_each(|at| take(*at)),
            FigurePart::Circle { middle_mm: [x, y], radius_mm, .. } => {
                take([x - radius_mm, y - radius_mm]);
                take([x + radius_mm, y + radius_mm]);
            }
            FigurePart::Arrow { from_mm, to_mm, .. } | FigurePart::Dimension { from_mm, to_mm, .. } => {
                take(*from_mm);
                take(*to_mm);
            }
            FigurePart::Label { at_mm, .. } => take(*at_mm),
        }
    }
    extent.unwrap_or(Patch { left: 0.0, top: 0.0, right: 1.0, bottom: 1.0 })
}

fn draw(board: &mut Board, part: &FigurePart, view: &View) {
    match part {
        FigurePart::Outline { class, corners_mm } => {
            let corners: Vec<[f64; 2]> = corners_mm.iter().map(|at| view.place(*at)).collect();
            if *class == "concrete" || *class == "ground" || *class == "hatched" {
                let mut lines = Vec::new();
                hatch(&corners, HATCH_PX, &mut lines);
                board.draw("ground-hatch", Shape::Lines, &lines);
            }
            board.polygon(class, &corners);
            board.avoid_last(1.5);
        }
        FigurePart::Path { class, points_mm } => {
            let points: Vec<[f64; 2]> = points_mm.iter().map(|at| view.place(*at)).collect();
            board.draw(class, Shape::Polyline, &points);
            board.avoid_last(1.5);
        }
        FigurePart::Line { class, ends_mm } => {
            board.line(class, view.place(ends_mm[0]), view.place(ends_mm[1]));
            board.avoid_last(1.5);
        }
        FigurePart::Circle { class, middle_mm, radius_mm } => {
            board.circle(class, view.place(*middle_mm), radius_mm * view.px_per_mm);
            board.avoid_last(0.5);
        }
        FigurePart::Arrow { from_mm, to_mm, .. } => {
            FORCE.draw(board, [view.place(*from_mm), view.place(*to_mm)], Of::Nothing);
        }
        FigurePart::Label { .. } | FigurePart::Dimension { .. } => {}
    }
}

fn write(board: &mut Board, part: &FigurePart, view: &View, painter: &Painter) {
    match part {
        FigurePart::Dimension { from_mm, to_mm, offset_px } => {
            let (from, to) = (view.place(*from_mm), view.place(*to_mm));
            let is_level = (to[0] - from[0]).abs() >= (to[1] - from[1]).abs();
            let along = usize::from(!is_level);
            let length_mm = (to_mm[along] - from_mm[along]).abs();
            let text: String = length_text(length_mm, painter.system);
            let across = 1 - along;
            let away = if is_level { -offset_px } else { *offset_px };
            let base = if away < 0.0 { from[across].min(to[across]) } else { from[across].max(to[across]) };
            Dimension {
                lie: match is_level {
                    true => Lie::Across,
                    false if away < 0.0 => Lie::UprightLeft,
                    false => Lie::UprightRight,
                },
                ends: [from[along], to[along]],
                level: base + away,
                roots: [from[across], to[across]],
                text: &text,
                of: Of::Nothing,
                course: Course::Whole,
            }
            .draw(board);
        }
        FigurePart::Label { at_mm, name, value } => {
            write_at(board, view.place(*at_mm), &painter.text_with(name, *value), [0.0, -1.0]);
        }
        FigurePart::Arrow { from_mm, to_mm, name, value, .. } => {
            let (from, to) = (view.place(*from_mm), view.place(*to_mm));
            write_at(board, from, &painter.text_with(name, *value), [from[0] - to[0], from[1] - to[1]]);
        }
        _ => {}
    }
}

fn write_at(board: &mut Board, at: [f64; 2], text: &str, towards: [f64; 2]) {
    if !text.is_empty() {
        let thing = Patch::around(at, Extent { width: 4.0, height: 4.0 });
        board.write_around(&Label::new(Lettering::Name, text, Of::Nothing), &thing, towards);
    }
}
