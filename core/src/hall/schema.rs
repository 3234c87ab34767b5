//! The JSON Schema of a hall file, for editors: made with the keys and limits of its reader. Only native code asks for it.

use alloc::format;
use alloc::string::String;

use super::file::{AISLE_LIMITS_MM, CORNERS_MAX, FORMAT_NAME, FURTHEST_MM, KEYS};

/// The schema, indented.
///
/// Scope: what the file itself may hold. Its parts are project files or pieces of one, which steadfoot.schema.json tells
/// but for what is required.
pub fn schema() -> String {
    let members = KEYS.map(|key| format!("    \"{key}\": {}", of_key(key)));
    format!(
        r##"{{
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "title": "Steadfoot hall, first format",
  "description": "What a schedule of many cabinets calls by name. Every part is a project file, or a piece of one, by steadfoot.schema.json without its required keys; pieces are put on top of each other: objects are joined, null takes a key away, anything else replaces.",
  "type": "object",
  "required": ["types"],
  "additionalProperties": false,
  "properties": {{
{}
  }},
  "$defs": {{
    "part": {{ "type": "object" }},
    "parts": {{ "type": "object", "propertyNames": {{ "pattern": "\\S" }}, "additionalProperties": {{ "$ref": "#/$defs/part" }} }}
  }}
}}
"##,
        members.join(",\n")
    )
}

fn of_key(key: &str) -> String {
    let parts = |more: &str, what: &str| format!(r##"{{ "$ref": "#/$defs/parts",{more} "description": "{what}" }}"##);
    match key {
        "format" => format!(r#"{{ "const": "{FORMAT_NAME}" }}"#),
        "title" => r#"{ "type": "string", "description": "What the sheets of its cabinets are headed with, before the place." }"#.into(),
        "base" => r##"{ "$ref": "#/$defs/part", "description": "The piece with which every type begins." }"##.into(),
        "types" => parts(r#" "minProperties": 1,"#, "Types of cabinets by their names."),
        "floors" => parts("", "Floors by their names."),
        "storeys" => parts("", "Storeys by their names."),
        "load_outs" => parts("", "Load-outs by names other than full, empty, lowest, highest and percentages."),
        "outline_mm" => format!(
            r#"{{
      "type": "array",
      "maxItems": {CORNERS_MAX},
      "description": "The corners of the room, in their order around it; cabinets stand within.",
      "items": {{ "type": "array", "minItems": 2, "maxItems": 2, "items": {{ "type": "number", "minimum": -{FURTHEST_MM}, "maximum": {FURTHEST_MM} }} }}
    }}"#
        ),
        "aisle_mm" => {
            let [least, most] = AISLE_LIMITS_MM;
            format!(
                r#"{{ "type": "number", "minimum": {least}, "maximum": {most}, "description": "How deep the clear way in front of every cabinet is, as wide as the cabinet." }}"#
            )
        }
        _ => "true".into(),
    }
}
