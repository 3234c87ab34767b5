use super::board::Board;
use super::of::Of;
use crate::calc::number::hypot;

/// An arrow: its classes and its size.
#[derive(Clone, Copy, Debug)]
pub struct Arrow {
    /// Class of the line.
    pub shaft: &'static str,
    /// Class of the filled tip.
    pub head: &'static str,
    /// Length of the tip in px.
    pub tip_px: f64,
    /// How undesirable it is for texts.
    pub weight: f64,
}

/// The push and the weight at the centre of gravity.
pub static PUSH: Arrow = Arrow { shaft: "push", head: "push head", tip_px: 9.0, weight: 6.0 };
/// A pull of an anchor.
pub static PULL: Arrow = Arrow { shaft: "pull", head: "pull head", tip_px: 7.0, weight: 1.5 };
/// The floor pressing back under a foot.
pub static PRESS: Arrow = Arrow { shaft: "press", head: "press head", tip_px: 7.0, weight: 1.5 };
/// Shear on an anchor.
pub static SHEAR: Arrow = Arrow { shaft: "shear", head: "shear head", tip_px: 5.0, weight: 2.0 };

impl Arrow {
    /// Draws a line with a filled tip; nothing where both ends coincide.
    #[inline(never)]
    pub fn draw(&self, board: &mut Board, [tail, tip]: [[f64; 2]; 2], of: Of) {
        let length = hypot(tip[0] - tail[0], tip[1] - tail[1]);
        if length < 0.5 {
            return;
        }
        let (x, y) = ((tip[0] - tail[0]) / length, (tip[1] - tail[1]) / length);
        let long = self.tip_px.min(length);
        let half = 0.38 * long;
        let root = [tip[0] - x * long, tip[1] - y * long];
        // The shaft ends inside the head, for its blunt end would show beside the tip.
        board.line(self.shaft, tail, [tip[0] - x * 0.6 * long, tip[1] - y * 0.6 * long]).of = of;
        board.avoid_last(self.weight);
        let head = [tip, [root[0] - y * half, root[1] + x * half], [root[0] + y * half, root[1] - x * half]];
        board.polygon(self.head, &head).of = of;
        board.avoid_last(self.weight);
    }
}
