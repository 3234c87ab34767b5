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
        Patch { left: a[0].min(b[0]), top: a[1].min(b[1]), right: a[0].max(b[0]), bottom: a[1].max(b[1]) }
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
        Patch { left: self.left - by, top: self.top - by, right: self.right + by, bottom: self.bottom + by }
    }

    /// Its middle.
    pub fn middle(&self) -> [f64; 2] {
        [(self.left + self.right) / 2.0, (self.top + self.bottom) / 2.0]
    }

    /// Its size.
    pub fn extent(&self) -> Extent {
        Extent { width: self.right - self.left, height: self.bottom - self.top }
    }

    /// True where the other patch lies inside.
    pub fn holds(&self, other: &Patch) -> bool {
        self.left <= other.left && self.top <= other.top && other.right <= self.right && other.bottom <= self.bottom
    }

    /// The area that both cover.
    pub fn shared_with(&self, other: &Patch) -> f64 {
        let width = self.right.min(other.right) - self.left.max(other.left);
        let height = self.bottom.min(other.bottom) - self.top.max(other.top);
        if width > 0.0 && height > 0.0 { width * height } else { 0.0 }
    }

    /// The place of the patch that is nearest to a place.
    pub fn nearest_to(&self, place: [f64; 2]) -> [f64; 2] {
        [place[0].max(self.left).min(self.right), place[1].max(self.top).min(self.bottom)]
    }

    /// The corners, clockwise from the upper left.
    pub fn corners(&self) -> [[f64; 2]; 4] {
        [[self.left, self.top], [self.right, self.top], [self.right, self.bottom], [self.left, self.bottom]]
    }
}
