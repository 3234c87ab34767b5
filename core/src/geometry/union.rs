use crate::calc::order::put_in_order;
use alloc::vec::Vec;

use super::{Point, Polygon, Rectangle};

/// The area that upright rectangles cover together, each part counted once, inside an outline.
///
/// This is the projected area of a group of anchors with the parts beyond the edges of the concrete taken off.
/// Units: mm in, mm2 out. Exact: the plane is cut into strips at every side and the strips are summed.
///
/// ```
/// use steadfoot::geometry::{Point, Rectangle, Size, union_area_mm2};
/// let half = Size::new(150.0, 150.0);
/// let pair = [Point::new(0.0, 0.0), Point::new(200.0, 0.0)].map(|at| Rectangle::around(at, half));
/// assert_eq!(union_area_mm2(&pair, &Rectangle::EVERYWHERE), 500.0 * 300.0);
/// ```
pub fn union_area_mm2(rectangles: &[Rectangle], outline: &Rectangle) -> f64 {
    let parts = clipped(rectangles, outline);
    let cuts_mm = cuts(parts.iter().flat_map(|part| [part.left_mm, part.right_mm]));
    let mut by_front: Vec<&Rectangle> = parts.iter().collect();
    put_in_order(&mut by_front, |a, b| a.front_mm.total_cmp(&b.front_mm));
    let mut area_mm2 = 0.0;
    for strip in cuts_mm.windows(2) {
        let mut covered_mm = 0.0;
        let mut reached_mm = f64::NEG_INFINITY;
        for part in by_front.iter().filter(|part| part.left_mm <= strip[0] && strip[1] <= part.right_mm) {
            let from_mm = part.front_mm.max(reached_mm);
            if part.rear_mm > from_mm {
                covered_mm += part.rear_mm - from_mm;
                reached_mm = part.rear_mm;
            }
        }
        area_mm2 += covered_mm * (strip[1] - strip[0]);
    }
    area_mm2
}

/// The outlines of the same union, for drawing: outer ones counter-clockwise, holes clockwise.
///
/// Where two parts touch in a single corner they stay two figures.
pub fn union_outline(rectangles: &[Rectangle], outline: &Rectangle) -> Vec<Polygon> {
    let parts = clipped(rectangles, outline);
    let columns_mm = cuts(parts.iter().flat_map(|part| [part.left_mm, part.right_mm]));
    let rows_mm = cuts(parts.iter().flat_map(|part| [part.front_mm, part.rear_mm]));
    let grid = Grid::new(&parts, &columns_mm, &rows_mm);
    let mut steps = grid.boundary();
    let mut outlines = Vec::new();
    while let Some(first) = steps.pop() {
        let mut nodes = alloc::vec![first.from];
        let mut last = first;
        while last.to != first.from {
            // Where four steps meet in a corner, the left turn keeps to the same part.
            let left = (-last.way.1, last.way.0);
            let next = steps
                .iter()
                .position(|step| step.from == last.to && step.way == left)
                .or_else(|| steps.iter().position(|step| step.from == last.to));
            let Some(next) = next else { break };
            let step = steps.swap_remove(next);
            if step.way != last.way {
                nodes.push(step.from);
            }
            last = step;
        }
        // The walk may have begun in the middle of a straight side.
        if last.way == first.way {
            nodes.remove(0);
        }
        outlines.push(Polygon::new(
            nodes.iter().map(|&(column, row)| Point::new(columns_mm[column], rows_mm[row])).collect(),
        ));
    }
    outlines
}

/// One side of one cell on the boundary, with the covered side to its left.
#[derive(Clone, Copy)]
struct Step {
    from: (usize, usize),
    to: (usize, usize),
    way: (i8, i8),
}

/// The cells between all cuts, each covered or not.
struct Grid {
    columns: usize,
    rows: usize,
    covered: Vec<bool>,
}

impl Grid {
    fn new(parts: &[Rectangle], columns_mm: &[f64], rows_mm: &[f64]) -> Grid {
        let (columns, rows) = (columns_mm.len().saturating_sub(1), rows_mm.len().saturating_sub(1));
        let mut covered = alloc::vec![false; columns * rows];
        for part in parts {
            for column in 0..columns {
                if part.left_mm > columns_mm[column] || columns_mm[column + 1] > part.right_mm {
                    continue;
                }
                for row in 0..rows {
                    if part.front_mm <= rows_mm[row] && rows_mm[row + 1] <= part.rear_mm {
                        covered[column * rows + row] = true;
                    }
                }
            }
        }
        Grid { columns, rows, covered }
    }

    /// True where the cell exists and is covered; columns and rows count from one here, so that zero is outside.
    fn is_covered(&self, column: usize, row: usize) -> bool {
        (1..=self.columns).contains(&column)
            && (1..=self.rows).contains(&row)
            && self.covered[(column - 1) * self.rows + row - 1]
    }

    fn boundary(&self) -> Vec<Step> {
        let mut steps = Vec::new();
        for column in 1..=self.columns {
            for row in 1..=self.rows {
                if !self.is_covered(column, row) {
                    continue;
                }
                let corners = [(column - 1, row - 1), (column, row - 1), (column, row), (column - 1, row)];
                let neighbours = [(column, row - 1), (column + 1, row), (column, row + 1), (column - 1, row)];
                let ways = [(1, 0), (0, 1), (-1, 0), (0, -1)];
                for side in 0..4 {
                    if !self.is_covered(neighbours[side].0, neighbours[side].1) {
                        steps.push(Step { from: corners[side], to: corners[(side + 1) % 4], way: ways[side] });
                    }
                }
            }
        }
        steps
    }
}

fn clipped(rectangles: &[Rectangle], outline: &Rectangle) -> Vec<Rectangle> {
    rectangles.iter().filter_map(|rectangle| rectangle.clipped(outline)).collect()
}

fn cuts(sides_mm: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut cuts_mm: Vec<f64> = sides_mm.collect();
    put_in_order(&mut cuts_mm, f64::total_cmp);
    cuts_mm.dedup();
    cuts_mm
}
