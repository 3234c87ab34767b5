//! Where the uncut font comes from.

use anyhow::Context;
use ttf_parser::{Face, name_id};

/// The font's own name. Its "Book" weight stands well beside the text faces of screens.
pub const NAME: &str = "NewCMMath-Book";

/// The bytes of the uncut math font.
pub fn math_font() -> anyhow::Result<&'static [u8]> {
    typst_assets::fonts()
        .find(|bytes| postscript_name(bytes).as_deref() == Some(NAME))
        .with_context(|| format!("the font package no longer carries {NAME}"))
}

fn postscript_name(bytes: &[u8]) -> Option<String> {
    name(&Face::parse(bytes, 0).ok()?, name_id::POST_SCRIPT_NAME)
}

/// One of the font's own texts.
pub fn name(face: &Face, id: u16) -> Option<String> {
    face.names().into_iter().filter(|name| name.name_id == id).find_map(|name| name.to_string())
}
