use alloc::vec::Vec;

use super::lettering::{ASCENT, Lettering};
use super::mark::Anchor;
use super::patch::{Extent, Patch};
use crate::calc::number::{cos, hypot, sin};

/// Where a text may stand: the middle of its patch, the end that hugs its object, and what the place costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// The middle of the text's patch.
    pub middle: [f64; 2],
    /// Which end of the text keeps its place when the reader's face is narrower than counted.
    pub anchor: Anchor,
    /// Whether it reads upwards.
    pub reading: Reading,
    /// How undesirable the place is, in px of distance.
    pub cost: f64,
}

/// How a text runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reading {
    /// From left to right.
    Across,
    /// From below to above.
    Upwards,
}

impl Spot {
    /// A text across, centred on a place.
    pub fn centred(middle: [f64; 2]) -> Spot {
        Spot { middle, anchor: Anchor::Middle, reading: Reading::Across, cost: 0.0 }
    }

    /// A text that begins at x, its middle at the height y.
    pub fn from_left(x: f64, y: f64, width: f64) -> Spot {
        Spot { middle: [x + width / 2.0, y], anchor: Anchor::Start, reading: Reading::Across, cost: 0.0 }
    }

    /// A text that ends at x, its middle at the height y.
    pub fn from_right(x: f64, y: f64, width: f64) -> Spot {
        Spot { middle: [x - width / 2.0, y], anchor: Anchor::End, reading: Reading::Across, cost: 0.0 }
    }

    /// The same place, reading upwards.
    pub fn upwards(mut self) -> Spot {
        self.reading = Reading::Upwards;
        self
    }

    /// The same place at a price.
    pub fn costing(mut self, cost: f64) -> Spot {
        self.cost = cost;
        self
    }

    /// The patch that the text takes there.
    pub fn patch(&self, lettering: Lettering, text: &str) -> Patch {
        let (width, height) = (lettering.width_px(text), lettering.height_px());
        let extent = match self.reading {
            Reading::Across => Extent { width, height },
            Reading::Upwards => Extent { width: height, height: width },
        };
        Patch::around(self.middle, extent)
    }

    /// The point of the text mark: on the baseline, at the end that keeps its place.
    pub fn text_point(&self, lettering: Lettering, text: &str) -> [f64; 2] {
        let patch = self.patch(lettering, text);
        let ascent = ASCENT * lettering.size_px();
        let along = |begin: f64, end: f64| match self.anchor {
            Anchor::Start => begin,
            Anchor::Middle => (begin + end) / 2.0,
            Anchor::End => end,
        };
        match self.reading {
            Reading::Across => [along(patch.left, patch.right), patch.top + ascent],
            Reading::Upwards => [patch.left + ascent, along(patch.bottom, patch.top)],
        }
    }
}

/// Spots in sixteen directions around a thing and at growing distances.
pub fn spots_around(extent: Extent, thing: &Patch, towards: [f64; 2]) -> Vec<Spot> {
    let (width, height) = (extent.width, extent.height);
    let (middle, extent) = (thing.middle(), thing.extent());
    let reach = hypot(towards[0], towards[1]).max(1e-9);
    let mut spots = Vec::with_capacity(16 * 7);
    for distance in [2.0, 7.0, 13.0, 20.0, 30.0, 42.0, 60.0] {
        for step in 0..16 {
            let angle = f64::from(step) * core::f64::consts::PI / 8.0;
            let (way_x, way_y) = (cos(angle), sin(angle));
            let x = middle[0] + way_x * (extent.width / 2.0 + width / 2.0 + distance);
            let y = middle[1] + way_y * (extent.height / 2.0 + height / 2.0 + distance);
            let turned = 1.0 - (way_x * towards[0] + way_y * towards[1]) / reach;
            let anchor = match way_x {
                way if way > 0.3 => Anchor::Start,
                way if way < -0.3 => Anchor::End,
                _ => Anchor::Middle,
            };
            spots.push(Spot { middle: [x, y], anchor, reading: Reading::Across, cost: distance + 12.0 * turned });
        }
    }
    spots
}
