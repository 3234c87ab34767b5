//! What an input is called where only its path is known: `cabinet.frame.mass_kg` is "frame: mass".
//!
//! Keys of the file are plain words with their unit behind them, so a label is made of them and carries no table.

use alloc::string::String;

/// The units with which keys end, the longer ones first.
const UNITS: [&str; 17] = [
    "_n_per_mm3",
    "_n_per_mm",
    "_mm_per_s",
    "_percent",
    "_mm2",
    "_mm4",
    "_mpa",
    "_deg",
    "_mm",
    "_kg",
    "_kn",
    "_hz",
    "_n",
    "_m",
    "_s",
    "_g",
    "_rad",
];
const AXES: [&str; 3] = ["x", "y", "z"];

/// The label of the input at a path; `[*]` stands for every item of a list.
pub fn label(path: &str) -> String {
    let mut pieces = path.rsplit('.');
    let (last, parent) = (pieces.next().unwrap_or(""), pieces.next());
    let mut text = String::new();
    if let Some(parent) = parent {
        push_words(&mut text, parent);
        text.push_str(": ");
    }
    push_words(&mut text, last);
    text
}

fn push_words(text: &mut String, piece: &str) {
    let (key, index) = piece.split_once('[').unwrap_or((piece, ""));
    let index = index.trim_end_matches(']');
    let is_symbol = key.as_bytes().get(1) == Some(&b'_');
    let short = UNITS.iter().find_map(|unit| key.strip_suffix(unit)).filter(|short| !short.is_empty() && !is_symbol);
    match short.unwrap_or(key) {
        "at" => text.push_str("place"),
        "as_built" => text.push_str("place as drilled"),
        key if is_symbol => text.push_str(key),
        key => key.chars().for_each(|letter| text.push(if letter == '_' { ' ' } else { letter })),
    }
    let Ok(number) = index.parse::<usize>() else { return };
    text.push(' ');
    let is_axis = key.ends_with("_mm") && short != Some("edges");
    match AXES.get(number).filter(|_| is_axis) {
        Some(axis) => text.push_str(axis),
        None => crate::input::fault::push_whole(text, number + 1),
    }
}

#[cfg(test)]
mod tests {
    use super::label;

    #[test]
    fn labels_are_made_of_the_keys() {
        for (path, text) in [
            ("cabinet.frame.mass_kg", "frame: mass"),
            ("cabinet.frame.centre_mm[2]", "frame: centre z"),
            ("contents[*].mass_kg", "contents: mass"),
            ("contents[2].mass_kg", "contents 3: mass"),
            ("cabinet.feet[*].at_mm", "feet: place"),
            ("slab.edges_mm.rear", "edges: rear"),
            ("slab.strength_mpa", "slab: strength"),
            ("site.s_ds", "site: s_ds"),
            ("anchorage.embedment_mm", "anchorage: embedment"),
        ] {
            assert_eq!(label(path), text);
        }
    }
}
