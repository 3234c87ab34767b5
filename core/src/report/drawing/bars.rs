use super::board::{Board, Label};
use super::lettering::Lettering;
use super::mark::Drawing;
use super::of::Of;
use super::painter::Painter;
use super::spot::Spot;
use crate::report::bars::Bars;

/// Height of a bar with its name above it, px.
const PITCH_PX: f64 = 36.0;
/// Height of the bar itself, px.
const BAR_PX: f64 = 10.0;
/// Middle of the line of text within that height, px.
const NAME_PX: f64 = 10.0;
/// Room for the names and numbers of the levels above the bars, px.
const TOP_PX: f64 = 22.0;
/// Room for the ends of the scale, px.
const BOTTOM_PX: f64 = 22.0;
/// Room at both sides for numbers that stand at an end of the scale, px.
const SIDE_PX: f64 = 18.0;

/// Bars, painted one under the other, each with its name above its left side, on any width.
///
/// Scope: any bars that lie on their scale. Every bar is a mark of the class `steel`, so that tests can read them back.
///
/// ```
/// use steadfoot::calc::{Kind, StepId, System};
/// use steadfoot::report::bars::{Bar, Bars};
/// use steadfoot::report::drawing::{Painter, bars};
/// use steadfoot::report::plot::PlotName;
/// let bar = Bar { name: PlotName::Text("mass".into()), ends: [0.2, 0.4] };
/// let name = StepId::of(0, 0);
/// let one = Bars { name, kind: Kind::Utilisation, ends: [0.0, 1.0], bars: vec![bar], levels: vec![] };
/// let words = |_: StepId| String::new();
/// let drawing = bars(&one, &Painter { width_px: 320.0, system: System::Si, words: &words, inputs: &|_| String::new() });
/// assert!(drawing.marks.iter().any(|mark| mark.text == "mass"));
/// ```
pub fn bars(bars: &Bars, painter: &Painter) -> Drawing {
    let width = painter.width();
    let bottom = TOP_PX + PITCH_PX * bars.bars.len() as f64;
    let height = bottom + BOTTOM_PX;
    let [low, high] = bars.ends;
    let place = |value: f64| SIDE_PX + (width - 2.0 * SIDE_PX) * (value - low) / (high - low).max(1e-9);
    let mut board = Board::new(width, height);
    for (number, bar) in bars.bars.iter().enumerate() {
        let top = TOP_PX + PITCH_PX * number as f64 + 2.0 * NAME_PX;
        let [left, right] = bar.ends.map(place);
        board.polygon("steel", &[[left, top], [right, top], [right, top + BAR_PX], [left, top + BAR_PX]]);
    }
    board.line("thin", [SIDE_PX, bottom], [width - SIDE_PX, bottom]);
    let write = |board: &mut Board, text: &str, x: f64, level: f64| {
        let wide = Lettering::Name.width_px(text);
        let left = (x - wide / 2.0).min(width - 1.0 - wide).max(1.0);
        board.set(&Label::new(Lettering::Name, text, Of::Nothing), &Spot::from_left(left, level, wide));
    };
    for (number, level) in bars.levels.iter().enumerate() {
        let x = place(level.at);
        board.line(if number == 0 { "strong" } else { "dashed" }, [x, TOP_PX], [x, bottom]);
        let text = painter.text_with(&level.name, Some((level.told, bars.kind)));
        write(&mut board, &text, x, NAME_PX);
    }
    for (number, bar) in bars.bars.iter().enumerate() {
        let text = painter.text(&bar.name);
        let level = TOP_PX + PITCH_PX * number as f64 + NAME_PX;
        // Names begin where their bars do, and are read before them.
        write(&mut board, &text, place(bar.ends[0]) + Lettering::Name.width_px(&text) / 2.0, level);
    }
    for end in bars.ends {
        write(&mut board, &painter.number(end, bars.kind), place(end), bottom + NAME_PX);
    }
    let title = (painter.words)(bars.name);
    Drawing { view: "plot", width, height, mm_per_px: 0.0, title, marks: board.into_marks() }
}
