use super::board::Board;
use super::of::Of;
use crate::calc::number::{cos, sin};

/// Radius of the sign for the centre of gravity, in px.
pub const CENTRE_PX: f64 = 5.5;

/// Draws the sign for the centre of gravity: a circle with two dark quarters.
pub fn draw_centre(board: &mut Board, at: [f64; 2]) {
    board.circle("centre", at, CENTRE_PX).of = Of::Centre;
    for from_rad in [0.0, core::f64::consts::PI] {
        let mut points = [at; 8];
        for step in 0..7 {
            let angle = from_rad + step as f64 * core::f64::consts::FRAC_PI_2 / 6.0;
            points[step + 1] = [at[0] + CENTRE_PX * cos(angle), at[1] + CENTRE_PX * sin(angle)];
        }
        board.polygon("centre dark", &points);
    }
}
