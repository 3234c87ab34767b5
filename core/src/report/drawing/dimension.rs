use alloc::vec::Vec;

use super::board::{Board, Label};
use super::lettering::Lettering;
use super::mark::Shape;
use super::of::Of;
use super::spot::Spot;

/// A dimension line along one axis of the drawing.
#[derive(Clone, Copy, Debug)]
pub struct Dimension<'a> {
    /// The axis.
    pub lie: Lie,
    /// From here to here, px along the axis.
    pub ends: [f64; 2],
    /// Where the line lies, px across the axis.
    pub level: f64,
    /// Where the extension lines begin, px across the axis, at either end.
    pub roots: [f64; 2],
    /// The length, with its unit.
    pub text: &'a str,
    /// What it measures.
    pub of: Of,
    /// Whether the line is shown whole or broken, being shorter than what it stands for.
    pub course: Course,
}

/// Which way a dimension line runs, and on which side of it there is room for its number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lie {
    /// From left to right, the number above.
    Across,
    /// Upright, with room to the left.
    UprightLeft,
    /// Upright, with room to the right.
    UprightRight,
}

/// Whether a dimension is to scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Course {
    /// To scale.
    Whole,
    /// Not to scale, with a break mark.
    Broken,
}

/// Half the length of the slanting tick at either end, px.
const TICK_PX: f64 = 3.5;
/// How far an extension line runs beyond the dimension line, px.
const BEYOND_PX: f64 = 3.0;
/// The gap between the thing and its extension line, px.
const GAP_PX: f64 = 2.0;

impl Dimension<'_> {
    /// Draws the dimension and writes its number: along the line where it fits, beside it where it does not.
    #[inline(never)]
    pub fn draw(&self, board: &mut Board) {
        self.draw_lines(board);
        let spots = if self.lie == Lie::Across { self.spots_across() } else { self.spots_upright() };
        board.write(&Label::new(Lettering::Size, self.text, self.of), &spots);
    }

    fn draw_lines(&self, board: &mut Board) {
        let level = self.level;
        for (along, root) in [(self.ends[0], self.roots[0]), (self.ends[1], self.roots[1])] {
            let away = if level > root { 1.0 } else { -1.0 };
            if (level - root).abs() > 2.0 * GAP_PX {
                let ends = [self.place(along, root + away * GAP_PX), self.place(along, level + away * BEYOND_PX)];
                board.line("extension", ends[0], ends[1]);
                board.avoid_last(0.6);
            }
        }
        let (low, high) = self.low_high();
        let middle = (low + high) / 2.0;
        let points = [
            self.place(low, level),
            self.place(middle - 3.0, level),
            self.place(middle - 1.5, level - 4.0),
            self.place(middle + 1.5, level + 4.0),
            self.place(middle + 3.0, level),
            self.place(high, level),
        ];
        match self.course {
            Course::Whole => board.line("dimension", points[0], points[5]),
            Course::Broken => board.draw("dimension broken", Shape::Polyline, &points),
        };
        board.avoid_last(1.5);
        let [[x0, y0], [x1, y1]] = self.ends.map(|along| self.place(along, level));
        let ticks = [
            [x0 - TICK_PX, y0 + TICK_PX],
            [x0 + TICK_PX, y0 - TICK_PX],
            [x1 - TICK_PX, y1 + TICK_PX],
            [x1 + TICK_PX, y1 - TICK_PX],
        ];
        board.draw("tick", Shape::Lines, &ticks);
        board.avoid_last(0.5);
    }

    fn place(&self, along: f64, level: f64) -> [f64; 2] {
        if self.lie == Lie::Across { [along, level] } else { [level, along] }
    }

    fn low_high(&self) -> (f64, f64) {
        (self.ends[0].min(self.ends[1]), self.ends[0].max(self.ends[1]))
    }

    /// From the line to its number; a break mark stands out on both sides.
    fn gap_px(&self) -> f64 {
        if self.course == Course::Broken { 5.5 } else { 3.0 }
    }

    fn spots_across(&self) -> Vec<Spot> {
        let (low, high) = self.low_high();
        let level = self.level;
        let (width, height) = (Lettering::Size.width_px(self.text), Lettering::Size.height_px());
        let middle = (low + high) / 2.0;
        let aside = self.gap_px() + height / 2.0;
        let tight = if high - low < width + 8.0 { 6.0 } else { 0.0 };
        let mut spots = Vec::new();
        for step in 0..=8 {
            let away = f64::from(step) * 7.0;
            let far = if step > 0 { 14.0 } else { 0.0 };
            spots.push(Spot::centred([middle, level - aside - away]).costing(tight + far + away));
            spots.push(Spot::from_left(high + 6.0 + away, level, width).costing(3.0 + away));
            spots.push(Spot::from_right(low - 6.0 - away, level, width).costing(4.0 + away));
            spots.push(Spot::centred([middle, level + aside + away]).costing(tight + 5.0 + far + away));
        }
        spots
    }

    fn spots_upright(&self) -> Vec<Spot> {
        let (low, high) = self.low_high();
        let level = self.level;
        let (width, height) = (Lettering::Size.width_px(self.text), Lettering::Size.height_px());
        let middle = (low + high) / 2.0;
        let aside = self.gap_px() + height / 2.0;
        let right = if self.lie == Lie::UprightRight { 0.0 } else { 16.0 };
        let mut spots = Vec::new();
        if high - low >= 0.7 * width {
            // A number a little longer than its line still reads as its own.
            let tight = if high - low < width + 4.0 { 6.0 } else { 0.0 };
            spots.push(Spot::centred([level - aside, middle]).upwards().costing(tight));
            spots.push(Spot::centred([level + aside, middle]).upwards().costing(tight + 2.0 + right));
        }
        for step in 0..=6 {
            let away = f64::from(step) * 8.0;
            for y in [middle - away, middle + away] {
                spots.push(Spot::from_left(level + 5.0, y, width).costing(8.0 + away + right));
                spots.push(Spot::from_right(level - 5.0, y, width).costing(24.0 + away - right));
            }
            for y in [low - 5.0 - height / 2.0 - away, high + 5.0 + height / 2.0 + away] {
                spots.push(Spot::centred([level, y]).costing(14.0 + away));
            }
        }
        spots
    }
}
