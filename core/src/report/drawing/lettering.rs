//! The lettering of the drawings: classes, sizes, and how wide a text becomes.

use super::patch::Extent;

/// A kind of text: its class in the stylesheet, its size, its weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lettering {
    /// Words that orient: rear, front, seen along.
    Word,
    /// Dimensions.
    Size,
    /// Masses of the contents.
    Mass,
    /// Masses of thin contents, written over several of them.
    MassOver,
    /// Lines beneath a drawing.
    Note,
    /// Names of what governs a part of the rose.
    Name,
    /// Values of the rings of the rose.
    RingValue,
    /// Pulls in anchors: heavy, so that they are told from pressing forces without colour.
    Pull,
    /// Forces that press, under feet.
    Press,
    /// The push and the weight.
    Push,
    /// The governing utilisation.
    Governing,
    /// How it ends: tips.
    Outcome,
}

/// DejaVu Serif Bold runs at most this much wider than the plain face.
const HEAVY: f64 = 1.13;

/// Above the baseline, in parts of the size: what digits and capitals take.
pub const ASCENT: f64 = 0.76;
/// Below the baseline, in parts of the size.
pub const DESCENT: f64 = 0.24;

impl Lettering {
    /// All of them.
    pub const ALL: [Lettering; 12] = [
        Lettering::Word,
        Lettering::Size,
        Lettering::Mass,
        Lettering::MassOver,
        Lettering::Note,
        Lettering::Name,
        Lettering::RingValue,
        Lettering::Pull,
        Lettering::Press,
        Lettering::Push,
        Lettering::Governing,
        Lettering::Outcome,
    ];

    /// The class of the text marks.
    pub fn class(self) -> &'static str {
        match self {
            Lettering::Word => "word",
            Lettering::Size => "size",
            Lettering::Mass => "mass",
            Lettering::MassOver => "mass over",
            Lettering::Note => "note",
            Lettering::Name => "name",
            Lettering::RingValue => "ring-value",
            Lettering::Pull => "force pull-value",
            Lettering::Press => "force press-value",
            Lettering::Push => "force push-value",
            Lettering::Governing => "governing-value",
            Lettering::Outcome => "outcome",
        }
    }

    /// Font size in px; the stylesheet sets the same.
    pub fn size_px(self) -> f64 {
        if (self as u8) < Lettering::Pull as u8 { 12.0 } else { 13.0 }
    }

    /// The width that the text takes at most, in px.
    ///
    /// Counted with the advances of DejaVu Serif, the widest of the common serif faces, for the reader's own face is
    /// not known here.
    pub fn width_px(self, text: &str) -> f64 {
        let is_heavy = matches!(self, Lettering::Pull | Lettering::Governing | Lettering::Outcome);
        let widening = if is_heavy { HEAVY } else { 1.0 };
        text.chars().map(advance).sum::<f64>() * self.size_px() * widening / 100.0
    }

    /// The width and the height of the text, in px.
    pub fn extent(self, text: &str) -> Extent {
        Extent { width: self.width_px(text), height: self.height_px() }
    }

    /// The height from the lowest to the highest stroke, in px.
    pub fn height_px(self) -> f64 {
        (ASCENT + DESCENT) * self.size_px()
    }
}

/// The advance of a character in hundredths of the font size.
fn advance(character: char) -> f64 {
    let code = character as u32;
    let hundredths = match code {
        32..=126 => ADVANCES[code as usize - 32],
        // No-break space, narrow no-break space, middle dot.
        0xa0 | 0x202f | 0xb7 => 32,
        // En dash, degree.
        0x2013 | 0xb0 => 50,
        _ => 100,
    };
    f64::from(hundredths)
}

/// Advances of the characters 32 to 126 in DejaVu Serif 2.37, hundredths of the font size.
static ADVANCES: [u8; 95] = [
    32, 40, 46, 84, 64, 95, 89, 27, 39, 39, 50, 84, 32, 34, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84,
    84, 84, 54, 100, 72, 73, 77, 80, 73, 69, 80, 87, 40, 40, 75, 66, 102, 88, 82, 67, 82, 75, 69, 67, 84, 72, 103, 71,
    66, 69, 39, 34, 39, 84, 50, 50, 60, 64, 56, 64, 59, 37, 64, 64, 32, 31, 61, 32, 95, 64, 60, 64, 64, 48, 51, 40, 64,
    56, 86, 56, 56, 53, 64, 34, 64, 84,
];
