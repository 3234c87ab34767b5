use super::lettering::{ASCENT, Lettering};
use super::mark::Anchor;

/// An upright rectangle of the drawing, in px, y downwards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Patch {
    /// The smaller x.
    pub left: f64,
    /// The smaller y.
    pub top: f64,
    /// The larger x.
    pub right: f64,
    /// The larger y.
    pub bottom: f64,
}

/// A size in px.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extent {
    /// Along x.
    pub width: f64,
    /// Along y.
    pub height: f64,
}

impl Patch {
    /// The patch of this size around its middle.
    pub fn around(middle: [f64; 2], extent: Extent) -> Patch {
        Patch {
            left: middle[0] - extent.width / 2.0,
            top: middle[1] - extent.height / 2.0,
            right: middle[0] + extent.width / 2.0,
            bottom: middle[1] + extent.height / 2.0,
        }
    }

    /// The smallest patch around two places.
    pub fn between(a: [f64; 2], b: [f64; 2]) -> Patch {
        Patch {
            left: a[0].min(b[0]),
            top: a[1].min(b[1]),
            right: a[0].max(b[0]),
            bottom: a[1].max(b[1]),
        }
    }

    /// The smallest patch around this one and another.
    pub fn with(&self, other: &Patch) -> Patch {
        Patch {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    /// The same patch, larger by so much on every side.
    pub fn grown(self, by: f64) -> Patch {
        Patch {
            left: self.left - by,
            top: self.top - by,
            right: self.right + by,
            bottom: self.bottom + by,
        }
    }

    /// Its middle.
    pub fn middle(&self) -> [f64; 2] {
        [
            (self.left + self.right) / 2.0,
            (self.top + self.bottom) / 2.0,
        ]
    }

    /// Its size.
    pub fn extent(&self) -> Extent {
        Extent {
            width: self.right - self.left,
            height: self.bottom - self.top,
        }
    }

    /// True where the other patch lies inside.
    pub fn holds(&self, other: &Patch) -> bool {
        self.left <= other.left
            && self.top <= other.top
            && other.right <= self.right
            && other.bottom <= self.bottom
    }

    /// The area that both cover.
    pub fn shared_with(&self, other: &Patch) -> f64 {
        let width = self.right.min(other.right) - self.left.max(other.left);
        let height = self.bottom.min(other.bottom) - self.top.max(other.top);
        if width > 0.0 && height > 0.0 {
            width * height
        } else {
            0.0
        }
    }

    /// The place of the patch that is nearest to a place.
    pub fn nearest_to(&self, place: [f64; 2]) -> [f64; 2] {
        [
            place[0].max(self.left).min(self.right),
            place[1].max(self.top).min(self.bottom),
        ]
    }

    /// The corners, clockwise from the upper left.
    pub fn corners(&self) -> [[f64; 2]; 4] {
        [
            [self.left, self.top],
            [self.right, self.top],
            [self.right, self.bottom],
            [self.left, self.bottom],
        ]
    }
}

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
        Spot {
            middle,
            anchor: Anchor::Middle,
            reading: Reading::Across,
            cost: 0.0,
        }
    }

    /// A text that begins at x, its middle at the height y.
    pub fn from_left(x: f64, y: f64, width: f64) -> Spot {
        Spot {
            middle: [x + width / 2.0, y],
            anchor: Anchor::Start,
            reading: Reading::Across,
            cost: 0.0,
        }
    }

    /// A text that ends at x, its middle at the height y.
    pub fn from_right(x: f64, y: f64, width: f64) -> Spot {
        Spot {
            middle: [x - width / 2.0, y],
            anchor: Anchor::End,
            reading: Reading::Across,
            cost: 0.0,
        }
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
            Reading::Upwards => Extent {
                width: height,
                height: width,
            },
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
