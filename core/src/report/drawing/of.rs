use alloc::string::String;

use serde::{Serialize, Serializer};

use super::number_text::count_text;
use super::side::Side;

/// What a mark stands for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Of {
    /// Nothing in particular.
    #[default]
    Nothing,
    /// The cabinet's outline.
    Cabinet,
    /// A foot, by its place in the file, from 0.
    Foot(usize),
    /// An anchor, by its place in the file, from 0.
    Anchor(usize),
    /// A part of the contents, by its place in the file, from 0.
    Contents(usize),
    /// The centre of gravity.
    Centre,
    /// The horizontal push.
    Push,
    /// The vertical load.
    Weight,
    /// The edge about which it turns.
    Pivot,
    /// An edge of the slab.
    Edge(Side),
    /// The overall width.
    Width,
    /// The overall depth.
    Depth,
    /// The overall height.
    Height,
    /// The height of the centre of gravity.
    CentreHeight,
    /// The direction along which one looks.
    View,
    /// The governing direction.
    Governing,
}

impl Of {
    /// The words for it, `foot 1` or `edge left`, counted from one; empty for nothing.
    pub fn text(self) -> String {
        let (word, place) = match self {
            Of::Nothing => ("", None),
            Of::Cabinet => ("cabinet", None),
            Of::Foot(place) => ("foot ", Some(place)),
            Of::Anchor(place) => ("anchor ", Some(place)),
            Of::Contents(place) => ("contents ", Some(place)),
            Of::Centre => ("centre", None),
            Of::Push => ("push", None),
            Of::Weight => ("weight", None),
            Of::Pivot => ("pivot", None),
            Of::Edge(Side::Left) => ("edge left", None),
            Of::Edge(Side::Right) => ("edge right", None),
            Of::Edge(Side::Front) => ("edge front", None),
            Of::Edge(Side::Rear) => ("edge rear", None),
            Of::Width => ("width", None),
            Of::Depth => ("depth", None),
            Of::Height => ("height", None),
            Of::CentreHeight => ("centre height", None),
            Of::View => ("view", None),
            Of::Governing => ("governing", None),
        };
        let mut text = String::from(word);
        if let Some(place) = place {
            text.push_str(&count_text(place + 1));
        }
        text
    }

    /// True where it stands for nothing in particular.
    pub fn is_nothing(&self) -> bool {
        *self == Of::Nothing
    }
}

impl Serialize for Of {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.text())
    }
}
