//! A sentence as text, for the command line and for pages without scripts.

use alloc::format;
use alloc::string::String;

use super::answer::{Sentence, Slot};
use super::text_tables::text_of_code;
use crate::calc::CheckId;
use crate::calc::show::{Rounding, Style, show};
use crate::calc::{Kind, System};

/// The template of a sentence with its slots filled.
pub fn print_sentence(sentence: &Sentence, system: System) -> String {
    let Some(template) = text_of_code(sentence.id) else { return String::new() };
    let mut text = String::from(template.what);
    for (place, slot) in sentence.slots.iter().enumerate() {
        text = text.replace(&format!("{{{place}}}"), &print_slot(slot, system));
    }
    text
}

/// One slot as text.
pub fn print_slot(slot: &Slot, system: System) -> String {
    match slot {
        Slot::Number { value, kind, rounding, .. } => {
            let rounding = match *rounding {
                "up" => Rounding::Up,
                "down" => Rounding::Down,
                _ => Rounding::Nearest,
            };
            show(*value, Kind::from_code(*kind).unwrap_or(Kind::Number), Style::plain(system, rounding))
        }
        Slot::Text { text } => text.clone(),
        Slot::Name { name } => text_of_code(*name).map_or(String::new(), |row| String::from(row.what)),
        Slot::Check { check } => CheckId::named(check).map_or(String::new(), |check| String::from(check.title())),
    }
}
